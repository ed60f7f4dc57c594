"""A list that is being worked on: kept as it grows, with the steps that can be taken back, until it is saved.

It lies in the class's own file and not in the browser, since on a computer that several people use a browser would
leave names behind. Saving the list, giving it up and erasing anybody take it away.
"""

from __future__ import annotations

import sqlite3
from dataclasses import dataclass

from namewright.settings import NamePart

_MAX_STEPS = 40


@dataclass(frozen=True, slots=True)
class Draft:
    """A list as it was typed so far.

    ``part`` is what is practised, ``settled`` are keys of lines of which somebody said that they are right, ``whole``
    says that all of the list shall be kept, ``roster`` is the number of the list that it began from. ``steps`` tells
    how many steps can be taken back.
    """

    text: str
    part: NamePart
    settled: frozenset[str] = frozenset()
    whole: bool = False
    roster: int = 0
    steps: int = 0


def draft(db: sqlite3.Connection) -> Draft | None:
    """Return the list that is being worked on, None where there is none."""
    row = db.execute("SELECT text, practise, settled, whole, roster, (SELECT count(*) FROM drafts) - 1 "
                     "FROM drafts ORDER BY id DESC LIMIT 1").fetchone()
    if row is None:
        return None
    text, part, settled, whole, roster, steps = row
    known = part if part in tuple(NamePart) else NamePart.GIVEN
    return Draft(text, NamePart(known), frozenset(settled.split()), bool(whole), roster, steps)


def keep(db: sqlite3.Connection, kept: Draft, *, typed: bool) -> None:
    """Keep a draft as one more step; all that is ``typed`` on is one. Inside a transaction."""
    text = kept.text.encode(errors="replace").decode()  # a lone surrogate is no character and cannot be kept
    if typed:
        db.execute("DELETE FROM drafts WHERE id = (SELECT max(id) FROM drafts) AND typed")
    db.execute("INSERT INTO drafts (text, practise, settled, whole, roster, typed) VALUES (?, ?, ?, ?, ?, ?)",
               (text, kept.part, " ".join(sorted(kept.settled)), kept.whole, kept.roster, typed))
    db.execute("DELETE FROM drafts WHERE id <= (SELECT max(id) FROM drafts) - ?", (_MAX_STEPS,))


def step_back(db: sqlite3.Connection) -> None:
    """Take back the newest step where there is one before it. Inside a transaction."""
    db.execute("DELETE FROM drafts WHERE id = (SELECT max(id) FROM drafts) AND (SELECT count(*) FROM drafts) > 1")


def discard(db: sqlite3.Connection) -> None:
    """Give the draft up, with all its steps. Inside a transaction."""
    db.execute("DELETE FROM drafts")
