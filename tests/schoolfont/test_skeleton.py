"""The medial axis of shapes whose axis is known. y up, 100 units to an x-height."""

from __future__ import annotations

import math

import pytest

from namewright.geometry import distances
from namewright.schoolfont.skeleton import branches, degrees, direction, medial_axis, turn_between

shapely = pytest.importorskip("shapely")


def test_the_axis_of_a_bar_is_its_middle() -> None:
    """A bar of 20 by 100: one branch on the middle line, as far from the outline as half of the bar is wide."""
    axis = medial_axis(shapely.box(0, 0, 20, 100), 2.0)
    (branch,) = axis.branches
    inner = [node for node in branch if 15 < node[1] < 85]
    assert len(inner) > 10
    assert all(node[0] == pytest.approx(10, abs=0.2) for node in inner)
    assert all(axis.radius[node] == pytest.approx(10, abs=0.2) for node in inner)


def test_the_axis_of_a_ring_is_one_circle() -> None:
    """Between circles of 30 and 50: a single closed branch at 40 from the middle. A hole is a loop."""
    ring = shapely.Point(0, 0).buffer(50, 64).difference(shapely.Point(0, 0).buffer(30, 64))
    (branch,) = medial_axis(ring, 2.0).branches
    assert branch[0] == branch[-1]
    assert all(math.hypot(*node) == pytest.approx(40, abs=0.5) for node in branch)


def test_three_bars_meet_in_one_knot() -> None:
    """A T has three branches and one node at which three of them end."""
    letter = shapely.box(-50, 80, 50, 100).union(shapely.box(-10, 0, 10, 90))
    axis = medial_axis(letter, 2.0)
    meeting = [node for node, count in degrees(axis.branches).items() if count == 3]
    assert len(axis.branches) == 3
    assert len(meeting) == 1
    assert math.dist(meeting[0], (0, 90)) < 6


def test_an_elbow_is_noted_where_a_corner_was_pruned() -> None:
    """An L turns at its corner, and ends bluntly twice; what reached into corners of the outline is gone."""
    axis = medial_axis(shapely.box(0, 0, 20, 100).union(shapely.box(0, 0, 80, 20)), 2.0)
    assert sorted((round(x, -1), round(y, -1)) for x, y in axis.elbows) == [(10, 10), (10, 90), (70, 10)]
    ways = [node for branch in axis.branches for node in branch]
    assert max(min(distances.to_segment(node, (10, 10), (10, 90)), distances.to_segment(node, (10, 10), (70, 10)))
               for node in ways) < 3


def test_a_stroke_that_tapers_is_followed_into_its_tip() -> None:
    """A wedge narrows slowly, a corner fast: the axis of the one goes up to the tip, the others' are gone."""
    axis = medial_axis(shapely.Polygon([(-10, 0), (10, 0), (0, 200)]), 2.0)
    (branch,) = axis.branches
    assert max(y for _, y in branch) > 180
    assert min(y for _, y in branch) > 5


def test_edges_are_joined_between_nodes() -> None:
    """A Y of five edges is three branches; a ring without a node is one branch that closes; a stop parts it."""
    a, b, c, d, e, f = (0.0, 0.0), (1.0, 0.0), (2.0, 0.0), (3.0, 1.0), (3.0, -1.0), (4.0, 1.0)
    found = branches([(a, b), (b, c), (c, d), (c, e), (d, f)])
    assert sorted(map(len, found)) == [2, 3, 3]
    ring = [(a, b), (b, d), (d, a)]
    assert [len(branch) for branch in branches(ring)] == [4]
    assert sorted(len(branch) for branch in branches(ring, {b})) == [4]
    assert branches(ring, {b})[0][0] == b
    assert sorted(len(branch) for branch in branches(ring, {a, b})) == [2, 3]


def test_a_direction_is_taken_over_a_reach() -> None:
    """Over 3 it is the first step, over 5 the chord; always of length 1."""
    path = ((0.0, 0.0), (3.0, 0.0), (3.0, 4.0))
    assert direction(path, 3.0) == pytest.approx((1, 0))
    assert direction(path, 5.0) == pytest.approx((0.6, 0.8))
    assert direction(path, 1.0, 1) == pytest.approx((0, 1))


@pytest.mark.parametrize(("a", "b", "turn"), [((1, 0), (-1, 0), 0), ((1, 0), (0, 1), 90), ((1, 0), (1, 0), 180),
                                              ((1, 0), (-math.sqrt(0.5), math.sqrt(0.5)), 45)])
def test_a_pen_that_goes_straight_on_does_not_turn(a: tuple[float, float], b: tuple[float, float], turn: float) -> None:
    """Two outward directions that are opposite are one straight line."""
    assert turn_between(a, b) == pytest.approx(turn)
