"""Columns of a table that stand one under the other, as a page copied out of a PDF gives them, into rows again.

Titles that are known from tables stand at equal distances: each heads as many lines as the next. Read so only where
they name the parts of a name, or one name beside columns that hold none.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from typing import NamedTuple

from namewright.names.clusters import is_letter
from namewright.roster.headers import header_role, header_roles
from namewright.roster.known import is_known
from namewright.roster.pasted import Line
from namewright.roster.shares import given_share
from namewright.roster.vocabulary import NAME_ROLES, OTHER_PEOPLE, Role, fold

_LONGEST_TITLE = 40
_MOST_TITLES = 24  # more of them are no columns of one list, and each is held against the others
_MOST_LINES = 5_000
_MOST_BETWEEN = 4  # columns, between two whose titles are known
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


def from_stacked_columns(lines: Sequence[Line]) -> list[Line]:
    """Return the columns as rows under a line of titles, or the lines as they are where none stand so."""
    filled = [line for line in lines if line.text.strip()]
    if len(filled) > _MOST_LINES:
        return list(lines)
    titles = [at for at, line in enumerate(filled) if _is_title(line.text)]
    if not 1 < len(titles) <= _MOST_TITLES:
        return list(lines)
    found: list[_Stack] = []
    for start in titles:
        if not found or found[-1].end <= start:
            stacks = _stacks(filled, start, titles)
            found += sorted(stacks, key=lambda each: (-each.end, each.titles_inside))[:1]
    return list(_in_rows(filled, found)) if found else list(lines)


def _is_title(text: str) -> bool:
    return len(text) <= _LONGEST_TITLE and "\t" not in text and header_role(text.strip().rstrip(" :")) is not None


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
