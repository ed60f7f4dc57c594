"""Letter case of names: mended only where a name was typed all in capitals or all small.

What a family chose is never touched: a name in mixed case (McKenna, deShawn, MaryKate) comes back as it is.
The one exception is capitals behind a small Mc or Mac (McKENNA), which is a name in capitals.

The rules, all common practice among English and Spanish writers:

- each word and each part after a hyphen opens with a capital; particles of a family name
  are small (de la Cruz);
- ``Mc`` is followed by a capital (``Mc Nally`` stays apart), unless the name is said to be of a language that has no
  such names (Mciszewski);
  ``Mac`` is not, because Mackenzie and MacKenzie are both right;
- after an apostrophe comes a capital behind a short opening (O'Neil, D'Angelo) or before a consonant
  (Ja'Marcus), and a small letter otherwise (Keali'i); the ʻokina has no case and is no apostrophe;
- two capitals stay (AJ, TJ) unless they read as consonant and vowel (JO, BO) or are in a short
  list (AL, ED);
- İ, ı and ğ show that Turkish rules hold: I pairs with ı and İ with i. a plain I shows nothing, but where the
  name is said to be Turkish or Azerbaijani they hold;
- IJ before a consonant is the Dutch letter and both stay capital (IJsbrand);
  before a vowel it is not (Ijeoma), and in a name of another language neither is; in a Dutch one it always is;
- a language that is said changes particles: Italian ones have capitals (De Luca), and French La, Le and Les behind a
  small ``de`` (de La Fontaine);
- a Lithuanian i, j or į keeps its dot under a grave, an acute or a tilde (Unicode, SpecialCasing.txt).
"""

from __future__ import annotations

import re

import unicodedata2

from namewright.names.clusters import clusters
from namewright.names.particles import PARTICLES, SMALL_PARTICLES
from namewright.patterns import pattern

_APOSTROPHES = "'’‘`ʼ"
_OKINA = "ʻ"
_HYPHENS = "-‐‑"
_VOWELS = frozenset("aeiouyàáâãäåāăąèéêëēęěėìíîïīįòóôõöøōőùúûüūůűųýæœıə")
_SHORT_OPENINGS = frozenset({"o", "d", "l", "n", "m", "t", "s", "de", "dell", "all", "dall", "sant"})
_TWO_LETTER_NAMES = frozenset({"al", "ed", "an", "ib", "ng", "st", "jr", "sr"})
_TURKISH = frozenset("İığĞ")
CASED = ("az", "lt", "nl", "tr")
"""Languages, by their tags, that have letter case of their own and no rules for beats (``beats.SPOKEN`` has those)."""
_TURKISH_RULES = frozenset(("tr", "az"))
_WITH_MC = frozenset(("", "en", "ga", "gd"))
_CAPITAL_PARTICLES = {"it": SMALL_PARTICLES, "fr": frozenset(("la", "le", "les"))}
_DOTS_KEPT = pattern("(?<=.)([ij]\u0328?)(?=[\u0300\u0301\u0303])")  # grave, acute, tilde
_MAC_CAPITALS = pattern(r"M(?:c|ac)[^\W\d_]{2,}")
DOTTED = pattern(r"(?:[^\W\d_]\.){2,}")
_TURKISH_LOWER = str.maketrans({"I": "ı", "İ": "i"})
_TURKISH_UPPER = str.maketrans({"i": "İ", "ı": "I"})


def mend_case(name: str, *, family: bool = False, language: str = "") -> str:
    """Return ``name`` with its case mended if it is all capitals or all small, else unchanged.

    ``family`` says that leading particles belong to a family name and are written small; ``language`` is that of the
    name, by its tag, empty where nobody said.
    """
    if not _wants_mending(name):
        return name
    turkish = language in _TURKISH_RULES or not _TURKISH.isdisjoint(name)
    small = SMALL_PARTICLES - _CAPITAL_PARTICLES.get(language, frozenset())
    words = name.split(" ")
    mended = []
    for index, word in enumerate(words):
        opens = index == 0 and not family
        if len(words) > index + 1 and not opens and _lower(word, turkish) in small:
            mended.append(_lower(word, turkish))
        elif len(words) > index + 1 and not opens and word.casefold() == "mc" and language in _WITH_MC:
            mended.append("Mc")
        elif len(words) > index + 1 and not opens and _lower(word, turkish) in PARTICLES:
            mended.append(_capital(_lower(word, turkish), turkish))  # EL AMRANI
        else:
            mended.append(_mend_word(word, turkish, language, alone=len(words) == 1))
    return str(unicodedata2.normalize("NFC", _by_language(" ".join(mended), language)))


def _by_language(mended: str, language: str) -> str:
    """Write what a language has that no letter by itself shows: the dots that Lithuanian keeps."""
    if language == "lt":
        return _DOTS_KEPT.sub("\\1\u0307", unicodedata2.normalize("NFD", mended))
    return mended


def begins_small(word: str) -> bool:
    """Say whether a word begins small in an alphabet whose names begin with capitals: that of Georgian has none."""
    return word[0].islower() and word[0].title() != word[0]


def opens_as_a_name(word: str) -> bool:
    """Say whether a word begins as names do: with a capital, or with a letter of a script that has none."""
    return word[:1].isalpha() and not begins_small(word)


def has_no_capitals(word: str) -> bool:
    """Say whether a word begins in a script whose names have no capitals: Hebrew, Georgian, Chinese."""
    return word[:1].isalpha() and word[0].title() == word[0].lower()


def is_all_capitals(text: str) -> bool:
    """Say whether ``text`` has capitals and no small letter, a small ``c`` or ``ac`` of Mc and Mac apart."""
    if text.isupper() or text.istitle():
        return text.isupper()
    words = [word for word in re.split(r"[ \-]", text) if word]
    return bool(words) and all(word.isupper() or _is_mac_capitals(word) for word in words)


def _wants_mending(name: str) -> bool:
    return name.islower() or is_all_capitals(name)


def _is_mac_capitals(word: str) -> bool:
    """McKENNA: capitals behind a small c."""
    return bool(_MAC_CAPITALS.fullmatch(word)) and word[word.index("c") + 1 :].isupper()


def _lower(text: str, turkish: bool) -> str:
    return (text.translate(_TURKISH_LOWER) if turkish else text.replace("İ", "i")).lower()


def _capital(text: str, turkish: bool) -> str:
    """Raise the first cased letter; an ʻokina, a quotation mark or a dot before it has no case."""
    for index, char in enumerate(text):
        if char.islower():
            raised = char.translate(_TURKISH_UPPER) if turkish else char
            return text[:index] + raised.title() + text[index + 1 :]
        if char.isalpha() and char != _OKINA:
            break
    return text


def _mend_word(word: str, turkish: bool, language: str, alone: bool) -> str:
    if _is_initials(word):
        return word
    if DOTTED.fullmatch(word):
        return word.upper()
    parts = re.split(f"([{_HYPHENS}])", word)
    last = len(parts) - 1
    for index in range(0, len(parts), 2):
        small = _lower(parts[index], turkish)
        if 0 < index < last and small in SMALL_PARTICLES:
            parts[index] = small
        else:
            parts[index] = _mend_part(small, turkish, language)
    mended = "".join(parts)
    return mended.upper() if not alone and mended.lower() in ("ii", "iii", "iv") else mended


def _mend_part(small: str, turkish: bool, language: str) -> str:
    """Mend one part without hyphens, given in small letters."""
    pieces = re.split(f"([{_APOSTROPHES}])", small)
    pieces[0] = _mend_opening(pieces[0], turkish, language)
    for index in range(2, len(pieces), 2):
        leads = index == 2 and not pieces[0]
        if leads or _opens_after(pieces[index - 2], pieces[index]):
            pieces[index] = _mend_opening(pieces[index], turkish, language)
    return "".join(pieces)


def _opens_after(before: str, after: str) -> bool:
    """Say whether a capital stands after the apostrophe between ``before`` and ``after``."""
    if before.casefold() in _SHORT_OPENINGS:
        return True
    return len(clusters(after)) > 1 and after[0] not in _VOWELS


def _mend_opening(small: str, turkish: bool, language: str) -> str:
    """Capitalise, with the two openings that raise a second letter: Mc and the Dutch IJ."""
    dutch = language == "nl" or (not language and len(small) > 2 and small[2] not in _VOWELS)
    if dutch and small.startswith("ij"):
        return "IJ" + small[2:]
    if len(small) > 3 and small.startswith("mc") and language in _WITH_MC:
        return "Mc" + _capital(small[2:], turkish)
    return _capital(small, turkish)


def _is_initials(word: str) -> bool:
    """AJ, TJ, J.P. and the like: capitals that are meant."""
    if not word.isupper():
        return False
    if DOTTED.fullmatch(word):
        return True
    letters = word.lower()
    if len(letters) != 2 or not letters.isalpha() or letters in _TWO_LETTER_NAMES:
        return False
    return not (letters[0] not in _VOWELS and letters[1] in _VOWELS)
