"""Which letters sound as the nucleus of a beat: names read by hand, and the parts of the rules one by one."""

from __future__ import annotations

import re

import pytest

from namewright.names.beat_rules import TABLES, Rule, is_marked, plain, table_for, weights
from namewright.names.clusters import clusters

# Read aloud by hand; a capital is the nucleus of a beat.
NUCLEI = [
    ("mIrA", "en", "every vowel between consonants"),
    ("kAte", "en", "an e at the end is silent"),
    ("kAtE", "de", "but sounds in German"),
    ("mAyA", "en", "y between vowels is a consonant"),
    ("rAul", "xx", "of two vowels in a row only the first, where no table says more"),
    ("mArÍA", "es", "a marked i sounds for itself, and so does its neighbour"),
    ("chlOÉ", "fr", "and a marked e"),
]


@pytest.mark.parametrize(("read", "language", "why"), NUCLEI, ids=[row[2] for row in NUCLEI])
def test_vowels_that_sound(read: str, language: str, why: str) -> None:
    """A weight above 0 makes a nucleus; a consonant has none."""
    found = weights(clusters(read.lower()), language)
    assert [weight is not None and weight > 0 for weight in found] == [letter.isupper() for letter in read], why


def test_a_consonant_can_be_no_nucleus() -> None:
    """None, whatever number of beats a dictionary asks for."""
    assert [weight is None for weight in weights(tuple("mira"), "en")] == [True, False, True, False]


@pytest.mark.parametrize(("letter", "base"), [("É", "e"), ("ł", "l"), ("Ø", "o"), ("ß", "s"), ("ŋ", "n"),
                                              ("ẹ\u0300", "e"), ("b", "b")])
def test_the_letter_under_its_marks(letter: str, base: str) -> None:
    """Small and bare, letters that Unicode does not take apart too."""
    assert plain(letter) == base


@pytest.mark.parametrize(("letter", "marked"), [("é", True), ("ë", True), ("ï", True), ("ö", False), ("ü", False),
                                                ("ä", False), ("ó", True), ("a", False)])
def test_two_dots_count_on_e_and_i_alone(letter: str, marked: bool) -> None:
    """Zoë and Anaïs, but Jörg and Müller."""
    assert is_marked(letter) is marked


@pytest.mark.parametrize(("before", "after", "word", "at", "fits"), [
    (None, None, "mira", 1, True),
    ("m$", None, "mira", 1, True), ("m$", None, "mira", 3, False),
    (None, "r", "mira", 1, True), (None, "r", "mira", 3, False),
    ("m$", "r", "mira", 1, True), ("m$", "a", "mira", 1, False),
])
def test_a_rule_looks_before_and_after(before: str | None, after: str | None, word: str, at: int, fits: bool) -> None:
    """Both surroundings have to be there; the letter itself is neither."""
    left, right = (re.compile(one) if one else None for one in (before, after))
    assert Rule(left, right, 1.0).fits(word, at) is fits


@pytest.mark.parametrize(("tag", "table"), [("es-MX", "es"), ("DE", "de"), ("pt_BR", "pt"), ("sv", "other")])
def test_a_language_finds_its_table(tag: str, table: str) -> None:
    """By its first part, in any case; another language has the general one."""
    assert table_for(tag).name == table


@pytest.mark.parametrize("language", sorted(TABLES))
def test_every_table_has_rules_that_can_be_read(language: str) -> None:
    """Four columns a rule, a weight that is a number and not 0, vowels to speak of."""
    table = table_for(language)
    assert set("aeiou") <= set(table.vowels)
    assert all(len(row) == 4 and float(row[3]) != 0 for row in table.rows)
