"""What the cues of a letter must keep clear of, and what would make one of them read as another's.

Millimetres, y down, about the letter's own origin. A number touches no stroke, no ring of a start and no printed
line; an arrow touches no stroke and no ring; cues keep off each other. Out of scope: where to look for a place
(``cues``).
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from namewright.geometry import boxes, distances
from namewright.geometry.boxes import Box
from namewright.geometry.points import Point
from namewright.geometry.polylines import closely, steps
from namewright.lines.ruling import GuideLine, Ruling
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
class CueRoom:
    """The room round a letter in which its cues may stand, and the ink there that they keep off.

    Numbers are ``number_mm`` high. ``side_mm`` is the white on either side that belongs to the letter, and
    ``headroom_mm`` the height over the top line that cues may use.
    """

    letter: InkLetter
    ruling: Ruling
    pen_mm: float
    start_mm: float
    number_mm: float
    side_mm: float
    headroom_mm: float

    def __post_init__(self) -> None:
        self._reach = self.pen_mm / 2 + CLEAR_MM
        # Points so close together that nothing as wide as a cue slips between them.
        self._ink = [point for stroke in self.letter.strokes
                     for point in closely(stroke.flattened(FLAT_MM), self._reach)]
        self._starts = [stroke.start for stroke in self.letter.strokes]
        standing = [x for x, y in self._ink if y <= 0.0] or [x for x, _ in self._ink]  # a tail may reach under others
        self._room = (min(standing) - self.side_mm, -self.ruling.line_height_mm - self.headroom_mm,
                      max(standing) + self.side_mm, self.ruling.descender_mm)
        self._rules = [-self.ruling.height_of(line) for line in GuideLine if line in self.ruling.lines]

    def number_is_free(self, start: Point, centre: Point) -> bool:
        """Return whether a number has room, and whether no other stroke starts nearer to it than its own."""
        box = self._box(centre)
        return (self._is_nearest(start, centre) and boxes.holds(self._room, box)
                and not any(box[1] - 0.15 < y < box[3] + 0.15 for y in self._rules)
                and _clear(box, self._ink, self._reach)
                and _clear(box, self._starts, self.start_mm / 2 + 0.1))

    def arrow_is_free(self, arrow: Arrow) -> bool:
        """Return whether an arrow has room beside the strokes and the starts."""
        box = boxes.around(arrow)
        if not boxes.holds(self._room, box):
            return False
        near = [(other, reach)
                for others, reach in ((self._ink, self._reach), (self._starts, self.start_mm / 2 + CLEAR_MM))
                for other in boxes.within(others, boxes.grown(box, reach))]
        return not near or all(math.dist(point, other) >= reach for point in shaft(arrow) for other, reach in near)

    def fits(self, cue: Cue, placed: Sequence[Cue]) -> bool:
        """Return whether a cue keeps off those that have their place, and none takes another's meaning."""
        return self._keeps_off(cue.number, cue.along) and all(
            not boxes.overlap(boxes.grown(self._box(cue.number), 0.45 * self.number_mm), self._box(other.number))
            and self._means(cue, other) and self._means(other, cue)
            and self._keeps_off(cue.number, other.along) and self._keeps_off(other.number, cue.along)
            and keep_off(cue.along, other.along) for other in placed)

    def _means(self, cue: Cue, other: Cue) -> bool:
        """Return whether a cue's number reads with its own arrow and not with another's."""
        if not other.arrow:
            return True
        own = distances.to_segment(cue.number, *cue.arrow[:2]) if cue.arrow else 0.6 * self.number_mm
        return distances.to_segment(cue.number, *other.arrow[:2]) > _NEARER * own

    def _keeps_off(self, number: Point, along: Sequence[Point]) -> bool:
        return _clear(self._box(number), along, 2 * CLEAR_MM)

    def _is_nearest(self, start: Point, centre: Point) -> bool:
        reach = math.dist(start, centre)
        return all(math.dist(other, centre) > reach for other in self._starts if math.dist(other, start) > FLAT_MM)

    def _box(self, centre: Point) -> Box:
        half = self.number_mm / 2
        return (centre[0] - 0.6 * half, centre[1] - half, centre[0] + 0.6 * half, centre[1] + half)


def shaft(arrow: Arrow) -> list[Point]:
    """Return points along an arrow's shaft and barbs so close that no number slips between them."""
    start, tip, left, _, right = arrow
    count = max(6, math.ceil(math.dist(start, tip) / (2 * CLEAR_MM)))
    barb = max(1, math.ceil(math.dist(tip, left) / (2 * CLEAR_MM)))
    return [*steps(start, tip, count), *steps(tip, left, barb), *steps(tip, right, barb)]


def keep_off(one: Sequence[Point], other: Sequence[Point]) -> bool:
    """Return whether two arrows, as close points, keep off each other; one that is not there keeps off any."""
    if not one or not other or not boxes.overlap(boxes.grown(boxes.around(one), 2 * CLEAR_MM), boxes.around(other)):
        return True
    return all(math.dist(a, b) >= 2 * CLEAR_MM for a in one for b in other)


def _clear(box: Box, points: Iterable[Point], reach: float) -> bool:
    """Return whether no point comes nearer to a box than ``reach``."""
    return all(distances.to_box(point, box) >= reach for point in boxes.within(points, boxes.grown(box, reach)))
