"""Printing: one PDF for one order, only who is ticked, the page that was shown."""

from __future__ import annotations

import io

import pytest
from pypdf import PdfReader
from webhelp import Visitor, finished, token_in

from namewright.web.desk import Member, close_book, members

PT_PER_MM = 72 / 25.4


def _members(visitor: Visitor) -> tuple[Member, ...]:
    with visitor.client.application.test_request_context("/"):
        found = members()
        close_book()
    return found


def test_printing_twice_makes_one_pdf(settled: Visitor) -> None:
    """The same form sent twice leads to one PDF, and that PDF holds a page a child at the exact size of the paper."""
    form = {"what": ["sheets"], "who": "all", "paper": "a4", "ruling": "de-6", "support": "partial", "language": "en"}
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
    where = finished(visitor, visitor.post("/print", {"what": ["sheets", "cards", "tiles", "adult", "plan"],
                                                      "who": "all"}))
    page = visitor.get(where).text
    assert "What could not be made" in page
    assert page.count("<li>春: Our letters have no") == 1  # said once, though three kinds of page lack the child
    assert len(PdfReader(io.BytesIO(visitor.get(where + "/pages.pdf").data)).pages) >= 7


def test_groups_and_the_year_are_printed_too(settled: Visitor) -> None:
    """A sheet a group of those who were chosen, and the year of the class, also from where writing is noted."""
    settled.post("/child/1/seen", {"day": "2026-03-02", "letter": ["0"], "once": "a"})
    where = finished(settled, settled.post("/print", {"what": ["groups", "year"], "who": "all"}))
    pdf = PdfReader(io.BytesIO(settled.get(where + "/pages.pdf").data))
    groups = len({one.placed.group for one in _members(settled)})
    assert len(pdf.pages) == groups + 1
    assert sum("Table" in str(getattr(one, "title", "")) for one in pdf.outline) == groups
    assert "/class/year.pdf" in settled.get("/seen").text
    assert len(PdfReader(io.BytesIO(settled.get("/class/year.pdf").data)).pages) == 1


def test_only_the_ticked_are_printed(settled: Visitor) -> None:
    """A group or single children are printed alone; nobody ticked is said and nothing is begun."""
    where = finished(settled, settled.post("/print", {"what": "sheets", "who": "ticked", "child": ["2", "5"]}))
    assert len(PdfReader(io.BytesIO(settled.get(where + "/pages.pdf").data)).pages) == 2
    below = finished(settled, settled.post("/print", {"what": "sheets", "who": "all", "child": "2", "only": "ticked"}))
    assert len(PdfReader(io.BytesIO(settled.get(below + "/pages.pdf").data)).pages) == 1
    none = settled.post("/print", {"what": "tiles", "who": "ticked", "paper": "a4"})
    assert none.status_code == 422
    assert "tick at least one child" in none.text
    assert 'value="tiles" checked' in none.text  # what was chosen is still chosen
    assert 'value="sheets" checked' not in none.text


def test_a_page_shown_is_the_page_printed(settled: Visitor) -> None:
    """The preview has the paper's own proportion and follows the choices that are not kept yet."""
    letter = settled.get("/picture/1/page.svg").text
    turned = settled.get("/picture/1/page.svg?trial=class&paper=a4&landscape=on&ruling=de-6").text
    assert 'viewBox="0 0 215.9 279.4"' in letter
    assert 'viewBox="0 0 297 210"' in turned
    tall = settled.get("/picture/1/page.svg?trial=own&line_height=900")
    assert tall.status_code == 422
    assert "Choose" in tall.text


def test_pages_to_know_the_name_are_printed_for_a_child(settled: Visitor) -> None:
    """One child's pages among names of the whole class, and the answers on a page of their own at the end."""
    form = {"what": ["find", "missing", "signin", "answers"], "who": "ticked", "child": ["1"]}
    where = finished(settled, settled.post("/print", form))
    texts = [page.extract_text() for page in PdfReader(io.BytesIO(settled.get(where + "/pages.pdf").data)).pages]
    assert len(texts) == 4
    assert "among other names" in texts[0]
    assert "Katla" in texts[0]  # a classmate, though no page was asked for her
    assert "For the adult" in texts[-1]
    assert "times among" not in " ".join(texts[:-1])
