"""Rows with a column for each of several children, ``Child 1``, ``Child 2``, into a row a child.

So are tables that stand side by side under the same titles: ``Name, Room, Name, Room``. The columns of one number
belong together (``Child 1 first name``, ``Child 1 last name``); what has no number stays on every row.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from namewright.names.particles import PARTICLES
from namewright.roster.columns import WIDE_SPACE, Table, join_cells, split_cells
from namewright.roster.headers import child_number
from namewright.roster.pasted import Line
from namewright.roster.shares import share
from namewright.roster.vocabulary import NAME_ROLES, Role, fold

_HALF = 0.5


def from_child_columns(lines: list[Line], table: Table) -> list[Line]:
    """Return a row for each child of a row with several, or the lines as they are where no titles tell of these."""
    if table.header is None or table.grid or table.doubt:
        return lines
    numbers = child_numbers(table.titles, table.roles)
    named = [at for at in numbers if table.roles[at] in NAME_ROLES]
    rows = {row.line: row.cells for row in table.rows if row.line > table.header and row.span == 1}
    of_rows = {at: sorted({numbers[place] for place in named if place < len(cells) and cells[place]})
               for at, cells in rows.items()}
    if not any(len(filled) > 1 for filled in of_rows.values()):
        return lines
    wide = table.delimiter == WIDE_SPACE  # which has no empty cells
    found = []
    for at, line in enumerate(lines):
        filled = of_rows.get(at, [])
        if len(filled) > 1:
            sign = "\t" if wide else table.delimiter
            found += [line.part(_of_one(rows[at], numbers, number, sign)) for number in filled]
        else:
            found.append(line._replace(text="\t".join(split_cells(line.text, WIDE_SPACE) or ())) if wide else line)
    return found


def doubted(table: Table) -> Table:
    """Return a table with its doubt where two columns hold whole names and the titles do not tell who they are."""
    whole = [at for at, role in enumerate(table.roles) if role is Role.FULL]
    parted = {Role.GIVEN, Role.FAMILY} <= set(table.roles)  # then whole names are somebody else's
    if table.header is None or table.grid or parted or len(whole) < 2:
        return table
    first, second = whole[:2]
    pairs = [(words[0], words[1]) for row in table.rows if row.line > table.header and len(row.cells) > second
             and all(words := [set(fold(row.cells[at]).split()) - PARTICLES for at in (first, second)])]
    if _numbers(table.titles, table.roles):
        return table
    if _repeated(table.titles, table.roles):
        doubt = share(bool(one & two) for one, two in pairs) > _HALF  # a parent beside a child
    else:
        doubt = any(not (one <= two or two <= one) for one, two in pairs)
    return table._replace(doubt=(first, second)) if doubt else table


def child_numbers(titles: Sequence[str], roles: Sequence[Role]) -> Mapping[int, int]:
    """Return which child each column is about by its title, of the columns that are about one of several."""
    size = _repeated(titles, roles)
    return _numbers(titles, roles) or ({at: at // size + 1 for at in range(len(roles))} if size else {})


def _numbers(titles: Sequence[str], roles: Sequence[Role]) -> Mapping[int, int]:
    found = {at: number for at, title in enumerate(titles) if at < len(roles) and (number := child_number(title)[0])}
    return found if len({number for at, number in found.items() if roles[at] in NAME_ROLES}) > 1 else {}


def _repeated(titles: Sequence[str], roles: Sequence[Role]) -> int:
    """Return how many titles come again and again, one of them over whole names; 0 where they do not."""
    plain = [fold(title) for title in titles]
    for size in range(1, len(plain) // 2 + 1):
        if len(plain) % size == 0 and plain == plain[:size] * (len(plain) // size):
            return size if list(roles[:size]).count(Role.FULL) == 1 and all(plain) else 0
    return 0


def _of_one(cells: Sequence[str], numbers: Mapping[int, int], number: int, delimiter: str) -> str:
    """Write a row with what is about one child, and about all, in its columns."""
    return join_cells([cell if numbers.get(at, number) == number else "" for at, cell in enumerate(cells)], delimiter)
