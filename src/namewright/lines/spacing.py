"""Optical spacing: how far apart two letters stand, by the gap between their strokes.

Letter units, on equal zones, so that spacing is a property of the alphabet and not of a ruling. The gap is
measured level by level over the heights that both letters share; a hollow deeper than ``_DEPTH`` counts as
that deep, since the eye does not look far into an open side. No point of one letter may come nearer than
the least gap to any point of the next.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from itertools import pairwise

from namewright.geometry.points import Point
from namewright.geometry.segments import Line
from namewright.letters.alphabet import Letter
from namewright.letters.strokes import Stroke
from namewright.lines.known_gaps import Gaps, known
from namewright.named_tuples import NamedTuple
from namewright.store import LETTERS, PAIRS, Store

_STEP = 10  # letter units to a level
_LOWEST = -150
_BASE = -_LOWEST // _STEP  # the level of the baseline
_LEVELS = 48  # from −150 to 330: room for two stacked marks over a capital
_DEPTH = 20.0
_TOLERANCE = 0.5
_KEPT = 24  # spacers and depths of tails

NATURAL_GAP = 58.0  # mean gap between two straight stems; found by trial against the counter of n (80)
WORD_GAP = 36.0  # between edge and edge of two words, besides the space itself
TIGHTEST_GAP = 40.0
MIN_GAP = 32.0  # no two letters come nearer than this, however large the ruling


class Profile(NamedTuple):
    """A letter's silhouette: for each level the least and greatest x of its centreline, or None where empty.

    The edges are those of what stands on the baseline: a tail that reaches under a neighbour is not one. ``into_left``
    and ``into_right`` are the silhouette as the eye takes it, no hollow deeper than ``_DEPTH``. ``reaching`` is the
    right side with its levels, what reaches farthest first.
    """

    left: tuple[float | None, ...]
    right: tuple[float | None, ...]
    edge_left: float
    edge_right: float
    into_left: tuple[float | None, ...]
    into_right: tuple[float | None, ...]
    reaching: tuple[tuple[float, int], ...]


def profile(letter: Letter, tail: float = 1.0) -> Profile:
    """Return the silhouette of a letter with its marks, in letter units.

    ``tail`` is the depth of the descender zone in x-heights: a slanting tail keeps its slope, so it reaches the
    further to the side the deeper the zone is (see ``setting``).
    """
    left, right = [math.inf] * _LEVELS, [-math.inf] * _LEVELS
    for stroke in letter.strokes():
        points = with_tail(stroke, tail).flattened(_TOLERANCE)
        levels = [_level(y) for _, y in points]
        for (a, b), (level, other) in zip(pairwise(points), pairwise(levels), strict=True):
            if level == other:  # most lines of a bowl are so short
                _widen(left, right, level, a[0], b[0])
            elif level < other:
                _cover(left, right, a, b, level, other)
            else:
                _cover(left, right, b, a, other, level)
    lefts = tuple([x if x < math.inf else None for x in left])
    rights = tuple([x if x > -math.inf else None for x in right])
    edge_left, edge_right = min(_standing(lefts)), max(_standing(rights))
    return Profile(lefts, rights, edge_left, edge_right,
                   tuple([None if x is None else min(x, edge_left + _DEPTH) for x in lefts]),
                   tuple([None if x is None else max(x, edge_right - _DEPTH) for x in rights]),
                   tuple(sorted([(x, level) for level, x in enumerate(rights) if x is not None], reverse=True)))


def _standing(side: Sequence[float | None]) -> list[float]:
    """Return one side of a silhouette from the baseline upwards, or all of it where nothing stands there."""
    return [x for x in side[_BASE:] if x is not None] or [x for x in side if x is not None]


def with_tail(stroke: Stroke, tail: float) -> Stroke:
    """Return a stroke whose last line, if it slants below the baseline as the tail of y does, reaches further.

    In a descender zone ``tail`` x-heights deep it then keeps its slope. Letter units.
    """
    last = stroke.segments[-1]
    if tail == 1.0 or not isinstance(last, Line) or last.start[1] > 0 or last.end[1] >= 0:
        return stroke
    (x0, y0), (x1, y1) = last
    return Stroke((*stroke.segments[:-1], Line((x0, y0), (x0 + (x1 - x0) * tail, y1))))


def _level(y: float) -> int:
    """Return the level that a height lies in; what is higher or lower than all of them is in the last."""
    level = round((y - _LOWEST) / _STEP)
    return 0 if level < 0 else level if level < _LEVELS else _LEVELS - 1


def _cover(left: list[float], right: list[float], low: Point, high: Point, first: int, last: int) -> None:
    """Widen the silhouette by a line from its lower end to its upper one, level by level."""
    (ax, ay), (bx, by) = low, high
    edges = [(level + 0.5) * _STEP + _LOWEST for level in range(first, last)]
    ways = [ax, *[ax + (bx - ax) * ((y - ay) / (by - ay)) for y in edges], bx]
    for level, (one, other) in enumerate(pairwise(ways), first):
        _widen(left, right, level, one, other)


def _widen(left: list[float], right: list[float], level: int, one: float, other: float) -> None:
    near, far = (one, other) if one < other else (other, one)
    if near < left[level]:
        left[level] = near
    if far > right[level]:
        right[level] = far


class Spacer:
    """Distances between letters of one alphabet, each pair worked out once.

    ``distance`` answers in letter units, from the origin of the left letter to that of the right one. ``profiles`` may
    be those of other spacers with the same tail. What is ``known`` beforehand need not be measured.
    """

    def __init__(self, mean_gap: float = NATURAL_GAP, min_gap: float = 0.0, tail: float = 1.0,
                 profiles: Store[str, Profile] | None = None, known: Gaps | None = None) -> None:
        self.mean_gap, self.min_gap, self.tail, self.known = mean_gap, min_gap, tail, known
        self.profiles: Store[str, Profile] = Store(LETTERS) if profiles is None else profiles
        self._pairs: Store[tuple[str, str], float] = Store(PAIRS)

    def distance(self, left: Letter, right: Letter) -> float:
        """Return how far right of the left letter's origin the right letter's origin stands."""
        return self._pairs.get((left.cluster, right.cluster), lambda: self._measured(left, right))

    def _measured(self, left: Letter, right: Letter) -> float:
        found = self.known.distance(left.cluster, right.cluster) if self.known else None
        if found is not None:
            return found
        one, two = self._profile(left), self._profile(right)
        return _tenths(max(_optical(one, two, self.mean_gap), _at_least(one, two, self.min_gap)))

    def word_distance(self, left: Letter, right: Letter) -> float:
        """Return the same for two letters of different words, but for the space: edge to edge, no tucking in."""
        return _tenths(self.edges(left)[1] - self.edges(right)[0] + max(WORD_GAP, self.min_gap))

    def edges(self, letter: Letter) -> tuple[float, float]:
        """Return the left and the right edge of what of a letter stands on the baseline."""
        found = self.known.edges(letter.cluster) if self.known else None
        if found is not None:
            return found
        side = self._profile(letter)
        return side.edge_left, side.edge_right

    def _profile(self, letter: Letter) -> Profile:
        return self.profiles.get(letter.cluster, lambda: profile(letter, self.tail))


class Spacers:
    """The spacers of one alphabet on all its rulings: most rulings space alike, so that pairs are worked out once.

    Of an alphabet of ``usual`` letters some distances may be known beforehand.
    """

    def __init__(self, *, usual: bool = False) -> None:
        self.usual = usual
        self._spacers: Store[tuple[float, float, float], Spacer] = Store(_KEPT)
        self._profiles: Store[float, Store[str, Profile]] = Store(_KEPT)

    def spacer(self, mean_gap: float, min_gap: float, tail: float) -> Spacer:
        """Return the spacer for these gaps and this depth of tails (see ``Spacer``)."""
        return self._spacers.get((mean_gap, min_gap, tail), lambda: Spacer(
            mean_gap, min_gap, tail, self._profiles.get(tail, lambda: Store(LETTERS)),
            known((mean_gap, min_gap, tail)) if self.usual else None))


def _tenths(distance: float) -> float:
    """Round up to a tenth of a letter unit, one unit of the compiled fonts: a name set in them is as wide as ours."""
    return math.ceil(round(distance * 10, 6)) / 10


def _optical(left: Profile, right: Profile, mean_gap: float) -> float:
    """Return the distance at which the mean gap, level by level, is ``mean_gap``.

    Where the two share no level (a hyphen and a comma, say) their edges count.
    """
    insets = [a - b for a, b in zip(left.into_right, right.into_left, strict=True) if a is not None and b is not None]
    shared = sum(insets) / len(insets) if insets else left.edge_right - right.edge_left
    return shared + mean_gap


def _at_least(left: Profile, right: Profile, least: float) -> float:
    """Return the distance at which no two points of the letters are nearer than ``least``."""
    reach = int(least // _STEP)
    across = [math.sqrt(least * least - (rise * _STEP) ** 2) for rise in range(reach + 1)]
    foremost = min([b for b in right.left if b is not None])
    needed = -math.inf
    for a, level in left.reaching:
        if a - foremost + least <= needed:
            break
        lowest = max(0, level - reach)
        for other, b in enumerate(right.left[lowest:level + reach + 1], lowest):
            if b is not None and a - b + across[abs(other - level)] > needed:
                needed = a - b + across[abs(other - level)]
    return needed
