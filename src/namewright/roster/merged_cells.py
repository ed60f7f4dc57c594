"""The name of a group in the first cell of its first row alone, as a spreadsheet gives cells that were merged.

``Red table | Mia Vost``, and below `` | Leo Berg``: nearly every row opens with an empty cell, so these lines look like
plain names, and the group with its first child like a title. The group goes over its children. Out of scope: tables of
more columns that most rows fill (``contents``), and a family's name over its children (there both cells are parts of
one name).
"""

from __future__ import annotations

from collections.abc import Sequence

from namewright.named_tuples import NamedTuple
from namewright.names.casing import opens_as_a_name
from namewright.names.clusters import is_letter
from namewright.roster.beside import strip_numbering
from namewright.roster.columns import WIDE_SPACE, join_cells, split_cells
from namewright.roster.headers import header_role, is_about_somebody_else
from namewright.roster.heading_words import COLOURS
from namewright.roster.headings import heading_reason
from namewright.roster.known import is_family, opens_with_given
from namewright.roster.pasted import Line
from namewright.roster.shares import share
from namewright.roster.staff_blocks import heads_many_adults
from namewright.roster.vocabulary import fold

SIGNS = ("\t", ";", "|", ",", WIDE_SPACE)
_TWO = 2  # cells of a row, rows below the first child of a group
_MOST_ABOVE = 3
_NEARLY_ALL = 0.8
_LONGEST = 2_000


class _Row(NamedTuple):
    """What stands in the first cell of a row, in the second, and behind that as it is written."""

    group: str
    name: str
    rest: str = ""


def from_merged_cells(lines: list[Line]) -> list[Line]:
    """Return each group on a line over its children, or the lines as they are where no cells were merged."""
    if len(lines) > _LONGEST:
        return lines
    filled = [at for at, line in enumerate(lines) if any(map(is_letter, line.text))]
    for sign in SIGNS:
        first = next((at for at in filled[: _MOST_ABOVE + 1] if sign in lines[at].text.strip()), None)
        rows = {at: row for at in filled if first is not None and at >= first and (row := _row(lines[at].text, sign))}
        if rows and len(rows) == sum(at >= (first or 0) for at in filled) and _are_merged(list(rows.values())):
            return [each for at, line in enumerate(lines) for each in _apart(line, rows.get(at))]
    return lines


def _row(text: str, sign: str) -> _Row | None:
    """Return what the cells of a line are; None where nothing stands behind the sign."""
    cells = split_cells(text, sign) or []
    if sign == WIDE_SPACE and text.startswith(WIDE_SPACE):
        cells = ["", *cells]
    if len(cells) < _TWO or not any(cells):
        return None
    return _Row(cells[0], cells[1], join_cells(cells[2:], sign).strip() if any(cells[2:]) else "")


def _are_merged(rows: Sequence[_Row]) -> bool:
    """Say whether every group has its first child beside it and the others below, under an empty cell each."""
    both = [row for row in rows if row.group and row.name]
    below = [row for row in rows if not row.group]
    if not both or not rows[0].group or len(below) < max(_TWO, len(both)):
        return False
    if any(opens_as_a_name(row.rest) for row in rows):
        return False  # a further column may hold names as well
    named = [row.name for row in rows if row.name]
    whole = all(" " in name for name in named)
    if header_role(both[0].name) or not all(_may_be_a_group(row.group, whole=whole) for row in both):
        return False
    if not all(_may_be_a_child(row.name) for row in both) or share(
            map(_may_be_a_child, named)) < _NEARLY_ALL:
        return False
    single = not any(" " in name for name in named)
    return not single or not all(" " not in row.group and is_family(row.group) for row in both)  # Vost | Mia, Leo


def _may_be_a_group(text: str, *, whole: bool) -> bool:
    """Say whether words may be a group's name or its teacher's: no child, and no relative.

    Red is a child's name, too, but not beside whole names.
    """
    if whole and fold(text) in COLOURS:
        return True
    if (is_about_somebody_else(text) and not heads_many_adults(text)) or not any(map(is_letter, text)):
        return False
    return heading_reason(text) is not None or not opens_with_given(strip_numbering(text))


def _may_be_a_child(text: str) -> bool:
    bare = strip_numbering(text)
    return opens_as_a_name(bare) and not any(map(str.isdigit, bare))


def _apart(line: Line, row: _Row | None) -> Sequence[Line]:
    if row is None or not row.name:  # a group that has a row of its own
        return [line]
    text = f"{row.name}\t{row.rest}" if row.rest else row.name
    return [line.heading(row.group), line.part(text)] if row.group else [line._replace(text=text)]
