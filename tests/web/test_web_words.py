"""The words of the screens: every language says all that is said, and nothing is asked for that is not there."""

from __future__ import annotations

import re
from collections.abc import Callable
from importlib import resources

import pytest
from webhelp import Visitor

from namewright.tuning import KNOBS
from namewright.web.screen_language import screen_languages
from namewright.wording import FIRST, wording


def test_every_word_that_templates_ask_for_is_there() -> None:
    """A key written out in a template exists."""
    folder = resources.files("namewright.web").joinpath("templates")
    asked = [(template.name, key) for template in folder.iterdir()
             for key in re.findall(r"\bt\('([a-z_.0-9-]+)'[,)]", template.read_text(encoding="utf-8"))]
    assert len(asked) > 200
    assert [each for each in asked if not wording(FIRST).has(each[1])] == []


@pytest.mark.parametrize("language", screen_languages())
def test_every_knob_has_a_name(language: str) -> None:
    """A setting is called by a word of the language, not by its key, and so is its unit."""
    for knob in KNOBS:
        assert wording(language).has(f"web.knob.{knob.key}")
        if knob.unit:
            assert wording(language).has(f"setting.unit.{knob.unit}")


@pytest.mark.parametrize("language", screen_languages())
def test_every_screen_in_every_language(settled: Visitor, language: str) -> None:
    """Each screen comes in the language that is chosen, and says so to a screen reader."""
    settled.post("/language", {"language": language, "back": "/class"})
    settled.post("/child/1/lines", {"line_height": "32", "after": "0"})
    settled.post("/child/1/seen", {"day": "2026-03-02", "letter": ["0"], "once": "a"})
    for path in ("/", "/class", "/class/list", "/class/list?new=1", "/now", "/lines", "/seen", "/child/1/lines",
                 "/child/1/seen", "/child/1/home", "/screen", "/print/pages?what=sheets&child=1", "/print/none"):
        answer = settled.get(path)
        assert answer.status_code == (404 if path == "/print/none" else 200), path
        assert f'<html lang="{language}">' in answer.text


def test_going_back_leads_nowhere_else(visitor: Visitor) -> None:
    """The language form leads back to a path of ours only."""
    leads: Callable[[str], str] = lambda back: visitor.post(  # noqa: E731
        "/language", {"language": "es", "back": back}).headers["Location"]
    assert leads("/class?look=1") == "/class?look=1"
    for elsewhere in ("https://names.example/", "//names.example/", "/\\names.example", "/\tx", ""):
        assert leads(elsewhere) == "/"


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
