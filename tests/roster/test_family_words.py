"""How many words at the front of a name are its family's."""

from __future__ import annotations

import pytest

from namewright.message import message
from namewright.roster.family_words import family_words
from namewright.roster.parsing import read_roster

NAMES = [
    ("Vost Mira", 1, "one"), ("van der Vost Mira", 3, "particles"), ("VOST BRAE Mira", 2, "capitals"),
    ("AÏT XOBREL Mira Ana", 2, "capitals before two given names"), ("VOST MIRA", 1, "all in capitals"),
    ("Degli Esposti Ugo", 2, "an Italian article"), ("Dalla Xobrel Ugo", 2, "one before an unknown word"),
    ("Lo Cascio Ada", 2, "one that is a family of China, too"), ("Li Mei Ling", 1, "which stands before given names"),
    ("Lo Ada", 1, "or before one"),
]


@pytest.mark.parametrize(("name", "size", "why"), NAMES, ids=[row[2] for row in NAMES])
def test_how_many_words_are_the_familys(name: str, size: int, why: str) -> None:
    assert family_words(name.split()) == size, why


@pytest.mark.parametrize(("title", "name", "given", "family"), [
    ("Cognome e nome", "Lo Cascio Calogero", "Calogero", "Lo Cascio"),
    ("Cognome e nome", "Dal Pozzo Nereo", "Nereo", "Dal Pozzo"),
    ("Nom et prénom", "AÏT HAMOU Nassim", "Nassim", "Aït Hamou"),
    ("Nachname, Vorname", "VON ZELL Ida", "Ida", "von Zell")])
def test_a_column_of_family_names_first(title: str, name: str, given: str, family: str) -> None:
    roster = read_roster(f"{title}\tBus\n{name}\tx\nVost Mira\tx")
    child = roster.children[0]
    assert (child.practice, child.family) == (given, family)


def test_nobody_is_told_of_a_comma_that_is_not_there() -> None:
    told = read_roster("Cognome e nome\tBus\nLo Cascio Calogero\tx\nVost Mira\tx").lines[1].notes
    assert message("roster.read", given="Calogero", family="Lo Cascio") in told
