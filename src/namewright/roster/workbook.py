"""A spreadsheet (.xlsx) into tab-separated text, after the file has been looked at from outside.

An .xlsx file is a zip of XML parts (ECMA-376). Before it is opened, its parts are counted, their declared
sizes added up, and each part is searched for a document type, which no spreadsheet program writes and which
entity attacks need. A part never yields more bytes than it declares. Sizes are bytes unpacked. Pictures are not looked
at and so not handed on either: a part of the book might pass for one. What is searched for is written in ASCII, so a
part in an encoding that writes it otherwise is refused; spreadsheet programs write UTF-8.

What is then read has a budget of rows and cells over all sheets together, and rows and columns that nobody fills are
not made: a row may say that it is the two thousand millionth.
"""

from __future__ import annotations

import datetime
import io
import re
import warnings
import zipfile
from collections import Counter
from collections.abc import Sequence
from dataclasses import dataclass
from functools import cached_property
from typing import Any

from namewright.message import Message, message
from namewright.patterns import pattern
from namewright.roster.children import RosterError
from namewright.roster.headers import header_roles
from namewright.roster.known import is_given
from namewright.roster.limits import MAX_BYTES, MAX_LINES
from namewright.roster.shares import are_most
from namewright.roster.vocabulary import fold, word_set

MAX_UNPACKED = 50_000_000
_MAX_PARTS = 2_000
_MAX_ELEMENTS = 500_000  # of XML, in all parts: openpyxl reads some 150,000 a second
_MAX_COLUMNS = 500
_MAX_READ = 200_000  # rows and filled cells of all sheets together
_MAX_RATIO = 200
_RATIO_FROM = 5_000_000
_DOCTYPES = tuple("<!DOCTYPE".encode(code) for code in ("ascii", "utf-16-le", "utf-16-be"))
_ODD_STARTS = tuple(start for mark in ("\ufeff", "<") for start in (mark.encode("utf-16-le"), mark.encode("utf-16-be")))
_ENCODING = pattern(rb"""\s*<\?xml[^>]{0,200}?\bencoding\s*=\s*["']([^"']*)""")
_LIKE_ASCII = pattern(rb"utf-8|us-ascii|iso-8859-\d+|windows-125\d", re.IGNORECASE)
_LONG_FORMAT = pattern(rb"""\bformatCode\s*=\s*(?:"[^"]{1000}|'[^']{1000})""")
"""Four times as long as a spreadsheet program takes: the reader's work grows with its square."""
_UNFINISHED = pattern(rb"</f>\s*+(?:(?:<v\s*+/>|<v></v>)\s*+)?</c>")
"""A formula without the value it gave: a program wrote the file and no spreadsheet has opened it since."""
_ROW_NUMBER = pattern(rb"""<(?:\w{1,20}:)?row\s[^<>]{0,300}?\br=["']0*+(\d++)""")
_SHEET_NAMED = pattern(rb"<(?:[^\s<>/:]++:)?sheet\s")
_SHEET_PART = pattern(r"xl/\w*sheets/[^/]+\.xml")
_HEADER_WITHIN = 10
_FAR_CELL = pattern(
    rb"""<(?:\w{1,20}:)?c\s[^<>]{0,200}?\br=["'](?:[A-Z]{3}|S[G-Z]|[T-Z][A-Z])\d[^<>]{0,200}(?<!/)>""")
"""A filled cell right of column SF, the five hundredth."""
_MOSTLY, _FEW = 0.6, 3  # rows that make a sheet without titles a class
_OTHERS = word_set("""
    staff, teacher, teachers, parents, contacts, emergency, template, instructions, personal, maestros, maestras,
    docentes, padres, contactos, plantilla, personnel, enseignants, modele, lehrer, lehrkrafte, kollegium, eltern,
    vorlage, docenti, insegnanti, personale, genitori, modello, professores, pais, equipe, modelo, lehrerinnen,
    erzieherinnen, erzieher, team, maestre, maestri, educatrici, professoras, profesores, profesoras, educadoras,
    maitresses, helpers, volunteers""")
"""Words in the titles of sheets that are not the class."""


def workbook_text(data: bytes, source: Message | str, sheet: str = "") -> tuple[str, tuple[Message, ...]]:
    """Return the sheet that looks most like a class list, one line a row, and notes about the rest of the file.

    ``sheet`` is the title of the one that was asked for. Raises RosterError for a file that is broken, locked, too
    large unpacked, or no spreadsheet.
    """
    bare, unfinished = _inspect(data, source)
    try:
        with warnings.catch_warnings():
            warnings.simplefilter("ignore")  # the reader warns of styles and charts, which no roster needs
            text, notes = _best_sheet(bare, source, sheet)
            return text, (*notes, *unfinished)
    except RosterError:
        raise
    except Exception as error:  # A damaged file makes the reader fail in any way it likes
        raise RosterError("roster.no_sheet", source=source) from error


def _inspect(data: bytes, source: Message | str) -> tuple[bytes, tuple[Message, ...]]:
    """Refuse what would be dangerous to open.

    Return the file with the parts that were looked at and no others, and a note where a formula was never worked out.
    """
    looked_at, seen = io.BytesIO(), _Seen(source)
    try:
        with zipfile.ZipFile(io.BytesIO(data)) as archive, zipfile.ZipFile(looked_at, "w") as bare:
            _check_archive(archive, source)
            for part in archive.infolist():
                if not part.filename.startswith("xl/media/"):
                    content = archive.read(part)
                    bare.writestr(part.filename, content)
                    seen.look_at(part.filename, content)
        if seen.sheets > 0:  # several sheets on one part: each would be read in full
            raise RosterError("roster.damaged", source=source)
    except RosterError:
        raise
    except Exception as error:  # Zipfile and zlib fail in many ways on damaged bytes
        raise RosterError("roster.damaged", source=source) from error
    return looked_at.getvalue(), seen.notes()


def _check_archive(archive: zipfile.ZipFile, source: Message | str) -> None:
    """Refuse an archive that is too large, locked or ambiguous, and one that is no spreadsheet."""
    parts, names = archive.infolist(), archive.namelist()
    _check_sizes(parts, source)
    if any(part.flag_bits & 1 for part in parts):
        raise RosterError("roster.locked", source=source)
    if len(set(names)) < len(parts):  # two of one name: which would be read?
        raise RosterError("roster.damaged", source=source)
    if "[Content_Types].xml" not in names or not any(name.startswith("xl/") for name in names):
        raise RosterError("roster.zip", source=source)


class _Seen:
    """What was seen of the parts of a spreadsheet; ``sheets`` are those that are named without a part of their own."""

    def __init__(self, source: Message | str) -> None:
        self.source, self.sheets = source, 0
        self._elements, self._lowest, self._unfinished, self._far_right = 0, 0, False, False

    def look_at(self, name: str, content: bytes) -> None:
        """Look at a part; refuse one that cannot be searched, or has too much in it with those before."""
        if any(mark in content for mark in _DOCTYPES):
            raise RosterError("roster.doctype", source=self.source)
        if _is_odd(content):
            raise RosterError("roster.damaged", source=self.source)
        self._elements += content.count(b"<") - content.count(b"</")
        if self._elements > _MAX_ELEMENTS:
            raise RosterError("roster.unpacks", source=self.source)
        self.sheets += len(_SHEET_NAMED.findall(content)) - (_SHEET_PART.match(name) is not None)
        if name.startswith("xl/worksheets/"):
            self._unfinished = self._unfinished or _UNFINISHED.search(content) is not None
            self._lowest = max(self._lowest, _lowest_row(content))
            self._far_right = self._far_right or _FAR_CELL.search(content) is not None

    def notes(self) -> tuple[Message, ...]:
        """Return what is to be told of all of them."""
        told = ((self._unfinished, message("roster.unfinished", source=self.source)),
                (self._lowest > MAX_LINES, message("roster.far_rows", source=self.source, most=MAX_LINES)),
                (self._far_right, message("roster.far_columns", source=self.source, most=_MAX_COLUMNS)))
        return tuple(note for is_so, note in told if is_so)


def _is_odd(part: bytes) -> bool:
    """Say whether a part is written so that it cannot be searched, or would keep the reader at work without an end."""
    said = _ENCODING.match(part)
    strange = said is not None and not _LIKE_ASCII.fullmatch(said[1])
    return strange or part.startswith(_ODD_STARTS) or _LONG_FORMAT.search(part) is not None


def _lowest_row(sheet: bytes) -> int:
    """Return the greatest number that a row with something in it says it has; 0 where none says any."""
    found = [int(row[1][:12]) for row in _ROW_NUMBER.finditer(sheet)]
    return max(found, default=0)


def _check_sizes(parts: list[zipfile.ZipInfo], source: Message | str) -> None:
    unpacked = sum(part.file_size for part in parts)
    packed = max(1, sum(part.compress_size for part in parts))
    if (
        len(parts) > _MAX_PARTS
        or unpacked > MAX_UNPACKED
        or (unpacked > _RATIO_FROM and unpacked / packed > _MAX_RATIO)
    ):
        raise RosterError("roster.unpacks", source=source)


def _best_sheet(data: bytes, source: Message | str, wanted: str) -> tuple[str, tuple[Message, ...]]:
    """Return the sheet of the class as lines, and a note about the others."""
    import openpyxl

    book = openpyxl.load_workbook(io.BytesIO(data), read_only=True, data_only=True, keep_links=False)
    budget = Counter(left=_MAX_READ)
    found: list[_Sheet] = []
    try:
        for sheet in _worth_reading(book.worksheets, source, wanted):
            if any(one.rows for one in found) and str(sheet.sheet_state) != "visible":
                break  # what nobody sees is read only where nothing else is filled
            found.append(_Sheet(str(sheet.title), _sheet_rows(sheet, source, budget)))
        names = [str(sheet.title) for sheet in book.worksheets]
    finally:
        book.close()
    best = _best(found, source)
    if best is None:
        raise RosterError("roster.empty_sheets", source=source)
    others = tuple(name for name in names if name != best.title)
    note = message("roster.one_sheet", sheet=best.title, source=source, others=others)
    return "\n".join(best.rows), (note,) if others else ()


def _worth_reading(sheets: Sequence[Any], source: Message | str, wanted: str) -> list[Any]:
    """Return the sheet that was asked for, else all, those that are seen first.

    Raises RosterError where none has the name that was asked for.
    """
    if not wanted:
        return sorted(sheets, key=lambda sheet: str(sheet.sheet_state) != "visible")
    asked = [sheet for sheet in sheets if fold(str(sheet.title)) == fold(wanted)]
    if not asked:
        titles = tuple(str(sheet.title) for sheet in sheets)
        raise RosterError("roster.no_such_sheet", source=source, wanted=wanted, sheets=titles)
    return asked[:1]


def _best(found: Sequence[_Sheet], source: Message | str) -> _Sheet | None:
    """Return the first sheet with a header row, else the first that is filled; those of the staff come last.

    Raises RosterError where two sheets hold different names, with header rows or all without: they may be two classes.
    """
    filled = sorted((one for one in found if one.rows), key=lambda one: one.of_others)
    headed = [one for one in filled if one.headed and not one.of_others]
    named = headed or [one for one in filled if one.named and not one.of_others]
    classes = [one for one in named if one is named[0] or not one.shares_with(named[0])]
    if len(classes) > 1:
        raise RosterError("roster.several_sheets", source=source, sheets=tuple(one.title for one in classes))
    return next((one for one in (*named, *filled)), None)


@dataclass(frozen=True)
class _Sheet:
    """A sheet: its title, and its rows as lines."""

    title: str
    rows: list[str]

    @cached_property
    def headed(self) -> bool:
        """Say whether a row near its top has titles of columns, a name among them."""
        return any(header_roles(row.split("\t")) for row in self.rows[:_HEADER_WITHIN])

    @cached_property
    def named(self) -> bool:
        """Say whether most of its rows hold a known given name."""
        rows = [row for row in self.rows if row]
        return are_most((any(map(is_given, row.split())) for row in rows), _MOSTLY, _FEW)

    @property
    def of_others(self) -> bool:
        """Say whether its title names the staff, parents or the like."""
        return not _OTHERS.isdisjoint(re.split(r"\W+", fold(self.title)))

    @cached_property
    def _words(self) -> frozenset[str]:
        return frozenset(word for row in self.rows[1:] for word in fold(row).split() if word.isalpha())

    def shares_with(self, other: _Sheet) -> bool:
        """Say whether two sheets are about the same children: half of the words of one stand on the other."""
        return 2 * len(self._words & other._words) >= min(len(self._words), len(other._words))


def _sheet_rows(sheet: Any, source: Message | str, budget: Counter[str]) -> list[str]:
    """Return the rows as lines of text, blank ones kept but for those at the end. Takes from the budget."""
    sheet.reset_dimensions()
    rows: list[str] = []
    filled = size = 0
    for row in sheet.iter_rows(max_row=MAX_LINES, max_col=_MAX_COLUMNS, values_only=True):
        empty = row.count(None)
        line = "" if empty == len(row) else "\t".join(_cell_text(value) for value in _trimmed(row)).rstrip()
        size += len(line)
        budget["left"] -= 1 + len(row) - empty
        if size > MAX_BYTES or budget["left"] < 0:
            raise RosterError("roster.many_rows", source=source)
        rows.append(line)
        filled = len(rows) if line else filled
    return rows[:filled]


def _trimmed(row: tuple[object, ...]) -> tuple[object, ...]:
    """Return the cells of a row up to the last that has something in it."""
    end = len(row)
    while end and row[end - 1] is None:
        end -= 1
    return row[:end]


def _cell_text(value: object) -> str:
    """Write a cell as a person reads it, on one line."""
    if value is None:
        return ""
    if isinstance(value, datetime.datetime):
        return value.date().isoformat()
    if isinstance(value, float) and value.is_integer() and abs(value) < 1e15:
        return str(int(value))
    return " ".join(str(value).split())
