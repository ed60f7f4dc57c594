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
from functools import cached_property

from namewright.geometry.points import Point
from namewright.letters.alphabet import upright
from namewright.letters.strokes import polyline_stroke
from namewright.lines import known_cues
from namewright.lines.arrows import Arrow
from namewright.lines.clearance import CLEAR_MM, Cue, CueRoom, Sides
from namewright.lines.cue_places import Choice, Places, free_places
from namewright.lines.cue_search import QUICK, THOROUGH, searched
from namewright.lines.forms import Form, Inker, Pens
from namewright.lines.ink import BLACK, DARK, WHITE, Fragment, Ink, Piece, Shape, Style, dot_fragment, stroke_fragment
from namewright.lines.ruling import Ruling, print_ruling
from namewright.lines.setting import InkLetter, RuledLetters, SetLine, pen_width_mm
from namewright.store import LETTERS, Store

_NUMBER_SHARE = 0.3  # of the x-height: 3 mm on lines of 19 mm
_NUMBER_MM = (2.2, 4.0)  # smaller ones a child of five cannot be asked to read: common practice; larger need not be
_LINE_OF_NUMBER = 0.117  # the pen of numbers and arrows: 0.35 mm at 3 mm
_SIDES_STEP_MM, _MAX_SIDE_MM = 0.25, 6.0  # the white beside a letter is rounded down, so that most need one search
END_MM = 4.0  # white before the first letter of a line and behind the last


class Cues:
    """The cues of one letter: start points, (number, centre) pairs, arrows at starts and arrows after turns.

    ``complete`` tells that every stroke has its number and its arrow (a dot has none), and every turn its arrow.
    Where they have no place, there are no numbers and no arrows.
    """

    def __init__(self, starts: tuple[Point, ...], numbers: tuple[tuple[int, Point], ...] = (),
                 arrows: tuple[Arrow, ...] = (), turns: tuple[Arrow, ...] = (), *, complete: bool = False) -> None:
        self.starts, self.numbers, self.arrows, self.turns = starts, numbers, arrows, turns
        self.complete = complete

    @cached_property
    def first(self) -> Fragment | None:
        """Return the fragment of the dot where the first stroke starts."""
        return dot_fragment(self.starts[:1]) if self.starts else None

    @cached_property
    def rings(self) -> Fragment | None:
        """Return the fragment of the places where later strokes start; there is none where the first one does."""
        later = [start for start in self.starts[1:] if start != self.starts[0]]
        return dot_fragment(later) if later else None

    @cached_property
    def ways(self) -> Fragment | None:
        """Return the fragment of all arrows."""
        drawn = [polyline_stroke(arrow.path) for arrow in (*self.arrows, *self.turns)]
        return stroke_fragment(drawn) if drawn else None


class CueMaker:
    """Cues for the letters of one ruling, each letter's worked out once for the white that it has beside it.

    A ``thorough`` maker searches longer where a letter is hard. Letters of ``usual`` forms may be known beforehand.
    """

    def __init__(self, ruling: Ruling, pens: Pens, *, thorough: bool = False, usual: bool = False) -> None:
        self.ruling, self.pens, self.thorough, self.usual = ruling, pens, thorough, usual
        self._cues: Store[tuple[str, Sides], Cues] = Store(LETTERS)
        self._chosen: Store[tuple[str, tuple[Choice, ...]], Cues] = Store(LETTERS)  # whites far apart lead to one
        self._rooms: Store[str, CueRoom] = Store(LETTERS)
        self._places: Store[str, tuple[Places, ...]] = Store(LETTERS)
        self._digits: Store[int, Fragment] = Store(LETTERS)

    def thoroughly(self) -> CueMaker:
        """Return a maker that searches longer, in the same room round the same letters."""
        other = CueMaker(self.ruling, self.pens, thorough=True, usual=self.usual)
        other._rooms, other._places, other._digits = self._rooms, self._places, self._digits
        return other

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
                 for left, right in (self._room(placed.letter).standing,)]
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
            for pieces, fragment in ((first, each.first), (later, each.rings), (arrows, each.ways)):
                if fragment is not None:
                    pieces.append(Piece(placed.x, 0.0, fragment))
            numbers += [Piece(placed.x + right, down, self.digit(number)) for number, (right, down) in each.numbers]
        rings, *others = [Shape(pieces) if pieces else None for pieces in (later, first, arrows, numbers)]
        styles = (Style(self.pens.start_mm), Style(self.pens.start_hole_mm, WHITE), Style(self.pens.start_mm, BLACK),
                  Style(self.line_mm, DARK), Style(self.line_mm, DARK))
        return tuple([Ink(style, shape, x, y) for style, shape in zip(styles, (rings, rings, *others), strict=True)
                      if shape])

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
        known = known_cues.known(self._known, letter.cluster, sides) if self._known else None
        if known is None:
            return _told(letter, self._search(letter, sides))
        return self._chosen.get((letter.cluster, tuple(known)), lambda: _told(letter, [
            place.cue(choice) for place, choice in zip(self._all_places(letter), known, strict=False)] or None))

    def _search(self, letter: InkLetter, sides: Sides) -> list[Cue] | None:
        room = self._room(letter)
        white = room.between(sides)
        wanted = [places.between(white) for places in self._all_places(letter)]
        return searched(room, wanted, THOROUGH if self.thorough else QUICK)

    def choices(self, letter: InkLetter, sides: Sides) -> list[Choice]:
        """Return which places the search takes; none where there is no way. To be kept for later (``known_cues``)."""
        found = self._search(letter, sides) or []
        return [places.choice(cue) for places, cue in zip(self._all_places(letter), found, strict=False)]

    def _all_places(self, letter: InkLetter) -> tuple[Places, ...]:
        return self._places.get(letter.cluster, lambda: free_places(self._room(letter)))

    @cached_property
    def _known(self) -> known_cues.Part | None:
        """Return what is known beforehand, if anything is, of letters on these lines."""
        if not self.usual:
            return None
        return known_cues.part(known_cues.room_key(self.ruling, self.pens, thorough=self.thorough))

    def _room(self, letter: InkLetter) -> CueRoom:
        """Return the room round a letter, whatever stands beside it."""
        return self._rooms.get(letter.cluster, lambda: CueRoom(
            letter, self.ruling, self.pens.model_mm, self.pens.start_mm, self.number_mm, self.headroom_mm))


def _rounded(side_mm: float) -> float:
    """Return the white beside a letter, a little less of it: few different widths need few searches."""
    return min(_SIDES_STEP_MM * math.floor(side_mm / _SIDES_STEP_MM + 1e-9), _MAX_SIDE_MM)


def _told(letter: InkLetter, found: Sequence[Cue] | None) -> Cues:
    """Return the cues that were found for a letter; where there are none, its starts alone."""
    if found is None:
        return Cues(_starts(letter))
    return Cues(_starts(letter), tuple((cue.number.figure, cue.number.at) for cue in found if cue.number),
                tuple(cue.arrow for cue in found if cue.arrow and cue.number),
                tuple(cue.arrow for cue in found if cue.arrow and not cue.number), complete=True)


def _starts(letter: InkLetter) -> tuple[Point, ...]:
    return tuple(stroke.start for stroke in letter.strokes if not stroke.is_dot)


def line_with_cues(maker: CueMaker, inker: Inker, line: SetLine, cues: Iterable[Cues], x: float = 0.0, y: float = 0.0,
                   ) -> tuple[Ink, ...]:
    """Return a solid line with its cues on top, the line's origin at (``x``, ``y``)."""
    return (*inker.ink(line, Form.SOLID, x, y), *maker.ink(line, cues, x, y))
