"""Erasing children, or the whole class, for good: for a family that asks for it, and for the end of a year.

A name stands in many places: in every list that was ever pasted, in the child's settings with their history, in
notes. All of them go. The older lists go whole, since nothing else needs them. What others' notes say stays, for
it is about others; where it holds the name, it is told, for an adult to look at. Out of scope: copies, exports and
PDFs, which are files of their own, and what a disk itself remembers of a file's earlier content.
"""

from __future__ import annotations

import re
import sqlite3
from collections.abc import Collection, Iterable, Mapping
from dataclasses import dataclass
from datetime import datetime

from namewright.classbook.records import ClassbookError
from namewright.classbook.rosters import newest_roster, take_roster
from namewright.roster.children import Roster, RosterError
from namewright.roster.parsing import read_roster
from namewright.roster.vocabulary import fold
from namewright.settings import NamePart

_OF_CHILDREN = (
    "DELETE FROM seats WHERE ?1 IN (one, other)",
    "DELETE FROM groups WHERE child_id = ?",
    "DELETE FROM observations WHERE child_id = ?",
    "DELETE FROM settings WHERE child_id = ?",
    "DELETE FROM changes WHERE save_id IN (SELECT id FROM saves WHERE child_id = ?)",
    "DELETE FROM saves WHERE child_id = ?",
    "DELETE FROM children WHERE id = ?",
)
_OF_ALL = ("seats", "taught", "groups", "observations", "settings", "changes", "saves", "children", "rosters",
           "class_settings")


@dataclass(frozen=True, slots=True)
class Erased:
    """How many children were erased, and where a name still stands: labels of others with a note, lines of the list."""

    children: int
    notes_about: tuple[str, ...] = ()
    lines: tuple[int, ...] = ()


def erase(db: sqlite3.Connection, child_ids: Collection[int], part: NamePart, who: str,
          when: datetime | str | None) -> Erased:
    """Erase children and read what is left of the list again. Inside a transaction.

    Raises ClassbookError for a child that is not known.
    """
    names = [_names(db, child_id) for child_id in sorted(child_ids)]
    text, on_line = _without(db, child_ids, part)
    for child_id in child_ids:
        for statement in _OF_CHILDREN:
            db.execute(statement, (child_id,))
    db.execute("DELETE FROM rosters")
    roster = take_roster(db, text, part, who, when, on_line, None).roster if text else None
    word = _word(name for each in names for name in each)
    db.executemany("UPDATE observations SET note = '' WHERE id = ?",
                   [(note_id,) for note_id, note in db.execute("SELECT id, note FROM observations WHERE struck_at "
                                                               "IS NOT NULL").fetchall() if word.search(fold(note))])
    return Erased(len(names), _labels(db, word), _lines(roster, word))


def erase_all(db: sqlite3.Connection) -> None:
    """Empty every table and draw another name for the class. Inside a transaction."""
    for table in _OF_ALL:
        db.execute(f"DELETE FROM {table}")
    db.execute("UPDATE class SET id = lower(hex(randomblob(16)))")


def _names(db: sqlite3.Connection, child_id: int) -> tuple[str, ...]:
    row = db.execute("SELECT given, practice FROM children WHERE id = ?", (child_id,)).fetchone()
    if row is None:
        raise ClassbookError("classbook.no_child_to_erase")
    return tuple(str(name) for name in row if name)


def _without(db: sqlite3.Connection, child_ids: Collection[int], part: NamePart) -> tuple[str, Mapping[int, int]]:
    """Return the newest list without the lines of these children, and who then stands on which line.

    The text is empty where no child would be left on it.
    """
    on_line = dict(db.execute("SELECT line, id FROM children WHERE left_at IS NULL"))
    text, kept, moved = newest_roster(db)[1], [], {}
    if not set(on_line.values()) - set(child_ids):
        return "", {}
    if set(child_ids).isdisjoint(on_line.values()):
        return text, on_line
    for report in read_roster(text, "the list", part).lines:
        child_id = on_line.get(report.child.line) if report.child else None
        if child_id in child_ids:
            continue
        kept.append(report.text)
        if report.child and child_id and report.child.line == report.line:
            moved[len(kept)] = child_id
    return _readable("\n".join([*kept, ""]), part), moved


def _readable(text: str, part: NamePart) -> str:
    try:
        read_roster(text, "the list", part)
    except RosterError:
        return ""
    return text


def _word(names: Iterable[str]) -> re.Pattern[str]:
    """Return a pattern for any of the names as a word of its own, in folded text."""
    folded = sorted({fold(name) for name in names if fold(name)})
    return re.compile(rf"(?<!\w)(?:{'|'.join(map(re.escape, folded)) or '(?!)'})(?!\w)")


def _labels(db: sqlite3.Connection, word: re.Pattern[str]) -> tuple[str, ...]:
    rows = db.execute("SELECT label, note FROM observations JOIN children ON children.id = child_id "
                      "WHERE struck_at IS NULL ORDER BY label, observations.id")
    return tuple(dict.fromkeys(label for label, note in rows if word.search(fold(note))))


def _lines(roster: Roster | None, word: re.Pattern[str]) -> tuple[int, ...]:
    """Return the lines that are not a child's own and hold a name that was erased, such as a heading."""
    return tuple(report.line for report in roster.lines if report.child is None and word.search(fold(report.text))
                 ) if roster else ()
