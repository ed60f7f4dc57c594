"""The days of one week: with whom the adult sits when, on which letters, for about how long.

Every child has one day. Monday's children all still need a letter of the week, as many as a day holds; the first of
them is the one who has most help on the page. The other children follow table by table, those who have most help
first, on days as even as can be. Minutes are a rule of ours: so many beside a child at each level of support.
Out of scope: who sits at which table (``groups``), the letters of the week (``weeks``).
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from itertools import pairwise

from namewright.settings import Support

SCHOOL_DAYS = 5
MINUTES = {Support.FULL: 6, Support.PARTIAL: 5, Support.LIGHT: 4, Support.INDEPENDENT: 3}


@dataclass(frozen=True, slots=True)
class Learner:
    """What a week asks of one child: the table, the level of help, and letters to take up, in order.

    ``now`` are those of them that are letters of this week. Letters are letters of the week: small, without marks.
    """

    table: int
    support: Support
    letters: tuple[str, ...]
    now: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class Day:
    """One day, from 0 for Monday: places of its children in the order to sit with them, their letters, minutes."""

    day: int
    children: tuple[int, ...]
    letters: tuple[str, ...]
    minutes: int


def week_days(learners: Sequence[Learner]) -> tuple[Day, ...]:
    """Return the days of a week; a class smaller than that has fewer."""
    monday = _monday(learners)
    others = sorted((at for at in range(len(learners)) if at not in monday), key=lambda at: _turn(learners, at))
    parts = [monday, *_cut(others, SCHOOL_DAYS - 1)] if monday else _cut(others, SCHOOL_DAYS)
    return tuple(_day(number, part, learners) for number, part in enumerate(filter(None, parts)))


def _monday(learners: Sequence[Learner]) -> list[int]:
    """Return those who need the letters of the week, by table, as many as an even share of the class."""
    needing = [at for at, each in enumerate(learners) if each.now]
    share = -(-len(learners) // SCHOOL_DAYS)
    tables = {table: sum(learners[at].table == table for at in needing) for table in {each.table for each in learners}}
    most = sorted(needing, key=lambda at: (-tables[learners[at].table], learners[at].table, _help(learners, at), at))
    return sorted(most[:share], key=lambda at: (_help(learners, at), at))


def _help(learners: Sequence[Learner], at: int) -> int:
    return list(Support).index(learners[at].support)


def _turn(learners: Sequence[Learner], at: int) -> tuple[float, int, int, int]:
    """Return when a child has its turn after Monday: tables with most help first, at a table those with most help."""
    table = learners[at].table
    ranks = [_help(learners, place) for place, each in enumerate(learners) if each.table == table]
    return (sum(ranks) / len(ranks), table, _help(learners, at), at)


def _cut(places: Sequence[int], days: int) -> list[list[int]]:
    """Cut places into runs that differ by one at most."""
    ends = [len(places) * at // days for at in range(days + 1)]
    return [list(places[start:end]) for start, end in pairwise(ends)]


def _day(number: int, places: Sequence[int], learners: Sequence[Learner]) -> Day:
    there = [learners[at] for at in places]
    letters = dict.fromkeys(letter for each in there for letter in each.now)
    letters |= dict.fromkeys(letter for each in there for letter in each.letters)
    return Day(number, tuple(places), tuple(letters), sum(MINUTES[each.support] for each in there))
