"""Build it from the shelf: a class's set of loose tiles, on the fewest sheets, and a list to count them back in.

Every sheet says how small pieces are kept safe. Millimetres, y down. How many of each is ``practice.tile_set``.
"""

from __future__ import annotations

from collections.abc import Mapping

from namewright.lines.tile_boxes import TILE_MM
from namewright.message import message
from namewright.pages import blocks
from namewright.pages.know.frame import Frame, framed
from namewright.pages.page import Furniture, Page
from namewright.pages.sheet import SheetSettings
from namewright.pages.tile_sheet import tiles_at
from namewright.pages.typesetter import Typesetter
from namewright.practice.tile_set import sheets_of

_COLUMN_MM, _LINE_MM = 58.0, 7.2
_SIZE_MM = 2.6  # x-height of a letter in the list


def build_pages(setter: Typesetter, needed: Mapping[str, int], at_once: int, settings: SheetSettings,
                side_mm: float = TILE_MM) -> tuple[Page, ...]:
    """Return the sheets of tiles and, last, the list. Raises MissingLetters."""
    setter = setter.lettering(settings.letters)
    pages: list[Page] = []
    frame = _begun(setter, settings)
    across, down = int((frame.right - frame.left) // side_mm), int(frame.room // side_mm)
    outline = frame.words.say("page.know.build_outline")
    for sheet in sheets_of(needed, across, down):
        frame = _begun(setter, settings)
        for row in sheet:
            frame.items += tiles_at(setter, row, frame.left, frame.y, side_mm)
            frame.y += side_mm
        pages.append(frame.page(None if pages else outline))
    return (*pages, *_lists(setter, needed, at_once, settings))


def _begun(setter: Typesetter, settings: SheetSettings) -> Frame:
    frame = framed(setter, None, settings)
    frame.note(frame.words.text(message("page.tiles_caution"), message("page.cut")))
    frame.y += 1.5
    return frame


def _lists(setter: Typesetter, needed: Mapping[str, int], at_once: int, settings: SheetSettings) -> tuple[Page, ...]:
    """Return the list to count tiles back in: each letter, how many there are, and a line for what came back."""
    pages: list[Page] = []
    entries = list(needed.items())
    while entries:
        frame = framed(setter, None, settings)
        frame.note(frame.words.say("page.know.build_list", count=at_once, all=sum(needed.values())), blocks.TEXT_MM)
        frame.note(frame.words.say("page.tiles_caution"))
        columns = int((frame.right - frame.left) // _COLUMN_MM)
        rows = int(frame.room // _LINE_MM)
        for at, (letter, count) in enumerate(entries[:rows * columns]):
            column, row = divmod(at, rows)
            x, y = frame.left + column * _COLUMN_MM, frame.y + (row + 0.75) * _LINE_MM
            counted = frame.words.say("page.know.build_count", count=count)
            frame.items.append(Furniture((setter.letter(letter, _SIZE_MM).moved(x, y),
                                          blocks.text_at(setter, counted, x + 9.0, y))))
        entries = entries[rows * columns:]
        pages.append(frame.page(None))
    return tuple(pages)
