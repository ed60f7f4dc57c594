"""One child, now: found by a tap or a few letters, and shown as it will print."""

from __future__ import annotations

import io
import re
from html import unescape

import pytest
from pypdf import PdfReader
from webhelp import Visitor


def titles(data: bytes) -> list[str]:
    return [one.title for one in PdfReader(io.BytesIO(data)).outline]  # type: ignore[union-attr]


@pytest.mark.parametrize(("typed", "child"), [("ta", 2), ("tamsel", 1), ("ot", 1)])
def test_a_name_goes_before_a_family_name(visitor: Visitor, typed: str, child: int) -> None:
    """Two letters mean the child who is called so; a family name counts where nobody is."""
    visitor.keep("Ottilka Tamsel\nTavi Brane\nMirel Tamworth\n")
    answer = visitor.post("/now", {"letters": typed, "size": "sheet"})
    assert answer.headers["Location"].startswith(f"/child/{child}/made")


def test_everyone_stands_by_alphabet(settled: Visitor) -> None:
    """Marks and capitals aside, each with the letter that one looks under."""
    page = settled.get("/now").text
    assert re.findall(r'name="child" value="\d+">([^<]+)<', page) == [
        "Bo", "Íñigo", "Kasimir", "Katla", "Kirrin", "Miri", "Ottilka"]
    assert re.findall(r'<h2 id="begins-\d+">(.)</h2>', page) == ["B", "I", "K", "M", "O"]


@pytest.mark.parametrize(("size", "path", "paper"), [
    ("sheet", "card.pdf?size=sheet", "p2159x2794"), ("4x6", "card.pdf?size=4x6", "p1524x1016"),
    ("a6", "card.pdf?size=a6", "p1480x1050"), ("practice", "sheet.pdf", "p2159x2794"),
    ("tiles", "tiles.pdf", "p2159x2794"),
])
def test_what_is_shown_is_what_is_in_the_pdf(settled: Visitor, size: str, path: str, paper: str) -> None:
    """A tap on a name shows the pages, each on its paper; the PDF has as many; the next time the same is chosen."""
    where = settled.post("/now", {"child": "1", "size": size}).headers["Location"]
    page = settled.get(where).text
    assert f'class="sheet paper {paper}"' in page
    assert f'href="/child/1/{path}"' in page
    pdf = PdfReader(io.BytesIO(settled.get(f"/child/1/{path}").data))
    assert len(pdf.pages) == page.count('class="sheet paper')
    assert re.findall(r'name="size" value="(\w+)" checked', settled.get("/now").text) == [size]


def test_a_name_that_is_not_in_the_class(settled: Visitor) -> None:
    """It is shown and printed like one of the class; it stands in no address, and its PDF is asked for by a form."""
    shown = settled.post("/now", {"letters": "Zuriel", "size": "practice"})
    assert (shown.status_code, 'class="sheet paper' in shown.text) == (200, True)
    assert not re.search(r'(href|action|src)="[^"]*Zuriel', shown.text)
    pdf = settled.post("/now", {"letters": "Zuriel", "size": "practice", "visitor": "1", "pdf": "1"})
    assert titles(pdf.data) == ["Zuriel"]
    assert "Make the practice sheet instead" not in settled.post("/now", {"letters": "春", "size": "sheet"}).text


@pytest.mark.parametrize("child", ["9" * 5000, "9" * 30, "-1", "x"])
def test_a_child_there_is_not_is_no_error_of_the_server(settled: Visitor, child: str) -> None:
    """However many figures its number has."""
    assert settled.arrive(settled.post("/now", {"child": child, "letters": "kat"}))
    assert settled.post("/now", {"child": child}).status_code in (302, 404, 422)


def test_a_visitor_whose_name_begins_like_others(settled: Visitor) -> None:
    """Where several children are meant, what was typed can be made as it stands."""
    asked = settled.post("/now", {"letters": "Ka", "size": "4x6"})
    assert "Make it for exactly “Ka”" in asked.text
    assert "<h1 class=\"own-letters\">Ka</h1>" in settled.post("/now", {"letters": "Ka", "visitor": "1"}).text


def test_a_name_that_our_letters_cannot_write_is_asked_for_in_others(visitor: Visitor) -> None:
    """Typed or of the class: the letters, a field with a spelling, and the card of what stands in it."""
    visitor.keep("Katla Pruner\nДарина Коваль\n")
    for answer in (visitor.get("/child/2/made"), visitor.post("/now", {"letters": "Дарына", "visitor": "1"})):
        assert answer.status_code == 422
        page = unescape(answer.text)
        assert "In which letters shall the child practise the name?" in page
        assert "U+" not in page
        assert re.search(r'form="spelled" name="letters" value="Dar', page)
    assert "choose it in the list" in visitor.get("/child/2/made").text
    made = visitor.post("/now", {"letters": "Daryna", "visitor": "1", "size": "4x6"})
    assert made.status_code == 200
    assert "Daryna" in made.text
