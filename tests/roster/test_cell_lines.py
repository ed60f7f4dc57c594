"""Rows whose cells stand on lines of their own become rows; a list under one title, or with groups, stays as it is."""

from __future__ import annotations

import pytest

from namewright.roster.cell_lines import from_cell_lines
from namewright.roster.parsing import read_roster
from namewright.roster.pasted import Line

TABLES = [
    ("Pupil|Bus stop|Snack", "Mira Vost|Elm Road|apple", "Tilo Tarn|Mill Lane|toast", "Anna Rey|Elm Road|apple"),
    ("Niña/o|Vuelve con|Merienda", "Mira Vost|abuela|fruta", "Tilo Tarn|tía|pan", "Anna Rey|mamá|fruta"),
    ("Élève|Sieste|Départ", "VOST Mira|oui|16h30", "TARN Tilo|non|17h00", "REY Anna|oui|16h30"),
    ("Kind|Betreuung|Frühstück", "Mira Vost|Oma|Brot", "Tilo Tarn|Papa|Müsli", "Anna Rey|Oma|Brot"),
    ("N.|Alunno|Esce con", "1|Vost, Mira|nonna", "2|Tarn, Tilo|zia", "3|Rey, Anna|mamma"),
    ("Criança|Sala|Lanche", "Mira|2|fruta", "Tilo|3|pão", "Anna|2|fruta"),
]


def pasted(*rows: str, gap: str = "") -> str:
    return "\n".join("\n".join(row.split("|")) + gap for row in rows)


@pytest.mark.parametrize("gap", ["", "\n"])
@pytest.mark.parametrize("rows", TABLES, ids=[rows[0] for rows in TABLES])
def test_cells_on_lines_of_their_own_are_rows(rows: tuple[str, ...], gap: str) -> None:
    for text in (pasted(*rows, gap=gap), f"Igel 2024\n{pasted(*rows, gap=gap)}\nTotal: 3"):
        roster = read_roster(text)
        assert [child.practice for child in roster.children] == ["Mira", "Tilo", "Anna"], text
        assert [child.practice for child in read_roster(roster.text).children] == ["Mira", "Tilo", "Anna"]


def test_both_parts_of_a_name_stay_together() -> None:
    text = pasted("Nachname|Vorname|Abholung", "Vost|Mira|Oma", "Tarn|Tilo|Papa", "Rey|Anna|Oma")
    assert [(child.given, child.family) for child in read_roster(text).children] == [
        ("Mira", "Vost"), ("Tilo", "Tarn"), ("Anna", "Rey")]


def test_a_row_with_an_empty_cell_is_told_by_the_empty_lines_between() -> None:
    """A name on a known list and one on none; what stands below either is nobody."""
    text = pasted("Student|Goes home with|Notes", "Mira Vost|Nanny|Sparrow", "Xobrel Quastel|Grandpa", "Anna Rey",
                  gap="\n")
    roster = read_roster(text)
    assert [child.practice for child in roster.children] == ["Mira", "Xobrel", "Anna"]
    assert [report.source_line for report in roster.lines if report.child] == [5, 9, 12]


def test_of_a_column_that_counts_no_empty_cell_is_guessed() -> None:
    text = pasted("Student|Hand|Snack", "Mira Vost|left|apple", "Xobrel Quastel|apple", "Anna Rey|right|pear", gap="\n")
    assert from_cell_lines(made := [Line(line, at) for at, line in enumerate(text.splitlines())]) == made


@pytest.mark.parametrize("text", [
    "Students\nMia\nLeo\nAna\nBo\nEva", "Kinder\nIgel\nMia\nLeo\nAna\nBo",
    "Nom\nKind\nTarn\nMatt\nPrénom\nMira\nAnna\nLeo",
    "Child\nMother\nMia Vost\nAnna Tarn\nLeo Elm\nBea Fen", "Names\n\nMia\nLeo\n\nAna\nBo\n\nEva\nTom",
    "Vorname\nMira\nAnna\nLeo\nNachname\nVost\nTarn\nElm", "Alumnos\nGrupo\nXobrel\nVemka\nTunzo\nQuilba"])
def test_what_may_be_children_stays(text: str) -> None:
    made = [Line(line, at) for at, line in enumerate(text.splitlines())]
    assert from_cell_lines(made) == made


@pytest.mark.parametrize(("titles", "given", "family"), [
    ("Prénom|Nom|Né(e) le", 0, 1), ("Nom|Prénom|Né(e) le", 1, 0), ("Vorname|Name|Geburtstag", 0, 1),
    ("N°|Prénom|Nom|Téléphone", 1, 2)])
def test_a_title_that_may_be_over_whole_names_stands_beside_one_of_given_names(
        titles: str, given: int, family: int) -> None:
    rows = []
    for at, (first, last) in enumerate((("Mira", "Kind"), ("Xobrel", "Tarn"), ("Anna", "Rey"), ("Tilo", "Vost")), 1):
        cells = [f"0{at}/03/2020"] * len(titles.split("|"))
        cells[given], cells[family] = first, last
        rows.append("|".join(cells))
    made = read_roster(pasted(titles, *rows)).children
    assert [(child.given, child.family) for child in made] == [
        ("Mira", "Kind"), ("Xobrel", "Tarn"), ("Anna", "Rey"), ("Tilo", "Vost")]


def test_numbered_names_are_no_column_of_numbers() -> None:
    text = "Aide: teacher Vost\nChildren (7):\n1. Mira\n2. Tilo\n3. Anna\n4. Emil\n5. Ida\n6. Leo\n7. Una"
    assert [child.practice for child in read_roster(text).children] == [
        "Mira", "Tilo", "Anna", "Emil", "Ida", "Leo", "Una"]


@pytest.mark.parametrize("title", ["Child's name", "Nom de l'enfant", "Nom de l’élève", "Nome dell'alunno"])
def test_a_word_for_a_child_behind_an_apostrophe_is_a_title(title: str) -> None:
    text = pasted(f"{title}|Zibblefax", "Mira Vost|mamie", "Tilo Tarn|tata", "Anna Rey|mamie")
    assert len(read_roster(text).children) == 3


def test_blanks_to_fill_in_make_no_second_word_of_a_name() -> None:
    """``Lathdler ____`` is one word, so single names in turn are no columns of something else."""
    names = ["Lathdler", "Vounbu", "Veipes", "Falnyy", "Keilkwe", "Gadlitri", "Medlum", "Themmith"]
    roster = read_roster("\n".join(["Children (8)", *(f"{name} ____" for name in names)]))
    assert [child.practice for child in roster.children] == names


@pytest.mark.parametrize(("title", "adults"), [
    ("Enfants (4)", "Adultes : Pavla Mach"), ("Children (4)", "Adults: Ada Moss"), ("Kinder (4)", "Erwachsene: Ida"),
    ("Niños (4)", "Adultos: Ada Moss"), ("Bambini (4)", "Adulti: Ada Moss"), ("Crianças (4)", "Adultos: Ada Moss"),
])
def test_family_and_given_names_below_a_count_are_no_titles(title: str, adults: str) -> None:
    """A child was the title of a column, and two stood in one row."""
    names = ["Králová, Libuše", "Malá, Viktorie", "Šimková, Mahulena", "Šťastná, Stanislava"]
    text = "\n".join((f"{title}", *names, "", adults))
    assert [child.given for child in read_roster(text).children] == [name.split(", ")[1] for name in names]


@pytest.mark.parametrize("title", ["Enfants (4)", "Children (4)", "Kinder (4)", "Niños (4)", "Bambini (4)"])
def test_a_count_of_children_is_no_title_of_a_column(title: str) -> None:
    names = ["Samuel Okonkwo", "David Abiola", "Gabriel Obasanjo", "Simon Balogun"]
    text = "\n".join(("Exercice", "", title, *(f"{name} ____" for name in names), "", "Adultes :", "Paul Oyekan ____",
                      "Mary Ibrahim ____"))
    read = [child.practice for child in read_roster(text).children]
    assert [name for name in read if name != "Exercice"] == ["Samuel", "David", "Gabriel", "Simon"]
