"""Who plays what: parts are nobody on either side of any sign, and children whose names are parts stay children."""

from __future__ import annotations

import pytest

from namewright.roster.children import Outcome
from namewright.roster.parsing import read_roster

NAMES = ["Mira Vost", "Xobrel Quix", "Leo Tarn", "Vemka Drun", "Ida Moss"]
PLAYS = [
    ["Wolf", "Fairy", "Tree 1", "Tree 2", "Mary"], ["Lobo", "Bruja", "Árbol", "Reina", "José"],
    ["Loup", "Sorcière", "Arbre", "Reine", "Marie"], ["Fuchs", "Hexe", "Baum", "König", "Maria"],
    ["Lupo", "Strega", "Albero", "Regina", "Giuseppe"], ["Raposa", "Bruxa", "Árvore", "Rainha", "Maria"],
]


def practised(text: str) -> list[str]:
    return [child.practice for child in read_roster(text).children]


@pytest.mark.parametrize("parts", PLAYS)
@pytest.mark.parametrize("form", ["{0}: {1}", "{0} – {1}", "{0}\t{1}", "{0} -> {1}", "{1}: {0}", "{1} – {0}",
                                  "{1} = {0}", "{1} – {0} (comes late)"])
@pytest.mark.parametrize("title", ["", "Summer play – who is who\n\n", "TEATRO\n"])
def test_a_part_is_nobody_on_either_side(parts: list[str], form: str, title: str) -> None:
    text = title + "\n".join(form.format(*pair) for pair in zip(parts, NAMES, strict=True))
    assert practised(text) == ["Mira", "Xobrel", "Leo", "Vemka", "Ida"]
    assert all(report.notes for report in read_roster(text).lines if report.outcome is not Outcome.BLANK)


@pytest.mark.parametrize("text", [
    "Wolf: Mira and Leo\nTrees: Ida\nFairy: Xobrel, Vemka\nQueen: Bo",
    "Schafe: Ida\nFuchs: Mira und Leo\nHexe: Xobrel, Vemka\nBaum: Bo",
    "Loup : Mira et Leo\nFée : Ida\nSorcière : Xobrel, Vemka\nArbre : Bo",
])
def test_several_children_have_one_part(text: str) -> None:
    assert sorted(practised(text)) == ["Bo", "Ida", "Leo", "Mira", "Vemka", "Xobrel"]


def test_when_they_rehearse_is_no_child() -> None:
    text = "Wolf: Mira\nHexe: Leo\nBaum: Ida\n\nChor:\nXobrel\nBo\n\nNächste Probe Freitag 9:30"
    assert practised(text) == ["Mira", "Leo", "Ida", "Xobrel", "Bo"]


@pytest.mark.parametrize("text", ["Angel: nuts\nStella: eggs\nRobin: milk",
                                  "Rey – ruta 2\nEstrella – ruta 4\nLeo – ruta 2",
                                  "Stella Moss\nAngel Vost\nKing Tarn", "Angelo: pulmino\nRegina: a piedi\nLeo: auto"])
def test_a_child_whose_name_is_a_part_stays_one(text: str) -> None:
    assert len(practised(text)) == 3
    assert practised(text)[0] in text.splitlines()[0]


def test_who_is_dressed_as_something_else_stays_a_child() -> None:
    text = "Costumes\n\nVOST Mira – superhero\nTARN Leo – pirate\nMOSS Ida – knight\nDRUN Bo – witch\nELM Ava – bee"
    assert practised(text) == ["Mira", "Leo", "Ida", "Bo", "Ava"]
    assert practised("Mia – pirate\nLeo – Star\nAna – Shepherd\nIda – Innkeeper")[0] == "Mia"
