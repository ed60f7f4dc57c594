"""Forms of a set line: solid, dotted, dashed, faint, hollow and blank.

Millimetres, y down, baseline 0. Any run of letters may take another form. Where dots stand is worked out in ``dots``.
"""

from __future__ import annotations

from collections.abc import Hashable, Iterable, Sequence
from enum import StrEnum
from functools import cached_property
from itertools import groupby

from namewright.geometry import boxes
from namewright.geometry.boxes import Box
from namewright.geometry.points import Point
from namewright.geometry.segments import Cubic
from namewright.letters.strokes import GridPoint, Stroke
from namewright.lines import known_dots
from namewright.lines.dots import dots
from namewright.lines.ink import (
    BLACK,
    DARK,
    FAINT,
    PALE,
    WHITE,
    Fragment,
    Ink,
    Piece,
    Shape,
    Style,
    dot_fragment,
    dots_on_grid,
    on_grid,
    outline_fragment,
    stroke_fragment,
)
from namewright.lines.ruling import Ruling
from namewright.lines.runs import unretraced_runs
from namewright.lines.setting import InkLetter, SetLetter, SetLine, pen_width_mm
from namewright.named_tuples import NamedTuple
from namewright.store import LETTERS, Store

_WIDE = 2.0  # pitches from dot to dot in the wide form; dots at the extremes keep a bowl round
_DOTTED_MARK = 6.5  # pitches: a shorter mark over or under a letter is a thin stroke in a trace
THIN = 0.6  # of a dot: that stroke's width
_SPARSE = 4.5  # pitches an x-height has: under this a and e cannot be told by dots alone, and a pale line joins them
_PALE_LINE = 0.5  # of a dot: that line's width
_ARC = 0.5523  # of the radius: the handle of a quarter circle drawn as one cubic
LONE_DOT = 1.5  # a lone dot (on i and j, in ä) is inked so much wider than the pen or the dots of a trace
TEXT_PEN = 0.17  # of the x-height: the pen of running text, so that a caption stands out from the guide lines
TEXT_DOT = 0.28  # of the x-height: a full stop or the dot of an i in running text, 0.5 mm in a caption
_Fragments = dict[str, Fragment | None]  # of one letter, by kind; None where it has nothing of a kind


class Form(StrEnum):
    """How the letters of a line, or of a run in it, are drawn."""

    SOLID = "solid"
    DOTTED = "dotted"
    WIDE = "wide-dots"
    STARTS = "start-dots"
    DASHED = "dashed"
    FAINT = "faint"
    HOLLOW = "hollow"
    BLANK = "blank"


class Pens(NamedTuple):
    """The pens for one ruling, in mm: widths of the model and of a dot, and the pitch of the dots."""

    model_mm: float
    dot_mm: float
    pitch_mm: float

    @property
    def start_mm(self) -> float:
        """Return the outside width of the ring where a stroke starts; a wide pen does not swell it without end."""
        return min(1.7 * self.model_mm, self.model_mm + 1.2)

    @property
    def start_hole_mm(self) -> float:
        """Return the width of the white in that ring."""
        return 0.95 * self.model_mm

    @property
    def channel_mm(self) -> float:
        """Return the inside width of a hollow letter: a pencil's width, wider on tall lines."""
        return 2.2 * self.model_mm

    @property
    def mark_channel_mm(self) -> float:
        """Return the inside width of a hollow letter's marks: narrower, so that two of them do not run together."""
        return self.model_mm

    @property
    def faint_mm(self) -> float:
        """Return the width of the faint form: plainly heavier than the guide lines, whose grey is much the same."""
        return max(0.8 * self.model_mm, 0.75)

    @property
    def outline_mm(self) -> float:
        """Return the line width of a hollow letter's outline."""
        return max(0.2, 0.3 * self.model_mm)


def pens_for(ruling: Ruling) -> Pens:
    """Return the pens that suit a ruling; found by trial on paper sizes from 2 to 40 mm of x-height."""
    own = ruling.inked
    dot = own.dot_mm if own.dot_mm is not None else min(max(0.09 * ruling.x_height_mm, 0.35), 1.6)
    return Pens(pen_width_mm(ruling), dot, own.pitch_mm if own.pitch_mm is not None else 2.1 * dot)


def thin_marks(letter: InkLetter, pitch_mm: float) -> tuple[Stroke, ...]:
    """Return the strokes of a letter's marks that are too short to be dotted: a few dots do not show what they are."""
    return tuple(stroke for stroke in letter.mark_strokes
                 if not stroke.is_dot and stroke.length() < _DOTTED_MARK * pitch_mm)


def trace_dots(letter: InkLetter, pitch_mm: float) -> tuple[Point, ...]:
    """Return the dots of a letter's trace, its short marks left out (see ``thin_marks``).

    Marks are dotted after their letter, so that n has the same dots in ñ and a ring the same over a and A.
    """
    thin, marks = thin_marks(letter, pitch_mm), letter.mark_strokes
    base = dots(letter.strokes[:len(letter.strokes) - len(marks)], pitch_mm)
    return base + dots([stroke for stroke in marks if stroke not in thin], pitch_mm, base)


class Inker:
    """Letters of one ruling turned into fragments, by letter and then by kind, each once.

    Like letters on a ruling it belongs to one run and grows only with the number of different letters. The dots of
    letters of ``usual`` forms may be known beforehand.
    """

    def __init__(self, ruling: Ruling, pens: Pens, *, usual: bool = False) -> None:
        self.ruling, self.pens, self.usual = ruling, pens, usual
        self._fragments: Store[tuple[str, Hashable], _Fragments] = Store(LETTERS)
        self._letters: Store[tuple[str, Hashable], Fragment] = Store(LETTERS)
        self._boxes: Store[tuple[str, Hashable], Box] = Store(LETTERS)
        self._styles: dict[Form, tuple[tuple[Style, str], ...]] = {}

    def ink(self, line: SetLine, forms: Form | Sequence[Form], x: float = 0.0, y: float = 0.0) -> tuple[Ink, ...]:
        """Return a line inked in one form, or letter by letter in a form each (one for every set letter).

        The line's own origin comes to (``x``, ``y``). Raises ValueError where the counts differ.
        """
        each = [forms] * len(line.letters) if isinstance(forms, Form) else list(forms)
        if len(each) != len(line.letters):
            raise ValueError(f"{len(each)} forms for {len(line.letters)} letters")
        inks: list[Ink] = []
        for form, group in groupby(zip(line.letters, each, strict=True), key=lambda pair: pair[1]):
            letters = [(placed.x, placed.letter, self._of(placed.letter)) for placed, _ in group]
            layers = self._outline_layers(form) if letters[0][1].outline else self._pen_layers(form)
            shapes = {kind: self._shape(letters, kind) for kind in dict.fromkeys([kind for _, kind in layers])}
            inks += [Ink(style, shape, x, y) for style, kind in layers if (shape := shapes[kind])]
        return tuple(inks)

    def _shape(self, letters: Iterable[tuple[float, InkLetter, _Fragments]], kind: str) -> Shape | None:
        pieces = [Piece(x, 0.0, fragment) for x, letter, known in letters
                  if (fragment := self._fragment(letter, kind, known)) is not None]
        return Shape(pieces) if pieces else None

    def letter(self, letter: InkLetter) -> Fragment:
        """Return a letter as one fragment for the pen of running text; a dot is a small ring that the pen fills."""
        return self._letters.get((letter.cluster, letter.shape), lambda: stroke_fragment(
            ring(stroke.start, self._dot_mm) if stroke.is_dot else stroke for stroke in letter.strokes))

    def letter_box(self, letter: InkLetter) -> Box:
        """Return the box of that fragment, which need not be drawn for it."""
        return self._boxes.get((letter.cluster, letter.shape), lambda: boxes.joined([letter.bounds, *(
            ring(stroke.start, self._dot_mm).bounds() for stroke in letter.strokes if stroke.is_dot)]))

    @property
    def _dot_mm(self) -> float:
        """Return the radius of the ring that is drawn for a dot in running text."""
        return (TEXT_DOT - TEXT_PEN) / 2 * self.ruling.x_height_mm

    def _pen_layers(self, form: Form) -> tuple[tuple[Style, str], ...]:
        if form not in self._styles:
            self._styles[form] = self._layers(form)
        return self._styles[form]

    def _layers(self, form: Form) -> tuple[tuple[Style, str], ...]:
        """Return the styles of a form, undermost first, each with the kind of fragment it inks.

        A lone dot (on i and j, in ä) is inked wider than the pen, as a child presses it, and wider than the dots of
        a trace, or i would be a short l.
        """
        pens = self.pens
        wide, narrow = (channel + 2 * pens.outline_mm for channel in (pens.channel_mm, pens.mark_channel_mm))
        sparse = self.ruling.x_height_mm < _SPARSE * pens.pitch_mm
        pale = ((Style(_PALE_LINE * pens.dot_mm, PALE), "strokes"),) if sparse else ()
        mark, point = Style(THIN * pens.dot_mm, DARK), (Style(LONE_DOT * pens.dot_mm, DARK), "points")
        layers: dict[Form, tuple[tuple[Style, str], ...]] = {
            Form.SOLID: ((Style(pens.model_mm), "strokes"), (Style(LONE_DOT * pens.model_mm), "points")),
            Form.DOTTED: (*pale, (Style(pens.dot_mm, DARK), "dots"), (mark, "thin"), point),
            Form.WIDE: (*pale, (Style(pens.dot_mm, DARK), "wide"), (mark, "wide thin"), point),
            Form.STARTS: ((Style(pens.start_mm, DARK), "starts"), (Style(pens.start_hole_mm, WHITE), "starts")),
            Form.DASHED: ((Style(0.6 * pens.model_mm, DARK, (2.2 * pens.dot_mm, 2.0 * pens.dot_mm)), "runs"),
                          (Style(1.2 * pens.model_mm, DARK), "points")),
            Form.FAINT: ((Style(pens.faint_mm, FAINT), "strokes"), (Style(LONE_DOT * pens.faint_mm, FAINT), "points")),
            Form.HOLLOW: ((Style(wide, BLACK), "base"), (Style(narrow, BLACK), "marks"), (Style(wide, BLACK), "points"),
                          (Style(pens.channel_mm, WHITE), "base"), (Style(pens.mark_channel_mm, WHITE), "marks"),
                          (Style(pens.channel_mm, WHITE), "points")),
            Form.BLANK: (),
        }
        return layers[form]

    def _outline_layers(self, form: Form) -> tuple[tuple[Style, str], ...]:
        """Return the styles of a form for letters that have an outline: filled, not drawn with a pen.

        A hollow letter is outlined on its outside, under its own white, so that overlapping contours never show.
        """
        outside = 2 * self.pens.outline_mm
        layers: dict[Form, tuple[tuple[Style, str], ...]] = {
            Form.SOLID: ((Style(0.0, BLACK, fill=BLACK), "outline"),),
            Form.FAINT: ((Style(0.0, FAINT, fill=FAINT), "outline"),),
            Form.HOLLOW: ((Style(outside, BLACK, fill=BLACK), "outline"), (Style(0.0, WHITE, fill=WHITE), "outline")),
        }
        return layers.get(form) or self._pen_layers(form)

    def _of(self, letter: InkLetter) -> _Fragments:
        return self._fragments.get((letter.cluster, letter.shape), dict)

    def _fragment(self, letter: InkLetter, kind: str, known: _Fragments) -> Fragment | None:
        if kind not in known:
            known[kind] = self._make(letter, kind)
        return known[kind]

    def _dots(self, letter: InkLetter, pitch_mm: float) -> list[GridPoint]:
        known = self.usual and not letter.outline and known_dots.rows(self.ruling, pitch_mm).get(letter.cluster)
        return known_dots.dots(known) if known else on_grid(trace_dots(letter, pitch_mm))

    def _make(self, letter: InkLetter, kind: str) -> Fragment | None:
        if kind == "outline":
            return outline_fragment(letter.outline)
        if kind in ("dots", "wide"):
            points = self._dots(letter, self.pens.pitch_mm * (_WIDE if kind == "wide" else 1.0))
            return dots_on_grid(points) if points else None
        if kind == "starts":
            return dot_fragment(stroke.start for stroke in letter.strokes)
        if kind == "points":
            lone = [stroke.start for stroke in letter.strokes if stroke.is_dot]
            return dot_fragment(lone) if lone else None
        if kind in ("thin", "wide thin"):
            marks = thin_marks(letter, self.pens.pitch_mm * (_WIDE if kind == "wide thin" else 1.0))
            return stroke_fragment(marks) if marks else None
        of_kind = {"base": letter.base_strokes, "marks": letter.mark_strokes}.get(kind, letter.strokes)
        drawn = [stroke for stroke in of_kind if not stroke.is_dot]
        if kind == "runs":
            drawn = [Stroke(run) for stroke in drawn for run in unretraced_runs(stroke, letter.strokes)]
        return stroke_fragment(drawn) if drawn else None


class Written(Shape):
    """Letters of running text. A PDF has them as a font, so that they are drawn only where somebody asks for pieces."""

    def __init__(self, letters: Sequence[SetLetter], inker: Inker) -> None:
        self._letters, self._inker = letters, inker
        self.box = boxes.joined(self.boxes)

    @cached_property
    def pieces(self) -> tuple[Piece, ...]:
        """Return the letters as they are drawn."""
        return tuple([Piece(x, 0.0, self._inker.letter(letter)) for x, letter in self._letters])

    @cached_property
    def xs(self) -> Sequence[float]:
        """Return the x of each letter."""
        return [x for x, _ in self._letters]

    @cached_property
    def boxes(self) -> Sequence[Box]:
        """Return the box of each letter's centrelines."""
        return [boxes.shifted(self._inker.letter_box(letter), x, 0.0) for x, letter in self._letters]


def ring(centre: Point, radius: float) -> Stroke:
    """Return a round stroke about a point, of four quarters."""
    handle = _ARC * radius
    x, y = centre
    right, below, left, above = (x + radius, y), (x, y + radius), (x - radius, y), (x, y - radius)
    return Stroke((
        Cubic(right, (x + radius, y + handle), (x + handle, y + radius), below),
        Cubic(below, (x - handle, y + radius), (x - radius, y + handle), left),
        Cubic(left, (x - radius, y - handle), (x - handle, y - radius), above),
        Cubic(above, (x + handle, y - radius), (x + radius, y - handle), right)))
