"""Names set in a school's own font: HarfBuzz shapes them, the ruling's x-height sizes them.

The font is scaled as a whole so that its x-height meets the midline. It is never stretched zone by zone as our own
letters are: a letterform is the school's to decide, and one that is taller or flatter than in the school's books is
another letterform. How far capitals and tall letters then are from the top line is told (``LineUp``). Spacing and
kerning are the font's; only ``letter_spacing_mm`` widens it, and nothing tightens it. Ligatures are off, since each
letter is taught by itself; joins that a font makes by other means stay.
"""

from __future__ import annotations

import itertools
from collections import Counter
from collections.abc import Iterable, Iterator
from dataclasses import dataclass, field
from typing import Any

import unicodedata2

from namewright.geometry import boxes
from namewright.geometry.boxes import Box
from namewright.letters.alphabet import MissingLetters, described
from namewright.letters.strokes import Stroke
from namewright.lines.ruling import LETTER_UNITS, MAX_MIDLINE, MIN_MIDLINE, Ruling
from namewright.lines.setting import SPACES, InkLetter, SetLetter, SetLine, pen_width_mm
from namewright.message import message
from namewright.named_tuples import NamedTuple
from namewright.names.clusters import clusters
from namewright.schoolfont import extra
from namewright.schoolfont.centreline import centrelines
from namewright.schoolfont.contours import Contour, encloses, glyph_contours
from namewright.schoolfont.reading import SchoolFont
from namewright.store import LETTERS, Store

_FEATURES = {"kern": True, "mark": True, "mkmk": True, "liga": False, "clig": False, "dlig": False}
_JOINER = "\u034f"  # combining grapheme joiner
_MAX_SEGMENTS = 2000  # of one letter's outline: more is a picture, not a letter
_DOTTED = "ijɨʝ"  # letters with a dot that a mark above takes the place of (Unicode: Soft_Dotted)
_DOT_MARKS = "\u0307\u0308\u0323\u0324"  # dot above, diaeresis, dot below, two dots below
_DOT_SIGNS = ".:;!?…·¡¿"
_ABOVE = 230  # Unicode's canonical combining class of marks that stand above
_MAX_OUTLINE = 100 * LETTER_UNITS
_LARGEST = (-6 * LETTER_UNITS, -2 * LETTER_UNITS, 6 * LETTER_UNITS, 4 * LETTER_UNITS)  # of one letter about its origin

Shape = tuple[tuple[int, int, int], ...]  # the glyphs of one letter: glyph id and offsets in font units


class NotInFont(MissingLetters):
    """A name that a school's font cannot show; ``characters`` are those at fault."""

    def __init__(self, key: str, font: SchoolFont, characters: Iterable[str]) -> None:
        found = tuple(characters)
        super().__init__(found, message(key, font=font.name, characters=tuple(map(described, found))))


@dataclass(frozen=True, slots=True)
class Shaped:
    """One letter as shaped: its text, its glyphs about its own origin, and its advance in font units.

    ``loose`` tells that the font gave no place to one of its marks.
    """

    cluster: str
    shape: Shape
    advance: int
    loose: bool = False


def shaped(font: SchoolFont, text: str) -> tuple[Shaped, ...]:
    """Return a text shaped, letter by letter, spaces among them.

    Raises NotInFont for what the font lacks, and for names written from right to left, which our pages cannot hold.
    """
    text = unicodedata2.normalize("NFC", text)
    _refuse_missing(font, text)
    letters = _shape(font, text)
    loose = {letter.cluster for letter in letters if letter.loose}
    if loose:
        letters = _shape(font, "".join(_parted(one) if one in loose else one for one in clusters(text)))
    return letters


def _parted(cluster: str) -> str:
    """Return a base and its marks one by one, held apart by a joiner that is not seen (U+034F).

    Many fonts know where marks go on E but not on Ẹ, and a shaper would always join E and the dot below again.
    """
    base, *marks = unicodedata2.normalize("NFD", cluster)
    return "".join([base, _JOINER, *marks])


def _shape(font: SchoolFont, text: str) -> tuple[Shaped, ...]:
    hb = extra("uharfbuzz")
    buffer = hb.Buffer()
    buffer.add_codepoints([ord(char) for char in text])
    buffer.guess_segment_properties()
    buffer.language = "und"  # a guess would follow the machine's own language
    if buffer.direction != "ltr":
        raise NotInFont("font.right_to_left", font, text)
    hb.shape(font.engine, buffer, _FEATURES)
    letters = tuple(_letters(buffer, text)) if buffer.glyph_infos else ()
    _refuse_lost(font, letters or (Shaped(text, (), 0),))
    return letters


def _refuse_lost(font: SchoolFont, letters: Iterable[Shaped]) -> None:
    """Refuse a name of which the font’s own substitutions have made a letter disappear, or several of one.

    A shaper counts a lost letter to its neighbour, which is drawn as it would be alone; a ligature has another glyph.
    Signs beside a letter, such as strokes that join, are the font’s to add.
    """
    for letter in letters:
        parts = clusters(letter.cluster)
        glyphs = {glyph for glyph, _, _ in letter.shape}
        lost = tuple(part for part in parts if font.glyph(part[0]) not in glyphs)
        if not glyphs or (len(letter.shape) < len(parts) and 0 < len(lost) < len(parts)):
            raise NotInFont("font.blank", font, lost or parts)
        drawn, written = Counter(glyph for glyph, _, _ in letter.shape), Counter(font.glyph(part[0]) for part in parts)
        if repeated := tuple(part for part in parts if drawn[font.glyph(part[0])] > written[font.glyph(part[0])]):
            raise NotInFont("font.repeated", font, repeated)


def _refuse_missing(font: SchoolFont, text: str) -> None:
    lost = tuple(dict.fromkeys(
        char for char in text if char not in SPACES and not font.glyph(char)
        and not all(font.glyph(part) for part in unicodedata2.normalize("NFD", char))))
    if lost:
        raise NotInFont("font.missing", font, lost)


def _letters(buffer: Any, text: str) -> Iterator[Shaped]:
    """Yield one letter for each cluster of HarfBuzz's: a base with its marks."""
    glyphs = list(zip(buffer.glyph_infos, buffer.glyph_positions, strict=True))
    starts = sorted({info.cluster for info, _ in glyphs})
    for start, end in zip(starts, [*starts[1:], len(text)], strict=True):
        pen, loose = 0, False
        shape: list[tuple[int, int, int]] = []
        for info, position in glyphs:
            if info.cluster == start:
                loose |= bool(shape) and not (position.x_offset or position.y_offset)
                shape.append((info.codepoint, pen + position.x_offset, position.y_offset))
                pen += position.x_advance
        cluster = unicodedata2.normalize("NFC", text[start:end].replace(_JOINER, ""))
        yield Shaped(cluster, tuple(shape), pen, loose)


@dataclass(frozen=True, slots=True)
class LineUp:
    """How far capitals reach over the top line on a ruling, in mm; negative: they end below it.

    ``share`` is where a midline would stand, in line heights, for capitals to reach the top line.
    """

    capitals_mm: float
    share: float


class Drawing(NamedTuple):
    """A letter in letter units, y up: its contours, its centreline, and how many strokes at the end are its marks."""

    contours: tuple[Contour, ...]
    strokes: tuple[Stroke, ...]
    marks: int


@dataclass
class Lettering:
    """The letters of one font, each outlined and centred once in letter units, for every ruling of a run."""

    font: SchoolFont
    _drawn: Store[tuple[str, Shape], Drawing] = field(default_factory=lambda: Store(LETTERS))

    @property
    def name(self) -> str:
        """Return the font's name for a reader."""
        return self.font.name

    def ruled(self, ruling: Ruling, letter_spacing_mm: float = 0.0) -> RuledFont:
        """Return the font's letters on a ruling."""
        return RuledFont(self, ruling, letter_spacing_mm)

    def own_lines(self, ruling: Ruling) -> Ruling:
        """Return a ruling with the top line at the font's own capitals; the ruling as it is for a font without any."""
        share = self.font.measures.x_height / self.font.measures.cap_height
        if not MIN_MIDLINE <= share <= MAX_MIDLINE:
            return ruling
        return ruling._replace(name="own", ascender_mm=ruling.x_height_mm * (1 / share - 1))

    def line_up(self, ruling: Ruling) -> LineUp:
        """Return how the font's heights meet a ruling's lines."""
        measures = self.font.measures
        to_mm = ruling.x_height_mm / measures.x_height
        return LineUp(measures.cap_height * to_mm - ruling.line_height_mm, measures.x_height / measures.cap_height)

    def drawn(self, letter: Shaped) -> Drawing:
        """Return a letter's contours and centreline.

        Raises NotInFont for one without an outline, or with one too intricate or too large to be a letter.
        """
        return self._drawn.get((letter.cluster, letter.shape), lambda: self._draw(letter))

    def _draw(self, letter: Shaped) -> Drawing:
        contours = tuple(self._contours(letter))
        if not any(encloses(contour) for contour in contours):
            raise NotInFont("font.blank", self.font, letter.cluster)
        if not boxes.holds(_LARGEST, boxes.joined(contour.bounds() for contour in contours)):
            raise NotInFont("font.far", self.font, letter.cluster)
        parts = centrelines(contours, dotted=_has_dots(letter.cluster))
        marks = sum(map(len, parts[1:])) if len(unicodedata2.normalize("NFD", letter.cluster)) > 1 else 0
        return Drawing(contours, tuple(itertools.chain.from_iterable(parts)), marks)

    def _contours(self, letter: Shaped) -> Iterator[Contour]:
        scale = LETTER_UNITS / self.font.measures.x_height
        segments, length = 0, 0.0
        for glyph, dx, dy in letter.shape:
            for contour in glyph_contours(self.font.engine, glyph):
                segments += len(contour.segments)
                if segments <= _MAX_SEGMENTS:
                    length += scale * contour.length(1.0)
                if segments > _MAX_SEGMENTS or length > _MAX_OUTLINE:
                    raise NotInFont("font.intricate", self.font, letter.cluster)
                yield contour.map(lambda at, dx=dx, dy=dy: ((at[0] + dx) * scale, (at[1] + dy) * scale))  # type: ignore[misc]


@dataclass
class RuledFont:
    """A school's letters on one ruling, each made once: it sets lines as our own letters on a ruling do."""

    lettering: Lettering
    ruling: Ruling
    letter_spacing_mm: float = 0.0
    _letters: Store[tuple[str, Shape], InkLetter] = field(default_factory=lambda: Store(LETTERS))

    def line(self, text: str, *, tightness: float = 0.0) -> SetLine:
        """Set a text on the ruling, in mm. ``tightness`` changes nothing: the font's own spacing is the least.

        Raises MissingLetters for a text that the font cannot show, ValueError for one without a letter.
        """
        placed: list[SetLetter] = []
        x = 0.0
        to_mm = self.ruling.x_height_mm / self.lettering.font.measures.x_height
        for letter in shaped(self.lettering.font, text):
            if letter.cluster.strip(SPACES):
                ink = self._letter(letter)
                x = x if placed else -ink.bounds[0]
                placed.append(SetLetter(x, ink))
            x += letter.advance * to_mm + self.letter_spacing_mm * (not letter.cluster.isspace())
        if not placed:
            raise ValueError("there is no letter to set")
        return SetLine(text, self.ruling, tuple(placed), boxes.joined(
            boxes.shifted(one.letter.bounds, one.x, 0.0) for one in placed))

    def _letter(self, letter: Shaped) -> InkLetter:
        return self._letters.get((letter.cluster, letter.shape), lambda: self._inked(letter))

    def _inked(self, letter: Shaped) -> InkLetter:
        scale = self.ruling.x_height_mm / LETTER_UNITS
        drawing = self.lettering.drawn(letter)
        contours, strokes = (tuple(stroke.map(lambda at: (at[0] * scale, -at[1] * scale)) for stroke in group)
                             for group in (drawing.contours, drawing.strokes))
        box = boxes.joined(contour.bounds() for contour in contours)
        return InkLetter(letter.cluster, strokes, _inset(box, pen_width_mm(self.ruling) / 2), contours, letter.shape,
                         drawing.marks)


def _has_dots(cluster: str) -> bool:
    """Say whether a letter is written with dots: i or j without a mark in the dot's place, marks of dots, a stop."""
    base, *marks = unicodedata2.normalize("NFD", cluster)
    if any(mark in _DOT_MARKS for mark in marks):
        return True
    return base in _DOT_SIGNS or (base in _DOTTED and not any(unicodedata2.combining(mark) == _ABOVE for mark in marks))


def _inset(box: Box, by: float) -> Box:
    """Return the box that a pen's width widens to ``box``: a set line counts its bounds from centrelines."""
    x0, y0, x1, y1 = box
    dx, dy = min(by, (x1 - x0) / 2), min(by, (y1 - y0) / 2)
    return (x0 + dx, y0 + dy, x1 - dx, y1 - dy)
