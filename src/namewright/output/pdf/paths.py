"""Fragments as the operators of a PDF content stream, in hundredths of a millimetre, y up.

PDF knows only absolute points (ISO 32000-1, 8.5.2), which are whole numbers here, since a letter's have two decimals of
a millimetre.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from functools import lru_cache, partial

from namewright.letters.strokes import GridPoint
from namewright.lines.ink import Fragment

UNIT = 100.0  # to a millimetre
_NO_STEP = (0, 0)
_DIGITS = 2  # decimals of a millimetre that a letter has
_STRAIGHT = 0.02  # radians


def unit(mm: float) -> str:
    """Write a length in mm as hundredths, with one decimal where it needs one; a page is shorter than ten metres."""
    tenths = round(mm * UNIT * 10)
    if tenths < 0:
        return f"-{unit(-mm)}"
    return f"{tenths // 10}.{tenths % 10}" if tenths % 10 else f"{tenths // 10}"


def units(x_mm: float, y_mm: float) -> str:
    """Write a point as ``unit`` does its two lengths."""
    return f"{unit(x_mm)} {unit(y_mm)}"


@lru_cache(maxsize=4000)
def operators(fragment: Fragment) -> bytes:
    """Return the path of a fragment about its own origin.

    Where an open stroke turns back on itself the pen is lifted and set down again, which round ends do not show:
    PDFium bites a piece out of a round join of 180°.
    """
    written = _whole if fragment.digits == _DIGITS else partial(_finer, digits=fragment.digits)
    drawn: list[str] = []
    for (start, *segments) in fragment.strokes:
        (pen,), came = start, _NO_STEP
        drawn.append(f"{written(start)} m")
        for points in segments:
            if not fragment.closed:
                goes = _step(pen, points)
                if came is not _NO_STEP and _turns_back(came, goes):
                    drawn.append(f"{written((pen,))} m")
                came = goes if len(points) == 1 else _step(points[-1], [*points[-2::-1], pen], -1)
            drawn.append(f"{written(points)} {'l' if len(points) == 1 else 'c'}")
            pen = points[-1]
        if fragment.closed:
            drawn.append("h")
    return " ".join(drawn).encode("ascii")


def _whole(points: Iterable[GridPoint]) -> str:
    return " ".join([f"{x} {-y}" for x, y in points])


def _finer(points: Iterable[GridPoint], digits: int) -> str:
    scale = 10 ** digits
    return " ".join([units(x / scale, -y / scale) for x, y in points])


def _step(pen: GridPoint, points: Sequence[GridPoint], sign: int = 1) -> GridPoint:
    """Return the step from the pen to the first point that is not under it, or back with ``sign`` -1."""
    for x, y in points:
        if (x, y) != pen:
            return (sign * (x - pen[0]), sign * (y - pen[1]))
    return _NO_STEP


def _turns_back(came: GridPoint, goes: GridPoint) -> bool:
    """Whether the pen goes back the way it came, to about a degree."""
    along = came[0] * goes[0] + came[1] * goes[1]
    return along < 0 and abs(came[0] * goes[1] - came[1] * goes[0]) < _STRAIGHT * -along
