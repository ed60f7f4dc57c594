"""Stroke cues for a model: a start dot, the number of the stroke, and an arrow in the direction of travel.

Millimetres, y down, about the letter's own origin. A cue is placed only where it is free: a number touches no
stroke, no printed guide line and no other cue, and stands nearer to its own start than to any other; an arrow
touches no stroke and no other cue. Cues are worked out letter by letter, inside the white that belongs to the
letter, so that neighbours never meet.
"""

from __future__ import annotations

import itertools
import math
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass, field

from namewright.letters.alphabet import Alphabet
from namewright.letters.strokes import Bounds, Point, Stroke, evenly, flatten
from namewright.lines.forms import Form, Inkwell, Pens
from namewright.lines.ink import DARK, WHITE, Fragment, Ink, Piece, Style, dot_fragment, stroke_fragment
from namewright.lines.ruling import Line, Ruling, print_ruling
from namewright.lines.setting import InkLetter, SetLine, Typecase

_CLEAR_MM = 0.2
_FLAT_MM = 0.02
# Where a number may stand: how far from its start, the nearest first, and at what turn from the direction of travel,
# behind the start first. The turns that most letters take come first, so that their numbers stand alike.
_NUMBER_RINGS = (1.0, 1.1, 1.25, 1.4, 1.6, 1.8, 2.0, 2.25, 2.5)
_NUMBER_TURNS = (180, 135, 225, 100, 260, 70, 290, 40, 320,
                 165, 195, 150, 210, 120, 240, 85, 275, 55, 305, 25, 335, 10, 350)


@dataclass(frozen=True, slots=True)
class Cues:
    """The cues of one letter: start points, (number, centre) pairs and arrows as polylines."""

    starts: tuple[Point, ...]
    numbers: tuple[tuple[int, Point], ...]
    arrows: tuple[tuple[Point, ...], ...]


@dataclass
class CueMaker:
    """Cues for the letters of one ruling, each letter's worked out once.

    ``side_mm`` is the white on either side that a letter's cues may use.
    """

    alphabet: Alphabet
    ruling: Ruling
    pens: Pens
    side_mm: float
    _cues: dict[str, Cues] = field(default_factory=dict)
    _digits: dict[int, Fragment] = field(default_factory=dict)

    @property
    def number_mm(self) -> float:
        """Return the height of a stroke number."""
        return min(max(0.24 * self.ruling.x_height_mm, 1.4), 4.0)

    @property
    def headroom_mm(self) -> float:
        """Return the height over the top line that numbers may use."""
        return self.number_mm + 0.85 * self.pens.model_mm + 2 * _CLEAR_MM

    def cues(self, letter: InkLetter) -> Cues:
        """Return the cues of a letter. A number or arrow for which there is no room is left away."""
        if letter.cluster not in self._cues:
            self._cues[letter.cluster] = self._work_out(letter)
        return self._cues[letter.cluster]

    def ink(self, line: SetLine) -> tuple[Ink, ...]:
        """Return the cues of a set line as ink, relative to the line's origin."""
        starts: list[Piece] = []
        numbers: list[Piece] = []
        arrows: list[Piece] = []
        for placed in line.letters:
            cues = self.cues(placed.letter)
            starts.append(Piece(placed.x, 0.0, dot_fragment(cues.starts)))
            numbers += [Piece(placed.x + x, y, self._digit(number)) for number, (x, y) in cues.numbers]
            if cues.arrows:
                arrows.append(Piece(placed.x, 0.0, stroke_fragment(_polyline(points) for points in cues.arrows)))
        pen = self.pens.model_mm
        thin = max(0.22, 0.12 * self.number_mm)
        inks = [Ink(Style(1.7 * pen), tuple(starts)), Ink(Style(0.95 * pen, WHITE), tuple(starts))]
        inks += [Ink(Style(thin, DARK), tuple(pieces)) for pieces in (arrows, numbers) if pieces]
        return tuple(inks)

    def _digit(self, number: int) -> Fragment:
        """Return the fragment of a number, centred on its origin."""
        if number not in self._digits:
            case = Typecase(self.alphabet, print_ruling(self.number_mm / 1.75), pencil_mm=0.1)
            line = case.line(str(number))
            x0, y0, x1, y1 = line.bounds
            strokes = [stroke.map(lambda p, x=item.x: (p[0] + x - (x0 + x1) / 2, p[1] - (y0 + y1) / 2))  # type: ignore[misc]
                       for item in line.letters for stroke in item.letter.strokes]
            self._digits[number] = stroke_fragment(strokes)
        return self._digits[number]

    def _work_out(self, letter: InkLetter) -> Cues:
        taken = _Taken(self, letter)
        numbers: list[tuple[int, Point]] = []
        arrows: list[tuple[Point, ...]] = []
        for count, stroke in enumerate(letter.strokes, 1):
            centre = next((at for at in self._number_places(stroke)
                           if taken.is_nearest(stroke.start, at) and taken.number_fits(at)), None)
            if centre is not None:
                numbers.append((count, centre))
                taken.add_box(taken.number_box(centre))
            if not stroke.is_dot:
                arrow = next((points for points in self._arrow_places(stroke) if taken.arrow_fits(points)), None)
                if arrow is not None:
                    arrows.append(arrow)
                    taken.add_points(arrow)
        return Cues(tuple(stroke.start for stroke in letter.strokes), tuple(numbers), tuple(arrows))

    def _number_places(self, stroke: Stroke) -> Iterator[Point]:
        """Yield places for a number round a start, the nearest first, behind the start before beside it."""
        (x, y), heading = stroke.start, _heading(stroke)
        free = 0.85 * self.pens.model_mm + _CLEAR_MM
        across, along = free + 0.3 * self.number_mm, free + 0.5 * self.number_mm
        for ring, turn in itertools.product(_NUMBER_RINGS, _NUMBER_TURNS):
            angle = heading + math.radians(turn)
            yield (x + ring * across * math.cos(angle), y + ring * along * math.sin(angle))

    def _arrow_places(self, stroke: Stroke) -> Iterator[tuple[Point, ...]]:
        """Yield arrows beside a stroke, those near its start first, at last those that reach over its end."""
        track = flatten(stroke.segments, _FLAT_MM)
        length = sum(math.dist(a, b) for a, b in itertools.pairwise(track))
        steps = max(8, min(60, round(length / (0.06 * self.ruling.x_height_mm))))
        points = evenly(track, steps)
        for share, least in ((0.42, 1.6), (0.24, 1.2), (0.15, 0.9)):
            reach_mm = max(least, share * self.ruling.x_height_mm)
            reach = max(1, min(steps, round(reach_mm * steps / length)))
            for begin in range(0, max(1, min(steps - reach, steps * 3 // 4)) + 1, max(1, steps // 16)):
                yield from self._beside(points[begin], points[min(begin + reach, steps)], reach_mm)
        (ax, ay), (bx, by) = points[-2:]
        ux, uy = (bx - ax) * steps / length, (by - ay) * steps / length
        for share, least in ((0.24, 1.2), (0.15, 0.9)):  # beside a short bar a stem leaves no room for all of an arrow
            reach_mm = max(least, share * self.ruling.x_height_mm)
            for over in (0.25 * reach_mm, 0.5 * reach_mm, 0.75 * reach_mm):
                tip = (bx + over * ux, by + over * uy)
                yield from self._beside((tip[0] - reach_mm * ux, tip[1] - reach_mm * uy), tip, reach_mm)

    def _beside(self, begin: Point, end: Point, reach_mm: float) -> Iterator[tuple[Point, ...]]:
        """Yield arrows on either side of the way from ``begin`` to ``end``, the nearest first."""
        for away in (1.0, 1.4, 1.9):
            offset = away * (self.pens.model_mm / 2 + _CLEAR_MM + 0.05 * self.ruling.x_height_mm)
            for side in (-1.0, 1.0):
                yield _arrow(begin, end, side * offset, reach_mm)


class _Taken:
    """What a letter's cues must keep clear of."""

    def __init__(self, maker: CueMaker, letter: InkLetter) -> None:
        self.maker = maker
        self.reach = maker.pens.model_mm / 2 + _CLEAR_MM
        self.ink = [point for stroke in letter.strokes for point in _samples(stroke, self.reach)]
        self.starts = [stroke.start for stroke in letter.strokes]
        self.boxes: list[Bounds] = []
        self.points: list[Point] = []
        x0, _, x1, _ = letter.bounds
        ruling = maker.ruling
        self.left, self.right = x0 - maker.side_mm, x1 + maker.side_mm
        self.top = -ruling.line_height_mm - maker.headroom_mm
        self.bottom = ruling.descender_mm
        self.rules = [-ruling.height_of(line) for line in Line if line in ruling.lines]

    def is_nearest(self, start: Point, centre: Point) -> bool:
        """Return whether a start is nearer than those of other strokes: a reader gives a number to the nearest."""
        reach = math.dist(start, centre)
        return all(math.dist(other, centre) > reach for other in self.starts if math.dist(other, start) > _FLAT_MM)

    def number_box(self, centre: Point) -> Bounds:
        half = self.maker.number_mm / 2
        return (centre[0] - 0.6 * half, centre[1] - half, centre[0] + 0.6 * half, centre[1] + half)

    def number_fits(self, centre: Point) -> bool:
        box = self.number_box(centre)
        return (self._inside(box) and not any(box[1] - 0.15 < y < box[3] + 0.15 for y in self.rules)
                and self._clear(box, self.ink, self.reach)
                and self._clear(box, self.starts, 0.85 * self.maker.pens.model_mm + 0.1)
                and self._clear(box, self.points, _CLEAR_MM)
                and not any(_overlap(_grown(box, 0.3 * self.maker.number_mm), other) for other in self.boxes))

    def arrow_fits(self, points: Sequence[Point]) -> bool:
        box = (min(p[0] for p in points), min(p[1] for p in points),
               max(p[0] for p in points), max(p[1] for p in points))
        if not self._inside(box) or any(_overlap(_grown(box, _CLEAR_MM), other) for other in self.boxes):
            return False
        shaft = _shaft(points)
        return all(math.dist(point, other) >= reach for others, reach in (
            (self.ink, self.reach), (self.starts, 0.85 * self.maker.pens.model_mm + _CLEAR_MM),
            (self.points, 2 * _CLEAR_MM)) for other in _within(others, _grown(box, reach)) for point in shaft)

    def add_box(self, box: Bounds) -> None:
        self.boxes.append(box)

    def add_points(self, points: Sequence[Point]) -> None:
        self.points += _shaft(points)

    def _inside(self, box: Bounds) -> bool:
        return box[0] >= self.left and box[2] <= self.right and box[1] >= self.top and box[3] <= self.bottom

    @staticmethod
    def _clear(box: Bounds, points: Iterable[Point], reach: float) -> bool:
        x0, y0, x1, y1 = box
        return all(math.hypot(max(x0 - x, 0.0, x - x1), max(y0 - y, 0.0, y - y1)) >= reach for x, y in points)


def _shaft(points: Sequence[Point]) -> list[Point]:
    """Return points along an arrow's shaft and barbs so close that no number slips between them."""
    start, tip, left, _, right = points
    count = max(6, math.ceil(math.dist(start, tip) / (2 * _CLEAR_MM)))
    barb = max(1, math.ceil(math.dist(tip, left) / (2 * _CLEAR_MM)))
    return [*evenly([start, tip], count), *evenly([tip, left], barb), *evenly([tip, right], barb)]


def _within(points: Iterable[Point], box: Bounds) -> list[Point]:
    x0, y0, x1, y1 = box
    return [point for point in points if x0 <= point[0] <= x1 and y0 <= point[1] <= y1]


def _samples(stroke: Stroke, reach: float) -> list[Point]:
    """Return points along a stroke so close that nothing as wide as a cue slips between them."""
    track = flatten(stroke.segments, _FLAT_MM)
    length = sum(math.dist(a, b) for a, b in itertools.pairwise(track))
    return evenly(track, max(1, math.ceil(length / reach)))


def _heading(stroke: Stroke) -> float:
    """Return the direction of travel at the start, in radians; a dot is taken to go down."""
    (x, y) = stroke.start
    for point in flatten(stroke.segments, _FLAT_MM)[1:]:
        if math.dist(point, (x, y)) > 1e-6:
            return math.atan2(point[1] - y, point[0] - x)
    return math.pi / 2


def _arrow(begin: Point, end: Point, offset: float, reach: float) -> tuple[Point, ...]:
    """Return shaft start, tip, barb, tip, barb for an arrow beside the way from ``begin`` to ``end``."""
    angle = math.atan2(end[1] - begin[1], end[0] - begin[0])
    nx, ny = -math.sin(angle) * offset, math.cos(angle) * offset
    a, tip = (begin[0] + nx, begin[1] + ny), (end[0] + nx, end[1] + ny)
    barb = min(max(0.32 * reach, 0.45), 1.6)
    left, right = ((tip[0] - barb * math.cos(angle + turn), tip[1] - barb * math.sin(angle + turn))
                   for turn in (0.5, -0.5))
    return (a, tip, left, tip, right)


def _polyline(points: Sequence[Point]) -> Stroke:
    return Stroke(tuple((a, b) for a, b in itertools.pairwise(points)))


def _overlap(a: Bounds, b: Bounds) -> bool:
    return a[0] < b[2] and b[0] < a[2] and a[1] < b[3] and b[1] < a[3]


def _grown(box: Bounds, by: float) -> Bounds:
    return (box[0] - by, box[1] - by, box[2] + by, box[3] + by)


def line_with_cues(maker: CueMaker, well: Inkwell, line: SetLine) -> tuple[Ink, ...]:
    """Return a solid line with its cues on top, relative to the line's origin."""
    return (*well.ink(line, Form.SOLID), *maker.ink(line))

