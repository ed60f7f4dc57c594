"""From a fine polyline to few lines and curves of a pen.

The unit is the caller's, 100 to the x-height. A polyline is cut at its corners; a run that is straight becomes one
line, any other cubic curves through a few of its points, smooth where they join.
"""

from __future__ import annotations

import itertools
import math
from collections.abc import Sequence

from namewright.letters.strokes import Point, Segment, Stroke, evenly

_SPACING = 2.5  # between the points that are smoothed
_CORNER = 33.0  # degrees within twice _ARM; found by trial
_ARM = 5.0
_STRAIGHT = 0.8  # how far a straight run may stray from its chord
_KNOTS = 8.0  # between the points through which the curves run


def smooth_stroke(points: Sequence[Point]) -> Stroke:
    """Return a stroke along a polyline of at least two different points."""
    points = [point for point, _ in itertools.groupby(points)]
    segments: list[Segment] = []
    for run in _runs(points):
        segments += _line_or_curves(run)
    return Stroke(tuple(segments))


def _runs(points: list[Point]) -> list[list[Point]]:
    """Cut a polyline at its corners: where the turn within a short way is sharp, and sharpest."""
    total = sum(math.dist(a, b) for a, b in itertools.pairwise(points))
    fine = _with(points, evenly(points, max(1, round(total / _SPACING))))
    turns = [_turn(fine, at) for at in range(len(fine))]
    cuts = [at for at in range(1, len(fine) - 1)
            if turns[at] > _CORNER and turns[at] == max(turns[max(0, at - 3):at + 4])]
    return [fine[a:b + 1] for a, b in itertools.pairwise([0, *dict.fromkeys(cuts), len(fine) - 1])]


def _with(points: list[Point], even: list[Point]) -> list[Point]:
    """Return evenly spaced points with the sharp corners of the polyline put back in place of their neighbours."""
    sharp = [b for a, b, c in zip(points, points[1:], points[2:], strict=False) if _angle(a, b, c) > _CORNER]
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
    before, after = math.atan2(b[1] - a[1], b[0] - a[0]), math.atan2(c[1] - b[1], c[0] - b[0])
    return abs(math.degrees(math.remainder(after - before, math.tau)))


def _line_or_curves(run: list[Point]) -> list[Segment]:
    if len(run) < 3 or (run[0] != run[-1] and all(_off(point, run[0], run[-1]) < _STRAIGHT for point in run)):
        return [(run[0], run[-1])]
    even = _averaged(run)
    total = sum(math.dist(a, b) for a, b in itertools.pairwise(even))
    knots = evenly(even, max(2 if run[0] != run[-1] else 6, round(total / _KNOTS)))
    slopes = [_slope(knots, at) for at in range(len(knots))]
    return [_cubic(knots[at], knots[at + 1], slopes[at], slopes[at + 1]) for at in range(len(knots) - 1)]


def _averaged(run: list[Point]) -> list[Point]:
    """Return the points with each taken half way to its neighbours' middle, thrice; ends stay (of a ring, too)."""
    for _ in range(3):
        inner = [((a[0] + 2 * b[0] + c[0]) / 4, (a[1] + 2 * b[1] + c[1]) / 4)
                 for a, b, c in zip(run, run[1:], run[2:], strict=False)]
        run = [run[0], *inner, run[-1]]
    return run


def _off(point: Point, a: Point, b: Point) -> float:
    """Return how far a point is from the chord from a to b."""
    return abs((point[0] - a[0]) * (b[1] - a[1]) - (point[1] - a[1]) * (b[0] - a[0])) / math.dist(a, b)


def _slope(knots: list[Point], at: int) -> Point:
    """Return the unit tangent at a knot: that of the circle-like parabola through it and its neighbours."""
    if knots[0] == knots[-1] and at in (0, len(knots) - 1):
        a, b, c = knots[-2], knots[0], knots[1]
    elif at in (0, len(knots) - 1):
        return _end_slope(knots, at)
    else:
        a, b, c = knots[at - 1], knots[at], knots[at + 1]
    before, after = math.dist(a, b) or 1.0, math.dist(b, c) or 1.0
    return _unit(((b[0] - a[0]) * after / before + (c[0] - b[0]) * before / after,
                  (b[1] - a[1]) * after / before + (c[1] - b[1]) * before / after))


def _end_slope(knots: list[Point], at: int) -> Point:
    """Return the tangent at an end: the chord, turned as far again as the chord is from the next tangent."""
    a, b = (knots[0], knots[1]) if at == 0 else (knots[-2], knots[-1])
    chord = _unit((b[0] - a[0], b[1] - a[1]))
    if len(knots) < 3:
        return chord
    tx, ty = _slope(knots, 1 if at == 0 else len(knots) - 2)
    twice = 2 * (chord[0] * tx + chord[1] * ty)
    return _unit((twice * chord[0] - tx, twice * chord[1] - ty))


def _unit(vector: Point) -> Point:
    size = math.hypot(*vector) or 1.0
    return (vector[0] / size, vector[1] / size)


def _cubic(a: Point, b: Point, out: Point, into: Point) -> Segment:
    third = math.dist(a, b) / 3
    return (a, (a[0] + third * out[0], a[1] + third * out[1]), (b[0] - third * into[0], b[1] - third * into[1]), b)
