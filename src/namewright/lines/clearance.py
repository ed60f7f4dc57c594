"""What the cues of a letter must keep clear of, and what would make one of them read as another's.

Millimetres, y down, about the letter's own origin. A number touches no stroke, no mark of a start and no printed line;
an arrow touches no stroke and no start; cues keep off each other. Out of scope: where to look for a place (``cues``,
``arrows``).
"""

from __future__ import annotations

import math
from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass
from itertools import repeat
from typing import NamedTuple

from namewright.geometry import boxes, distances
from namewright.geometry.boxes import Box
from namewright.geometry.points import Point
from namewright.geometry.polylines import closely
from namewright.lines.arrows import FLAT_MM, Arrow
from namewright.lines.ruling import GuideLine, Ruling
from namewright.lines.setting import InkLetter

CLEAR_MM = 0.2
_NEARER = 1.15  # a number is nearer to its own arrow by this factor, so that the eye need not measure
_APART = 0.75  # heights of a number between two numbers, or 1 and 2 would be read as twelve
_ALONE = 1.0  # heights of a number: so far a dot's number, which has no arrow, stands from the arrows of others
_RULE_CLEAR_MM = 0.15  # between a number and a printed line
_WIDE, _ONE_WIDE = 0.66, 0.33  # widths of figures, in heights of a number
_BUCKET_MM = 2.0


class Cue(NamedTuple):  # hundreds are made for a letter, so no dataclass
    """The place of a number and an arrow for one stroke, and how far they are from where one would best have them.

    ``arrow`` is None for a dot; ``number`` is None for an arrow after a turn. ``figure`` is what the number says.
    """

    figure: int
    number: Point | None
    arrow: Arrow | None
    cost: float


class Sides(NamedTuple):
    """The white on either side of a letter that its cues may use, in mm from its outermost centrelines."""

    left_mm: float
    right_mm: float


@dataclass
class CueRoom:
    """The room over and under a letter in which its cues may stand, and the ink there that they keep off.

    How much white stands beside the letter is another matter (``between``). Numbers are ``number_mm`` high.
    ``headroom_mm`` is the height that cues may use over the top line, or over the letter where its marks rise higher.
    """

    letter: InkLetter
    ruling: Ruling
    pen_mm: float
    start_mm: float
    number_mm: float
    headroom_mm: float

    def __post_init__(self) -> None:
        self._reach, self._off_start = self.pen_mm / 2 + CLEAR_MM, self.start_mm / 2 + 0.1
        # Points so close together that nothing as wide as a cue slips between them.
        ink = [point for stroke in self.letter.strokes for point in closely(stroke.flattened(FLAT_MM), self._reach)]
        self._ink = _Near(ink)
        self._starts = [stroke.start for stroke in self.letter.strokes]
        self._standing = standing(self.letter)
        top, bottom = self.letter.bounds[1], self.letter.bounds[3]
        self._top = min(-self.ruling.line_height_mm, top) - self.headroom_mm
        self._bottom = max(self.ruling.descender_mm, bottom) if bottom > 0.1 else 0.0
        self._rules = [-self.ruling.height_of(line) for line in GuideLine if line in self.ruling.lines]

    @property
    def middle(self) -> Point:
        """Return the middle of the letter's box."""
        x0, y0, x1, y1 = self.letter.bounds
        return ((x0 + x1) / 2, (y0 + y1) / 2)

    def between(self, sides: Sides) -> Callable[[Box], bool]:
        """Return what tells whether a box lies in the white on either side of the letter."""
        left, right = self._standing[0] - sides.left_mm, self._standing[1] + sides.right_mm
        return lambda box: left <= box[0] and box[2] <= right

    def number_is_free(self, figure: int, start: Point, centre: Point) -> bool:
        """Return whether a number has room, and whether no other stroke starts nearer to it than its own."""
        high, low = centre[1] - self.number_mm / 2, centre[1] + self.number_mm / 2
        if high < self._top or low > self._bottom:
            return False
        for y in self._rules:
            if high - _RULE_CLEAR_MM < y < low + _RULE_CLEAR_MM:
                return False
        box = self.number_box(figure, centre)
        return (_clear(box, boxes.within(self._starts, boxes.grown(box, self._off_start)), self._off_start)
                and _clear(box, self._ink.within(boxes.grown(box, self._reach)), self._reach)
                and self._is_nearest(start, centre))

    def arrow_is_free(self, arrow: Arrow) -> bool:
        """Return whether an arrow has room beside the strokes and the starts."""
        if arrow.box[1] < self._top or arrow.box[3] > self._bottom:
            return False
        reach = self.start_mm / 2 + CLEAR_MM
        starts = boxes.within(self._starts, boxes.grown(arrow.box, reach))
        near = self._ink.within(boxes.grown(arrow.box, self._reach))
        return _keeps_clear(arrow, starts, reach) and _keeps_clear(arrow, near, self._reach)

    def fits(self, cue: Cue, placed: Sequence[Cue]) -> bool:
        """Return whether a cue keeps off those that have their place, and none takes another's meaning."""
        if cue.number and cue.arrow and not self._keeps_off(cue, cue.arrow):
            return False
        return all(self._fit_together(cue, other) for other in placed)

    def _fit_together(self, cue: Cue, other: Cue) -> bool:
        if cue.number and other.number and boxes.overlap(
                boxes.grown(self.number_box(cue.figure, cue.number), _APART * self.number_mm),
                self.number_box(other.figure, other.number)):
            return False
        return (self._means(cue, other) and self._means(other, cue)
                and (not other.arrow or self._keeps_off(cue, other.arrow))
                and (not cue.arrow or self._keeps_off(other, cue.arrow))
                and (not cue.arrow or not other.arrow or keep_off(cue.arrow, other.arrow)))

    def _means(self, cue: Cue, other: Cue) -> bool:
        """Return whether a cue's number reads with its own arrow and not with another's."""
        if not other.arrow or not cue.number:
            return True
        away = distances.to_polyline(cue.number, other.arrow.shaft)
        if not cue.arrow:
            return away > _ALONE * self.number_mm
        return away > _NEARER * distances.to_polyline(cue.number, cue.arrow.shaft)

    def _keeps_off(self, cue: Cue, arrow: Arrow) -> bool:
        if not cue.number:
            return True
        box = self.number_box(cue.figure, cue.number)
        return (not boxes.overlap(boxes.grown(box, 2 * CLEAR_MM), arrow.box)
                or _clear(box, boxes.within(arrow.points, boxes.grown(box, 2 * CLEAR_MM)), 2 * CLEAR_MM))

    def _is_nearest(self, start: Point, centre: Point) -> bool:
        reach = math.dist(start, centre)
        return all(math.dist(other, centre) > reach for other in self._starts if math.dist(other, start) > FLAT_MM)

    def number_box(self, figure: int, centre: Point) -> Box:
        """Return the box of a number."""
        return number_box(figure, centre, self.number_mm)


class _Near:
    """Points in upright bands, so that those in a small box are found without looking at all of them."""

    def __init__(self, points: Iterable[Point]) -> None:
        self._bands: dict[int, list[Point]] = {}
        for point in points:
            self._bands.setdefault(int(point[0] // _BUCKET_MM), []).append(point)

    def within(self, box: Box) -> list[Point]:
        """Return the points that lie in the box."""
        return [point for band in range(int(box[0] // _BUCKET_MM), int(box[2] // _BUCKET_MM) + 1)
                for point in self._bands.get(band, ()) if box[0] <= point[0] <= box[2] and box[1] <= point[1] <= box[3]]


def number_box(figure: int, centre: Point, number_mm: float) -> Box:
    """Return the box of a number in our figures, its pen counted: a 1 is half as wide as the others."""
    high = number_mm / 2
    wide = (_ONE_WIDE if figure == 1 else _WIDE) * high
    return (centre[0] - wide, centre[1] - high, centre[0] + wide, centre[1] + high)


def standing(letter: InkLetter) -> tuple[float, float]:
    """Return the least and greatest x of what stands on the baseline: a tail may reach under others."""
    points = [point for stroke in letter.strokes for point in stroke.flattened(FLAT_MM)]
    upright = [x for x, y in points if y <= 0.0] or [x for x, _ in points]
    return min(upright), max(upright)


def keep_off(one: Arrow, other: Arrow) -> bool:
    """Return whether two arrows keep off each other."""
    if not boxes.overlap(boxes.grown(one.box, 2 * CLEAR_MM), other.box):
        return True
    return all(math.dist(a, b) >= 2 * CLEAR_MM for a in one.points for b in other.points)


def _keeps_clear(arrow: Arrow, near: Sequence[Point], reach: float) -> bool:
    """Return whether no point of an arrow comes nearer than ``reach`` to one of those near it."""
    return not near or all(min(map(math.dist, repeat(point), near)) >= reach for point in arrow.points)


def _clear(box: Box, near: Iterable[Point], reach: float) -> bool:
    """Return whether none of the points near a box comes nearer to it than ``reach``."""
    return all([distances.to_box(point, box) >= reach for point in near])
