"""Stroke cues for a model: a start ring, the number of the stroke, and an arrow in the direction of travel.

Millimetres, y down, about the letter's own origin. A cue is placed only where it is free, and only where it cannot
mislead: a number stands nearer to its own start than to any other, and nearer to its own arrow than to any other,
for two strokes often start at one place (``clearance``). The numbers of a letter are all there, or those of its
base without its marks, or none: a letter that shows 1 and 3 teaches a gap. Cues are worked out letter by letter,
inside the white that belongs to the letter, so that neighbours never meet.
"""

from __future__ import annotations

import itertools
import math
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field
from typing import Generic, TypeVar

from namewright.letters.alphabet import Alphabet, upright
from namewright.letters.strokes import Point, Stroke, evenly, flatten
from namewright.lines.clearance import CLEAR_MM, FLAT_MM, Arrow, Cue, Taken, apart, shaft
from namewright.lines.forms import Form, Inkwell, Pens
from namewright.lines.ink import DARK, WHITE, Fragment, Ink, Piece, Style, dot_fragment, stroke_fragment
from namewright.lines.ruling import Ruling, print_ruling
from namewright.lines.setting import InkLetter, SetLine, Typecase

T = TypeVar("T")

# Where a number may stand: how far from its start, the nearest first, and at what turn from the direction of travel,
# behind the start first. The turns that most letters take come first, so that their numbers stand alike.
_NUMBER_RINGS = (1.0, 1.1, 1.25, 1.4, 1.6, 1.8, 2.0, 2.25, 2.5)
_NUMBER_TURNS = (180, 135, 225, 100, 260, 70, 290, 40, 320,
                 165, 195, 150, 210, 120, 240, 85, 275, 55, 305, 25, 335, 10, 350)
# How far a cue may be from its best place before another is better, in heights of a number; found by trial.
_TURN_COST, _FAR_COST, _SHORT_COST, _TOGETHER = 0.4, 0.3, 0.3, 0.35
_STRAIGHT = 0.9  # least chord of a stretch that an arrow goes beside, to its way: round a tight hook none is true


@dataclass(frozen=True, slots=True)
class Cues:
    """The cues of one letter: start points, (number, centre) pairs and arrows as polylines."""

    starts: tuple[Point, ...]
    numbers: tuple[tuple[int, Point], ...]
    arrows: tuple[Arrow, ...]


@dataclass(frozen=True, slots=True)
class _Look:
    """How long to look for places: so many numbers and arrows for a stroke, and so many pairs of them tried."""

    numbers: int
    arrows: int
    tries: int
    bare: bool = False  # whether a number may stand without an arrow


_QUICK = _Look(8, 6, 100)  # enough for most letters
_LOOKS = (_QUICK, _Look(20, 16, 600), _Look(32, 30, 1500), _Look(24, 12, 1500, bare=True), _Look(32, 0, 300, bare=True))
_MOST_ALONE = 32  # arrows looked at for a stroke where no numbers have a place


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
        return self.number_mm + self.pens.start_mm / 2 + 2 * CLEAR_MM

    def cues(self, letter: InkLetter) -> Cues:
        """Return the cues of a letter; what has no place that is free and plain is left away."""
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
            if cues.starts:
                starts.append(Piece(placed.x, 0.0, dot_fragment(cues.starts)))
            numbers += [Piece(placed.x + x, y, self._digit(number)) for number, (x, y) in cues.numbers]
            if cues.arrows:
                arrows.append(Piece(placed.x, 0.0, stroke_fragment(_polyline(points) for points in cues.arrows)))
        thin = max(0.22, 0.12 * self.number_mm)
        return tuple(Ink(style, tuple(pieces)) for style, pieces in (
            (Style(self.pens.start_mm), starts), (Style(self.pens.start_hole_mm, WHITE), starts),
            (Style(thin, DARK), arrows), (Style(thin, DARK), numbers)) if pieces)

    def _digit(self, number: int) -> Fragment:
        """Return the fragment of a number, centred on its origin, in its usual form: a bare 1 would be a stroke."""
        if number not in self._digits:
            case = Typecase(upright(), print_ruling(self.number_mm / 1.75), pencil_mm=0.1)
            line = case.line(str(number))
            x0, y0, x1, y1 = line.bounds
            strokes = [stroke.map(lambda p, x=item.x: (p[0] + x - (x0 + x1) / 2, p[1] - (y0 + y1) / 2))  # type: ignore[misc]
                       for item in line.letters for stroke in item.letter.strokes]
            self._digits[number] = stroke_fragment(strokes)
        return self._digits[number]

    def _work_out(self, letter: InkLetter) -> Cues:
        """Return cues for every stroke, else for the base alone, else arrows without numbers.

        A dot has no ring: it is solid, as a child presses it.
        """
        taken = Taken(letter, self.ruling, self.pens.model_mm, self.pens.start_mm, self.number_mm, self.side_mm,
                      self.headroom_mm)
        base = len(self.alphabet.letter(letter.cluster).base.strokes)
        places = [self._places(taken, stroke) for stroke in letter.strokes]
        found = _placed(taken, places, (), (_QUICK,))
        if found is None:
            found = _placed(taken, places[:base], (), _LOOKS[base == len(places):])
            if found:
                found = _placed(taken, places, found, _LOOKS) or found
        arrows = [cue.arrow for cue in found if cue.arrow] if found else _arrows_alone(places)
        return Cues(tuple(stroke.start for stroke in letter.strokes if not stroke.is_dot),
                    tuple((count, cue.number) for count, cue in enumerate(found or (), 1)), tuple(arrows))

    def _places(self, taken: Taken, stroke: Stroke) -> _Places:
        """Return where a number and an arrow may stand for one stroke, free of ink; a dot has no arrow."""
        numbers = ((cost, at) for cost, at in self._number_places(stroke) if taken.number_is_free(stroke.start, at))
        arrows = ((cost, arrow, shaft(arrow)) for cost, arrow in self._arrow_places(stroke)
                  if taken.arrow_is_free(arrow))
        return _Places(_Kept(numbers), None if stroke.is_dot else _Kept(arrows))

    def _number_places(self, stroke: Stroke) -> Iterator[tuple[float, Point]]:
        """Yield places for a number round a start with their cost, the nearest first, behind before beside it."""
        (x, y), heading = stroke.start, _heading(stroke)
        free = self.pens.start_mm / 2 + CLEAR_MM
        across, along = free + 0.3 * self.number_mm, free + 0.5 * self.number_mm
        for ring, (turned, turn) in itertools.product(_NUMBER_RINGS, enumerate(_NUMBER_TURNS)):
            angle = heading + math.radians(turn)
            cost = (ring - 1) * along + _TURN_COST * self.number_mm * turned / len(_NUMBER_TURNS)
            yield cost, (x + ring * across * math.cos(angle), y + ring * along * math.sin(angle))

    def _arrow_places(self, stroke: Stroke) -> Iterator[tuple[float, Arrow]]:
        """Yield arrows beside a stroke with their cost, those near its start first, at last over its end.

        None begins farther along the stroke than an x-height: there it would speak of another part.
        """
        track = flatten(stroke.segments, FLAT_MM)
        length = sum(math.dist(a, b) for a, b in itertools.pairwise(track))
        x_height = self.ruling.x_height_mm
        steps = max(8, min(60, round(length / (0.06 * x_height))))
        points = evenly(track, steps)
        for short, (share, least) in enumerate(((0.42, 1.6), (0.24, 1.2), (0.15, 0.9))):
            reach_mm = max(least, share * x_height)
            reach = max(1, min(steps, round(reach_mm * steps / length)))
            last = min(steps - reach, steps * 3 // 4, int(x_height * steps / length))
            for begin in range(0, max(1, last) + 1, max(1, steps // 16)):
                cost = self.number_mm * _SHORT_COST * short + _FAR_COST * begin * length / steps
                ends = points[begin], points[min(begin + reach, steps)]
                if math.dist(*ends) >= _STRAIGHT * reach * length / steps:
                    yield from self._beside(*ends, reach_mm, cost)
        (ax, ay), (bx, by) = points[-2:]
        ux, uy = (bx - ax) * steps / length, (by - ay) * steps / length
        for share, least in ((0.24, 1.2), (0.15, 0.9)):  # beside a short bar a stem leaves no room for all of an arrow
            reach_mm = max(least, share * x_height)
            for over in (0.25 * reach_mm, 0.5 * reach_mm, 0.75 * reach_mm):
                tip = (bx + over * ux, by + over * uy)
                cost = self.number_mm * _SHORT_COST * 3 + over
                yield from self._beside((tip[0] - reach_mm * ux, tip[1] - reach_mm * uy), tip, reach_mm, cost)

    def _beside(self, begin: Point, end: Point, reach_mm: float, cost: float) -> Iterator[tuple[float, Arrow]]:
        """Yield arrows on either side of the way from ``begin`` to ``end``, the nearest first."""
        for away in (1.0, 1.4, 1.9):
            offset = away * (self.pens.model_mm / 2 + CLEAR_MM + 0.05 * self.ruling.x_height_mm)
            for side in (-1.0, 1.0):
                yield cost + (away - 1) * offset, _arrow(begin, end, side * offset, reach_mm)


class _Kept(Generic[T]):
    """Values that take work to find, found one by one when asked for, and kept."""

    def __init__(self, values: Iterator[T]) -> None:
        self._values, self._found = values, list[T]()

    def first(self, count: int) -> list[T]:
        """Return the first ``count``, or as many as there are."""
        self._found += itertools.islice(self._values, max(0, count - len(self._found)))
        return self._found[:count]


@dataclass(frozen=True, slots=True)
class _Places:
    """Free places for the number and the arrow of one stroke, with their costs; arrows also as close points."""

    numbers: _Kept[tuple[float, Point]]
    arrows: _Kept[tuple[float, Arrow, list[Point]]] | None

    def choices(self, look: _Look) -> list[Cue]:
        """Return ways to mark the stroke, the best first."""
        numbers = self.numbers.first(look.numbers)
        bare = [Cue(at, (), (), cost) for cost, at in numbers]
        if self.arrows is None:
            return bare
        cues = [Cue(at, arrow, along, near + far + _TOGETHER * math.dist(at, arrow[0]))
                for far, arrow, along in self.arrows.first(look.arrows) for near, at in numbers]
        return [*sorted(cues, key=lambda cue: cue.cost), *(bare if look.bare else ())]


def _placed(taken: Taken, places: Sequence[_Places], placed: tuple[Cue, ...],
            looks: Sequence[_Look]) -> tuple[Cue, ...] | None:
    """Return cues for strokes, those that have theirs first; None where no look finds a way for all to stand."""
    for look in looks:
        choices = [each.choices(look) for each in places[len(placed):]]
        if found := _place(choices, taken, placed, itertools.repeat(None, look.tries)):
            return found
    return None


def _arrows_alone(places: Sequence[_Places]) -> list[Arrow]:
    """Return the arrows that stand together where the numbers do not: they still tell the way."""
    placed: list[tuple[Arrow, list[Point]]] = []
    for each in places:
        arrows = each.arrows.first(_MOST_ALONE) if each.arrows else []
        free = ((arrow, along) for _, arrow, along in arrows if all(apart(along, other) for _, other in placed))
        placed += itertools.islice(free, 1)
    return [arrow for arrow, _ in placed]


def _place(choices: Sequence[Sequence[Cue]], taken: Taken, placed: tuple[Cue, ...],
           left: Iterator[None]) -> tuple[Cue, ...] | None:
    """Return ``placed`` and a cue from each list, the first lists' best first, going back where one finds no place.

    None where ``left``, the tries, runs out or there is no way.
    """
    if not choices:
        return placed
    for cue in choices[0]:
        if next(left, False) is False:
            return None
        if taken.fits(cue, placed) and (found := _place(choices[1:], taken, (*placed, cue), left)):
            return found
    return None


def _heading(stroke: Stroke) -> float:
    """Return the direction of travel at the start, in radians; a dot is taken to go down."""
    (x, y) = stroke.start
    for point in flatten(stroke.segments, FLAT_MM)[1:]:
        if math.dist(point, (x, y)) > 1e-6:
            return math.atan2(point[1] - y, point[0] - x)
    return math.pi / 2


def _arrow(begin: Point, end: Point, offset: float, reach: float) -> Arrow:
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


def line_with_cues(maker: CueMaker, well: Inkwell, line: SetLine) -> tuple[Ink, ...]:
    """Return a solid line with its cues on top, relative to the line's origin."""
    return (*well.ink(line, Form.SOLID), *maker.ink(line))
