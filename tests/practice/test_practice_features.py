"""Features of letters, measured on our own strokes, against what can be counted by hand."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from namewright.letters.strokes import parse_stroke
from namewright.practice.families import Family, family_of
from namewright.practice.features import facing, letter_features, letter_strokes, visible

LETTERS = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789éÖł"


@pytest.mark.parametrize(("letter", "strokes", "crossings", "changes"), [
    ("l", 1, 0, 0), ("x", 2, 1, 0), ("t", 2, 1, 0), ("f", 2, 1, 0), ("A", 3, 0, 0), ("M", 2, 0, 3),
    ("z", 1, 0, 2), ("S", 1, 0, 1), ("w", 1, 0, 3), ("8", 1, 1, 2), ("i", 2, 0, 0), ("é", 2, 0, 1),
    ("L", 1, 0, 1), ("Q", 2, 1, 0), ("k", 2, 0, 1), ("4", 2, 1, 1),
])
def test_counts_are_those_of_the_hand(letter: str, strokes: int, crossings: int, changes: int) -> None:
    """Strokes, places where strokes cross (not only touch), and corners or swings, counted by hand."""
    features = letter_features(letter)
    assert features is not None
    assert (features.strokes, features.lifts) == (strokes, strokes - 1)
    assert (features.crossings, features.changes) == (crossings, changes)


@pytest.mark.parametrize(("letter", "path", "turning"), [("l", 200, 0), ("L", 290, 90), ("t", 258, 0), ("E", 462, 0)])
def test_path_and_turning_in_closed_form(letter: str, path: float, turning: float) -> None:
    """Letters of straight lines: the path is the sum of their lengths, the turning that of their corners."""
    features = letter_features(letter)
    assert features is not None
    assert features.path == pytest.approx(path, abs=0.01)
    assert features.turning == pytest.approx(turning, abs=0.01)


@pytest.mark.parametrize(("letter", "share"), [
    ("d", 170 / 637), ("a", 70 / 437), ("l", 0.0), ("O", 0.0), ("n", 62 / 345),
])
def test_retraced_share_is_that_of_the_stem(letter: str, share: float) -> None:
    """d goes up its stem for 170 units of 637 and comes down again; within the step of the measure (two points)."""
    features = letter_features(letter)
    assert features is not None
    assert features.retraced == pytest.approx(share, abs=0.025)


@pytest.mark.parametrize(("letter", "share"), [("v", 1.0), ("x", 1.0), ("o", 0.0), ("H", 0.0), ("W", 1.0)])
def test_oblique_share(letter: str, share: float) -> None:
    """Letters all of slanting lines, and letters without any."""
    features = letter_features(letter)
    assert features is not None
    assert features.oblique == pytest.approx(share)


def test_facing_turns_round_with_the_letter() -> None:
    """b and d face opposite ways by the same amount; letters that are their own mirror image face neither way."""
    assert facing("b") == pytest.approx(-facing("d"), abs=0.02)
    assert all(abs(facing(letter)) < 0.03 for letter in "AHIMOTVWXoivwxl08")


@given(st.sampled_from(LETTERS))
def test_features_are_in_their_ranges(letter: str) -> None:
    """Shares are shares, and every letter of the alphabet has features."""
    features = letter_features(letter)
    assert features is not None
    assert 0 <= features.oblique <= 1
    assert 0 <= features.retraced < 1
    assert -1 <= features.facing <= 1
    assert not (features.faces_left and features.faces_right)


def test_ink_gone_over_twice_is_seen_once() -> None:
    """A stroke made twice looks like the stroke made once."""
    stroke = parse_stroke("M0 100 V0")
    back = stroke.reversed()
    assert len(visible([stroke, back])) == len(visible([stroke]))


def test_a_sign_we_cannot_draw_has_no_features() -> None:
    """No alphabet has everything; nothing is made up for the rest."""
    assert letter_features("李") is None
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
