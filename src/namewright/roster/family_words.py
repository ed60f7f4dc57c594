"""How many words of a name whose family name stands first are the family's: ``Lo Cascio Ada``, ``AÏT HAMOU Nassim``.

Asked where a title promises that order. Capitals tell, and the small words that open a family name; Italian has some
that are families of China, too, so these count only before words that can be no given name of two.
"""

from __future__ import annotations

from collections.abc import Sequence
from itertools import takewhile

from namewright.names.particles import PARTICLES
from namewright.roster.known import is_given, lean
from namewright.roster.vocabulary import fold, word_set

_ITALIAN = word_set("dal, dalla, dalle, dallo, dai, degli, dei, dello, delle")
_ITALIAN_OR_CHINESE = word_set("lo, li")
_TWO = 2  # letters of a word that is no initial


def family_words(words: Sequence[str]) -> int:
    """Return how many words at the front of a whole name are its family name, all of them but one at most."""
    loud = len(list(takewhile(_is_loud, words)))
    if 0 < loud < len(words):
        return loud
    size = next((at for at, word in enumerate(words) if fold(word) not in PARTICLES | _ITALIAN), 0) + 1
    article = len(words) > _TWO and fold(words[0]) in _ITALIAN_OR_CHINESE
    return size + (article and not is_given(words[1]) and lean(words[2]) > 0)


def _is_loud(word: str) -> bool:
    return len(word) >= _TWO and word.isupper()
