"""Sentences of the plan, as messages. Out of scope: where they stand (``pages``, ``week_table``)."""

from __future__ import annotations

from collections.abc import Sequence

from namewright.message import Message, message
from namewright.practice.ordering import Order
from namewright.practice.timetable import Table, Timetable
from namewright.practice.weeks import Week

MAX_SAID = 6  # names or letters in a sentence


def both_cases(letter: str) -> str:
    """Return a letter of the week as capital and small letter: ``A a``."""
    capital = letter.upper()
    return letter if capital == letter or len(capital) > 1 else f"{capital} {letter}"


def letters_said(letters: Sequence[str]) -> tuple[str, ...]:
    """Return letters of the week, each in both cases."""
    return tuple(map(both_cases, letters))


def labels(plan: Timetable, places: Sequence[int]) -> tuple[str, ...]:
    """Return what the children at these places are called."""
    return tuple(plan.children[at].placed.child.label for at in places)


def this_week_said(week: Week) -> Message:
    """Return the letters of this week."""
    if not week.letters:
        return message("page.plan.week_pause")
    return message("page.plan.week_letters", letters=letters_said(week.letters), count=len(week.letters))


def begin_said(plan: Timetable) -> Message:
    """Return with whom Monday begins."""
    first = plan.children[plan.days[0].children[0]]
    return message("page.plan.week_begin", who=first.placed.child.label, letters=first.next)


def next_week_said(plan: Timetable, week: Week) -> Message:
    """Return next week in one line: its letters, and whose names are then complete."""
    letters, names = letters_said(week.letters), labels(plan, week.completes)
    if not letters:
        return message("page.plan.next_pause")
    if not names:
        return message("page.plan.next_week", letters=letters)
    if len(names) > MAX_SAID:
        more = message("page.plan.more", count=len(names) - MAX_SAID + 1)
        return message("page.plan.next_week_complete", letters=letters, who=(*names[:MAX_SAID - 1], more))
    return message("page.plan.next_week_complete", letters=letters, who=names)


def table_said(plan: Timetable, table: Table) -> Message:
    """Return who sits at a table, and which letters they share."""
    who, letters = labels(plan, table.children), letters_said(table.letters[:MAX_SAID])
    if not letters:
        return message("page.plan.at_table", number=table.number, who=who)
    return message("page.plan.at_table_sharing", number=table.number, who=who, letters=letters)


def order_said(order: Order) -> Message:
    """Return the sentence that explains the order of the rows."""
    return message(f"page.plan.order_{'easiest' if order is Order.PRACTICE else order}")


def weeks_said(plan: Timetable) -> Message:
    """Return the sentence that says what the weeks bring."""
    weeks = plan.weeks
    writers = sum(bool(each.letters) for each in plan.children)
    ready = len(weeks.formed) + sum(len(week.completes) for week in weeks.weeks)
    return message("page.plan.weeks_what", count=len(weeks.weeks), ready=ready, all=writers)


def account_said(plan: Timetable) -> Message | None:
    """Return how many children have letters in the plan, where it is not all of them."""
    others = [at for at, each in enumerate(plan.children) if not each.letters]
    if not others:
        return None
    return message("page.plan.account", able=len(plan.children) - len(others), all=len(plan.children),
                   who=labels(plan, others))
