"""A plan of seats, in which every cell is a child and the board and the door are none, into a line a child.

An empty column between filled ones is an aisle. Seats are read so where the names are known as given names, or where
the board, a door or a free seat says that it is a plan; on a shelf of pegs free places alone do.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import pairwise

from namewright.named_tuples import NamedTuple
from namewright.names.casing import opens_as_a_name
from namewright.names.clusters import is_letter
from namewright.patterns import pattern
from namewright.roster.columns import WIDE_SPACE, split_cells
from namewright.roster.headers import header_roles
from namewright.roster.heading_words import FREE_SEATS, IN_A_ROOM
from namewright.roster.known import is_given, lean, opens_with_given
from namewright.roster.pasted import Line
from namewright.roster.shares import given_share
from namewright.roster.vocabulary import fold

_DRAWN = pattern(r"\[[^\[\]]*\]|\([^()]*\)")
_DRAWN_ROW = pattern(r"(?:\s*(?:\[[^\[\]]*\]|\([^()]*\)))+\s*", needs="[(")
_BETWEEN = pattern(r"\s*[/&+]\s*")
_FIGURES = pattern(r"\d{1,6}")
_DELIMITERS = ("\t", "|", ";", WIDE_SPACE, ",")
_MOST_WORDS = 3  # of a name
_LEAST = 3  # columns of seats where only their names tell
_ENOUGH = 4  # rows that tell of a column
_MOSTLY, _HALF, _NEARLY_ALL = 0.6, 0.5, 0.9
_FAMILIES = -0.2  # mean lean of a column of family names


class _Seats(NamedTuple):
    """The cells of every line, which lines are rows of seats, and in which columns these have any."""

    cells: Sequence[Sequence[str]]
    rows: Sequence[int]
    columns: Sequence[int]

    @property
    def aisle(self) -> bool:
        return any(column - before > 1 for before, column in zip(self.columns, self.columns[1:], strict=False))

    def column(self, at: int) -> list[str]:
        """Return the filled cells of a column."""
        return [self.cells[row][at] for row in self.rows if len(self.cells[row]) > at and self.cells[row][at]]


def from_seats(lines: Sequence[Line]) -> list[Line]:
    """Return a line for each child of a plan of seats, or the lines as they are where they are none."""
    if bracketed := _in_brackets(lines):
        return bracketed
    for delimiter in _DELIMITERS:
        if any(delimiter in line.text for line in lines):
            seats = _seats([split_cells(line.text, delimiter) or [line.text] for line in lines])
            if seats.rows and _is_plan(seats):
                return list(_apart(lines, seats))
    return list(lines)


def _in_brackets(lines: Sequence[Line]) -> list[Line]:
    """Return a line for each child of ``[Mira] [Tilo]``, nothing where most lines are no such rows of names."""
    drawn = [_DRAWN.findall(line.text) if _DRAWN_ROW.fullmatch(line.text) else [] for line in lines]
    seats = [cell[1:-1].strip() for row in drawn for cell in row]
    rows = [row for row in drawn if row]
    if not any(len(row) > 1 for row in rows) or 2 * len(rows) < sum(bool(line.text.strip()) for line in lines):
        return []
    if not all(_may_be_a_name(cell) for cell in seats if not _is_free(cell)):
        return []
    return [each for line, row in zip(lines, drawn, strict=True) for each in (
        _sitting(line, [cell[1:-1].strip() for cell in row]) if row else (line,))]


def _sitting(line: Line, cells: Sequence[str]) -> Iterator[Line]:
    """Yield a line for each child of a row of seats, or its words as a heading where nobody sits in it."""
    children = [cell for cell in cells if not _is_free(cell)]
    for cell in children:
        yield line.part(cell) if len(cells) > 1 else line._replace(text=cell)
    if not children:
        yield line.heading(" · ".join(filter(None, cells)))


def _seats(cells: Sequence[Sequence[str]]) -> _Seats:
    rows = [at for at, row in enumerate(cells) if sum(map(bool, row)) > 1]
    if _are_row_numbers([cells[at][0] for at in rows]):
        numbered = set(rows)
        cells = [["", *row[1:]] if at in numbered else row for at, row in enumerate(cells)]
    return _Seats(cells, rows, sorted({at for row in rows for at, cell in enumerate(cells[row]) if cell}))


def _are_row_numbers(cells: Sequence[str]) -> bool:
    """Say whether first cells name the rows of a plan: all in one word, ``Row 1``, or numbers that count on."""
    numbers = [int(match[0]) if (match := _FIGURES.search(cell)) else -1 for cell in cells]
    steps = {two - one for one, two in pairwise(numbers)}
    words = {fold(_FIGURES.sub("", cell)) for cell in cells}
    worded = len(words) == 1 and any(map(is_letter, cells[0]))  # else it is a name behind a number: 19 - Vost, Mira
    lone = not any(is_letter(char) for word in words for char in word)
    return min(numbers, default=-1) >= 0 and (worded or (lone and steps in ({1}, {-1}, set())))


def _is_plan(seats: _Seats) -> bool:
    said = any(any(row) and all(_is_in_a_room(cell) for cell in row if cell) for row in seats.cells)
    columns = [seats.column(at) for at in seats.columns]
    wide = seats.aisle and len(columns) >= _LEAST
    shelf = sum(any(map(_is_said_to_be_free, column)) for column in columns) if len(columns) >= _LEAST else 0
    if not (wide or said or shelf):
        return False
    names = [cell for column in columns for cell in column if not _is_free(cell)]
    if not names or not all(map(_may_be_a_name, names)) or any(header_roles(seats.cells[row]) for row in seats.rows):
        return False
    if wide and said:
        return True
    single = said and _are_all_different(names) and not any(" " in name for name in names)
    short = single and len(seats.rows) < _ENOUGH
    taken = [column for column in columns if not all(map(_is_free if said else _is_said_to_be_free, column))]
    empty = said or len(taken) >= _LEAST  # a column may have nobody in it
    if not all(_are_children(column, few=short) for column in (taken if empty else columns)):
        return False
    free = any(_is_free(cell) for column in columns for cell in column)
    if single and len(columns) >= _LEAST:
        return True  # under a board no row is one child with its family
    known = _given(names) >= _MOSTLY and (short or all(_given(column) >= _HALF for column in columns))
    drawn = any(_is_said_to_be_free(cell) and not cell[0].isupper() for column in columns for cell in column)
    shelved = shelf > 1 or (drawn and len(columns) > _LEAST)  # whoever they are, they sit there
    return (wide and (known or free)) or (known and bool(said or shelf)) or (shelved and _are_all_different(names))


def _are_all_different(names: Sequence[str]) -> bool:
    """Say whether cells hold a name each and hardly one again, as no column of a table about children does."""
    return len(set(map(fold, names))) >= _NEARLY_ALL * len(names) and all(map(opens_as_a_name, names))


def _are_children(column: Sequence[str], *, few: bool) -> bool:
    """Say whether a column may be of seats: not all of them free, no family names, and no few words again and again.

    Of ``few`` names some are families by chance.
    """
    names = [cell for cell in column if not _is_free(cell)]
    again = len(column) >= _ENOUGH and 2 * len(set(map(fold, column))) <= len(column)
    families = sum(lean(name.split()[0]) for name in names) < _FAMILIES * len(names)
    return bool(names) and not again and (few or not families)


def _given(cells: Sequence[str]) -> float:
    return given_share(cell for cell in cells if not _is_free(cell))


def _may_be_a_name(cell: str) -> bool:
    return any(map(is_letter, cell)) and not any(map(str.isdigit, cell)) and len(cell.split()) <= _MOST_WORDS


def _is_free(cell: str) -> bool:
    if not any(map(is_letter, cell)):
        return True
    return (_bare(cell) in FREE_SEATS or _is_in_a_room(cell)) and not (cell.istitle() and is_given(cell))  # Gang


def _is_said_to_be_free(cell: str) -> bool:
    return any(map(is_letter, cell)) and len(_bare(cell)) > 1 and _bare(cell) in FREE_SEATS and _is_free(cell)


def _is_in_a_room(cell: str) -> bool:
    """Say whether a cell is the board, a door or a window, or two of these: ``FRONT / BOARD``."""
    parts = list(filter(None, _BETWEEN.split(cell)))
    marked = "aisle" in fold(cell) and "aisle" not in cell.lower()  # Aislé is a child
    return bool(parts) and not marked and all(_bare(part) in IN_A_ROOM for part in parts)


def _bare(cell: str) -> str:
    return fold(cell.strip("()[]{}<>*=_–—- ").replace("’", "'"))


def _apart(lines: Sequence[Line], seats: _Seats) -> Iterator[Line]:
    """Yield a line for each child of a row, and what stands in the room as a heading."""
    for at, line in enumerate(lines):
        filled = [cell for cell in seats.cells[at] if cell]
        children = [cell for cell in filled if not _is_free(cell)]
        if at in seats.rows or (children and _is_seat(at, seats)):
            yield from _sitting(line, filled)
        else:
            text = " ".join(filled)
            titled = text and not (children and opens_with_given(text))
            yield line.heading(text) if titled and any(map(is_letter, text)) else line._replace(text=text)


def _is_seat(at: int, seats: _Seats) -> bool:
    """Say whether a line of one cell is a row: between others, or right below them and in a column of seats."""
    cells = seats.cells[at]
    if seats.rows[0] < at < seats.rows[-1]:
        return True
    column = next(place for place, cell in enumerate(cells) if cell)
    return at == seats.rows[-1] + 1 and column in seats.columns
