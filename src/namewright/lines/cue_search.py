"""Which of a letter's free places go together: the best cues for all its strokes and turns, found by a bounded search.

Costs are in x-heights. A cue is placed only where it keeps off the others and none could be read as another's
(``CueRoom.fits``); a letter has all its cues or none.
"""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from typing import NamedTuple

from namewright.geometry.points import Point
from namewright.lines.arrows import Arrow
from namewright.lines.clearance import Cue, CueRoom
from namewright.lines.cue_places import Places

_TOGETHER, _PARTED = 0.5, 0.4  # costs of a number far from its arrow, or parted from it; found by trial


class Search(NamedTuple):
    """How long to search for places: so many numbers and arrows for a stroke, and so many cues tried."""

    numbers: int
    arrows: int  # on either side
    tries: int


QUICK = (Search(14, 5, 250), Search(24, 10, 600))  # enough for most letters
THOROUGH = (*QUICK, Search(60, 40, 4000))


def searched(room: CueRoom, wanted: Sequence[Places], searches: Sequence[Search]) -> list[Cue] | None:
    """Return a cue for each of the places that are wanted, in their order; None where there is no way.

    A search that finds none is begun anew with the place that it could not fill.
    """
    order = list(range(len(wanted)))
    for search in searches:
        choices = [_choices(places, search, room.ruling.x_height_mm) for places in wanted]
        if not all(choices):
            continue
        for _ in wanted:
            walk = _Walk(room, choices, order, search.tries)
            walk.go(0, (), 0.0)
            if walk.best:
                return [cue for _, cue in sorted(zip(order, walk.best, strict=True), key=lambda pair: pair[0])]
            order.insert(0, order.pop(walk.deepest))
    return None


def _choices(places: Places, search: Search, x_height_mm: float) -> list[Cue]:
    """Return ways to mark a stroke or turn, the best first."""
    arrows = [found for side in places.arrows for found in side.first(search.arrows)]
    if places.numbers is None:
        return sorted((Cue(places.figure, None, arrow, cost) for cost, arrow in arrows), key=lambda cue: cue.cost)
    numbers = places.numbers.first(search.numbers)
    if not places.arrows:
        return [Cue(places.figure, at, None, cost) for cost, at in numbers]
    return sorted(_together(places, numbers, arrows, x_height_mm), key=lambda cue: cue.cost)


def _together(places: Places, numbers: Sequence[tuple[float, Point]], arrows: Sequence[tuple[float, Arrow]],
              x_height_mm: float) -> Iterator[Cue]:
    """Yield every number with every arrow: it costs if they are far apart, or parted by their own stroke."""
    leg = places.leg
    sides = [leg.beside_mm(at) if leg and leg.ahead_mm(at) > 0 else 0.0 for _, at in numbers]
    for far, arrow in arrows:
        tail = arrow.shaft[0]
        own = leg.beside_mm(tail) if leg else 0.0
        for (near, at), side in zip(numbers, sides, strict=True):
            apart = _TOGETHER * math.dist(at, tail) / x_height_mm + _PARTED * (side * own < 0)
            yield Cue(places.figure, at, arrow, near + far + apart)


@dataclass
class _Walk:
    """A search for the best cues that stand together, one place after another, back from where none is left."""

    room: CueRoom
    choices: Sequence[Sequence[Cue]]
    order: Sequence[int]
    tries: int
    deepest: int = 0
    best: tuple[Cue, ...] = ()
    _cost: float = math.inf

    def __post_init__(self) -> None:
        least = [self.choices[at][0].cost for at in self.order]
        self._least = [sum(least[at:]) for at in range(len(least) + 1)]

    def go(self, depth: int, placed: tuple[Cue, ...], cost: float) -> None:
        """Look on from cues that are ``placed``, while there are tries, for better ways than the best so far."""
        self.deepest = max(self.deepest, min(depth, len(self.order) - 1))
        if depth == len(self.order):
            self.best, self._cost = placed, cost
            return
        for cue in self.choices[self.order[depth]]:
            if self.tries <= 0 or cost + cue.cost + self._least[depth + 1] >= self._cost:
                return
            self.tries -= 1
            if self.room.fits(cue, placed):
                self.go(depth + 1, (*placed, cue), cost + cue.cost)
