"""What stands in a class's file is looked at before it is used: a received or damaged file may hold anything.

Only tables and indexes belong into a class: a trigger of somebody else's would act on every save. Each value has the
kind that its column says, and a word is one of those there are. Out of scope: a file that is no database (``connect``).
"""

from __future__ import annotations

import sqlite3
from collections.abc import Iterator, Mapping

from namewright.classbook.keys import checked_setting
from namewright.classbook.records import ClassbookError
from namewright.message import Problem
from namewright.settings import Hand, Support

_KINDS = {"TEXT": "'text'", "INTEGER": "'integer'", "REAL": "'real', 'integer'"}  # by SQLite's typeof
_MAX_MM = 1000.0
_POSITIONS = "({column} GLOB '*[^0-9 ]*' OR length({column}) > 1000)"
_DAY = "date({column}) IS NOT {column}"


def _none_of(words: type[Support | Hand]) -> str:
    return f"{{column}} NOT IN ({', '.join(repr(word.value) for word in words)})"


# What is wrong with a value, by table and column, as SQL.
_WRONG: Mapping[tuple[str, str], str] = {
    ("children", "support"): _none_of(Support),
    ("children", "hand"): _none_of(Hand),
    ("children", "line_height_mm"): f"{{column}} NOT BETWEEN 0 AND {_MAX_MM}",
    ("children", "practice"): "trim({column}) = ''",
    ("children", "label"): "trim({column}) = ''",
    ("observations", "support"): _none_of(Support),
    ("observations", "stage"): "{column} NOT BETWEEN 1 AND 7",
    ("observations", "letters"): _POSITIONS,
    ("observations", "not_yet"): _POSITIONS,
    ("observations", "date"): _DAY,
    ("taught", "week"): _DAY,
}


def check_parts(connection: sqlite3.Connection, shown: str) -> None:
    """Raise ClassbookError for a file, called ``shown``, with a part that no class has, such as a trigger."""
    foreign = connection.execute("SELECT name FROM sqlite_master WHERE type NOT IN ('table', 'index') "
                                 "OR sql LIKE 'CREATE VIRTUAL%'").fetchone()
    if foreign:
        raise ClassbookError("classbook.foreign_part", file=shown, part=str(foreign[0]))


def check_values(connection: sqlite3.Connection, shown: str) -> None:
    """Raise ClassbookError, with table and column, for a value that no class can hold."""
    tables = [str(name) for (name,) in connection.execute(
        "SELECT name FROM sqlite_master WHERE type = 'table' AND name NOT LIKE 'sqlite!_%' ESCAPE '!'")]
    for table in tables:
        wrong = dict(_wrong(connection, table))
        cases = " ".join(f"WHEN {found} THEN {at}" for at, found in enumerate(wrong.values()))
        odd = connection.execute(f"SELECT CASE {cases} END AS odd FROM {_quoted(table)} "
                                 "WHERE odd IS NOT NULL LIMIT 1").fetchone()
        if odd:
            raise ClassbookError("classbook.odd_value", file=shown, table=table, column=list(wrong)[odd[0]])
    _check_settings(connection, shown)


def _wrong(connection: sqlite3.Connection, table: str) -> Iterator[tuple[str, str]]:
    """Yield each column of a table and, as SQL, what is wrong with a value in it."""
    for _, column, kind, required, _, key in connection.execute(f"PRAGMA table_info({_quoted(table)})"):
        name = _quoted(column)
        allowed = _KINDS.get(kind, "typeof(1)") + ("" if required or key else ", 'null'")
        more = _WRONG.get((table, column))
        yield column, f"typeof({name}) NOT IN ({allowed})" + (f" OR {more.format(column=name)}" if more else "")


def _check_settings(connection: sqlite3.Connection, shown: str) -> None:
    for table, of_class in (("class_settings", True), ("settings", False)):
        for key, text in connection.execute(f"SELECT key, value FROM {table}"):
            if not _can_be_set(key, text, of_class=of_class):
                raise ClassbookError("classbook.odd_value", file=shown, table=table, column=key)


def _can_be_set(key: str, text: str, *, of_class: bool) -> bool:
    try:
        return checked_setting(key, text, of_class=of_class) is not None
    except Problem:
        return False


def _quoted(name: str) -> str:
    return '"' + name.replace('"', '""') + '"'
