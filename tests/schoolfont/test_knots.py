"""How branches leave a knot and run on through it, on lines and circles whose answer is known."""

from __future__ import annotations

import math

import pytest

from namewright.schoolfont.knots import (
    Cut,
    bend_of,
    first_beyond,
    landing,
    middle_of,
    nearest,
    shorten,
    smooth_way,
    turn_less_bend,
    way_of,
)

ARC = tuple((40 * math.cos(at / 20), 40 * math.sin(at / 20)) for at in range(40))


def on_arc(degrees: float, way: int) -> Cut:
    """Return a cut of a circle of 40 about 0, 0; the branch goes on counter-clockwise (1) or clockwise (-1)."""
    turn = math.radians(degrees)
    return Cut(0, (40 * math.cos(turn), 40 * math.sin(turn)), (-way * math.sin(turn), way * math.cos(turn)),
               way * math.degrees(1 / 40))


def test_the_way_of_a_straight_branch_is_that_of_all_of_it() -> None:
    """Points that shake by half a unit do not turn it by more than two degrees; an arc's way is that of its start."""
    shaking = tuple((0.5 * (-1) ** at, 2.0 * at) for at in range(40))
    x, y = way_of(shaking, 0, 10.0)
    assert abs(math.degrees(math.atan2(x, y))) < 2.0
    x, y = way_of(ARC, 0, 10.0)
    assert math.degrees(math.atan2(y, x)) == pytest.approx(95, abs=3)


def test_a_bend_is_that_of_the_circle() -> None:
    """A circle of 40 turns by 1/40 radian a unit; a branch too short to say does not bend."""
    assert bend_of(ARC, 0, 12.0) == pytest.approx(math.degrees(1 / 40), rel=0.05)
    assert bend_of(ARC[:4], 0, 12.0) == 0.0


def test_an_arc_runs_on_and_a_corner_does_not() -> None:
    """What a circle turns between two cuts is no corner; the same turn between straight branches is one."""
    one, other = on_arc(30, 1), on_arc(-30, -1)
    assert turn_less_bend(one, other) == pytest.approx(0, abs=1)
    straight = [Cut(0, cut.point, cut.way) for cut in (one, other)]
    assert turn_less_bend(*straight) == pytest.approx(60)


def test_a_smooth_way_follows_the_circle() -> None:
    """Between two cuts of a circle the way stays on it."""
    way = smooth_way(on_arc(25, 1), on_arc(-25, -1))
    assert all(math.hypot(*point) == pytest.approx(40, abs=0.6) for point in way)


def test_a_branch_lands_where_its_line_meets_the_stroke() -> None:
    """A branch that comes in slanting meets an upright stroke on its own line; a point has its nearest."""
    stem = [(0.0, 0.0), (0.0, 100.0)]
    assert landing(Cut(0, (20.0, 70.0), (math.sqrt(0.5), math.sqrt(0.5))), stem) == pytest.approx((0, 50))
    assert nearest((7.0, 42.0), stem) == pytest.approx((0, 40))


def test_a_short_branch_is_judged_by_its_middle() -> None:
    """Both ends find the same point, with the way of the branch in all."""
    path = tuple((3 * (at / 6 - 1) ** 2, 4.0 * at) for at in range(13))
    there, back = middle_of(path, forwards=True), middle_of(path[::-1], forwards=False)
    assert there.point == back.point == (0.0, 24.0)
    assert there.way == pytest.approx((0, 1))
    assert back.way == pytest.approx((0, -1))


def test_a_path_is_shortened_from_either_end() -> None:
    """The points up to a place give way to one; an end is found some way along."""
    path = [(float(at), 0.0) for at in range(10)]
    assert first_beyond(path, 2.5) == 3
    assert first_beyond(path, 99) == 5
    shorten(path, 3, False, (2.5, 1.0))
    shorten(path, 0, True, (9.5, 1.0))
    assert path[0] == (2.5, 1.0)
    assert path[1] == (3.0, 0.0)
    assert path[-2:] == [(8.0, 0.0), (9.5, 1.0)]
