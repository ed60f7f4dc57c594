"""Lines into cells: the delimiter, the header row, and what each column holds.

A text is a table where a header row says so, or where most of its lines have the same kind of columns. In
a table without a header the columns are judged by what they hold, and the order of two name columns by
the evidence in them (particles, capitals, brackets); without any, a comma means family name first and every
other delimiter given name first. Either way a note says so on each line.
"""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from namewright.names.casing import is_all_capitals
from namewright.names.clusters import is_letter
from namewright.names.words import (
    DOUBLE_STARTERS,
    HANDS,
    HEADER_WORDS,
    NAME_ROLES,
    PARTICLES,
    SUPPORTS,
    Role,
    fold,
)

WIDE_SPACE = "  "
"""Stands for columns made of two spaces or more."""
_DELIMITERS = ("\t", ";", "|", WIDE_SPACE, ",")
_HEADER_WITHIN = 10
_MOST_JOINED = 20
_UNIT_TAIL = re.compile(r"[\s,]*(?:\(.*\)|\bin (?:mm|cm|inches|inch)|\bmm|\bcm|\d)$")


@dataclass(frozen=True, slots=True)
class Row:
    """One logical row: its first line (0-based), how many lines it takes, and its cells, trimmed."""

    line: int
    span: int
    cells: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class Table:
    """How a text is cut: its rows, the first header row (None if none), the roles and headers of its columns.

    ``delimiter`` is empty where every line is free text.
    """

    delimiter: str
    rows: tuple[Row, ...]
    header: int | None
    roles: tuple[Role, ...]
    titles: tuple[str, ...] = ()


def lay_out(lines: Sequence[str]) -> Table:
    """Decide how ``lines`` are cut into columns and what the columns hold."""
    filled = [line for line in lines if line.strip()]
    for delimiter in _DELIMITERS:
        for row in _rows(lines, delimiter, most=_HEADER_WITHIN):
            roles = header_roles(row.cells)
            if roles:
                return Table(delimiter, tuple(_rows(lines, delimiter)), row.line, roles, row.cells)
    for delimiter in _DELIMITERS:
        if _is_tabular(filled, delimiter):
            rows = tuple(_rows(lines, delimiter))
            return Table(delimiter, rows, None, _judge_columns(rows, delimiter))
    plain = tuple(Row(index, 1, (_unquote(line),)) for index, line in enumerate(lines))
    return Table("", plain, None, (Role.FULL,))


def header_roles(cells: Sequence[str]) -> tuple[Role, ...] | None:
    """Return the role of each column if ``cells`` are a header row of two columns or more, else None.

    A header row names at least one part of a name, and at least half of its filled cells are known words.
    """
    filled = [cell for cell in cells if cell]
    if len(filled) < 2:
        return None
    known = [header_role(cell) for cell in cells]
    if sum(role is not None for role in known) * 2 < len(filled) or not NAME_ROLES.intersection(known):
        return None
    if sum(role is not None for role in known) < 2:
        return None
    if Role.GIVEN not in known and Role.FULL in known and Role.FAMILY in known:
        known = [Role.GIVEN if role is Role.FULL else role for role in known]
    return tuple(role or Role.OTHER for role in known)


def header_role(cell: str) -> Role | None:
    """Look a header cell up: whole, without a unit or bracket at its end, or by halves (``Family / Apellidos``)."""
    if len(cell) > 40:
        return None
    folded = fold(cell)
    tries = (folded, _UNIT_TAIL.sub("", folded), *folded.split("/"))
    return next((HEADER_WORDS[word] for word in map(fold, tries) if word in HEADER_WORDS), None)


def split_cells(line: str, delimiter: str) -> list[str] | None:
    """Cut a line; a cell that opens with a quotation mark runs to the closing one (RFC 4180).

    Returns None where a quoted cell is not closed in this line. A quotation mark inside a cell is text.
    """
    if delimiter == WIDE_SPACE:
        return re.split(r" {2,}", line.strip())
    if '"' not in line:
        return [" ".join(cell.split()) for cell in line.split(delimiter)]
    cells: list[str] = []
    at = 0
    while at <= len(line):
        closed = _quoted_cell(line, at, delimiter)
        if closed == -1:
            return None
        end = closed or line.find(delimiter, at)
        end = len(line) if end < 0 else end
        cells.append(_unquote(line[at:end]) if closed else " ".join(line[at:end].split()))
        at = end + 1
    return cells


def _quoted_cell(line: str, at: int, delimiter: str) -> int:
    """Return where a quoted cell that opens at ``at`` ends; 0 if it is not quoted, -1 if it is not closed."""
    start = at
    while line.startswith(" ", start):
        start += 1
    if not line.startswith('"', start):
        return 0
    close = start + 1
    while True:
        close = line.find('"', close)
        if close < 0:
            return -1
        if line.startswith('"', close + 1):
            close += 2
            continue
        end = close + 1
        while line.startswith(" ", end):
            end += 1
        if end == len(line) or line.startswith(delimiter, end):
            return end
        return 0


def _unquote(cell: str) -> str:
    cell = " ".join(cell.split())
    if len(cell) > 1 and cell[0] == cell[-1] == '"':
        return " ".join(cell[1:-1].replace('""', '"').split())
    return cell


def _rows(lines: Sequence[str], delimiter: str, most: int = 0) -> Iterable[Row]:
    """Yield the logical rows; ``most`` stops after that many filled ones."""
    index = filled = 0
    while index < len(lines) and not (most and filled >= most):
        span = 1
        cells = split_cells(lines[index], delimiter)
        if cells is None:
            cells, span = _join(lines, index, delimiter)
        yield Row(index, span, tuple(cells))
        filled += any(cells)
        index += span


def _join(lines: Sequence[str], index: int, delimiter: str) -> tuple[list[str], int]:
    """Join a quoted cell that runs over several lines; if it never closes, its mark is only text."""
    text = lines[index]
    for span in range(2, min(_MOST_JOINED, len(lines) - index) + 1):
        addition = lines[index + span - 1]
        text = f"{text} {addition}"
        cells = split_cells(text, delimiter) if '"' in addition else None
        if cells is not None:
            return cells, span
    return [" ".join(cell.replace('"', " ").split()) for cell in lines[index].split(delimiter)], 1


def _is_tabular(filled: Sequence[str], delimiter: str) -> bool:
    """Say whether most lines have columns: two or more, or for commas three or more on three lines."""
    least, share, lines = (3, 0.8, 3) if delimiter == "," else (2, 0.6, 1)
    if len(filled) < lines or (delimiter == WIDE_SPACE and any("," in line for line in filled)):
        return False
    count = sum(sum(map(bool, split_cells(line, delimiter) or ())) >= least for line in filled)
    return count >= share * len(filled)


def _judge_columns(rows: Sequence[Row], delimiter: str) -> tuple[Role, ...]:
    """Give each column of a table without a header its role, by what most of its cells hold."""
    width = min(max(len(row.cells) for row in rows), 64)
    columns = [
        [row.cells[at] for row in rows if at < len(row.cells) and row.cells[at]] for at in range(width)
    ]
    roles = [_judge_column(column) for column in columns]
    names = [at for at, role in enumerate(roles) if role is Role.FULL]
    for extra in names[2:]:
        roles[extra] = Role.OTHER
    if len(names) > 1:
        first, second = names[:2]
        swap = _family_evidence(columns[first]) - _family_evidence(columns[second])
        family_first = swap > 0 or (swap == 0 and delimiter == ",")
        roles[first], roles[second] = (Role.FAMILY, Role.GIVEN) if family_first else (Role.GIVEN, Role.FAMILY)
    return tuple(roles)


def _judge_column(column: Sequence[str]) -> Role:
    kinds = Counter(_kind(cell) for cell in column)
    if not kinds:
        return Role.OTHER
    kind, count = kinds.most_common(1)[0]
    return kind if count * 2 > len(column) else Role.FULL if kinds[Role.FULL] else Role.OTHER


def _kind(cell: str) -> Role:
    if any(char.isdigit() or char == "@" for char in cell) or not any(map(is_letter, cell)):
        return Role.OTHER
    folded = fold(cell)
    return Role.HAND if folded in HANDS else Role.SUPPORT if folded in SUPPORTS else Role.FULL


def _family_evidence(column: Sequence[str]) -> int:
    """Count what speaks for family names in a column, less what speaks for given names."""
    score = 0
    for cell in column:
        words = cell.split()
        opening = words[0].lower()
        score += len(words) > 1 and opening in PARTICLES
        score += opening.startswith(("o'", "o’", "mc"))
        score += len(cell) > 3 and is_all_capitals(cell)
        score -= "(" in cell or '"' in cell or "“" in cell
        score -= len(words) > 1 and fold(opening) in DOUBLE_STARTERS
    return score
