"""The list of names: pasted, dropped or typed on the left, read on the right as it grows, and kept on a word.

What is typed is a draft in the class's own file, so that a reload, a click elsewhere or a stopped program lose nothing;
every answer to a form leads to a page that can be loaded again. A line that needs a person is answered with one press
(``list_ways``), which changes the text itself. A list that another window changed meanwhile is not overwritten unseen,
and a class of which most would leave is not replaced without both lists being shown.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace
from typing import cast

from flask import Blueprint, abort, current_app, g, redirect, render_template, request, url_for
from werkzeug.wrappers import Response

from namewright.classbook import ClassbookError, RosterUpdate
from namewright.classbook.drafts import Draft
from namewright.classbook.enrol import Recognised
from namewright.classbook.going_on import is_other_script, whole_name
from namewright.classbook.needed import list_words
from namewright.classbook.records import called
from namewright.classbook.rosters import Answers
from namewright.message import Field, Message, message
from namewright.roster.children import Child, LineReport, Outcome, RosterError
from namewright.roster.reader_process import decode_in_a_process
from namewright.roster.sources import decode
from namewright.settings import NamePart
from namewright.web.class_pdf import sheets_ahead
from namewright.web.desk import book, class_settings, desk, keep_groups
from namewright.web.list_reading import MAX_CHARACTERS, Reading, read
from namewright.web.list_same import answered, answers, is_meant_anew, keeps, meant, same_children, stood, with_answer
from namewright.web.list_ways import KEEPS, MEANT, mark, spelled, ways_on, written
from namewright.web.screen_language import language_of
from namewright.wording import FIRST, languages, wording

pages = Blueprint("roster", __name__)
_MAX_FIGURES = 18  # of a list's number; SQLite counts no further than 19
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
    now = Draft("", _kept().part) if request.args.get("new") == "1" else _draft()
    return render_template("list.html", anyone=bool(book().children(left=True)), based=book().roster_id(),
                           elsewhere=_elsewhere(now), saved=book().roster_saved(), **_shown(_Seen(now)))


def _shown(seen: _Seen) -> dict[str, object]:
    """Return what the result of a reading shows."""
    now, kept = seen.draft, _kept()
    reading = read(now.text, now.part)
    settled = now.settled | set(map(mark, kept.text.splitlines()))  # what was saved was looked at
    update, names = _tried(now, reading)
    reading = reading.as_known(_known_more(update, reading))
    found = reading.sorted(settled, _known(update), update.ids if update else ())
    return {"reading": reading, "draft": now, "sorted": found, "seen": seen, "unsaved": _is_unsaved(now), "mark": mark,
            "leaving": tuple(names[one] for one in update.left) if update else (),
            "without_page": reading.without_page(found.tidied)}


def _tried(now: Draft, reading: Reading) -> tuple[RosterUpdate | None, dict[int, str]]:
    """Return what saving a list would do to the class, and what everyone would be called; None where nothing."""
    if reading.problem or not _is_unsaved(now) or not book().children(left=True):
        return None, {}
    return _trial(now, reading)


def _known(update: RosterUpdate | None) -> Mapping[int, Recognised]:
    return {one.line: one for one in update.recognised} if update else {}


def _known_more(update: RosterUpdate | None, reading: Reading) -> Mapping[int, Child]:
    """Return the children, by line, of whom the class knows more than the list says."""
    if update:
        return update.more
    there = {one.child.line: one.child for one in book().children()}
    return {line.line: there[line.line] for line in reading.lines if line.child and line.line in there
            and not is_other_script(there[line.line].practice)
            and (is_other_script(line.child.practice) or line.child.given != there[line.line].given)}


def _kept() -> Draft:
    """Return the list that is saved, as a draft that changes nothing, looked up once in a request."""
    if "kept_list" not in g:
        g.kept_list = book().saved_list()
    return cast(Draft, g.kept_list)


def _draft() -> Draft:
    return book().draft() or _kept()


def _is_unsaved(now: Draft) -> bool:
    kept = _kept()
    return (now.text.strip(), now.part, now.whole) != (kept.text.strip(), kept.part, kept.whole) or is_meant_anew(
        now.settled)


def _elsewhere(now: Draft) -> bool:
    """Say whether the list was changed in another window since this draft was begun."""
    return now.roster != book().roster_id() and bool(now.text) and _is_unsaved(now)


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
    told = [*seen.told, *([reading.problem] if reading.problem else [])]
    return redirect(url_for("roster.show", told=desk().tell(told) if told else None))


def _typed() -> Draft:
    """Return the draft with what a form says of it, kept."""
    before = _draft()
    text = request.form.get("text", before.text).replace("\r\n", "\n")
    now = replace(before, text=text, part=_part(before.part), whole="whole" in request.form, roster=_based(),
                  steps=before.steps)
    if now != before:
        _keep(now, typed=True)
    return now


def _keep(now: Draft, *, typed: bool) -> None:
    """Keep a draft; one that changes nothing of what is saved is given up, and one too long to be read is not kept."""
    if not _is_unsaved(now) and not now.settled and not now.steps:
        book().discard_draft()
    elif len(now.text) <= MAX_CHARACTERS:
        if not typed and book().draft() is None:
            book().keep_draft(_kept())  # the step to go back to
        book().keep_draft(now, typed=typed)


def _pressed(now: Draft) -> _Seen:
    """Do what was pressed: a step back, a file, an answer about columns, a way for a line."""
    pressed, file = request.form.get("do", ""), request.files.get("file")
    if pressed == BACK:
        book().step_back()
        return _Seen(_draft(), changed=True)
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
    _keep(now, typed=False)
    return _Seen(_draft(), told, changed=True)


def _answered(now: Draft, pressed: str) -> _Seen:
    """Take a way for a line; a line that is there no more, or cannot be written so, changes nothing."""
    which, _, key = pressed.partition(".")
    reading = read(now.text, now.part)
    update, _ = _tried(now, reading)
    reading = reading.as_known(_known_more(update, reading))
    found = next(((at, way) for at, line in enumerate(reading.lines) if mark(line.text) == which
                  for way in ways_on(reading.lines, at, reading.cannot_draw(line), _known(update)) if way.key == key),
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
    if way.offered is not None and line.child and typed.strip():
        way = spelled(line, line.child, typed)
    text = written(reading.lines, at, way, lambda tried: _lines_of(tried, now.part))
    if text is None:
        return _Seen(now, (message("web.list.not_written", words=line.text.strip()),))
    return _stepped(replace(now, text=text, settled=_stays(now, reading, at, text)))


def _stays(now: Draft, reading: Reading, at: int, text: str) -> frozenset[str]:
    """Return what is settled when a line of a list was written anew: its child is who it was."""
    update, _ = _tried(now, reading)
    lines, child = text.split("\n"), reading.lines[at].child
    child_id = (update.ids if update else book().on_lines()).get(reading.lines[at].line)
    if len(lines) != len(reading.lines):
        return now.settled
    which, settled = mark(lines[at]), now.settled
    if child and is_other_script(whole_name(child)):
        settled |= {stood(which, whole_name(child))}
    return settled if child_id is None else with_answer(settled, which, child_id)


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


def _based() -> int:
    """Return the number of the list that a form began from; aborts with 400 for what no list has."""
    said = request.form.get("based", "0")
    if not (said.isascii() and said.isdecimal() and len(said) <= _MAX_FIGURES):
        abort(400)
    return int(said)


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
        return redirect(url_for("roster.show", told=desk().tell([*seen.told, reading.problem])))
    if "sure" not in request.form and _replaces(now, reading):
        return redirect(url_for("roster.compare"))
    try:
        update = _saved(now, reading)
        keep_groups()
    except ClassbookError:
        if book().roster_id() == _based():
            raise
        return redirect(url_for("roster.show"))
    return redirect(url_for("room.show", told=desk().tell(_told(update, reading)), undo=book().roster_id()))


def _saved(now: Draft, reading: Reading) -> RosterUpdate:
    """Keep a list and the part of the name that is practised, both or neither."""
    first = {} if book().roster_id() else _paper_language()
    asked = {} if now.part == book().part else {"practise": now.part}  # what is so already is no change in the history
    return book().save_list(reading.text, {**asked, **first}, same=_same(now, reading), answers=_answers(now, reading),
                            after_roster=_based(), whole=now.whole, settled=now.settled,
                            words=list_words(wording(language_of(request)).say))


def _same(now: Draft, reading: Reading) -> Mapping[int, int]:
    """Return who of the class stands on which line of a list, by what was answered and by lines as they were."""
    lines = [line.text for line in reading.lines]
    return same_children(_kept().text.splitlines(), book().on_lines(), lines) | answered(now.settled, lines, mark)


def _answers(now: Draft, reading: Reading) -> Answers:
    """Return what was said of the names on lines of a list."""
    return answers(now.settled, [line.text for line in reading.lines], mark)


def _paper_language() -> dict[str, str]:
    """Return the language of the screen for the paper of a class that is begun, where paper has it and none is set."""
    spoken = language_of(request)
    said = spoken == FIRST or "language" in class_settings()
    return {} if said or spoken not in languages() else {"language": spoken}


def _replaces(now: Draft, reading: Reading) -> bool:
    """Say whether more than half of the class would leave."""
    update, _ = _tried(now, reading)
    return update is not None and 2 * len(update.left) > len(book().on_lines())


def _trial(now: Draft, reading: Reading) -> tuple[RosterUpdate, dict[int, str]]:
    """Try what saving a list would do, once in a request."""
    tried: dict[Draft, tuple[RosterUpdate, dict[int, str]]] = g.setdefault("tried", {})
    if now not in tried:
        tried[now] = book().trial(reading.text, now.part, same=_same(now, reading), answers=_answers(now, reading))
    return tried[now]


@pages.get("/class/list/instead")
def compare() -> str | Response:
    """Show who would stay, join and leave."""
    now = _draft()
    reading = read(now.text, now.part)
    if reading.problem or not book().children():
        return redirect(url_for("roster.show"))
    update, names = _trial(now, reading)
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
    words = tuple(message("quoted", words=line.opening) for line in reading.lines if line.outcome is Outcome.LEFT_OUT)
    return (message("web.list.not_kept", words=words, count=len(words)),) if words else ()


@pages.post("/class/list/back")
def take_back() -> Response:
    """Bring the class back as it was before the newest list was saved; that list is a draft again."""
    try:
        book().undo_roster(after_roster=_based())
    except ClassbookError as error:
        return redirect(url_for("room.show", told=desk().tell([error.message])))
    desk().forget(book().erasures)
    told = desk().tell([message("web.list.taken_back")])
    return redirect(url_for("room.show" if book().children() else "roster.show", told=told))
