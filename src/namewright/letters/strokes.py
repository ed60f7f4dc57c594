"""Pen strokes: the path of the pencil, as lines and cubic curves in the order and direction of writing.

The unit and the axes are the caller's (letter units with y up in an alphabet, millimetres with y down on a
page); nothing here depends on them. Out of scope: outlines, colour, and what a stroke means.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Sequence
from typing import NamedTuple

from namewright.geometry import boxes
from namewright.geometry.boxes import Box
from namewright.geometry.points import Point
from namewright.geometry.segments import (
    LENGTH_TOLERANCE,
    Cubic,
    Line,
    Segment,
    flatten,
    length_of,
    lines_through,
    raised,
)
from namewright.units import number

_COMMAND = re.compile(r"([A-Za-z])([^A-Za-z]*)")
_NUMBERS = {"M": 2, "L": 2, "H": 1, "V": 1, "h": 1, "C": 6}  # of each command that is read without a library


class Stroke(NamedTuple):
    """One stroke of the pen, without a lift. A dot is a stroke of one line of no length."""

    segments: tuple[Segment, ...]

    @property
    def start(self) -> Point:
        """Where the pencil touches the paper."""
        return self.segments[0].start

    @property
    def end(self) -> Point:
        """Where the pencil leaves the paper."""
        return self.segments[-1].end

    @property
    def is_dot(self) -> bool:
        """Whether the pencil only touches the paper and does not travel."""
        return all(point == self.start for segment in self.segments for point in segment)

    def map(self, place: Callable[[Point], Point]) -> Stroke:
        """Return the stroke with every control point moved by ``place``."""
        return Stroke(tuple(segment.map(place) for segment in self.segments))

    def snapped(self, digits: int) -> Stroke:
        """Return the stroke with every control point rounded to so many decimals."""
        return Stroke(tuple([segment.snapped(digits) for segment in self.segments]))

    def shifted(self, dx: float, dy: float) -> Stroke:
        """Return the stroke elsewhere."""
        return self.map(lambda point: (point[0] + dx, point[1] + dy))

    def reversed(self) -> Stroke:
        """Return the same path, drawn from its end to its start."""
        return Stroke(tuple(segment.reversed() for segment in self.segments[::-1]))

    def length(self, tolerance: float = LENGTH_TOLERANCE) -> float:
        """Return the arc length, in the caller's unit, to within about ``tolerance`` a segment."""
        return length_of(self.segments, tolerance)

    def bounds(self) -> Box:
        """Return the box of the centreline (the pen's width not counted)."""
        return boxes.joined(segment.bounds() for segment in self.segments)

    def flattened(self, tolerance: float) -> list[Point]:
        """Return a polyline that stays within ``tolerance`` of the stroke."""
        return flatten(self.segments, tolerance)

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


def polyline_stroke(points: Sequence[Point]) -> Stroke:
    """Return the stroke that runs straight from each point to the next."""
    return Stroke(lines_through(points))


def dot_stroke(point: Point) -> Stroke:
    """Return the stroke of a pencil that only touches the paper."""
    return Stroke((Line(point, point),))


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
    return Stroke(_plain(data) or _any(data))


def _plain(data: str) -> tuple[Segment, ...] | None:
    """Return the segments of path data in the few commands that letters are written in; None where it has others.

    These are all that most runs meet, and the library's reader brings a reader of XML with it.
    """
    segments: list[Segment] = []
    pen: Point | None = None
    for command, written in _COMMAND.findall(data):
        values = written.split()
        if len(values) != _NUMBERS.get(command) or (pen is None) != (command == "M"):
            return None
        try:
            points = _points(command, list(map(float, values)), pen or (0.0, 0.0))
        except ValueError:  # numbers that no space parts
            return None
        if pen is not None:
            segments.append(Cubic(pen, *points) if command == "C" else Line(pen, *points))
        pen = points[-1]
    return tuple(segments)


def _points(command: str, values: Sequence[float], pen: Point) -> list[Point]:
    """Return the points behind the pen that a command names."""
    if command == "V":
        return [(pen[0], values[0])]
    if command in "Hh":
        return [(values[0] + (pen[0] if command == "h" else 0.0), pen[1])]
    return list(zip(values[::2], values[1::2], strict=True))


def _any(data: str) -> tuple[Segment, ...]:
    """Return the segments of any path data, as fontTools reads it."""
    from fontTools.pens.recordingPen import RecordingPen
    from fontTools.svgLib.path import parse_path

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
        elif command != "endPath" and position is not None:
            segments.append(_segment(command, position, points, data))
            position = points[-1]
    if not segments:
        raise ValueError(f"path data “{data}” draws nothing")
    return tuple(segments)


def _segment(command: str, start: Point, points: Sequence[Point], data: str) -> Segment:
    """Return one drawing command of fontTools' pens as a segment."""
    if command == "lineTo":
        return Line(start, *points)
    if command == "curveTo":
        return Cubic(start, *points)
    if command == "qCurveTo":
        return raised(start, *points)
    raise ValueError(f"path data “{data}” closes the path; a pen stroke is open")
