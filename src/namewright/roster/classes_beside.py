"""Two classes side by side: a gap that is empty in each row taken out, and columns under names of classes apart.

With the gap gone, the same titles stand right beside each other, as other tables have it. Where every column has the
name of a class over it and nothing else, the classes are put one below the other, each under its name.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence

from namewright.roster.buddies import is_of_buddies
from namewright.roster.columns import join_cells, split_cells
from namewright.roster.further_rows import is_about_others
from namewright.roster.headers import are_sides, header_role
from namewright.roster.headings import heading_reason
from namewright.roster.known import opens_with_given
from namewright.roster.pasted import COLUMN_SIGNS, Line
from namewright.roster.shares import share
from namewright.roster.vocabulary import NAME_ROLES, fold

_FEWEST = 3  # rows
_MOST_LINES = 5_000
_NEARLY_ALL = 0.9


def from_classes_beside(lines: Sequence[Line]) -> list[Line]:
    """Return the rows of a table without columns that are empty in each, and classes that stand alone in columns."""
    for sign in COLUMN_SIGNS:
        found = {at: split_cells(line.text, sign) for at, line in enumerate(lines[:_MOST_LINES]) if sign in line.text}
        rows = {at: cells for at, cells in found.items() if cells}
        if len(rows) < max(_FEWEST, len(found)) or len(lines) > _MOST_LINES:
            continue
        filled = sorted({place for cells in rows.values() for place, cell in enumerate(cells) if cell})
        if filled and _are_classes(rows, filled):
            return list(_one_by_one(lines, rows, filled))
        gaps = set(range(filled[0], filled[-1])) - set(filled) if filled else set()
        if gaps:
            return [line._replace(text=join_cells(
                [cell for place, cell in enumerate(rows[at]) if place not in gaps], sign)) if at in rows else line
                for at, line in enumerate(lines)]
    return list(lines)


def _are_classes(rows: Mapping[int, Sequence[str]], filled: Sequence[int]) -> bool:
    """Say whether the first row names a class over each column, and names of several words stand below."""
    titles, *others = rows.values()
    heads = [titles[place] if place < len(titles) else "" for place in filled]
    names = [cell for cells in others for cell in cells if cell]
    if are_sides(heads):  # read so in the order of the rows
        return False
    named = all(head and _names_a_class(head) for head in heads) and len(set(map(fold, heads))) == len(heads) > 1
    return named and len(names) >= _FEWEST and share(" " in name for name in names) >= _NEARLY_ALL and not any(
        any(map(str.isdigit, name)) for name in names)


def _names_a_class(head: str) -> bool:
    """Say whether a cell is about a class and its room or teacher, and titles no column."""
    role, counted = header_role(head), len(head.split()[-1]) == 1 and " " in head  # Room 4, Klasse A
    titles = role in NAME_ROLES or (role is not None and not counted)
    about = heading_reason(head) is not None or (counted and role is not None)
    if any(is_of_buddies(fold(word)) for word in head.split()):
        return False
    return about and not titles and not is_about_others(head) and (counted or not opens_with_given(head))


def _one_by_one(lines: Sequence[Line], rows: Mapping[int, Sequence[str]], filled: Sequence[int]) -> Iterator[Line]:
    """Yield what stands above, each class with its heading, and what stands below."""
    top, last = min(rows), max(rows)
    yield from lines[:top]
    for place in filled:
        cells = [(at, row[place]) for at, row in rows.items() if place < len(row) and row[place]]
        yield from (lines[at].heading(cell) if at == top else lines[at].part(cell) for at, cell in cells)
    yield from (line for at, line in enumerate(lines) if at not in rows and (at > last or (at > top and line.text)))
