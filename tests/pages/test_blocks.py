"""What sheets are built of: how high a row is, where its lines are, and a name inside a sentence."""

from __future__ import annotations

from itertools import pairwise

import pytest

from namewright.lines.ruling import PRESETS, GuideLine, Ruling, preset
from namewright.pages.blocks import ROW_CLEAR_MM, guides, moved, printed_depth, row_space, ruled_row, text_with_name
from namewright.pages.typesetter import Typesetter
from namewright.wording import Wording


@pytest.mark.parametrize("ruling", PRESETS.values(), ids=lambda ruling: ruling.name)
def test_a_plain_row_is_as_high_as_its_ruling(setter: Typesetter, ruling: Ruling) -> None:
    """Letters that stay between the lines move no row."""
    space = row_space(ruling, [setter.ruled(ruling).line("none")])
    assert space.height_mm == pytest.approx(ruling.pitch_mm)
    assert space.rise_mm == ruling.line_height_mm


@pytest.mark.parametrize("name", ["Ấ", "Ẹ̀"])
def test_marks_beyond_the_lines_move_a_row_and_keep_white(setter: Typesetter, name: str) -> None:
    """By as much as they need, and the white that stays between them and the next row."""
    ruling = preset("us-3/8")
    line = setter.ruled(ruling).line(name)
    space = row_space(ruling, [line])
    assert line.rise_mm > ruling.line_height_mm
    assert space.rise_mm == pytest.approx(line.rise_mm + ROW_CLEAR_MM)
    assert space.drop_mm >= line.drop_mm


@pytest.mark.parametrize("ruling", PRESETS.values(), ids=lambda ruling: ruling.name)
def test_the_lines_of_a_row_stand_at_their_heights(ruling: Ruling) -> None:
    """Each line of the ruling once, from edge to edge, and the lowest as deep as is told."""
    drawn = guides(ruling, 10.0, 90.0, 100.0)
    named = {guide.line: guide.y for guide in drawn if guide.line is not None}
    assert named == {line: pytest.approx(100.0 - ruling.height_of(line)) for line in ruling.lines}
    assert len(drawn) == len(ruling.lines) + len(ruling.bands_mm)
    assert all((guide.x0, guide.x1) == (10.0, 90.0) for guide in drawn)
    assert max([100.0, *(guide.y for guide in drawn)]) == pytest.approx(100.0 + printed_depth(ruling))


def test_a_row_can_be_moved(setter: Typesetter) -> None:
    """All of it, and by as much."""
    ruling = preset("us-1/2")
    row = ruled_row("Bo", "blank", ruling, 10, 90, 50, [setter.text("Bo", 2.0).moved(12, 50)])
    there = moved(row, 3.0, -4.0)
    for before, after in zip(row.items, there.items, strict=True):  # type: ignore[union-attr]
        shift = [b - a for a, b in zip(before.bounds(), after.bounds(), strict=True)]
        assert shift == pytest.approx([3.0, -4.0, 3.0, -4.0])


@pytest.mark.parametrize(("words", "name", "letters"), [
    ("This page is for {name}.", "Ava", "ThispageisforAva."),
    ("This page is for {name}.", "Ava B.", "ThispageisforAvaB."),
    ("{name} writes here", "Ava", "Avawriteshere"), ("Für {name}", "Ava", "FürAva")])
def test_a_name_stands_inside_a_sentence(setter: Typesetter, words: str, name: str, letters: str) -> None:
    """Every sign of both is there, from left to right, with one point at the end and white round the name."""
    inks = text_with_name(setter, Wording("made-up", {"a.caption": words}), "a.caption", name, 20.0, 30.0)
    assert sum(len(ink.pieces) for ink in inks) == len(letters)
    assert inks[0].bounds()[0] == pytest.approx(20.0, abs=0.5)
    assert all(left.bounds()[2] < right.bounds()[0] for left, right in pairwise(inks))


def test_the_base_line_is_in_every_ruling_that_has_lines() -> None:
    assert all(GuideLine.BASE in ruling.lines for ruling in PRESETS.values() if ruling.lines)
