"""The page for the adult: the class in order, what each child has and why, and whoever has no page and why.

Millimetres, y down. Running text only; as many pages as it takes.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from namewright.lines.ink import Ink, Role
from namewright.named_tuples import NamedTuple
from namewright.pages.page import Furniture, Item, Page, Place, Placed, added, checked
from namewright.pages.paper import Paper, Sheet, sheet_of
from namewright.pages.typesetter import Typesetter

_TITLE_MM, _NAME_MM, _TEXT_MM = 2.4, 2.0, 1.5
_LEADING = 2.9  # line step, in x-heights
_CLOSER, _FEW_MM = 0.93, 45.0  # of the usual white, where the last page would hold no more than so much
_INDENT_MM = 9.0
_OVER_PART_MM, _WITH_PART_MM = 3.0, 15.0  # white over the heading of a part, and what has to have room under it
_COLUMN_MM = 46.0  # where sentences begin that stand beside their heading


class Entry(NamedTuple):
    """A heading and its sentences, under it or ``beside`` it; an entry is not broken over two pages.

    One without a heading is read as an entry of a list. A ``part`` heads the entries after it and stays with the first.
    """

    heading: str
    sentences: tuple[str, ...] = ()
    title: bool = False
    beside: bool = False
    part: bool = False


def summary_pages(setter: Typesetter, entries: Sequence[Entry], paper: Paper, *, binding: bool = False,
                  ) -> tuple[Page, ...]:
    """Return the pages that hold the entries, set a little closer where that saves a page for a few lines.

    What our letters lack must have been replaced (see ``drawable``).
    """
    sheet = sheet_of(paper, binding=binding)
    lined = [(entry, tuple(_lines(setter, entry, sheet))) for entry in entries]
    pages, foot = _set(setter, lined, sheet, 1.0)
    if len(pages) > 1 and foot < sheet.top_mm + _FEW_MM:
        closer, _ = _set(setter, lined, sheet, _CLOSER)
        pages = min(pages, closer, key=len)
    return tuple(checked(Page(sheet.width_mm, sheet.height_mm, tuple(page))) for page in pages)


def _set(setter: Typesetter, entries: Sequence[tuple[Entry, Sequence[_Line]]], sheet: Sheet, share: float,
         ) -> tuple[list[list[Item]], float]:
    """Return the items of each page and how far down the last is filled, with a ``share`` of the usual white."""
    pages: list[list[Item]] = [[]]
    y = sheet.top_mm
    for entry, lines in entries:
        height = sum(line.size_mm * _LEADING * share for line in lines if line.down)
        if pages[-1] and y + height + (_WITH_PART_MM if entry.part else 0.0) > sheet.foot:
            pages.append([])
            y = sheet.top_mm
        y += _OVER_PART_MM * share if entry.part and pages[-1] else 0.0
        inks: list[Ink] = []
        for line in lines:
            y += line.size_mm * _LEADING * share if line.down else 0.0
            ink = setter.text(line.words, line.size_mm).moved(line.x, y - _NAME_MM * 0.9)
            inks.append(ink.read_as(line.role, goes_on=line.goes_on))
        y += 0.9 * share
        if entry.heading:
            pages[-1].append(Furniture(tuple(inks)))
        else:
            added(pages[-1], Place.LIST, Placed(Place.ENTRY, tuple(inks)))
    return pages, y


class _Line(NamedTuple):
    """A line of an entry: ``down`` where it stands below the one before, ``goes_on`` where both are read in one."""

    words: str
    x: float
    size_mm: float
    down: bool
    role: Role
    goes_on: bool


def _lines(setter: Typesetter, entry: Entry, sheet: Sheet) -> Iterator[_Line]:
    role = Role.TITLE if entry.title else Role.HEADING
    size = _TITLE_MM if entry.title or entry.part else _NAME_MM
    heading = setter.wrapped(entry.heading, sheet.room_width, size) if entry.heading else ()
    for count, words in enumerate(heading):
        yield _Line(words, sheet.left_mm, size, True, role, count > 0)
    beside = entry.beside and len(heading) == 1 and setter.text_width(entry.heading, size) < _COLUMN_MM - 3.0
    indent = _COLUMN_MM if beside else 0.0 if entry.title else _INDENT_MM
    for sentence in entry.sentences:
        for count, words in enumerate(setter.wrapped(sentence, sheet.room_width - indent, _TEXT_MM)):
            yield _Line(words, sheet.left_mm + indent, _TEXT_MM, not beside, Role.PROSE, count > 0)
            beside = False
