"""What our own strokes ask of a hand: features of a letter, measured on the pencil's path.

Letter units (100 to a zone, y up), angles in degrees. The features explain and warn; whether they may also
predict how hard a letter is, is asked openly in ``tests/bench/predict.py``. Marks count as strokes
of their own, where they stand.
Out of scope: comparing letters with one another (``shapes``).
"""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from functools import cache
from itertools import pairwise
from typing import NamedTuple

from namewright.geometry.points import Point, between, heading, turn_degrees
from namewright.geometry.polylines import evenly
from namewright.geometry.segments import CORNER_DEGREES, Line, corner_degrees
from namewright.letters.alphabet import MissingLetters, upright
from namewright.letters.strokes import Stroke

STEP = 4.0  # between the points at which a path is looked at
FACES_FROM = 0.195  # set by C, the least lopsided letter that a study calls right-facing (Treiman et al. 2014)
_FLAT = 0.5  # how far a polyline may stray from its curve
_ROUGHLY = 0.001  # the tolerance of a length by which steps are counted: to 0.003 units on our letters
_OBLIQUE = (10.0, 80.0)  # from the horizontal: a stroke between these is neither level nor upright
_NEAR = 4.0  # paths as close as this lie on one another


class LetterFeatures(NamedTuple):
    """One letter as a hand meets it.

    ``path`` is the length of the pencil's way in letter units, ``turning`` the sum of all its turns in
    degrees, ``changes`` how often it bends sharply or from one side to the other. ``oblique`` and
    ``retraced`` are shares (0 to 1) of the path: straight and slanting; gone over a second time.
    ``facing`` is from −1 (all ink at the right edge: faces left, as d) to 1 (faces right, as b).
    """

    strokes: int
    path: float
    turning: float
    changes: int
    oblique: float
    retraced: float
    crossings: int
    facing: float

    @property
    def lifts(self) -> int:
        """How often the pencil leaves the paper inside the letter."""
        return self.strokes - 1

    @property
    def faces_left(self) -> bool:
        """Whether the letter plainly faces left."""
        return self.facing <= -FACES_FROM

    @property
    def faces_right(self) -> bool:
        """Whether the letter plainly faces right."""
        return self.facing >= FACES_FROM


@cache
def letter_strokes(sign: str) -> tuple[Stroke, ...] | None:
    """Return a sign's strokes in writing order, marks in place; None where our alphabet has no such sign."""
    try:
        return upright().letter(sign).strokes()
    except MissingLetters:
        return None


@cache
def letter_features(sign: str) -> LetterFeatures | None:
    """Return the features of a sign; None where our alphabet has no such sign."""
    strokes = letter_strokes(sign)
    if not strokes:
        return None
    ways = [walked(stroke) for stroke in strokes if not stroke.is_dot]
    path = sum(stroke.length() for stroke in strokes) or 1.0
    return LetterFeatures(
        strokes=len(strokes), path=path, turning=sum(map(_turning, strokes)),
        changes=sum(map(_changes, strokes)), oblique=sum(map(_oblique_length, strokes)) / path,
        retraced=_retraced(ways), crossings=len(_crossings(ways)), facing=facing(sign),
    )


def walked(stroke: Stroke, step: float = STEP) -> list[Point]:
    """Return points along a stroke about ``step`` apart, both ends among them."""
    if stroke.is_dot:
        return [stroke.start]
    return evenly(stroke.flattened(_FLAT), max(2, round(stroke.length(_ROUGHLY) / step)))


def visible(strokes: Sequence[Stroke], step: float = STEP) -> list[Point]:
    """Return points along all strokes, those left out that lie on ink already there: what the eye sees."""
    seen: dict[tuple[int, int], Point] = {}
    for stroke in strokes:
        for x, y in walked(stroke, step):
            seen.setdefault((round(x / step), round(y / step)), (x, y))
    return list(seen.values())


@cache
def facing(sign: str) -> float:
    """Return which way a sign faces, −1 to 1; 0 where our alphabet has no such sign.

    Ink that is heavier at the left opens, and so faces, to the right: b, C, F; and the other way: d, J, 3.
    """
    xs = [x for x, _ in visible(letter_strokes(sign) or ())] or [0.0]
    half = (max(xs) - min(xs)) / 2
    return 0.0 if half < 1 else ((max(xs) + min(xs)) / 2 - sum(xs) / len(xs)) / half


# --- turns -------------------------------------------------------------------------------------------


def _turns(way: Sequence[Point]) -> Iterator[float]:
    """Yield the signed turn at each point of a path, in degrees, left positive."""
    for before, after in pairwise([heading(a, b) for a, b in pairwise(way)]):
        yield turn_degrees(before, after)


def _turning(stroke: Stroke) -> float:
    return sum(map(abs, _turns(stroke.flattened(_FLAT))))


def _changes(stroke: Stroke) -> int:
    """Count corners, and bends that swing from one side to the other between them."""
    corners = sum(corner_degrees(a, b) > CORNER_DEGREES for a, b in pairwise(stroke.segments))
    bends = [turn for turn in _turns(walked(stroke)) if 0.3 < abs(turn) < CORNER_DEGREES]
    return corners + sum((a > 0) != (b > 0) for a, b in pairwise(bends))


def _oblique_length(stroke: Stroke) -> float:
    return sum(segment.length() for segment in stroke.segments
               if isinstance(segment, Line) and _OBLIQUE[0] < _slope(*segment) < _OBLIQUE[1])


def _slope(a: Point, b: Point) -> float:
    """Return the angle to the horizontal, 0 level to 90 upright."""
    return math.degrees(math.atan2(abs(b[1] - a[1]), abs(b[0] - a[0])))


# --- where a path meets itself -----------------------------------------------------------------------


def _retraced(ways: Sequence[Sequence[Point]]) -> float:
    """Return the share of steps that run along a step already made: as near, and in the same line."""
    steps = [(order, number, pair) for order, way in enumerate(ways) for number, pair in enumerate(pairwise(way))]
    again = sum(any(_along(pair, old) for other, at, old in steps[:index] if other != order or number - at > 2)
                for index, (order, number, pair) in enumerate(steps))
    return again / max(1, len(steps))


def _along(one: tuple[Point, Point], other: tuple[Point, Point]) -> bool:
    (a, b), (c, d) = one, other
    if math.dist(between(a, b, 0.5), between(c, d, 0.5)) > _NEAR:
        return False
    return abs(math.sin(heading(a, b) - heading(c, d))) < 0.35


def _crossings(ways: Sequence[Sequence[Point]]) -> list[Point]:
    """Return where paths cross: each goes from one side of the other to its other side, not just up to it."""
    found: list[Point] = []
    spots = [(way, at) for way in ways for at in range(2, len(way) - 2)]
    for index, (way, at) in enumerate(spots):
        for other, there in spots[index + 1:]:
            near = math.dist(way[at], other[there]) <= _NEAR and not (way is other and there - at < 8)
            if near and _passes(way, at, other, there) and _passes(other, there, way, at):
                found.append(way[at])
    return _one_for_each_place(found)


def _passes(way: Sequence[Point], at: int, other: Sequence[Point], there: int) -> bool:
    """Say whether ``way`` goes over, at one point, to the other side of ``other``."""
    (ax, ay), (bx, by) = other[there - 2], other[there + 2]
    sides = [(bx - ax) * (way[at + move][1] - ay) - (by - ay) * (way[at + move][0] - ax) for move in (-2, 2)]
    reach = 0.35 * 2 * STEP * math.hypot(bx - ax, by - ay)
    return min(sides) < -reach and max(sides) > reach


def _one_for_each_place(points: Sequence[Point]) -> list[Point]:
    """Return one point for each place."""
    places: list[Point] = []
    for point in points:
        if all(math.dist(point, place) > 4 * _NEAR for place in places):
            places.append(point)
    return places
