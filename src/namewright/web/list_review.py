"""The list of names: pasted, dropped or typed, read line by line, mended in place, and kept when the teacher says so.

After the first reading the form holds one field a line, so what is sent is always the whole list, and reading it again
changes nothing that is kept. A list that another window changed meanwhile is not overwritten unseen.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Mapping
from dataclasses import dataclass
from difflib import SequenceMatcher
from functools import cached_property

from flask import Blueprint, abort, current_app, redirect, render_template, request, url_for
from werkzeug.wrappers import Response

from namewright.classbook import ClassbookError, RosterUpdate
from namewright.letters.alphabet import MissingLetters
from namewright.message import Field, Message, Problem, message
from namewright.roster.children import LineReport, Outcome, RosterError
from namewright.roster.parsing import read_roster
from namewright.roster.reader_process import decode_in_a_process
from namewright.roster.sources import decode
from namewright.settings import NamePart
from namewright.web.desk import book, class_settings, desk, keep_groups
from namewright.web.screen_language import language_of
from namewright.wording import languages

pages = Blueprint("roster", __name__)
MAX_LINES = 400
MAX_CHARACTERS = 500 * MAX_LINES  # reading takes time with every one, and nobody waits for more than a list
_MENDED = 0.6
_FEW = 2  # notes alike that still stand on their own lines
_UNUSED = "roster.columns"
_ASKED = {"roster.two_readings": ("given", "family"), "roster.two_wholes": ("name", "other")}
_TURNS = ("first", "second")


@dataclass(frozen=True)
class Reading:
    """A list as it was read: a report a line, and what is wrong where it could not be read as a class.

    What is said of the whole list is worked out once: a page asks for it line by line.
    """

    text: str
    lines: tuple[LineReport, ...] = ()
    notes: tuple[Message, ...] = ()
    problem: Message | None = None

    @cached_property
    def children(self) -> int:
        """Return how many children were found."""
        return sum(report.outcome is Outcome.CHILD for report in self.lines)

    @cached_property
    def to_look_at(self) -> int:
        """Return how many lines have a note or were left out."""
        return sum(bool(self.notes_of(report)) or report.outcome is Outcome.LEFT_OUT for report in self.lines)

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
    def ways(self) -> tuple[tuple[Field, str], ...]:
        """Return the ways to read two columns of names, where that is asked: the name to practise, and what to send."""
        if self.problem is None or self.problem.key not in _ASKED:
            return ()
        (kept, other), told = _ASKED[self.problem.key], self.problem
        places = [(int(str(told[one])) - 1, int(str(told[two])) - 1) for one, two in (_TURNS, _TURNS[::-1])]
        return tuple((told[name], _columns_said({at: kept, beside: other}))
                     for name, (at, beside) in zip(("one", "other"), places, strict=True))

    @cached_property
    def moved(self) -> Mapping[int, int]:
        """Return where each line that was sent stands now that lines of several children are told apart."""
        return {report.source_line: report.line for report in reversed(self.lines)}

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
        missing = desk().setter.alphabet.missing(report.child.practice) if report.child else ()
        return [*notes, *([MissingLetters(missing).message] if missing else ())]


def _columns_said(held: Mapping[int, str]) -> str:
    return ",".join(held.get(at, "other") for at in range(max(held) + 1))


def read(text: str, part: NamePart, notes: tuple[Message, ...] = (), columns: str = "") -> Reading:
    """Read a list for the screen; what cannot be read is said, never raised."""
    if not text.strip():
        return Reading(text, problem=message("web.list.empty"))
    if len(text.splitlines()) > MAX_LINES:
        return Reading(text, problem=message("web.list.too_many", lines=len(text.splitlines()), most=MAX_LINES))
    if len(text) > MAX_CHARACTERS:
        return Reading(text[:MAX_CHARACTERS], problem=message("web.list.too_long", most=MAX_CHARACTERS))
    try:
        roster = read_roster(text, message("roster.list"), part, columns)
    except RosterError as error:
        return Reading(text, error.lines, notes, error.message)
    except Problem as error:
        return Reading(text, problem=error.message)
    return Reading(roster.text or text, roster.lines, (*notes, *roster.notes))


@pages.get("/class/list")
def show() -> str:
    """Show the list that is kept, or the place to paste one."""
    text = book().roster_text()
    fresh = request.args.get("new") == "1" or not text
    ids = {one.child.line: one.id for one in book().children()}
    return _page(Reading("") if fresh else read(text, _part()), fresh=fresh, ids=ids)


def _part() -> NamePart:
    said = request.form.get("practise") or class_settings().get("practise", NamePart.GIVEN)
    if said not in tuple(NamePart):
        abort(400)
    return NamePart(said)


def _page(reading: Reading, *, fresh: bool = False, elsewhere: bool = False, based: int | None = None,
          ids: Mapping[int, int] | None = None) -> str:
    return render_template("list.html", reading=reading, fresh=fresh, elsewhere=elsewhere, part=_part(),
                           based=book().roster_id() if based is None else based,
                           ids=_sent_ids() if ids is None else ids, anyone=bool(book().children(left=True)),
                           whole=_whole() if request.method == "POST" else book().roster_is_whole())


def _whole() -> bool:
    """Say whether the form asks to keep all that stands in the list."""
    return "whole" in request.form


def _sent_ids() -> dict[int, int]:
    """Return who the form said stands on which line."""
    return {line: int(who) for line, who in enumerate(request.form.getlist("who"), 1) if who.isdecimal()}


@pages.post("/class/list/read")
def read_again() -> str | tuple[str, int]:
    """Read what was sent and show how; nothing is kept. ``part=lines`` returns the lines alone, for the script."""
    text, notes, problem = _sent()
    reading = Reading("", problem=problem) if problem else read(text, _part(), notes, request.form.get("columns", ""))
    ids = {reading.moved.get(line, line): who for line, who in _sent_ids().items()}
    if request.args.get("part") == "lines":
        return render_template("_lines.html", reading=reading, ids=ids)
    page = _page(reading, fresh=not reading.lines, based=_based(), ids=ids)
    return (page, 422) if reading.problem else page


def _sent() -> tuple[str, tuple[Message, ...], Message | None]:
    """Return the text that was sent: a file, the pasted text, or the lines; with notes, and what is wrong with it."""
    file = request.files.get("file")
    if file is not None and file.filename:
        try:
            return (*_decoded(file.read()), None)
        except RosterError as error:
            return "", (), error.message
    if "line" in request.form:
        return "\n".join(request.form.getlist("line")).rstrip("\n"), (), None
    return request.form.get("text", "").replace("\r\n", "\n"), (), None


def _decoded(data: bytes) -> tuple[str, tuple[Message, ...]]:
    if current_app.config["IN_BROWSER"]:  # it has no processes, and nobody else waits there
        return decode(data, message("roster.file"))
    return decode_in_a_process(data, message("roster.file"))


def _based() -> int:
    try:
        return int(request.form.get("based", "0"))
    except ValueError:
        abort(400)


@pages.post("/class/list")
def keep() -> str | tuple[str, int] | Response:
    """Keep the list. Kept already (a form sent twice): said again, done once."""
    text, notes, problem = _sent()
    reading = read(text, _part(), notes)
    if reading.problem:
        return _page(Reading(text, reading.lines, notes, problem or reading.problem), based=_based()), 422
    try:
        update = _kept(text, reading)
        keep_groups()
    except ClassbookError:
        if book().roster_id() == _based():
            raise
        return _page(reading, elsewhere=True), 409
    return redirect(url_for("room.show", told=desk().tell(_told(update))))


def _kept(text: str, reading: Reading) -> RosterUpdate:
    """Keep a list and the part of the name that is practised, both or neither."""
    first = {} if book().roster_id() else _paper_language()
    with book().changing():
        book().set_class_settings({"practise": _part(), **first})
        same = {reading.moved.get(line, line): who for line, who in _same().items()}
        return book().update_roster(text, same=same, after_roster=_based(), whole=_whole())


def _paper_language() -> dict[str, str]:
    """Return the language of the screen for the paper of a class that is begun, where paper has it and none is set."""
    spoken = language_of(request)
    return {"language": spoken} if spoken in languages() and "language" not in class_settings() else {}


def _same() -> dict[int, int]:
    """Return who stands on which line, for lines that were mended and not given to somebody else."""
    before = book().roster_text().splitlines()
    on_line = {one.id: before[one.child.line - 1] for one in book().children() if one.child.line <= len(before)}
    sent = zip(request.form.getlist("who"), request.form.getlist("line"), strict=False)
    return {line: int(who) for line, (who, text) in enumerate(sent, 1)
            if who.isdecimal() and int(who) in on_line and _alike(on_line[int(who)], text)}


def _alike(before: str, after: str) -> bool:
    """Say whether a changed line is the same child mended: a share of it, found by trying, has stayed."""
    return SequenceMatcher(None, before.casefold(), after.casefold()).ratio() >= _MENDED


def _told(update: RosterUpdate) -> list[Message]:
    """Return what keeping the list did."""
    names = {one.id: one.child.label for one in book().children(left=True)}
    some = update.stayed or update.returned
    groups = (("joined", update.joined if some else ()), ("returned", update.returned), ("left", update.left))
    return [message("web.list.kept", count=len(update.roster.children)),
            *(message(f"web.list.{key}", names=tuple(names[one] for one in ids)) for key, ids in groups if ids),
            *update.notes, *(() if _whole() else _not_kept(update))]


def _not_kept(update: RosterUpdate) -> tuple[Message, ...]:
    lines = tuple(report.line for report in update.roster.lines if report.outcome is Outcome.LEFT_OUT)
    return (message("web.list.not_kept", lines=lines, count=len(lines)),) if lines else ()
