"""A class's set of loose tiles: how many of each letter any few children need who build at once. Pure."""

from __future__ import annotations

from collections import Counter
from collections.abc import Mapping, Sequence
from itertools import pairwise
from types import MappingProxyType

from namewright.practice.difficulty import base_letter
from namewright.practice.mixing import loose_letters


def tiles_needed(names: Sequence[str], at_once: int) -> Mapping[str, int]:
    """Return the least number of tiles of each letter with which any ``at_once`` children can build their names.

    Of a letter the hungriest children count: those whose names have it most often. Letters stand by the alphabet,
    capital before small, with their marks after those without. Raises ValueError for fewer than one child.
    """
    if at_once < 1:
        raise ValueError("nobody builds")
    counts = [Counter(loose_letters(name)) for name in names]
    letters = sorted({letter for one in counts for letter in one}, key=_place)
    needed = {letter: sum(sorted((one[letter] for one in counts), reverse=True)[:at_once]) for letter in letters}
    return MappingProxyType(needed)


def _place(letter: str) -> tuple[str, bool, str]:
    base = base_letter(letter)
    return (base.casefold(), base.islower(), letter)


def sheets_of(needed: Mapping[str, int], across: int, down: int) -> tuple[tuple[tuple[str, ...], ...], ...]:
    """Return the tiles as sheets of rows, every row full but the last: no fewer sheets can hold them.

    No sheet is left for a few tiles alone: all have as many rows, or one fewer.
    """
    tiles = [letter for letter, count in needed.items() for _ in range(count)]
    rows = [tuple(tiles[at:at + across]) for at in range(0, len(tiles), across)]
    sheets = max(1, -(-len(rows) // down))
    ends = [-(-len(rows) * at // sheets) for at in range(sheets + 1)]
    return tuple(tuple(rows[start:end]) for start, end in pairwise(ends))
