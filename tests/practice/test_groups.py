"""Tables: everyone at one, even, steady, wishes met. Names are invented."""

from __future__ import annotations

import random
from collections.abc import Sequence
from itertools import combinations
from statistics import fmean

import pytest
from hypothesis import given
from hypothesis import strategies as st

from namewright.practice.groups import Grouping, group_class, numbered, shared_letters, usual_tables
from namewright.practice.table_worth import NO_GAIN, best_exchange, broken, pair_worth, sums_with, wished, worth
from namewright.practice.weeks import letters_of
from namewright.settings import Support


def names_of(count: int, seed: int) -> list[str]:
    rng = random.Random(seed)
    found: dict[str, None] = {}
    while len(found) < count:
        beats = ("".join((rng.choice("bcdfghjklmnprstvwyz"), rng.choice("aeiou"))) for _ in range(rng.randint(1, 3)))
        found["".join(beats) + rng.choice(["", "n", "s", "r"])] = None
    return list(found)


def pairs_of(names: Sequence[str], levels: Sequence[Support] = ()) -> list[list[int]]:
    return pair_worth([letters_of(name) for name in names], levels or [Support.FULL] * len(names))


def grouped(names: Sequence[str], tables: int | None = None, before: Sequence[Sequence[int]] = ()) -> Grouping:
    return group_class(pairs_of(names), names, tables, before)


def together(groups: Grouping, names: Sequence[str]) -> set[frozenset[str]]:
    return {frozenset((names[a], names[b])) for group in groups for a, b in combinations(group, 2)}


@given(st.lists(st.text("AEMbdeilnoé- ", max_size=6), max_size=24), st.none() | st.integers(1, 9))
def test_everyone_is_at_one_table_and_tables_are_even(names: list[str], tables: int | None) -> None:
    """Each child is at one; sizes differ by one at most; as many as asked for, or three to five children each."""
    found = grouped(names, tables)
    sizes = [len(group) for group in found]
    assert sorted(place for group in found for place in group) == list(range(len(names)))
    assert not sizes or max(sizes) - min(sizes) <= 1
    assert len(found) == min(len(names), tables or usual_tables(len(names)))
    assert tables or len(names) < 6 or all(3 <= size <= 5 for size in sizes)
    assert grouped(names, tables) == found


@given(st.integers(2, 40), st.integers(0, 99))
def test_no_two_children_would_be_better_off_changing_seats(count: int, seed: int) -> None:
    """Exchanging goes on until nothing is gained any more, by whichever tables it went."""
    pairs = pairs_of(names_of(count, seed))
    found = group_class(pairs, names_of(count, seed))
    for one, other in combinations(found, 2):
        assert best_exchange(one, other, sums_with(one, pairs), sums_with(other, pairs), pairs) is NO_GAIN


def test_twenty_four_children_at_five_tables() -> None:
    """Four of five and one of four."""
    assert sorted(map(len, grouped(names_of(24, 1), 5))) == [4, 5, 5, 5, 5]


def test_the_order_of_the_roster_is_no_matter() -> None:
    """The same children, listed otherwise, are at the same tables."""
    names = names_of(17, 5)
    shuffled = random.Random(1).sample(names, len(names))
    assert together(grouped(names), names) == together(grouped(shuffled), shuffled)


def test_children_who_need_like_help_sit_together() -> None:
    """Of names alike, half with full support and half with none, each table has one level of help."""
    names = [f"Bo{'abcdefgh'[at]}" for at in range(8)]
    levels = [Support.FULL if at % 2 else Support.INDEPENDENT for at in range(8)]
    found = group_class(pairs_of(names, levels), names, 2)
    assert sorted({levels[at] for at in group} for group in found) == [{Support.FULL}, {Support.INDEPENDENT}] or all(
        len({levels[at] for at in group}) == 1 for group in found)


@given(st.integers(8, 16), st.sets(st.tuples(st.integers(0, 7), st.integers(0, 7)).filter(lambda p: p[0] < p[1]),
                                   max_size=3), st.integers(0, 5))
def test_wishes_are_met_wherever_they_can_be(count: int, apart: set[tuple[int, int]], seed: int) -> None:
    """Up to three pairs who must not sit together never do, and one pair who must always does."""
    names = names_of(count, seed)
    asked = [(0, count - 1)]
    apart -= set(asked)
    table = wished(pairs_of(names), asked, apart)
    assert broken(group_class(table, names, 3), asked, apart) == ()
    before = grouped(names, 3)
    assert broken(group_class(table, names, 3, before), asked, apart) == ()


def test_wishes_that_contradict_each_other_are_told() -> None:
    """Ada with Bo, Bo with Cy, and Ada not with Cy: whatever is done, one of them is not met."""
    names = names_of(9, 2)
    asked, apart = [(0, 1), (1, 2)], [(0, 2)]
    assert len(broken(group_class(wished(pairs_of(names), asked, apart), names, 3), asked, apart)) == 1


@pytest.mark.parametrize("count", [6, 7, 11, 12, 16, 18, 24, 30])
def test_who_joins_moves_nobody_and_who_leaves_moves_one_at_most(count: int) -> None:
    """One more child takes a seat that is free; one fewer leaves a gap that one child fills, if it is too wide.

    Where every table was full, a new one is opened with three or more.
    """
    for seed in range(8):
        names = names_of(count, 7 * count + seed)
        before = grouped(names)
        joined = grouped([*names, "Wupix"], before=before)
        full = all(len(group) == 5 for group in before)
        assert together(before, names) <= together(joined, [*names, "Wupix"]) or full
        gone = names[:seed % count] + names[seed % count + 1:]
        old = [[gone.index(names[place]) for place in group if names[place] in gone] for group in before]
        number = numbered(grouped(gone, before=old), {place: at for at, group in enumerate(old, 1) for place in group})
        moved = sum(number[place] != at for at, group in enumerate(old, 1) for place in group)
        assert moved <= 1 or len(gone) == 5


@given(st.integers(3, 16), st.lists(st.lists(st.integers(0, 15), max_size=7), max_size=6))
def test_any_groups_of_last_time_are_mended(count: int, drawn: list[list[int]]) -> None:
    """Whatever sizes last time's tables had, everyone ends at one table and they are even."""
    seen: set[int] = set()
    before = []
    for group in drawn:
        fresh = [place for place in dict.fromkeys(group) if place < count and place not in seen]
        seen |= set(fresh)
        before.append(fresh)
    found = grouped(names_of(count, 3), before=before)
    sizes = [len(group) for group in found]
    assert sorted(place for group in found for place in group) == list(range(count))
    assert max(sizes) - min(sizes) <= 1
    assert max(sizes) <= 5


@pytest.mark.parametrize("before", [[[0, 1], [1, 2]], [[0, 9]], [[-1, 0]]])
def test_groups_of_another_class_are_refused(before: list[list[int]]) -> None:
    """A child named twice, or one who is not there, is said in a sentence."""
    with pytest.raises(ValueError, match="leave them out"):
        grouped(["Ada", "Bo", "Cy"], before=before)


def test_shared_letters_are_those_of_two_or_more() -> None:
    """Letters of most names first; a letter of one child alone is not shared."""
    assert shared_letters(["Ada", "Dana", "Nela"]) == ("a", "d", "n")
    assert shared_letters(["Ada"]) == ()


def test_several_who_join_are_placed_well_among_those_who_stay() -> None:
    """Half of the class is new: the tables are worth 78 % of new ones or more on the mean of 20 classes."""
    ratios = []
    for seed in range(20):
        names = names_of(24, seed)
        before = grouped(names[:12])
        pairs = pairs_of(names)
        ratios.append(worth(grouped(names, before=before), pairs) / worth(grouped(names), pairs))
    assert fmean(ratios) >= 0.78


def test_groups_of_a_class_that_is_mostly_new_are_made_anew() -> None:
    """Where fewer than half had a table, nothing is worth keeping."""
    names = names_of(24, 1)
    assert grouped(names, before=[[0, 5, 10], [1, 6, 11, 16]]) == grouped(names)


@pytest.mark.parametrize(("groups", "before", "numbers"), [
    (((0, 1, 2), (3, 4, 5)), {}, [1, 1, 1, 2, 2, 2]),
    (((0, 1, 2), (3, 4, 5)), {0: 2, 1: 2, 3: 1}, [2, 2, 2, 1, 1, 1]),       # kept, whatever the order of the list
    (((0, 1, 2), (3, 4, 5)), {3: 7, 4: 7}, [1, 1, 1, 7, 7, 7]),             # a new group takes what is free
    (((0, 1, 2), (3, 4, 5)), {0: 1, 3: 1, 4: 1}, [2, 2, 2, 1, 1, 1]),       # parted: the larger part keeps it
    (((0, 1, 2), (3, 4, 5)), {0: 3, 1: 3, 2: 3, 3: 3}, [3, 3, 3, 1, 1, 1]),
    (((0, 1, 2),), {0: 4, 1: 2, 2: 2}, [2, 2, 2]),
])
def test_a_group_keeps_its_number(groups: Grouping, before: dict[int, int], numbers: list[int]) -> None:
    """The number goes with most of its children; no two groups have one, and new ones take the lowest free."""
    assert [number for _, number in sorted(numbered(groups, before).items())] == numbers
