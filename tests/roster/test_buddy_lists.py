"""Pairs below a title that names another class."""

from __future__ import annotations

import pytest

from namewright.roster.children import Outcome, RosterError
from namewright.roster.parsing import read_roster

TITLES = [
    "Reading buddies with Ms. Vale's 4th graders", "Buddies from 5B", "Unsere Lesepaten (Klasse 4b)", "Lesepaten",
    "Parrainage avec les CM2", "Padrinos de lectura de 4.º B", "Lettura con i padrini di quinta",
    "Padrinhos do 4.º ano",
]


@pytest.mark.parametrize("title", TITLES)
@pytest.mark.parametrize("sign", [" - ", " -> ", " & "])
def test_who_is_ours_is_asked_once_for_all_pairs(title: str, sign: str) -> None:
    """Nobody is made of either side in silence, and one answer settles all lines."""
    text = f"{title}\nKian{sign}Theo\nAva{sign}Rosie\nJonna W.{sign}Milo"
    with pytest.raises(RosterError) as refused:
        read_roster(text)
    assert refused.value.message.key == "roster.two_wholes"
    assert refused.value.lines[0].outcome is Outcome.HEADING
    ours = read_roster(text, columns="name,other")
    assert [child.practice for child in ours.children] == ["Kian", "Ava", "Jonna"]
    theirs = read_roster(text, columns="other,name")
    assert [child.practice for child in theirs.children] == ["Theo", "Rosie", "Milo"]
    assert [child.practice for child in read_roster(ours.text).children] == ["Kian", "Ava", "Jonna"]


@pytest.mark.parametrize("behind", ["Theo & Milo (twins!)", "Theo and Milo", "Theo, and Milo"])
def test_two_on_one_side_are_one_side(behind: str) -> None:
    """Nobody is made three children of a line."""
    roster = read_roster(f"Buddies from 5B\nKian - {behind}\nAva - Rosie", columns="name,other")
    assert [child.practice for child in roster.children] == ["Kian", "Ava"]


def test_between_other_lines_each_pair_is_asked() -> None:
    roster = read_roster("Buddies from 5B\nKian - Theo\nMina Vost\nAva - Rosie & Milo")
    assert [child.practice for child in roster.children] == ["Mina"]
    assert [report.outcome for report in roster.lines] == [
        Outcome.HEADING, Outcome.LEFT_OUT, Outcome.CHILD, Outcome.LEFT_OUT]


@pytest.mark.parametrize("first", ["Partners", "Emma Pate", "Mia & Bo", "Tutor: Kian", "Pâte à modeler"])
def test_pairs_of_one_class_stay_two_children(first: str) -> None:
    """A title that names no other class, and a child whose family is called so, change nothing."""
    names = {child.practice for child in read_roster(f"{first}\nKian - Theo\nAva - Rosie").children}
    assert names >= {"Kian", "Theo", "Ava", "Rosie"}
