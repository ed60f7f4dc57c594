"""What is missing?: the name at the head, then row by row with more of it left out, on the child's own lines.

With more support a gap is a box in the letter's outline (tall, small, with a tail), with less it is a stroke to write
on, and the head is folded away. Which letters are missing is ``practice.gaps``. Millimetres, y down.
"""

from __future__ import annotations

from collections.abc import Sequence

from namewright.lines.ink import RULE
from namewright.pages import blocks
from namewright.pages.know.frame import Frame, framed
from namewright.pages.know.rows import blank, height_of, solid, spread, with_gaps
from namewright.pages.page import Furniture, Page
from namewright.pages.paging import FOLD_MM
from namewright.pages.pictograms import Task
from namewright.pages.sheet import SheetSettings
from namewright.pages.typesetter import Typesetter
from namewright.practice.gaps import GapRow
from namewright.settings import Support

_MAX_AIR_MM = 14.0  # between two rows, beside the ruling's own


def missing_pages(setter: Typesetter, label: str, rows: Sequence[GapRow], settings: SheetSettings) -> tuple[Page, ...]:
    """Return the pages, one unless rows are tall. Raises MissingLetters, DoesNotFit."""
    setter = setter.lettering(settings.letters)
    name = rows[0].name
    wide = spread(setter, name, settings, with_gaps=True)
    frame = framed(setter, label, settings, turned=wide.turned)
    height = height_of(frame, wide.lines)
    helped = settings.support in (Support.FULL, Support.PARTIAL)
    frame.caption("page.know.here", Task.SEE)
    solid(frame, wide.lines)
    if not helped:
        fold(frame)
    frame.caption(*(("page.know.missing_boxes", Task.PENCIL) if helped else ("page.know.missing", Task.ALONE)))
    pages: list[Page] = []
    here = max(1, min(len(rows), int(frame.room // height)))
    air = min(_MAX_AIR_MM, max(0.0, frame.room - here * height) / here)
    for gaps in rows:
        if height > frame.room:
            pages.append(frame.page(None if pages else label))
            frame = framed(setter, label, settings, turned=wide.turned)
        if gaps.is_line:
            blank(frame, wide.lines)
        else:
            with_gaps(frame, wide.lines, gaps, boxed=helped)
        frame.y += air
    return (*pages, frame.page(None if pages else label))


def fold(frame: Frame) -> None:
    """Draw the line along which the head with the name is folded away, and go on below it."""
    said = frame.words.say("page.fold")
    note = blocks.text_at(frame.setter, said, frame.left, frame.y + 4.6, blocks.CHECK_NOTE_MM, RULE)
    frame.items += [blocks.fold_line(frame.sheet.width_mm, frame.y + 1.0), Furniture((note,))]
    frame.y += FOLD_MM + 4.0
