"""Lines that fit one hand: a child's own settings kept with their history, seen at true size, printed for the file.

Its screen is the desk, with the child's panel beside the page. Lengths are millimetres. Out of scope: what a setting
means (``tuning``) and how it is kept (``classbook``).
"""

from __future__ import annotations

from datetime import date

from flask import Blueprint, Response, redirect, render_template, request, url_for
from werkzeug.wrappers import Response as BaseResponse

from namewright.classbook.keys import CHILD_KEYS
from namewright.making.from_book import holds_for_child, holds_for_class
from namewright.making.request import Kind
from namewright.message import Message, Problem, message
from namewright.pages.growth import day_said
from namewright.web import panel
from namewright.web.answers import file_name, pdf, pdf_of, svg
from namewright.web.class_page import again
from namewright.web.desk import book, child_or_404, class_settings, desk
from namewright.web.drafts import Drafts, read_drafts
from namewright.web.requests import drawn, of_child
from namewright.web.row_pictures import row_svg
from namewright.web.screen_language import reason
from namewright.web.settings_in_forms import keep_own, opened_after, take_back
from namewright.web.settings_told import called, told_of
from namewright.web.trial import listed_height

pages = Blueprint("lines", __name__)


@pages.get("/lines")
def choose() -> BaseResponse:
    """Lead to the desk, where every child has its lines."""
    return redirect(url_for("room.show"))


@pages.get("/lines/<int:child_id>")
@pages.get("/child/<int:child_id>/lines")
def show(child_id: int) -> BaseResponse:
    """Lead to the desk with the child's settings, all of them to be seen."""
    return redirect(url_for("room.show", child=child_or_404(child_id).id, all=1, told=request.args.get("told")))


@pages.post("/child/<int:child_id>/lines")
def keep(child_id: int) -> tuple[str, int] | BaseResponse:
    """Keep the settings, and go on to the sheet where that shall be printed: what the page shows is what is printed.

    Settings that are as they should be already are kept without a word in the history.
    """
    one = child_or_404(child_id)
    opened_after(request.form)
    try:
        Drafts(own={one.id: request.form}).refuse_undrawn(one)
        save = keep_own(one.id, request.form)
    except Problem as error:
        return again(error, child_id)[0], 409
    if "print" in request.form:
        return redirect(url_for("aide.sheet", child_id=child_id))
    return _back(child_id, message("web.lines.kept" if save else "web.lines.unchanged", label=one.child.label))


def _back(child_id: int, said: Message) -> BaseResponse:
    told = desk().tell([said])
    return redirect(url_for("room.show", child=child_id, told=told))


@pages.post("/child/<int:child_id>/lines/undo")
def undo(child_id: int) -> BaseResponse:
    """Take back the newest change that still stands; a form sent twice takes back once."""
    child_or_404(child_id)
    return _back(child_id, take_back(child_id, request.form))


@pages.get("/picture/<int:child_id>/row.svg")
def row(child_id: int) -> Response:
    """Draw a row of a child's name, as it is with the drafts of the address or (``side=class``) as everyone has it."""
    one, drafts = child_or_404(child_id), read_drafts(request.args)
    try:
        settings = drafts.settings()
        if request.args.get("side") == "class":
            chosen, name = holds_for_class(settings), one.child.practice
        else:
            trial = drafts.child(one)
            chosen, name = holds_for_child(trial, settings), trial.child.practice
        return svg(desk().picture(("row", name, chosen), lambda setter: row_svg(setter, name, chosen)))
    except Problem as error:
        return Response(reason(request, error), 422, mimetype="text/plain")


@pages.get("/child/<int:child_id>/sizes.pdf")
def sizes(child_id: int) -> Response:
    """Return the child's name at line heights to try, up to 40 mm. Raises CannotDraw."""
    asked = of_child(Kind.SIZES, child_or_404(child_id), class_settings())
    with desk().lock:
        made = drawn(desk().setter, asked)
    return pdf(pdf_of(made, asked.settings.language), file_name(["sizes"]))


@pages.get("/child/<int:child_id>/settings")
def for_the_file(child_id: int) -> str:
    """Show a child's settings as a page for the file: what is set, what everyone has, why, and what was changed."""
    one, settings = child_or_404(child_id), class_settings()
    controls = panel.for_child(settings, listed_height(one))
    keys = [key for key in (*controls, *CHILD_KEYS) if one.settings.get(key)]
    return render_template(
        "settings.html", child=one, label=one.child.label, keys=list(dict.fromkeys(keys)), controls=controls,
        today=day_said(date.today(), year=True), history=book().history(child_id), called=called, told_of=told_of,
        rests_at=panel.rests_at, range_of=panel.range_of, class_settings=settings)
