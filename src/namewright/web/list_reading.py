"""A list of names as the screen tells it: what each line was read as, and what is said once for the whole list."""

from __future__ import annotations

from collections import Counter
from collections.abc import Collection, Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from functools import cached_property
from threading import BoundedSemaphore
from typing import cast

from flask import g

from namewright.classbook.enrol import Recognised
from namewright.classbook.known_lines import read_known
from namewright.classbook.who import Known
from namewright.message import Field, Message, Problem, message
from namewright.roster.children import Child, LineReport, RosterError
from namewright.roster.parsing import LIST, read_roster
from namewright.settings import NamePart
from namewright.web.desk import book, class_settings, desk
from namewright.web.list_questions import Sorted, sorted_lines
from namewright.web.list_spelling import asks_latin
from namewright.web.list_ways import AS_KNOWN

MAX_LINES = 400
MAX_CHARACTERS = 500 * MAX_LINES  # reading takes time with every one, and nobody waits for more than a list
LONG = 40_000  # characters: few lists have a tenth of them, and one made to be slow takes seconds
_PATIENCE_S = 1.0
_places = BoundedSemaphore(2)  # for long lists, so that whoever sends many of them does not keep all others waiting
_FEW = 2  # notes alike that still stand on their own lines
_SHOWN = 4  # names of a column that is asked about
_UNUSED = "roster.columns"
_OF_COLUMNS = frozenset({"roster.two_readings", "roster.two_wholes", "roster.two_people"})
_OF_LINES = frozenset({"roster.two_named", "roster.two_words"})
_ALL = "all_columns"
_ONE = ("one_columns", "turned_columns")  # both names are one child's: its given name stands first, or second
_EVERYONE = message("web.list.all_children")


@dataclass(frozen=True, slots=True)
class Turn:
    """One way to read two columns of names, or two names on each line: what to press, to send, and the first names."""

    said: Message
    columns: str
    names: tuple[str, ...]


@dataclass(frozen=True)
class Reading:
    """A list as it was read: a report a line, and what is wrong where it could not be read as a class.

    ``text`` has a line for each report where there are any: lines of several children are parted. What is said of the
    whole list is worked out once: a page asks for it line by line.
    """

    text: str
    lines: tuple[LineReport, ...] = ()
    notes: tuple[Message, ...] = ()
    problem: Message | None = None

    @cached_property
    def children(self) -> int:
        """Return how many children were found."""
        return sum(report.opens_child for report in self.lines)

    @cached_property
    def columns(self) -> Message | None:
        """Return the columns that are not used, where lines with a note about one are many: said once for all."""
        found = [note["columns"] for report in self.lines for note in report.notes if note.key == _UNUSED]
        columns = tuple(dict.fromkeys(column for some in found if isinstance(some, tuple) for column in some))
        return message("web.list.columns", columns=columns) if len(found) > _FEW else None

    @cached_property
    def common(self) -> list[tuple[Message, int]]:
        """Return other notes that most lines share, with how many."""
        counts = Counter(note for report in self.lines for note in report.notes if not self._said_once(note))
        return [(note, count) for note, count in counts.items() if count > max(_FEW, self.children / 2)]

    @property
    def two_named(self) -> Message | None:
        """Return the question who is the child on lines of two names, where one answer holds for all of them."""
        told = (*self.notes, *([self.problem] if self.problem else []))
        return next((note for note in told if note.key in _OF_LINES), None)

    @property
    def turns(self) -> tuple[Turn, ...]:
        """Return the ways to read two columns of names, or two names on each line, where that is asked."""
        if self.two_named:
            return tuple(self._turns_of_lines(dict(self.two_named.fields)))
        if self.problem is None or self.problem.key not in _OF_COLUMNS:
            return ()
        told = dict(self.problem.fields)
        return (*(self._turn(str(told[said]), message("web.list.this_column", column=told[at]))
                  for at, said in (("first", "columns"), ("second", "or_columns"))),
                *((self._turn(str(told[_ALL]), _EVERYONE),) if _ALL in told else ()))

    def _turns_of_lines(self, told: Mapping[str, Field]) -> Iterator[Turn]:
        yield self._turn(str(told["columns"]), message("web.list.first_named"))
        yield self._turn(str(told["or_columns"]), message("web.list.second_named"))
        yield self._turn(str(told[_ALL]), _EVERYONE)
        for key, name in zip(_ONE, (f"{told['one']} {told['other']}", f"{told['other']} {told['one']}"), strict=True):
            if key in told:
                yield self._turn(str(told[key]), message("web.list.one_named", name=name))

    def _turn(self, columns: str, said: Message) -> Turn:
        found = read(self.text, NamePart.GIVEN, columns=columns)
        return Turn(said, columns, tuple(report.child.practice for report in found.lines
                                         if report.child and report.opens_child)[:_SHOWN])

    def _said_once(self, note: Message) -> bool:
        return bool(self.columns) and note.key == _UNUSED

    @cached_property
    def _shared(self) -> frozenset[Message]:
        return frozenset(note for note, _ in self.common)

    def notes_of(self, report: LineReport) -> list[Message]:
        """Return the notes of one line that are not said of most, and what stands in the way of a page."""
        return self._noted[report.line]

    @cached_property
    def _noted(self) -> Mapping[int, list[Message]]:
        return {report.line: self._notes_of(report) for report in self.lines}

    def _notes_of(self, report: LineReport) -> list[Message]:
        notes = [note for note in report.notes if note not in self._shared and not self._said_once(note)]
        return [*notes, *([cannot] if (cannot := self.cannot_draw(report)) else ())]

    def cannot_draw(self, report: LineReport) -> Message | None:
        """Return what stands in the way of a page for the child on a line, None where nothing does."""
        return self._undrawn.get(report.line)

    @cached_property
    def _undrawn(self) -> Mapping[int, Message]:
        missing = desk().setter.alphabet.missing
        found = ((report.line, missing(report.child.practice)) for report in self.lines
                 if report.child and report.opens_child)
        return {line: asks_latin(letters) for line, letters in found if letters}

    def without_page(self, lines: Sequence[LineReport]) -> tuple[str, ...]:
        """Return those children on some lines whose names cannot be drawn."""
        return tuple(line.child.practice for line in lines if line.child and self.cannot_draw(line))

    def as_known(self, more: Mapping[int, Child]) -> Reading:
        """Return the reading with some children, by line, as the class knows them, and a word about their names."""
        return replace(self, lines=tuple(_as_known(line, more.get(line.line)) for line in self.lines))

    def sorted(self, settled: frozenset[str], known: Mapping[int, Recognised], there: Collection[int]) -> Sorted:
        """Return the lines by what they want; ``settled`` are marks of lines that ask no more, the others as there."""
        return sorted_lines(self.lines, self.notes_of, self.cannot_draw, settled, known, there)


def _as_known(report: LineReport, child: Child | None) -> LineReport:
    if child is None or report.child is None or not report.opens_child:
        return report
    told = () if child.practice == report.child.practice else (
        message(AS_KNOWN, typed=report.child.practice, name=child.practice),)
    return report._replace(child=child, notes=(*report.notes, *told))


def _known() -> Sequence[Known]:
    """Return everyone whom the class knows, looked up once in a request."""
    if "everyone" not in g:
        g.everyone = book().known()
    return cast(Sequence[Known], g.everyone)


def read(text: str, part: NamePart, columns: str = "") -> Reading:
    """Read a list for the screen, once in a request; what cannot be read is said, never raised."""
    readings: dict[object, Reading] = g.setdefault("readings", {})
    key = (text, part, columns)
    if key not in readings:
        readings[key] = _read(text, part, columns)
    return readings[key]


def _read(text: str, part: NamePart, columns: str) -> Reading:
    if not text.strip():
        return Reading(text, problem=message("web.list.empty"))
    if len(text.splitlines()) > MAX_LINES:
        return _too_many(text, len(text.splitlines()))
    if len(text) > MAX_CHARACTERS:
        return Reading(text[:MAX_CHARACTERS], problem=message("web.list.too_long", most=MAX_CHARACTERS))
    if len(text) < LONG:
        return _read_now(text, part, columns)
    if not _places.acquire(timeout=_PATIENCE_S):
        return Reading(text, problem=message("web.list.busy"))
    try:
        return _read_now(text, part, columns)
    finally:
        _places.release()


def _read_now(text: str, part: NamePart, columns: str) -> Reading:
    try:
        names_in = class_settings().get("names_in", "")
        roster = read_known(text, lambda tried: read_roster(tried, LIST, part, columns, names_in), _known())
    except RosterError as error:
        return Reading(text, error.lines, problem=error.message) if len(error.lines) <= MAX_LINES else _too_many(
            text, len(error.lines))
    except Problem as error:
        return Reading(text, problem=error.message)
    if len(roster.lines) > MAX_LINES:  # lines of many children each, with a line for each of them
        return _too_many(text, len(roster.lines))
    return Reading(roster.text or text, roster.lines, roster.notes)


def _too_many(text: str, lines: int) -> Reading:
    return Reading(text, problem=message("web.list.too_many", lines=lines, most=MAX_LINES))
