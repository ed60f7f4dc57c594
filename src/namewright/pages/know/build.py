"""Build it from the shelf: a class's set of loose tiles, on the fewest sheets, and a list to count them back in.

Every sheet says how small pieces are kept safe. Millimetres, y down. How many of each is ``practice.tile_set``.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from namewright.lines.tile_boxes import TILE_MM
from namewright.message import message
from namewright.pages import blocks
from namewright.pages.know.frame import Frame, framed, left_out
from namewright.pages.page import Furniture, Page
from namewright.pages.sheet_settings import SheetSettings
from namewright.pages.tile_sheet import tiles_at
from namewright.pages.typesetter import Typesetter
from namewright.practice.tile_set import sheets_of
from namewright.wording import wording

_LINE_MM, _LETTER_MM = 7.2, 9.0  # from line to line of the list, and what a letter takes before its count
_MOST_LINE_MM, _BETWEEN_MM = 10.0, 9.0  # from line to line where there is room, and the white between two columns
_SIZE_MM = 2.6  # x-height of a letter in the list


def build_pages(setter: Typesetter, needed: Mapping[str, int], at_once: int, settings: SheetSettings,
                side_mm: float = TILE_MM, without: Sequence[str] = ()) -> tuple[Page, ...]:
    """Return the sheets of tiles and, last, the list. Raises MissingLetters.

    ``without`` is what children are called whose names our letters cannot draw: the list says what to do for them.
    """
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
    return (*pages, *_lists(setter, needed, at_once, settings, without))


def _begun(setter: Typesetter, settings: SheetSettings) -> Frame:
    frame = framed(setter, None, settings)
    frame.note(frame.words.text(message("page.tiles_caution"), message("page.cut")))
    frame.y += 1.5
    return frame


def _lists(setter: Typesetter, needed: Mapping[str, int], at_once: int, settings: SheetSettings,
           without: Sequence[str]) -> tuple[Page, ...]:
    """Return the list to count tiles back in: each letter, how many there are, and a line for what came back."""
    pages: list[Page] = []
    words = wording(settings.language)
    entries = [(letter, words.say("page.know.build_count", count=count)) for letter, count in needed.items()]
    column_mm = _LETTER_MM + _BETWEEN_MM + max((setter.text_width(counted) for _, counted in entries), default=0.0)
    while entries:
        frame = framed(setter, None, settings)
        said = message("page.know.build_list", count=at_once, all=sum(needed.values()))
        frame.note(words.text(said, *left_out("page.know.build_without", without)), blocks.TEXT_MM)
        frame.note(words.say("page.tiles_caution"))
        frame.y += 3.0
        columns = max(1, int((frame.right - frame.left + _BETWEEN_MM) // column_mm))
        rows = min(int(frame.room // _LINE_MM), -(-len(entries) // columns))
        step = min(_MOST_LINE_MM, frame.room / rows)
        for at, (letter, counted) in enumerate(entries[:rows * columns]):
            column, row = divmod(at, rows)
            x, y = frame.left + column * column_mm, frame.y + (row + 0.75) * step
            frame.items.append(Furniture((setter.letter(letter, _SIZE_MM).moved(x, y),
                                          blocks.text_at(setter, counted, x + _LETTER_MM, y))))
        entries = entries[rows * columns:]
        pages.append(frame.page(None))
    return tuple(pages)
