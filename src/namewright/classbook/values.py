"""What stands in a class's file is looked at before it is used: a received or damaged file may hold anything.

Only our own tables and indexes belong into a class: a trigger of somebody else's would act on every save, and a table
that refers to a child would keep it from being erased. Each value has the kind that its column says, text can be read,
and a word is one of those there are. Out of scope: a file that is no database (``connect``).
"""

from __future__ import annotations

import sqlite3
from collections.abc import Iterator, Mapping, Sequence
from datetime import date

import unicodedata2

from namewright.classbook.keys import can_be_set
from namewright.classbook.records import ClassbookError
from namewright.classbook.schema import MIGRATIONS, Migration, foreign_parts, had_by, lacks_parts
from namewright.names.clusters import clusters
from namewright.settings import Hand, Support

_KINDS = {"TEXT": "'text'", "INTEGER": "'integer'", "REAL": "'real', 'integer'"}  # by SQLite's typeof
_MAX_MM = 1000.0
_MAX_LETTERS = 120  # of a name to practise: twice what a list may have, and pages take a second
_POSITIONS = "({column} GLOB '*[^0-9 ]*' OR length({column}) > 1000 OR NOT in_name({column}, name))"
_DAY = "NOT is_day({column})"
_FIRST_ON_LINE = "(SELECT min(id) FROM children WHERE left_at IS NULL GROUP BY line)"
# What anyone may have typed, or read from a file, as it was: signs that cannot be seen among it.
_AS_TYPED = {("rosters", "text"), ("drafts", "text"), ("list_before", "held")}


def _none_of(words: type[Support | Hand]) -> str:
    return f"{{column}} NOT IN ({', '.join(repr(word.value) for word in words)})"


# What is wrong with a value, by table and column, as SQL.
_WRONG: Mapping[tuple[str, str], str] = {
    ("children", "support"): _none_of(Support),
    ("children", "hand"): _none_of(Hand),
    ("children", "line_height_mm"): f"{{column}} NOT BETWEEN 0 AND {_MAX_MM}",
    ("children", "line"): f"left_at IS NULL AND id NOT IN {_FIRST_ON_LINE}",  # else one would stand for both
    ("children", "practice"): "trim({column}) = '' OR is_long({column})",
    ("children", "label"): "trim({column}) = ''",
    ("observations", "support"): _none_of(Support),
    ("observations", "stage"): "{column} NOT BETWEEN 1 AND 7",
    ("observations", "letters"): _POSITIONS,
    ("observations", "not_yet"): _POSITIONS,
    ("observations", "date"): _DAY,
    ("observations", "name"): "trim({column}) = ''",
    ("taught", "week"): _DAY,
    ("answered", "hash"): "length({column}) <> 10 OR {column} GLOB '*[^0-9a-f]*'",
}


def check_parts(connection: sqlite3.Connection, shown: str, migrations: Sequence[Migration] = MIGRATIONS) -> None:
    """Raise ClassbookError for a file, called ``shown``, with a part that no class has, or without one that all have.

    A file of another program or of a newer Namewright is for ``schema.bring_up_to_date`` to refuse.
    """
    if not (had := had_by(connection, migrations)):
        return
    for _, name in foreign_parts(connection, had):
        raise ClassbookError("classbook.foreign_part", file=shown, part=name)
    if lacks_parts(connection, had):
        raise ClassbookError("classbook.damaged", file=shown)


def check_values(connection: sqlite3.Connection, shown: str) -> None:
    """Raise ClassbookError, with table and column, for a value that no class can hold."""
    for table, column, _ in odd_values(connection, most=1):
        raise ClassbookError("classbook.odd_value", file=shown, table=table, column=column)
    for table, key, _ in odd_settings(connection):
        raise ClassbookError("classbook.odd_value", file=shown, table=table, column=key)


def is_text(data: bytes, *, as_typed: bool = False) -> bool:
    """Say whether bytes are text, in UTF-8 and, but for what is kept as it was typed, without control characters.

    A terminal that shows one of those may do as it says. Lines and tabs part a note and stand in no name.
    """
    try:
        text = data.decode()
    except UnicodeDecodeError:
        return False
    return as_typed or text.isprintable() or not any(unicodedata2.category(char) == "Cc" for char in text
                                                     if char not in "\n\r\t")


def _in_name(positions: object, name: object) -> bool:
    """Say whether a name has all these letters, by their positions; what is of another kind is told by itself."""
    if not isinstance(positions, str) or not isinstance(name, str):
        return True
    return all(int(at) < len(clusters(name)) for at in positions.split() if at.isascii() and at.isdecimal())


def _is_long(name: object) -> bool:
    """Say whether a name has more letters than any page can have; what is of another kind is told by itself."""
    return isinstance(name, str) and len(name) > _MAX_LETTERS and len(clusters(name)) > _MAX_LETTERS


def _is_day(text: object) -> bool:
    """Say whether a text is a day that there is, as ISO 8601; SQLite takes the thirtieth of February for one."""
    try:
        return not isinstance(text, str) or date.fromisoformat(text).isoformat() == text
    except ValueError:
        return False


def odd_values(connection: sqlite3.Connection, most: int = -1) -> list[tuple[str, str, int]]:
    """Return table, column and row (its rowid) of values that no class can hold, at most so many of a table."""
    connection.create_function("is_text", 2, lambda data, as_typed: is_text(data or b"", as_typed=bool(as_typed)))
    connection.create_function("in_name", 2, _in_name)
    connection.create_function("is_day", 1, _is_day)
    connection.create_function("is_long", 1, _is_long)
    tables = [str(name) for (name,) in connection.execute(
        "SELECT name FROM sqlite_master WHERE type = 'table' AND name NOT LIKE 'sqlite!_%' ESCAPE '!'")]
    found = []
    for table in tables:
        wrong = dict(_wrong(connection, table))
        where = " OR ".join(f"({each})" for each in wrong.values())
        flags = ", ".join(f"({each}) IS TRUE" for each in wrong.values())
        for row, *is_odd in connection.execute(
                f"SELECT rowid, {flags} FROM {quoted(table)} WHERE {where} LIMIT {most}").fetchall():
            found += [(table, column, row) for column, odd in zip(wrong, is_odd, strict=True) if odd]
    return found


def _wrong(connection: sqlite3.Connection, table: str) -> Iterator[tuple[str, str]]:
    """Yield each column of a table and, as SQL, what is wrong with a value in it."""
    for _, column, kind, required, _, key in connection.execute(f"PRAGMA table_info({quoted(table)})"):
        name = quoted(column)
        allowed = _KINDS.get(kind, "typeof(1)") + ("" if required or key else ", 'null'")
        more = _WRONG.get((table, column))
        unread = (f" OR typeof({name}) = 'text' AND NOT is_text(CAST({name} AS BLOB), {(table, column) in _AS_TYPED:d})"
                  if kind == "TEXT" else "")
        yield column, f"typeof({name}) NOT IN ({allowed}){unread}" + (
            f" OR {more.format(column=name)}" if more else "")


def odd_settings(connection: sqlite3.Connection) -> list[tuple[str, str, int]]:
    """Return table, key and row (its rowid) of settings that no class, or no child, can have."""
    return [(table, str(key), row) for table in ("class_settings", "settings")
            for row, key, text in connection.execute(f"SELECT rowid, key, value FROM {table}").fetchall()
            if not can_be_set(key, text, of_class=table == "class_settings")]


def quoted(name: str) -> str:
    """Return the name of a table or column as SQL takes it, whatever is in it."""
    return '"' + name.replace('"', '""') + '"'
