"""The first page: three doors, drawings in our own letters, and the language kept for a year."""

from __future__ import annotations

import pytest
from webhelp import Visitor

from namewright.letters.alphabet import upright
from namewright.web.home import ART


@pytest.mark.parametrize(("back", "leads"), [
    ("/class", "/class"), ("/child/1/lines?x=1", "/child/1/lines?x=1"), ("//other.example", "/"),
    ("https://other.example", "/"), ("/\\other.example", "/"), ("/a\nb", "/"), ("", "/"),
])
def test_going_back_stays_here(visitor: Visitor, back: str, leads: str) -> None:
    """A path of our own, else the first page: no address, no backslash that browsers read as a slash."""
    assert visitor.post("/language", {"language": "es", "back": back}).headers["Location"] == leads


def test_a_language_is_kept_where_there_are_words_for_it(visitor: Visitor) -> None:
    """In a cookie that only we get; another word keeps nothing."""
    kept = visitor.post("/language", {"language": "es", "back": "/"}).headers["Set-Cookie"]
    assert kept.startswith("language=es;")
    assert {"HttpOnly", "SameSite=Strict", "Max-Age=31536000"} <= {part.strip() for part in kept.split(";")}
    assert "Set-Cookie" not in visitor.post("/language", {"language": "tlh", "back": "/"}).headers


def test_every_drawing_is_there_and_no_other(visitor: Visitor) -> None:
    """Of the doors, of the word, and of every form of every letter."""
    letter, forms = next(iter(upright().forms.items()))
    paths = [f"/art/{which}.svg" for which in ART] + [f"/art/{letter}/{form}.svg" for form in forms] + ["/mark.svg"]
    for path in paths:
        answer = visitor.get(path)
        assert (answer.status_code, answer.mimetype) == (200, "image/svg+xml"), path
    for path in ("/art/cellar.svg", f"/art/{letter}/three-storey.svg", "/art/ж/usual.svg"):
        assert visitor.get(path).status_code == 404, path


def test_the_doors_say_how_many_children_there_are(settled: Visitor) -> None:
    """Seven invented children were kept; nothing but the answer that the program lives is needed for that."""
    assert "7" in settled.get("/").text
    assert settled.get("/alive").status_code == 204
