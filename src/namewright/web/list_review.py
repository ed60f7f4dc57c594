"""The list of names: pasted, dropped or typed on the left, read on the right as it grows, and kept on a word.

What is typed is a draft in the class's own file, so that a reload, a click elsewhere or a stopped program lose nothing;
every answer to a form leads to a page that can be loaded again. A line that needs a person (``list_questions``) is
answered with one press (``list_ways``), which changes the text itself. A list that another window changed meanwhile is
not overwritten unseen, and a class of which most would leave is not replaced without both lists being shown.
"""

from __future__ import annotations

from dataclasses import dataclass, replace

from flask import Blueprint, abort, current_app, redirect, render_template, request, url_for
from werkzeug.wrappers import Response

from namewright.classbook import ClassbookError, RosterUpdate
from namewright.classbook.drafts import Draft
from namewright.classbook.kept_lists import Marks
from namewright.classbook.needed import list_words
from namewright.classbook.records import called
from namewright.classbook.rosters import NewList
from namewright.message import Field, Message, message
from namewright.roster.children import LineReport, Outcome, RosterError
from namewright.roster.reader_process import decode_in_a_process
from namewright.roster.sources import decode
from namewright.settings import NamePart
from namewright.web.class_pdf import sheets_ahead
from namewright.web.desk import book, class_settings, desk, keep_groups
from namewright.web.list_draft import (
    answers_on_lines,
    based_on,
    changed_elsewhere,
    draft,
    is_unsaved,
    keep_draft,
    kept_list,
    known,
    known_more,
    replaces_most,
    same_on_lines,
    stays_settled,
    trial,
    tried,
)
from namewright.web.list_questions import Sorted, ways_on
from namewright.web.list_reading import Reading, read
from namewright.web.list_same import keeps, meant, with_answer
from namewright.web.list_spelling import spelled
from namewright.web.list_ways import KEEPS, MEANT, mark, typed_name, written
from namewright.web.screen_language import language_of
from namewright.wording import FIRST, languages, wording

pages = Blueprint("roster", __name__)


BACK = "back"  # what a form sends to take back the newest step


@dataclass(frozen=True, slots=True)
class _Seen:
    """What a form did: the draft as it is then, what is to be told, and whether the text is another than was sent.

    ``sheets`` are those of a file among which somebody has to choose.
    """

    draft: Draft
    told: tuple[Message, ...] = ()
    changed: bool = False
    sheets: tuple[Field, ...] = ()


@pages.get("/class/list")
def show() -> str:
    """Show the list as it was left, or the place to paste one."""
    now = Draft("", kept_list().part) if request.args.get("new") == "1" else draft()
    return render_template("list.html", anyone=bool(book().children(left=True)), based=book().roster_id(),
                           elsewhere=changed_elsewhere(now), saved=book().roster_saved(), **_shown(_Seen(now)))


def _shown(seen: _Seen) -> dict[str, object]:
    """Return what the result of a reading shows."""
    now, kept = seen.draft, kept_list()
    reading = read(now.text, now.part)
    settled = now.settled | book().answered() | set(map(mark, kept.text.splitlines()))  # what was saved was looked at
    update, names = tried(now, reading)
    reading = reading.as_known(known_more(update, reading))
    found = reading.sorted(settled, known(update), update.ids if update else ())
    two = reading.two_named if found.needs else None  # where each line was looked at before, nothing is asked
    return {"reading": reading, "draft": now, "sorted": found, "seen": seen, "unsaved": is_unsaved(now), "mark": mark,
            "two": two, "turns": reading.turns if two or not reading.two_named else (), "needed": _needed(two, found),
            "leaving": tuple(names[one] for one in update.left) if update else (),
            "without_page": reading.without_page(found.tidied)}


def _needed(two: Message | None, found: Sorted) -> Message | None:
    """Return what needs a person: one answer for all lines of two names, or lines one by one."""
    if two:
        return message("web.list.one_answer", count=two["count"])
    return message("web.list.needs", count=len(found.needs)) if found.needs else None


# --- reading -------------------------------------------------------------------------------------------


@pages.post("/class/list/read")
def read_again() -> str | tuple[str, int] | Response:
    """Take what was typed or pressed into the draft, and show how it is read; the class is not touched.

    ``part=lines`` returns the result alone, for the script.
    """
    seen = _pressed(_typed())
    reading = read(seen.draft.text, seen.draft.part)
    if current_app.config["IN_BROWSER"] and not reading.problem:  # nobody else looks at what comes soon
        children = [line.child for line in reading.lines if line.child]
        desk().soon = sheets_ahead(children, {**class_settings(), **_paper_language()}, desk().setter)
    if request.args.get("part") == "lines":
        return render_template("_lines.html", **_shown(seen))
    told = [*seen.told, *_in_the_way(reading)]
    return redirect(url_for("roster.show", told=desk().tell(told) if told else None))


def _in_the_way(reading: Reading) -> list[Message]:
    """Return what keeps a list from being a class; where a button of the page answers it, that is said."""
    if reading.problem and reading.turns:
        return [message("web.list.choose_named" if reading.two_named else "web.list.choose_column")]
    return [reading.problem] if reading.problem else []


def _typed() -> Draft:
    """Return the draft with what a form says of it, kept."""
    before = draft()
    text = request.form.get("text", before.text).replace("\r\n", "\n")
    now = replace(before, text=text, part=_part(before.part), whole="whole" in request.form, roster=based_on())
    if now != before:
        keep_draft(now, typed=True)
    return now


def _pressed(now: Draft) -> _Seen:
    """Do what was pressed: a step back, a file, an answer about columns, a way for a line."""
    pressed, file = request.form.get("do", ""), request.files.get("file")
    if pressed == BACK:
        book().step_back()
        return _Seen(draft(), changed=True)
    if file is not None and file.filename:
        try:
            text, notes = _decoded(file.read())
        except RosterError as error:
            return _unread(now, error.message)
        return _stepped(replace(now, text=text, settled=frozenset()), notes)
    if columns := request.form.get("columns", ""):
        reading = read(now.text, now.part, columns=columns)
        return _Seen(now) if reading.problem else _stepped(replace(now, text=reading.text))
    return _answered(now, pressed) if pressed else _Seen(now)


def _unread(now: Draft, why: Message) -> _Seen:
    """Tell why a file was not read; of several sheets one is asked for."""
    sheets = dict(why.fields).get("sheets", ()) if why.key == "roster.several_sheets" else ()
    return _Seen(now, (why,), sheets=sheets if isinstance(sheets, tuple) else ())


def _stepped(now: Draft, told: tuple[Message, ...] = ()) -> _Seen:
    keep_draft(now, typed=False)
    return _Seen(draft(), told, changed=True)


def _answered(now: Draft, pressed: str) -> _Seen:
    """Take a way for a line; a line that is there no more, or cannot be written so, changes nothing."""
    which, _, key = pressed.partition(".")
    reading = read(now.text, now.part)
    update, _ = tried(now, reading)
    reading = reading.as_known(known_more(update, reading))
    found = next(((at, way) for at, line in enumerate(reading.lines) if mark(line.text) == which
                  for way in ways_on(reading.lines, at, reading.cannot_draw(line), known(update)) if way.key == key),
                 None)
    if found is None:
        return _Seen(now)
    (at, way), typed = found, request.form.get(f"as-{which}", "")
    line = reading.lines[at]
    if way.child is not None:
        alike = sum(mark(each.text) == which for each in reading.lines)
        said = with_answer(now.settled - {keeps(which)}, which, way.child, alike)
        return _stepped(replace(now, settled=said | ({keeps(which)} if key.startswith(KEEPS) else set())))
    if way.settles:
        return _stepped(replace(now, settled=now.settled | {meant(which) if key == MEANT else which}))
    if way.offered is not None and typed.strip():
        way = spelled(line, line.child, typed) if line.child else typed_name(typed)
    text = written(reading.lines, at, way, lambda tried: _lines_of(tried, now.part))
    if text is None:
        return _Seen(now, (message("web.list.not_written", words=line.text.strip()),))
    return _stepped(replace(now, text=text, settled=stays_settled(now, reading, at, text)))


def _lines_of(text: str, part: NamePart) -> tuple[LineReport, ...]:
    return read(text, part).lines


def _part(usual: NamePart) -> NamePart:
    said = request.form.get("practise") or usual
    if said not in tuple(NamePart):
        abort(400)
    return NamePart(said)


def _decoded(data: bytes) -> tuple[str, tuple[Message, ...]]:
    sheet = request.form.get("sheet", "")
    if current_app.config["IN_BROWSER"]:  # it has no processes, and nobody else waits there
        return decode(data, message("roster.file"), sheet)
    return decode_in_a_process(data, message("roster.file"), sheet)


@pages.post("/class/list/discard")
def discard() -> Response:
    """Give up what was typed since the list was saved."""
    book().discard_draft()
    return redirect(url_for("room.show" if book().children() else "roster.show"))


# --- keeping -------------------------------------------------------------------------------------------


@pages.post("/class/list")
def keep() -> Response:
    """Keep the list. Kept already (a form sent twice): said again, done once.

    Where most of the class would leave, both lists are shown first, and ``sure`` says that they were.
    """
    seen = _pressed(_typed()) if request.files.get("file") else _Seen(_typed())
    now, reading = seen.draft, read(seen.draft.text, seen.draft.part)
    if reading.problem:
        return redirect(url_for("roster.show", told=desk().tell([*seen.told, *_in_the_way(reading)])))
    if "sure" not in request.form and replaces_most(now, reading):
        return redirect(url_for("roster.compare"))
    try:
        update = _saved(now, reading)
        keep_groups()
    except ClassbookError:
        if book().roster_id() == based_on():
            raise
        return redirect(url_for("roster.show"))
    return redirect(url_for("room.show", told=desk().tell(_told(update, reading)), undo=book().roster_id()))


def _looked_at(now: Draft, reading: Reading) -> frozenset[str]:
    """Return the marks of lines of a list of which somebody said, now or before, that they are right as they are."""
    return (now.settled | book().answered()) & set(map(mark, (line.text for line in reading.lines)))


def _saved(now: Draft, reading: Reading) -> RosterUpdate:
    """Keep a list and the part of the name that is practised, both or neither."""
    first = {} if book().roster_id() else _paper_language()
    asked = {} if now.part == book().part else {"practise": now.part}  # what is so already is no change in the history
    new = NewList(reading.text, same_on_lines(now, reading), answers_on_lines(now, reading),
                  list_words(wording(language_of(request)).say), now.whole, based_on())
    return book().save_list(new, {**asked, **first}, Marks(now.settled, _looked_at(now, reading), mark))


def _paper_language() -> dict[str, str]:
    """Return the language of the screen for the paper of a class that is begun, where paper has it and none is set."""
    spoken = language_of(request)
    said = spoken == FIRST or "language" in class_settings()
    return {} if said or spoken not in languages() else {"language": spoken}


@pages.get("/class/list/instead")
def compare() -> str | Response:
    """Show who would stay, join and leave."""
    now = draft()
    reading = read(now.text, now.part)
    if reading.problem or not book().children():
        return redirect(url_for("roster.show"))
    update, names = trial(now, reading)
    came = (*update.joined, *update.returned)
    return render_template("instead.html", draft=now, based=now.roster, stays=[names[one] for one in update.stayed],
                           leaves=[names[one] for one in update.left], joins=[names[one] for one in came])


def _told(update: RosterUpdate, reading: Reading) -> list[Message]:
    """Return what keeping the list did."""
    names = called(book().children(left=True))
    some = update.stayed or update.returned
    groups = (("joined", update.joined if some else ()), ("returned", update.returned), ("left", update.left))
    told = [(key, [one for one in ids if one not in update.doubted]) for key, ids in groups]
    return [message("web.list.kept", count=len(update.roster.children)),
            *(() if book().roster_is_whole() else _not_kept(reading)), *update.notes,
            *(message(f"web.list.{key}", count=len(ids), names=tuple(names[one] for one in ids))
              for key, ids in told if ids)]


def _not_kept(reading: Reading) -> tuple[Message, ...]:
    words = tuple(message("quoted", words=line.opening) for line in reading.lines
                  if line.outcome is Outcome.LEFT_OUT and any(map(str.isalnum, line.text)))  # a line of signs is nobody
    return (message("web.list.not_kept", words=words, count=len(words)),) if words else ()


@pages.post("/class/list/back")
def take_back() -> Response:
    """Bring the class back as it was before the newest list was saved; that list is a draft again."""
    try:
        book().undo_roster(after_roster=based_on())
    except ClassbookError as error:
        return redirect(url_for("room.show", told=desk().tell([error.message])))
    desk().forget(book().erasures)
    told = desk().tell([message("web.list.taken_back" if book().draft() else "web.list.taken_back_alone")])
    return redirect(url_for("room.show" if book().children() else "roster.show", told=told))
