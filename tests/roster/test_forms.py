"""Answers of a form become a table; what is no form stays as it is."""

from __future__ import annotations

import pytest

from namewright.roster.forms import from_a_form
from namewright.roster.parsing import read_roster
from namewright.roster.pasted import Line


def rows(text: str) -> list[str]:
    return [line.text for line in from_a_form([Line(line, at) for at, line in enumerate(text.splitlines())])]


@pytest.mark.parametrize(("given", "family"), [("First name", "Last name"), ("Prénom", "Nom"), ("Vorname", "Nachname"),
                                               ("Nombre", "Apellidos"), ("Nome", "Cognome")])
def test_each_block_is_a_child(given: str, family: str) -> None:
    text = f"{given}: Xobrel\n{family}: Vost\n\n{given} : Mia\n{family} : Tarn"
    assert [(one.given, one.family) for one in read_roster(text).children] == [("Xobrel", "Vost"), ("Mia", "Tarn")]


def test_an_answer_that_is_missing_leaves_the_others_in_their_places() -> None:
    text = "First name: Mia\nLast name: Vost\nAge: 4\nFirst name: Bo\nAge:\nLast name: Tarn"
    assert rows(text) == ["First name\tLast name\tAge", "Mia\tVost\t4", "Bo\tTarn\t"]


@pytest.mark.parametrize("text", ["Name: Mia\nAge: 4\nName: Bo\nAge: 5", "First name: Mia", "Mia: nuts\nBo: eggs",
                                  "First name: Mia\nLast name: Vost\nBo\nUna\nJo", ": \n: "])
def test_what_is_no_form_of_both_parts_stays(text: str) -> None:
    assert rows(text) == text.splitlines()


@pytest.mark.parametrize(("given", "family", "guardian", "rule"), [
    ("First name", "Last name", "Guardian", "-----"), ("Vorname", "Nachname", "Sorgeberechtigt", "*****"),
    ("Prénom", "Nom", "Responsable", "_____"), ("Nombre", "Apellidos", "Tutor/a", "====="),
    ("Nome", "Cognome", "Genitore", "· · ·"), ("Nome próprio", "Apelido", "Encarregado", "~~~~~"),
])
def test_cards_parted_by_signs_make_a_child_each_and_no_grown_up(
        given: str, family: str, guardian: str, rule: str) -> None:
    card = f"{family}: {{}}\n{given}: {{}}\n{guardian}: Gerda Vost\n{guardian}: Anton Vost\nTel.: 555-932-01\n{rule}\n"
    text = f"Room 4\n{card.format('Vost', 'Xobrel')}{card.format('Tarn', 'Mia')}{card.format('Grell', 'Bo')}"
    assert [(one.given, one.family) for one in read_roster(text).children] == [
        ("Xobrel", "Vost"), ("Mia", "Tarn"), ("Bo", "Grell")]


def test_cards_of_whole_names_and_a_label_on_no_list() -> None:
    text = "\n---\n".join(f"Name: {name}\nBorn: 2/3/2021\nGodparent: Jo Tarn" for name in ("Mia Vost", "Bo Vost"))
    assert [one.practice for one in read_roster(text).children] == ["Mia", "Bo"]


def test_a_line_that_is_no_answer_is_told_among_cards() -> None:
    text = "\n".join(f"First name: {given}\nLast name: Vost\nAddress: 3 Elm Road\nApartment 4"
                     for given in ("Mia", "Bo", "Una"))
    assert [one.practice for one in read_roster(text).children] == ["Mia", "Bo", "Una"]


@pytest.mark.parametrize(("opening", "sign", "between"), [
    ("", " = ", ""), ("", "=", "[2]"), ("- ", ": ", ""), ("**", ":** ", "---"), ("* ", ": ", "")])
def test_labels_are_read_however_a_program_writes_them(opening: str, sign: str, between: str) -> None:
    blocks = [f"{opening}First name{sign}{given}\n{opening}Last name{sign}{family}\n{opening}Bus{sign}4"
              for given, family in (("Mia", "Vost"), ("Xobrel", "Tarn"))]
    assert [(one.given, one.family) for one in read_roster(f"\n{between}\n".join(blocks)).children] == [
        ("Mia", "Vost"), ("Xobrel", "Tarn")]


@pytest.mark.parametrize("sign", [": ", " ......... ", ":____ ", " = ", " … "])
@pytest.mark.parametrize("head", ["", "Birch Lane School\nRegistration card\n"])
@pytest.mark.parametrize(("name", "born", "mother"), [
    ("Child", "Birthdate", "Mother's name"), ("Name des Kindes", "Geb.-Datum", "Name der Mutter"),
    ("Alunno", "Nato il", "Nome della madre"), ("Élève", "Né(e) le", "Nom de la mère"),
    ("Alumno", "Fecha de nac.", "Nombre de la madre"), ("Aluno", "Nascimento", "Nome da mãe")])
def test_printed_forms_with_dots_and_lines_are_a_child_each(
        name: str, born: str, mother: str, head: str, sign: str) -> None:
    names = [("Guillermina Tarn", "Luke Gaskwom"), ("Dlunyil Kwapson", "Ise Brevin"), ("Leo Menk", "Ivy Vost")]
    text = "\n\n".join(f"{head}{name}{sign}{child}\n{born}{sign}2020-01-1{at}\n{mother}{sign}{adult}"
                       for at, (child, adult) in enumerate(names))
    assert [child.practice for child in read_roster(text).children] == ["Guillermina", "Dlunyil", "Leo"]


@pytest.mark.parametrize(("name", "other"), [
    ("Name", "Mother"), ("Nombre", "Teléfono"), ("Nom", "Allergies"), ("Kind", "Geburtstag"), ("Nome", "Padre"),
    ("Nome", "Encarregado")])
@pytest.mark.parametrize("sign", [": ", " = ", " : ", ":\t"])
def test_two_labels_that_come_three_times_are_cards(name: str, other: str, sign: str) -> None:
    for form in ("{} {}", "{1}, {0}"):
        names = [("Mira", "Vost"), ("Leo", "Tarn"), ("Ada", "Lind")]
        text = "\n\n".join(f"{name}{sign}{form.format(*each)}\n{other}{sign}Otto {each[1]}" for each in names)
        assert [one.practice for one in read_roster(text).children] == ["Mira", "Leo", "Ada"]
