"""A column for each of several children makes each of them; two columns of whole names are never read as one name."""

from __future__ import annotations

import pytest

from namewright.roster.children import Outcome, RosterError
from namewright.roster.headers import child_number
from namewright.roster.parsing import read_roster

FAMILIES = [
    "Parent,Child 1,Child 2", "Eltern;Kind 1;Kind 2", "Parent\t1er enfant\t2e enfant", "Tutor;Primer hijo;Segundo hijo",
    "Genitore;Primo figlio;Secondo figlio", "Encarregado;1.ª criança;2.ª criança", "Guardian\tStudent #1\tStudent #2",
    "Eltern   Erstes Kind   Zweites Kind", "Parent | Premier enfant | Deuxième enfant",
    "Mother,First child,Second child",
]


def _sign(titles: str) -> str:
    return next(sign for sign in ("\t", ";", " | ", "   ", ",") if sign in titles)


def _given(text: str) -> list[str]:
    return [child.given for child in read_roster(text).children]


@pytest.mark.parametrize("titles", FAMILIES)
@pytest.mark.parametrize("names", [("Mira Vost", "Leo Vost", "Ida Kern"), ("Xobrel Vost", "Odelo Vost", "Vemka Kern")])
def test_a_column_for_each_child_makes_each(titles: str, names: tuple[str, str, str]) -> None:
    sign, (one, two, three) = _sign(titles), names
    rows = (sign.join(("Jo Vost", one, two)), sign.join(("Al Kern", three, "")))
    text = "\n".join((titles, *rows))
    assert _given(text) == [name.split()[0] for name in names]
    kept = read_roster(text).text
    assert _given(kept) == _given(text), "what is kept of a list is read as it was"


@pytest.mark.parametrize(("titles", "row"), [
    ("Child 1 first name,Child 1 last name,Child 1 age,Child 2 first name,Child 2 last name,Child 2 age",
     "Mira,Vost,5,Leo,Tarn,6"),
    ("Vorname 1. Kind;Vorname 2. Kind;Familienname", "Mira;Leo;Vost"),
    ("Prénom 1er enfant;Prénom 2e enfant;Nom de famille", "Mira;Leo;Vost"),
    ("Family,First child,Second child", "Vost,Mira,Leo"),
])
def test_the_columns_of_one_number_belong_together(titles: str, row: str) -> None:
    children = read_roster(f"{titles}\n{row}").children
    assert [(child.given, child.family) for child in children] in (
        [("Mira", "Vost"), ("Leo", "Tarn")], [("Mira", "Vost"), ("Leo", "Vost")])


SIDE_BY_SIDE = ["Name,Room,Name,Room", "Name;Raum;Name;Raum", "Élève\tSalle\tÉlève\tSalle", "Alumno,Aula,Alumno,Aula",
                "Alunno   Aula   Alunno   Aula", "Aluno;Sala;Aluno;Sala"]


@pytest.mark.parametrize("titles", SIDE_BY_SIDE)
def test_tables_side_by_side_under_the_same_titles_are_children(titles: str) -> None:
    sign = _sign(titles)
    people = [("Mira Vost", "Xobrel Tarn"), ("Noah Holm", "Ida Kern"), ("Odelo Wolf", "Vemka Berg")]
    text = "\n".join((titles, *(sign.join((one, "1", two, "2")) for one, two in people)))
    assert _given(text) == [name.split()[0] for pair in people for name in pair]


@pytest.mark.parametrize("titles", ["Student,Pupil", "Name 1,Name 2", "Schüler;Lernende", "Élève;Inscrit",
                                    "Alumno;Participante", "Aluno;Educando"])
def test_two_columns_of_whole_names_are_asked_about(titles: str) -> None:
    sign = _sign(titles)
    text = "\n".join((titles, *(sign.join(pair) for pair in (("Mira Vost", "Leo Tarn"), ("Noah Holm", "Ida Kern")))))
    with pytest.raises(RosterError) as error:
        read_roster(text)
    assert error.value.message.key == "roster.two_wholes"


def test_parents_beside_children_under_the_same_title_are_asked_about() -> None:
    with pytest.raises(RosterError):
        read_roster("Name,Name\nMira Vost,Jo Vost\nLeo Tarn,Al Tarn")


def test_names_of_another_person_and_second_names_are_told_apart() -> None:
    read = read_roster("LastName1,FirstName1,LastName2,FirstName2\nVost,Mira,Vost,Jo\nTarn,Leo,Tarn,Al")
    assert [(child.given, child.family) for child in read.children] == [("Mira", "Vost"), ("Leo", "Tarn")]
    assert all(line.notes for line in read.lines if line.outcome is Outcome.CHILD)
    read = read_roster("Nombre1,Nombre2,Apellido1,Apellido2\nMira,Ana,Vost,Ruiz\nLeo,,Tarn,Gil")
    assert [(child.given, child.family) for child in read.children] == [("Mira Ana", "Vost Ruiz"), ("Leo", "Tarn Gil")]


@pytest.mark.parametrize(("title", "number"), [
    ("Child 2", 2), ("Kind 3", 3), ("2e enfant", 2), ("Tercer hijo", 3), ("Segundo apellido", 0), ("Name 2", 0),
    ("Child's first name", 0), ("Vorname", 0)])
def test_which_child_a_title_is_about(title: str, number: int) -> None:
    assert child_number(title)[0] == number


@pytest.mark.parametrize("titles", [
    "First name,Last name,Name,Phone,Name,Phone", "Vorname,Nachname,Name,Telefon,Name,Telefon",
    "Nombre,Apellidos,Alumno,Tel.,Nombre completo,Tel."])
def test_whole_names_beside_both_parts_are_somebody_elses_and_ask_nothing(titles: str) -> None:
    rows = ("Mira,Vost,Jo Vost,555,Al Vost,556", "Leo,Tarn,Bo Tarn,557,Ed Tarn,558")
    assert [(child.given, child.family) for child in read_roster("\n".join((titles, *rows))).children] == [
        ("Mira", "Vost"), ("Leo", "Tarn")]


@pytest.mark.parametrize(("text", "columns"), [
    ("Mia Vost\tLeo Berg\nAva Tarn\tTom Hill", "name,name"), ("Mia Vost\tLeo Vost\nAva Hill\tTom Hill", "name,name"),
    ("Mia Vost\tbus\tLeo Berg\nAva Tarn\tcar\tTom Hill", "name,other,name"), ("Mia\tLeo\nAva\tTom", "name,name"),
    ("Mia;Yara;Leo;Yara\nAva;Rook;Tom;Rook", "given,family,given,family"),
    ("Mia Vost;Leo Berg;\nAva Tarn;;Tom Hill", "name,name,name"),
    ("Acorns\tOaks\nMia Vost\tLeo Berg\nAva Tarn\tTom Hill", "name,name")])
def test_whose_name_comes_again_in_what_columns_hold_is_another_child(text: str, columns: str) -> None:
    """One column alone was kept, or both were joined to one name."""
    roster = read_roster(text, columns=columns)
    assert [child.practice for child in roster.children] == ["Mia", "Leo", "Ava", "Tom"]
    assert [child.practice for child in read_roster(roster.text).children] == ["Mia", "Leo", "Ava", "Tom"]


@pytest.mark.parametrize(("text", "everyone"), [
    ("Mia Vost\tLeo Berg\nAva Tarn\tTom Hill\nIda Rose\tSam Oak", "name,name"),
    ("Mia Vost;Leo Berg;Kim Moor\nAva Tarn;Tom Hill;Sam Oak\nIda Rose;Al Reed;Bo Reed", "name,name,name"),
    ("Mia Vost\tLeo Berg\tbus 4\nAva Tarn\tTom Hill\twalks\nIda Rose\tSam Oak\tbus 7", "name,name"),
    ("Zorb\tQuix\nVexil\tQuorra", "name,name"),
    ("Mia,Yara,Ida,Yara\nLeo,Rook,Kim,Rook\nZoe,Wren,Eva,Wren", "given,family,given,family")])
def test_the_question_which_column_tells_how_all_are_made(text: str, everyone: str) -> None:
    with pytest.raises(RosterError) as asked:
        read_roster(text)
    assert dict(asked.value.message.fields)["all_columns"] == everyone
