"""What it is worth to have two children at one table, and what is gained when two children change seats.

What two children are worth to each other is told as one whole number a pair (``pair_worth``: letters shared, and how
near their levels of help are). A grouping is worth the sum, over all children, of the mean of a child's pairs with the
others of the table; that mean keeps larger tables from winning by size alone. Who must sit together, or must not, is
one more pair, worth far more than all letters (``wished``). Children are places in the class, from 0.
"""

from __future__ import annotations

from collections.abc import Collection, Sequence
from itertools import combinations

from namewright.named_tuples import NamedTuple
from namewright.practice.weeks import Letters
from namewright.settings import Support

HELP = 2  # the same level of help is worth as much as this many letters shared; a rule of ours
_WISH = 1_000_000  # far more than all letters together
GAIN_OF_A_WISH = 1_000  # what gains more than this meets a wish

Pairs = Sequence[Sequence[int]]


def pair_worth(sets: Sequence[Letters], levels: Sequence[Support]) -> list[list[int]]:
    """Return what each two children are worth to each other; 0 of a child with itself."""
    ranks = [list(Support).index(level) for level in levels]
    worths = [[len(one & other) for other in sets] for one in sets]
    for one, other in combinations(range(len(sets)), 2):
        near = max(0, HELP - abs(ranks[one] - ranks[other]))
        worths[one][other] = worths[other][one] = worths[one][other] + near
    for one in range(len(sets)):
        worths[one][one] = 0
    return worths


def wished(pairs: Pairs, together: Collection[tuple[int, int]], apart: Collection[tuple[int, int]]) -> list[list[int]]:
    """Return the worths with wishes laid over them."""
    table = [list(row) for row in pairs]
    for sign, some in ((_WISH, together), (-_WISH, apart)):
        for one, other in some:
            table[one][other] += sign
            table[other][one] += sign
    return table


def broken(groups: Sequence[Sequence[int]], together: Collection[tuple[int, int]], apart: Collection[tuple[int, int]],
           ) -> tuple[tuple[int, int], ...]:
    """Return the wishes that a grouping does not meet."""
    at = {place: number for number, group in enumerate(groups) for place in group}
    return (*(pair for pair in together if at[pair[0]] != at[pair[1]]),
            *(pair for pair in apart if at[pair[0]] == at[pair[1]]))


def worth(groups: Sequence[Sequence[int]], pairs: Pairs) -> float:
    """Return what a grouping is worth: see the module header."""
    return sum(group_worth(group, pairs) for group in groups)


def group_worth(group: Sequence[int], pairs: Pairs) -> float:
    """Return one table's part of the worth; 0 for a child alone."""
    return _mean(2 * sum(pairs[one][other] for one, other in combinations(group, 2)), len(group))


def _mean(both_ways: int, size: int) -> float:
    """Return a table's worth from the sum over its pairs, each counted from both sides."""
    return both_ways / max(1, size - 1)


def worth_with(place: int, others: Collection[int], pairs: Pairs) -> int:
    """Return what a child's pairs with some others are worth together."""
    own = pairs[place]
    return sum([own[other] for other in others])


class Exchange(NamedTuple):
    """Two children of two tables who change seats, and what the grouping gains by it."""

    gain: float
    going: int
    coming: int


NO_GAIN = Exchange(1e-9, -1, -1)  # what gains no more than rounding is no gain


def sums_with(group: Collection[int], pairs: Pairs) -> list[int]:
    """Return what each child of the class is worth to a table: the sum of its pairs with the children there."""
    return [sum(each) for each in zip(*(pairs[other] for other in group), strict=True)] or [0] * len(pairs)


def sums_after(sums: Sequence[int], coming: int, going: int, pairs: Pairs) -> list[int]:
    """Return what ``sums_with`` is for a table once one child has come for another."""
    return [old + more - less for old, more, less in zip(sums, pairs[coming], pairs[going], strict=True)]


def best_exchange(left: Sequence[int], right: Sequence[int], at_left: Sequence[int], at_right: Sequence[int],
                  pairs: Pairs, settled: Collection[int] = ()) -> Exchange:
    """Return the exchange between two tables that gains most, the first of equals; ``NO_GAIN`` where none helps.

    Write ``s(c, T)`` for the sum of child c's pairs with the children of table T, as ``sums_with`` has it (``at_left``
    and ``at_right``). When x leaves the left table for y, the left loses s(x, left), and gains s(y, left) less the pair
    of y with x, who is no longer there; the right the other way. A pair counts from both its sides, and a table of n
    children counts it 1 / (n − 1) times:

        gain = 2 · (s(y, left) − p(x, y) − s(x, left)) / (|left| − 1)
             + 2 · (s(x, right) − p(x, y) − s(y, right)) / (|right| − 1)
    """
    free = [(y, at_left[y], at_right[y]) for y in right if y not in settled]
    in_left, in_right = max(1, len(left) - 1), max(1, len(right) - 1)
    most, going, coming = NO_GAIN
    for x in left:
        if x not in settled:
            own, lost, won = pairs[x], at_left[x], at_right[x]
            for y, comes, goes in free:
                pair = own[y]
                gain = 2 * (comes - pair - lost) / in_left + 2 * (won - pair - goes) / in_right
                if gain > most:
                    most, going, coming = gain, x, y
    return Exchange(most, going, coming) if going >= 0 else NO_GAIN
