"""A short list that writes a given name, a comma and a family name."""

from __future__ import annotations

import pytest

from namewright.roster.children import RosterError
from namewright.roster.parsing import read_roster


@pytest.mark.parametrize("text", ["Mia, Keller\nTheo, Brandt", "Lucía, García\nHugo, Fernández\nSara, Martínez",
                                  "1. Chloé, Dubois\n2. Hugo, Lefebvre"])
def test_known_given_and_family_names_tell(text: str) -> None:
    """Nothing is asked line by line, and each reading is told."""
    roster = read_roster(text)
    wanted = [tuple(line.split(". ")[-1].split(", ")) for line in text.splitlines()]
    assert [(child.given, child.family) for child in roster.children] == wanted
    assert all("roster.read" in {note.key for note in report.notes} for report in roster.lines)


@pytest.mark.parametrize("text", ["Mia, Theo\nLena, Emma", "Mia, Vost\nTheo, Tarn"])
def test_what_may_be_two_children_is_asked_about(text: str) -> None:
    try:
        made = [child.family for child in read_roster(text).children]
    except RosterError:
        made = []
    assert not any(made)
