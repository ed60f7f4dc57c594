"""What the children's writing showed today: a card for each child of the class, opened where it stands.

Days are ISO 8601. With scripts a card is sent and comes back alone; without them the whole page does, with the next
child opened. Out of scope: what is noted (``note_form``), and what is printed of it (``year``).
"""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date

from flask import Blueprint, make_response, redirect, render_template, request, url_for
from werkzeug.wrappers import Response as BaseResponse

from namewright.classbook import BookChild, ClassbookError
from namewright.classbook.looks import Look, looks
from namewright.classbook.stages import Stage, stage_said
from namewright.classbook.suggest import suggest
from namewright.making.from_book import holds_for_child
from namewright.message import Message, message
from namewright.pages.growth import day_said
from namewright.settings import Support
from namewright.web.desk import Member, book, child_or_404, class_settings, desk, members
from namewright.web.finding import by_alphabet
from namewright.web.note_form import NoteForm, Sent, form_again, form_of, noted_on, read_form
from namewright.web.sent_number import sent_number

pages = Blueprint("seen", __name__)
ORDERS = ("teaching", "name", "table")
COOKIE = "notes"


@pages.get("/seen")
def choose() -> BaseResponse:
    """Show the class, a card a child, with what was noted that day."""
    answer = make_response(_grid())
    if request.args.get("by") in ORDERS:
        answer.set_cookie(COOKIE, request.args["by"], max_age=365 * 24 * 3600, httponly=True, samesite="Strict")
    return answer


def _grid(again: NoteForm | None = None) -> str:
    forms = [again if again and again.id == form.id else form for form in _forms(_day())]
    opened = sent_number(request.args.get("open", ""))
    first = next((form.id for form in forms if not form.done), None)
    return render_template("notes.html", forms=forms, by=_by(), orders=ORDERS, done=sum(form.done for form in forms),
                           opened=again.id if again else first if opened is None else opened,
                           **_of_day())


def _of_day() -> dict[str, object]:
    """Return what every form of a day needs to be shown."""
    day, today = _day(), date.today()
    return {"day": day, "today": today.isoformat(), "day_told": day_said(date.fromisoformat(day)),
            "supports": tuple(Support), "stages": [(stage.value, stage_said(stage)) for stage in Stage]}


def _day() -> str:
    """Return the day that is asked for, today where none is, or one that is still to come."""
    try:
        return min(date.fromisoformat(request.values.get("day", "")), date.today()).isoformat()
    except ValueError:
        return date.today().isoformat()


def _by() -> str:
    asked = request.values.get("by") or request.cookies.get(COOKIE, "")
    return asked if asked in ORDERS else ORDERS[0]


def _ordered() -> Sequence[Member]:
    everyone = members()
    if _by() == "name":
        return by_alphabet(everyone)
    return sorted(everyone, key=lambda one: one.placed.group) if _by() == "table" else everyone


def _forms(day: str) -> list[NoteForm]:
    settings = class_settings()
    return [form_of(one.one, one.placed.group, noted_on(book(), one.one, day), settings) for one in _ordered()]


def _form(one: BookChild, day: str) -> NoteForm:
    table = next(each.placed.group for each in members() if each.id == one.id)
    return form_of(one, table, noted_on(book(), one, day), class_settings())


@pages.get("/child/<int:child_id>/seen")
def show(child_id: int) -> str:
    """Show one child's form, and the year so far."""
    return _page(child_or_404(child_id))


def _page(one: BookChild, again: NoteForm | None = None) -> str:
    observed = book().observations(one.id)
    seen = [look for look in looks(observed) if look.name == one.child.practice]
    form = again or _form(one, _day())
    support = holds_for_child(one, class_settings()).support
    return render_template(
        "seen.html", form=form, child=one, label=one.child.label, noted=bool(observed),
        suggestion=suggest(support, observed, one.child.practice).reason,
        days=[(look.day.isoformat(), day_said(look.day)) for look in seen],
        year=[(tile.letter, [_mark(look, tile.at) for look in seen]) for tile in form.tiles], **_of_day())


def _mark(look: Look, at: int) -> bool | None:
    """Say whether a letter was formed on a day; None where nothing was said of it."""
    return None if at not in look.formed | look.not_yet else at in look.formed


@pages.post("/child/<int:child_id>/seen")
def keep(child_id: int) -> str | tuple[str, int] | BaseResponse:
    """Keep what was seen: in place of the notes that the form was opened with."""
    one = child_or_404(child_id)
    sent = read_form(request.form, one.child.practice)
    try:
        note = sent.keep(book(), one.id)
    except ClassbookError as error:
        return _again(one, sent, error), 422
    if "card" in request.form:
        return _card(_form(one, note.date))
    told = message("web.notes.kept", label=one.child.label, day=day_said(date.fromisoformat(note.date)))
    return redirect(_next_place(one, note.date, [told]))


def _card(form: NoteForm) -> str:
    return render_template("_note.html", form=form, by=_by(), **_of_day())


def _again(one: BookChild, sent: Sent, error: ClassbookError) -> str:
    form = form_again(_form(one, _day()), sent, error)
    if "card" in request.form:
        return _card(form)
    return _grid(form) if "by" in request.form else _page(one, form)


def _next_place(one: BookChild, day: str, told: Sequence[Message]) -> str:
    """Return where to go on: the next child who is not done, or the child's own page, whichever the form came from."""
    key, other_day = desk().tell(told), day if day != date.today().isoformat() else None
    if "by" not in request.form:
        return url_for("seen.show", child_id=one.id, day=other_day, told=key)
    forms = _forms(day)
    place = next(at for at, form in enumerate(forms) if form.id == one.id)
    then = next((form.id for form in forms[place:] + forms[:place] if not form.done), None)
    return url_for("seen.choose", by=_by(), day=other_day, told=key, open=then or 0,
                   _anchor=f"child-{then}" if then else None)


@pages.post("/child/<int:child_id>/seen/back")
def take_back(child_id: int) -> BaseResponse:
    """Take back all that was noted of a child on a day; once taken back it stays so."""
    one, day = child_or_404(child_id), request.form.get("day", "")
    with book().changing():
        for note in book().observations(one.id):
            if note.date == day:
                book().strike(note.id)
    return redirect(url_for("seen.show", child_id=child_id, told=desk().tell([message("web.notes.taken")])))
