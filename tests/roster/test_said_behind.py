"""Notes of the day behind names, in labels that come again: the name before them is the child."""

from __future__ import annotations

import pytest

from namewright.roster.parsing import read_roster

NAMES = ("Xobrel V.", "Quindor T.", "Ylmest Z.", "Orvand B.")
NOTES = (
    ("Ziel: Dreipunktgriff. Heute: weiter üben.", "Ziel: müde, kurz gearbeitet. Heute: Dreipunktgriff. Weiter: üben."),
    ("Objectif: découpe. Séance: fatigue.", "Objectif: tenue du crayon. Séance: 7/10 sans aide."),
    ("Meta: pega correta. Hoje: continuar.", "Meta: continuar. Hoje: recorta na linha. A seguir: pega correta."),
)


@pytest.mark.parametrize("before", [
    "{day}.05.2025 {name}: ", "2025-05-1{day} {name} – ", "{name}: ", "{day}. {name}: "])
@pytest.mark.parametrize("notes", NOTES)
def test_the_name_before_the_labels_is_the_child(before: str, notes: tuple[str, str]) -> None:
    text = "\n".join(f"{before.format(day=at, name=name)}{notes[at % 2]}" for at, name in enumerate(NAMES, 1))
    read = read_roster(text)
    assert [child.practice for child in read.children] == ["Xobrel", "Quindor", "Ylmest", "Orvand"]
    assert all(line.notes for line in read.lines if line.child)


def test_days_and_groups_before_labels_are_no_children() -> None:
    days = read_roster("Monday: Helper: Mia\nTuesday: Helper: Leo\nWednesday: Helper: Ada\nThursday: Helper: Theo")
    assert sorted(child.practice for child in days.children) == ["Ada", "Leo", "Mia", "Theo"]
