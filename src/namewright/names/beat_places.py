"""Where one beat of a word ends and the next begins, once it is known which letters are their nuclei.

A single consonant goes to the beat behind it, several are parted so that the next beat starts as words of
the language do (th, br), and a silent letter stays with what it leans on. For a language without a table of
its own, pyphen's patterns part a run of consonants where they know a break in it. Indices count clusters.
"""

from __future__ import annotations

from functools import cache
from itertools import pairwise
from typing import Any

from namewright.names.beat_rules import Table, plain, table_for

APOSTROPHES = "'’‘`ʼ"
_CLOSING = frozenset({"ck", "x"})  # they end a beat: Nick-y, Max-ine
_AFTER_A_CONSONANT = frozenset({"st", "sp", "sk"})  # Win-ston, but Jus-tin


def places(letters: tuple[str, ...], nuclei: tuple[int, ...], language: str) -> tuple[int, ...]:
    """Return the index at which each beat after the first begins; ``nuclei`` are ascending indices."""
    table = table_for(language)
    word = "".join(map(plain, letters))
    hints = () if table.name != "other" else _hints(letters, language)
    return tuple(_place(word, nucleus, following, table, hints) for nucleus, following in pairwise(nuclei))


def _place(word: str, nucleus: int, following: int, table: Table, hints: tuple[int, ...]) -> int:
    """Part the letters between two nuclei: vowels lean on their nucleus, the consonants left over are shared."""
    start, end = nucleus + 1, following
    while start < end and _leans(word, start, table.vowels):
        start += 1
    while end > start and _leans(word, end - 1, table.vowels):
        end -= 1
    silent = [at for at in range(start, end) if _leans(word, at, table.vowels)]
    if silent:  # Kate-lyn
        return silent[-1] + 1
    hinted = [at for at in hints if start < at < end]
    return hinted[0] if len(hinted) == 1 else start + _kept(word[start:end], table)


def _leans(word: str, at: int, vowels: str) -> bool:
    """Say whether a letter is a vowel that leans on another. A y before a vowel opens a beat: Ma-ya, Tan-ya."""
    opens = word[at] == "y" and word[at + 1] in vowels
    return word[at] in vowels and not opens


def _kept(run: str, table: Table) -> int:
    """Return how many consonants of the run between two beats stay with the first of them."""
    apart = max(map(run.rfind, APOSTROPHES))
    if apart >= 0:  # O'-Bri-en; in Hawaiian it stands for the ʻokina, a consonant
        return apart + (table.name != "haw")
    if len(run) < 2 or table.name == "haw":
        return len(run) if run == "x" and table.name == "en" else 0
    if run in _CLOSING:
        return len(run)
    return len(run) - _opening(run, table)


def _opening(run: str, table: Table) -> int:
    """Return how many consonants of a run of two or more open the next beat."""
    for length in (3, 2):
        if run[-length:] in table.onsets and len(run) >= length:
            return length
    longer = len(run) > 2 and table.name in ("en", "other")
    return 2 if longer and run[-2:] in _AFTER_A_CONSONANT else 1


def _hints(letters: tuple[str, ...], language: str) -> tuple[int, ...]:
    patterns = _patterns(language)
    if patterns is None or any(len(letter.lower()) > 1 for letter in letters):
        return ()
    return tuple(map(int, patterns.positions("".join(letters).lower())))


@cache
def _patterns(language: str) -> Any:
    import pyphen

    tag = pyphen.language_fallback(language.replace("-", "_"))
    return pyphen.Pyphen(lang=tag, left=1, right=1) if tag else None
