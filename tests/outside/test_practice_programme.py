"""The plan of letters against an integer programme solved by somebody else's solver (HiGHS, through SciPy)."""

from __future__ import annotations

import random
from itertools import combinations
from statistics import fmean

import numpy as np
import pytest
from scipy import optimize

from namewright.practice.weeks import Letters, letter_weeks, letters_of, too_alike


def least_cost(sets: list[Letters], weeks: int) -> int:
    """Solve the plan as an integer programme.

    x[l, t] is 1 where letter l is that of week t; z[n, t] is 1 where name n is ready by week t, which takes each
    of its letters by then. Letters that look alike share neither a week nor weeks that follow each other. The cost is
    names × (weeks + 1) less the sum of z.
    """
    letters = sorted(frozenset().union(*sets))
    many, names = len(letters) * weeks, len(sets) * weeks
    rows, low, high = [], [], []

    def constrain(row: np.ndarray, least: float, most: float) -> None:
        rows.append(row)
        low.append(least)
        high.append(most)

    for week in range(weeks):
        row = np.zeros(many + names)
        row[[at * weeks + week for at in range(len(letters))]] = 1
        constrain(row, 0, 1)
    for at in range(len(letters)):
        row = np.zeros(many + names)
        row[at * weeks:(at + 1) * weeks] = 1
        constrain(row, 0, 1)
    for name, needed in enumerate(sets):
        for at in (letters.index(letter) for letter in needed):
            for week in range(weeks):
                row = np.zeros(many + names)
                row[at * weeks:at * weeks + week + 1] = -1
                row[many + name * weeks + week] = 1
                constrain(row, -np.inf, 0)
    for (at, one), (other, two) in combinations(enumerate(letters), 2):
        for week in range(weeks) if too_alike(one, two) else ():
            for near in (week, week + 1):
                if near < weeks:
                    for a, b in ((at, other), (other, at)):
                        row = np.zeros(many + names)
                        row[[a * weeks + week, b * weeks + near]] = 1
                        constrain(row, 0, 1)
    gain = np.concatenate([np.zeros(many), -np.ones(names)])
    solved = optimize.milp(gain, constraints=optimize.LinearConstraint(np.array(rows), low, high),
                           integrality=np.ones(many + names), bounds=optimize.Bounds(0, 1))
    assert solved.success
    return len(sets) * (weeks + 1) + round(solved.fun)


@pytest.mark.long
def test_the_plan_comes_near_the_integer_programme() -> None:
    """On 16 random classes of up to eight invented names and up to seven weeks, never better than the optimum.

    Within 1 % of it on the mean, and 6 % at the most. Measured: see the printed line of a failure.
    """
    ratios = []
    for seed in range(16):
        rng = random.Random(seed)
        names = ["".join(rng.choice("bdklmnrst") + rng.choice("aeiou") for _ in range(rng.randint(1, 3)))
                 for _ in range(rng.randint(3, 8))]
        weeks = rng.randint(3, 7)
        sets = [letters_of(name) for name in names]
        plan = letter_weeks(names, weeks)
        found = plan.cost + (weeks - len(plan.weeks)) * len(plan.waiting)
        ratios.append(found / least_cost(sets, weeks))
    assert min(ratios) >= 1.0, ratios
    assert fmean(ratios) <= 1.01, ratios
    assert max(ratios) <= 1.06, ratios
