"""Boxes against shapely's."""

from __future__ import annotations

import pytest
import shapely
from hypothesis import given
from hypothesis import strategies as st

from namewright.geometry import boxes
from namewright.geometry.boxes import Box
from namewright.geometry.points import Point

whole = st.integers(-20, 20).map(float)
sizes = st.integers(1, 15).map(float)
points = st.tuples(whole, whole)


@st.composite
def some_box(draw: st.DrawFn) -> Box:
    """Return a box that has a size."""
    x, y = draw(points)
    return (x, y, x + draw(sizes), y + draw(sizes))


@given(st.lists(points, min_size=1, max_size=9))
def test_the_box_of_points(some: list[Point]) -> None:
    """The box round points is shapely's."""
    assert boxes.around(some) == shapely.MultiPoint(some).bounds


def test_nothing_has_no_box() -> None:
    """No points and no boxes have none: that is an error and not a box at the origin."""
    with pytest.raises(ValueError, match="no points"):
        boxes.around([])
    with pytest.raises(ValueError, match="not enough values"):
        boxes.joined([])


@given(st.lists(some_box(), min_size=1, max_size=5))
def test_the_box_of_boxes(some: list[Box]) -> None:
    """The box round boxes is that of shapely's union."""
    assert boxes.joined(some) == shapely.union_all([shapely.box(*one) for one in some]).bounds


@given(some_box(), whole, whole)
def test_a_box_elsewhere(box: Box, dx: float, dy: float) -> None:
    """A shifted box has its size; a grown one is wider by twice as much."""
    x0, y0, x1, y1 = boxes.shifted(box, dx, dy)
    assert (x0 - dx, y0 - dy, x1 - dx, y1 - dy) == box
    assert boxes.grown(box, 2.0) == (box[0] - 2, box[1] - 2, box[2] + 2, box[3] + 2)


@given(some_box(), some_box())
def test_boxes_that_meet(one: Box, other: Box) -> None:
    """They overlap if they share an area; the clearance is then negative, and otherwise the wider of the two gaps."""
    a, b = shapely.box(*one), shapely.box(*other)
    assert boxes.overlap(one, other) == (a.intersection(b).area > 0) == (boxes.clearance(one, other) < 0)
    assert boxes.holds(one, other) == a.covers(b)
    gap = boxes.clearance(one, other)
    if gap >= 0:
        assert gap <= a.distance(b) <= gap * 2**0.5 + 1e-9


@given(st.lists(points, max_size=9), some_box())
def test_points_in_a_box(some: list[Point], box: Box) -> None:
    """Points on an edge are inside."""
    assert boxes.within(some, box) == [point for point in some if shapely.box(*box).covers(shapely.Point(point))]
