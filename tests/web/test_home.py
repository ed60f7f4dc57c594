"""Where one comes in, drawings in our own letters, and the language kept for a year."""

from __future__ import annotations

import pytest
from webhelp import Visitor

from namewright.letters.alphabet import upright


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
    """Of the word, and of every form of every letter."""
    letter, forms = next(iter(upright().forms.items()))
    paths = [*(f"/art/{letter}/{form}.svg" for form in forms), "/mark.svg"]
    for path in paths:
        answer = visitor.get(path)
        assert (answer.status_code, answer.mimetype) == (200, "image/svg+xml"), path
    for path in (f"/art/{letter}/three-storey.svg", "/art/ж/usual.svg"):
        assert visitor.get(path).status_code == 404, path


def test_one_comes_in_where_there_is_something_to_do(visitor: Visitor) -> None:
    """To the place to paste a list; once there is a class, to the class. What was to be told comes along."""
    assert visitor.get("/?told=k").headers["Location"] == "/class/list?told=k"
    visitor.keep("Katla Pruner\n")
    assert visitor.get("/").headers["Location"] == "/class"
    assert visitor.get("/alive").status_code == 204


@pytest.mark.parametrize(("path", "sent"), [
    ("/language", {"language": "es", "back": "/"}), ("/class/sorted?by=name", None), ("/seen?by=table", None),
    ("/now", {"letters": "katla", "size": "card"})])
def test_no_script_reads_a_cookie_and_no_other_page_sends_one(settled: Visitor, path: str,
                                                              sent: dict[str, str] | None) -> None:
    """Whatever is kept on a device: the language, that it was changed, the order, the size of a card."""
    answer = settled.get(path) if sent is None else settled.post(path, sent)
    kept = answer.headers.getlist("Set-Cookie")
    assert kept
    for cookie in kept:
        assert {"HttpOnly", "SameSite=Strict"} <= {part.strip() for part in cookie.split(";")}, cookie
