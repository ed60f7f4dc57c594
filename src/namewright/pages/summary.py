"""The page for the adult: the class in order, what each child has and why, and whoever has no page and why.

Millimetres, y down. Running text only; as many pages as it takes.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from namewright.lines.ink import Ink
from namewright.pages.page import Page, checked
from namewright.pages.paper import Paper, Sheet, sheet_of
from namewright.pages.press import Press

_TITLE_MM, _NAME_MM, _TEXT_MM = 2.4, 2.0, 1.5
_LEADING = 2.9  # line step, in x-heights
_INDENT_MM = 9.0


@dataclass(frozen=True, slots=True)
class Entry:
    """A heading and the sentences under it; an entry is not broken over two pages."""

    heading: str
    sentences: tuple[str, ...] = ()
    title: bool = False


def summary_pages(press: Press, entries: Sequence[Entry], paper: Paper, *, binding: bool = False) -> tuple[Page, ...]:
    """Return the pages that hold the entries. What our letters lack must have been replaced (see ``drawable``)."""
    sheet = sheet_of(paper, binding=binding)
    pages: list[list[Ink]] = [[]]
    y = sheet.top_mm
    for entry in entries:
        lines = tuple(_lines(press, entry, sheet))
        height = sum(size * _LEADING for _, _, size in lines)
        if pages[-1] and y + height > sheet.foot:
            pages.append([])
            y = sheet.top_mm
        for words, x, size in lines:
            y += size * _LEADING
            pages[-1] += [ink.moved(x, y - size * 0.9) for ink in press.words(words, size)]
        y += 0.9
    return tuple(checked(Page(sheet.width_mm, sheet.height_mm, tuple(page))) for page in pages)


def _lines(press: Press, entry: Entry, sheet: Sheet) -> Iterator[tuple[str, float, float]]:
    """Yield each line of an entry with its left edge and its x-height."""
    size = _TITLE_MM if entry.title else _NAME_MM
    if entry.heading:
        for words in press.wrapped(entry.heading, sheet.room_width, size):
            yield words, sheet.left_mm, size
    indent = 0.0 if entry.title else _INDENT_MM
    for sentence in entry.sentences:
        for words in press.wrapped(sentence, sheet.room_width - indent, _TEXT_MM):
            yield words, sheet.left_mm + indent, _TEXT_MM


def drawable(press: Press, text: str) -> str:
    """Return a text with each character that our letters lack written as its code point."""
    for char in press.alphabet.missing(text):
        text = text.replace(char, f"(U+{ord(char[0]):04X})")
    return text
