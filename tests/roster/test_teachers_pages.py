"""Lists that stand on a teacher's own pages: slots of an evening, birthdays by month, ways home, levels of a class."""

from __future__ import annotations

import pytest

from namewright.roster.parsing import read_roster

PAGES = [
    ("Elterngespräche Do 13.11. – Raum 3\n14:10 BREAK ☕\n14:50 Cathy (beide Eltern)\n"
     "15:00 Sandy und Nicole (Zwillinge)\n15:10 Eric", ["Cathy", "Sandy", "Nicole", "Eric"]),
    ("Geburtstagskalender\nAPRIL\n3: Mira\n\nMAY\n\nJUNE\n9: Tilo\n\nAUGUST\n12: Anna", ["Mira", "Tilo", "Anna"]),
    ("Dismissal, Room 12 — Ms. Alderbrook\n\nCAR LINE\nAnna R. #114\n\nAFTER CARE — until 5:30\nBen K."
     "\n\nWALKERS\nClara V.", ["Anna", "Ben", "Clara"]),
    ("ATSEM : Ghislaine\n(NOM Prénom)\n\nPS (2 élèves)\nPETIT Léon\nROUX Mia", ["Léon", "Mia"]),
    ("RELACIÓN DE ALUMNOS – 2º CICLO ED. INFANTIL – 5 AÑOS A\n1. Mira → platos\n2. Tilo → pan + queso",
     ["Mira", "Tilo"]),
    ("Time,Child's first and last name,What should we call your child at school?\n"
     "1,Vanessa Brown,Kiki\n2,Anna Tarn,same",
     ["Kiki", "Anna"]),
    ("E-mails 🐞\nMira Vost: vost1@example.org\nTilo Tarn: tarn2@example.org", ["Mira", "Tilo"]),
    ("Mira[a]\nTilo[b]\nAnna\n\n[a]OT on Tuesdays\n[b]Left-handed!", ["Mira", "Tilo", "Anna"]),
    ("Stu ID\tStudent Name\tGr\n1\tMira Vost\tK\n2\tTilo Tarn\tK\nPrinted 08/21/2025 3:14 PM\tPage 1 of 1",
     ["Mira", "Tilo"]),
]


@pytest.mark.parametrize(("text", "names"), PAGES, ids=[text.partition("\n")[0] for text, _ in PAGES])
def test_the_children_and_nobody_else(text: str, names: list[str]) -> None:
    assert [child.practice for child in read_roster(text).children] == names


def test_few_months_are_children() -> None:
    assert [child.practice for child in read_roster("April\nMay\nMira\nJune\nTilo").children] == [
        "April", "May", "Mira", "June", "Tilo"]
