"""A roster taken into the database, and its children taken out again.

What is needed of its text is kept, and no child is deleted by a new one. Only the newest list is kept, since nothing
needs the older ones; it is kept whole, with all that stands in it, only where an adult asks for that.
"""

from __future__ import annotations

import sqlite3
from collections.abc import Callable, Mapping, Sequence, Set
from dataclasses import replace
from types import MappingProxyType
from typing import Any

from namewright.classbook import list_before, saves
from namewright.classbook.enrol import NEW, Enrolment, doubles, enrol
from namewright.classbook.facts import facts_in_common
from namewright.classbook.going_on import (
    LISTED,
    Saying,
    called,
    is_other_script,
    is_written_alike,
    relabelled,
    saying,
    whole_name,
)
from namewright.classbook.joining import join
from namewright.classbook.known_lines import KNOWN_LINE, read_known
from namewright.classbook.needed import needed
from namewright.classbook.records import (
    MAX_WHO,
    BookChild,
    By,
    ClassbookError,
    RosterUpdate,
    checked_moment,
    checked_text,
)
from namewright.classbook.who import Known
from namewright.message import message
from namewright.named_tuples import NamedTuple
from namewright.roster.children import Child, Roster
from namewright.roster.labels import shared
from namewright.roster.parsing import LIST, read_roster
from namewright.roster.written import WORDS
from namewright.settings import Hand, NamePart, Support
from namewright.tuning import tuning_of


class Answers(NamedTuple):
    """What an adult said of lines of a list, by number.

    ``meant`` are those whose names are meant as they stand, ``keeps`` those whose children go on as the class writes
    them, ``also`` the whole names that stood, in another script, on lines that were written anew.
    """

    meant: frozenset[int] = frozenset()
    keeps: frozenset[int] = frozenset()
    also: Mapping[int, str] = MappingProxyType({})


NO_ANSWERS = Answers()
NOBODY: Mapping[int, int] = MappingProxyType({})


class NewList(NamedTuple):
    """A list that the class shall take.

    ``same`` says which child (id) stands on which line, where that is known, ``answers`` what was said of lines
    besides. ``words`` stand over the columns of what is kept of it; ``whole`` keeps all of it. ``after_roster`` refuses
    it if the newest roster is not the one of this number, unless that says the same.
    """

    text: str
    same: Mapping[int, int] = NOBODY
    answers: Answers = NO_ANSWERS
    words: Mapping[str, str] = WORDS
    whole: bool = False
    after_roster: int | None = None


class _Row(NamedTuple):
    """A child of a roster, where it stands in the text that is kept, what it goes by, its name in another script."""

    child: Child
    line: int
    goes_by: str
    also: str


def newest_roster(db: sqlite3.Connection) -> tuple[int, str]:
    """Return number and text of the newest roster; 0 and empty where there is none."""
    row = db.execute("SELECT id, text FROM rosters ORDER BY id DESC LIMIT 1").fetchone()
    return (int(row[0]), str(row[1])) if row else (0, "")


def is_whole(db: sqlite3.Connection) -> bool:
    """Say whether the newest roster is kept whole, as an adult asked."""
    row = db.execute("SELECT whole FROM rosters ORDER BY id DESC LIMIT 1").fetchone()
    return bool(row and row[0])


def take_roster(db: sqlite3.Connection, new: NewList, part: NamePart, by: By, *, as_it_is: bool = False,
                joins: bool = False) -> RosterUpdate:
    """Read a roster, keep what is needed of it if that is new, and enrol its children. Inside a transaction.

    ``joins`` makes one child of two, with all that is kept of both, where ``new.same`` says that they are; else the
    double has left, or is gone where nothing is kept of it. ``as_it_is`` keeps the text as it stands: it was
    kept before, as what is needed of it.
    """
    text = new.text.encode(errors="replace").decode()  # a lone surrogate is no character and cannot be kept
    at = checked_moment(by.when)
    before = newest_roster(db)[1]
    names_in = saves.class_settings(db).get("names_in", "")
    known = everyone(db)
    roster = read_known(text, lambda tried: read_roster(tried, LIST, part, names_in=names_in), known)
    text = roster.text or text  # a line for each child, so that a child stands on one line and a line for one child
    said = saying(roster, text, before, whole=is_whole(db), meant=new.answers.meant, keeps=new.answers.keeps)
    found, typed = _matched(db, roster, known, new.same, before if is_whole(db) else "", said), roster.children
    found.notes.extend(dict.fromkeys(note for line in roster.lines for note in line.notes if note.key == KNOWN_LINE))
    if found.more:
        roster = roster._replace(children=relabelled([found.more.get(one.line, one) for one in roster.children]))
    as_known = _as_known(found, known, said)
    kept, lines = (text, [one.line for one in roster.children]) if new.whole or as_it_is else needed(
        text, roster, part, names_in, new.words, as_known)
    _keep(db, kept, by.who, at, new.after_roster, whole=new.whole)
    by_given = roster.children if part is not NamePart.FAMILY else tuple(
        map(as_known, read_roster(text, LIST, NamePart.GIVEN, names_in=names_in).children))
    also = _also(roster.children, found, known, new.answers)
    rows = [_Row(child, line, called(given), also.get(child.line, ""))
            for child, line, given in zip(roster.children, lines, by_given, strict=True)]
    return _enrolled(db, roster, rows, at, known, found, new.same, typed, joins=joins)


def _keep(db: sqlite3.Connection, text: str, who: str, at: str, after_roster: int | None, *, whole: bool) -> None:
    """Keep a text in place of the newest roster, unless it says the same; ``at`` is a moment that was checked.

    Raises ClassbookError where the newest is another than ``after_roster``, and for a ``who`` that is too long.
    """
    newest, before = newest_roster(db)
    if newest > 0 and (text, whole) == (before, is_whole(db)):
        return
    if after_roster is not None and newest != after_roster:
        raise ClassbookError("classbook.list_meanwhile")
    db.execute("DELETE FROM rosters")
    db.execute("INSERT INTO rosters (text, who, at, whole) VALUES (?, ?, ?, ?)",
               (text, checked_text(who, MAX_WHO, "long_who"), at, whole))


def everyone(db: sqlite3.Connection) -> list[Known]:
    """Return everyone whom the class knows, those who are here first, in roster order."""
    rows = db.execute(f"SELECT id, given, family, practice, label, left_at IS NULL, goes_by, also, {', '.join(LISTED)} "
                      "FROM children ORDER BY left_at IS NOT NULL, line, id")
    return [Known(id_, given, family, practice, label, bool(here), goes_by, also, _listed(listed))
            for id_, given, family, practice, label, here, goes_by, also, *listed in rows]


def _listed(row: Sequence[Any]) -> Mapping[str, Any]:
    listed = dict(zip(LISTED, row, strict=True))
    kinds = {"support": Support, "hand": Hand}
    return listed | {key: kind(listed[key]) for key, kind in kinds.items() if listed[key]}


def _matched(db: sqlite3.Connection, roster: Roster, known: Sequence[Known], same: Mapping[int, int], before: str,
             said: Saying) -> Enrolment:
    """Return who stands on which line of a list.

    ``before`` is the list of before with all that stands in it, where that is kept.
    """
    facts = facts_in_common(before.splitlines(), on_lines(db), roster) if before else ()
    return enrol(roster.children, known, _once_each(same, {one.id for one in known}), facts, said)


def _as_known(found: Enrolment, known: Sequence[Known], said: Saying) -> Callable[[Child], Child]:
    """Return what gives a child of the list as the class knows it, for whatever part of the name it was read."""
    by_id = {one.id: one for one in known}
    old = {line: by_id[id_] for line, id_ in found.ids.items()}
    return lambda child: said.as_known(child, old[child.line]) if child.line in old else child


def _also(children: Sequence[Child], found: Enrolment, known: Sequence[Known],
          answers: Answers) -> dict[int, str]:
    """Return, by line, whole names that lists are known to have for children whose name is another.

    One in another script, of a child whom the class has in Latin letters, goes before one with a slip.
    """
    by_id = {one.id: one for one in known}
    also = {}
    for child in children:
        old, typed = by_id.get(found.ids.get(child.line, NEW)), found.typed.get(child.line, "")
        before, kept = (whole_name(old), old.also) if old else ("", "")
        scripts = (name for name in (typed, answers.also.get(child.line, ""), before, kept) if is_other_script(name))
        other = "" if is_other_script(child.given or child.family) else next(scripts, "")
        if not other:
            other = typed if child.line in answers.keeps else kept
        if other and not is_written_alike(other, whole_name(child)):
            also[child.line] = other
    return also


def read_again(db: sqlite3.Connection, part: NamePart, by: By) -> None:
    """Read the same roster for another part of the name; everyone stays who they are."""
    _, text = newest_roster(db)
    if text:
        take_roster(db, NewList(text, on_lines(db), whole=is_whole(db)), part, by, as_it_is=True)


def on_lines(db: sqlite3.Connection) -> Mapping[int, int]:
    """Return who of those who are here, by id, stands on which line of the newest roster."""
    return dict(db.execute("SELECT line, id FROM children WHERE left_at IS NULL"))


def _enrolled(db: sqlite3.Connection, roster: Roster, rows: Sequence[_Row], at: str, known: Sequence[Known],
              found: Enrolment, same: Mapping[int, int], typed: Sequence[Child], *, joins: bool) -> RosterUpdate:
    """Enrol the children of a roster; each row says where one stands in the text that is kept.

    ``typed`` are the children as the list has them, whatever the class knows besides.
    """
    here = {one.id for one in known if one.here}
    said = _once_each(same, {one.id for one in known})
    new = {row.child.line: _join(db, row, at) for row in rows if row.child.line not in found.ids}
    for row in rows:
        if row.child.line in found.ids:
            _renew(db, found.ids[row.child.line], row)
    kept = set(found.ids.values())
    left = tuple(sorted(here - kept))
    db.executemany("UPDATE children SET left_at = ? WHERE id = ?", [(at, one) for one in left])
    for double, one in doubles(typed, [one for one in known if one.id in left], known, said).items():
        if not joins:
            list_before.gone_again(db, double, at)
        elif notes := join(db, double, one.id, By(when=at)):
            found.notes.append(message("classbook.joined", name=one.shown, count=notes))
    there = {row[0] for row in db.execute("SELECT id FROM children")}
    left = tuple(one for one in left if one in there)
    asked = [one for one in found.recognised if one.taken is None]
    doubted = {new[one.line] for one in asked} | {old.id for one in asked for old in one.known if old.id in left}
    return RosterUpdate(roster, tuple(new.values()), tuple(sorted(kept & here)), tuple(sorted(kept - here)), left,
                        tuple(found.notes), tuple(found.recognised), found.ids, frozenset(doubted),
                        found.more)


def _once_each(same: Mapping[int, int], known: Set[int]) -> Mapping[int, int]:
    """Leave out whom we do not know, and a child said to stand on a second line; ``NEW`` may stand on any."""
    lines = {child_id: line for line, child_id in sorted(same.items(), reverse=True) if child_id in known}
    new = {line: NEW for line, child_id in same.items() if child_id == NEW}
    return new | {line: child_id for child_id, line in lines.items()}


def _values(row: _Row) -> dict[str, object]:
    child = row.child
    return {"given": child.given, "family": child.family, "practice": child.practice, "label": child.label,
            "line": row.line, "support": None if child.support is None else str(child.support),
            "hand": None if child.hand is None else str(child.hand), "line_height_mm": child.line_height_mm,
            "letters": child.letters, "beats": child.beats, "names_in": child.names_in,
            "goes_by": row.goes_by, "also": row.also}


def _join(db: sqlite3.Connection, row: _Row, at: str) -> int:
    values = {**_values(row), "joined_at": at}
    new = db.execute(f"INSERT INTO children ({', '.join(values)}) VALUES ({', '.join('?' * len(values))})",
                     tuple(values.values())).lastrowid
    return int(new or 0)


def _renew(db: sqlite3.Connection, child_id: int, row: _Row) -> None:
    """Take over what the new roster says of a child we know; left is taken back."""
    values = {**_values(row), "left_at": None}
    db.execute(f"UPDATE children SET {', '.join(f'{column} = ?' for column in values)} WHERE id = ?",
               (*values.values(), child_id))


def children(db: sqlite3.Connection, *, left: bool) -> tuple[BookChild, ...]:
    """Return the children in roster order; with ``left`` also those who have left, after the others."""
    own = saves.all_settings(db)
    rows = db.execute("SELECT * FROM children WHERE left_at IS NULL OR ? ORDER BY left_at IS NOT NULL, line, id",
                      (left,))
    return with_namesakes([book_child(row, own.get(row[0], {})) for row in rows])


def with_namesakes(children: Sequence[BookChild]) -> tuple[BookChild, ...]:
    """Return the children, each of those here told whether another here practises the same name."""
    here = [one for one in children if one.left is None]
    alike = dict(zip((one.id for one in here), shared([one.child.practice for one in here]), strict=True))
    return tuple(one if one.namesake is alike.get(one.id, False) else replace(one, namesake=not one.namesake)
                 for one in children)


def book_child(row: tuple[Any, ...], own: Mapping[str, str]) -> BookChild:
    """Lay a child's own settings over what the roster says of them."""
    (id_, given, family, practice, label, line, support, hand, height, joined, left, letters, beats, names_in,
     *_) = row
    mine = tuning_of(own)
    if mine.line_height is None and height is not None:
        mine = mine._replace(line_height=height)
    support, hand = own.get("support", support), own.get("hand", hand)
    child = Child(practised(own.get("practise"), given, family, practice), label, given, family, line,
                  Support(support) if support else None, Hand(hand) if hand else None, mine.line_height,
                  own.get("letters", letters), own.get("beats", beats), own.get("names_in", names_in))
    return BookChild(id_, child, mine, own, joined, left)


def practised(part: str | None, given: str, family: str, practice: str) -> str:
    """Return the name to practise for a part that was set; where that part is missing, the roster's reading."""
    wanted = {NamePart.GIVEN: given, NamePart.FAMILY: family, NamePart.BOTH: f"{given} {family}".strip()}
    return (wanted[NamePart(part)] if part else "") or practice
