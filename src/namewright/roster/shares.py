"""What share of a list's lines or cells answers a question with yes. Pure."""

from __future__ import annotations

from collections.abc import Iterable

from namewright.roster.known import is_given, lean, opens_with_given

_ROW, _MOSTLY = 3, 0.6


def share(answers: Iterable[bool]) -> float:
    """Return the share of answers that are yes, from 0 to 1; 0 where there are none."""
    found = tuple(answers)
    return sum(found) / max(1, len(found))


def given_share(cells: Iterable[str]) -> float:
    """Return the share of cells whose first word is a known given name; no cell may be empty."""
    return share(opens_with_given(cell) for cell in cells)


def are_most(answers: Iterable[bool], least: float, enough: int = 1) -> bool:
    """Say whether so large a share of answers at least is yes, and so many: of few lines, few agree by chance."""
    found = tuple(answers)
    return sum(found) >= max(enough, least * len(found))


def are_in_a_row(text: str) -> bool:
    """Say whether a text is three given names or more with spaces alone between, few a family's as often."""
    words = text.split()
    if len(words) < _ROW or not all(map(is_given, words)):
        return False
    leans = list(map(lean, words))
    return min(leans) >= 0 and share(each > 0 for each in leans) >= _MOSTLY
