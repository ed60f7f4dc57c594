"""One week that works, and those after it: letters of the week, tables, days and children said by one voice.

All parts hang on each other: the letters of the week follow from what children still lack, the tables from letters and
help, Monday from the letters of the week, a child's next letters from all of these. So they are made here together,
and a page, CSV or JSON only writes down what is in a ``Timetable``. Out of scope: what was seen and taught (the caller
says it), pages and their numbers.
"""

from __future__ import annotations

import math
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field, replace
from types import MappingProxyType

from namewright.message import Message, message
from namewright.practice.days import Day, Learner, week_days
from namewright.practice.difficulty import base_letter
from namewright.practice.groups import shared_letters
from namewright.practice.ordering import Placed
from namewright.practice.weeks import Letters, Week, WeekPlan, letter_weeks, letters_of
from namewright.settings import DEFAULT_WEEKS, Hand, Support

Held = tuple[Support, Hand]
Formed = Mapping[int, frozenset[str]]
NOTHING_FORMED: Formed = MappingProxyType({})
NOTHING_HELD: Mapping[int, Held] = MappingProxyType({})


@dataclass(frozen=True, slots=True)
class Table:
    """A table: its number, the places of its children, and the letters that two or more of them have."""

    number: int
    children: tuple[int, ...]
    letters: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class Progress:
    """A child in the plan: letters as written in the name, in practice order; those formed; those to take up next."""

    placed: Placed
    letters: tuple[str, ...]
    formed: tuple[str, ...]
    next: tuple[str, ...]
    support: Support
    hand: Hand
    reason: Message


@dataclass(frozen=True, slots=True)
class Timetable:
    """All of it, by places in ``children``, which is the class in the order asked for."""

    weeks: WeekPlan
    days: tuple[Day, ...]
    tables: tuple[Table, ...]
    children: tuple[Progress, ...]


@dataclass(frozen=True, slots=True)
class Lookout:
    """What a plan goes by, beside the children: how far it looks ahead, and what is remembered.

    ``usual`` is the level of support of a child who has none; ``held`` gives by line what holds for a child's sheets,
    which goes before what the list says of it. ``formed`` gives by line what a child has formed, as
    written; ``taught`` the letters of earlier weeks, the last week last.
    """

    weeks: int = DEFAULT_WEEKS
    a_week: int = 1
    usual: Support = Support.FULL
    held: Mapping[int, Held] = field(default_factory=lambda: NOTHING_HELD)
    formed: Formed = field(default_factory=lambda: NOTHING_FORMED)
    taught: tuple[tuple[str, ...], ...] = ()


def timetable(planned: Sequence[Placed], out: Lookout) -> Timetable:
    """Return the plan for a class in an order, at its tables. Raises Problem for a number out of range.

    A name that cannot be written here has a table and a day, and no letters. The letters of the week do not hang on
    the order asked for.
    """
    roster = sorted(range(len(planned)), key=lambda at: planned[at].child.line)
    plan = letter_weeks([_writable(planned[at]) for at in roster], out.weeks, out.a_week,
                        formed=[_known(planned[at], out.formed) for at in roster], taught=out.taught)
    first = plan.weeks[0] if plan.weeks else Week((), (), ())
    children = tuple(_progress(each, first, out) for each in planned)
    days = week_days([_learner(each, first) for each in children])
    return Timetable(_in_order(plan, roster), days, _tables(planned), children)


def in_page_order(plan: Timetable, numbers: Mapping[int, Sequence[int]]) -> tuple[Day, ...]:
    """Return the days, the children of each as their sheets lie in the class's PDF, so that one leafs on and not back.

    ``numbers`` are its pages by the line of a child. A child without a sheet comes last; without any numbers the days
    are as planned.
    """
    def first(at: int) -> float:
        return min(numbers.get(plan.children[at].placed.child.line, ()), default=math.inf)

    return tuple(replace(day, children=tuple(sorted(day.children, key=first))) for day in plan.days)


def _writable(each: Placed) -> str:
    """Return what is practised of a name, nothing of one that cannot be written here."""
    return each.child.practice if each.band else ""


def _known(each: Placed, formed: Formed) -> Letters:
    """Return the letters of the week that a child needs no more: every form that the name has was formed."""
    signs = {letter for letter, _ in each.letters}
    lacking = {week_letter(sign) for sign in signs - formed.get(each.child.line, frozenset())}
    return letters_of(_writable(each)) - lacking


def week_letter(sign: str) -> str:
    """Return the letter of the week that a sign of a name belongs to."""
    return base_letter(sign).casefold()


def _in_order(plan: WeekPlan, roster: Sequence[int]) -> WeekPlan:
    """Return a plan made for the roster with places in the order asked for."""
    weeks = tuple(Week(week.letters, week.review, tuple(sorted(roster[at] for at in week.completes)))
                  for week in plan.weeks)
    waiting, formed = (tuple(sorted(roster[at] for at in some)) for some in (plan.waiting, plan.formed))
    return WeekPlan(weeks, plan.cost, waiting, formed)


def _progress(each: Placed, week: Week, out: Lookout) -> Progress:
    letters = tuple(letter for letter, _ in each.letters)
    known = out.formed.get(each.child.line, frozenset())
    lacking = [letter for letter in letters if letter not in known]
    coming = _next(lacking, week)
    child = each.child
    support, hand = out.held.get(child.line, (child.support or out.usual, child.hand or Hand.RIGHT))
    return Progress(each, letters, tuple(letter for letter in letters if letter in known), coming,
                    support, hand, _reason(child.label, letters, coming, week))


def _next(lacking: Sequence[str], week: Week) -> tuple[str, ...]:
    """Return what a child takes up: the letters of the week that it lacks, then review, else the first of its own."""
    now = [sign for sign in lacking if week_letter(sign) in week.letters]
    again = [sign for sign in lacking if week_letter(sign) in week.review]
    return (*now, *again) or tuple(lacking[:1])


def _reason(label: str, letters: Sequence[str], coming: Sequence[str], week: Week) -> Message:
    """Return why these letters come next."""
    if not letters:
        return message("practice.not_written", who=label)
    if not coming:
        return message("practice.all_formed", who=label)
    now = tuple(sign for sign in coming if week_letter(sign) in week.letters)
    key = "own" if not now and week_letter(coming[0]) not in week.review else "now" if now else "review"
    return message(f"practice.next_{key}", who=label, letters=tuple(coming), now=now)


def _learner(each: Progress, week: Week) -> Learner:
    letters = tuple(dict.fromkeys(map(week_letter, each.next)))
    return Learner(each.placed.group, each.support, letters,
                   tuple(letter for letter in week.letters if letter in letters))


def _tables(placed: Sequence[Placed]) -> tuple[Table, ...]:
    return tuple(Table(number, there, shared_letters([_writable(placed[at]) for at in there]))
                 for number in sorted({each.group for each in placed})
                 for there in [tuple(at for at, each in enumerate(placed) if each.group == number)])
