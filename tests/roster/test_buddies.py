"""Older buddies in a column beside the class are never practised, and the column is said; the class is."""

from __future__ import annotations

import pytest

from namewright.roster.buddies import with_buddies
from namewright.roster.children import RosterError
from namewright.roster.parsing import read_roster
from namewright.roster.vocabulary import Role

TITLES = [
    ("Our class", "Big buddy (Grade 4)"), ("Kindergarten children", "Reading buddies from Room 12"),
    ("Nuestra clase", "Padrino/madrina (4.º B)"), ("Alumno de infantil", "Madrina de 4.º"),
    ("Notre classe", "Parrain (CM1)"), ("Élève de maternelle", "Marraine/parrain de CM2"),
    ("Unser Kind", "Pate (Klasse 4)"), ("Vorschulkind", "Lesepatin aus der 4b"),
    ("Il nostro bambino", "Tutor (classe quarta)"), ("Bambino dell'infanzia", "Padrini di 4ª B"),
    ("A nossa turma", "Padrinho (4.º ano)"), ("Aluno do pré", "Padrinho/madrinha do 4.º B"),
]
CLASSES = [("Mira", "Leo", "Ana"), ("Mira Vost", "Leo Tarn", "Ana Ruiz"), ("Xobrel Quamp", "Tarnul Vix", "Outhna Brel")]
BUDDIES = ["Emil Koch", "Ida Lund", "Zoé Petit"]


@pytest.mark.parametrize("names", CLASSES)
@pytest.mark.parametrize("sign", ["\t", ";", " | "])
@pytest.mark.parametrize("turned", [False, True])
@pytest.mark.parametrize(("own", "older"), TITLES)
def test_the_class_alone_is_made(own: str, older: str, turned: bool, sign: str, names: tuple[str, ...]) -> None:
    rows = [(own, older), *zip(names, BUDDIES, strict=True)]
    roster = read_roster("\n".join(sign.join(row[::-1] if turned else row) for row in rows))
    assert [child.practice for child in roster.children] == [name.split()[0] for name in names]
    assert all(any(note.key == "roster.columns" for note in line.notes) for line in roster.lines if line.child)


@pytest.mark.parametrize("row", [("Emma Kind", "Jean Patin"), ("Mira Vost", "Buddy Tarn"), ("Mira", "Leo")])
def test_a_row_of_names_is_no_title(row: tuple[str, str]) -> None:
    assert with_buddies(row, [None, None]) == [None, None]


def test_given_and_family_names_of_the_class_keep_their_columns() -> None:
    known = [Role.GIVEN, Role.FAMILY, None]
    assert with_buddies(["First name", "Last name", "Big buddy"], known) == [Role.GIVEN, Role.FAMILY, Role.OTHER]


def test_buddies_beside_what_nobody_calls_the_class_are_asked_about() -> None:
    with pytest.raises(RosterError):
        read_roster("Qqq\tBig buddy (Grade 4)\nMira Vost\tEmil Koch\nLeo Tarn\tIda Lund")
