"""Labels two or more to a row are a child each; what comes again on each of them, and tables, are none."""

from __future__ import annotations

from collections.abc import Sequence

import pytest

from namewright.roster.label_sheets import from_label_sheets
from namewright.roster.parsing import read_roster
from namewright.roster.pasted import Line

NAMES = ("Mira Tarn", "Tilo Moss", "Ida Fenwick", "Xobrel Vost", "Bo Grell", "Una Rosk", "Noah Menk")
UNDER = (("Class K-2", "Birch School"), ("Clase K-2", "Escuela del Sol"), ("Classe K-2", "École des Tilleuls"),
         ("Klasse 1b", "Lindenschule"), ("Sezione B", "Scuola I Tigli"), ("Turma 2", "Jardim das Flores"))


def sheet(names: Sequence[str], count: int, under: Sequence[str], *, tab: bool, gap: str = "\n") -> str:
    """Write labels as a word processor does."""
    rows = []
    for at in range(0, len(names), count):
        some = names[at : at + count]
        rows.append("\n".join("\t".join(line) if tab else "".join(cell.ljust(22) for cell in line).rstrip()
                              for line in (some, *([words] * len(some) for words in under))))
    return f"\n{gap}".join(rows)


def practised(text: str) -> list[str]:
    return [one.practice for one in read_roster(text).children]


@pytest.mark.parametrize("under", UNDER)
@pytest.mark.parametrize(("count", "tab", "gap"), [(2, True, "\n"), (3, False, "\n"), (4, True, ""), (3, False, "")])
def test_what_comes_again_below_the_names_is_nobody(under: tuple[str, str], count: int, tab: bool, gap: str) -> None:
    for names in (NAMES, [", ".join(name.split()[::-1]) for name in NAMES]):
        assert practised(sheet(names, count, under, tab=tab, gap=gap)) == [name.split()[0] for name in NAMES]


def test_a_school_over_and_numbers_under_the_names_are_nobody() -> None:
    text = "Birch School\tBirch School\nMira Vost\tTilo Tarn\nBus 4\tBus 11\n\nBirch School\nIda Moss\nBus 3"
    assert practised(text) == ["Mira", "Tilo", "Ida"]


def test_given_names_over_family_names_are_one_name_each() -> None:
    text = "Mira\tTilo\nVost\tTarn\nRoom 2\tRoom 2\n\nXobrel\tIda\nMoss\tGrell\nRoom 2\tRoom 2"
    assert [(one.given, one.family) for one in read_roster(text).children] == [
        ("Mira", "Vost"), ("Tilo", "Tarn"), ("Xobrel", "Moss"), ("Ida", "Grell")]


@pytest.mark.parametrize("tab", [True, False])
def test_three_names_in_each_row_are_three_children(tab: bool) -> None:
    assert practised(sheet(NAMES, 3, (), tab=tab, gap="")) == [name.split()[0] for name in NAMES]
    turned = [", ".join(name.split()[::-1]) for name in NAMES]
    assert practised(sheet(turned, 3, (), tab=tab, gap="")) == [name.split()[0] for name in NAMES]


@pytest.mark.parametrize("text", [
    "Mira Vost\tJo Vost\tAl Vost\nTilo Tarn\tIda Tarn\tBo Tarn", "Mira Vost\tJo Holm\nTilo Tarn\tIda Grell",
    "Name\tMother\tFather\nMira Vost\tJo Holm\tAl Rosk\nTilo Tarn\tIda Grell\tBo Menk",
    "Mira Vost\t5\nTilo Tarn\t4", "Mira Vost\tK\tbus 4\nTilo Tarn\tK\tbus 3\n\nBo Moss\tK\tcar\nIda Grell\tK\tbus 1",
    "Heute: Mira Vost\tTilo Tarn\tBo Moss", "Mira\tTilo\nBo\tIda", "Mira\nTilo\n\nBo\nIda", "",
    "Student\tHand\nMira Vost\tleft\nTilo Tarn\tleft",
])
def test_tables_and_lists_stay(text: str) -> None:
    assert [line.text for line in from_label_sheets([Line(line, at) for at, line in enumerate(text.split("\n"))])] == \
        text.split("\n")
