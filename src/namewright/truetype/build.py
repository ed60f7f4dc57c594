"""Build: an alphabet compiled to TrueType fonts, the same bytes every time.

The guide lines are the vertical metrics: ascender on the top line, descender on the descender line, and a zone to
skip as the line gap, so that typed text set solid stands on rows of equal zones.
"""

from __future__ import annotations

import io
from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from typing import Any

from fontTools.feaLib.builder import addOpenTypeFeaturesFromString
from fontTools.fontBuilder import FontBuilder
from fontTools.otlLib.maxContextCalc import maxCtxFont
from fontTools.ttLib import newTable
from fontTools.ttLib.tables.DefaultTable import DefaultTable
from fontTools.ttLib.tables.ttProgram import Program

from namewright.letters.alphabet import Alphabet
from namewright.truetype.characters import SPACE, UNIT, UNITS_PER_EM, ZONE, Repertoire, repertoire_of
from namewright.truetype.faces import FACES, DrawingSetup, Face, default_setup
from namewright.truetype.glyphs import NOTDEF, NOTDEF_ADVANCE, draw_glyphs, guide_reach
from namewright.truetype.kerning import Pairs, kerning, pair_subtables
from namewright.truetype.opentype_features import PAIR_LOOKUPS, feature_source

_VERSION = "1.000"
_LICENCE = "This Font Software is licensed under the SIL Open Font License, Version 1.1."
_LICENCE_URL = "https://openfontlicense.org"
_COPYRIGHT = "Copyright 2026 The Namewright authors"
_DATE = 2_082_844_800  # 1970, in seconds since 1904: no real date, so that the same source gives the same bytes
# Smooth at every size (SCANCTRL 511, SCANTYPE 4), then push and pop nothing of use: FreeType hints by its own
# lights what has a shorter programme, and then guide lines jump from letter to letter.
_PROGRAMME = bytes.fromhex("b801ff85b0048db00021")
_LAYOUT = ("GDEF", "GPOS", "GSUB")
_NO_REPACKING = "fontTools.ttLib.tables.otBase:USE_HARFBUZZ_REPACKER"  # its results differ with its version


@dataclass(frozen=True, slots=True)
class Plan:
    """What all fonts of one alphabet share: repertoire, pairs, and the layout tables, compiled."""

    alphabet: Alphabet
    setup: DrawingSetup
    repertoire: Repertoire
    moves: tuple[Pairs, Pairs]
    layout: Mapping[str, bytes]
    max_context: int

    @property
    def space(self) -> int:
        """Return the advance of the space, in font units."""
        return round(UNIT * self.alphabet.space)


def build_fonts(alphabet: Alphabet) -> Iterator[tuple[str, bytes]]:
    """Yield (file name, TrueType bytes) for each face of an alphabet."""
    plan = plan_fonts(alphabet)
    for face in FACES:
        yield f"{(alphabet.name + '-' + face.style).replace(' ', '')}.ttf", build_font(plan, face)


def plan_fonts(alphabet: Alphabet) -> Plan:
    """Work out what all fonts of an alphabet share."""
    setup, repertoire = default_setup(), repertoire_of(alphabet)
    pairs = kerning(alphabet, repertoire, setup.ruling)
    font = FontBuilder(UNITS_PER_EM, isTTF=True).font
    font.setGlyphOrder(_glyph_order(repertoire))
    font.cfg[_NO_REPACKING] = False
    addOpenTypeFeaturesFromString(font, feature_source(alphabet, repertoire))
    _fill_pairs(font, repertoire, pairs)
    max_context = maxCtxFont(font)  # before compiling, which may rearrange the tables
    layout = {tag: font[tag].compile(font) for tag in _LAYOUT}
    return Plan(alphabet, setup, repertoire, pairs, layout, max_context)


def _fill_pairs(font: Any, repertoire: Repertoire, pairs: tuple[Pairs, Pairs]) -> None:
    """Put the pairs into the lookups that the feature file keeps for them."""
    marks = {entry.name: " ".join(entry.marks) for entry in repertoire.letters}
    blocks = (lambda name: "", lambda name: marks.get(name, ""))
    lookups = font["GPOS"].table.LookupList.Lookup[:len(PAIR_LOOKUPS)]
    for lookup, moved, block in zip(lookups, pairs, blocks, strict=True):
        lookup.SubTable = pair_subtables(moved, block, font.getReverseGlyphMap())
        lookup.SubTableCount = len(lookup.SubTable)


def build_font(plan: Plan, face: Face) -> bytes:
    """Return one face as the bytes of a TrueType font."""
    builder = FontBuilder(UNITS_PER_EM, isTTF=True)
    font = builder.font
    font.recalcTimestamp = False
    builder.setupGlyphOrder(_glyph_order(plan.repertoire))
    builder.setupCharacterMap(_character_map(plan.repertoire))
    reach = guide_reach(plan.repertoire, plan.space, plan.moves)
    builder.setupGlyf(draw_glyphs(face, plan.setup, plan.repertoire, reach))
    _set_metrics(builder, plan)
    builder.setupNameTable(_names(plan.alphabet.name, face.style))
    builder.setupPost(underlinePosition=-ZONE // 5, underlineThickness=ZONE // 10)
    _add_layout(font, plan)
    builder.updateHead(created=_DATE, modified=_DATE, fontRevision=float(_VERSION), flags=0b1011)
    out = io.BytesIO()
    font.save(out)
    return out.getvalue()


def _glyph_order(repertoire: Repertoire) -> list[str]:
    return [NOTDEF, SPACE, *(entry.name for entry in repertoire.letters), *(mark.name for mark in repertoire.marks)]


def _character_map(repertoire: Repertoire) -> dict[int, str]:
    mapped = {0x20: SPACE, 0xA0: SPACE}
    mapped |= {ord(entry.cluster): entry.name for entry in repertoire.letters if len(entry.cluster) == 1}
    return mapped | {ord(mark.char): mark.name for mark in repertoire.marks if mark.char is not None}


def _set_metrics(builder: Any, plan: Plan) -> None:
    font = builder.font
    advances = {NOTDEF: NOTDEF_ADVANCE, SPACE: plan.space} | {mark.name: 0 for mark in plan.repertoire.marks}
    advances |= {entry.name: entry.advance for entry in plan.repertoire.letters}
    builder.setupHorizontalMetrics({name: (width, font["glyf"][name].xMin if font["glyf"][name].numberOfContours else 0)
                                    for name, width in advances.items()})
    lines = {"ascender": 2 * ZONE, "descender": -ZONE, "lineGap": UNITS_PER_EM - 3 * ZONE}
    builder.setupHorizontalHeader(**lines)
    boxes = [glyph for glyph in font["glyf"].glyphs.values() if glyph.numberOfContours]
    top, bottom = max(box.yMax for box in boxes), min(box.yMin for box in boxes)
    builder.setupOS2(
        version=4, usWeightClass=400, usWidthClass=5, fsSelection=0b1100_0000, achVendID="NONE", fsType=0,
        sTypoAscender=lines["ascender"], sTypoDescender=lines["descender"], sTypoLineGap=lines["lineGap"],
        usWinAscent=max(top, 2 * ZONE), usWinDescent=max(-bottom, ZONE),
        sxHeight=ZONE, sCapHeight=2 * ZONE, usDefaultChar=0, usBreakChar=0x20, usMaxContext=plan.max_context)
    font["OS/2"].recalcAvgCharWidth(font)
    font["OS/2"].recalcUnicodeRanges(font)
    font["OS/2"].recalcCodePageRanges(font)


def _names(family: str, style: str) -> dict[str, str]:
    full = f"{family} {style}"
    post_script = f"{family}-{style}".replace(" ", "")
    return {
        "copyright": _COPYRIGHT, "familyName": full, "styleName": "Regular",
        "uniqueFontIdentifier": f"{_VERSION};{post_script}", "fullName": full, "version": f"Version {_VERSION}",
        "psName": post_script, "licenseDescription": _LICENCE, "licenseInfoURL": _LICENCE_URL,
        "typographicFamily": family, "typographicSubfamily": style,
    }


def _add_layout(font: Any, plan: Plan) -> None:
    """Add the layout tables as they were compiled once for all faces, and ask for smooth, unhinted letters."""
    for tag, data in plan.layout.items():
        font[tag] = DefaultTable(tag)
        font[tag].data = data
    font["prep"] = newTable("prep")
    font["prep"].program = Program()
    font["prep"].program.fromBytecode(_PROGRAMME)
    font["maxp"].maxStackElements = 1
    font["gasp"] = newTable("gasp")
    font["gasp"].gaspRange = {0xFFFF: 0b1111}
