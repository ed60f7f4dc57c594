"""Shapes laid over one another: distances, twins, and capitals that lead to small letters."""

from __future__ import annotations

from itertools import permutations
from string import ascii_lowercase, ascii_uppercase

import pytest

from namewright.practice.likeness import (
    Turn,
    distance,
    gap,
    looks_like_its_capital,
    measured_twin,
    shape,
    turned,
    twin,
)


@pytest.mark.parametrize("letter", ["b", "R", "s", "é"])
def test_a_letter_is_at_no_distance_from_itself(letter: str) -> None:
    """The same shape is at 0, and turning twice brings it back."""
    assert distance(letter, letter) == 0.0
    for turn in Turn:
        assert gap(shape(letter), turned(turned(shape(letter), turn), turn)) == pytest.approx(0.0, abs=1e-6)


def test_distance_is_the_same_both_ways() -> None:
    """Which letter is named first is no matter."""
    assert all(distance(a, b) == pytest.approx(distance(b, a)) for a, b in ("bd", "co", "hk", "il"))


@pytest.mark.parametrize(("nearer", "farther"), [("co", "cx"), ("hn", "hs"), ("il", "io"), ("bd", "bx"), ("vy", "va")])
def test_alike_is_nearer(nearer: str, farther: str) -> None:
    """A pair anybody would call alike is nearer than one nobody would."""
    assert distance(*nearer) < distance(*farther)


@pytest.mark.parametrize(("pair", "turn"), [
    ("bd", Turn.MIRROR), ("pq", Turn.MIRROR), ("bp", Turn.TIPPED), ("dq", Turn.TIPPED), ("bq", Turn.HALF),
    ("dp", Turn.HALF), ("nu", Turn.HALF), ("co", None), ("ae", None), ("mw", None), ("bb", None), ("il", None),
])
def test_twins_and_how_they_turn(pair: str, turn: Turn | None) -> None:
    """b mirrored is d, n turned is u; our m has arches and w has points, so these two are not near enough."""
    assert twin(*pair) is turn
    assert twin(*reversed(pair)) is turn


@pytest.mark.parametrize("letters", [ascii_lowercase, ascii_uppercase])
def test_the_twins_found_beforehand_are_those_of_the_strokes(letters: str) -> None:
    """Whoever changes a letter is told here when its twins change."""
    for pair in permutations(letters, 2):
        assert twin(*pair) is measured_twin(*pair), pair


def test_w_is_the_letter_that_comes_nearest_to_a_turned_m() -> None:
    """Of the other small letters as wide, w is the nearest to m turned by half."""
    others = [letter for letter in "abcdefghijklnopqrstuvwxyz"
              if abs(max(x for x, *_ in shape(letter)) - max(x for x, *_ in shape("m"))) < 12.5]
    assert min(others, key=lambda letter: gap(turned(shape("m"), Turn.HALF), shape(letter))) == "w"


def test_capitals_that_lead_to_small_letters() -> None:
    """The small letters with the shape of their capital, brought to one height."""
    assert {letter for letter in "abcdefghijklmnopqrstuvwxyz" if looks_like_its_capital(letter)} == set("cjopsuvwxz")
    assert not looks_like_its_capital("C")
    assert not looks_like_its_capital("ß")


def test_what_cannot_be_drawn_is_like_nothing() -> None:
    """No shape: infinitely far, no twin, no bridge."""
    assert distance("李", "a") == float("inf")
    assert twin("李", "a") is None
    assert not looks_like_its_capital("и")
