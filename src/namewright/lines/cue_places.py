"""Where the cues of one letter may stand: free places for the number and the arrow of each stroke, the best first.

Millimetres, y down, about the letter's own origin. Whether a place is free is found out once a letter, whatever stands
beside it, and only of places that lie in the white that it has and are as good as is asked for (``Free.upto``).
Out of scope: what is free (``clearance``), and which places go together (``cue_search``).
"""

from __future__ import annotations

import math
from collections.abc import Callable, Iterable, Iterator, Sequence
from functools import lru_cache
from itertools import islice
from typing import Generic, TypeVar

from namewright.geometry.points import Point
from namewright.geometry.segments import heading_out
from namewright.letters.strokes import Stroke
from namewright.lines.arrows import Arrow, Leg, Place, Track, arrow_on, legs, places, shaft_at, stretches
from namewright.lines.clearance import CLEAR_MM, Cue, CueRoom, Number, number_box
from namewright.named_tuples import NamedTuple

P = TypeVar("P")
T = TypeVar("T")

# Where a number may stand: how far from its start, the nearest first, and at what turn from the direction of travel,
# behind the start first. The turns that most letters take come first, so that their numbers stand alike.
_NUMBER_RINGS = (1.0, 1.2, 1.45, 1.75, 2.2)
_NUMBER_TURNS = (180, 135, 225, 100, 260, 70, 290, 40, 320, 160, 200, 120, 240, 85, 275, 55, 305, 20, 340)
_TURN_COST = 0.16  # of the last turn, in x-heights; found by trial


class Kept(Generic[T]):
    """Values that take work to find, found one by one when asked for, and kept for all who ask."""

    def __init__(self, values: Iterable[T]) -> None:
        self._values, self._found = iter(values), list[T]()

    def __iter__(self) -> Iterator[T]:
        """Yield all, those found before and then the others; several may do so in turn."""
        found, at = self._found, 0
        while at < len(found) or self._find():
            yield found[at]
            at += 1

    def _find(self) -> bool:
        """Find one more; return whether there was one."""
        for value in self._values:
            self._found.append(value)
            return True
        return False


class Free(Generic[P, T]):
    """Free places with their costs, the best first, found when they are asked for.

    ``costed`` are all places, the best first; ``look`` returns what stands in one that is free, None for another.
    """

    def __init__(self, costed: Iterable[tuple[float, P]], look: Callable[[P], T | None]) -> None:
        self._found: list[tuple[float, T]] = []
        self._rest, self._look = iter(costed), look
        self._next = next(self._rest, None)

    @property
    def least(self) -> float:
        """Return a cost below which there is no place; endless where there is none at all."""
        if self._found:
            return self._found[0][0]
        return self._next[0] if self._next else math.inf

    def upto(self, cost: float, most: int) -> Sequence[tuple[float, T]]:
        """Return the places that cost no more than that, but no more than ``most`` of them."""
        found, look = self._found, self._look
        while (place := self._next) and place[0] <= cost and len(found) < most:
            standing = look(place[1])
            if standing is not None:
                found.append((place[0], standing))
            self._next = next(self._rest, None)
        return found

    def has_more(self, most: int) -> bool:
        """Return whether ``upto`` may find more where more may be paid."""
        return self._next is not None and len(self._found) < most


class FreePlaces(NamedTuple):
    """Free places for a number (None at a turn) and for an arrow on either side (none at a dot) of a stroke's leg."""

    numbers: Free[Point, Number] | None
    arrows: tuple[Free[_Tried, Arrow], ...]
    leg: Leg | None = None


class Places(NamedTuple):
    """All places for a number and an arrow at a stroke's start, or for an arrow after one of its turns."""

    numbers: NumberPlaces | None
    arrows: tuple[ArrowPlaces, ...]
    leg: Leg | None = None

    def between(self, white: tuple[float, float]) -> FreePlaces:
        """Return those that lie free from one x to another."""
        return FreePlaces(self.numbers.between(white) if self.numbers else None,
                          tuple([side.between(white) for side in self.arrows]), self.leg)

    def cue(self, choice: Choice) -> Cue:
        """Return the cue that stands where it was found before to be best, its cost not known."""
        number = self.numbers.number(choice.number) if self.numbers else None
        return Cue(number, self.arrows[choice.side].arrow(choice.arrow) if self.arrows else None, 0.0)

    def choice(self, cue: Cue) -> Choice:
        """Return which of the places a cue has taken."""
        number = self.numbers.index(cue.number) if self.numbers and cue.number else 0
        for at, side in enumerate(self.arrows):
            if cue.arrow and (index := side.index(cue.arrow)) is not None:
                return Choice(number, at, index)
        return Choice(number, 0, 0)


class Choice(NamedTuple):
    """A number's place among all round its start, the side of an arrow, and the arrow's place on it: best places first.

    What there is none of has 0.
    """

    number: int
    side: int
    arrow: int


def free_places(room: CueRoom) -> tuple[Places, ...]:
    """Return the places for each stroke and each turn of a letter, those with a number first: they have the fewest."""
    found = [each for at in range(len(room.polylines)) for each in _places(room, at)]
    return tuple(sorted(found, key=lambda each: each.numbers is None))


def _places(room: CueRoom, at: int) -> Iterator[Places]:
    """Yield where a number and an arrow may stand at a stroke's start, and an arrow after each of its turns."""
    stroke = room.letter.strokes[at]
    if stroke.is_dot:
        yield Places(NumberPlaces(room, at + 1, stroke, None), ())
        return
    for count, leg in enumerate(legs(room.polylines[at], room.ruling.x_height_mm)):
        ways = Kept(stretches(leg, room.ruling.x_height_mm, first=count == 0))
        tracks: dict[tuple[float, float], Track] = {}
        arrows = tuple([ArrowPlaces(room, leg, tracks, places(
            leg, side, ways, room.ruling.x_height_mm, room.pen_mm, room.middle, first=count == 0))
            for side in (-1.0, 1.0)])
        yield Places(None if count else NumberPlaces(room, at + 1, stroke, leg), arrows, leg)


class NumberPlaces:
    """Places for the number of a stroke."""

    def __init__(self, room: CueRoom, figure: int, stroke: Stroke, leg: Leg | None) -> None:
        self._room, self._figure, self._start, self._leg = room, figure, stroke.start, leg
        free = room.start_mm / 2 + CLEAR_MM
        _, _, self._wide, high = number_box(figure, (0.0, 0.0), room.number_mm)
        self._steps = _steps(_heading(stroke), free + self._wide, free + high, room.ruling.x_height_mm)
        self._known: dict[Point, Number | None] = {}

    def between(self, white: tuple[float, float]) -> Free[Point, Number]:
        """Return the free ones that lie from one x to another."""
        (x, y), (left, right), wide = self._start, white, self._wide
        return Free([(cost, (x + dx, y + dy)) for cost, dx, dy in self._steps
                     if left <= x + dx - wide and x + dx + wide <= right], self._at)

    def _at(self, centre: Point) -> Number | None:
        """Return the number with its centre there if it is free."""
        if centre not in self._known:
            self._known[centre] = self._number(centre)
        return self._known[centre]

    def number(self, index: int) -> Number:
        """Return the number in a place, free or not."""
        _, dx, dy = self._steps[index]
        return self._standing((self._start[0] + dx, self._start[1] + dy))

    def index(self, number: Number) -> int:
        """Return the place of a number."""
        x, y = self._start
        return [(x + dx, y + dy) for _, dx, dy in self._steps].index(number.at)

    def _number(self, centre: Point) -> Number | None:
        free = self._room.number_is_free(self._figure, self._start, centre)
        return self._standing(centre) if free else None

    def _standing(self, centre: Point) -> Number:
        room, leg = self._room, self._leg
        beside = leg.beside_mm(centre) if leg and leg.ahead_mm(centre) > 0 else 0.0
        return Number(self._figure, centre, room.number_box(self._figure, centre), beside)


class ArrowPlaces:
    """Places for an arrow on one side of a leg."""

    def __init__(self, room: CueRoom, leg: Leg, tracks: dict[tuple[float, float], Track], best_first: Iterable[Place],
                 ) -> None:
        self._room, self._leg, self._tracks = room, leg, tracks
        self._places = Kept((place[0], _Tried(place)) for place in best_first)

    def between(self, white: tuple[float, float]) -> Free[_Tried, Arrow]:
        """Return the free ones that lie from one x to another."""
        left, right = white

        def look(tried: _Tried) -> Arrow | None:
            if tried.shaft is None:
                tried.shaft = shaft_at(self._leg, tried.place, self._tracks)
            if not tried.shaft or not all([left <= x <= right for x, _ in tried.shaft]):
                return None
            arrow = tried.arrow = tried.arrow or arrow_on(tried.shaft, tried.place[2])
            if arrow.box[0] < left or arrow.box[2] > right:
                return None
            if tried.is_free is None:
                tried.is_free = self._room.arrow_is_free(arrow)
            return arrow if tried.is_free else None

        return Free(self._places, look)

    def arrow(self, index: int) -> Arrow:
        """Return the arrow in a place, free or not."""
        _, tried = next(islice(self._places, index, None))
        return arrow_on(shaft_at(self._leg, tried.place, self._tracks), tried.place[2])

    def index(self, arrow: Arrow) -> int | None:
        """Return the place of an arrow; None where it has none here."""
        return next((index for index, (_, tried) in enumerate(self._places) if tried.arrow is arrow), None)


class _Tried:
    """A place for an arrow, and what is known of it: its shaft, the arrow there, and whether that is free."""

    __slots__ = ("arrow", "is_free", "place", "shaft")

    def __init__(self, place: Place) -> None:
        self.place = place
        self.shaft: Sequence[Point] | None = None
        self.arrow: Arrow | None = None
        self.is_free: bool | None = None


@lru_cache(maxsize=256)  # strokes start down or to the right in most letters
def _steps(heading: float, across: float, down: float, x_height_mm: float) -> Sequence[tuple[float, float, float]]:
    """Return the steps from a start to the places round it, with their cost: near before far, behind before beside."""
    found = []
    for turned, turn in enumerate(_NUMBER_TURNS):
        angle, turn_cost = heading + math.radians(turn), _TURN_COST * turned / len(_NUMBER_TURNS)
        x, y = math.cos(angle), math.sin(angle)
        found += [((ring - 1) * down / x_height_mm + turn_cost, ring * across * x, ring * down * y)
                  for ring in _NUMBER_RINGS]
    return sorted(found)


def _heading(stroke: Stroke) -> float:
    """Return the direction of travel at the start, in radians; a dot is room to go down."""
    return math.pi / 2 if stroke.is_dot else heading_out(stroke.segments[0])
