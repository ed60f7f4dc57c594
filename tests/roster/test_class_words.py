"""A word that opens a class, stands in one or in a heading is told from the words of names."""

from __future__ import annotations

import pytest

from namewright.roster.class_words import is_beside_class, is_compound, is_heading_word, opens_as_class


@pytest.mark.parametrize("word", ["aula", "sala", "vorschulgruppe", "erlenraum"])
def test_a_class_opens_with_such_a_word(word: str) -> None:
    assert opens_as_class(word)


def test_a_german_word_in_one_is_a_class_and_its_ending_alone_is_none() -> None:
    assert is_compound("barengruppe")
    assert not is_compound("gruppe")
    assert not is_compound("mira")


@pytest.mark.parametrize("word", ["infantil", "b", "5", "september", "montag", "2026/27", "de", "barengruppe"])
def test_beside_a_class_stand_levels_letters_figures_and_days(word: str) -> None:
    assert is_beside_class(word)


@pytest.mark.parametrize("word", ["mira", "xobrel", "vost", "lange"])
def test_a_name_is_none_of_them(word: str) -> None:
    assert not opens_as_class(word)
    assert not is_beside_class(word)
    assert not is_heading_word(word)


def test_a_figure_inside_a_word_is_a_name_read_wrong() -> None:
    assert not is_heading_word("ab1gail")
    assert is_heading_word("2b")
