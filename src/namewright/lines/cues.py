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

from namewright.geometry.points import Point, heading, unit
from namewright.geometry.polylines import evenly, length
from namewright.geometry.segments import heading_out
from namewright.letters.alphabet import upright
from namewright.letters.strokes import Stroke, polyline_stroke
from namewright.lines.clearance import CLEAR_MM, FLAT_MM, Arrow, Cue, CueRoom, keep_off, shaft
from namewright.lines.forms import Form, Inker, Pens
from namewright.lines.ink import DARK, WHITE, Fragment, Ink, Piece, Style, dot_fragment, stroke_fragment
from namewright.lines.ruling import Ruling, print_ruling
from namewright.lines.setting import InkLetter, RuledLetters, SetLine
from namewright.store import LETTERS, Store

T = TypeVar("T")

# Where a number may stand: how far from its start, the nearest first, and at what turn from the direction of travel,
# behind the start first. The turns that most letters take come first, so that their numbers stand alike.
_NUMBER_RINGS = (1.0, 1.1, 1.25, 1.4, 1.6, 1.8, 2.0, 2.25, 2.5)
_NUMBER_TURNS = (180, 135, 225, 100, 260, 70, 290, 40, 320,
                 165, 195, 150, 210, 120, 240, 85, 275, 55, 305, 25, 335, 10, 350)
# How far a cue may be from its best place before another is better, in heights of a number; found by trial.
_TURN_COST, _FAR_COST, _SHORT_COST, _TOGETHER = 0.4, 0.3, 0.3, 0.35
_ARROW_LENGTHS = ((0.42, 1.6), (0.24, 1.2), (0.15, 0.9))  # shares of the x-height, and the least in mm; longest first
_STRAIGHT = 0.9  # least chord of a stretch that an arrow goes beside, to its way: round a tight hook none is true


@dataclass(frozen=True, slots=True)
class Cues:
    """The cues of one letter: start points, (number, centre) pairs and arrows as polylines."""

    starts: tuple[Point, ...]
    numbers: tuple[tuple[int, Point], ...]
    arrows: tuple[Arrow, ...]


@dataclass(frozen=True, slots=True)
class _Search:
    """How long to search for places: so many numbers and arrows for a stroke, and so many pairs of them tried."""

    numbers: int
    arrows: int
    tries: int
    bare: bool = False  # whether a number may stand without an arrow


_QUICK = _Search(8, 6, 100)  # enough for most letters
_SEARCHES = (_QUICK, _Search(20, 16, 600), _Search(32, 30, 1500), _Search(24, 12, 1500, bare=True),
             _Search(32, 0, 300, bare=True))
_MAX_ALONE = 32  # arrows looked at for a stroke where no numbers have a place


@dataclass
class CueMaker:
    """Cues for the letters of one ruling, each letter's worked out once.

    ``side_mm`` is the white on either side that a letter's cues may use.
    """

    ruling: Ruling
    pens: Pens
    side_mm: float
    _cues: Store[str, Cues] = field(default_factory=lambda: Store(LETTERS))
    _digits: Store[int, Fragment] = field(default_factory=lambda: Store(LETTERS))
    _drawn: Store[str, tuple[Fragment | None, Fragment | None]] = field(default_factory=lambda: Store(LETTERS))

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
        return self._cues.get(letter.cluster, lambda: self._work_out(letter))

    def ink(self, line: SetLine, x: float = 0.0, y: float = 0.0) -> tuple[Ink, ...]:
        """Return the cues of a set line as ink, the line's origin at (``x``, ``y``)."""
        starts: list[Piece] = []
        numbers: list[Piece] = []
        arrows: list[Piece] = []
        for placed in line.letters:
            start, arrow = self._starts_and_arrows(placed.letter)
            if start:
                starts.append(Piece(placed.x + x, y, start))
            numbers += [Piece(placed.x + right + x, down + y, self._digit(number))
                        for number, (right, down) in self.cues(placed.letter).numbers]
            if arrow:
                arrows.append(Piece(placed.x + x, y, arrow))
        thin = max(0.22, 0.12 * self.number_mm)
        return tuple(Ink(style, tuple(pieces)) for style, pieces in (
            (Style(self.pens.start_mm), starts), (Style(self.pens.start_hole_mm, WHITE), starts),
            (Style(thin, DARK), arrows), (Style(thin, DARK), numbers)) if pieces)

    def _starts_and_arrows(self, letter: InkLetter) -> tuple[Fragment | None, Fragment | None]:
        """Return where a letter's strokes start and its arrows, None for what it lacks, drawn once."""
        def draw() -> tuple[Fragment | None, Fragment | None]:
            cues = self.cues(letter)
            arrows = [polyline_stroke(points) for points in cues.arrows]
            return (dot_fragment(cues.starts) if cues.starts else None, stroke_fragment(arrows) if arrows else None)
        return self._drawn.get(letter.cluster, draw)

    def _digit(self, number: int) -> Fragment:
        """Return the fragment of a number, centred on its origin, in its usual form: a bare 1 would be a stroke."""
        return self._digits.get(number, lambda: self._draw_digit(number))

    def _draw_digit(self, number: int) -> Fragment:
        line = RuledLetters(upright(), print_ruling(self.number_mm / 1.75), pencil_mm=0.1).line(str(number))
        x0, y0, x1, y1 = line.bounds
        return stroke_fragment(
            stroke.map(lambda p, x=item.x: (p[0] + x - (x0 + x1) / 2, p[1] - (y0 + y1) / 2))  # type: ignore[misc]
            for item in line.letters for stroke in item.letter.strokes)

    def _work_out(self, letter: InkLetter) -> Cues:
        """Return cues for every stroke, else for the base alone, else arrows without numbers.

        A dot has no ring: it is solid, as a child presses it.
        """
        room = CueRoom(letter, self.ruling, self.pens.model_mm, self.pens.start_mm, self.number_mm, self.side_mm,
                       self.headroom_mm)
        places = [self._places(room, stroke) for stroke in letter.strokes]
        numbered = _all_or_base(room, places, len(places) - letter.marks)
        arrows = [cue.arrow for cue in numbered if cue.arrow] if numbered else _arrows_alone(places)
        return Cues(tuple(stroke.start for stroke in letter.strokes if not stroke.is_dot),
                    tuple((count, cue.number) for count, cue in enumerate(numbered, 1)), tuple(arrows))

    def _places(self, room: CueRoom, stroke: Stroke) -> _Places:
        """Return where a number and an arrow may stand for one stroke, free of ink; a dot has no arrow."""
        numbers = ((cost, at) for cost, at in self._number_places(stroke) if room.number_is_free(stroke.start, at))
        arrows = ((cost, arrow, shaft(arrow)) for cost, arrow in self._arrow_places(stroke)
                  if room.arrow_is_free(arrow))
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

        The stroke is walked in equal steps of about 0.06 x-heights, 8 to 60 of them; arrows begin and end at steps.
        """
        track = stroke.flattened(FLAT_MM)
        walked = length(track)
        steps = max(8, min(60, round(walked / (0.06 * self.ruling.x_height_mm))))
        points = evenly(track, steps)
        for shortness, arrow_mm in enumerate(self._arrow_lengths(_ARROW_LENGTHS)):
            yield from self._arrows_along(points, walked / steps, arrow_mm, _SHORT_COST * shortness * self.number_mm)
        for arrow_mm in self._arrow_lengths(_ARROW_LENGTHS[1:]):
            yield from self._arrows_over_the_end(points, arrow_mm, _SHORT_COST * len(_ARROW_LENGTHS) * self.number_mm)

    def _arrow_lengths(self, lengths: Sequence[tuple[float, float]]) -> list[float]:
        """Return lengths of arrows in mm, from shares of the x-height and the least that can be read."""
        return [max(least_mm, share * self.ruling.x_height_mm) for share, least_mm in lengths]

    def _arrows_along(self, points: Sequence[Point], step_mm: float, arrow_mm: float, cost: float,
                      ) -> Iterator[tuple[float, Arrow]]:
        """Yield arrows of one length beside a walked stroke, from its start on.

        None begins beyond three quarters of the stroke or farther along it than an x-height: there it would speak
        of another part. Where a stroke bends so much within an arrow's length that the chord is plainly shorter
        than the way, a straight arrow would not be true, and there is none.
        """
        steps = len(points) - 1
        reach = max(1, min(steps, round(arrow_mm / step_mm)))
        last = min(steps - reach, steps * 3 // 4, int(self.ruling.x_height_mm / step_mm))
        for begin in range(0, max(1, last) + 1, max(1, steps // 16)):
            ends = points[begin], points[min(begin + reach, steps)]
            if math.dist(*ends) >= _STRAIGHT * reach * step_mm:
                yield from self._beside(*ends, arrow_mm, cost + _FAR_COST * begin * step_mm)

    def _arrows_over_the_end(self, points: Sequence[Point], arrow_mm: float, cost: float,
                             ) -> Iterator[tuple[float, Arrow]]:
        """Yield arrows that point on over a stroke's end: beside a short bar a stem leaves no room for all of one."""
        before, end = points[-2:]
        ux, uy = unit((end[0] - before[0], end[1] - before[1]))
        for over in (0.25 * arrow_mm, 0.5 * arrow_mm, 0.75 * arrow_mm):
            tip = (end[0] + over * ux, end[1] + over * uy)
            yield from self._beside((tip[0] - arrow_mm * ux, tip[1] - arrow_mm * uy), tip, arrow_mm, cost + over)

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

    def choices(self, search: _Search) -> list[Cue]:
        """Return ways to mark the stroke, the best first."""
        numbers = self.numbers.first(search.numbers)
        bare = [Cue(at, (), (), cost) for cost, at in numbers]
        if self.arrows is None:
            return bare
        cues = [Cue(at, arrow, along, near + far + _TOGETHER * math.dist(at, arrow[0]))
                for far, arrow, along in self.arrows.first(search.arrows) for near, at in numbers]
        return [*sorted(cues, key=lambda cue: cue.cost), *(bare if search.bare else ())]


def _all_or_base(room: CueRoom, places: Sequence[_Places], base: int) -> tuple[Cue, ...]:
    """Return cues for all strokes of a letter, or for the first ``base`` of them, its letter without marks, or none.

    A quick search does for most letters. Where it fails, the base is searched for at length (one step further where
    it is all there is, since that quick search has just failed), and then the marks are added to what was found.
    """
    if found := _searched(room, places, (), (_QUICK,)):
        return found
    bare = _searched(room, places[:base], (), _SEARCHES[1:] if base == len(places) else _SEARCHES)
    if bare is None:
        return ()
    return _searched(room, places, bare, _SEARCHES) or bare


def _searched(room: CueRoom, places: Sequence[_Places], placed: tuple[Cue, ...],
              searches: Sequence[_Search]) -> tuple[Cue, ...] | None:
    """Return cues for strokes, those that have theirs first; None where no search finds a way for all to stand."""
    for search in searches:
        choices = [each.choices(search) for each in places[len(placed):]]
        if found := _place(choices, room, placed, itertools.repeat(None, search.tries)):
            return found
    return None


def _arrows_alone(places: Sequence[_Places]) -> list[Arrow]:
    """Return the arrows that stand together where the numbers do not: they still tell the way."""
    placed: list[tuple[Arrow, list[Point]]] = []
    for each in places:
        arrows = each.arrows.first(_MAX_ALONE) if each.arrows else []
        free = ((arrow, along) for _, arrow, along in arrows if all(keep_off(along, other) for _, other in placed))
        placed += itertools.islice(free, 1)
    return [arrow for arrow, _ in placed]


def _place(choices: Sequence[Sequence[Cue]], room: CueRoom, placed: tuple[Cue, ...],
           left: Iterator[None]) -> tuple[Cue, ...] | None:
    """Return ``placed`` and a cue from each list, the first lists' best first, going back where one finds no place.

    None where ``left``, the tries, runs out or there is no way.
    """
    if not choices:
        return placed
    for cue in choices[0]:
        if next(left, False) is False:
            return None
        if room.fits(cue, placed) and (found := _place(choices[1:], room, (*placed, cue), left)):
            return found
    return None


def _heading(stroke: Stroke) -> float:
    """Return the direction of travel at the start, in radians; a dot is room to go down."""
    return math.pi / 2 if stroke.is_dot else heading_out(stroke.segments[0])


def _arrow(begin: Point, end: Point, offset: float, reach: float) -> Arrow:
    """Return shaft start, tip, barb, tip, barb for an arrow beside the way from ``begin`` to ``end``."""
    angle = heading(begin, end)
    nx, ny = -math.sin(angle) * offset, math.cos(angle) * offset
    a, tip = (begin[0] + nx, begin[1] + ny), (end[0] + nx, end[1] + ny)
    barb = min(max(0.32 * reach, 0.45), 1.6)
    left, right = ((tip[0] - barb * math.cos(angle + turn), tip[1] - barb * math.sin(angle + turn))
                   for turn in (0.5, -0.5))
    return (a, tip, left, tip, right)


def line_with_cues(maker: CueMaker, inker: Inker, line: SetLine, x: float = 0.0, y: float = 0.0) -> tuple[Ink, ...]:
    """Return a solid line with its cues on top, the line's origin at (``x``, ``y``)."""
    return (*inker.ink(line, Form.SOLID, x, y), *maker.ink(line, x, y))
