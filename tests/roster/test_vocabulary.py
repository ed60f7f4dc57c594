"""The word lists of the roster reader hold together: every key can be met, and none means two things."""

from __future__ import annotations

import unicodedata

import pytest
from hypothesis import given
from hypothesis import strategies as st

from namewright.roster.header_words import HEADER_WORDS
from namewright.roster.vocabulary import HANDS, NO, NOTHING, PARTS, SUPPORTS, YES, fold


@pytest.mark.parametrize(("typed", "folded"), [
    ("  First   NAME ", "first name"), ("Prénom:", "prenom"), ("Last_Name*", "last name"), ("D.O.B.", "d.o.b"),
    ("Ñandú", "nandu"), ("STRASSE", "strasse"), ("Straße", "strasse"), ("", "")])
def test_words_are_compared_without_case_marks_or_a_last_sign(typed: str, folded: str) -> None:
    assert fold(typed) == folded


@given(st.text(max_size=30))
def test_folding_again_changes_nothing_much(text: str) -> None:
    """The same words, composed or not, are the same."""
    assert fold(unicodedata.normalize("NFD", text)) == fold(unicodedata.normalize("NFC", text))


def test_a_yes_is_no_no_and_a_hand_no_level_of_support() -> None:
    assert not YES & NO
    assert not HANDS.keys() & SUPPORTS.keys()
    assert not NOTHING & (PARTS.keys() | SUPPORTS.keys())


@pytest.mark.parametrize("key", sorted(HEADER_WORDS))
def test_every_header_word_is_written_as_headers_are_looked_up(key: str) -> None:
    """A word that folding would change could never be found."""
    assert fold(key) == key


@pytest.mark.parametrize("key", sorted({*HANDS, *SUPPORTS, *PARTS, *YES, *NO}))
def test_every_answer_is_written_as_cells_are_looked_up(key: str) -> None:
    assert fold(key) == key
