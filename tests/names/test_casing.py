"""Letter case is mended only where a name was typed all in one case."""

from __future__ import annotations

import unicodedata

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from namewright.names.casing import begins_small, has_no_capitals, mend_case, opens_as_a_name

GIVEN = [
    ("KATIE", "Katie", "all capitals"),
    ("zoë", "Zoë", "all small, with an accent"),
    ("McKenna", "McKenna", "mixed case is a family's choice"),
    ("deShawn", "deShawn", "mixed case that opens small"),
    ("MaryKate", "MaryKate", "mixed case inside"),
    ("Mary kate", "Mary kate", "mixed over two words is mixed"),
    ("McKENNA", "McKenna", "capitals behind a small c are capitals"),
    ("MC NALLY", "MC Nally", "two capitals before a name are initials, in a given name"),
    ("MCKENNA", "McKenna", "Mc is always followed by a capital"),
    ("MACKENZIE", "Mackenzie", "Mac is not: both spellings are right"),
    ("MARY-KATE", "Mary-Kate", "each part after a hyphen"),
    ("JEAN-DE-DIEU", "Jean-de-Dieu", "a particle between hyphens"),
    ("KEALIʻI", "Kealiʻi", "the ʻokina has no case and starts nothing"),
    ("ʻAOLANI", "ʻAolani", "the letter behind a leading ʻokina opens the name"),
    ("KEALI'I", "Keali'i", "an apostrophe between vowels starts nothing"),
    ("DE'SHAWN", "De'Shawn", "an apostrophe before a consonant does"),
    ("T'CHAMBA", "T'Chamba", "so does one behind a single letter"),
    ("AJ", "AJ", "two capitals without a syllable are initials"),
    ("TJ", "TJ", "no vowel at all"),
    ("JO", "Jo", "consonant and vowel read as a name"),
    ("ED", "Ed", "a known short name"),
    ("J.P.", "J.P.", "initials with dots"),
    ("J", "J", "one letter"),
    ("j", "J", "one small letter"),
    ("ALİ", "Ali", "Turkish İ pairs with i"),
    ("IŞIL YİĞİT", "Işıl Yiğit", "beside İ and Ğ a plain I is dotless"),
    ("ISMAIL", "Ismail", "a plain I alone shows nothing"),
    ("ışıl", "Işıl", "dotless ı rises to I"),
    ("ilkay ışık", "İlkay Işık", "beside ı a small i rises to İ"),
    ("IJSBRAND", "IJsbrand", "Dutch IJ before a consonant"),
    ("IJEOMA", "Ijeoma", "IJ before a vowel is two letters"),
    ("STRAUẞ", "Strauß", "capital ẞ pairs with ß"),
    ("Ẹ̀BUN", "Ẹ̀bun", "marks stay on their letter"),
    ("ΝΙΚΟΣ", "Νικος", "another script: final sigma by Unicode's rule"),
    ("MARIA DEL CARMEN", "Maria del Carmen", "a particle inside a given name"),
    ("安娜", "安娜", "a script without case"),
]
FAMILY = [
    ("EL AMRANI", "El Amrani", "two letters before a name are no initials"),
    ("MC NALLY", "Mc Nally", "its opening stands apart, as it was typed"),
    ("DE LA CRUZ", "de la Cruz", "leading particles are small"),
    ("VAN DER BERG", "van der Berg", "Dutch particles"),
    ("'T HART", "'t Hart", "the Dutch article"),
    ("VAN", "Van", "a particle alone is the name"),
    ("O'NEIL", "O'Neil", "a capital behind O'"),
    ("D’ANGELO", "D’Angelo", "the curly apostrophe is kept"),
    ("AL HADDAD", "Al Haddad", "Al is written with a capital in English"),
    ("MOSS III", "Moss III", "a number of the family stays"),
    ("LÓPEZ Y RUIZ", "López y Ruiz", "the Spanish and"),
]


@pytest.mark.parametrize(("typed", "expected", "why"), GIVEN, ids=[row[0] for row in GIVEN])
def test_given_names(typed: str, expected: str, why: str) -> None:
    """A given name in one case gets the case its kind of name is written in."""
    assert mend_case(typed) == expected, why


@pytest.mark.parametrize(("typed", "expected", "why"), FAMILY, ids=[row[0] for row in FAMILY])
def test_family_names(typed: str, expected: str, why: str) -> None:
    """A family name also keeps its leading particles small."""
    assert mend_case(typed, family=True) == expected, why


@given(st.text(st.characters(categories=("Lu", "Ll", "Mn"), max_codepoint=0x24F), min_size=1, max_size=12))
def test_mending_twice_is_mending_once(typed: str) -> None:
    """A mended name has nothing left to mend, and stays NFC."""
    once = mend_case(unicodedata.normalize("NFC", typed))
    assert mend_case(once) == once
    assert unicodedata.normalize("NFC", once) == once


@given(st.text(st.characters(categories=("Lu", "Ll"), max_codepoint=0x17F), min_size=2, max_size=12))
def test_mixed_case_survives(typed: str) -> None:
    """A name with a capital and a small letter, Mc and Mac apart, is returned as it is."""
    assume(typed != typed.upper() and typed != typed.lower() and not typed.startswith("M"))
    assert mend_case(typed) == typed


@pytest.mark.parametrize("word", ["Mia", "Éva", "მარიამ", "冬梅", "ליאו", "ليلى", "サユリ"])
def test_a_name_opens_with_a_capital_or_in_a_script_without(word: str) -> None:
    assert opens_as_a_name(word)
    assert not begins_small(word)
    assert has_no_capitals(word) is (word not in ("Mia", "Éva"))


@pytest.mark.parametrize("word", ["mia", "éva", "5 Mia", "(Mia", ""])
def test_small_words_and_signs_open_no_name(word: str) -> None:
    assert not opens_as_a_name(word)
