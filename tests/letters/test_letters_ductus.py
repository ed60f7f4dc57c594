"""How the letters are written: where a stroke starts, which way it goes, and how look-alikes differ.

The rules are common practice in the teaching of manuscript letters: from the top down, from left to right,
round letters anticlockwise from two o'clock; letters that children mix up begin with different movements.
"""

from __future__ import annotations

import math

import pytest

from namewright.geometry.points import Point
from namewright.geometry.segments import Cubic, Line, Segment, flatten
from namewright.letters.alphabet import Alphabet, upright
from namewright.letters.strokes import Stroke

SMALL = "abcdefghijklmnopqrstuvwxyz"
CAPITALS = "ABCDEFGHIJKLMNOPQRSTUVWXYZ"
LETTERS = tuple(char for char in upright().glyphs if char.isalpha() and char not in "ʻʼ")

# Where a first stroke sets out upwards, and why.
ROUND = "begins at two o'clock and goes up over the top"
RISING = (dict.fromkeys("acdgoqsæœøđɗCGOQSØ", ROUND) | {
    "f": "the hook goes up over the top before the stem comes down",
    "ɓ": "as f", "ƙ": "as f",
    "ß": "the stem is written upwards and runs on into the two bows without a lift", "ẞ": "as ß",
    "ə": "mirrors the rule of the round letters: its open side is at the left", "Ə": "as ə",
    "Œ": "its bow begins at the top, where the stem will stand, and sets out to the left",
})
# Strokes of one straight line that rise.
RISING_BARS = {"ð": "its bar slants up through the stem, from left to right"}


def heading(segment: Segment) -> float:
    """Return the direction in which a segment sets out, in degrees: 0 right, 90 up, −90 down."""
    (x0, y0) = segment[0]
    x1, y1 = next(point for point in segment[1:] if point != segment[0])
    return math.degrees(math.atan2(y1 - y0, x1 - x0))


def first_stroke(char: str) -> Stroke:
    """Return the first stroke of a letter."""
    return upright().glyphs[char].strokes[0]


def signed_area(points: list[Point]) -> float:
    """Return the area enclosed by a path closed by its chord: positive anticlockwise with y up (shoelace formula)."""
    return sum(ax * by - bx * ay for (ax, ay), (bx, by) in zip(points, [*points[1:], points[0]], strict=True)) / 2


def bowl(stroke: Stroke) -> list[Point]:
    """Return the curved run with which a stroke begins, as a polyline."""
    curves = []
    for segment in stroke.segments:
        if isinstance(segment, Line):
            break
        curves.append(segment)
    return flatten(curves, 0.1)


def starts_with_stem(char: str) -> bool:
    """Say whether the pencil first goes straight down."""
    first = first_stroke(char).segments[0]
    return len(first) == 2 and abs(heading(first) + 90) < 1


@pytest.mark.parametrize(("stem", "bow"), [("b", "d"), ("p", "q"), ("þ", "q"), ("b", "g"), ("h", "a")])
def test_mirror_letters_begin_differently(stem: str, bow: str) -> None:
    """Of two letters that mirror each other one begins straight down, the other with its bow, leftwards."""
    assert starts_with_stem(stem)
    first = first_stroke(bow).segments[0]
    assert len(first) == 4
    assert first[-1][0] < first[0][0]


@pytest.mark.parametrize(("arch", "valley"), [("n", "u"), ("m", "w"), ("h", "y"), ("r", "v")])
def test_turned_letters_begin_differently(arch: str, valley: str) -> None:
    """Of two letters that are each other turned, one comes down and goes back up its stem, the other never does."""
    assert starts_with_stem(arch)
    stroke = first_stroke(arch).segments
    assert abs(heading(stroke[1]) - 90) < 1
    assert stroke[1][0][0] == stroke[1][-1][0] == stroke[0][0][0]
    path = first_stroke(valley).segments
    into_valley = next(at for at, segment in enumerate(path) if segment[-1][1] == 0)
    assert path[min(into_valley + 1, len(path) - 1)][-1][0] != path[into_valley][0][0]


@pytest.mark.parametrize("char", ["a", "c", "d", "g", "o", "q", "O", "C", "G", "Q", "0", "æ", "œ", "ø", "đ", "ɗ"])
def test_round_letters_start_at_two_o_clock_and_run_anticlockwise(char: str) -> None:
    """The pencil starts right of the middle and above it, not at the top, and the bow turns anticlockwise."""
    stroke = first_stroke(char)
    points = bowl(stroke)
    low, high = min(y for _, y in points), max(y for _, y in points)
    left, right = min(x for x, _ in points), max(x for x, _ in points)
    x, y = stroke.start
    assert 0.6 < (y - low) / (high - low) < 0.95
    assert (x - left) / (right - left) > 0.75
    assert signed_area(points) > 0


def test_e_runs_anticlockwise() -> None:
    """The letter e begins with its bar, from left to right, and goes on anticlockwise."""
    stroke = first_stroke("e")
    assert abs(heading(stroke.segments[0])) < 1
    assert signed_area(flatten(stroke.segments, 0.1)) > 0


@pytest.mark.parametrize("char", ["b", "p", "þ"])
def test_stem_letters_have_a_clockwise_bow(char: str) -> None:
    """The bow of b and p goes on clockwise from the top of the stem."""
    curves = [segment for segment in first_stroke(char).segments if isinstance(segment, Cubic)]
    assert signed_area(flatten(curves, 0.1)) < 0


def test_first_strokes_go_down_or_to_the_right() -> None:
    """The first stroke of a letter sets out downwards or to the right, but for those listed with their reasons."""
    assert {char for char in LETTERS if not -135 < heading(first_stroke(char).segments[0]) < 5} == set(RISING)


def test_straight_strokes_go_down_or_to_the_right() -> None:
    """A stroke of one straight line is drawn downwards or, where it is level, to the right."""
    for char in LETTERS:
        for stroke in upright().glyphs[char].strokes:
            (x0, y0), (x1, y1) = stroke.start, stroke.end
            if len(stroke.segments) == 1 and len(stroke.segments[0]) == 2 and not stroke.is_dot:
                assert y1 < y0 or (y1 == y0 and x1 > x0) or char in RISING_BARS, char


def test_first_strokes_start_no_lower_than_they_end() -> None:
    """No letter begins nearer the floor than its first stroke ends, but for the stem of ß."""
    assert {char for char in LETTERS if first_stroke(char).start[1] < first_stroke(char).end[1]} == set("ßẞ")


def test_letters_do_not_lift_the_pencil_without_need(alphabet: Alphabet) -> None:
    """Small letters take one stroke, but for bars, dots and crossings."""
    more = {char for char in SMALL if len(alphabet.glyphs[char].strokes) > 1}
    assert more == set("fktxy")


@pytest.mark.parametrize("char", [*CAPITALS, *"0123456789"])
def test_capitals_and_figures_reach_from_line_to_line(alphabet: Alphabet, char: str) -> None:
    """Capitals and figures stand on the base line and reach the top line."""
    _, low, _, high = alphabet.letter(char).bounds()
    assert (low, high) == pytest.approx((0, 200), abs=0.01)


@pytest.mark.parametrize(("letters", "low", "high"), [
    ("aceımnorsuvwxz", 0, 100), ("bdfhklt", 0, 200), ("gpqyȷ", -100, 100)])
def test_small_letters_fill_their_zones(alphabet: Alphabet, letters: str, low: float, high: float) -> None:
    """Small letters fill just the zones that are theirs."""
    for char in letters:
        _, bottom, _, top = alphabet.letter(char).bounds()
        assert (bottom, top) == pytest.approx((low, high), abs=0.01), char


def test_look_alikes_are_told_apart(alphabet: Alphabet) -> None:
    """Capital I, small l and figure 1 differ in shape, as guides to large print ask (American Printing House)."""
    shapes = {char: tuple(stroke.segments for stroke in alphabet.letter(char).base.strokes) for char in "Il1O0"}
    assert len(set(shapes.values())) == 5
    assert len(shapes["I"]) == 3
    assert len(shapes["1"][0]) == 2
