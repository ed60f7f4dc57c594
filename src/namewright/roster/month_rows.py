"""Birthdays with a row a month (``May: Mira 4, Tilo 9``) into the month as a heading and a line for each child."""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence

from namewright.names.clusters import is_letter
from namewright.patterns import pattern
from namewright.roster.block_heads import in_order, month_of
from namewright.roster.known import opens_with_given
from namewright.roster.pasted import Line

_ROW = pattern(r"[\s|*]*([^\W\d_]{3,10})\.?\**\s*(?:[:|\t]|\s[–—-]\s)[*\s|]*(.*)")
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
    return [each for at, line in enumerate(lines) for each in (_apart(line, found[at]) if at in found else (line,))]


def _apart(line: Line, match: re.Match[str]) -> Iterator[Line]:
    yield line._replace(text=f"{match[1]}:")
    children = list(filter(None, _PARTS.split(match[2])))
    if not all(map(_may_be_a_child, children)):  # Vost, Mira 4
        children = list(filter(None, _CELLS.split(match[2])))
    for child in children:
        yield line.part(child) if len(children) > 1 else line._replace(text=child)


def _may_be_a_child(part: str) -> bool:
    return any(map(is_letter, part)) and (any(map(str.isdigit, part)) or opens_with_given(part))
