"""Names of nobody, for a child whose class has too few that are like its own, or unlike. Pure, but for one table.

They are put together from beginnings and endings of the classmates' names, so that they sound and look like names of
this class, and of a table for the language of the names. Others differ from the child's name in a letter or two of the
same kind and height. A vowel takes the place of a vowel, so that most can be said. None spells an unkind word.
"""

from __future__ import annotations

import tomllib
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass
from functools import cache
from itertools import combinations, zip_longest
from pathlib import Path
from random import Random

import unicodedata2

from namewright.names.clusters import clusters
from namewright.practice.difficulty import base_letter
from namewright.practice.features import letter_strokes
from namewright.practice.name_likeness import Zone, letters_alike, same_initial, zone_of
from namewright.practice.unkind import is_unkind

_VOWELS, _VOWELS_BEHIND = "aeiou", "aeiouy"
_ONSETS = "BDFGHJKLMNPRSTVWZ"
_SMALL = "abcdefghiklmnoprstuvwz"
_TRIES, _SYLLABLE = 300, 2.7  # names tried, and letters that a beginning adds on the mean
_MOST_TOGETHER, _LONGEST_END = 2, 4  # consonants that stand together, and letters of an ending


@cache
def _table() -> dict[str, list[str]]:
    return tomllib.loads(Path(__file__).with_name("invented_names.toml").read_text(encoding="utf-8"))


def models(mates: Iterable[str], language: str | None) -> list[str]:
    """Return the names whose parts are put together: those of the class, and of the table for a language."""
    single = [part for name in mates for part in name.replace("-", " ").split()
              if part[1:].islower() and len(clusters(part)) == len(part)]
    return [*single, *_table().get(language or "any", _table()["any"])]


def with_initial(first: str, mates: Iterable[str], language: str | None, chance: Random) -> Iterator[str]:
    """Yield invented names of one to three syllables that begin with a sign, in an order of chance, each once."""
    parts = _parts(models(mates, language))
    yield from _once(_built(first, chance.choice((0, 1, 1, 2)), parts, chance) for _ in range(_TRIES))


def with_other_initials(avoided: str, length: int, mates: Iterable[str], language: str | None, chance: Random,
                        ) -> Iterator[str]:
    """Yield invented names that begin with another letter, most about so long, in an order of chance, each once."""
    parts, onsets = _parts(models(mates, language)), [one for one in _ONSETS if not same_initial(one, avoided)]
    count = max(0, round((length - 3) / _SYLLABLE))
    yield from _once(_built(chance.choice(onsets), count, parts, chance) for _ in range(_TRIES))


def _once(names: Iterable[str]) -> Iterator[str]:
    seen: set[str] = set()
    for name in names:
        if name not in seen and not is_unkind(name):
            seen.add(name)
            yield name


@dataclass(frozen=True, slots=True)
class _Parts:
    """What stands at the beginning of names behind their first consonants, and at their end: est and el of Kestel."""

    heads: tuple[str, ...]
    ends: tuple[str, ...]


def _parts(names: Iterable[str]) -> _Parts:
    heads, ends = [], []
    for name in names:
        small = name.casefold().removeprefix("y")
        rest = small[_run(small, vowels=False):]
        vowels = _run(rest, vowels=True)
        cut = vowels + _run(rest[vowels:], vowels=False)
        if cut < len(rest) and cut - vowels <= _MOST_TOGETHER:
            heads.append(rest[:cut])
        end = rest[cut:] or rest
        if 0 < len(end) <= _LONGEST_END:
            ends.append(end)
    return _Parts(tuple(heads), tuple(ends))


def _built(first: str, count: int, parts: _Parts, chance: Random) -> str:
    """Return a sign with the beginnings of so many names and the ending of another behind it, if names are so long."""
    heads = [chance.choice(parts.heads) for _ in range(max(count, is_vowel(first))) if parts.heads]
    rest = "".join((*heads, chance.choice(parts.ends)))
    if is_vowel(first):
        rest = rest[_run(rest, vowels=True):] or rest
    return first + ("u" + rest.lstrip("u") if first.casefold() == "q" else rest)


def _run(text: str, *, vowels: bool) -> int:
    """Return how many letters a text begins with that are vowels, or that are not."""
    return next((at for at, letter in enumerate(text) if is_vowel(letter, _VOWELS_BEHIND) != vowels), len(text))


# --- a letter or two exchanged ------------------------------------------------------------------------


def look_alikes(name: str) -> Iterator[str]:
    """Yield names that differ from a name in one letter, or two, of the same kind and height.

    Vowels are exchanged first, then consonants between vowels, so that most can be said. Of a name of one letter they
    are the letters that look most like it.
    """
    letters = clusters(name)
    if len(letters) == 1:
        others = [chr(code) for code in range(ord("A"), ord("Z") + 1) if chr(code) != name]
        yield from sorted(others, key=lambda one: letters_alike(name, one), reverse=True)
        return
    places = sorted((at for at in range(1, len(letters)) if _exchanges(letters, at)),
                    key=lambda at: _hard_to_say(letters, at))
    easy = [at for at in places if _hard_to_say(letters, at) < 2]
    yield from _once((*_in_turn(_ones(letters, easy)), *_twos(letters, easy),
                      *_in_turn(_ones(letters, [at for at in places if at not in easy])), *_twos(letters, places)))


def _ones(letters: Sequence[str], places: Iterable[int]) -> list[list[str]]:
    return [[_with(letters, at, other) for other in _exchanges(letters, at)] for at in places]


def _twos(letters: Sequence[str], places: Sequence[int]) -> Iterator[str]:
    """Yield names with letters exchanged in two of these places."""
    yield from _in_turn([
        [_with(clusters(_with(letters, at, one)), behind, other) for one in _exchanges(letters, at)[:3]]
        for at, behind in combinations(places, 2) for other in _exchanges(letters, behind)[:2]])


def _hard_to_say(letters: Sequence[str], at: int) -> int:
    """Rank a place by how hard the name gets to say with another letter there: a vowel is easiest."""
    beside = (letters[at - 1:at], letters[at + 1:at + 2])
    return 0 if is_vowel(letters[at]) else 1 if all(not side or is_vowel(side[0]) for side in beside) else 2


def _in_turn(lists: Sequence[Sequence[str]]) -> Iterator[str]:
    """Yield the first of each list, then the second of each, so that the next is exchanged in another place."""
    yield from (one for row in zip_longest(*lists) for one in row if one is not None)


def _with(letters: Sequence[str], at: int, other: str) -> str:
    return "".join((*letters[:at], other, *letters[at + 1:]))


def _exchanges(letters: Sequence[str], at: int) -> list[str]:
    """Return the letters of the same kind, case, marks and height, those rated most alike first; no u after q goes."""
    letter, base = letters[at], base_letter(letters[at])
    zone = zone_of(letter)
    if not (base.isascii() and base.isalpha()) or zone is Zone.NONE or letters[at - 1].casefold() == "q":
        return []
    marks = unicodedata2.normalize("NFD", letter)[1:]
    bases = _SMALL.upper() if base.isupper() else _SMALL
    fit = [other for one in bases if one != base and zone_of(one) is zone
           and is_vowel(one, _VOWELS_BEHIND) == is_vowel(letter, _VOWELS_BEHIND)
           and (other := str(unicodedata2.normalize("NFC", one + marks))) and letter_strokes(other)]
    return sorted(fit, key=lambda other: letters_alike(base, base_letter(other)), reverse=True)


def is_vowel(letter: str, vowels: str = _VOWELS) -> bool:
    """Say whether a letter is a vowel, its marks and case aside."""
    return bool(letter) and base_letter(letter).casefold() in vowels
