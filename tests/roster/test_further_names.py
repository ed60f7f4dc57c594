"""Several names in one line are each made or asked about, however the line is written."""

from __future__ import annotations

import random
from collections.abc import Sequence

import pytest

from namewright.roster.beside import Reading
from namewright.roster.children import Outcome, RosterError
from namewright.roster.further_names import lines_of_others
from namewright.roster.parsing import read_roster
from namewright.roster.vocabulary import fold

GIVENS = ("Mia", "Leo", "Ava", "Emma", "Noah", "Liam", "Sofia", "Chloé", "Jonas", "Giulia", "Luca", "Inês", "João",
          "Camila", "Diego", "Hannah", "Finn")
FAMILIES = ("Vost", "Tarn", "Menk", "Thal", "Grellob", "Xuder", "Rosk", "Fenwick")
SIGNS = (", ", "; ", " & ", " / ", " - ", " – ", ",", "  ", "\t", " + ", " | ", ". ")
BEFORE = ("", "Group 1: ", "Reds: ", "- ", "1. ", "with ", "8:30 ", "Mon: ", "Present: ", "Oggi: ", "Heute: ")
SAID = ("new", "has a cold", "no nuts", "(new)", "- absent", "asma", "leaves at 2", "neu", "malade", "alergia")
OTHERS = ("Tilo", "Anna", "Emil", "Ida", "Oskar")


def one_line(rng: random.Random) -> tuple[str, list[str]]:
    """Return a list in which one line names three to five children, some with a remark, and their given names."""
    names = rng.sample(GIVENS, rng.randrange(3, 6))
    whole = rng.random() < 0.5
    parts = [f"{name} {rng.choice(FAMILIES)}" if whole else name for name in names]
    if rng.random() < 0.6:
        at = rng.randrange(len(parts))
        parts[at] += f" {rng.choice(SAID)}"
    lines = [f"{name} {rng.choice(FAMILIES)}" for name in rng.sample(OTHERS, 3)] if rng.random() < 0.6 else []
    lines.insert(rng.randrange(len(lines) + 1), rng.choice(BEFORE) + rng.choice(SIGNS).join(parts))
    return "\n".join(lines), names


def silently_left(text: str, names: Sequence[str]) -> list[str]:
    """Return the names that are neither made nor on a line that is asked about."""
    try:
        roster = read_roster(text)
    except RosterError:
        return []
    made = {fold(child.practice) for child in roster.children}
    asked = " ".join(fold(report.text) for report in roster.lines if report.outcome is Outcome.LEFT_OUT)
    return [name for name in names if fold(name) not in made and fold(name) not in asked]


def missed(count: int, seed: int) -> list[str]:
    lists = (one_line(random.Random(f"{seed} {at}")) for at in range(count))
    return [text for text, names in lists if silently_left(text, names)]


def test_several_names_in_a_line_are_never_one_child() -> None:
    assert not missed(600, 1)


@pytest.mark.long
def test_many_lines_of_several_names_are_never_one_child() -> None:
    assert not missed(30_000, 2)


@pytest.mark.parametrize("text", [
    "with Mia Vost – Leo Tarn – Ava Rosk", "Reds: Noah - Emma / Inês", "Mia. Leo. Ava\nTilo Vost",
    "8:30 Finn  Jonas  Noah",    "Mia Vost. Leo Tarn\nTilo Vost\nAnna Rosk", "Leo Thal\tEmma Rosk no nuts",
    "Mia Tarn, Leo\nTilo Vost",
])
def test_what_once_made_one_child_of_several(text: str) -> None:
    names = [name for name in GIVENS if name in text.replace(".", " ").split() or f"{name}," in text]
    assert len(names) > 1
    assert not silently_left(text, names)


@pytest.mark.parametrize("lines", [
    ("Mira Vost – sits with Emma", "Tilo Tarn – Gruppe Emma", "Emma Rosk"),  # she has a line of her own
    ("Vost, Emma", "James, Leo", "Grant, Mia"),  # families that are given names, too
    ("Mira Vost (Emma)", "Tilo Tarn (with Leo)"),
])
def test_a_name_beside_a_child_asks_nothing(lines: tuple[str, ...]) -> None:
    assert len(read_roster("\n".join(lines)).children) == len(lines)


def test_a_heading_may_name_one_grown_up() -> None:
    texts = {0: "Grüße, Emma", 1: "Ava, Leo:", 2: "Mia Vost"}
    assert lines_of_others(texts, {2: Reading("Mia", "Vost")}, by_comma=False) == {1}
