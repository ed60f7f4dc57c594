"""Small fonts made for tests: every letter a stem or a box of known size, with a kerning pair and a ligature."""

from __future__ import annotations

import io
from collections.abc import Callable, Mapping
from pathlib import Path

from fontTools.fontBuilder import FontBuilder
from fontTools.pens.t2CharStringPen import T2CharStringPen
from fontTools.pens.ttGlyphPen import TTGlyphPen
from fontTools.ttLib import TTFont
from fontTools.ttLib.tables._g_l_y_f import Glyph

UPEM, X, CAP, TALL, DEEP = 1000, 500, 700, 750, 200
ADVANCE, STEM = 400, 80
KERN_AB = -60
FEATURES = f"""
languagesystem DFLT dflt;
feature kern {{ pos A b {KERN_AB}; }} kern;
feature liga {{ sub f i by f_i; }} liga;
"""
Box = tuple[int, int, int, int]

# x, A … are boxes with a square counter, so that each letter has one loop; the others are stems.
BOXES: Mapping[str, Box] = {"x": (50, 0, 350, X), "A": (50, 0, 350, CAP), "H": (50, 0, 350, CAP)}
STEMS: Mapping[str, Box] = {
    "b": (100, 0, 100 + STEM, TALL), "d": (100, 0, 100 + STEM, TALL), "p": (100, -DEEP, 100 + STEM, X),
    "f": (100, 0, 100 + STEM, TALL), "i": (100, 0, 100 + STEM, X), "f_i": (100, 0, 300, TALL),
}


def glyph_of(*boxes: Box) -> Glyph:
    """Return a glyph of boxes, each wound the other way from the one before."""
    pen = TTGlyphPen(None)
    for count, (x0, y0, x1, y1) in enumerate(boxes):
        corners = [(x0, y0), (x0, y1), (x1, y1), (x1, y0)]
        pen.moveTo(corners[0])
        for corner in corners[1:] if count % 2 == 0 else corners[:0:-1]:
            pen.lineTo(corner)
        pen.closePath()
    return pen.glyph()


def counter_of(box: Box) -> Box:
    """Return the counter of a box whose walls are a stem wide."""
    return (box[0] + STEM, box[1] + STEM, box[2] - STEM, box[3] - STEM)


def font_bytes(change: Callable[[TTFont], None] | None = None, *, stated: tuple[int, int] = (X, CAP),
               without: str = "") -> bytes:
    """Return a font file; ``change`` may spoil it, ``stated`` is what OS/2 says, ``without`` are letters left out."""
    builder = FontBuilder(UPEM, isTTF=True)
    glyphs = {".notdef": glyph_of((0, 0, 10, 10)), "space": glyph_of(), "blank": glyph_of()}
    glyphs |= {name: glyph_of(box, counter_of(box)) for name, box in BOXES.items()}
    glyphs |= {name: glyph_of(box) for name, box in STEMS.items()}
    builder.setupGlyphOrder(list(glyphs))
    builder.setupCharacterMap({ord(name): name for name in glyphs if len(name) == 1 and name not in without}
                              | {ord(" "): "space", ord("k"): "blank"})
    builder.setupGlyf(glyphs)
    builder.setupHorizontalMetrics({name: (ADVANCE, 0) for name in glyphs})
    builder.setupHorizontalHeader(ascent=TALL, descent=-DEEP)
    builder.setupNameTable({"familyName": "Boxwood Infant"})
    builder.setupOS2(version=4, sxHeight=stated[0], sCapHeight=stated[1])
    builder.setupPost()
    builder.addOpenTypeFeatures(FEATURES)
    if change:
        change(builder.font)
    out = io.BytesIO()
    builder.font.save(out)
    return out.getvalue()


def font_file(folder: Path, data: bytes | None = None, name: str = "school.ttf") -> Path:
    """Write a font into a folder and return its path."""
    path = folder / name
    path.write_bytes(font_bytes() if data is None else data)
    return path


def cubic_font_bytes() -> bytes:
    """Return an OpenType font with cubic (CFF) outlines: x as a box, H as a stem."""
    builder = FontBuilder(UPEM, isTTF=False)
    order = [".notdef", "x", "H"]
    builder.setupGlyphOrder(order)
    builder.setupCharacterMap({ord("x"): "x", ord("H"): "H"})
    outlines = {}
    for name, (x0, y0, x1, y1) in {".notdef": (0, 0, 10, 10), "x": BOXES["x"], "H": (100, 0, 100 + STEM, CAP)}.items():
        pen = T2CharStringPen(ADVANCE, None)
        pen.moveTo((x0, y0))
        pen.curveTo((x0, y0), (x0, y1), (x0, y1))
        pen.lineTo((x1, y1))
        pen.lineTo((x1, y0))
        pen.closePath()
        outlines[name] = pen.getCharString()
    builder.setupCFF("Boxwood-Infant", {}, outlines, {})
    builder.setupHorizontalMetrics({name: (ADVANCE, 0) for name in order})
    builder.setupHorizontalHeader(ascent=TALL, descent=-DEEP)
    builder.setupNameTable({"familyName": "Boxwood Infant"})
    builder.setupOS2()
    builder.setupPost()
    out = io.BytesIO()
    builder.font.save(out)
    return out.getvalue()
