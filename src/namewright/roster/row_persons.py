"""Rows of a table without titles that name two people, a child and a grown-up: what tells which of them is the child.

A title or a word for a parent beside a name, its own e-mail address, a telephone right behind it and siblings in a
further row tell of a grown-up, a birthday or an age between the two of a child. Where nothing tells, it is asked once
for the whole list: the parent may stand first.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterable, Sequence

from namewright.named_tuples import NamedTuple
from namewright.patterns import pattern
from namewright.roster.shares import share
from namewright.roster.vocabulary import OTHER_PEOPLE, TITLES, Role, fold

_MOSTLY = 0.6
_SHORTEST = 3  # letters of a name that is looked for in an address
_FIGURES = 6  # of a telephone number, at the least
_AGE = pattern(r"\d{1,2}|\d{1,4}([-/.])\d{1,2}\1\d{1,4}")
_LETTERS = pattern(r"[^\W\d_]+")

Rows = Sequence[Sequence[str]]


class Person(NamedTuple):
    """The columns (0-based) of one person's name, one or two next to each other, and what they hold."""

    columns: tuple[int, ...]
    roles: tuple[Role, ...]


def children_of(people: Sequence[Person], rows: Rows) -> list[Person]:
    """Return those of the people of each row who may be the child: all of them where nothing tells."""
    grown = [_is_grown_up(person, rows, first=at == 0, last=at == len(people) - 1) for at, person in enumerate(people)]
    addressed = [_is_addressed(person, rows) for person in people]
    found = [person for person, *told in zip(people, grown, addressed, strict=True)
             if not (told[0] or (told[1] and not all(addressed)))]
    if len(found) == len(people) == 2:
        if _has_siblings(people, rows) or _is_aged(people, rows):
            return [people[0]]
        unreached = [person for person in people if not _is_reached(person, rows)]
        return unreached if len(unreached) == 1 and not all(addressed) else list(people)
    return found or list(people)


def _is_grown_up(person: Person, rows: Rows, *, first: bool, last: bool) -> bool:
    """Say whether a title stands before the name, or the outermost column tells who it is to the child."""
    before, behind = _column(rows, person.columns[0] - 1), _column(rows, person.columns[-1] + 1)
    if share(cell in TITLES for cell in before) >= _MOSTLY:
        return True
    outer = before if first else behind if last else []
    return share(cell in OTHER_PEOPLE for cell in outer) >= _MOSTLY


def _is_addressed(person: Person, rows: Rows) -> bool:
    """Say whether an e-mail address holds the given name, in most rows that have one."""
    found = [any(_holds(cell, _given(person, row)) for cell in mails) for row in rows
             if (mails := [cell for cell in row if "@" in cell])]
    return len(found) > 1 and share(found) >= _MOSTLY


def _holds(mail: str, name: str) -> bool:
    return len(name) >= _SHORTEST and name in "".join(_LETTERS.findall(fold(mail.partition("@")[0])))


def _is_reached(person: Person, rows: Rows) -> bool:
    """Say whether telephone numbers or addresses stand right behind the name."""
    behind = _column(rows, person.columns[-1] + 1)
    return share("@" in cell or _is_phone(cell) for cell in behind) >= _MOSTLY


def _is_phone(cell: str) -> bool:
    return sum(map(str.isdigit, cell)) >= _FIGURES and not _AGE.fullmatch(cell) and not any(map(str.isalpha, cell))


def _has_siblings(people: Sequence[Person], rows: Rows) -> bool:
    """Say whether the second person comes again beside another first one, and no first one comes again.

    Where the first one does, it may be a parent of siblings or a child with two rows, for mother and father.
    """
    one, two = people
    beside: defaultdict[str, set[str]] = defaultdict(set)
    for row in rows:
        beside[_name(two, row)].add(_name(one, row))
    first = [_name(one, row) for row in rows]
    return len(set(first)) == len(first) and any(name and len(names) > 1 for name, names in beside.items())


def _is_aged(people: Sequence[Person], rows: Rows) -> bool:
    """Say whether a column between the two holds ages or birthdays."""
    between = range(people[0].columns[-1] + 1, people[1].columns[0])
    return any(share(map(bool, map(_AGE.fullmatch, _column(rows, at)))) >= _MOSTLY for at in between)


def _column(rows: Rows, at: int) -> list[str]:
    return [fold(row[at]) for row in rows if 0 <= at < len(row) and row[at]]


def _cells(person: Person, row: Sequence[str]) -> Iterable[str]:
    return (row[at] for at in person.columns if at < len(row))


def _name(person: Person, row: Sequence[str]) -> str:
    return fold(" ".join(_cells(person, row)))


def _given(person: Person, row: Sequence[str]) -> str:
    """Return the first given name, folded, empty where there is none."""
    cells = {role: cell for role, cell in zip(person.roles, _cells(person, row), strict=False)}
    whole = cells.get(Role.FULL, "").rpartition(",")[2]
    return next(iter(fold(cells.get(Role.GIVEN, whole)).split()), "")
