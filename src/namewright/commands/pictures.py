"""Pages as numbered pictures in a folder: each says in its file who made it, and only such a one is written over."""

from __future__ import annotations

import argparse
import struct
import zlib
from collections.abc import Iterable, Iterator
from pathlib import Path

from namewright.commands.talk import Refusal
from namewright.pages.page import Page
from namewright.whole_files import folder_for_files, whole_file

_SVG_MARK = b"<!-- Namewright -->\n"
_PNG_MARK = b"Software\0Namewright"  # the registered keyword for the program (PNG, W3C, 11.3.3.2)
_END_BYTES = 12  # of the last chunk of a PNG


def with_pictures(pages: Iterable[Page], options: argparse.Namespace, numbers: Iterator[int]) -> Iterator[Page]:
    """Pass the pages on, and write each, by the next of ``numbers``, into the folders asked for.

    Raises Refusal for a picture that stands where one shall be written and was made by somebody else, and where one
    cannot be written: a folder that was made for it goes again.
    """
    kinds = {"svg": _svg, "png": _png}
    folders = {kind: Path(folder) for kind in kinds if (folder := getattr(options, kind))}
    for page in pages:
        count = next(numbers)
        for kind, folder in folders.items():
            _write(folder / f"{count:04d}.{kind}", kinds[kind](page))
        yield page


def _write(path: Path, picture: bytes) -> None:
    if path.exists() and not (path.is_file() and _ours(path.read_bytes())):
        raise Refusal("command.problem.not_ours", file=str(path))
    try:
        with folder_for_files(path.parent), whole_file(path) as file:
            file.write(picture)
    except OSError as error:
        raise Refusal("command.problem.folder_refuses", file=str(path), detail=error.strerror or str(error)) from error


def _ours(picture: bytes) -> bool:
    return picture.endswith(_SVG_MARK) or picture[:-_END_BYTES].endswith(_chunk())


def _svg(page: Page) -> bytes:
    from namewright.output.svg import page_svg

    return page_svg(page).encode() + b"\n" + _SVG_MARK


def _png(page: Page) -> bytes:
    from namewright.output.png import page_png

    picture = page_png(page)
    return picture[:-_END_BYTES] + _chunk() + picture[-_END_BYTES:]


def _chunk() -> bytes:
    """Return the text chunk that says who made a PNG: length, kind, text, checksum."""
    kind = b"tEXt" + _PNG_MARK
    return struct.pack(">I", len(_PNG_MARK)) + kind + struct.pack(">I", zlib.crc32(kind))
