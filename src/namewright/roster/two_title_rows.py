"""Titles in two rows, as offices write them: ``Child | | Parent |`` over ``First | Last | First | Last``.

A cell of the upper row stands over those to its right that are empty there. What it is over says whose the names below
are: a grown-up's are never taken for the child's, be they the first ones. A row that only goes on with the titles, as
``Mon | Wed`` below ``Attendance``, is no child either. Titles in one row are read by ``headers`` alone.
"""

from __future__ import annotations

from collections.abc import Sequence

from namewright.named_tuples import NamedTuple
from namewright.names.clusters import is_letter
from namewright.roster.header_words import CHILD_WORDS
from namewright.roster.headers import (
    child_number,
    header_role,
    header_roles,
    is_about_somebody_else,
    names_both_parts,
)
from namewright.roster.numbers import is_of_figures
from namewright.roster.vocabulary import NAME_ROLES, Role, fold

_CERTAIN = 3  # header words in a row
_TWO = 2  # cells of a row that are no slip


class Titles(NamedTuple):
    """What the columns hold, what is told of as their titles, and where two names begin of which either may do."""

    roles: tuple[Role, ...]
    titles: tuple[str, ...]
    doubt: tuple[int, int] | None = None


def titles_in_two_rows(upper: Sequence[str], lower: Sequence[str], *, known: bool) -> Titles | None:
    """Return the titles of two rows, None where these are no such rows.

    ``known`` says that the upper row has known titles of its own; else the lower one has, and some of names twice.
    """
    if not (_goes_on(upper, lower) if known else _is_over(upper, lower)):
        return None
    width = max(len(upper), len(lower))
    upper, lower = (tuple((*cells, *[""] * (width - len(cells)))) for cells in (upper, lower))
    labels = _labels(upper, lower)
    cells = [_title(upper, at, below) for at, below in enumerate(lower)]
    several = len({number for label in labels if (number := child_number(label)[0])}) > 1
    own = cells if several else _of_the_child(cells, labels)
    roles = (None if several else header_roles(own)) or [header_role(cell) for cell in own]
    if NAME_ROLES.isdisjoint(roles):
        return None
    said = [f"{label}: {cell}" if several and child_number(label)[0] else f"{cell} ({label})"
            if label and is_about_somebody_else(label) else cell for cell, label in zip(cells, labels, strict=True)]
    doubt = None if known else _doubt(cells, labels)
    if doubt:
        roles = [Role.FAMILY if role is Role.FULL else role for role in roles]
    return Titles(tuple(role or Role.OTHER for role in roles), tuple(said), doubt)


def _goes_on(upper: Sequence[str], lower: Sequence[str]) -> bool:
    """Say whether a row goes on with the titles above: it has titles of names, or words where no name can be."""
    filled = [at for at, cell in enumerate(lower) if any(map(is_letter, cell))]
    if len(filled) < _TWO or tuple(upper) == tuple(lower) or any(map(is_of_figures, lower)):
        return False
    named = [at for at, role in enumerate(header_roles(upper) or ()) if role in NAME_ROLES and at in filled]
    if any(header_role(lower[at]) is None for at in named):
        return False  # a child
    if not named and any(at >= len(upper) or not upper[at] for at in filled):
        return True
    roles = [header_role(lower[at]) for at in filled]
    known = len(filled) - roles.count(None)
    return header_roles(lower) is not None and (
        names_both_parts(lower) or known == len(filled) or known >= _CERTAIN)


def _is_over(upper: Sequence[str], lower: Sequence[str]) -> bool:
    """Say whether a row of few cells stands over one that has a title of names twice."""
    names = [fold(cell) for cell in lower if header_role(cell) in NAME_ROLES]
    filled = sum(map(bool, upper))
    return len(set(names)) < len(names) and _TWO <= filled < sum(map(bool, lower))


def _labels(upper: Sequence[str], lower: Sequence[str]) -> list[str]:
    """Return what stands in the upper row over each column that has a title below."""
    labels, last = [], ""
    for above, below in zip(upper, lower, strict=True):
        last = above or last
        labels.append(last if below else "")
    return labels


def _doubt(cells: Sequence[str], labels: Sequence[str]) -> tuple[int, int] | None:
    """Return where the names of two begin, each with both parts, where no word above tells who is the child.

    They may be two groups, ``Lions | | Tigers |``, as well as a child and somebody else.
    """
    starts = [at for at, label in enumerate(labels) if label and label not in labels[:at]]
    people = [at for at in starts
              if names_both_parts(cells[at : at + _TWO]) and labels[at] in labels[at + 1 : at + _TWO]]
    told = any(is_about_somebody_else(labels[at]) or _is_of_a_child(labels[at]) for at in starts)
    return (people[0], people[1]) if len(people) > 1 and not told else None


def _title(upper: Sequence[str], at: int, below: str) -> str:
    """Return the lower title, but the upper one where it stands over one column and no name: ``Hand`` over ``l/r``."""
    alone = bool(upper[at]) and all(upper[at + 1 : at + 2])
    return upper[at] if not below or (alone and header_role(below) not in NAME_ROLES) else below


def _of_the_child(cells: Sequence[str], labels: Sequence[str]) -> list[str]:
    """Return the titles without those of names that are somebody else's."""
    childs = {label for label, cell in zip(labels, cells, strict=True)
              if _is_of_a_child(label) and header_role(cell) in NAME_ROLES}
    return ["" if is_about_somebody_else(label) or (
                childs and label not in childs and header_role(cell) in NAME_ROLES) else cell
            for cell, label in zip(cells, labels, strict=True)]


def _is_of_a_child(label: str) -> bool:
    return not CHILD_WORDS.isdisjoint(fold(label).replace("/", " ").split()) and not is_about_somebody_else(label)
