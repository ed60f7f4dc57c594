"""Sentences of the plan say what is true of it."""

from __future__ import annotations

from planhelp import NAMES, child, table_of

from namewright.pages.plan.sentences import account_said, begin_said, next_week_said, table_said, weeks_said
from namewright.practice.ordering import completed, order_class
from namewright.practice.timetable import Lookout, timetable
from namewright.wording import wording


def test_a_table_ends_in_one_full_stop() -> None:
    """A label may end in a full stop itself."""
    children = [child(name, at)._replace(label=f"{name} F.") for at, name in enumerate(("Ava", "Bo"), start=1)]
    plan = timetable(completed(order_class(children)), Lookout())
    assert ".." not in wording("en").say(table_said(plan, plan.tables[0]))


def test_monday_and_next_week_tell_what_is_true() -> None:
    """Monday names the first child with letters it still needs; next week its letters and whom it completes."""
    plan, words = table_of(NAMES), wording("en")
    first = plan.children[plan.days[0].children[0]]
    said = words.say(begin_said(plan))
    assert first.placed.child.label in said
    assert all(letter in said for letter in first.next)
    week = plan.weeks.weeks[1]
    coming = words.say(next_week_said(plan, week))
    assert all(letter in coming for letter in week.letters)
    assert all(plan.children[at].placed.child.label in coming for at in week.completes)


def test_who_has_no_letters_is_counted_and_named() -> None:
    """29 of 30: what cannot be drawn is told, and where all can be nothing is."""
    said = account_said(table_of([*NAMES, "李"]))
    assert said is not None
    assert "12 of 13" in wording("en").say(said)
    assert "李" in wording("en").say(said)
    assert account_said(table_of(NAMES)) is None


def test_how_far_the_weeks_go_is_said() -> None:
    """How many names are complete by the end, of how many, and that a better order may exist."""
    said = wording("en").say(weeks_said(table_of(["Bo", "Ana", "李"])))
    assert "2 of 2 names" in said
    assert "may exist" in said
