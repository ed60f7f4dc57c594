"""A first guess at a name in Latin letters, for the person who knows how the family spells it.

Cyrillic alone, as passports spell it (ICAO Doc 9303, part 3, section 6: for Russian by the tables of iuliia, the
letters of other languages from memory of the same list). For scripts that do not write every sound (Arabic, Hebrew) or
where one sign is read in several ways (Han) no guess is made: a wrong one would look like knowledge.
"""

from __future__ import annotations

import unicodedata2

from namewright.store import keeps_names

_UKRAINIAN, _BELARUSIAN = frozenset("іїєґ"), frozenset("ў")
_OTHERS = {"і": "i", "ї": "i", "є": "ie", "ґ": "g", "ў": "u", "ј": "j", "љ": "lj", "њ": "nj", "ђ": "d", "ћ": "c",
           "џ": "dz", "ѓ": "g", "ќ": "k", "ѕ": "dz"}


@keeps_names(1024)
def latin_spelling(name: str) -> str:
    """Return a name in Latin letters where its script allows a guess, else an empty text."""
    if not all(unicodedata2.name(char, "").startswith("CYRILLIC") for char in name if char.isalpha()):
        return ""
    from iuliia import ICAO_DOC_9303  # here, since few lists need it

    small = unicodedata2.normalize("NFC", name).lower()
    guess = ICAO_DOC_9303.translate(small.translate(str.maketrans(_own_letters(small))))
    words = "".join(char if char.isalpha() or char in "-’'" else " " for char in guess).split()
    if not all(word.replace("’", "").isascii() for word in words):
        return ""  # a letter that the tables do not know
    return " ".join("-".join(half.capitalize() for half in word.split("-")) for word in words)


def _own_letters(small: str) -> dict[str, str]:
    """Return the letters that the Russian table has not, or reads otherwise than the language of a name does."""
    ukrainian, belarusian = _UKRAINIAN & set(small), _BELARUSIAN & set(small)
    return {**_OTHERS, **({"г": "h"} if ukrainian or belarusian else {}),
            **({"и": "y"} if ukrainian else {})}
