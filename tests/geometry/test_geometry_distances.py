"""Distances against shapely and SciPy."""

from __future__ import annotations

import math

import pytest
import shapely
from hypothesis import assume, given
from hypothesis import strategies as st
from scipy.optimize import minimize_scalar

from namewright.geometry.distances import is_near_box, share_along, to_line, to_polyline, to_segment
from namewright.geometry.points import Point

numbers = st.floats(-100, 100).map(lambda x: round(x, 2))
points = st.tuples(numbers, numbers)


@given(points, points, points)
def test_to_a_segment(point: Point, a: Point, b: Point) -> None:
    """The distance is shapely's, where the foot is between the ends and where it is not; a may be b."""
    assert to_segment(point, a, b) == pytest.approx(shapely.LineString([a, b]).distance(shapely.Point(point)), abs=1e-9)


@given(points, points, points)
def test_to_an_endless_line(point: Point, a: Point, b: Point) -> None:
    """The distance is the least that SciPy finds along the line, and the foot is where it finds it."""
    assume(math.dist(a, b) > 1)

    def away(share: float) -> float:
        return math.dist(point, (a[0] + share * (b[0] - a[0]), a[1] + share * (b[1] - a[1])))

    best = minimize_scalar(lambda share: away(share)**2)
    assert to_line(point, a, b) == pytest.approx(away(best.x), abs=1e-5)
    assert share_along(point, a, b) == pytest.approx(best.x, abs=1e-5)


@given(points, st.lists(points, min_size=2, max_size=6))
def test_to_a_polyline(point: Point, way: list[Point]) -> None:
    """The distance is shapely's."""
    assert to_polyline(point, way) == pytest.approx(shapely.LineString(way).distance(shapely.Point(point)), abs=1e-9)


@given(points, points, st.floats(0.1, 50), st.floats(0.1, 50))
def test_to_a_box(point: Point, corner: Point, width: float, height: float) -> None:
    """The distance is shapely's, and 0 inside."""
    box = (*corner, corner[0] + width, corner[1] + height)
    distance = shapely.box(*box).distance(shapely.Point(point))
    assert is_near_box(point, box, distance + 1e-9)
    assert distance < 1e-9 or not is_near_box(point, box, distance - 1e-9)
