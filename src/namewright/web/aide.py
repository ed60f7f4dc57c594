"""One child, now: two letters of a name, Enter, and the card is there.

Letters that are typed are part of a name, so they are sent in a form and never stand in an address.
"""

from __future__ import annotations

import io
from collections.abc import Mapping

from flask import Blueprint, Response, redirect, render_template, request, url_for
from werkzeug.wrappers import Response as BaseResponse

from namewright.letters.alphabet import MissingLetters
from namewright.lines.fit import DoesNotFit
from namewright.message import Message, message
from namewright.output.pdf import write_pdf
from namewright.pages.name_card import CardSettings, CardSize
from namewright.pages.page import Page
from namewright.pages.press import Press
from namewright.roster.children import Child, RosterError
from namewright.roster.parsing import read_roster
from namewright.roster.vocabulary import fold
from namewright.settings import NamePart
from namewright.web.class_settings import sheet_of_class
from namewright.web.desk import Member, child_or_404, class_settings, desk, members
from namewright.web.pictures import CannotDraw, child_pages, sheet_pages
from namewright.web.printing import pdf_answer
from namewright.web.tongue import reason
from namewright.web.what import card_for, card_of, sentence

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
                           size=size if size in SIZES else SIZES[0], whole=members(), names_of=names_of,
                           family_of=family_of)


@pages.post("/now")
def find() -> str | tuple[str, int] | BaseResponse:
    """Go to the card of the one who was meant: chosen, or the only one whose name begins so; else ask which."""
    typed, chosen = request.form.get("letters", "").strip(), request.form.get("child", "")
    if chosen.isdecimal():
        return _made_for(int(chosen))
    if not typed:
        return _page(members(), problem=message("web.now.type_first")), 422
    found = beginning(typed)
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


def beginning(typed: str) -> tuple[Member, ...]:
    """Return those whose name begins with what was typed, marks and capitals aside; else those whose family’s does."""
    wanted = fold(typed)
    first = tuple(one for one in members() if any(name.startswith(wanted) for name in names_of(one)))
    return first or tuple(one for one in members() if fold(one.one.child.family).startswith(wanted))


def names_of(one: Member) -> tuple[str, ...]:
    """Return the names by which a child may be found, the family's apart, folded."""
    child = one.one.child
    return tuple(dict.fromkeys(fold(name) for name in (child.practice, child.label, child.given) if name))


def family_of(one: Member) -> str:
    """Return the family name, folded: it counts where no name begins so."""
    return fold(one.one.child.family)


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
        with desk().lock:
            made = _pages_of(desk().press, child, settings)
        return pdf_answer(pdf_of(made, settings.get("language", "en")))
    except (RosterError, CannotDraw) as error:
        why = str(error)
    except (MissingLetters, DoesNotFit) as error:
        why = sentence(error)
    return _page(members(), typed, _failed(why)), 422


def _failed(why: str) -> Message:
    return message("web.now.failed", reason=reason(request, why))


def _pages_of(press: Press, child: Child, settings: Mapping[str, str]) -> list[Page]:
    """Return what was asked for. Raises MissingLetters, DoesNotFit or CannotDraw."""
    sheet, word = sheet_of_class(settings), _size_word()
    if word == SHEET:
        return list(sheet_pages(press, child, sheet))
    card = CardSettings(sheet.ruling, _size(word) or CardSize.INDEX_4X6, sheet.support, sheet.language, sheet.letters)
    return [card_for(press, child.practice, child.practice, card, settings, _size(word))]


def pdf_of(made: list[Page], language: str) -> bytes:
    """Return a small PDF at once."""
    out = io.BytesIO()
    write_pdf(made, out, title="Name practice", lang=language)
    return out.getvalue()


@pages.get("/child/<int:child_id>/card.pdf")
def card(child_id: int) -> str | tuple[str, int] | Response:
    """Return a child's card."""
    one, settings = child_or_404(child_id), class_settings()

    size, language = _size(request.args.get("size", "")), settings.get("language", "en")

    def make(press: Press) -> bytes:
        return pdf_of([card_of(press, one, settings, size)], language)

    try:
        asked = ("card", one.child, one.tuning, size, sorted(settings.items()))
        return pdf_answer(desk().picture(asked, make))
    except (MissingLetters, DoesNotFit) as error:
        other = child_id if isinstance(error, DoesNotFit) else None  # a sheet lacks the same letters
        return _page(members(), "", _failed(sentence(error)), other=other), 422


@pages.get("/child/<int:child_id>/sheet.pdf")
def sheet(child_id: int) -> Response:
    """Return a child's practice sheet."""
    one, settings = child_or_404(child_id), class_settings()
    with desk().lock:
        made = child_pages(desk().press, one, settings)
    return pdf_answer(pdf_of(list(made), settings.get("language", "en")))
