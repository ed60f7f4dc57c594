"""Days and hours behind a name are no part of it; a day or a letter that may be a name stays."""

from __future__ import annotations

import pytest

from namewright.roster.hours import without_hours
from namewright.roster.parsing import read_roster
from namewright.roster.pasted import Line

TAILS = [
    "M/W/F", "Tu Th til noon", "am only", "full day", "Mo/Mi/Fr", "Di+Do", "bis 12 Uhr", "nur vormittags", "ganztags",
    "lun/jeu", "jusqu'à midi", "matin seulement", "L/X/V", "comedor M y J", "solo mañanas", "hasta las 12", "lun/mer",
    "fino alle 12", "solo mattina", "giornata intera", "seg/qua", "só de manhã até ao meio-dia", "integral",
    "meio período"]


@pytest.mark.parametrize("tail", TAILS)
@pytest.mark.parametrize("names", [("Mira V", "Sam A", "Anna L", "Bo M"),
                                   ("Xobrel T", "Vemka D", "Outhna M", "Jelbru F")])
def test_a_few_children_who_come_by_the_hour(tail: str, names: tuple[str, ...]) -> None:
    """They practise their names; what was taken off is told."""
    read = read_roster("\n".join((names[0], f"{names[1]} {tail}", names[2], f"{names[3]} {tail}")))
    assert [child.practice for child in read.children] == [name.split()[0] for name in names]
    assert any(note.key == "roster.remark" for note in read.lines[1].notes)


@pytest.mark.parametrize("text", [
    "Kim Do", "Ana M y J", "Will Mo", "Han Solo", "Mia Vost full", "Ada A/B", "Mar y Sol", "Sam Mar", "Dom Sab Vost",
    "Mo/Mi/Fr", "Mira Vost left", "Ana Ruiz y Gil", "", "Do", "Mia\tMo/Mi"])
def test_what_may_be_a_name_or_a_help_stays(text: str) -> None:
    assert [line.text for line in without_hours([Line(text, 0)])] == [text]


@pytest.mark.parametrize("tail", ["solo mattina", "nur vormittags", "mornings only", "hasta las 12", "ganztags"])
def test_hours_behind_a_colon_leave_the_child(tail: str) -> None:
    """Without them the name would stand before a colon alone, as a heading does."""
    read = read_roster(f"Mira Vost\nBo Tarn: {tail}\nAnna Elm\nUna Rey")
    assert [child.practice for child in read.children] == ["Mira", "Bo", "Anna", "Una"]
