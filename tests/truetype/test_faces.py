"""How the strokes of a letter look in each face: ink measured by fontTools' AreaPen."""

from __future__ import annotations

import math

import pytest
from fontTools.pens.areaPen import AreaPen

from namewright.letters.strokes import Stroke, parse_stroke
from namewright.lines.setting import InkLetter
from namewright.truetype.characters import ZONE
from namewright.truetype.faces import FACES, DrawingSetup, default_setup, guide_lines
from namewright.truetype.stroke_outlines import Shape

SETUP = default_setup()
LONG = SETUP.ruling.x_height_mm * 2  # a stem from baseline to top line, y down
STEM = parse_stroke(f"M0 0 V{-LONG}")


def area(shape: Shape) -> float:
    pen = AreaPen()
    shape.draw(pen)
    return abs(float(pen.value))


def drawn(style: str, *strokes: Stroke, setup: DrawingSetup = SETUP) -> Shape:
    face = next(face for face in FACES if face.style == style)
    bounds = (0.0, -LONG, 0.0, 0.0)
    return face.draw(InkLetter("l", strokes, bounds), 500.0, setup)


def test_a_stem_stands_on_the_zones_of_the_font() -> None:
    """Two zones high and turned upright, moved to the right by the letter's shift, its pen's half width beyond."""
    half = SETUP.pens.model_mm * SETUP.scale / 2
    assert drawn("Solid", STEM).bounds == pytest.approx((500 - half, -half, 500 + half, 2 * ZONE + half), abs=1.0)


def test_a_hollow_stem_is_two_pens_apart() -> None:
    """What a pen of channel and two outlines covers, less what the channel covers."""
    pens, scale = SETUP.pens, SETUP.scale
    outside, inside = (pens.channel_mm + 2 * pens.outline_mm) * scale, pens.channel_mm * scale
    sausage = [2 * ZONE * width + math.pi * width ** 2 / 4 for width in (outside, inside)]
    assert area(drawn("Hollow", STEM)) == pytest.approx(sausage[0] - sausage[1], rel=1e-2)


def test_a_dotted_stem_is_whole_dots_at_the_pitch() -> None:
    """As many discs as steps of about a pitch along it, and one more; the first at its end."""
    pens, scale = SETUP.pens, SETUP.scale
    disc = math.pi * (pens.dot_mm * scale) ** 2 / 4
    count = area(drawn("Dotted", STEM)) / disc
    assert count == pytest.approx(round(count), rel=1e-2)
    assert LONG / pens.pitch_mm / 1.15 <= round(count) - 1 <= LONG / pens.pitch_mm / 0.85


def test_a_lone_dot_is_half_as_wide_again() -> None:
    """The dot of an i is drawn wider than the pen of a line."""
    wide = area(drawn("Solid", parse_stroke("M1 -1 L1 -1")))
    assert wide == pytest.approx(math.pi * (1.5 * SETUP.pens.model_mm * SETUP.scale) ** 2 / 4, rel=1e-2)


def test_guide_lines_stand_on_the_zones() -> None:
    """Three bars over the whole width, the lines of the middle at 0, 1 and 2 zones."""
    lines = guide_lines(0, 700)
    assert lines.bounds == (0, -14, 700, 2 * ZONE + 14)
    assert area(lines) == pytest.approx(700 * (28 + 20 + 28))
