"""Ink: path data that say where the pen goes, read back by another library, and the boxes of what is drawn."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st
from svgpathtools import parse_path

from namewright.geometry.points import Point
from namewright.letters.strokes import parse_stroke, polyline_stroke
from namewright.lines.ink import Fragment, Ink, Piece, Style, dot_fragment, line, outline_fragment, stroke_fragment

numbers = st.floats(-100, 100)
ways = st.lists(st.tuples(numbers, numbers), min_size=2, max_size=6, unique=True)


def read(piece: Piece) -> list[list[complex]]:
    """Return where svgpathtools takes the pen, a list for each time it comes down."""
    path = parse_path(Ink.of(Style(1.0), (piece,)).path_data())
    return [[part[0].start, *(segment.end for segment in part)] for part in path.continuous_subpaths()]


@given(st.lists(ways, min_size=1, max_size=3), numbers, numbers)
def test_strokes_are_drawn_where_they_are(strokes: list[list[Point]], x: float, y: float) -> None:
    """To a hundredth of a millimetre, however many strokes and turns came before: roundings never add up."""
    drawn = read(Piece(round(x, 3), round(y, 3), stroke_fragment(map(polyline_stroke, strokes))))
    wanted = [complex(*point) for stroke in strokes for point in stroke]
    ends = [stroke[-1] for stroke in strokes] + [stroke[0] for stroke in strokes]
    found = [point - complex(round(x, 3), round(y, 3)) for part in drawn for point in part]
    for point in (complex(*end) for end in ends):
        assert min(abs(point - other) for other in found) < 0.0075
    for point in found:
        assert min(abs(point - other) for other in wanted) < 0.0075


def test_a_curve_keeps_its_shape() -> None:
    """A half circle of path data reads back as long and as wide as it was."""
    arc = parse_stroke("M0 0 A10 10 0 0 1 20 0")
    path = parse_path("M0 0" + stroke_fragment([arc]).data)
    assert path.length() == pytest.approx(arc.length(), rel=1e-3)
    assert path.bbox() == pytest.approx((0, 20, -10, 0), abs=0.01)


def test_a_contour_is_closed_and_the_pen_goes_back() -> None:
    """Closing takes the pen to the contour's start, and the next contour is reckoned from there (W3C SVG 2, §9.3.4)."""
    square = [(0.0, 0.0), (4.0, 0.0), (4.0, 4.0), (0.0, 0.0)]
    inner = [(x / 4 + 1, y / 4 + 1) for x, y in square]
    data = outline_fragment([polyline_stroke(square), polyline_stroke(inner)]).data
    assert data.count("z") == 2
    first, second = parse_path("M0 0" + data).continuous_subpaths()
    assert (first.start, second.start) == (0, 1 + 1j)


@given(st.lists(st.tuples(numbers, numbers), min_size=1, max_size=9))
def test_dots_stand_where_they_are(points: list[Point]) -> None:
    """A dot is a line of no length; the box of the fragment is that of the places to which they are rounded."""
    fragment = dot_fragment(points)
    assert fragment.data.count("h0") == len(points)
    drawn = [(round(x, 2), round(y, 2)) for x, y in points]
    (left, right), (top, bottom) = ((min(way), max(way)) for way in zip(*drawn, strict=True))
    assert fragment.bounds == pytest.approx((left, top, right, bottom), abs=1e-9)


def test_a_fragment_draws_something() -> None:
    """An empty path has no place on any page."""
    with pytest.raises(ValueError, match="draws something"):
        Fragment((), (0.0, 0.0, 0.0, 0.0))


def test_the_box_of_ink_counts_the_pen() -> None:
    """A line 1 mm wide covers half a millimetre beyond its ends; moved, it covers the same elsewhere."""
    ink = Ink.of(Style(1.0), (line(2.0, 3.0, 12.0, 3.0),))
    assert ink.bounds() == (1.5, 2.5, 12.5, 3.5)
    assert ink.moved(1.0, -2.0).bounds() == (2.5, 0.5, 13.5, 1.5)
