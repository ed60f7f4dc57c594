"""Pen strokes: the path of the pencil, as lines and cubic curves in the order and direction of writing.

The unit and the axes are the caller's (letter units with y up in an alphabet, millimetres with y down on a
page); nothing here depends on them. Out of scope: outlines, colour, and what a stroke means.
"""

from __future__ import annotations

import itertools
import math
from bisect import bisect_right
from collections.abc import Callable, Iterable
from dataclasses import dataclass

from fontTools.misc.bezierTools import calcCubicArcLength, calcCubicBounds
from fontTools.pens.recordingPen import RecordingPen
from fontTools.svgLib.path import parse_path

from namewright.units import number

Point = tuple[float, float]
Segment = tuple[Point, ...]  # two points: a line; four points: a cubic curve
Bounds = tuple[float, float, float, float]  # x min, y min, x max, y max

_CORNER_DEGREES = 30.0  # a turn sharper than this is a corner to the hand; found by trial on the alphabet


@dataclass(frozen=True, slots=True)
class Stroke:
    """One stroke of the pen, without a lift. A dot is a stroke of one line of no length."""

    segments: tuple[Segment, ...]

    @property
    def start(self) -> Point:
        """Where the pencil touches the paper."""
        return self.segments[0][0]

    @property
    def end(self) -> Point:
        """Where the pencil leaves the paper."""
        return self.segments[-1][-1]

    @property
    def is_dot(self) -> bool:
        """Whether the pencil only touches the paper and does not travel."""
        return all(point == self.start for segment in self.segments for point in segment)

    def map(self, place: Callable[[Point], Point]) -> Stroke:
        """Return the stroke with every control point moved by ``place``."""
        return Stroke(tuple(tuple(place(point) for point in segment) for segment in self.segments))

    def length(self, tolerance: float = 1e-4) -> float:
        """Return the arc length, in the caller's unit, to within about ``tolerance`` a segment."""
        return sum(segment_length(segment, tolerance) for segment in self.segments)

    def bounds(self) -> Bounds:
        """Return the box of the centreline (the pen's width not counted)."""
        return join_bounds(_segment_bounds(segment) for segment in self.segments)

    def path_data(self, digits: int = 2) -> str:
        """Return SVG path data in relative commands that begin at (0, 0): add ``M x y`` before it.

        Rounding is done on absolute positions, so errors never add up along the stroke.
        """
        x0, y0 = self.start
        pen, parts = (0.0, 0.0), []
        for segment in self.segments:
            points = [(round(x - x0, digits), round(y - y0, digits)) for x, y in segment[1:]]
            parts.append(_relative_command(pen, points, digits))
            pen = points[-1]
        return "".join(parts)


def _relative_command(pen: Point, points: list[Point], digits: int) -> str:
    steps = [(x - pen[0], y - pen[1]) for x, y in points]
    if len(steps) == 1:
        dx, dy = (number(value, digits) for value in steps[0])
        if dy == "0":
            return f"h{dx}"
        return f"v{dy}" if dx == "0" else f"l{dx} {dy}"
    return "c" + " ".join(number(value, digits) for step in steps for value in step)


def parse_stroke(data: str) -> Stroke:
    """Read one stroke from SVG path data (W3C SVG 2, §9.3) with a single ``M``.

    Raises ValueError for data that does not parse, lifts the pen, or closes the path.
    """
    pen = RecordingPen()
    try:
        parse_path(data, pen)
    except Exception as error:
        raise ValueError(f"path data “{data}” does not parse: {error}") from error
    segments: list[Segment] = []
    position: Point | None = None
    for command, points in pen.value:
        if command == "moveTo":
            if position is not None:
                raise ValueError(f"path data “{data}” lifts the pen; write two strokes")
            position = points[0]
        elif command in ("lineTo", "curveTo") and position is not None:
            segments.append((position, *points))
            position = points[-1]
        elif command == "qCurveTo" and position is not None:
            (control, end) = points
            segments.append((position, _toward(position, control), _toward(end, control), end))
            position = end
        elif command != "endPath":
            raise ValueError(f"path data “{data}” closes the path; a pen stroke is open")
    if not segments:
        raise ValueError(f"path data “{data}” draws nothing")
    return Stroke(tuple(segments))


def _toward(a: Point, b: Point) -> Point:
    """Return the point two thirds of the way from a to b (a quadratic curve raised to a cubic)."""
    return (a[0] + (b[0] - a[0]) * 2 / 3, a[1] + (b[1] - a[1]) * 2 / 3)


def segment_length(segment: Segment, tolerance: float = 1e-4) -> float:
    """Return the arc length of one segment to within about ``tolerance``."""
    if len(segment) == 2:
        return math.dist(*segment)
    return float(calcCubicArcLength(*segment, tolerance=tolerance))


def _segment_bounds(segment: Segment) -> Bounds:
    if len(segment) == 4:
        x0, y0, x1, y1 = calcCubicBounds(*segment)
        return (x0, y0, x1, y1)
    (ax, ay), (bx, by) = segment
    return (min(ax, bx), min(ay, by), max(ax, bx), max(ay, by))


def join_bounds(boxes: Iterable[Bounds]) -> Bounds:
    """Return the box around all boxes. Raises ValueError where there is none."""
    x0, y0, x1, y1 = zip(*boxes, strict=True)
    return (min(x0), min(y0), max(x1), max(y1))


def direction_out(segment: Segment) -> float:
    """Return the direction, in radians, in which the segment leaves its first point."""
    return _direction([point for point in segment])


def direction_in(segment: Segment) -> float:
    """Return the direction, in radians, in which the segment arrives at its last point."""
    return _direction([point for point in reversed(segment)]) + math.pi


def _direction(points: list[Point]) -> float:
    x0, y0 = points[0]
    for x, y in points[1:]:
        if math.hypot(x - x0, y - y0) > 1e-9:
            return math.atan2(y - y0, x - x0)
    return 0.0


def turn_degrees(before: Segment, after: Segment) -> float:
    """Return how far the pencil turns between two joined segments: 0 straight on, 180 straight back."""
    turn = direction_out(after) - direction_in(before)
    return abs(math.degrees(math.remainder(turn, math.tau)))


def spans(stroke: Stroke) -> tuple[tuple[Segment, ...], ...]:
    """Split a stroke at its corners into the smooth runs between them."""
    runs: list[list[Segment]] = [[stroke.segments[0]]]
    for before, after in zip(stroke.segments, stroke.segments[1:], strict=False):
        if turn_degrees(before, after) > _CORNER_DEGREES:
            runs.append([])
        runs[-1].append(after)
    return tuple(tuple(run) for run in runs)


def flatten(segments: Iterable[Segment], tolerance: float) -> list[Point]:
    """Return a polyline that stays within ``tolerance`` of the segments."""
    points: list[Point] = []
    for segment in segments:
        if not points:
            points.append(segment[0])
        if len(segment) == 2:
            points.append(segment[1])
        else:
            points.extend(_flatten_cubic(segment, tolerance))
    return points


def _flatten_cubic(segment: Segment, tolerance: float) -> list[Point]:
    """Cut a cubic into equal steps of its parameter.

    The count is the bound from the second differences: an arc of parameter step h strays from its chord by
    at most h²/8 times the greatest second derivative (a Taylor bound).
    """
    (ax, ay), (bx, by), (cx, cy), (dx, dy) = segment
    bend = 6 * max(math.hypot(ax - 2 * bx + cx, ay - 2 * by + cy), math.hypot(bx - 2 * cx + dx, by - 2 * cy + dy))
    count = max(1, math.ceil(math.sqrt(bend / (8 * tolerance))))
    points = []
    for step in range(1, count + 1):
        t = step / count
        s = 1 - t
        w0, w1, w2, w3 = s * s * s, 3 * s * s * t, 3 * s * t * t, t * t * t
        points.append((w0 * ax + w1 * bx + w2 * cx + w3 * dx, w0 * ay + w1 * by + w2 * cy + w3 * dy))
    return points


def evenly(points: list[Point], count: int) -> list[Point]:
    """Return ``count`` + 1 points at equal distances along a polyline, both ends among them."""
    reach = [0.0]
    for a, b in itertools.pairwise(points):
        reach.append(reach[-1] + math.dist(a, b))
    return [_point_at(points, reach, reach[-1] * index / count) for index in range(count + 1)]


def _point_at(points: list[Point], reach: list[float], distance: float) -> Point:
    index = min(max(bisect_right(reach, distance) - 1, 0), len(points) - 2)
    run = reach[index + 1] - reach[index]
    t = min(1.0, (distance - reach[index]) / run) if run else 0.0
    (ax, ay), (bx, by) = points[index], points[index + 1]
    return (ax + (bx - ax) * t, ay + (by - ay) * t)
