"""A letter to take home: to be printed alone, before the child's sheet, or on its back, in the family's language.

The language is a setting of the child, so whoever prints the next letter finds it chosen.
"""

from __future__ import annotations

from collections.abc import Mapping
from enum import StrEnum

from flask import Blueprint, Response, redirect, render_template, request, url_for
from werkzeug.wrappers import Response as BaseResponse

from namewright.classbook import BookChild
from namewright.making.request import Kind, Request
from namewright.message import message
from namewright.output.svg import page_svg
from namewright.pages.drawable import drawable
from namewright.pages.letter_home import letter_pages
from namewright.pages.page import Page
from namewright.pages.typesetter import Typesetter
from namewright.practice.ordering import order_class
from namewright.web import answers
from namewright.web.answers import file_name, pdf_of, to_print
from namewright.web.desk import book, child_or_404, class_settings, desk
from namewright.web.requests import drawn, of_child
from namewright.web.screen_language import language_of
from namewright.wording import languages, wording

pages = Blueprint("family", __name__)
NOTE = ("greeting", "first", "second", "third", "fourth", "closing")


class Beside(StrEnum):
    """Where the letter stands to the child's sheet."""

    FIRST = "first"
    BACK = "back"
    ALONE = "alone"


@pages.get("/child/<int:child_id>/home")
def show(child_id: int) -> str:
    """Show the letter and the sheet as they will print, and let the language and the place of the letter be chosen."""
    one = child_or_404(child_id)
    return render_template("family.html", child=one, label=one.child.label, spoken=_spoken(one), beside=_beside(one),
                           ways=tuple(Beside) if _has_sheet(one) else (Beside.ALONE,),
                           kept=one.settings.get("home_language"))


def _has_sheet(one: BookChild) -> bool:
    return order_class([one.child])[0].band is not None


def _beside(one: BookChild) -> Beside:
    asked = request.values.get("place", "")
    return Beside(asked) if asked in tuple(Beside) and _has_sheet(one) else (
        Beside.FIRST if _has_sheet(one) else Beside.ALONE)


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
    return redirect(url_for("family.show", child_id=child_id, told=told, place=_beside(one)))


def note(one: BookChild, spoken: str) -> list[str]:
    """Return the letter to the family, a paragraph each."""
    return [wording(spoken).say(f"page.home.{part}", label=one.child.practice) for part in NOTE]


def _settings(spoken: str) -> Mapping[str, str]:
    """Return the class's settings, with the sheet in the family's language."""
    return {**class_settings(), "language": spoken}


@pages.get("/child/<int:child_id>/home.svg")
def picture(child_id: int) -> Response:
    """Draw the sheet in the family's language. Raises CannotDraw."""
    one = child_or_404(child_id)
    return answers.picture_of(_sheet(one, _spoken(one)))


@pages.get("/child/<int:child_id>/home/letter.svg")
def letter_picture(child_id: int) -> Response:
    """Draw the letter."""
    one = child_or_404(child_id)
    with desk().lock:
        return answers.svg(page_svg(_letter(desk().setter, one, _spoken(one))[0]))


def _sheet(one: BookChild, spoken: str) -> Request:
    return of_child(Kind.SHEETS, one, _settings(spoken))


def _letter(setter: Typesetter, one: BookChild, spoken: str) -> tuple[Page, ...]:
    asked = _sheet(one, spoken).settings
    greeting, *rest = (drawable(setter, paragraph) for paragraph in note(one, spoken))
    return letter_pages(setter, greeting, rest, asked.paper, binding=asked.binding)


def _made(setter: Typesetter, one: BookChild, spoken: str, beside: Beside) -> list[Page]:
    """Return the pages in the order in which they are printed, one side after the other."""
    letter = _letter(setter, one, spoken)
    sheet = () if beside is Beside.ALONE else drawn(setter, _sheet(one, spoken))
    return [*sheet[:1], *letter, *sheet[1:]] if beside is Beside.BACK else [*letter, *sheet]


@pages.get("/child/<int:child_id>/home.pdf")
def pdf(child_id: int) -> Response:
    """Return the letter, and the sheet where it is wanted, as one PDF."""
    one = child_or_404(child_id)
    spoken = _spoken(one)
    with desk().lock:
        made = _made(desk().setter, one, spoken, _beside(one))
    return answers.pdf(pdf_of(made, spoken), file_name(["family"]))


@pages.get("/child/<int:child_id>/home/pages")
def on_screen(child_id: int) -> str:
    """Show the same pages for the browser to print."""
    one = child_or_404(child_id)
    with desk().lock:
        shown = [to_print(page) for page in _made(desk().setter, one, _spoken(one), _beside(one))]
    return render_template("print.html", shown=shown, missed=[])
