"""Letters of the week: who needs them, look-alikes apart, review, every name accounted for. Names are invented."""

from __future__ import annotations

from itertools import pairwise, product

import pytest
from hypothesis import given
from hypothesis import strategies as st

from namewright.message import Problem
from namewright.practice.sequence import look_alike
from namewright.practice.weeks import MAX_REVIEWED, letter_weeks, letters_of, plan_cost, too_alike

CLASSES = st.lists(st.text("aocgbdilnueéABß-", max_size=6), max_size=8)


@given(CLASSES, st.integers(1, 8), st.integers(1, 3), st.lists(st.sets(st.sampled_from("aocgbd")), max_size=4))
def test_a_plan_accounts_for_every_name(names: list[str], weeks: int, a_week: int, known: list[set[str]]) -> None:
    """Each name is complete in one week, waits, or was complete before; its letters are all met by then."""
    formed = [frozenset(each) for each in known[:len(names)]]
    plan = letter_weeks(names, weeks, a_week, formed=formed)
    assert len(plan.weeks) <= weeks
    assert all(len(week.letters) <= a_week for week in plan.weeks)
    complete = {place: at for at, week in enumerate(plan.weeks, start=1) for place in week.completes}
    writers = [at for at, name in enumerate(names) if letters_of(name)]
    assert sorted([*complete, *plan.waiting, *plan.formed]) == writers
    known_of = [*formed, *(frozenset() for _ in names[len(formed):])]
    for place, at in complete.items():
        met = {letter for week in plan.weeks[:at] for letter in (*week.letters, *week.review)}
        assert letters_of(names[place]) - known_of[place] <= met
    lacking = [letters_of(name) - each for name, each in zip(names, known_of, strict=True)]
    assert plan.cost == plan_cost([week.letters for week in plan.weeks], lacking, len(plan.weeks))


@given(CLASSES, st.integers(1, 3), st.lists(st.sampled_from("aocgbd").map(lambda letter: (letter,)), max_size=2))
def test_look_alikes_never_meet(names: list[str], a_week: int, taught: list[tuple[str, ...]]) -> None:
    """No two letters of one week, of weeks that follow each other, or of last week and the first, look alike."""
    plan = letter_weeks(names, 12, a_week, taught=taught)
    weeks = [*taught[-1:], *(week.letters for week in plan.weeks)]
    for one, other in pairwise(weeks):
        assert not any(too_alike(a, b) for a, b in product(one, other))
    for week in plan.weeks:
        assert not any(too_alike(a, b) for a, b in product(week.letters, (*week.letters, *week.review)))


@given(CLASSES, st.integers(1, 3))
def test_nothing_is_taken_up_that_nobody_needs(names: list[str], a_week: int) -> None:
    """Where every child has formed a letter it is neither taken up nor reviewed."""
    formed = [letters_of(name) & frozenset("aoe") for name in names]
    for week in letter_weeks(names, 12, a_week, formed=formed).weeks:
        assert not {"a", "o", "e"} & {*week.letters, *week.review}


def test_capitals_count_as_look_alikes_too() -> None:
    """E and F look alike as capitals, a and o as small letters, a and e in neither case."""
    assert [too_alike(*pair) for pair in ("ef", "ao", "ae", "aa")] == [True, True, False, False]
    assert look_alike("E", "F")


def test_where_only_look_alikes_are_left_something_else_stands_between() -> None:
    """a and o must not follow each other: an earlier letter comes once more between them, or a week has none."""
    assert [week.letters for week in letter_weeks(["Oa"]).weeks] == [("o",), (), ("a",)]
    assert [week.letters for week in letter_weeks(["Toa"], taught=[("t",), ("o",)]).weeks][:2] == [("t",), ("a",)]


def test_last_week_s_letter_has_no_look_alike_after_it_either() -> None:
    """Behind o the first week has none where only a is left, and t where t was taught: a comes a week later."""
    for taught, first in (([("a",), ("o",)], ()), ([("t",), ("a",), ("o",)], ("t",))):
        assert [week.letters for week in letter_weeks(["A"], taught=taught).weeks][:2] == [first, ("a",)]


def test_a_letter_of_earlier_weeks_is_reviewed_and_not_taken_up_again() -> None:
    """What was taught comes back as review while there are other letters, and may complete a name."""
    plan = letter_weeks(["Bat", "Tab", "Ben"], taught=[("t",), ("a",)])
    assert not {"a", "t"} & {letter for week in plan.weeks for letter in week.letters}
    assert {"a", "t"} <= {letter for week in plan.weeks for letter in week.review}
    again = letter_weeks(["Ta"], taught=[("t",), ("a",)])
    assert {letter for week in again.weeks for letter in week.letters} == {"a", "t"}


def test_review_is_spread_and_short() -> None:
    """At most two earlier letters a week, each after one week and then at growing distances."""
    plan = letter_weeks(["Benita", "Kolmer", "Duse"], 12)
    assert max(len(week.review) for week in plan.weeks) <= MAX_REVIEWED
    seen = [at for at, week in enumerate(plan.weeks) if plan.weeks[0].letters[0] in week.review]
    steps = [b - a for a, b in pairwise([0, *seen])]
    assert steps[0] >= 1
    assert steps == sorted(steps)


def test_letters_are_one_whatever_case_or_mark() -> None:
    """É, e and é are one letter of the week; a hyphen is none; ł is a letter of its own."""
    assert letters_of("Éve-é") == frozenset("ev")
    assert letters_of("Ła") == frozenset("ła")


@pytest.mark.parametrize("names", [[], ["-"], ["", " "]])
def test_a_class_with_nothing_to_write_has_an_empty_plan(names: list[str]) -> None:
    """No letters, no weeks, no error."""
    plan = letter_weeks(names)
    assert (plan.weeks, plan.waiting, plan.formed, plan.cost) == ((), (), (), 0)


@pytest.mark.parametrize(("weeks", "a_week"), [(0, 1), (5, 0), (5, 4)])
def test_numbers_out_of_range_are_refused(weeks: int, a_week: int) -> None:
    """Fewer than one week, no letter a week, or more than three."""
    with pytest.raises(Problem):
        letter_weeks(["Ada"], weeks, a_week)


def test_the_same_class_in_another_order_has_the_same_letters() -> None:
    """The order of the roster does not change the letters of the weeks."""
    names = ["Bo", "Obed", "Deb", "Noor", "Nora", "Aron"]
    assert [w.letters for w in letter_weeks(names).weeks] == [w.letters for w in letter_weeks(names[::-1]).weeks]


def test_among_equals_the_own_initial_comes_first() -> None:
    """One child begins with the own first letter; the letter of more names goes before it."""
    assert letter_weeks(["Éma"]).weeks[0].letters == ("e",)
    assert letter_weeks(["Zora", "Dora"]).weeks[0].letters[0] in "ora"


def test_one_name_at_once_goes_before_three_in_the_last_week() -> None:
    """A name complete in the first of four weeks is worth four weeks, three complete in the last are worth three."""
    plan = letter_weeks(["X", "Bkse", "Ksbe", "Sebk"], 4)
    assert plan.weeks[0].letters == ("x",)


def test_a_name_that_takes_every_week_there_is_can_be_won() -> None:
    """A name is finished in the last week rather than others begun that will not be finished."""
    plan = letter_weeks(["Amt", "Dxyz", "Dxyw"], 3)
    assert [week.completes for week in plan.weeks] == [(), (), (0,)]


def test_two_letters_a_week_need_about_half_the_weeks() -> None:
    """Six letters that no pair of which looks alike: six weeks at one a week, three at two, two at three."""
    assert [len(letter_weeks(["Matkes"], 10, pace).weeks) for pace in (1, 2, 3)] == [6, 3, 2]
