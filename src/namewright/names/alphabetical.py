"""By which letters a name is looked for in a list by alphabet: the 26, whatever stands on, under or through them.

Where a list mixes names of many languages, no language's own order is right for all of them, so every letter stands
with the one that a reader of any of them takes it for: É with E, Ł with L, Ø with O, Đ with D. Out of scope: what
decides between names that are alike so.
"""

from __future__ import annotations

from functools import lru_cache

import unicodedata2

from namewright.patterns import pattern

_BASE = pattern("LATIN SMALL LETTER ([A-Z]) WITH .*")
_WRITTEN_OUT = {"ı": "i", "ŋ": "n", "ð": "d", "æ": "ae", "œ": "oe", "þ": "th", "ə": "e", "ĳ": "ij", "ŉ": "n"}


def base_letters(text: str) -> str:
    """Return a text in small letters without marks, each letter as the base letter it is made from."""
    if text.isascii():
        return text.casefold()
    decomposed = unicodedata2.normalize("NFD", text.casefold())
    return "".join(_base_of(char) for char in decomposed if unicodedata2.category(char)[0] != "M")


@lru_cache(maxsize=1000)
def _base_of(char: str) -> str:
    """Return the letter that Unicode names a letter after: ł is its “small letter l with stroke”."""
    named = _BASE.fullmatch(unicodedata2.name(char, ""))
    return named[1].lower() if named else _WRITTEN_OUT.get(char, char)
