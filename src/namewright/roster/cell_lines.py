"""Rows of a table whose cells stand on lines of their own, as a page copied from a screen gives them, into rows again.

``Name``, ``Bus``, ``Mia Vost``, ``4``, ``Leo Berg``, ``7`` is a table of two columns and two rows. The titles stand
together over the first row, one of them over a name, and every row has as many lines. How many is told by empty lines
between rows, or by what comes again: one kind of line in so many is names and every other holds figures, words of care,
of relatives, or a few words again and again. Where nothing tells that, the lines stay as they are. Out of scope:
columns one under the other (``stacked``), and rows with labels before each cell (``forms``).
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import chain, groupby

from namewright.named_tuples import NamedTuple
from namewright.names.casing import begins_small
from namewright.names.clusters import is_letter
from namewright.patterns import pattern
from namewright.roster.beside import strip_numbering
from namewright.roster.care_words import CARE
from namewright.roster.headers import header_role, header_roles
from namewright.roster.headings import heading_reason
from namewright.roster.known import is_family
from namewright.roster.pasted import Line
from namewright.roster.several import may_be_a_name
from namewright.roster.shares import given_share, share
from namewright.roster.stacked import is_plain_title
from namewright.roster.vocabulary import NAME_ROLES, OTHER_PEOPLE, Role, fold

_MOST_COLUMNS = 8
_MOST_ABOVE, _MOST_BELOW = 4, 2  # lines over the titles and under the last row
_MOST_LINES = 5_000
_LONGEST = 60
_FEWEST = 2  # rows
_HALF, _MOSTLY, _NEARLY_ALL = 0.5, 0.6, 0.8
_PARTS = (["FULL"], ["GIVEN"], ["FAMILY", "GIVEN"], ["FULL", "GIVEN"])  # what the columns of a name hold
_FEW_NAMES = 0.3  # of the cells of a column of something else
_ROW = pattern(r"[\t;|]|,\S|,.*,|\S {2,}\S")


class _Cells(NamedTuple):
    """The lines over a table, its titles, what stands in each row, and the lines under it."""

    above: Sequence[Line]
    titles: Sequence[Line]
    rows: Sequence[Sequence[Line]]
    below: Sequence[Line]
    apart: bool

    def roles(self) -> tuple[Role, ...]:
        """Return what each column holds by its title; nothing where the titles are none."""
        return header_roles([line.text.strip() for line in self.titles]) or ()

    def column(self, at: int) -> list[str]:
        """Return the cells of a column."""
        return [row[at].text.strip() for row in self.rows if at < len(row)]


def from_cell_lines(lines: Sequence[Line]) -> list[Line]:
    """Return a line for each row under one of titles, or the lines as they are where they are no cells."""
    filled = [line for line in lines if line.text.strip()]
    if not 2 * _FEWEST < len(filled) <= _MOST_LINES or any("\t" in line.text for line in filled):
        return list(lines)
    first = next((at for at, line in enumerate(filled[:_MOST_ABOVE + _MOST_COLUMNS]) if _is_name_title(line)), None)
    if first is None:
        return list(lines)
    tried = chain(_by_blocks(lines), *(_by_size(filled, start) for start in range(first, -1, -1)))
    found = next(filter(_is_table, tried), None)
    return list(_in_rows(found)) if found else list(lines)


def _is_name_title(line: Line) -> bool:
    """Say whether a line is the title of a column with names, no row of titles and no count: ``Children (4)``."""
    if len(line.text) > _LONGEST or line.text.rstrip()[-2:-1].isdigit() or _ROW.search(line.text):
        return False
    return header_role(line.text.strip()) in NAME_ROLES


def _is_title(line: Line) -> bool:
    return len(line.text) <= _LONGEST and is_plain_title(line.text) and header_role(line.text.strip()) is not None


def _by_blocks(lines: Sequence[Line]) -> Iterator[_Cells]:
    """Yield the blocks between empty lines as rows, from the first that opens with titles on."""
    blocks = [list(block) for filled, block in groupby(lines, lambda line: bool(line.text.strip())) if filled]
    first = next((at for at, block in enumerate(blocks[:_MOST_ABOVE + 1])
                  if len(block) > 1 and any(map(_is_name_title, block))), None)
    if first is None or len(blocks) - first <= _FEWEST:
        return
    size, end = len(blocks[first]), len(blocks)
    while end > first and len(blocks[end - 1]) < size and len(blocks) - end < _MOST_BELOW and \
            heading_reason(blocks[end - 1][0].text):
        end -= 1
    above = [line for block in blocks[:first] for line in block]
    below = [line for block in blocks[end:] for line in block]
    if len(above) <= _MOST_ABOVE and size <= _MOST_COLUMNS:
        yield _Cells(above, blocks[first], blocks[first + 1:end], below, apart=True)


def _by_size(filled: Sequence[Line], start: int) -> Iterator[_Cells]:
    """Yield rows of two lines, of three and so on, the titles from a line on."""
    if start > _MOST_ABOVE:
        return
    end = len(filled)
    while end > start and len(filled) - end < _MOST_BELOW and heading_reason(filled[end - 1].text):
        end -= 1
    for size in range(2, _MOST_COLUMNS + 1):
        for last in dict.fromkeys((len(filled), end)):
            if last > start and (last - start) % size == 0:
                rows = [filled[at:at + size] for at in range(start, last, size)]
                yield _Cells(filled[:start], rows[0], rows[1:], filled[last:], apart=False)


def _is_table(cells: _Cells) -> bool:
    """Say whether one column holds names, or two the parts of one (``Prénom``, ``Nom``), and all others none."""
    roles = cells.roles()
    named = [at for at, role in enumerate(roles) if role in NAME_ROLES]
    parts = sorted(roles[at].name for at in named)
    counted = any(strip_numbering(line.text) != line.text.strip() for line in cells.titles)
    if counted or len(cells.rows) < _FEWEST or parts not in _PARTS:
        return False
    if any(len(row) > len(roles) or len(row) <= max(named) for row in cells.rows):
        return False
    if any(len(row) < len(roles) for row in cells.rows) and not {Role.OTHER, *NAME_ROLES}.issuperset(roles):
        return False  # whose cell is empty nobody knows, and one that counts would be read under another's title
    if not all(_are_names(cells.column(at)) for at in named):
        return False
    if any("," in line.text for line in cells.titles) and any("," in cell for at in named for cell in cells.column(at)):
        return False  # Children (4), over Vost, Mia
    names = [" ".join(row[at].text for at in named) for row in cells.rows]
    others = {at: cells.column(at) for at in range(len(roles)) if at not in named}
    sure = [at for at, column in others.items() if _are_no_names(column, names)]
    told = all(at in sure or ((cells.apart or sure) and _may_be_none(column, cells.titles[at]))
               for at, column in others.items())
    return bool(others or cells.apart) and told


def _may_be_none(column: Sequence[str], title: Line) -> bool:
    """Say whether a column of a table that is told by another may hold no children: by its title, or as some repeat."""
    return _is_title(title) or (given_share(column) <= _FEW_NAMES and len(set(map(fold, column))) < len(column))


def _are_names(column: Sequence[str]) -> bool:
    """Say whether the cells of a column may be names, hardly one of which comes twice, and none is a title."""
    kinds = {fold(cell) for cell in column}
    told = share(map(may_be_a_name, (strip_numbering(cell).replace(",", " ") for cell in column))) >= _NEARLY_ALL
    titled = any(header_role(cell) not in (None, Role.OTHER) and not is_family(cell) for cell in column)  # Kind is one
    small = share(map(begins_small, column)) >= _HALF
    return told and not titled and not small and len(kinds) >= _NEARLY_ALL * len(column)


def _are_no_names(column: Sequence[str], names: Sequence[str]) -> bool:
    """Say whether the cells of a column hold something else than names, by what they are or by how they are written."""
    bare = list(map(strip_numbering, column))  # numbered names have figures, too
    if share(any(map(str.isdigit, cell)) or not any(map(is_letter, cell)) for cell in bare) >= _NEARLY_ALL:
        return True
    words = [fold(cell).split() for cell in column]
    about = share(not (OTHER_PEOPLE | CARE).isdisjoint(each) for each in words) >= _HALF
    again = len({fold(cell) for cell in column}) <= _MOSTLY * len(column)
    small = share(map(begins_small, column)) >= _NEARLY_ALL and not any(map(begins_small, names))
    single = all(len(each) == 1 for each in words) and all(" " in fold(name) for name in names)
    return about or again or small or (single and given_share(column) <= _FEW_NAMES)


def _in_rows(cells: _Cells) -> Iterator[Line]:
    """Yield each row on one line, which is that of its name."""
    named = next(at for at, role in enumerate(cells.roles()) if role in NAME_ROLES)
    yield from cells.above
    for row in (cells.titles, *cells.rows):
        yield row[named]._replace(text="\t".join(line.text.strip() for line in row))
    yield from cells.below
