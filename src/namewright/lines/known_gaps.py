"""How far apart common letters stand, measured beforehand: a first class need not wait.

``known_gaps.txt`` is what ``spacing`` measures for the gaps of the usual lines and of running text, and nothing else;
``fonts/build_known_cues.py`` writes it anew when letters or spacing have changed, and a test compares the two. A part
of it holds for one spacer: its gaps and tail, the letters, then a row for each of them, with the edges of what stands
on the baseline and, for every letter that may follow, the distance in tenths of a letter unit as two characters.
"""

from __future__ import annotations

import string
from collections.abc import Callable, Iterable, Iterator, Mapping, Sequence
from functools import cache
from pathlib import Path

from namewright.named_tuples import NamedTuple

FILE = Path(__file__).with_name("known_gaps.txt")
_DIGITS = string.digits + string.ascii_letters
Key = tuple[float, float, float]
"""The mean gap, the least one and the depth of tails, as ``spacing.Spacer`` has them."""
Edges = Callable[[str], tuple[float, float]]
Distance = Callable[[str, str], float]


class Gaps(NamedTuple):
    """What is known of one spacer: the place of each letter in a row, and the rows."""

    places: Mapping[str, int]
    rows: Sequence[str]

    def distance(self, left: str, right: str) -> float | None:
        """Return how far apart the origins of two letters stand in a word, in letter units; None if it is not known."""
        row, at = self.places.get(left), self.places.get(right)
        if row is None or at is None:
            return None
        codes = self.rows[row].rpartition(" ")[2]
        return (len(_DIGITS) * _DIGITS.index(codes[2 * at]) + _DIGITS.index(codes[2 * at + 1])) / 10

    def edges(self, letter: str) -> tuple[float, float] | None:
        """Return the left and the right edge of what of a letter stands on the baseline; None if they are not known."""
        at = self.places.get(letter)
        if at is None:
            return None
        left, right, _ = self.rows[at].split(" ")
        return float(left), float(right)


def known(key: Key) -> Gaps | None:
    """Return what is known of a spacer, if anything is."""
    return _parts().get(key)


def written(letters: str, parts: Iterable[tuple[Key, Edges, Distance]]) -> str:
    """Return the text of the file: for each part its key, what tells the edges of a letter, and what a distance."""
    return "\n".join(line for key, edges, distance in parts for line in _written(letters, key, edges, distance)) + "\n"


def _written(letters: str, key: Key, edges: Edges, distance: Distance) -> Iterator[str]:
    yield f"gaps {' '.join(map(repr, key))} {letters}"
    for left in letters:
        codes = "".join(_code(round(10 * distance(left, right))) for right in letters)
        yield " ".join((*map(repr, edges(left)), codes))


def _code(tenths: int) -> str:
    high, low = divmod(tenths, len(_DIGITS))
    return _DIGITS[high] + _DIGITS[low]


@cache
def _parts() -> Mapping[Key, Gaps]:
    parts: dict[Key, Gaps] = {}
    rows: list[str] = []
    for line in FILE.read_text("utf-8").splitlines():
        if line.startswith("gaps "):
            _, mean, least, tail, letters = line.split(" ")
            rows = []
            parts[float(mean), float(least), float(tail)] = Gaps({each: at for at, each in enumerate(letters)}, rows)
        else:
            rows.append(line)
    return parts
