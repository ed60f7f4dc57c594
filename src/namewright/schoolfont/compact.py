"""Compact parts of a letter: the dot of i, and accents so heavy and short that nothing is left of their axis.

y up, 100 units to the x-height.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Any

from namewright.geometry.points import Point, between

CLEAR = 4.5  # an end stays this far inside the outline: half the width of a dot on our lines
_DOT = 1.8  # times as long as wide: what is longer is no dot; the widest dots of i among 70 fonts have 1.6
_DOT_SIZE = 50.0  # units that the longer side of a dot has at most


@dataclass(frozen=True, slots=True)
class Axle:
    """The middle line along the tightest rectangle round a part: its ends, and how wide the rectangle is."""

    start: Point
    end: Point
    width: float

    @property
    def length(self) -> float:
        """Return how long the rectangle is."""
        return math.dist(self.start, self.end)

    @property
    def is_dot(self) -> bool:
        """Say whether the part is as small and compact as the dot of an i."""
        return self.length <= min(_DOT_SIZE, _DOT * self.width)

    def inner(self) -> list[Point]:
        """Return the ends of the line that stay half a dot inside."""
        share = min(CLEAR / self.length, 0.4)
        return [between(self.start, self.end, share), between(self.end, self.start, share)]


def axle_of(shapely: Any, part: Any) -> Axle:
    """Return the axle of a part, a shapely polygon."""
    a, b, c, d = shapely.get_coordinates(shapely.minimum_rotated_rectangle(part)).tolist()[:4]
    if math.dist(a, b) < math.dist(b, c):
        a, b, c, d = b, c, d, a
    return Axle(between(a, d, 0.5), between(b, c, 0.5), math.dist(b, c))
