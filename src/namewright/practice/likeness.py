"""How alike two letters look, found on our own strokes: look-alikes, mirror and turned twins, capital and small.

A distance is the mean gap between the ink of one letter and the nearest ink of the other, both ways, in letter
units (100 to a zone): 0 for the same shape. Ink counts once, however often the pencil went over it, and ink that
runs another way is farther off: square to each other counts as 80 units, for a level stroke on an upright one is
no likeness. Published ratings stay in ``evidence``; the two are held against each other in the tests.
Out of scope: what to do about look-alikes (``sequence``).
"""

from __future__ import annotations

import math
from collections.abc import Iterable
from enum import Enum
from functools import cache
from itertools import combinations, repeat

from namewright.letters.strokes import Stroke
from namewright.practice.features import letter_strokes, walked

TWIN_WITHIN, TWIN_GAIN = 12.5, 0.5  # units, and the share of the gap that may be left; both found by trial
BRIDGE_WITHIN = 13.0  # units, capital and small at one height; found by trial
TURN_COST = 5.0  # units by which a mirrored or turned letter is less alike than one that stands the same way
_STEP = 8.0
_HEADING = 40.0  # half of what ink that runs square to other ink is put away from it, in units
_FAR = math.inf

Spot = tuple[float, float, float, float]  # x, y, and the direction of the ink, doubled so that there is no sense
Points = tuple[Spot, ...]


class Turn(Enum):
    """A way to lay a letter over another: as it stands, mirrored, turned upside down (half a turn), or tipped."""

    NONE = (1, 1)
    MIRROR = (-1, 1)
    HALF = (-1, -1)
    TIPPED = (1, -1)


@cache
def shape(sign: str) -> Points:
    """Return spots on what the eye sees of a sign, about the middle of its width; none if we cannot draw it."""
    seen: dict[tuple[int, int], Spot] = {}
    for stroke in letter_strokes(sign) or ():
        for spot in _spots(stroke):
            seen.setdefault((round(spot[0] / _STEP), round(spot[1] / _STEP)), spot)
    return _shifted(tuple(seen.values()), -_middle(tuple(seen.values()))) if seen else ()


def _spots(stroke: Stroke) -> Iterable[Spot]:
    way = walked(stroke, _STEP)
    if stroke.is_dot:  # a dot runs no way at all
        yield (*way[0], 0.0, 0.0)
        return
    for at, (x, y) in enumerate(way):
        (ax, ay), (bx, by) = way[max(0, at - 1)], way[min(len(way) - 1, at + 1)]
        twice = 2 * math.atan2(by - ay, bx - ax)
        yield (x, y, _HEADING * math.cos(twice), _HEADING * math.sin(twice))


def gap(one: Points, other: Points, most: float = math.inf) -> float:
    """Return the mean gap between two sets of ink: from each spot to the nearest of the other, both ways.

    A gap that turns out wider than ``most`` is not measured to the end, and is infinite.
    """
    if not one or not other:
        return _FAR
    there = _to_nearest(one, other, 2 * most)
    return (there + _to_nearest(other, one, 2 * most - there)) / 2 if there < _FAR else _FAR


def _to_nearest(spots: Points, others: Points, most: float) -> float:
    total = 0.0
    for spot in spots:
        total += min(map(math.dist, repeat(spot), others))
        if total > most * len(spots):
            return _FAR
    return total / len(spots)


@cache
def distance(one: str, other: str) -> float:
    """Return how unlike two signs look on the same lines, 0 being alike; infinite where one cannot be drawn.

    They are laid with left edges, middles or right edges together, whichever is nearest. A letter also looks
    like its mirror image, or itself turned, only less so: ``TURN_COST`` is a rule of ours.
    """
    first, second = shape(one), shape(other)
    if not first or not second:
        return _FAR
    return min(_aligned_gap(first, turned(second, turn)) + (TURN_COST if turn is not Turn.NONE else 0.0)
               for turn in Turn)


def _aligned_gap(one: Points, other: Points) -> float:
    room = (_size(one)[0] - _size(other)[0]) / 2
    return min(gap(one, _shifted(other, dx)) for dx in {0.0, room, -room})


def _shifted(spots: Points, dx: float, dy: float = 0.0) -> Points:
    return tuple((x + dx, y + dy, u, v) for x, y, u, v in spots)


def turned(spots: Points, turn: Turn) -> Points:
    """Return a shape mirrored, turned or tipped about the middle of its own box, its place on the lines kept."""
    across, up = turn.value
    twice = (min(y for _, y, _, _ in spots) + max(y for _, y, _, _ in spots)) if up < 0 else 0.0
    return tuple((across * x, up * y + twice, u, across * up * v) for x, y, u, v in spots)


_TWINS = {"bd": Turn.MIRROR, "bg": Turn.HALF, "bp": Turn.TIPPED, "bq": Turn.HALF, "dp": Turn.HALF, "dq": Turn.TIPPED,
          "nu": Turn.HALF, "pq": Turn.MIRROR, "AV": Turn.TIPPED, "FL": Turn.TIPPED}
"""The twins among a–z and among A–Z as ``measured_twin`` finds them: every class asks, so they are found beforehand."""


def twin(one: str, other: str) -> Turn | None:
    """Return how the one letter becomes the other by mirroring, turning or tipping; None where it does not."""
    pair = one + other
    if pair.isascii() and len(one) == len(other) == 1 and (pair.islower() or pair.isupper()):
        return _TWINS.get(pair) or _TWINS.get(other + one)
    return measured_twin(one, other)


@cache
def measured_twin(one: str, other: str) -> Turn | None:
    """Return the same, found on our own strokes.

    Both are laid box on box, so b and p (tipped) are twins though they stand on different lines. The turn has to
    close half the gap at least: letters that are near as they stand, as c and o, are look-alikes, not twins.
    """
    if one == other or not _same_size(shape(one), shape(other)):
        return None
    first, second = _boxed(shape(one)), _boxed(shape(other))
    gaps = {turn: gap(first, _boxed(turned(second, turn)), TWIN_WITHIN) for turn in Turn if turn is not Turn.NONE}
    best = min(gaps, key=lambda turn: gaps[turn])
    if gaps[best] > TWIN_WITHIN:
        return None
    return best if gaps[best] <= TWIN_GAIN * gap(first, second) else None


def _size(spots: Points) -> tuple[float, float]:
    xs, ys = [spot[0] for spot in spots], [spot[1] for spot in spots]
    return (max(xs) - min(xs), max(ys) - min(ys))


def _middle(spots: Points) -> float:
    xs = [spot[0] for spot in spots]
    return (min(xs) + max(xs)) / 2


def _same_size(one: Points, other: Points) -> bool:
    """Say whether two boxes are alike to a quarter of a zone: what is not cannot be a twin, and is not compared."""
    return bool(one and other) and all(abs(a - b) <= 25 for a, b in zip(_size(one), _size(other), strict=True))


def _boxed(spots: Points) -> Points:
    """Return a shape about the middle of its box."""
    ys = [spot[1] for spot in spots]
    return _shifted(spots, -_middle(spots), -(min(ys) + max(ys)) / 2)


def twins(signs: Iterable[str]) -> tuple[tuple[str, str, Turn], ...]:
    """Return every pair of different signs that are twins, in the order given."""
    listed = tuple(dict.fromkeys(signs))
    return tuple((one, other, turn) for one, other in combinations(listed, 2)
                 if (turn := twin(one, other)) is not None)


@cache
def looks_like_its_capital(sign: str) -> bool:
    """Say whether a small letter has the shape of its capital, brought to one height: c, o, s, but not a, g, r."""
    capital = sign.upper()
    if capital == sign or len(capital) != 1 or not shape(sign) or not shape(capital):
        return False
    return gap(_at_height(shape(sign)), _at_height(shape(capital)), BRIDGE_WITHIN) <= BRIDGE_WITHIN


def _at_height(spots: Points) -> Points:
    """Return a shape about the middle of its box, one zone high."""
    scale = 100 / max(_size(spots)[1], 1.0)
    return tuple((x * scale, y * scale, u, v) for x, y, u, v in _boxed(spots))
