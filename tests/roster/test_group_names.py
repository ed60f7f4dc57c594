"""Groups called after shapes, animals or fruit over blocks are asked about and are no children in silence."""

from __future__ import annotations

import pytest

from namewright.message import Problem
from namewright.roster.children import Outcome
from namewright.roster.group_names import kinds_of
from namewright.roster.parsing import read_roster

_UNKNOWN = ("Xobrel", "Zuni", "Karv", "Wenna", "Mirtel", "Polka", "Hurgo", "Irsta")
_KNOWN = ("Mia", "Leo", "Ana", "Pablo", "Emma", "Noah", "Hugo", "Eva")
_HEADS = ("Triangles Circles", "Círculos Cuadrados", "Carrés Ronds", "Kreise Dreiecke", "Cerchi Quadrati",
          "Triângulos Quadrados", "Frösche Eulen", "Ardillas Erizos", "Äpfel Birnen", "Myrtilles Cerises",
          "Nuvole Arcobaleni", "Joaninhas Borboletas", "Owls Hedgehogs")


def blocks(heads: str, names: tuple[str, ...], gap: str = "\n\n") -> str:
    one, two = heads.split()
    return gap.join(("\n".join((one, *names[:4])), "\n".join((two, *names[4:]))))


def reports(text: str) -> dict[str, Outcome]:
    try:
        lines = read_roster(text).lines
    except Problem:
        return {}
    return {line.text: line.outcome for line in lines}


@pytest.mark.parametrize("names", [_UNKNOWN, _KNOWN])
@pytest.mark.parametrize("heads", _HEADS)
@pytest.mark.parametrize("gap", ["\n\n", "\n"])
def test_what_groups_are_called_after_is_no_child(heads: str, names: tuple[str, ...], gap: str) -> None:
    found = reports(blocks(heads, names, gap))
    assert [found[name] for name in names] == [Outcome.CHILD] * len(names)
    assert [found[head] for head in heads.split()] == [Outcome.LEFT_OUT] * 2


@pytest.mark.parametrize("heads", ["Daisy Lily", "Venus Mars", "Luna Sol", "Wolf Fuchs"])
@pytest.mark.parametrize("names", [_UNKNOWN, _KNOWN])
def test_groups_that_may_be_children_are_asked_about(heads: str, names: tuple[str, ...]) -> None:
    found = reports(blocks(heads, names))
    assert [found[head] for head in heads.split()] == [Outcome.LEFT_OUT] * 2


@pytest.mark.parametrize("text", [
    "Daisy\nMia\nLily\nLeo", "Mia\nLuna\n\nLeo\nSol\nAna", "Fuchs\nXobrel\nVogel\nZuni\nKarv",
    "Luna\nMia\n\nDaisy\nLeo\n\nAna\nEva", "Rose\nViola\nIris\nLily"])
def test_children_called_so_elsewhere_stay_children(text: str) -> None:
    assert [child.practice for child in read_roster(text).children] == text.split()


def test_several_of_a_kind_are_of_it() -> None:
    assert kinds_of("circles") == kinds_of("kreise") != frozenset()
    assert kinds_of("circles") != kinds_of("bienen") != frozenset()
    assert len(kinds_of("stella")) == 2  # a shape, and in the sky
    assert kinds_of("mia") == frozenset()
