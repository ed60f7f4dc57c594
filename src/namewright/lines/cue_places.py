"""Where the cues of one letter may stand: free places for the number and the arrow of each stroke, the best first.

Millimetres, y down, about the letter's own origin. Places are looked for once a letter, whatever stands beside it, and
then held against the white that it has (``Places.between``). Out of scope: what is free (``clearance``), and which
places go together (``cue_search``).
"""

from __future__ import annotations

import itertools
import math
from collections.abc import Iterable, Iterator, Sequence
from typing import Generic, NamedTuple, TypeVar

from namewright.geometry.points import Point
from namewright.geometry.segments import heading_out
from namewright.letters.strokes import Stroke
from namewright.lines.arrows import Arrow, Leg, Track, Way, arrow_at, legs, places, stretches
from namewright.lines.clearance import CLEAR_MM, CueRoom, Sides, number_box

T = TypeVar("T")

# Where a number may stand: how far from its start, the nearest first, and at what turn from the direction of travel,
# behind the start first. The turns that most letters take come first, so that their numbers stand alike.
_NUMBER_RINGS = (1.0, 1.2, 1.45, 1.75, 2.2)
_NUMBER_TURNS = (180, 135, 225, 100, 260, 70, 290, 40, 320, 160, 200, 120, 240, 85, 275, 55, 305, 20, 340)
_TURN_COST = 0.16  # of the last turn, in x-heights; found by trial


class Kept(Generic[T]):
    """Values that take work to find, found one by one when asked for, and kept."""

    def __init__(self, values: Iterable[T]) -> None:
        self._values, self._found = iter(values), list[T]()

    def first(self, count: int) -> list[T]:
        """Return the first ``count``, or as many as there are."""
        found = self._found
        if len(found) < count:
            found += itertools.islice(self._values, count - len(found))
        return found[:count]

    def each(self) -> Iterator[T]:
        """Yield all, those found before and then the others; several may do so in turn."""
        found, at = self._found, 0
        while at < len(found) or self._find():
            yield found[at]
            at += 1

    def _find(self) -> bool:
        """Find one more; return whether there was one."""
        before = len(self._found)
        self._found += itertools.islice(self._values, 1)
        return len(self._found) > before


class Places(NamedTuple):
    """Free places with their costs, for a number (not at a turn) and for an arrow on either side (not at a dot)."""

    figure: int
    numbers: Kept[tuple[float, Point]] | None
    arrows: Sequence[Kept[tuple[float, Arrow]]]
    leg: Leg | None = None  # that the stroke starts with

    def between(self, room: CueRoom, sides: Sides) -> Places:
        """Return the places that lie in the white on either side of the letter."""
        holds, figure = room.between(sides), self.figure
        numbers = self.numbers and Kept(found for found in self.numbers.each()
                                        if holds(room.number_box(figure, found[1])))
        arrows = [Kept(found for found in side.each() if holds(found[1].box)) for side in self.arrows]
        return Places(figure, numbers, arrows, self.leg)


def free_places(room: CueRoom) -> tuple[Places, ...]:
    """Return the places for each stroke and each turn of a letter, those with a number first: they have the fewest."""
    found = [each for figure, stroke in enumerate(room.letter.strokes, 1) for each in _places(room, figure, stroke)]
    return tuple(sorted(found, key=lambda each: each.numbers is None))


def _places(room: CueRoom, figure: int, stroke: Stroke) -> Iterator[Places]:
    """Yield where a number and an arrow may stand at a stroke's start, and an arrow after each of its turns."""
    numbers = Kept((cost, at) for cost, at in _number_places(room, figure, stroke)
                   if room.number_is_free(figure, stroke.start, at))
    if stroke.is_dot:
        yield Places(figure, numbers, ())
        return
    for count, leg in enumerate(legs(stroke, room.ruling.x_height_mm)):
        tracks: dict[tuple[float, float], Track] = {}
        ways = list(stretches(leg, room.ruling.x_height_mm, first=count == 0))
        arrows = [Kept(_free_arrows(room, leg, side, ways, tracks, first=count == 0)) for side in (-1.0, 1.0)]
        yield Places(figure, numbers, arrows, leg) if count == 0 else Places(figure, None, arrows)


def _free_arrows(room: CueRoom, leg: Leg, side: float, ways: Sequence[Way],
                 tracks: dict[tuple[float, float], Track], *, first: bool) -> Iterator[tuple[float, Arrow]]:
    """Yield arrows on one side of a leg that have room, with their cost, the best first."""
    for place in places(leg, side, ways, room.ruling.x_height_mm, room.pen_mm, room.middle, first=first):
        arrow = arrow_at(leg, place, tracks)
        if arrow and room.arrow_is_free(arrow):
            yield place[0], arrow


def _number_places(room: CueRoom, figure: int, stroke: Stroke) -> list[tuple[float, Point]]:
    """Return places for a number round a start with their cost, the nearest first, behind before beside it."""
    (x, y), heading = stroke.start, _heading(stroke)
    free = room.start_mm / 2 + CLEAR_MM
    _, _, wide, high = number_box(figure, (0.0, 0.0), room.number_mm)
    found = []
    for turned, turn in enumerate(_NUMBER_TURNS):
        angle, turn_cost = heading + math.radians(turn), _TURN_COST * turned / len(_NUMBER_TURNS)
        across, along = math.cos(angle), math.sin(angle)
        for ring in _NUMBER_RINGS:
            cost = (ring - 1) * (free + high) / room.ruling.x_height_mm + turn_cost
            found.append((cost, (x + ring * (free + wide) * across, y + ring * (free + high) * along)))
    return sorted(found)


def _heading(stroke: Stroke) -> float:
    """Return the direction of travel at the start, in radians; a dot is room to go down."""
    return math.pi / 2 if stroke.is_dot else heading_out(stroke.segments[0])
