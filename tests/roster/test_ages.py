"""Ages in years and months and sounds of speech end names, part no columns, and are no remarks of anything else."""

from __future__ import annotations

import pytest

from namewright.roster.children import Outcome
from namewright.roster.parsing import read_roster

NAMES = ["Mira Vost", "Xobrel Quix", "Leo Tarn", "Zendar Pluum"]
GOALS = ["/k/ → /t/, Lispeln", "/r/ inicial – 2 x 30 min", "frases de duas palavras, /lh/ → /l/", "taking turns"]


def _made(text: str) -> list[str]:
    return [child.practice for child in read_roster(text).children]


@pytest.mark.parametrize("form", ["{} ({}) – {}", "{}, {}: {}", "{}  {}  {}", "{}: {} – {}", "- {} [{}] {}"])
@pytest.mark.parametrize("title", ["", "Speech goals\n", "Obiettivi di logopedia\n\n"])
def test_names_end_before_ages(form: str, title: str) -> None:
    ages = ("4;7", "3;11", "5;0", "4;10")
    lines = [form.format(*three) for three in zip(NAMES, ages, GOALS, strict=True)]
    roster = read_roster(title + "\n".join(lines))
    assert [child.practice for child in roster.children] == ["Mira", "Xobrel", "Leo", "Zendar"]
    assert all(line.notes for line in roster.lines if line.outcome is Outcome.CHILD)


@pytest.mark.parametrize("sign", [": ", " – ", "  ", " - "])
def test_names_end_before_sounds(sign: str) -> None:
    assert _made("\n".join(map(sign.join, zip(NAMES, GOALS, strict=True)))) == ["Mira", "Xobrel", "Leo", "Zendar"]


def test_ages_may_stand_first() -> None:
    assert _made("4;7 Mira Vost – glasses\n5;1 Xobrel Quix\n3;11 Leo Tarn") == ["Mira", "Xobrel", "Leo"]


@pytest.mark.parametrize("text", ["Mira;4;7\nXobrel;5;2\nLeo;3;1", "Name;Age;Bus\nMira;4;7\nXobrel;5;2\nLeo;3;1",
                                  "1;Mira;4\n2;Xobrel;5\n3;Leo;4", "Mira Vost 4/7\nXobrel Quix 5/2\nLeo Tarn 3/1"])
def test_figures_in_cells_are_no_ages(text: str) -> None:
    assert _made(text) == ["Mira", "Xobrel", "Leo"]
