"""One child, now: a tap on a name, and the card is there to be printed.

Letters that are typed are part of a name, so they are sent in a form and never stand in an address.
"""

from __future__ import annotations

from collections.abc import Iterable

from flask import Blueprint, Response, redirect, render_template, request, url_for
from werkzeug.wrappers import Response as BaseResponse

from namewright.letters.alphabet import MissingLetters
from namewright.lines.fit import DoesNotFit
from namewright.making.request import Kind, Request
from namewright.message import Message, Problem, message
from namewright.names.latin_spelling import latin_spelling
from namewright.pages.page import Page
from namewright.pages.paper import CardSize
from namewright.roster.children import Child, RosterError
from namewright.roster.parsing import read_roster
from namewright.settings import NamePart
from namewright.web.answers import file_name, pdf, pdf_of, to_print
from namewright.web.desk import Member, child_or_404, class_settings, desk, members
from namewright.web.finding import beginning, by_alphabet, by_initial, family_of, names_of
from namewright.web.list_spelling import asks_latin
from namewright.web.requests import CannotDraw, drawn, of_child, of_visitor

pages = Blueprint("aide", __name__)
SHEET, TILES = "practice", "tiles"  # not cards, but the child's practice sheet and its letters to cut out
MADE = ("sheet", CardSize.INDEX_4X6, CardSize.A6, SHEET, TILES)
_KINDS = {SHEET: Kind.SHEETS, TILES: Kind.TILES}
COOKIE = "card"


@pages.get("/now")
def show() -> str:
    """Show everyone, by alphabet, and what can be made."""
    return _page(members())


def _page(found: Iterable[Member], typed: str = "", problem: Message | None = None, other: int | None = None,
          latin: str | None = None) -> str:
    """Show those who were found; ``latin`` is a spelling that is offered for a name that cannot be written, to change.

    ``other`` is a child whose sheet has room where a card has not.
    """
    shown = by_alphabet(found)
    return render_template("now.html", initials=by_initial(shown), typed=typed, problem=problem, other=other,
                           latin=latin, made=MADE, size=_size_word(), count=len(shown), names_of=names_of,
                           family_of=family_of)


@pages.post("/now")
def find() -> str | tuple[str, int] | BaseResponse:
    """Show what was asked for the one who was meant: chosen, or the only one whose name begins so; else ask which."""
    typed, chosen = request.form.get("letters", "").strip(), request.form.get("child", type=int)
    if chosen is not None:
        return _made_for(chosen)
    if not typed:
        return _page(members(), problem=message("web.now.type_first")), 422
    found = beginning(typed, members()) if "visitor" not in request.form else ()
    if len(found) == 1:
        return _made_for(found[0].id)
    if found:
        return _page(found, typed, message("web.now.which"))
    return _typed(typed)


def _made_for(child_id: int) -> BaseResponse:
    answer = redirect(url_for("aide.made", child_id=child_id, size=_size_word()))
    answer.set_cookie(COOKIE, _size_word(), max_age=365 * 24 * 3600, httponly=True, samesite="Strict")
    return answer


def _size_word() -> str:
    """Return what shall be made: as was asked, else as the last time on this device."""
    word = request.values.get("size") or request.cookies.get(COOKIE, "")
    return word if word in MADE else MADE[0]


def _size(word: str) -> CardSize | None:
    return CardSize(word) if word in tuple(CardSize) else None


def _name_of_file(word: str) -> str:
    return file_name([_KINDS.get(word, Kind.CARDS)])


def _of_visitor(typed: str, word: str) -> tuple[Child, Request]:
    """Return who was typed and what to make. Raises RosterError where no name was typed."""
    child = read_roster(typed, message("roster.name"), NamePart.BOTH,
                        names_in=class_settings().get("names_in", "")).children[0]
    return child, of_visitor(_KINDS.get(word, Kind.CARDS), child, class_settings(), _size(word))


def _typed(typed: str) -> str | tuple[str, int] | BaseResponse:
    """Show what was asked for a name that is not in the class; the PDF of it is asked for by the same form again."""
    word = _size_word()
    try:
        child, asked = _of_visitor(typed, word)
    except RosterError as error:
        return _page(members(), typed, _failed(error)), 422
    try:
        made = _drawn(asked)
    except CannotDraw as error:
        problem, latin = _why_not(error, child)
        return _page(members(), typed, problem, latin=latin), 422
    if "pdf" in request.form:
        return pdf(pdf_of(made, asked.settings.language), _name_of_file(word))
    return _shown(made, child.label, typed=typed)


def _drawn(asked: Request) -> tuple[Page, ...]:
    with desk().lock:
        return drawn(desk().setter, asked)


def _shown(made: Iterable[Page], label: str, typed: str = "", child_id: int | None = None) -> str:
    return render_template("made.html", shown=[to_print(page) for page in made], label=label, typed=typed, id=child_id,
                           size=_size_word(), made=MADE)


def _failed(why: Problem) -> Message:
    return message("web.now.failed", reason=why.message)


def _cannot(error: CannotDraw, child_id: int) -> tuple[str, int]:
    """Say why, and offer the sheet where only the card has too little room."""
    other = child_id if isinstance(error.cause, DoesNotFit) and _size_word() != SHEET else None
    problem, latin = _why_not(error, child_or_404(child_id).child)
    return _page(members(), "", problem, other=other, latin=latin), 422


def _why_not(error: CannotDraw, child: Child) -> tuple[Message, str | None]:
    """Return what stood in the way, and where it is letters a spelling in those that we have."""
    if not isinstance(error.cause, MissingLetters):
        return _failed(error), None
    return asks_latin(error.cause.characters), latin_spelling(child.practice)


def _of_child(child_id: int, word: str) -> Request:
    return of_child(_KINDS.get(word, Kind.CARDS), child_or_404(child_id), class_settings(), _size(word))


@pages.get("/child/<int:child_id>/made")
def made(child_id: int) -> str | tuple[str, int]:
    """Show a child's card, sheet or tiles as they will print, with one large way to print them."""
    try:
        return _shown(_drawn(_of_child(child_id, _size_word())), child_or_404(child_id).child.label, child_id=child_id)
    except CannotDraw as error:
        return _cannot(error, child_id)


def _pdf(child_id: int, word: str) -> tuple[str, int] | Response:
    asked = _of_child(child_id, word)
    try:
        made = desk().picture(("pdf", asked), lambda setter: pdf_of(drawn(setter, asked), asked.settings.language))
    except CannotDraw as error:
        return _cannot(error, child_id)
    return pdf(made, _name_of_file(word))


@pages.get("/child/<int:child_id>/card.pdf")
def card(child_id: int) -> tuple[str, int] | Response:
    """Return a child's card."""
    return _pdf(child_id, request.args.get("size", ""))


@pages.get("/child/<int:child_id>/sheet.pdf")
def sheet(child_id: int) -> tuple[str, int] | Response:
    """Return a child's practice sheet."""
    return _pdf(child_id, SHEET)


@pages.get("/child/<int:child_id>/tiles.pdf")
def tiles(child_id: int) -> tuple[str, int] | Response:
    """Return a child's letters to cut out."""
    return _pdf(child_id, TILES)
