"""A word of lists is never practised without a question, and opens no name where most lines open with it."""

from __future__ import annotations

import pytest

from namewright.roster.beside import Reading
from namewright.roster.children import Outcome
from namewright.roster.no_names import is_no_name, is_nobody
from namewright.roster.parsing import read_roster

OPENINGS = ("Student", "Élève", "Schüler", "Kind", "Alumno", "Alunno", "Aluno", "Child", "Bambina", "Dear", "Liebe",
            "Awarded to")
FAMILIES = ("Familie {}", "Famille {}", "Familia {}", "Famiglia {}", "Família {}", "The {} family", "{} Family",
            "The {} Family")


@pytest.mark.parametrize("opening", OPENINGS)
def test_a_word_that_every_line_opens_with_is_no_name(opening: str) -> None:
    names = ["Mira Vost", "Xobrel Tarn", "Anouk Menk", "Tilo Elm"]
    children = read_roster("\n".join(f"{opening} {name}" for name in names)).children
    assert [(child.given, child.family) for child in children] == [tuple(name.split()) for name in names]


@pytest.mark.parametrize("form", FAMILIES)
def test_a_family_is_no_child(form: str) -> None:
    roster = read_roster(f"Mira Vost\n{form.format('Tarn')}\nTilo Elm\nUna Grell")
    assert [child.given for child in roster.children] == ["Mira", "Tilo", "Una"]
    assert roster.lines[1].outcome in (Outcome.LEFT_OUT, Outcome.HEADING)


@pytest.mark.parametrize("word", ["Student", "Papa", "Heute", "Familie", "Anniversaire", "Betreff", "Girl", "Mädchen",
                                  "Garçon"])
def test_a_word_of_lists_is_nobody(word: str) -> None:
    assert is_no_name(word)
    assert is_nobody(Reading(word, "Vost"))


@pytest.mark.parametrize("name", ["Mira", "Xobrel", "Al", "Peanut", "Page", "Best", "Lo", "Class"])
def test_a_rare_name_is_somebody(name: str) -> None:
    assert not is_nobody(Reading(name, "Vost"))


def test_whoever_is_called_so_all_the_same_is_made_when_it_is_said() -> None:
    assert [child.given for child in read_roster("Name: Student Vost\nMira Tarn").children] == ["Student", "Mira"]


@pytest.mark.parametrize("line", ["6 NEW GIRL - name tba", "6 neues Mädchen", "6 new boy"])
def test_a_child_whose_name_is_not_known_yet_is_asked_about(line: str) -> None:
    read = read_roster(f"1 Mia Vost\n2 Leo Tarn\n3 Ada Rey\n4 Ben Koch\n5 Zoe Elm\n{line}")
    assert [child.practice for child in read.children] == ["Mia", "Leo", "Ada", "Ben", "Zoe"]


def test_swimming_and_passwords_over_names_are_asked_about() -> None:
    for title in ("Passwörter Tablets", "Contraseñas", "Senhas", "Piscina", "Natation", "Nuoto", "Schwimmen"):
        assert [child.practice for child in read_roster(f"{title}\nMia\nLeo").children] == ["Mia", "Leo"]


@pytest.mark.parametrize("word", ["Ferien", "Vacances", "Vacaciones", "Férias"])
def test_a_week_without_school_is_nobody(word: str) -> None:
    roster = read_roster(f"KW 34\tMira Vost\nKW 35\t{word}\nKW 36\tXobrel Quix\nKW 37\tLeo Tarn")
    assert [child.practice for child in roster.children] == ["Mira", "Xobrel", "Leo"]


@pytest.mark.parametrize("word", ["Semana", "Semaine", "Settimana", "Woche"])
def test_a_week_with_nobody_behind_it_is_nobody(word: str) -> None:
    text = "\n".join([f"{word} 36 Mira Vost", f"{word} 37 Xobrel Quix", f"{word} 38 Zendar Pluum", f"{word} 39"])
    assert [child.practice for child in read_roster(text).children] == ["Mira", "Xobrel", "Zendar"]
