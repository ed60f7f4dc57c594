"""Rows at the foot of a table that count those above: ``Hot  5  7``, and below a total ``vegetarisch  5  3``.

Where the columns hold marks, hands or words, a row of figures alone is no child, whatever stands before them; where
they hold figures for every child, rows below one that opens or ends with a word for a total, or is called as another
column is, are none. A last row of figures with one name where nearly all others have two may be a total in any
language. A row that may be a child for all that is asked about.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from namewright.message import message
from namewright.named_tuples import NamedTuple
from namewright.names.casing import begins_small
from namewright.roster.columns import Row, Table
from namewright.roster.free_text import NAME_LABEL
from namewright.roster.known import is_given
from namewright.roster.numbers import is_of_figures
from namewright.roster.shares import share
from namewright.roster.unlike import Unlike, perhaps_unlike
from namewright.roster.vocabulary import ATTENDANCE, NAME_ROLES, TOTALS, fold, word_set

_FEWEST, _HARDLY = 3, 0.2
_TWO = 2  # figures of a row that counts: one alone may be a child's bus
_COUNTS = message("roster.heading_count")
_COUNTED = Unlike((_COUNTS, message("roster.if_child")), told=True)
_SUBTOTALS = word_set("""
    subtotal, subtotals, sub-total, subtotales, sous-total, zwischensumme, teilsumme, subtotale, parziale, subtotais,
    tussentotaal, group total, class total""")
"""Words over which the children of the next group stand: nobody below is doubted for one."""


_COUNTED_DAYS = ATTENDANCE | word_set("""
    presents, absents, presentes, ausentes, presenti, assenti, anwesende, abwesende, tardies, retards""")
"""What a row counts of which the days are columns."""


class _Foot(NamedTuple):
    """A row by what stands in the columns of names, and in the others; whether it is called as one that counts is."""

    at: int
    name: str
    others: Mapping[int, str]
    total: bool
    half: bool  # one of several names stands there, or one word alone


def foot_rows(table: Table) -> dict[int, Unlike]:
    """Return the rows (by line) at the foot of a table that count, and those that may be children."""
    names = [at for at, role in enumerate(table.roles) if role in NAME_ROLES]
    if not table.delimiter or table.grid or not names:
        return {}
    titles = frozenset(fold(title) for at, title in enumerate(table.titles) if at not in names and title)
    every = [_parted(row, names, titles) for row in table.rows if any(row.cells) and row.line != table.header]
    between = {row.at: _COUNTED for row in every if _is_subtotal(row)}
    return between | _below([row for row in every if row.at not in between])


def _below(rows: Sequence[_Foot]) -> dict[int, Unlike]:
    """Return the rows below all children that count, and those that may be children."""
    above = rows[: _first(rows)]
    if len(above) < _FEWEST:
        return {}
    small = share(begins_small(row.name) for row in above if row.name) <= _HARDLY
    rest = [row for row in rows[len(above) :]
            if row.name and _has_figures_alone(row) and not NAME_LABEL.match(row.name)]
    return {row.at: _judged(row, small) for row in rest
            if not is_given(_opening(row)) or (small and begins_small(row.name))}


def _first(rows: Sequence[_Foot]) -> int:
    """Return where the foot begins: at a total, or where rows of figures stand in columns that hardly have any."""
    total = next((at for at, row in enumerate(rows) if at >= _FEWEST and _is_total(row)), len(rows))
    if total == len(rows) > _FEWEST and _is_half(rows):
        total -= 1
    first = total
    while first and _counts(rows[first - 1]):
        first -= 1
    columns = {at for row in rows[first:total] for at in row.others}
    told = all(share(is_of_figures(row.others.get(at, "")) for row in rows[:first]) <= _HARDLY for at in columns)
    return first if told and first >= _FEWEST else total


def _parted(row: Row, names: Sequence[int], titles: frozenset[str]) -> _Foot:
    filled = [row.cells[at] for at in names if at < len(row.cells) and row.cells[at]]
    behind = {at: cell for at, cell in enumerate(row.cells) if at > names[0] and at not in names and cell}
    words = fold(" ".join(filled)).split()
    total = bool(words) and (words[0] in TOTALS or words[-1] in TOTALS or " ".join(words) in titles)
    half = len(filled) < len(names) if len(names) > 1 else len(words) == 1
    return _Foot(row.line, " ".join(filled), behind, total, half)


def _judged(row: _Foot, small: bool) -> Unlike:
    """Return why a row is no child; one in small letters under names in capitals, or of a total, is none for sure.

    So is one that counts who was there.
    """
    if _is_total(row) or (small and begins_small(row.name)) or fold(row.name) in _COUNTED_DAYS:
        return _COUNTED
    return perhaps_unlike(row.name)._replace(told=True)


def _is_total(row: _Foot) -> bool:
    """Say whether a row is called as a total is and has figures alone behind it."""
    return row.total and bool(row.others) and _has_figures_alone(row)


def _is_half(rows: Sequence[_Foot]) -> bool:
    """Say whether the last row has figures for one name, and nearly all others have two."""
    return rows[-1].half and _counts(rows[-1]) and share(row.half for row in rows[:-1]) <= _HARDLY


def _is_subtotal(row: _Foot) -> bool:
    words = fold(row.name).split()
    return not _SUBTOTALS.isdisjoint((_opening(row), " ".join(words[:2]))) and _has_figures_alone(row)


def _counts(row: _Foot) -> bool:
    return _has_figures_alone(row) and len(row.others) >= _TWO


def _has_figures_alone(row: _Foot) -> bool:
    return all(map(is_of_figures, row.others.values()))


def _opening(row: _Foot) -> str:
    return next(iter(fold(row.name).split()), "")
