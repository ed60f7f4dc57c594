"""Columns of a table that stand one under the other, as a page copied out of a PDF gives them, into rows again.

Titles that are known from tables stand at equal distances: each heads as many lines as the next. Read so only where
they name the parts of a name, or one name beside columns that hold none. Where columns have different numbers of lines
(an empty cell leaves none) nothing tells which belong together: the given names are children, and the others are told.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import pairwise, takewhile

from namewright.message import message
from namewright.named_tuples import NamedTuple
from namewright.names.casing import opens_as_a_name
from namewright.names.clusters import is_letter
from namewright.patterns import pattern
from namewright.roster.beside import strip_numbering
from namewright.roster.headers import header_role, header_roles
from namewright.roster.headings import heading_reason
from namewright.roster.known import is_known, lean
from namewright.roster.pasted import Line
from namewright.roster.shares import given_share
from namewright.roster.vocabulary import HANDS, NAME_ROLES, OTHER_PEOPLE, Role, fold

_DASH = pattern(r"\s+[-–—]\s+")
_LONGEST_TITLE = 40
_MOST_TITLES = 24  # more of them are no columns of one list, and each is held against the others
_MOST_LINES = 5_000
_MOST_BETWEEN = 4  # columns, between two whose titles are known
_CODE = 2  # letters
_FIGURES = 3  # of a number that counts
_LEAST = 3  # lines of a column with its title
_FEW_NAMES = 0.3  # of the cells of a column that holds something else


class _Stack(NamedTuple):
    """Columns of one table: where the first title stands, how far it is to the next, and what each holds."""

    start: int
    step: int
    columns: tuple[tuple[str, ...], ...]

    @property
    def end(self) -> int:
        return self.start + self.step * len(self.columns)

    @property
    def titles_inside(self) -> int:
        return sum(_is_title(cell) for _, *cells in self.columns for cell in cells)


class _Column(NamedTuple):
    """A column that stands by itself: where its title is, and its lines with the title."""

    start: int
    cells: tuple[Line, ...]


def from_stacked_columns(lines: Sequence[Line]) -> list[Line]:
    """Return the columns as rows under a line of titles, or the lines as they are where none stand so."""
    filled = [line for line in lines if line.text.strip()]
    if len(filled) > _MOST_LINES:
        return list(lines)
    titles = [at for at, line in enumerate(filled) if _is_title(line.text)]
    if not titles and (numbered := _below_numbers(filled)):
        return numbered
    if not 1 < len(titles) <= _MOST_TITLES:
        return list(lines)
    found: list[_Stack] = []
    for start in titles:
        if not found or found[-1].end <= start:
            stacks = _stacks(filled, start, titles)
            found += sorted(stacks, key=lambda each: (-each.end, each.titles_inside))[:1]
    uneven = _uneven(filled, titles) if not found or _goes_on(filled, found, titles) else []
    if uneven:
        return list(_apart(filled, uneven))
    return list(_in_rows(filled, found)) if found else list(lines)


def _goes_on(filled: Sequence[Line], stacks: Sequence[_Stack], titles: Sequence[int]) -> bool:
    """Say whether titles or names stand outside all columns that were found, so that one of these was cut."""
    outside = [at for at in titles if not any(stack.start <= at < stack.end for stack in stacks)]
    behind = stacks[-1].end
    names = header_role(stacks[-1].columns[-1][0]) in NAME_ROLES and behind < len(filled)
    return bool(outside) or (names and _is_cell(filled[behind].text))


def _is_cell(text: str) -> bool:
    """Say whether a line may be one more cell of a column of names."""
    return any(map(is_letter, text)) and not _is_title(text) and heading_reason(text) is None


def _uneven(filled: Sequence[Line], titles: Sequence[int]) -> list[_Column]:
    """Return columns of different lengths, one of the names of the children, none where these are no columns."""
    heads = [at for at, end in pairwise((*titles, len(filled))) if at == titles[0]
             or not _may_be_a_name(filled[at].text.strip()) or _are_codes(filled[at + 1 : end])]
    last = len(filled)
    while last > heads[-1] + 1 and heading_reason(filled[last - 1].text):
        last -= 1
    columns = [_Column(at, tuple(filled[at:end])) for at, end in pairwise((*heads, last))]
    named = [column.cells[0].text.strip() for column in columns]
    roles = header_roles(named)
    if roles is None or len(set(map(fold, named))) < len(named) or len({len(one.cells) for one in columns}) < 2:
        return []
    if roles.count(Role.GIVEN) + roles.count(Role.FULL) != 1 or (Role.FULL in roles and Role.FAMILY in roles):
        return []  # none, or groups of children: Niños, Niñas
    others = [[line.text for line in one.cells[1:]] for one, role in zip(columns, roles, strict=True)
              if role not in NAME_ROLES]
    return columns if all(len(one.cells) > 1 for one in columns) and not any(map(_are_names, others)) else []


def _are_codes(lines: Sequence[Line]) -> bool:
    """Say whether lines hold hands, figures or a few letters, and no names: ``Hand`` is a title over them."""
    cells = [line.text.strip() for line in lines]
    return bool(cells) and all(
        len(cell) <= _CODE or fold(cell) in HANDS or any(map(str.isdigit, cell)) for cell in cells)


def _below_numbers(filled: Sequence[Line]) -> list[Line]:
    """Return the names below a column of numbers as rows of two, where there are twice as many; nothing where not.

    Where there are nearly as many, the given names are children and the others are told.
    """
    count = sum(1 for _ in takewhile(lambda pair: _number(pair[1].text) == pair[0], enumerate(filled, 1)))
    cells = [line for line in filled[count:] if heading_reason(line.text) is None]
    names = [line.text.strip() for line in cells]
    single = [" " not in name and any(map(is_letter, name)) for name in names]
    if count < _LEAST or not 1.5 * count <= len(names) <= 2 * count or not all(single):
        return []
    halves = names[:count], names[count:]
    leads = [sum(map(lean, half)) / len(half) for half in halves]
    above = [line for line in filled[count:] if line not in cells]
    if len(names) == 2 * count and abs(leads[0] - leads[1]) >= 1:
        given = leads[1] > leads[0]
        return [*above, *(cells[given * count + row]._replace(text=f"{halves[given][row]}\t{halves[not given][row]}")
                          for row in range(count))]
    told = message("roster.uneven", title=f"1–{count}", lines=count, most=len(names))
    return [line if lean(line.text.strip()) > 0 or line not in cells else
            line.heading(line.text, told) for line in filled[count:]]


def _number(text: str) -> int:
    bare = text.strip().rstrip(".)")
    return int(bare) if bare.isdecimal() and len(bare) <= _FIGURES else 0


def _apart(filled: Sequence[Line], columns: Sequence[_Column]) -> Iterator[Line]:
    """Yield the children’s names, with what stands in columns of as many lines; the others are told as headings."""
    roles = header_roles([column.cells[0].text.strip() for column in columns]) or ()
    at = roles.index(Role.GIVEN if Role.GIVEN in roles else Role.FULL)
    size = len(columns[at].cells)
    beside = [column for column in columns if len(column.cells) == size]
    yield from (line for line in filled[: columns[0].start] if any(map(is_letter, line.text)))
    for column in columns:
        if column is columns[at]:
            for row, line in enumerate(column.cells):
                yield line._replace(text="\t".join(one.cells[row].text.strip() for one in beside))
        elif column not in beside:
            title = column.cells[0].text.strip().rstrip(" :")
            told = message("roster.uneven", title=title, lines=len(column.cells) - 1, most=size - 1)
            yield from (line.heading(line.text, told) for line in column.cells
                        if any(map(is_letter, line.text)))
    yield from filled[columns[-1].start + len(columns[-1].cells) :]


def _is_title(text: str) -> bool:
    if len(text) > _LONGEST_TITLE or "\t" in text or not is_plain_title(text):
        return False
    role = header_role(text.strip().rstrip(" :"))
    return role is not None and not (role is Role.OTHER and _is_a_child(text))


def is_plain_title(text: str) -> bool:
    """Say whether a line has no number in front, no colon inside, and no name and a dash before a word of titles.

    ``4. Vost, Mira – brother`` is a child, and ``Aide: teacher Vost`` a label.
    """
    bare = text.strip().rstrip(" :")
    before = _DASH.split(bare, maxsplit=1)[0]
    return strip_numbering(bare) == bare and ": " not in bare and (before == bare or header_role(before) is not None)


def _is_a_child(text: str) -> bool:
    """Say whether a given name stands beside a word of titles, which may be a family: ``DOCTOR Bina``."""
    words = text.split()
    return len(words) > 1 and any(lean(word) > 0 and opens_as_a_name(word) for word in words)


def _may_be_a_name(title: str) -> bool:
    """Say whether a title that stands inside a column may be a name: Kind is a family, Mama a child."""
    return is_known(title) or fold(title) in OTHER_PEOPLE


def _stacks(filled: Sequence[Line], start: int, titles: Sequence[int]) -> Iterator[_Stack]:
    """Yield what may stand under a first title; between it and another that is known there may be some on no list."""
    far = {(after - start, parts) for after in titles if after > start for parts in range(1, _MOST_BETWEEN + 1)}
    for step in sorted({size // parts for size, parts in far if size % parts == 0 and size // parts >= _LEAST}):
        if _is_stack(stack := _Stack(start, step, tuple(_columns(filled, start, step, titles)))):
            yield stack


def _columns(filled: Sequence[Line], start: int, step: int, titles: Sequence[int]) -> Iterator[tuple[str, ...]]:
    """Yield columns from a first title on, while a title that is known, or any over figures, stands in its place."""
    seen: set[str] = set()
    while start + step <= len(filled):
        column = tuple(line.text.strip() for line in filled[start : start + step])
        known = start in titles or all(any(map(str.isdigit, cell)) for cell in column[1:])
        inside = [column[at - start] for at in titles if start < at < start + step]
        if not known or fold(column[0]) in seen or not all(map(_may_be_a_name, inside)):
            return
        seen.add(fold(column[0]))
        yield column
        start += step


def _is_stack(stack: _Stack) -> bool:
    """Say whether columns hold both parts of a name, or a name and no other names."""
    roles = header_roles([title for title, *_ in stack.columns])
    if roles is None:
        return False
    if Role.GIVEN in roles and not {Role.FAMILY, Role.FULL}.isdisjoint(roles):
        return True
    if {Role.GIVEN, Role.FULL}.isdisjoint(roles):
        return False
    others = [cells for (_, *cells), role in zip(stack.columns, roles, strict=True) if role not in NAME_ROLES]
    return len(others) == len(roles) - 1 and not any(map(_are_names, others))


def _are_names(cells: Sequence[str]) -> bool:
    return given_share(cells) > _FEW_NAMES


def _in_rows(filled: Sequence[Line], stacks: Sequence[_Stack]) -> Iterator[Line]:
    """Yield what stands above, between and below as it is, numbers alone left out; each row is of its name's line."""
    done = 0
    for stack in stacks:
        yield from (line for line in filled[done : stack.start] if any(map(is_letter, line.text)))
        roles = header_roles([title for title, *_ in stack.columns]) or ()
        named = next(at for part in (Role.GIVEN, Role.FULL) for at, role in enumerate(roles)
                     if role is part)
        for row in range(stack.step):
            line = filled[stack.start + named * stack.step + row]
            yield line._replace(text="\t".join(column[row] for column in stack.columns))
        done = stack.end
    yield from _tail(filled[done:], stacks[-1].step)


def _tail(rest: Sequence[Line], step: int) -> Sequence[Line]:
    """Write a last column of no names as headings where it is too short to say of which row each of its cells is."""
    short = 1 < len(rest) < step and _is_title(rest[0].text) and header_role(rest[0].text) not in NAME_ROLES
    if not short or _are_names([line.text for line in rest[1:]]):
        return rest
    return [line.heading(line.text) for line in rest]
