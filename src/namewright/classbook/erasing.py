"""Erasing children, or the whole class, for good: for a family that asks for it, and for the end of a year.

A name stands in many places: in the list, in the child's settings with their history, in notes. All of what is kept
of the child goes, and every place where given and family name stand together. What only may be the child's name
(``traces``) is told before and after, and goes too where an adult says so. Out of scope: copies, exports and PDFs,
which are files of their own, and what a disk itself remembers of a file's earlier content.
"""

from __future__ import annotations

import sqlite3
from collections.abc import Callable, Collection, Iterator, Mapping
from dataclasses import dataclass

from namewright.classbook.joining import FORGETTING
from namewright.classbook.records import By, ClassbookError
from namewright.classbook.rosters import NewList, is_whole, newest_roster, on_lines, take_roster
from namewright.classbook.traces import Called, Place, Sought, Trace, own_words, sought, stands, without
from namewright.roster.children import Child, LineReport, Outcome, RosterError
from namewright.roster.parsing import LIST, read_roster
from namewright.settings import NamePart

PASSING = ("drafts", "list_before", "answered")
"""What holds lists, or is made of their lines, and is no part of the class: none of it outlives an erasing."""
_OF_ALL = ("seats", "taught", "groups", "observations", "settings", "changes", "saves", "children", "rosters",
           "class_settings", *PASSING)
# Where who did something stands, with what tells the rows that go anyway.
_WHO = {"saves": "child_id", "observations": "child_id", "rosters": "NULL"}


@dataclass(frozen=True, slots=True)
class Erased:
    """How many children were erased, and where a name still stands that may be theirs."""

    children: int
    standing: tuple[Trace, ...] = ()


def traces(db: sqlite3.Connection, child_ids: Collection[int], part: NamePart) -> tuple[Trace, ...]:
    """Return where names that may be these children's stand besides in what is kept of them; nothing is changed.

    Raises ClassbookError for a child that is not known.
    """
    text, _ = without_children(db, child_ids, part)
    return tuple(_standing(db, child_ids, _sought(db, child_ids), text, part))


def erase(db: sqlite3.Connection, child_ids: Collection[int], part: NamePart, by: By,
          also: Collection[str] = ()) -> Erased:
    """Erase children and read what is left of the list again. Inside a transaction.

    ``also`` are keys of ``traces`` from which the names are taken out too. Raises ClassbookError for a child that is
    not known.
    """
    names = _sought(db, child_ids)
    whole = is_whole(db)
    text, on_line = without_children(db, child_ids, part)
    chosen = {trace.key for trace in _standing(db, child_ids, names, text, part) if trace.key in also}
    for child_id in child_ids:
        for statement in FORGETTING:
            db.execute(statement, (child_id,))
    _clean(db, names, chosen)
    text = _clean_list(text, part, names, chosen)
    for table in ("rosters", *PASSING):
        db.execute(f"DELETE FROM {table}")
    if text:
        by = by._replace(who=without(by.who, names.surely))
        take_roster(db, NewList(text, on_line, whole=whole), part, by, as_it_is=True)
    db.execute("UPDATE class SET erasures = erasures + 1")
    return Erased(len(child_ids), tuple(_standing(db, (), names, newest_roster(db)[1], part)))


def erase_all(db: sqlite3.Connection) -> None:
    """Empty every table and draw another name for the class. Inside a transaction."""
    for table in _OF_ALL:
        db.execute(f"DELETE FROM {table}")
    db.execute("UPDATE class SET id = lower(hex(randomblob(16))), erasures = erasures + 1")


def _sought(db: sqlite3.Connection, child_ids: Collection[int]) -> Sought:
    everyone = {one: names for one, *names in db.execute(
        "SELECT id, given, family, practice, goes_by, also FROM children")}
    if not everyone.keys() >= set(child_ids):
        raise ClassbookError("classbook.no_child_to_erase")
    called = {one: Called(given, family, (*others, *_practised(db, one)))
              for one, (given, family, *others) in everyone.items()}
    return sought([called[one] for one in child_ids], [called[one] for one in called.keys() - set(child_ids)])


def _practised(db: sqlite3.Connection, child_id: int) -> tuple[str, ...]:
    """Return the names that a child was seen to write."""
    return tuple(name for (name,) in db.execute("SELECT DISTINCT name FROM observations WHERE child_id = ?",
                                                (child_id,)))


# --- the list ------------------------------------------------------------------------------------------


def without_children(db: sqlite3.Connection, child_ids: Collection[int],
                     part: NamePart) -> tuple[str, Mapping[int, int]]:
    """Return the list without the lines of these children, and who then stands on which line.

    The text is empty where no child would be left on it.
    """
    on_line = on_lines(db)
    text, kept, moved, nobody = newest_roster(db)[1], [], {}, set()
    if not set(on_line.values()) - set(child_ids):
        return "", {}
    if set(child_ids).isdisjoint(on_line.values()):
        return text, on_line
    for report in _reports(text, part):
        child_id = on_line.get(report.child.line) if report.child else None
        if child_id in child_ids:
            continue
        kept.append(report.text)
        if report.child and child_id and report.child.line == report.line:
            moved[len(kept)] = child_id
        elif report.child is None:
            nobody.add(len(kept))
    text = _without_new(kept, nobody, part)
    return (text if _reports(text, part) else ""), moved


def _without_new(lines: list[str], nobody: Collection[int], part: NamePart) -> str:
    """Return lines as a list, without those that were nobody's and are a child's now that others beside them go."""
    now = {report.line for report in _reports("\n".join([*lines, ""]), part) if report.child}
    return "\n".join(["" if at in now and at in nobody else line for at, line in enumerate(lines, 1)] + [""])


def _reports(text: str, part: NamePart) -> tuple[LineReport, ...]:
    """Return how a list is read, line by line; nothing where there is no child in it."""
    try:
        return read_roster(text, LIST, part).lines if text else ()
    except RosterError:
        return ()


def _clean_list(text: str, part: NamePart, names: Sought, chosen: Collection[str]) -> str:
    """Return a list without the names, line by line; the children on it stay who they are.

    A line of whose child another would be read then stays as it is, and is told as one where a name stands. One of
    nobody that would then be a child's goes: what is left of ``Leavers: Zaphréa Quorndike`` names nobody.
    """
    reports, lines = _reports(text, part), []
    for report in reports:
        here = _line(report).key in chosen
        lines.append("" if here and report.outcome is Outcome.LEFT_OUT else
                     without(report.text, names.may if here else names.surely, _own(report.child)))
    now = {report.line: report.child for report in _reports("\n".join([*lines, ""]), part)}
    kept = [line if now.get(report.line) == report.child else report.text if report.child else ""
            for line, report in zip(lines, reports, strict=True)]
    return "\n".join([*kept, ""]) if kept else ""


def _line(report: LineReport) -> Trace:
    return Trace(Place.LINE, report.text, line=report.line)


def _own(child: Child | None) -> frozenset[str]:
    return own_words((child.given, child.family, child.practice)) if child else frozenset()


# --- everything else -----------------------------------------------------------------------------------


def _standing(db: sqlite3.Connection, child_ids: Collection[int], names: Sought, text: str,
              part: NamePart) -> Iterator[Trace]:
    """Yield where a name stands that may be that of one of these children; ``text`` is the list that stays."""
    for trace in _everywhere(db, child_ids):
        if _may_be(trace.text, names):
            yield trace
    for report in _reports(text, part):
        if _may_be(report.text, names, _own(report.child)):
            yield _line(report)


def _may_be(text: str, names: Sought, own: Collection[str] = ()) -> bool:
    """Say whether a name stands in a text that is not taken out anyway."""
    return stands(without(text, names.surely, own), names.may, own)


def _everywhere(db: sqlite3.Connection, child_ids: Collection[int]) -> Iterator[Trace]:
    """Yield every text that somebody typed, the list and what is kept of these children apart."""
    for child_id, label, day, note in db.execute(
            "SELECT child_id, label, date, note FROM observations JOIN children ON children.id = child_id "
            "WHERE struck_at IS NULL ORDER BY label, date, observations.id"):
        if child_id not in child_ids:
            yield Trace(Place.NOTE, note, label, day)
    said = [who for table, whose in _WHO.items() for who, whom in db.execute(f"SELECT who, {whose} FROM {table}")
            if whom not in child_ids]
    yield from (Trace(Place.WHO, who) for who in dict.fromkeys(said))
    titles = db.execute("SELECT value FROM class_settings WHERE key = 'title' UNION "
                        "SELECT before FROM changes WHERE key = 'title' UNION "
                        "SELECT after FROM changes WHERE key = 'title'")
    yield from (Trace(Place.TITLE, title) for (title,) in titles.fetchall() if title)


def _clean(db: sqlite3.Connection, names: Sought, chosen: Collection[str]) -> None:
    """Take the names out of what stays: where they surely mean a child who is erased, and where an adult chose it."""
    for note_id, label, day, note, struck in db.execute(
            "SELECT observations.id, label, date, note, struck_at FROM observations "
            "JOIN children ON children.id = child_id").fetchall():
        taken = names.may if struck or Trace(Place.NOTE, note, label, day).key in chosen else names.surely
        _set(db, "UPDATE observations SET note = ?1 WHERE id = ?2", note, without(note, taken), note_id)

    def cleaned(place: Place) -> Callable[[str | None], str | None]:
        return lambda text: text and without(text, names.may if Trace(place, text).key in chosen else names.surely)

    for table in _WHO:
        _each(db, table, "who", cleaned(Place.WHO))
    for column in ("before", "after"):
        _each(db, "changes", column, cleaned(Place.TITLE), "key = 'title'")
    _each(db, "class_settings", "value", cleaned(Place.TITLE), "key = 'title'")


def _each(db: sqlite3.Connection, table: str, column: str, change: Callable[[str | None], str | None],
          where: str = "1") -> None:
    for row, text in db.execute(f"SELECT rowid, {column} FROM {table} WHERE {where}").fetchall():
        _set(db, f"UPDATE {table} SET {column} = ?1 WHERE rowid = ?2", text, change(text), row)


def _set(db: sqlite3.Connection, statement: str, before: str | None, after: str | None, row: int) -> None:
    if before != after:
        db.execute(statement, (after, row))
