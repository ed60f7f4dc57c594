"""A page to take home: the child's sheet and a short note for the family, in the family's language."""

from __future__ import annotations

from collections.abc import Mapping

from flask import Blueprint, Response, redirect, render_template, request, url_for
from werkzeug.wrappers import Response as BaseResponse

from namewright.classbook import BookChild
from namewright.making.request import Kind, Request
from namewright.message import message
from namewright.pages.page import Page
from namewright.pages.summary import Entry, drawable, summary_pages
from namewright.pages.typesetter import Typesetter
from namewright.web import answers
from namewright.web.answers import pdf_of, to_print
from namewright.web.desk import book, child_or_404, class_settings, desk
from namewright.web.requests import drawn, of_child
from namewright.web.screen_language import language_of
from namewright.wording import languages, wording

pages = Blueprint("family", __name__)
NOTE = ("greeting", "first", "second", "third", "fourth", "closing")


@pages.get("/child/<int:child_id>/home")
def show(child_id: int) -> str:
    """Show the note and the sheet, and let the family's language be chosen."""
    one = child_or_404(child_id)
    return render_template("family.html", child=one, label=one.child.label, spoken=_spoken(one),
                           note=note(one, _spoken(one)), kept=one.settings.get("home_language"))


def _spoken(one: BookChild) -> str:
    """Return the language that was asked for, else that of the child's home, else that of the screen."""
    asked = request.args.get("in", "")
    return asked if asked in languages() else one.settings.get("home_language") or language_of(request)


@pages.post("/child/<int:child_id>/home")
def keep(child_id: int) -> BaseResponse:
    """Keep the language of the child's home; empty text is not said. Raises ClassbookError for one without words."""
    one = child_or_404(child_id)
    book().set_settings(one.id, {"home_language": request.form.get("in", "")})
    told = desk().tell([message("web.family.kept", label=one.child.label)])
    return redirect(url_for("family.show", child_id=child_id, told=told))


def note(one: BookChild, spoken: str) -> list[str]:
    """Return the note to the family, a paragraph each."""
    return [wording(spoken).say(f"page.home.{part}", label=one.child.practice) for part in NOTE]


def _settings(spoken: str) -> Mapping[str, str]:
    """Return the class's settings, with the sheet in the family's language."""
    return {**class_settings(), "language": spoken}


@pages.get("/child/<int:child_id>/home.svg")
def picture(child_id: int) -> Response:
    """Draw the sheet in the family's language. Raises CannotDraw."""
    one = child_or_404(child_id)
    return answers.picture_of(_sheet(one, _spoken(one)))


def _sheet(one: BookChild, spoken: str) -> Request:
    return of_child(Kind.SHEETS, one, _settings(spoken))


def _made(setter: Typesetter, one: BookChild, spoken: str) -> list[Page]:
    asked = _sheet(one, spoken)
    greeting, *rest = (drawable(setter, paragraph) for paragraph in note(one, spoken))
    letter = summary_pages(setter, [Entry(greeting, title=True), *(Entry("", (text,)) for text in rest)],
                           asked.settings.paper, binding=asked.settings.binding)
    return [*letter, *drawn(setter, asked)]


@pages.get("/child/<int:child_id>/home.pdf")
def pdf(child_id: int) -> Response:
    """Return note and sheet as one PDF."""
    one = child_or_404(child_id)
    spoken = _spoken(one)
    with desk().lock:
        made = _made(desk().setter, one, spoken)
    return answers.pdf(pdf_of(made, spoken))


@pages.get("/child/<int:child_id>/home/pages")
def on_screen(child_id: int) -> str:
    """Show note and sheet for the browser to print."""
    one = child_or_404(child_id)
    spoken = _spoken(one)
    with desk().lock:
        shown = [to_print(page) for page in drawn(desk().setter, _sheet(one, spoken))]
    return render_template("print.html", shown=shown, missed=[], note=note(one, spoken), spoken=spoken,
                           paper=shown[0][0])
