"""The two pieces of which every path is made: a straight line, and a cubic Bézier curve.

fontTools is imported where a curve is measured or cut: letters that are known beforehand need neither, and it brings
the standard library's logging with it, a tenth of loading.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Iterable, Sequence
from itertools import pairwise

from namewright.geometry.boxes import Box
from namewright.geometry.points import Point, between, heading, turn_degrees
from namewright.named_tuples import NamedTuple

LENGTH_TOLERANCE = 1e-4
CORNER_DEGREES = 30.0  # a sharper turn is a corner to hand and eye; found by trial on our letters and on fonts
_NO_BEND = 1e-9  # a smaller factor of t² or t would only divide rounding errors
_NO_WAY = 1e-9  # control points nearer than this to an end say nothing of the direction there


class Line(NamedTuple):
    """A straight line. One of no length is a dot."""

    start: Point
    end: Point

    def map(self, place: Callable[[Point], Point]) -> Line:
        """Return the line with both ends moved by ``place``."""
        return Line(place(self.start), place(self.end))

    def reversed(self) -> Line:
        """Return the same line, drawn the other way."""
        return Line(self.end, self.start)

    def length(self, tolerance: float = LENGTH_TOLERANCE) -> float:
        """Return the length, which is exact whatever the tolerance."""
        return math.dist(self.start, self.end)

    def bounds(self) -> Box:
        """Return the box of the line."""
        return _box(self.start, self.end)

    def flattened(self, tolerance: float) -> list[Point]:
        """Return the points behind the start of a polyline along the line: its end."""
        return [self.end]

    def cut(self, shares: Sequence[float]) -> list[Line]:
        """Return the parts between ascending shares of the parameter, each greater than 0 and less than 1."""
        points = [self.start, *(between(self.start, self.end, share) for share in shares), self.end]
        return [Line(a, b) for a, b in pairwise(points)]


class Cubic(NamedTuple):
    """A cubic Bézier curve: where it starts, the two points that pull it, where it ends."""

    start: Point
    pull_out: Point
    pull_in: Point
    end: Point

    def map(self, place: Callable[[Point], Point]) -> Cubic:
        """Return the curve with every control point moved by ``place``."""
        return Cubic(place(self.start), place(self.pull_out), place(self.pull_in), place(self.end))

    def reversed(self) -> Cubic:
        """Return the same curve, drawn the other way."""
        return Cubic(self.end, self.pull_in, self.pull_out, self.start)

    def length(self, tolerance: float = LENGTH_TOLERANCE) -> float:
        """Return the arc length; fontTools halves the curve until chord and control polygon agree to ``tolerance``.

        That is asked of each part, not of the sum: measured against an exact integral, the error is up to 3 times the
        tolerance on the curves of our letters, and up to 80 times on curves with random control points.
        """
        from fontTools.misc.bezierTools import calcCubicArcLength

        return float(calcCubicArcLength(*self, tolerance=tolerance))

    def bounds(self) -> Box:
        """Return the box of the curve itself, not of its control points.

        A curve stays among its control points: where those that pull it lie between its ends, as in a quarter of a
        bowl, the box is that of the ends.
        """
        start, (ax, ay), (bx, by), end = self
        x0, y0, x1, y1 = ends = _box(start, end)
        if x0 <= ax <= x1 and x0 <= bx <= x1 and y0 <= ay <= y1 and y0 <= by <= y1:
            return ends
        (x0, x1), (y0, y1) = map(_reach, *self)
        return (x0, y0, x1, y1)

    def flattened(self, tolerance: float) -> list[Point]:
        """Return the points behind the start of a polyline that stays within ``tolerance`` of the curve.

        The parameter is cut into n equal steps. An arc of step h = 1/n strays from its chord by at most h²/8 times
        the greatest second derivative (Taylor's bound for linear interpolation); the second derivative of a cubic
        is linear, 6·(1−t)·(p₀−2p₁+p₂) + 6·t·(p₁−2p₂+p₃), so it is greatest at an end. Hence n = √(bend / 8·tolerance).
        """
        (ax, ay), (bx, by), (cx, cy), (dx, dy) = self
        bend = 6 * max(math.hypot(ax - 2 * bx + cx, ay - 2 * by + cy), math.hypot(bx - 2 * cx + dx, by - 2 * cy + dy))
        count = max(1, math.ceil(math.sqrt(bend / (8 * tolerance))))
        points = []
        for step in range(1, count + 1):
            t = step / count
            s = 1 - t
            w0, w1, w2, w3 = s * s * s, 3 * s * s * t, 3 * s * t * t, t * t * t
            points.append((w0 * ax + w1 * bx + w2 * cx + w3 * dx, w0 * ay + w1 * by + w2 * cy + w3 * dy))
        return points

    def cut(self, shares: Sequence[float]) -> list[Cubic]:
        """Return the parts between ascending shares of the parameter, each greater than 0 and less than 1."""
        from fontTools.misc.bezierTools import splitCubicAtT

        return [Cubic(*part) for part in splitCubicAtT(*self, *shares)] if shares else [self]


Segment = Line | Cubic


def _box(a: Point, b: Point) -> Box:
    (ax, ay), (bx, by) = a, b  # compared, not min and max: it is asked of every segment of every letter
    return (bx if bx < ax else ax, by if by < ay else ay, bx if bx > ax else ax, by if by > ay else ay)


def _reach(start: float, pull_out: float, pull_in: float, end: float) -> tuple[float, float]:
    """Return the least and the greatest value that one coordinate of a cubic curve takes.

    At t it is ((a·t + b)·t + c)·t + start, so where it turns 3·a·t² + 2·b·t + c is 0.
    """
    c = 3 * (pull_out - start)
    b = 3 * (pull_in - pull_out) - c
    a = end - start - c - b
    found = [start, end]
    for t in _zeros(3 * a, 2 * b, c):
        if 0 < t < 1:
            found.append(a * t * t * t + b * t * t + c * t + start)
    return (min(found), max(found))


def _zeros(a: float, b: float, c: float) -> tuple[float, ...]:
    """Return where a·t² + b·t + c is 0; nowhere, if it is so everywhere."""
    if abs(a) < _NO_BEND:
        return (-c / b,) if abs(b) >= _NO_BEND else ()
    under_root = b * b - 4 * a * c
    if under_root < 0:
        return ()
    root = math.sqrt(under_root)
    return ((-b + root) / 2 / a, (-b - root) / 2 / a)


def raised(start: Point, control: Point, end: Point) -> Cubic:
    """Return a quadratic Bézier curve as a cubic one, which is exact."""
    return Cubic(start, between(start, control, 2 / 3), between(end, control, 2 / 3), end)


def lines_through(points: Sequence[Point]) -> tuple[Line, ...]:
    """Return the lines from each point to the next."""
    return tuple(Line(a, b) for a, b in pairwise(points))


def flatten(segments: Iterable[Segment], tolerance: float) -> list[Point]:
    """Return a polyline along joined segments that stays within ``tolerance`` of them."""
    points: list[Point] = []
    for segment in segments:
        if not points:
            points.append(segment.start)
        points.extend(segment.flattened(tolerance))
    return points


def length_of(segments: Iterable[Segment], tolerance: float = LENGTH_TOLERANCE) -> float:
    """Return the length of joined segments, each found to a ``tolerance`` (see ``Cubic.length``)."""
    return sum(segment.length(tolerance) for segment in segments)


def heading_out(segment: Segment) -> float:
    """Return the direction in which the segment leaves its start, in radians; 0 for a dot."""
    return next((heading(segment.start, point) for point in segment[1:]
                 if math.dist(point, segment.start) > _NO_WAY), 0.0)


def heading_in(segment: Segment) -> float:
    """Return the direction in which the segment arrives at its end, in radians; 0 for a dot."""
    return next((heading(point, segment.end) for point in segment[-2::-1]
                 if math.dist(point, segment.end) > _NO_WAY), 0.0)


def corner_degrees(before: Segment, after: Segment) -> float:
    """Return how far a pencil turns between two joined segments: 0 straight on, 180 straight back."""
    return abs(turn_degrees(heading_in(before), heading_out(after)))


def smooth_runs(segments: Sequence[Segment]) -> tuple[tuple[Segment, ...], ...]:
    """Split joined segments at their corners into the smooth runs between them."""
    runs: list[list[Segment]] = [[segments[0]]]
    for before, after in pairwise(segments):
        if corner_degrees(before, after) > CORNER_DEGREES:
            runs.append([])
        runs[-1].append(after)
    return tuple(tuple(run) for run in runs)
