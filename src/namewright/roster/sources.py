"""Files into text: encodings, spreadsheets, and everything that is no roster, refused with what to do instead.

A file is judged by its content and not by its name. A spreadsheet becomes tab-separated text whose line
numbers are its row numbers, so that pasted and loaded rosters are read by the same code.
Sizes are bytes. This module reads files and writes none.
"""

from __future__ import annotations

import codecs
from pathlib import Path

from namewright.message import Message, message
from namewright.roster.children import RosterError
from namewright.roster.limits import MAX_BYTES

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
    b"%PDF": "roster.pdf",
    b"{\\rtf": "roster.rich_text",
    b"\x89PNG": "roster.picture",
    b"\xff\xd8\xff": "roster.picture",
    b"GIF8": "roster.picture",
    b"\x1f\x8b": "roster.packed",
    b"7z\xbc\xaf": "roster.packed",
    b"<?xml": "roster.xml",
}
"""How the files begin that are most often taken for a list of names, and what is said of each."""
_MEGABYTES = MAX_BYTES // 1_000_000


def read_bytes(path: Path) -> bytes:
    """Read a whole file. Raises RosterError if it cannot be read, is no file, or is too large."""
    try:
        wrong = _wrong_kind(path)
        if not wrong:
            with path.open("rb") as file:
                return file.read(MAX_BYTES + 1)
    except FileNotFoundError:
        raise RosterError("roster.no_file", file=path.name) from None
    except PermissionError:
        raise RosterError("roster.not_allowed", file=path.name) from None
    except (OSError, ValueError):
        raise RosterError("roster.unreadable", file=path.name) from None
    raise RosterError(wrong, file=path.name or str(path))


def _wrong_kind(path: Path) -> str:
    """Return the key of what is wrong with a path that leads to something other than an ordinary file."""
    if path.is_dir():
        return "roster.folder"
    if path.exists() and not path.is_file():
        return "roster.no_ordinary_file"
    return ""


def decode(data: bytes, source: Message | str, sheet: str = "") -> tuple[str, tuple[Message, ...]]:
    """Turn the bytes of a file into text, with notes about the file as a whole; ``sheet`` is the one to be read.

    UTF-8, UTF-16 and UTF-32 by their mark, plain UTF-8, then Windows-1252 with a note. Raises RosterError.
    """
    if len(data) > MAX_BYTES:
        raise RosterError("roster.file_large", source=source, megabytes=_MEGABYTES)
    if is_workbook(data):
        from namewright.roster.workbook import workbook_text  # not at the top: most lists are text

        return workbook_text(data, source, sheet)
    if data.startswith(_OLE):
        raise RosterError(_old_office(data), source=source)
    for opening, key in _FOREIGN.items():
        if data.lstrip()[:16].lower().startswith(opening.lower()):
            raise RosterError(key, source=source)
    return _decode_text(data, source)


def is_workbook(data: bytes) -> bool:
    """Say whether these are the bytes of a spreadsheet, or of another file that is packed like one."""
    return data.startswith(_ZIP)


def _decode_text(data: bytes, source: Message | str) -> tuple[str, tuple[Message, ...]]:
    for mark, encoding in _BOMS:
        if data.startswith(mark):
            try:
                return data.decode(encoding), ()
            except UnicodeDecodeError:
                raise RosterError("roster.broken_text", source=source, encoding=encoding) from None
    if b"\0" in data:
        raise RosterError("roster.no_text", source=source)
    try:
        return data.decode("utf-8"), ()
    except UnicodeDecodeError:
        pass
    try:
        text = data.decode("cp1252")
    except UnicodeDecodeError:
        raise RosterError("roster.unknown_encoding", source=source) from None
    return text, (message("roster.guessed_encoding", source=source),)


def _old_office(data: bytes) -> str:
    """Return the key for what an OLE file is: either an encrypted .xlsx or a file of an old office program."""
    if "EncryptedPackage".encode("utf-16-le") in data:
        return "roster.locked"
    return "roster.old_office"
