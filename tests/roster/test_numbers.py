"""Numbers beside a name go, with the words that belong to them; names that look like dates stay."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from namewright.message import message
from namewright.roster.children import RosterError
from namewright.roster.numbers import figure_inside, take_numbers
from namewright.roster.parsing import read_roster

ROWS = [  # typed, what stays, how many kinds are told, why
    ("Mira Vost", "Mira Vost", 0, "nothing to take out"),
    ("Mira Vost mira@quill.example", "Mira Vost", 1, "an e-mail address"),
    ("Mira Vost 4/5/2020", "Mira Vost", 1, "a date in figures"),
    ("Mira Vost 2020-05-04", "Mira Vost", 1, "year first"),
    ("Mira Vost 4.5.20", "Mira Vost", 1, "with dots"),
    ("Mira Vost 4 de mayo de 2020", "Mira Vost", 1, "in Spanish words"),
    ("Mira Vost May 4, 2020", "Mira Vost", 1, "in English words"),
    ("Mira Vost 4th of May", "Mira Vost", 1, "without a year"),
    ("Mira Vost DOB 4/5/2020", "Mira Vost", 1, "the label of a date goes with it"),
    ("Mira Vost 555-010-0199", "Mira Vost", 1, "a telephone number"),
    ("Mira Vost age 5", "Mira Vost", 1, "an age and its label"),
    ("Mira Vost 5 yrs", "Mira Vost", 1, "or its unit"),
    ("Mira Vost 4 yrs 3 mos", "Mira Vost", 1, "two of them"),
    ("Mira Vost S1044", "Mira Vost", 1, "a number of a register"),
    ("Mira, 22 mm", "Mira,", 1, "a height, whose unit is no name"),
    ("Mira 3/4 in", "Mira", 1, "a height in inches"),
    ("Mira 19 mm lines", "Mira", 1, "a height, with what it is"),
    ("9.00 Uhr Mira Vost", "Mira Vost", 1, "a time, whose word is no name"),
    ("9:00 hs Mira Vost", "Mira Vost", 1, "in Spanish"),
    ("8:30 p. m. Mira Vost", "Mira Vost", 1, "in two words"),
    ("Mira2", "Mira", 1, "a word that runs into a number keeps its letters"),
    ("Mira 5 a@quill.example", "Mira", 2, "two kinds are told apart"),
    ("Vost, April 12", "Vost, April", 1, "where only a family name would be left, the month is the child"),
    ("April 12", "April", 1, "so it is alone"),
    ("B. 5", "B.", 1, "an initial is no label for born"),
]


@pytest.mark.parametrize(("typed", "kept", "kinds", "why"), ROWS, ids=[row[3] for row in ROWS])
def test_numbers_and_their_words_go(typed: str, kept: str, kinds: int, why: str) -> None:
    notes: list = []
    assert (take_numbers(typed, notes), len(notes)) == (kept, kinds), why


@given(st.text(st.sampled_from("Mira Vost,-5/2.@yrsDOBage"), max_size=40))
def test_no_figure_stays_and_no_word_is_lost_in_silence(typed: str) -> None:
    """What comes out holds no figure and no address; where something went, a note tells of it."""
    notes: list = []
    kept = take_numbers(typed, notes)
    assert not any(char.isdigit() for char in kept)
    assert bool(notes) or kept.split() == typed.split()


@pytest.mark.parametrize("line", ["Vost, J0sep", "J0sep Vost", "VOST, J0SEP", "3. Vost, J0sep (new)"])
def test_a_figure_in_a_given_name_is_asked_about_and_never_takes_the_family_name(line: str) -> None:
    with pytest.raises(RosterError) as error:
        read_roster(line)
    assert error.value.lines[0].notes[0] == message("roster.figure_inside", word="J0SEP" if "VOST" in line else "J0sep")


def test_a_figure_in_a_given_name_of_a_table_is_asked_about_too() -> None:
    read = read_roster("First name,Last name\nL0vis,Vost\nMira,Tarn")
    assert [child.practice for child in read.children] == ["Mira"]


@pytest.mark.parametrize("word", ["J0sep", "Este11e", "Gi11es", "M0m0k0", "0livia", "1sabel", "J0SEP"])
def test_figures_among_the_letters_of_a_name_are_a_photos(word: str) -> None:
    assert figure_inside(word) == message("roster.figure_inside", word=word)


@pytest.mark.parametrize("name", ["Katie2", "Katie11", "10th", "5yrs", "K1b", "1st Ava", "1ère Ava", "S1044", "4yrs",
                                  "Mira V0st", "2nd", ""])
def test_other_figures_are_no_part_of_a_name(name: str) -> None:
    assert figure_inside(name) is None


@pytest.mark.parametrize(("typed", "kept"), [
    ("Ben, 7. August", "Ben"), ("Anna 3. März", "Anna"), ("Léa 5 août", "Léa"), ("Noé 3 février 2019", "Noé"),
    ("Zoé 2 déc.", "Zoé"), ("Inês 3 de março", "Inês"), ("Lena 1. Jänner", "Lena"), ("Moss, April 12", "April"),
    ("Tarn, 3 March", "Tarn")])
def test_months_with_marks_and_days_before_months_are_dates(typed: str, kept: str) -> None:
    assert [child.practice for child in read_roster(typed).children] == [kept]
