"""A date alone is a heading; a child with an age is none."""

from __future__ import annotations

import pytest

from namewright.roster.children import Outcome
from namewright.roster.date_lines import is_a_date, is_a_day_in_figures
from namewright.roster.parsing import read_roster

DATES = (
    "Mon, Jan 12", "Thu, Mar 5", "Thursday, March 5, 2026", "March 5th", "lun 12 ene", "mié 4 feb",
    "jueves 5 de marzo",
    "lun. 12 janv.", "jeudi 5 mars 2026", "mer. 4 févr.", "Mi 4. Feb.", "Do, 5. März", "Montag, 12. Januar 2026",
    "lun 12 gen", "gio 5 mar", "giovedì 5 marzo", "qui 5 mar", "seg, 12 de jan.", "Fri 3/6",
    "Tue 12/1/2026", "ven. 6/3")


@pytest.mark.parametrize("text", DATES)
def test_a_date_alone_is_no_child(text: str) -> None:
    assert is_a_date(text)
    roster = read_roster(f"{text}\nXobrel Vost\nMira Tarn")
    assert [child.given for child in roster.children] == ["Xobrel", "Mira"]
    assert roster.lines[0].outcome is Outcome.HEADING


@pytest.mark.parametrize("text", [
    "May 5", "Sam 5", "June 4", "April Vost", "Mar 5", "Mo 4", "Jan 12", "Xobrel 5", "12", "Monday", "3/4", "5 Mira",
    "", "Mon 5 Mira", "August 4"])
def test_what_may_be_a_child_is_no_date(text: str) -> None:
    assert not is_a_date(text)


@pytest.mark.parametrize(("text", "is_one"), [
    ("March 3 June", False), ("March 3 - June", False), ("June 5 March", False), ("February - May 2026", True),
    ("March 3 - June 5", True), ("3 March - 5 May", True)])
def test_a_month_alone_beside_a_birthday_is_a_childs_name(text: str, *, is_one: bool) -> None:
    assert is_a_date(text) is is_one


def test_a_name_behind_a_whole_date_is_no_month() -> None:
    """Marco is March in Portuguese; a date in figures needs no month behind it."""
    assert not is_a_date("jeudi 3/12 – Marco")
    assert not is_a_date("Do. 3.12.: Jan")
    assert is_a_date("lun. 12 janv.")
    lines = "lundi 1/12 – Geoffroy\nmardi 2/12 – Lydia\njeudi 3/12 – Marco\nlundi 4/12 – Laurie"
    assert [child.practice for child in read_roster(lines).children] == ["Geoffroy", "Lydia", "Marco", "Laurie"]


@pytest.mark.parametrize("text", ["Gio 3/12", "Mar 2/12", "Do. 4.12.", "Thu 3/12", "qui 3/12", "jue 3/12", "jeu 3/12"])
def test_a_day_in_figures_behind_a_name_is_no_part_of_it(text: str) -> None:
    """Gio is a name, and so is Mar; behind others they are days."""
    assert is_a_day_in_figures(text)
    names = ["Mira", "Tilo", "Anna", "Bastian", "Clara"]
    for sign in (" – ", ": ", "\t"):
        read = read_roster("\n".join(f"{name}{sign}{text}" for name in names))
        assert [child.practice for child in read.children] == names


@pytest.mark.parametrize("text", ["Gio 3", "Gio Vost", "Gio Vost 3/12", "3", ""])
def test_a_name_is_no_day_in_figures(text: str) -> None:
    assert not is_a_day_in_figures(text)


@pytest.mark.parametrize(("text", "names"), [
    ("lundi 1/12 Mauro\nmardi 2/12  Marco\njeudi 3/12 June", ["Mauro", "Marco", "June"]),
    ("mardi 5/12 Dom\njeudi 7/12 Léa\nvendredi 8/12 Jules", ["Dom", "Léa", "Jules"]),
    ("martes 5/12 Sol\njueves 7/12 Mar\nviernes 8/12 Ana", ["Sol", "Mar", "Ana"]),
    ("Monday 5/12 Sol\nTuesday 6/12 Sam\nFriday 9/12 Mia", ["Sol", "Sam", "Mia"]),
    ("Montag 5.12. Mia\nDienstag 6.12. Sam\nMittwoch 7.12. Leo", ["Mia", "Sam", "Leo"]),
    ("lunedì 5/12 Mia\nmartedì 6/12 Gio\nvenerdì 9/12 Luca", ["Mia", "Gio", "Luca"]),
    ("terça 5/12 Dom\nsexta 8/12 Ana", ["Dom", "Ana"]),
])
def test_a_name_that_is_short_for_a_day_is_one_behind_a_date(text: str, names: list[str]) -> None:
    assert [child.practice for child in read_roster(text).children] == names


@pytest.mark.parametrize("day", ["lundi 3/11", "domenica 3/11", "mardi 3/11"])
def test_a_day_in_small_letters_with_its_date_is_no_child(day: str) -> None:
    roster = read_roster(f"{day}\nSol\nMar\nLéa")
    assert [child.practice for child in roster.children] == ["Sol", "Mar", "Léa"]


def test_a_day_with_a_capital_and_its_date_over_names_is_no_child() -> None:
    roster = read_roster("Lundi 3/11\nMia\nLeo\nMardi 4/11\nAva\nNoah")
    assert [child.practice for child in roster.children] == ["Mia", "Leo", "Ava", "Noah"]
    asked, *_ = read_roster("Domenica 3/11\nMia\nLeo\nAva").lines
    assert asked.outcome is Outcome.LEFT_OUT
    born = read_roster("Domenica 3/11\nMia 4/12\nLeo 5/6")
    assert [child.practice for child in born.children] == ["Domenica", "Mia", "Leo"]
