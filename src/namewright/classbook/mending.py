"""A class's file that holds what no class can hold, mended: each such value is told and taken out, all the rest stays.

A value that may be missing becomes missing; a text that is of another kind becomes text; a row that cannot be without
the value goes, but never a child. Parts that no class has, such as triggers, go too. Everything is one transaction, and
nothing is changed where the result would not open. Out of scope: a file that is cut short or overwritten (``connect``).
"""

from __future__ import annotations

import sqlite3
from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path

from namewright.classbook.connect import connected, told, transaction
from namewright.classbook.schema import MIGRATIONS, foreign_parts
from namewright.classbook.values import check_parts, check_values, is_text, odd_settings, odd_values, quoted
from namewright.message import Message, message

_MAX_SHOWN = 40
# What a child's or the class's own row has in the place of a value that it cannot be without.
_USUAL = {("children", "line"): "1000000 + rowid",  # behind all others, until the list is read again
          ("rosters", "whole"): "0", ("class", "erasures"): "0",
          ("children", "practice"): "coalesce(nullif(given, ''), nullif(family, ''), '?')",
          ("children", "label"): "coalesce(nullif(practice, ''), '?') || ' ' || rowid"}
_OF_CHILD = {"children": "rowid", "settings": "child_id", "observations": "child_id", "groups": "child_id"}


@dataclass(frozen=True, slots=True)
class Odd:
    """Something that no class can hold: where it is, whose it is (a label, if anybody's), and how it begins."""

    table: str
    column: str
    label: str
    value: str

    @property
    def told(self) -> Message:
        """Return it as a message."""
        fields = {"table": self.table, "column": self.column, "value": self.value}
        if self.label:
            return message("classbook.odd_of_child", label=self.label, **fields)
        return message("classbook.odd_part" if not self.column else "classbook.odd_there", **fields)


def mend(path: Path, *, really: bool) -> tuple[Odd, ...]:
    """Return what no class can hold, taken out if ``really``. Raises ClassbookError where mending does not help."""
    connection = connected(path, create=False, check=False)
    try:
        with told(path), transaction(connection, "IMMEDIATE"):
            found = tuple(_taken_out(connection))
            check_parts(connection, str(path))
            check_values(connection, str(path))
            if not really:
                connection.execute("ROLLBACK")
                connection.execute("BEGIN")
        if found and really:
            connection.execute("VACUUM")
        return found
    finally:
        connection.close()


def _taken_out(db: sqlite3.Connection) -> Iterator[Odd]:
    for kind, name in foreign_parts(db, MIGRATIONS):
        db.execute(f"DROP {kind} IF EXISTS {quoted(name)}")
        yield Odd(kind, "", "", name)
    for table, column, row in odd_values(db):
        if _is_there(db, table, row):  # else its row has gone with another
            yield Odd(table, column, _label(db, table, row), _shown(_value(db, table, column, row)))
            _mend(db, table, column, row)
    for table, key, row in odd_settings(db):
        value = db.execute(f"SELECT value FROM {table} WHERE rowid = ?", (row,)).fetchone()[0]
        yield Odd(table, key, _label(db, table, row), _shown(value))
        db.execute(f"DELETE FROM {table} WHERE rowid = ?", (row,))


def _is_there(db: sqlite3.Connection, table: str, row: int) -> bool:
    return db.execute(f"SELECT 1 FROM {quoted(table)} WHERE rowid = ?", (row,)).fetchone() is not None


def _value(db: sqlite3.Connection, table: str, column: str, row: int) -> object:
    """Return a value as it is, text that cannot be read as bytes."""
    name = quoted(column)
    kind, value = db.execute(f"SELECT typeof({name}), CASE typeof({name}) WHEN 'text' THEN CAST({name} AS BLOB) "
                             f"ELSE {name} END FROM {quoted(table)} WHERE rowid = ?", (row,)).fetchone()
    if kind != "text":
        return value
    data: bytes = value or b""
    return data.decode() if is_text(data) else data


def _label(db: sqlite3.Connection, table: str, row: int) -> str:
    """Return the label of the child that a row is about, empty where it is about none."""
    if table not in _OF_CHILD:
        return ""
    found = db.execute("SELECT CAST(label AS BLOB) FROM children WHERE id = "
                       f"(SELECT {_OF_CHILD[table]} FROM {quoted(table)} WHERE rowid = ?)", (row,)).fetchone()
    return _shown(found[0]) if found else ""


def _shown(value: object) -> str:
    return _readable(value, "")[:_MAX_SHOWN]


def _readable(value: object, also: str) -> str:
    text = value.decode("utf-8", "replace") if isinstance(value, bytes) else str(value)
    return "".join(char if char.isprintable() or char in also else " " for char in text)


def _mend(db: sqlite3.Connection, table: str, column: str, row: int) -> None:
    """Put in a value's place what can stand there, or let its row go."""
    kind, required = next((kind, bool(required or key)) for _, name, kind, required, _, key in
                          db.execute(f"PRAGMA table_info({quoted(table)})") if name == column)
    value = _value(db, table, column, row)
    if (table, column) in _USUAL:
        new = _USUAL[table, column]
    elif not required and table != "saves":
        new = "NULL"
    elif kind == "TEXT" and not isinstance(value, str):
        db.execute(f"UPDATE {quoted(table)} SET {quoted(column)} = ? WHERE rowid = ?", (_readable(value, "\n\t"), row))
        return
    else:
        _let_go(db, table, row)
        return
    db.execute(f"UPDATE {quoted(table)} SET {quoted(column)} = {new} WHERE rowid = ?", (row,))


def _let_go(db: sqlite3.Connection, table: str, row: int) -> None:
    if table == "saves":
        db.execute("DELETE FROM changes WHERE save_id = ?", (row,))
        db.execute("UPDATE saves SET undoes = NULL WHERE undoes = ?", (row,))
    db.execute(f"DELETE FROM {quoted(table)} WHERE rowid = ?", (row,))
