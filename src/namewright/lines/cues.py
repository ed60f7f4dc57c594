"""Stroke cues for a model: a mark where each stroke starts, its number, and arrows in the direction of travel.

Millimetres, y down, about the letter's own origin. The first stroke starts at a solid dot, the later ones at rings. A
cue is placed only where it is free, and only where it cannot mislead: a number stands nearer to its own start than to
any other, and nearer to its own arrow than to any other, for two strokes often start at one place (``clearance``). An
arrow follows its stroke from the start, and a short one tells the way after each turn (``arrows``). A letter has all
its cues or none, for one that shows 1 and 3 teaches a gap; so has a name (``on_line``).
"""

from __future__ import annotations

import itertools
import math
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass, field
from typing import Generic, TypeVar

from namewright.geometry.points import Point
from namewright.geometry.segments import heading_out
from namewright.letters.alphabet import upright
from namewright.letters.strokes import Stroke, polyline_stroke
from namewright.lines.arrows import Arrow, Leg, Track, arrow_at, legs, places
from namewright.lines.clearance import CLEAR_MM, Cue, CueRoom, Sides, number_box, standing
from namewright.lines.forms import Form, Inker, Pens
from namewright.lines.ink import BLACK, DARK, WHITE, Fragment, Ink, Piece, Style, dot_fragment, stroke_fragment
from namewright.lines.ruling import Ruling, print_ruling
from namewright.lines.setting import InkLetter, RuledLetters, SetLine, pen_width_mm
from namewright.store import LETTERS, Store

T = TypeVar("T")

# Where a number may stand: how far from its start, the nearest first, and at what turn from the direction of travel,
# behind the start first. The turns that most letters take come first, so that their numbers stand alike.
_NUMBER_RINGS = (1.0, 1.2, 1.45, 1.75, 2.2)
_NUMBER_TURNS = (180, 135, 225, 100, 260, 70, 290, 40, 320, 160, 200, 120, 240, 85, 275, 55, 305, 20, 340)
# How far a cue may be from its best place before another is better, in x-heights; found by trial.
_TURN_COST, _TOGETHER, _PARTED = 0.16, 0.5, 0.4
_NUMBER_SHARE = 0.3  # of the x-height: 3 mm on lines of 19 mm
_NUMBER_MM = (2.2, 4.0)  # smaller ones a child of five cannot be asked to read: common practice; larger need not be
_LINE_OF_NUMBER = 0.117  # the pen of numbers and arrows: 0.35 mm at 3 mm
_SIDES_STEP_MM, _MAX_SIDE_MM = 0.25, 6.0  # the white beside a letter is rounded down, so that most need one search
END_MM = 4.0  # white before the first letter of a line and behind the last


@dataclass(frozen=True, slots=True)
class Cues:
    """The cues of one letter: start points, (number, centre) pairs, arrows at starts and arrows after turns.

    ``complete`` tells that every stroke has its number and its arrow (a dot has none), and every turn its arrow.
    Where they have no place, there are no numbers and no arrows.
    """

    starts: tuple[Point, ...]
    numbers: tuple[tuple[int, Point], ...] = ()
    arrows: tuple[Arrow, ...] = ()
    turns: tuple[Arrow, ...] = ()
    complete: bool = False


@dataclass(frozen=True, slots=True)
class _Search:
    """How long to search for places: so many numbers and arrows for a stroke, and so many cues tried."""

    numbers: int
    arrows: int  # on either side
    tries: int


_QUICK = (_Search(14, 5, 250), _Search(24, 10, 600))  # enough for most letters
_THOROUGH = (*_QUICK, _Search(60, 40, 4000))


@dataclass
class CueMaker:
    """Cues for the letters of one ruling, each letter's worked out once for the white that it has beside it.

    A ``thorough`` maker searches longer where a letter is hard.
    """

    ruling: Ruling
    pens: Pens
    thorough: bool = False
    _cues: Store[tuple[str, Sides], Cues] = field(default_factory=lambda: Store(LETTERS))
    _free: Store[str, tuple[CueRoom, tuple[_Places, ...]]] = field(default_factory=lambda: Store(LETTERS))
    _digits: Store[int, Fragment] = field(default_factory=lambda: Store(LETTERS))

    @property
    def number_mm(self) -> float:
        """Return the height of a stroke number, its pen counted."""
        return min(max(_NUMBER_SHARE * self.ruling.x_height_mm, _NUMBER_MM[0]), _NUMBER_MM[1])

    @property
    def line_mm(self) -> float:
        """Return the width of the pen that draws numbers and arrows."""
        return _LINE_OF_NUMBER * self.number_mm

    @property
    def headroom_mm(self) -> float:
        """Return the height over the top line that numbers may use."""
        return self.number_mm + self.pens.start_mm / 2 + 2 * CLEAR_MM

    def cues(self, letter: InkLetter, sides: Sides) -> Cues:
        """Return the cues of a letter with so much white on either side."""
        return self._cues.get((letter.cluster, sides), lambda: self._work_out(letter, sides))

    def each(self, line: SetLine) -> Iterator[Cues]:
        """Yield the cues of every letter of a line as it is set."""
        for placed, sides in zip(line.letters, self.sides(line), strict=True):
            yield self.cues(placed.letter, sides)

    def starts(self, line: SetLine) -> Iterator[Cues]:
        """Yield for every letter of a line where its strokes start, and no more."""
        for placed in line.letters:
            yield Cues(_starts(placed.letter))

    def on_line(self, line: SetLine) -> tuple[Cues, ...] | None:
        """Return the cues of every letter of a line; None where one lacks the room for all of its own."""
        found: list[Cues] = []
        for cues in self.each(line):
            if not cues.complete:
                return None
            found.append(cues)
        return tuple(found)

    def sides(self, line: SetLine) -> list[Sides]:
        """Return the white that each letter of a line may use: half of what lies between it and its neighbour.

        Where one overhangs the other, none of what is over or under the neighbour.
        """
        edges = [(placed.x + left, placed.x + right) for placed in line.letters
                 for left, right in (standing(placed.letter),)]
        clear = pen_width_mm(self.ruling) + 2 * CLEAR_MM
        lefts, rights = [END_MM], []
        for (_, before), (after, _) in itertools.pairwise(edges):
            half = min((after - before) / 2, after - before - clear)
            rights.append(half)
            lefts.append(half)
        return [Sides(_rounded(left), _rounded(right)) for left, right in zip(lefts, [*rights, END_MM], strict=True)]

    def ink(self, line: SetLine, cues: Iterable[Cues], x: float = 0.0, y: float = 0.0) -> tuple[Ink, ...]:
        """Return the cues of a set line's letters as ink, the line's origin at (``x``, ``y``)."""
        first: list[Piece] = []
        later: list[Piece] = []
        arrows: list[Piece] = []
        numbers: list[Piece] = []
        for placed, each in zip(line.letters, cues, strict=True):
            at = placed.x + x
            first += [Piece(at, y, dot_fragment([start])) for start in each.starts[:1]]
            rings = [start for start in each.starts[1:] if start not in each.starts[:1]]
            later += [Piece(at, y, dot_fragment(rings))] if rings else []
            drawn = [polyline_stroke(arrow.path) for arrow in (*each.arrows, *each.turns)]
            arrows += [Piece(at, y, stroke_fragment(drawn))] if drawn else []
            numbers += [Piece(at + right, y + down, self.digit(number)) for number, (right, down) in each.numbers]
        return tuple(Ink(style, tuple(pieces)) for style, pieces in (
            (Style(self.pens.start_mm), later), (Style(self.pens.start_hole_mm, WHITE), later),
            (Style(self.pens.start_mm, BLACK), first), (Style(self.line_mm, DARK), arrows),
            (Style(self.line_mm, DARK), numbers)) if pieces)

    def digit(self, number: int) -> Fragment:
        """Return the fragment of a number, centred on its origin, in its usual form: a bare 1 would be a stroke."""
        return self._digits.get(number, lambda: self._draw_digit(number))

    def _draw_digit(self, number: int) -> Fragment:
        ruling = print_ruling((self.number_mm - self.line_mm) / 1.75)
        line = RuledLetters(upright(), ruling, pencil_mm=0.1).line(str(number))
        x0, y0, x1, y1 = line.bounds
        return stroke_fragment(
            stroke.map(lambda p, x=item.x: (p[0] + x - (x0 + x1) / 2, p[1] - (y0 + y1) / 2))  # type: ignore[misc]
            for item in line.letters for stroke in item.letter.strokes)

    def _work_out(self, letter: InkLetter, sides: Sides) -> Cues:
        """Return cues for every stroke and every turn, or the starts alone. A dot has no ring: it is solid."""
        starts = _starts(letter)
        room, places = self._free.get(letter.cluster, lambda: self._free_places(letter))
        wanted = [each.between(room, sides) for each in places]
        found = _searched(room, wanted, _THOROUGH if self.thorough else _QUICK)
        if found is None:
            return Cues(starts)
        return Cues(starts, tuple((cue.figure, cue.number) for cue in found if cue.number),
                    tuple(cue.arrow for cue in found if cue.arrow and cue.number),
                    tuple(cue.arrow for cue in found if cue.arrow and not cue.number), complete=True)

    def _free_places(self, letter: InkLetter) -> tuple[CueRoom, tuple[_Places, ...]]:
        """Return the room round a letter, and all places there, whatever stands beside it: to be found but once."""
        room = CueRoom(letter, self.ruling, self.pens.model_mm, self.pens.start_mm, self.number_mm, self.headroom_mm)
        places = [each for figure, stroke in enumerate(letter.strokes, 1)
                  for each in self._places(room, figure, stroke)]
        return room, tuple(sorted(places, key=lambda each: each.numbers is None))  # numbers have the fewest places

    def _places(self, room: CueRoom, figure: int, stroke: Stroke) -> Iterator[_Places]:
        """Yield where a number and an arrow may stand at a stroke's start, and an arrow after each of its turns."""
        numbers = _Kept((cost, at) for cost, at in self._number_places(figure, stroke)
                        if room.number_is_free(figure, stroke.start, at))
        if stroke.is_dot:
            yield _Places(figure, numbers, ())
            return
        for count, leg in enumerate(legs(stroke, self.ruling.x_height_mm)):
            tracks: dict[tuple[float, float], Track] = {}
            arrows = [_Kept(self._free_arrows(room, leg, side, tracks, first=count == 0)) for side in (-1.0, 1.0)]
            yield _Places(figure, numbers, arrows, leg) if count == 0 else _Places(figure, None, arrows)

    def _free_arrows(self, room: CueRoom, leg: Leg, side: float, tracks: dict[tuple[float, float], Track], *,
                     first: bool) -> Iterator[tuple[float, Arrow]]:
        """Yield arrows on one side of a leg that have room, with their cost, the best first."""
        for place in places(leg, side, self.ruling.x_height_mm, self.pens.model_mm, room.middle, first=first):
            arrow = arrow_at(leg, place, tracks)
            if arrow and room.arrow_is_free(arrow):
                yield place.cost, arrow

    def _number_places(self, figure: int, stroke: Stroke) -> list[tuple[float, Point]]:
        """Return places for a number round a start with their cost, the nearest first, behind before beside it."""
        (x, y), heading = stroke.start, _heading(stroke)
        free = self.pens.start_mm / 2 + CLEAR_MM
        _, _, wide, high = number_box(figure, (0.0, 0.0), self.number_mm)
        places = []
        for ring, (turned, turn) in itertools.product(_NUMBER_RINGS, enumerate(_NUMBER_TURNS)):
            angle = heading + math.radians(turn)
            cost = (ring - 1) * (free + high) / self.ruling.x_height_mm + _TURN_COST * turned / len(_NUMBER_TURNS)
            right, down = ring * (free + wide) * math.cos(angle), ring * (free + high) * math.sin(angle)
            places.append((cost, (x + right, y + down)))
        return sorted(places)


class _Kept(Generic[T]):
    """Values that take work to find, found one by one when asked for, and kept."""

    def __init__(self, values: Iterable[T]) -> None:
        self._values, self._found = iter(values), list[T]()

    def first(self, count: int) -> list[T]:
        """Return the first ``count``, or as many as there are."""
        self._found += itertools.islice(self._values, max(0, count - len(self._found)))
        return self._found[:count]

    def each(self) -> Iterator[T]:
        """Yield all, those found before and then the others; several may do so in turn."""
        at = 0
        while at < len(self.first(at + 1)):
            yield self._found[at]
            at += 1


@dataclass(frozen=True, slots=True)
class _Places:
    """Free places with their costs, for a number (not at a turn) and for an arrow on either side (not at a dot)."""

    figure: int
    numbers: _Kept[tuple[float, Point]] | None
    arrows: Sequence[_Kept[tuple[float, Arrow]]]
    leg: Leg | None = None  # that the stroke starts with

    def between(self, room: CueRoom, sides: Sides) -> _Places:
        """Return the places that lie in the white on either side of the letter."""
        holds, figure = room.between(sides), self.figure
        numbers = self.numbers and _Kept(found for found in self.numbers.each()
                                         if holds(room.number_box(figure, found[1])))
        arrows = [_Kept(found for found in side.each() if holds(found[1].box)) for side in self.arrows]
        return _Places(figure, numbers, arrows, self.leg)

    def choices(self, search: _Search, x_height_mm: float) -> list[Cue]:
        """Return ways to mark the stroke or turn, the best first."""
        arrows = [found for side in self.arrows for found in side.first(search.arrows)]
        if self.numbers is None:
            return sorted((Cue(self.figure, None, arrow, cost) for cost, arrow in arrows), key=lambda cue: cue.cost)
        numbers = self.numbers.first(search.numbers)
        if not self.arrows:
            return [Cue(self.figure, at, None, cost) for cost, at in numbers]
        return sorted(self._together(numbers, arrows, x_height_mm), key=lambda cue: cue.cost)

    def _together(self, numbers: Sequence[tuple[float, Point]], arrows: Sequence[tuple[float, Arrow]],
                  x_height_mm: float) -> Iterator[Cue]:
        """Yield every number with every arrow: it costs if they are far apart, or parted by their own stroke."""
        sides = [self.leg.beside_mm(at) if self.leg and self.leg.ahead_mm(at) > 0 else 0.0 for _, at in numbers]
        for far, arrow in arrows:
            tail = arrow.shaft[0]
            own = self.leg.beside_mm(tail) if self.leg else 0.0
            for (near, at), side in zip(numbers, sides, strict=True):
                apart = _TOGETHER * math.dist(at, tail) / x_height_mm + _PARTED * (side * own < 0)
                yield Cue(self.figure, at, arrow, near + far + apart)


def _searched(room: CueRoom, wanted: Sequence[_Places], searches: Sequence[_Search]) -> list[Cue] | None:
    """Return a cue for each of the places that are wanted, in their order; None where there is no way.

    A search that finds none is begun anew with the place that it could not fill.
    """
    order = list(range(len(wanted)))
    for search in searches:
        choices = [places.choices(search, room.ruling.x_height_mm) for places in wanted]
        if not all(choices):
            continue
        for _ in wanted:
            walk = _Walk(room, choices, order, search.tries)
            walk.go(0, (), 0.0)
            if walk.best:
                return [cue for _, cue in sorted(zip(order, walk.best, strict=True), key=lambda pair: pair[0])]
            order.insert(0, order.pop(walk.deepest))
    return None


@dataclass
class _Walk:
    """A search for the best cues that stand together, one place after another, back from where none is left."""

    room: CueRoom
    choices: Sequence[Sequence[Cue]]
    order: Sequence[int]
    tries: int
    deepest: int = 0
    best: tuple[Cue, ...] = ()
    _cost: float = math.inf

    def __post_init__(self) -> None:
        least = [self.choices[at][0].cost for at in self.order]
        self._least = [sum(least[at:]) for at in range(len(least) + 1)]

    def go(self, depth: int, placed: tuple[Cue, ...], cost: float) -> None:
        """Look on from cues that are ``placed``, while there are tries, for better ways than the best so far."""
        self.deepest = max(self.deepest, min(depth, len(self.order) - 1))
        if depth == len(self.order):
            self.best, self._cost = placed, cost
            return
        for cue in self.choices[self.order[depth]]:
            if self.tries <= 0 or cost + cue.cost + self._least[depth + 1] >= self._cost:
                return
            self.tries -= 1
            if self.room.fits(cue, placed):
                self.go(depth + 1, (*placed, cue), cost + cue.cost)


def _rounded(side_mm: float) -> float:
    """Return the white beside a letter, a little less of it: few different widths need few searches."""
    return min(_SIDES_STEP_MM * math.floor(side_mm / _SIDES_STEP_MM + 1e-9), _MAX_SIDE_MM)


def _starts(letter: InkLetter) -> tuple[Point, ...]:
    return tuple(stroke.start for stroke in letter.strokes if not stroke.is_dot)


def _heading(stroke: Stroke) -> float:
    """Return the direction of travel at the start, in radians; a dot is room to go down."""
    return math.pi / 2 if stroke.is_dot else heading_out(stroke.segments[0])


def line_with_cues(maker: CueMaker, inker: Inker, line: SetLine, cues: Iterable[Cues], x: float = 0.0, y: float = 0.0,
                   ) -> tuple[Ink, ...]:
    """Return a solid line with its cues on top, the line's origin at (``x``, ``y``)."""
    return (*inker.ink(line, Form.SOLID, x, y), *maker.ink(line, cues, x, y))
