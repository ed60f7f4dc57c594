"""Glyphs of a face: put together where parts stand clear, drawn whole where they touch, lines without a gap."""

from __future__ import annotations

import pytest
from fontTools.ttLib import TTFont

from namewright.letters.alphabet import Alphabet
from namewright.truetype.characters import UNIT, repertoire_of
from namewright.truetype.glyphs import NOTDEF, guide_reach
from namewright.truetype.kerning import Pairs


def test_an_accent_that_stands_clear_is_a_part_in_its_place(small_font: TTFont, small: Alphabet) -> None:
    """á is the glyph of a and that of the acute, moved to the anchor over a."""
    glyph = small_font["glyf"]["aacute"]
    assert glyph.isComposite()
    base, mark = glyph.components
    assert (base.glyphName, base.x, base.y) == ("a", 0, 0)
    entry = next(each for each in repertoire_of(small).letters if each.cluster == "á")
    x, y = small.glyphs["a"].anchors["top"]
    assert (mark.glyphName, mark.x, mark.y) == ("acutecomb", round(UNIT * x) + entry.shift, round(UNIT * y))


def test_a_cedilla_that_touches_is_drawn_whole(small_font: TTFont) -> None:
    """ç is one outline: two that overlap would show a seam in some renderers."""
    assert not small_font["glyf"]["ccedilla"].isComposite()
    assert small_font["glyf"]["ccedilla"].yMin < small_font["glyf"]["c"].yMin


def test_a_character_that_is_not_there_is_a_box(small_font: TTFont) -> None:
    """Two contours, outside and inside, on the lines of a capital; the space draws nothing."""
    glyph = small_font["glyf"][NOTDEF]
    assert (glyph.numberOfContours, glyph.yMin, glyph.yMax) == (2, 0, 2000)
    assert small_font["glyf"]["space"].numberOfContours == 0


@pytest.mark.parametrize(("plain", "marked", "reach"), [
    ({("a", "n"): 30}, {("a", "n"): 0}, 30), ({("a", "n"): -40}, {("a", "n"): 0}, 0),
    ({("a", "n"): 30}, {("a", "n"): 12}, 42), ({("aacute", "n"): 30}, {("aacute", "n"): 12}, 42),
])
def test_lines_reach_as_far_as_the_widest_kern(small: Alphabet, plain: Pairs, marked: Pairs, reach: int) -> None:
    """A letter's lines go to its advance, and on by what any pair moves the next letter away."""
    repertoire = repertoire_of(small)
    advance = next(entry.advance for entry in repertoire.letters if entry.name == "a")
    assert guide_reach(repertoire, 500, (plain, marked))["a"] == advance + reach
    assert guide_reach(repertoire, 500, (plain, marked))["space"] == 500
