"""How letters and marks join in a font, as HarfBuzz (PyPI uharfbuzz) shapes them."""

from __future__ import annotations

import io

import pytest
from fontTools.feaLib.parser import Parser
from fontTools.ttLib import TTFont

from namewright.letters.alphabet import Alphabet
from namewright.truetype.build import Plan, build_font
from namewright.truetype.characters import UNIT
from namewright.truetype.faces import FACES
from namewright.truetype.opentype_features import feature_source

hb = pytest.importorskip("uharfbuzz")


@pytest.fixture(scope="module")
def font(small_plan: Plan) -> object:
    return hb.Font(hb.Face(build_font(small_plan, FACES[0])))


def shaped(font: object, order: list[str], text: str) -> list[tuple[str, int, int]]:
    buffer = hb.Buffer()
    buffer.add_str(text)
    buffer.guess_segment_properties()
    hb.shape(font, buffer)
    return [(order[info.codepoint], at.x_offset, at.y_offset)
            for info, at in zip(buffer.glyph_infos, buffer.glyph_positions, strict=True)]


@pytest.mark.parametrize(("text", "glyphs"), [
    ("i", ["i"]), ("i\u030a", ["dotlessi", "uni030A"]),            # a mark above takes the place of the dot
    ("i\u0327", ["i", "uni0327"]),                                # one below does not
    ("n\u0304", ["n_uni0304"]),                                   # joined though there is no code point for it
    ("a\u0301", ["aacute"]), ("a\u0301\u0301", ["aacute", "acutecomb"]),
])
def test_which_glyphs_are_meant(font: object, small_font: TTFont, text: str, glyphs: list[str]) -> None:
    """Loose marks too, as a keyboard types them."""
    assert [name for name, _, _ in shaped(font, small_font.getGlyphOrder(), text)] == glyphs


def test_a_second_mark_stands_over_the_first(font: object, small_font: TTFont, small: Alphabet) -> None:
    """By the step that the first mark's own anchor tells, in font units."""
    first, second = shaped(font, small_font.getGlyphOrder(), "n\u0301\u0301")[-2:]
    _, step = small.marks["acute"].anchors["top"]
    assert step > 0
    if first[0] == "nacute":
        first = ("", 0, round(UNIT * small.glyphs["n"].anchors["top"][1]))
    assert second[2] - first[2] == pytest.approx(UNIT * step, abs=1)


def test_the_source_is_a_feature_file(small: Alphabet, small_plan: Plan, small_font: TTFont) -> None:
    """feaLib reads it, and it has the four features of joins."""
    source = feature_source(small, small_plan.repertoire)
    blocks = Parser(io.StringIO(source), small_font.getReverseGlyphMap()).parse().statements
    assert {"kern", "ccmp", "mark", "mkmk"} <= {getattr(block, "name", "") for block in blocks}
