"""Names counted in one line are a child each; numbers that tell something else part nothing."""

from __future__ import annotations

import textwrap

import pytest

from namewright.roster.parsing import read_roster


def made(text: str) -> list[str]:
    return [child.practice for child in read_roster(text).children]


@pytest.mark.parametrize("line", [
    "1. Mira 2. Tilo 3. Oda", "1) Mira 2) Tilo 3) Oda", "1 Mira 2 Tilo 3 Oda", "1. Mira, 2. Tilo, 3. Oda",
    "1.Mira 2.Tilo 3.Oda", "(1) Mira (2) Tilo (3) Oda", "1. Mira Vost 2. Tilo Brae (L) 3. Oda Marn",
])
def test_names_counted_in_one_line_are_a_child_each(line: str) -> None:
    """By itself, and among whole names, given names and names by comma."""
    assert made(line) == ["Mira", "Tilo", "Oda"]
    for others in ("Anna Reed\nBen Marsh\nClara Pell", "Anna\nBen\nClara"):
        assert made(f"{others}\n{line}") == ["Anna", "Ben", "Clara", "Mira", "Tilo", "Oda"]


def test_lines_that_go_on_counting_are_parted_too() -> None:
    assert made("1. Mira 2. Tilo\n3. Oda 4. Anna") == ["Mira", "Tilo", "Oda", "Anna"]


@pytest.mark.parametrize("line", ["1. Mira Vost 4", "Mira 1 Vost 2", "1. Mira 3. Klasse", "1. Mira 2. class"])
def test_other_numbers_part_nothing(line: str) -> None:
    assert len(made(line)) == 1


@pytest.mark.parametrize("width", [36, 48, 60])
@pytest.mark.parametrize("sign", [".", ")"])
@pytest.mark.parametrize("names", [["Mia Vost", "Leo Berg", "Ava Tarn", "Tom Reed", "Ida Frost", "Noah Lind", "Bo Oak"],
                                   ["Xobrel Vemkassen", "Tarnul Dofrinov", "Mogat Lenviberg", "Outhna Pelkowala",
                                    "Zirmal Hult", "Vexil Quorrikian", "Drosk Bistrom"]])
def test_names_counted_in_wrapped_lines_are_whole(names: list[str], sign: str, width: int) -> None:
    text = textwrap.fill(" ".join(f"{at}{sign} {name}" for at, name in enumerate(names, 1)), width)
    assert [child.practice for child in read_roster(text).children] == [name.split()[0] for name in names]
