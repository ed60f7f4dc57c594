"""What the cues of a letter must keep clear of, and what would make one of them read as another's.

Millimetres, y down, about the letter's own origin. A number touches no stroke, no ring of a start and no printed
line; an arrow touches no stroke and no ring; cues keep off each other. Out of scope: where to look for a place
(``cues``).
"""

from __future__ import annotations

import itertools
import math
from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from namewright.letters.strokes import Bounds, Point, Stroke, evenly, flatten
from namewright.lines.ruling import Line, Ruling
from namewright.lines.setting import InkLetter

CLEAR_MM = 0.2
FLAT_MM = 0.02
_NEARER = 1.15  # a number is nearer to its own arrow by this factor, so that the eye need not measure

Arrow = tuple[Point, ...]  # shaft start, tip, barb, tip, barb; empty where there is none


@dataclass(frozen=True, slots=True)
class Cue:
    """A number's centre and an arrow for one stroke, and how far they are from where one would best have them.

    ``along`` is the arrow as close points, by which distances are taken.
    """

    number: Point
    arrow: Arrow
    along: Sequence[Point]
    cost: float


@dataclass
class Taken:
    """A letter's ink and the room for its cues. Numbers are ``number_mm`` high."""

    letter: InkLetter
    ruling: Ruling
    pen_mm: float
    start_mm: float
    number_mm: float
    side_mm: float
    headroom_mm: float

    def __post_init__(self) -> None:
        self._reach = self.pen_mm / 2 + CLEAR_MM
        self._ink = [point for stroke in self.letter.strokes for point in _samples(stroke, self._reach)]
        self._starts = [stroke.start for stroke in self.letter.strokes]
        standing = [x for x, y in self._ink if y <= 0.0] or [x for x, _ in self._ink]  # a tail may reach under others
        self._room = (min(standing) - self.side_mm, -self.ruling.line_height_mm - self.headroom_mm,
                      max(standing) + self.side_mm, self.ruling.descender_mm)
        self._rules = [-self.ruling.height_of(line) for line in Line if line in self.ruling.lines]

    def number_is_free(self, start: Point, centre: Point) -> bool:
        """Return whether a number has room, and whether no other stroke starts nearer to it than its own."""
        box = self._box(centre)
        return (self._is_nearest(start, centre) and _inside(box, self._room)
                and not any(box[1] - 0.15 < y < box[3] + 0.15 for y in self._rules)
                and _clear(box, self._ink, self._reach)
                and _clear(box, self._starts, self.start_mm / 2 + 0.1))

    def arrow_is_free(self, arrow: Arrow) -> bool:
        """Return whether an arrow has room beside the strokes and the starts."""
        box = _bounds(arrow)
        if not _inside(box, self._room):
            return False
        near = [(other, reach)
                for others, reach in ((self._ink, self._reach), (self._starts, self.start_mm / 2 + CLEAR_MM))
                for other in _within(others, _grown(box, reach))]
        return not near or all(math.dist(point, other) >= reach for point in shaft(arrow) for other, reach in near)

    def fits(self, cue: Cue, placed: Sequence[Cue]) -> bool:
        """Return whether a cue keeps off those that have their place, and none takes another's meaning."""
        return self._keeps_off(cue.number, cue.along) and all(
            not _overlap(_grown(self._box(cue.number), 0.45 * self.number_mm), self._box(other.number))
            and self._means(cue, other) and self._means(other, cue)
            and self._keeps_off(cue.number, other.along) and self._keeps_off(other.number, cue.along)
            and apart(cue.along, other.along) for other in placed)

    def _means(self, cue: Cue, other: Cue) -> bool:
        """Return whether a cue's number reads with its own arrow and not with another's."""
        if not other.arrow:
            return True
        own = _to_shaft(cue.number, cue.arrow) if cue.arrow else 0.6 * self.number_mm
        return _to_shaft(cue.number, other.arrow) > _NEARER * own

    def _keeps_off(self, number: Point, along: Sequence[Point]) -> bool:
        return _clear(self._box(number), along, 2 * CLEAR_MM)

    def _is_nearest(self, start: Point, centre: Point) -> bool:
        reach = math.dist(start, centre)
        return all(math.dist(other, centre) > reach for other in self._starts if math.dist(other, start) > FLAT_MM)

    def _box(self, centre: Point) -> Bounds:
        half = self.number_mm / 2
        return (centre[0] - 0.6 * half, centre[1] - half, centre[0] + 0.6 * half, centre[1] + half)


def shaft(arrow: Arrow) -> list[Point]:
    """Return points along an arrow's shaft and barbs so close that no number slips between them."""
    start, tip, left, _, right = arrow
    count = max(6, math.ceil(math.dist(start, tip) / (2 * CLEAR_MM)))
    barb = max(1, math.ceil(math.dist(tip, left) / (2 * CLEAR_MM)))
    return [*_between(start, tip, count), *_between(tip, left, barb), *_between(tip, right, barb)]


def _between(a: Point, b: Point, count: int) -> list[Point]:
    dx, dy = (b[0] - a[0]) / count, (b[1] - a[1]) / count
    return [(a[0] + at * dx, a[1] + at * dy) for at in range(count + 1)]


def _samples(stroke: Stroke, reach: float) -> list[Point]:
    """Return points along a stroke so close that nothing as wide as a cue slips between them."""
    track = flatten(stroke.segments, FLAT_MM)
    length = sum(math.dist(a, b) for a, b in itertools.pairwise(track))
    return evenly(track, max(1, math.ceil(length / reach)))


def _to_shaft(point: Point, arrow: Arrow) -> float:
    """Return the distance from a point to the shaft of an arrow."""
    (ax, ay), (bx, by) = arrow[:2]
    dx, dy = bx - ax, by - ay
    along = ((point[0] - ax) * dx + (point[1] - ay) * dy) / (dx * dx + dy * dy)
    along = min(max(along, 0.0), 1.0)
    return math.dist(point, (ax + along * dx, ay + along * dy))


def apart(one: Sequence[Point], other: Sequence[Point]) -> bool:
    """Return whether two arrows, as close points, keep off each other; none keeps off any."""
    if not one or not other or not _overlap(_grown(_bounds(one), 2 * CLEAR_MM), _bounds(other)):
        return True
    return all(math.dist(a, b) >= 2 * CLEAR_MM for a in one for b in other)


def _within(points: Iterable[Point], box: Bounds) -> list[Point]:
    x0, y0, x1, y1 = box
    return [point for point in points if x0 <= point[0] <= x1 and y0 <= point[1] <= y1]


def _clear(box: Bounds, points: Iterable[Point], reach: float) -> bool:
    x0, y0, x1, y1 = box
    return all(math.hypot(max(x0 - x, 0.0, x - x1), max(y0 - y, 0.0, y - y1)) >= reach
               for x, y in _within(points, _grown(box, reach)))


def _bounds(points: Sequence[Point]) -> Bounds:
    xs, ys = [x for x, _ in points], [y for _, y in points]
    return (min(xs), min(ys), max(xs), max(ys))


def _inside(box: Bounds, room: Bounds) -> bool:
    return box[0] >= room[0] and box[1] >= room[1] and box[2] <= room[2] and box[3] <= room[3]


def _overlap(a: Bounds, b: Bounds) -> bool:
    return a[0] < b[2] and b[0] < a[2] and a[1] < b[3] and b[1] < a[3]


def _grown(box: Bounds, by: float) -> Bounds:
    return (box[0] - by, box[1] - by, box[2] + by, box[3] + by)
