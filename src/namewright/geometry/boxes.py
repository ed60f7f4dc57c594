"""Boxes along the axes: (x least, y least, x greatest, y greatest)."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from namewright.geometry.points import Point

Box = tuple[float, float, float, float]


def around(points: Sequence[Point]) -> Box:
    """Return the box of points. Raises ValueError where there is none."""
    if not points:
        raise ValueError("no points have no box")
    xs, ys = zip(*points, strict=True)
    return (min(xs), min(ys), max(xs), max(ys))


def joined(boxes: Iterable[Box]) -> Box:
    """Return the box around all boxes. Raises ValueError where there is none."""
    first, *others = boxes
    x0, y0, x1, y1 = first
    for left, top, right, bottom in others:  # compared one by one: a fifth of the time, for it is mostly few
        x0 = left if left < x0 else x0
        y0 = top if top < y0 else y0
        x1 = right if right > x1 else x1
        y1 = bottom if bottom > y1 else y1
    return (x0, y0, x1, y1)


def shifted(box: Box, dx: float, dy: float) -> Box:
    """Return the box elsewhere."""
    x0, y0, x1, y1 = box  # not fontTools' offsetRect: this is asked for every piece of ink
    return (x0 + dx, y0 + dy, x1 + dx, y1 + dy)


def grown(box: Box, by: float) -> Box:
    """Return the box with each side ``by`` farther out; a negative ``by`` shrinks it."""
    x0, y0, x1, y1 = box
    return (x0 - by, y0 - by, x1 + by, y1 + by)


def holds(room: Box, box: Box) -> bool:
    """Return whether ``box`` lies inside ``room``, edges among it."""
    return box[0] >= room[0] and box[1] >= room[1] and box[2] <= room[2] and box[3] <= room[3]


def overlap(one: Box, other: Box) -> bool:
    """Return whether two boxes share more than an edge."""
    return one[0] < other[2] and other[0] < one[2] and one[1] < other[3] and other[1] < one[3]


def clearance(one: Box, other: Box) -> float:
    """Return how far two boxes are apart along the axis where they are farther apart; negative if they overlap."""
    return max(one[0] - other[2], other[0] - one[2], one[1] - other[3], other[1] - one[3])


def within(points: Iterable[Point], box: Box) -> list[Point]:
    """Return the points that lie in the box, edges among it."""
    x0, y0, x1, y1 = box
    return [point for point in points if x0 <= point[0] <= x1 and y0 <= point[1] <= y1]
