"""The letters of a name among other letters, from unlike to alike by the published ratings; capitals beside small ones.

For a letter with a mark the nearest others are its bare letter and the same letter with another mark, which no study
rated: a rule of ours. A shuffle follows from its seed. Pure.
"""

from __future__ import annotations

from collections.abc import Collection, Mapping, Sequence
from dataclasses import dataclass
from random import Random
from types import MappingProxyType

import unicodedata2

from namewright.names.clusters import is_letter
from namewright.practice.difficulty import base_letter, written_signs
from namewright.practice.features import letter_strokes
from namewright.practice.name_likeness import letters_alike
from namewright.settings import Support

HITS, OTHERS = 3, 4  # of each row
MAX_ROWS, MAX_PAIRS = 12, 6
_ENOUGH, _MOST_TIMES = 4, 3  # rows: a name of fewer letters has each of them again, among others more alike
ONE_SHAPE = frozenset("COSUVWXZ")  # capitals that are the small letter drawn larger
_NEAR: Mapping[Support, int] = MappingProxyType({
    Support.FULL: 0, Support.PARTIAL: 1, Support.LIGHT: 2, Support.INDEPENDENT: 4})
"""How many of the others in a row look like the letter, by level of support, one more each time that it comes again; a
rule of ours."""
_SMALL = "abcdefghijklmnopqrstuvwxyz"
_MARKS = "\u0301\u0300\u0302\u0308\u0303"


@dataclass(frozen=True, slots=True)
class HuntRow:
    """A letter, and what stands beside it to find it in."""

    letter: str
    shown: tuple[str, ...]

    @property
    def hits(self) -> int:
        """Return how often the letter stands among the others."""
        return self.shown.count(self.letter)


@dataclass(frozen=True, slots=True)
class Hunt:
    """A page: a row a letter, and capitals over small letters, each small one elsewhere than under its capital."""

    rows: tuple[HuntRow, ...]
    capitals: tuple[str, ...]
    small: tuple[str, ...]

    @property
    def letters(self) -> tuple[str, ...]:
        """Return the letters that have a row."""
        return tuple(dict.fromkeys(row.letter for row in self.rows))


def letter_hunt(name: str, support: Support, seed: str, weak: Collection[str] = ()) -> Hunt:
    """Return the page of a name (NFC, with a letter in it); of a very long name those letters come first that are weak.

    Digits have a row like letters, and no small form. A capital that is its small letter drawn larger is no riddle: it
    is matched only where the name has too few others.
    """
    chance = Random(seed)
    different = list(dict.fromkeys(written_signs(name)))
    kept = sorted(different, key=lambda letter: letter not in weak)[:MAX_ROWS]
    times = min(_MOST_TIMES, max(1, -(-_ENOUGH // len(kept))))
    first = min(_NEAR[support], OTHERS - times + 1)
    rows = tuple(_row(letter, first + more, chance) for more in range(times) for letter in different if letter in kept)
    pairs = _pairs(different)
    if len(pairs) < 2:
        return Hunt(rows, (), ())
    return Hunt(rows, tuple(pairs), tuple(_elsewhere([one.lower() for one in pairs], chance)))


def _pairs(letters: Sequence[str]) -> list[str]:
    """Return the capitals to match with small letters: those of another shape, all where fewer than two are."""
    capitals = list(dict.fromkeys(capital for letter in letters if (capital := _capital(letter))))
    riddles = [one for one in capitals if base_letter(one) not in ONE_SHAPE]
    return (riddles if len(riddles) > 1 else capitals)[:MAX_PAIRS]


def _row(letter: str, near: int, chance: Random) -> HuntRow:
    """Return a row whose last others are the nearest to the letter."""
    ranked = _ranked(letter, chance)
    others = [*ranked[-near:], *ranked[:OTHERS - near]] if near else ranked[:OTHERS]
    shown = [letter] * HITS + others
    return HuntRow(letter, tuple(chance.sample(shown, len(shown))))


def _ranked(letter: str, chance: Random) -> list[str]:
    """Return other letters of the same case, from the least to the most alike, equal ones by chance."""
    base = base_letter(letter)
    letters = "0123456789" if letter.isdecimal() else _SMALL.upper() if base.isupper() else _SMALL
    others = [*letters, *_marked(base)] if base != letter else list(letters)
    others = chance.sample(others, len(others))
    return sorted((one for one in others if one != letter), key=lambda one: letters_alike(letter, one))


def _marked(base: str) -> list[str]:
    """Return a letter with the commonest marks, those that our letters can draw."""
    made = [str(unicodedata2.normalize("NFC", base + mark)) for mark in _MARKS]
    return [one for one in made if len(one) == 1 and letter_strokes(one)]


def _capital(letter: str) -> str | None:
    """Return a letter's capital; None where it has none of one sign that turns small again."""
    capital = letter.upper()
    drawn = is_letter(letter) and letter_strokes(capital) and letter_strokes(capital.lower())
    return capital if drawn and capital.lower() != capital and capital.lower().upper() == capital else None


def _elsewhere(letters: Sequence[str], chance: Random) -> list[str]:
    """Return letters shuffled so that none keeps its place, at least two of them and all different."""
    while True:
        order = chance.sample(letters, len(letters))
        if all(one != other for one, other in zip(order, letters, strict=True)):
            return order
