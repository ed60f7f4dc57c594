"""The centreline of shapes whose centreline is known, in letter units (100 to the x-height), y up."""

from __future__ import annotations

import itertools
import math
from collections.abc import Sequence

import pytest

from namewright.geometry import boxes
from namewright.geometry.points import Point
from namewright.geometry.segments import flatten
from namewright.letters.strokes import Stroke
from namewright.schoolfont.centreline import centrelines
from schoolfont.outlines import circle, polygon

_END = 4.5  # a free end stays half a dot's width inside the outline


def box(x0: float, y0: float, x1: float, y1: float) -> Stroke:
    """Return a rectangle, wound clockwise."""
    return polygon((x0, y0), (x0, y1), (x1, y1), (x1, y0))


def centreline(contours: Sequence[Stroke]) -> tuple[Stroke, ...]:
    """Return the centreline of all parts, the largest first."""
    return tuple(itertools.chain.from_iterable(centrelines(contours)))


def points(strokes: Sequence[Stroke]) -> list[Point]:
    """Return points along all strokes."""
    return [point for stroke in strokes for point in flatten(stroke.segments, 0.05)]


def straying(strokes: Sequence[Stroke], *lines: tuple[Point, Point]) -> float:
    """Return how far the strokes' points are at most from the nearest of some lines."""
    return max(min(_distance(point, *line) for line in lines) for point in points(strokes))


def _distance(point: Point, a: Point, b: Point) -> float:
    dx, dy = b[0] - a[0], b[1] - a[1]
    t = ((point[0] - a[0]) * dx + (point[1] - a[1]) * dy) / (dx * dx + dy * dy)
    t = min(1.0, max(0.0, t))
    return math.dist(point, (a[0] + t * dx, a[1] + t * dy))


@pytest.mark.parametrize("width", [4, 16, 30])
def test_a_stem_is_its_middle_from_end_to_end(width: float) -> None:
    """A stem gives one straight line in its middle that stops half a dot (or half a thin stem) before its ends."""
    (stroke,) = centreline([box(0, 0, width, 150)])
    assert len(stroke.segments) == 1
    inset = min(_END, width / 2)
    assert sorted((stroke.start, stroke.end), key=lambda at: at[1]) == [
        pytest.approx((width / 2, inset), abs=0.3), pytest.approx((width / 2, 150 - inset), abs=0.3)]


def test_a_cross_is_two_strokes_through_one_point() -> None:
    """Where two bars cross, each runs straight on."""
    strokes = centreline([box(42, 0, 58, 120), box(0, 72, 100, 88)])
    assert sorted(len(stroke.segments) for stroke in strokes) == [1, 1]
    assert straying(strokes, ((50, 0), (50, 120)), ((0, 80), (100, 80))) < 0.3


def test_a_bar_on_a_stem_does_not_bend_it() -> None:
    """A bar that ends on a stem meets its middle; the stem stays straight."""
    strokes = centreline([polygon((0, 0), (0, 140), (16, 140), (16, 78), (70, 78), (70, 62), (16, 62), (16, 0))])
    assert len(strokes) == 2
    assert straying(strokes, ((8, 0), (8, 140)), ((8, 70), (70, 70))) < 0.3


def test_a_corner_is_sharp() -> None:
    """An L turns in the point where the middles of its bars meet."""
    (stroke,) = centreline([polygon((0, 0), (0, 140), (16, 140), (16, 16), (80, 16), (80, 0))])
    assert min(math.dist(point, (8, 8)) for point in points([stroke])) < 0.3
    assert straying([stroke], ((8, 8), (8, 140)), ((8, 8), (80, 8))) < 0.3


def test_a_point_reaches_up_into_its_tip() -> None:
    """The legs of a Λ run straight into its top, without a stem of their own there."""
    legs = [polygon((0, 0), (40, 120), (58, 120), (98, 0), (80, 0), (49, 96), (18, 0))]
    (stroke,) = centreline(legs)
    assert boxes.joined([stroke.bounds()])[3] > 105
    assert straying([stroke], ((9, 0), (49, 118)), ((89, 0), (49, 118))) < 3.0


def test_a_ring_is_a_closed_circle() -> None:
    """A ring gives the circle half way between its edges, closed."""
    (stroke,) = centreline([circle(50, 50, 50), circle(50, 50, 36, clockwise=False)])
    assert stroke.start == stroke.end
    assert all(abs(math.dist(point, (50, 50)) - 43) < 0.4 for point in points([stroke]))


@pytest.mark.parametrize("dot", [circle(0, 150, 11), box(-10, 140, 10, 160), box(-9, 140, 9, 161)])
def test_what_is_about_as_wide_as_high_is_a_dot(dot: Stroke) -> None:
    """The dot of i is one touch of the pencil, round or square, beside the stem that is a stroke."""
    strokes = centreline([dot, box(-8, 0, 8, 100)])
    assert [stroke.is_dot for stroke in strokes].count(True) == 1
    (touch,) = (stroke for stroke in strokes if stroke.is_dot)
    assert touch.start == pytest.approx((0, 150), abs=0.6)


def test_a_moved_letter_has_the_moved_centreline() -> None:
    """Where a letter stands does not change its centreline."""
    shape = [circle(50, 50, 50), circle(50, 50, 36, clockwise=False), box(86, 0, 102, 150)]
    moved = [contour.map(lambda at: (at[0] + 317, at[1] - 41)) for contour in shape]
    one, two = ([(x + dx, y + dy) for x, y in points(centreline(contours))]
                for contours, dx, dy in ((shape, 317, -41), (moved, 0, 0)))
    assert max(min(math.dist(a, b) for b in two) for a in one) < 0.5
