"""Faces: how the strokes of a letter look in each of the fonts, exactly as ``lines.forms`` draws them on paper.

Letters come in millimetres on the font's ruling (y down, as on a page) and leave as shapes in font units (y up).
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass

from namewright.letters.strokes import Stroke
from namewright.lines.dots import MIN_DISTANCE
from namewright.lines.forms import LONE_DOT, THIN, Pens, pens_for, thin_marks, trace_dots
from namewright.lines.ruling import DEFAULT_RULING, Ruling, preset
from namewright.lines.setting import InkLetter
from namewright.truetype.characters import ZONE
from namewright.truetype.stroke_outlines import Shape, box, disc, union, widened, without

_LINE_WIDTH = 28  # guide lines: a quarter of the pen, so that they stay behind the letters
_MIDLINE_WIDTH = 20  # thinner and not dashed: dashes cannot meet from letter to letter


@dataclass(frozen=True, slots=True)
class DrawingSetup:
    """The ruling and pens that a font is drawn with; ``scale`` is font units to a millimetre."""

    ruling: Ruling
    pens: Pens
    scale: float

    def units(self, stroke: Stroke, shift: float) -> Stroke:
        """Return a stroke in font units, ``shift`` to the right."""
        return stroke.map(lambda point: (shift + point[0] * self.scale, -point[1] * self.scale))


def default_setup() -> DrawingSetup:
    """Return the setup of our fonts: the default ruling, whose zones are equal."""
    ruling = preset(DEFAULT_RULING)
    return DrawingSetup(ruling, pens_for(ruling), ZONE / ruling.x_height_mm)


Draw = Callable[[InkLetter, float, DrawingSetup], Shape]


@dataclass(frozen=True, slots=True)
class Face:
    """One font of the family. ``clearance_mm`` is how far strokes must keep off each other to be drawn one by one."""

    style: str
    draw: Draw
    clearance_mm: Callable[[Pens], float]
    ruled: bool = False


def _solid(letter: InkLetter, shift: float, setup: DrawingSetup) -> Shape:
    return _inked(letter.strokes, shift, setup, setup.pens.model_mm, LONE_DOT * setup.pens.model_mm)


def _hollow(letter: InkLetter, shift: float, setup: DrawingSetup) -> Shape:
    edges = 2 * setup.pens.outline_mm
    return without(_channels(letter, shift, setup, edges), _channels(letter, shift, setup, 0.0))


def _channels(letter: InkLetter, shift: float, setup: DrawingSetup, more_mm: float) -> Shape:
    """Return the insides of a hollow letter and its marks, each ``more_mm`` wider."""
    wide, narrow = setup.pens.channel_mm + more_mm, setup.pens.mark_channel_mm + more_mm
    return union([_inked(letter.base_strokes, shift, setup, wide, wide),
                  _inked(letter.mark_strokes, shift, setup, narrow, wide)])


def _hollow_mm(pens: Pens) -> float:
    return pens.channel_mm + 2 * pens.outline_mm


def _dotted(letter: InkLetter, shift: float, setup: DrawingSetup) -> Shape:
    width = setup.pens.dot_mm * setup.scale
    places = trace_dots(letter, setup.pens.pitch_mm)
    points = [setup.units(stroke, shift) for stroke in letter.strokes if stroke.is_dot]
    thin = [setup.units(stroke, shift) for stroke in thin_marks(letter, setup.pens.pitch_mm)]
    return union([*(disc((shift + x * setup.scale, -y * setup.scale), width) for x, y in places),
                  widened(thin, THIN * width), widened(points, LONE_DOT * width)])


def _inked(strokes: Sequence[Stroke], shift: float, setup: DrawingSetup, pen_mm: float, dot_mm: float) -> Shape:
    lines = [setup.units(stroke, shift) for stroke in strokes if not stroke.is_dot]
    points = [setup.units(stroke, shift) for stroke in strokes if stroke.is_dot]
    return union([widened(lines, pen_mm * setup.scale), widened(points, dot_mm * setup.scale)])


def guide_lines(x0: float, x1: float) -> Shape:
    """Return the top line, midline and baseline from x0 to x1."""
    lines = ((2 * ZONE, _LINE_WIDTH), (ZONE, _MIDLINE_WIDTH), (0, _LINE_WIDTH))
    return union(box(x0, y - width / 2, x1, y + width / 2) for y, width in lines)


FACES: tuple[Face, ...] = (
    Face("Solid", _solid, lambda pens: LONE_DOT * pens.model_mm),
    Face("Dotted", _dotted, lambda pens: max(pens.dot_mm, MIN_DISTANCE * pens.pitch_mm)),
    Face("Hollow", _hollow, _hollow_mm),
    Face("Solid On Lines", _solid, lambda pens: LONE_DOT * pens.model_mm, ruled=True),
)
