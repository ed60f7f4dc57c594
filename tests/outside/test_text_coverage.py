"""Every letter of the languages we say we serve can be drawn.

The letters are the main exemplar sets of Unicode CLDR (``tests/data/exemplar-latin.json``, which names its
source), always with a–z, since names use them in every Latin alphabet.
"""

from __future__ import annotations

import json
import string
import unicodedata
from pathlib import Path

import pytest

from namewright.letters.alphabet import Alphabet, MissingLetters
from namewright.lines.ruling import preset
from namewright.lines.setting import RuledLetters
from namewright.names.clusters import clusters

DATA = json.loads((Path(__file__).parents[1] / "data" / "exemplar-latin.json").read_text(encoding="utf-8"))
LANGUAGES = DATA["languages"]
# Capitals that a plain upper() does not give: Turkish i and ı (Unicode SpecialCasing.txt), capital sharp s (U+1E9E).
OWN_CAPITALS = {"tr": {"i": "İ", "ı": "I"}, "de": {"ß": "ẞ"}}


def letters_of(language: str) -> set[str]:
    """Return the letters of a language, small and capital, a digraph as its letters."""
    small = {letter for unit in [*LANGUAGES[language]["main"], *string.ascii_lowercase]
             for letter in clusters(unicodedata.normalize("NFC", unit))}
    own = OWN_CAPITALS.get(language, {})
    capitals = {letter for one in small for letter in clusters(unicodedata.normalize("NFC", own.get(one, one.upper())))}
    return small | capitals | set(string.ascii_uppercase)


# English, Spanish, French, Portuguese, Italian, German, Dutch, Polish, Czech, Slovak, Hungarian, Romanian, Croatian,
# Slovenian, Turkish, Albanian, Swedish, Norwegian, Danish, Finnish, Icelandic, Estonian, Latvian, Lithuanian, Irish,
# Welsh, Catalan, Maltese, Vietnamese, Hawaiian, Māori, Samoan, Yoruba, Igbo, Hausa, Somali, Swahili, Filipino.
SERVED = {"en", "es", "fr", "pt", "it", "de", "nl", "pl", "cs", "sk", "hu", "ro", "hr", "sl", "tr", "sq", "sv", "nb",
          "da", "fi", "is", "et", "lv", "lt", "ga", "cy", "ca", "mt", "vi", "haw", "mi", "sm", "yo", "ig", "ha", "so",
          "sw", "fil"}


def test_the_languages_that_we_serve_are_all_looked_at() -> None:
    """Each language that the letters are made for has its exemplar set here, with at least twelve letters."""
    assert len(SERVED) == 38
    assert set(LANGUAGES) == SERVED
    assert min(len(LANGUAGES[code]["main"]) for code in SERVED) >= 12


@pytest.mark.parametrize("language", LANGUAGES)
def test_every_letter_of_a_language_is_drawn(alphabet: Alphabet, language: str) -> None:
    """No letter of the language, small or capital, is missing, and each comes out as strokes."""
    for letter in sorted(letters_of(language)):
        assert alphabet.missing(letter) == (), letter
        assert alphabet.letter(letter).base.strokes, letter


@pytest.mark.parametrize("language", LANGUAGES)
def test_letters_that_differ_are_drawn_differently(alphabet: Alphabet, language: str) -> None:
    """No two letters of one language look the same: a mark is never lost in silence."""
    ruled = RuledLetters(alphabet, preset("us-3/4"))
    drawn: dict[object, str] = {}
    for letter in sorted(letters_of(language)):
        shape = tuple(stroke.segments for stroke in ruled.line(letter).letters[0].letter.strokes)
        assert shape not in drawn, (letter, drawn.get(shape))
        drawn[shape] = letter


def test_a_decomposed_letter_is_the_same_letter(alphabet: Alphabet) -> None:
    """NFD and NFC spellings of a letter give the same drawing (Unicode Standard Annex #15: they are equivalent)."""
    for letter in sorted(set().union(*map(letters_of, LANGUAGES))):
        one, other = alphabet.letter(letter), alphabet.letter(unicodedata.normalize("NFD", letter))
        assert (one.base, one.marks) == (other.base, other.marks), letter


@pytest.mark.parametrize("letter", ["ж", "字", "ع", "\u0338", "ƿ"])
def test_a_letter_we_lack_is_named(alphabet: Alphabet, letter: str) -> None:
    """What we cannot draw is told by its Unicode name, never left out."""
    assert alphabet.missing(f"a{letter}b") == (letter,)
    with pytest.raises(MissingLetters, match=f"U\\+{ord(letter):04X}"):
        RuledLetters(alphabet, preset("us-3/4")).line(f"a{letter}b")
