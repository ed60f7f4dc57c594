"""Letters of the week: proved on small classes, greedy beyond, and always a plan. Names are invented."""

from __future__ import annotations

import random
from collections import Counter
from itertools import permutations
from statistics import fmean

import pytest
from hypothesis import given
from hypothesis import strategies as st

from namewright.practice.weeks import (
    exact_steps,
    greedy_steps,
    letter_weeks,
    letters_of,
    plan_cost,
)

CLASSES = st.lists(st.text("abcdeéABß-", max_size=5), max_size=7)


def syllables(rng: random.Random) -> str:
    return "".join(rng.choice("bcdfghjklmnprstvwyz") + rng.choice("aeiou") for _ in range(rng.randint(1, 3)))


@given(CLASSES, st.integers(1, 6))
def test_no_order_of_letters_is_better(names: list[str], weeks: int) -> None:
    """On small classes the plan costs what the best of all orders of letters costs, and is called exact."""
    sets = [letters_of(name) for name in names]
    letters = sorted(frozenset().union(*sets)) if sets else []
    plan = letter_weeks(names, weeks)
    orders = permutations(letters, min(weeks, len(letters)))
    assert plan.exact
    assert plan.cost == min(plan_cost(order, sets, weeks) for order in orders)


@given(CLASSES, st.integers(1, 8), st.sampled_from([0, 10_000]))
def test_a_plan_accounts_for_every_name(names: list[str], weeks: int, most: int) -> None:
    """Each name with letters is ready in one week or waits; its letters are met by then; no letter comes twice."""
    plan = letter_weeks(names, weeks, most)
    order = [week.letter for week in plan.weeks]
    assert len(order) == len(set(order)) <= weeks
    ready = {place: at for at, week in enumerate(plan.weeks, start=1) for place in week.ready}
    assert sorted([*ready, *plan.waiting]) == [at for at, name in enumerate(names) if letters_of(name)]
    assert all(letters_of(names[place]) <= set(order[:week]) for place, week in ready.items())
    assert plan.cost == sum(ready.values()) + (weeks + 1) * len(plan.waiting)


def test_greedy_beside_exact_on_random_classes() -> None:
    """On 60 random classes of 8 to 24 names and ten weeks greedy is never better and within 10 %, 3 % on the mean.

    Measured: 1.2 % dearer on the mean, 6.9 % at worst, equal on 25 of 60.
    """
    rng = random.Random(4)
    ratios = []
    for _ in range(60):
        names = [syllables(rng) + rng.choice(["", "n", "s", "r"]) for _ in range(rng.choice([8, 12, 18, 24]))]
        exact, greedy = letter_weeks(names), letter_weeks(names, most_steps=0)
        assert (exact.exact, greedy.exact) == (True, False)
        ratios.append(greedy.cost / exact.cost)
    assert min(ratios) >= 1.0
    assert max(ratios) <= 1.10
    assert fmean(ratios) <= 1.03


def test_too_many_unions_are_given_up_and_said() -> None:
    """Beyond the states allowed there is no exact answer, and the plan says it is not exact."""
    rng = random.Random(1)
    names = [syllables(rng) for _ in range(200)]
    assert exact_steps(Counter(map(letters_of, names)), 10, 500) is None
    assert not letter_weeks(names, 10, 500).exact
    assert greedy_steps(Counter(map(letters_of, names)), 10)


def test_letters_are_one_whatever_case_or_mark() -> None:
    """É, e and é are one letter of the week; a hyphen is none; ł is a letter of its own."""
    assert letters_of("Éve-é") == frozenset("ev")
    assert letters_of("Ła") == frozenset("ła")


@pytest.mark.parametrize("names", [[], ["-"], ["", " "]])
def test_a_class_with_nothing_to_write_has_an_empty_plan(names: list[str]) -> None:
    """No letters, no weeks, no error."""
    plan = letter_weeks(names)
    assert (plan.weeks, plan.waiting, plan.cost) == ((), (), 0)


def test_no_weeks_are_refused() -> None:
    """Fewer than one week is said in a sentence."""
    with pytest.raises(ValueError, match="at least one week"):
        letter_weeks(["Ada"], 0)


def test_the_same_class_in_another_order_has_the_same_letters() -> None:
    """The order of the roster does not change the letters of the weeks."""
    names = ["Bo", "Obed", "Deb", "Noor", "Nora", "Aron"]
    assert [w.letter for w in letter_weeks(names).weeks] == [w.letter for w in letter_weeks(names[::-1]).weeks]


def test_among_equals_the_own_initial_comes_first() -> None:
    """One child begins with the own first letter, not with an easier one; the letter of more names goes before it."""
    assert letter_weeks(["Éva"]).weeks[0].letter == "e"
    assert [week.letter for week in letter_weeks(["Zora", "Dora"]).weeks][:3] == ["a", "o", "r"]


def test_one_name_at_once_goes_before_three_in_the_last_week() -> None:
    """A name ready in the first of four weeks is worth four weeks, three ready in the last are worth three."""
    plan = letter_weeks(["X", "Bcde", "Debc", "Cdeb"], 4)
    assert (plan.weeks[0].letter, plan.cost) == ("x", 1 + 3 * 5)


def test_a_name_that_takes_every_week_there_is_can_be_won() -> None:
    """The greedy plan, too, finishes a name in the last week rather than begin names that will not be finished."""
    plan = letter_weeks(["Abc", "Dxyz", "Dxyw"], 3, most_steps=0)
    assert [week.ready for week in plan.weeks] == [(), (), (0,)]
