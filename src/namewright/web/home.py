"""Where one comes in, the language of the screens, and the drawings in our own letters."""

from __future__ import annotations

from flask import Blueprint, Response, abort, redirect, request, url_for
from werkzeug.wrappers import Response as BaseResponse

from namewright.web import screen_language
from namewright.web.answers import svg
from namewright.web.desk import book, desk
from namewright.web.letter_forms import LETTERS
from namewright.web.row_pictures import form_svg, mark_svg

pages = Blueprint("home", __name__)
_YEAR_S = 365 * 24 * 3600


@pages.get("/")
def first() -> BaseResponse:
    """Lead to the class, or to the place to paste one; what was to be told comes along."""
    return redirect(url_for("room.show" if book().children() else "roster.show", told=request.args.get("told")))


@pages.post("/language")
def choose_language() -> BaseResponse:
    """Keep the language of the screens, and go back to where it was chosen."""
    answer = redirect(_safe_place(request.form.get("back", "")))
    if request.form.get("language") in screen_language.screen_languages():
        answer.set_cookie(screen_language.COOKIE, request.form["language"], max_age=_YEAR_S, httponly=True,
                          samesite="Strict")
        answer.set_cookie(screen_language.CHANGED, "1", httponly=True, samesite="Strict")
    return answer


def _safe_place(path: str) -> str:
    """Return a path of our own; the first page for anything that could lead elsewhere."""
    tame = path.startswith("/") and not path.startswith("//") and "\\" not in path and path.isprintable()
    return path if tame else url_for("home.first")


@pages.get("/alive")
def alive() -> tuple[str, int]:
    """Say that the program answers."""
    return "", 204


@pages.get("/art/<letter>/<form>.svg")
def form_art(letter: str, form: str) -> Response:
    """Draw one form of a letter."""
    if form not in LETTERS.get(letter, ()):
        abort(404)
    return svg(desk().picture(("form", letter, form), lambda setter: form_svg(setter, letter, form)))


@pages.get("/mark.svg")
def mark() -> Response:
    """Draw our name in our own letters."""
    return svg(desk().picture("mark", mark_svg))
