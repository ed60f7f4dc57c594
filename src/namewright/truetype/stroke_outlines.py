"""Outlines: pen strokes widened to shapes that can be filled, by Skia's path geometry (PyPI skia-pathops).

The one module that knows that library; it is needed to build fonts and for nothing else (the extra ``fonts``).
Font units, y up; outer contours run clockwise, as TrueType asks. Curves are quadratic.
"""

from __future__ import annotations

from collections.abc import Iterable
from typing import Any

import pathops  # type: ignore[import-not-found,import-untyped,unused-ignore]

from namewright.geometry.points import Point
from namewright.geometry.segments import Line, Segment
from namewright.letters.strokes import Stroke

Shape = Any  # pathops.Path, which has no types
_CONIC = 2.0  # Skia’s own bound, in font units, for arcs made quadratic
_NO_MITER = 4.0


def widened(strokes: Iterable[Stroke], width: float) -> Shape:
    """Return what a round pen of ``width`` covers along all strokes, as one shape without overlaps.

    Segment by segment: an outline that runs over itself, where a pencil retraces its track, is more than the
    library can always untangle (it fills the bowl of a, for one), while plain pieces unite cleanly.
    """
    return union(_widen(segment, width) for stroke in strokes for segment in stroke.segments)


def _widen(segment: Segment, width: float) -> Shape:
    """Cover one segment; a line of no length makes a dot."""
    path = pathops.Path()
    pen = path.getPen()
    pen.moveTo(segment.start)
    pen.lineTo(segment.end) if isinstance(segment, Line) else pen.curveTo(*segment[1:])
    pen.endPath()
    path.stroke(width, pathops.LineCap.ROUND_CAP, pathops.LineJoin.ROUND_JOIN, _NO_MITER)
    path.convertConicsToQuads(_CONIC)
    return path


def disc(centre: Point, width: float) -> Shape:
    """Return a filled circle."""
    return _widen(Line(centre, centre), width)


def box(x0: float, y0: float, x1: float, y1: float) -> Shape:
    """Return a filled rectangle."""
    path = pathops.Path()
    pen = path.getPen()
    pen.moveTo((x0, y0))
    for point in ((x0, y1), (x1, y1), (x1, y0)):
        pen.lineTo(point)
    pen.closePath()
    return path


def union(shapes: Iterable[Shape]) -> Shape:
    """Return everything that any of the shapes covers."""
    builder = pathops.OpBuilder(fix_winding=True, keep_starting_points=False, clockwise=True)
    for shape in shapes:
        builder.add(shape, pathops.PathOp.UNION)
    return builder.resolve()


def without(shape: Shape, hole: Shape) -> Shape:
    """Return what ``shape`` covers and ``hole`` does not."""
    return pathops.op(shape, hole, pathops.PathOp.DIFFERENCE, fix_winding=True, keep_starting_points=False,
                      clockwise=True)
