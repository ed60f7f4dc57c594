"""The tables of the database and how an older file is brought up to date.

``PRAGMA user_version`` is the number of migrations a file has had; ``PRAGMA application_id`` says that it is ours.
A migration is never edited once released: a change of the tables is one more migration at the end of the list.
A file from a newer Namewright is refused untouched, because an older program cannot know what it would break.
"""

from __future__ import annotations

import sqlite3
from collections.abc import Mapping, Sequence
from contextlib import closing
from functools import cache
from itertools import chain

from namewright.classbook.records import ClassbookError

APPLICATION_ID = 0x4E574342  # the letters NWCB

Migration = Sequence[str]
MIGRATIONS: tuple[Migration, ...] = (
    (
        """CREATE TABLE rosters (
            id INTEGER PRIMARY KEY AUTOINCREMENT,
            text TEXT NOT NULL,
            who TEXT NOT NULL,
            at TEXT NOT NULL)""",
        # left_at says that one is missing from the newest roster; a row goes only when an adult erases a child.
        """CREATE TABLE children (
            id INTEGER PRIMARY KEY AUTOINCREMENT,
            given TEXT NOT NULL,
            family TEXT NOT NULL,
            practice TEXT NOT NULL CHECK (practice <> ''),
            label TEXT NOT NULL CHECK (label <> ''),
            line INTEGER NOT NULL,
            support TEXT,
            hand TEXT,
            line_height_mm REAL,
            joined_at TEXT NOT NULL,
            left_at TEXT)""",
        """CREATE TABLE class_settings (
            key TEXT PRIMARY KEY,
            value TEXT NOT NULL)""",
        """CREATE TABLE settings (
            child_id INTEGER NOT NULL REFERENCES children (id),
            key TEXT NOT NULL,
            value TEXT NOT NULL,
            PRIMARY KEY (child_id, key))""",
        # child_id NULL: a save of the class's own settings. UNIQUE: no save can be undone twice.
        """CREATE TABLE saves (
            id INTEGER PRIMARY KEY AUTOINCREMENT,
            child_id INTEGER REFERENCES children (id),
            who TEXT NOT NULL,
            at TEXT NOT NULL,
            undoes INTEGER UNIQUE REFERENCES saves (id))""",
        """CREATE TABLE changes (
            save_id INTEGER NOT NULL REFERENCES saves (id),
            key TEXT NOT NULL,
            before TEXT,
            after TEXT,
            PRIMARY KEY (save_id, key))""",
        # letters: positions with spaces between; NULL: not looked at. token: a form's own, so that one sent
        # twice is kept once. struck_at: taken back by an adult, and still there.
        """CREATE TABLE observations (
            id INTEGER PRIMARY KEY AUTOINCREMENT,
            child_id INTEGER NOT NULL REFERENCES children (id),
            date TEXT NOT NULL,
            name TEXT NOT NULL,
            letters TEXT,
            support TEXT,
            stage INTEGER CHECK (stage BETWEEN 1 AND 7),
            note TEXT NOT NULL,
            who TEXT NOT NULL,
            at TEXT NOT NULL,
            token TEXT UNIQUE,
            struck_at TEXT)""",
        "CREATE INDEX saves_of_child ON saves (child_id)",
        "CREATE INDEX observations_of_child ON observations (child_id, date)",
    ),
    (
        # What two more columns of a roster say of a child, as typed.
        "ALTER TABLE children ADD COLUMN letters TEXT NOT NULL DEFAULT ''",
        "ALTER TABLE children ADD COLUMN beats TEXT NOT NULL DEFAULT ''",
        # One row, drawn by lot: tells this class from every other, whatever its file is called.
        "CREATE TABLE class (id TEXT PRIMARY KEY NOT NULL)",
        "INSERT INTO class VALUES (lower(hex(randomblob(16))))",
    ),
    (
        # The group of the newest plan of each child who is here, from which the next one is made.
        """CREATE TABLE groups (
            child_id INTEGER PRIMARY KEY REFERENCES children (id),
            number INTEGER NOT NULL CHECK (number > 0))""",
    ),
    (
        # Positions said to be not yet formed; NULL: all that the letters leave out.
        "ALTER TABLE observations ADD COLUMN not_yet TEXT",
        # The letters that a week, by its Monday, was planned for.
        """CREATE TABLE taught (
            week TEXT NOT NULL,
            letter TEXT NOT NULL,
            PRIMARY KEY (week, letter))""",
        # Who shall sit together (1) or apart (0).
        """CREATE TABLE seats (
            one INTEGER NOT NULL REFERENCES children (id),
            other INTEGER NOT NULL REFERENCES children (id),
            together INTEGER NOT NULL CHECK (together IN (0, 1)),
            PRIMARY KEY (one, other),
            CHECK (one < other))""",
    ),
    (
        # The language of the name, where the roster says it, by its tag.
        "ALTER TABLE children ADD COLUMN names_in TEXT NOT NULL DEFAULT ''",
    ),
    (
        # Older lists are needed by nobody, and hold whatever stood beside the names.
        "DELETE FROM rosters WHERE id < (SELECT max(id) FROM rosters)",
        # 1: an adult asked for the whole list to be kept, with all that stands beside the names.
        "ALTER TABLE rosters ADD COLUMN whole INTEGER NOT NULL DEFAULT 0 CHECK (whole IN (0, 1))",
        # How often something was erased: what a program that runs has in memory of before goes then.
        "ALTER TABLE class ADD COLUMN erasures INTEGER NOT NULL DEFAULT 0",
    ),
    (
        # A list that is being worked on, a row for each step that can be taken back; roster: the list it began from.
        """CREATE TABLE drafts (
            id INTEGER PRIMARY KEY AUTOINCREMENT,
            text TEXT NOT NULL,
            practise TEXT NOT NULL,
            settled TEXT NOT NULL,
            whole INTEGER NOT NULL CHECK (whole IN (0, 1)),
            roster INTEGER NOT NULL,
            typed INTEGER NOT NULL CHECK (typed IN (0, 1)))""",
        # The class as it stood before the newest list was saved, as JSON; roster: the list that was saved.
        """CREATE TABLE list_before (
            roster INTEGER PRIMARY KEY,
            at TEXT NOT NULL,
            held TEXT NOT NULL)""",
    ),
    (
        # What a child is called where that is not the given name, which a list of next month may leave out; and the
        # whole name as such a list has it, in another script or with a slip.
        "ALTER TABLE children ADD COLUMN goes_by TEXT NOT NULL DEFAULT ''",
        "ALTER TABLE children ADD COLUMN also TEXT NOT NULL DEFAULT ''",
        """UPDATE children SET goes_by = practice WHERE practice NOT IN (given, family, trim(given || ' ' || family))
            AND NOT EXISTS (SELECT 1 FROM class_settings WHERE key = 'practise' AND value <> 'given')""",
    ),
    (
        # Lines of lists of which somebody said that they are right as they are read, each as a hash, so that the list
        # of next month does not ask again.
        """CREATE TABLE answered (
            id INTEGER PRIMARY KEY AUTOINCREMENT,
            hash TEXT NOT NULL UNIQUE)""",
    ),
)


def bring_up_to_date(connection: sqlite3.Connection, shown: str, migrations: Sequence[Migration] = MIGRATIONS) -> None:
    """Give a new or older file, called ``shown`` in sentences, the tables of today, in one transaction.

    Raises ClassbookError, with nothing changed, for a newer file and for another program's.
    """
    if _version(connection, shown, len(migrations)) == len(migrations):
        return
    connection.execute("BEGIN IMMEDIATE")
    try:
        # Looked at again under the lock: two programs may have opened a new file at the same moment.
        for number in range(_version(connection, shown, len(migrations)), len(migrations)):
            for statement in migrations[number]:
                connection.execute(statement)
        connection.execute(f"PRAGMA application_id = {APPLICATION_ID}")
        connection.execute(f"PRAGMA user_version = {len(migrations)}")
        connection.execute("COMMIT")
    except BaseException:
        if connection.in_transaction:  # a full disk has ended it already
            connection.execute("ROLLBACK")
        raise


def had_by(connection: sqlite3.Connection, migrations: Sequence[Migration] = MIGRATIONS) -> tuple[Migration, ...]:
    """Return the migrations that a file has had: none of a new one, nor of one that is not ours or too new for us."""
    version = pragma(connection, "user_version")
    known = pragma(connection, "application_id") == APPLICATION_ID and version <= len(migrations)
    return tuple(migrations[:version]) if known else ()


def foreign_parts(connection: sqlite3.Connection, had: Sequence[Migration]) -> list[tuple[str, str]]:
    """Return kind and name of each part that no class has: a trigger, a table that would keep a child from going."""
    ours = _parts(tuple(had))
    return [part for part in _parts_of(connection) if part not in ours]


def lacks_parts(connection: sqlite3.Connection, had: Sequence[Migration]) -> bool:
    """Say whether a part of every class is not there, or is another than ours: other columns, another rule."""
    ours, there = _parts(tuple(had)), _parts_of(connection)
    return any(there.get(part) != sql for part, sql in ours.items()) or (
        ("table", "class") in ours and connection.execute("SELECT count(*) FROM class").fetchone()[0] != 1)


@cache
def _parts(migrations: tuple[Migration, ...]) -> Mapping[tuple[str, str], str]:
    """Return what a file has after these migrations: as SQL, by kind and name."""
    with closing(sqlite3.connect(":memory:", isolation_level=None)) as fresh:
        for statement in chain.from_iterable(migrations):
            fresh.execute(statement)
        return _parts_of(fresh)


def _parts_of(connection: sqlite3.Connection) -> Mapping[tuple[str, str], str]:
    """Return the parts of a file, SQLite's own apart: as SQL, without what only parts its words, by kind and name.

    A name like SQLite's own is not enough: a trigger that was written into a file by hand may have one, and acts.
    """
    return {(str(kind), str(name)): " ".join(str(sql).split()) for kind, name, sql in connection.execute(
        "SELECT type, name, sql FROM sqlite_master WHERE NOT (type = 'index' AND sql IS NULL) "
        "AND NOT (type = 'table' AND name IN ('sqlite_sequence', 'sqlite_stat1', 'sqlite_stat4'))")}


def _version(connection: sqlite3.Connection, shown: str, newest: int) -> int:
    """Return how many migrations the file has had. Raises ClassbookError for one that is not for us."""
    ours = pragma(connection, "application_id") == APPLICATION_ID
    if not ours and not connection.execute("SELECT count(*) FROM sqlite_master").fetchone()[0]:
        return 0  # nothing in it yet
    if not ours:
        raise ClassbookError("classbook.other_program", file=shown)
    version = pragma(connection, "user_version")
    if version > newest:
        raise ClassbookError("classbook.newer", file=shown, version=version, newest=newest)
    return version


def pragma(connection: sqlite3.Connection, name: str) -> int:
    """Return a number that SQLite tells of a file."""
    return int(connection.execute(f"PRAGMA {name}").fetchone()[0])
