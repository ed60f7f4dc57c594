"""General typefaces beside the school's print, so that a name is known in more than one, as outlines.

They are that of the screens (Atkinson Hyperlegible Next) and, for letters that it lacks, Noto Serif; they stand
in ``fonts`` (SIL OFL 1.1; how they were cut: ``fonts/README.md``). A face is scaled by its x-height and never
written over, so it needs no spacing of ours; kerning is left out. Letters whose marks have no glyph of their own with
the letter are in neither. Millimetres, y down, as in ``lines``.
"""

from __future__ import annotations

import io
from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from functools import cache, lru_cache
from typing import Any

from fontTools.pens.basePen import BasePen
from fontTools.ttLib import TTFont

from namewright.geometry import boxes
from namewright.geometry.points import Point
from namewright.letters.alphabet import MissingLetters, font_bytes
from namewright.lines.ruling import Ruling
from namewright.lines.setting import SPACES, InkLetter, SetLetter, SetLine, pen_width_mm
from namewright.names.clusters import clusters
from namewright.schoolfont.contours import Contour, ContourPen

_FILES = {"Atkinson Hyperlegible Next": "AtkinsonHyperlegibleNext-Latin.ttf", "Noto Serif": "NotoSerif-Latin.ttf"}


@dataclass(frozen=True, slots=True)
class Face:
    """A typeface as it was read: glyph names by letter, and the units of its x-height."""

    name: str
    glyphs: Any
    names: Mapping[int, str]
    x_height: float

    def shows(self, text: str) -> bool:
        """Say whether every letter of an NFC text is in it."""
        return all(len(letter) == 1 and ord(letter) in self.names for letter in clusters(text))

    def line(self, text: str, ruling: Ruling) -> SetLine:
        """Set a text with small letters as high as the ruling's. Raises MissingLetters, ValueError for no letter."""
        lost = tuple(letter for letter in clusters(text) if not self.shows(letter))
        if lost:
            raise MissingLetters(lost)
        scale, x = ruling.x_height_mm / self.x_height, 0.0
        placed: list[SetLetter] = []
        for letter in clusters(text):
            name = self.names[ord(letter)]
            if letter not in SPACES:
                ink = _ink(self.name, letter, name, scale, pen_width_mm(ruling) / 2)
                placed.append(SetLetter(x, ink))
            x += float(self.glyphs[name].width) * scale
        if not placed:
            raise ValueError("there is no letter to set")
        bounds = boxes.joined(boxes.shifted(one.letter.bounds, one.x, 0.0) for one in placed)
        return SetLine(text, ruling, tuple(placed), bounds)


@cache
def other_face(name: str = next(iter(_FILES))) -> Face:
    """Read a typeface that is shipped, that of the screens where none is named; the same object each time."""
    font = TTFont(io.BytesIO(font_bytes(_FILES[name])))
    return Face(name, font.getGlyphSet(), font.getBestCmap(), float(font["OS/2"].sxHeight))


def face_for(texts: Iterable[str]) -> Face | None:
    """Return the first typeface that has every letter of these texts (NFC); None where none has."""
    all_of_them = "".join(texts)
    return next((face for face in map(other_face, _FILES) if face.shows(all_of_them)), None)


class _Pen(BasePen):  # type: ignore[misc]
    """Hands what fontTools draws, composites and implied points resolved, to the pen that keeps contours."""

    def __init__(self, glyphs: Any, sink: ContourPen) -> None:
        super().__init__(glyphs)
        self._moveTo, self._lineTo, self._curveToOne = sink.moveTo, sink.lineTo, sink.curveTo
        self._qCurveToOne, self._closePath, self._endPath = sink.qCurveTo, sink.closePath, sink.endPath


@cache
def _contours(face: str, name: str) -> tuple[Contour, ...]:
    sink, glyphs = ContourPen(), other_face(face).glyphs
    glyphs[name].draw(_Pen(glyphs, sink))
    sink.closePath()
    return tuple(sink.contours)


@lru_cache(maxsize=500)  # a letter comes again in the names of a page
def _ink(face: str, letter: str, name: str, scale: float, inset_mm: float) -> InkLetter:
    """Return a letter in mm; its box is that of a pen's centreline, as a set line counts it."""
    def place(point: Point) -> Point:
        return (point[0] * scale, -point[1] * scale)

    outline = tuple(contour.map(place) for contour in _contours(face, name))
    x0, y0, x1, y1 = boxes.joined(contour.bounds() for contour in outline)
    dx, dy = min(inset_mm, (x1 - x0) / 2), min(inset_mm, (y1 - y0) / 2)
    return InkLetter(letter, (), (x0 + dx, y0 + dy, x1 - dx, y1 - dy), outline, face)
