"""Which of a letter's free places go together: the best cues for all its strokes and turns, found by a bounded search.

Costs are in x-heights. A cue is placed only where it keeps off the others and none could be read as another's
(``Placed.leaves``); a letter has all its cues or none.
"""

from __future__ import annotations

import math
from bisect import bisect_left
from collections.abc import Sequence
from typing import TypeVar

from namewright.lines.arrows import Arrow
from namewright.lines.clearance import Cue, CueRoom, Number, Placed
from namewright.lines.cue_places import FreePlaces
from namewright.named_tuples import NamedTuple

T = TypeVar("T")

_TOGETHER, _PARTED = 0.5, 0.4  # costs of a number far from its arrow, or parted from it; found by trial
_Costed = Sequence[tuple[float, T | None]]
_NONE: Sequence[tuple[float, None]] = [(0.0, None)]
_Pair = tuple[float, int, int, int, Number | None, Arrow | None]
"""Its cost, then what tells it from others of the same cost: the side, the place of arrow and number among theirs."""
_HAIR = 1e-9
_STEP = 0.1  # x-heights: how much worse the cues may be that are looked for next


class Search(NamedTuple):
    """How long to search for places: so many numbers and arrows for a stroke, and so many cues tried."""

    numbers: int
    arrows: int  # on either side
    tries: int


QUICK = (Search(14, 5, 250), Search(24, 10, 600))  # enough for most letters
THOROUGH = (*QUICK, Search(60, 40, 4000))


def searched(room: CueRoom, wanted: Sequence[FreePlaces], searches: Sequence[Search]) -> list[Cue] | None:
    """Return a cue for each of the places that are wanted, in their order; None where there is no way.

    A search that finds none is begun anew with the place that it could not fill.
    """
    order = list(range(len(wanted)))
    for search in searches:
        choices = [_Ways(places, search, room.ruling.x_height_mm) for places in wanted]
        if not all([ways.any() for ways in choices]):
            continue
        for _ in wanted:
            walk = _Walk(room, choices, order, search.tries)
            walk.go(0, (), 0.0)
            if walk.best:
                return [cue for _, cue in sorted(zip(order, walk.best, strict=True), key=lambda pair: pair[0])]
            order.insert(0, order.pop(walk.deepest))
    return None


class _Ways:
    """Ways to mark a stroke or turn, the best first: every number with every arrow.

    It costs if the two are far apart, or parted by their own stroke. A pair costs at the least what its parts do, so
    none is put together, and no place looked at, before all that could be better: most letters need but a few.
    """

    def __init__(self, places: FreePlaces, search: Search, x_height_mm: float) -> None:
        self.known: list[Cue] = []
        self.least = 0.0  # a cost below which there is no way that is not yet known
        self._places, self._search, self._x_height_mm = places, search, x_height_mm
        self._more = True
        self._waiting: list[_Pair] = []

    def any(self) -> bool:
        """Return whether there is a way."""
        while not self.known and self.find():
            pass
        return bool(self.known)

    def find(self) -> bool:
        """Look for somewhat worse ways than those known, which may be in vain; return whether there may be any."""
        numbers, sides = self._places.numbers, self._places.arrows
        near = numbers.least if numbers else 0.0
        far = min([side.least for side in sides], default=0.0)
        if not self._more or math.inf in (near, far):
            self.least = math.inf
            return False
        self._more = any([side.has_more(self._search.arrows) for side in sides]) or (
            numbers is not None and numbers.has_more(self._search.numbers))
        before, self.least = self.least, max(self.least, near + far) + _STEP if self._more else math.inf
        near_ones = numbers.upto(self.least - far + _HAIR, self._search.numbers) if numbers else _NONE
        for at, side in enumerate(sides or [None]):
            far_ones = side.upto(self.least - near + _HAIR, self._search.arrows) if side else _NONE
            self._waiting += self._pairs(near_ones, far_ones, at, before)
        self._waiting.sort()
        ready = bisect_left(self._waiting, (self.least,))
        self.known += [Cue(number, arrow, cost) for cost, _, _, _, number, arrow in self._waiting[:ready]]
        del self._waiting[:ready]
        return True

    def _pairs(self, numbers: _Costed[Number], arrows: _Costed[Arrow], side: int, before: float) -> list[_Pair]:
        """Return the pairs whose parts cost no more than ``least``, and no less than ``before``."""
        return [(near + far + self._apart(number, arrow), side, at, index, number, arrow)
                for at, (far, arrow) in enumerate(arrows) for index, (near, number) in enumerate(numbers)
                if before <= near + far < self.least]

    def _apart(self, number: Number | None, arrow: Arrow | None) -> float:
        if number is None or arrow is None:
            return 0.0
        tail, leg = arrow.shaft[0], self._places.leg
        parted = leg is not None and number.beside_mm * leg.beside_mm(tail) < 0
        return _TOGETHER * math.dist(number.at, tail) / self._x_height_mm + _PARTED * parted


class _Walk:
    """A search for the best cues that stand together, one place after another, back from where none is left."""

    def __init__(self, room: CueRoom, choices: Sequence[_Ways], order: Sequence[int], tries: int) -> None:
        self._room, self._choices, self._order, self._tries = room, choices, order, tries
        self.deepest = 0
        self.best: tuple[Cue, ...] = ()
        self._cost = math.inf
        least = [choices[at].known[0].cost for at in order]
        self._least = [sum(least[at:]) for at in range(len(least) + 1)]

    def go(self, depth: int, placed: tuple[Placed, ...], cost: float) -> None:
        """Look on from cues that are ``placed``, while there are tries, for better ways than the best so far."""
        self.deepest = max(self.deepest, min(depth, len(self._order) - 1))
        if depth == len(self._order):
            self.best, self._cost = tuple([each.cue for each in placed]), cost
            return
        ways, rest, at = self._choices[self._order[depth]], self._least[depth + 1], 0
        while self._tries > 0:
            if at == len(ways.known):
                if cost + ways.least + rest >= self._cost or not ways.find():
                    return
                continue
            cue, at = ways.known[at], at + 1
            if cost + cue.cost + rest >= self._cost:
                return
            self._tries -= 1
            if all([each.leaves(cue) for each in placed]) and self._room.needs_mm(cue) < math.inf:
                self.go(depth + 1, (*placed, Placed(self._room, cue)), cost + cue.cost)
