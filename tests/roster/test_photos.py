"""Stray bars of a photo go, and a name broken at its comma is one; tables of bars and other commas stay."""

from __future__ import annotations

import pytest

from namewright.roster.children import Outcome
from namewright.roster.parsing import read_roster
from namewright.roster.pasted import Line
from namewright.roster.photos import from_a_photo

PHOTO = "| CLASS  LlST   Rm 4 |\n|________|\n| 1 | Vost, Mira |\n2 ! Tarn, Xobrel\n¦3  Grell, Bo ¦\n4 Fask, Una"


def texts(text: str) -> list[str]:
    return [line.text for line in from_a_photo([Line(line, at) for at, line in enumerate(text.split("\n"))])]


def test_stray_bars_make_nobody_and_hide_nobody() -> None:
    assert [(child.practice, child.family) for child in read_roster(PHOTO).children] == [
        ("Mira", "Vost"), ("Xobrel", "Tarn"), ("Bo", "Grell"), ("Una", "Fask")]


def test_a_name_broken_at_its_comma_is_one_child_of_its_first_line() -> None:
    read = read_roster("1 Vost, Mira\n2 Tarn,\n   Xobrel\n3 Grell, Bo\n4 Fask, Una")
    assert [(child.practice, child.family) for child in read.children] == [
        ("Mira", "Vost"), ("Xobrel", "Tarn"), ("Bo", "Grell"), ("Una", "Fask")]
    assert [line.source_line for line in read.lines] == [1, 2, 4, 5]


def test_figures_inside_a_name_make_it_no_heading_and_no_remark() -> None:
    """In a family name they are passed over; a given name with one is asked about."""
    read = read_roster(PHOTO + "\n5 Gre11ob, Ida\n6 01elm, H0pe\n7 Fosk, 0lof")
    assert [child.practice for child in read.children] == ["Mira", "Xobrel", "Bo", "Una", "Ida"]
    assert [line.outcome for line in read.lines[-2:]] == [Outcome.LEFT_OUT] * 2


@pytest.mark.parametrize("text", [
    "| Vost | Mira |\n| Tarn | Bo |\n| Grell | Una |", "| Vost, Mira | 4 |\n| Tarn, Bo | 5 |\n| Grell, Una | 4 |",
    "Hi Jo,\nMira Vost\nBo Tarn\nUna Grell", "Vost, Mira\nTarn, Bo\nGrell,\n3. Una", "Mira,\nBo,\nUna,\nTilo",
    "Vost, Mira\nTarn, Bo\nUna Grell", "Vost,", "Vost, Mira\nTarn, Bo\nGrell, Una\nFask,\nno photos",
    "Vost, Mira\nTarn, Bo\nGrell, Una\nFask,\nBoys\nElm, Tilo",
    "Vost, Mira\nTarn, Bo\nGrell, Una\nGroeten,\nIda Elm", "Vost, Mira\nTarn, Bo\nGrell, Una\nCumprimentos,\nIda Elm",
])
def test_what_no_photo_broke_stays(text: str) -> None:
    assert texts(text) == text.split("\n")


def test_a_name_broken_before_a_figure_for_its_first_letter_is_asked_about_and_not_lost() -> None:
    read = read_roster("1 Vost, Mira\n2 Tarn,\n   0xana\n3 Grell, Bo\n4 Fask, Una")
    assert [child.practice for child in read.children] == ["Mira", "Bo", "Una"]
    assert [line.text for line in read.lines if line.outcome is Outcome.LEFT_OUT] == ["2 Tarn, 0xana"]


@pytest.mark.parametrize("number", ["{},", "{} .", "{}-", "{})", ""])
@pytest.mark.parametrize("names", [
    ["Mira Vost", "Xobrel Tarn", "Bo Grell", "Una Fask"], ["VOST Mira", "TARN Xobrel", "GRELL Bo", "FASK Una"]])
def test_specks_at_the_edges_hide_nobody(number: str, names: list[str]) -> None:
    edges = [("' ", " ,"), ("_ ", ""), ("= ", " '"), (". ", " _")]
    lines = [f"{before}{number.format(at)} {name}{behind}"
             for at, ((before, behind), name) in enumerate(zip(edges, names, strict=True), 1)]
    children = read_roster("\n".join(["~ CLASS LIST  2024 .", "~ . _", *lines])).children
    assert [(child.given, child.family) for child in children] == [
        ("Mira", "Vost"), ("Xobrel", "Tarn"), ("Bo", "Grell"), ("Una", "Fask")]


@pytest.mark.parametrize("text", [
    "_ Mira Vost\n_ Xobrel Tarn\n_ Bo Grell", "~ Mira Vost ~\n~ Xobrel Tarn ~\n~ Bo Grell ~", "'Mira'\n'Bo'\n'Una'",
    "1. Mira Vost\n2. Bo Grell .\n3. Una Fask", "' Mira | Vost\n_ Bo | Grell\n. Una | Fask"])
def test_signs_of_one_kind_and_tables_stay(text: str) -> None:
    assert texts(text) == text.split("\n")
