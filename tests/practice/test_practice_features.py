"""What is measured on our own strokes, against what can be seen by hand."""

from __future__ import annotations

import pytest

from namewright.letters.strokes import parse_stroke
from namewright.practice.families import Family, family_of
from namewright.practice.features import facing, letter_strokes, oblique_share, visible

LETTERS = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789éÖł"


@pytest.mark.parametrize(("letter", "share"), [("v", 1.0), ("x", 1.0), ("o", 0.0), ("H", 0.0), ("W", 1.0)])
def test_oblique_share(letter: str, share: float) -> None:
    """Letters all of slanting lines, and letters without any."""
    assert oblique_share(letter_strokes(letter) or ()) == pytest.approx(share)


def test_facing_turns_round_with_the_letter() -> None:
    """b and d face opposite ways by the same amount; letters that are their own mirror image face neither way."""
    assert facing("b") == pytest.approx(-facing("d"), abs=0.02)
    assert all(abs(facing(letter)) < 0.03 for letter in "AHIMOTVWXoivwxl08")


@pytest.mark.parametrize("letter", LETTERS)
def test_measures_are_in_their_ranges(letter: str) -> None:
    """Shares are shares, and every letter of the alphabet has strokes to measure."""
    strokes = letter_strokes(letter)
    assert strokes
    assert 0 <= oblique_share(strokes) <= 1
    assert -1 <= facing(letter) <= 1


def test_ink_gone_over_twice_is_seen_once() -> None:
    """A stroke made twice looks like the stroke made once."""
    stroke = parse_stroke("M0 100 V0")
    back = stroke.reversed()
    assert len(visible([stroke, back])) == len(visible([stroke]))


def test_a_sign_we_cannot_draw_has_no_strokes() -> None:
    """No alphabet has everything; nothing is made up for the rest."""
    assert letter_strokes("李") is None
    assert facing("李") == 0.0
    assert family_of("李") is Family.OTHER


@pytest.mark.parametrize(("family", "letters"), [
    (Family.STRAIGHT, "iltEFHILT1"), (Family.ROUND, "acdefgoqsCGOQS"), (Family.DOWN, "bhjmnpruBDJPRU"),
    (Family.SLANT, "kvwxyzAKMNVWXYZ"),
])
def test_families_part_the_alphabet(family: Family, letters: str) -> None:
    """Each letter is in the family whose movement it begins with or is full of; together they are all 52."""
    assert {letter for letter in LETTERS[:52] if family_of(letter) is family} == set(letters) - {"1"}
