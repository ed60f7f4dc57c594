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


def test_the_sheet_that_is_asked_for_is_read() -> None:
    """Hidden or not, however it is written; and one that is not there is no reason to read another."""
    made = openpyxl.load_workbook(io.BytesIO(book(Class=[["Given"], ["Mira"]], Wrens=[["Oda"]])))
    made["Wrens"].sheet_state = "hidden"
    out = io.BytesIO()
    made.save(out)
    text, notes = workbook_text(out.getvalue(), "class.xlsx", "WRENS")
    assert (text, [note.key for note in notes]) == ("Oda", ["roster.one_sheet"])
    with pytest.raises(RosterError) as refused:
        workbook_text(out.getvalue(), "class.xlsx", "Owls")
    assert refused.value.message.key == "roster.no_such_sheet"


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


# --- the budget of reading -----------------------------------------------------------------------------

SHEET = "xl/worksheets/sheet1.xml"
NAMESPACE = b'xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"'


def with_part(data: bytes, name: str, content: bytes) -> bytes:
    """Return a spreadsheet with one part of it written anew."""
    out = io.BytesIO()
    with zipfile.ZipFile(io.BytesIO(data)) as old, zipfile.ZipFile(out, "w", zipfile.ZIP_DEFLATED) as new:
        for part in old.namelist():
            new.writestr(part, content if part == name else old.read(part))
    return out.getvalue()


def with_rows(rows: bytes) -> bytes:
    """Return a spreadsheet whose first sheet is made of these rows, as XML."""
    sheet = b"<worksheet %b><sheetData>%b</sheetData></worksheet>" % (NAMESPACE, rows)
    return with_part(book(A=[["Mira"]]), SHEET, sheet)


def cell(place: str, text: str = "Mira") -> bytes:
    """Return a cell with its text in it."""
    return f'<c r="{place}" t="inlineStr"><is><t>{text}</t></is></c>'.encode()


def test_a_row_two_thousand_million_rows_down_costs_nothing() -> None:
    """Rows between are not made; that something stands so far down is told."""
    rows = b'<row r="1">' + cell("A1") + b'</row><row r="2000000000">' + cell("A2000000000", "Oda") + b"</row>"
    text, notes = workbook_text(with_rows(rows), "class.xlsx")
    assert (text, [note.key for note in notes]) == ("Mira", ["roster.far_rows"])


def test_cells_far_to_the_right_cost_nothing() -> None:
    """Five thousand rows of one empty cell each in the last column a sheet can have: 80 million cells between."""
    empty = b"".join(b'<row r="%d"><c r="XFD%d"/></row>' % (at, at) for at in range(2, 5_000))
    text, _ = workbook_text(with_rows(b'<row r="1">' + cell("A1") + b"</row>" + empty), "class.xlsx")
    assert text == "Mira"


def test_many_sheets_on_one_part_are_refused() -> None:
    """Each would be read in full, and no spreadsheet program writes that."""
    rows = b"".join(b'<row r="%d">%b</row>' % (at, cell(f"A{at}", "7")) for at in range(1, 20_000))
    sheets = b"".join(b'<sheet name="S%d" sheetId="%d" r:id="rId1"/>' % (at, at) for at in range(1, 600))
    names = (b'<workbook %b xmlns:r="http://schemas.openxmlformats.org/officeDocument/2006/relationships"><sheets>'
             b"%b</sheets></workbook>") % (NAMESPACE, sheets)
    with pytest.raises(RosterError) as caught:
        workbook_text(with_part(with_rows(rows), "xl/workbook.xml", names), "class.xlsx")
    assert caught.value.message.key == "roster.damaged"


def test_all_sheets_share_one_budget(monkeypatch: pytest.MonkeyPatch) -> None:
    """Nine sheets within it one by one are beyond it together: no more of them is read than of one."""
    monkeypatch.setattr("namewright.roster.workbook._MAX_READ", 2_000)  # a hundredth, as the sheets are
    sheets = {f"S{at}": [["Mira"]] * 120 for at in range(9)}
    assert workbook_text(book(S0=sheets["S0"]), "class.xlsx")[0].count("Mira") == 120
    with pytest.raises(RosterError) as caught:
        workbook_text(book(**sheets), "class.xlsx")
    assert caught.value.message.key == "roster.many_rows"


@pytest.mark.parametrize("part", [SHEET, "xl/styles.xml"])
def test_more_elements_than_a_list_needs_are_not_read(part: str) -> None:
    """A million and a half of anything in any part."""
    with pytest.raises(RosterError) as caught:
        workbook_text(with_part(book(A=[["Mira"]]), part, b"<sst>" + b"<si/>" * 1_500_000 + b"</sst>"), "class.xlsx")
    assert caught.value.message.key == "roster.unpacks"


PICTURE = "xl/media/image1.png"
TARGETS = "xl/_rels/workbook.xml.rels"


def with_more(data: bytes, name: str, content: bytes) -> bytes:
    """Return a spreadsheet with one part more."""
    out = io.BytesIO(data)
    with zipfile.ZipFile(out, "a", zipfile.ZIP_DEFLATED) as archive:
        archive.writestr(name, content)
    return out.getvalue()


def part_of(data: bytes, name: str) -> bytes:
    with zipfile.ZipFile(io.BytesIO(data)) as archive:
        return archive.read(name)


def test_a_sheet_that_passes_for_a_picture_is_not_read() -> None:
    """Pictures are not searched for what is dangerous, so nothing of them reaches the reader; a real one may stay."""
    sound = book(A=[["Mira"]])
    posing = with_part(sound, TARGETS, part_of(sound, TARGETS).replace(b"worksheets/sheet1.xml", b"media/image1.png"))
    with pytest.raises(RosterError):
        workbook_text(with_more(posing, PICTURE, part_of(book(A=[["Oda"]]), SHEET)), "class.xlsx")
    assert workbook_text(with_more(sound, PICTURE, b"\x89PNG <!DOCTYPE svg>"), "class.xlsx") == ("Mira", ())


@pytest.mark.parametrize("code", ["utf-16", "cp037"])
def test_a_part_that_cannot_be_searched_is_refused(code: str) -> None:
    """In UTF-16 and in EBCDIC an XML parser finds what a search for ASCII does not."""
    sheet = part_of(book(A=[["Mira"]]), SHEET).decode()
    assert sheet.startswith("<worksheet")
    head = f'<?xml version="1.0" encoding="{code}"?>'
    written = (head + sheet).encode(code) if code == "utf-16" else head.encode() + sheet.encode(code)
    with pytest.raises(RosterError) as caught:
        workbook_text(with_part(book(A=[["Mira"]]), SHEET, written), "class.xlsx")
    assert caught.value.message.key == "roster.damaged"
    for usual in ("UTF-8", "utf-8", "windows-1252", "ISO-8859-1"):
        said = f'<?xml version="1.0" encoding="{usual}"?>'.encode()
        assert workbook_text(with_part(book(A=[["Mira"]]), SHEET, said + sheet.encode()), "x") == ("Mira", ())


def test_a_number_format_past_all_measure_is_refused() -> None:
    """The reader looks at each opening bracket as far as the end: half a million take hours."""
    style = part_of(book(A=[["Mira"]]), "xl/styles.xml")
    formats = b'<numFmts count="1"><numFmt numFmtId="200" formatCode="%b"/></numFmts><fonts'
    for length, refused in ((255, False), (20_000, True)):
        data = with_part(book(A=[["Mira"]]), "xl/styles.xml", style.replace(b"<fonts", formats % (b"[" * length), 1))
        if not refused:
            assert workbook_text(data, "class.xlsx") == ("Mira", ())
            continue
        with pytest.raises(RosterError) as caught:
            workbook_text(data, "class.xlsx")
        assert caught.value.message.key == "roster.damaged"


@pytest.mark.filterwarnings("ignore:Duplicate name")
def test_two_parts_of_one_name_are_refused() -> None:
    """One program would read the first and another the last."""
    with pytest.raises(RosterError) as caught:
        workbook_text(with_more(book(A=[["Mira"]]), SHEET, b"<a/>"), "class.xlsx")
    assert caught.value.message.key == "roster.damaged"


def test_sheets_on_one_part_are_refused_by_any_prefix() -> None:
    """However long the prefix of their names is."""
    sound = book(A=[["Mira"]])
    names = part_of(sound, "xl/workbook.xml").replace(
        b"</sheets>", b'</sheets><x:sheets xmlns:x="%b"></x:sheets>' % b"a").replace(
        b"</sheets>", b'<long-prefix-of-a-name:sheet xmlns:long-prefix-of-a-name="a" name="B"/></sheets>', 1)
    with pytest.raises(RosterError) as caught:
        workbook_text(with_part(sound, "xl/workbook.xml", names), "class.xlsx")
    assert caught.value.message.key == "roster.damaged"


def test_a_formula_before_endless_blanks_is_looked_at_once() -> None:
    """Blanks are not gone over again from each of them."""
    rows = b'<row r="1">' + cell("A1") + b'<c r="B1"><f>1</f>' + b" " * 200_000 + b"<w/></c></row>"
    assert workbook_text(with_rows(rows), "class.xlsx") == ("Mira", ())


NAMES = [["First name", "Last name"], ["Mia", "Chen"], ["Leo", "Park"]]


def hidden(data: bytes, title: str) -> bytes:
    """Return a spreadsheet with one sheet hidden."""
    loaded = openpyxl.load_workbook(io.BytesIO(data))
    loaded[title].sheet_state = "hidden"
    out = io.BytesIO()
    loaded.save(out)
    return out.getvalue()


def test_a_hidden_sheet_is_read_only_where_nothing_else_is_filled() -> None:
    """Even if it has titles of columns and the sheet in sight has none."""
    old = [["First name", "Last name"], ["Noah", "Moss"]]
    text, notes = workbook_text(hidden(book(Now=[["Mia Chen"], ["Leo Park"]], Old=old), "Old"), "class.xlsx")
    assert text == "Mia Chen\nLeo Park"
    assert notes[0]["others"] == ("Old",)
    assert "Noah" in workbook_text(hidden(book(Empty=[], Old=old), "Old"), "class.xlsx")[0]


@pytest.mark.parametrize("title", ["Staff", "Teachers 2026", "Lehrkräfte", "Enseignants", "Maestros", "Parents"])
def test_a_sheet_of_the_staff_is_not_the_class(title: str) -> None:
    staff = [["First name", "Last name"], ["Ruth", "Alder"]]
    assert "Mia" in workbook_text(book(**{title: staff, "Sheet2": NAMES}), "class.xlsx")[0]


def test_several_sheets_that_look_like_classes_are_asked_about() -> None:
    """Unless they are about the same children, or all but one are hidden."""
    two = book(Red=NAMES, Blue=[["First name", "Last name"], ["Noah", "Moss"], ["Ava", "Bell"]])
    with pytest.raises(RosterError) as asked:
        workbook_text(two, "class.xlsx")
    assert (asked.value.message.key, asked.value.message["sheets"]) == ("roster.several_sheets", ("Red", "Blue"))
    assert "Mia" in workbook_text(hidden(two, "Blue"), "class.xlsx")[0]
    assert "Mia" in workbook_text(book(Names=NAMES, Birthdays=[["Name", "Day"], ["Mia Chen", 4], ["Leo Park", 5]]),
                                  "class.xlsx")[0]


def test_classes_on_sheets_without_titles_are_asked_about() -> None:
    """A sheet of the staff and one of other things are no class beside them."""
    one = [["Mia", "Chen"], ["Leo", "Park"], ["Ava", "Bell"]]
    two = [["Noah", "Moss"], ["Lena", "Vogt"], ["Ida", "Kern"]]
    with pytest.raises(RosterError) as asked:
        workbook_text(book(**{"1a": one, "1b": two}), "class.xlsx")
    assert asked.value.message["sheets"] == ("1a", "1b")
    assert "Mia" in workbook_text(book(**{"Lehrerinnen": two, "1b": one}), "class.xlsx")[0]
    assert "Mia" in workbook_text(book(**{"1b": one, "Dates": [["x", 1], ["y", 2], ["z", 3]]}), "class.xlsx")[0]


def test_cells_that_stand_too_far_right_are_told() -> None:
    _, notes = workbook_text(book(A=[["Mia Chen", *[None] * 499, "Leo Park"]]), "class.xlsx")
    assert [note.key for note in notes] == ["roster.far_columns"]
    assert workbook_text(book(A=[["Mia Chen", *[None] * 498, "Leo Park"]]), "class.xlsx")[1] == ()


def test_one_of_several_classes_can_be_named() -> None:
    """Its title may be typed in any case."""
    data = book(Maple=[["First", "Last"], ["Mira", "Vost"]], Birch=[["First", "Last"], ["Oda", "Quill"]])
    assert workbook_text(data, "class.xlsx", "birch")[0] == "First\tLast\nOda\tQuill"
