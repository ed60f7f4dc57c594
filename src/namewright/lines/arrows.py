"""Arrows beside the strokes of a letter: one where a stroke begins, and a short one after each turn of the pencil.

Millimetres, y down. An arrow runs along its stroke at an even distance, so it bends as the stroke does: round a bowl it
goes beside the bowl and not through its roof. Out of scope: which of the places is free (``clearance``, ``cues``).
"""

from __future__ import annotations

import math
from bisect import bisect_left, bisect_right
from collections.abc import Iterable, Iterator, Sequence
from itertools import pairwise

from namewright.geometry.boxes import Box
from namewright.geometry.points import Point, heading
from namewright.geometry.polylines import length, point_at, reaches, steps
from namewright.geometry.segments import flatten, smooth_runs
from namewright.letters.strokes import Stroke
from namewright.named_tuples import NamedTuple

FLAT_MM = 0.02
CLOSE_MM = 0.4  # between the points by which distances to an arrow are taken
_STEP_MM = 0.8  # between the points of a bent arrow, at the most
_TRUE = (0.62, 1.6)  # an arrow's length as a share of its stretch of the stroke: inside a tight hook none is true
_BARB_TURN = 0.5  # radians between a barb and the shaft
_BARB_OUT = math.sin(_BARB_TURN)  # so far a barb's end is from the shaft, in lengths of the barb
_BARB_MM = (0.7, 1.3)  # least and greatest length of a barb
_FIRST = (0.55, 0.38, 0.26, 0.18)  # lengths of an arrow at the start of a stroke, in x-heights
_AFTER_TURN = (0.26, 0.18)  # of one after a turn
_MIN_MM = (1.6, 1.3, 1.1, 1.1)  # no arrow is shorter; nor longer than its leg, but where it points over a short end
_SHORT_LEG = 0.36  # x-heights: a shorter leg of a stroke (the flick of q) needs no arrow to be followed
_STEP = 0.11  # x-heights between the starts of arrows that are tried
_BENT = 0.3  # radians: a stretch that bends more has an outside
_FAR, _SHORT, _AWAY, _OVER = 0.35, 0.25, 0.5, 0.5  # costs, see ``places``; found by trial
_OTHER_SIDE, _INSIDE = 0.12, 0.4


class Arrow:  # hundreds are made for a letter and asked for by what they are, not by what they look like: no dataclass
    """An arrow: its shaft from tail to tip, its two barbs, and the box of its centreline."""

    __slots__ = ("_points", "box", "left", "right", "shaft")

    def __init__(self, shaft: Sequence[Point], left: Point, right: Point) -> None:
        xs, ys = zip(*shaft, left, right, strict=True)
        self.shaft, self.left, self.right = shaft, left, right
        self.box: Box = (min(xs), min(ys), max(xs), max(ys))
        self._points: list[Point] = []

    @property
    def path(self) -> tuple[Point, ...]:
        """Return the way of a pen that draws the arrow without a lift."""
        return (*self.shaft, self.left, self.shaft[-1], self.right)

    @property
    def points(self) -> list[Point]:
        """Return points along shaft and barbs, so close that no number slips between them."""
        if not self._points:
            tip = self.shaft[-1]
            parts = [*pairwise(self.shaft), (tip, self.left), (tip, self.right)]
            self._points = [self.shaft[0], *(point for a, b in parts for point in steps(
                a, b, math.ceil(math.dist(a, b) / CLOSE_MM))[1:])]
        return self._points


class Leg:
    """A stretch of a stroke between two turns of the pencil, as a polyline, and how far along it its points lie."""

    def __init__(self, points: Sequence[Point]) -> None:
        self.points, self.reach = points, reaches(points)
        self._headings = [heading(a, b) for a, b in pairwise(points)]
        self._onward = math.cos(self._headings[0]), math.sin(self._headings[0])  # 1 mm on the way on which it starts

    @property
    def length_mm(self) -> float:
        """Return the length of the leg."""
        return self.reach[-1]

    def stretch(self, begin: float, end: float) -> list[Point]:
        """Return points of the leg from one distance to another, straight on where that is before it or behind it."""
        count = max(1, math.ceil((end - begin) / _STEP_MM)) if self.bend(begin, end) else 1
        return [self.at(begin + (end - begin) * at / count) for at in range(count + 1)]

    def at(self, way: float) -> Point:
        """Return the point so far along the leg."""
        if 0 <= way <= self.reach[-1]:
            return point_at(self.points, self.reach, way)
        (x, y), angle = (self.points[0], self.heading(0)) if way < 0 else (self.points[-1], self.heading(way))
        on = way if way < 0 else way - self.length_mm
        return (x + on * math.cos(angle), y + on * math.sin(angle))

    def heading(self, way: float) -> float:
        """Return the direction of the leg so far along it."""
        return self._headings[min(max(bisect_right(self.reach, way), 1), len(self.points) - 1) - 1]

    def bend(self, begin: float, end: float) -> float:
        """Return how far the leg turns between two distances, in radians, positive to the right of the way."""
        return math.remainder(self.heading(end) - self.heading(begin), math.tau) if len(self.points) > 2 else 0.0

    def beside_mm(self, point: Point) -> float:
        """Return how far a point is to the right of the way on which the leg starts, y down; negative to the left."""
        (x, y), (across, along) = self.points[0], self._onward
        return (point[1] - y) * across - (point[0] - x) * along

    def ahead_mm(self, point: Point) -> float:
        """Return how far a point is ahead on the way on which the leg starts; negative behind its start."""
        (x, y), (across, along) = self.points[0], self._onward
        return (point[0] - x) * across + (point[1] - y) * along


def smooth_polylines(stroke: Stroke) -> list[list[Point]]:
    """Return the polylines along a stroke, one from each turn of the pencil to the next."""
    return [flatten(run, FLAT_MM) for run in smooth_runs(stroke.segments)]


def legs(polylines: Sequence[Sequence[Point]], x_height_mm: float) -> list[Leg]:
    """Return the legs of a stroke (see ``smooth_polylines``) that need an arrow: the first, and each after a turn."""
    least = _SHORT_LEG * x_height_mm
    return [Leg(points) for at, points in enumerate(polylines) if not at or length(points) >= least]


Place = tuple[float, float, float, float]
"""Where an arrow may lie: cost, where it begins along its leg, its size, and how far to the right of the leg it is.

An offset to the left is negative. Hundreds are made for a letter, so they are plain tuples.
"""
Way = tuple[float, float, float, float]
"""A stretch of a leg beside which an arrow may lie: cost, begin, size and how far it bends (see ``Leg.bend``)."""
Ways = tuple[float, list[Way]]
"""Stretches, and a cost that none of them nor any behind them goes below."""


def places(leg: Leg, side: float, stretches: Iterable[Ways], x_height_mm: float, pen_mm: float, middle: Point, *,
           first: bool) -> Iterator[Place]:
    """Yield places for an arrow on one side of a leg (1 right of the way, −1 left of it), the best first.

    ``stretches`` are those of the leg. Good are those near the leg's start, long ones, those near to the stroke,
    and those on the better side: outside a bend, else where the leg bends to after a turn, else away from ``middle``,
    the middle of the letter. An arrow at the start of a stroke may point on over the end of a short one. Costs are in
    x-heights. Most letters need no short arrows, so these are looked for only when all better ones were taken.
    """
    better = _side_away(leg, middle) if first else _side_of_bend(leg) or _side_away(leg, middle)
    other = _OTHER_SIDE * (side * better < 0)
    found: list[Place] = []
    for least, ways in stretches:
        found.sort()
        ready = bisect_left(found, (least,))
        yield from found[:ready]
        del found[:ready]
        for cost, begin, size, bend in ways:
            wrong = _INSIDE * (side * bend > 0) if abs(bend) > _BENT else other
            near = pen_mm / 2 + 0.25 + barb_mm(size) * _BARB_OUT
            found += [(cost + wrong + _AWAY * (away - 1) * near / x_height_mm, begin, size, side * away * near)
                      for away in (1.0, 1.3, 1.7)]
    yield from sorted(found)


class Track(NamedTuple):
    """A stretch of a leg: its points, for each the step of 1 mm to the right of the way (y down), and its length."""

    points: Sequence[Point]
    aside: Sequence[Point]
    length_mm: float


def shaft_at(leg: Leg, place: Place, tracks: dict[tuple[float, float], Track]) -> Sequence[Point]:
    """Return the shaft of the arrow in a place; no points inside so tight a hook that it would not be true.

    ``tracks`` are those of the leg found before: several arrows lie beside one, nearer and farther, left and right.
    """
    _, begin, size, offset = place
    key = (begin, size)
    if key not in tracks:
        tracks[key] = _track(leg.stretch(begin, begin + size))
    points, aside, length_mm = tracks[key]
    shaft = [(x + offset * dx, y + offset * dy) for (x, y), (dx, dy) in zip(points, aside, strict=True)]
    if len(shaft) > 2 and not _TRUE[0] <= length(shaft) / length_mm <= _TRUE[1]:
        return ()
    return shaft


def arrow_on(shaft: Sequence[Point], size_mm: float) -> Arrow:
    """Return the arrow with a shaft, its barbs as long as suits its size."""
    (x, y), angle, barb = shaft[-1], heading(shaft[-2], shaft[-1]), barb_mm(size_mm)
    one, other = angle + _BARB_TURN, angle - _BARB_TURN
    return Arrow(shaft, (x - barb * math.cos(one), y - barb * math.sin(one)),
                 (x - barb * math.cos(other), y - barb * math.sin(other)))


def stretches(leg: Leg, x_height_mm: float, *, first: bool) -> Iterator[Ways]:
    """Yield the stretches of a leg beside which an arrow may lie, the longest first.

    None begins farther along than an x-height or three quarters of the leg: there it would speak of another part. After
    a turn it begins a little behind it, to be seen apart from what comes before. Beside a short bar a stem leaves no
    room for all of an arrow: there it may reach over the end.
    """
    for short, (share, least) in enumerate(zip(_FIRST if first else _AFTER_TURN, _MIN_MM, strict=False)):
        size = min(max(share * x_height_mm, least), 0.9 * leg.length_mm)
        ways: list[Way] = []
        if size >= least:
            last = min(leg.length_mm - size, 0.75 * leg.length_mm, x_height_mm)
            begin = 0.0 if first else min(0.12 * x_height_mm, last)
            while begin <= last + 1e-9:
                ways.append((_SHORT * short + _FAR * begin / x_height_mm, begin, size, leg.bend(begin, begin + size)))
                begin += _STEP * x_height_mm
        yield _SHORT * short, ways
    if first and leg.length_mm < x_height_mm:
        size = max(_FIRST[-1] * x_height_mm, _MIN_MM[-1])
        begins = [(over, leg.length_mm + over - size) for over in (0.25 * size, 0.5 * size, 0.75 * size)]
        least = _OVER + _SHORT * len(_FIRST)
        yield least, [(least + over / x_height_mm, begin, size, leg.bend(begin, begin + size))
                      for over, begin in begins]


def _side_away(leg: Leg, middle: Point) -> float:
    """Return the side of a leg's start that looks away from a point: 1 right of the way, −1 left of it."""
    return -1.0 if leg.beside_mm(middle) > 0 else 1.0


def _side_of_bend(leg: Leg) -> float:
    """Return the side to which a leg bends: 1 right of the way at its start, −1 left of it, 0 where it is straight."""
    most = max((leg.beside_mm(point) for point in leg.points), key=abs)
    return math.copysign(1.0, most) if abs(most) > FLAT_MM else 0.0


def barb_mm(size_mm: float) -> float:
    """Return the length of an arrow's barbs."""
    return min(max(0.32 * size_mm, _BARB_MM[0]), _BARB_MM[1])


def _track(points: Sequence[Point]) -> Track:
    """Return a stretch with what lies to its right, at a bend halfway between before and after."""
    ways = [heading(a, b) for a, b in pairwise(points)]
    turned = [ways[0], *(a + math.remainder(b - a, math.tau) / 2 for a, b in pairwise(ways)), ways[-1]]
    return Track(points, [(-math.sin(way), math.cos(way)) for way in turned], length(points))
