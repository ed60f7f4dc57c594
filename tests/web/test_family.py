"""A letter to take home, in the language of the family."""

from __future__ import annotations

import io

import pytest
from pypdf import PdfReader
from webhelp import Visitor


def test_paper_begins_in_the_language_of_the_screen(visitor: Visitor) -> None:
    """A class that is begun on a Spanish screen has Spanish paper until another is chosen; it stays as chosen."""
    visitor.post("/language", {"language": "es", "back": "/"})
    visitor.keep("Ottilka Tamsel\n")
    assert '<option value="es" selected>' in visitor.get("/class").text
    visitor.post("/class/choices", {"language": "en"})
    visitor.keep("Ottilka Tamsel\nMirel Vost\n")
    assert '<option value="en" selected>' in visitor.get("/class").text


def test_the_language_of_a_family_is_remembered(settled: Visitor) -> None:
    """Chosen once for a child it is chosen the next time, for this child alone."""
    assert settled.post("/child/1/home", {"in": "es"}).status_code == 302
    text = [PdfReader(io.BytesIO(settled.get(f"/child/{child}/home.pdf").data)).pages[0].extract_text()
            for child in (1, 2)]
    assert "Un saludo a la familia de Ottilka" in text[0]
    assert "Hello to Kirrin’s family" in text[1]
    assert settled.get("/child/1/home.svg?in=es").text != settled.get("/child/1/home.svg?in=en").text


@pytest.mark.parametrize(("place", "letter_on"), [("first", 0), ("back", 1), ("alone", 0)])
def test_the_letter_stands_where_it_is_wanted(settled: Visitor, place: str, letter_on: int) -> None:
    """Before the child's page, on its back (the second side), or alone."""
    pdf = PdfReader(io.BytesIO(settled.get(f"/child/1/home.pdf?place={place}").data))
    texts = [page.extract_text() for page in pdf.pages]
    assert [at for at, text in enumerate(texts) if "Hello to Ottilka’s family" in text] == [letter_on]
    assert (len(texts) == 1) == (place == "alone")
    shown = settled.get(f"/child/1/home/pages?place={place}").text
    assert shown.count('class="sheet ') == len(texts)


def test_who_cannot_be_drawn_has_a_letter_all_the_same(visitor: Visitor) -> None:
    """The letter alone is offered, and no picture of a page that is not there."""
    visitor.keep("Анна\nBo\n")
    page = visitor.get("/child/1/home").text
    assert "before the child’s page" not in page
    assert "home.svg" not in page
    assert visitor.get("/child/1/home.pdf").data.startswith(b"%PDF")
