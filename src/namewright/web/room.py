"""The class on the desk: its screen, what was changed there, and the pages of a child or of the class.

Pictures and what is kept are made of what stands in the class's file with the drafts of the screen laid over it.
"""

from __future__ import annotations

import math

from flask import Blueprint, Response, make_response, redirect, render_template, request, url_for
from werkzeug.wrappers import Response as BaseResponse

from namewright.classbook import ClassbookError
from namewright.letters.alphabet import MissingLetters
from namewright.making.request import FOR_EACH_CHILD, Kind, Request
from namewright.message import Message, Problem, message
from namewright.tuning import KNOBS, Knob
from namewright.web import panel
from namewright.web.answers import pages_of, picture_of
from namewright.web.class_page import BY_NAME, SORT_COOKIE, again, page
from namewright.web.class_pdf import request_for
from namewright.web.desk import book, child_or_404, class_settings, desk
from namewright.web.drafts import Drafts, read_drafts
from namewright.web.nearest import nearest, typed_value
from namewright.web.requests import CannotDraw, of_child
from namewright.web.screen_language import CHANGED, language_of, reason
from namewright.web.settings_in_forms import keep_choices, keep_own, take_back

pages = Blueprint("room", __name__)
_YEAR_S = 365 * 24 * 3600
_SIMPLE = frozenset({Kind.SHEETS, Kind.CARDS, Kind.TILES})


@pages.get("/class")
def show() -> BaseResponse:
    """Show the desk; where there is no class yet, the place to paste one."""
    answer = make_response(page(class_settings()))
    if answer.status_code == 200 and "part" not in request.args:
        answer.delete_cookie(CHANGED)
    return answer


@pages.get("/class/sorted")
def sort() -> BaseResponse:
    """Keep on this device whether the class is listed by alphabet, and go back."""
    answer = redirect(url_for("room.show"))
    by = request.args.get("by") == BY_NAME
    answer.set_cookie(SORT_COOKIE, BY_NAME if by else "", max_age=_YEAR_S, httponly=True, samesite="Strict")
    return answer


@pages.post("/class/choices")
def keep() -> tuple[str, int] | BaseResponse:
    """Keep the choices for everyone, and show the desk again; where one cannot be, with what was chosen and why not."""
    try:
        keep_choices(request.form)
    except ClassbookError as error:
        return again(error)
    told = desk().tell([message("web.class.kept")])
    return redirect(url_for("room.show", told=told) + "&for=everyone")


@pages.post("/class/choices/undo")
def undo() -> BaseResponse:
    """Take back the newest change for everyone that still stands; a form sent twice takes back once."""
    told = desk().tell([take_back(None, request.form)])
    return redirect(url_for("room.show", told=told) + "&for=everyone")


@pages.post("/class/language")
def keep_language() -> BaseResponse:
    """Have the children's pages in the language of the screens from now on."""
    book().set_class_settings({"language": language_of(request)})
    return redirect(url_for("room.show", told=desk().tell([message("web.class.kept")])))


@pages.post("/class/drafts")
def keep_drafts() -> str | tuple[str, int]:
    """Keep all that was changed on the desk, for everyone and for each child: all of it, or on an error nothing."""
    drafts = read_drafts(request.form)
    try:
        for child_id in drafts.own:
            drafts.refuse_undrawn(child_or_404(child_id))
        with book().changing():
            if drafts.everyone is not None:
                keep_choices(drafts.everyone)
            for child_id, form in drafts.own.items():
                keep_own(child_or_404(child_id).id, form)
    except Problem as error:
        return render_template("_bar_said.html", problem=error), 422
    return render_template("_bar_said.html", done=message("web.desk.kept"))


@pages.get("/picture/<int:child_id>/page.svg")
def picture(child_id: int) -> Response:
    """Draw a page of a child's, of the kind and with the drafts that the address says."""
    try:
        return picture_of(_asked(child_id, read_drafts(request.args)), request.args.get("page", 1, int))
    except Problem as error:
        return _no_picture(child_id, error)


def _no_picture(child_id: int, error: Problem) -> Response:
    """Say why there is no picture; of letters that we lack by the name as it was typed, not by their codes."""
    if isinstance(error, CannotDraw) and isinstance(error.cause, MissingLetters):
        error = Problem("web.desk.cannot_letters", label=child_or_404(child_id).child.label)
    return Response(reason(request, error), 422, mimetype="text/plain")


@pages.get("/picture/<int:child_id>/pages")
def count_pages(child_id: int) -> Response:
    """Tell how many pages there are of a child's kind: for the screen whose first picture is loaded by itself."""
    try:
        return Response(str(len(pages_of(_asked(child_id, read_drafts(request.args))))), mimetype="text/plain")
    except Problem as error:
        return _no_picture(child_id, error)


def _asked(child_id: int, drafts: Drafts) -> Request:
    """Return the request for what is looked at: a child's pages, or of a kind that is the class's all of it."""
    one, kind = child_or_404(child_id), _kind()
    if kind in _SIMPLE:
        return of_child(kind, drafts.child(one), drafts.settings())
    everyone = drafts.members()
    those = [each for each in everyone if each.id == child_id] if kind in FOR_EACH_CHILD else everyone
    return request_for((kind,), those, drafts.settings())


def _kind() -> Kind:
    word = request.args.get("kind", Kind.SHEETS)
    return Kind(word) if word in tuple(Kind) else Kind.SHEETS


@pages.get("/picture/<int:child_id>/nearest")
def nearest_value(child_id: int) -> str:
    """Say why a setting that was typed cannot be, with the nearest value that can be drawn to take with one press."""
    drafts, one, key = read_drafts(request.args), child_or_404(child_id), request.args.get("key", "")
    of_class = request.args.get("for") == "everyone"
    form = drafts.everyone if of_class else drafts.own.get(child_id)
    found = next((knob for knob in KNOBS if knob.key == key and knob.kind not in ("switch",)), None)
    if found is None or form is None:
        return ""
    control = (panel.for_everyone if of_class else panel.for_child)(class_settings())[key]
    kept = (class_settings() if of_class else one.settings).get(key)
    good = float(kept) if kept else control.rest if control.rest is not None else found.least

    def draw(text: str) -> object:
        changed = form.copy()
        changed[key] = text
        return pages_of(_asked(child_id, Drafts(changed, drafts.own) if of_class else
                               Drafts(drafts.everyone, {**drafts.own, child_id: changed})))

    try:
        draw(form.get(key, ""))
    except Problem as error:
        value = nearest(found, form.get(key, ""), good, control.step, draw)
        told = _narrower(found, form.get(key, ""), one.child.label, value) or error
        return render_template("_nearest.html", problem=told, key=key, value=value, unit=found.unit)
    return ""


def _narrower(knob: Knob, typed: str, label: str, value: str | None) -> Message | None:
    """Tell this child's own limit where a value beyond the setting's limits was typed and the child's is narrower."""
    asked = typed_value(knob, typed, math.nan)
    side = "up_to" if asked > knob.greatest else "from" if asked < knob.least else ""
    if value is None or not side or float(value) in (knob.least, knob.greatest):
        return None
    return message(f"web.desk.{side}", label=label, value=float(value), unit=message(f"setting.unit.{knob.unit}"))
