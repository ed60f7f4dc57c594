"""Columns one under the other become rows; a list with one title, or with groups, stays as it is."""

from __future__ import annotations

import pytest

from namewright.roster.parsing import read_roster
from namewright.roster.pasted import Line
from namewright.roster.stacked import from_stacked_columns


def rows(text: str) -> list[str]:
    return [line.text for line in from_stacked_columns([Line(line, at) for at, line in enumerate(text.splitlines())])]


def children(text: str) -> list[tuple[str, str]]:
    return [(child.given, child.family) for child in read_roster(text).children]


@pytest.mark.parametrize(("number", "family", "given"), [
    ("No.", "Last name", "First name"), ("Nr.", "Nachname", "Vorname"), ("N°", "Nom", "Prénom"),
    ("N.º", "Apellidos", "Nombre"), ("N.", "Cognome", "Nome"), ("Lfd.", "Name", "Vorname")])
def test_columns_one_under_the_other_are_rows(number: str, family: str, given: str) -> None:
    column = f"{family}\nQuastel\nTarnow\nXobrel\n\n{given}\nMira\nVemka\nAnna"
    wanted = [("Mira", "Quastel"), ("Vemka", "Tarnow"), ("Anna", "Xobrel")]
    assert children(f"Gruppe Igel\n{number}\n1\n2\n3\n{column}\nTotal: 3") == wanted
    assert children(column) == wanted
    assert children(f"{given}\nMira\nVemka\nAnna\n{family}\nQuastel\nTarnow\nXobrel") == wanted


def test_what_was_made_rows_of_is_read_again_as_it_was() -> None:
    roster = read_roster("Nachname\nQuastel\nTarnow\nVorname\nMira\nAnna")
    assert [child.practice for child in read_roster(roster.text).children] == ["Mira", "Anna"]
    assert [report.source_line for report in roster.lines] == [4, 5, 6]


def test_each_page_has_its_columns() -> None:
    pages = "Last name\nVost\nTarn\nFirst name\nMira\nAnna\nRoom 3\nLast name\nElm\nFen\nMoss\nFirst name\nBo\nUna\nJo"
    assert children(pages) == [("Mira", "Vost"), ("Anna", "Tarn"), ("Bo", "Elm"), ("Una", "Fen"), ("Jo", "Moss")]


def test_a_family_called_as_a_title_is_a_family() -> None:
    text = "Nom\nKind\nTarn\nMatt\nPrénom\nMira\nAnna\nLeo"
    assert children(text) == [("Mira", "Kind"), ("Anna", "Tarn"), ("Leo", "Matt")]


def test_birthdays_between_names_need_no_title_that_is_known() -> None:
    text = "Nachname\nVost\nTarn\ngeboren\n1.2.2021\n3.4.2020\nVorname\nMira\nAnna"
    assert children(text) == [("Mira", "Vost"), ("Anna", "Tarn")]


@pytest.mark.parametrize("text", [
    "Vorname\nMira\nAnna", "Niños\nLeo\nHugo\nNiñas\nAna\nEva", "Niños\nLeo\nNiñas\nAna\nEva",
    "Boys\nLeo\nBo\nGirls\nAna\nEva",
    "Children\nMira\nLeo\nBus\nAnna\nBen", "Kind\nKind\nKind\nKind", ""])
def test_what_is_no_column_under_another_stays(text: str) -> None:
    assert rows(text) == text.splitlines()


def test_a_last_column_with_empty_cells_is_no_list_of_children() -> None:
    text = "First Name\nMira\nXobrel\nAnna\nLast Name\nVost\nTarn\nElm\nAllergies\nnuts"
    assert children(text) == [("Mira", "Vost"), ("Xobrel", "Tarn"), ("Anna", "Elm")]


def test_whole_names_by_comma_may_stand_in_one_column() -> None:
    text = "Nr.\n1\n2\nName, Vorname\nVost, Mira\nTarn, Anna\nGeb.\n1.1.2021\n2.2.2021"
    assert children(text) == [("Mira", "Vost"), ("Anna", "Tarn")]


UNEVEN = [
    ("Nr.\n1\n2\n3\n4\nNachname\nQuastel\nTarnow\nVogt\nVorname\nMira\nTilo\nAnna\nLeo", "Mira Tilo Anna Leo"),
    ("Last name\nVost\nTarn\nFirst name\nMira\nTilo\nAnna", "Mira Tilo Anna"),
    ("Last name\nVost\nTarn\nFirst name\nMira", "Mira"),
    ("No.\n1\n2\n3\nFirst name\nMira\nTilo\nAnna\nLast name\nVost\nTarn", "Mira Tilo Anna"),
    ("Name\nMira Vost\nTilo Tarn\nAnna Rey\nHand\nL\nR", "Mira Tilo Anna"),
]


@pytest.mark.parametrize(("text", "names"), UNEVEN)
def test_of_columns_of_different_lengths_the_given_names_are_children_and_no_family_is_guessed(
        text: str, names: str) -> None:
    roster = read_roster(text)
    assert [child.practice for child in roster.children] == names.split()
    assert all(f"{child.given} {child.family}".strip() in text for child in roster.children)
    assert any(note.key == "roster.uneven" for report in roster.lines for note in report.notes)
    assert [child.practice for child in read_roster(roster.text).children] == names.split()


def test_columns_of_one_length_belong_together_beside_another() -> None:
    text = "No.\n1\n2\n3\nFirst name\nMira\nTilo\nAnna\nLeo\nLast name\nVost\nTarn\nRey\nQuill\nTotal: 4"
    assert children(text) == [("Mira", "Vost"), ("Tilo", "Tarn"), ("Anna", "Rey"), ("Leo", "Quill")]


def test_names_in_two_blocks_below_a_column_of_numbers() -> None:
    """Twice as many are rows; where one is missing, nobody knows whose, and no family name is a child."""
    numbers, families, given = "1\n2\n3\n4", "Quastel\nTarnow\nVogt", "Mira\nTilo\nAnna\nLeo"
    assert children(f"{numbers}\n{families}\nMoss\n{given}")[0::3] == [("Mira", "Quastel"), ("Leo", "Moss")]
    assert children(f"{numbers}\n{families}\n{given}") == [("Mira", ""), ("Tilo", ""), ("Anna", ""), ("Leo", "")]
    assert len(children(f"{numbers}\n{given}")) == 4


def test_a_family_called_doctor_is_no_title_of_a_column() -> None:
    lines = ["(NOM Prénom)", "", "PS (4)", "SULE William", "ROUT Ekavir", "DOCTOR Bina", "NARAIN Advika", "",
             "MS (2)", "BUMB Ryan", "WABLE Leena"]
    assert [child.practice for child in read_roster("\n".join(lines)).children] == [
        "William", "Ekavir", "Bina", "Advika", "Ryan", "Leena"]


@pytest.mark.parametrize("titles", ["Signed up|sister", "Matriculados|hermana", "Inscrits|sœur", "Zusagen|Schwester",
                                    "Iscritti|sorella", "Inscritos|irmã"])
def test_a_child_with_somebody_of_a_family_behind_is_no_title_of_a_column(titles: str) -> None:
    title, kin = titles.split("|")
    names = ["Vost, Mira", "Tarn, Tilo", "Rey, Anna", f"Elm, Emil – {kin}", "Fen, Ida", "Moss, Leo", "Koch, Una"]
    text = "\n".join((title, *(f"{at}. {name}" for at, name in enumerate(names, 1))))
    assert [child.practice for child in read_roster(text).children] == [
        "Mira", "Tilo", "Anna", "Emil", "Ida", "Leo", "Una"]
    assert rows(text) == text.splitlines()
