"""What a letter asks of eye and hand, on our own strokes: what is seen of it, which way it faces, how it slants.

Letter units (100 to a zone, y up), angles in degrees. Marks count as strokes of their own, where they stand.
Out of scope: comparing letters with one another (``likeness``).
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from functools import cache

from namewright.geometry.points import Point
from namewright.geometry.polylines import evenly
from namewright.geometry.segments import Line
from namewright.letters.alphabet import MissingLetters, upright
from namewright.letters.strokes import Stroke

STEP = 4.0  # between the points at which a path is looked at
FACES_FROM = 0.195  # set by C, the least lopsided letter that a study calls right-facing (Treiman et al. 2014)
_FLAT = 0.5  # how far a polyline may stray from its curve
_ROUGHLY = 0.001  # the tolerance of a length by which steps are counted: to 0.003 units on our letters
_OBLIQUE = (10.0, 80.0)  # from the horizontal: a stroke between these is neither level nor upright


@cache
def letter_strokes(sign: str) -> tuple[Stroke, ...] | None:
    """Return a sign's strokes in writing order, marks in place; None where our alphabet has no such sign."""
    try:
        return upright().letter(sign).strokes()
    except MissingLetters:
        return None


def walked(stroke: Stroke, step: float = STEP) -> list[Point]:
    """Return points along a stroke about ``step`` apart, both ends among them."""
    if stroke.is_dot:
        return [stroke.start]
    return evenly(stroke.flattened(_FLAT), max(2, round(stroke.length(_ROUGHLY) / step)))


def visible(strokes: Sequence[Stroke]) -> list[Point]:
    """Return points along all strokes, those left out that lie on ink already there: what the eye sees."""
    seen: dict[tuple[int, int], Point] = {}
    for stroke in strokes:
        for x, y in walked(stroke):
            seen.setdefault((round(x / STEP), round(y / STEP)), (x, y))
    return list(seen.values())


@cache
def facing(sign: str) -> float:
    """Return which way a sign faces, −1 to 1; 0 where our alphabet has no such sign.

    Ink that is heavier at the left opens, and so faces, to the right: b, C, F; and the other way: d, J, 3.
    """
    xs = [x for x, _ in visible(letter_strokes(sign) or ())] or [0.0]
    half = (max(xs) - min(xs)) / 2
    return 0.0 if half < 1 else ((max(xs) + min(xs)) / 2 - sum(xs) / len(xs)) / half


def oblique_share(strokes: Sequence[Stroke]) -> float:
    """Return which share of the pencil's path is straight and slanting, 0 to 1."""
    oblique = sum(segment.length() for stroke in strokes for segment in stroke.segments
                  if isinstance(segment, Line) and _OBLIQUE[0] < _slope(*segment) < _OBLIQUE[1])
    return oblique / (sum(stroke.length() for stroke in strokes) or 1.0)


def _slope(a: Point, b: Point) -> float:
    """Return the angle to the horizontal, 0 level to 90 upright."""
    return math.degrees(math.atan2(abs(b[1] - a[1]), abs(b[0] - a[0])))
