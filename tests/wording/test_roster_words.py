"""Every note and refusal of a class list is said in words of the language that is asked for, and in no other."""

from __future__ import annotations

import io
import re
import zipfile
from collections.abc import Iterator
from enum import StrEnum
from pathlib import Path

import openpyxl
import pytest
from made_up import MADE_UP, unmarked

from longer import rest_long
from namewright.message import Message, Problem, message
from namewright.roster import parsing, reader_process, sources, workbook
from namewright.roster.children import Roster, RosterError
from namewright.roster.headers import titles_for
from namewright.roster.parsing import FILE, PASTED, load_roster, read_roster, roster_from_bytes
from namewright.settings import NamePart
from namewright.wording import wording

OLE = bytes.fromhex("d0cf11e0a1b11ae1")
LISTS = (
    "Xeno Wren\nAula Girasoles\nMoyenne section", "Mª Wren\nWren, Xq. Yara",
    "Xeno\tYara\nXeno\tYara", "Xeno Wilder Yara\nYara, Xeno\nXeno Yara, Quill, Rook", "XENO YARA\nXeno (quiet)\nXe2no",
    "Given\tFamily\tGoes by\tSupport\tHand\tLine height\tPractise\tSign\tFlag\nXeno\tYara\t12\txx\txx\txx\tWren\tq\tq",
    "Given\tFamily\tGoes by\tPractise\tSign\nXeno\tYara\tWren\tRook\tq", "Given\tFamily\n\tYara\nXeno\t",
    "First\tMiddle\tLast\nXeno\tWren\tYara", "Student\tFirst\tLast\nYara, Xeno Wren\tXeno\tYara",
    "Xeno jr\n#REF!\tXeno\nXeno x@y.example 1/2/2021 555-010-0199 7 ᵃ\n", 'Given,Family\nXeno,"Ya\nra"\n"Xe"",no",=A1',
    "Wren\nGiven\tFamily\nXeno\tYara", "Xe\u200bno\nXe\u200b\u200c\u200d\u2060\u2061\u2062\u2063no\nＸｅｎｏ\nXe'eno ☀",
    "Group:\nThe Wren Class\nGrade 2\nRoom: 3\nMs. Wren\npage 3\nKindergarten 2026\nprinted 3\nXeno",
    "Xeno, Wren, Rook\n!!!\n123\n\u0301\n(quiet)\nXeno", "x" * 90, "x" * 500, "", "Name\n", "12\n13",
    "a\n" * 60, "a" * 9000, "Xeno Yara iii\nMaría Wren Xeno-Yara\nXeno Yara Wren\nYARA Xeno\nXeno III",
    "Mia Chen: Anna Bell\nLeo Park: Ruth Olmo\nZoe Wren: Ida Rook", "Xeno – Quix\nWren – Rook\nVexil – Quorra",
    "Mia; Leo\nXeno", "Mia, Xeno\nYara", "<li>Xeno</li>",
    "Kim Min-jun\nXeno", "Mary - Kate\nXeno", "Name\tLanguage\nXeno\tqqqqqq",
    "Zorb\tQuix\nVexil\tQuorra", "Mia Chen\tAnna Bell\nLeo Park\tRuth Olmo", "[9/3/26, 8:10] Wren: Xeno",
    "Xeno <x@y.example>, Yara <z@y.example>",
    "Mia Yara\tIda Yara\t555-0142\nLeo Rook\tKim Rook\t555-0143",
    "Mia,Yara,Ida,Yara\nLeo,Rook,Kim,Rook\nZoe,Wren,Eva,Wren",
    "Xeno Yara 7\nWren Rook 12\nQuill Yara 3",
    "ID\tFirst\tLast\tMother\n40100\tXeno\tYara\tWren\n40100\tXeno\tYara\tQuill",
    "Quix, Vexil\nQuorra, Zorb", "Quix;Vexil\nAnna;Bell\nMia;Chen\nLeo;Park",
    "Rook, Xeno Wren\nYara, Xeno", "Mia R., Anna C., ROSA p., Ruth p.",
    "First name\nXeno\nYara\nLast name\nWren",
    "~~Xeno~~\nYara\nXe0no Wren",
    "Xeno Yara\nWren Rook\nVexil Quix\nXeno is at the door.\nThe door for Mia is shut.\nDoor holder: Wren",
    "Xeno Yara\nWren Rook\nWaiting list\nQuill Yara", "Xeno Yara\nQqq: 3\nWren Rook\nQqq: 4",
    "Wren\nXeno Yara *\nRook Vexil\nQuix Quorra *\n* new\nThanks!\nRosa",
    "7:12 Church\nXeno\nYara\nWren\n\n7:21 Plaza\nRook",
    "Qqq\nApril\nXeno 3\nYara 9\nMay\nWren 2\nJune\nRook 7\nJuly\nVexil 1",
    "3 anni\nXeno\n4 anni\nYara\nSizes: 3 x S, 5 x M",
    "Juan Carlos\nBus: 7\nXeno 7\nTeacher: Wren\nGrade: K\nRoom Grade 2\nXeno iii",
    "Xeno Yara\nWren Rook\nMia Chen\n\nYara, Xeno\nRook, Wren\nChen, Mia",
    "Xeno Yara[Q1]\nWren Rook\nMia Chen[Q2]\nCommented [Q1]: bus\nCommented [Q2]: pick up late",
    "Xeno Yara\nWren Rook\nMia Chen\n\nStaff\nQuill Vexil\nQuix Quorra",
    "Xeno Yara\nWren Rook\nMia Chen\n\nLeavers\nQuill Vexil",
    "Xeno Yara -> Owls\nWren Rook -> moved away\nMia Chen -> Foxes\nLeo Park -> Owls",
    "Quill Yara\nXeno absent today\n8:25\n\nRosa Rook\nAbsence: Wren\n8:40\n\nVexil Quix\nAbsence: Mia\n8:42",
    "8:25  Quill Yara  Leo Yara qqq\n8:40  Rosa Rook  Mia Rook qqq\n8:42  Vexil Quix  Anna Quix qqqq",
    '[{"given": "Xeno", "family": "Yara"}, {"given": "Wren", "family": "Rook"}]',
)


def _book(*sheets: list[list[object]]) -> bytes:
    book = openpyxl.Workbook()
    for rows in sheets:
        sheet = book.create_sheet()
        for row in rows:
            sheet.append(row)
    del book["Sheet"]
    out = io.BytesIO()
    book.save(out)
    return out.getvalue()


def _zip(*names: str, data: bytes = b"x") -> bytes:
    out = io.BytesIO()
    with zipfile.ZipFile(out, "w", zipfile.ZIP_DEFLATED) as archive:
        for name in names:
            archive.writestr(name, data)
    return out.getvalue()


def _locked() -> bytes:
    data = bytearray(_book([["Xeno"]]))
    at = data.find(b"PK\x01\x02")
    while at >= 0:
        data[at + 8] |= 1
        at = data.find(b"PK\x01\x02", at + 4)
    return bytes(data)


def _files() -> Iterator[bytes]:
    yield from (b"%PDF", b"{\\rtf", b"GIF8", b"7z\xbc\xaf", b"<html>", b"<?xml", b"\xff\xfeK\0a", b"K\0\0",
                b"a\x81\x8d",
                b"Zo\xeb", OLE, OLE + "EncryptedPackage".encode("utf-16-le"), b"PK\x03\x04", _locked(),
                b"a" * 30_000)
    yield from (_zip("a.txt"), _zip("[Content_Types].xml", "xl/workbook.xml"),
                _zip("[Content_Types].xml", "xl/a.xml", data=b"<!DOCTYPE x>"),
                _zip("[Content_Types].xml", "xl/a.bin", data=b"\0" * 6_000_000))
    yield from (_book([]), _book([["Xeno"]], [["Yara"]]), _book([["Name"], ["Xeno"], ['="a"']]),
                _book([["Name", "Age"], ["Xeno", 4]], [["Name", "Age"], ["Yara", 5]]),
                _book([["Xeno", *[None] * 510, 7]]),
                _book([["Xeno"]] * 60), _book([["Xeno", "Yara", "Wren"]] * 40))


def _told(made: Roster | RosterError) -> Iterator[Message]:
    """Yield everything that is told of a list."""
    if isinstance(made, RosterError):
        yield made.message
    else:
        yield from made.notes
    for report in made.lines:
        yield from report.notes


def _made(data: bytes | str, source: Message | str, part: NamePart = NamePart.GIVEN) -> Roster | RosterError:
    try:
        return read_roster(data, source, part) if isinstance(data, str) else roster_from_bytes(data, source, part)
    except RosterError as error:
        return error


def _refused(path: Path) -> RosterError:
    with pytest.raises(RosterError) as refused:
        load_roster(path)
    return refused.value


@pytest.fixture
def all_told(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> tuple[Message, ...]:
    """Everything that reading a list can say, with limits low enough to be met at once."""
    for module in (parsing, sources, workbook):
        if module is not sources:
            monkeypatch.setattr(module, "MAX_LINES", 50)
        monkeypatch.setattr(module, "MAX_BYTES", 20_000 if module is not parsing else 8_000)
    monkeypatch.setattr(workbook, "_MAX_READ", 110)
    shut = tmp_path / "shut.txt"
    shut.write_text("Xeno")
    made = [_made(text, source, part) for text in LISTS for source, part in
            zip((PASTED, message("roster.list"), message("roster.name")), NamePart, strict=True)]
    made += [read_roster("Mia Chen: Anna Bell\nLeo Park: Ruth Olmo\nZoe Wren: Ida Rook", columns="name,other")]
    made += [_made(data, source) for data in _files() for source in (FILE, "wren.xlsx")]
    made += [_refused(path) for path in (tmp_path, tmp_path / "none.txt", tmp_path / "a\0b", Path("/dev/null"))]
    with monkeypatch.context() as patch:
        patch.setattr(Path, "open", _not_allowed)
        made += [_refused(shut)]
        patch.setattr(reader_process, "_places", reader_process.BoundedSemaphore(0))
        made += [_no_place()]
    with pytest.raises(RosterError) as no_sheet:
        sources.decode(_book([["Xeno"]]), FILE, "qqq")
    made += [no_sheet.value]
    with pytest.raises(Problem) as no_columns:
        titles_for("qqq")
    return tuple(dict.fromkeys((no_columns.value.message, *(note for each in made for note in _told(each)))))


def _no_place() -> RosterError:
    with pytest.raises(RosterError) as refused:
        reader_process.decode_in_a_process(_book([["Xeno"]]), FILE)
    return refused.value


def _not_allowed(*_: object, **__: object) -> None:
    raise PermissionError


def _keys(told: Message) -> Iterator[str]:
    yield told.key
    for _, value in told.fields:
        for each in value if isinstance(value, tuple) else (value,):
            if isinstance(each, Message):
                yield from _keys(each)


def test_every_word_about_a_list_is_met_here(all_told: tuple[Message, ...]) -> None:
    """What this file shows of notes and refusals it shows of all of them."""
    met = {key for told in all_told for key in _keys(told)}
    known = {re.sub(r"\.(one|other)$", "", key) for key in wording("en").templates if key.startswith("roster.")}
    assert known - met == set()


@pytest.mark.parametrize("language", rest_long(MADE_UP))
def test_a_note_is_said_in_one_language(made_up: Path, all_told: tuple[Message, ...], language: str) -> None:
    """Every word of a note comes from the language's file, but for names and what was typed."""
    words = wording(language)
    for told in all_told:
        assert unmarked(words.sentence(told), _typed(told)) == [], words.sentence(told)


def _typed(told: Message) -> Iterator[str]:
    """Yield the fields that are said as they were typed."""
    for _, value in told.fields:
        for each in value if isinstance(value, tuple) else (value,):
            if isinstance(each, Message):
                yield from _typed(each)
            elif isinstance(each, str) and not isinstance(each, StrEnum):
                yield each
