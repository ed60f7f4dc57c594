"""The file of a class: opening it safely, one transaction a change, and errors told with what to do.

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
from namewright.classbook.schema import MIGRATIONS, Migration, bring_up_to_date, pragma
from namewright.classbook.values import check_parts, check_values

WAIT_S = 5.0
LOOK_S = 1.5  # a save of ours is over long before: what keeps a file from being read for longer will not end soon
_SETTINGS = ("foreign_keys = ON", "synchronous = EXTRA", "temp_store = MEMORY", "secure_delete = ON",
             "trusted_schema = OFF")
# By SQLite's own primary result codes (sqlite.org/rescode.html).
_REASONS = {
    sqlite3.SQLITE_BUSY: "classbook.busy", sqlite3.SQLITE_LOCKED: "classbook.locked",
    sqlite3.SQLITE_READONLY: "classbook.read_only", sqlite3.SQLITE_NOTADB: "classbook.no_class",
    sqlite3.SQLITE_CORRUPT: "classbook.damaged", sqlite3.SQLITE_CANTOPEN: "classbook.cannot_open",
    sqlite3.SQLITE_FULL: "classbook.disk_full", sqlite3.SQLITE_PERM: "classbook.not_allowed",
}


@contextmanager
def told(path: Path) -> Iterator[None]:
    """Turn what SQLite raises inside the block into a ClassbookError."""
    try:
        yield
    except UnicodeError as error:  # of SQLite's own message about a file, which repeats what is in it
        raise ClassbookError(_REASONS[sqlite3.SQLITE_CORRUPT], file=str(path)) from error
    except sqlite3.Error as error:
        code = getattr(error, "sqlite_errorcode", sqlite3.SQLITE_ERROR) & 0xFF
        if code in _REASONS:
            raise ClassbookError(_REASONS[code], file=str(path)) from error
        raise ClassbookError("classbook.unreadable", file=str(path), detail=str(error)) from error


def connected(path: Path, *, create: bool = True, wait_s: float = WAIT_S,
              migrations: Sequence[Migration] = MIGRATIONS, check: bool = True,
              whole: bool = True) -> sqlite3.Connection:
    """Open the class's file, made first where there is none and ``create`` says so, its tables up to date.

    ``wait_s`` is how long, in seconds, a change waits for another program; a first look waits for a shorter time, so
    that nobody sits before an empty screen. ``migrations`` are all that there are, or
    fewer for a file to be filled as an older Namewright would have. Without ``check`` the values in the file are not
    looked at; without ``whole`` neither is whether every page of it holds together, as for a file that was looked at
    before and has the same ``stamp_of``. Raises ClassbookError.
    """
    made = _check_place(path, create)
    with told(path):
        connection = sqlite3.connect(f"{path.absolute().as_uri()}?mode=rw", uri=True,
                                     timeout=min(wait_s, LOOK_S), isolation_level=None)
        try:
            for setting in _SETTINGS:
                connection.execute(f"PRAGMA {setting}")
            if check:  # first, since an index of somebody else's may keep the look at the whole file busy for long
                check_parts(connection, str(path), migrations)
            _check_whole(path, connection, thoroughly=whole)
            bring_up_to_date(connection, str(path), migrations)
            _leave_wal(connection)
            if check:
                check_values(connection, str(path))
            connection.execute(f"PRAGMA busy_timeout = {wait_s * 1000:.0f}")
        except BaseException:
            connection.close()
            _unmake(path, made)
            raise
    return connection


Stamp = tuple[int, int, int, bytes]


def stamp_of(path: Path) -> Stamp | None:
    """Return what is another after every change of a class's file, None where it cannot be read.

    SQLite counts the changes in the header (bytes 24 to 27; sqlite.org/fileformat2.html).
    """
    try:
        with path.open("rb") as file:
            at = os.fstat(file.fileno())
            return at.st_ino, at.st_size, at.st_mtime_ns, file.read(28)[24:]
    except OSError:
        return None


def _check_whole(path: Path, connection: sqlite3.Connection, *, thoroughly: bool) -> None:
    """Raise ClassbookError for a file shorter than its own header says: SQLite forgives a torn last page."""
    with transaction(connection, "DEFERRED"):  # nobody writes to the file meanwhile
        connection.execute("SELECT count(*) FROM sqlite_master").fetchone()  # takes the lock, mends after a kill
        if path.stat().st_size < pragma(connection, "page_count") * pragma(connection, "page_size"):
            raise ClassbookError(_REASONS[sqlite3.SQLITE_CORRUPT], file=str(path))
        # an index that tells another story than its table
        if thoroughly and connection.execute("PRAGMA integrity_check(1)").fetchone()[0] != "ok":
            raise ClassbookError(_REASONS[sqlite3.SQLITE_CORRUPT], file=str(path))


def _check_place(path: Path, create: bool) -> bool:
    """Look at where a class shall be and make its empty file if need be; return whether it was made."""
    if path.is_dir():
        raise ClassbookError("classbook.folder", file=str(path), example=str(path / "class.db"))
    if not path.parent.is_dir():
        raise ClassbookError("classbook.no_folder", folder=str(path.parent), file=path.name)
    if not path.exists():
        if not create:
            raise ClassbookError("classbook.none_there", file=str(path))
        _make(path)
        return True
    if not path.is_file():
        raise ClassbookError("classbook.no_file", file=str(path))
    if not create and path.stat().st_size == 0:
        raise ClassbookError("classbook.empty", file=str(path))
    return False


def _unmake(path: Path, made: bool) -> None:
    """Take away an empty file that was made here and could not become a class, as on a full disk."""
    with suppress(OSError):
        if made and path.stat().st_size == 0:
            path.unlink()


def _make(path: Path) -> None:
    """Make an empty file that only its owner may read; SQLite takes it for a new database."""
    try:
        with suppress(FileExistsError):  # another program was as quick; its file is as good
            os.close(os.open(path, os.O_CREAT | os.O_EXCL | os.O_RDWR, 0o600))
    except OSError as error:
        raise ClassbookError("classbook.cannot_make", file=str(path)) from error


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
