"""Stops with their times, ages and counts between names are no children, and no child is taken for one."""

from __future__ import annotations

import time

import pytest

from namewright.roster.children import Outcome
from namewright.roster.group_lines import counted_titles, is_count, state_titles
from namewright.roster.parsing import read_roster


def practised(text: str) -> list[str]:
    return [child.practice for child in read_roster(text).children]


@pytest.mark.parametrize(("first", "second"), [
    ("7:12 Mercado", "7:21 Largo da Igreja"), ("7.12 Uhr Kirche", "7.21 Uhr Marktplatz"), ("7:12 Plaza", "7:21 Church"),
    ("3 anni", "4 anni (2)"), ("3-year-olds", "4-year-olds:"), ("3 años", "4 años"), ("2-3 ans", "4-5 ans"),
])
def test_a_stop_or_an_age_over_names_is_a_heading(first: str, second: str) -> None:
    text = f"{first}\nXobrel\nTarnul\nMia\n\n{second}\nLeo\nOdelo"
    assert practised(text) == ["Xobrel", "Tarnul", "Mia", "Leo", "Odelo"]


@pytest.mark.parametrize("sign", [" –", ":"])
def test_who_gets_on_at_a_street_is_a_child(sign: str) -> None:
    text = f"Ava Vost\n7:44 Calle Sol{sign} Mark Adeyemi\nMia Tarn\nLeo Elm\nIda Fask"
    assert practised(text) == ["Ava", "Mark", "Mia", "Leo", "Ida"]


@pytest.mark.parametrize("text", [
    "7:12 Mia\nXobrel\nTarnul\nLeo",
    "Xobrel Tarn\n7:12 Largo Novo – Vemka Fen\nOdelo Drun\nTarnul Elm\nMia Vost",
    "1 mia\n2 leo\n3 anni\n4 lia", "7:12 Xobrel\n7:20 Mia",
])
def test_a_child_with_a_time_or_a_number_stays_one(text: str) -> None:
    assert {line.outcome for line in read_roster(text).lines} <= {Outcome.CHILD, Outcome.LEFT_OUT}


def test_a_place_that_opens_no_block_is_asked_about() -> None:
    read = read_roster("Xobrel\nTarnul\n7:12 Mercado\nMia\nLeo")
    assert [line.outcome for line in read.lines].count(Outcome.LEFT_OUT) == 1


@pytest.mark.parametrize("text", [
    "Sizes: 3 x S, 5 x M", "Größen: 3 x 104, 2 × 110", "Tallas: XS: 3, S: 5", "Shirts: 4T=3; 5T=2",
])
@pytest.mark.parametrize("names", ["Mia – S\nLeo – M\nTilo – S", "Child\tSize\nMia\tS\nLeo\tM\nTilo\tS"])
def test_what_counts_the_lines_above_is_no_child(text: str, names: str) -> None:
    assert practised(f"{names}\n\n{text}") == ["Mia", "Leo", "Tilo"]


@pytest.mark.parametrize("text", ["Mia: 3 x S, 5 x M", "Xobrel: 3 x S", "Sizes: Mia, Leo", "Mia, Leo"])
def test_what_counts_nothing(text: str) -> None:
    assert not is_count(text)


@pytest.mark.parametrize("title", ["Snack rota", "Turni della merenda", "Autorizados a levar", "Abholberechtigt"])
def test_one_cell_over_columns_is_asked_about_and_a_given_name_is_a_child(title: str) -> None:
    rows = "Mia Vost\tmum Ada\nXobrel Tarn\tdad Yul\nLeo Elm\tmum Ida"
    assert practised(f"{title}\n\n{rows}") == ["Mia", "Xobrel", "Leo"]
    assert practised(f"Noah\n{rows}") == ["Noah", "Mia", "Xobrel", "Leo"]


@pytest.mark.parametrize("title", ["Abholberechtigt", "Snack rota", "Quillworts"])
def test_a_line_without_a_sign_over_lines_with_one_is_asked_about(title: str) -> None:
    assert practised(f"{title}\n\nMia – mum Ada\nXobrel – dad Yul\nLeo – mum Ida") == ["Mia", "Xobrel", "Leo"]
    assert practised("Noah\n\nMia – mum Ada\nXobrel – dad Yul\nLeo – mum Ida") == ["Noah", "Mia", "Xobrel", "Leo"]


@pytest.mark.parametrize(("first", "second"), [
    ("On time (3)", "Stays late (2)"), ("Llegan en coche (3)", "Van andando (2):"),
    ("À la cantine [3]", "Chez eux [2]"), ("Mit Rädern (3)", "Zu Fuß (2)"),
    ("Con il pulmino (3)", "A piedi ( 2 )"), ("Almoçam cá (3)", "Em casa (2)"), ("Kwelda (3)", "Rombu (2)")])
@pytest.mark.parametrize("names", [
    ("Mira Vost", "Tilo Tarn", "Anna Lind", "Leo Rey", "Ada Bru"), ("Vost, Xobrel", "Tarn, Vemka", "Lind, Outhna",
                                                                    "Rey, Quorrik", "Bru, Zandelle")])
def test_words_that_count_the_lines_below_are_a_heading(first: str, second: str, names: tuple[str, ...]) -> None:
    roster = read_roster("\n".join((first, *names[:3], "", second, *names[3:])))
    assert [child.practice for child in roster.children] == [name.split(", ")[-1].split()[0] for name in names]
    assert [roster.lines[at].outcome for at in (0, 5)] == [Outcome.HEADING] * 2


def test_one_that_counts_a_block_is_a_heading_where_it_is_no_known_name() -> None:
    assert counted_titles(("Mira", "", "Late bus (3)", "Tilo", "Anna", "Leo")) == {2}
    assert not counted_titles(("Mira", "", "Ada (3)", "Tilo", "Anna", "Leo"))


@pytest.mark.parametrize("text", [
    "Mira (3)\nXobrel (4)\nAnna (5)", "Xobrel (2)\nMira\nAnna\nLeo", "Mira\nXobrel (2)\nAnna\nLeo",
    "Mira (1)\nXobrel (1)"])
def test_an_age_behind_a_name_counts_nobody(text: str) -> None:
    assert not counted_titles(text.splitlines())
    assert "Xobrel" in practised(text)


def test_a_gap_as_wide_as_a_page_is_read_at_once() -> None:
    """Three runs of spaces side by side shared the gap between them in every way: some thousand took minutes."""
    began = time.perf_counter()
    assert state_titles(["Absent" + " " * 2_000 + "x", "Present (2) :", "Absent  [3]"]) == {1, 2}
    assert time.perf_counter() - began < 1
