"""The sentences of the plan, as messages: what to do on Monday and why.

Out of scope: where they stand (``plan``).
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from types import MappingProxyType

from namewright.message import Message, message
from namewright.practice.groups import group_worth, shared_letters
from namewright.practice.ordering import Order, Planned, initial_family
from namewright.practice.weeks import WeekPlan, letters_of

Formed = Mapping[int, frozenset[str]]  # by the line of a child: the letters that stood when they were looked at last
NOTHING_FORMED: Formed = MappingProxyType({})
FIRST = 3  # how many children Monday names
SAID_LETTERS = 5


def groups_of(placed: Sequence[Planned]) -> dict[int, list[Planned]]:
    """Return the children of each group by its number, in roster order; whoever is in none is left out."""
    found: dict[int, list[Planned]] = {}
    for each in sorted(placed, key=lambda one: one.child.line):
        if each.group:
            found.setdefault(each.group, []).append(each)
    return dict(sorted(found.items()))


def group_said(number: int, group: Sequence[Planned]) -> Message:
    """Return who is in a group."""
    return message("page.plan.group", number=number, who=_labels(group))


def _labels(some: Sequence[Planned]) -> tuple[str, ...]:
    return tuple(each.child.label for each in some)


def first_children(placed: Sequence[Planned], order: Order, formed: Formed) -> Sequence[Planned]:
    """Return the children to begin with: the first in order who have letters that are still to come."""
    able = [each for each in placed
            if {letter for letter, _ in each.letters} - formed.get(each.child.line, frozenset())]
    if order is Order.FAMILY:
        able = [each for each in able if initial_family(each.child) is initial_family(able[0].child)]
    return able[:FIRST]


def monday(placed: Sequence[Planned], plan: WeekPlan, order: Order, formed: Formed = NOTHING_FORMED,
           ) -> Iterator[Message]:
    """Yield what to do on Monday: the first letter, the first children, the first table, each with its reason."""
    able = [each for each in placed if each.letters]
    if plan.weeks:
        yield _first_letter(able, plan.weeks[0].letter)
    first = first_children(placed, order, formed)
    if first:
        kind = message(f"page.plan.family_{initial_family(first[0].child)}")
        yield message(f"page.plan.monday_{_order_key(order)}", who=_labels(first), count=len(first), family=kind)
    elif able:
        yield message("page.plan.monday_all_formed")
    table = _best_table(able)
    if table:
        letters = shared_letters([each.child.practice for each in table])[:SAID_LETTERS]
        yield message("page.plan.monday_table", number=table[0].group, who=_labels(table), letters=letters)


def _first_letter(able: Sequence[Planned], letter: str) -> Message:
    count = sum(letter in letters_of(each.child.practice) for each in able)
    return message("page.plan.monday_letter", letter=_both_cases(letter), count=count, all=len(able))


def _both_cases(letter: str) -> str:
    capital = letter.upper()
    return letter if capital == letter or len(capital) > 1 else f"{capital} {letter}"


def _best_table(able: Sequence[Planned]) -> Sequence[Planned]:
    """Return the group of three or more whose children share most with one another; none where nothing is shared."""
    tables = [table for table in groups_of(able).values() if len(table) > 2]
    return max(tables, key=_shared_each, default=()) if any(map(_shared_each, tables)) else ()


def _shared_each(table: Sequence[Planned]) -> float:
    sets = [letters_of(each.child.practice) for each in table]
    return group_worth(range(len(sets)), sets) / len(sets)


def _order_key(order: Order) -> str:
    return {Order.NEED: "need", Order.FAMILY: "family"}.get(order, "easiest")


def order_said(order: Order) -> Message:
    """Return what explains the order of the rows."""
    return message(f"page.plan.order_{_order_key(order)}")


def weeks_said(plan: WeekPlan, everyone: int) -> tuple[Message, Message]:
    """Return what says what the weeks bring and how surely no other order brings more."""
    ready = sum(len(week.ready) for week in plan.weeks)
    what = message("page.plan.weeks_what", weeks=len(plan.weeks), ready=ready, all=everyone)
    return what, message("page.plan.weeks_exact" if plan.exact else "page.plan.weeks_greedy")
