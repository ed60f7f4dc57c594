"""The whole class as CSV files, in a folder or a zip, and back again without loss.

One file a table, each with its column names, in UTF-8 with a byte order mark so that spreadsheets read it right,
and ``version.csv`` with the version of the tables. Rows stand by their key, so the same class gives the same bytes.

A cell that a spreadsheet could take for a formula (it begins with = + - @, a tab or a line end, also full-width;
OWASP, "CSV Injection") gets an apostrophe before it, and so does a cell that begins with an apostrophe itself:
taking one leading apostrophe away is then always right. An empty cell is "nothing" where the table allows nothing,
and an empty text that is kept there is a lone apostrophe. Out of scope: lists for other programs (``output``).
"""

from __future__ import annotations

import csv
import io
import os
import sqlite3
import zipfile
import zlib
from collections.abc import Mapping, Sequence
from contextlib import AbstractContextManager
from pathlib import Path

from namewright.classbook.connect import connected, told, transaction
from namewright.classbook.database import Classbook
from namewright.classbook.keys import checked_setting
from namewright.classbook.records import ClassbookError
from namewright.classbook.schema import MIGRATIONS
from namewright.whole_files import folder_beside

# Each table after those it refers to, and the key its rows stand by.
TABLES: Mapping[str, str] = {
    "class": "id", "rosters": "id", "children": "id", "class_settings": "key", "settings": "child_id, key",
    "saves": "id", "changes": "rowid", "observations": "id", "groups": "child_id",
    "taught": "week, letter", "seats": "one, other",
}
# The version of the tables that brought one; the others were there from the first.
_SINCE = {"class": 2, "groups": 3, "taught": 4, "seats": 4}
_VERSION = "version"
_RISKY = ("=", "+", "-", "@", "\t", "\r", "\n", "＝", "＋", "－", "＠")
_MAX_BYTES = 256 * 1024 * 1024
_MAX_DIGITS = 4  # of a version
_OLDEST = (1980, 1, 1, 0, 0, 0)  # the first moment a zip can hold: the same class gives the same bytes


def export_csv(book_path: Path, target: Path) -> tuple[Path, ...]:
    """Write the class into a folder that is new or empty, or into a new file that ends in .zip.

    Return the paths written. The files are their owner's alone. Raises ClassbookError, or OSError as the system
    words it; then nothing is left half written.
    """
    files = _files(book_path)
    if target.suffix.lower() == ".zip":
        return _write_zip(files, target)
    if target.exists() and (not target.is_dir() or any(target.iterdir())):
        raise ClassbookError("classbook.not_empty", file=str(target))
    with _beside(target) as folder:
        temporary = folder / "out"
        temporary.mkdir(mode=0o700)
        for name, data in files.items():
            _write_private(temporary / name, data)
        if target.exists():
            target.rmdir()
        temporary.rename(target)
    return tuple(target / name for name in files)


def import_csv(source: Path, book_path: Path) -> None:
    """Make a class from what ``export_csv`` wrote. Raises ClassbookError, and makes no file, where it cannot."""
    if book_path.exists():
        raise ClassbookError("classbook.there_already", file=str(book_path))
    version, tables = _tables(_read(source))
    with _beside(book_path) as folder:
        temporary = folder / "class.db"
        connection = connected(temporary, migrations=MIGRATIONS[:version])
        try:
            with told(book_path), transaction(connection, "IMMEDIATE"):
                for name, rows in tables.items():
                    _fill(connection, name, rows)
        finally:
            connection.close()
        _check_readable(temporary)
        try:
            os.link(temporary, book_path)  # unlike a renaming, this never writes over a file made meanwhile
        except FileExistsError:
            raise ClassbookError("classbook.there_already", file=str(book_path)) from None
        except OSError:  # a disk without links, such as a memory stick
            temporary.rename(book_path)


# --- writing -------------------------------------------------------------------------------------------


def _files(book_path: Path) -> dict[str, bytes]:
    """Return every table as one CSV file, all of one moment."""
    connection = connected(book_path, create=False)
    try:
        with told(book_path), transaction(connection, "DEFERRED"):
            files = {f"{_VERSION}.csv": _csv([["version"], [str(len(MIGRATIONS))]])}
            for table, key in TABLES.items():
                nullable = [name for name, may_be_null in _columns(connection, table).items() if may_be_null]
                cursor = connection.execute(f"SELECT * FROM {table} ORDER BY {key}")
                columns = [column[0] for column in cursor.description]
                rows = [[_cell(value, column in nullable) for column, value in zip(columns, row, strict=True)]
                        for row in cursor]
                files[f"{table}.csv"] = _csv([columns, *rows])
            return files
    finally:
        connection.close()


def _columns(connection: sqlite3.Connection, table: str) -> dict[str, bool]:
    """Return the columns of a table and whether each may hold nothing."""
    return {row[1]: not row[3] and not row[5] for row in connection.execute(f"PRAGMA table_info({table})")}


def _cell(value: object, nullable: bool) -> str:
    if value is None:
        return ""
    if not isinstance(value, str):
        return repr(value)
    if value.startswith((*_RISKY, "'")) or (nullable and not value):
        return f"'{value}"
    return value


def _csv(rows: Sequence[Sequence[str]]) -> bytes:
    out = io.StringIO(newline="")
    csv.writer(out, lineterminator="\r\n").writerows(rows)
    return b"\xef\xbb\xbf" + out.getvalue().encode()


def _write_zip(files: Mapping[str, bytes], target: Path) -> tuple[Path, ...]:
    if target.exists():
        raise ClassbookError("classbook.there_already", file=str(target))
    out = io.BytesIO()
    with zipfile.ZipFile(out, "w", zipfile.ZIP_DEFLATED) as archive:
        for name, data in files.items():
            archive.writestr(zipfile.ZipInfo(name, _OLDEST), data, zipfile.ZIP_DEFLATED)
    with _beside(target) as folder:
        _write_private(folder / "out", out.getvalue())
        (folder / "out").rename(target)
    return (target,)


def _beside(target: Path) -> AbstractContextManager[Path]:
    """Return a temporary folder beside a target. Raises ClassbookError where there is no place for it."""
    if not target.parent.is_dir():
        raise ClassbookError("classbook.no_folder", folder=str(target.parent), file=target.name)
    return folder_beside(target)


def _write_private(path: Path, data: bytes) -> None:
    with os.fdopen(os.open(path, os.O_WRONLY | os.O_CREAT | os.O_EXCL, 0o600), "wb") as file:
        file.write(data)


# --- reading -------------------------------------------------------------------------------------------


def _read(source: Path) -> dict[str, bytes]:
    """Return the files of an export by name, those that are there."""
    wanted = [f"{name}.csv" for name in (_VERSION, *TABLES)]
    if not source.exists():
        raise ClassbookError("classbook.no_export", file=str(source))
    if source.is_dir():
        return {name: (source / name).read_bytes() for name in wanted if (source / name).is_file()}
    try:
        with zipfile.ZipFile(source) as archive:
            there = [name for name in wanted if name in archive.namelist()]
            if sum(archive.getinfo(name).file_size for name in there) > _MAX_BYTES:
                raise ClassbookError("classbook.large_export", file=str(source))
            return {name: archive.read(name) for name in there}
    except (zipfile.BadZipFile, RuntimeError, zlib.error) as error:
        raise ClassbookError("classbook.no_zip", file=str(source)) from error


def _tables(files: Mapping[str, bytes]) -> tuple[int, dict[str, list[list[str]]]]:
    """Return the version of the tables and their rows. An export from before a table came does without it."""
    if f"{_VERSION}.csv" not in files:
        raise _missing(_VERSION)
    version = _version(_rows(f"{_VERSION}.csv", files[f"{_VERSION}.csv"])[1:])
    wanted = [name for name in TABLES if _SINCE.get(name, 1) <= version]
    missing = next((name for name in wanted if f"{name}.csv" not in files), None)
    if missing:
        raise _missing(missing)
    return version, {name: _rows(f"{name}.csv", files[f"{name}.csv"]) for name in wanted}


def _missing(name: str) -> ClassbookError:
    return ClassbookError("classbook.missing_table", file=f"{name}.csv")


def _version(rows: Sequence[Sequence[str]]) -> int:
    said = rows[0][0] if len(rows) == 1 and rows[0] else "?"
    if not said.isdecimal() or len(said) > _MAX_DIGITS or not 1 <= int(said) <= len(MIGRATIONS):
        raise ClassbookError("classbook.export_version", version=said, newest=len(MIGRATIONS))
    return int(said)


def _rows(name: str, data: bytes) -> list[list[str]]:
    try:
        text = data.decode("utf-8-sig")
    except UnicodeDecodeError:
        raise ClassbookError("classbook.not_utf8", file=name) from None
    before = csv.field_size_limit(_MAX_BYTES)  # a whole roster stands in one cell
    try:
        return [row for row in csv.reader(io.StringIO(text, newline=""), strict=True) if row]
    except csv.Error as error:
        raise ClassbookError("classbook.no_csv", file=name, detail=str(error)) from None
    finally:
        csv.field_size_limit(before)


def _fill(connection: sqlite3.Connection, table: str, rows: Sequence[Sequence[str]]) -> None:
    """Put the rows of one file into its table. Raises ClassbookError with file and row."""
    columns = _columns(connection, table)
    if not rows or list(rows[0]) != list(columns):
        raise ClassbookError("classbook.columns", file=f"{table}.csv", columns=tuple(columns))
    connection.execute(f"DELETE FROM {table}")  # the class's own name was drawn when the file was made
    marks = ", ".join("?" * len(columns))
    for count, row in enumerate(rows[1:], 2):
        if len(row) != len(columns):
            raise ClassbookError("classbook.cells", row=count, file=f"{table}.csv", cells=len(row), wanted=len(columns))
        values = [_value(cell, nullable) for cell, nullable in zip(row, columns.values(), strict=True)]
        try:
            connection.execute(f"INSERT INTO {table} VALUES ({marks})", values)
        except sqlite3.IntegrityError as error:
            raise ClassbookError("classbook.row", row=count, file=f"{table}.csv", detail=str(error)) from error


def _check_readable(book_path: Path) -> None:
    """Read all of a class. Raises ClassbookError for words in it that no class can hold."""
    try:
        with Classbook.open(book_path) as book:
            for key, text in book.class_settings.items():
                checked_setting(key, text, of_class=True)
            for one in book.children(left=True):
                for key, text in one.settings.items():
                    checked_setting(key, text, of_class=False)
                book.observations(one.id)
    except ClassbookError as error:
        raise ClassbookError("classbook.unheard_of", detail=error.message) from error
    except (ValueError, TypeError) as error:
        raise ClassbookError("classbook.unheard_of", detail=str(error)) from error


def _value(cell: str, nullable: bool) -> str | None:
    if cell.startswith("'"):
        return cell[1:]
    return None if nullable and not cell else cell
