"""Rows of a table that are about grown-ups of the school: a column says who each row is, ``Student`` or ``Teacher``.

Exports of a learning platform list both. Where one column has words for children and words for staff, the rows of
staff are no children; under a title for what somebody is, rows with words for staff are asked about in any case.
"""

from __future__ import annotations

from namewright.message import message
from namewright.roster.columns import Table
from namewright.roster.header_words import CHILD_WORDS
from namewright.roster.unlike import Unlike, perhaps_unlike
from namewright.roster.vocabulary import NAME_ROLES, TEACHERS, fold, word_set

_STAFF = TEACHERS | word_set("staff, ta, observer, assistant teacher, head teacher, principal, co-teacher")
_SAYS_WHO = word_set("""
    role, roles, type, position, rolle, funktion, fonction, rol, cargo, ruolo, funzione, papel, funcao""")
_CHILDREN = CHILD_WORDS | word_set("students, pupils, member, membre, mitglied, miembro, membro")


def grown_up_rows(table: Table) -> dict[int, Unlike]:
    """Return, by line, the rows of a table with titles that a column says to be about a grown-up."""
    if table.header is None or table.grid:
        return {}
    names = [at for at, role in enumerate(table.roles) if role in NAME_ROLES]
    rows = [row for row in table.rows if row.line > table.header and any(row.cells)]
    found: dict[int, Unlike] = {}
    for at in range(min(len(table.roles), len(table.titles))):
        cells = [(row, _plain(row.cells[at])) for row in rows if at < len(row.cells) and row.cells[at]]
        staff = [row for row, cell in cells if cell in _STAFF]
        if at in names or not staff or len(staff) == len(cells):
            continue
        sure = any(cell in _CHILDREN for _, cell in cells)
        if not sure and fold(table.titles[at]) not in _SAYS_WHO:
            continue
        for row in staff:
            name = " ".join(row.cells[place] for place in names if place < len(row.cells))
            said = Unlike((message("roster.remark", words=row.cells[at]), message("roster.if_child")), told=True)
            found[row.line] = said if sure else perhaps_unlike(name)._replace(told=True)
    return found


def _plain(cell: str) -> str:
    return fold(cell).removesuffix("/in").removesuffix(":in")
