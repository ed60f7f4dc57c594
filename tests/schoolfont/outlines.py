"""Closed contours of known shape: polygons and circles."""

from __future__ import annotations

import itertools
import math

from namewright.geometry.points import Point
from namewright.geometry.segments import Cubic
from namewright.letters.strokes import Stroke, polyline_stroke

CIRCLE = 4 / 3 * math.tan(math.pi / 8)  # control arms of a quarter circle as a cubic: the usual approximation


def polygon(*points: Point) -> Stroke:
    """Return a closed contour of straight lines."""
    return polyline_stroke([*points, points[0]])


def circle(x: float, y: float, radius: float, *, clockwise: bool = True) -> Stroke:
    """Return a circle of four cubics."""
    corners = [(1.0, 0.0), (0.0, -1.0), (-1.0, 0.0), (0.0, 1.0)]
    if not clockwise:
        corners.reverse()
    segments = [Cubic(*((x + radius * px, y + radius * py) for px, py in (
        (ax, ay), (ax + CIRCLE * bx, ay + CIRCLE * by), (bx + CIRCLE * ax, by + CIRCLE * ay), (bx, by))))
        for (ax, ay), (bx, by) in itertools.pairwise([*corners, corners[0]])]
    return Stroke(tuple(segments))
