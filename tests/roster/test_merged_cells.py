"""A group's name in the first cell of its first row alone stands over its children; the one beside it is a child."""

from __future__ import annotations

import pytest

from namewright.roster.children import Outcome
from namewright.roster.parsing import read_roster

GROUPS = [("Red table", "Blue table"), ("Mesa roja", "Mesa azul"), ("Groupe A", "Groupe B"), ("Roter Tisch", "Igel"),
          ("Tavolo rosso", "Coccinelle"), ("Mesa azul", "Joaninhas"), ("Ladybugs", "Crickets"), ("Frau Ott", "Mr. Oak")]


@pytest.mark.parametrize("sign", ["\t", ";", ",", "|"])
@pytest.mark.parametrize(("one", "two"), GROUPS)
@pytest.mark.parametrize("family", ["", " Vost"])
def test_the_first_child_of_a_group_is_one(sign: str, one: str, two: str, family: str) -> None:
    names = ["Xobrel", "Zofia", "Leo", "Quim", "Dmytro", "Ida"]
    cells = [one, "", "", two, "", ""]
    roster = read_roster("\n".join(f"{cell}{sign}{name}{family}" for cell, name in zip(cells, names, strict=True)))
    assert [child.practice for child in roster.children] == names
    assert [line.text for line in roster.lines if line.outcome is Outcome.HEADING] == [f"{one}:", f"{two}:"]


def test_columns_of_a_page_and_a_cell_behind() -> None:
    spaced = "Red table   Mia Vost\n            Leo Quix\nBlue table  Ida Tarn\n            Bo Moss"
    assert [child.practice for child in read_roster(spaced).children] == ["Mia", "Leo", "Ida", "Bo"]
    behind = "Class 1b\nRed\tMia Vost\t4\n\tLeo Quix\n\tIda Tarn\tpeanuts\n\tBo Moss"
    assert [child.practice for child in read_roster(behind).children] == ["Mia", "Leo", "Ida", "Bo"]


def test_leavers_and_adults_in_such_cells_are_none() -> None:
    roster = read_roster("Red table\tMia Vost\n\tLeo Quix\n\tIda Tarn\nAdults\tJo Moss\n\tUwe Lind")
    assert [child.practice for child in roster.children] == ["Mia", "Leo", "Ida"]


@pytest.mark.parametrize("text", [
    "Ana\tLeo\n\tMia\n\tSam\n\tRuby", "Ana Gil\tLeo Gil\n\tMia Berg\n\tSam Tarn",
    "Mother\tJo Vost\n\tMia Tarn\n\tSam Moss",
])
def test_who_may_be_a_child_or_a_relative_is_asked_about(text: str) -> None:
    roster = read_roster(text)
    assert roster.lines[0].outcome is Outcome.LEFT_OUT
    assert len(roster.children) == text.count("\n")


def test_a_family_over_its_children_is_no_group() -> None:
    roster = read_roster("Barlow\tOwen\n\tRuby\n\tNora\nStroud\tFelix\nRudd\tMiles\n\tPoppy")
    assert (roster.children[0].given, roster.children[0].family) == ("Owen", "Barlow")
