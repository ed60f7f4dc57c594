"""Points and directions against complex numbers, which turn and scale by themselves."""

from __future__ import annotations

import cmath
import math

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from namewright.geometry.points import Point, between, heading, turn_degrees, unit

numbers = st.floats(-100, 100)
points = st.tuples(numbers, numbers)


@given(points, points, st.floats(-1, 2))
def test_a_point_part_of_the_way(a: Point, b: Point, share: float) -> None:
    """A share of the way from one point to another, also beyond it."""
    assert complex(*between(a, b, share)) == pytest.approx(complex(*a) + share * (complex(*b) - complex(*a)))


@given(points, points)
def test_the_direction_between_points(a: Point, b: Point) -> None:
    """The direction is the phase of the difference; its unit vector points there."""
    assume(math.dist(a, b) > 1e-6)
    way = complex(*b) - complex(*a)
    assert heading(a, b) == pytest.approx(cmath.phase(way))
    assert complex(*unit((way.real, way.imag))) == pytest.approx(way / abs(way))


@given(st.floats(-7, 7), st.floats(-179.9, 179.9))
def test_a_turn_is_the_short_way_round(before: float, degrees: float) -> None:
    """Turning by less than half a circle is told as it was turned, wherever it began."""
    assert turn_degrees(before, before + math.radians(degrees)) == pytest.approx(degrees, abs=1e-9)


def test_no_way_has_no_direction() -> None:
    """Where there is no way to go, the direction is 0 and the vector stays."""
    assert heading((1.0, 2.0), (1.0, 2.0)) == 0
    assert unit((0.0, 0.0)) == (0.0, 0.0)
