"""An index in columns, ``Vost, Mira ..... 12    Zell, Bo . . . 31``, into a line for each name.

What leads the eye to a page, dots as a rule, and the number behind it tell where each entry ends, so that two on one
line are two for sure. A reader of print takes the dots for commas and strokes, too. An index of one column needs no
parting and stays for ``beside``.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from namewright.names.clusters import is_letter
from namewright.patterns import pattern
from namewright.roster.pasted import Line
from namewright.roster.several import is_titled_name
from namewright.roster.shares import share
from namewright.roster.vocabulary import fold

_ENTRY = pattern(r"(?P<name>[^\W\d_][^\d_·…]*?)\s*(?:(?:\s…)+|(?:\s?[.,_·]){3,})\s*(?P<page>\d{1,4})(?!\w)")
_TITLES = frozenset(("index", "contents", "indice", "indices", "sommaire", "sommario", "sumario", "verzeichnis",
                     "register", "inhalt"))
_MOSTLY = 0.8
_LONGEST = 400  # characters of a line


def from_an_index(lines: Sequence[Line]) -> list[Line]:
    """Return the lines with the entries of an index apart, where lines hold two or more with their pages."""
    found = {at: entries for at, line in enumerate(lines) if (entries := _entries(line.text))}
    names = [name for entries in found.values() for name, _ in entries]
    if len(names) == len(found) or share(is_titled_name(name.replace(",", " ")) for name in names) < _MOSTLY:
        return list(lines)
    return [each for at, line in enumerate(lines) for each in (
        _apart(line, found[at]) if at in found else (line.heading(line.text) if _is_a_title(line.text) else line,))]


def _is_a_title(text: str) -> bool:
    return not _TITLES.isdisjoint(fold(text).split())


def _entries(text: str) -> list[tuple[str, str]]:
    """Return the names and pages of a line that has nothing else, none where it does."""
    if len(text) > _LONGEST or any(map(str.isalnum, _ENTRY.sub("", text))):
        return []
    return [(match["name"].strip(), match["page"]) for match in _ENTRY.finditer(text)
            if any(map(is_letter, match["name"]))]


def _apart(line: Line, entries: Sequence[tuple[str, str]]) -> Iterator[Line]:
    for name, page in entries:
        yield (line.part(name) if len(entries) > 1 else line).without(page, name)
