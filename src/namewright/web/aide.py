"""One child, now: two letters of a name, Enter, and the card is there.

Letters that are typed are part of a name, so they are sent in a form and never stand in an address.
"""

from __future__ import annotations

from flask import Blueprint, Response, redirect, render_template, request, url_for
from werkzeug.wrappers import Response as BaseResponse

from namewright.lines.fit import DoesNotFit
from namewright.making.request import Kind, Request
from namewright.message import Message, Problem, message
from namewright.pages.paper import CardSize
from namewright.roster.children import RosterError
from namewright.roster.parsing import read_roster
from namewright.settings import NamePart
from namewright.web.answers import pdf, pdf_of
from namewright.web.desk import Member, child_or_404, class_settings, desk, members
from namewright.web.finding import beginning, family_of, names_of
from namewright.web.requests import CannotDraw, drawn, of_child, of_visitor
from namewright.wording import FIRST

pages = Blueprint("aide", __name__)
SHEET = "practice"  # not a card, but the child's practice sheet
SIZES = ("sheet", CardSize.INDEX_4X6, CardSize.A6, SHEET)
COOKIE = "card"


@pages.get("/now")
def show() -> str:
    """Ask for two letters."""
    return _page(members())


def _page(found: tuple[Member, ...], typed: str = "", problem: Message | None = None, other: int | None = None) -> str:
    size = request.form.get("size") or request.cookies.get(COOKIE, "")
    return render_template("now.html", members=found, typed=typed, problem=problem, other=other, sizes=SIZES,
                           size=size if size in SIZES else SIZES[0], everyone=members(), names_of=names_of,
                           family_of=family_of)


@pages.post("/now")
def find() -> str | tuple[str, int] | BaseResponse:
    """Go to the card of the one who was meant: chosen, or the only one whose name begins so; else ask which."""
    typed, chosen = request.form.get("letters", "").strip(), request.form.get("child", "")
    if chosen.isdecimal():
        return _made_for(int(chosen))
    if not typed:
        return _page(members(), problem=message("web.now.type_first")), 422
    found = beginning(typed, members())
    if len(found) == 1:
        return _made_for(found[0].id)
    if found:
        return _page(found, typed, message("web.now.which"))
    return _typed(typed)


def _made_for(child_id: int) -> BaseResponse:
    word = _size_word()
    if word == SHEET:
        return _with_size(redirect(url_for("aide.sheet", child_id=child_id)))
    return _with_size(redirect(url_for("aide.card", child_id=child_id, size=word)))


def _size_word() -> str:
    size = request.form.get("size", "")
    return size if size in SIZES else SIZES[0]


def _with_size(answer: BaseResponse) -> BaseResponse:
    answer.set_cookie(COOKIE, _size_word(), max_age=365 * 24 * 3600, httponly=True, samesite="Strict")
    return answer


def _size(word: str) -> CardSize | None:
    return CardSize(word) if word in tuple(CardSize) else None


def _typed(typed: str) -> tuple[str, int] | BaseResponse:
    """Make a card, or a sheet, for a name that is not in the class."""
    try:
        child, settings = read_roster(typed, message("roster.name"), NamePart.BOTH).children[0], class_settings()
        word = _size_word()
        asked = of_visitor(Kind.SHEETS if word == SHEET else Kind.CARDS, child, settings, _size(word))
        with desk().lock:
            made = drawn(desk().setter, asked)
        return pdf(pdf_of(made, settings.get("language", FIRST)))
    except (RosterError, CannotDraw) as error:
        return _page(members(), typed, _failed(error)), 422


def _failed(why: Problem) -> Message:
    return message("web.now.failed", reason=why.message)


@pages.get("/child/<int:child_id>/card.pdf")
def card(child_id: int) -> str | tuple[str, int] | Response:
    """Return a child's card."""
    one, settings = child_or_404(child_id), class_settings()
    asked = of_child(Kind.CARDS, one, settings, _size(request.args.get("size", "")))
    try:
        return pdf(desk().picture(("card", asked), lambda setter: pdf_of(drawn(setter, asked), _language(asked))))
    except CannotDraw as error:
        other = child_id if isinstance(error.cause, DoesNotFit) else None  # a sheet lacks the same letters
        return _page(members(), "", _failed(error), other=other), 422


def _language(asked: Request) -> str:
    return asked.settings.language


@pages.get("/child/<int:child_id>/sheet.pdf")
def sheet(child_id: int) -> Response:
    """Return a child's practice sheet."""
    asked = of_child(Kind.SHEETS, child_or_404(child_id), class_settings())
    with desk().lock:
        made = drawn(desk().setter, asked)
    return pdf(pdf_of(made, _language(asked)))
