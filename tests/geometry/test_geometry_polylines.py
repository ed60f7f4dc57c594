"""Polylines: lengths and even divisions against shapely's."""

from __future__ import annotations

import math
from itertools import pairwise

import numpy as np
import pytest
import shapely
from hypothesis import given
from hypothesis import strategies as st

from namewright.geometry.points import Point
from namewright.geometry.polylines import closely, evenly, length, steps

numbers = st.floats(-100, 100)
ways = st.lists(st.tuples(numbers, numbers), min_size=2, max_size=8)


@given(ways)
def test_the_length_is_shapelys(way: list[Point]) -> None:
    """The length of a polyline, folded or not."""
    assert length(way) == pytest.approx(shapely.LineString(way).length)


@given(ways, st.integers(1, 20))
def test_points_lie_evenly_along_the_way(way: list[Point], count: int) -> None:
    """The points are those that shapely finds at equal distances along the same line."""
    line = shapely.LineString(way)
    found = evenly(way, count)
    wanted = shapely.get_coordinates(line.interpolate(np.linspace(0, 1, count + 1), normalized=True))
    assert len(found) == count + 1
    assert np.array(found) == pytest.approx(wanted, abs=1e-6)
    assert (found[0], found[-1]) == (way[0], pytest.approx(way[-1]))


@given(ways, st.floats(0.5, 50))
def test_close_points_leave_no_wider_step(way: list[Point], step: float) -> None:
    """No step along the way is longer than asked for, and with one point fewer it would be."""
    found = closely(way, step)
    each = length(way) / (len(found) - 1)
    assert each <= step * (1 + 1e-9)
    assert len(found) == 2 or length(way) / (len(found) - 2) > step
    assert all(math.dist(a, b) <= each + 1e-9 for a, b in pairwise(found))


def test_a_polyline_of_one_place_stays_there() -> None:
    """A way of no length gives the same point as often as asked."""
    assert evenly([(2.0, 3.0), (2.0, 3.0)], 2) == [(2.0, 3.0)] * 3


def test_steps_on_a_straight_way() -> None:
    """Both ends and equal steps between."""
    assert steps((0.0, 0.0), (4.0, 2.0), 4) == [(0, 0), (1, 0.5), (2, 1), (3, 1.5), (4, 2)]


def test_a_lone_point_is_all_there_is() -> None:
    """Regression: a stroke of a school's font that shrinks to a point ended in a traceback."""
    assert evenly([(3.0, 4.0)], 2) == [(3.0, 4.0)] * 3
    assert closely([(3.0, 4.0)], 1.0) == [(3.0, 4.0)] * 2
