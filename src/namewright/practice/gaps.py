"""A name with letters left out: which, row by row down a page.

Rows climb from one gap to the whole name, and no row comes twice. Gaps begin where this child's notes say that a letter
does not stand yet, then at harder letters; the first letter, which children know best, is given longest. The first gap
may also be a mark alone; the last row may be an empty line. Positions count in ``clusters(name)``. Pure.
"""

from __future__ import annotations

from collections.abc import Collection, Iterator, Mapping, Sequence
from dataclasses import dataclass
from itertools import combinations
from random import Random
from types import MappingProxyType

import unicodedata2

from namewright.names.clusters import clusters
from namewright.practice.difficulty import Band, letter_difficulty, written_signs
from namewright.settings import Support

_HALF, _REST, _ALL, _LINE = -2, -1, -3, -4  # half of the letters, all but the first, all, an empty line
_COUNTS: Mapping[Support, tuple[int, ...]] = MappingProxyType({
    Support.FULL: (1, 1, 2, 2), Support.PARTIAL: (1, 2, _HALF, _REST),
    Support.LIGHT: (2, _HALF, _REST, _LINE), Support.INDEPENDENT: (_HALF, _REST, _ALL, _LINE)})
"""How many gaps each row has, by level of support, more where a short name has no other row left; a rule of ours."""
GAP = "_"


@dataclass(frozen=True, slots=True)
class GapRow:
    """A name and the places of its gaps: of whole letters, and of letters that only lack their marks.

    On an empty line (``is_line``) nothing tells where letters stand, and a hyphen is missing, too.
    """

    name: str
    letters: frozenset[int]
    marks: frozenset[int] = frozenset()
    is_line: bool = False

    @property
    def shown(self) -> tuple[str, ...]:
        """Return what is seen in each place: the letter, the letter without its marks, or ``GAP``."""
        return tuple(self._seen(at, letter) for at, letter in enumerate(clusters(self.name)))

    def _seen(self, at: int, letter: str) -> str:
        if at in self.letters or (self.is_line and not letter.isspace()):
            return GAP
        return without_marks(letter) if at in self.marks else letter


def without_marks(letter: str) -> str:
    """Return the letter that is left when its marks are taken off; ł and others are letters of their own and stay."""
    return str(unicodedata2.normalize("NFC", unicodedata2.normalize("NFD", letter)[:1]))


def gap_rows(name: str, support: Support, seed: str, weak: Collection[str] = (), *, marks: bool = True,
             ) -> tuple[GapRow, ...]:
    """Return the rows of a page for a name (NFC, with a letter in it), from easy to hard, two for one of one letter.

    ``weak`` are letters that do not stand yet by what was noted; ``seed`` decides among equal ones. Each row has
    another letter missing first, while there are others. With ``marks`` a row lacks the marks of the name alone.
    """
    ranked = _ranked(name, weak, Random(seed))
    rows: dict[GapRow, None] = {}
    for number, count in enumerate(_COUNTS[support]):
        fresh = next((row for row in _choices(name, ranked, number, count) if row not in rows), None)
        rows |= {fresh: None} if fresh else {}
    climbing = sorted(rows, key=lambda row: (row.is_line, len(row.letters)))
    return tuple(_with_mark_row(name, climbing) if marks else climbing)


def _choices(name: str, ranked: Sequence[int], number: int, count: int) -> Iterator[GapRow]:
    """Yield rows with so many gaps, the best first, then rows with more; the first letter goes last."""
    *others, first = ranked
    least = _how_many(count, len(ranked))
    for size in range(least, len(ranked) + 1):
        start = number if size < len(others) else 0
        turned = (*others[start:], *others[:start], first)
        yield from (GapRow(name, frozenset(missing)) for missing in combinations(turned, size))
    yield GapRow(name, frozenset(ranked), is_line=True)


def _how_many(count: int, letters: int) -> int:
    """Return how many letters of a name are missing at the least; more than there are for an empty line."""
    if count in (_ALL, _LINE) or letters == 1:
        return letters + (count == _LINE)
    wanted = {_HALF: (letters + 1) // 2, _REST: letters - 1}.get(count, count)
    return max(1, min(wanted, letters - 1))


def _ranked(name: str, weak: Collection[str], chance: Random) -> list[int]:
    """Return the places of letters in the order in which they go missing: weak ones, hard ones, the first last."""
    letters = clusters(name)
    places = [at for at, letter in enumerate(letters) if written_signs(letter)]
    chance.shuffle(places)
    bands = list(Band)
    first = min(places)
    return sorted(places, key=lambda at: (at == first, letters[at] not in weak,
                                          -bands.index(letter_difficulty(letters[at]).band)))


def _with_mark_row(name: str, rows: Sequence[GapRow]) -> list[GapRow]:
    """Let the first row lack the marks alone, in a name that has marks: less than a letter is missing."""
    letters = clusters(name)
    marked = frozenset(at for at, letter in enumerate(letters)
                       if written_signs(letter) and without_marks(letter) != letter)
    return [GapRow(name, frozenset(), marked), *rows[len(rows) > 2:]] if marked else list(rows)
