"""Answers of a form, one under another (``First name: Mira``, ``Last name: Vost``), into a table with a row a child.

A block of answers ends where a label comes again. Only labels of known words are read so, and only where the parts of
a name stand on lines of their own.
"""

from __future__ import annotations

import re
from collections.abc import Sequence

from namewright.roster.headers import header_roles
from namewright.roster.pasted import Line
from namewright.roster.vocabulary import Role, fold

_LABELLED = re.compile(r"\s*([^:]{2,40}?)\s?:(?:\s+(\S.*))?")
_LONGEST = 200
_NEARLY_ALL = 0.9


def from_a_form(lines: Sequence[Line]) -> list[Line]:
    """Return the answers as rows under a line of titles, or the lines as they are where they are no answers."""
    filled = [line for line in lines if line.text.strip()]
    found = [(line, match) for line in filled
             if len(line.text) < _LONGEST and (match := _LABELLED.fullmatch(line.text))]
    titles = list(dict.fromkeys(fold(match[1]) for _, match in found))
    shown = [next(match[1].strip() for _, match in found if fold(match[1]) == title) for title in titles]
    if len(found) < max(2, _NEARLY_ALL * len(filled)) or not _names_both_parts(shown):
        return list(lines)
    rows = [filled[0]._replace(text="\t".join(shown))]
    cells: dict[str, str] = {}
    for line, match in found:
        label = fold(match[1])
        if label in cells:
            rows.append(_row(line, titles, cells))
            cells = {}
        cells[label] = (match[2] or "").strip()
    return [*rows, _row(found[-1][0], titles, cells)]


def _names_both_parts(titles: Sequence[str]) -> bool:
    roles = set(header_roles(titles) or ())
    return Role.GIVEN in roles and not roles.isdisjoint((Role.FAMILY, Role.FULL))


def _row(line: Line, titles: Sequence[str], cells: dict[str, str]) -> Line:
    return line._replace(text="\t".join(cells.get(title, "") for title in titles))
