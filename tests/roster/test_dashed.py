"""A dash with spaces about it between two names."""

from __future__ import annotations

import pytest

from namewright.roster.children import Outcome, RosterError
from namewright.roster.dashed import has_family_before_dash
from namewright.roster.parsing import read_roster

BESIDE = ("Theo Vost", "Mina Tarn", "Lena Brask")
ONE = [
    ("Brandt - Ottilie (brother Emil)", "Ottilie", "Brandt"), ("García - Lucía (hermano Leo)", "Lucía", "García"),
    ("Dubois – Chloé", "Chloé", "Dubois"), ("Keller – Theo (Bruder Emil in der 3b)", "Theo", "Keller"),
    ("Bianchi — Giulia (sorella Emma)", "Giulia", "Bianchi"), ("Pereira - Beatriz (irmão Rui)", "Beatriz", "Pereira"),
    ("van der Meer - Anna", "Anna", "van der Meer"),
]


@pytest.mark.parametrize(("line", "given", "family"), ONE)
def test_a_family_name_before_a_dash_is_no_half_of_a_name(line: str, given: str, family: str) -> None:
    """Known names tell which is which; the child is never called by both with a hyphen, and it is told."""
    roster = read_roster("\n".join((line, *BESIDE)))
    assert next((child.practice, child.family) for child in roster.children) == (given, family)
    assert "roster.family_stands_first" in {note.key for note in roster.lines[0].notes}


def test_a_list_written_so_is_read_so() -> None:
    """A name that is a given one too follows the others; nothing is asked line by line."""
    roster = read_roster("Brandt - Ottilie\nKeller - Theo\nSommer - Mina\nWeiss - Lena")
    assert [child.practice for child in roster.children] == ["Ottilie", "Theo", "Mina", "Lena"]
    assert [child.family for child in roster.children] == ["Brandt", "Keller", "Sommer", "Weiss"]


def test_beside_pairs_of_children_it_is_asked() -> None:
    """Where a dash parts two children on other lines, Brandt may be one: nobody is merged."""
    roster = read_roster("Kian - Theo\nBrandt - Ottilie\nAva - Rosie")
    assert [child.practice for child in roster.children] == ["Kian", "Theo", "Ava", "Rosie"]
    assert [report.outcome for report in roster.lines if "Brandt" in report.text] == [Outcome.LEFT_OUT]


@pytest.mark.parametrize("line", ["Anna - Lena (twins)", "Luz – Rafi (hermanos)", "Xobrel - Mina"])
def test_no_two_names_about_a_dash_become_one_with_a_hyphen(line: str) -> None:
    roster = read_roster("\n".join((line, *BESIDE)))
    assert not any("-" in child.practice for child in roster.children)


@pytest.mark.parametrize("line", ["Green - Mia", "Friday - Mia", "Snack - Mia", "Mia - Brandt", "Kian - Theo"])
def test_labels_and_given_names_are_no_families(line: str) -> None:
    assert not has_family_before_dash(line)


def test_a_dash_right_behind_small_words_parts_groups_from_names() -> None:
    """Nobody is called high-Mia, and those behind the comma are there."""
    roster = read_roster("reading groups\nhigh- Mia, Theo\nmed- Rafi, Ava\nlow- Noah S, Jo")
    assert [child.practice for child in roster.children] == ["Mia", "Theo", "Rafi", "Ava", "Noah", "Jo"]
    assert read_roster("mary- Kate Vost\nTheo Tarn").children[0].family == "Vost"


@pytest.mark.parametrize(("text", "names"), [
    ("high- Mia Theo Luz\nlow- Anna Leo Jo", ["Mia", "Theo", "Luz", "Anna", "Leo", "Jo"]),
    ("mesa 1- Mia Theo Luz\nmesa 2- Anna Leo Jo", ["Mia", "Theo", "Luz", "Anna", "Leo", "Jo"]),
    ("Hoch- Mia Theo Luz\nTief- Anna Leo Jo", ["Mia", "Theo", "Luz", "Anna", "Leo", "Jo"]),
    ("altos- Luis Ana Eva\nbajos- Hugo Vera Mar", ["Luis", "Ana", "Eva", "Hugo", "Vera", "Mar"]),
    ("Rot: Mia Theo Lena\nBlau: Anna Leo Ida Ben", ["Mia", "Theo", "Lena", "Anna", "Leo", "Ida", "Ben"]),
])
def test_given_names_in_a_row_behind_a_group_are_children(text: str, names: list[str]) -> None:
    assert [child.practice for child in read_roster(text).children] == names


@pytest.mark.parametrize("text", [
    "reds- Xobrel Quorra Dravo\nblues- Anna Leo Jo", "hoch- Xobrel Quorra\ntief- Dravo Pelgun",
    "Red: Mia Theo Luz\nBlue: Anna Leo Jo", "high- Mia Theo\nlow- Anna Leo",
])
def test_names_behind_a_group_that_may_be_one_child_or_more_are_asked_about(text: str) -> None:
    with pytest.raises(RosterError) as found:
        read_roster(text)
    assert {report.outcome for report in found.value.lines} == {Outcome.LEFT_OUT}


@pytest.mark.parametrize(("text", "names"), [
    ("Mary- Kate Moss\nAnna- Lena Fuchs", ["Mary-Kate", "Anna-Lena"]),
    ("Mia: Leo Theo Ava\nAnna: Zoe Ben Max", ["Mia", "Anna"]),
    ("mira: Left Handed\nleo: New Boy", ["Mira", "Leo"]),
])
def test_what_stands_behind_a_child_is_none(text: str, names: list[str]) -> None:
    assert [child.practice for child in read_roster(text).children] == names
