"""A class's file that is open: one connection, what is read of one moment, what is changed in one transaction.

Opening takes a few milliseconds, so a web request or a command opens its own; a connection belongs to the thread that
opened it.
"""

from __future__ import annotations

import sqlite3
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from types import TracebackType
from typing import Self

from namewright.classbook.connect import WAIT_S, Stamp, connected, stamp_of, told, transaction
from namewright.classbook.records import ClassbookError
from namewright.store import forget_names
from namewright.whole_files import clear_leftovers


class Opened:
    """An open class. Close it, or use it in a ``with`` block. Every method raises ClassbookError, in a sentence."""

    def __init__(self, path: Path, connection: sqlite3.Connection) -> None:
        self.path = path
        self._db = connection

    @classmethod
    def open(cls, path: Path | str, *, create: bool = True, wait_s: float = WAIT_S,
             known: Stamp | None = None) -> Self:
        """Open a class's file; where there is none it is made, unless ``create`` is false.

        One whose stamp is ``known`` was looked at before and is not looked at again.
        Raises ClassbookError for a file that is locked, damaged, of another kind or from a newer Namewright, for a
        folder, and for a folder that is not there.
        """
        path = Path(path)
        same = known is not None and stamp_of(path) == known
        return cls(path, connected(path, create=create, wait_s=wait_s, check=not same, whole=not same))

    def close(self) -> None:
        """Close the file; what was saved is in it."""
        self._db.close()

    def __enter__(self) -> Self:
        return self

    def __exit__(self, kind: type[BaseException] | None, error: BaseException | None,
                 trace: TracebackType | None) -> None:
        self.close()

    @contextmanager
    def changing(self) -> Iterator[None]:
        """Make several changes one: all of them are kept, or on an error none."""
        with told(self.path), transaction(self._db, "IMMEDIATE"):
            yield

    @contextmanager
    def _reading(self) -> Iterator[None]:
        with told(self.path), transaction(self._db, "DEFERRED"):
            yield

    @property
    def class_id(self) -> str:
        """Return the random name of this class: another file has another, and so has a class begun afresh."""
        with self._reading():
            return str(self._db.execute("SELECT id FROM class").fetchone()[0])

    def copy(self) -> bytes:
        """Return the whole file of the class as it is at this moment."""
        with self._reading():
            return bytes(self._db.serialize())

    @property
    def erasures(self) -> int:
        """Return how often something was erased: where that grows, what was read before may be of who is gone."""
        with self._reading():
            return int(self._db.execute("SELECT erasures FROM class").fetchone()[0])

    def _pack(self) -> None:
        """Leave no bytes of what was erased in the file, in what a killed run left beside it, nor in memory."""
        forget_names()
        clear_leftovers(self.path.parent)
        try:
            self._db.execute("VACUUM")
        except sqlite3.Error as error:
            raise ClassbookError("classbook.not_packed", file=str(self.path), detail=str(error)) from error
