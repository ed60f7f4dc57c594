"""Sheets of labels or name cards, two or more to a row, into a line a child.

Where something stands on each label besides the name (class, school, table, bus), it is known by its place in the rows
that come again: what is the same there all over, or has figures, is nobody. Without that, each cell of three columns or
more is a child where all hold whole names and no two of a row share a word, as a parent's would; and of two, where
they are set apart by spaces alone. Out of scope: titled tables, and two names with a tab between (asked about).
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import groupby, zip_longest

from namewright.named_tuples import NamedTuple
from namewright.names.clusters import is_letter
from namewright.names.particles import PARTICLES
from namewright.patterns import pattern
from namewright.roster.capitals import is_titled
from namewright.roster.headers import header_role
from namewright.roster.pasted import Line
from namewright.roster.several import may_be_a_name
from namewright.roster.shares import given_share, share
from namewright.roster.vocabulary import NAME_ROLES, fold

_BETWEEN = pattern(r"\s*\t\s*|\s{2,}")
_MOST_COLUMNS, _MOST_ROWS, _MOST_WORDS = 8, 12, 5
_LONGEST = 400
_COMES_AGAIN, _HALF, _MOSTLY, _NEARLY_ALL = 0.35, 0.5, 0.6, 0.9
_SURELY = 3  # columns
_LINES = 2  # of a name in two parts


class _Row(NamedTuple):
    """A filled line, its cells, and whether these are all the same."""

    line: Line
    cells: tuple[str, ...]

    @property
    def same(self) -> bool:
        return len(self.cells) > 1 and len(set(map(fold, self.cells))) == 1


def from_label_sheets(lines: Sequence[Line]) -> list[Line]:
    """Return a line for each label of a sheet, or the lines as they are where they are none."""
    rows = [_Row(line, tuple(filter(None, _BETWEEN.split(line.text.strip())))) for line in lines]
    if not 1 < max((len(row.cells) for row in rows), default=0) <= _MOST_COLUMNS:
        return list(lines)
    if any(len(row.line.text) > _LONGEST or '"' in row.line.text or "|" in row.line.text for row in rows):
        return list(lines)
    above, labels = _above(rows)
    if any(header_role(cell) in NAME_ROLES for cell in labels[0].cells):
        return list(lines)
    blocks = _blocks(labels)
    if blocks and (len(blocks) > 1 or any(row.same for row in labels)) and (names := _places_of_names(blocks)):
        return [*(row.line for row in above), *(each for block in blocks for each in _of_block(block, names))]
    filled = [row for row in labels if row.cells]
    if _are_names_alone(filled):
        return [*(row.line for row in above), *(row.line.part(cell) for row in filled for cell in row.cells)]
    return list(lines)


def _above(rows: Sequence[_Row]) -> tuple[Sequence[_Row], Sequence[_Row]]:
    """Return the lines of one cell that stand over the first labels, and the others."""
    first = next(at for at, row in enumerate(rows) if len(row.cells) > 1)
    return rows[:first], rows[first:]


def _blocks(rows: Sequence[_Row]) -> list[list[_Row]]:
    """Return the rows of labels, each with the lines of its labels; none where they are not all of one height."""
    blocks = [list(block) for filled, block in groupby(rows, lambda row: bool(row.cells)) if filled]
    if len(blocks) == 1:
        blocks = _by_what_comes_again(blocks[0])
    height = len(blocks[0])
    even = all(len(block) == height and len({len(row.cells) for row in block}) == 1 for block in blocks)
    return blocks if even and 1 < height <= _MOST_ROWS else []


def _by_what_comes_again(rows: Sequence[_Row]) -> list[list[_Row]]:
    """Return rows without empty lines between as blocks: a new one begins where the first kind of row comes again."""
    same = {fold(row.cells[0]) for row in rows if row.same}
    kinds = [fold(row.cells[0]) if fold(row.cells[0]) in same else "" for row in rows]
    blocks: list[list[_Row]] = []
    for at, row in enumerate(rows):
        if at == 0 or (kinds[at] == kinds[0] and kinds[at - 1] != kinds[0]):
            blocks.append([])
        blocks[-1].append(row)
    return blocks


def _places_of_names(blocks: Sequence[Sequence[_Row]]) -> list[int]:
    """Return which rows of a block hold the names: one, or a given name over its family's; none if that is not sure."""
    places = [[cell for block in blocks for cell in block[at].cells] for at in range(len(blocks[0]))]
    beside = [_is_no_name(cells) for cells in places]
    names = [at for at, of in enumerate(beside) if not of]
    again = any(len(set(map(fold, cells))) == 1 < len(cells) for cells in places)
    single = len(names) == _LINES and again and all(" " not in cell for at in names for cell in places[at])
    named = share(may_be_a_name(cell) for at in names for cell in places[at]) >= _MOSTLY
    return names if (len(names) == 1 or single) and any(beside) and named else []


def _is_no_name(cells: Sequence[str]) -> bool:
    """Say whether the cells of one place on all labels are the same, come again, or have figures."""
    if share(any(map(str.isdigit, cell)) for cell in cells) >= _NEARLY_ALL:
        return True
    kinds = len(set(map(fold, cells)))
    return kinds == 1 < len(cells) or kinds <= _COMES_AGAIN * len(cells)


def _of_block(block: Sequence[_Row], names: Sequence[int]) -> Iterator[Line]:
    """Yield a line for each label of a row, and the rest of each as a heading."""
    named = [block[at] for at in names]
    for parts in zip_longest(*(row.cells for row in named), fillvalue=""):
        yield named[0].line.part(" ".join(filter(None, parts)))
    for at, row in enumerate(block):
        if at not in names and any(map(is_letter, row.line.text)):
            yield row.line.heading(" · ".join(dict.fromkeys(row.cells)))


def _are_names_alone(rows: Sequence[_Row]) -> bool:
    """Say whether every cell is a whole name, and nothing tells of grown-ups beside the children."""
    cells = [cell for row in rows for cell in row.cells]
    full = max(len(row.cells) for row in rows)
    tabs = any("\t" in row.line.text.strip() for row in rows)
    if any(len(row.cells) < full for row in rows[:-1]) or (tabs and full < _SURELY):
        return False
    if not all(map(_is_whole, cells)) or len(set(map(fold, cells))) < _NEARLY_ALL * len(cells):
        return False
    if any(header_role(cell) is not None for row in rows[:1] for cell in row.cells) or any(map(_shares_a_word, rows)):
        return False
    parted = all("," in cell for cell in cells)
    spaced = not tabs and len(rows) > 1 and all(len(cell.split()) == _LINES for cell in cells)
    return parted or given_share(cells) >= _HALF or full >= _SURELY or spaced


def _is_whole(cell: str) -> bool:
    bare = cell.replace(",", " ")
    if ":" in cell or cell.count(",") > 1 or not 1 < len(bare.split()) <= _MOST_WORDS:
        return False
    return may_be_a_name(bare) and is_titled(bare)


def _shares_a_word(row: _Row) -> bool:
    words = [set(map(fold, cell.replace(",", " ").split())) - PARTICLES for cell in row.cells]
    return len(set().union(*words)) < sum(map(len, words))
