"""What was seen of a child's name writing: kept as it was noted, day by day."""

from __future__ import annotations

import sqlite3
from collections.abc import Iterable
from datetime import date, datetime
from typing import Any

from namewright.classbook.records import (
    MAX_NOTE,
    MAX_WHO,
    By,
    ClassbookError,
    Observation,
    Seen,
    checked_day,
    checked_letters,
    checked_moment,
    checked_text,
)
from namewright.classbook.stages import Stage
from namewright.settings import Support

_COLUMNS = "id, child_id, date, name, letters, support, stage, note, who, at, not_yet"


def observe(db: sqlite3.Connection, child_id: int, name: str, day: date | str, seen: Seen, by: By,
            token: str | None) -> Observation:
    """Keep a note; one whose token is known is returned and not kept again. Inside a transaction."""
    again = db.execute(f"SELECT {_COLUMNS} FROM observations WHERE token = ? AND child_id = ?", (token, child_id))
    if token and (row := again.fetchone()):
        return _observation(row)
    places = checked_letters(name, seen.letters if seen.letters is not None or seen.not_yet is None else ())
    unformed = checked_letters(name, seen.not_yet)
    values = (child_id, checked_day(day), name, None if places is None else " ".join(map(str, places)),
              None if seen.support is None else str(seen.support), None if seen.stage is None else int(seen.stage),
              checked_text(seen.note, MAX_NOTE, "long_note"), checked_text(by.who, MAX_WHO, "long_who"),
              checked_moment(by.when), None if unformed is None else " ".join(map(str, unformed)))
    if places is None and seen.support is None and seen.stage is None and not values[6]:
        raise ClassbookError("classbook.nothing_to_note")
    new = db.execute("INSERT INTO observations (child_id, date, name, letters, support, stage, note, who, at, not_yet, "
                     "token) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)", (*values, token or None)).lastrowid
    return _observation((new, *values))


def strike(db: sqlite3.Connection, observation_id: int, when: datetime | str | None) -> None:
    """Mark a note as taken back; striking it again changes nothing."""
    known = db.execute("UPDATE observations SET struck_at = coalesce(struck_at, ?) WHERE id = ?",
                       (checked_moment(when), observation_id)).rowcount
    if not known:
        raise ClassbookError("classbook.no_note")


def replace(db: sqlite3.Connection, note: Observation, earlier: Iterable[int]) -> None:
    """Mark earlier notes of the same child and day as taken back, for a new one says what they said and more."""
    db.executemany("UPDATE observations SET struck_at = coalesce(struck_at, ?) "
                   "WHERE id = ? AND id <> ? AND child_id = ? AND date = ?",
                   [(note.when, each, note.id, note.child_id, note.date) for each in earlier])


def observations(db: sqlite3.Connection, child_id: int) -> tuple[Observation, ...]:
    """Return the notes about a child that were not taken back, by day."""
    rows = db.execute(f"SELECT {_COLUMNS} FROM observations WHERE child_id = ? AND struck_at IS NULL "
                      "ORDER BY date, id", (child_id,))
    return tuple(_observation(row) for row in rows)


def _observation(row: tuple[Any, ...]) -> Observation:
    new, child_id, day, name, letters, support, stage, note, who, at, not_yet = row
    return Observation(new, child_id, day, name, _positions(letters), Support(support) if support else None,
                       Stage(stage) if stage else None, note, who, at, _positions(not_yet))


def _positions(text: str | None) -> tuple[int, ...] | None:
    return None if text is None else tuple(map(int, text.split()))
