"""Tables one below the other, each under titles of its own, into one table with the columns of all.

A row of titles that follows an empty line or a line of one cell begins a new table. Where one has whole names and
another their parts, these are written as whole names with a comma. A table whose titles are known and name no child
(teachers and rooms) is told and makes nobody; who stands under a waiting list is told so. Out of scope: tables below
without titles, and tables by spaces with empty cells.
"""

from __future__ import annotations

from collections.abc import Container, Iterator, Sequence

from namewright.named_tuples import NamedTuple
from namewright.names.clusters import is_letter
from namewright.patterns import pattern
from namewright.roster.columns import DELIMITERS, WIDE_SPACE, split_cells
from namewright.roster.headers import header_role, header_roles
from namewright.roster.heading_words import WAITING
from namewright.roster.pasted import Line
from namewright.roster.vocabulary import NAME_ROLES, Role, fold
from namewright.roster.waiting import under

_DASH = pattern(r"\s[-–—]\s|:")
_MOST_LINES = 5_000
_GIVEN, _FAMILY, _WHOLE = "Given name", "Family name", "Full name"


class _Table(NamedTuple):
    """Where the titles of a table stand, the sign between its cells, its titles and what they hold."""

    at: int
    sign: str
    titles: tuple[str, ...]
    roles: tuple[Role, ...]

    @property
    def named(self) -> bool:
        return not NAME_ROLES.isdisjoint(self.roles)

    @property
    def whole(self) -> bool:
        """Say whether one column holds whole names; beside one of given names it holds the families'."""
        return Role.FULL in self.roles and Role.GIVEN not in self.roles

    def cells(self, role: Role, row: Sequence[str]) -> str:
        """Return what a row has in the columns of a role."""
        return " ".join(cell for cell, of in zip(row, self.roles, strict=False) if of is role and cell)


def from_further_tables(lines: Sequence[Line]) -> list[Line]:
    """Return the rows of all tables under one line of titles, or the lines as they are where there is one table."""
    if len(lines) > _MOST_LINES:
        return list(lines)
    tables = [table for at in range(len(lines)) if (table := _begins(lines, at))]
    said = {fold(title) for one in tables for title, role in zip(one.titles, one.roles, strict=True)
            if role in NAME_ROLES}
    tables = [table for at in range(len(lines)) if (table := _begins(lines, at, said))] if said else []
    if not any(table.named for table in tables) or len({tuple(map(fold, one.titles)) for one in tables}) < 2:
        return list(lines)
    if not any(len(table.titles) > 1 for table in tables):
        return list(lines)
    rows = [_rows(lines, table, end) for table, end in zip(tables, [*(one.at for one in tables[1:]), len(lines)],
                                                           strict=True)]
    if any(row is None for of_table in rows for _, row in of_table):
        return list(lines)
    return list(_together(lines, tables, rows))


def _begins(lines: Sequence[Line], at: int, said: Container[str] = ()) -> _Table | None:
    """Return the table that begins with a line of titles; below others an empty line or a lone cell stands above it.

    ``said`` are titles over names that other tables have.
    """
    text = lines[at].text.strip()
    for sign in DELIMITERS:
        if sign not in text or not _may_begin(lines, at, sign, further=bool(said)):
            continue
        cells = tuple(_split(text, sign))
        filled = [cell for cell in cells if cell]
        if roles := header_roles(cells):
            return _Table(at, sign, cells, roles)
        if any(fold(cell) in said for cell in filled):
            return _Table(at, sign, cells, tuple(header_role(cell) or Role.OTHER for cell in cells))
        if said and len(filled) > 1 and all(header_role(cell) is Role.OTHER for cell in filled):
            return _Table(at, sign, cells, (Role.OTHER,) * len(cells))
    alone = not any(sign in text for sign in DELIMITERS) and _may_begin(lines, at, "", further=True)
    role = header_role(text) if alone else None
    return _Table(at, "", (text,), (role,)) if role in NAME_ROLES and role is not None else None


def _may_begin(lines: Sequence[Line], at: int, sign: str, *, further: bool) -> bool:
    """Say whether nothing stands right above a line of titles but what its table is called, of one cell."""
    over = [line.text.strip() for line in lines[max(0, at - 2) : at]]
    if over and over[-1] and not any(one in over[-1] for one in (sign or "\t", *DELIMITERS[:3])):
        over.pop()
    return not over or not over[-1] or not (further or sign in over[-1])


def _split(text: str, sign: str) -> list[str]:
    if sign == "|":
        text = text.strip().strip("|")
    return split_cells(text, sign) or [text]


def _rows(lines: Sequence[Line], table: _Table, end: int) -> list[tuple[int, list[str] | None]]:
    """Return the rows of a table with their cells; None for one that cannot be put in columns."""
    found: list[tuple[int, list[str] | None]] = []
    for at in range(table.at + 1, end):
        text = lines[at].text.strip()
        if not any(map(str.isalnum, text)):
            continue
        cells = _split(lines[at].text, table.sign) if table.sign else [text]
        if len(cells) > 1 or (not table.sign and not _is_above(lines, at)):
            even = len(cells) == len(table.titles) or (table.sign != WIDE_SPACE and not any(cells[len(table.titles):]))
            found.append((at, cells if even else None))
    return found


def _is_above(lines: Sequence[Line], at: int) -> bool:
    """Say whether a line of one cell stands over the titles of the next table, an empty line above it."""
    return bool(at) and not lines[at - 1].text.strip() and at + 1 < len(lines) and _begins(lines, at + 1) is not None


def _together(lines: Sequence[Line], tables: Sequence[_Table],
              rows: Sequence[Sequence[tuple[int, list[str] | None]]]) -> Iterator[Line]:
    """Yield one table of all, what stands between as headings."""
    whole = any(table.whole for table in tables)
    names = [_first(tables, Role.FULL, _WHOLE)] if whole else [
        _first(tables, Role.GIVEN, _GIVEN), _first(tables, Role.FAMILY, _FAMILY)]
    others = _columns([table for table in tables if table.named])
    if not _say(names, others, whole=whole):
        names = [_WHOLE] if whole else [_GIVEN, _FAMILY]
    of_row = {at: (table, cells) for table, found in zip(tables, rows, strict=True) for at, cells in found if cells}
    titles_at = {one.at: one.titles for one in tables}
    titled, waiting = False, ""
    for at, line in enumerate(lines):
        table, cells = of_row.get(at, (None, None))
        if titles := titles_at.get(at):
            text = "\t".join([*names, *map(_title, others)])
            yield line.heading(" · ".join(filter(None, titles))) if titled else line._replace(text=text)
            titled = True
        elif table is None or cells is None:
            above = at + 1 in titles_at
            waiting = _waiting(line.text) if above else waiting
            worded = any(map(is_letter, line.text))
            yield line.heading(" ".join(line.text.split())) if above and worded else line
        elif not table.named:
            yield line.heading(" · ".join(filter(None, cells)))
        else:
            beside = [_beside(table, cells, column) for column in others]
            row = line._replace(text="\t".join([*_name(table, cells, whole=whole), *beside]))
            yield under(row, waiting) if waiting else row


def _columns(tables: Sequence[_Table]) -> list[tuple[str, ...]]:
    """Return the titles of each column beside the names: one for each that is of use, and all others in one.

    So no table has cells that are empty in another, which would make its rows look like those at the foot.
    """
    pairs = [(title, role) for one in tables for title, role in zip(one.titles, one.roles, strict=True)]
    kept = dict.fromkeys(title for title, role in pairs if role not in (*NAME_ROLES, Role.OTHER))
    rest = tuple(dict.fromkeys(title for title, role in pairs if role is Role.OTHER and title))
    return [*((title,) for title in kept), *([rest] if rest else [])]


def _title(column: Sequence[str]) -> str:
    joined = " · ".join(column)
    return joined if header_role(joined) in (None, Role.OTHER) or len(column) == 1 else column[0]


def _beside(table: _Table, cells: Sequence[str], column: Sequence[str]) -> str:
    return " · ".join(cell for title, cell in zip(table.titles, cells, strict=False) if title in column and cell)


def _say(names: Sequence[str], others: Sequence[Sequence[str]], *, whole: bool) -> bool:
    """Say whether titles tell what the first columns hold, with the others beside them."""
    roles = header_roles([*names, *map(_title, others)]) or ()
    return list(roles[: len(names)]) == ([Role.FULL] if whole else [Role.GIVEN, Role.FAMILY])


def _first(tables: Sequence[_Table], role: Role, usual: str) -> str:
    return next((title for one in tables for title, of in zip(one.titles, one.roles, strict=True) if of is role), usual)


def _name(table: _Table, cells: Sequence[str], *, whole: bool) -> list[str]:
    """Return the cells of a name: given and family name, or both in one."""
    if table.whole:
        return [table.cells(Role.FULL, cells)]
    parts = [table.cells(Role.GIVEN, cells), table.cells(Role.FAMILY, cells) or table.cells(Role.FULL, cells)]
    return [", ".join(filter(None, parts[::-1]))] if whole else parts


def _waiting(text: str) -> str:
    """Return a heading that says waiting list, else nothing."""
    parts = [fold(part.replace("’", "'")) for part in _DASH.split(text)]
    return text.strip(" :") if not WAITING.isdisjoint(parts) else ""
