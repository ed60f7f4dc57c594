"""Letter tiles to cut: for each child a strip with one tile for each letter, and over it whose it is and how many.

Tiles share their edges, so that one straight cut serves two; all strips of a page stand on one grid, so that an
upright cut runs through all of them, and as on a sheet of cards cuts may come nearer to the paper's edge than letters.
Every tile shows its baseline, or a cut-out d could be laid as a p, and small the name it belongs to. The caution for
the adult stands on every page. Millimetres, y down.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass

from namewright.geometry import boxes
from namewright.geometry.boxes import Box
from namewright.letters.choice import LetterChoice
from namewright.lines.forms import Form
from namewright.lines.ink import BLACK, RULE, Ink, Style, line
from namewright.lines.ruling import GuideLine, Ruling, custom_ruling
from namewright.lines.setting import SetLine, pen_width_mm
from namewright.lines.tile_boxes import TILE_MM
from namewright.message import message
from namewright.pages import blocks
from namewright.pages.page import Furniture, Item, Page, Tile, checked
from namewright.pages.paper import BINDING_MM, MARGIN_MM, Paper
from namewright.pages.strips import Strip, pages_of_strips
from namewright.pages.typesetter import Typesetter
from namewright.wording import wording

_EDGE_MM = 5.0  # cut lines may come as near to the edge of the paper as on a sheet of cards
_CUT = Style(0.25, BLACK)
_CAPITAL = 0.56  # of a tile's side: a capital from the line it stands on
_BASELINE, _DESCENDER = 0.76, 0.18  # of a tile's side, from its top, and the tails below that line
_CLEAR_MM = 1.0  # white between a letter and the cuts
_TEXT_MM, _TEXT_STEP_MM, _TEXT_TOP_MM = 1.5, 4.2, 11.0
_CAPTION_MM, _LEAST_CAPTION_MM = 1.6, 1.15  # x-height over the strips of a page
_MIN_LABEL_MM, _MAX_LABEL_MM = 4.2, 7.0  # the white between two rows of tiles, in which the captions stand
_CAPTION_CLEAR_MM = 0.5
_FOOT_MM = 12.0  # below the last row: the check bar
_NAME_MM, _NAME_INSET_MM = 0.9, 1.5  # x-height of the small name on a tile, and how far in from the cuts it stands


@dataclass(frozen=True, slots=True)
class TileSettings:
    """How tiles are made: their side in mm, the sheet, and whether each tile says small whose it is."""

    side_mm: float = TILE_MM
    paper: Paper = Paper.LETTER
    landscape: bool = False
    binding: bool = False
    language: str = "en"
    letters: LetterChoice = LetterChoice()
    names: bool = True

    @property
    def size_mm(self) -> tuple[float, float]:
        """Return width and height of the sheet."""
        return self.paper.size_mm[::-1] if self.landscape else self.paper.size_mm

    @property
    def edges_mm(self) -> tuple[float, float]:
        """Return how much stays white at the left and at the top, wide where holes are punched."""
        wide = BINDING_MM if self.binding else _EDGE_MM
        return (_EDGE_MM, wide) if self.landscape else (wide, _EDGE_MM)


def tile_ruling(side_mm: float) -> Ruling:
    """Return the ruling of a letter on a tile: room for tails below and for marks over capitals."""
    return custom_ruling(_CAPITAL * side_mm, descender_mm=_DESCENDER * side_mm, lines=(GuideLine.BASE,))


def across(settings: TileSettings) -> int:
    """Return how many tiles stand in a row."""
    return int((settings.size_mm[0] - settings.edges_mm[0] - _EDGE_MM - _CUT.width_mm) // settings.side_mm)


def tile_pages(setter: Typesetter, names: Iterable[Strip], settings: TileSettings) -> Iterator[Page]:
    """Yield pages of strips for the tiles of names, in order (see ``strips``).

    Raises MissingLetters where a tile's letter or a label cannot be drawn: check names first.
    """
    maker = _TileMaker(setter, settings)
    for rows in pages_of_strips(names, maker.across, maker.rows):
        yield maker.page(rows)


class _TileMaker:
    """Rows of strips on a page, the white between them shared out so that as many rows as can be stand on it."""

    def __init__(self, setter: Typesetter, settings: TileSettings) -> None:
        self.setter, self.settings, self.side = setter, settings, settings.side_mm
        self.across = across(settings)
        self.words = wording(settings.language)
        (width, height), (left, top) = settings.size_mm, settings.edges_mm
        self.left = left + (width - left - _EDGE_MM - self.across * self.side) / 2
        self.text_left, self.text_top = max(self.left, MARGIN_MM), top - _EDGE_MM + _TEXT_TOP_MM
        text = self.words.text(message("page.tiles_caution"), message("page.cut"))
        self.caution = setter.wrapped(text, width - self.text_left - MARGIN_MM, _TEXT_MM)
        self.top = self.text_top + _TEXT_STEP_MM * (len(self.caution) - 1) + 2.0
        room = height - _FOOT_MM - self.top
        self.rows = max(1, int(room // (self.side + _MIN_LABEL_MM)))
        self.label = min(_MAX_LABEL_MM, room / self.rows - self.side)

    def _row(self, row: Sequence[Strip], top: float, size: float) -> Iterator[Item]:
        """Yield strips side by side, the words over them in one size."""
        x = self.left
        for strip in row:
            yield self._caption(strip, x, top, size)
            yield from self._tiles(strip, x, top + self.label)
            x += len(strip.letters) * self.side

    def _size(self, strips: Iterable[Strip]) -> float:
        """Return the size at which what stands over strips is clear of the cuts over and under it, the same for all.

        Marks over a capital and a tail may not shrink all of it under what is read across a table.
        """
        return max(_LEAST_CAPTION_MM, min(self._clear(self._said(strip)[0], _CAPTION_MM) for strip in strips))

    def _clear(self, said: str, size: float) -> float:
        """Return the size, or the smaller one at which words have room between the cuts over and under them."""
        _, y0, _, y1 = self.setter.text(said, size).bounds()
        return size * min(1.0, (self.label - 2 * _CAPTION_CLEAR_MM) / (y1 - y0))

    def _caption(self, strip: Strip, x: float, top: float, size: float) -> Ink:
        """Return the words over a strip, clear of the cuts: as many as have room, the name at least."""
        room = len(strip.letters) * self.side - 2.0
        *longer, said = self._said(strip)
        said = next((one for one in longer if self.setter.text_width(one, size) <= room), said)
        size = self._clear(said, blocks.fitting(self.setter, said, room, size))
        while len(said) > 1 and self.setter.text_width(said, size) > room:  # too long at any size: its beginning
            said = said[:-2].rstrip() + "."
        _, y0, _, y1 = self.setter.text(said, size).bounds()
        baseline = top + self.label - _CAPTION_CLEAR_MM - max(y1, 0.7 * size)
        return blocks.text_at(self.setter, said, x, max(baseline, top + _CAPTION_CLEAR_MM - y0), size)

    def _said(self, strip: Strip) -> tuple[str, ...]:
        """Return what may stand over a strip, from the whole sentence to the name alone."""
        if len(strip.letters) == strip.count:
            return self.words.say("page.tiles_for", name=strip.label, count=strip.count), strip.label
        whole, short = (self.words.say(f"page.tiles_{key}", name=strip.label, first=strip.first, last=strip.last,
                                       all=strip.count) for key in ("part", "some"))
        return whole, short, strip.label

    def _tiles(self, strip: Strip, x: float, y: float) -> Iterator[Tile | Ink]:
        setter = self.setter.lettering(self.settings.letters if strip.shapes is None else strip.shapes)
        return tiles_at(setter, strip.letters, x, y, self.side, strip.label if self.settings.names else None)

    def page(self, rows: Sequence[Sequence[Strip]]) -> Page:
        """Return the page with these rows."""
        width, height = self.settings.size_mm
        size = self._size(strip for row in rows for strip in row)
        items = [item for at, row in enumerate(rows)
                 for item in self._row(row, self.top + at * (self.side + self.label), size)]
        text = [blocks.text_at(self.setter, words, self.text_left, self.text_top + _TEXT_STEP_MM * count, _TEXT_MM)
                for count, words in enumerate(self.caution)]
        bar = blocks.check_bar(self.setter, self.words, self.text_left, height - 8.0)
        return checked(Page(width, height, (*items, Furniture((*text, *bar))), rows[0][0].label, _EDGE_MM))


def tiles_at(setter: Typesetter, letters: Sequence[str], x: float, y: float, side: float, whose: str | None = None,
             ) -> Iterator[Tile | Ink]:
    """Yield a row of tiles with the top left corner of the first at (``x``, ``y``), each with the small name on it.

    Raises MissingLetters.
    """
    baseline = y + _BASELINE * side
    rules = []
    for count, letter in enumerate(letters):
        left = x + count * side
        yield Tile(left, y, side, side, letter, _CUT)
        set_line = _lettered(setter, letter, side)
        middle = left + (side - set_line.width_mm + pen_width_mm(set_line.ruling)) / 2
        inks = blocks.letters_at(setter, set_line, Form.SOLID, middle, baseline)
        yield from inks
        rules.append(line(left + 0.12 * side, baseline, left + 0.88 * side, baseline))
        if whose:
            yield from _small_name(setter, whose, left, y, side, boxes.joined(ink.bounds() for ink in inks))
    yield Ink.of(Style(0.2, RULE), rules)


def _small_name(setter: Typesetter, name: str, left: float, top: float, side: float, letter: Box) -> Iterator[Ink]:
    """Yield the small name in a corner that the letter leaves free, the lower left before the others.

    None for a name that is wider than the tile at any size.
    """
    size = blocks.fitting(setter, name, side - 2 * _NAME_INSET_MM, _NAME_MM * side / TILE_MM)
    if setter.text_width(name, size) > side - _NAME_INSET_MM:
        return
    x0, y0, x1, y1 = setter.text(name, size).bounds()
    near, far = left + _NAME_INSET_MM - x0, left + side - _NAME_INSET_MM - x1
    low, high = top + side - _CLEAR_MM - y1, top + _CLEAR_MM - y0
    for x, baseline in ((near, low), (near, high), (far, low), (far, high)):
        if _apart((x + x0, baseline + y0, x + x1, baseline + y1), letter):
            yield blocks.text_at(setter, name, x, baseline, size, RULE).read_as(goes_on=True)
            return


def _lettered(setter: Typesetter, letter: str, side: float) -> SetLine:
    """Return a tile's letter: one with high marks is smaller, so that these keep off the cut over them."""
    ruling = tile_ruling(side)
    made = setter.ruled(ruling).line(letter)
    room = _BASELINE * side - _CLEAR_MM
    if made.rise_mm <= room:
        return made
    smaller = custom_ruling(_CAPITAL * side * room / made.rise_mm, descender_mm=ruling.descender_mm,
                            lines=(GuideLine.BASE,))
    return setter.ruled(smaller).line(letter)


def _apart(a: Box, b: Box) -> bool:
    return max(a[0] - b[2], b[0] - a[2], a[1] - b[3], b[1] - a[3]) >= 0.4
