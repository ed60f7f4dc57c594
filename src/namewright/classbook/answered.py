"""Lines of lists that somebody looked at and said to be right as they are read, so that no later list asks again.

Only a hash of the line is kept, for a line that is no child is nothing that a class needs. All of them go when anybody
is erased, since a line may have held the name; those of a list that is taken back go with it.
"""

from __future__ import annotations

import sqlite3
from collections.abc import Iterable

from namewright.patterns import pattern

_MOST = 4000  # lines, of ten lists as long as the screen reads; what was seen longest ago is asked again
_MARK = pattern(r"[0-9a-f]{10}")


def marks(db: sqlite3.Connection) -> frozenset[str]:
    """Return the hashes of the lines that ask no more."""
    return frozenset(str(one) for (one,) in db.execute("SELECT hash FROM answered"))


def keep(db: sqlite3.Connection, settled: Iterable[str]) -> None:
    """Keep the hashes of lines of a list as the newest, and nothing else that is settled. Inside a transaction."""
    new = sorted(one for one in settled if _MARK.fullmatch(one))
    db.executemany("INSERT OR REPLACE INTO answered (hash) VALUES (?)", [(one,) for one in new])
    db.execute("DELETE FROM answered WHERE id NOT IN (SELECT id FROM answered ORDER BY id DESC LIMIT ?)", (_MOST,))
