"""Fit without lies: a name set into the room there is, never smaller than its ruling.

First natural, then tighter to the least white, then on a turned page, then over two rows at a space, a hyphen
or a syllable; where nothing fits, both widths are told. Millimetres.
"""

from __future__ import annotations

import math
from collections.abc import Sequence

from namewright.lines.setting import LineSetter, SetLine
from namewright.message import Message, Problem, message
from namewright.named_tuples import NamedTuple
from namewright.names.beats import UNSAID, Spoken
from namewright.names.clusters import clusters
from namewright.names.syllables import breaks

_TIGHTNESS = (0.0, 0.5, 1.0)


class DoesNotFit(Problem):
    """A name takes more room than there is: across a row, or another way that the message tells. Millimetres."""

    def __init__(self, name: str, needed_mm: float, room_mm: float, told: Message | None = None) -> None:
        self.name, self.needed_mm, self.room_mm = name, needed_mm, room_mm
        super().__init__(told or message("fit.row", name=name, needed=math.ceil(needed_mm), room=math.floor(room_mm)))


class Fit(NamedTuple):
    """A name in one or two rows, and whether the page is turned for it."""

    lines: tuple[SetLine, ...]
    turned: bool

    @property
    def width_mm(self) -> float:
        """Return the width of the widest row."""
        return _width(self.lines)


def fit_name(name: str, ruled: LineSetter, rooms_mm: Sequence[float], spoken: Spoken = UNSAID) -> Fit:
    """Set a name into the first room that takes it: ``rooms_mm`` is (as it lies,) or (as it lies, turned).

    Raises DoesNotFit, or MissingLetters for a name that cannot be drawn.
    """
    for turned, room in enumerate(rooms_mm):
        for tightness in _TIGHTNESS:
            line = ruled.line(name, tightness=tightness)
            if line.width_mm <= room:
                return Fit((line,), bool(turned))
    halves = _halves(name, spoken)
    for turned, room in enumerate(rooms_mm):
        lines = _two_rows(halves, ruled, room)
        if lines:
            return Fit(lines, bool(turned))
    narrowest = min((_width(_set(pair, ruled, 1.0)) for pair in halves),
                    default=ruled.line(name, tightness=1.0).width_mm)
    raise DoesNotFit(name, narrowest, max(rooms_mm))


def _halves(name: str, spoken: Spoken) -> list[tuple[str, str]]:
    """Return the ways to part a name over two rows; letters and beats are found once for all rooms."""
    letters = clusters(name)
    halves = (("".join(letters[:at]).strip(), "".join(letters[at:]).strip()) for at in breaks(letters, spoken))
    return [pair for pair in halves if all(pair)]


def _two_rows(halves: Sequence[tuple[str, str]], ruled: LineSetter, room: float) -> tuple[SetLine, ...] | None:
    """Return the two rows that are most even, as little tightened as a room asks; None where none fit."""
    for tightness in _TIGHTNESS:
        pairs = [lines for lines in (_set(pair, ruled, tightness) for pair in halves) if _width(lines) <= room]
        if pairs:
            return min(pairs, key=_width)
    return None


def _set(pair: tuple[str, str], ruled: LineSetter, tightness: float) -> tuple[SetLine, ...]:
    return tuple(ruled.line(half, tightness=tightness) for half in pair)


def _width(lines: Sequence[SetLine]) -> float:
    return max(line.width_mm for line in lines)
