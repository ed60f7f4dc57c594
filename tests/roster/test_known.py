"""Which part of a name a word is known as, and what the lists may cost."""

from __future__ import annotations

from importlib.resources import files

import pytest
from hypothesis import given
from hypothesis import strategies as st

from namewright.roster import known
from namewright.roster.care_words import CARE, SHORT_FORMS
from namewright.roster.known import (
    are_iberian,
    ends_as_family,
    is_double,
    is_family,
    is_given,
    is_given_alone,
    is_known,
    lean,
)
from namewright.roster.vocabulary import fold

ON_LISTS = [  # word, lean, given, family, why
    ("Mia", 1, True, False, "a given name"), ("GARCÍA", -1, False, True, "a family name in capitals"),
    ("Mason", 0, True, True, "either"), ("Quillwort", 0, False, False, "on no list"),
    ("Jean-Luc", 1, True, False, "halves"),
    ("O'Brien", -1, False, True, "an apostrophe"), ("Зоя", 1, True, False, "another script"),
    ("Lizzy", 1, True, False, "a short form"), ("", 0, False, False, "nothing"),
]


@pytest.mark.parametrize(("word", "leaning", "given_name", "family", "why"), ON_LISTS, ids=[row[4] for row in ON_LISTS])
def test_what_a_word_is_known_as(word: str, leaning: int, given_name: bool, family: bool, why: str) -> None:
    assert (lean(word), is_given(word), is_family(word)) == (leaning, given_name, family), why


@pytest.mark.parametrize(("word", "alone"), [
    ("Mia", True), ("Zoé", True), ("Robert", False), ("Paul", False), ("Mason", False), ("García", False),
    ("Quillwort", False), ("Anne-Robert", False)])
def test_a_given_name_that_is_no_family_name(word: str, alone: bool) -> None:
    assert is_given_alone(word) is alone


def test_two_given_names_that_are_one() -> None:
    assert is_double("Ana", "María")
    assert not is_double("Lena", "Rose")
    assert are_iberian("João", "Felipe", ["Silva"])
    assert not are_iberian("João", "Felipe", ["Miller"])


def test_the_lists_cost_at_most_a_megabyte() -> None:
    assert len((files("namewright.roster") / "data" / "known-names.txt").read_bytes()) <= 1_000_000


def test_words_of_care_are_written_as_they_are_looked_up() -> None:
    assert {word for word in CARE | SHORT_FORMS if fold(word) != word} == set()


@given(st.text(max_size=20))
def test_a_word_that_leans_is_known(word: str) -> None:
    assert not lean(word) or is_known(word)


def test_how_families_end_is_told_of_words_on_no_list_alone() -> None:
    told = ("Xobrelski", "Vemkashvili", "Tarnulescu", "Ксобрелов")
    assert all(map(ends_as_family, told))
    assert not any(map(ends_as_family, ("Xobrel", "Kowalski", "Vemov", "Brynlu")))


def test_each_ending_is_of_families_by_the_lists() -> None:
    """At least eight families have it for one given name; of those that the lists hardly know nothing is counted."""
    lines = (files("namewright.roster") / "data" / "known-names.txt").read_text(encoding="utf-8").splitlines()
    words = {part: [word for line in lines if line.startswith(f"{part}\t") for word in line.split("\t")[1].split()
                    if len(word) > 5] for part in ("given", "family")}
    for ending in known._FAMILY_ENDINGS:
        given_names, families = (sum(word.endswith(ending) for word in words[part]) for part in ("given", "family"))
        assert families >= 8 * given_names or families < 3, ending
