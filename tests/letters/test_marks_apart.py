"""Marks over and beside letters: apart from each other in every form, and in the order in which they are written."""

from __future__ import annotations

import unicodedata
from itertools import combinations

import pytest
import shapely

from namewright.geometry.segments import flatten
from namewright.letters.alphabet import Alphabet
from namewright.letters.strokes import Stroke
from namewright.lines.forms import LONE_DOT, pens_for
from namewright.lines.ruling import PRESETS, Ruling, preset
from namewright.lines.setting import ink_letter, pen_width_mm

VIETNAMESE = "ấầẩẫắằẳẵếềểễốồổỗớờởỡứừửữậặệộợự"
STACKED = VIETNAMESE + VIETNAMESE.upper() + "ǘǜǖḗḕṍṏȱǟǻ"


def covered(stroke: Stroke, pen_mm: float) -> shapely.Geometry:
    """Return what a pen covers along a stroke."""
    points = flatten(stroke.segments, 0.005)
    line = shapely.Point(points[0]) if stroke.is_dot else shapely.LineString(points)
    return line.buffer(pen_mm / 2)


@pytest.mark.parametrize("ruling", [ruling for ruling in PRESETS.values() if ruling.x_height_mm >= 4.0],
                         ids=lambda ruling: ruling.name)
def test_marks_of_one_letter_keep_apart(alphabet: Alphabet, ruling: Ruling) -> None:
    """At least one and a half pens of white between two marks, as shapely measures it, the pens counted.

    Under an x-height of 3.6 mm the pen is wider for its letters, and marks come nearer.
    """
    pen = pen_width_mm(ruling)
    for char in STACKED:
        letter = alphabet.letter(char)
        base, shapes = len(letter.base.strokes), []
        strokes = list(ink_letter(letter, ruling).strokes[base:])
        for mark in letter.marks:
            own = [strokes.pop(0) for _ in mark.glyph.strokes]
            shapes.append(shapely.union_all([covered(one, LONE_DOT * pen if one.is_dot else pen) for one in own]))
        assert all(one.distance(other) >= 1.49 * pen for one, other in combinations(shapes, 2)), char


@pytest.mark.parametrize("ruling", ["us-3/4", "de-4", "us-1-1/8"])
def test_hollow_marks_do_not_run_together(alphabet: Alphabet, ruling: str) -> None:
    """In hollow letters no mark touches another, and no acute, hat or háček touches its letter."""
    lines = preset(ruling)
    pens = pens_for(lines)
    for char in "ďľťőűếẵầổắČǘĽ":
        ink = ink_letter(alphabet.letter(char), lines)
        edges = 2 * pens.outline_mm
        parts = [shapely.union_all([covered(one, pens.channel_mm + edges) for one in ink.base_strokes])]
        parts += [covered(one, (pens.channel_mm if one.is_dot else pens.mark_channel_mm) + edges)
                  for one in ink.mark_strokes]
        assert len(parts) > 1
        assert all(one.distance(other) > 0.01 for one, other in combinations(parts, 2)), char


@pytest.mark.parametrize("char", "ậệộặẬỆ")
def test_a_letter_s_own_mark_is_written_before_its_tone(alphabet: Alphabet, char: str) -> None:
    """The hat or breve first, then the dot below, though Unicode's canonical order has the dot first."""
    assert unicodedata.normalize("NFD", char)[1] == "\u0323"
    assert [mark.glyph.attach for mark in alphabet.letter(char).marks] == ["top", "bottom"]


def test_other_dots_below_keep_their_order(alphabet: Alphabet) -> None:
    """In Yoruba the dot below is the letter's own, and the accent its tone."""
    for char in ("ẹ́", "ọ̀"):
        assert [mark.glyph.attach for mark in alphabet.letter(char).marks] == ["bottom", "top"]


@pytest.mark.parametrize(("char", "side"), [("ấ", 1), ("ế", 1), ("ẩ", 1), ("ầ", -1), ("Ề", -1)])
def test_a_tone_stands_beside_the_peak_of_the_hat(alphabet: Alphabet, char: str, side: int) -> None:
    """As in Vietnamese print: the acute and the hook at the right, the grave at the left; a letter is no higher for it
    than with the two on each other.
    """
    hat, tone = alphabet.letter(char).marks
    peak = max(hat.strokes()[0].segments[0].end[0], 0.0)
    middle = sum(tone.strokes()[0].bounds()[::2]) / 2
    assert (middle - peak) * side > 20
    assert tone.strokes()[0].bounds()[3] - hat.strokes()[0].bounds()[3] < 40
