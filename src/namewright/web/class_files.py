"""The class's files of a folder, and safe names for new ones.

Only files that are classes of ours are listed, and only those that are listed can be opened, so that no form leads to
any other file. Where a class is shared in a network, or kept in a browser, there is no other.
"""

from __future__ import annotations

import os
import re
from collections.abc import Iterator
from dataclasses import dataclass
from functools import partial
from pathlib import Path

import unicodedata2
from flask import current_app, request

from namewright.classbook import Classbook, ClassbookError
from namewright.classbook.connect import stamp_of
from namewright.classbook.schema import APPLICATION_ID
from namewright.patterns import pattern
from namewright.web.desk import desk
from namewright.web.screen_language import language_of
from namewright.wording import wording

_MOST_SHOWN = 60
_MOST_LETTERS = 40  # of a file's name
_ID_AT = 68  # where a database says whose it is (sqlite.org/fileformat2.html)
_BESIDE_IT = ("-wal", "-shm", "-journal")  # what SQLite may leave beside a file (sqlite.org/tempfiles.html)
_DEVICES = pattern(r"con|prn|aux|nul|(?:com|lpt)\d")  # names that Windows keeps for devices


@dataclass(frozen=True, slots=True)
class ClassFile:
    """A class in the folder: its file, what it is called, how many children it has, and whether it is open.

    One that is ``empty`` has no child, gone ones included, and no list, kept or being worked on.
    """

    path: Path
    name: str
    count: int
    here: bool
    empty: bool = False

    @property
    def file(self) -> str:
        """Return its file's name, as text whatever bytes it has."""
        return as_text(self.path.name)


def as_text(name: str) -> str:
    """Return the name of a file with its bytes that are no text, as from an older system, written as figures."""
    return os.fsencode(name).decode("utf-8", "backslashreplace")


def there_are_several() -> bool:
    """Say whether other classes can be opened here."""
    return not (current_app.config["IN_BROWSER"] or current_app.config["PASSPHRASE"])


def listed() -> list[ClassFile]:
    """Return the classes of the folder by name, the open one included; none where others cannot be opened."""
    if not there_are_several():
        return []
    here = desk().path.absolute()
    found = [(path, *desk().looked_up((path, stamp_of(path)), partial(_looked_at, path)))
             for path in _files(here.parent)]
    return sorted((ClassFile(path, title or _unnamed(path), count, path == here, empty)
                   for path, title, count, empty in found), key=lambda one: (one.name.casefold(), one.file))


def _unnamed(path: Path) -> str:
    """Return what a class is called that nobody gave a name."""
    usual = path.stem == "class"  # the name of a file that was not chosen
    return wording(language_of(request)).say("web.classes.unnamed") if usual else as_text(path.stem)


def _files(folder: Path) -> Iterator[Path]:
    """Yield the files of a folder that are classes of ours."""
    for path in sorted(folder.glob("*.db"))[:_MOST_SHOWN]:
        try:
            if not path.is_file():  # a pipe would be waited for without an end
                continue
            with path.open("rb") as file:
                head = file.read(_ID_AT + 4)
        except OSError:
            continue
        if head[_ID_AT:] == APPLICATION_ID.to_bytes(4, "big"):
            yield path.absolute()


def _looked_at(path: Path) -> tuple[str, int, bool]:
    """Return the name that was given to a class, if any, how many are in it, and whether nothing is in it."""
    try:
        with Classbook.open(path, create=False) as there:
            empty = not (there.children(left=True) or there.roster_text() or there.draft())
            return there.class_settings.get("title", ""), len(there.children()), empty
    except ClassbookError:
        return "", 0, False  # opened, it says what is wrong with it


def remove(one: ClassFile) -> bool:
    """Remove the file of a class that is not open, and say whether it was: not where something stands in it by now."""
    if one.here or not _looked_at(one.path)[2]:
        return False
    for left in (one.path, *(one.path.with_name(one.path.name + end) for end in _BESIDE_IT)):
        left.unlink(missing_ok=True)
    return True


def file_name(title: str, folder: Path | None = None) -> Path:
    """Return a file name for a class of this name: small letters without marks, figures, hyphens.

    In a ``folder`` it is a path that nobody has yet.
    """
    plain = unicodedata2.normalize("NFKD", title).encode("ascii", "ignore").decode().lower()
    stem = re.sub(r"[^a-z0-9]+", "-", plain).strip("-")[:_MOST_LETTERS].strip("-") or "class"
    stem = f"class-{stem}" if _DEVICES.fullmatch(stem) else stem
    if folder is None:
        return Path(f"{stem}.db")
    tries = (folder / f"{stem}{end}.db" for end in ("", *(f"-{number}" for number in range(2, 10_000))))
    return next(path for path in tries if not path.exists())
