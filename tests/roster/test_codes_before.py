"""Codes before children are numbers, whatever their letters; groups, classes and children with figures keep theirs."""

from __future__ import annotations

import pytest

from namewright.roster.codes_before import from_codes_before
from namewright.roster.parsing import read_roster
from namewright.roster.pasted import Line

NAMES = [["Mia Vost", "Leo Berg", "Ava Tarn"], ["Xobrel Vemkassen", "Tarnul Dofrinov", "Mogat Lenviberg"]]


@pytest.mark.parametrize("title", ["", "Tablets – Ausgabe 2024/25\n", "Device list\n\n"])
@pytest.mark.parametrize("sign", [" → ", " = ", ": ", " – ", " -> "])
@pytest.mark.parametrize("code", ["TAB-0{}", "KG0{}", "T{}", "H-00{}", "SPIND{}"])
@pytest.mark.parametrize("names", NAMES)
def test_each_child_behind_a_code(names: list[str], code: str, sign: str, title: str) -> None:
    rows = [f"{code.format(at)}{sign}{name}" for at, name in enumerate(names, 1)]
    rows[1] += " (charger missing)"
    assert [child.practice for child in read_roster(title + "\n".join(rows)).children] == [
        name.split()[0] for name in names]


def test_family_names_before_a_comma() -> None:
    read = read_roster("TAB-01 = Vemkassen, Xobrel (ok)\nTAB-02 = Dofrinov, Tarnul\nTAB-03 = Lenviberg, Mogat\n"
                       "TAB-04 = Pelkowala, Outhna (ok)")
    assert [child.practice for child in read.children] == ["Xobrel", "Tarnul", "Mogat", "Outhna"]


@pytest.mark.parametrize("text", [
    "K1: Mia Vost\nK1: Leo Berg\nK2: Ava Tarn",  # classes
    "Mia1 – Vost\nLeo2 – Berg\nAva3 – Tarn",  # each another
    "T1: reading\nT2: nuts and eggs\nT3: sand",
    "T1 = 4 chairs\nT2 = 5 chairs\nT3 = 6 chairs"])
def test_other_lines_stay(text: str) -> None:
    lines = [Line(row, at) for at, row in enumerate(text.split("\n"))]
    assert from_codes_before(lines) == lines
