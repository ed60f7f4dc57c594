"""Letter tiles to cut: for each child a strip with the child's name and one tile for each letter.

Tiles share their edges, so that one straight cut serves two; strips of a page share their left edge and their
tile size, so that an upright cut runs through all of them. Every tile shows its baseline, or a cut-out d could
be laid as a p. The caution for the adult stands on every page. Millimetres, y down.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass

from namewright.lines.forms import Form
from namewright.lines.ink import BLACK, RULE, Ink, Style, line
from namewright.lines.ruling import Line, Ruling, custom_ruling
from namewright.lines.setting import pen_width_mm
from namewright.lines.tiles import LARGE_TILE_MM, TILE_MM, tile_letters
from namewright.pages import blocks
from namewright.pages.page import Furniture, Item, Page, Tile, checked
from namewright.pages.paper import Paper, Sheet, sheet_of
from namewright.pages.press import Press, captions

TILE_SIZES_MM = (TILE_MM, LARGE_TILE_MM)
_LABEL_MM = 7.0
_EDGE = Style(0.25, BLACK)
_TEXT_MM = 1.5
_TEXT_STEP_MM = 4.2


@dataclass(frozen=True, slots=True)
class TileSettings:
    """How tiles are made: their side in mm, and the sheet."""

    side_mm: float = TILE_MM
    paper: Paper = Paper.LETTER
    landscape: bool = False
    binding: bool = False
    language: str = "en"


def tile_ruling(side_mm: float) -> Ruling:
    """Return the ruling of a letter on a tile: room for tails below and for marks over capitals."""
    return custom_ruling(0.44 * side_mm, lines=(Line.BASE,))


@dataclass(frozen=True, slots=True)
class Strip:
    """One row of tiles, and the name over it (None where a long name goes on)."""

    label: str | None
    letters: tuple[str, ...]


def strips(label: str, name: str, across: int) -> tuple[Strip, ...]:
    """Cut a name's tiles into rows of at most ``across``; spaces get no tile."""
    letters = [letter for letter in tile_letters(name) if letter != " "]
    rows = -(-len(letters) // across)
    each = -(-len(letters) // rows)
    return tuple(Strip(label if at == 0 else None, tuple(letters[at:at + each]))
                 for at in range(0, len(letters), each))


def tile_pages(press: Press, children: Iterable[tuple[str, Sequence[Strip]]], settings: TileSettings,
               ) -> Iterator[Page]:
    """Yield pages of strips. ``children`` gives each child's label and strips (see ``strips``), in order.

    Raises MissingLetters where a tile's letter or a label cannot be drawn: check names first.
    """
    sheet = sheet_of(settings.paper, landscape=settings.landscape, binding=settings.binding)
    words = captions(settings.language)
    caution = press.wrapped(f"{words['tiles_caution']} {words['cut']}", sheet.room_width, _TEXT_MM)
    top = sheet.top_mm + _TEXT_STEP_MM * len(caution) + 3.0
    items: list[Item] = []
    y, first = top, None
    for label, rows in children:
        height = sum(settings.side_mm + (_LABEL_MM if row.label else 0.0) for row in rows)
        if items and y + height > sheet.foot - 6.0:
            yield _page(press, sheet, items, caution, words["check"], first)
            items, y, first = [], top, None
        first = first or label
        for row in rows:
            if row.label:
                items += blocks.text_with_name(press, words["tiles_for"], row.label, sheet.left_mm, y + 4.8, 1.9)
                y += _LABEL_MM
            items += _tiles(press, row.letters, sheet.left_mm, y, settings.side_mm)
            y += settings.side_mm
    if items:
        yield _page(press, sheet, items, caution, words["check"], first)


def across(settings: TileSettings) -> int:
    """Return how many tiles stand in a row."""
    sheet = sheet_of(settings.paper, landscape=settings.landscape, binding=settings.binding)
    return int(sheet.room_width // settings.side_mm)


def _page(press: Press, sheet: Sheet, items: list[Item], caution: Sequence[str], check: str, outline: str | None,
          ) -> Page:
    text = [blocks.text_at(press, words, sheet.left_mm, sheet.top_mm + 3.0 + _TEXT_STEP_MM * count, _TEXT_MM)
            for count, words in enumerate(caution)]
    furniture = Furniture((*text, *blocks.check_bar(press, check, sheet.left_mm, sheet.foot - 1.5)))
    return checked(Page(sheet.width_mm, sheet.height_mm, (*items, furniture), outline=outline))


def _tiles(press: Press, letters: Sequence[str], x: float, y: float, side: float) -> Iterator[Tile | Ink]:
    ruling = tile_ruling(side)
    baseline = y + 0.68 * side
    rules = []
    for count, letter in enumerate(letters):
        left = x + count * side
        yield Tile(left, y, side, side, letter, _EDGE)
        set_line = press.case(ruling).line(letter)
        middle = left + (side - set_line.width_mm + pen_width_mm(ruling)) / 2
        yield from blocks.letters_at(press, set_line, Form.SOLID, middle, baseline)
        rules.append(line(left + 0.12 * side, baseline, left + 0.88 * side, baseline))
    yield Ink(Style(0.2, RULE), tuple(rules))
