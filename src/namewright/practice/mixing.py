"""The letters of a name in another order: no two neighbours stay neighbours where the name allows it, nothing unkind.

Letters are counted by what they look like: in Anna, any n beside any a is a pair of neighbours of the name. Pure.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping, Sequence
from itertools import pairwise, permutations
from math import factorial
from random import Random
from types import MappingProxyType

from namewright.names.clusters import clusters
from namewright.practice.unkind import is_unkind
from namewright.settings import Support

_TRY_ALL = 6  # letters of which every order is looked at
_STARTS = 30

Letters = tuple[str, ...]
ORDERS: Mapping[Support, int] = MappingProxyType({
    Support.FULL: 1, Support.PARTIAL: 1, Support.LIGHT: 2, Support.INDEPENDENT: 3})
"""How many orders a page shows: one as tiles to cut, or two or three to write from."""


def loose_letters(name: str) -> Letters:
    """Return what there is to set in order: every sign of a name but spaces."""
    return tuple(letter for letter in clusters(name) if not letter.isspace())


def kept_neighbours(name: Letters, order: Sequence[str]) -> int:
    """Count the neighbours of an order that are neighbours in the name, either way round."""
    pairs = _pairs(name)
    return sum(pair in pairs for pair in pairwise(order))


def _pairs(name: Letters) -> frozenset[tuple[str, str]]:
    """Return the neighbours of a name, either way round."""
    return frozenset(pairwise(name)) | frozenset(pairwise(name[::-1]))


def mixed(name: str, seed: str, count: int = 1) -> tuple[Letters, ...]:
    """Return ``count`` different orders of a name's letters, fewer where there are no more, one at the least.

    In each, as few neighbours of the name stay neighbours as a search finds (up to six letters: as few as can be);
    before that, no order spells an unkind word or the name itself where another does not.
    """
    letters, chance = loose_letters(name), Random(seed)
    found: list[Letters] = []
    for _ in range(count):
        orders = _orders(letters, chance)
        fresh = (order for order in orders if order not in found and (order != letters or not found))
        best = _best(letters, fresh)
        if best is None:
            break
        found.append(best)
    return tuple(found)


def _best(name: Letters, orders: Iterable[Letters]) -> Letters | None:
    """Return the first order that keeps fewest neighbours among those that spell nothing unkind and are not the name.

    One that keeps none is taken at once; where all are unkind or the name, the least faulty is. None for no orders.
    """
    best, faults = None, None
    for order in orders:
        these = (is_unkind("".join(order)), order == name, kept_neighbours(name, order))
        if faults is None or these < faults:
            best, faults = order, these
        if faults == (False, False, 0):
            break
    return best


def _orders(letters: Letters, chance: Random) -> Iterator[Letters]:
    """Yield orders to choose from, in the order of chance: all of a short name, a long one's from several starts."""
    if factorial(len(letters)) <= factorial(_TRY_ALL):
        every = list(dict.fromkeys(permutations(letters)))
        return iter(chance.sample(every, len(every)))
    starts = [tuple(chance.sample(letters, len(letters))) for _ in range(_STARTS)]
    return (_improved(letters, start) for start in starts)


def _improved(name: Letters, order: Letters) -> Letters:
    """Exchange two letters at a time, for as long as fewer neighbours stay."""
    pairs = _pairs(name)
    now, kept = list(order), kept_neighbours(name, order)
    while kept:
        least, a, b = min((kept + _gained(pairs, now, a, b), a, b) for a in range(len(now)) for b in range(a))
        if least >= kept:
            break
        now[a], now[b] = now[b], now[a]
        kept = least
    return tuple(now)


def _gained(pairs: frozenset[tuple[str, str]], order: list[str], a: int, b: int) -> int:
    """Return how many more neighbours are kept when two letters change places: only those beside them count."""
    edges = [at for at in {a - 1, a, b - 1, b} if 0 <= at < len(order) - 1]
    before = sum((order[at], order[at + 1]) in pairs for at in edges)
    order[a], order[b] = order[b], order[a]
    after = sum((order[at], order[at + 1]) in pairs for at in edges)
    order[a], order[b] = order[b], order[a]
    return after - before
