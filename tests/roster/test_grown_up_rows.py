"""Rows that a column says to be about staff are no children; a column about each child's teacher says no such thing."""

from __future__ import annotations

import pytest

from namewright.roster.children import Outcome
from namewright.roster.parsing import read_roster

ROLES = [("Name,Role", "Student", "Teacher"), ("Name;Rolle", "Schülerin", "Lehrerin"),
         ("Nom;Rôle", "Élève", "Enseignant"),
         ("Nombre y apellidos;Rol", "Alumno", "Maestra"), ("Nominativo;Ruolo", "Alunno", "Insegnante"),
         ("Nome completo;Papel", "Aluno", "Professora"), ("Name\tType", "Pupil", "Aide")]


@pytest.mark.parametrize(("titles", "child", "staff"), ROLES)
@pytest.mark.parametrize("adult", ["Jo Lind", "Yul Fenk"])
def test_a_row_of_staff_among_those_of_children_is_none(titles: str, child: str, staff: str, adult: str) -> None:
    sign = next(sign for sign in "\t;," if sign in titles)
    rows = [("Mira Vost", child), ("Xobrel Tarn", child), (adult, staff)]
    roster = read_roster("\n".join((titles, *(sign.join(row) for row in rows))))
    assert [one.given for one in roster.children] == ["Mira", "Xobrel"]
    assert roster.lines[-1].outcome is not Outcome.CHILD
    assert roster.lines[-1].notes


def test_words_for_staff_in_some_rows_alone_are_asked_about() -> None:
    roster = read_roster("Name,Type\nMira Vost,A\nLeo Tarn,B\nYul Fenk,Teacher")
    assert [line.outcome for line in roster.lines[1:]] == [Outcome.CHILD, Outcome.CHILD, Outcome.LEFT_OUT]


@pytest.mark.parametrize("text", [
    "Teacher,Student\nMs Lind,Mira Vost\nMr Berg,Leo Tarn", "Name,Comes with\nMira Vost,Teacher\nLeo Tarn,Teacher",
    "Name\tJob\nMira Vost\tTeacher\nLeo Tarn\tLine leader"])
def test_what_each_child_has_says_nothing_of_who_it_is(text: str) -> None:
    assert [one.given for one in read_roster(text).children] == ["Mira", "Leo"]


RELATIONS = [("Last name\tFirst name\tRelationship", "Student", "Mother"),
             ("Apellidos;Nombre;Parentesco", "Alumno", "Madre"),
             ("Nom;Prénom;Lien", "Élève", "Mère"), ("Nachname;Vorname;Rolle", "Kind", "Mutter"),
             ("Cognome;Nome;Parentela", "Alunno", "Mamma"), ("Apelido;Nome;Parentesco", "Aluno", "Mãe")]


@pytest.mark.parametrize(("titles", "child", "adult"), RELATIONS)
def test_a_parent_below_each_child_is_none(titles: str, child: str, adult: str) -> None:
    sign = "\t" if "\t" in titles else ";"
    rows = [sign.join(row) for row in (("Vost", "Mira", child), ("Vost", "Ida", adult), ("Tarn", "Xobrel", child),
                                       ("Moss", "Yul", adult))]
    roster = read_roster("\n".join((titles, *rows)))
    assert [one.given for one in roster.children] == ["Mira", "Xobrel"]
    assert roster.lines[2].notes[0].key == "roster.remark"


def test_a_row_for_the_mother_of_a_child_that_bears_its_name_is_of_the_child() -> None:
    text = "Name,Relationship\nMira Vost,Student\nMira Vost,Mother\nLeo Tarn,Student"
    assert [one.given for one in read_roster(text).children][:2] == ["Mira", "Mira"]


def test_who_is_no_student_by_an_unknown_word_is_asked_about() -> None:
    kids = ["Mira Vost", "Leo Tarn", "Ida Moss", "Tilo Quix", "Noah Bell"]
    rows = [*(f"{name},Student" for name in kids), "Jo Fenk,Luminary"]
    roster = read_roster("\n".join(["Name,Position", *rows]))
    assert len(roster.children) == len(kids)
    assert roster.lines[-1].outcome is Outcome.LEFT_OUT


def test_a_telephone_number_in_place_of_a_name_is_asked_about() -> None:
    roster = read_roster("First,Last,Born\n"
                         "Mira,Vost,3/4/2020\nLeo,Tarn,\nIda,Moss,\nJo Vost,555-0142,\nUwe,+49 151 2345,")
    assert [child.practice for child in roster.children] == ["Mira", "Leo", "Ida"]
    assert [line.outcome for line in roster.lines[-2:]] == [Outcome.LEFT_OUT] * 2
