"""A list of two or three that writes given name, comma, family name: ``Mia, Lange``, then ``Theo, Brandt``.

Longer lists tell by all of their lines what a comma parts (``commas``, ``columns``); two or three say it by their words
alone: all are known, and no family name is a given one, too. Any other pair may be two children and is asked about
(``several``). Pure.
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
    filled = [at for at, line in enumerate(lines) if line.text.strip()]
    if not _FEWEST <= len(filled) <= _MOST:
        return list(lines)
    pairs = {at: pair for at in filled if (pair := _pair(lines[at].text))}
    if len(pairs) < len(filled):
        return list(lines)
    return [_without_comma(line, *pairs[at]) if at in pairs else line for at, line in enumerate(lines)]


def _pair(text: str) -> tuple[str, str] | None:
    """Return a given name and the family name behind its comma, None where it may be anything else."""
    pair = _PAIR.fullmatch(strip_numbering(text))
    sure = pair and pair[1].istitle() and lean(pair[1]) > 0 and lean(pair[2]) < 0 and not is_given(pair[2])
    return (pair[1], pair[2]) if pair and sure else None


def _without_comma(line: Line, given: str, family: str) -> Line:
    told = message("roster.read", given=given, family=family)
    return line._replace(text=f"{given} {family}", notes=(*line.notes, told))
