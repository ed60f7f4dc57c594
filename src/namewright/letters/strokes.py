"""Pen strokes: the path of the pencil, as lines and cubic curves in the order and direction of writing.

The unit and the axes are the caller's (letter units with y up in an alphabet, millimetres with y down on a
page); nothing here depends on them. Out of scope: outlines, colour, and what a stroke means.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from functools import lru_cache

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
from namewright.named_tuples import NamedTuple
from namewright.patterns import pattern
from namewright.units import number

GridPoint = tuple[int, int]
GridStroke = tuple[tuple[GridPoint, ...], ...]
_UNITS = (1, 10, 100, 1000, 10_000)  # of so many decimals
_HALF = 0.499999  # a little less than that: nearer to it, a product says nothing
_COMMAND = pattern(r"([A-Za-z])([^A-Za-z]*)")
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
        start = self.start
        return all(point == start for segment in self.segments for point in segment)

    def map(self, place: Callable[[Point], Point]) -> Stroke:
        """Return the stroke with every control point moved by ``place``."""
        return Stroke(tuple([segment.map(place) for segment in self.segments]))

    def on_grid(self, digits: int) -> GridStroke:
        """Return the start, then the points behind the start of each segment, rounded to so many decimals.

        They are counted in units of the last decimal: sums of whole numbers are exact and quickly written.
        """
        return tuple([tuple([(grid_units(x, digits), grid_units(y, digits)) for x, y in points])
                      for points in ((self.start,), *[segment[1:] for segment in self.segments])])

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
        if len(self.segments) == 1:
            return self.segments[0].bounds()
        return boxes.joined([segment.bounds() for segment in self.segments])

    def flattened(self, tolerance: float) -> list[Point]:
        """Return a polyline that stays within ``tolerance`` of the stroke."""
        return flatten(self.segments, tolerance)

    def path_data(self, digits: int = 2) -> str:
        """Return SVG path data in relative commands that begin at (0, 0): add ``M x y`` before it.

        Rounding is done on absolute positions, so errors never add up along the stroke.
        """
        x, y = self.start
        return relative_data(self.shifted(-x, -y).on_grid(digits), digits)


def polyline_stroke(points: Sequence[Point]) -> Stroke:
    """Return the stroke that runs straight from each point to the next."""
    return Stroke(lines_through(points))


def dot_stroke(point: Point) -> Stroke:
    """Return the stroke of a pencil that only touches the paper."""
    return Stroke((Line(point, point),))


def grid_units(value: float, digits: int) -> int:
    """Return a length rounded to so many decimals, in units of the last one.

    Python rounds to a whole number in half the time, but the product may come to lie on the other side of a half.
    """
    exact = value * _UNITS[digits]
    near = round(exact)
    return near if abs(exact - near) < _HALF else round(round(value, digits) * _UNITS[digits])


def relative_data(stroke: GridStroke, digits: int) -> str:
    """Return SVG path data in relative commands for a stroke ``on_grid``; the pen stands at its start."""
    ((x, y),), *segments = stroke
    parts = []
    for segment in segments:
        if len(segment) == 1:
            dx, dy = segment[0][0] - x, segment[0][1] - y
            if not dy:
                parts.append(f"h{grid_number(dx, digits)}")
            elif not dx:
                parts.append(f"v{grid_number(dy, digits)}")
            else:
                parts.append(f"l{grid_number(dx, digits)} {grid_number(dy, digits)}")
        else:
            parts.append("c" + " ".join([f"{grid_number(to_x - x, digits)} {grid_number(to_y - y, digits)}"
                                         for to_x, to_y in segment]))
        x, y = segment[-1]
    return "".join(parts)


@lru_cache(maxsize=10_000)  # letters of one size share most of their steps
def grid_number(units: int, digits: int) -> str:
    """Write a length of so many units of its last decimal."""
    return number(units / _UNITS[digits], digits)


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
