"""Rows of a table that are about a child who has one already, as an export of contacts has one for each grown-up.

It is the same child where both parts of the name agree, and with them a number or a birthday that no other name has; or
where two rows that follow each other have other words for who the grown-up is (mother, father), as they may in a list
without titles, too; or where they differ in nothing but columns of grown-ups and how these are reached.
"""

from __future__ import annotations

import re
from collections import defaultdict
from collections.abc import Callable, Mapping, Sequence
from itertools import pairwise

from namewright.named_tuples import NamedTuple
from namewright.patterns import pattern
from namewright.roster.columns import Row, Table
from namewright.roster.event_words import EVENT_TITLES, EVENTS
from namewright.roster.shares import share
from namewright.roster.vocabulary import NAME_ROLES, OTHER_PEOPLE, Role, fold, word_set

_LEAST = 4  # figures of a number or a date that tells children apart; a room or a table has fewer
_REACHED = word_set("""
    phone, phones, tel, telephone, cell, mobile, email, mail, address, telefon, telefonnummer, handy, adresse, telefono,
    movil, celular, correo, direccion, portable, courriel, cellulare, indirizzo, telefone, telemovel, endereco,
    morada""")
"""Titles of how a grown-up is reached, which tell no child from another."""
_HOMES = word_set("""
    household, households, home, adult, adults, adulte, adultes, adulto, adultos, adulti, hogar, foyer, haushalt,
    nucleo, agregado, familia, famille, famiglia, familie""")
"""Titles of the grown-ups or the home that a row tells of, of which a child may have two."""
_BETWEEN = pattern(r"[\W_]+")
_SIGNS = pattern(r"[^\w'’-]+")
_FIGURES = pattern(r"\d+")
_CLOCK = pattern(r"\s*[0-9]{1,2}(?:[:.h][0-9]{2}|h)(?:\s?[AaPp]\.?[Mm]\.?)?")
_NEARLY_ALL = 0.8
_DATE = pattern(r"\b\d{1,4}([-/.])\d{1,2}\1\d{1,4}\b")

Name = tuple[str, str]


class Further(NamedTuple):
    """A further row of a child: the line (0-based) of its first one, and the number or date both have."""

    first: int
    shared: str


def is_about_others(title: str) -> bool:
    """Say whether a column is about somebody else than the child: ``Contact First Name``."""
    return not OTHER_PEOPLE.isdisjoint(_BETWEEN.split(fold(title)))


def tells_of_others(title: str) -> bool:
    """Say whether a column is about a grown-up or a home of the child: ``Household``."""
    return is_about_others(title) or not _HOMES.isdisjoint(_BETWEEN.split(fold(title)))


def further_rows(rows: Sequence[tuple[Row, Name]], table: Table) -> Mapping[int, Further]:
    """Return, by line, the rows of a child that has one above; each row comes with its given and family name."""
    columns = [at for at, (role, title) in enumerate(zip(table.roles, table.titles, strict=False))
               if role is Role.OTHER and not is_about_others(title)]
    names: defaultdict[tuple[int, str], set[Name]] = defaultdict(set)
    first: dict[tuple[int, str, Name], int] = {}
    found: dict[int, Further] = {}
    told = [(row, name, [(at, row.cells[at]) for at in columns if at < len(row.cells) and _tells(row.cells[at])])
            for row, name in rows]
    for _, name, cells in told:
        for cell in cells:
            names[cell].add(name)
    for row, name, cells in told:
        own = [cell for cell in cells if all(name) and len(names[cell]) == 1]
        above = next(((first[*cell, name], cell[1]) for cell in own if (*cell, name) in first), None)
        if above:
            found[row.line] = Further(*above)
        for cell in own:
            first.setdefault((*cell, name), row.line)
    return found | _by_relation(rows, found, table)


def rows_of_a_day_book(rows: Sequence[tuple[Row, Name]], table: Table) -> Mapping[int, Further]:
    """Return, by line, the rows of who stands above at another time, where a column tells what happened when.

    ``08:05 | Mia | arrived`` and ``12:31 | Mia | fetched`` are one child in a day book.
    """
    times = next((at for at in _others(table) if _are(rows, at, _CLOCK.match)), None)
    if times is None or not any(_tells_events(rows, at, table) for at in _others(table) if at != times):
        return {}
    first: dict[Name, int] = {}
    found: dict[int, Further] = {}
    for row, name in rows:
        if (above := first.setdefault(name, row.line)) != row.line:
            found[row.line] = Further(above, " ".join(_named(row, table)))
    return found


def _others(table: Table) -> list[int]:
    return [at for at, role in enumerate(table.roles) if role is Role.OTHER]


def _are(rows: Sequence[tuple[Row, Name]], at: int, fits: Callable[[str], object]) -> bool:
    """Say whether nearly all cells of a column fit."""
    return bool(rows) and share(at < len(row.cells) and bool(fits(row.cells[at])) for row, _ in rows) >= _NEARLY_ALL


def _tells_events(rows: Sequence[tuple[Row, Name]], at: int, table: Table) -> bool:
    titled = at < len(table.titles) and not EVENT_TITLES.isdisjoint(_BETWEEN.split(fold(table.titles[at])))
    return titled or _are(rows, at, lambda cell: fold(cell).startswith(EVENTS))


def rows_by_grown_up(rows: Sequence[tuple[Row, Name]]) -> Mapping[int, Further]:
    """Return, by line, the rows right below one of the same name that tell of another grown-up, without titles.

    Each row comes as it was typed; a date, or a number before the name, that is another one is of another child.
    """
    found: dict[int, Further] = {}
    for (above, one), (row, two) in pairwise(rows):
        if one != two or not all(two):
            continue
        first, second = _grown_ups(above, one), _grown_ups(row, two)
        if not first or not second or first & second:
            continue
        if _own(above, one) == _own(row, two):
            name = " ".join(word for word in _words(row) if fold(word) in _parts(two))
            found[row.line] = Further(found[above.line].first if above.line in found else above.line, name)
    return found


def _words(row: Row) -> list[str]:
    return [word for cell in row.cells for word in _SIGNS.split(cell) if word]


def _parts(name: Name) -> set[str]:
    return {word for part in name for word in part.split()}


def _grown_ups(row: Row, name: Name) -> frozenset[str]:
    """Return the words of a row for who a grown-up is to the child."""
    return OTHER_PEOPLE.intersection(map(fold, _words(row))) - _parts(name)


def _own(row: Row, name: Name) -> list[str]:
    """Return what is the child's own: the numbers before its name, and any date."""
    text = " ".join(row.cells)
    before = re.split("|".join(map(re.escape, name)), fold(text), maxsplit=1)[0]
    return [*_FIGURES.findall(before), *(match[0] for match in _DATE.finditer(text))]


def _by_relation(
    rows: Sequence[tuple[Row, Name]], found: Mapping[int, Further], table: Table
) -> dict[int, Further]:
    """Return the rows of a child right above that name another grown-up: its mother, then its father."""
    more: dict[int, Further] = {}
    columns = [at for at, role in enumerate(table.roles) if role is Role.OTHER]
    own = [at for at in columns if at < len(table.titles) and not is_about_others(table.titles[at])
           and _REACHED.isdisjoint(_BETWEEN.split(fold(table.titles[at])))]
    for (above, one), (row, two) in pairwise(rows):
        if one != two or not all(two) or row.line in found:
            continue
        pairs = [(fold(above.cells[at]), fold(row.cells[at])) for at in columns
                 if at < min(len(above.cells), len(row.cells))]
        apart = any(above.cells[at : at + 1] != row.cells[at : at + 1] and any(map(_tells, row.cells[at : at + 1]))
                    for at in own)  # numbers or birthdays of their own
        relations = any(first != second and {first, second} <= OTHER_PEOPLE for first, second in pairs)
        same = any(first == second and first in OTHER_PEOPLE for first, second in pairs)  # two mothers: two children
        if not apart and (relations or (not same and _tell_of_others(above, row, table))):
            first_row = more[above.line].first if above.line in more else above.line
            more[row.line] = Further(first_row, " ".join(_named(row, table)))
    return more


def _tell_of_others(above: Row, row: Row, table: Table) -> bool:
    """Say whether two rows differ in nothing but other grown-ups or another household and how these are reached."""
    unlike = [title for at, title in enumerate(table.titles) if above.cells[at : at + 1] != row.cells[at : at + 1]]
    others = [title for title in unlike if tells_of_others(title)]
    return bool(others) and all(title in others or not _REACHED.isdisjoint(_BETWEEN.split(fold(title)))
                                for title in unlike)


def _named(row: Row, table: Table) -> list[str]:
    """Return the cells of a row that hold the name."""
    return [cell for cell, role in zip(row.cells, table.roles, strict=False) if role in NAME_ROLES and cell]


def _tells(cell: str) -> bool:
    return sum(map(str.isdigit, cell)) >= _LEAST
