"""From a fine polyline to few lines and curves: shapes that are known in closed form, and noise on them."""

from __future__ import annotations

import math
import random

import pytest

from namewright.geometry.points import heading, turn_degrees
from namewright.geometry.segments import Cubic, Line, flatten
from namewright.schoolfont.smooth import smooth_stroke


def shaken(points: list[tuple[float, float]], by: float) -> list[tuple[float, float]]:
    """Return points moved a little, the first and last kept."""
    chance = random.Random(3)
    return [points[0], *((x + chance.uniform(-by, by), y + chance.uniform(-by, by)) for x, y in points[1:-1]),
            points[-1]]


def test_a_straight_run_is_one_line_between_its_ends() -> None:
    """Though its points stray by half a unit."""
    stroke = smooth_stroke(shaken([(at, 2.0 * at) for at in range(51)], 0.5))
    assert [type(segment) for segment in stroke.segments] == [Line]
    assert stroke.start == pytest.approx((0, 0), abs=0.2)
    assert stroke.end == pytest.approx((50, 100), abs=0.2)


def test_an_end_that_strays_is_brought_back() -> None:
    """The first and the last of many points weigh no more than any other: the line stays upright."""
    stroke = smooth_stroke([(1.1, 0.0), *((0.0, 2.0 * at) for at in range(1, 50)), (0.0, 100.0)])
    assert [type(segment) for segment in stroke.segments] == [Line]
    assert abs(stroke.start[0] - stroke.end[0]) < 0.3


def test_a_sharp_corner_stays_where_it_was() -> None:
    """Two sides of a square are two lines that meet in its corner."""
    down, along = [(0.0, 100.0 - at) for at in range(0, 100, 5)], [(float(at), 0.0) for at in range(0, 101, 5)]
    stroke = smooth_stroke([*down, *along])
    assert [type(segment) for segment in stroke.segments] == [Line, Line]
    assert stroke.segments[0].end == (0.0, 0.0)


@pytest.mark.parametrize("radius", [20.0, 50.0])
def test_an_arc_is_a_few_smooth_curves(radius: float) -> None:
    """Half a circle, noisy: every point of the curves is within 2 % of the radius, and they join without a corner."""
    arc = [(radius * math.cos(math.radians(at)), radius * math.sin(math.radians(at))) for at in range(181)]
    stroke = smooth_stroke(shaken(arc, 0.2))
    assert all(isinstance(segment, Cubic) for segment in stroke.segments)
    assert len(stroke.segments) < 25
    assert all(abs(math.hypot(*point) - radius) < 0.02 * radius for point in flatten(stroke.segments, 0.05))
    for before, after in zip(stroke.segments, stroke.segments[1:], strict=False):
        turned = turn_degrees(heading(before[-2], before[-1]), heading(after[0], after[1]))
        assert abs(turned) < 0.1


def test_a_ring_closes_smoothly() -> None:
    """It ends where it starts, in the direction in which it started."""
    ring = [(40 * math.cos(math.radians(at)), 40 * math.sin(math.radians(at))) for at in range(0, 361, 2)]
    stroke = smooth_stroke([*ring[:-1], ring[0]])
    first, last = stroke.segments[0], stroke.segments[-1]
    assert math.dist(stroke.start, stroke.end) < 1e-9
    assert all(abs(math.hypot(*point) - 40) < 0.3 for point in flatten(stroke.segments, 0.05))
    assert abs(turn_degrees(heading(last[-2], last[-1]), heading(first[0], first[1]))) < 0.1


def test_points_that_repeat_are_one() -> None:
    """A polyline may stand still."""
    assert smooth_stroke([(0, 0), (0, 0), (30, 0), (30, 0)]).segments == (Line((0, 0), (30, 0)),)
