"""A row a month is a heading and a line for each child; girls called as months stay children."""

from __future__ import annotations

import pytest

from namewright.roster.month_rows import from_month_rows
from namewright.roster.parsing import read_roster
from namewright.roster.pasted import Line


@pytest.mark.parametrize("text", ["January: Mira 4, Tilo 9\nFebruary:\nApril: Xobrel 3, Ben 5",
                                  "ENERO\tMira 4\tTilo 9\nFEBRERO\nABRIL\tXobrel 3\tBen 5\nMAYO\t",
                                  "| Jan | Mira 4 | Tilo 9 |\n| Apr | Xobrel 3 | Ben 5 |\n| May | |",
                                  "September – Mira, Tilo\nJanuar – Xobrel 3; Ben 5\nMai – Una\nJuni – Leo"])
def test_each_child_of_a_month_has_a_line(text: str) -> None:
    roster = read_roster(text)
    assert [child.practice for child in roster.children][:4] == ["Mira", "Tilo", "Xobrel", "Ben"]
    assert not {"January", "Enero", "Jan", "Mayo"} & {child.practice for child in roster.children}
    assert [child.practice for child in read_roster(roster.text).children] == [c.practice for c in roster.children]


def test_a_family_name_before_a_comma_is_no_child() -> None:
    roster = read_roster("March: Vost, Mira 4\nMay: Tarn, Anna 9\nJune: Elm, Leo")
    assert [child.practice for child in roster.children] == ["Mira", "Anna", "Leo"]


@pytest.mark.parametrize("text", ["April: nuts\nMira\nMay: eggs\nTilo\nJune\nAnna",
                                  "June – new\nMay – new\nApril – new",
                                  "April: Mira\nTilo: Una\nBo: Jo", ""])
def test_girls_called_as_months_stay(text: str) -> None:
    lines = [Line(line, at) for at, line in enumerate(text.splitlines())]
    assert from_month_rows(lines) == lines


@pytest.mark.parametrize(("months", "nobody", "rest"), [
    ("September October November December", "none :(", "Summer birthdays"),
    ("September Oktober November Dezember", "niemand", "Ferienkinder"),
    ("Septembre Octobre Novembre Décembre", "personne", "Vacances d'été"),
    ("Septiembre Octubre Noviembre Diciembre", "nadie", "Cumples de verano"),
    ("Settembre Ottobre Novembre Dicembre", "nessuno", "Estate"),
    ("Setembro Outubro Novembro Dezembro", "ninguém", "Férias")])
@pytest.mark.parametrize("names", [["Mira", "Tilo", "Anna"], ["Xobrel", "Vemka", "Outhna"]])
def test_a_month_of_nobody_and_the_holidays_have_no_name_of_their_own(
    months: str, nobody: str, rest: str, names: list[str],
) -> None:
    one, two, three, four = months.split()
    text = "\n".join((f"{one}: {names[0]} (3)", f"{two}: {names[1]} (9)", f"{three}: {nobody}",
                      f"{four}: Ben (1), Emil (30)", f"{rest}: {names[2]} (4)"))
    roster = read_roster(text)
    assert [child.practice for child in roster.children] == [*names[:2], "Ben", "Emil", names[2]]
    assert [child.practice for child in read_roster(roster.text).children] == [c.practice for c in roster.children]


def test_a_child_among_months_is_no_row() -> None:
    text = "March: Ada 4\nMay: Anna 9\nJune: Leo 2\nMira: Una 4"
    assert "Mira:" not in [line.text for line in from_month_rows([Line(each, 0) for each in text.splitlines()])]
