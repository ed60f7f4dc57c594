"""Polylines: points joined by straight lines, each at least a start and an end."""

from __future__ import annotations

import math
from bisect import bisect_right
from collections.abc import Sequence
from itertools import accumulate, pairwise

from namewright.geometry.points import Point, between


def length(points: Sequence[Point]) -> float:
    """Return the length of a polyline."""
    return sum(math.dist(a, b) for a, b in pairwise(points))


def evenly(points: Sequence[Point], count: int) -> list[Point]:
    """Return ``count`` + 1 points at equal distances along a polyline, both ends among them."""
    return _evenly(points, reaches(points), count)


def _evenly(points: Sequence[Point], reach: Sequence[float], count: int) -> list[Point]:
    """Return the same where it is known how far along each point lies: one walk along, not a search for every point."""
    if len(points) == 1:  # what is left of a stroke of a school's font can be one point
        return list(points) * (count + 1)
    found, last, at = [], len(points) - 2, 0
    for step in range(count + 1):
        distance = reach[-1] * step / count
        while at < last and reach[at + 1] <= distance:
            at += 1
        run = reach[at + 1] - reach[at]
        found.append(between(points[at], points[at + 1], min(1.0, (distance - reach[at]) / run) if run else 0.0))
    return found


def reaches(points: Sequence[Point]) -> list[float]:
    """Return how far along a polyline each of its points lies."""
    return list(accumulate((math.dist(a, b) for a, b in pairwise(points)), initial=0.0))


def closely(points: Sequence[Point], step: float) -> list[Point]:
    """Return points at equal distances of at most ``step`` along a polyline, both ends among them."""
    reach = reaches(points)
    return _evenly(points, reach, max(1, math.ceil(reach[-1] / step)))


def steps(a: Point, b: Point, count: int) -> list[Point]:
    """Return ``count`` + 1 points at equal distances on the straight way from a to b, both among them."""
    dx, dy = (b[0] - a[0]) / count, (b[1] - a[1]) / count
    return [(a[0] + at * dx, a[1] + at * dy) for at in range(count + 1)]


def point_at(points: Sequence[Point], reach: Sequence[float], distance: float) -> Point:
    """Return the point at a distance along a polyline; ``reach`` tells how far along each of its points lies."""
    index = min(max(bisect_right(reach, distance) - 1, 0), len(points) - 2)
    run = reach[index + 1] - reach[index]
    return between(points[index], points[index + 1], min(1.0, (distance - reach[index]) / run) if run else 0.0)
