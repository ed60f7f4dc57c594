"""Files of every kind: read, or refused in one sentence, and never a traceback."""

from __future__ import annotations

import datetime
import io
import os
import zipfile
from pathlib import Path

import openpyxl
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from namewright.message import message
from namewright.roster.children import Outcome, Roster, RosterError
from namewright.roster.parsing import load_roster, read_roster, roster_from_bytes
from namewright.settings import Hand
from namewright.wording import wording

TEXT = "Family\tGiven\nMóss\tZoë\n"


def practised(roster: Roster) -> list[str]:
    return [child.practice for child in roster.children]


def workbook(*sheets: list[list[object]]) -> bytes:
    """Build a real .xlsx with openpyxl, one sheet for each list of rows."""
    book = openpyxl.Workbook()
    assert book.active is not None
    book.remove(book.active)
    for number, rows in enumerate(sheets, start=1):
        sheet = book.create_sheet(f"Sheet {number}")
        for row in rows:
            sheet.append(row)
    data = io.BytesIO()
    book.save(data)
    return data.getvalue()


def repacked(data: bytes, changes: dict[str, bytes]) -> bytes:
    """Write the parts of an .xlsx again with some of them replaced or added."""
    out = io.BytesIO()
    with zipfile.ZipFile(io.BytesIO(data)) as old, zipfile.ZipFile(out, "w", zipfile.ZIP_DEFLATED) as new:
        for name in {**dict.fromkeys(old.namelist()), **dict.fromkeys(changes)}:
            new.writestr(name, changes[name] if name in changes else old.read(name))
    return out.getvalue()


CLASS: list[list[object]] = [
    ["Family", "Given", "Hand", "Line height", "Birthday", "ID"],
    ["Moss", "Katie", "L", 12.0, datetime.datetime(2020, 3, 4), 17],
    [],
    ["Oak", "Ben\nLee", "R", None, None, 18.0],
]


@pytest.mark.parametrize("encoding", ["utf-8", "utf-8-sig", "utf-16", "utf-32", "cp1252"])
def test_encodings(encoding: str) -> None:
    """Text is read in each encoding a teacher's program writes; only a guess is noted."""
    roster = roster_from_bytes(TEXT.encode(encoding), "class.tsv")
    assert practised(roster) == ["Zoë"]
    assert bool(roster.notes) == (encoding == "cp1252")


@pytest.mark.parametrize("end", ["\n", "\r\n", "\r"])
def test_line_ends(end: str) -> None:
    """Every kind of line end gives the same lines."""
    roster = read_roster(f"Katie{end}{end}Ben{end}")
    assert [line.outcome for line in roster.lines] == [Outcome.CHILD, Outcome.BLANK, Outcome.CHILD]


@pytest.mark.parametrize("name", ["class.txt", "class.csv", "class.tsv", "class"])
def test_a_file_is_read_by_its_content(tmp_path: Path, name: str) -> None:
    """The ending of a file's name decides nothing."""
    path = tmp_path / name
    path.write_text("Last,First\nMoss,Katie\n", encoding="utf-8")
    assert practised(load_roster(path)) == ["Katie"]


def test_spreadsheet(tmp_path: Path) -> None:
    """A sheet is read with its row numbers, its own settings, and line ends inside cells."""
    path = tmp_path / "class.xlsx"
    path.write_bytes(workbook(CLASS))
    roster = load_roster(path)
    assert [(c.practice, c.line, c.hand, c.line_height_mm) for c in roster.children] == [
        ("Katie", 2, Hand.LEFT, 12.0), ("Ben Lee", 4, Hand.RIGHT, None)]
    assert roster.lines[2].outcome is Outcome.BLANK
    assert roster.notes == ()


def test_other_sheets_are_said() -> None:
    """The first filled sheet is read and the others are named."""
    roster = roster_from_bytes(workbook([], [["Katie Moss"]], [["Ben Oak"]]), "class.xlsx")
    assert practised(roster) == ["Katie"]
    assert [note.key for note in roster.notes] == ["roster.one_sheet"]
    assert "Sheet 3" in str(roster.notes[0]["others"])


def test_spreadsheet_and_its_text_agree() -> None:
    """A sheet and the same rows pasted as text give the same children."""
    rows: list[list[object]] = [["Given", "Family"], ["ANA MARÍA", "DE LA CRUZ"], ["Zoë", "O’Neil"]]
    pasted = read_roster("\n".join("\t".join(map(str, row)) for row in rows))
    assert roster_from_bytes(workbook(rows)).children == pasted.children


BOOK = workbook(CLASS)
SHEET = "xl/worksheets/sheet1.xml"
ENTITY = b'<?xml version="1.0"?><!DOCTYPE x [<!ENTITY e SYSTEM "file:///etc/hostname">]><x>&e;</x>'
OLE = bytes.fromhex("d0cf11e0a1b11ae1")


EMPTY_ZIP = b"PK\x05\x06" + b"\0" * 18

REFUSED = [
    (b"", "empty", "an empty file"),
    (b"\xef\xbb\xbf", "empty", "only a byte order mark"),
    (b"%PDF-1.7\n...", "pdf", "a PDF"),
    (b"\x89PNG\r\n\x1a\n", "picture", "a picture"),
    (b"{\\rtf1 Katie}", "rich_text", "rich text"),
    (b"Katie\0\0Moss", "no_text", "NUL bytes"),
    (b"\xff\xfeK\0a", "broken_text", "half a UTF-16 character"),
    (b"Katie \x81\x8d", "unknown_encoding", "bytes that no encoding has"),
    (OLE + b"\0" * 600, "old_office", "an old spreadsheet"),
    (OLE + "EncryptedPackage".encode("utf-16-le"), "locked", "a locked spreadsheet"),
    (BOOK[: len(BOOK) // 2], "damaged", "half a spreadsheet"),
    (b"PK\x03\x04 nonsense", "damaged", "a zip in name only"),
    (repacked(EMPTY_ZIP, {"notes.txt": b"Katie"}), "zip", "another zip"),
    (repacked(BOOK, {SHEET: ENTITY}), "doctype", "an entity from another file"),
    (repacked(BOOK, {SHEET: ENTITY.decode().encode("utf-16")}), "doctype", "the same in UTF-16"),
    (repacked(BOOK, {SHEET: b"<x>"}), "no_sheet", "broken XML"),
    (repacked(BOOK, {"xl/big.bin": b"\0" * 51_000_000}), "unpacks", "more than 50 MB unpacked"),
    (repacked(BOOK, {"xl/big.bin": b"\0" * 6_000_000}), "unpacks", "a part packed 1000 to 1"),
    (repacked(BOOK, {f"xl/{n}.bin": b"" for n in range(2001)}), "unpacks", "too many parts"),
    (workbook([]), "empty_sheets", "an empty sheet"),
    (b"a" * 20_000_001, "file_large", "too much text"),
]


@pytest.mark.parametrize(("data", "reason", "why"), REFUSED, ids=[row[2] for row in REFUSED])
def test_refused(data: bytes, reason: str, why: str) -> None:
    """What is no roster is refused in one sentence that names the file and says what to do."""
    with pytest.raises(RosterError) as caught:
        roster_from_bytes(data, "class.xlsx")
    assert caught.value.message.key == f"roster.{reason}", why
    assert caught.value.message["source"] == "class.xlsx", why


def test_locked_zip_part_is_refused() -> None:
    """A part that is marked as encrypted is refused before anything is opened."""
    data = bytearray(BOOK)
    at = data.find(b"PK\x01\x02")
    while at >= 0:
        data[at + 8] |= 1
        at = data.find(b"PK\x01\x02", at + 4)
    with pytest.raises(RosterError, match=r"roster\.locked"):
        roster_from_bytes(bytes(data), "class.xlsx")


def test_paths_that_cannot_be_read(tmp_path: Path) -> None:
    """A missing file, a folder, a device and an impossible name each give a sentence."""
    for path, reason in [(tmp_path / "none.txt", "no_file"), (tmp_path, "folder"),
                        (Path(os.devnull), "no_ordinary_file"), (tmp_path / "a\0b", "unreadable"),
                        (tmp_path / ("x" * 5000), "unreadable")]:
        with pytest.raises(RosterError, match=rf"roster\.{reason}\("):
            load_roster(path)


def test_a_file_that_may_not_be_read(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """A file without leave to read it says so."""
    path = tmp_path / "class.txt"
    path.write_text("Katie")

    def refuse(*_: object, **__: object) -> None:
        raise PermissionError

    monkeypatch.setattr(Path, "open", refuse)
    with pytest.raises(RosterError, match=r"roster\.not_allowed"):
        load_roster(path)


@settings(max_examples=300, deadline=None)
@given(st.binary(max_size=200))
def test_any_bytes(data: bytes) -> None:
    """Any bytes at all are read or refused with RosterError."""
    _read_or_refuse(data)


@settings(max_examples=60, deadline=None)
@given(st.integers(0, len(BOOK) - 1), st.binary(min_size=1, max_size=8))
def test_any_damage_to_a_spreadsheet(at: int, patch: bytes) -> None:
    """A spreadsheet with bytes overwritten anywhere is read or refused."""
    _read_or_refuse(BOOK[:at] + patch + BOOK[at + len(patch):])


@settings(max_examples=60, deadline=None)
@given(st.sampled_from(["xl/workbook.xml", SHEET, "xl/styles.xml", "[Content_Types].xml"]), st.integers(0, 5000),
       st.sampled_from([b"<", b'"', b"9999999999", b"\xff", b"-1", b"NaN", b"r=\"ZZZZZ9\"", b"/>"]),
)
def test_any_damage_inside_a_spreadsheet(part: str, at: int, patch: bytes) -> None:
    """The same for damage inside one of its parts, where the zip itself is sound."""
    with zipfile.ZipFile(io.BytesIO(BOOK)) as archive:
        content = archive.read(part)
    at %= len(content)
    _read_or_refuse(repacked(BOOK, {part: content[:at] + patch + content[at + len(patch):]}))


def _read_or_refuse(data: bytes) -> None:
    try:
        roster = roster_from_bytes(data)
    except RosterError as error:
        refusal = wording("en").sentence(error.message)
    else:
        refusal = ""
        assert roster.children
    assert refusal.endswith(".") or not refusal


def test_the_sheet_with_a_header_is_the_class() -> None:
    """A sheet of explanations in front is not read for names; the note says which sheet was read."""
    roster = roster_from_bytes(workbook([["How to use this file"], ["Type below"]], CLASS), "class.xlsx")
    assert practised(roster) == ["Katie", "Ben Lee"]
    assert roster.notes[0]["sheet"] == "Sheet 2"


def test_a_hidden_sheet_gives_way() -> None:
    """What nobody sees is not read while a sheet in sight holds names."""
    book = openpyxl.Workbook()
    book.worksheets[0].append(["Old Name"])
    book.worksheets[0].sheet_state = "hidden"
    book.create_sheet("Class").append(["Katie Moss"])
    book.active = 1
    data = io.BytesIO()
    book.save(data)
    assert practised(roster_from_bytes(data.getvalue(), "class.xlsx")) == ["Katie"]


def test_a_formula_that_was_never_worked_out_is_said() -> None:
    """Its cell is empty in the file, so a child could be missed; the note says what to do."""
    rows: list[list[object]] = [["Name"], ["Katie Moss"], ['="Ben"&" Oak"']]
    roster = roster_from_bytes(workbook(rows), "class.xlsx")
    assert practised(roster) == ["Katie"]
    assert roster.notes == (message("roster.unfinished", source="class.xlsx"),)
    with pytest.raises(RosterError, match=r"roster\.only_header.*roster\.unfinished"):
        roster_from_bytes(workbook([rows[0], rows[2]]), "class.xlsx")
    assert roster_from_bytes(workbook(CLASS), "class.xlsx").notes == ()


def test_a_second_pair_of_name_columns_is_a_parents() -> None:
    """Under a merged title for each, “First” and “Last” stand twice; the first pair is the child's."""
    rows: list[list[object]] = [
        ["Student", None, "Parent"], ["First", "Last", "First", "Last"], ["Katie", "Moss", "Maud", "Oak"]]
    child = roster_from_bytes(workbook(rows), "class.xlsx").children[0]
    assert (child.given, child.family) == ("Katie", "Moss")
