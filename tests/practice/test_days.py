"""The days of one week, worked by hand on a class of six at two tables."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from namewright.practice.days import Day, Learner, week_days
from namewright.settings import Support

FULL, PARTIAL, LIGHT, ALONE = Support
SIX = [
    Learner(1, FULL, ("b",), ("b",)), Learner(1, LIGHT, ("c",), ()), Learner(2, PARTIAL, ("b", "d"), ("b",)),
    Learner(2, ALONE, (), ()), Learner(1, PARTIAL, ("b",), ("b",)), Learner(2, FULL, ("e",), ()),
]


def test_a_week_of_six() -> None:
    """Two a day at most. Three need b; table 1 has two of them, so Monday is theirs, most help first.

    Of the rest table 1, with more help on the mean of all its children, goes first; at a table most help first.
    Minutes are 6, 5, 4 and 3 from the most help to the least.
    """
    assert week_days(SIX) == (
        Day(0, (0, 4), ("b",), 6 + 5), Day(1, (1,), ("c",), 4), Day(2, (5,), ("e",), 6), Day(3, (2,), ("b", "d"), 5),
        Day(4, (3,), (), 3))


def test_without_a_letter_of_the_week_monday_is_a_day_as_any() -> None:
    """Nobody needs one: the class is cut into five days; a class of none has none."""
    alone = [Learner(1, FULL, (), ()) for _ in range(10)]
    assert [day.children for day in week_days(alone)] == [(0, 1), (2, 3), (4, 5), (6, 7), (8, 9)]
    assert week_days([]) == ()


LEARNERS = st.builds(Learner, st.integers(1, 5), st.sampled_from(Support), st.just(("a", "b")),
                     st.sampled_from([(), ("a",)]))


@given(st.lists(LEARNERS, max_size=40))
def test_everyone_has_one_day_and_days_are_even(learners: list[Learner]) -> None:
    """Each child once; Monday holds an even share at most; the other days differ by one at most."""
    days = week_days(learners)
    assert sorted(at for day in days for at in day.children) == list(range(len(learners)))
    assert all(len(day.children) <= -(-len(learners) // 5) + 1 for day in days)
    if any(each.now for each in learners):
        assert all(learners[at].now for at in days[0].children)
    assert [day.day for day in days] == list(range(len(days)))


@pytest.mark.parametrize("count", [1, 4, 5, 6])
def test_a_small_class_has_no_empty_day(count: int) -> None:
    """Four children take four days, six take five."""
    days = week_days([Learner(1, FULL, ("a",), ("a",))] * count)
    assert len(days) == min(count, 5)
    assert all(day.children for day in days)
