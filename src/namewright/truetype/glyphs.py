"""Glyphs: the TrueType outlines of every letter and mark in one face.

A letter with marks is put together from the glyphs of its base and marks where they stand clear of each other,
and drawn whole where they touch (ç, ǫ, ơ). Font units, y up.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from itertools import combinations, product
from typing import Any

from fontTools.pens.cu2quPen import Cu2QuPen
from fontTools.pens.ttGlyphPen import TTGlyphPen

from namewright.geometry import boxes
from namewright.lines.ruling import LETTER_UNITS
from namewright.lines.setting import InkLetter, ink_letter
from namewright.truetype.characters import SPACE, UNIT, ZONE, FontLetter, FontMark, Repertoire
from namewright.truetype.faces import DrawingSetup, Face, guide_lines
from namewright.truetype.kerning import Pairs
from namewright.truetype.stroke_outlines import Shape, box, union, without

NOTDEF = ".notdef"
NOTDEF_ADVANCE = 6 * ZONE // 5
_CURVE_ERROR = 0.5  # font units


def draw_glyphs(face: Face, setup: DrawingSetup, repertoire: Repertoire, reach: Mapping[str, int]) -> dict[str, Any]:
    """Return every glyph of a face by name. ``reach`` tells how far right of 0 guide lines must go."""
    glyphs = {NOTDEF: _glyph(_missing()), SPACE: _glyph(_ruled(face, None, reach[SPACE]))}
    for mark in repertoire.marks:
        glyphs[mark.name] = _glyph(face.draw(_ink_mark(mark, setup), 0.0, setup))
    for entry in repertoire.letters:
        if _stands_clear(entry, face, setup):
            glyphs[entry.name] = _put_together(entry, glyphs)
        else:
            shape = face.draw(ink_letter(entry.letter, setup.ruling), entry.shift, setup)
            glyphs[entry.name] = _glyph(_ruled(face, shape, reach[entry.base]))
    return glyphs


def guide_reach(repertoire: Repertoire, space: int, moves: tuple[Pairs, Pairs]) -> dict[str, int]:
    """Return how far each bare letter's guide lines must go, and the space's, so that no kern opens a gap in them."""
    bare = {entry.name: entry.base for entry in repertoire.letters} | {SPACE: SPACE}
    reach = {entry.base: entry.advance for entry in repertoire.letters} | {SPACE: space}
    advance = dict(reach)
    for pair, units in moves[0].items():
        left = bare[pair[0]]
        reach[left] = max(reach[left], advance[left] + units + moves[1][pair])
    return reach


def _ruled(face: Face, shape: Shape | None, reach: int) -> Shape | None:
    if not face.ruled:
        return shape
    lines = guide_lines(0, reach)
    return lines if shape is None else union([shape, lines])


def _missing() -> Shape:
    """Return the box for a character that the font does not have: every font must have one."""
    edge = ZONE // 10
    return without(box(edge, 0, NOTDEF_ADVANCE - edge, 2 * ZONE),
                   box(2 * edge, edge, NOTDEF_ADVANCE - 2 * edge, 2 * ZONE - edge))


def _ink_mark(mark: FontMark, setup: DrawingSetup) -> InkLetter:
    """Return a mark by itself as a letter on the font's ruling, about its own attachment point."""
    scale = setup.ruling.x_height_mm / LETTER_UNITS
    strokes = tuple(stroke.map(lambda point: (point[0] * scale, -point[1] * scale)) for stroke in mark.glyph.strokes)
    return InkLetter("", strokes, boxes.joined(stroke.bounds() for stroke in strokes), marks=len(strokes))


def _glyph(shape: Shape | None) -> Any:
    pen = TTGlyphPen(None)
    if shape is not None:
        shape.draw(Cu2QuPen(pen, _CURVE_ERROR))
    return pen.glyph(dropImpliedOnCurves=True)


# --- letters put together from glyphs that are there -----------------------------------------------------


def _put_together(entry: FontLetter, known: Iterable[str]) -> Any:
    pen = TTGlyphPen(dict.fromkeys([*known, entry.base]))
    pen.addComponent(entry.base, (1, 0, 0, 1, 0, 0))
    for name, mark in zip(entry.marks, entry.letter.marks, strict=True):
        x, y = mark.origin()
        pen.addComponent(name, (1, 0, 0, 1, round(UNIT * x) + entry.shift, round(UNIT * y)))
    return pen.glyph()


def _stands_clear(entry: FontLetter, face: Face, setup: DrawingSetup) -> bool:
    """Whether no box of a mark's stroke comes near one of another part, so that each may be drawn for itself."""
    if not entry.marks:
        return False
    parts = [[stroke.bounds() for stroke in strokes]
             for strokes in (entry.letter.base.strokes, *(mark.strokes() for mark in entry.letter.marks))]
    needed = face.clearance_mm(setup.pens) / setup.ruling.x_height_mm * LETTER_UNITS
    return all(boxes.clearance(one, other) > needed for part, others in combinations(parts, 2)
               for one, other in product(part, others))
