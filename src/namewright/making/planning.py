"""A request's plan: from who is in it and what was noted of each to a timetable."""

from __future__ import annotations

from namewright.classbook.growing import formed_lately
from namewright.making.request import Request
from namewright.practice.timetable import Lookout, Timetable, timetable


def timetable_of(request: Request) -> Timetable:
    """Return the plan of a request whose children have their tables. Raises ValueError for one without."""
    formed = {one.placed.child.line: formed_lately(one.placed.child.practice, one.notes) for one in request.members}
    return timetable(request.planned, Lookout(request.weeks, request.a_week, request.settings.support, formed,
                                              request.taught))
