"""Tables: a class parted into groups as even as can be, who share letters and need like help, steady over the weeks.

What two children are worth to each other is told by the caller as one whole number a pair (``pair_worth``: letters
shared, and how near their levels of help are). A grouping is worth the sum, over
all children, of the mean of a child's pairs with the others of the table; that mean keeps larger tables from winning
by size alone. Tables differ by one child at most. From several starts children are exchanged, two at a time, for as
long as an exchange helps. The answer depends on the names only, never on chance, and not on the order of the list.

Who must sit together, or must not, is one more pair, worth far more than all letters; ``broken`` says which of these
wishes no exchange could meet. Given the tables of last time, a grouping starts from those and moves as few children as
even sizes and wishes allow: who joins takes the table with room where most is shared, and all others stay; a table
keeps its number. Where fewer than half of the children had a table, tables are made anew.

Against the best that a set-partitioning solver finds: ``tests/outside/test_practice_tables.py``. Out of scope: how
children get along; a teacher knows, and says so as a wish.
"""

from __future__ import annotations

from collections.abc import Collection, Iterator, Mapping, Sequence
from dataclasses import dataclass
from itertools import combinations, islice
from random import Random

from namewright.practice.weeks import Letters, letters_of
from namewright.settings import Support

MIN_AT_TABLE, MAX_AT_TABLE = 3, 5  # children at a table, where nobody says how many tables there are
HELP = 2  # the same level of help is worth as much as this many letters shared; a rule of ours
_STARTS = 8
_MANY = 60  # in larger classes two starts do
_WISH = 1_000_000  # far more than all letters together
_MET = 1_000  # what gains more meets a wish

Group = tuple[int, ...]
Grouping = tuple[Group, ...]
Pairs = Sequence[Sequence[int]]


@dataclass(frozen=True, slots=True)
class Wishes:
    """What an adult asks of the tables: how many (None: three to five children each), and pairs of labels."""

    tables: int | None = None
    together: tuple[tuple[str, str], ...] = ()
    apart: tuple[tuple[str, str], ...] = ()


NO_WISHES = Wishes()


# --- what a grouping is worth -------------------------------------------------------------------------


def pair_worth(sets: Sequence[Letters], levels: Sequence[Support]) -> list[list[int]]:
    """Return what each two children are worth to each other; 0 of a child with itself."""
    ranks = [list(Support).index(level) for level in levels]
    worths = [[len(one & other) for other in sets] for one in sets]
    for one, other in combinations(range(len(sets)), 2):
        near = max(0, HELP - abs(ranks[one] - ranks[other]))
        worths[one][other] = worths[other][one] = worths[one][other] + near
    for one in range(len(sets)):
        worths[one][one] = 0
    return worths


def wished(pairs: Pairs, together: Collection[tuple[int, int]], apart: Collection[tuple[int, int]]) -> list[list[int]]:
    """Return the worths with wishes laid over them."""
    table = [list(row) for row in pairs]
    for sign, some in ((_WISH, together), (-_WISH, apart)):
        for one, other in some:
            table[one][other] += sign
            table[other][one] += sign
    return table


def broken(groups: Sequence[Sequence[int]], together: Collection[tuple[int, int]], apart: Collection[tuple[int, int]],
           ) -> tuple[tuple[int, int], ...]:
    """Return the wishes that a grouping does not meet."""
    at = {place: number for number, group in enumerate(groups) for place in group}
    return (*(pair for pair in together if at[pair[0]] != at[pair[1]]),
            *(pair for pair in apart if at[pair[0]] == at[pair[1]]))


def worth(groups: Sequence[Sequence[int]], pairs: Pairs) -> float:
    """Return what a grouping is worth: see the module header."""
    return sum(group_worth(group, pairs) for group in groups)


def group_worth(group: Sequence[int], pairs: Pairs) -> float:
    """Return one table's part of the worth; 0 for a child alone."""
    return _mean(2 * sum(pairs[one][other] for one, other in combinations(group, 2)), len(group))


def _mean(both_ways: int, size: int) -> float:
    """Return a table's worth from the sum over its pairs, each counted from both sides."""
    return both_ways / max(1, size - 1)


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
    if not any(abs(one) > _MET for row in pairs for one in row):
        return kept
    new = _new(pairs, told, count)  # a wish goes before staying together
    return new if worth(new, pairs) - worth(kept, pairs) > _MET else kept


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
        group = [min(left, key=lambda place: _with(place, left, pairs))]
        left.remove(group[0])
        while len(group) < size:
            group.append(max(left, key=lambda place: _with(place, group, pairs)))
            left.remove(group[-1])
        groups.append(group)
    return groups


def _dealt(order: Sequence[int], sizes: Sequence[int]) -> list[list[int]]:
    """Cut the children, in an order, into runs."""
    each = iter(order)
    return [list(islice(each, size)) for size in sizes]


def _with(place: int, others: Collection[int], pairs: Pairs) -> int:
    return sum(pairs[place][other] for other in others)


# --- exchanging two children --------------------------------------------------------------------------


@dataclass(frozen=True, slots=True)
class Exchange:
    """Two children of two tables who change seats, and what the grouping gains by it."""

    gain: float
    going: int
    coming: int


_NONE = Exchange(1e-9, -1, -1)  # what gains no more than rounding is no gain


def _exchanged(groups: list[list[int]], pairs: Pairs, settled: Collection[int] = ()) -> list[list[int]]:
    """Exchange two children for as long as it helps, none of them settled; every exchange gains, so it ends."""
    while any([_improved(groups, one, other, pairs, settled) for one, other in combinations(range(len(groups)), 2)]):
        pass
    return groups


def _improved(groups: list[list[int]], one: int, other: int, pairs: Pairs, settled: Collection[int]) -> bool:
    """Make the best exchange between two tables; return whether there was one that helps."""
    best = max(exchanges(groups[one], groups[other], pairs, settled), key=lambda each: each.gain, default=_NONE)
    if best.gain <= _NONE.gain:
        return False
    groups[one][groups[one].index(best.going)] = best.coming
    groups[other][groups[other].index(best.coming)] = best.going
    return True


def exchanges(left: Sequence[int], right: Sequence[int], pairs: Pairs, settled: Collection[int] = (),
              ) -> Iterator[Exchange]:
    """Yield every exchange between two tables, with what it gains.

    Write ``s(c, T)`` for the sum of child c's pairs with the children of table T. When x leaves the left table for y,
    the left loses s(x, left), and gains s(y, left) less the pair of y with x, who is no longer there; the right the
    other way. A pair counts from both its sides, and a table of n children counts it 1 / (n − 1) times:

        gain = 2 · (s(y, left) − p(x, y) − s(x, left)) / (|left| − 1)
             + 2 · (s(x, right) − p(x, y) − s(y, right)) / (|right| − 1)
    """
    at_left = {place: _with(place, left, pairs) for place in (*left, *right)}
    at_right = {place: _with(place, right, pairs) for place in (*left, *right)}
    for x in left:
        for y in right:
            if x not in settled and y not in settled:
                won_left = at_left[y] - pairs[x][y] - at_left[x]
                won_right = at_right[x] - pairs[x][y] - at_right[y]
                yield Exchange(_mean(2 * won_left, len(left)) + _mean(2 * won_right, len(right)), x, y)


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
    best = max((group for group in groups if len(group) == least), key=lambda group: _with(place, group, pairs))
    best.append(place)


def _even_out(groups: list[list[int]], pairs: Pairs) -> None:
    """Move a child from a largest table to a smallest, the one who gains most by it, until sizes differ by one."""
    while max(map(len, groups)) - min(map(len, groups)) > 1:
        large, small = max(map(len, groups)), min(map(len, groups))
        _, place, giving, taking = max(
            ((_with(place, taking, pairs) - _with(place, giving, pairs), -place, giving, taking)
             for giving in groups if len(giving) == large for place in giving
             for taking in groups if len(taking) == small), key=lambda step: step[:2])
        giving.remove(-place)
        taking.append(-place)


def _mended(groups: list[list[int]], pairs: Pairs) -> list[list[int]]:
    """Make only the exchanges that meet a wish; there are far fewer than would pay by letters."""
    for one, other in combinations(range(len(groups)), 2):
        best = max(exchanges(groups[one], groups[other], pairs), key=lambda each: each.gain, default=_NONE)
        if best.gain > _MET:
            _improved(groups, one, other, pairs, ())
            return _mended(groups, pairs)
    return groups
