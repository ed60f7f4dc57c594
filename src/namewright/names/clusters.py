"""Letters as a child counts them: one letter tile is one extended grapheme cluster.

The rule is Unicode Standard Annex #29 (UAX #29), cut down to what Latin names can hold: a letter and
every mark that stands on it. Out of scope, because the alphabet is Latin: Hangul jamo, conjuncts of the
Indic scripts, flags and joined emoji; such text is still cut, only not always where UAX #29 would.
"""

from __future__ import annotations

import unicodedata2

_ATTACHING = frozenset({"Mn", "Me", "Mc"})
_JOINERS = frozenset("\u200c\u200d")


def clusters(text: str) -> tuple[str, ...]:
    """Cut NFC ``text`` into extended grapheme clusters, in order; joined again they are ``text``.

    A mark with nothing before it is a cluster by itself (UAX #29, rule GB1).
    """
    if text.isascii() and text.isprintable():
        return tuple(text)
    found: list[str] = []
    for char in text:
        if found and _stays_with(found[-1], char):
            found[-1] += char
        else:
            found.append(char)
    return tuple(found)


def _stays_with(before: str, char: str) -> bool:
    """Rules GB3 to GB5 (controls stand alone, CR LF apart), then GB9 and GB9a."""
    if char == "\n":
        return before == "\r"
    return _attaches(char) and not _is_control(before[-1])


def _attaches(char: str) -> bool:
    """Rules GB9 and GB9a: a mark, and the two joiners, stay with what stands before them."""
    return not char.isascii() and (char in _JOINERS or unicodedata2.category(char) in _ATTACHING)


def _is_control(char: str) -> bool:
    """Rules GB4 and GB5: nothing attaches to a control or a format character, joiners apart."""
    return char not in _JOINERS and unicodedata2.category(char) in ("Cc", "Cf", "Cs", "Zl", "Zp")


def is_letter(cluster: str) -> bool:
    """Say whether the cluster begins with a letter of any script (general category L)."""
    return cluster[:1].isalpha() if cluster.isascii() else unicodedata2.category(cluster[0])[0] == "L"
