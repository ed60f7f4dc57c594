"""Lines that fit one hand: settings kept once, with who, undone once, and on all paper."""

from __future__ import annotations

import re
from pathlib import Path
from urllib.parse import urlencode

import pytest
from webhelp import Visitor

from namewright.classbook import Classbook


def newest(visitor: Visitor) -> str:
    found = re.search(r'name="after" value="(\d+)"', visitor.get("/class?child=1").text)
    assert found
    return found[1]


def test_settings_are_kept_once_with_who_and_undone_once(settled: Visitor, class_file: Path) -> None:
    """Settings sent twice make one entry; undo sent twice takes back one."""
    form = {"line_height": "32", "letter_spacing": "2", "who": "RK", "after": "0"}
    for _ in range(2):
        assert settled.post("/child/1/lines", form).status_code == 302
    settled.post("/child/1/lines", {"line_height": "40", "after": newest(settled)})
    undo = {"after": newest(settled)}
    for _ in range(2):
        settled.post("/child/1/lines/undo", undo)
    with Classbook.open(class_file) as book:
        assert book.settings_of(1) == {"line_height": "32", "letter_spacing": "2"}
        history = book.history(1)
        assert [save.who for save in history] == ["", "", "RK"]
        assert [save.undoes for save in history] == [history[1].id, None, None]
    page = settled.get("/class?child=1").text
    assert "Line height: as the class became 32" in page
    assert "RK" in page


def test_settings_from_an_older_window_are_not_kept_unseen(settled: Visitor, class_file: Path) -> None:
    """Where another window has saved meanwhile, what was typed comes back and nothing is overwritten."""
    settled.post("/child/1/lines", {"line_height": "32", "after": "0"})
    answer = settled.post("/child/1/lines", {"line_height": "50", "after": "0"})
    assert answer.status_code == 409
    assert 'value="50"' in answer.text
    assert "another window" in answer.text
    with Classbook.open(class_file) as book:
        assert book.settings_of(1) == {"line_height": "32"}


@pytest.mark.parametrize("form", [{"line_height": "900"}, {"dot_size": "a lot"}, {"hand": "third"}, {"rows": "-1"}])
def test_a_setting_that_cannot_be_is_said_and_not_kept(settled: Visitor, class_file: Path,
                                                       form: dict[str, str]) -> None:
    """Bad input gets a sentence, what was typed stays, and nothing is kept."""
    answer = settled.post("/child/1/lines", {**form, "after": "0"})
    assert answer.status_code == 409
    assert "Choose" in answer.text or "does not" in answer.text
    with Classbook.open(class_file) as book:
        assert not book.settings_of(1)


def test_a_height_that_cannot_be_drawn_is_not_kept(visitor: Visitor, class_file: Path) -> None:
    """80 mm for a long name would leave no page of it: refused with the reason, by both ways to keep it."""
    visitor.keep("Bartholomew Finch\n")
    for path, form in (("/child/1/lines", {"line_height": "80", "after": "0"}),
                       ("/class/drafts", {"draft-1": "line_height=80&after=0"})):
        answer = visitor.post(path, form)
        assert answer.status_code in (409, 422)
        assert "“Bartholomew” needs" in answer.text
    with Classbook.open(class_file) as book:
        assert not book.settings_of(1)


def test_what_is_typed_for_a_child_is_what_print_prints(settled: Visitor, class_file: Path) -> None:
    """On the page of a child's lines, Print sends the form: what is shown is kept and printed, and nothing else.

    Regression: 40 mm were typed and shown, and the 19 mm that were kept came out of the printer.
    """
    page = settled.get("/class?child=1").text
    assert re.search(r'<button class="may" name="print" value="1">', page)
    assert page.count("/child/1/sheet.pdf") == page.count('/child/1/sheet.pdf" data-only') == 1  # as the desk shows it
    answer = settled.post("/child/1/lines", {"line_height": "40", "after": "0", "print": "1"})
    assert (answer.status_code, answer.headers["Location"]) == (302, "/child/1/sheet.pdf")
    with Classbook.open(class_file) as book:
        assert book.settings_of(1) == {"line_height": "40"}
    wrong = settled.post("/child/1/lines", {"line_height": "900", "after": newest(settled), "print": "1"})
    assert wrong.status_code == 409
    assert 'value="900"' in wrong.text


@pytest.mark.parametrize("path", ["/print/pages?what=sheets&child=1", "/print/pages?what=cards&child=1",
                                  "/picture/1/row.svg"])
def test_a_childs_own_line_height_is_on_all_paper(settled: Visitor, path: str) -> None:
    """Sheet, card and the row at true size stand on the child's own lines, not on the class's."""
    settled.post("/child/1/lines", {"line_height": "23", "after": "0"})
    svg = settled.get(path).text
    heights = [{kind: float(y) for kind, y in re.findall(r'class="(topline|baseline)"[^>]* y1="([\d.]+)"', row)}
               for row in svg.split('class="row"')[1:]]
    assert heights
    for row in heights:
        assert row["baseline"] - row["topline"] == pytest.approx(23, abs=0.01)


def test_a_child_may_have_other_forms_than_the_class(settled: Visitor, class_file: Path) -> None:
    """The usual form is a choice too, so that a child can have it where the class has another; the history says so."""
    settled.post("/class/choices", {"letters.a": "a=two-storey"})
    settled.post("/child/1/lines", {"letters": "", "letters.a": "a=one-storey", "ladder": ["", "dots"], "after": "0"})
    with Classbook.open(class_file) as book:
        assert book.settings_of(1) == {"letters": "a=one-storey", "ladder": "dots"}
    page = settled.get("/class?child=1").text
    assert 'value="a=one-storey" checked' in page
    assert "Forms of letters: as the class became a with one storey" in page
    assert "a one-storey" not in page
    settled.post("/child/1/lines", {"letters": "", "letters.a": "", "ladder": "", "after": newest(settled)})
    with Classbook.open(class_file) as book:
        assert not book.settings_of(1)


CANNOT_BE = pytest.mark.parametrize(("form", "words"), [
    ({"ladder": ["dots", "wide-dots", "start-dots", "marked-dots", "first-letter"]}, "Choose at most 4"),
    ({"letters.slant": "40"}, "Choose from 0 to 15"), ({"lines": "other", "line_height": "900"}, "Choose")])


@CANNOT_BE
def test_a_choice_for_everyone_that_cannot_be_is_said(settled: Visitor, class_file: Path, words: str,
                                                      form: dict[str, str]) -> None:
    """The desk comes back with the reason and with all that was chosen, and nothing is kept."""
    answer = settled.post("/class/choices", {**form, "paper": "a4"})
    assert answer.status_code == 422
    assert words in answer.text
    assert 'value="a4" selected' in answer.text
    with Classbook.open(class_file) as book:
        assert "paper" not in book.class_settings


@CANNOT_BE
def test_what_cannot_be_is_not_printed(settled: Visitor, words: str, form: dict[str, str]) -> None:
    """What was changed goes along with an order; where it cannot be, that is said and all stays chosen."""
    answer = settled.post("/print", {"draft-class": urlencode(form, doseq=True), "what": "tiles", "child": "2",
                                     "who": "ticked"})
    assert answer.status_code == 422
    assert words in answer.text
    for chosen in ('value="tiles"', 'value="2" aria-label="Print for Kirrin" checked'):
        assert chosen in answer.text


def test_the_old_address_leads_to_the_desk(settled: Visitor) -> None:
    """Of a child with its settings unfolded; of nobody there is none."""
    for path in ("/child/2/lines", "/lines/2"):
        assert settled.get(path).headers["Location"] == "/class?child=2&all=1"
    assert settled.get("/child/99/lines").status_code == 404
    assert settled.get("/lines").headers["Location"] == "/class"


def test_settings_come_as_a_page_for_the_file(settled: Visitor) -> None:
    """What is set with its range, what everyone has and why; who changed what; no name in the title of the screen."""
    settled.post("/child/1/lines", {"line_height": "32", "hand": "left", "who": "RK", "after": "0"})
    page = settled.get("/child/1/settings").text
    for words in ("32 mm", "19.05 mm", "8 to 80 mm", "RK", "Taller lines let", "left", "licensed therapist"):
        assert words in page, words
    assert "Ottilka" not in page.partition("</title>")[0]
    assert "Ottilka" in page
