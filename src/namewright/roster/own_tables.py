"""A table that was written line by line for what is kept of a list (``written``) is read as it stands, cell by cell.

Nothing of it is judged again: a name that another list would not hold for one was judged when the list was pasted, and
next month the same children are to be there. It is known by the title of its last column, which no other list has, and
by nothing standing in both that column and another. A line that somebody added in another way leaves it to all others.
"""

from __future__ import annotations

import csv
from collections.abc import Sequence

from namewright.message import Message, message
from namewright.named_tuples import NamedTuple
from namewright.names.clusters import is_letter
from namewright.roster.beside import Reading
from namewright.roster.children import Outcome
from namewright.roster.columns import Row, Table
from namewright.roster.headers import header_role
from namewright.roster.headings import heading_reason
from namewright.roster.judge import Judge
from namewright.roster.pasted import Line
from namewright.roster.row_drafts import Draft
from namewright.roster.rows import Entry, read_choice_cells
from namewright.roster.unfolding import Unfolded
from namewright.roster.vocabulary import Role
from namewright.roster.written import NOT_READ, WORDS

_TITLES = {title: header_role(title) or Role.OTHER for title in WORDS.values()}


class OwnTable(NamedTuple):
    """What a table of ours holds: its lines as they are laid out, and what became of each."""

    found: Unfolded
    drafts: Sequence[Draft]


def own_table(lines: Sequence[str]) -> OwnTable | None:
    """Return what stands in a table that we wrote line by line, None where the lines are anything else."""
    titles = lines[0].split(",") if lines and lines[0].endswith(f",{NOT_READ}") else []
    if not titles or titles.pop() != NOT_READ or not set(titles) <= _TITLES.keys():
        return None
    rows = [Row(at, 1, _cells(line)) for at, line in enumerate(lines)]
    if not all(_fits(row, len(titles)) for row in rows[1:]):
        return None
    roles = (*(_TITLES[title] for title in titles), Role.OTHER)
    table = Table(",", tuple(rows), 0, roles, tuple(rows[0].cells))
    found = Unfolded([Line(line, at) for at, line in enumerate(lines)], table, Judge(()), {})
    return OwnTable(found, [Draft(rows[0], Outcome.HEADER), *(_draft(row, table) for row in rows[1:])])


def _cells(line: str) -> tuple[str, ...]:
    return tuple(next(csv.reader([line]), ()))


def _fits(row: Row, count: int) -> bool:
    """Say whether a row is empty, or has all cells, and something in the last one or in those before it."""
    *before, last = row.cells or ("",)
    return not row.cells or (len(before) == count and (not last or not any(before)))


def _draft(row: Row, table: Table) -> Draft:
    if not any(row.cells):
        return Draft(row, Outcome.BLANK)
    if row.cells[-1]:
        return _beside(row)
    texts = dict(zip(table.roles, row.cells, strict=True))
    notes: list[Message] = []
    choice = read_choice_cells(texts, notes)
    reading = Reading(texts.get(Role.GIVEN, ""), texts.get(Role.FAMILY, ""), texts.get(Role.GOES_BY, ""))
    return Draft(row, Outcome.CHILD, Entry(reading, choice, notes=tuple(notes)), tuple(notes))


def _beside(row: Row) -> Draft:
    """Return what becomes of words beside the children: a heading, or a line that is asked about."""
    reason = heading_reason(row.cells[-1]) if any(map(is_letter, row.cells[-1])) else None
    if reason:
        return Draft(row, Outcome.HEADING, notes=(reason, message("roster.if_child")))
    return Draft(row, Outcome.LEFT_OUT, notes=(message("roster.no_name"),))
