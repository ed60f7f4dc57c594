"""Strokes widened to shapes, their areas measured by fontTools' AreaPen and known in closed form."""

from __future__ import annotations

import math

import pytest
from fontTools.pens.areaPen import AreaPen

from namewright.letters.alphabet import Alphabet
from namewright.letters.strokes import parse_stroke
from namewright.truetype.stroke_outlines import Shape, box, disc, union, widened, without


def area(shape: Shape) -> float:
    """Return the area with its sign: by fontTools positive anticlockwise."""
    pen = AreaPen()
    shape.draw(pen)
    return float(pen.value)


@pytest.mark.parametrize("width", [20.0, 112.0, 300.0])
def test_a_round_pen_covers_a_sausage(width: float) -> None:
    """A line of 1,000: a rectangle and half a disc at either end, outside clockwise as TrueType asks."""
    covered = area(widened([parse_stroke("M0 0 L600 800")], width))
    assert covered == pytest.approx(-(1000 * width + math.pi * width ** 2 / 4), rel=5e-3)


def test_a_touch_of_the_pen_is_a_disc() -> None:
    """A stroke of no length, and a disc by its middle, are the same circle."""
    dot = widened([parse_stroke("M10 20 L10 20")], 200.0)
    assert abs(area(dot)) == pytest.approx(math.pi * 100 ** 2, rel=5e-3)
    assert dot.bounds == pytest.approx((-90, -80, 110, 120), abs=1.0)
    assert disc((10, 20), 200.0).bounds == pytest.approx(dot.bounds)


def test_a_track_gone_over_twice_is_covered_once(alphabet: Alphabet) -> None:
    """Down and up again on one stem: as much ink as down alone; a bowl is not filled."""
    once, twice = (area(widened([parse_stroke(data)], 60.0)) for data in ("M0 0 V900", "M0 0 V900 V0"))
    assert twice == pytest.approx(once, rel=1e-6)
    bowl = [stroke.map(lambda point: (10 * point[0], 10 * point[1])) for stroke in alphabet.glyphs["o"].strokes]
    assert abs(area(widened(bowl, 100.0))) == pytest.approx(100 * bowl[0].length(), rel=5e-3)  # Pappus


def test_shapes_add_up_and_are_taken_away() -> None:
    """Two squares of 100 that share half: 150 together, 50 the one without the other (in hundreds)."""
    one, other = box(0, 0, 100, 100), box(50, 0, 150, 100)
    assert abs(area(union([one, other]))) == pytest.approx(15_000)
    assert abs(area(without(one, other))) == pytest.approx(5_000)
    assert without(one, other).bounds == (0, 0, 50, 100)
