"""What is kept of a plan, read back with plain SQL. All names are invented."""

from __future__ import annotations

import sqlite3
from collections.abc import Iterator
from datetime import date
from pathlib import Path

import pytest

from namewright.classbook import plans
from namewright.classbook.connect import connected
from namewright.classbook.records import By
from namewright.classbook.rosters import NewList, take_roster
from namewright.settings import NamePart

MONDAY, NEXT = date(2026, 9, 7), date(2026, 9, 14)


@pytest.fixture
def db(tmp_path: Path) -> Iterator[sqlite3.Connection]:
    connection = connected(tmp_path / "class.db")
    take_roster(connection, NewList("Mira Quill\nTilo Reed\nBo Ash"), NamePart.GIVEN, By(when="2026-09-01T08:00:00"))
    yield connection
    connection.close()


def test_tables_replace_those_of_last_time_and_who_left_has_none(db: sqlite3.Connection) -> None:
    """The tables kept last are all there are; a child who left still has its row, and is not told."""
    plans.keep_groups(db, {1: 1, 2: 1, 3: 2})
    plans.keep_groups(db, {1: 2, 2: 1})
    assert db.execute("SELECT child_id, number FROM groups ORDER BY child_id").fetchall() == [(1, 2), (2, 1)]
    db.execute("UPDATE children SET left_at = '2026-10-01' WHERE id = 1")
    assert plans.groups(db) == {2: 1}


def test_letters_come_back_by_week_in_the_order_taught(db: sqlite3.Connection) -> None:
    """Weeks by their Mondays, the earliest first; a week kept again has its new letters alone."""
    plans.keep_taught(db, NEXT, ("o",))
    plans.keep_taught(db, MONDAY, ("t", "i"))
    assert list(plans.taught(db).items()) == [(MONDAY, ("t", "i")), (NEXT, ("o",))]
    plans.keep_taught(db, MONDAY, ("l",))
    assert plans.taught(db) == {MONDAY: ("l",), NEXT: ("o",)}


def test_a_wish_is_one_row_whoever_is_named_first(db: sqlite3.Connection) -> None:
    """The lower id stands first; the newest word on a pair holds, and None takes it back."""
    plans.seat(db, 3, 1, True)
    plans.seat(db, 1, 3, False)
    plans.seat(db, 2, 3, True)
    assert plans.seats(db) == ((1, 3, False), (2, 3, True))
    plans.seat(db, 3, 2, None)
    db.execute("UPDATE children SET left_at = '2026-10-01' WHERE id = 3")
    assert plans.seats(db) == ()
    assert db.execute("SELECT one, other, together FROM seats").fetchall() == [(1, 3, 0)]
