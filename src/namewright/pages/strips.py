"""Strips of tiles, and which of them share a row, so that little paper is left over. Counts only, no measures."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass, replace
from itertools import combinations, islice, pairwise

from namewright.letters.choice import LetterChoice
from namewright.lines.tile_boxes import tile_letters

_WINDOW = 40  # strips that are looked through for one that fills a row: a class stays nearly in its order
_MIN_PART = 2  # tiles: over one alone there is no room to say which it is


@dataclass(frozen=True, slots=True)
class Strip:
    """Tiles of a child that stand in one row: the child's label, and which tiles of how many these are.

    ``first`` counts from 1. ``shapes`` are the forms of its letters, None those of the page.
    """

    label: str
    letters: tuple[str, ...]
    first: int
    count: int
    shapes: LetterChoice | None = None

    @property
    def last(self) -> int:
        """Return the number of its last tile."""
        return self.first + len(self.letters) - 1

    def parted(self, size: int) -> tuple[Strip, Strip]:
        """Return its first ``size`` tiles and the others."""
        return (replace(self, letters=self.letters[:size]),
                replace(self, letters=self.letters[size:], first=self.first + size))


def strips(label: str, name: str, across: int, shapes: LetterChoice | None = None) -> tuple[Strip, ...]:
    """Cut a name's tiles into strips of at most ``across``, full ones first; spaces get no tile.

    No tile stands alone in the last strip if it can be helped: over two there is room to say which they are.
    """
    letters = [letter for letter in tile_letters(name) if letter != " "]
    cuts = [*range(0, len(letters), across), len(letters)]
    if len(cuts) > 2 and cuts[-1] - cuts[-2] == 1 and across > 2:
        cuts[-2] -= 1
    return tuple(Strip(label, tuple(letters[start:end]), start + 1, len(letters), shapes)
                 for start, end in pairwise(cuts))


def rows_of_strips(strips: Iterable[Strip], across: int) -> Iterator[tuple[Strip, ...]]:
    """Yield rows of at most ``across`` tiles. The first strip that is left begins a row, others near it fill it up.

    Where none do, one of them is parted, and its other tiles begin the next row.
    """
    rest = iter(strips)
    window = list(islice(rest, _WINDOW))
    while window:
        row = [window.pop(0)]
        room = across - len(row[0].letters)
        for at in sorted(_fillers(window, room), reverse=True):
            row.insert(1, window.pop(at))
        room = across - sum(len(strip.letters) for strip in row)
        if (parted := _parting(window, room)) is not None:
            here, there = window.pop(parted).parted(room)
            row.append(here)
            window.insert(0, there)
        yield tuple(row)
        window += islice(rest, _WINDOW - len(window))


def _fillers(window: Sequence[Strip], room: int) -> tuple[int, ...]:
    """Return which of the strips fill a room whole, one, else two, else three; none if they do not."""
    sizes = [len(strip.letters) for strip in window]
    for count in (1, 2, 3) if room else ():
        fits = (places for places in combinations(range(len(sizes)), count)
                if sum(sizes[place] for place in places) == room)
        if places := next(fits, None):
            return places
    return ()


def _parting(window: Sequence[Strip], room: int) -> int | None:
    """Return the first strip that can be parted so that it fills a room, neither part a single tile."""
    if room < _MIN_PART:
        return None
    return next((at for at, strip in enumerate(window) if len(strip.letters) >= room + _MIN_PART), None)
