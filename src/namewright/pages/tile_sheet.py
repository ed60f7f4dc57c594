"""Letter tiles to cut: for each child a strip with the child's name and one tile for each letter.

Tiles share their edges, so that one straight cut serves two; all strips of a page stand on one grid, so that an
upright cut runs through all of them. Every tile shows its baseline, or a cut-out d could
be laid as a p. The caution for the adult stands on every page. Millimetres, y down.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass

from namewright.letters.choice import LetterChoice
from namewright.lines.forms import Form
from namewright.lines.ink import BLACK, RULE, Ink, Style, line
from namewright.lines.ruling import GuideLine, Ruling, custom_ruling
from namewright.lines.setting import pen_width_mm
from namewright.lines.tile_boxes import TILE_MM, tile_letters
from namewright.message import message
from namewright.pages import blocks
from namewright.pages.page import Furniture, Item, Page, Tile, checked
from namewright.pages.paper import Paper, Sheet, sheet_of
from namewright.pages.typesetter import Typesetter
from namewright.wording import wording

_LABEL_MM = 7.0
_EDGE = Style(0.25, BLACK)
_TEXT_MM = 1.5
_LABEL_TEXT_MM = 1.9
_TEXT_STEP_MM = 4.2


@dataclass(frozen=True, slots=True)
class TileSettings:
    """How tiles are made: their side in mm, and the sheet."""

    side_mm: float = TILE_MM
    paper: Paper = Paper.LETTER
    landscape: bool = False
    binding: bool = False
    language: str = "en"
    letters: LetterChoice = LetterChoice()


def tile_ruling(side_mm: float) -> Ruling:
    """Return the ruling of a letter on a tile: room for tails below and for marks over capitals."""
    return custom_ruling(0.44 * side_mm, lines=(GuideLine.BASE,))


@dataclass(frozen=True, slots=True)
class Strip:
    """One row of tiles, and the name over it (None where a long name goes on).

    ``shapes`` are the forms of its letters, None those of the page.
    """

    label: str | None
    letters: tuple[str, ...]
    shapes: LetterChoice | None = None


def strips(label: str, name: str, across: int, shapes: LetterChoice | None = None) -> tuple[Strip, ...]:
    """Cut a name's tiles into rows of at most ``across``; spaces get no tile."""
    letters = [letter for letter in tile_letters(name) if letter != " "]
    rows = -(-len(letters) // across)
    each = -(-len(letters) // rows)
    return tuple(Strip(label if at == 0 else None, tuple(letters[at:at + each]), shapes)
                 for at in range(0, len(letters), each))


def across(settings: TileSettings) -> int:
    """Return how many tiles stand in a row."""
    return int(_sheet(settings).room_width // settings.side_mm)


def tile_pages(setter: Typesetter, children: Iterable[tuple[str, Sequence[Strip]]], settings: TileSettings,
               ) -> Iterator[Page]:
    """Yield pages of strips. ``children`` gives each child's label and strips (see ``strips``), in order.

    Raises MissingLetters where a tile's letter or a label cannot be drawn: check names first.
    """
    maker = _TileMaker(setter, settings)
    for label, rows in children:
        if not maker.has_room(rows):
            yield maker.page()
        maker.place(label, rows)
    if maker.items:
        yield maker.page()


def _sheet(settings: TileSettings) -> Sheet:
    return sheet_of(settings.paper, landscape=settings.landscape, binding=settings.binding)


class _TileMaker:
    """Strips laid out in rows of a page; short names share a row, a tile's width apart."""

    def __init__(self, setter: Typesetter, settings: TileSettings) -> None:
        self.setter, self.letters, self.side = setter, settings.letters, settings.side_mm
        self.sheet = _sheet(settings)
        self.across = across(settings)
        self.words = wording(settings.language)
        text = self.words.text(message("page.tiles_caution"), message("page.cut"))
        self.caution = setter.wrapped(text, self.sheet.room_width, _TEXT_MM)
        self._begin()

    def _begin(self) -> None:
        self.items: list[Item] = []
        self.first: str | None = None
        self.column, self.y = 0, self.sheet.top_mm + _TEXT_STEP_MM * len(self.caution) + 3.0
        self.below = self.y

    def has_room(self, rows: Sequence[Strip]) -> bool:
        """Return whether a child's strips still go on this page; an empty page takes any."""
        if not self.items or self._fits_beside(rows):
            return True
        return self.below + self._height(rows) <= self.sheet.foot - 6.0

    def _fits_beside(self, rows: Sequence[Strip]) -> bool:
        return len(rows) == 1 and 0 < self.column <= self.across - len(rows[0].letters)

    def _height(self, rows: Sequence[Strip]) -> float:
        return sum(self.side + (_LABEL_MM if row.label else 0.0) for row in rows)

    def place(self, label: str, rows: Sequence[Strip]) -> None:
        """Set a child's strips beside the last or below it."""
        self.first = self.first or label
        if not self._fits_beside(rows):
            self.column, self.y = 0, self.below
        x, y = self.sheet.left_mm + self.column * self.side, self.y
        for row in rows:
            if row.label:
                self.items += self._label(row, x, y + 4.8)
                y += _LABEL_MM
            setter = self.setter.lettering(self.letters if row.shapes is None else row.shapes)
            self.items += tiles_at(setter, row.letters, x, y, self.side)
            y += self.side
        self.below = max(self.below, y)
        self.column += max(len(row.letters) for row in rows) + 1

    def _label(self, row: Strip, x: float, baseline: float) -> tuple[Ink, ...]:
        """Return the name over a strip, in a sentence where the strip is wide enough for one."""
        name = row.label or ""
        room = len(row.letters) * self.side
        if self.setter.text_width(self.words.say("page.tiles_for", name=name), _LABEL_TEXT_MM) > room:
            size = blocks.fitting(self.setter, name, self.sheet.right_edge - x, _LABEL_TEXT_MM)
            return (blocks.text_at(self.setter, name, x, baseline, size),)
        return blocks.text_with_name(self.setter, self.words, "page.tiles_for", name, x, baseline, _LABEL_TEXT_MM)

    def page(self) -> Page:
        """Return the page as it is, and begin the next."""
        left = self.sheet.left_mm
        text = [blocks.text_at(self.setter, words, left, self.sheet.top_mm + 3.0 + _TEXT_STEP_MM * count, _TEXT_MM)
                for count, words in enumerate(self.caution)]
        bar = blocks.check_bar(self.setter, self.words, left, self.sheet.foot - 1.5)
        page = Page(self.sheet.width_mm, self.sheet.height_mm, (*self.items, Furniture((*text, *bar))), self.first)
        self._begin()
        return checked(page)


def tiles_at(setter: Typesetter, letters: Sequence[str], x: float, y: float, side: float) -> Iterator[Tile | Ink]:
    """Yield a row of tiles with the top left corner of the first at (``x``, ``y``). Raises MissingLetters."""
    ruling = tile_ruling(side)
    baseline = y + 0.68 * side
    rules = []
    for count, letter in enumerate(letters):
        left = x + count * side
        yield Tile(left, y, side, side, letter, _EDGE)
        set_line = setter.ruled(ruling).line(letter)
        middle = left + (side - set_line.width_mm + pen_width_mm(ruling)) / 2
        yield from blocks.letters_at(setter, set_line, Form.SOLID, middle, baseline)
        rules.append(line(left + 0.12 * side, baseline, left + 0.88 * side, baseline))
    yield Ink(Style(0.2, RULE), tuple(rules))
