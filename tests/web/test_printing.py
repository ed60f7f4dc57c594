"""Printing: one PDF for one order, only who is ticked, the page that was shown."""

from __future__ import annotations

import io
import re
from html import unescape
from pathlib import Path
from urllib.parse import urlencode

import pytest
from pypdf import PdfReader
from webhelp import Visitor, finished, soon, token_in

from namewright.classbook import Classbook
from namewright.making.request import Kind
from namewright.web.class_pdf import request_for
from namewright.web.desk import Member, book, close_book, members

PT_PER_MM = 72 / 25.4


def _ticked(page: str) -> list[str]:
    return re.findall(r'<input[^>]*name="what"[^>]*value="(\w+)"[^>]*checked', page)


def _members(visitor: Visitor) -> tuple[Member, ...]:
    with visitor.client.application.test_request_context("/"):
        found = members()
        close_book()
    return found


def test_printing_twice_makes_one_pdf(settled: Visitor) -> None:
    """The same form sent twice leads to one PDF; it holds a page a child at the exact size of the paper as changed."""
    changed = {"paper": "a4", "ruling": "de-6", "support": "partial", "language": "en"}
    form = {"what": ["sheets"], "who": "all", "draft-class": urlencode(changed)}
    token = token_in(settled.get("/class").text)
    first, second = (settled.post("/print", form, token=token) for _ in range(2))
    assert first.headers["Location"] == second.headers["Location"]
    where = finished(settled, first)
    pages = PdfReader(io.BytesIO(settled.get(where + "/pages.pdf").data)).pages
    assert len(pages) == 7
    for page in pages:
        assert sorted(float(side) / PT_PER_MM for side in page.mediabox[2:]) == pytest.approx([210, 297], abs=0.05)


def test_what_could_not_be_made_is_listed(visitor: Visitor) -> None:
    """A child whose letters we lack is named with the reason, and all others are made."""
    visitor.keep("Ottilka Tamsel\n春 Brane\nKirrin Vost\n")
    where = finished(visitor, visitor.post("/print", {"what": ["sheets", "cards", "tiles"], "who": "all"}))
    page = visitor.get(where).text
    assert "What could not be made" in page
    assert page.count("Our letters cannot write all of 春") == 1  # said once, though three kinds of page lack the child
    assert '/class/list#line-2">Mend the line' in page
    assert len(PdfReader(io.BytesIO(visitor.get(where + "/pages.pdf").data)).pages) >= 5


def test_groups_and_the_year_are_printed_too(settled: Visitor) -> None:
    """A sheet a group of those who were chosen, and the year of the class, also from where writing is noted."""
    settled.post("/child/1/seen", {"day": "2026-03-02", "letter": ["0"], "once": "a"})
    where = finished(settled, settled.post("/print", {"what": ["groups"], "who": "all"}))
    pdf = PdfReader(io.BytesIO(settled.get(where + "/pages.pdf").data))
    groups = len({one.placed.group for one in _members(settled)})
    assert len(pdf.pages) == groups
    assert sum("Table" in str(getattr(one, "title", "")) for one in pdf.outline) == groups
    assert "/class/year.pdf" in settled.get("/seen").text
    assert len(PdfReader(io.BytesIO(settled.get("/class/year.pdf").data)).pages) == 1


def test_only_the_ticked_are_printed(settled: Visitor) -> None:
    """A group or single children are printed alone; nobody ticked is said and nothing is begun."""
    where = finished(settled, settled.post("/print", {"what": "sheets", "who": "ticked", "child": ["2", "5"]}))
    assert len(PdfReader(io.BytesIO(settled.get(where + "/pages.pdf").data)).pages) == 2
    alone = finished(settled, settled.post("/print", {"what": "sheets", "who": "one", "one": "2"}))
    assert len(PdfReader(io.BytesIO(settled.get(alone + "/pages.pdf").data)).pages) == 1
    table = finished(settled, settled.post("/print", {"what": "sheets", "who": "table-1"}))
    assert len(PdfReader(io.BytesIO(settled.get(table + "/pages.pdf").data)).pages) == sum(
        one.placed.group == 1 for one in _members(settled))
    none = settled.post("/print", {"what": "tiles", "who": "ticked"})
    assert none.status_code == 422
    assert "tick at least one child" in none.text
    assert _ticked(none.text) == ["tiles"]  # what was chosen is still chosen


def test_a_page_shown_is_the_page_printed(settled: Visitor) -> None:
    """The preview has the paper's own proportion and follows the choices that are not kept yet."""
    letter = settled.get("/picture/1/page.svg").text
    turned = settled.get("/picture/1/page.svg?" + urlencode({"draft-class": "paper=a4&landscape=on&ruling=de-6"})).text
    assert 'viewBox="0 0 215.9 279.4"' in letter
    assert 'viewBox="0 0 297 210"' in turned
    tall = settled.get("/picture/1/page.svg?" + urlencode({"draft-1": "line_height=900"}))
    assert tall.status_code == 422
    assert "Choose" in tall.text


def test_of_two_with_one_name_the_page_shown_says_whose_it_is(visitor: Visitor) -> None:
    """As the printed one does, also where one child is printed alone; one of another name, not kept yet, does not."""
    visitor.keep("Ottilka Tamsel\nKirrin Brane\nOttilka Vost\n")
    shown = [visitor.get(f"/picture/{child}/page.svg").text for child in (1, 3)]
    assert shown[0] != shown[1]
    where = finished(visitor, visitor.post("/print", {"what": ["sheets"], "who": "one", "one": "3"}))
    assert "For Ottilka V." in PdfReader(io.BytesIO(visitor.get(where + "/pages.pdf").data)).pages[0].extract_text()
    form = {"what": ["sheets"], "who": "one", "one": "3", "draft-3": "practise=both"}
    where = finished(visitor, visitor.post("/print", form))
    assert "For Ottilka" not in PdfReader(io.BytesIO(visitor.get(where + "/pages.pdf").data)).pages[0].extract_text()


def test_more_pages_than_a_browser_prints_are_said_before(visitor: Visitor, monkeypatch: pytest.MonkeyPatch) -> None:
    """With the PDF as the way out; the first of them are there for who asks for them."""
    monkeypatch.setattr("namewright.web.printing._MAX_ON_SCREEN", 2)
    visitor.keep("Ottilka Tamsel\nKirrin Brane\nBo Vost\n")
    form = {"what": ["sheets"], "who": "all"}
    refused = visitor.post("/print/sheets", form)
    assert refused.status_code == 422
    assert "more than 2 pages" in refused.text
    assert "data-open-pdf" in refused.text
    assert "<svg" not in refused.text
    first = visitor.post("/print/sheets", {**form, "first": "1"})
    assert (first.status_code, first.text.count("<section")) == (200, 2)
    two = visitor.post("/print/sheets", {"what": ["sheets"], "who": "ticked", "child": ["1", "2"]})
    assert (two.status_code, two.text.count("<section")) == (200, 2)
    page = visitor.get("/print/pages?what=sheets&child=1&child=2&child=3").text
    assert page.index("more than 2 pages") < page.index("<svg")
    assert "more than" not in visitor.get("/print/pages?what=sheets&child=1&child=2").text


def test_lists_to_sign_in_on_are_offered_for_a_day_and_for_a_week(visitor: Visitor) -> None:
    """Both may be asked for at once: the day's upright, the week's on the long side of the paper."""
    visitor.keep("Ottilka Tamsel\nKirrin Brane\n")
    assert {"signin", "signin_week"} <= set(re.findall(r'name="what" value="(\w+)"', visitor.get("/class").text))
    where = finished(visitor, visitor.post("/print", {"what": ["signin", "signin_week"], "who": "all"}))
    pages = PdfReader(io.BytesIO(visitor.get(where + "/pages.pdf").data)).pages
    assert [page.mediabox.width > page.mediabox.height for page in pages] == [False, True, True]
    assert ["Friday" in page.extract_text() for page in pages] == [False, True, True]


def test_pages_to_know_the_name_are_printed_for_a_child(settled: Visitor) -> None:
    """One child's pages among names of the whole class; their answers are the adult's, in a PDF of their own."""
    form = {"what": ["find", "missing", "signin", "answers"], "who": "ticked", "child": ["1"]}
    answer = settled.post("/print", form)
    children, adult = (PdfReader(io.BytesIO(settled.get(f"/print/{key}/pages.pdf").data))
                       for key in _made(settled, answer.headers["Location"]))
    texts = [page.extract_text() for page in children.pages]
    assert len(texts) == 3
    assert "among other names" in texts[0]
    assert "Kasimir" in texts[0]  # a classmate, though no page was asked for him
    assert "times among" not in " ".join(texts)
    (told,) = (page.extract_text() for page in adult.pages)
    assert "For the adult" in told
    assert "Mixed up" not in told  # only what the children got is answered


def test_answers_name_the_pages_of_the_childrens_pdf(settled: Visitor) -> None:
    """Where sheets lie before the pages to know a name by, the numbers in the adult's PDF count them."""
    answer = settled.post("/print", {"what": ["sheets", "find", "answers"], "who": "ticked", "child": ["1", "2"]})
    children, adult = (PdfReader(io.BytesIO(settled.get(f"/print/{key}/pages.pdf").data))
                       for key in _made(settled, answer.headers["Location"]))
    told = [int(number) for number in re.findall(r"Page (\d+)\.", adult.pages[0].extract_text())]
    assert told == [number for number, page in enumerate(children.pages, 1) if "other names" in page.extract_text()]
    assert told == [3, 4]


def _made(visitor: Visitor, where: str) -> list[str]:
    """Wait for both PDFs of an order; return their keys, the children's first."""
    keys = where.removeprefix("/print/").split("?and_=")
    for key in keys:
        soon(visitor, f"/print/{key}/state", "data-finished")
    return keys


def test_adults_pages_are_never_among_the_childrens(settled: Visitor) -> None:
    """Ordered together they come as two PDFs; the screen tells of both."""
    answer = settled.post("/print", {"what": ["sheets", "adult", "plan"], "who": "all"})
    children, adult = (PdfReader(io.BytesIO(settled.get(f"/print/{key}/pages.pdf").data))
                       for key in _made(settled, answer.headers["Location"]))
    assert len(children.pages) == 7
    assert all("This page is for" in page.extract_text() for page in children.pages)
    assert len(adult.pages) >= 2
    assert not any("This page is for" in page.extract_text() for page in adult.pages)
    assert settled.get(answer.headers["Location"]).text.count("pages.pdf") == 2


def test_an_order_is_told_in_the_bar(settled: Visitor) -> None:
    """Asked for by the desk, an order leads to a part of a page: how far it is, then the PDF; or what is wrong."""
    begun = settled.post("/print", {"what": "sheets", "who": "all"}, Accept="text/x-part")
    where = unescape(re.findall(r'data-jobs="([^"]+)"', begun.text)[0])
    said = soon(settled, where, "data-finished")
    assert "7 pages are ready." in said
    assert "<html" not in said
    (pdf,) = re.findall(r'href="(/print/[^"]+/pages.pdf)"', said)
    assert len(PdfReader(io.BytesIO(settled.get(pdf).data)).pages) == 7
    wrong = settled.post("/print", {"what": "sheets", "who": "ticked"}, Accept="text/x-part")
    assert (wrong.status_code, "tick at least one child" in wrong.text) == (422, True)


def test_what_is_changed_and_not_kept_is_printed(settled: Visitor, class_file: Path) -> None:
    """For everyone and for one child at once: what the desk shows is on paper, and nothing of it is kept."""
    form = {"what": "sheets", "who": "all", "draft-class": "paper=a4", "draft-2": "line_height=30&support=light"}
    where = finished(settled, settled.post("/print", form))
    pages = PdfReader(io.BytesIO(settled.get(where + "/pages.pdf").data)).pages
    assert {round(float(page.mediabox.height) / PT_PER_MM) for page in pages} == {297}
    shown = settled.get("/picture/2/page.svg?" + urlencode({"draft-class": "paper=a4",
                                                            "draft-2": "line_height=30&support=light"})).text
    on_screen = settled.post("/print/sheets", form).text
    assert re.sub(r"<\?xml[^>]*>\s*", "", shown) in on_screen
    assert shown != settled.get("/picture/2/page.svg").text
    with Classbook.open(class_file) as book:
        assert "paper" not in book.class_settings
        assert not book.settings_of(2)


def test_only_pages_that_tell_of_notes_are_made_with_them(settled: Visitor) -> None:
    """Looking them up child by child takes time that a sheet need not wait for."""
    settled.post("/child/1/seen", {"day": "2026-03-02", "letter": ["0"], "once": "a"})
    with settled.client.application.test_request_context("/"):
        noted = {kind: [one.placed.child.line for one in request_for((kind,), members()).members if one.notes]
                 for kind in (Kind.SHEETS, Kind.CARDS, Kind.PLAN, Kind.YEAR, Kind.MISSING)}
        line = book().child(1).child.line
        close_book()
    assert noted == {Kind.SHEETS: [], Kind.CARDS: [], Kind.PLAN: [line], Kind.YEAR: [line], Kind.MISSING: [line]}


def test_only_the_plan_of_everyone_is_kept(settled: Visitor, class_file: Path) -> None:
    """Of a plan of some the letters of the week are not the class's; sheets alone have none."""
    def taught(**form: object) -> bool:
        finished(settled, settled.post("/print", form))
        with Classbook.open(class_file) as book:
            return bool(book.taught())

    assert not taught(what=["plan"], who="ticked", child=["1", "2"])
    assert not taught(what=["sheets"], who="all")
    assert taught(what=["plan"], who="all")
