"""Strips of tiles, and which of them share a row, so that little paper is left over. Counts only, no measures."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass, replace
from itertools import combinations, islice

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


def strip_of(label: str, name: str, shapes: LetterChoice | None = None) -> Strip:
    """Return all tiles of a name in one strip; spaces get no tile."""
    letters = tuple(letter for letter in tile_letters(name) if letter != " ")
    return Strip(label, letters, 1, len(letters), shapes)


def pages_of_strips(names: Iterable[Strip], across: int, down: int) -> Iterator[list[tuple[Strip, ...]]]:
    """Yield pages of at most ``down`` rows of at most ``across`` tiles: each name as one strip, or some in their order.

    The first name that is left begins a row, others near it fill it up; where none do, one of them is parted, and its
    other tiles begin the next row. A name stays on one page, unless it takes more rows than a page has.
    """
    rest = iter(names)
    window = list(islice(rest, _WINDOW))
    while window:
        page: list[tuple[Strip, ...]] = []
        while (left := down - len(page)) and (at := _next(window, across, left, down)) is not None:
            page.append(_row(window, at, across, left))
            window += islice(rest, _WINDOW - len(window))
        yield page


def _next(window: Sequence[Strip], across: int, left: int, down: int) -> int | None:
    """Return the first strip that may begin a row where so many are left on a page, None where there is none.

    What goes on from the row before does; a name that takes more rows than any page has begins a page.
    """
    if window and window[0].first > 1:
        return 0
    return next((at for at, one in enumerate(window) if left == down or _rows(one, across) <= left), None)


def _rows(strip: Strip, across: int) -> int:
    return -(-len(strip.letters) // across)


def _row(window: list[Strip], at: int, across: int, left: int) -> tuple[Strip, ...]:
    """Take a row that begins with a strip, where so many rows are left on its page."""
    row = [_taken(window, at, across)]
    room = across - len(row[0].letters)
    if window and window[0].first > 1:  # it goes on in the next row
        return tuple(row)
    for filler in sorted(_fillers(window, room, exactly=left > 1), reverse=True):
        row.insert(1, window.pop(filler))
    room = across - sum(len(strip.letters) for strip in row)
    if (parted := _parting(window, across, room, left - 1)) is not None:
        row.append(_taken(window, parted, room))
    return tuple(row)


def _taken(window: list[Strip], at: int, room: int) -> Strip:
    """Take as much of a strip as has room; the rest is next. No tile is left over alone if it can be helped."""
    strip, size = window.pop(at), room
    if len(strip.letters) <= room:
        return strip
    if len(strip.letters) - room < _MIN_PART <= room - 1:
        size -= 1
    here, there = strip.parted(size)
    window.insert(0, there)
    return here


def _fillers(window: Sequence[Strip], room: int, *, exactly: bool) -> tuple[int, ...]:
    """Return which of the names fill a room, one, else two, else three: exactly, or as nearly as any of these."""
    best: tuple[int, ...] = ()
    filled = 0
    for count in (1, 2, 3) if room else ():
        for places in combinations(range(len(window)), count):
            size = sum(len(window[place].letters) for place in places)
            if size == room:
                return places
            if filled < size < room:
                best, filled = places, size
    return () if exactly else best


def _parting(window: Sequence[Strip], across: int, room: int, left: int) -> int | None:
    """Return a name that fills a room with its beginning and has room for the rest in the rows left; None without one.

    Neither part is a single tile. One that stands in no more rows for it goes before the first of the others.
    """
    if room < _MIN_PART:
        return None
    more = {at: 1 + -(-(len(one.letters) - room) // across) for at, one in enumerate(window)
            if len(one.letters) >= room + _MIN_PART}
    may = [at for at, rows in more.items() if rows - 1 <= left]
    return next((at for at in may if more[at] == _rows(window[at], across)), next(iter(may), None))
