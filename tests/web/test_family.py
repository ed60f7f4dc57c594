"""A page to take home, in the language of the family."""

from __future__ import annotations

from webhelp import Visitor


def test_paper_begins_in_the_language_of_the_screen(visitor: Visitor) -> None:
    """A class that is begun on a Spanish screen has Spanish paper until another is chosen; it stays as chosen."""
    visitor.post("/language", {"language": "es", "back": "/"})
    visitor.keep("Ottilka Tamsel\n")
    assert '<option value="es" selected>' in visitor.get("/class").text
    visitor.post("/class/choices", {"language": "en"})
    visitor.keep("Ottilka Tamsel\nMirel Vost\n")
    assert '<option value="en" selected>' in visitor.get("/class").text


def test_a_note_home_in_spanish(settled: Visitor) -> None:
    """The note to the family, and the sheet with it, come in the family's language."""
    page = settled.get("/child/1/home?in=es").text
    assert "Un saludo a la familia de Ottilka" in page
    assert settled.get("/child/1/home.pdf?in=es").data.startswith(b"%PDF")
    assert settled.get("/child/1/home.svg?in=es").text != settled.get("/child/1/home.svg?in=en").text
