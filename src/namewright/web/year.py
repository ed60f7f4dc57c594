"""The class's year on a page for the adult: a row a child, in the order of the list, so that nobody is ranked."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from namewright.classbook import BookChild
from namewright.classbook.growing import growth_of
from namewright.classbook.suggest import suggest
from namewright.pages.child_progress import ProgressSettings
from namewright.pages.class_progress import ClassRow, class_progress_pages
from namewright.pages.page import Page
from namewright.pages.press import Press
from namewright.web.class_settings import sheet_of_child, sheet_of_class
from namewright.web.desk import book


def class_rows(children: Sequence[BookChild], settings: Mapping[str, str]) -> tuple[ClassRow, ...]:
    """Return what was noted of children, and a thought for each."""
    return tuple(_row(one, settings) for one in sorted(children, key=lambda each: each.child.line))


def _row(one: BookChild, settings: Mapping[str, str]) -> ClassRow:
    notes, sheet = book().observations(one.id), sheet_of_child(one, settings)
    growth = growth_of(one.child.label, one.child.practice, notes)
    return ClassRow(growth, sheet.support, suggest(sheet.support, notes, one.child.practice).reason)


def year_pages(press: Press, rows: Sequence[ClassRow], settings: Mapping[str, str]) -> tuple[Page, ...]:
    """Return the pages of a class's year."""
    sheet = sheet_of_class(settings)
    return class_progress_pages(press, rows, ProgressSettings(sheet.paper, sheet.binding, sheet.language))
