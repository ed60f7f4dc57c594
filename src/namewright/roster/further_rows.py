"""Rows of a table that are about a child who has one already, as an export of contacts has one for each grown-up.

It is the same child where both parts of the name agree, and with them a number or a birthday that no other name has.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Mapping, Sequence

from namewright.named_tuples import NamedTuple
from namewright.patterns import pattern
from namewright.roster.columns import Row, Table
from namewright.roster.vocabulary import OTHER_PEOPLE, Role, fold

_LEAST = 4  # figures of a number or a date that tells children apart; a room or a table has fewer
_BETWEEN = pattern(r"[\W_]+")

Name = tuple[str, str]


class Further(NamedTuple):
    """A further row of a child: the line (0-based) of its first one, and the number or date both have."""

    first: int
    shared: str


def is_about_others(title: str) -> bool:
    """Say whether a column is about somebody else than the child: ``Contact First Name``."""
    return not OTHER_PEOPLE.isdisjoint(_BETWEEN.split(fold(title)))


def further_rows(rows: Sequence[tuple[Row, Name]], table: Table) -> Mapping[int, Further]:
    """Return, by line, the rows of a child that has one above; each row comes with its given and family name."""
    columns = [at for at, (role, title) in enumerate(zip(table.roles, table.titles, strict=False))
               if role is Role.OTHER and not is_about_others(title)]
    names: defaultdict[tuple[int, str], set[Name]] = defaultdict(set)
    first: dict[tuple[int, str, Name], int] = {}
    found: dict[int, Further] = {}
    told = [(row, name, [(at, row.cells[at]) for at in columns if at < len(row.cells) and _tells(row.cells[at])])
            for row, name in rows]
    for _, name, cells in told:
        for cell in cells:
            names[cell].add(name)
    for row, name, cells in told:
        own = [cell for cell in cells if all(name) and len(names[cell]) == 1]
        above = next(((first[*cell, name], cell[1]) for cell in own if (*cell, name) in first), None)
        if above:
            found[row.line] = Further(*above)
        for cell in own:
            first.setdefault((*cell, name), row.line)
    return found


def _tells(cell: str) -> bool:
    return sum(map(str.isdigit, cell)) >= _LEAST
