"""Stroke marks on a model, or beside it: a strip in which each letter of the name stands once, large, with its marks.

A model is for the shape of the word, so it has the spacing of the rows below it. Where every letter finds room for all
its marks in that spacing, they stand on the model itself; else none do, and the strip has them all: the letters in the
order of the name, each on short guide lines of its own and as far from the next as the room allows, up to an x-height
and a little, so that the strip is not read as a word. Millimetres, y down.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from namewright.lines.clearance import Sides
from namewright.lines.cues import END_MM, CueMaker, Cues, line_with_cues
from namewright.lines.ink import Ink
from namewright.lines.ruling import Ruling
from namewright.lines.setting import SetLine, pen_width_mm
from namewright.named_tuples import NamedTuple
from namewright.names.clusters import clusters
from namewright.pages import blocks
from namewright.pages.page import Guide, Letters
from namewright.pages.typesetter import Typesetter

MIN_X_HEIGHT_MM = 6.0
MAX_X_HEIGHT_MM = 9.525  # that of lines of 19 mm: larger ones show a child no more
_BETWEEN_MM = 3.0  # two letters of the strip, at the least; an x-height more where there is room
AFTER_MODEL_MM = 8.0
STRIP_SIDES = (0.42, 0.7)  # white beside a letter for its marks, in x-heights; the second where the first is none
_ROW_CLEAR_MM = 2.0


class _Cell(NamedTuple):
    """One letter of a strip: the room it takes, and its letter, set at ``shift_mm`` in it, with its marks."""

    width_mm: float
    shift_mm: float
    line: SetLine
    cues: Cues


class Strip(NamedTuple):
    """Rows of letters on one ruling, ``between_mm`` apart.

    Each row takes ``rise_mm`` over its baseline and ``drop_mm`` below it.
    """

    maker: CueMaker
    rows: tuple[tuple[_Cell, ...], ...]
    between_mm: float
    rise_mm: float
    drop_mm: float

    @property
    def width_mm(self) -> float:
        """Return the width of the widest row."""
        return max(_width(row, self.between_mm) for row in self.rows)

    @property
    def height_mm(self) -> float:
        """Return the height of all rows."""
        return len(self.rows) * (self.rise_mm + self.drop_mm)


class ModelMarks(NamedTuple):
    """Where the stroke marks of a model are: on its lines (``cues``, for each its letters'), or in a strip.

    The strip stands ``beside`` the model, on its baseline, or has rows of its own. Neither where none fits.
    """

    maker: CueMaker
    cues: tuple[tuple[Cues, ...], ...] | None
    strip: Strip | None = None
    beside: bool = False

    @property
    def headroom_mm(self) -> float:
        """Return the height that marks on the model need over each of its rows."""
        return self.maker.headroom_mm if self.cues else 0.0

    def over_mm(self, rise_mm: float) -> float:
        """Return how much higher than the rows' own ``rise_mm`` the row of the model must be."""
        return max(0.0, self.strip.rise_mm - rise_mm) if self.strip and self.beside else self.headroom_mm

    @property
    def under(self) -> Strip | None:
        """Return the strip if it has rows of its own."""
        return None if self.beside else self.strip

    def below_mm(self, drop_mm: float) -> float:
        """Return the height that the strip takes under the rows of the model, whose last has ``drop_mm``."""
        if self.strip is None:
            return 0.0
        return max(0.0, self.strip.drop_mm - drop_mm) if self.beside else self.strip.height_mm


def model_marks(setter: Typesetter, lines: Sequence[SetLine], room_mm: float) -> ModelMarks:
    """Return where the stroke marks of a model stand, its rows set into ``room_mm`` with white before and behind."""
    ruling = lines[0].ruling
    maker = setter.cues(ruling)
    on_lines = [maker.on_line(line) for line in lines]
    if all(on_lines):
        return ModelMarks(maker, tuple(filter(None, on_lines)))
    letters = tuple(dict.fromkeys(cluster for line in lines for cluster in clusters(line.text) if cluster.strip()))
    beside = room_mm - lines[0].width_mm - 2 * END_MM - AFTER_MODEL_MM if len(lines) == 1 else 0.0
    for apart in (1.0, 0.0):
        for x_height in _x_heights(ruling):
            strip = _strip(setter, letters, _scaled(ruling, x_height), beside, 1, apart * x_height)
            if strip:
                return ModelMarks(maker, None, strip, beside=True)
    for rows in (1, 2, 3):
        if strip := _strip(setter, letters, _scaled(ruling, MIN_X_HEIGHT_MM), room_mm, rows):
            return ModelMarks(maker, None, strip)
    return ModelMarks(maker, None)


def strip_rulings(ruling: Ruling) -> list[Ruling]:
    """Return the rulings of strips beside a model on a ruling, the largest first; the last is for one under it."""
    return [_scaled(ruling, x_height) for x_height in _x_heights(ruling)]


def _x_heights(ruling: Ruling) -> list[float]:
    """Return x-heights for a strip beside a model, the largest first: as large as the model's where that is enough."""
    most = min(max(ruling.x_height_mm, MIN_X_HEIGHT_MM), MAX_X_HEIGHT_MM)
    return sorted({most, (most + MIN_X_HEIGHT_MM) / 2, MIN_X_HEIGHT_MM}, reverse=True)


def _scaled(ruling: Ruling, x_height_mm: float) -> Ruling:
    """Return the ruling with another x-height, its pen in proportion."""
    factor = x_height_mm / ruling.x_height_mm
    pen = ruling.inked.pen_mm
    inked = ruling.inked._replace(pen_mm=None if pen is None else pen * factor, dot_mm=None, pitch_mm=None)
    return ruling.scaled_to(ruling.line_height_mm * factor)._replace(inked=inked)


def _strip(setter: Typesetter, letters: Sequence[str], ruling: Ruling, room_mm: float, rows: int,
           apart_mm: float = 0.0) -> Strip | None:
    """Return a strip of letters in so many rows, at the most, none wider than the room; None where they are.

    Letters stand at least ``apart_mm`` farther apart than they must, and up to an x-height where the room allows it.
    """
    if room_mm < len(letters) / rows * ruling.x_height_mm:  # no letter with its marks is narrower
        return None
    maker = setter.thorough_cues(ruling)
    dealt = _even([_cell(setter, maker, letter) for letter in letters], room_mm, _BETWEEN_MM + apart_mm)
    if len(dealt) > rows or max(_width(row, _BETWEEN_MM + apart_mm) for row in dealt) > room_mm:
        return None
    lines = [cell.line for row in dealt for cell in row]
    between = min([_BETWEEN_MM + ruling.x_height_mm, *(_between(row, room_mm) for row in dealt if len(row) > 1)])
    rise = max([ruling.line_height_mm, *(line.rise_mm for line in lines)]) + maker.headroom_mm
    drop = max([pen_width_mm(ruling), blocks.printed_depth(ruling), *(line.drop_mm for line in lines)]) + _ROW_CLEAR_MM
    return Strip(maker, tuple(map(tuple, dealt)), between, rise, drop)


def _even(cells: Sequence[_Cell], room_mm: float, between_mm: float) -> list[list[_Cell]]:
    """Deal letters into as few rows as the room needs, none of them longer than it must be: no letter is left alone."""
    dealt = _dealt(cells, room_mm, between_mm)
    while True:
        longest = max(dealt, key=lambda row: _width(row, between_mm))
        shorter = _dealt(cells, _width(longest, between_mm) - 0.01, between_mm)
        if len(longest) == 1 or len(shorter) > len(dealt):  # one letter is as short as a row can be
            return dealt
        dealt = shorter


def _dealt(cells: Sequence[_Cell], room_mm: float, between_mm: float) -> list[list[_Cell]]:
    """Deal letters into rows in their order, as many into each as the room holds."""
    dealt: list[list[_Cell]] = [[]]
    for cell in cells:
        if dealt[-1] and _width([*dealt[-1], cell], between_mm) > room_mm:
            dealt.append([])
        dealt[-1].append(cell)
    return dealt


def _cell(setter: Typesetter, maker: CueMaker, letter: str) -> _Cell:
    line = setter.ruled(maker.ruling).line(letter)
    for share in STRIP_SIDES:
        side = share * maker.ruling.x_height_mm
        cues = maker.cues(line.letters[0].letter, Sides(side, side))
        if cues.complete:
            break
    return _Cell(line.bounds[2] - line.bounds[0] + 2 * side, side, line, cues)


def _width(row: Sequence[_Cell], between_mm: float) -> float:
    return sum(cell.width_mm for cell in row) + between_mm * (len(row) - 1)


def _between(row: Sequence[_Cell], room_mm: float) -> float:
    """Return how far apart two or more letters stand that fill the room."""
    return (room_mm - _width(row, 0.0)) / (len(row) - 1)


def strip_rows(setter: Typesetter, strip: Strip, name: str, x: float, baseline: float) -> Iterator[Letters]:
    """Yield the rows of a strip, the first with its baseline there: each letter on guide lines of its own."""
    ruling = strip.maker.ruling
    for row in strip.rows:
        at = x
        items: list[Guide | Ink] = []
        for cell in row:
            items += blocks.guides(ruling, at, at + cell.width_mm, baseline)
            items += line_with_cues(strip.maker, setter.inker(ruling), cell.line, [cell.cues], at + cell.shift_mm,
                                    baseline)
            at += cell.width_mm + strip.between_mm
        yield Letters(name, tuple(items))
        baseline += strip.rise_mm + strip.drop_mm


def strip_over(setter: Typesetter, strip: Strip, name: str, x: float, foot: float) -> Iterator[Letters]:
    """Yield the rows of a strip that end at ``foot``."""
    yield from strip_rows(setter, strip, name, x, foot - strip.height_mm + strip.rise_mm)
