"""Names told in a sentence, as a message does: ``Hi! My class this year: Mia, Leo and Ava``.

The words end at a colon or at the last one in small letters, and names alone follow. It is sure that these are the
class where a colon or a verb of naming leads to them, and enough are known; else they are asked about.
"""

from __future__ import annotations

from namewright.names.casing import begins_small
from namewright.names.clusters import is_letter
from namewright.names.particles import PARTICLES
from namewright.patterns import pattern
from namewright.roster.heading_words import GREETINGS, HEADING_WORDS, LEVELS
from namewright.roster.known import is_given
from namewright.roster.several import Several
from namewright.roster.vocabulary import OTHER_PEOPLE, fold, word_set
from namewright.store import keeps_names

_PARTED = pattern(r"\s*[,;，、]\s*(?:(?:and|und|y|et|e|ed)\s+)?|\s+(?:and|und|y|et|e|ed)\s+")
_AND = frozenset(("and", "und", "y", "et", "e", "ed"))
_NAMING = word_set("""
    are, is, called, named, heissen, sind, son, llaman, sont, s'appellent, s’appellent, sono,
    chiamano, sao, chamam, chamam-se""")
_CLASS = HEADING_WORDS | LEVELS
_FEWEST, _MOST_WORDS = 3, 3
_SMALL = 2  # words in small letters that make a sentence
_MOSTLY, _SOME = 0.6, 0.3


@keeps_names(1024)
def told_in_a_sentence(text: str) -> Several | None:
    """Return the names at the end of a sentence, headed by its words; None where a line is no such sentence."""
    words = text.rstrip(" .!").split()
    ends = [at for at, word in enumerate(words) if word.endswith(":") or _is_small(word)]
    if len(ends) < _SMALL or (is_given(words[0].strip(",!")) and fold(words[0]).strip(",!") not in GREETINGS):
        return None
    before, parts = words[: ends[-1] + 1], tuple(_PARTED.split(" ".join(words[ends[-1] + 1 :])))
    if len(parts) < _FEWEST or not all(map(_is_name, parts)):
        return None
    said = {fold(word).strip(".,:!¡") for word in before}
    known = sum(is_given(part.split()[0]) for part in parts) / len(parts)
    about = not _CLASS.isdisjoint(said)
    if not about and known < _MOSTLY:
        return None
    leads = before[-1].endswith(":") or fold(before[-1]) in _NAMING
    sure = leads and OTHER_PEOPLE.isdisjoint(said) and known >= (_SOME if about else _MOSTLY)
    return Several(parts, sure, f"{' '.join(before).rstrip(' :')}:")


def _is_small(word: str) -> bool:
    """Say whether a word is in small letters, stands between no names and is in none."""
    letters = word.strip(".,:!?¡¿")
    return len(letters) > 1 and letters.islower() and begins_small(letters) and letters not in _AND | PARTICLES


def _is_name(part: str) -> bool:
    words = part.split()
    return 0 < len(words) <= _MOST_WORDS and all(
        is_letter(word[0]) and (not begins_small(word) or word in PARTICLES) and not any(map(str.isdigit, word))
        for word in words)
