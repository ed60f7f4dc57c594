"""What children like, behind their names and a colon, makes no children; groups with rare names are asked about."""

from __future__ import annotations

import pytest

from namewright.roster.children import Outcome, RosterError
from namewright.roster.liked import are_surely_told_of, are_told_of
from namewright.roster.parsing import read_roster

LIKED = (
    ("Mira Kell: Chess, Art, Choir", "Leo Berg: Football, Lego"),
    ("Clara Fuchs: Schach, Turnen", "Jonas Berg: Chor, Lesen", "Emil Krause: Fußball"),
    ("Lucía Gil: Fútbol, Ajedrez, Coro", "Hugo Ruiz: Danza, Pintura", "Vera Soler: Lectura"),
    ("Chiara Galli: Nuoto, Danza, Coro", "Luca Bruni: Calcio, Scacchi"),
    ("Léa Moreau : Échecs, Danse", "Hugo Petit : Judo, Dessin, Chorale"),
    ("Inês Pinto: Xadrez, Dança", "Tomás Lopes: Futebol, Coro, Judo"),
)


@pytest.mark.parametrize("lines", LIKED)
def test_what_children_with_whole_names_like_is_left_out_and_told(lines: tuple[str, ...]) -> None:
    roster = read_roster("\n".join(lines))
    names = [line.partition(":")[0].strip() for line in lines]
    assert [f"{child.given} {child.family}" for child in roster.children] == names
    assert all("roster.remark" in [note.key for note in report.notes] for report in roster.lines)


def test_what_comes_again_behind_given_names_is_what_they_like() -> None:
    roster = read_roster("Mira: Chess, Art, Choir\nLeo: Football, Lego, Chess\nAnna: Ballet")
    assert [child.practice for child in roster.children] == ["Mira", "Leo", "Anna"]


@pytest.mark.parametrize("lines", [
    "Mira Xobrel: Chess, Art, Choir\nLeo Kestri: Football, Lego", "Mira: Xobrel, Quorra, Dravo\nLeo: Kestri, Pelgun",
])
def test_where_either_may_be_a_child_it_is_asked(lines: str) -> None:
    with pytest.raises(RosterError) as found:
        read_roster(lines)
    assert {report.outcome for report in found.value.lines} == {Outcome.LEFT_OUT}


def test_groups_with_known_children_stay_groups() -> None:
    roster = read_roster("Violet Foxes: Mia, Leo, Ben\nRose Bears: Anna, Zoe, Theo")
    assert [child.practice for child in roster.children] == ["Mia", "Leo", "Ben", "Anna", "Zoe", "Theo"]


def test_words_of_groups_are_no_children() -> None:
    assert not are_told_of(["Rose Table", "Violet Group"], [["Xobrel", "Quorra"], ["Dravo"]])
    assert not are_told_of(["Rose", "Violet"], [["Xobrel", "Quorra"], ["Dravo"]])
    assert are_told_of(["Mira", "Leo"], [["Xobrel", "Quorra"], ["Dravo"]])
    assert not are_surely_told_of(["Mira", "Leo"], [["Xobrel", "Quorra"], ["Dravo"]])
