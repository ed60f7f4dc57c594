"""Lists side by side in one table, each with its own numbers, into one after the other.

A list is a column that counts 1, 2, 3 from the first row on, or goes on from the list before it, with names behind each
number and nothing else. What stands right above a list is its heading.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import pairwise

from namewright.named_tuples import NamedTuple
from namewright.names.clusters import is_letter
from namewright.patterns import pattern
from namewright.roster.columns import split_cells
from namewright.roster.contents import names_in
from namewright.roster.further_rows import is_about_others
from namewright.roster.known import is_given
from namewright.roster.pasted import Line

_DELIMITERS = ("\t", ";", "|", ",")
_NUMBER = pattern(r"\(?(\d{1,3})[.)]?")
_FEWEST = 3  # names of all lists together


class _Row(NamedTuple):
    at: int
    cells: tuple[str, ...]


def from_numbered(lines: Sequence[Line]) -> list[Line]:
    """Return the lists one after the other, or the lines as they are where no two with numbers stand side by side."""
    for delimiter in _DELIMITERS:
        rows = [_Row(at, tuple(split_cells(line.text, delimiter) or ())) for at, line in enumerate(lines)
                if delimiter in line.text]
        top = next((at for at, row in enumerate(rows) if any(map(_NUMBER.fullmatch, row.cells))), None)
        if top is None:
            continue
        body = [row for row in rows[top:] if any(row.cells)]
        starts = _counted(body)
        if len(starts) > 1 and _hold_names(body, starts):
            above = rows[top - 1] if top else None
            if above is None or not any(map(is_about_others, above.cells)):
                return list(_one_by_one(lines, above, body, starts, delimiter))
    return list(lines)


def _counted(body: Sequence[_Row]) -> list[int]:
    """Return the columns that count their rows, from one or from where the one before ended."""
    found, last = [], 0
    for at in range(max(len(row.cells) for row in body)):
        numbers = list(_numbers([row.cells[at] if at < len(row.cells) else "" for row in body]))
        if numbers and numbers[0] in {1, last + 1} and numbers == list(range(numbers[0], numbers[0] + len(numbers))):
            found.append(at)
            last = numbers[-1]
    return found


def _numbers(column: Sequence[str]) -> Iterator[int]:
    """Yield the numbers of a column from its top on; none where it holds something else or has a gap."""
    filled = [cell for cell in column if cell]
    matches = [match for cell in column[: len(filled)] if (match := _NUMBER.fullmatch(cell))]
    if len(matches) == len(filled):
        yield from (int(match[1]) for match in matches)


def _hold_names(body: Sequence[_Row], starts: Sequence[int]) -> bool:
    """Say whether all lists hold names alone, one behind each number, and nothing stands before the first."""
    parts = [part for start, end in _spans(starts) for row in body if any(part := row.cells[start:end])]
    cells = [cell for _, *behind in parts for cell in behind if cell]
    before = any(any(row.cells[: starts[0]]) for row in body)
    whole = all(number and any(behind) for number, *behind in parts)
    named = all(names_in([cell]) or is_given(cell) for cell in cells)  # Nino may stand for a boy in a column, too
    return not before and whole and len(parts) >= _FEWEST and named


def _spans(starts: Sequence[int]) -> list[tuple[int, int | None]]:
    return [*pairwise(starts), (starts[-1], None)]


def _one_by_one(
    lines: Sequence[Line], above: _Row | None, body: Sequence[_Row], starts: Sequence[int], delimiter: str
) -> Iterator[Line]:
    """Yield what stands above, each list under its heading, and what stands between and below."""
    first = above.at if above else body[0].at
    yield from lines[:first]
    for start, end in _spans(starts):
        title = " ".join(filter(None, above.cells[start:end])) if above else ""
        if above and any(map(is_letter, title)):
            yield lines[above.at].heading(title)
        for row in body:
            if name := delimiter.join(filter(None, row.cells[start:end][1:])):
                yield lines[row.at].part(name)
    rows = {row.at for row in body}
    yield from (line for at, line in enumerate(lines) if at > first and at not in rows)
