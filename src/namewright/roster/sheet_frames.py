"""What a spreadsheet shows about its cells and a photo of the screen has, too: numbers of rows, letters, tabs.

The numbers count on from line to line and the first stands beside titles of columns, so none of them is a child's. Out
of scope: numbers under a title of their own, and lists that are counted without titles (``numbered``).
"""

from __future__ import annotations

from collections.abc import Mapping
from itertools import pairwise

from namewright.patterns import pattern
from namewright.roster.headers import header_roles
from namewright.roster.pasted import Line
from namewright.roster.vocabulary import NAME_ROLES

_ROW = pattern(r"\s*([0-9]{1,4})(\s*\|\s*|\t\s*|\s{2,})(\S.*)")
_LETTERS = pattern(r"[\s|]*A(?:[\s|]+[A-Z]{1,2})*[\s|]*")
_FORMULA = pattern(r"\s*[A-Z]{1,2}[0-9]{1,4}\s+(?:fx|[fƒ]x?|=)(?:\s.*)?")
_TABS = pattern(r"(?:\s*[^\W\d_]+ ?[0-9]{1,2}\s*)+\+\s*", needs="+")
_BETWEEN = pattern(r"\s*\|\s*|\t\s*|\s{2,}")
_FEWEST = 3


def without_sheet_frames(lines: list[Line]) -> list[Line]:
    """Return the lines without the numbers of a sheet's rows, and what else stands about the cells as headings."""
    rows = {at: match for at, line in enumerate(lines) if line.text[:5].lstrip()[:1].isdigit()
            and (match := _ROW.fullmatch(line.text))}
    if len(rows) < _FEWEST or not _count_on({at: int(match[1]) for at, match in rows.items()}):
        return lines
    first = next(iter(rows))
    roles = header_roles(_BETWEEN.split(rows[first][3].strip(" |\t")))
    if not roles or NAME_ROLES.isdisjoint(roles):
        return lines
    return [line._replace(text=rows[at][3]) if at in rows else
            line.heading(" ".join(line.text.replace("|", " ").split())) if _is_of_the_frame(line.text) else line
            for at, line in enumerate(lines)]


def _count_on(numbers: Mapping[int, int]) -> bool:
    """Say whether the numbers count on, a row on each line."""
    return all(two == one + 1 for one, two in (*pairwise(numbers), *pairwise(numbers.values())))


def _is_of_the_frame(text: str) -> bool:
    return any(form.fullmatch(text) for form in (_LETTERS, _FORMULA, _TABS))
