"""The class on the screen: its choices are kept and are on its paper."""

from __future__ import annotations

import re
from html import unescape
from pathlib import Path
from urllib.parse import urlencode

from webhelp import Visitor, finished

from namewright.classbook import Classbook


def _forms(svg: str) -> list[str]:
    return re.findall(r'data-form="([a-z-]+)"', svg)


def _inks(svg: str) -> list[str]:
    return re.findall(r'data-name="Katla".*?</g>', svg, re.DOTALL)


def test_forms_and_rungs_are_kept_for_the_class(settled: Visitor, class_file: Path) -> None:
    """Chosen in several places of a form, kept as the words that the command line reads, and chosen again next time."""
    form = {"paper": "a4", "letters": "", "letters.a": "a=two-storey", "letters.t": "", "letters.slant": "6",
            "letters.exit-strokes": "exit-strokes", "ladder": ["", "dots", "first-letter"], "keep_dots": "k"}
    assert settled.post("/class/choices", form).status_code == 302
    with Classbook.open(class_file) as book:
        kept = book.class_settings
    assert (kept["letters"], kept["ladder"]) == ("a=two-storey slant=6 exit-strokes", "dots first-letter")
    page = settled.get("/class").text
    for chosen in ('value="a=two-storey" checked', 'value="exit-strokes" checked',
                   'value="first-letter" checked', 'name="letters.slant" type="number" inputmode="decimal" '
                   'min="0" max="15" step="any" value="6"'):
        assert chosen in page
    assert 'value="wide-dots" checked' not in page
    settled.post("/class/choices", {"paper": "a4", "letters": "", "letters.a": "", "ladder": ""})
    with Classbook.open(class_file) as book:
        assert set(book.class_settings) == {"paper"}


def test_forms_of_the_class_are_on_its_paper(settled: Visitor) -> None:
    """What is drawn, before and after it is kept, has the chosen forms and as many rows as rungs."""
    asked = urlencode({"draft-class": "letters=&letters.a=a%3Dtwo-storey&ladder=&ladder=dots&ladder=wide-dots"
                                      "&ladder=start-dots"})
    usual, trial = (settled.get(f"/picture/1/page.svg{query}").text for query in ("", f"?{asked}"))
    settled.post("/class/choices", {"letters.a": "a=two-storey", "ladder": ["dots", "wide-dots", "start-dots"]})
    assert settled.get("/picture/1/page.svg").text == trial != usual
    assert _forms(trial)[1:4] == ["dotted", "wide-dots", "start-dots"]
    assert not {"wide-dots", "start-dots"} & set(_forms(usual))
    assert settled.get("/art/a/two-storey.svg").text != settled.get("/art/a/one-storey.svg").text
    assert settled.get("/art/a/three-storey.svg").status_code == 404


def test_columns_of_the_list_are_on_the_paper(visitor: Visitor) -> None:
    """Forms that a list gives one child are drawn for that child; what cannot be read is said, and all are made."""
    visitor.keep("name,letters\nKatla Pruner,a=two-storey\nKatla Dolt,\nMirel Vost,a=purple\n")
    first, second = (visitor.get(f"/picture/{child}/page.svg").text for child in (1, 2))
    assert _inks(first) != _inks(second)
    where = finished(visitor, visitor.post("/print", {"what": "sheets", "who": "all"}))
    said = visitor.get(where).text
    assert "3 pages are ready" in said
    assert "Please look at these" in said
    assert "no form called “purple”" in said


def test_a_value_that_cannot_be_drawn_comes_with_the_nearest_that_can(visitor: Visitor) -> None:
    """A sentence and a button that takes it; where the value can be drawn, nothing."""
    visitor.keep("Bartholomew Finch\nBo Lindle\n")
    asked = {"key": "line_height", "kind": "sheets", "for": "child"}
    told = visitor.get("/picture/1/nearest?" + urlencode({**asked, "draft-1": "line_height=80"})).text
    assert "“Bartholomew” needs" in told
    (value,) = re.findall(r'data-value="([\d.]+)"', told)
    assert f"Take {value} mm" in told
    shown = visitor.get("/picture/1/page.svg?" + urlencode({"draft-1": f"line_height={value}"}))
    over = visitor.get("/picture/1/page.svg?" + urlencode({"draft-1": f"line_height={float(value) + 1}"}))
    assert (shown.status_code, over.status_code) == (200, 422)
    assert visitor.get("/picture/1/nearest?" + urlencode({**asked, "draft-1": "line_height=24"})).text == ""
    beyond = visitor.get("/picture/1/nearest?" + urlencode({**asked, "draft-1": "line_height=500"})).text
    assert f"Up to {value} mm can be drawn for Bartholomew." in beyond
    assert "80 mm" not in beyond
    short = visitor.get("/picture/1/nearest?" + urlencode({**asked, "draft-1": "line_height=1"})).text
    assert "Choose from 8 to 80 mm" in short
    everyone = {**asked, "for": "everyone", "draft-class": "lines=other&like=us-3%2F4&line_height=500"}
    assert "Take 80 mm" in visitor.get("/picture/2/nearest?" + urlencode(everyone)).text


def test_a_change_for_everyone_is_told_and_taken_back(settled: Visitor, class_file: Path) -> None:
    """As a child's own: the newest that stands, once however often the form is sent, and in words."""
    settled.post("/class/choices", {"paper": "a4", "ruling": "us-1/2", "who": "K.B."})
    settled.post("/class/choices", {"paper": "a4", "ruling": "us-3/4", "colour": "blue"})
    page = unescape(settled.get("/class?for=everyone").text)
    for told in ("K.B.", "Paper: as usual became A4, 210 × 297 mm",
                 "Lines to write on: 12.7 mm · ½ inch became 19 mm",
                 "Ink colour of lines and captions: as usual became Blue"):
        assert told in page
    before = re.search(r'action="/class/choices/undo".*?name="after" value="(\d+)"', page, re.DOTALL)
    assert before
    for said in ("It is as it was before.", "That change had been undone already"):
        answer = settled.post("/class/choices/undo", {"after": before[1]})
        assert said in settled.get(answer.headers["Location"]).text
        with Classbook.open(class_file) as book:
            assert {key: book.class_settings.get(key) for key in ("paper", "ruling", "colour")} == {
                "paper": "a4", "ruling": "us-1/2", "colour": None}
    assert settled.post("/class/choices/undo", {}).status_code == 400
