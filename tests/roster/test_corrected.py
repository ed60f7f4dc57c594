"""A spelling that is put right in its line: the right one is practised, and the wrong one told."""

from __future__ import annotations

import pytest

from namewright.message import message
from namewright.roster.parsing import read_roster


@pytest.mark.parametrize(("line", "given", "family"), [
    ("NOT Mira – Myra", "Myra", ""), ("no Mira, Myra Vost", "Myra", "Vost"), ("PAS Mira : Myra", "Myra", ""),
    ("NICHT Mira Vost – Myra Vost", "Myra", "Vost"), ("3. NÃO Mira – Myra", "Myra", ""), ("Mira → Myra", "Myra", ""),
    ("Mira -> Myra Vost", "Myra", "Vost"), ("Mira Vost → Myra", "Myra", "Vost"), ("Myra NOT Mira", "Myra", ""),
    ("Myra, not Mira!", "Myra", ""), ("Mira (correct: Myra)", "Myra", ""),
    ("Mira Vost (richtig: Myra)", "Myra", "Vost"),
    ("Mohamed → Muhammad", "Muhammad", ""), ("Lazaro → Lázaro", "Lázaro", ""), ("დავთ → დავით", "დავით", ""),
])
def test_the_right_spelling_is_the_name(line: str, given: str, family: str) -> None:
    read = read_roster(f"Bo Tarn\n{line}\nUna Grell\nOda Elm")
    assert [(child.given, child.family) for child in read.children][1] == (given, family)
    assert any(note.key == "roster.remark" for note in read.lines[1].notes)


@pytest.mark.parametrize("line", ["Mira → Bo", "Mira → red table", "No Bo – Al", "Mira, no nuts"])
def test_what_is_no_spelling_of_a_name_is_no_correction(line: str) -> None:
    read = read_roster(f"Ida Tarn\n{line}\nUna Grell")
    assert message("roster.remark", words="Mira") not in read.lines[1].notes
    assert read.lines[1].child is None or read.lines[1].child.practice == line.split(",")[0].split()[0]


def test_arrows_on_most_lines_point_at_partners() -> None:
    read = read_roster("Mira → Myra\nLena → Lina\nUna → Ina\nBo")
    assert [child.practice for child in read.children] == ["Mira", "Lena", "Una", "Bo"]
