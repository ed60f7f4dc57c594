"""A check with the children across the top and one skill a row, into a line a child and a heading a skill.

The marks below the names are left out: they are nobody's name. Whether the names stand across the top or down the side
is told by the lists of names, else by words in small letters, which titles and skills have and names have not.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping, Sequence

from namewright.named_tuples import NamedTuple
from namewright.names.casing import begins_small, has_no_capitals
from namewright.names.clusters import is_letter
from namewright.names.particles import PARTICLES
from namewright.patterns import pattern
from namewright.roster.columns import WIDE_SPACE, split_cells
from namewright.roster.headers import header_role, header_roles, is_a_plain_date
from namewright.roster.heading_words import IN_A_ROOM
from namewright.roster.known import is_given
from namewright.roster.pasted import Line
from namewright.roster.shares import given_share
from namewright.roster.vocabulary import DAYS, MONTHS, NAME_ROLES, Role, fold

_DELIMITERS = ("\t", "|", ";", WIDE_SPACE, ",")
_WIDE = pattern(" {2,}")
_FEW = 2
_ENOUGH = 3  # names across; fewer titles of columns may happen to be names: Math, Art
_LONGEST_MARK = 2  # letters of a code: P, OK
_MOST_WORDS = 4  # of a name
_MOST_BELOW = 5  # rows under names that are counted above
_KINDS = 5  # words that are entered again and again in place of marks
_NEARLY, _MOSTLY, _HARDLY = 0.8, 0.6, 0.3


class _Row(NamedTuple):
    """Which line a row is on, its first cell, and the cells behind it."""

    at: int
    label: str
    cells: tuple[str, ...]


def from_names_across(lines: Sequence[Line]) -> list[Line]:
    """Return a line for each name of the top row, or the lines as they are where no names stand across."""
    for delimiter in _DELIMITERS:
        if sum(delimiter in line.text for line in lines) >= _FEW:
            rows = list(_rows(lines, delimiter))
            if rows and {Role.GIVEN, Role.FAMILY} <= set(header_roles((rows[0].label, *rows[0].cells)) or ()):
                continue  # a table with a row for each child
            rows = _without_corner(rows)
            top = next((row for row in rows if _are_names(row.cells, named=header_role(row.label) in NAME_ROLES)), None)
            tops = [row for row in rows if top and row.label == top.label and (
                row is top or _are_names(row.cells, least=1))]
            below = [row for row in rows if top and row.at > top.at and row not in tops]
            kept = [row for row in below if _is_of_the_child(row.label)]
            longest = max((len(row.cells) for row in below), default=0)
            if delimiter == "," and top and longest < _MOSTLY * len(top.cells):
                continue  # names in one line, over who signs it: Teacher, room 2
            if top and header_role(top.label) and kept:
                return list(_turned(lines, {row.at: row for row in rows}, top, kept))
            if (top and _is_listed(top, rows, below)) or (
                    tops and _stand_across([cell for row in tops for cell in row.cells if cell], below)):
                return list(_apart(lines, {row.at: row for row in rows}, tops))
    return list(lines)


def _rows(lines: Sequence[Line], delimiter: str) -> Iterator[_Row]:
    for at, line in enumerate(lines):
        if delimiter not in line.text:
            continue
        wide = delimiter == WIDE_SPACE  # a line that is set in has an empty first cell
        cells = _WIDE.split(line.text.rstrip()) if wide else split_cells(line.text, delimiter) or []
        if delimiter == "|" and cells and not cells[0] and line.text.lstrip().startswith("|"):
            cells = cells[1:]  # a table of Markdown has one at both ends
        closing = delimiter == "," and len(cells) == _FEW and not cells[1]  # Atenciosamente,
        if cells and not closing:
            yield _Row(at, cells[0], tuple(cells[1:]))


def _without_corner(rows: list[_Row]) -> list[_Row]:
    """Return the rows with an empty label before a first one of names alone, whose corner cell was left out."""
    if not rows:  # no line could be cut into cells: quotes that nobody closed
        return rows
    first, *below = rows
    names = (first.label, *first.cells)
    longest = max((len(row.cells) for row in below), default=0)
    cornered = first.label and (longest == len(names) or (longest < len(names) and is_given(first.label)))
    return [_Row(first.at, "", names), *below] if cornered and _are_names(names) and all(names) else rows


def _are_names(cells: Sequence[str], least: int = _FEW, *, named: bool = False) -> bool:
    """Say whether cells may hold a name each.

    Behind a title that is ``named`` for them Jun is no month, and Leandro Parent no title.
    """
    filled = [cell for cell in cells if cell]
    different = len(set(map(fold, filled))) > _MOSTLY * len(filled)
    names = sum(_may_be_a_name(cell) or (named and is_given(cell.split()[0]) and not _has_small_word(cell))
                for cell in filled)
    return len(filled) >= least and different and names >= _NEARLY * len(filled)


def _may_be_a_name(cell: str) -> bool:
    plain = any(map(is_letter, cell)) and not any(map(str.isdigit, cell)) and len(cell) > 1
    titled = plain and len(cell.split()) <= _MOST_WORDS and not _has_small_word(cell)
    return titled and fold(cell) not in DAYS | MONTHS and (header_role(cell) is None or is_given(cell))


def _has_small_word(cell: str) -> bool:
    return any(begins_small(word) and word not in PARTICLES for word in cell.split())


def _stand_across(names: Sequence[str], below: Sequence[_Row]) -> bool:
    """Say whether there are marks alone below the names, and no names down the side."""
    side = [row.label for row in below if any(map(is_letter, row.label))]
    if any(fold(label) in IN_A_ROOM for label in side):  # seats over a window
        return False
    if not side or not _are_marks([cell for row in below for cell in row.cells if cell]):
        return False
    across, down = given_share(names), given_share(side)
    if len(side) < _FEW:
        return across >= _NEARLY and len(names) >= _ENOUGH and not down
    phrases = sum(_has_small_word(label) or label.endswith("?") for label in side)
    if across >= _MOSTLY and down <= _HARDLY:
        return phrases > 0 or (across >= _NEARLY and len(names) >= _ENOUGH)
    return phrases > _MOSTLY * len(side) and down <= across


def _is_of_the_child(label: str) -> bool:
    """Say whether a row tells what is kept of each child: the other part of the name, the hand."""
    return header_role(label) not in (None, Role.OTHER)


def _is_listed(top: _Row, rows: Sequence[_Row], below: Sequence[_Row]) -> bool:
    """Say whether whole names with a title for them stand across, and few rows that tell of each of them below.

    They do where each is under a number or over a date, and where all the rows below have titles that are known. A
    register has numbers and skills over many rows of children: ``Fine motor`` is none.
    """
    names = [cell for cell in top.cells if cell]
    if len(names) < _ENOUGH or header_role(top.label) not in NAME_ROLES or (
            sum(" " in name for name in names) < _NEARLY * len(names)):
        return False
    if len(below) >= min(len(names), _MOST_BELOW):
        return False
    if sum("," in name for name in names) >= _NEARLY * len(names):  # no title has the family name first
        return True
    known = given_share(names) >= _MOSTLY
    dated = [row.label for row in below if sum(map(is_a_plain_date, row.cells)) == len(names)]
    if any(header_role(label) is Role.OTHER for label in dated):
        return True  # under each its birthday
    if not known and any(is_given(row.label) for row in below):
        return False
    return _are_counted(names, rows, top) or _have_titles(below, len(names), known)


def _are_counted(names: Sequence[str], rows: Sequence[_Row], top: _Row) -> bool:
    above = next((row.cells for row in rows if row.at < top.at), ())
    return [cell.strip(".) ") for cell in above if cell] == [str(at) for at in range(1, len(names) + 1)]


def _have_titles(below: Sequence[_Row], count: int, names: bool) -> bool:
    """Say whether all the rows have titles that are known, or one has dates alone under what is surely ``names``."""
    titled = [row for row in below if header_role(row.label) is Role.OTHER]
    dated = [row for row in below if count == sum(map(is_a_plain_date, row.cells))]
    all_titled = bool(titled) and len(titled) == len(below)
    return all_titled or any(names or row in titled for row in dated)


def _are_marks(cells: Iterable[str]) -> bool:
    """Say whether cells hold signs, codes, figures and small words, or a few words again and again."""
    words = [fold(cell) for cell in cells if not _is_mark(cell)]
    kinds = set(words)
    return not any(map(is_given, kinds)) and len(kinds) <= _KINDS and (not kinds or 2 * len(kinds) <= len(words))


def _is_mark(cell: str) -> bool:
    letters = sum(map(is_letter, cell))
    code = letters <= _LONGEST_MARK and not has_no_capitals(cell)  # a Chinese name has two signs
    return code or begins_small(cell) or any(map(str.isdigit, cell))


def _apart(lines: Sequence[Line], rows: Mapping[int, _Row], tops: Sequence[_Row]) -> Iterator[Line]:
    """Yield a line for each name, and every other line as a heading; below the rows lines stay as they are."""
    for at, line in enumerate(lines):
        row = rows.get(at)
        if row and row in tops:
            yield from (line.part(cell) for cell in row.cells if cell)
        elif row or at < tops[0].at:
            yield line._replace(text=_heading(row.label if row else line.text))
        else:
            yield line


def _turned(lines: Sequence[Line], rows: Mapping[int, _Row], top: _Row, kept: Sequence[_Row]) -> Iterator[Line]:
    """Yield a table whose titles stood down the side: the rows that are kept as columns, the others as headings."""
    for at, line in enumerate(lines):
        row = rows.get(at)
        if row and row is top:
            yield line._replace(text="\t".join((top.label, *(one.label for one in kept))))
            for place, name in enumerate(top.cells):
                cells = (one.cells[place] if place < len(one.cells) else "" for one in kept)
                if name:
                    yield line.part("\t".join((name, *cells)))
        elif row not in kept:
            yield line._replace(text=_heading(row.label)) if row else line


def _heading(text: str) -> str:
    bare = " ".join(text.split()).rstrip(": ")
    return f"{bare}:" if any(map(is_letter, bare)) else ""
