"""What a printed list says on every page is a heading on each of them."""

from __future__ import annotations

import pytest

from namewright.roster.page_heads import without_page_heads
from namewright.roster.parsing import read_roster
from namewright.roster.pasted import Line


@pytest.mark.parametrize(("school", "teacher", "titles"), [
    ("Birch School    Class list K-2", "Teacher: Ms. Holm", "Nr   Last name   First name   DOB"),
    ("Escuela del Sol    Lista de clase", "Maestra: Sra. Holm", "Nr   Apellidos   Nombre   Fecha de nac."),
    ("École des Tilleuls    Liste de classe", "Enseignante : Mme Holm", "Nr   Nom   Prénom   Né(e) le"),
    ("Lindenschule    Klassenliste", "Lehrerin: Frau Holm", "Nr   Nachname   Vorname   geb. am"),
    ("Scuola I Tigli    Elenco alunni", "Maestra: sig.ra Holm", "Nr   Cognome   Nome   Nato il"),
    ("Jardim das Flores    Lista da turma", "Educadora: Sra. Holm", "Nr   Apelido   Nome próprio   Nascimento"),
])
def test_the_school_on_page_two_is_no_child(school: str, teacher: str, titles: str) -> None:
    pages = [f"{school}\n{teacher}\n{titles}\n{at}   Vost   {one}   01.02.2020\n{at + 1}   Tarn   {two}   03.04.2020"
             for at, one, two in ((1, "Mira", "Xobrel"), (3, "Tilo", "Ida"))]
    assert [one.practice for one in read_roster("\n\n".join(pages)).children] == ["Mira", "Xobrel", "Tilo", "Ida"]


def test_what_stands_above_the_first_titles_alone_stays() -> None:
    text = "Mira Vost\nFirst name;Last name\nTilo;Tarn\nMira Moss\nFirst name;Last name\nBo;Grell"
    assert [line.text for line in without_page_heads([Line(one, 0) for one in text.split("\n")])] == text.split("\n")


@pytest.mark.parametrize("foot", ["Printed on 01.02.2025 8:24     Page {}", "Impreso el 1/2/2025    Pág. {}",
                                  "Édité le 1/2/2025    {}/2",
                                  "Gedruckt am 1.2.2025   Seite {}", "Stampato il 1.2.2025   Pag. {} / 2"])
def test_the_foot_of_each_page_is_no_child(foot: str) -> None:
    titles = "First name   Last name   DOB   Sex"
    pages = [f"{titles}\n{one}   Vost   01.02.2020   F\n{two}   Tarn   03.04.2020   M\n{foot.format(at)}"
             for at, one, two in ((1, "Mira", "Xobrel"), (2, "Tilo", "Ida"))]
    assert [one.practice for one in read_roster("\n\n".join(pages)).children] == ["Mira", "Xobrel", "Tilo", "Ida"]


def test_a_child_who_ends_two_pages_is_no_foot() -> None:
    page = "Student   Zqq   Vxx\nMira Vost   01.02.2020   F"
    found = without_page_heads([Line(one, 0) for one in f"{page}\n{page}".split("\n")])
    assert [line.text for line in found] == f"{page}\n{page}".split("\n")


@pytest.mark.parametrize(("over", "under"), [
    ("Birch School   Run 09/02/2024 07:1{0}   Page {0}", "Homeroom 102  Kindergarten"),
    ("Édition du 03/09/2024   Page {0} / 2", "Effectifs par classe"), ("Linde   Seite {0}", "Liste 1b")])
def test_a_page_is_known_by_what_stands_over_its_titles_whatever_its_number(over: str, under: str) -> None:
    pages = [f"{over.format(at)}\n{under}\n\n"
             f"Name            Nr     Group\nVost, {one}      40{at}    A\nTarn, {two}    50{at}    B"
             for at, one, two in ((1, "Mira", "Xobrel"), (2, "Tilo", "Ida"))]
    assert [one.practice for one in read_roster("\n\n".join(pages)).children] == ["Mira", "Xobrel", "Tilo", "Ida"]
