"""Lines and curves against closed forms and SciPy, at many tolerances."""

from __future__ import annotations

import math
from itertools import pairwise

import numpy as np
import pytest
import shapely
from hypothesis import given
from hypothesis import strategies as st
from scipy.integrate import quad
from scipy.optimize import minimize_scalar

from namewright.geometry.points import Point
from namewright.geometry.segments import (
    CORNER_DEGREES,
    Cubic,
    Line,
    Segment,
    corner_degrees,
    flatten,
    heading_in,
    heading_out,
    length_of,
    lines_through,
    raised,
    smooth_runs,
)

numbers = st.floats(-200, 200).map(lambda x: round(x, 3))
points = st.tuples(numbers, numbers)
cubics = st.builds(Cubic, points, points, points, points)
TOLERANCES = [10.0**power for power in range(-5, 2)]
KAPPA = 0.5522847498  # the handle of a quarter circle of radius 1: 4/3 · (√2 − 1)
QUARTER = Cubic((1.0, 0.0), (1.0, KAPPA), (KAPPA, 1.0), (0.0, 1.0))


def on_curve(curve: Cubic, t: np.ndarray) -> np.ndarray:
    """Return points of a curve by its Bernstein form, in NumPy."""
    p, t = np.array(curve), t[:, None]
    return np.asarray((1 - t)**3 * p[0] + 3 * (1 - t)**2 * t * p[1] + 3 * (1 - t) * t**2 * p[2] + t**3 * p[3])


def speed(curve: Cubic, t: float) -> float:
    """Return the length of a curve's derivative."""
    p = np.array(curve)
    return float(np.hypot(*(3 * ((1 - t)**2 * (p[1] - p[0]) + 2 * (1 - t) * t * (p[2] - p[1]) + t**2 * (p[3] - p[2])))))


def strays(curve: Cubic, track: list[Point]) -> float:
    """Return how far the curve strays from a polyline, as shapely measures it, at a thousand places."""
    way = shapely.LineString(track) if len(set(track)) > 1 else shapely.Point(track[0])
    return float(shapely.distance(way, shapely.points(on_curve(curve, np.linspace(0, 1, 1001)))).max())


@pytest.mark.parametrize("tolerance", TOLERANCES)
@given(curve=cubics)
def test_a_polyline_stays_within_its_tolerance(tolerance: float, curve: Cubic) -> None:
    """Whatever the curve, even one that crosses itself or comes to a point, no place of it strays farther."""
    if tolerance < 1e-3:  # the same guarantee on a small curve, so that the polyline stays short enough to be quick
        curve = curve.map(lambda point: (point[0] / 1000, point[1] / 1000))
    track = flatten([curve], tolerance)
    assert (track[0], track[-1]) == (curve.start, pytest.approx(curve.end, abs=1e-9))
    assert strays(curve, track) <= tolerance * (1 + 1e-6) + 1e-12


@pytest.mark.parametrize("tolerance", [0.3, 0.03, 0.003, 0.0003])
@pytest.mark.parametrize("height", [1.0, 7.0, 40.0])
def test_a_polyline_has_no_more_points_than_a_parabola_needs(tolerance: float, height: float) -> None:
    """A parabola of height H over its chord strays from n equal steps by exactly H/n² (its second derivative is 8H).

    So n is the least whole number with H/n² within the tolerance: one step fewer would break the promise.
    """
    parabola = raised((0.0, 0.0), (0.5, 2 * height), (1.0, 0.0))
    count = len(parabola.flattened(tolerance))
    assert height / count**2 <= tolerance < height / (count - 1)**2
    xs, ys = zip(*flatten([parabola], tolerance), strict=True)
    middle = count // 2  # the steepest and the flattest step stray alike, measured upwards
    x = (xs[middle] + xs[middle + 1 if count > middle else middle]) / 2
    assert 4 * height * x * (1 - x) - np.interp(x, xs, ys) == pytest.approx(height / count**2, rel=1e-6)


@pytest.mark.parametrize("tolerance", [1e-1, 1e-2, 1e-3, 1e-4])
def test_a_quarter_circle_becomes_a_polygon_of_known_length(tolerance: float) -> None:
    """A polyline within e of a circle of radius r is shorter than the arc by at most the share 4e/3r (a series)."""
    for radius in (1.0, 10.0, 100.0):
        arc = QUARTER.map(lambda point, radius=radius: (point[0] * radius, point[1] * radius))  # type: ignore[misc]
        track = flatten([arc], tolerance)
        walked = sum(math.dist(a, b) for a, b in pairwise(track))
        whole = math.pi / 2 * radius
        assert whole * (1 - 4 / 3 * tolerance / radius - 3e-4) < walked < whole * (1 + 3e-4)


@pytest.mark.parametrize("tolerance", [1e-1, 1e-2, 1e-4])
def test_an_arc_length_is_what_scipy_integrates(tolerance: float) -> None:
    """The length of a curve is the integral of its speed, to a hundred times the tolerance, as the docstring tells."""
    dice = np.random.default_rng(5)
    for _ in range(20):
        curve = Cubic(*map(tuple, dice.uniform(-200, 200, (4, 2)).tolist()))
        exact, _ = quad(lambda t, curve=curve: speed(curve, t), 0, 1, epsabs=1e-9, limit=200)
        assert curve.length(tolerance) == pytest.approx(exact, abs=100 * tolerance)


def test_a_parabola_has_the_length_of_its_closed_form() -> None:
    """The arc of y = x² from 0 to 1 is √5/2 + asinh(2)/4 long."""
    arc = raised((0.0, 0.0), (0.5, 0.0), (1.0, 1.0))
    assert arc.length(1e-9) == pytest.approx(math.sqrt(5) / 2 + math.asinh(2) / 4, abs=1e-8)


@given(st.lists(points, min_size=2, max_size=6))
def test_joined_lines_are_as_long_as_shapely_says(way: list[Point]) -> None:
    """Lines through points have the length of the same line string, and flatten to the points themselves."""
    lines = lines_through(way)
    assert length_of(lines) == pytest.approx(shapely.LineString(way).length)
    assert flatten(lines, 1.0) == way


@given(cubics)
def test_the_box_of_a_curve_holds_it_and_no_more(curve: Cubic) -> None:
    """Each side of the box is the extreme that SciPy finds along the curve."""
    box = curve.bounds()
    t = np.linspace(0, 1, 401)
    for axis in (0, 1):
        for sign, side in ((1, box[axis]), (-1, box[axis + 2])):
            values = sign * on_curve(curve, t)[:, axis]
            at = t[values.argmin()]
            best = minimize_scalar(lambda u, axis=axis, sign=sign: sign * on_curve(curve, np.array([u]))[0, axis],
                                   bounds=(max(0, at - 0.005), min(1, at + 0.005)), method="bounded",
                                   options={"xatol": 1e-9})
            assert sign * side == pytest.approx(min(best.fun, values.min()), abs=1e-6)


@given(cubics, st.lists(st.floats(0.05, 0.95), max_size=3, unique=True))
def test_cut_curves_lie_on_the_curve(curve: Cubic, shares: list[float]) -> None:
    """The parts of a curve follow it: each starts where the parameter says and the last ends where it ends."""
    shares = sorted(shares)
    parts = curve.cut(shares)
    assert len(parts) == len(shares) + 1
    starts = on_curve(curve, np.array([0.0, *shares]))
    assert np.array([part.start for part in parts]) == pytest.approx(starts, abs=1e-9)
    middles = on_curve(curve, np.array([(a + b) / 2 for a, b in pairwise([0.0, *shares, 1.0])]))
    assert np.vstack([on_curve(part, np.array([0.5])) for part in parts]) == pytest.approx(middles, abs=1e-9)


def test_a_cut_line_is_lines() -> None:
    """A line cut at a quarter and a half."""
    parts = Line((0.0, 0.0), (4.0, 8.0)).cut([0.25, 0.5])
    assert [(part.start, part.end) for part in parts] == [((0, 0), (1, 2)), ((1, 2), (2, 4)), ((2, 4), (4, 8))]


@given(points, points, points)
def test_a_raised_curve_is_the_quadratic(start: Point, control: Point, end: Point) -> None:
    """A quadratic curve as a cubic one goes through the same points."""
    t = np.linspace(0, 1, 9)[:, None]
    quadratic = (1 - t)**2 * np.array(start) + 2 * (1 - t) * t * np.array(control) + t**2 * np.array(end)
    assert on_curve(raised(start, control, end), t[:, 0]) == pytest.approx(quadratic, abs=1e-9)


@given(cubics)
def test_backwards_is_the_same_curve(curve: Cubic) -> None:
    """A curve drawn the other way has the same length and box, and its directions are turned about."""
    back = curve.reversed()
    assert back.length() == pytest.approx(curve.length(), abs=1e-2)
    assert back.bounds() == pytest.approx(curve.bounds())
    if len(set(curve)) == 4:
        assert math.remainder(heading_out(back) - heading_in(curve) - math.pi, math.tau) == pytest.approx(0, abs=1e-9)


@pytest.mark.parametrize("degrees", [0, 12, 29, 31, 90, 135, 180])
def test_a_turn_is_told_in_degrees(degrees: float) -> None:
    """Two lines that turn by so much either way, and a run that is cut where the turn is a corner."""
    for side in (1, -1):
        angle = math.radians(40 + side * degrees)
        before: Segment = Line((-math.cos(math.radians(40)), -math.sin(math.radians(40))), (0.0, 0.0))
        after: Segment = Line((0.0, 0.0), (math.cos(angle), math.sin(angle)))
        assert corner_degrees(before, after) == pytest.approx(degrees, abs=1e-9)
        assert len(smooth_runs((before, after))) == (2 if degrees > CORNER_DEGREES else 1)


def test_directions_of_curves_whose_handles_are_drawn_in() -> None:
    """A handle of no length says nothing: the next control point gives the direction; a dot has none."""
    drawn_in = Cubic((0.0, 0.0), (0.0, 0.0), (1.0, 1.0), (1.0, 1.0))
    assert heading_out(drawn_in) == heading_in(drawn_in) == pytest.approx(math.pi / 4)
    assert heading_out(QUARTER) == pytest.approx(math.pi / 2)
    assert abs(heading_in(QUARTER)) == pytest.approx(math.pi)
    assert heading_out(Line((3.0, 4.0), (3.0, 4.0))) == 0
