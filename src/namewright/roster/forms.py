"""Answers of a form, one under another (``First name: Mira``, ``Last name: Vost``), into a table with a row a child.

A block of answers ends at a row of signs, or where its first label or a part of the name comes again. Only labels of
known words are read so, and only where the parts of a name stand on lines of their own.
"""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Iterator, Sequence

from namewright.names.clusters import is_letter
from namewright.patterns import pattern
from namewright.roster.headers import header_roles
from namewright.roster.known import opens_with_given
from namewright.roster.pasted import Line
from namewright.roster.vocabulary import NAME_ROLES, Role, fold

_LABELLED = pattern(r"\s*(?:[-*•]\s+)?(?:\*\*|__)?([^:=*]{2,40}?)\s?"
                    r"(?::(?:\*\*|__)?(?:\s+(\S.*))?|:?\s?(?:=|\.{3,}|_{3,}|…+)\s?(\S.*)?)", needs=":=._…")
_SECTION = pattern(r"\s*\[[^\[\]]+\]\s*", needs="[")
_LONGEST = 200
_NEARLY_ALL, _MOSTLY = 0.9, 0.6
_FEW = 2
_BLOCKS = 3  # of two labels, one behind the other all through
_MOST_ABOVE = 3  # lines over the first answer

_Found = tuple[Line, "re.Match[str] | None"]


def from_a_form(lines: Sequence[Line]) -> list[Line]:
    """Return the answers as rows under a line of titles, or the lines as they are where they are no answers."""
    found = [(line, _LABELLED.fullmatch(line.text) if len(line.text) < _LONGEST else None)
             for line in lines if line.text.strip()]
    answers = [match for _, match in found if match]
    shown: dict[str, str] = {}
    for match in answers:
        shown.setdefault(fold(match[1]), match[1].strip())
    roles = dict(zip(shown, header_roles(tuple(shown.values())) or (), strict=False))
    if not roles or not _are_cards(found, roles):
        return list(lines)
    first = next(at for at, (_, match) in enumerate(found) if match)
    titles = found[first][0]._replace(text="\t".join(shown.values()))
    return [*(line for line, _ in found[:first]), titles, *_rows(found[first:], roles)]


def _are_cards(found: Sequence[_Found], roles: dict[str, Role]) -> bool:
    """Say whether nearly all lines are answers that name a child, or most are where the same ones come again."""
    counts = Counter(fold(match[1]) for _, match in found if match)
    parts = Role.GIVEN in roles.values() and not {Role.FAMILY, Role.FULL}.isdisjoint(roles.values())
    again = min(counts.values()) >= _FEW
    above = next(at for at, (_, match) in enumerate(found) if match)
    worded = [match is not None for line, match in found[above:]
              if match or (any(map(is_letter, line.text)) and not _SECTION.fullmatch(line.text))]
    labels = [fold(match[1]) for _, match in found if match]
    few = len(roles) < _FEW or (len(roles) == _FEW and (
        len(labels) < _FEW * _BLOCKS or labels != list(roles) * (len(labels) // _FEW)))
    if not parts and (not again or few or {Role.GIVEN, Role.FULL}.isdisjoint(roles.values())):
        return False
    least = _MOSTLY if max(counts.values()) >= _FEW and len(roles) > _FEW else _NEARLY_ALL
    return above <= _MOST_ABOVE and sum(worded) >= max(_FEW, least * len(worded))


def _rows(found: Sequence[_Found], roles: dict[str, Role]) -> Iterator[Line]:
    """Yield a row for each block, of the line of its name; a line that is no answer is a heading, or a child known."""
    cells: dict[str, str] = {}
    opening = next(iter(roles))
    named = line = found[0][0]
    for line, match in found:
        label = fold(match[1]) if match else ""
        section = _SECTION.fullmatch(line.text) is not None
        ends = section or not any(map(is_letter, line.text)) or (label in cells and (
            label == opening or roles[label] in NAME_ROLES))
        if cells and ends:
            yield _row(named, roles, cells)
            cells = {}
        if match:
            named = line if not cells or roles[label] in NAME_ROLES else named
            cells[label] = ", ".join(filter(None, (cells.get(label), (match[2] or match[3] or "").strip())))
        elif any(map(is_letter, line.text)) and not section:
            yield line if opens_with_given(line.text) else line.heading(line.text)
    if cells:
        yield _row(named, roles, cells)


def _row(line: Line, titles: dict[str, Role], cells: dict[str, str]) -> Line:
    return line._replace(text="\t".join(cells.get(title, "") for title in titles))
