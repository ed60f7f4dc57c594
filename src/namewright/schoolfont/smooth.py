"""From a fine polyline to few lines and curves of a pen.

The unit is the caller's, 100 to the x-height. A polyline is cut at its corners; a run that is straight becomes one
line, any other cubic curves through a few of its points, smooth where they join.
"""

from __future__ import annotations

import itertools
import math
from collections.abc import Sequence

from namewright.geometry import distances
from namewright.geometry.points import Point, Vector, heading, turn_degrees, unit
from namewright.geometry.polylines import evenly, length
from namewright.geometry.segments import CORNER_DEGREES, Cubic, Line, Segment
from namewright.letters.strokes import Stroke

_SPACING = 2.5  # between the points that are smoothed
_ARM = 5.0  # a turn is seen over this way to both sides
_STRAIGHT = 1.2  # how far the points of a straight run may stray from the line through their middle
_KNOTS = 8.0  # between the points through which the curves run


def smooth_stroke(points: Sequence[Point]) -> Stroke:
    """Return a stroke along a polyline of at least two different points."""
    points = [point for point, _ in itertools.groupby(points)]
    runs = _runs(points)
    segments: list[Segment] = []
    for at, run in enumerate(runs):
        segments += _line_or_curves(run, free=(at == 0, at == len(runs) - 1))
    return Stroke(tuple(segments))


def _runs(points: list[Point]) -> list[list[Point]]:
    """Cut a polyline at its corners: where the turn within a short way is sharp, and sharpest."""
    fine = _with(points, evenly(points, max(1, round(length(points) / _SPACING))))
    turns = [_turn(fine, at) for at in range(len(fine))]
    cuts = [at for at in range(1, len(fine) - 1)
            if turns[at] > CORNER_DEGREES and turns[at] == max(turns[max(0, at - 3):at + 4])]
    return [fine[a:b + 1] for a, b in itertools.pairwise([0, *dict.fromkeys(cuts), len(fine) - 1])]


def _with(points: list[Point], even: list[Point]) -> list[Point]:
    """Return evenly spaced points with the sharp corners of the polyline put back in place of their neighbours."""
    sharp = [b for a, b, c in zip(points, points[1:], points[2:], strict=False) if _angle(a, b, c) > CORNER_DEGREES]
    for corner in sharp:
        nearest = min(range(len(even)), key=lambda at: math.dist(even[at], corner))
        if 0 < nearest < len(even) - 1:
            even[nearest] = corner
    return even


def _turn(points: list[Point], at: int) -> float:
    """Return the turn at a point, in degrees, seen over an arm's length to both sides."""
    arm = round(_ARM / _SPACING)
    if not 0 < at < len(points) - 1:
        return 0.0
    return _angle(points[max(0, at - arm)], points[at], points[min(len(points) - 1, at + arm)])


def _angle(a: Point, b: Point, c: Point) -> float:
    return abs(turn_degrees(heading(a, b), heading(b, c)))


def _line_or_curves(run: list[Point], free: tuple[bool, bool]) -> list[Segment]:
    """Return a run as a line or as curves; an end that is ``free``, no corner, comes to lie on the line of the rest."""
    if len(run) < 3:
        return [Line(run[0], run[-1])]
    if run[0] != run[-1]:
        ends = [_foot(end, run) if loose else end for end, loose in zip((run[0], run[-1]), free, strict=True)]
        if all(distances.to_line(point, *ends) < _STRAIGHT for point in run):
            return [Line(ends[0], ends[1])]
    even = _averaged(run)
    knots = evenly(even, max(2 if run[0] != run[-1] else 6, round(length(even) / _KNOTS)))
    slopes = [_slope(knots, at) for at in range(len(knots))]
    return [_cubic(knots[at], knots[at + 1], slopes[at], slopes[at + 1]) for at in range(len(knots) - 1)]


def _foot(end: Point, run: list[Point]) -> Point:
    """Return the point nearest to an end on the line through a run, from its middle in its mean way (least squares)."""
    mx, my = (sum(values) / len(run) for values in zip(*run, strict=True))
    xx, yy, xy = (sum(products) for products in zip(
        *(((x - mx) ** 2, (y - my) ** 2, (x - mx) * (y - my)) for x, y in run), strict=True))
    way = math.atan2(2 * xy, xx - yy) / 2
    dx, dy = math.cos(way), math.sin(way)
    along = (end[0] - mx) * dx + (end[1] - my) * dy
    return (mx + along * dx, my + along * dy)


def _averaged(run: list[Point]) -> list[Point]:
    """Return the points with each taken half way to its neighbours' middle, thrice; ends stay, unless a ring closes."""
    closes = run[0] == run[-1] and _angle(run[-2], run[0], run[1]) < CORNER_DEGREES
    for _ in range(3):
        if closes:
            run = [run[-2], *run, run[1]]
        inner = [((a[0] + 2 * b[0] + c[0]) / 4, (a[1] + 2 * b[1] + c[1]) / 4)
                 for a, b, c in zip(run, run[1:], run[2:], strict=False)]
        run = inner if closes else [run[0], *inner, run[-1]]
    return run


def _slope(knots: list[Point], at: int) -> Vector:
    """Return the unit tangent at a knot: that of the circle-like parabola through it and its neighbours."""
    if knots[0] == knots[-1] and at in (0, len(knots) - 1):
        a, b, c = knots[-2], knots[0], knots[1]
    elif at in (0, len(knots) - 1):
        return _end_slope(knots, at)
    else:
        a, b, c = knots[at - 1], knots[at], knots[at + 1]
    before, after = math.dist(a, b) or 1.0, math.dist(b, c) or 1.0
    return unit(((b[0] - a[0]) * after / before + (c[0] - b[0]) * before / after,
                  (b[1] - a[1]) * after / before + (c[1] - b[1]) * before / after))


def _end_slope(knots: list[Point], at: int) -> Vector:
    """Return the tangent at an end: the chord, turned as far again as the chord is from the next tangent."""
    a, b = (knots[0], knots[1]) if at == 0 else (knots[-2], knots[-1])
    chord = unit((b[0] - a[0], b[1] - a[1]))
    if len(knots) < 3:
        return chord
    tx, ty = _slope(knots, 1 if at == 0 else len(knots) - 2)
    twice = 2 * (chord[0] * tx + chord[1] * ty)
    return unit((twice * chord[0] - tx, twice * chord[1] - ty))


def _cubic(a: Point, b: Point, out: Vector, into: Vector) -> Cubic:
    third = math.dist(a, b) / 3
    return Cubic(a, (a[0] + third * out[0], a[1] + third * out[1]), (b[0] - third * into[0], b[1] - third * into[1]), b)
