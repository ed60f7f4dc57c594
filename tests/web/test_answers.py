"""Answers that several pages give."""

from __future__ import annotations

import io
from datetime import date

import pypdf
import pytest
from flask import Flask

from namewright.making.choices import Choices
from namewright.making.make import made_at_once
from namewright.making.request import Kind, Request, listed
from namewright.pages.page import Page
from namewright.pages.paper import Paper
from namewright.pages.typesetter import Typesetter
from namewright.practice.ordering import order_class
from namewright.roster.children import Child
from namewright.web.answers import file_name, pdf, pdf_of, svg, to_print
from namewright.wording import wording


@pytest.fixture(scope="module", params=list(Paper))
def page(request: pytest.FixtureRequest, setter: Typesetter) -> Page:
    member = listed(order_class([Child("Mira", "Mira", "Mira", "", 1)])[0])
    return made_at_once(Request((Kind.SHEETS,), (member,), Choices(paper=request.param)), setter)[0]


def test_a_pdf_is_shown_and_tells_no_name(page: Page) -> None:
    """It has one page, its title is general and in the language of the page; nothing in the headers is a name."""
    answer = pdf(pdf_of([page], "es"), "sheets-26-Nov.pdf")
    assert answer.mimetype == "application/pdf"
    assert answer.headers["Content-Disposition"] == 'inline; filename="sheets-26-Nov.pdf"'
    read = pypdf.PdfReader(io.BytesIO(answer.get_data()))
    assert len(read.pages) == 1
    assert read.metadata is not None
    assert read.metadata.title == wording("es").say("page.pdf_title")
    assert "Mira" not in str(answer.headers)


@pytest.mark.parametrize(("kinds", "english", "spanish"), [
    (["sheets"], "sheets", "hojas"), (["cards", "tiles"], "cards-tiles", "tarjetas-fichas"),
    (["family"], "family-letter", "carta-a-la-familia"), (["missing"], "what-is-missing", "que-falta"),
    (["sheets", "cards", "tiles"], "pages", "paginas"),
])
def test_a_file_is_called_by_what_is_in_it_and_the_day(kinds: list[str], english: str, spanish: str) -> None:
    """In the language of the screen, in plain letters, with the day of the month and its name."""
    day = date.today()
    for language, what in (("en", english), ("es", spanish)):
        with Flask(__name__).test_request_context("/", headers={"Accept-Language": language}):
            month = wording(language).say(f"month.{day.month}")
            assert file_name(kinds) == f"{what}-{day.day}-{month}.pdf"


def test_every_kind_of_page_has_a_name_for_its_file() -> None:
    assert [kind for kind in Kind if not wording("en").has(f"web.file.{kind}")] == []


def test_a_page_to_print_is_told_by_its_paper(page: Page) -> None:
    """A name for the style sheet in tenths of a millimetre, and the drawing without an XML declaration."""
    name, drawing = to_print(page)
    assert name in ("p2159x2794", "p2100x2970")
    assert name == f"p{page.width_mm * 10:.0f}x{page.height_mm * 10:.0f}"
    assert "<?xml" not in drawing
    assert "<svg" in drawing[:400]


def test_a_picture_says_what_it_is() -> None:
    assert svg("<svg/>").mimetype == "image/svg+xml"
