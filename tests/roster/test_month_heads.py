"""A month over children is none; one among names may be April, and is asked about."""

from __future__ import annotations

import pytest

from namewright.roster.children import Outcome
from namewright.roster.month_heads import is_of_birthdays
from namewright.roster.parsing import read_roster


def test_a_month_over_others_is_no_child() -> None:
    """January may be one, February is none."""
    names = [child.practice for child in read_roster("January\n12 Mia\n20 Leo\nFebruary\n4 Xobrel").children]
    assert names == ["Mia", "Leo", "Xobrel"]
    assert [child.practice for child in read_roster("April\nMay\nMia\nLeo").children] == ["April", "May", "Mia", "Leo"]


def test_a_month_that_is_a_name_among_names_is_asked_about() -> None:
    """June beside March may head a group; Marco is a month only as Março."""
    outcomes = [line.outcome for line in read_roster("June\nAva\nLeo\nMarch\nZoe").lines]
    assert (outcomes[0], outcomes[3]) == (Outcome.LEFT_OUT, Outcome.HEADING)
    names = [child.practice for child in read_roster("Natale\nMarco\nPerla\nMaggio\nGiulia").children]
    assert names == ["Natale", "Marco", "Perla", "Giulia"]


@pytest.mark.parametrize("text", [
    "May\n3  Mia\n6  Leo\n15  Xobrel", "Birthdays\nSeptember\n3: Mia\n16: Leo\n30: Xobrel",
    "April\n3. Mia\nAugust\n3. Leo\n14. Xobrel", "Julio\n• 3 Mia\n• 24 Leo\nAgosto\n• 2 Xobrel"])
def test_a_month_over_days_is_no_child_though_somebody_has_its_name(text: str) -> None:
    """May and August were children of a board of birthdays."""
    assert [child.practice for child in read_roster(text).children] == ["Mia", "Leo", "Xobrel"]


def test_a_month_over_a_list_that_is_counted_is_asked_about() -> None:
    lines = read_roster("May\n1 Mia\n2 Leo\n3 Xobrel").lines
    assert [line.outcome for line in lines] == [Outcome.LEFT_OUT, *[Outcome.CHILD] * 3]


def test_months_that_open_every_block_are_asked_about() -> None:
    """April, May and August were three more children."""
    lines = read_roster("Birthdays\n\nApril\nMia\nLeo\n\nMay\nXobrel\n\nAugust\nTilo").lines
    assert [line.outcome for line in lines if line.text in ("April", "May", "August")] == [Outcome.LEFT_OUT] * 3
    names = [child.practice for child in read_roster("Mia\nApril\nLeo\n\nMay\nXobrel").children]
    assert names == ["Mia", "April", "Leo", "May", "Xobrel"]


@pytest.mark.parametrize("words", [
    "June birthdays", "April Birthdays", "Birthdays in May", "August celebrations", "Cumples de abril",
    "Cumpleaños de junio", "Anniversaires du mois de mai", "Geburtstage im Juni", "Juni-Geburtstage",
    "Geburtstagskinder im Mai", "Compleanni di giugno", "Aniversariantes de abril"])
@pytest.mark.parametrize("text", [
    "{}\nMira Vost\nLeo Tarn\nIda Moss", "{}\t\nMira Vost\t4\nLeo Tarn\t7\nIda Moss\t9",
    "First\tLast\tDay\n{}\t\t\nMira\tVost\t4\nLeo\tTarn\t7\nIda\tMoss\t9", "{}\tSeptember\nMira\tLeo\nIda\t"])
def test_birthdays_of_a_month_are_no_child(words: str, text: str) -> None:
    assert [child.practice for child in read_roster(text.format(words)).children] == ["Mira", "Leo", "Ida"]


@pytest.mark.parametrize("text", [
    "June", "June Birthday", "April's birthdays", "June Birthdays Vost", "Cumpleaños de Abril"])
def test_a_birthday_of_one_child_is_no_heading_of_a_month(text: str) -> None:
    assert not is_of_birthdays(text)
