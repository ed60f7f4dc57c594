"""A short list that writes ``Mia, Lange``: a given name, a comma, and a family name that is nobody’s given one.

Longer lists tell by all of their lines what a comma parts (``commas``, ``columns``); two or three say it by their words
alone, each of them known. Any other pair may be two children and is asked about (``several``). Pure.
"""

from __future__ import annotations

from collections.abc import Sequence

from namewright.message import message
from namewright.patterns import pattern
from namewright.roster.beside import strip_numbering
from namewright.roster.known import is_given, lean
from namewright.roster.pasted import Line

_PAIR = pattern(r"([^\W\d_][\w’'-]+)\s*,\s*([^\W\d_][\w’'-]+)", needs=",")
_FEWEST, _MOST = 2, 3  # lines


def from_short_pairs(lines: Sequence[Line]) -> list[Line]:
    """Return the lines without their commas where each has one between a given name and a family name."""
    found = {at: _PAIR.fullmatch(strip_numbering(line.text)) for at, line in enumerate(lines) if line.text.strip()}
    if not _FEWEST <= len(found) <= _MOST or not all(
            pair and lean(pair[1]) > 0 and lean(pair[2]) < 0 and not is_given(pair[2])
            and pair[1].istitle() for pair in found.values()):
        return list(lines)
    return [_without_comma(line, pair[1], pair[2]) if (pair := found.get(at)) else line
            for at, line in enumerate(lines)]


def _without_comma(line: Line, given: str, family: str) -> Line:
    told = message("roster.read", given=given, family=family)
    return line._replace(text=f"{given} {family}", notes=(*line.notes, told))
