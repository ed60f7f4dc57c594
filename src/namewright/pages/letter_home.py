"""A short letter to a child's family, large enough to be read at arm's length.

Millimetres, y down. Out of scope: what the letter says (``wording``), and the child's own page.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from namewright.lines.ink import Ink, Role
from namewright.pages.page import Furniture, Item, Page, checked
from namewright.pages.paper import Paper, Sheet, sheet_of
from namewright.pages.typesetter import Typesetter

GREETING_MM, TEXT_MM = 3.4, 2.6
"""Heights of the small letters; those of a face of 12 points are about 2.1 mm high (half its body: common practice)."""
_LEADING = 3.2  # line step, in x-heights
_BETWEEN_MM = 5.0  # further white after a paragraph
_MOST_WIDE_MM = 165.0  # a line of some 70 signs is still read with ease (common practice)


def letter_pages(setter: Typesetter, greeting: str, paragraphs: Sequence[str], paper: Paper, *, binding: bool = False,
                 ) -> tuple[Page, ...]:
    """Return the pages of a letter. What our letters lack must have been replaced (see ``summary.drawable``)."""
    sheet = sheet_of(paper, binding=binding)
    pages: list[list[Item]] = [[]]
    y = top = sheet.top_mm + 12.0
    for place, text in enumerate((greeting, *paragraphs)):
        size = TEXT_MM if place else GREETING_MM
        inks = tuple(_paragraph(setter, text, size, Role.PROSE if place else Role.TITLE, sheet))
        height = len(inks) * size * _LEADING
        if pages[-1] and y + height > sheet.foot:
            pages.append([])
            y = top
        pages[-1].append(Furniture(tuple(ink.moved(sheet.left_mm, y + (at + 1) * size * _LEADING)
                                         for at, ink in enumerate(inks))))
        y += height + _BETWEEN_MM
    return tuple(checked(Page(sheet.width_mm, sheet.height_mm, tuple(page))) for page in pages)


def _paragraph(setter: Typesetter, text: str, size_mm: float, role: Role, sheet: Sheet) -> Iterator[Ink]:
    """Yield the lines of a paragraph, each at the origin, read as one."""
    lines = setter.wrapped(text, min(sheet.room_width, _MOST_WIDE_MM), size_mm)
    for count, words in enumerate(lines):
        yield setter.text(words, size_mm).read_as(role, goes_on=count > 0)
