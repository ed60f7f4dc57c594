"""What a child traces in a school's font, measured on the printed dots with fonts of many kinds.

Sans and serif, thin and black, upright and slanted, TrueType, CFF and variable: DejaVu 2.37, Liberation 1.07, Cantarell
0.303 and Inter 4.0 as Debian packages them, and the Noto Serif that we ship. FreeType (through Pillow) draws the
letters whose stems and dots are looked for; svgpathtools and SciPy measure the rhythm (``rhythm``).
"""

from __future__ import annotations

import string
from functools import cache
from pathlib import Path

import numpy as np
import pytest
from PIL import Image, ImageDraw, ImageFont
from scipy.ndimage import center_of_mass, label
from scipy.spatial import cKDTree

from longer import rest_long
from namewright.lines.forms import Form, Inker, pens_for
from namewright.lines.ink import DARK
from namewright.lines.ruling import preset
from namewright.lines.setting import SetLine
from namewright.schoolfont.reading import load_font
from namewright.schoolfont.shaping import Lettering
from rhythm import dots_in, fault_at_best, ways

DEBIAN = Path("/usr/share/fonts")
FONTS = {  # file, form of a variable font, Debian package
    "DejaVu Sans": ("truetype/dejavu/DejaVuSans.ttf", None, "fonts-dejavu-core"),
    "DejaVu Sans Bold": ("truetype/dejavu/DejaVuSans-Bold.ttf", None, "fonts-dejavu-core"),
    "Liberation Sans": ("truetype/liberation/LiberationSans-Regular.ttf", None, "fonts-liberation"),
    "Liberation Serif Bold": ("truetype/liberation/LiberationSerif-Bold.ttf", None, "fonts-liberation"),
    "Cantarell": ("opentype/cantarell/Cantarell-Regular.otf", None, "fonts-cantarell"),
    "Cantarell Extra Bold": ("opentype/cantarell/Cantarell-ExtraBold.otf", None, "fonts-cantarell"),
    "Inter": ("truetype/inter-vf/Inter-roman.var.ttf", "wght=400", "fonts-inter-variable"),
    "Inter Black": ("truetype/inter-vf/Inter-roman.var.ttf", "wght=900", "fonts-inter-variable"),
    "Inter Italic": ("truetype/inter-vf/Inter-italic.var.ttf", "Medium Italic", "fonts-inter-variable"),
    "Noto Serif": (Path(__file__).parents[2] / "fonts/NotoSerif-Latin.ttf", None, ""),
}
UPRIGHT = [name for name in FONTS if "Italic" not in name and "Serif" not in name]
LETTERS = string.ascii_letters + "äéñőßåçğ&8"
HAIR = 0.05  # pitches that anything may be off
XH = 200  # pixels of an x-height as FreeType draws it


@cache
def lettering(name: str) -> Lettering:
    """Return a font, or skip where it is not installed."""
    file, axes, package = FONTS[name]
    if not (DEBIAN / file).is_file():
        pytest.skip(f"{name} is not installed (Debian: {package})")
    return Lettering(load_font(DEBIAN / file, axes))


class Trace:
    """A letter as it is printed in the dotted form, in mm: its dots, thin strokes, lone dots and centreline."""

    def __init__(self, name: str, char: str, ruling_name: str = "us-3/4") -> None:
        ruling = preset(ruling_name)
        self.pens = pens_for(ruling)
        line: SetLine = lettering(name).ruled(ruling).line(char)
        inks = [ink for ink in Inker(ruling, self.pens).ink(line, Form.DOTTED) if ink.style.colour == DARK]
        spots = {spot for ink in inks for spot in dots_in(ink.path_data())}
        lone = {spot for ink in inks if ink.style.width_mm > self.pens.dot_mm for spot in dots_in(ink.path_data())}
        self.dots = np.array(sorted(spots, key=lambda spot: (spot.imag, spot.real)))
        self.lone = sorted(lone, key=lambda spot: spot.real)
        self.thin = [way for ink in inks if not dots_in(ink.path_data()) for way in ways(ink.path_data())]
        (letter,) = line.letters
        self.strokes = [way + letter.x for stroke in letter.letter.strokes if not stroke.is_dot
                        for way in ways(f"M{stroke.start[0]:f} {stroke.start[1]:f}{stroke.path_data(4)}")]
        if self.thin:
            points = np.concatenate(self.thin)
            thin = cKDTree(np.c_[points.real, points.imag])
            self.strokes = [way[thin.query(np.c_[way.real, way.imag])[0] > 0.05] for way in self.strokes]

    @property
    def fault(self) -> float:
        """Return by how many pitches the rhythm is off."""
        return fault_at_best(self.dots, self.strokes, self.pens.pitch_mm, HAIR)


def drawn(name: str, char: str) -> tuple[np.ndarray, float]:
    """Return a letter's pixels as FreeType draws them, ``XH`` to the x-height, and the row of the baseline."""
    file, axes, _ = FONTS[name]
    measures, upem = lettering(name).font.measures, lettering(name).font.engine.face.upem
    font = ImageFont.truetype(str(DEBIAN / file), XH * upem / measures.x_height,
                              layout_engine=ImageFont.Layout.BASIC)
    if axes and axes.startswith("wght="):
        font.set_variation_by_axes([float(axes.removeprefix("wght=")) if axis["name"] == b"Weight" else axis["default"]
                                    for axis in font.get_variation_axes()])
    image = Image.new("L", (3 * XH, 4 * XH), 0)
    ImageDraw.Draw(image).text((XH // 2, 2.5 * XH), char, font=font, fill=255, anchor="ls")
    return np.asarray(image) > 127, 2.5 * XH


@pytest.mark.parametrize("ruling", ["us-3/4", pytest.param("fr-2", marks=pytest.mark.long)])
@pytest.mark.parametrize("name", rest_long(FONTS))
def test_dots_neither_clot_nor_leave_a_hole(name: str, ruling: str) -> None:
    """No two dots nearer than 0.7 of a pitch, no path farther than 0.55 from one for longer than 0.2: every letter."""
    bad = {char: round(float(trace.fault), 2) for char in LETTERS if lettering(name).font.glyph(char)
           for trace in [Trace(name, char, ruling)] if trace.fault > HAIR}
    assert not bad


def test_the_measure_finds_what_is_missing() -> None:
    """A dot taken out of the middle of a stem, or put beside another, is found."""
    trace = Trace("Noto Serif", "l")
    assert trace.fault <= HAIR
    whole = trace.dots
    trace.dots = np.delete(whole, len(whole) // 2)
    assert trace.fault > 0.3
    trace.dots = np.append(whole, whole[len(whole) // 2] + 0.3j * trace.pens.pitch_mm)
    assert trace.fault > 0.3


@pytest.mark.parametrize("name", UPRIGHT)
@pytest.mark.parametrize("char", "bdhkpq")
def test_a_stem_keeps_its_dots_where_a_bowl_joins(name: str, char: str) -> None:
    """The stem is found in the picture beyond the bowl; dots stand on its middle, evenly, from its top to its foot."""
    picture, baseline = drawn(name, char)
    level = baseline + 0.15 * XH if char in "pq" else baseline - 1.15 * XH
    row = np.flatnonzero(picture[round(level)])
    left, middle = np.flatnonzero(picture.any(axis=0))[0], (row[0] + row[-1]) / 2
    to_mm = preset("us-3/4").x_height_mm / XH
    trace = Trace(name, char)
    x = (middle - left) * to_mm - trace.pens.model_mm / 2
    stem = trace.dots[abs(trace.dots.real - x) < 0.02 * preset("us-3/4").x_height_mm]
    steps = np.diff(np.sort(stem.imag)) / trace.pens.pitch_mm
    assert 0.6 < steps.min() <= steps.max() < 1.3
    rows = np.flatnonzero(picture[:, round(middle)])
    assert stem.imag.min() == pytest.approx((rows[0] - baseline) * to_mm, abs=0.8)
    assert stem.imag.max() == pytest.approx((rows[-1] - baseline) * to_mm, abs=0.8)


@pytest.mark.parametrize("name", UPRIGHT)
def test_o_is_round_at_any_weight(name: str) -> None:
    """From dot to dot the way turns by what a circle of as many dots turns, and nowhere twice as much and more."""
    dots = Trace(name, "o").dots
    ring = dots[np.argsort(np.angle(dots - dots.mean()))]
    steps = np.roll(ring, -1) - ring
    turns = np.degrees(np.angle(np.roll(steps, -1) / steps))
    assert len(ring) >= 10
    assert sum(turns) == pytest.approx(360)
    assert max(turns) < 2.2 * 360 / len(ring)


@pytest.mark.parametrize("name", FONTS)
@pytest.mark.parametrize("char", "ij")
def test_the_dot_of_i_is_one_dot(name: str, char: str) -> None:
    """Round, square or slanting: one touch of the pencil, in the middle of what FreeType draws there, over the stem."""
    picture, baseline = drawn(name, char)
    parts, count = label(picture, structure=np.ones((3, 3)))
    assert count == 2
    (y, _), _ = sorted(center_of_mass(picture, parts, [1, 2]))
    trace = Trace(name, char)
    assert len(trace.lone) == 1
    to_mm = preset("us-3/4").x_height_mm / XH
    assert trace.lone[0].imag == pytest.approx((y - baseline) * to_mm, abs=0.3)
    assert abs(trace.dots[1] - trace.lone[0]) > 1.2 * trace.pens.pitch_mm


@pytest.mark.parametrize("name", FONTS)
@pytest.mark.parametrize(("char", "lean"), [("é", -1), ("è", 1)])
def test_an_accent_is_a_stroke_that_leans(name: str, char: str, lean: int) -> None:
    """However heavy and short, an accent is no dot: it is one thin stroke, higher on its own side."""
    trace = Trace(name, char)
    assert not trace.lone
    (stroke,) = trace.thin
    first, last = sorted((stroke[0], stroke[-1]), key=lambda point: point.real)
    assert (last.imag - first.imag) * lean > 0.3
    assert abs(last - first) > trace.pens.dot_mm * 1.5
