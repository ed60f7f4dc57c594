"""Files into text: encodings, spreadsheets, and everything that is no roster, refused in one sentence.

A file is judged by its content and not by its name. A spreadsheet becomes tab-separated text whose line
numbers are its row numbers, so that pasted and loaded rosters are read by the same code.
Sizes are bytes. This module reads files and writes none.
"""

from __future__ import annotations

import codecs
from pathlib import Path

from namewright.roster.children import RosterError

MOST_BYTES = 20_000_000
MOST_LINES = 100_000
_BOMS = (
    (codecs.BOM_UTF32_LE, "utf-32"),
    (codecs.BOM_UTF32_BE, "utf-32"),
    (codecs.BOM_UTF8, "utf-8-sig"),
    (codecs.BOM_UTF16_LE, "utf-16"),
    (codecs.BOM_UTF16_BE, "utf-16"),
)
_ZIP = b"PK\x03\x04"
_OLE = bytes.fromhex("d0cf11e0a1b11ae1")
_FOREIGN = {
    b"%PDF": "a PDF",
    b"{\\rtf": "a rich-text document",
    b"\x89PNG": "a picture",
    b"\xff\xd8\xff": "a picture",
    b"GIF8": "a picture",
    b"\x1f\x8b": "a packed file",
    b"7z\xbc\xaf": "a packed file",
    b"<html": "a web page",
    b"<!DOC": "a web page",
    b"<?xml": "an XML file",
}
"""How the files begin that are most often taken for a list of names."""
_AS_TEXT = "save the list as plain text, .csv or .xlsx and try again."


def read_bytes(path: Path) -> bytes:
    """Read a whole file. Raises RosterError if it cannot be read, is no file, or is too large."""
    try:
        wrong = _wrong_kind(path)
        if not wrong:
            with path.open("rb") as file:
                return file.read(MOST_BYTES + 1)
    except FileNotFoundError:
        raise RosterError(f"There is no file {path.name} there; check its name and its folder.") from None
    except PermissionError:
        raise RosterError(
            f"{path.name} may not be read by you; ask for leave to read it, or copy it."
        ) from None
    except (OSError, ValueError):
        raise RosterError(f"{path.name!r} could not be read; check the file and its name.") from None
    raise RosterError(wrong)


def _wrong_kind(path: Path) -> str:
    """Say what is wrong with a path that leads to something other than an ordinary file."""
    if path.is_dir():
        return f"{path.name or path} is a folder; give the file with the names in it."
    if path.exists() and not path.is_file():
        return f"{path.name} is not an ordinary file; {_AS_TEXT}"
    return ""


def decode(data: bytes, source: str) -> tuple[str, tuple[str, ...]]:
    """Turn the bytes of a file into text, with notes about the file as a whole.

    UTF-8, UTF-16 and UTF-32 by their mark, plain UTF-8, then Windows-1252 with a note. Raises RosterError.
    """
    if len(data) > MOST_BYTES:
        raise RosterError(f"{source} is larger than 20 MB; cut it down to one class.")
    if data.startswith(_ZIP):
        from namewright.roster.workbook import workbook_text

        return workbook_text(data, source)
    if data.startswith(_OLE):
        raise RosterError(_old_office(data, source))
    for opening, what in _FOREIGN.items():
        if data.lstrip()[:16].lower().startswith(opening.lower()):
            raise RosterError(f"{source} is {what}, not a list of names; {_AS_TEXT}")
    return _decode_text(data, source)


def _decode_text(data: bytes, source: str) -> tuple[str, tuple[str, ...]]:
    for mark, encoding in _BOMS:
        if data.startswith(mark):
            try:
                return data.decode(encoding), ()
            except UnicodeDecodeError:
                raise RosterError(f"{source} is broken text ({encoding}); {_AS_TEXT}") from None
    if b"\0" in data:
        raise RosterError(f"{source} is not a text file; {_AS_TEXT}")
    try:
        return data.decode("utf-8"), ()
    except UnicodeDecodeError:
        pass
    try:
        text = data.decode("cp1252")
    except UnicodeDecodeError:
        raise RosterError(f"{source} is in an unknown encoding; save it as UTF-8 and try again.") from None
    return text, (
        f"{source} is not UTF-8 and was read as Windows-1252; check the accents, or save it as UTF-8.",
    )


def _old_office(data: bytes, source: str) -> str:
    """Say what an OLE file is: either an encrypted .xlsx or a file of an old office program."""
    if "EncryptedPackage".encode("utf-16-le") in data:
        return f"{source} is locked with a password; save it without one and try again."
    return f"{source} is an old office file (such as .xls); save it as .xlsx or .csv and try again."
