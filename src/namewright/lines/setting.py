"""A name set on a ruling: which letter stands where, in millimetres.

y down, the baseline at 0; x from the first letter's leftmost centreline. Fit never lies: nothing here makes a
letter smaller than the ruling asks. Out of scope: dots, dashes and colour (``forms``), pages (``pages``).
"""

from __future__ import annotations

import math
from collections.abc import Hashable
from typing import Protocol

from namewright.geometry import boxes
from namewright.geometry.boxes import Box
from namewright.geometry.points import Point
from namewright.letters.alphabet import Alphabet, Letter, MissingLetters
from namewright.letters.strokes import Stroke
from namewright.lines.ruling import LETTER_UNITS, Ruling
from namewright.lines.spacing import MIN_GAP, NATURAL_GAP, TIGHTEST_GAP, Spacer, Spacers, with_tail
from namewright.named_tuples import NamedTuple
from namewright.names.clusters import clusters
from namewright.store import LETTERS, Store

PENCIL_MM = 1.5  # a blunt pencil line of a young child is 1 to 2 mm wide: common practice
SPACES = " \u00a0"
_QUOTES = "'\"’‘‚“”„«»"  # as short and fine as an accent, and drawn like one


def pen_width_mm(ruling: Ruling) -> float:
    """Return the pen's width for a model on this ruling: its own, or about a ninth of the x-height, 0.4 to 2.4 mm."""
    if ruling.inked.pen_mm is not None:
        return ruling.inked.pen_mm
    return min(max(0.11 * ruling.x_height_mm, 0.4), 2.4)


class InkLetter(NamedTuple):
    """A letter on a ruling: its strokes in mm, y down, baseline 0, x from the letter's own origin.

    The last ``marks`` of the strokes are those of its marks; an apostrophe and a quotation mark are all mark. A letter
    of a school's font also has an ``outline`` of closed contours, its ``strokes`` are only a centreline without order,
    and ``shape`` tells it from other shapes that the font gives the same letter.
    """

    cluster: str
    strokes: tuple[Stroke, ...]
    bounds: Box
    outline: tuple[Stroke, ...] = ()
    shape: Hashable = ()
    marks: int = 0

    @property
    def base_strokes(self) -> tuple[Stroke, ...]:
        """Return the strokes of the letter without its marks."""
        return self.strokes[:len(self.strokes) - self.marks]

    @property
    def mark_strokes(self) -> tuple[Stroke, ...]:
        """Return the strokes of the letter's marks."""
        return self.strokes[len(self.strokes) - self.marks:]


class SetLetter(NamedTuple):
    """A letter of a set line, and the x of its origin in mm."""

    x: float
    letter: InkLetter


class SetLine(NamedTuple):
    """A name on a ruling. ``bounds`` is the box of its centrelines in mm, baseline 0, y down."""

    text: str
    ruling: Ruling
    letters: tuple[SetLetter, ...]
    bounds: Box

    @property
    def width_mm(self) -> float:
        """Return the width that the pen covers."""
        return self.bounds[2] - self.bounds[0] + pen_width_mm(self.ruling)

    @property
    def rise_mm(self) -> float:
        """Return how high the pen reaches over the baseline."""
        return pen_width_mm(self.ruling) / 2 - self.bounds[1]

    @property
    def drop_mm(self) -> float:
        """Return how deep the pen reaches below the baseline."""
        return self.bounds[3] + pen_width_mm(self.ruling) / 2


class LineSetter(Protocol):
    """What sets names on one ruling: our own ``RuledLetters``, or the letters of a school's font."""

    def line(self, text: str, *, tightness: float = 0.0) -> SetLine:
        """Set a text; ``tightness`` runs from 0 (natural) to 1. Raises MissingLetters."""
        ...


def ink_letter(letter: Letter, ruling: Ruling, slant: float = 0.0) -> InkLetter:
    """Map a letter onto a ruling: y through the zones, x and the marks by the x-height, then lean it.

    ``slant`` is in degrees to the right of upright; it moves points along their own height only.
    """
    scale, lean = ruling.x_height_mm / LETTER_UNITS, math.tan(math.radians(slant))
    base = letter.base

    def height_mm(y: float) -> float:
        return ruling.height_mm(y, one_piece=base.one_piece, short=base.short, bar=base.bar)

    def place(point: Point) -> Point:
        return (point[0] * scale, height_mm(point[1]))

    def lie_on_page(point: Point) -> Point:
        return (point[0] + point[1] * lean, -point[1])

    def placed_on_page(point: Point) -> Point:
        y = height_mm(point[1])
        return (point[0] * scale + y * lean, -y)

    # Control points are mapped and curves never split: smooth joins stand where tangents are upright or level.
    # A slanting tail (of y) keeps its slope, or it would break where the zones are unequal.
    tail = ruling.descender_mm / ruling.x_height_mm
    letters = [with_tail(stroke, tail).map(placed_on_page) for stroke in base.strokes]
    marks = [stroke.map(lie_on_page) for mark in letter.marks for stroke in mark.strokes(place, scale)]
    strokes = (*letters, *marks)
    count = len(strokes) if letter.cluster in _QUOTES else len(marks)
    return InkLetter(letter.cluster, strokes, boxes.joined(stroke.bounds() for stroke in strokes), marks=count)


class RuledLetters:
    """The letters of one alphabet on one ruling, each made once, and the setting of names from them.

    These belong to one run and grow with the number of different letters and pairs, not with the
    roster. ``letter_spacing_mm`` widens every gap; ``pencil_mm`` is the line that must pass between two
    letters (next to nothing for captions, which nobody writes over). ``slant`` is in degrees, and ``word_space`` is
    a share of the alphabet's, which suits a child's own writing. ``cut`` and ``spacers`` may be those of others:
    letters of the same alphabet and slant on the same ruling, and gaps of the same alphabet.
    """

    def __init__(self, alphabet: Alphabet, ruling: Ruling, letter_spacing_mm: float = 0.0,
                 pencil_mm: float = PENCIL_MM, slant: float = 0.0, word_space: float = 1.0,
                 cut: Store[str, tuple[Letter, InkLetter]] | None = None, spacers: Spacers | None = None) -> None:
        self.alphabet, self.ruling, self.slant, self.word_space = alphabet, ruling, slant, word_space
        self.letter_spacing_mm, self.pencil_mm = letter_spacing_mm, pencil_mm
        self.cut: Store[str, tuple[Letter, InkLetter]] = Store(LETTERS) if cut is None else cut
        self.spacers = spacers or Spacers()
        self._spacers: dict[float, Spacer] = {}

    @property
    def units_to_mm(self) -> float:
        """Return millimetres to a letter unit, along x."""
        return self.ruling.x_height_mm / LETTER_UNITS

    def line(self, text: str, *, tightness: float = 0.0) -> SetLine:
        """Set a text on the ruling. ``tightness`` runs from 0 (natural) to 1 (the least white we set).

        Raises MissingLetters for a text with letters we cannot draw, ValueError for one with none at all.
        """
        placed: list[SetLetter] = []
        x, before, spaces = 0.0, None, 0
        for cluster in self._clusters(text):
            if cluster in SPACES:
                spaces += 1
                continue
            letter, ink = self._letter(cluster)
            x += -ink.bounds[0] if before is None else self._step(before, letter, tightness, spaces)
            placed.append(SetLetter(x, ink))
            before, spaces = letter, 0
        if not placed:
            raise ValueError("there is no letter to set")
        bounds = boxes.joined(boxes.shifted(item.letter.bounds, item.x, 0.0) for item in placed)
        return SetLine(text, self.ruling, tuple(placed), bounds)

    def letter(self, cluster: str) -> InkLetter:
        """Return one letter of the ruling. Raises MissingLetters."""
        return self._letter(cluster)[1]

    def step(self, before: str, letter: str) -> float:
        """Return how far in mm a letter's origin stands from that of the letter before it, set naturally."""
        return self._step(self._letter(before)[0], self._letter(letter)[0], 0.0, 0)

    def _clusters(self, text: str) -> tuple[str, ...]:
        found = clusters(text)
        if any([self.cut.find(cluster) is None for cluster in found]) and (lost := self.alphabet.missing(text)):
            raise MissingLetters(lost)
        return found

    def _letter(self, cluster: str) -> tuple[Letter, InkLetter]:
        return self.cut.get(cluster, lambda: self._cut(self.alphabet.letter(cluster)))

    def _cut(self, letter: Letter) -> tuple[Letter, InkLetter]:
        return letter, ink_letter(letter, self.ruling, self.slant)

    def _step(self, before: Letter, letter: Letter, tightness: float, spaces: int) -> float:
        spacer = self.spacer(tightness)
        units = spacer.word_distance(before, letter) if spaces else spacer.distance(before, letter)
        units += spaces * self.word_space * self.alphabet.space
        return units * self.units_to_mm + self.letter_spacing_mm

    def spacer(self, tightness: float = 0.0) -> Spacer:
        """Return the spacer for a tightness: the white wished for, and the gap a pencil needs."""
        if tightness not in self._spacers:
            clear_mm = (self.pencil_mm + pen_width_mm(self.ruling)) / math.cos(math.radians(self.slant))
            least = max(MIN_GAP, clear_mm / self.units_to_mm)
            natural, tight = max(NATURAL_GAP, least + 14.0), max(TIGHTEST_GAP, least)
            tail = self.ruling.descender_mm / self.ruling.x_height_mm
            self._spacers[tightness] = self.spacers.spacer(natural + (tight - natural) * tightness, least, tail)
        return self._spacers[tightness]

