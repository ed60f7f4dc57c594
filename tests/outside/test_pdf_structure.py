"""The structure of our PDF on every kind of page, as pikepdf (QPDF) reads it, against the rules of ISO 14289-1.

The checker pdfua knows 16 of its 106 machine-checkable rules. Others that a file shows by itself are checked here one
by one; they are told from memory of ISO 14289-1:2014 and of ISO 32000-1:2008, 14.7 and 14.8.
"""

from __future__ import annotations

import io
import re
from collections.abc import Iterator
from pathlib import Path

import pdfua
import pikepdf
import pytest

from namewright.making.adult import left_out
from namewright.pages.page import Chart, Page, Place, Placed
from namewright.pages.paper import Paper
from namewright.pages.summary import Entry, summary_pages
from namewright.pages.typesetter import Typesetter
from namewright.roster.parsing import read_roster
from printed import KINDS, kinds, pdf_bytes

INSIDE = {"Document": {"StructTreeRoot"}, "Sect": {"Document"}, "TR": {"Table"}, "TH": {"TR"}, "TD": {"TR"},
          "LI": {"L"}, "LBody": {"LI"}}
HOLDS = {"Table": {"TR"}, "TR": {"TH", "TD"}, "L": {"LI"}, "LI": {"LBody"}}
CONTENT = {"H1", "H2", "P", "Figure"}
EMPTY = {"TD", "TH"}


def kids(part: pikepdf.Object) -> list[pikepdf.Object]:
    """Return what an element holds: elements, and numbers of marked content."""
    held = part.get("/K", pikepdf.Array())
    return list(held) if isinstance(held, pikepdf.Array) else [held]


def elements(part: pikepdf.Object, around: str) -> Iterator[tuple[pikepdf.Object, str, str]]:
    """Yield every element with its kind and the kind of what it is in, in reading order."""
    kind = str(part.S)[1:]
    yield part, kind, around
    for kid in kids(part):
        if isinstance(kid, pikepdf.Dictionary):
            yield from elements(kid, kind)


def problems(data: bytes) -> list[str]:
    """Return what is wrong with the structure of a file, a sentence each."""
    with pikepdf.open(io.BytesIO(data)) as document:
        found = list(elements(document.Root.StructTreeRoot.K, "StructTreeRoot"))
        said = [*_nesting(found), *_figures(found), *_tables(found), *_headings(found)]
        return [*said, *_content(document, found)]


def _nesting(found: list[tuple[pikepdf.Object, str, str]]) -> Iterator[str]:
    for part, kind, around in found:
        marked = sum(not isinstance(kid, pikepdf.Dictionary) for kid in kids(part))
        inside = {str(kid.S)[1:] for kid in kids(part) if isinstance(kid, pikepdf.Dictionary)}
        if kind not in INSIDE.keys() | HOLDS.keys() | CONTENT:
            yield f"{kind} is no kind that we write"
        if around not in INSIDE.get(kind, {around}):
            yield f"{kind} stands in {around}"
        if not inside <= HOLDS.get(kind, inside):
            yield f"{kind} holds {inside}"
        if marked and kind not in CONTENT:
            yield f"{kind} has content of its own"
        if not kids(part) and kind not in EMPTY:
            yield f"{kind} is empty"


def _figures(found: list[tuple[pikepdf.Object, str, str]]) -> Iterator[str]:
    for part, kind, _ in found:
        if kind == "Figure" and not str(part.get("/Alt", "")).strip():
            yield "a figure says nothing (7.3)"
        if kind == "Figure" and ("/A" not in part or len(part.A.get("/BBox", ())) != 4):
            yield "a figure has no box"


def _tables(found: list[tuple[pikepdf.Object, str, str]]) -> Iterator[str]:
    for part, kind, _ in found:
        if kind == "TH" and str(part.A.get("/Scope")) not in ("/Row", "/Column"):
            yield "a head does not say what it heads (7.5)"
        if kind == "Table" and len({len(kids(row)) for row in kids(part)}) != 1:
            yield "a table has rows of different lengths (7.5)"


def _headings(found: list[tuple[pikepdf.Object, str, str]]) -> Iterator[str]:
    last = 0
    for _, kind, _ in found:
        if kind in ("H1", "H2"):
            if int(kind[1]) > last + 1:
                yield f"{kind} after a heading of level {last} (7.4)"
            last = int(kind[1])


def _content(document: pikepdf.Pdf, found: list[tuple[pikepdf.Object, str, str]]) -> Iterator[str]:
    owned = {(part.Pg.objgen, int(kid)): part.objgen for part, _, _ in found if "/Pg" in part for kid in kids(part)}
    parents = pikepdf.NumberTree(document.Root.StructTreeRoot.ParentTree)
    for page in document.pages:
        depth, seen = 0, []
        for operands, operator in pikepdf.parse_content_stream(page):
            if str(operator) in ("BDC", "BMC"):
                depth += 1
                seen += [int(operands[1].MCID)] if str(operator) == "BDC" else []
            elif str(operator) == "EMC":
                depth -= 1
            elif str(operator) in ("S", "f", "B", "Do", "Tj", "TJ") and depth != 1:
                yield f"{operator} at depth {depth} (7.1)"
        if seen != list(range(len(seen))):
            yield "marked content is not numbered in its order"
        if [owned.get((page.objgen, number)) for number in seen] != [
                one.objgen for one in parents[int(page.StructParents)]]:
            yield "the tree of parents does not lead back"
    if len(owned) != sum(len(parents[int(page.StructParents)]) for page in document.pages):
        yield "an element has content that is on no page"


def documents(which: str) -> dict[str, list[Page]]:
    """Return the pages of one kind, those that belong together as one file."""
    files: dict[str, list[Page]] = {}
    for name, page in kinds(which).items():
        files.setdefault(re.sub(r"-\d$", "", name), []).append(page)
    return files


@pytest.mark.parametrize("which", KINDS)
def test_every_kind_of_page_keeps_the_rules(which: str) -> None:
    """All content is marked once, parts stand where they may, figures speak, tables are whole."""
    for name, pages in documents(which).items():
        assert problems(pdf_bytes(pages)) == [], name


@pytest.mark.parametrize("which", KINDS)
def test_the_checker_finds_nothing(which: str, tmp_path: Path) -> None:
    """A checker that is not ours passes every kind of page; its rule on headings (UA-14-001) may fail to run."""
    for name, pages in documents(which).items():
        file = tmp_path / f"{name}.pdf"
        file.write_bytes(pdf_bytes(pages))
        report = pdfua.validate(str(file))
        assert [f"{name}: {found.message}" for found in report.findings] == []
        assert {outcome.rule_id for outcome in report.skipped} <= {"UA-14-001"}


def test_the_checker_would_find_something(tmp_path: Path) -> None:
    """A file whose title is not shown does not pass."""
    file = tmp_path / "untitled.pdf"
    data = pdf_bytes([table_of((Place.ROW_HEAD, Place.CELL))])
    with pikepdf.open(io.BytesIO(data)) as document:
        del document.Root.ViewerPreferences.DisplayDocTitle
        document.save(file)
    assert pdfua.validate(str(file)).findings


def table_of(*rows: tuple[Place, ...]) -> Page:
    """Return a page with one table of empty cells."""
    setter = Typesetter()
    cells = [tuple(Placed(place, (setter.text("Ana").moved(20, 20),)) for place in row) for row in rows]
    return Page(200.0, 200.0, (Placed(Place.TABLE, tuple(Placed(Place.ROW, row) for row in cells)),))


def test_the_rules_can_be_broken() -> None:
    """What is wrong shows: rows of two lengths, cells in no row, marks that say nothing."""
    row = (Place.ROW_HEAD, Place.CELL)
    assert problems(pdf_bytes([table_of(row, row)])) == []
    assert problems(pdf_bytes([table_of(row, (*row, Place.CELL))])) == ["a table has rows of different lengths (7.5)"]
    text = Typesetter().text("Ana").moved(20, 20)
    assert problems(pdf_bytes([table_of(row)._replace(items=(Placed(Place.CELL, (text,)),))])) == ["TD stands in Sect"]
    mute = text._replace(spelled=None)
    assert problems(pdf_bytes([table_of(row)._replace(items=(Chart("", (mute,)),))])) == ["a figure says nothing (7.3)"]


def kinds_told(data: bytes) -> list[str]:
    with pikepdf.open(io.BytesIO(data)) as document:
        return [kind for _, kind, _ in elements(document.Root.StructTreeRoot.K, "")]


def test_a_plan_is_tables_and_lists() -> None:
    """The week is a table with heads for its columns and its rows; each child's letters are told with their bands."""
    pages = [page for name, page in kinds("plans").items() if name.startswith("plan")]
    told = kinds_told(pdf_bytes(pages))
    assert told.count("Table") >= 2
    assert told.count("L") >= 2
    with pikepdf.open(io.BytesIO(pdf_bytes(pages))) as document:
        found = list(elements(document.Root.StructTreeRoot.K, ""))
        scopes = [str(part.A.Scope) for part, kind, _ in found if kind == "TH"]
        assert scopes[:4] == ["/Column"] * 4
        assert scopes.count("/Row") > 20
        alts = [str(part.Alt) for part, kind, _ in found if kind == "Figure"]
        assert any("(easier)" in alt and "(harder)" in alt for alt in alts)


def test_lines_left_out_are_a_list_for_the_adult(setter: Typesetter) -> None:
    """What stands without a heading on the adult's page is read as a list, an entry a line."""
    roster = read_roster("Ana\n!!!\nBo\n123")
    lines = [Entry("", (f"Line {report.line} was left out.",)) for report in left_out(roster)]
    assert len(lines) == 2
    told = kinds_told(pdf_bytes(summary_pages(setter, [Entry("Left out", title=True), *lines], Paper.A4)))
    assert told == ["Document", "Sect", "H1", "L", "LI", "LBody", "P", "LI", "LBody", "P"]
