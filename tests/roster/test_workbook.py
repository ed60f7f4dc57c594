"""A spreadsheet into text: the sheet that is the class, cells as a person reads them, and files that are refused.

The files are written by openpyxl and by the standard library's zipfile.
"""

from __future__ import annotations

import datetime
import io
import zipfile
from collections.abc import Callable

import openpyxl
import pytest

from namewright.roster.children import RosterError
from namewright.roster.workbook import workbook_text


def book(**sheets: list[list[object]]) -> bytes:
    """Return a spreadsheet of these sheets."""
    made = openpyxl.Workbook()
    made.remove(made.worksheets[0])
    for title, rows in sheets.items():
        sheet = made.create_sheet(title)
        for row in rows:
            sheet.append(row)
    out = io.BytesIO()
    made.save(out)
    return out.getvalue()


def packed(method: int = zipfile.ZIP_DEFLATED, /, **parts: bytes) -> bytes:
    """Return a zip file of parts."""
    out = io.BytesIO()
    with zipfile.ZipFile(out, "w", method) as archive:
        for name, content in parts.items():
            archive.writestr(name, content)
    return out.getvalue()


CELLS = [
    ("Mira", "Mira", "text"), (None, "", "nothing"), (7, "7", "a whole number"),
    (7.0, "7", "one that is kept as a fraction"),
    (1.5, "1.5", "a fraction"),
    (datetime.datetime(2020, 5, 4), "2020-05-04", "a date, without the hour that it is kept with"),
    ("Mira\nVost", "Mira Vost", "two lines in one cell"), ("Mira\tVost", "Mira Vost", "a tab in a cell is no column"),
    (True, "True", "a truth"),
]


@pytest.mark.parametrize(("value", "text", "why"), CELLS, ids=[row[2] for row in CELLS])
def test_a_cell_is_written_as_a_person_reads_it(value: object, text: str, why: str) -> None:
    assert workbook_text(book(A=[["x", value, "y"]]), "class.xlsx") == (f"x\t{text}\ty", ()), why


def test_rows_keep_their_numbers() -> None:
    """A blank row stays a line, so that line 4 is row 4; blank ones at the end go."""
    text, _ = workbook_text(book(A=[["Name"], [None], [None], ["Mira"], [None], [" "]]), "class.xlsx")
    assert text.split("\n") == ["Name", "", "", "Mira"]


def test_the_sheet_with_a_header_row_is_read_and_the_others_are_told() -> None:
    """Else the first that is filled."""
    data = book(Notes=[["Bring scissors"]], Class=[["Given", "Family"], ["Mira", "Vost"]], Old=[["Oda"]])
    text, notes = workbook_text(data, "class.xlsx")
    assert (text, len(notes)) == ("Given\tFamily\nMira\tVost", 1)
    text, notes = workbook_text(book(Empty=[], First=[["Mira"]], Second=[["Oda"]]), "class.xlsx")
    assert (text, len(notes)) == ("Mira", 1)


def spreadsheet(content: bytes = b"<a/>", method: int = zipfile.ZIP_DEFLATED, **parts: bytes) -> bytes:
    """Return what looks like a spreadsheet from outside, with this in its workbook."""
    return packed(method, **{"[Content_Types].xml": b"<Types/>", "xl/workbook.xml": content, **parts})


REFUSED = [
    (lambda: packed(mimetype=b"text"), "zip", "a zip file of something else"),
    (lambda: book(A=[["Mira"]])[:-200], "damaged", "a file cut short"),
    (lambda: b"PK\x03\x04", "damaged", "the opening of a zip file and nothing else"),
    (lambda: book(A=[]), "empty_sheets", "a book without a filled sheet"),
    (spreadsheet, "no_sheet", "what only looks like a spreadsheet"),
    (lambda: spreadsheet(b'<!DOCTYPE x [<!ENTITY y "z">]><x/>'), "doctype", "a document type"),
    (lambda: spreadsheet("<!DOCTYPE x><x/>".encode("utf-16-le")), "doctype", "a document type in another encoding"),
    (lambda: spreadsheet(b" " * 50_000_000, zipfile.ZIP_STORED), "unpacks", "more unpacked than any class list"),
    (lambda: spreadsheet(b" " * 6_000_000), "unpacks", "packed two hundred times over"),
    (lambda: spreadsheet(**{f"xl/{at}.xml": b"" for at in range(2000)}), "unpacks", "too many parts"),
]


@pytest.mark.parametrize(("make", "key", "why"), REFUSED, ids=[row[2] for row in REFUSED])
def test_what_is_no_class_list_is_refused(make: Callable[[], bytes], key: str, why: str) -> None:
    """Before the reader of spreadsheets sees it, where that could be dangerous; and each by its own reason."""
    with pytest.raises(RosterError) as refused:
        workbook_text(make(), "class.xlsx")
    assert refused.value.message.key == f"roster.{key}", why


def test_a_large_but_honest_book_is_read() -> None:
    """What packs well without being a trap is no reason to refuse: three thousand rows of names."""
    text, _ = workbook_text(book(A=[["Mira", "Vost"]] * 3000), "class.xlsx")
    assert text.count("\n") == 2999
