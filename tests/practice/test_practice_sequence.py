"""The order of the letters in one name: own initial, bands, look-alikes apart."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import chain, pairwise, permutations, product

import pytest
from hypothesis import example, given, settings
from hypothesis import strategies as st

from namewright.practice.difficulty import Band, LetterDifficulty, name_difficulty
from namewright.practice.sequence import faces_left, look_alike, practice_sequence, similarity


def sequence(name: str) -> tuple[LetterDifficulty, ...]:
    return practice_sequence(name_difficulty(name).letters, name[0])


def touching(letters: Sequence[str]) -> int:
    return sum(look_alike(*pair) for pair in pairwise(letters))


def fewest_touching(first: str, rest: Sequence[LetterDifficulty]) -> int:
    """Try every order of the letters, whatever their bands."""
    return min(touching([first, *order]) for order in permutations([each.letter for each in rest]))


def fewest_in_bands(first: str, rest: Sequence[LetterDifficulty]) -> int:
    """Try every order that keeps the bands."""
    bands = [[each.letter for each in rest if each.band is band] for band in Band]
    return min(touching([first, *chain.from_iterable(order)]) for order in product(*map(permutations, bands)))


@pytest.mark.parametrize(("one", "other", "alike"), [
    ("b", "d", True), ("O", "Q", True), ("a", "o", True), ("é", "ĉ", False), ("ô", "ç", True),
    ("u", "v", False), ("e", "c", False), ("b", "D", False), ("a", "a", False),
    ("l", "ł", True), ("Ø", "O", True), ("ø", "a", True), ("Ł", "l", False), ("ł", "Ł", False),
    ("n", "u", True), ("b", "q", True),  # rated below 5.0, and turned twins in our alphabet
])
def test_look_alikes(one: str, other: str, alike: bool) -> None:
    """Look-alikes are rated 5.0 or more or are twins, in one case, marks aside; the order of the two is no matter."""
    assert look_alike(one, other) is look_alike(other, one) is alike


def test_small_a_is_the_single_storey_one() -> None:
    """Small a beside o has the rating of the a that children print, 5.00, not of the two-storey a, 3.13."""
    assert similarity("a", "o") == 5.00


@pytest.mark.parametrize(("letter", "watched"), [
    ("J", True), ("d", True), ("ď", True), ("j", True), ("3", True), ("b", False), ("C", False), ("Z", False),
    ("и", False),
])
def test_left_facing_letters_are_watched(letter: str, watched: bool) -> None:
    """J, d and 3 face left and are named so in studies, j by its strokes; b and C face right; Z faces neither way."""
    assert faces_left(letter) is watched


@given(st.text("ABDMOQbdpqgilhncoavyjwuké", min_size=1, max_size=12))
def test_initial_then_every_letter_once(name: str) -> None:
    """Every different letter comes once, the own initial first."""
    ordered = sequence(name)
    assert sorted(each.letter for each in ordered) == sorted(set(name))
    assert ordered[0].letter == name[0]


@settings(max_examples=60, deadline=None)
@given(st.text("ABDMOQbdpqgilhncoöavyjw", min_size=2, max_size=7))
@example("Mcoöa")  # no pair need touch, and in the easier band one must
def test_as_few_look_alikes_touch_as_can_be(name: str) -> None:
    """No order of the letters parts more look-alikes; the bands step back only where that parts more."""
    ordered = sequence(name)
    fewest = touching([each.letter for each in ordered])
    assert fewest == fewest_touching(name[0], ordered[1:])
    steps = [list(Band).index(each.band) for each in ordered[1:]]
    assert (steps == sorted(steps)) == (fewest == fewest_in_bands(name[0], ordered[1:]))


@pytest.mark.parametrize(("name", "order"), [("Mario", "Morai"), ("Lao", "Loa"), ("Noelia", "Noelai")])
def test_a_and_o_stand_apart_where_the_name_leaves_a_way(name: str, order: str) -> None:
    """a and o, the look-alikes that meet most often, are parted by a letter of the next band; Lao leaves no way."""
    assert "".join(each.letter for each in sequence(name)) == order


def test_a_name_without_look_alikes_or_bridges_keeps_its_own_order() -> None:
    """Inside a band, letters stay as they come in the name unless there is a reason to move them."""
    assert [each.letter for each in sequence("Merten")] == ["M", "e", "r", "t", "n"]


@pytest.mark.parametrize(("name", "order"), [
    ("Mertens", "Msertn"),  # s has the shape of S; e r t n have not that of their capitals
    ("Lars", "Lasr"),       # a is in an easier band, and bands go before bridges
    ("Petsp", "Ppset"),     # from P to p before S to s
])
def test_capitals_lead_to_the_small_letters_of_their_shape(name: str, order: str) -> None:
    """Inside a band the small form of the own initial goes first, then letters shaped like their capitals."""
    assert "".join(each.letter for each in sequence(name)) == order


def test_an_unavoidable_pair_is_not_lost() -> None:
    """Where look-alikes must touch, they do, and no letter goes missing."""
    assert [each.letter for each in sequence("Mil")] == ["M", "i", "l"]


def test_a_text_that_is_no_name_comes_back_at_once() -> None:
    """Thousands of different signs are put in bands without a search."""
    text = "M" + "".join(map(chr, range(0x4E00, 0x4E00 + 2000)))
    assert len(sequence(text)) == 2001
