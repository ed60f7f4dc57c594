"""Sign in for a week: each name with five places, a day each, in one row where the child's own lines let it fit.

A long name's days take more rows; no line is lower for it. The page lies on its long side. Millimetres, y down.
"""

from __future__ import annotations

from collections.abc import Sequence

from namewright.lines.ink import RULE
from namewright.pages import blocks
from namewright.pages.know.frame import Frame, framed
from namewright.pages.know.signin import NOTE_X_MM, Cell, Signer, cell_of, late, named, to_write
from namewright.pages.page import Furniture, Page
from namewright.pages.pictograms import Task
from namewright.pages.sheet import SheetSettings
from namewright.pages.typesetter import Typesetter

DAYS = 5
_DAY_MM, _DAY_X_MM = 3.6, 1.2  # what a day's name takes over its place, and its x-height
_UNDER_MM = 3.0  # from the baseline of the name to the top line under it: tails reach no letter there
_APART_MM, _AFTER_MM = 2.0, 2.0
_SPARE_MM = 2.0  # a place is wider than its name by so much
_LATE = 2


def week_pages(setter: Typesetter, signers: Sequence[Signer], settings: SheetSettings) -> tuple[Page, ...]:
    """Return the pages for a class; ``settings`` are those of everyone. Raises DoesNotFit, MissingLetters."""
    pages: list[Page] = []
    frame = _begun(setter, settings, len(signers))
    outline = frame.words.say("page.know.signin_week_outline")
    for cell in (*(cell_of(setter, one, settings) for one in signers), *[late(settings)] * _LATE):
        rows = _days(frame, cell)
        if _height(cell, len(rows)) > frame.room:
            pages.append(frame.page(None if pages else outline))
            frame = _begun(setter, settings, None)
        _child(frame, cell, rows)
    return (*pages, frame.page(None if pages else outline))


def _begun(setter: Typesetter, settings: SheetSettings, count: int | None) -> Frame:
    frame = framed(setter, None, settings, turned=True)
    if count is not None:
        frame.note(frame.words.say("page.know.signin_week_count", count=count), NOTE_X_MM)
        frame.y += 2.0
    frame.caption("page.know.signin_week", Task.ALONE)
    frame.y += 1.0
    return frame


def _height(cell: Cell, rows: int) -> float:
    first = cell.named_rise_mm + _UNDER_MM
    return first + rows * (cell.rise_mm + cell.drop_mm + _AFTER_MM) + (rows - 1) * _DAY_MM


def _days(frame: Frame, cell: Cell) -> list[range]:
    """Return which days share a row: all five where the name fits five times, else no more than in the row above."""
    wide = (cell.line.width_mm if cell.line else 0.0) + _SPARE_MM + _APART_MM
    across = max(1, min(DAYS, int((frame.right - frame.left + _APART_MM) // wide)))
    each = -(-DAYS // -(-DAYS // across))
    return [range(start, min(start + each, DAYS)) for start in range(0, DAYS, each)]


def _child(frame: Frame, cell: Cell, rows: Sequence[range]) -> None:
    """Set a name to read, and under it its places, the day over the right end of each."""
    step = (frame.right - frame.left + _APART_MM) / max(map(len, rows))
    frame.items.append(named(frame, cell, frame.left, frame.left + 0.6 * step, frame.y + cell.named_rise_mm))
    frame.y += cell.named_rise_mm + _UNDER_MM
    for number, days in enumerate(rows):
        frame.y += _DAY_MM if number else 0.0
        baseline = frame.y + cell.rise_mm
        for at, day in enumerate(days):
            x, right = frame.left + at * step, frame.left + (at + 1) * step - _APART_MM
            said = frame.words.say(f"page.know.day_{day + 1}")
            said_x = right - frame.setter.text_width(said, _DAY_X_MM)
            frame.items.append(Furniture((blocks.text_at(frame.setter, said, said_x, frame.y - 1.0, _DAY_X_MM, RULE),)))
            frame.items.append(to_write(frame, cell, x, right, baseline))
        frame.y += cell.rise_mm + cell.drop_mm + _AFTER_MM
