"""Groups of three to five: everyone in one, steady, and as good as every grouping tried. Names are invented."""

from __future__ import annotations

import random
from collections.abc import Iterator
from itertools import combinations
from statistics import fmean

import pytest
from hypothesis import given
from hypothesis import strategies as st

from namewright.practice import groups as module
from namewright.practice.groups import Grouping, group_class, numbered, shared_letters, worth
from namewright.practice.weeks import letters_of


def names_of(count: int, seed: int) -> list[str]:
    rng = random.Random(seed)
    found: dict[str, None] = {}
    while len(found) < count:
        beats = ("".join((rng.choice("bcdfghjklmnprstvwyz"), rng.choice("aeiou"))) for _ in range(rng.randint(1, 3)))
        found["".join(beats) + rng.choice(["", "n", "s", "r"])] = None
    return list(found)


def every_grouping(places: list[int]) -> Iterator[list[list[int]]]:
    """Every way to part the places into sets, whatever their sizes: written apart from the module."""
    if not places:
        yield []
        return
    first, rest = places[0], places[1:]
    for parts in every_grouping(rest):
        yield [[first], *parts]
        for at in range(len(parts)):
            yield [*parts[:at], [first, *parts[at]], *parts[at + 1:]]


def pairs(groups: Grouping, names: list[str]) -> set[frozenset[str]]:
    return {frozenset((names[a], names[b])) for group in groups for a, b in combinations(group, 2)}


@given(st.lists(st.text("AEMbdeilnoé- ", max_size=6), max_size=24))
def test_everyone_is_in_one_group_of_the_right_size(names: list[str]) -> None:
    """Each child is in one group; groups have three to five, and a class too small for that is one group."""
    found = group_class(names)
    assert sorted(place for group in found for place in group) == list(range(len(names)))
    assert all(3 <= len(group) <= 5 for group in found) or len(names) < 3 or len(found) == 1
    assert group_class(names) == found


@pytest.mark.parametrize("count", [6, 7, 8, 9])
@pytest.mark.parametrize("seed", range(3))
def test_up_to_nine_children_no_grouping_is_better(count: int, seed: int) -> None:
    """The worth is that of the best of all set partitions with groups of three to five."""
    names = names_of(count, 100 * count + seed)
    sets = [letters_of(name) for name in names]
    allowed = (groups for groups in every_grouping(list(range(count))) if all(3 <= len(one) <= 5 for one in groups))
    assert worth(group_class(names), sets) == pytest.approx(max(worth(groups, sets) for groups in allowed))


def test_greedy_and_exchange_come_near_the_best(monkeypatch: pytest.MonkeyPatch) -> None:
    """What is done in large classes, done on small ones: on the mean over 60 classes 98 % of the best or more."""
    ratios = []
    for seed in range(60):
        names = names_of(6 + seed % 4, seed)
        sets = [letters_of(name) for name in names]
        best = worth(group_class(names), sets)
        with monkeypatch.context() as patch:
            patch.setattr(module, "TRIED_WHOLE", 0)
            ratios.append(worth(group_class(names), sets) / best)
    assert max(ratios) <= 1 + 1e-9
    assert fmean(ratios) >= 0.98


def test_the_order_of_the_roster_is_no_matter() -> None:
    """The same children, listed otherwise, are in the same groups."""
    names = names_of(17, 5)
    shuffled = random.Random(1).sample(names, len(names))
    assert pairs(group_class(names), names) == pairs(group_class(shuffled), shuffled)


@pytest.mark.parametrize("count", [12, 18, 24])
def test_groups_of_last_time_hold_when_one_joins_or_leaves(count: int) -> None:
    """From last time's groups, nine in ten pairs or more stay together, on the mean, and sizes stay right.

    Measured: 98 % of pairs stay; without last time's groups it is 62 to 74 %.
    """
    kept = []
    for seed in range(12):
        names = names_of(count, seed)
        before = group_class(names)
        gone = names[: seed % count] + names[seed % count + 1:]
        for now in (gone, [*names, "Wupix"]):
            old = [[now.index(names[place]) for place in group if names[place] in now] for group in before]
            after = group_class(now, old)
            assert all(3 <= len(group) <= 5 for group in after)
            still = {pair for pair in pairs(before, names) if pair <= set(now)}
            kept.append(len(still & pairs(after, now)) / len(still))
    assert fmean(kept) >= 0.9


@given(st.integers(3, 16), st.lists(st.lists(st.integers(0, 15), max_size=7), max_size=6))
def test_any_groups_of_last_time_are_mended(count: int, drawn: list[list[int]]) -> None:
    """Whatever sizes last time's groups had, everyone ends in one group of the right size."""
    seen: set[int] = set()
    before = []
    for group in drawn:
        fresh = [place for place in dict.fromkeys(group) if place < count and place not in seen]
        seen |= set(fresh)
        before.append(fresh)
    found = group_class(names_of(count, 3), before)
    assert sorted(place for group in found for place in group) == list(range(count))
    assert all(3 <= len(group) <= 5 for group in found)


@pytest.mark.parametrize("before", [[[0, 1], [1, 2]], [[0, 9]], [[-1, 0]]])
def test_groups_of_another_class_are_refused(before: list[list[int]]) -> None:
    """A child named twice, or one who is not there, is said in a sentence."""
    with pytest.raises(ValueError, match="leave them out"):
        group_class(["Ada", "Bo", "Cy"], before)


def test_shared_letters_are_those_of_two_or_more() -> None:
    """Letters of most names first; a letter of one child alone is not shared."""
    assert shared_letters(["Ada", "Dana", "Nela"]) == ("a", "d", "n")
    assert shared_letters(["Ada"]) == ()


@pytest.mark.parametrize("count", [6, 7, 11, 16, 25, 30])
def test_who_joins_moves_nobody_and_who_leaves_moves_two_at_most(count: int) -> None:
    """One more child joins a group with room, or parts one where all are full; one fewer ends a group at most."""
    for seed in range(8):
        names = names_of(count, 7 * count + seed)
        before = group_class(names)
        joined = group_class([*names, "Wupix"], before)
        assert pairs(before, names) - pairs(joined, [*names, "Wupix"]) == set() or all(map(_is_full, before))
        gone = names[:seed % count] + names[seed % count + 1:]
        old = [[gone.index(names[place]) for place in group if names[place] in gone] for group in before]
        number = numbered(group_class(gone, old), {place: at for at, group in enumerate(old, 1) for place in group})
        assert sum(number[place] != at for at, group in enumerate(old, 1) for place in group) <= 2


def _is_full(group: tuple[int, ...]) -> bool:
    return len(group) == module.MOST


def test_several_who_join_are_placed_well_among_those_who_stay() -> None:
    """Nobody who stays is moved, and the grouping is worth 78 % of a new one or more on the mean of 20 classes.

    Half of the class is new. Measured: 81 %; without exchanging those who are new with one another it is 73 %.
    """
    ratios = []
    for seed in range(20):
        names = names_of(24, seed)
        before = group_class(names[:12])
        found = group_class(names, before)
        assert pairs(before, names[:12]) <= pairs(found, names)
        sets = [letters_of(name) for name in names]
        ratios.append(worth(found, sets) / worth(group_class(names), sets))
    assert fmean(ratios) >= 0.78


def test_groups_of_a_class_that_is_mostly_new_are_made_anew() -> None:
    """Where fewer than half had a group, nothing is worth keeping; where half had one, it is kept."""
    names = names_of(24, 1)
    assert group_class(names, [[0, 5, 10], [1, 6, 11, 16]]) == group_class(names)
    half = [[0, 5, 10, 15], [1, 6, 11, 16], [2, 7, 12, 17]]
    assert pairs(tuple(map(tuple, half)), names) <= pairs(group_class(names, half), names)


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
