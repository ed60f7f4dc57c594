"""A page to take home: the child's sheet and a short note for the family, in the family's language."""

from __future__ import annotations

from collections.abc import Mapping

from flask import Blueprint, Response, render_template, request

from namewright.classbook import BookChild
from namewright.pages.page import Page
from namewright.pages.press import Press
from namewright.pages.summary import Entry, drawable, summary_pages
from namewright.web.aide import pdf_of
from namewright.web.class_settings import sheet_of_class
from namewright.web.desk import child_or_404, class_settings, desk
from namewright.web.pictures import child_pages
from namewright.web.printing import drawn, pdf_answer
from namewright.web.room import drawn as drawing
from namewright.web.tongue import tongue_of
from namewright.wording import languages, wording

pages = Blueprint("family", __name__)
NOTE = ("greeting", "first", "second", "third", "fourth", "closing")


@pages.get("/child/<int:child_id>/home")
def show(child_id: int) -> str:
    """Show the note and the sheet, and let the family's language be chosen."""
    one = child_or_404(child_id)
    return render_template("family.html", child=one, label=one.child.label, spoken=_spoken(),
                           note=note(one, _spoken()))


def _spoken() -> str:
    asked = request.args.get("in", "")
    return asked if asked in languages() else tongue_of(request)


def note(one: BookChild, spoken: str) -> list[str]:
    """Return the note to the family, a paragraph each."""
    return [wording(spoken).say(f"page.home.{part}", label=one.child.practice) for part in NOTE]


def _settings(spoken: str) -> Mapping[str, str]:
    """Return the class's settings, with the sheet in the family's language."""
    return {**class_settings(), "language": spoken}


@pages.get("/child/<int:child_id>/home.svg")
def picture(child_id: int) -> Response:
    """Draw the sheet in the family's language. Raises CannotDraw."""
    return drawing(child_or_404(child_id), _settings(_spoken()))


def _made(press: Press, one: BookChild, spoken: str) -> list[Page]:
    settings = _settings(spoken)
    greeting, *rest = (drawable(press, paragraph) for paragraph in note(one, spoken))
    sheet = sheet_of_class(settings)
    letter = summary_pages(press, [Entry(greeting, title=True), *(Entry("", (text,)) for text in rest)], sheet.paper,
                           binding=sheet.binding)
    return [*letter, *child_pages(press, one, settings)]


@pages.get("/child/<int:child_id>/home.pdf")
def pdf(child_id: int) -> Response:
    """Return note and sheet as one PDF."""
    one, spoken = child_or_404(child_id), _spoken()
    with desk().lock:
        made = _made(desk().press, one, spoken)
    return pdf_answer(pdf_of(made, spoken))


@pages.get("/child/<int:child_id>/home/pages")
def on_screen(child_id: int) -> str:
    """Show note and sheet for the browser to print."""
    one, spoken = child_or_404(child_id), _spoken()
    with desk().lock:
        shown = [drawn(page) for page in child_pages(desk().press, one, _settings(spoken))]
    return render_template("print.html", shown=shown, missed=[], note=note(one, spoken), spoken=spoken,
                           paper=shown[0][0])
