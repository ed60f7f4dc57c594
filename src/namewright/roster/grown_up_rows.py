"""Rows of a table that are about grown-ups of the school: a column says who each row is, ``Student`` or ``Teacher``.

Exports of a learning platform list both. Where one column has words for children and words for staff, the rows of
staff are no children, nor are those of parents whose name is no child's (``Mother`` among ``Student``); under a title
for what somebody is, rows with words for staff are asked about in any case, and so are those of the few whom no word
tells where most are children. Without such a column, a telephone number where all others have part of a name tells of a
row from a list of another kind below the class, and it is asked about.
"""

from __future__ import annotations

from collections.abc import Sequence

from namewright.message import message
from namewright.roster.columns import Row, Table
from namewright.roster.header_words import CHILD_WORDS
from namewright.roster.numbers import is_of_figures
from namewright.roster.unlike import Unlike, perhaps_unlike
from namewright.roster.vocabulary import NAME_ROLES, OTHER_PEOPLE, TEACHERS, fold, word_set

_STAFF = TEACHERS | word_set("""
    staff, ta, observer, assistant teacher, head teacher, principal, co-teacher, para, paraprofessional, assistant,
    secretary, nurse, counselor, counsellor, volunteer, intern, secretaria, voluntaria, asistente, aesh, avs, stagiaire,
    secretaire, benevole, sekretarin, praktikantin, praktikant, schulbegleitung, segretaria, tirocinante, assistente,
    estagiaria, voluntario""")
_SAYS_WHO = word_set("""
    role, roles, type, position, rolle, funktion, fonction, rol, cargo, ruolo, funzione, papel, funcao, relationship,
    relation, parentesco, lien, lien de parente, beziehung, verwandtschaft, parentela, rapporto, grau de parentesco""")
_CHILDREN = CHILD_WORDS | word_set("pupils, self, member, membre, mitglied, miembro, membro")
_NEARLY_ALL = 0.8
_FIGURES = 6  # of a telephone number, at the least


def grown_up_rows(table: Table) -> dict[int, Unlike]:
    """Return, by line, the rows of a table with titles that a column says to be about a grown-up."""
    if table.header is None or table.grid:
        return {}
    names = [at for at, role in enumerate(table.roles) if role in NAME_ROLES]
    rows = [row for row in table.rows if row.line > table.header and any(row.cells)]
    found: dict[int, Unlike] = {}
    for at in range(min(len(table.roles), len(table.titles))):
        cells = [(row, _plain(row.cells[at])) for row in rows if at < len(row.cells) and row.cells[at]]
        children = {_named(row, names) for row, cell in cells if cell in _CHILDREN}
        staff = [row for row, cell in cells if cell in _STAFF or (
            cell in OTHER_PEOPLE and children and _named(row, names) not in children)]
        titled = fold(table.titles[at]) in _SAYS_WHO
        doubtful = _unlike_most(cells) if titled else []
        if at in names or len(staff) == len(cells) or not (staff or doubtful) or not (children or titled):
            continue
        for row in staff:
            said = Unlike((message("roster.remark", words=row.cells[at]), message("roster.if_child")), told=True)
            found[row.line] = said if children else _asked(row, names)
        found |= {row.line: _asked(row, names) for row in doubtful if row.line not in found}
    return {row.line: _asked(row, names) for row in _reached(rows, names)} | found


def _reached(rows: Sequence[Row], names: Sequence[int]) -> list[Row]:
    """Return the few rows that have a telephone number where others have part of a name: ``Jo Vost``, ``555-0142``."""
    found = [row for row in rows if any(at < len(row.cells) and _is_a_phone(row.cells[at]) for at in names)]
    return found if len(names) > 1 and 2 * len(found) < len(rows) else []


def _is_a_phone(cell: str) -> bool:
    return is_of_figures(cell) and sum(map(str.isdigit, cell)) >= _FIGURES


def _unlike_most(cells: Sequence[tuple[Row, str]]) -> list[Row]:
    """Return the rows of whom a column says something else where nearly all others are said to be children."""
    others = [row for row, cell in cells if cell not in _CHILDREN]
    return others if len(cells) - len(others) >= _NEARLY_ALL * len(cells) else []


def _named(row: Row, names: Sequence[int]) -> str:
    return " ".join(row.cells[place] for place in names if place < len(row.cells) and not _is_a_phone(row.cells[place]))


def _asked(row: Row, names: Sequence[int]) -> Unlike:
    return perhaps_unlike(_named(row, names))._replace(told=True)


def _plain(cell: str) -> str:
    return fold(cell).removesuffix("/in").removesuffix(":in")
