"""What the columns of a table hold, judged by their cells over all rows: names, hands, levels, or nothing of use.

Which of two columns of names is the given name is decided by lists of known names, repetition, particles, capitals and
brackets. A first row that is unlike all others is a header, whatever its words. Where nothing decides, that is told,
and both readings with it.
"""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Collection, Iterable, Sequence
from functools import cached_property
from itertools import groupby

from namewright.named_tuples import NamedTuple
from namewright.names.casing import begins_small, is_all_capitals, opens_as_a_name
from namewright.names.clusters import is_letter
from namewright.names.particles import OPENING_PARTICLES, PARTICLES
from namewright.patterns import pattern
from namewright.roster.beside import is_state
from namewright.roster.capitals import is_small_word, is_titled
from namewright.roster.care_words import CARE
from namewright.roster.date_lines import IN_FIGURES
from namewright.roster.header_words import CHILD_WORDS
from namewright.roster.headers import header_role, is_about_somebody_else
from namewright.roster.heading_words import OUR
from namewright.roster.known import ends_as_family, is_given, is_known, lean
from namewright.roster.month_heads import is_of_birthdays
from namewright.roster.row_persons import Person, children_of
from namewright.roster.shares import share
from namewright.roster.vocabulary import (
    ANY_DAYS,
    CODES,
    DATES,
    DOUBLE_STARTERS,
    HANDS,
    MONTHS,
    NAME_ROLES,
    OTHER_PEOPLE,
    STREETS,
    SUPPORTS,
    TITLES,
    Role,
    fold,
)
from namewright.store import keeps_names

_NUMBERED = pattern(r"\d{1,3}[.)]\s*(?=\D+$)")
_OUTLINE = pattern(r"[a-zA-Z][.)]")
_IN_BRACKETS = pattern(r"\(([^()]*)\)")
_CLOCK = pattern(r"[0-9]{1,2}(?:[:.h][0-9]{2}|h)(?:\s?(?:Uhr|h|[AaPp]\.?[Mm]\.?))?")
_STREETS = 0.3  # of the cells of a column of stops: others are called after a church
_WHOLE_IN_BRACKETS = pattern(r"\([^()]*\)|\[[^\[\]]*\]")
_MAX_COLUMNS = 64
_MOSTLY = 0.6
_FEW_ROWS = 4
_TWO = 2  # words of a whole name
_FEW_GROUPS = 3  # columns: of two one may be of families that some rows lack
_MOST_OF_A_TICK = 2  # characters
_TICKED = 3  # columns of ticks under words: no child has so much beside its name where all others have ticks
_GROWN_UPS = 4  # rows that a child may have on the average, one for each grown-up
_LEADS, _NEARLY = 0.3, 0.75  # how surely a column must be of given names where every cell is to be a child
_DECIDES = 0.2  # mean lean of a row by which one column of names is told from another
_FIGURES, _LETTERS = pattern(r"\d+"), pattern(r"[^\W\d_]+")
_SHEET_SIGNS = ("#REF!", "#N/A", "#NAME?", "#VALUE!", "#DIV/0!", "#NULL!", "#NUM!", "=")
"""How a cell begins that holds an error or a formula of a spreadsheet and not its value."""


class Judged(NamedTuple):
    """The roles of the columns; whether the first row heads them, every cell is a child, or two may be turned.

    ``unsure`` says that the first row heads them or is a child; ``beside`` is where another's name begins that each
    row holds, who was told from the child.
    """

    roles: tuple[Role, ...]
    headed: bool = False
    unsure: bool = False
    grid: bool = False
    doubt: tuple[int, int] | None = None
    beside: int | None = None


def is_sheet_sign(cell: str) -> bool:
    """Say whether a cell holds a formula or an error of a spreadsheet."""
    return cell.startswith(_SHEET_SIGNS)


class _Column:
    """The filled cells of one column."""

    def __init__(self, cells: tuple[str, ...]) -> None:
        self.cells = cells

    @cached_property
    def role(self) -> Role:
        """Return what most cells are; FULL stands for names of any part."""
        kinds = Counter(map(_kind, self.cells))
        if not kinds:
            return Role.OTHER
        kind, count = kinds.most_common(1)[0]
        return kind if count * 2 > len(self.cells) else Role.FULL if kinds[Role.FULL] else Role.OTHER

    @cached_property
    def repeats(self) -> bool:
        """Say whether the same few words fill it, as those of groups and rooms do."""
        return len(self.cells) >= _FEW_ROWS and 2 * len(set(map(fold, self.cells))) <= len(self.cells)

    @cached_property
    def ticked(self) -> bool:
        """Say whether nothing but signs fills it, as boxes of a register: ``x``, ``✓``, ``abs`` is none."""
        return bool(self.cells) and all(len(cell) <= _MOST_OF_A_TICK for cell in self.cells)

    @cached_property
    def timed(self) -> bool:
        """Say whether times of day fill it."""
        return bool(self.cells) and all(map(_CLOCK.fullmatch, self.cells))

    @cached_property
    def placed(self) -> bool:
        """Say whether it holds stops and streets, or the same few words as these do, however few its rows are."""
        streets = share(not STREETS.isdisjoint(fold(cell).split()) or any(map(begins_small, cell.split()[:1]))
                        for cell in self.cells)
        return self.repeats or streets >= _STREETS or len(set(self.cells)) < len(self.cells)

    @cached_property
    def of_others(self) -> bool:
        """Say whether most cells open with who a grown-up is to a child: ``mother``, ``Mutter Jo Vost``."""
        return share(any(map(_tells_who, cell.split()[:1])) for cell in self.cells) >= _MOSTLY

    @cached_property
    def runs(self) -> bool:
        """Say whether some names stand in rows one below another and never apart, as with a row for each parent."""
        runs = [name for name, _ in groupby(map(fold, self.cells))]
        return len(set(runs)) == len(runs) < len(self.cells) <= _GROWN_UPS * len(runs)

    @cached_property
    def whole(self) -> bool:
        """Say whether most cells have two words or more, particles apart, or a comma."""
        return share(len(_words(cell)) > 1 or "," in cell.strip(",") for cell in self.cells) >= _MOSTLY

    @cached_property
    def lead(self) -> float:
        """Return from 1 (given names) to -1 (family names) what the cells open with."""
        leads = [lean(words[0]) for cell in self.cells if (words := _words(cell))]
        return sum(leads) / max(1, len(leads))

    @cached_property
    def given(self) -> float:
        """Return the share of cells that open with a known given name."""
        return share(is_given(words[0]) for cell in self.cells if (words := _words(cell)))

    @cached_property
    def known(self) -> float:
        """Return the share of cells that hold a known name."""
        return share(any(map(is_known, _words(cell))) for cell in self.cells)


def judge(rows: Sequence[Sequence[str]], delimiter: str, wide: str) -> Judged:
    """Judge the columns of a table that has no header of known words. ``wide`` is the delimiter of spaced columns."""
    filled = [row for row in rows if any(row)]
    width = min(max(map(len, filled), default=0), _MAX_COLUMNS)
    headed, unsure = _heads(filled, width)
    columns = _columns(filled[headed:], width)
    roles = [column.role for column in columns]
    others = {at for at, title in enumerate(filled[0][:width] if headed else ()) if is_about_somebody_else(title)}
    roles = [Role.OTHER if at in others else role for at, role in enumerate(roles)]
    names = [at for at, role in enumerate(roles) if role is Role.FULL]
    if headed and len(names) > 1 and all(_is_dated(filled[0], at) for at in names):
        return Judged(tuple(roles), headed=True, grid=True)
    if len(names) == _filled(columns) and _are_groups(filled[1:], _columns(filled[1:], width), names):
        return _groups(filled[0], roles, headed=headed, unsure=unsure)
    empty = _are_titled(filled[0][:width], below := _columns(filled[1:], width))
    groups = [column for column in below if column.cells]
    if empty and all(column.lead >= _LEADS and column.given >= _MOSTLY and not column.whole for column in groups):
        return Judged((Role.FULL,) * width, headed=True, unsure=any(map(is_given, filled[0])), grid=True)
    few = max((len(columns[at].cells) for at in names), default=0) / 2
    names = [at for at in names if len(columns[at].cells) >= few]
    if names and all(len(columns[at].cells) > len(columns[names[0]].cells) for at in names[1:]) and len(names) > 2:
        names = names[1:]  # a cell for several rows: a group
    small = [at for at in names if share(not is_titled(cell) for cell in columns[at].cells
                                          if any(map(is_letter, cell)) and not _has_figure(cell)) >= _NEARLY]
    if 0 < len(small) < len(names):  # no names beside some with capitals: mariposa, trae zumo
        names = [at for at in names if at not in small]
    names = _before_times(columns, names)
    names = _of_children(columns, names) or [at for at in names if not columns[at].repeats] or names
    if _is_grid([columns[at] for at in names], len(names) == _filled(columns), delimiter == wide):
        if not headed:
            return Judged(tuple(roles), grid=True)
        if len(names) > 2:  # under titles two may be a child and somebody else
            return Judged(tuple(roles), headed=True, unsure=unsure, grid=True)
    people = _people(columns, names)
    kept, doubt = _of_people(people, filled[headed:]) if people else _parts(columns, names, comma=delimiter == ",")
    if empty and not people and len(names) > 1 and min(columns[at].lead for at in names) > -_DECIDES:
        doubt = doubt or (names[0], names[1])  # groups of rare names, or both parts of one beside what nobody has
    return Judged(tuple(kept.get(at, Role.OTHER if role is Role.FULL else role) for at, role in enumerate(roles)),
                  headed, unsure, doubt=doubt, beside=_beside(people, kept) if people and not doubt else None)


def _are_titled(titles: Sequence[str], below: Sequence[_Column]) -> bool:
    """Say whether a first row of unknown words stands over columns of single names and one without any.

    A group that nobody is in, as ``Ladybugs``, ``Crickets`` and ``Fireflies`` over two names a row.
    """
    filled = [column for column in below if column.cells]
    return (len(titles) == len(below) == sum(map(bool, titles)) > len(filled) > 1 < len(filled[0].cells)
            and all(column.role is Role.FULL for column in filled) and not any(map(header_role, titles)))


def _are_groups(rows: Sequence[Sequence[str]], columns: Sequence[_Column], places: Sequence[int]) -> bool:
    """Say whether groups of children stand beside each other: each column is filled from its top, some end sooner.

    Neither are families, whole names or the same words again and again, as beside one child in a row; two columns of
    one depth may be the parts of a name, where these are on no list.
    """
    depths = [[bool(row[at]) if at < len(row) else False for row in rows] for at in places]
    stairs = all(sorted(depth, reverse=True) == depth for depth in depths)
    sizes = sorted(map(sum, depths))
    if len(places) < _FEW_GROUPS or not stairs or sizes[0] == sizes[-1] or len(rows) < 2:
        return False
    if sizes[-2] == sizes[-1] and not all(columns[at].lead >= _LEADS for at in places):
        return False
    return not any(columns[at].lead < -_DECIDES or columns[at].whole or columns[at].repeats for at in places)


def _groups(titles: Sequence[str], roles: Sequence[Role], *, headed: bool, unsure: bool) -> Judged:
    """Return what groups beside each other are; a first row without a known name may be titles of them."""
    named = any(map(is_given, titles))
    return Judged(tuple(roles), headed=headed or not named, unsure=unsure or (not headed and not named), grid=True)


def _of_children(columns: Sequence[_Column], names: Sequence[int]) -> list[int]:
    """Return the columns of names of children who have a row for each grown-up, none where no column tells of these."""
    if not any(column.of_others for column in columns):
        return []
    found = [at for at in names if columns[at].runs]
    parts = len(found) > 1 and any(columns[at].known >= _MOSTLY for at in found)
    return found if parts or any(columns[at].whole for at in found) else []  # one word alone may be a group: Red


def _before_times(columns: Sequence[_Column], names: Sequence[int]) -> list[int]:
    """Return the columns of names that stand before times of day, where others stand behind: there are grown-ups.

    ``Mia | Mill Lane | 7:05 | Jo Vost``: what tells a place beside the child is no name, either.
    """
    times = next((at for at, column in enumerate(columns) if column.timed), None)
    before = [at for at in names if times is not None and at < times]
    if not before:
        return list(names)
    return [at for at in before if not columns[at].placed] or before


def names_in(cells: Iterable[str]) -> int:
    """Count the cells that may hold a name."""
    return sum(_kind(cell) is Role.FULL for cell in cells if cell)


def _is_dated(titles: Sequence[str], at: int) -> bool:
    """Say whether a column has a day or a month over it."""
    return at < len(titles) and _is_a_date(titles[at])


def _is_a_date(title: str) -> bool:
    return fold(title) in DATES or is_of_birthdays(title)


def _filled(columns: Sequence[_Column]) -> int:
    return sum(bool(column.cells) for column in columns)


def _columns(rows: Sequence[Sequence[str]], width: int) -> list[_Column]:
    return [_Column(tuple(row[at] for row in rows if at < len(row) and row[at])) for at in range(width)]


def _is_grid(names: Sequence[_Column], only_names: bool, wide: bool) -> bool:
    """Say whether every cell is a child: columns of given names, or whole names side by side as a page prints them."""
    if len(names) < 2 or not only_names:
        return False
    if wide and all(map(_is_of_whole_names, names)):
        return not _share_words(names[0].cells, names[1].cells)
    if not _are_given(names):
        return False
    if any(column.whole for column in names):
        return wide and all(column.whole for column in names) and not _share_words(names[0].cells, names[1].cells)
    return True


def _is_of_whole_names(column: _Column) -> bool:
    """Say whether a column holds names of two words that are on no list, each with its capitals and another one."""
    words = [cell.split() for cell in column.cells]
    titled = all(len(each) == _TWO and all(word[0].isupper() and word[1:].islower() for word in each) for each in words)
    return titled and column.known < _MOSTLY / 2 and len(set(column.cells)) == len(words) >= _FEW_ROWS


def _are_given(names: Sequence[_Column]) -> bool:
    """Say whether columns are of given names: each of them, or all cells together where rows are few and long."""
    if all(column.lead >= _LEADS and column.given >= _NEARLY for column in names):
        return True
    together = _Column(tuple(cell for column in names for cell in column.cells))
    several = len(names) > 2 and len(names[0].cells) > 1
    if several and together.given >= _MOSTLY and all(column.lead >= 0 and not column.whole for column in names):
        return True
    return (len(names) > 2 and 1 < len(names[0].cells) < _FEW_ROWS and together.lead >= 2 * _LEADS
            and together.given >= _NEARLY and all(column.lead >= 0 for column in names))


def _people(columns: Sequence[_Column], names: Sequence[int]) -> list[Person]:
    """Return the people of each row where its names are those of several: whole ones, or given and family names."""
    whole = [at for at in names if columns[at].whole and (columns[at].lead > _DECIDES or _by_comma(columns[at]))]
    if len(names) > 1 and _share_words(*(columns[at].cells for at in names[:2])):
        whole = sorted({*names[:2], *whole})
    if len(whole) > 1 and whole[0] <= names[1]:
        told = columns[whole[0]].repeats or _by_comma(columns[whole[0]]) != _by_comma(columns[whole[1]])
        return [] if told else [Person((at,), (Role.FULL,)) for at in whole]
    pairs = list(zip(names[::2], names[1::2], strict=False))
    if len(pairs) < 2 or len(names) % 2 or any(one + 1 != two for one, two in pairs):
        return []
    found = [_parts_of_one(columns[one], columns[two], (one, two)) for one, two in pairs]
    return [person for person in found if person] if all(found) else []


def _parts_of_one(one: _Column, two: _Column, at: tuple[int, int]) -> Person | None:
    """Return the person whose name two columns hold, if one is surely of given and the other of family names."""
    if one.whole or two.whole or max(one.given, two.given) < _MOSTLY or abs(one.lead - two.lead) < 3 * _DECIDES:
        return None
    roles = (Role.GIVEN, Role.FAMILY) if one.lead > two.lead else (Role.FAMILY, Role.GIVEN)
    return Person(at, roles)


def _of_people(
    people: Sequence[Person], rows: Sequence[Sequence[str]]
) -> tuple[dict[int, Role], tuple[int, int] | None]:
    """Return the roles of the columns of the child's name, and where two names begin either of which may be."""
    child, *others = children_of(people, rows)
    roles = dict(zip(child.columns, child.roles, strict=True))
    return roles, (child.columns[0], others[0].columns[0]) if others else None


def _beside(people: Sequence[Person], kept: Collection[int]) -> int:
    """Return where the first name begins that is not kept."""
    return next(person.columns[0] for person in people if person.columns[0] not in kept)


def _by_comma(column: _Column) -> bool:
    return _mostly("," in cell.strip(",") for cell in column.cells)


def _parts(
    columns: Sequence[_Column], names: Sequence[int], *, comma: bool
) -> tuple[dict[int, Role], tuple[int, int] | None]:
    """Return the roles of the columns of names, and the two of which nothing tells which is which."""
    if len(names) < 2:
        return dict.fromkeys(names, Role.FULL), None
    first, second = names[:2]
    one, two = columns[first], columns[second]
    if _by_comma(one) or _share_words(one.cells, two.cells):
        return {first: Role.FULL}, None
    if _by_comma(two):
        return {second: Role.FULL}, None
    whole = [at for at in names if columns[at].whole and columns[at].lead > _DECIDES]
    if whole and min(whole) > second:  # a whole name behind the two parts of one is somebody else's
        names, whole = [at for at in names if at not in whole], []
    if whole:
        rare = whole[0] == second and not one.whole and not one.known and len(set(one.cells)) == len(one.cells)
        return {whole[0]: Role.FULL}, (first, second) if rare else None  # a child of a rare name beside a grown-up
    if one.whole and two.whole and max(one.known, two.known) < _MOSTLY / 2:
        return {first: Role.FULL}, (first, second)  # two people whose names are on no list
    if pair := _repeated_behind(columns, names):
        return {pair[0]: Role.GIVEN, pair[1]: Role.FAMILY}, None
    given, family = _given_and_family(columns, names[:3])
    if columns[given].whole and not columns[family].whole and columns[given].known < _MOSTLY / 2:
        return {given: Role.FULL}, None  # whole names on no list beside something of one word
    signs = _signs(columns[family].cells) - _signs(columns[given].cells)
    evidence = columns[given].lead - columns[family].lead + signs
    both = not signs and columns[family].lead >= _MOSTLY - _DECIDES  # given names too: two groups side by side
    if not both and evidence >= (_DECIDES if len(names) < 3 else 3 * _DECIDES):  # three columns may be three children
        return {given: Role.GIVEN, family: Role.FAMILY}, None
    order = (second, first) if comma else (first, second)
    return {order[0]: Role.GIVEN, order[1]: Role.FAMILY}, order


def _repeated_behind(columns: Sequence[_Column], names: Sequence[int]) -> tuple[int, int] | None:
    """Return the columns of given and family names where a third repeats the family, as a parent's whole name does."""
    first, second = names[:2]
    one, two = columns[first].cells, columns[second].cells
    for at in names[2:]:
        others = columns[at].cells
        if not columns[at].whole or not len(one) == len(two) == len(others):
            continue
        ends = [fold(cell).split()[1:] for cell in others]
        again = [share(fold(cell) in end for cell, end in zip(cells, ends, strict=True)) for cells in (one, two)]
        if max(again) >= _MOSTLY and min(again) < _DECIDES:
            return (first, second) if again[1] > again[0] else (second, first)
    return None


def _given_and_family(columns: Sequence[_Column], names: Sequence[int]) -> tuple[int, int]:
    """Return which two columns of names are most unlike, the given names first, and of those alike the first ones."""
    weight = {at: columns[at].lead - _signs(columns[at].cells) for at in names}
    pairs = [(one, two) for one in names for two in names if one != two]
    return max(pairs, key=lambda pair: (round(weight[pair[0]] - weight[pair[1]], 1), -sum(pair)))


def _share_words(first: Sequence[str], second: Sequence[str]) -> bool:
    """Say whether most rows repeat a word, as a child's whole name and a parent's do."""
    pairs = [(fold(one).split(), fold(two).split()) for one, two in zip(first, second, strict=False)]
    return len(first) == len(second) and _mostly(
        len(one) > 1 and len(two) > 1 and not PARTICLES.issuperset(set(one) & set(two)) for one, two in pairs
    )


def _signs(column: Sequence[str]) -> float:
    """Return what a name's writing tells, by row: signs of family names, less those of given names."""
    score = 0
    for cell in column:
        words = cell.split()
        opening = words[0].lower()
        score += len(words) > 1 and opening in PARTICLES
        score += opening.startswith(("o'", "o’", "mc"))
        score += len(cell) > 3 and is_all_capitals(cell)
        score -= "(" in cell or '"' in cell or "“" in cell
        score -= len(words) > 1 and fold(opening) in DOUBLE_STARTERS
    endings = sum(" " not in cell and ends_as_family(cell) for cell in column)
    return (score + (endings if endings > 1 else 0)) / max(1, len(column))


def _heads(rows: Sequence[Sequence[str]], width: int) -> tuple[bool, bool]:
    """Say whether the first row is unlike all others, and whether it may be a child for all that.

    Words where they have figures, no name where they have names; a row whose names alone are unknown is no sure title.
    """
    if len(rows) < 2 or sum(map(bool, rows[0])) < 2:
        return False, False
    if all(_is_a_date(title) for title in rows[0] if title):
        return True, False
    if len(rows) < 3:
        return False, False
    pairs = [(title, column) for title, column in zip(rows[0], _columns(rows[1:], width), strict=False)
             if title and column.cells]
    if any(_is_alike(title, column) for title, column in pairs):
        return False, False
    if _is_of_one_away(rows[0]) or _is_told_of(rows[0], pairs):
        return False, False
    dated = [cell for row in rows[1:] for cell in row if IN_FIGURES.fullmatch(cell)]
    if len(dated) >= _NEARLY * len(rows[1:]) and sum(map(bool, map(IN_FIGURES.fullmatch, rows[0]))) == 1:
        return False, False  # a child with its date, a cell of whom is missing
    points = [_unlike(title, column) for title, column in pairs]
    ticked = sum(column.ticked and point > 0 for (_, column), point in zip(pairs, points, strict=True))
    said = ticked >= _TICKED or any(
        point > 1 or header_role(title) or (begins_small(title) and not any(map(begins_small, column.cells)))
        for (title, column), point in zip(pairs, points, strict=True))
    ours = any(fold(title.split()[0]) in OUR and begins_small(title.split()[-1]) for title, _ in pairs)  # Our friends
    filled = sum(map(bool, rows[0]))
    short = _is_a_whole_name(rows[0][0]) and share(sum(map(bool, row)) > filled for row in rows[1:]) >= _NEARLY
    return ours or sum(points) >= 2, short or not said


def _is_of_one_away(cells: Sequence[str]) -> bool:
    """Say whether a state stands beside a whole name, where other rows have figures: ``Mira Vost;absent``."""
    first, *others = cells
    filled = [cell for cell in others if cell]
    return bool(filled) and _is_a_whole_name(first) and all(map(is_state, filled))


def _is_told_of(cells: Sequence[str], pairs: Sequence[tuple[str, _Column]]) -> bool:
    """Say whether small words stand beside a whole name, as they do in other rows: ``Mira Vost;crutches``."""
    whole = bool(cells[0]) and len(pairs) > 1 and pairs[0][0] == cells[0] and pairs[0][1].whole
    return whole and _is_a_whole_name(cells[0]) and all(
        begins_small(title) and all(map(begins_small, column.cells)) for title, column in pairs[1:])


def _is_a_whole_name(cell: str) -> bool:
    """Say whether a cell is written as a whole name and is no title that tables have."""
    return " " in cell and is_titled(cell) and header_role(cell) is None


def _is_alike(title: str, column: _Column) -> bool:
    """Say whether a cell is what the others of its column are: a number, a sign, a hand, an opening word."""
    if column.role in (Role.HAND, Role.SUPPORT) and _kind(title) is column.role:
        return True
    if not any(map(str.isalnum, title)):  # nobody titles a column ???
        return not title.strip("?") or title in column.cells
    if _has_figure(title):
        return _shape(title) in set(map(_shape, column.cells))
    opening = fold(title).split()[:1]
    return " " in title and _mostly(fold(cell).split()[:1] == opening for cell in column.cells)


def _shape(cell: str) -> str:
    """Return a cell with all its figures and letters written as one of each: ``12-03-2021`` is ``0-0-0``."""
    return _LETTERS.sub("a", _FIGURES.sub("0", cell))


def _unlike(title: str, column: _Column) -> int:
    """Return by how much a cell seems to be the title over the others of its column; below nothing for a name."""
    letters = any(map(is_letter, title)) and not any(map(str.isdigit, title))
    if column.ticked:
        return int(letters and len(title) > _MOST_OF_A_TICK)
    if column.role is not Role.FULL:
        figures = share(map(_has_figure, column.cells)) >= _MOSTLY
        worded = _mostly(len(word) > 2 for cell in column.cells for word in _LETTERS.findall(cell)[:1])
        return (1 if worded else 2) * (letters and not column.repeats and figures)
    if column.repeats:
        return 1 if letters and fold(title) not in set(map(fold, column.cells)) else -1
    words = _words(title)
    if header_role(title) in NAME_ROLES and not any(map(is_known, words)):
        return 1
    if "," in title and any("," in cell for cell in column.cells):
        return -2
    if len(words) > 1 and fold(words[0]) in OUR:
        return 2
    if any(lean(word) > 0 for word in words):
        return -2
    if title.endswith("?") or len(words) > 3:
        return 2
    named = any(map(is_given if column.given >= _NEARLY else is_known, words))
    return (column.known >= _MOSTLY and not named) + (column.whole and len(words) == 1 and not named)


def _has_figure(cell: str) -> bool:
    return any(char.isdigit() for char in cell)


@keeps_names(2048)
def _kind(cell: str) -> Role:
    bare = _NUMBERED.sub("", cell)
    if bare != cell and fold(bare) in MONTHS:  # 1. Juni
        return Role.OTHER
    cell = bare
    if any(char.isdigit() or char == "@" for char in cell) or not any(map(is_letter, cell)):
        return Role.OTHER
    folded = fold(cell)
    if any(OTHER_PEOPLE.intersection(fold(inside).split()) for inside in _IN_BRACKETS.findall(cell)):
        return Role.OTHER
    if _WHOLE_IN_BRACKETS.fullmatch(cell):  # (asthma)
        return Role.OTHER
    if _tells_of_others(cell) or folded in CHILD_WORDS:  # Alunno, Schülerin: who somebody is
        return Role.OTHER
    if folded in HANDS or folded in SUPPORTS:
        return Role.HAND if folded in HANDS else Role.SUPPORT
    if is_state(_IN_BRACKETS.sub("", cell).strip()):  # Absent (sick)
        return Role.OTHER
    *before, last = folded.split()
    if before and last in ANY_DAYS and not is_given(before[0]):  # Chess Mon
        return Role.OTHER
    about = folded in CODES or folded in CARE or _OUTLINE.fullmatch(cell) or folded.split()[0].strip(".") in TITLES
    return Role.OTHER if about or len(folded) < 2 or is_sheet_sign(cell) else Role.FULL


def _tells_of_others(cell: str) -> bool:
    """Say whether a cell tells who somebody is to a child: ``mother``, ``Oma Rosa``, ``só o pai Ivo``."""
    first, *rest = cell.split()
    if not rest:
        return _tells_who(first)
    small = is_small_word(first) and any(map(opens_as_a_name, rest))
    return small or any(map(_tells_who, (first, *rest)))


def _tells_who(word: str) -> bool:
    return fold(word).strip(",:") in OTHER_PEOPLE and (begins_small(word) or not is_given(word))


@keeps_names(2048)
def _words(cell: str) -> tuple[str, ...]:
    """Return the words of a cell, without numbering, brackets and particles."""
    bare = re.sub(r"[(\[{“\"].*?[)\]}”\"]", " ", _NUMBERED.sub("", cell)).replace(",", " ").split()
    return tuple([word for word in bare if word.lower() not in OPENING_PARTICLES] or bare)


def _mostly(answers: Iterable[bool]) -> bool:
    return share(answers) > 0.5
