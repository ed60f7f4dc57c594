"""What the commas of a list part is told by all its lines."""

from __future__ import annotations

import pytest

from namewright.roster.commas import COMMA, comma_tells, family_first_by_comma, mask, say_the_same


def test_brackets_and_quotation_marks_hold_nothing_that_parts() -> None:
    text = "Mira (Anna, Leo) “Mia, Bo” Vost"
    assert len(mask(text)) == len(text)
    assert not COMMA.search(mask(text))


@pytest.mark.parametrize("lines", [
    ["Tarn, Mira", "Quill, Leo", "Vost, Anna"], ["von Tarn, Mira", "de Vost, Leo"], ["1. Tarn, Mira", "2. Quill, Leo"],
])
def test_a_list_that_writes_the_family_name_first(lines: list[str]) -> None:
    assert family_first_by_comma(lines)


@pytest.mark.parametrize("lines", [
    ["Mira, Leo", "Anna, Ben", "Ava, Noah"], ["Mira Vost, nuts", "Leo Tarn, nuts", "Anna Rey, nuts", "Ben Elm, nuts"],
    ["Mira Vost", "Leo Tarn", "Anna Rey, Bo Quill"], ["Mira", "Leo", "Anna"],
    ["Lucía, Romero", "Mira, Vega", "Ana, Soto"],
])
def test_a_list_whose_commas_part_children_or_remarks(lines: list[str]) -> None:
    assert not family_first_by_comma(lines)


def test_words_that_come_again_say_the_same() -> None:
    assert say_the_same(["apples", "pears", "apples", "pears"])
    assert not say_the_same(["Mira", "Leo", "Anna", "Ben"])
    assert not say_the_same(["apples", "apples"]), "of two lines, both may be called alike"


def test_a_comma_between_unknown_words_tells_nothing() -> None:
    assert comma_tells(["Tarn, Mira"])
    assert not comma_tells(["Xobrel, Vemka"])


def test_a_given_name_before_one_comma_of_many_turns_no_list() -> None:
    lines = ["Xobrel, Vemkat", "Mia, Tarnul", "Jelbru, Odelim", "Peskul, Niftam", "Trumlu, Quorlet", "Zemba, Istrel"]
    assert family_first_by_comma(lines)
    assert family_first_by_comma(["Al-Xobrel, Vemkat", "O'Jelbru, Odelim", "Peskul, Niftam"])
