"""Families with a child beside them: the child is read, whole families, streets and remarks are nobody."""

from __future__ import annotations

from contextlib import suppress

import pytest

from namewright.message import message
from namewright.roster.children import Outcome, RosterError
from namewright.roster.parsing import read_roster

FAMILIES = [("Vost", "Mira"), ("Quix", "Xobrel"), ("Tarn", "Leo"), ("Moss", "Vemka")]
FORMS = [
    "The {} family ({}), 12 Mill Road", "{} family: {}", "Tue 15:30 {} family – {} – 7 Oak Lane",
    "Familia {} ({}), Calle Mayor 9 – hay perro", "Fam. {} – {} – Avenida del Río 3", "Famille {} : {}",
    "12.11. Famille {} ({}), 8 rue du Port", "Familie {}, Bachgasse 5 ({})", "Mo 14:10 Familie {} – {} – zweiter Stock",
    "Famiglia {} ({}) – suonare due volte", "qui 16:20 Família {} – {} – Rua Nova 8",
]


@pytest.mark.parametrize("form", FORMS)
def test_the_child_of_a_family_is_read_with_its_name(form: str) -> None:
    roster = read_roster("\n".join(form.format(*pair) for pair in FAMILIES))
    assert [(child.practice, child.family) for child in roster.children] == [(given, of) for of, given in FAMILIES]
    assert all(report.notes for report in roster.lines)


def test_two_children_of_a_family_are_two() -> None:
    roster = read_roster("Familie Vost (Mira und Tilo), Bachgasse 5\nFamilie Quix (Xobrel), Schulweg 2\n"
                         "Familie Moss (Ida & Leo), Schulweg 9")
    assert [child.practice for child in roster.children] == ["Mira", "Tilo", "Xobrel", "Ida", "Leo"]


@pytest.mark.parametrize("form", ["The {} family ({}, {}, and {}), 7 Oak Lane", "Familie {} ({}, {}, und {}), Weg 5",
                                  "Familia {} – {}, {}, y {}", "Famille {} : {}, {} & {}", "Família {} ({}/{} e {})",
                                  "{} family: {}, {}, {} – 7 Oak Lane", "Fam. {}, {}, {}, {}, Weg 5"])
def test_nobody_of_a_family_of_three_is_lost(form: str) -> None:
    roster = read_roster("\n".join(form.format(*names) for names in (
        ("Vost", "Mira", "Tilo", "Xobrel"), ("Moss", "Ida", "Leo", "Ana"), ("Tarn", "Vemka", "Bo", "Mia"))))
    assert [(child.practice, child.family) for child in roster.children] == [
        ("Mira", "Vost"), ("Tilo", "Vost"), ("Xobrel", "Vost"), ("Ida", "Moss"), ("Leo", "Moss"), ("Ana", "Moss"),
        ("Vemka", "Tarn"), ("Bo", "Tarn"), ("Mia", "Tarn")]


def test_who_may_be_a_further_child_is_asked_about() -> None:
    text = "Fam. Vost: Mira, Vemka\nFam. Quix: Xobrel, Tarnu und Odelo\nFam. Tarn: Leo, Bachgasse\nFam. Berg: Ida, Ana"
    roster = read_roster(text)
    named = [("Mira", "Vost"), ("Xobrel", "Quix"), ("Leo", "Tarn"), ("Ida", "Berg"), ("Ana", "Berg")]
    assert [(child.practice, child.family) for child in roster.children] == named
    asked = [note for report in roster.lines if report.outcome is Outcome.LEFT_OUT for note in report.notes]
    assert asked == [message("roster.unlike", words=words)
                     for words in ("Vemka Vost", "Tarnu Quix", "Odelo Quix", "Bachgasse Tarn")]
    assert read_roster(roster.text or text).children == roster.children


@pytest.mark.parametrize("behind", ["Hausaufgaben", "Bachgasse", "ringt zweimal", "Oma Ida öffnet", "Frau Ida Vost"])
def test_what_follows_the_comma_behind_a_child_is_nobody(behind: str) -> None:
    roster = read_roster(f"Fam. Vost: Mira, {behind}\nFam. Quix: Xobrel, {behind}\nFam. Tarn: Leo, {behind}")
    assert [child.practice for child in roster.children] == ["Mira", "Xobrel", "Leo"]


@pytest.mark.parametrize("text", [
    "Familie Vost, Bachgasse 5\nFamilie Quix, Schulweg 2\nFamilie Moss, Schulweg 9",
    "Famille Vost (2 enfants)\nFamille Quix (vient avec mamie)\nFamille Moss (absente)",
])
def test_a_family_without_a_name_beside_it_makes_nobody_up(text: str) -> None:
    with suppress(RosterError):
        practised = {child.practice for child in read_roster(text).children}
        assert not {"Bachgasse", "Schulweg", "enfants", "vient", "absente", "Absente"} & practised
