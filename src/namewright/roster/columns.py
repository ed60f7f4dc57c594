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
from namewright.names.particles import PARTICLES
from namewright.roster.headers import header_roles
from namewright.roster.vocabulary import CODES, DOUBLE_STARTERS, HANDS, NAME_ROLES, SUPPORTS, TITLES, Role, fold

WIDE_SPACE = "  "
"""Stands for columns made of two spaces or more."""
_DELIMITERS = ("\t", ";", "|", WIDE_SPACE, ",")
_HEADER_WITHIN = 10
_MAX_JOINED = 20
_NUMBERED = re.compile(r"\d{1,3}[.)]\s*(?=\D+$)")
_OUTLINE = re.compile(r"[a-zA-Z][.)]")
_SHEET_SIGNS = ("#REF!", "#N/A", "#NAME?", "#VALUE!", "#DIV/0!", "#NULL!", "#NUM!", "=")
"""How a cell begins that holds an error or a formula of a spreadsheet and not its value."""


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
            if len(filled) == 1 and _names_in(rows) > 2:
                lines = [", ".join(row.cells) for row in rows]  # one line of several names is no table
                break
            roles = _judge_columns(rows, delimiter)
            if NAME_ROLES.intersection(roles):
                return Table(delimiter, rows, None, roles)
    plain = tuple(Row(index, 1, (_unquote(line),)) for index, line in enumerate(lines))
    return Table("", plain, None, (Role.FULL,))


def _names_in(rows: Sequence[Row]) -> int:
    return sum(_kind(cell) is Role.FULL for row in rows for cell in row.cells if cell)


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
    for span in range(2, min(_MAX_JOINED, len(lines) - index) + 1):
        addition = lines[index + span - 1]
        text = f"{text} {addition}"
        cells = split_cells(text, delimiter) if '"' in addition else None
        if cells is not None:
            return cells, span
    return [" ".join(cell.replace('"', " ").split()) for cell in lines[index].split(delimiter)], 1


def _is_tabular(filled: Sequence[str], delimiter: str) -> bool:
    """Say whether the lines have columns.

    A tab on any line is one; otherwise most lines must have two cells or more, or for commas three or more on
    three lines, since ``Family, Given`` has one comma. Quoted cells (``"Moss, Katie",K``) make two enough.
    """
    least, share, lines = {"\t": (2, 0.0, 1), ",": (3, 0.8, 3)}.get(delimiter, (2, 0.6, 1))
    if delimiter == "," and all(line.lstrip().startswith('"') for line in filled):
        least, lines = 2, 1
    if len(filled) < lines or (delimiter == WIDE_SPACE and any("," in line for line in filled)):
        return False
    count = sum(sum(map(bool, split_cells(line, delimiter) or ())) >= least for line in filled)
    return count > 0 and count >= share * len(filled)


def is_sheet_sign(cell: str) -> bool:
    """Say whether a cell holds a formula or an error of a spreadsheet."""
    return cell.startswith(_SHEET_SIGNS)


def _judge_columns(rows: Sequence[Row], delimiter: str) -> tuple[Role, ...]:
    """Give each column of a table without a header its role, by what most of its cells hold."""
    width = min(max(len(row.cells) for row in rows), 64)
    columns = [
        [row.cells[at] for row in rows if at < len(row.cells) and row.cells[at]] for at in range(width)
    ]
    roles = [_judge_column(column) for column in columns]
    names = [at for at, role in enumerate(roles) if role is Role.FULL]
    few = max((len(columns[at]) for at in names), default=0) / 2
    names = [at for at in names if len(columns[at]) >= few]
    if len(names) > 1:
        first, second = names[:2]
        roles[first], roles[second] = _judge_pair(columns[first], columns[second], delimiter)
    for at, role in enumerate(roles):
        if role is Role.FULL and at not in names[:1]:
            roles[at] = Role.OTHER
    return tuple(roles)


def _judge_pair(first: Sequence[str], second: Sequence[str], delimiter: str) -> tuple[Role, Role]:
    """Judge the first two columns of names: two parts of one name, or a whole name and somebody else's."""
    if _mostly("," in cell.strip(",") for cell in first) or _share_words(first, second):
        return Role.FULL, Role.OTHER
    swap = _family_evidence(first) - _family_evidence(second)
    family_first = swap > 0 or (swap == 0 and delimiter == ",")
    return (Role.FAMILY, Role.GIVEN) if family_first else (Role.GIVEN, Role.FAMILY)


def _share_words(first: Sequence[str], second: Sequence[str]) -> bool:
    """Say whether most rows repeat a word, as a child's whole name and a parent's do."""
    pairs = [(fold(one).split(), fold(two).split()) for one, two in zip(first, second, strict=False)]
    return len(first) == len(second) and _mostly(
        len(one) > 1 and len(two) > 1 and not PARTICLES.issuperset(set(one) & set(two)) for one, two in pairs
    )


def _mostly(answers: Iterable[bool]) -> bool:
    found = tuple(answers)
    return 2 * sum(found) > len(found)


def _judge_column(column: Sequence[str]) -> Role:
    kinds = Counter(map(_kind, column))
    if not kinds:
        return Role.OTHER
    kind, count = kinds.most_common(1)[0]
    return kind if count * 2 > len(column) else Role.FULL if kinds[Role.FULL] else Role.OTHER


def _kind(cell: str) -> Role:
    cell = _NUMBERED.sub("", cell)
    if any(char.isdigit() or char == "@" for char in cell) or not any(map(is_letter, cell)):
        return Role.OTHER
    folded = fold(cell)
    if folded in HANDS or folded in SUPPORTS:
        return Role.HAND if folded in HANDS else Role.SUPPORT
    about = folded in CODES or _OUTLINE.fullmatch(cell) or folded.split()[0].strip(".") in TITLES
    return Role.OTHER if about or is_sheet_sign(cell) else Role.FULL


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
