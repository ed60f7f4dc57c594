"""How far a point is from a line, a segment of it, a polyline, a box."""

from __future__ import annotations

import math
from collections.abc import Sequence
from itertools import pairwise

from namewright.geometry.boxes import Box
from namewright.geometry.points import Point, between


def share_along(point: Point, a: Point, b: Point) -> float:
    """Return where on the endless line through a and b a point has its foot: 0 at a, 1 at b; 0 if a is b."""
    dx, dy = b[0] - a[0], b[1] - a[1]
    square = dx * dx + dy * dy
    return ((point[0] - a[0]) * dx + (point[1] - a[1]) * dy) / square if square else 0.0


def to_line(point: Point, a: Point, b: Point) -> float:
    """Return the distance from a point to the endless line through two different points."""
    return abs((point[0] - a[0]) * (b[1] - a[1]) - (point[1] - a[1]) * (b[0] - a[0])) / math.dist(a, b)


def to_segment(point: Point, a: Point, b: Point) -> float:
    """Return the distance from a point to the line from a to b, its ends among it; they may be one point."""
    return math.dist(point, between(a, b, min(max(share_along(point, a, b), 0.0), 1.0)))


def to_polyline(point: Point, points: Sequence[Point]) -> float:
    """Return the distance from a point to a polyline."""
    (x, y), least = point, math.inf
    for (ax, ay), (bx, by) in pairwise(points):  # ``to_segment``, written out: it is asked of every mark that is tried
        dx, dy = bx - ax, by - ay
        square = dx * dx + dy * dy
        share = ((x - ax) * dx + (y - ay) * dy) / square if square else 0.0
        share = 0.0 if share < 0.0 else min(share, 1.0)
        away = math.hypot(x - (ax + dx * share), y - (ay + dy * share))
        if away < least:
            least = away
    return least


def is_near_box(point: Point, box: Box, reach: float) -> bool:
    """Return whether a point comes nearer to a box than ``reach``; inside it is at no distance."""
    (x, y), (x0, y0, x1, y1) = point, box
    across = x0 - x if x < x0 else x - x1 if x > x1 else 0.0
    down = y0 - y if y < y0 else y - y1 if y > y1 else 0.0
    return across * across + down * down < reach * reach
