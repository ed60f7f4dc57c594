"""Twins and others of one family told in a line."""

from __future__ import annotations

import pytest

from namewright.roster.parsing import read_roster

BESIDE = ("Emma Vost", "Theo Tarn", "Mina Brask")
TOLD = [
    "The Solano twins Rafi & Luz", "Solano twins: Rafi and Luz", "Rafi & Luz (the Solano twins)",
    "Los gemelos Solano, Rafi y Luz", "Hermanos Solano: Rafi y Luz", "Les jumeaux Solano Rafi et Luz",
    "Die Solano-Zwillinge Rafi und Luz", "Geschwister Solano: Rafi und Luz", "I gemelli Solano Rafi e Luz",
    "Os gémeos Solano: Rafi e Luz", "3. The Solano siblings - Rafi, Luz",
]


@pytest.mark.parametrize("line", TOLD)
def test_each_of_them_has_the_familys_name(line: str) -> None:
    roster = read_roster("\n".join((*BESIDE, line)))
    assert [(child.practice, child.family) for child in roster.children][3:] == [("Rafi", "Solano"), ("Luz", "Solano")]


def test_where_families_stand_first_they_do_so_too() -> None:
    roster = read_roster("Vost, Emma\nTarn, Theo\nThe Solano twins Rafi & Luz\nBrask, Mina\nMoss, Lena")
    assert [(child.practice, child.family) for child in roster.children][2:4] == [("Rafi", "Solano"), ("Luz", "Solano")]


@pytest.mark.parametrize("line", ["The twins Rafi & Luz", "Zwillinge Rafi und Luz"])
def test_twins_without_a_family_are_two_children(line: str) -> None:
    roster = read_roster("\n".join(("Emma", "Theo", "Mina", line)))
    assert [child.practice for child in roster.children] == ["Emma", "Theo", "Mina", "Rafi", "Luz"]


@pytest.mark.parametrize("line", ["Mia Vost (brothers Leo and Max)", "Mia Vost - hermanos Leo y Max",
                                  "Mia Vost, Geschwister Leo und Max"])
def test_who_is_said_of_a_child_is_nobody_of_the_class(line: str) -> None:
    names = [child.practice for child in read_roster("\n".join((*BESIDE, line))).children]
    assert "Leo" not in names
    assert "Max" not in names


@pytest.mark.parametrize("word", ["twins", "the twins", "jumeaux", "les jumelles", "Zwillinge", "gemelos", "mellizas",
                                  "gemelli", "gémeos", "siblings", "Geschwister", "frères"])
@pytest.mark.parametrize(("names", "wanted"), [
    ("Xobrel et Vemka", [("Xobrel", ""), ("Vemka", "")]), ("Mia and Leo", [("Mia", ""), ("Leo", "")]),
    ("Xobrel & Vemka Quix", [("Xobrel", "Quix"), ("Vemka", "Quix")]),
    ("Mia y Leo de la Cruz", [("Mia", "de la Cruz"), ("Leo", "de la Cruz")]),
    ("Mia y Leo Vost", [("Mia", "Vost"), ("Leo", "Vost")]),
    ("Xobrel Quix und Vemka Quix", [("Xobrel", "Quix"), ("Vemka", "Quix")])])
@pytest.mark.parametrize("form", ["{} ({})", "{} – {}"])
def test_two_names_before_a_word_for_siblings_are_two_children(
        form: str, names: str, wanted: list[tuple[str, str]], word: str) -> None:
    """Names on no list were asked about, and the family's name was the last one's alone."""
    roster = read_roster(f"{form.format(names, word)}\nAva Tarn\nTom Hill")
    assert [(child.given, child.family) for child in roster.children] == [*wanted, ("Ava", "Tarn"), ("Tom", "Hill")]


@pytest.mark.parametrize("line", ["Vost, Mia & Leo (twins)", "Mia Vost (twins)", "Mia (twins with Leo)"])
def test_a_comma_and_one_name_are_no_two_given_names(line: str) -> None:
    assert [child.given for child in read_roster(f"{line}\nTarn, Ava\nHill, Tom").children][-2:] == ["Ava", "Tom"]
    assert "Vost" not in [child.given for child in read_roster(f"{line}\nTarn, Ava\nHill, Tom").children]
