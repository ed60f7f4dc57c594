"""What is missing?: the name at the head, then row by row with more of it left out, on the child's own lines.

With more support a gap is a box in the letter's outline (tall, small, with a tail), with less it is a stroke to write
on, and the head is folded away. Which letters are missing is ``practice.gaps``. Millimetres, y down.
"""

from __future__ import annotations

from collections.abc import Sequence

from namewright.lines.ink import RULE
from namewright.pages import blocks
from namewright.pages.know.frame import Frame, framed
from namewright.pages.know.rows import Spread, blank, height_of, solid, spread, with_gaps
from namewright.pages.page import Furniture, Page
from namewright.pages.paging import FOLD_MM
from namewright.pages.pictograms import Task
from namewright.pages.sheet_settings import SheetSettings
from namewright.pages.typesetter import Typesetter
from namewright.practice.gaps import GapRow
from namewright.settings import Support

_MAX_AIR_MM = 14.0  # between two rows, beside the ruling's own
_HEAD_AIR_MM = 7.0  # over what is to be done, where rows have as much


def missing_pages(setter: Typesetter, label: str, rows: Sequence[GapRow], settings: SheetSettings) -> tuple[Page, ...]:
    """Return the pages, one unless rows are tall. Raises MissingLetters, DoesNotFit."""
    setter = setter.lettering(settings.letters)
    wide = spread(setter, rows[0].name, settings, with_gaps=True)
    pages: list[Page] = []
    rest = list(rows)
    while rest:
        frame = _begun(setter, label, wide, settings, first=not pages)
        height = height_of(frame, wide.lines)
        here = min(len(rest), int(frame.room // height))
        air = min(_MAX_AIR_MM, max(0.0, frame.room - here * height) / (here + 1))
        frame = _begun(setter, label, wide, settings, first=not pages, air=min(_HEAD_AIR_MM, air))
        for gaps in rest[:here]:
            if gaps.is_line:
                blank(frame, wide.lines)
            else:
                with_gaps(frame, wide.lines, gaps, boxed=_boxed(settings))
            frame.y += air
        del rest[:here]
        pages.append(frame.page(None if pages else label))
    return tuple(pages)


def on_full_pages(setter: Typesetter, rows: Sequence[GapRow], settings: SheetSettings) -> tuple[GapRow, ...]:
    """Return the rows but the last but one where it is for its sake that a page would hold nothing but one row.

    Raises MissingLetters, DoesNotFit.
    """
    setter = setter.lettering(settings.letters)
    wide = spread(setter, rows[0].name, settings, with_gaps=True)
    first, later = (_begun(setter, rows[0].name, wide, settings, first=first) for first in (True, False))
    height = height_of(first, wide.lines)
    left = len(rows) - int(first.room // height)
    alone = len(rows) > 2 and left > 0 and left % int(later.room // height) == 1
    return (*rows[:-2], rows[-1]) if alone else tuple(rows)


def _boxed(settings: SheetSettings) -> bool:
    return settings.support in (Support.FULL, Support.PARTIAL)


def _begun(setter: Typesetter, label: str, wide: Spread, settings: SheetSettings, *, first: bool, air: float = 0.0,
           ) -> Frame:
    """Return a page with what is to be done, and on the first page over it the name, which less help folds away.

    ``air`` is the white between the two.
    """
    frame = framed(setter, label, settings, turned=wide.turned)
    if first:
        frame.caption("page.know.here", Task.SEE)
        solid(frame, wide.lines)
        frame.y += air
        if not _boxed(settings):
            fold(frame)
    frame.caption(*(("page.know.missing_boxes", Task.PENCIL) if _boxed(settings)
                    else ("page.know.missing", Task.ALONE)))
    return frame


def fold(frame: Frame) -> None:
    """Draw the line along which the head with the name is folded away, and go on below it."""
    said = frame.words.say("page.fold")
    note = blocks.text_at(frame.setter, said, frame.left, frame.y + 4.6, blocks.CHECK_NOTE_MM, RULE)
    frame.items += [blocks.fold_line(frame.sheet.width_mm, frame.y + 1.0), Furniture((note,))]
    frame.y += FOLD_MM + 4.0
