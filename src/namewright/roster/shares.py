"""What share of a list's lines or cells answers a question with yes. Pure."""

from __future__ import annotations

from collections.abc import Iterable

from namewright.roster.known import opens_with_given


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
