"""A request's plan: from who is in it and what was noted of each to a timetable, and what is kept of it."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date

from namewright.classbook import BookChild, Classbook, grouping
from namewright.classbook.growing import formed_lately
from namewright.making.request import Request
from namewright.practice.timetable import Lookout, Timetable, timetable


def timetable_of(request: Request) -> Timetable:
    """Return the plan of a request whose children have their tables. Raises ValueError for one without."""
    formed = {one.placed.child.line: formed_lately(one.placed.child.practice, one.notes) for one in request.members}
    held = {one.placed.child.line: (holds.support, holds.hand) for one in request.members
            for holds in (request.settings_of(one),)}
    return timetable(request.planned, Lookout(request.weeks, request.a_week, request.settings.support, held, formed,
                                              request.taught))


def keep_plan(book: Classbook, children: Sequence[BookChild], request: Request, monday: date) -> None:
    """Keep the tables of the whole class, and the letters of the week that a plan is for. Raises ClassbookError."""
    weeks = timetable_of(request).weeks.weeks
    with book.changing():
        grouping.keep(book, children, request.planned)
        book.keep_taught(monday, weeks[0].letters if weeks else ())
