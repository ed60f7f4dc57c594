"""What tables are worth, worked by hand, and the derived gain of an exchange. Names are invented."""

from __future__ import annotations

from itertools import combinations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from namewright.practice.table_worth import (
    NO_GAIN,
    best_exchange,
    broken,
    group_worth,
    pair_worth,
    sums_after,
    sums_with,
    wished,
    worth,
    worth_with,
)
from namewright.settings import Support

ADA, DAN, BO = frozenset("ad"), frozenset("dan"), frozenset("bo")


def test_a_pair_is_worth_its_letters_and_how_near_its_help_is() -> None:
    """Ada and Dan share a and d; like help adds two, one level apart one, further apart nothing."""
    table = pair_worth([ADA, DAN, BO], [Support.FULL, Support.PARTIAL, Support.FULL])
    assert table == [[0, 2 + 1, 0 + 2], [2 + 1, 0, 0 + 1], [0 + 2, 0 + 1, 0]]
    assert pair_worth([ADA, DAN], [Support.FULL, Support.INDEPENDENT]) == [[0, 2], [2, 0]]


def test_a_table_is_worth_each_child_s_mean() -> None:
    """Pairs 3, 2 and 1 of three children: means 2.5, 2 and 1.5, together 6. A child alone is worth nothing."""
    table = [[0, 3, 2], [3, 0, 1], [2, 1, 0]]
    assert group_worth((0, 1, 2), table) == pytest.approx(2.5 + 2.0 + 1.5)
    assert group_worth((1,), table) == 0
    assert worth([(0, 1), (2,)], table) == pytest.approx(3 + 3)
    assert worth_with(0, (1, 2), table) == 5


def test_a_wish_outweighs_any_letters() -> None:
    """Whoever shall sit together is worth more than a class of pairs that share an alphabet, and apart as much less."""
    plain = [[0, 26, 26], [26, 0, 26], [26, 26, 0]]
    table = wished(plain, [(0, 1)], [(1, 2)])
    most = sum(map(sum, plain))
    assert table[0][1] == table[1][0] > most
    assert table[1][2] == table[2][1] < -most
    assert table[0][2] == 26
    assert plain[0][1] == 26


def test_wishes_not_met_are_told() -> None:
    """Two who should sit together do not, and two who should not do."""
    assert broken([(0, 1), (2, 3)], [(0, 1), (1, 2)], [(2, 3), (0, 3)]) == ((1, 2), (2, 3))


@given(st.lists(st.integers(-3, 9), min_size=28, max_size=28), st.integers(1, 4),
       st.sets(st.integers(0, 7), max_size=3))
def test_the_best_exchange_is_the_one_after_which_the_tables_are_worth_most(drawn: list[int], size: int,
                                                                            settled: set[int]) -> None:
    """Among all that move nobody who is settled; its derived gain is the difference of the worths."""
    pairs = [[0] * 8 for _ in range(8)]
    for (one, other), value in zip(combinations(range(8), 2), drawn, strict=True):
        pairs[one][other] = pairs[other][one] = value
    left, right = list(range(size)), list(range(size, 8))

    def gained(going: int, coming: int) -> float:
        after = [[coming if at == going else at for at in left], [going if at == coming else at for at in right]]
        return worth(after, pairs) - worth([left, right], pairs)

    most = max((gained(x, y) for x in left for y in right if not {x, y} & settled), default=0)
    best = best_exchange(left, right, sums_with(left, pairs), sums_with(right, pairs), pairs, settled)
    assert best.gain == pytest.approx(max(0, most), abs=1e-6)
    if best is not NO_GAIN:
        assert gained(best.going, best.coming) == pytest.approx(most)
        assert not {best.going, best.coming} & settled


@given(st.lists(st.integers(-3, 9), min_size=10, max_size=10))
def test_sums_follow_whoever_comes_and_goes(drawn: list[int]) -> None:
    """Of five children, the last comes to the table of the first three for its second."""
    pairs = [[0] * 5 for _ in range(5)]
    for (one, other), value in zip(combinations(range(5), 2), drawn, strict=True):
        pairs[one][other] = pairs[other][one] = value
    assert sums_after(sums_with([0, 1, 2], pairs), 4, 1, pairs) == sums_with([0, 4, 2], pairs)
    assert sums_with([], pairs) == [0] * 5
