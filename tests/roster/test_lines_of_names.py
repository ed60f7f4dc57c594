"""Lines with several children each and no word before them are children; rows of a table are none."""

from __future__ import annotations

import pytest

from namewright.roster.children import Outcome, RosterError
from namewright.roster.parsing import read_roster

_LEADS = ["{}: ", "{}. ", "{}) ", "{} - ", "{}=", "({}) ", "- ", "• ", "— ", "▪ ", "\uf0b7 ", "☐ ", "[ ] ", "➤ ",
          "#{} ", "{}-", "No. {} ", "a) ", "", "Table {}. ", "Tisch {} "]
_KNOWN = ("Mia, Leo, Ava", "Otis, Nora, Emil, Clara", "Hugo, Ines, Paul, Rosa, Silas")
_UNKNOWN = ("Xobrel, Zyphra, Quorne", "Nawequ, Adaqu, Harozqu, Surycqu", "Vrexiu, Omquil, Aivnor, Zivqu, Tarbo")
_WHOLE = ("Mia Vost, Leo Tarn, Ava Elm", "Otis Ward, Nora Quint, Emil Brae, Clara Hale",
          "Hugo Pell, Ines Moss, Paul Reed")


def _names(text: str) -> list[str]:
    return [child.practice for child in read_roster(text).children]


@pytest.mark.parametrize("lead", _LEADS)
@pytest.mark.parametrize("rows", [_KNOWN, _UNKNOWN, _WHOLE])
def test_lines_of_names_are_children(lead: str, rows: tuple[str, ...]) -> None:
    """The first name of each line was a child, and those behind it columns that are not used.

    Behind signs of Word two of three names were lost, and ``Leo Mia`` was a child.
    """
    text = "\n".join(lead.format(at) + row for at, row in enumerate(rows, 1))
    roster = read_roster(text)
    assert [child.practice for child in roster.children] == [
        name.split()[0] for row in rows for name in row.split(", ")]
    assert read_roster(roster.text).children == roster.children


@pytest.mark.parametrize("lead", ["{} - ", "- ", "", "({}) "])
def test_lines_as_long_as_each_other_are_children_where_given_names_stand_in_each_place(lead: str) -> None:
    rows = ("Mia, Leo, Ava, Otis, Nora", "Emil, Clara, Hugo, Ines, Paul", "Rosa, Silas, Petra, Jonah, Lena")
    assert len(_names("\n".join(lead.format(at) + row for at, row in enumerate(rows, 1)))) == 15


def test_a_title_over_lines_of_names_is_none_of_them() -> None:
    assert _names("Reading groups\n1. " + "\n2. ".join(_KNOWN[:2])) == ["Mia", "Leo", "Ava", "Otis", "Nora", "Emil",
                                                                       "Clara"]


@pytest.mark.parametrize("sign", ["▪", "☐", "[ ]", "#1", "—"])
@pytest.mark.parametrize("row", ["{}, {}, Bluebirds", "{} {}, Robins, 4B", "{} {}, Peanuts"])
def test_a_sign_in_front_of_a_row_of_a_table_makes_no_children(sign: str, row: str) -> None:
    people = [("Mia", "Vost"), ("Leo", "Tarn"), ("Ava", "Elm"), ("Xobrel", "Quix")]
    try:
        found = _names("\n".join(f"{sign} {row.format(*name)}" for name in people))
    except RosterError:  # asked
        return
    assert len(found) <= len(people)
    assert not {"Bluebirds", "Robins", "Peanuts"} & set(found)


@pytest.mark.parametrize("text", [
    "Mia, Vost, Bluebirds\nLeo, Tarn\nAva, Elm, Robins, Peanuts",
    "1. Mia, Peanuts, Epipen\n2. Leo, Asthma\n3. Ava, Bus",
    "Child, Mother, Father\nMia, Jana, Karl\nLeo, Ida\nAva, Rosa, Otto"])
def test_rows_of_a_table_are_one_child_each(text: str) -> None:
    try:
        found = _names(text)
    except RosterError:  # asked
        return
    assert found == ["Mia", "Leo", "Ava"]


def test_a_family_on_each_line_is_asked_about() -> None:
    """Jana, Ida and Karl, the parents, had pages of their own."""
    families = "Mia Vost, Jana Vost, Karl Vost\nLeo Tarn, Ida Tarn\nAva Elm, Otto Elm, Rosa Elm"
    lines = read_roster(f"{families}\nZoe Quint").lines
    assert [line.outcome for line in lines] == [*[Outcome.LEFT_OUT] * 3, Outcome.CHILD]


def test_an_and_in_each_line_makes_them_children() -> None:
    assert _names("Mia, Leo and Ava\nOtis, Nora & Emil") == ["Mia", "Leo", "Ava", "Otis", "Nora", "Emil"]


def test_given_names_alone_are_children_with_nothing_but_spaces_between() -> None:
    """Leo was a middle name, and Ava the family's."""
    assert _names("Mia Leo Ava\nOtis Nora Emil\nHugo Ines Paul") == [
        "Mia", "Leo", "Ava", "Otis", "Nora", "Emil", "Hugo", "Ines", "Paul"]
    assert len(_names("Table 1 Table 2 Table 3\nMia Leo Ava\nOtis Nora Emil")) == 6
    assert _names("Mia Rose Vost\nLeo Otis Tarn\nAva Nora Elm") == ["Mia", "Leo", "Ava"]


@pytest.mark.parametrize("heads", [("Table 1", "Table 2"), ("Grupo A", "Grupo B"), ("Tisch 1", "Tisch 2")])
@pytest.mark.parametrize("names", [
    "Myndra, Kelso, Tarvin, Brox, Xandu, Pelwin, Zurka, Imbra",
    "Myndra Voss, Kelso Tun, Tarvin Bly, Brox Lam, Xandu Gel, Pelwin Orr, Zurka Dim, Imbra Sott",
])
def test_rows_of_rare_names_below_headings_of_their_own_are_children(heads: tuple[str, str], names: str) -> None:
    each = names.split(", ")
    text = f"{heads[0]}\n{', '.join(each[:4])}\n\n{heads[1]}\n{', '.join(each[4:])}"
    assert [child.practice for child in read_roster(text).children] == [name.split()[0] for name in each]
