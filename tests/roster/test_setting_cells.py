"""Cells with a child's own settings: read, or left as the class has it with a note."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from namewright.roster.setting_cells import (
    read_goes_by,
    read_hand,
    read_line_height,
    read_practise,
    read_support,
)
from namewright.settings import Hand, NamePart, Support

SUPPORTS = [("full", Support.FULL), ("Partial", Support.PARTIAL), ("LIGHT ", Support.LIGHT),
("parcial", Support.PARTIAL),
            ("independent", Support.INDEPENDENT), ("", None), ("-", None)]
HANDS = [("left", "", Hand.LEFT), ("R", "", Hand.RIGHT), ("zurda", "", Hand.LEFT),
         ("not settled yet", "", Hand.UNSETTLED), ("Sin definir", "", Hand.UNSETTLED),
         ("yes", "Left-handed?", Hand.LEFT), ("no", "Left-handed?", Hand.RIGHT),
         ("sí", "¿Diestro?", Hand.RIGHT), ("", "Hand", None),
         ("G", "Main", Hand.LEFT), ("S", "Mano", Hand.LEFT), ("E", "Mão", Hand.LEFT), ("D", "Main", Hand.RIGHT),
         *((cell, "Hand", Hand.UNSETTLED) for cell in (
             "both", "L/R", "mixed", "Not sure", "ambos", "ambas manos", "beide", "unklar", "les deux", "G/D",
             "entrambe", "non so", "as duas", "não sei"))]
HEIGHTS = [  # cell, header, mm
    ("15", "", 15.0), ("15 mm", "", 15.0), ("1.5 cm", "", 15.0), ("1,5", "Altura (cm)", 15.0), ("5/8 in", "", 15.875),
    ("1", "Line height (in)", 25.4), ('3/4"', "Line height (mm)", 19.05), ("4", "", 4.0), ("80", "", 80.0),
    ("", "", None),
    ("-", "", None)]


@pytest.mark.parametrize(("cell", "level"), SUPPORTS)
def test_a_level_of_support(cell: str, level: Support | None) -> None:
    notes: list = []
    assert (read_support(cell, notes), notes) == (level, [])


@pytest.mark.parametrize(("cell", "header", "hand"), HANDS)
def test_a_hand(cell: str, header: str, hand: Hand | None) -> None:
    """A yes or no answers what the header asks."""
    notes: list = []
    assert (read_hand(cell, header, notes), notes) == (hand, [])


@pytest.mark.parametrize(("cell", "header", "height"), HEIGHTS)
def test_a_line_height(cell: str, header: str, height: float | None) -> None:
    """A bare number takes the unit of its header, else millimetres; a unit of its own goes before the header's."""
    notes: list = []
    assert (read_line_height(cell, header, notes), notes) == (height if height is None else pytest.approx(height), [])


@pytest.mark.parametrize(("cell", "part", "literal"), [
    ("given", NamePart.GIVEN, ""), ("apellido", NamePart.FAMILY, ""), ("both", NamePart.BOTH, ""),
    ("Mimi", None, "Mimi"),
    ("", None, ""), ("-", None, ""), (" Mimi, ", None, "Mimi")])
def test_what_to_practise(cell: str, part: NamePart | None, literal: str) -> None:
    """A part of the name, or a name to write just as it is."""
    notes: list = []
    assert (*read_practise(cell, notes), notes) == (part, literal, [])


@pytest.mark.parametrize("read", [
    lambda notes: read_support("lots", notes), lambda notes: read_hand("up", "", notes),
    lambda notes: read_hand("yes", "Hand", notes), lambda notes: read_line_height("3.9", "", notes),
    lambda notes: read_line_height("80.1", "", notes), lambda notes: read_line_height("tall", "", notes),
    lambda notes: read_line_height("1/0 in", "", notes), lambda notes: read_line_height("9" * 500, "", notes),
    lambda notes: read_line_height("5", "Line height (in)", notes)])
def test_what_cannot_be_read_is_as_the_class_has_it_and_is_told(read: object) -> None:
    """The setting stays unset, and one note says so."""
    notes: list = []
    assert read(notes) is None  # type: ignore[operator]
    assert len(notes) == 1


@pytest.mark.parametrize("cell", ["12", "M1ra", "…", "!"])
def test_what_is_no_name_to_go_by_is_told(cell: str) -> None:
    notes: list = []
    assert (read_goes_by(cell, notes), len(notes)) == ("", 1)


@given(st.text(max_size=30))
def test_a_cell_is_read_or_told(cell: str) -> None:
    """Whatever stands in a cell of line heights, it is a height from 4 to 80 mm, or none with at most one note."""
    notes: list = []
    height = read_line_height(cell, "", notes)
    assert height is None or 4 <= height <= 80
    assert len(notes) <= (height is None)
