"""Mixed up: the letters of the name in another order, to lay in order or to write in order.

With more support the letters are tiles to cut, and boxes wait for them under the name; with less they stand on a line
of their own over a row to write on, and the name is folded away. Which order it is is ``practice.mixing``.
Millimetres, y down.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from itertools import accumulate

from namewright.lines.ruling import Ruling, print_ruling
from namewright.lines.tile_boxes import ROW_GAP_MM, TILE_MM, tile_rows
from namewright.message import message
from namewright.pages import blocks
from namewright.pages.know.frame import Frame, framed
from namewright.pages.know.missing import fold
from namewright.pages.know.rows import Spread, blank, height_of, letters_in, solid, spread
from namewright.pages.page import Page
from namewright.pages.pictograms import Task
from namewright.pages.sheet_settings import SheetSettings
from namewright.pages.tile_sheet import tiles_at
from namewright.pages.typesetter import Typesetter
from namewright.practice.mixing import Letters
from namewright.settings import Support

Orders = Sequence[Sequence[str]]
_LOOSE = 0.8  # of the x-height: loose letters are read and not written on
_APART, _MIN_APART = 1.4, 0.5  # x-heights between two loose letters
_MAX_AIR_MM = 12.0
_CUT = frozenset({Support.FULL, Support.PARTIAL})  # where the letters are tiles
_CAPTION_MM, _MEMORY_AIR_MM = 8.0, 4.0
_MOST_MEMORY = 3


def mixed_pages(setter: Typesetter, label: str, name: str, orders: Orders, settings: SheetSettings,
                ) -> tuple[Page, ...]:
    """Return the pages for a name and the orders of its letters. Raises MissingLetters, DoesNotFit."""
    setter = setter.lettering(settings.letters)
    wide = spread(setter, name, settings)
    frame = _begun(setter, label, wide, settings)
    if settings.support in _CUT:
        return _to_cut(frame, label, name, orders[0], wide)
    return _to_write(frame, label, orders, wide)


def on_one_page(setter: Typesetter, name: str, orders: Sequence[Letters], settings: SheetSettings,
                ) -> tuple[Letters, ...]:
    """Return those orders of a name's letters, the first at the least, for which one page has room."""
    setter = setter.lettering(settings.letters)
    wide = spread(setter, name, settings)
    if settings.support in _CUT:
        return tuple(orders[:1])
    frame = _begun(setter, name, wide, settings)
    return tuple(orders[:max(1, int(frame.room // _loose_row(frame, orders, wide).height_mm))])


def _begun(setter: Typesetter, label: str, wide: Spread, settings: SheetSettings) -> Frame:
    """Return the page with the name at its head, to be folded away where the letters are written and not laid."""
    cut = settings.support in _CUT
    frame = framed(setter, label, settings, turned=wide.turned, date="page.know.built_on" if cut else "page.date")
    height_of(frame, wide.lines)
    frame.caption("page.know.here", Task.SEE)
    solid(frame, wide.lines)
    if not cut:
        fold(frame)
        frame.caption("page.know.mixed", Task.ALONE)
    return frame


# --- tiles to cut -------------------------------------------------------------------------------------


def _to_cut(frame: Frame, label: str, name: str, order: Sequence[str], wide: Spread) -> tuple[Page, ...]:
    """Lay boxes under the name and the tiles at the foot, or on a page of their own where there is no room."""
    settings = frame.settings
    boxes = tile_rows(name, frame.right - frame.sheet.left_mm, spoken=settings.spoken)
    tiles = _tile_rows(order, int((frame.right - frame.sheet.left_mm) // TILE_MM))
    needed = _caution_height(frame) + len(tiles) * (TILE_MM + ROW_GAP_MM)
    frame.caption("page.know.mixed_boxes", Task.TILES)
    if boxes.height_mm > frame.room:
        return (frame.page(label), *_tiles_alone(frame, label, tiles, wide))
    x = max(frame.sheet.left_mm, min(frame.left, frame.right - boxes.width_mm))
    frame.items += blocks.tile_boxes(frame.setter, boxes, x, frame.y, hint=settings.support is Support.FULL)
    frame.y += boxes.height_mm + 4.0
    height = height_of(frame, wide.lines)
    if frame.room >= _CAPTION_MM + height + needed:
        frame.caption("page.know.mixed_then", Task.PENCIL)
        blank(frame, wide.lines)
    _from_memory(frame, wide, height, needed)
    if needed > frame.room:
        return (frame.page(label), *_tiles_alone(frame, label, tiles, wide))
    frame.y += frame.room - needed
    _tiles(frame, tiles)
    return (frame.page(label),)


def _from_memory(frame: Frame, wide: Spread, height: float, kept_mm: float = 0.0) -> None:
    """Give what is left of a page, but for ``kept_mm``, to rows to write the name from memory, a few at the most."""
    if frame.room >= _CAPTION_MM + _MEMORY_AIR_MM + height + kept_mm:
        frame.y += _MEMORY_AIR_MM
        frame.caption("page.memory", Task.ALONE)
        for _ in range(min(_MOST_MEMORY, int((frame.room - kept_mm) // height))):
            blank(frame, wide.lines)


def _tiles_alone(before: Frame, label: str, tiles: Orders, wide: Spread) -> tuple[Page, ...]:
    frame = framed(before.setter, label, before.settings, turned=wide.turned, date="page.know.built_on")
    _tiles(frame, tiles)
    return (frame.page(None),)


def _tile_rows(order: Sequence[str], across: int) -> list[Sequence[str]]:
    rows = -(-len(order) // across)
    each = -(-len(order) // rows)
    return [order[at:at + each] for at in range(0, len(order), each)]


def _caution(frame: Frame) -> str:
    return frame.words.text(message("page.tiles_caution"), message("page.cut"))


def _caution_height(frame: Frame) -> float:
    lines = frame.setter.wrapped(_caution(frame), frame.right - frame.left, blocks.CHECK_NOTE_MM)
    return 2.8 * blocks.CHECK_NOTE_MM * len(lines) + 3.0


def _tiles(frame: Frame, tiles: Orders) -> None:
    frame.note(_caution(frame))
    for row in tiles:
        x = max(frame.sheet.left_mm, min(frame.left, frame.right - len(row) * TILE_MM))
        frame.items += tiles_at(frame.setter, row, x, frame.y, TILE_MM)
        frame.y += TILE_MM + ROW_GAP_MM


# --- letters to write ---------------------------------------------------------------------------------


@dataclass(frozen=True, slots=True)
class _LooseRow:
    """How high loose letters stand over and under their line, and with the row to write on; on which unseen ruling."""

    ruling: Ruling
    rise_mm: float
    drop_mm: float
    height_mm: float


def _loose_row(frame: Frame, orders: Orders, wide: Spread) -> _LooseRow:
    ruling = _loose_ruling(frame, orders[0])
    letters = [frame.setter.ruled(ruling).line(letter) for letter in orders[0]]
    rise, drop = max(one.rise_mm for one in letters) + 1.0, max(one.drop_mm for one in letters) + 5.0
    return _LooseRow(ruling, rise, drop, rise + drop + height_of(frame, wide.lines))


def _to_write(frame: Frame, label: str, orders: Orders, wide: Spread) -> tuple[Page, ...]:
    """Set each order on a line of its own, with a row to write the name on under it; one that is tall stands alone."""
    row, pages = _loose_row(frame, orders, wide), []
    if row.height_mm > frame.room:
        pages.append(frame.page(label))
        frame = framed(frame.setter, label, frame.settings, turned=wide.turned)
    air = min(_MAX_AIR_MM, max(0.0, frame.room - len(orders) * row.height_mm) / len(orders))
    for order in orders:
        _loose(frame, order, row.ruling, frame.y + row.rise_mm)
        frame.y += row.rise_mm + row.drop_mm
        blank(frame, wide.lines)
        frame.y += air
    if not pages:
        _from_memory(frame, wide, height_of(frame, wide.lines))
    return (*pages, frame.page(None if pages else label))


def _loose_ruling(frame: Frame, letters: Sequence[str]) -> Ruling:
    """Return the unseen ruling of loose letters, smaller where so many would not stand apart across the page."""
    wished = print_ruling(_LOOSE * frame.settings.ruling.x_height_mm)
    needed = sum(frame.setter.ruled(wished).line(letter).width_mm for letter in letters)
    needed += _MIN_APART * wished.x_height_mm * len(letters)
    return print_ruling(wished.x_height_mm * min(1.0, (frame.right - frame.left) / needed))


def _loose(frame: Frame, order: Sequence[str], ruling: Ruling, baseline: float) -> None:
    """Set the letters one by one, nearer to each other where they are many."""
    widths = [frame.setter.ruled(ruling).line(letter).width_mm for letter in order]
    gap = min(_APART * ruling.x_height_mm, (frame.right - frame.left - sum(widths)) / len(widths))
    ends = list(accumulate(width + gap for width in widths))
    middles = [frame.left + end - (width + gap) / 2 for end, width in zip(ends, widths, strict=True)]
    letters_in(frame, order, ruling, middles, baseline)
