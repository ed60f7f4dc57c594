"""Pen strokes: read from path data, moved, measured and written again."""

from __future__ import annotations

import math

import pytest
from fontTools.pens.recordingPen import RecordingPen
from fontTools.svgLib.path import parse_path
from hypothesis import given
from hypothesis import strategies as st

from namewright.letters.strokes import Stroke, dot_stroke, parse_stroke, polyline_stroke

COORDINATES = st.floats(-300, 300).map(lambda value: round(value, 3))
POINTS = st.tuples(COORDINATES, COORDINATES)


def ends(data: str) -> list[tuple[float, float]]:
    """Return where each command of some path data ends, as fontTools reads it."""
    pen = RecordingPen()
    parse_path(data, pen)
    return [points[-1] for command, points in pen.value if command in ("moveTo", "lineTo", "curveTo")]


@given(st.lists(POINTS, min_size=2, max_size=30))
def test_rounding_never_adds_up_along_a_stroke(points: list[tuple[float, float]]) -> None:
    """Read back by fontTools, every corner of relative path data lies within half a hundredth of where it is."""
    x0, y0 = points[0]
    found = ends(f"M0 0{polyline_stroke(points).path_data(2)}")
    assert len(found) == len(points)
    for (x, y), (a, b) in zip(points, found, strict=True):
        assert (a, b) == pytest.approx((x - x0, y - y0), abs=0.0051)


def test_short_commands_are_used() -> None:
    """Level and upright lines say one number; a minus needs no space before it."""
    assert polyline_stroke([(5, 5), (8, 5), (8, 9), (7, 8)]).path_data() == "h3v4l-1 -1"
    assert parse_stroke("M1 1C2 1 3 2 3 3").path_data() == "c1 0 2 1 2 2"


def test_path_data_is_read_as_the_standard_has_it() -> None:
    """Relative and absolute commands, and a quarter of a circle whose length is known: pi r / 2."""
    assert parse_stroke("M0 0 l3 4 V10").length() == pytest.approx(5 + 6)
    quarter = parse_stroke("M10 0 A10 10 0 0 1 0 10")
    assert quarter.length() == pytest.approx(math.pi * 10 / 2, rel=1e-3)
    assert quarter.bounds() == pytest.approx((0, 0, 10, 10), abs=1e-6)
    assert (quarter.start, quarter.end) == (pytest.approx((10, 0)), pytest.approx((0, 10)))


def test_a_quadratic_curve_is_the_same_curve() -> None:
    """Its middle is a quarter of both ends and half of the control point."""
    (segment,) = parse_stroke("M0 0 Q10 20 20 0").segments
    middle = [(a + 3 * b + 3 * c + d) / 8 for a, b, c, d in zip(*segment, strict=True)]
    assert middle == pytest.approx([10, 10])


@given(st.lists(POINTS, min_size=2, max_size=8), POINTS)
def test_a_stroke_is_moved_and_turned_whole(points: list[tuple[float, float]], by: tuple[float, float]) -> None:
    """Moved there and drawn backwards, it goes through the same points the other way, as long as before."""
    stroke = polyline_stroke(points)
    moved = stroke.shifted(*by).reversed()
    assert moved.start == pytest.approx((points[-1][0] + by[0], points[-1][1] + by[1]))
    assert moved.length() == pytest.approx(stroke.length(), abs=1e-6)
    assert moved.reversed().shifted(-by[0], -by[1]).end == pytest.approx(stroke.end)


def test_a_dot_is_a_touch() -> None:
    """It ends where it starts and has no length; what comes back to its start is no dot."""
    assert dot_stroke((3, 4)).is_dot
    assert dot_stroke((3, 4)).length() == 0
    assert not polyline_stroke([(0, 0), (5, 0), (0, 0)]).is_dot
    assert Stroke(dot_stroke((3, 4)).segments * 2).is_dot


@pytest.mark.parametrize(("data", "complaint"), [
    ("M0 0 L1 1 M2 2 L3 3", "lifts the pen"), ("M0 0 L1 1 Z", "closes"),
    ("M0 0", "draws nothing"), ("", "draws nothing"), ("M0 0 L1", "does not parse"), ("hello", "does not parse")])
def test_bad_strokes_are_told(data: str, complaint: str) -> None:
    """A stroke that is not one open line is refused in a sentence that shows it."""
    with pytest.raises(ValueError, match=complaint):
        parse_stroke(data)
