"""The language of the screens: every screen in each, chosen on the page."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pytest
from webhelp import Visitor

from longer import rest_long
from namewright.classbook import Classbook
from namewright.message import Problem, message
from namewright.web.screen_language import reason, screen_languages
from namewright.wording import languages, wording


def test_the_screens_are_in_every_language_there_is() -> None:
    """Whoever chooses a language on paper may have it on the screen, too."""
    assert screen_languages() == languages()


@pytest.mark.parametrize("language", rest_long(screen_languages(), 2))
def test_every_screen_in_every_language(settled: Visitor, language: str) -> None:
    """Each screen comes in the language that is chosen, and says so to a screen reader."""
    settled.post("/language", {"language": language, "back": "/class"})
    settled.post("/child/1/lines", {"line_height": "32", "after": "0"})
    settled.post("/child/1/seen", {"day": "2026-03-02", "letter": ["0"], "once": "a"})
    for path in ("/class", "/class?child=2&for=everyone", "/class/list", "/class/list?new=1", "/now", "/seen",
                 "/child/1/settings", "/child/1/seen", "/child/1/home", "/print/pages?what=sheets&child=1",
                 "/print/none"):
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


def test_the_desk_asks_once_about_the_language_of_the_pages(settled: Visitor, class_file: Path) -> None:
    """After the screens' language was changed to another than the pages'; one press changes theirs, too."""
    asks = "Die Seiten der Kinder auch"
    assert asks not in settled.get("/class", Accept_Language="de").text
    for back in ("/class", "/seen"):
        settled.post("/language", {"language": "de", "back": back})
        settled.get("/class?part=panel&child=1")
        assert asks in settled.get("/class").text
        assert asks not in settled.get("/class").text
    assert settled.post("/class/language", {}).status_code == 302
    with Classbook.open(class_file) as book:
        assert book.class_settings["language"] == "de"
    settled.post("/language", {"language": "de", "back": "/class"})
    assert asks not in settled.get("/class").text


def test_what_is_told_is_in_the_language_of_the_request(visitor: Visitor) -> None:
    """A message as much as a problem that has one."""
    told = message("web.class.kept")
    with visitor.client.application.test_request_context("/", headers={"Accept-Language": "de"}) as now:
        assert reason(now.request, told) == wording("de").sentence(told) != wording("en").sentence(told)
        assert reason(now.request, Problem("web.class.kept")) == reason(now.request, told)
