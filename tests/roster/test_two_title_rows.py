"""Titles in two rows: whose the names below are, and that no row of titles is a child."""

from __future__ import annotations

import pytest

from namewright.message import message
from namewright.roster.children import Outcome, RosterError
from namewright.roster.parsing import read_roster
from namewright.roster.two_title_rows import titles_in_two_rows
from namewright.roster.vocabulary import Role

ROWS = [("Vost", "Mira", "Vost", "Oda"), ("Brae", "Tilo", "Brae", "Kim"), ("Marn", "Xobrel", "Marn", "Ada"),
        ("Zell", "Nuru", "Zell", "Uma")]
CHILDREN = [("Mira", "Vost"), ("Tilo", "Brae"), ("Xobrel", "Marn"), ("Nuru", "Zell")]
WHOSE = [  # upper row, lower row, why
    ("Child||Parent|", "Last|First|Last|First", "known titles in both"),
    ("Kind||Mutter|", "Name|Vorname|Name|Vorname", "a name that stands for the family's"),
    ("Élève||Responsable 1|", "Nom|Prénom|Nom|Prénom", "a counted grown-up"),
    ("Pupil details||Adult 1|", "Surname|Forename|Surname|Forename", "an upper row of words that are no titles"),
    ("Alunno||Genitore|", "Cognome|Nome|Cognome|Nome", "Italian"),
    ("Datos del alumno||Datos del tutor|", "Apellidos|Nombre|Apellidos|Nombre", "what they are data of"),
    ("Aluno||Encarregado|", "Apelido|Nome|Apelido|Nome", "Portuguese"),
]


@pytest.mark.parametrize(("upper", "lower", "why"), WHOSE, ids=[row[2] for row in WHOSE])
@pytest.mark.parametrize("parents_first", [False, True], ids=["children first", "parents first"])
def test_a_grown_up_is_never_the_child(upper: str, lower: str, why: str, parents_first: bool) -> None:
    def turned(cells: list[str]) -> str:
        return "\t".join(cells[2:] + cells[:2] if parents_first else cells)

    roster = read_roster("\n".join(map(turned, (upper.split("|"), lower.split("|"), *map(list, ROWS)))))
    assert [(child.practice, child.family) for child in roster.children] == CHILDREN, why


def test_titles_that_stand_in_both_rows_are_kept() -> None:
    rows = ["Kind\t\tBus\tHand", "Vorname\tNachname\t\tja/nein", "Mira\tVost\t4\tlinks", "Tilo\tBrae\t7\trechts"]
    roster = read_roster("\n".join(rows))
    assert [child.practice for child in roster.children] == ["Mira", "Tilo"]
    assert [child.family for child in roster.children] == ["Vost", "Brae"]
    assert message("roster.columns", count=1, columns=(message("roster.column", title="Bus"),)) in roster.lines[2].notes


def test_several_children_of_a_row_are_told_from_their_family() -> None:
    rows = ["Child 1\t\tChild 2\t\tPhone", "First\tLast\tFirst\tLast\t",
            "Mira\tVost\tLeo\tVost\t555", "Tilo\tBrae\t\t\t556"]
    roster = read_roster("\n".join(rows))
    assert [(child.practice, child.family) for child in roster.children] == [
        ("Mira", "Vost"), ("Leo", "Vost"), ("Tilo", "Brae")]


def test_days_below_a_title_are_no_child() -> None:
    rows = ["Name\tBus\tAnwesend\t\t", "\t\tMo\tDi\tMi", "Mira Vost\t4\tx\t\tx", "Tilo Brae\t7\t\tx\tx"]
    roster = read_roster("\n".join(rows))
    assert roster.lines[1].outcome is Outcome.HEADER
    assert not roster.lines[1].notes
    assert [child.practice for child in roster.children] == ["Mira", "Tilo"]
    columns = tuple(message("roster.column", title=title) for title in ("Bus", "Mo", "Mi"))
    assert roster.lines[2].notes == (message("roster.columns", count=3, columns=columns),)


def test_titles_come_again_on_each_page() -> None:
    head = ["Genitore\t\tAlunno\t", "Nome\tCognome\tNome\tCognome"]
    pages = [*head, "Oda\tVost\tMira\tVost", "Kim\tBrae\tTilo\tBrae", *head, "Ada\tMarn\tXobrel\tMarn"]
    assert [child.practice for child in read_roster("\n".join(pages)).children] == ["Mira", "Tilo", "Xobrel"]


NONE = [
    (("Name", "Klasse"), ("Mira Vost", "1a"), "a child"),
    (("Name", "Klasse", "Bus"), ("", "1a", "4"), "a row without a name"),
    (("Name", "Gruppe", "Bus"), ("", "Rot", "ja"), "a row whose words stand under titles"),
    (("Given", "Family"), ("Given", "Family"), "the same titles again"),
]


@pytest.mark.parametrize(("upper", "lower", "why"), NONE, ids=[row[2] for row in NONE])
def test_what_is_no_second_row(upper: tuple[str, ...], lower: tuple[str, ...], why: str) -> None:
    assert titles_in_two_rows(upper, lower, known=True) is None, why


def test_the_title_above_is_told_beside_the_one_below() -> None:
    found = titles_in_two_rows(("Kind", "", "Mutter"), ("Vorname", "Name", "Vorname"), known=True)
    assert found is not None
    assert found.titles == ("Vorname", "Name", "Vorname (Mutter)")
    assert found.roles == (Role.GIVEN, Role.FULL, Role.OTHER)


@pytest.mark.parametrize("lower", ["First\tLast\tFirst\tLast", "Nombre\tApellidos\tNombre\tApellidos",
                                   "Prénom\tNom\tPrénom\tNom"])
def test_two_names_a_row_under_words_that_nobody_knows_are_asked_about(lower: str) -> None:
    text = f"Lions\t\tTigers\t\n{lower}\nMira\tVost\tTilo\tBrae\nXobrel\tMarn\tNuru\tZell"
    with pytest.raises(RosterError) as refused:
        read_roster(text)
    told = refused.value.message
    assert (told.key, told["one"], told["other"], told["line"]) == ("roster.two_people", "Mira Vost", "Tilo Brae", 3)
    both = read_roster(text, columns=str(told["all_columns"]))
    assert [child.practice for child in both.children] == ["Mira", "Tilo", "Xobrel", "Nuru"]
    assert [child.practice for child in read_roster(text, columns=str(told["or_columns"])).children] == ["Tilo", "Nuru"]
