"""One week by one voice: letters, tables, days and children agree, worked by hand on a few invented names."""

from __future__ import annotations

from collections.abc import Sequence

import pytest

from namewright.practice.ordering import Order, Placed, completed, order_class
from namewright.practice.timetable import Lookout, Timetable, timetable, week_letter
from namewright.roster.children import Child
from namewright.settings import Support


def planned(names: Sequence[str], order: Order = Order.ROSTER) -> tuple[Placed, ...]:
    return completed(order_class([Child(name, name, name, "", line) for line, name in enumerate(names, 1)], order))


def of(names: Sequence[str], **asked: object) -> Timetable:
    return timetable(planned(names), Lookout(**asked))  # type: ignore[arg-type]


def test_the_letter_of_the_week_is_what_children_take_up() -> None:
    """All three names have an a and nothing else in common: it is the week's letter, and next for each of them."""
    plan = of(["Ada", "Bar", "Tal"])
    assert plan.weeks.weeks[0].letters == ("a",)
    assert [each.next for each in plan.children] == [("A", "a"), ("a",), ("a",)] or all(
        {week_letter(sign) for sign in each.next} == {"a"} for each in plan.children)
    assert "a" in plan.days[0].letters
    assert plan.tables[0].letters == ("a",)


def test_what_stands_is_taken_up_no_more() -> None:
    """Who has formed the week's letter takes up the first of its own; who has formed all has nothing and needs none."""
    plan = of(["Bar", "Tal", "Bo"], formed={1: frozenset("a"), 3: frozenset("Bo")})
    first, second, third = plan.children
    assert first.formed == ("a",)
    assert "a" not in first.next
    assert third.next == ()
    assert third.reason.key == "practice.all_formed"
    assert second.next


def test_who_needs_no_letter_of_the_week_takes_up_one_of_its_own() -> None:
    """The first in its order of practice, and only that."""
    plan = of(["Bar", "Tal", "Nan", "Zik"])
    zik = next(each for each in plan.children if each.placed.child.practice == "Zik")
    assert plan.weeks.weeks[0].letters == ("a",)
    assert zik.next == zik.letters[:1]
    assert zik.reason.key == "practice.next_own"


def test_a_capital_that_stands_leaves_the_small_letter() -> None:
    """A and a are one letter of the week: it is needed until both forms of the name stand."""
    half, whole = (of(["Ada"], formed={1: formed}) for formed in (frozenset("A"), frozenset("Aad")))
    assert ("a",) in [week.letters for week in half.weeks.weeks]
    assert whole.weeks.weeks == ()


def test_a_name_that_cannot_be_written_has_a_table_a_day_and_no_letters() -> None:
    """It is told so, and sits with the others."""
    plan = of(["Bo", "李"])
    other = next(each for each in plan.children if each.placed.child.practice == "李")
    assert (other.letters, other.next, other.reason.key) == ((), (), "practice.not_written")
    assert sorted(at for day in plan.days for at in day.children) == [0, 1]
    assert sorted(at for table in plan.tables for at in table.children) == [0, 1]


@pytest.mark.parametrize("order", [Order.PRACTICE, Order.NEED, Order.NAME])
def test_letters_do_not_hang_on_the_order_asked_for(order: Order) -> None:
    """The same letters each week, for the same children by name."""
    names = ["Mira", "Tilo", "Bo", "Ada", "Noor", "Wren"]
    def told(plan: Timetable) -> list[tuple[tuple[str, ...], set[str]]]:
        return [(week.letters, {plan.children[at].placed.child.label for at in week.completes})
                for week in plan.weeks.weeks]

    assert told(timetable(planned(names, order), Lookout())) == told(of(names))


def test_help_is_the_childs_own_or_the_usual() -> None:
    """Minutes follow from it: 3 beside a child who works alone, 6 where nobody said and full is usual."""
    child = Child("Bo", "Bo", "Bo", "", 1, support=Support.INDEPENDENT)
    plan = timetable(completed(order_class([child])), Lookout())
    assert (plan.children[0].support, plan.days[0].minutes) == (Support.INDEPENDENT, 3)
    assert of(["Bo"]).days[0].minutes == 6
    assert of(["Bo"], usual=Support.LIGHT).days[0].minutes == 4
