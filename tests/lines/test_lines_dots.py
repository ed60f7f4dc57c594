"""Dots have a rhythm: never a clot, never a hole, and the ends of a stroke are always marked."""

from __future__ import annotations

import math
from functools import cache
from itertools import combinations, pairwise

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.spatial.distance import cdist

from namewright.geometry.points import Point
from namewright.geometry.polylines import evenly
from namewright.geometry.segments import corner_degrees, flatten
from namewright.letters.alphabet import Alphabet, upright
from namewright.letters.strokes import Stroke
from namewright.lines.dots import dots
from namewright.lines.forms import pens_for
from namewright.lines.ruling import PRESETS, Ruling, custom_ruling, preset
from namewright.lines.setting import InkLetter, ink_letter

LETTERS = (*upright().glyphs, *"äéñőǘệữąșḿÅÇŲíģť")
RULINGS = ("de-6", "us-3/4", "us-1-1/8", "us-3/8", "fr-2", "fr-3", "uk-5", "es-2.5", "unlined", "au-24")
MIN_APART = 0.7 * 0.88  # of the pitch: what the design asks of the pitch that a letter takes, at least an eighth less


@cache
def dotted(letter: str, ruling: Ruling) -> tuple[InkLetter, tuple[Point, ...], float]:
    """Return a letter on a ruling, its dots, and their pitch in mm."""
    ink = ink_letter(upright().letter(letter), ruling)
    pitch = pens_for(ruling).pitch_mm
    return ink, dots(ink.strokes, pitch), pitch


@cache
def tracks_of(letter: str, ruling: Ruling) -> tuple[np.ndarray, ...]:
    """Return 201 points along each stroke of a letter, in its order."""
    ink, *_ = dotted(letter, ruling)
    return tuple(np.array(evenly(flatten(stroke.segments, 0.01), 200)) for stroke in ink.strokes)


def nearest(points: np.ndarray, others: np.ndarray) -> np.ndarray:
    """Return the distance from each point to the nearest of the others."""
    return cdist(points, others).min(axis=1)


@pytest.mark.parametrize("ruling", RULINGS)
def test_no_two_dots_clot(ruling: str) -> None:
    """In every letter on every ruling, two dots are at least 0.7 of its own pitch apart."""
    for letter in LETTERS:
        _, placed, pitch = dotted(letter, preset(ruling))
        for a, b in combinations(placed, 2):
            assert math.dist(a, b) >= MIN_APART * pitch - 1e-9, letter


@given(st.sampled_from(LETTERS), st.floats(4, 60), st.floats(0.35, 0.7), st.floats(1, 30))
def test_no_two_dots_clot_on_a_ruling_of_ones_own(letter: str, height: float, midline: float, depth: float) -> None:
    """The same on any ruling a specialist may ask for."""
    _, placed, pitch = dotted(letter, custom_ruling(height, midline=midline, descender_mm=depth))
    assert all(math.dist(a, b) >= MIN_APART * pitch - 1e-9 for a, b in combinations(placed, 2))


@pytest.mark.parametrize("ruling", RULINGS)
def test_no_stroke_has_a_hole(ruling: str) -> None:
    """From any point of any stroke a dot is less than one pitch away: the eye can follow the line."""
    for letter in LETTERS:
        _, placed, pitch = dotted(letter, preset(ruling))
        for track in tracks_of(letter, preset(ruling)):
            assert nearest(track, np.array(placed)).max() < pitch, letter


def touches_itself(stroke: Stroke) -> bool:
    """Say whether a stroke comes back to a place where it was, as in a, o and 8, or goes over its own track."""
    points = np.array(evenly(flatten(stroke.segments, 0.01), 300))
    gaps = np.sqrt(((points[:, None] - points[None, :]) ** 2).sum(axis=2)) / stroke.length()
    along = np.abs(np.subtract.outer(np.arange(301), np.arange(301))) / 300
    back = any(corner_degrees(a, b) > 150 for a, b in pairwise(stroke.segments) if len(a) == len(b) == 2
               and {a[0][0], a[1][0]} == {b[0][0], b[1][0]})
    return back or bool(((along > 0.25) & (gaps < 0.05)).any())


def lone(letter: str) -> bool:
    """Say whether a letter is one stroke that travels and never touches itself."""
    drawn = upright().letter(letter)
    first, *others = drawn.base.strokes
    return not (others or drawn.marks or first.is_dot or touches_itself(first))


LONE = tuple(filter(lone, upright().glyphs))


def test_there_are_lone_strokes_to_look_at() -> None:
    """The sieve above keeps the letters it is meant to keep, and only such."""
    assert set(LONE) >= set("clsvwzCJLSUVWZ127")
    assert set(LONE).isdisjoint("abdeghimnopqruOPQ0689")


@pytest.mark.parametrize("ruling", RULINGS)
def test_a_lone_stroke_has_a_dot_at_both_ends_and_at_each_corner(ruling: str) -> None:
    """A stroke that meets no other has a dot where it begins, where it ends, and where the pencil turns."""
    for letter in LONE:
        ink, placed, _ = dotted(letter, preset(ruling))
        (stroke,) = ink.strokes
        corners = [a[-1] for a, b in pairwise(stroke.segments) if corner_degrees(a, b) > 45]
        for point in (stroke.start, stroke.end, *corners):
            assert min(math.dist(point, dot) for dot in placed) < 1e-6, letter


def free_standing(letter: str, ruling: Ruling) -> list[Stroke]:
    """Return the straight strokes of a letter that no other stroke comes near."""
    (ink, _, pitch), tracks = dotted(letter, ruling), tracks_of(letter, ruling)
    return [stroke for at, stroke in enumerate(ink.strokes)
            if len(stroke.segments) == 1 and len(stroke.segments[0]) == 2 and not stroke.is_dot
            and all(nearest(tracks[at], track).min() > 1.01 * pitch
                    for other, track in enumerate(tracks) if other != at)]


@pytest.mark.parametrize("ruling", RULINGS)
def test_free_standing_straight_strokes_are_dotted_evenly(ruling: str) -> None:
    """Along a straight stroke that nothing meets, all steps from dot to dot are equal to 1 %."""
    seen = 0
    for letter in LETTERS:
        _, placed, _ = dotted(letter, preset(ruling))
        for stroke in free_standing(letter, preset(ruling)):
            length = stroke.length()
            on_it = sorted(math.dist(dot, stroke.start) for dot in placed
                           if math.dist(dot, stroke.start) + math.dist(dot, stroke.end) < length + 1e-6)
            steps = np.diff(on_it)
            assert on_it[0] == pytest.approx(0, abs=1e-6), letter
            assert on_it[-1] == pytest.approx(length, abs=1e-6), letter
            assert steps.max() <= 1.01 * steps.min(), letter
            seen += 1
    assert seen >= 8


def test_the_pitch_stays_near_its_wish(alphabet: Alphabet) -> None:
    """A stem as long as several pitches is dotted within a fifth of the pitch asked for, up or down."""
    for ruling in PRESETS.values():
        ink = ink_letter(alphabet.letter("l"), ruling)
        pitch = pens_for(ruling).pitch_mm
        first, second, *_ = sorted(y for _, y in dots(ink.strokes, pitch))
        assert second - first == pytest.approx(pitch, rel=0.2)
