"""Answers that several pages give: a picture, a PDF, a page drawn for the browser to print."""

from __future__ import annotations

import io
from collections.abc import Iterable

from flask import Response
from markupsafe import Markup

from namewright.making.request import Request
from namewright.output.pdf import write_pdf
from namewright.output.svg import page_svg
from namewright.pages.page import Page
from namewright.web.desk import desk
from namewright.web.requests import drawn
from namewright.wording import wording


def svg(text: str) -> Response:
    """Return a picture as an answer."""
    return Response(text, mimetype="image/svg+xml")


def picture_of(request: Request) -> Response:
    """Draw the first page of a request, kept for who asks again. Raises CannotDraw."""
    return svg(desk().picture(("page", request), lambda setter: page_svg(drawn(setter, request)[0])))


def pdf_of(made: Iterable[Page], language: str) -> bytes:
    """Return a small PDF at once."""
    out = io.BytesIO()
    write_pdf(made, out, title=wording(language).say("page.pdf_title"), lang=language)
    return out.getvalue()


def pdf(data: bytes) -> Response:
    """Return a PDF to be shown by the browser; its file name tells nothing about a child."""
    answer = Response(data, mimetype="application/pdf")
    answer.headers["Content-Disposition"] = 'inline; filename="name-practice.pdf"'
    return answer


def to_print(page: Page) -> tuple[str, Markup]:
    """Return a page's kind of paper, by the class name in the style sheet, and its drawing."""
    name = f"p{round(page.width_mm * 10)}x{round(page.height_mm * 10)}"
    return name, Markup(page_svg(page).partition("?>")[2] or page_svg(page))
