"""The class as it stood before the newest list was saved, kept so that one press brings it back.

It lives until the next list is saved or taken back, until anybody is erased, and no longer than a day: a class's file
holds no older lists. What was noted or set meanwhile stays: only the list, who is on it, the tables and the part of
the name that is practised go back.
"""

from __future__ import annotations

import json
import sqlite3
from collections.abc import Callable, Iterable, Mapping
from dataclasses import dataclass
from datetime import datetime, timedelta
from typing import Any

from namewright.classbook.records import ClassbookError, checked_moment

MARK = 10  # letters of a line's mark, with which each answer begins
_LIVES = timedelta(days=1)
_TABLES = ("children", "rosters", "groups", "answered")
# Where something is kept of a child that came with the newest list: such a child has left and is not forgotten.
_OF_CHILD = ("observations", "settings", "saves")
_Rows = Mapping[str, list[dict[str, Any]]]


@dataclass(frozen=True, slots=True)
class Before:
    """The class's settings as they were, and the text that is taken back, with what was answered of its lines."""

    settings: Mapping[str, str]
    tried: str
    settled: frozenset[str]


def held(db: sqlite3.Connection, settings: Mapping[str, str]) -> dict[str, Any]:
    """Return the class as it is before a list is saved."""
    return {"settings": dict(settings), **{table: _rows(db, table) for table in _TABLES}}


def keep(db: sqlite3.Connection, roster: int, before: Mapping[str, Any], tried: str, settled: Iterable[str],
         when: datetime | str | None) -> None:
    """Keep what ``held`` gave for the list of this number, in place of what was kept before. Inside a transaction.

    ``tried`` is that list as the class keeps it, with its answers: what stood beside names is kept for no day either.
    """
    text = json.dumps({**before, "tried": tried, "settled": sorted(settled)}, ensure_ascii=True)
    forget(db)
    db.execute("INSERT INTO list_before VALUES (?, ?, ?)", (roster, checked_moment(when), text))


def on_kept_lines(settled: Iterable[str], lines: Iterable[tuple[str, str]], mark: Callable[[str], str]) -> list[str]:
    """Return answers with the marks of the lines that are kept; ``lines`` are of each child, as typed and as kept."""
    kept = {mark(typed): mark(now) for typed, now in lines}
    return [kept[key] + said for one in settled for key, said in [(one[:MARK], one[MARK:])] if key in kept]


def forget(db: sqlite3.Connection) -> None:
    """Let go of it. Inside a transaction."""
    db.execute("DELETE FROM list_before")


def forget_if_joined(db: sqlite3.Connection) -> None:
    """Let go of it where a child of then is one with another now, and cannot be parted. Inside a transaction."""
    row = db.execute("SELECT held FROM list_before").fetchone()
    there = {one for (one,) in db.execute("SELECT id FROM children")}
    try:
        joined = row is not None and not {one["id"] for one in json.loads(row[0])["children"]} <= there
    except (ValueError, LookupError, TypeError, RecursionError):  # of a damaged text
        joined = True
    if joined:
        forget(db)


def saved_at(db: sqlite3.Connection, now: datetime) -> str | None:
    """Return when the list was saved that can be taken back; None where there is none, or it is a day ago."""
    row = db.execute("SELECT at FROM list_before WHERE roster = (SELECT max(id) FROM rosters)").fetchone()
    return str(row[0]) if row and not _is_old(str(row[0]), now) else None


def is_over(db: sqlite3.Connection, now: datetime) -> bool:
    """Say whether something is kept that is too old to be brought back."""
    return any(_is_old(str(at), now) for (at,) in db.execute("SELECT at FROM list_before"))


def _is_old(at: str, now: datetime) -> bool:
    try:
        return now - datetime.fromisoformat(at) > _LIVES
    except (ValueError, TypeError):
        return True


def bring_back(db: sqlite3.Connection) -> Before:
    """Bring back the class as it was, and return its settings of then. Inside a transaction.

    Raises ClassbookError where the list was changed since, or what was kept of it cannot be read.
    """
    row = db.execute("SELECT held FROM list_before WHERE roster = (SELECT max(id) FROM rosters)").fetchone()
    if row is None:
        raise ClassbookError("classbook.list_meanwhile")
    try:
        return _brought_back(db, json.loads(row[0]))
    except (ValueError, LookupError, TypeError, AttributeError, RecursionError) as error:  # of a damaged text
        raise ClassbookError("classbook.list_meanwhile") from error


def _brought_back(db: sqlite3.Connection, before: dict[str, Any]) -> Before:
    _children_back(db, before, checked_moment(None))
    db.execute("DELETE FROM rosters")
    for one in before["rosters"][-1:]:  # under a number of its own, so that an open page sees that the list is another
        _put(db, "rosters", {key: value for key, value in one.items() if key != "id"})
    db.execute("DELETE FROM groups")
    for one in before["groups"]:
        _put(db, "groups", one)
    db.execute("DELETE FROM answered")
    for one in before.get("answered", ()):  # a file of before these were kept has none
        _put(db, "answered", one)
    forget(db)
    settled = frozenset(map(str, before.get("settled", ())))  # a file of before this was kept has none
    return Before(dict(before["settings"]), str(before["tried"]), settled)


def _children_back(db: sqlite3.Connection, before: _Rows, at: str) -> None:
    known = {int(one["id"]) for one in before["children"]}
    for one in before["children"]:
        columns = [column for column in _columns(db, "children") if column in one and column != "id"]
        there = db.execute(f"UPDATE children SET {', '.join(f'{column} = ?' for column in columns)} WHERE id = ?",
                           (*(one[column] for column in columns), one["id"])).rowcount
        if not there:
            _put(db, "children", one)
    for child_id in [row[0] for row in db.execute("SELECT id FROM children") if row[0] not in known]:
        gone_again(db, child_id, at)


def gone_again(db: sqlite3.Connection, child_id: int, at: str) -> None:
    """Take a child off the list, and out of the file where nothing is kept of the child. Inside a transaction."""
    db.execute("DELETE FROM groups WHERE child_id = ?", (child_id,))
    if any(db.execute(f"SELECT 1 FROM {table} WHERE child_id = ?", (child_id,)).fetchone() for table in _OF_CHILD):
        db.execute("UPDATE children SET left_at = ? WHERE id = ?", (at, child_id))
        return
    db.execute("DELETE FROM seats WHERE ? IN (one, other)", (child_id,))
    db.execute("DELETE FROM children WHERE id = ?", (child_id,))


def _rows(db: sqlite3.Connection, table: str) -> list[dict[str, Any]]:
    columns = _columns(db, table)
    return [dict(zip(columns, row, strict=True)) for row in db.execute(f"SELECT * FROM {table} ORDER BY 1")]


def _columns(db: sqlite3.Connection, table: str) -> list[str]:
    return [str(row[1]) for row in db.execute(f"PRAGMA table_info({table})")]


def _put(db: sqlite3.Connection, table: str, one: Mapping[str, Any]) -> None:
    columns: Iterable[str] = [column for column in _columns(db, table) if column in one]
    db.execute(f"INSERT INTO {table} ({', '.join(columns)}) VALUES ({', '.join('?' for _ in columns)})",
               [one[column] for column in columns])
