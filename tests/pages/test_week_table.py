"""The week as a table."""

from __future__ import annotations

from planhelp import plan_of, table_of

from namewright.pages.plan.pages import PlanSettings, plan_pages
from namewright.pages.typesetter import Typesetter


def test_a_week_that_completes_a_whole_class_stays_on_the_page(setter: Typesetter) -> None:
    """Sixty children of one name are ready in one week; most are counted, not listed."""
    assert plan_of(setter, [f"Bo{' ' * (at % 2)}" for at in range(60)])


def test_where_every_letter_stands_the_page_says_so(setter: Typesetter) -> None:
    """No letter of the week, no child to begin beside: the whole name from memory."""
    formed = {1: frozenset("Bo"), 2: frozenset("Ana")}
    plan = table_of(["Bo", "Ana"], formed=formed)
    assert plan.weeks.weeks == ()
    assert all(each.next == () for each in plan.children)
    assert plan_pages(setter, plan, PlanSettings())
