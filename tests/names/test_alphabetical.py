"""The letters that names are looked for by, beside the normalization and the letter names of Python's own Unicode."""

from __future__ import annotations

import unicodedata

import pytest
from hypothesis import given
from hypothesis import strategies as st

from namewright.names.alphabetical import base_letters


@pytest.mark.parametrize(("name", "letters"), [
    ("Łucja", "lucja"), ("Søren", "soren"), ("Đura", "dura"), ("Çağla", "cagla"), ("ŻÓŁĆ", "zolc"), ("Ħamo", "hamo"),
    ("Irmak", "irmak"), ("Ilgın", "ilgin"), ("Æsa", "aesa"), ("Weiß", "weiss"), ("Jean-Tov 2", "jean-tov 2"),
    ("Анна", "анна"),
])
def test_each_letter_is_its_base_letter(name: str, letters: str) -> None:
    assert base_letters(name) == letters


def test_no_letter_of_european_names_stands_outside_the_alphabet() -> None:
    """Latin-1 and Latin Extended-A: those that Unicode names after one of the 26 are that one, large and small."""
    for char in map(chr, range(0xC0, 0x180)):
        words = unicodedata.name(char, "").split()
        if words[:1] == ["LATIN"] and words[4:5] == ["WITH"]:
            assert base_letters(char) == words[3].lower()
        if char.isalpha():
            assert set(base_letters(char)) <= set("abcdefghijklmnopqrstuvwxyzʼĸ")


@given(st.text("aÉłØđŠñßı'’- Æи", max_size=8), st.text("aÉłØđŠñßı'’- Æи", max_size=8))
def test_of_two_names_together_the_letters_are_those_of_each(one: str, other: str) -> None:
    """Nothing hangs on the neighbours, and base letters have no others."""
    assert base_letters(one + other) == base_letters(one) + base_letters(other)
    assert base_letters(base_letters(one)) == base_letters(one)
