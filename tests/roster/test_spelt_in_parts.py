"""A name beside its own parts for clapping is one child."""

from __future__ import annotations

import pytest

from namewright.roster.parsing import read_roster
from namewright.roster.pasted import Line
from namewright.roster.spelt_in_parts import from_parts


@pytest.mark.parametrize("text", [
    "Peter: Pe · ter\nViktor: Vik · tor\nRuth: Ruth", "Peter  Pe-ter  2\nViktor  Vik-tor  2\nRuth  Ruth  1",
    "Peter – Pe-ter – 2\nViktor – Vik-tor – 2\nRuth – Ruth – 1", "1. Peter\tPe•ter\n2. Viktor\tVik•tor\n3. Ruth\tRuth",
    "Silben:\n\nPeter: Pe · ter\nViktor: Vik · tor\nRuth: Ruth",
])
def test_a_name_and_its_parts_are_one_child(text: str) -> None:
    assert [child.practice for child in read_roster(text).children] == ["Peter", "Viktor", "Ruth"]


def test_names_on_no_list_are_one_child_too() -> None:
    names = {"Thialfén": "Thial · fén", "Yömeirnyym": "Yö · meir · nyym", "Ödinyil": "Ö · di · nyil"}
    text = "\n".join(f"{name}: {parts}" for name, parts in names.items())
    assert [child.practice for child in read_roster(text).children] == list(names)


@pytest.mark.parametrize("text", [
    "Peter: Anne-Marie\nViktor: Jean-Luc", "Name\tSilben\nPeter\tPe-ter\nViktor\tVik-tor", "Peter: Peter\nRuth: Ruth",
])
def test_other_lines_stay_as_they_are(text: str) -> None:
    lines = [Line(line, at) for at, line in enumerate(text.splitlines())]
    assert from_parts(lines) == lines
