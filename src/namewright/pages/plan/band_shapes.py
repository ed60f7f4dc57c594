"""Shapes that show how hard a letter or a name is: by outline, by the weight of the edge, and by colour.

No colour is needed to read them: a ring is easier, a box is in between, a dark box with its corners cut off and a
white letter is harder. The three fills lie far apart in lightness, so that grey print keeps them apart, too, and the
hues (blue, amber, dark wine) stay apart for readers who do not tell red from green. Millimetres, y down.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from namewright.geometry.points import Point
from namewright.letters.strokes import Stroke, polyline_stroke
from namewright.lines.forms import ring
from namewright.lines.ink import BLACK, WHITE, Ink, Piece, Style, stroke_fragment
from namewright.pages.typesetter import Typesetter
from namewright.practice.difficulty import Band

SHAPE_MM = 4.4  # side of the shape that a letter stands on
STEP_MM = 5.1  # from one such shape to the next


@dataclass(frozen=True, slots=True)
class ShapeStyle:
    """How a band is drawn: fill, edge and its width in mm, and the ink of a letter on it."""

    fill: str
    edge: str
    edge_mm: float
    letter: str


SHAPE_STYLES: Mapping[Band, ShapeStyle] = {
    Band.EASIER: ShapeStyle("#e8f3fc", "#1c5d99", 0.22, BLACK),
    Band.MIDDLE: ShapeStyle("#eab138", "#6b4a00", 0.4, BLACK),
    Band.HARDER: ShapeStyle("#4f1140", "#4f1140", 0.4, WHITE),
}


def letter_on_shape(setter: Typesetter, letter: str, band: Band, x: float, y: float) -> tuple[Ink, ...]:
    """Return one letter on its band's shape, ``SHAPE_MM`` wide, its left edge at ``x``, its middle at height ``y``."""
    ink = setter.text(letter, 1.5)
    x0, y0, x1, y1 = ink.bounds()
    shrink = min(1.0, 0.86 * SHAPE_MM / max(x1 - x0, y1 - y0))
    if shrink < 1.0:  # a letter with two marks is tall
        ink = setter.text(letter, round(1.5 * shrink, 2))
        x0, y0, x1, y1 = ink.bounds()
    inked = Ink(ink.style._replace(colour=SHAPE_STYLES[band].letter), ink.shape)
    return (band_shape(band, x + SHAPE_MM / 2, y, SHAPE_MM),
            inked.moved(x + SHAPE_MM / 2 - (x0 + x1) / 2, y - (y0 + y1) / 2))


def band_shape(band: Band, x: float, y: float, side: float) -> Ink:
    """Return a band's shape about (``x``, ``y``), ``side`` mm across, its edge within."""
    look = SHAPE_STYLES[band]
    half = (side - look.edge_mm) / 2
    outline = {Band.EASIER: _ring, Band.MIDDLE: _box, Band.HARDER: _cut_box}[band](half)
    return Ink.of(Style(look.edge_mm, look.edge, fill=look.fill), (Piece(x, y, stroke_fragment([outline])),))


def _ring(r: float) -> Stroke:
    return ring((0.0, 0.0), r)


def _box(r: float) -> Stroke:
    r *= 0.92  # a square looks larger than a ring of the same width
    return _polygon([(r, -r), (r, r), (-r, r), (-r, -r)])


def _cut_box(r: float) -> Stroke:
    c = 0.45 * r
    return _polygon([(r, -c), (r, c), (c, r), (-c, r), (-r, c), (-r, -c), (-c, -r), (c, -r)])


def _polygon(points: Sequence[Point]) -> Stroke:
    return polyline_stroke((*points, points[0]))


def formed_tick(x: float, y: float) -> Ink:
    """Return the small tick under a letter that has been formed, about (``x``, ``y``)."""
    tick = polyline_stroke([(-0.65, 0.0), (-0.2, 0.45), (0.65, -0.55)])
    return Ink.of(Style(0.3, BLACK), (Piece(x, y, stroke_fragment([tick])),))


def watch_arrowhead(x: float, y: float) -> Ink:
    """Return the small arrowhead that points left under a left-facing letter, about (``x``, ``y``)."""
    tip = _polygon([(0.7, -0.55), (-0.8, 0.0), (0.7, 0.55)])
    return Ink.of(Style(0.1, BLACK, fill=BLACK), (Piece(x, y, stroke_fragment([tip])),))
