"""Answers that several pages give: a picture, a PDF, a page drawn for the browser to print."""

from __future__ import annotations

import io
from collections.abc import Iterable, Sequence
from datetime import date

import unicodedata2
from flask import Response, request
from markupsafe import Markup

from namewright.making.request import Request
from namewright.message import Problem
from namewright.output.pdf import write_pdf
from namewright.output.svg import page_svg
from namewright.pages.growth import day_said
from namewright.pages.page import Page
from namewright.web.desk import desk
from namewright.web.requests import CannotDraw, drawn
from namewright.web.screen_language import language_of
from namewright.wording import wording

_MOST_NAMED = 2  # kinds of pages in the name of a file


def svg(text: str) -> Response:
    """Return a picture as an answer."""
    return Response(text, mimetype="image/svg+xml")


def picture_of(request: Request, number: int = 1) -> Response:
    """Draw a page of a request, the last where there are not so many; how many there are stands in a header.

    Pages are kept for who asks again. Raises CannotDraw.
    """
    made = pages_of(request)
    at = min(max(number, 1), len(made)) - 1
    answer = svg(desk().picture(("page", request, at), lambda _: page_svg(made[at])))
    answer.headers["Pages"] = str(len(made))
    return answer


def pages_of(request: Request) -> tuple[Page, ...]:
    """Return the pages of a request, laid out once. Raises CannotDraw, also where there is none."""
    made = desk().picture(("pages", request), lambda setter: drawn(setter, request))
    if not made:
        raise CannotDraw(Problem("web.desk.no_page"))
    return made


def pdf_of(made: Iterable[Page], language: str) -> bytes:
    """Return a small PDF at once."""
    out = io.BytesIO()
    write_pdf(made, out, title=wording(language).say("page.pdf_title"), lang=language)
    return out.getvalue()


def pdf(data: bytes, name: str) -> Response:
    """Return a PDF to be shown by the browser, which saves it by this name."""
    answer = Response(data, mimetype="application/pdf")
    answer.headers["Content-Disposition"] = f'inline; filename="{name}"'
    return answer


def file_name(kinds: Sequence[str], ending: str = "pdf") -> str:
    """Return a name for a file that tells what and when, such as ``sheets-26-Nov.pdf``, and nothing about a child.

    In the language of the screen, in letters that stand in every header and on every disk.
    """
    words = wording(language_of(request))
    named = kinds if len(kinds) <= _MOST_NAMED else ["pages"]
    parts = [*(words.say(f"web.file.{kind}") for kind in named), words.say(day_said(date.today()))]
    folded = unicodedata2.normalize("NFKD", "-".join(parts)).encode("ascii", "ignore").decode()
    return "-".join("".join(sign if sign.isalnum() else " " for sign in folded).split()) + f".{ending}"


def to_print(page: Page) -> tuple[str, Markup]:
    """Return a page's kind of paper, by the class name in the style sheet, and its drawing."""
    name = f"p{round(page.width_mm * 10)}x{round(page.height_mm * 10)}"
    return name, Markup(page_svg(page).partition("?>")[2] or page_svg(page))
