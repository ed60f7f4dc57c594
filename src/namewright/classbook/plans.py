"""What the class's file keeps of a plan: tables by number, wishes about seats, and the letters of weeks gone by."""

from __future__ import annotations

import sqlite3
from collections.abc import Mapping, Sequence
from datetime import date


def groups(db: sqlite3.Connection) -> dict[int, int]:
    """Return the table of each child who is here, by id."""
    return dict(db.execute("SELECT child_id, number FROM groups JOIN children ON children.id = child_id "
                           "WHERE left_at IS NULL ORDER BY child_id"))


def keep_groups(db: sqlite3.Connection, groups: Mapping[int, int]) -> None:
    """Keep these tables in place of those of last time. Inside a transaction."""
    db.execute("DELETE FROM groups")
    db.executemany("INSERT INTO groups VALUES (?, ?)", sorted(groups.items()))


def taught(db: sqlite3.Connection) -> dict[date, tuple[str, ...]]:
    """Return the letters of each week by its Monday, the earliest first, in the order in which they were taught."""
    weeks: dict[date, tuple[str, ...]] = {}
    for week, letter in db.execute("SELECT week, letter FROM taught ORDER BY week, rowid"):
        day = date.fromisoformat(week)
        weeks[day] = (*weeks.get(day, ()), letter)
    return weeks


def keep_taught(db: sqlite3.Connection, monday: date, letters: Sequence[str]) -> None:
    """Keep the letters of a week in place of what it had. Inside a transaction."""
    db.execute("DELETE FROM taught WHERE week = ?", (monday.isoformat(),))
    db.executemany("INSERT INTO taught VALUES (?, ?)", [(monday.isoformat(), each) for each in letters])


def seats(db: sqlite3.Connection) -> tuple[tuple[int, int, bool], ...]:
    """Return who shall sit together (true) or apart, by ids, the lower first, where both are here."""
    rows = db.execute("SELECT one, other, together FROM seats WHERE (SELECT count(*) FROM children "
                      "WHERE id IN (one, other) AND left_at IS NULL) = 2 ORDER BY one, other")
    return tuple((one, other, bool(together)) for one, other, together in rows)


def seat(db: sqlite3.Connection, one: int, other: int, together: bool | None) -> None:
    """Keep whether two children shall sit together or apart, None for neither. Inside a transaction."""
    pair = sorted((one, other))
    db.execute("DELETE FROM seats WHERE one = ? AND other = ?", pair)
    if together is not None:
        db.execute("INSERT INTO seats VALUES (?, ?, ?)", (*pair, int(together)))
