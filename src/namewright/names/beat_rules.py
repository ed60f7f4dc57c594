"""Which letters of a word sound as the nucleus of a beat, by the spelling alone.

Each language has a small table (`data/beats-*.txt`) of ordered rules. A rule is one line of four columns,
``before letter after weight``: where ``letter`` stands behind text that ends in ``before`` and in front of
text that starts with ``after`` (regular expressions; ``.`` for no condition, ``V`` a vowel letter, ``C`` any
other), it gets that weight, and the first rule that fits decides. Above 0 the letter is the nucleus of a beat,
below 0 it is silent, a consonant, or sounds with its neighbour; the size says how sure that is, so that a
number of beats known from elsewhere can be shared out over the likeliest letters.

Out of scope: where one beat ends and the next begins (`beat_places`), and any script but the Latin one.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from functools import cache, lru_cache
from pathlib import Path

import unicodedata2

from namewright.named_tuples import NamedTuple

_OWN_LETTERS = str.maketrans("łøæœßđðþıŋħ", "loaosddtinh")
_MARKED = 6.0
_FIRST_OF_RUN = 5.0
_LATER_IN_RUN = -2.0
TABLES = frozenset({"de", "en", "es", "fr", "haw", "it", "pl", "pt"})
_NEVER = -9.0
_DIAERESIS = "\u0308"


class Rule(NamedTuple):
    """One line of a table: the surroundings of a letter, and the weight it has there."""

    before: str
    after: str
    weight: float

    def fits(self, word: str, at: int) -> bool:
        """Say whether the letter at index ``at`` of the plain small ``word`` stands so."""
        return ((not self.after or _compiled(self.after).match(word, at + 1) is not None)
                and (not self.before or _compiled(self.before).search(word, 0, at) is not None))


@cache
def _compiled(pattern: str) -> re.Pattern[str]:
    """Return a pattern of a table; many are never looked at, since what is behind a letter decides before."""
    return re.compile(pattern)


class Table(NamedTuple):
    """One language: its short tag, its vowel letters, the consonants that open a beat together, the rows of rules."""

    name: str
    vowels: str
    onsets: frozenset[str]
    rows: tuple[tuple[str, ...], ...]
    marks: str = ""


def table_for(language: str) -> Table:
    """Return the rules for a tag such as ``en`` or ``es-MX``; a language with no table gets the general one."""
    short = re.split("[-_]", language.casefold())[0]
    return _table(short if short in TABLES else "other")


@cache
def _table(name: str) -> Table:
    lines = Path(__file__).with_name("data").joinpath(f"beats-{name}.txt").read_text("utf-8").splitlines()
    rows = [line.split() for line in lines if line.strip() and not line.startswith("#")]
    heads = {row[0]: row[1:] for row in rows if row[0] in ("vowels", "onsets", "marks")}
    vowels = heads["vowels"][0]
    rules = tuple(tuple(row) for row in rows if row[0] not in heads)
    return Table(name, vowels, frozenset(heads["onsets"]), rules, "".join(heads.get("marks", ())))


@lru_cache(maxsize=1000)
def _rules(name: str, letter: str) -> tuple[Rule, ...]:
    """Return the rules of a table that may speak of a letter, in their order; a rule for any letter is for vowels."""
    table = _table(name)
    spoken_of = (letter, ".") if letter in table.vowels else (letter,)
    return tuple(_rule(row, table.vowels) for row in table.rows if row[1] in spoken_of)


def _rule(row: Sequence[str], vowels: str) -> Rule:
    before, _, after, weight = row
    return Rule(
        f"(?:{_classes(before, vowels)})$" if before != "." else "",
        _classes(after, vowels) if after != "." else "",
        float(weight),
    )


def _classes(pattern: str, vowels: str) -> str:
    return pattern.replace("C", f"[^{vowels}]").replace("V", f"[{vowels}]")


def plain(letter: str) -> str:
    """Return the small letter under the marks of one cluster: ``É`` gives ``e``, ``ł`` gives ``l``."""
    small = letter.casefold()[:1].translate(_OWN_LETTERS)
    return str(unicodedata2.normalize("NFD", small))[0]


def _seen(letter: str) -> str:
    """Return the small letter with its mark where Unicode has that as one character, else the letter under it."""
    small = letter.casefold()
    return small if len(small) == 1 else plain(letter)


def is_marked(letter: str) -> bool:
    """Say whether a cluster carries a mark that makes a vowel sound on its own, as in Chloé, Zoë and María.

    Two dots count on e and i alone: on a, o and u they are a German or Spanish letter of its own.
    """
    base, *marks = list(str(unicodedata2.normalize("NFD", letter)))
    return any(mark != _DIAERESIS or base in "eiEI" for mark in marks)


def weights(letters: tuple[str, ...], language: str) -> tuple[float | None, ...]:
    """Return for each cluster of one word how surely it is the nucleus of a beat, or None where it cannot be."""
    table = table_for(language)
    word = "".join(map(_seen if table.marks else plain, letters))
    found: list[float | None] = []
    in_run = False  # a nucleus stands before, with only vowels between
    for at, letter in enumerate(letters):
        vowel = word[at] in table.vowels
        marked = vowel and (word[at] in table.marks if table.marks else is_marked(letter))
        weight = _MARKED if marked else _weight(table, word, at, in_run)
        found.append(weight)
        # A marked í or ú shuts its neighbour out (María), and so does a y that is a consonant (Maya).
        apart = (marked and plain(letter) in "iu") or (weight == _NEVER and word[at] == "y")
        in_run = vowel and not apart and (in_run or (weight or 0) > 0)
    return tuple(found)


def _weight(table: Table, word: str, at: int, in_run: bool) -> float | None:
    for rule in _rules(table.name, word[at]):
        if rule.fits(word, at):
            return rule.weight
    if word[at] not in table.vowels:
        return None
    return _LATER_IN_RUN if in_run else _FIRST_OF_RUN
