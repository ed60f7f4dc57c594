"""Tables against set partitioning solved by somebody else's solver (HiGHS, through SciPy)."""

from __future__ import annotations

import random
from itertools import combinations
from statistics import fmean

import numpy as np
import pytest

from namewright.practice.groups import group_class
from namewright.practice.table_worth import group_worth, pair_worth, worth
from namewright.practice.weeks import letters_of
from namewright.settings import Support

optimize = pytest.importorskip("scipy.optimize")


def best_worth(pairs: list[list[int]], children: int, tables: int) -> float:
    """Choose tables, out of every set of the even sizes, so that each child sits at one and the worth is greatest."""
    sizes = {children // tables, -(-children // tables)}
    columns = [group for size in sizes for group in combinations(range(children), size)]
    covers = np.zeros((children + 1, len(columns)))
    for at, group in enumerate(columns):
        covers[list(group), at] = 1
    covers[children, :] = 1
    exactly = np.array([1.0] * children + [float(tables)])
    gains = np.array([-group_worth(group, pairs) for group in columns])
    solved = optimize.milp(gains, constraints=optimize.LinearConstraint(covers, exactly, exactly),
                           integrality=np.ones(len(columns)), bounds=optimize.Bounds(0, 1))
    assert solved.success
    return float(-solved.fun)


def test_tables_come_near_the_best_partition() -> None:
    """On 18 random classes of 9 to 15 children at three tables, 99 % of the optimum on the mean, and 97 % at the least.

    Measured: the optimum in all 18.
    """
    ratios = []
    for seed in range(18):
        rng = random.Random(seed)
        children = 9 + seed % 7
        names = ["".join(rng.choice("bdklmnrst") + rng.choice("aeiou") for _ in range(rng.randint(1, 3))) + str(at)
                 for at in range(children)]
        levels = [rng.choice(list(Support)) for _ in names]
        pairs = pair_worth([letters_of(name.rstrip("0123456789")) for name in names], levels)
        found = group_class(pairs, names, 3)
        ratios.append(worth(found, pairs) / best_worth(pairs, children, 3))
    assert max(ratios) <= 1 + 1e-9
    assert fmean(ratios) >= 0.99
    assert min(ratios) >= 0.97
