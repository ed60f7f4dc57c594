"""Fonts that are broken or made to harm: each ends in a sentence or a page, within ten seconds and 500 MB."""

from __future__ import annotations

import os
import resource
import subprocess
import sys
from collections.abc import Callable
from pathlib import Path

import pytest
from fontmaking import font_bytes, font_file, glyph_of
from fontTools.feaLib.builder import addOpenTypeFeaturesFromString
from fontTools.fontBuilder import FontBuilder
from fontTools.pens.ttGlyphPen import TTGlyphPen
from fontTools.ttLib import TTFont
from fontTools.ttLib.tables._g_l_y_f import Glyph, GlyphComponent
from fontTools.ttLib.tables.TupleVariation import TupleVariation

from longer import rest_long

pytest.importorskip("uharfbuzz")
SECONDS, MEGABYTES = 10, 500
Change = Callable[[TTFont], None]


def drawn(font: TTFont, name: str, *contours: list[tuple[int, int]]) -> None:
    """Give a letter other contours."""
    pen = TTGlyphPen(None)
    for points in contours:
        pen.moveTo(points[0])
        for point in points[1:]:
            pen.lineTo(point)
        pen.closePath()
    font["glyf"][name] = pen.glyph()


def no_area(font: TTFont) -> None:
    """Lines there and back, and a single point."""
    drawn(font, "b", [(100, 0), (100, 700), (100, 0)], [(5, 5), (5, 5)])


def crossings(font: TTFont) -> None:
    """A ball of wool: every line crosses every other."""
    points = [(200 + (at * 7919) % 300, (at * 104729) % 700) for at in range(1900)]
    drawn(font, "b", points)


def many_specks(font: TTFont) -> None:
    """Thousands of tiny contours."""
    drawn(font, "b", *([(at % 60 * 5, at // 60 * 5), (at % 60 * 5 + 2, at // 60 * 5), (at % 60 * 5, at // 60 * 5 + 2)]
                       for at in range(8000)))


def vast(font: TTFont) -> None:
    """A letter as large as numbers go."""
    drawn(font, "b", [(-15000, -15000), (15000, -15000), (15000, 15000)])


def comb(font: TTFont) -> None:
    """As many teeth as may be: a centreline of a thousand branches."""
    teeth = [point for at in range(480) for point in ((at, 20), (at, 45), (at + 1, 45), (at + 1, 20))]
    drawn(font, "b", [(0, 0), *teeth, (480, 0)])


def composite(*names: str) -> Glyph:
    """Return a glyph made of others."""
    glyph = Glyph()
    glyph.numberOfContours = -1
    glyph.xMin = glyph.yMin = glyph.xMax = glyph.yMax = 0
    glyph.components = []
    for name in names:
        part = GlyphComponent()
        part.glyphName, part.x, part.y, part.flags = name, 0, 0, 0x204  # as it measures itself, at integers
        glyph.components.append(part)
    return glyph


def circle(font: TTFont) -> None:
    """b is made of d, and d of b."""
    font["glyf"]["b"], font["glyf"]["d"] = composite("d"), composite("b")
    font.recalcBBoxes = False


def doubling(font: TTFont) -> None:
    """Each glyph is the one before it twice over, thirty deep: a thousand million outlines."""
    order = [*font.getGlyphOrder(), *(f"n{at}" for at in range(30))]
    font.setGlyphOrder(order)
    for at in range(30):
        font["glyf"][f"n{at}"] = composite(*[f"n{at - 1}" if at else "x"] * 2)
        font["hmtx"][f"n{at}"] = (400, 0)
    font["glyf"]["b"] = composite("n29", "n29")
    font.recalcBBoxes = False


def features(text: str) -> Change:
    """Return a change that adds substitutions."""
    said = f"languagesystem DFLT dflt; feature ccmp {{ {text} }} ccmp;"
    return lambda font: addOpenTypeFeaturesFromString(font, said)


def variable(font: TTFont) -> None:
    """A weight that throws every point as far as numbers go, and is not asked for."""
    builder = FontBuilder(font=font)
    builder.setupFvar([("wght", 100, 400, 900, "Weight")], [])
    points = len(font["glyf"]["b"].coordinates) + 4  # the phantom points of TrueType
    builder.setupGvar({"b": [TupleVariation({"wght": (0.0, 1.0, 1.0)}, [(32000, -32000)] * points)]})


def bitmaps_only(font: TTFont) -> None:
    """Nothing has an outline."""
    for name in font.getGlyphOrder():
        font["glyf"][name] = glyph_of()


def chain(count: int) -> str:
    """Return lookups of which each makes two glyphs of every one: more than any name has letters."""
    return "".join(f"lookup l{at} {{ sub b by b b; }} l{at}; " for at in range(count))


HOSTILE: dict[str, tuple[Change, str]] = {
    # the first four, which every run tries, are one for each thing that may grow without end
    "crossings": (crossings, "too intricately"), "doubling": (doubling, "blank"),
    "multiplied": (features(chain(14)), "more than once"), "variable": (variable, ""),
    "no area": (no_area, "leaves “b”"), "specks": (many_specks, "too intricately"), "vast": (vast, "too intricately"),
    "comb": (comb, ""), "circle": (circle, "blank"), "deleted": (features("sub b by NULL;"), "leaves “b”"),
    "bitmaps": (bitmaps_only, "no small x"), "twice": (features(chain(1)), "more than once"),
}


def limited() -> None:
    """Let a process have so much memory and no more."""
    resource.setrlimit(resource.RLIMIT_AS, (MEGABYTES * 2**20, MEGABYTES * 2**20))


@pytest.mark.skipif(os.name != "posix", reason="Windows has no such limits")
@pytest.mark.parametrize("name", rest_long(HOSTILE, 4))
def test_a_hostile_font_ends_in_a_sentence(tmp_path: Path, name: str) -> None:
    """Never a traceback, nor a page without a letter; the whole run has its time and its memory."""
    change, words = HOSTILE[name]
    font = font_file(tmp_path, font_bytes(change))
    (tmp_path / "list.txt").write_text("Hib\nHip\n")
    done = subprocess.run(
        [sys.executable, "-m", "namewright", "sheets", "list.txt", "-o", "class.pdf", "--font", str(font)],
        cwd=tmp_path, capture_output=True, text=True, timeout=SECONDS, check=False, preexec_fn=limited,
        env={**os.environ, "OPENBLAS_NUM_THREADS": "1"})
    assert done.returncode in (0, 1, 2)
    assert "Traceback" not in done.stderr
    assert words in done.stderr
    assert (tmp_path / "class.pdf").exists() == (done.returncode != 2)
