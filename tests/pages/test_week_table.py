"""The week as a table."""

from __future__ import annotations

from itertools import product

import pytest
from planhelp import plan_of, table_of

from namewright.lines.ink import Ink
from namewright.pages.page import leaves
from namewright.pages.paper import Paper
from namewright.pages.plan.pages import PlanSettings, plan_pages
from namewright.pages.typesetter import Typesetter
from namewright.practice.ordering import completed, order_class
from namewright.practice.timetable import Lookout, timetable
from namewright.roster.children import Child
from namewright.settings import Hand, Support
from namewright.wording import languages, wording


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


def test_beside_each_name_stand_its_level_and_hand(setter: Typesetter) -> None:
    """What holds for a child's sheets, which goes before what the list says of it; else what the list says."""
    listed = [Child(name, name, name, "", at, support, hand) for at, (name, support, hand) in enumerate(
        (("Bo", None, None), ("Ana", Support.LIGHT, Hand.LEFT), ("Wren", Support.LIGHT, Hand.LEFT)), start=1)]
    plan = timetable(completed(order_class(listed)), Lookout(held={3: (Support.PARTIAL, Hand.RIGHT)}))
    spelled = [leaf.spelled.words for page in plan_pages(setter, plan, PlanSettings()) for leaf in leaves(page.items)
               if isinstance(leaf, Ink) and leaf.spelled]
    told = {name: spelled[spelled.index(name) + 3] for name in ("Bo", "Ana", "Wren")}
    assert told == {"Bo": "full, right", "Ana": "light, left", "Wren": "partial, right"}


@pytest.mark.parametrize("language", languages())
def test_no_words_of_a_column_are_cut_in_any_language(setter: Typesetter, language: str) -> None:
    """Whatever level and hand a child has, and where it writes the whole name, the words stand whole."""
    words = wording(language)
    listed = [Child("Bo", f"Bo {at}", "Bo", "", at, support, hand)
              for at, (support, hand) in enumerate(product(Support, Hand), start=1)]
    plan = timetable(completed(order_class(listed)), Lookout(formed={1: frozenset("Bo")}))
    pages = plan_pages(setter, plan, PlanSettings(Paper.A4, binding=True, language=language))
    spelled = {leaf.spelled.words: leaf.spelled.x_height_mm for page in pages for leaf in leaves(page.items)
               if isinstance(leaf, Ink) and leaf.spelled}
    for support, hand in product(Support, Hand):
        told = (words.say("page.plan.help_unsettled", support=support) if hand is Hand.UNSETTLED
                else words.say("page.plan.help", support=support, hand=hand))
        assert spelled.get(told, 0.0) >= 1.2, told
    assert spelled.get(words.say("page.plan.whole_name"), 0.0) >= 1.1
