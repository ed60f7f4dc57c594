"""A name with letters left out: which, row by row down a page.

Rows climb from one gap to the whole name. Gaps begin where this child's notes say that a letter does not stand yet,
then at harder letters; the first letter, which children know best, is given longest. A gap may also be a mark alone.
Positions count in ``clusters(name)``. Pure.
"""

from __future__ import annotations

from collections.abc import Collection, Mapping, Sequence
from dataclasses import dataclass
from random import Random
from types import MappingProxyType

import unicodedata2

from namewright.names.clusters import clusters
from namewright.practice.difficulty import Band, letter_difficulty, written_signs
from namewright.settings import Support

_HALF, _REST, _ALL = -2, -1, 0  # what a count cannot say: half of the letters, all but the first, all
_COUNTS: Mapping[Support, tuple[int, ...]] = MappingProxyType({
    Support.FULL: (1, 1, 2, 2), Support.PARTIAL: (1, 2, _HALF, _REST),
    Support.LIGHT: (2, _HALF, _REST, _ALL), Support.INDEPENDENT: (_HALF, _REST, _ALL, _ALL)})
"""How many gaps each row has, by level of support; a rule of ours."""
GAP = "–"


@dataclass(frozen=True, slots=True)
class GapRow:
    """A name and the places of its gaps: of whole letters, and of letters that only lack their marks."""

    name: str
    letters: frozenset[int]
    marks: frozenset[int] = frozenset()

    @property
    def shown(self) -> tuple[str, ...]:
        """Return what is seen in each place: the letter, the letter without its marks, or ``GAP``."""
        return tuple(GAP if at in self.letters else without_marks(letter) if at in self.marks else letter
                     for at, letter in enumerate(clusters(self.name)))

    @property
    def is_blank(self) -> bool:
        """Return whether nothing of the name is given."""
        return all(letter == GAP or letter.isspace() for letter in self.shown)


def without_marks(letter: str) -> str:
    """Return the letter that is left when its marks are taken off; ł and others are letters of their own and stay."""
    return str(unicodedata2.normalize("NFC", unicodedata2.normalize("NFD", letter)[:1]))


def gap_rows(name: str, support: Support, seed: str, weak: Collection[str] = (), *, marks: bool = True,
             ) -> tuple[GapRow, ...]:
    """Return the rows of a page for a name (NFC, with a letter in it), from easy to hard.

    ``weak`` are letters that do not stand yet by what was noted; ``seed`` decides among equal ones. Each row has
    another letter missing first, while there are others. With ``marks`` a row lacks the marks of the name alone.
    """
    *others, first = _ranked(name, weak, Random(seed))
    rows: list[GapRow] = []
    for number, count in enumerate(_COUNTS[support]):
        start = number if 0 < count < len(others) else 0
        missing = (*others[start:], *others[:start], first)
        rows.append(GapRow(name, frozenset(missing[:_how_many(count, len(missing))])))
    return _with_mark_row(name, rows) if marks else tuple(rows)


def _how_many(count: int, letters: int) -> int:
    if count == _ALL or letters == 1:
        return letters
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


def _with_mark_row(name: str, rows: Sequence[GapRow]) -> tuple[GapRow, ...]:
    """Let the second row lack the marks alone, in a name that has marks."""
    letters = clusters(name)
    marked = frozenset(at for at, letter in enumerate(letters)
                       if written_signs(letter) and without_marks(letter) != letter)
    if not marked:
        return tuple(rows)
    return (rows[0], GapRow(name, frozenset(), marked), *rows[2:])
