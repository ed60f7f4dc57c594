"""The file of a class: opening it safely, one transaction a change, and errors in a sentence.

Why a rollback journal and not write-ahead logging: a class is one file to copy, also while the program runs. With
WAL the newest changes stand in a second file until a checkpoint, and a copy of the first alone would lose them. Here
the file is whole whenever no save is under way; a save that was cut off leaves a ``-journal`` beside it, from which
the next opening restores the state before that save. A class is written a few times a minute at most, so the
speed of WAL is not missed. ``synchronous = EXTRA`` makes a finished save survive a power cut too.

The file is made readable for its owner alone (0600); the journal gets the same rights from SQLite, and SQLite's own
scratch data stays in memory. What is overwritten is zeroed (``secure_delete``), since names are private.
"""

from __future__ import annotations

import os
import sqlite3
from collections.abc import Iterator, Sequence
from contextlib import contextmanager, suppress
from pathlib import Path

from namewright.classbook.records import ClassbookError
from namewright.classbook.schema import MIGRATIONS, Migration, bring_up_to_date

WAIT_S = 5.0
_SETTINGS = ("foreign_keys = ON", "synchronous = EXTRA", "temp_store = MEMORY", "secure_delete = ON",
             "trusted_schema = OFF")
# By SQLite's own primary result codes (sqlite.org/rescode.html).
_SENTENCES = {
    sqlite3.SQLITE_BUSY: "{path} is in use by another program and did not come free; close it there or try again "
                         "in a moment. Nothing was changed.",
    sqlite3.SQLITE_LOCKED: "{path} is in use by another program; try again in a moment. Nothing was changed.",
    sqlite3.SQLITE_READONLY: "{path} can be read but not changed; allow writing to it, or copy it to a folder of "
                             "your own. Nothing was changed.",
    sqlite3.SQLITE_NOTADB: "{path} is not a class of Namewright; choose another file. Nothing in it was changed.",
    sqlite3.SQLITE_CORRUPT: "{path} is damaged, perhaps cut short while it was copied; use a copy from before. "
                            "Nothing in it was changed.",
    sqlite3.SQLITE_CANTOPEN: "{path} cannot be opened or changed; check that you may read it and write in its folder. "
                             "Nothing was changed.",
    sqlite3.SQLITE_FULL: "There is no room left on the disk for {path}; free some and save again. Nothing was changed.",
    sqlite3.SQLITE_PERM: "{path} may not be used by you; ask whoever looks after this computer.",
}
_ANY = "{path} could not be read or written ({error}); try again, or use a copy. Nothing was changed."


@contextmanager
def in_a_sentence(path: Path) -> Iterator[None]:
    """Turn what SQLite raises inside the block into a ClassbookError."""
    try:
        yield
    except sqlite3.Error as error:
        code = getattr(error, "sqlite_errorcode", sqlite3.SQLITE_ERROR) & 0xFF
        words = _SENTENCES.get(code, _ANY)
        raise ClassbookError(words.format(path=path, error=error)) from error


def connected(path: Path, *, create: bool = True, wait_s: float = WAIT_S,
              migrations: Sequence[Migration] = MIGRATIONS) -> sqlite3.Connection:
    """Open the class's file, made first where there is none and ``create`` says so, its tables up to date.

    ``wait_s`` is how long, in seconds, a change waits for another program. ``migrations`` are all that there are, or
    fewer for a file to be filled as an older Namewright would have. Raises ClassbookError.
    """
    _check_place(path, create)
    with in_a_sentence(path):
        connection = sqlite3.connect(f"{path.absolute().as_uri()}?mode=rw", uri=True, timeout=wait_s,
                                     isolation_level=None)
        try:
            for setting in _SETTINGS:
                connection.execute(f"PRAGMA {setting}")
            _check_whole(path, connection)
            bring_up_to_date(connection, str(path), migrations)
            _leave_wal(connection)
        except BaseException:
            connection.close()
            raise
    return connection


def _check_whole(path: Path, connection: sqlite3.Connection) -> None:
    """Raise ClassbookError for a file shorter than its own header says: SQLite forgives a torn last page."""
    with transaction(connection, "DEFERRED"):  # nobody writes to the file meanwhile
        connection.execute("SELECT count(*) FROM sqlite_master").fetchone()  # takes the lock, mends after a kill
        if path.stat().st_size < _number(connection, "page_count") * _number(connection, "page_size"):
            raise ClassbookError(_SENTENCES[sqlite3.SQLITE_CORRUPT].format(path=path))


def _number(connection: sqlite3.Connection, pragma: str) -> int:
    return int(connection.execute(f"PRAGMA {pragma}").fetchone()[0])


def _check_place(path: Path, create: bool) -> None:
    if path.is_dir():
        raise ClassbookError(f"{path} is a folder; name a file in it, such as {path / 'class.db'}.")
    if not path.parent.is_dir():
        raise ClassbookError(f"There is no folder {path.parent} for {path.name}; make it first.")
    if not path.exists():
        if not create:
            raise ClassbookError(f"There is no class in {path}; check the name, or make the class from its list first.")
        _make(path)
    elif not create and path.stat().st_size == 0:
        raise ClassbookError(f"{path} is empty, so there is no class in it; if it was copied, copy it again.")


def _make(path: Path) -> None:
    """Make an empty file that only its owner may read; SQLite takes it for a new database."""
    try:
        with suppress(FileExistsError):  # another program was as quick; its file is as good
            os.close(os.open(path, os.O_CREAT | os.O_EXCL | os.O_RDWR, 0o600))
    except OSError as error:
        raise ClassbookError(f"{path} cannot be made ({error.strerror}); "
                             "check that you may write in its folder.") from error


def _leave_wal(connection: sqlite3.Connection) -> None:
    """Bring a file that another tool has put into write-ahead logging back to one file."""
    if connection.execute("PRAGMA journal_mode").fetchone()[0] == "wal":
        connection.execute("PRAGMA journal_mode = DELETE")


@contextmanager
def transaction(connection: sqlite3.Connection, kind: str) -> Iterator[None]:
    """Hold one transaction, IMMEDIATE to change and DEFERRED to read; inside another it is part of that one.

    An error takes back everything since the outermost began.
    """
    if connection.in_transaction:
        yield
        return
    connection.execute(f"BEGIN {kind}")
    try:
        yield
        connection.execute("COMMIT")
    except BaseException:
        if connection.in_transaction:
            connection.execute("ROLLBACK")
        raise
