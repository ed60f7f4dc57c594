"""Path data of ours as the operators of a PDF content stream, in hundredths of a millimetre, y up.

``lines/ink.py`` writes relative commands; PDF knows only absolute points (ISO 32000-1, 8.5.2), which are whole
numbers here, since path data has two decimals of a millimetre.
"""

from __future__ import annotations

import math
import re
from collections.abc import Iterable, Iterator, Sequence
from functools import lru_cache

from namewright.geometry.points import Point

UNIT = 100.0  # to a millimetre
_NOWHERE_MM = 0.001
_NO_STEP = (0.0, 0.0)
_STRAIGHT = 0.02  # radians
_COMMAND = re.compile(r"([a-z])([^a-z]*)")


def unit(mm: float) -> str:
    """Write a length in mm as hundredths, with one decimal where it needs one; a page is shorter than ten metres."""
    return "%g" % (round(mm * UNIT * 10) / 10)


def units(x_mm: float, y_mm: float) -> str:
    """Write a point as ``unit`` does its two lengths."""
    return "%g %g" % (round(x_mm * UNIT * 10) / 10, round(y_mm * UNIT * 10) / 10)  # noqa: UP031


@lru_cache(maxsize=4000)
def operators(data: str) -> bytes:
    """Return the path of a fragment about its own origin. Raises KeyError for a command that we do not write.

    Where an open stroke turns back on itself the pen is lifted and set down again, which round ends do not show:
    PDFium bites a piece out of a round join of 180°.
    """
    pen = start = came = _NO_STEP
    drawn: list[str] = []
    lifts = "z" not in data
    for command, numbers in _COMMAND.findall(data):
        if command == "z":
            drawn.append("h")
            pen = start
            continue
        operator = _OPERATOR[command]
        for points in _points(command, numbers, pen):
            if command == "m":
                start, came = points[0], _NO_STEP
            elif lifts:
                goes = _step(pen, points)
                if came is not _NO_STEP and _turns_back(came, goes):
                    drawn.append(f"{_said([pen])} m")
                came = goes if len(points) == 1 else _step(points[-1], [*points[-2::-1], pen], -1.0)
            drawn.append(f"{_said(points)} {operator}")
            pen = points[-1]
    return " ".join(drawn).encode("ascii")


def _points(command: str, numbers: str, pen: Point) -> Iterator[list[Point]]:
    """Yield the absolute points of each segment of a command."""
    x, y = pen
    if command == "h":
        yield [(x + float(numbers), y)]
    elif command == "v":
        yield [(x, y + float(numbers))]
    else:
        values = [float(value) for value in numbers.split()]
        for at in range(0, len(values), 6):
            points = [(x + dx, y + dy) for dx, dy in zip(values[at:at + 6:2], values[at + 1:at + 6:2], strict=True)]
            x, y = points[-1]
            yield points


def _step(pen: Point, points: Sequence[Point], sign: float = 1.0) -> Point:
    """Return the step from the pen to the first point that is not under it, or back with ``sign`` -1."""
    for point in points:
        if math.dist(pen, point) > _NOWHERE_MM:
            return (sign * (point[0] - pen[0]), sign * (point[1] - pen[1]))
    return _NO_STEP


def _turns_back(came: Point, goes: Point) -> bool:
    """Whether the pen goes back the way it came, to about a degree."""
    along = came[0] * goes[0] + came[1] * goes[1]
    return along < 0 and abs(came[0] * goes[1] - came[1] * goes[0]) < _STRAIGHT * -along


def _said(points: Iterable[Point]) -> str:
    return " ".join([units(x, -y) for x, y in points])


_OPERATOR = {"m": "m", "l": "l", "h": "l", "v": "l", "c": "c"}
