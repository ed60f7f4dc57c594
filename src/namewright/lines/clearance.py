"""What the cues of a letter must keep clear of, and what would make one of them read as another's.

Millimetres, y down, about the letter's own origin. A number touches no stroke, no mark of a start and no printed line;
an arrow touches no stroke and no start; cues keep off each other. Out of scope: where to look for a place (``cues``,
``arrows``).
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from functools import cached_property
from itertools import repeat

from namewright.geometry import boxes, distances
from namewright.geometry.boxes import Box
from namewright.geometry.points import Point
from namewright.geometry.polylines import closely
from namewright.lines.arrows import FLAT_MM, Arrow, smooth_polylines
from namewright.lines.ruling import GuideLine, Ruling
from namewright.lines.setting import InkLetter
from namewright.named_tuples import NamedTuple

CLEAR_MM = 0.2
_NEARER = 1.15  # a number is nearer to its own arrow by this factor, so that the eye need not measure
_APART = 0.75  # heights of a number between two numbers, or 1 and 2 would be read as twelve
_ALONE = 1.0  # heights of a number: so far a dot's number, which has no arrow, stands from the arrows of others
_RULE_CLEAR_MM = 0.15  # between a number and a printed line
_WIDE, _ONE_WIDE = 0.66, 0.33  # widths of figures, in heights of a number
_CELL = 1.5  # of the reach of ink: found by trial


class Number:  # asked for by what it is, not by what it looks like, as arrows and cues are: no dataclass
    """A number in its place: what it says, its centre and its box.

    ``beside_mm`` is how far it stands to the right of its stroke as that starts, negative to the left, 0 behind it.
    """

    __slots__ = ("at", "beside_mm", "box", "figure")

    def __init__(self, figure: int, at: Point, box: Box, beside_mm: float = 0.0) -> None:
        self.figure, self.at, self.box, self.beside_mm = figure, at, box, beside_mm


class Cue:
    """The number and the arrow of one stroke in their places, and how far they are from where one would have them.

    ``arrow`` is None for a dot; ``number`` is None for an arrow after a turn.
    """

    __slots__ = ("arrow", "cost", "needs_mm", "number")

    def __init__(self, number: Number | None, arrow: Arrow | None, cost: float) -> None:
        self.number, self.arrow, self.cost = number, arrow, cost
        self.needs_mm = -1.0  # not known before it is asked for, see ``CueRoom.needs_mm``


class Sides(NamedTuple):
    """The white on either side of a letter that its cues may use, in mm from its outermost centrelines."""

    left_mm: float
    right_mm: float


class CueRoom:
    """The room over and under a letter in which its cues may stand, and the ink there that they keep off.

    How much white stands beside the letter is another matter (``between``). Numbers are ``number_mm`` high.
    ``headroom_mm`` is the height that cues may use over the top line, or over the letter where its marks rise higher.
    """

    def __init__(self, letter: InkLetter, ruling: Ruling, pen_mm: float, start_mm: float, number_mm: float,
                 headroom_mm: float) -> None:
        self.letter, self.ruling, self.pen_mm, self.start_mm = letter, ruling, pen_mm, start_mm
        self.number_mm, self.headroom_mm = number_mm, headroom_mm
        self._reach, self._off_start = self.pen_mm / 2 + CLEAR_MM, self.start_mm / 2 + 0.1
        self.polylines = [smooth_polylines(stroke) for stroke in self.letter.strokes]
        self.standing = _standing([point for parts in self.polylines for part in parts for point in part])
        self._starts = [stroke.start for stroke in self.letter.strokes]
        top, bottom = self.letter.bounds[1], self.letter.bounds[3]
        self._top = min(-self.ruling.line_height_mm, top) - self.headroom_mm
        self._bottom = max(self.ruling.descender_mm, bottom) if bottom > 0.1 else 0.0
        self._rules = [-self.ruling.height_of(line) for line in GuideLine if line in self.ruling.lines]

    @cached_property
    def _ink(self) -> _Near:
        """Points of the strokes, so close together that nothing as wide as a cue slips between them."""
        whole = [[*parts[0], *(point for part in parts[1:] for point in part[1:])] for parts in self.polylines]
        return _Near((point for points in whole for point in closely(points, self._reach)), self._reach)

    @property
    def middle(self) -> Point:
        """Return the middle of the letter's box."""
        x0, y0, x1, y1 = self.letter.bounds
        return ((x0 + x1) / 2, (y0 + y1) / 2)

    def between(self, sides: Sides) -> tuple[float, float]:
        """Return from which x to which the letter and the white on either side of it reach."""
        return self.standing[0] - sides.left_mm, self.standing[1] + sides.right_mm

    def number_is_free(self, figure: int, start: Point, centre: Point) -> bool:
        """Return whether a number has room, and whether no other stroke starts nearer to it than its own."""
        _, high, _, low = box = self.number_box(figure, centre)
        if high < self._top or low > self._bottom:
            return False
        for y in self._rules:
            if high - _RULE_CLEAR_MM < y < low + _RULE_CLEAR_MM:
                return False
        return not self._ink.is_near_to(box) and self._knows_its_start(box, start, centre)

    def arrow_is_free(self, arrow: Arrow) -> bool:
        """Return whether an arrow has room beside the strokes and the starts."""
        if arrow.box[1] < self._top or arrow.box[3] > self._bottom:
            return False
        reach = self.start_mm / 2 + CLEAR_MM
        starts = boxes.within(self._starts, boxes.grown(arrow.box, reach))
        return _keeps_clear(arrow, starts, reach) and not self._ink.is_near_to_one_of(arrow.points)

    def needs_mm(self, cue: Cue) -> float:
        """Return how far a cue's number must be from another's arrow to read with its own.

        Endlessly far where its own arrow touches it: such a cue fits nowhere.
        """
        if cue.needs_mm < 0:
            cue.needs_mm = self._needs_mm(cue.number, cue.arrow)
        return cue.needs_mm

    def _needs_mm(self, number: Number | None, arrow: Arrow | None) -> float:
        if number is None:
            return 0.0
        if arrow is None:
            return _ALONE * self.number_mm
        if not _off(number, arrow):
            return math.inf
        return _NEARER * distances.to_polyline(number.at, arrow.shaft)

    def _knows_its_start(self, box: Box, start: Point, centre: Point) -> bool:
        """Return whether a number keeps off the marks of all starts and is nearest to its own."""
        reach = math.dist(start, centre)
        for other in self._starts:
            if distances.is_near_box(other, box, self._off_start):
                return False
            if math.dist(other, centre) <= reach and math.dist(other, start) > FLAT_MM:
                return False
        return True

    def number_box(self, figure: int, centre: Point) -> Box:
        """Return the box of a number."""
        return number_box(figure, centre, self.number_mm)


class Placed:
    """A cue that has its place, and what it leaves of the others: each number and arrow is held against it but once."""

    __slots__ = ("_arrows", "_numbers", "_room", "cue")

    def __init__(self, room: CueRoom, cue: Cue) -> None:
        self.cue, self._room = cue, room
        self._numbers: dict[Number, float] = {}
        self._arrows: dict[Arrow, bool] = {}

    def leaves(self, cue: Cue) -> bool:
        """Return whether another cue keeps off this one, and neither takes the other's meaning."""
        number, arrow = cue.number, cue.arrow
        if arrow:
            if arrow not in self._arrows:
                self._arrows[arrow] = self._leaves_arrow(arrow)
            if not self._arrows[arrow]:
                return False
        if number:
            if number not in self._numbers:
                self._numbers[number] = self._away_mm(number)
            return self._numbers[number] > 0.0 and self._numbers[number] > self._room.needs_mm(cue)
        return True

    def _leaves_arrow(self, arrow: Arrow) -> bool:
        """Return whether an arrow keeps off this cue, and is no nearer to its number than its own arrow."""
        number, own = self.cue.number, self.cue.arrow
        if number and not (_off(number, arrow)
                           and distances.to_polyline(number.at, arrow.shaft) > self._room.needs_mm(self.cue)):
            return False
        return own is None or keep_off(own, arrow)

    def _away_mm(self, number: Number) -> float:
        """Return how far a number stands from this cue's arrow; 0 where it comes too near to number or arrow."""
        other, arrow = self.cue.number, self.cue.arrow
        if other and boxes.overlap(boxes.grown(number.box, _APART * self._room.number_mm), other.box):
            return 0.0
        if arrow is None:
            return math.inf
        return distances.to_polyline(number.at, arrow.shaft) if _off(number, arrow) else 0.0


class _Near:
    """Points, to be asked whether others come nearer to one of them than ``reach_mm``.

    Each lies in all the square cells into which it reaches, so that whoever asks looks into his own cells alone.
    """

    def __init__(self, points: Iterable[Point], reach_mm: float) -> None:
        self._reach, self._cell = reach_mm, _CELL * reach_mm
        self._cells: dict[tuple[float, float], list[Point]] = {}
        for x, y in points:
            rows = self._span(y - reach_mm, y + reach_mm)
            for column in self._span(x - reach_mm, x + reach_mm):
                for row in rows:
                    self._cells.setdefault((column, row), []).append((x, y))

    def is_near_to_one_of(self, points: Iterable[Point]) -> bool:
        """Return whether one of the points comes too near."""
        cells, cell, square = self._cells, self._cell, self._reach * self._reach
        for x, y in points:
            for ax, ay in cells.get((x // cell, y // cell), ()):
                if (x - ax) * (x - ax) + (y - ay) * (y - ay) < square:
                    return True
        return False

    def is_near_to(self, box: Box) -> bool:
        """Return whether a box comes too near."""
        rows = self._span(box[1], box[3])
        for column in self._span(box[0], box[2]):
            for row in rows:
                for point in self._cells.get((column, row), ()):
                    if distances.is_near_box(point, box, self._reach):
                        return True
        return False

    def _span(self, least: float, most: float) -> range:
        return range(int(least // self._cell), int(most // self._cell) + 1)


def number_box(figure: int, centre: Point, number_mm: float) -> Box:
    """Return the box of a number in our figures, its pen counted: a 1 is half as wide as the others."""
    high = number_mm / 2
    wide = (_ONE_WIDE if figure == 1 else _WIDE) * high
    return (centre[0] - wide, centre[1] - high, centre[0] + wide, centre[1] + high)


def _standing(points: Sequence[Point]) -> tuple[float, float]:
    """Return the least and greatest x of what stands on the baseline: a tail may reach under others."""
    upright = [x for x, y in points if y <= 0.0] or [x for x, _ in points]
    return min(upright), max(upright)


def keep_off(one: Arrow, other: Arrow) -> bool:
    """Return whether two arrows keep off each other."""
    if not boxes.overlap(boxes.grown(one.box, 2 * CLEAR_MM), other.box):
        return True
    near = boxes.within(other.points, boxes.grown(one.box, 2 * CLEAR_MM))
    return _keeps_clear(one, near, 2 * CLEAR_MM)


def _off(number: Number, arrow: Arrow) -> bool:
    """Return whether a number and an arrow keep off each other."""
    if not boxes.overlap(boxes.grown(number.box, 2 * CLEAR_MM), arrow.box):
        return True
    return not any(distances.is_near_box(point, number.box, 2 * CLEAR_MM) for point in arrow.points)


def _keeps_clear(arrow: Arrow, near: Sequence[Point], reach: float) -> bool:
    """Return whether no point of an arrow comes nearer than ``reach`` to one of those near it."""
    return not near or all(min(map(math.dist, repeat(point), near)) >= reach for point in arrow.points)
