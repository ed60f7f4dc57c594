"""A child who stands in the class twice, made one by an adult who says so, wherever the two stand.

What is kept of both is the child's then (``joining``). On the list the child stands where it stood, or where the double
did; where both stood there, the line of the double goes. Inside a transaction.
"""

from __future__ import annotations

import sqlite3

from namewright.classbook import list_before
from namewright.classbook.erasing import without_children
from namewright.classbook.joining import join
from namewright.classbook.records import By, ClassbookError
from namewright.classbook.rosters import NewList, is_whole, newest_roster, on_lines, take_roster
from namewright.settings import NamePart


def make_one(db: sqlite3.Connection, double: int, child_id: int, part: NamePart, by: By) -> int:
    """Make a double one with the child that it is; return how many notes went over.

    Raises ClassbookError for a child that is not known, and for a child with itself.
    """
    known = {row[0] for row in db.execute("SELECT id FROM children")}
    if not {double, child_id} <= known:
        raise ClassbookError("classbook.no_child")
    if double == child_id:
        raise ClassbookError("classbook.one_child")
    list_before.forget(db)
    text, lines = newest_roster(db)[1], on_lines(db)
    if double in lines.values():
        if child_id in lines.values():
            text, lines = without_children(db, {double}, part)
        lines = {line: child_id if one == double else one for line, one in lines.items()}
    else:
        text = ""  # the list stays as it is
    notes = join(db, double, child_id, by)
    if text:
        take_roster(db, NewList(text, lines, whole=is_whole(db)), part, by, as_it_is=True)
    return notes
