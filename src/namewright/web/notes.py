"""What a child's writing showed: letters tapped today, and the year at a glance.

A form has a key of its own, so that one sent twice, even after a new start of the program, is noted once.
Days are ISO 8601. Out of scope: what a picture of the year looks like on paper (``pages``).
"""

from __future__ import annotations

import secrets
from collections.abc import Mapping, Sequence
from datetime import date

from flask import Blueprint, Response, abort, render_template, request, url_for
from flask import redirect as to
from werkzeug.wrappers import Response as BaseResponse

from namewright.classbook import BookChild, ClassbookError, Observation
from namewright.classbook.looks import Look, looks
from namewright.classbook.records import letter_positions
from namewright.classbook.stages import Stage, stage_said
from namewright.classbook.suggest import suggest
from namewright.making.choices import read_choices
from namewright.making.from_book import holds_for_child, members_of
from namewright.making.noted import record_of_member
from namewright.making.request import Kind, Member, Request
from namewright.message import Message, message
from namewright.names.clusters import clusters
from namewright.output.record_csv import records_csv
from namewright.practice.ordering import Order, order_class
from namewright.settings import Support
from namewright.web.answers import pdf, pdf_of
from namewright.web.desk import book, child_or_404, class_settings, desk, members
from namewright.web.finding import family_of, names_of
from namewright.web.requests import drawn

pages = Blueprint("seen", __name__)
_FOR_FAMILY = (Kind.GROWTH, Kind.TALK)


@pages.get("/seen")
def choose() -> str:
    """Ask whose writing was seen."""
    return render_template("choose.html", members=members(), where="seen.show", section="seen",
                           names_of=names_of, family_of=family_of)


@pages.get("/child/<int:child_id>/seen")
def show(child_id: int) -> str:
    """Show the letters to tap, and the year so far."""
    return _page(child_or_404(child_id))


def _page(one: BookChild, problem: Exception | None = None) -> str:
    name = one.child.practice
    observed = book().observations(one.id)
    notes, seen = _last_of_day(observed), looks(observed)
    return render_template(
        "seen.html", child=one, label=one.child.label, problem=problem, letters=_letters(name),
        today=date.today().isoformat(), once=request.form.get("once") or secrets.token_urlsafe(12),
        supports=tuple(Support), stages=[(stage.value, stage_said(stage)) for stage in Stage],
        suggestion=_suggestion(one), ticked=set(request.form.getlist("letter")), notes=notes,
        year=[(letter, [_mark(note, seen, name, at) for note in notes]) for at, letter in _letters(name)])


def _suggestion(one: BookChild) -> Message:
    """Return a thought about the next level of support."""
    support = holds_for_child(one, class_settings()).support
    return suggest(support, book().observations(one.id), one.child.practice).reason


@pages.get("/child/<int:child_id>/year.pdf")
def year(child_id: int) -> Response:
    """Return the child's year as a page for the family."""
    one = child_or_404(child_id)
    if not book().observations(one.id):
        abort(404)
    return _pdf(Kind.GROWTH, [one])


@pages.get("/child/<int:child_id>/talk.pdf")
def talk(child_id: int) -> Response:
    """Return a page for a talk with the child's family; with ``words`` also what was noted in words."""
    one = child_or_404(child_id)
    if not book().observations(one.id):
        abort(404)
    return _pdf(Kind.TALK, [one])


@pages.get("/child/<int:child_id>/record.pdf")
def record(child_id: int) -> Response:
    """Return every look at the child's name as a table for a specialist."""
    one = child_or_404(child_id)
    if not book().observations(one.id):
        abort(404)
    return _pdf(Kind.RECORD, [one])


@pages.get("/child/<int:child_id>/record.csv")
def record_csv(child_id: int) -> Response:
    """Return the same for a spreadsheet; its file name tells nothing about a child."""
    (one,) = _members([child_or_404(child_id)])
    answer = Response(records_csv([record_of_member(one)]), mimetype="text/csv")
    answer.headers["Content-Disposition"] = 'attachment; filename="name-practice.csv"'
    return answer


@pages.get("/class/year.pdf")
def class_year() -> Response:
    """Return the year of the class as pages for the adult."""
    children = book().children()
    if not children:
        abort(404)
    return _pdf(Kind.YEAR, children)


def _pdf(kind: Kind, children: Sequence[BookChild]) -> Response:
    asked = Request((kind,), _members(children), read_choices(class_settings()), words="words" in request.args)
    with desk().lock:
        made = drawn(desk().setter, asked)
    spoken = next((one.home for one in asked.members if kind in _FOR_FAMILY and one.home), asked.settings.language)
    return pdf(pdf_of(made, spoken))


def _members(children: Sequence[BookChild]) -> tuple[Member, ...]:
    placed = order_class([one.child for one in children], Order.ROSTER)
    return members_of(book(), children, placed, notes=True, held=True)


def _letters(name: str) -> list[tuple[int, str]]:
    signs = clusters(name)
    return [(at, signs[at]) for at in letter_positions(name)]


def _last_of_day(notes: Sequence[Observation]) -> list[Observation]:
    """Return the note that counts for each day: the last in which letters were looked at."""
    by_day: Mapping[str, Observation] = {note.date: note for note in notes if note.letters is not None}
    return [by_day[day] for day in sorted(by_day)]


def _mark(note: Observation, seen: Sequence[Look], name: str, at: int) -> bool | None:
    """Say whether a letter was formed on the day of a note; None where nothing was said of it."""
    look = next((look for look in seen if (look.day.isoformat(), look.name) == (note.date, name)), None)
    return None if look is None or at not in look.formed | look.not_yet else at in look.formed


@pages.post("/child/<int:child_id>/seen")
def keep(child_id: int) -> tuple[str, int] | BaseResponse:
    """Keep what was seen."""
    one, form = child_or_404(child_id), request.form
    try:
        note = book().observe(
            one.id, form.get("day", ""), [int(at) for at in form.getlist("letter") if at.isdecimal()],
            support=Support(form["support"]) if form.get("support") in tuple(Support) else None,
            stage=_stage(form.get("stage", "")), note=form.get("note", ""), who=form.get("who", ""),
            token=form.get("once") or None)
    except ClassbookError as error:
        return _page(one, error), 422
    told = message("web.seen.kept", count=len(note.letters or ()), day=note.date)
    return to(url_for("seen.show", child_id=child_id, told=desk().tell([told])))


def _stage(text: str) -> Stage | None:
    return Stage(int(text)) if text in {str(stage.value) for stage in Stage} else None


@pages.post("/child/<int:child_id>/seen/<int:note_id>/back")
def take_back(child_id: int, note_id: int) -> BaseResponse:
    """Take a day's note back; once taken back it stays so."""
    one = child_or_404(child_id)
    if any(note.id == note_id for note in book().observations(one.id)):
        book().strike(note_id)
    told = desk().tell([message("web.seen.taken")])
    return to(url_for("seen.show", child_id=child_id, told=told))
