"""Points and directions. Angles are in radians, from the x axis towards the y axis, unless a name says degrees."""

from __future__ import annotations

import math

Point = tuple[float, float]
Vector = tuple[float, float]


def between(a: Point, b: Point, share: float) -> Point:
    """Return the point that lies ``share`` of the way from a to b: 0 is a, 1 is b."""
    return (a[0] + (b[0] - a[0]) * share, a[1] + (b[1] - a[1]) * share)


def unit(vector: Vector) -> Vector:
    """Return the vector of length 1 in the same direction; one without a length stays as it is."""
    size = math.hypot(*vector) or 1.0
    return (vector[0] / size, vector[1] / size)


def heading(a: Point, b: Point) -> float:
    """Return the direction from a to b, −π to π; 0 where they are the same point."""
    return math.atan2(b[1] - a[1], b[0] - a[0])


def turn_degrees(before: float, after: float) -> float:
    """Return the turn from one direction to another in degrees, −180 to 180, positive towards the y axis."""
    return math.degrees(math.remainder(after - before, math.tau))
