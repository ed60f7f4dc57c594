"""Tables one below the other are read each by its own titles; of teachers and rooms nobody is made."""

from __future__ import annotations

import pytest

from namewright.roster.further_tables import from_further_tables
from namewright.roster.parsing import read_roster
from namewright.roster.pasted import Line

TITLES = [
    ("First name", "Last name", "Student", "Bus", "Waiting list"),
    ("Nombre", "Apellidos", "Alumno", "Ruta", "Lista de espera"),
    ("Prénom", "Nom de famille", "Élève", "Car", "Liste d'attente"),
    ("Vorname", "Nachname", "Kind", "Bus", "Warteliste"), ("Nome", "Cognome", "Alunno", "Pulmino", "Lista d'attesa"),
    ("Nome próprio", "Apelido", "Aluno", "Transporte", "Lista de espera"),
]


def names(text: str) -> list[tuple[str, str]]:
    return [(one.given, one.family) for one in read_roster(text).children]


def stays(text: str) -> bool:
    lines = [Line(one, at) for at, one in enumerate(text.split("\n"))]
    return from_further_tables(lines) == lines


@pytest.mark.parametrize("sign", ["\t", ";", ",", " | "])
@pytest.mark.parametrize(("given", "family", "whole", "bus", "waiting"), TITLES)
def test_each_table_is_read_by_its_own_titles(
        given: str, family: str, whole: str, bus: str, waiting: str, sign: str) -> None:
    rows = [["AM"], [given, family, bus], ["Mira", "Vost", "4"], ["Xobrel", "Tarn", "2"], [""],
            ["PM"], [family, given], ["Moss", "Tilo"], ["Grell", "Ida"], [""],
            [waiting], ["ID", whole], ["1203", "Bo Rosk"], ["1210", "Una Fenn"]]
    read = read_roster("\n".join(map(sign.join, rows)))
    assert [(one.given, one.family) for one in read.children] == [
        ("Mira", "Vost"), ("Xobrel", "Tarn"), ("Tilo", "Moss"), ("Ida", "Grell"), ("Bo", "Rosk"), ("Una", "Fenn")]
    told = [any(note.key == "roster.under" for note in line.notes) for line in read.lines if line.child]
    assert told == [False] * 4 + [True] * 2


def test_columns_turned_round_below_keep_what_is_set_for_a_child() -> None:
    read = read_roster("First name;Last name;Hand\nMira;Vost;left\n\nLast name;Hand;First name\nTarn;left;Tilo")
    assert [(one.given, str(one.hand)) for one in read.children] == [
        ("Mira", str(read.children[0].hand)), ("Tilo", str(read.children[0].hand))]
    assert read.children[0].hand is not None


def test_teachers_and_rooms_below_are_nobody() -> None:
    assert names("First name\tLast name\nMira\tVost\nTilo\tTarn\n\nStaff\nTeacher\tRoom\nAda Holm\t4\nJo Fenn\t5") == [
        ("Mira", "Vost"), ("Tilo", "Tarn")]


def test_a_name_alone_among_the_rows_is_a_child() -> None:
    text = "Student;Bus\nMira Vost;4\nTilo Tarn\n\nLast name;First name\nMoss;Ida"
    assert names(text) == [("Mira", "Vost"), ("Tilo", "Tarn"), ("Ida", "Moss")]


@pytest.mark.parametrize("text", [
    "", "Mira Vost\nTilo Tarn", "First name;Last name\nMira;Vost\n\nFirst name;Last name\nTilo;Tarn",
    "First name;Last name\nMira;Vost\nKind;Anna\nTilo;Tarn",
    "Name;Picked up by\nMira Vost;Mama\nMama;Papa\nTilo Tarn;Papa",
])
def test_one_table_stays(text: str) -> None:
    assert stays(text)
