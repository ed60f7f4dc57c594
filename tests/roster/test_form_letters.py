"""Of a page that is printed for each child, the name is the one line that differs; everything else is told."""

from __future__ import annotations

import pytest

from namewright.roster.children import Outcome
from namewright.roster.parsing import read_roster

NAMES = ["Mira Vost", "Xobrel Quix", "Tilo Tarn", "Ana Moss"]
PAGES = [
    "READER OF THE WEEK\nthis badge belongs to\n{}\nfor finishing a book\nPrincipal: Zorin Pell",
    "MEDALLA\nse entrega a\n{}\npor compartir sus juguetes",
    "BRAVO !\n{}\npour sa bonne humeur\nLa directrice : Zorin Pell",
    "Schwimmabzeichen\n{}\nhat bestanden\n12.06.2026", "COMPLIMENTI\n{}\nper aver aiutato i compagni",
    "PARABÉNS\n{}\npela ajuda aos colegas", "Star Award\npresented to\n{}\nfor courage", "Hello!\nMy name is\n{}",
]


@pytest.mark.parametrize("page", PAGES)
@pytest.mark.parametrize("between", ["\n", "\n\n", "\n- - - - -\n"])
def test_the_line_that_differs_is_the_child(page: str, between: str) -> None:
    roster = read_roster(between.join(page.format(name) for name in NAMES))
    assert [child.practice for child in roster.children] == ["Mira", "Xobrel", "Tilo", "Ana"]
    assert all(report.notes for report in roster.lines if report.outcome in (Outcome.HEADING, Outcome.LEFT_OUT))


def test_what_is_written_small_may_differ_too() -> None:
    reasons = ["for reading aloud", "for a kind word", "for the longest tower", "for sweeping"]
    text = "\n\n".join(f"AWARD\n{name}\n{reason}" for name, reason in zip(NAMES, reasons, strict=True))
    assert [child.practice for child in read_roster(text).children] == ["Mira", "Xobrel", "Tilo", "Ana"]


@pytest.mark.parametrize("text", [
    "Table\nMira\nTilo\nTable\nAna\nLeo\nTable\nIda\nBruno", "Mira\nnuts\nTilo\nnuts\nAna\nnuts\nLeo\nnuts",
    "Red\nMira\nRed\nTilo\nBlue\nAna\nBlue\nLeo",
])
def test_two_names_under_one_word_and_a_word_under_each_name_stay_children(text: str) -> None:
    practised = [child.practice for child in read_roster(text).children]
    assert {"Mira", "Tilo", "Ana"} <= set(practised)
    assert not {"Table", "Nuts", "nuts"} & set(practised)


@pytest.mark.parametrize(("title", "given"), [("Star Award", "presented to"), ("Victoria", "entregue a"),
                                              ("Étoile", "remis à"), ("Stella", "conferito a")])
def test_a_certificate_may_be_called_as_a_child_is(title: str, given: str) -> None:
    """It was a child on each of the pages, and the children on them were none."""
    names = ("Gimfythjil", "Rolnye", "Záyousmys", "Géthjei")
    reasons = ("for trying hard", "for super reading", "for trying hard", "for trying hard")
    text = "\n----------\n".join(f"{title}\n{given}\n{name}\n{why}\nSigned: Zaix Dlalyek\n01.06.25"
                                 for name, why in zip(names, reasons, strict=True))
    assert [child.practice for child in read_roster(text).children] == [*names]
