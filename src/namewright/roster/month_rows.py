"""Birthdays with a row a month (``May: Mira 4, Tilo 9``) into the month as a heading and a line for each child.

Among such rows may stand a month that has none, and one for the holidays (``Summer birthdays: Mira (4)``).
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence

from namewright.names.casing import begins_small
from namewright.names.clusters import is_letter
from namewright.patterns import pattern
from namewright.roster.block_heads import in_order, month_of
from namewright.roster.known import is_given, opens_with_given
from namewright.roster.no_names import says_nobody
from namewright.roster.pasted import Line
from namewright.roster.vocabulary import SEASONS, fold

_ROW = pattern(r"[\s|*]*([^\W\d_]{3,10})\.?\**\s*(?:[:|\t]|\s[–—-]\s)[*\s|]*(.*)")
_LABELLED = pattern(r"[\s|*]*([^\W\d_][^,:;|\t]{2,40})(?:[:|\t]|\s[–—-]\s)[*\s|]*(\S.*)")
_CELLS, _PARTS = pattern(r"\s*[;|\t]\s*"), pattern(r"\s*[,;|\t]\s*")
_LEAST = 3  # months in order
_MOSTLY = 0.6
_LONGEST = 500


def from_month_rows(lines: Sequence[Line]) -> list[Line]:
    """Return the lines with each month and each of its children apart, or as they are where no months are in order."""
    found = {at: match for at, line in enumerate(lines)
             if len(line.text) < _LONGEST and (match := _ROW.match(line.text)) and month_of(match[1])}
    filled = sum(bool(line.text.strip()) for line in lines)
    months = [month_of(match[1]) for match in found.values()]
    if len(found) < max(_LEAST, _MOSTLY * filled) or not in_order(months):
        return list(lines)
    found |= {at: match for at, line in enumerate(lines)
              if at not in found and len(line.text) < _LONGEST and (match := _further(line.text))}
    return [each for at, line in enumerate(lines) for each in (_apart(line, found[at]) if at in found else (line,))]


def _further(text: str) -> re.Match[str] | None:
    """Return a row for other months than one, which opens with no child: each behind its sign is written as others."""
    match = _LABELLED.match(text)
    label = match[1].split() if match else []
    if match is None:
        return None
    if is_given(label[0]) and fold(label[0]) not in SEASONS and not any(map(begins_small, label[1:])):
        return None
    return match if all(is_letter(part[0]) and not begins_small(part) and _may_be_a_child(part)
                        for part in _children(match[2])) else None


def _apart(line: Line, match: re.Match[str]) -> Iterator[Line]:
    yield line._replace(text=f"{match[1]}:")
    children = _children(match[2])
    for child in children:
        yield line.part(child) if len(children) > 1 else line._replace(text=child)


def _children(text: str) -> list[str]:
    """Return who stands behind a month, nobody where a word says so: ``none :(``."""
    if says_nobody(text):
        return []
    children = list(filter(None, _PARTS.split(text)))
    return children if all(map(_may_be_a_child, children)) else list(filter(None, _CELLS.split(text)))  # Vost, Mira 4


def _may_be_a_child(part: str) -> bool:
    return any(map(is_letter, part)) and (any(map(str.isdigit, part)) or opens_with_given(part))
