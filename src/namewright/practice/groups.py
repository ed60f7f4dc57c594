"""Tables: a class parted into groups as even as can be, who share letters and need like help, steady over the weeks.

What a grouping is worth stands in ``table_worth``. Tables differ by one child at most. From several starts children are
exchanged, two at a time, for as long as an exchange helps. The answer depends on the names only, never on chance, and
not on the order of the list. Which wishes no exchange could meet is said by ``table_worth.broken``.

Given the tables of last time, a grouping starts from those and moves as few children as even sizes and wishes allow:
who joins takes the table with room where most is shared, and all others stay; a table keeps its number. Where fewer
than half of the children had a table, tables are made anew.

Against the best that a set-partitioning solver finds: ``tests/outside/test_practice_tables.py``. Out of scope: how
children get along; a teacher knows, and says so as a wish.
"""

from __future__ import annotations

from collections.abc import Collection, Iterator, Mapping, Sequence
from itertools import combinations, islice
from random import Random

from namewright.practice.table_worth import (
    GAIN_OF_A_WISH,
    NO_GAIN,
    Exchange,
    Pairs,
    best_exchange,
    group_worth,
    sums_after,
    sums_with,
    worth,
    worth_with,
)
from namewright.practice.weeks import letters_of

MIN_AT_TABLE, MAX_AT_TABLE = 3, 5  # children at a table, where nobody says how many tables there are
_STARTS = 8
_MANY = 60  # in larger classes two starts do

Group = tuple[int, ...]
Grouping = tuple[Group, ...]



def shared_letters(names: Sequence[str]) -> tuple[str, ...]:
    """Return the letters that at least two of the names have, those of most names first."""
    sets = [letters_of(name) for name in names]
    counts = {letter: sum(letter in each for each in sets) for letter in sorted(frozenset().union(*sets))}
    return tuple(sorted((letter for letter, count in counts.items() if count > 1), key=lambda each: -counts[each]))


# --- how many tables, and how large -------------------------------------------------------------------


def usual_tables(children: int, before: int = 0) -> int:
    """Return how many tables there are where nobody says: as before if that leaves three to five at each."""
    fewest, most = -(-children // MAX_AT_TABLE), max(1, children // MIN_AT_TABLE)
    if not children:
        return 0
    return min(max(before or fewest, fewest), max(most, fewest))


def _even(children: int, groups: int) -> list[int]:
    """Return sizes that differ by one at most, the larger first."""
    return [children // groups + (at < children % groups) for at in range(groups)]


# --- making tables ------------------------------------------------------------------------------------


def group_class(pairs: Pairs, told: Sequence[str], tables: int | None = None, before: Sequence[Sequence[int]] = (),
                ) -> Grouping:
    """Return tables of places, each place at one of them; tables and places ascending, none empty.

    ``pairs`` are worths with wishes (``wished``), ``told`` what decides between equals, such as names; ``before`` are
    the tables of last time as places; who left is simply not in it. Raises ValueError where a place in ``before`` is
    not in the class or stands at two tables.
    """
    children = len(told)
    _check(before, children)
    if not children:
        return ()
    old = [list(group) for group in before if group]
    keep = 2 * sum(map(len, old)) >= children
    count = min(children, tables or usual_tables(children, len(old) if keep else 0))
    if not keep or (tables is not None and count != len(old)):
        return _new(pairs, told, count)
    kept = _sorted(_kept(pairs, old, count))
    if not any(abs(one) > GAIN_OF_A_WISH for row in pairs for one in row):
        return kept
    new = _new(pairs, told, count)  # a wish goes before staying together
    return new if worth(new, pairs) - worth(kept, pairs) > GAIN_OF_A_WISH else kept


def _new(pairs: Pairs, told: Sequence[str], count: int) -> Grouping:
    """Return the best of the groupings that exchanging leads to, from several starts."""
    order = sorted(range(len(told)), key=lambda place: (told[place], place))
    tried = [_sorted(_exchanged(start, pairs)) for start in _starts(pairs, order, count)]
    return max(tried, key=lambda each: (round(worth(each, pairs), 6), _told(each, told)))


def numbered(groups: Grouping, before: Mapping[int, int]) -> dict[int, int]:
    """Return each place's table by number, from 1; ``before`` gives the numbers of last time by place.

    A table keeps the number that most of its children had, where two want one the table with more of them; other
    tables take the lowest numbers that are free, in their order.
    """
    wanted = sorted((-sum(before.get(place) == number for place in group), number, at)
                    for at, group in enumerate(groups) for number in {before[p] for p in group if p in before})
    kept: dict[int, int] = {}
    for _, number, at in wanted:
        if at not in kept and number not in kept.values():
            kept[at] = number
    free = iter([number for number in range(1, 2 * len(groups) + 1) if number not in kept.values()])
    numbers = [kept[at] if at in kept else next(free) for at in range(len(groups))]
    return {place: number for number, group in zip(numbers, groups, strict=True) for place in group}


def _check(before: Sequence[Sequence[int]], children: int) -> None:
    places = [place for group in before for place in group]
    if len(set(places)) < len(places) or any(not 0 <= place < children for place in places):
        raise ValueError("the groups of last time name a child twice, or one who is not in this class; "
                         "leave them out to make new groups")


def _sorted(groups: Sequence[Sequence[int]]) -> Grouping:
    return tuple(sorted(tuple(sorted(group)) for group in groups if group))


def _told(groups: Sequence[Sequence[int]], told: Sequence[str]) -> tuple[tuple[str, ...], ...]:
    """Return a grouping by its names: what decides between equals must not hang on the order of the roster."""
    return tuple(sorted(tuple(sorted(told[place] for place in group)) for group in groups))


def _starts(pairs: Pairs, order: Sequence[int], count: int) -> Iterator[list[list[int]]]:
    """Yield places to start exchanging from: filled greedily, cut by name, and shuffled the same way every time."""
    sizes = _even(len(order), count)
    yield _greedy(pairs, order, sizes)
    yield _dealt(order, sizes)
    shuffles = Random(len(order))
    for _ in range(_STARTS if len(order) <= _MANY else 0):
        yield _dealt(shuffles.sample(order, len(order)), sizes)


def _greedy(pairs: Pairs, order: Sequence[int], sizes: Sequence[int]) -> list[list[int]]:
    """Open each table with the child who shares least with those left, and fill it with the best matches."""
    left, groups = list(order), []
    for size in sizes:
        group = [min(left, key=lambda place: worth_with(place, left, pairs))]
        left.remove(group[0])
        while len(group) < size:
            group.append(max(left, key=lambda place: worth_with(place, group, pairs)))
            left.remove(group[-1])
        groups.append(group)
    return groups


def _dealt(order: Sequence[int], sizes: Sequence[int]) -> list[list[int]]:
    """Cut the children, in an order, into runs."""
    each = iter(order)
    return [list(islice(each, size)) for size in sizes]


# --- exchanging two children --------------------------------------------------------------------------


def _exchanged(groups: list[list[int]], pairs: Pairs, settled: Collection[int] = ()) -> list[list[int]]:
    """Exchange two children for as long as it helps, none of them settled; every exchange gains, so it ends.

    Two tables between which no exchange helped are looked at again only once one of them is another.
    """
    changes, looked_at = [0] * len(groups), dict[tuple[int, int], tuple[int, int]]()
    sums = [sums_with(group, pairs) for group in groups]
    helped = True
    while helped:
        helped = False
        for one, other in combinations(range(len(groups)), 2):
            now = changes[one], changes[other]
            if looked_at.get((one, other)) == now:
                continue
            best = best_exchange(groups[one], groups[other], sums[one], sums[other], pairs, settled)
            if best is NO_GAIN:
                looked_at[one, other] = now
                continue
            _exchange(groups[one], groups[other], best)
            sums[one] = sums_after(sums[one], best.coming, best.going, pairs)
            sums[other] = sums_after(sums[other], best.going, best.coming, pairs)
            changes[one], changes[other], helped = now[0] + 1, now[1] + 1, True
    return groups


def _exchange(one: list[int], other: list[int], chosen: Exchange) -> None:
    """Let two children change seats."""
    one[one.index(chosen.going)] = chosen.coming
    other[other.index(chosen.coming)] = chosen.going


# --- from the tables of last time ---------------------------------------------------------------------


def _kept(pairs: Pairs, groups: list[list[int]], count: int) -> list[list[int]]:
    """Keep the tables, seat whoever is new, even out the sizes, and mend wishes; all others stay where they are."""
    stayed = {place for group in groups for place in group}
    groups = _as_many(groups, count, pairs)
    seated = {place for group in groups for place in group}
    for place in (place for place in range(len(pairs)) if place not in seated):
        _seat(place, groups, pairs)
    _even_out(groups, pairs)
    groups = _exchanged(groups, pairs, settled=stayed)
    return _mended(groups, pairs)


def _as_many(groups: list[list[int]], count: int, pairs: Pairs) -> list[list[int]]:
    """Return as many tables as there are to be: small ones are dissolved, empty ones added."""
    kept = sorted(groups, key=lambda group: (-len(group), -group_worth(group, pairs), group))[:count]
    return [*kept, *([] for _ in range(count - len(kept)))]


def _seat(place: int, groups: list[list[int]], pairs: Pairs) -> None:
    """Seat a child at one of the smallest tables, where most is shared."""
    least = min(map(len, groups))
    best = max((group for group in groups if len(group) == least), key=lambda group: worth_with(place, group, pairs))
    best.append(place)


def _even_out(groups: list[list[int]], pairs: Pairs) -> None:
    """Move a child from a largest table to a smallest, the one who gains most by it, until sizes differ by one."""
    while max(map(len, groups)) - min(map(len, groups)) > 1:
        large, small = max(map(len, groups)), min(map(len, groups))
        _, place, giving, taking = max(
            ((worth_with(place, taking, pairs) - worth_with(place, giving, pairs), -place, giving, taking)
             for giving in groups if len(giving) == large for place in giving
             for taking in groups if len(taking) == small), key=lambda step: step[:2])
        giving.remove(-place)
        taking.append(-place)


def _mended(groups: list[list[int]], pairs: Pairs) -> list[list[int]]:
    """Make only the exchanges that meet a wish; there are far fewer than would pay by letters."""
    sums = [sums_with(group, pairs) for group in groups]
    for one, other in combinations(range(len(groups)), 2):
        best = best_exchange(groups[one], groups[other], sums[one], sums[other], pairs)
        if best.gain > GAIN_OF_A_WISH:
            _exchange(groups[one], groups[other], best)
            return _mended(groups, pairs)
    return groups
