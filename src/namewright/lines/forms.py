"""Forms of a set line: solid, dotted, dashed, faint, hollow and blank.

Millimetres, y down, baseline 0. Any run of letters may take another form. Dots have a rhythm: evenly spaced
by arc length along each smooth run of a stroke, one at both ends and at each corner, the pitch adjusted to
the run; where strokes meet or retrace, dots coincide or keep their distance.
"""

from __future__ import annotations

import math
from collections.abc import Hashable, Iterable, Sequence
from dataclasses import dataclass, field
from enum import StrEnum
from itertools import groupby

from namewright.geometry import distances
from namewright.geometry.points import Point
from namewright.geometry.polylines import evenly
from namewright.geometry.segments import Line, Segment, flatten, length_of, smooth_runs
from namewright.letters.strokes import Stroke
from namewright.lines.ink import (
    BLACK,
    DARK,
    FAINT,
    WHITE,
    Fragment,
    Ink,
    Piece,
    Style,
    dot_fragment,
    outline_fragment,
    stroke_fragment,
)
from namewright.lines.ruling import Ruling
from namewright.lines.setting import InkLetter, SetLine, pen_width_mm
from namewright.store import LETTERS, Store

MIN_DISTANCE = 0.6  # of the pitch: nearer dots look like a clot
_COINCIDE_MM = 0.02
_FLAT_MM = 0.003
_WIDE = 1.35  # pitches from dot to dot in the wide form: 12 dots keep a bowl round
_MIDDLE = 1.2  # pitches from which a short run has a dot between its ends, so that a flick is not one stray dot
LONE_DOT = 1.5  # a lone dot (on i and j, in ä) is inked so much wider than the pen or the dots of a trace
_DOTTED = {"dots", "wide", "starts"}


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


@dataclass(frozen=True, slots=True)
class Pens:
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
    def outline_mm(self) -> float:
        """Return the line width of a hollow letter's outline."""
        return max(0.25, 0.3 * self.model_mm)


def pens_for(ruling: Ruling) -> Pens:
    """Return the pens that suit a ruling; found by trial on paper sizes from 2 to 40 mm of x-height."""
    own = ruling.inked
    dot = own.dot_mm if own.dot_mm is not None else min(max(0.09 * ruling.x_height_mm, 0.45), 1.6)
    return Pens(pen_width_mm(ruling), dot, own.pitch_mm if own.pitch_mm is not None else 2.1 * dot)


def dots(strokes: Sequence[Stroke], pitch_mm: float) -> tuple[Point, ...]:
    """Return the dots of one letter's strokes, in mm, each at least 0.6 of the pitch from every other.

    The straightest runs are dotted first, so that stems stay complete and the curves give way where they meet.
    """
    runs = [run for stroke in strokes if not stroke.is_dot for run in _unretraced_runs(stroke, strokes)]
    runs.sort(key=_straightness, reverse=True)
    placed = [stroke.start for stroke in strokes if stroke.is_dot]
    for run in runs:
        pitches = length_of(run) / pitch_mm
        for point in evenly(flatten(run, _FLAT_MM), max(2 if pitches >= _MIDDLE else 1, round(pitches))):
            if all(math.dist(point, other) >= MIN_DISTANCE * pitch_mm for other in placed):
                placed.append(point)
    return tuple(placed)


def _straightness(run: Sequence[Segment]) -> float:
    """Return the straight share of a run's length, from 0 to 1 and in hundredths, so that equals keep their order."""
    return round(length_of(segment for segment in run if isinstance(segment, Line)) / length_of(run), 2)


def _unretraced_runs(stroke: Stroke, strokes: Sequence[Stroke]) -> Iterable[tuple[Segment, ...]]:
    """Return the smooth runs of a stroke without the lines in which the pencil goes over its own track."""
    tracks = [segment for other in strokes for segment in other.segments if isinstance(segment, Line)]
    for run in smooth_runs(stroke.segments):
        keep: list[Segment] = []
        for segment in run:
            if isinstance(segment, Line) and any(_retraces(segment, track, tracks) for track in tracks):
                if keep:
                    yield tuple(keep)
                keep = []
            else:
                keep.append(segment)
        if keep:
            yield tuple(keep)


def _retraces(line: Line, track: Line, tracks: Sequence[Line]) -> bool:
    """Whether a line lies wholly on a longer one (or on an equal one that came before it)."""
    if line is track:
        return False
    longer = track.length() - line.length()
    earlier = next(i for i, one in enumerate(tracks) if one is track) < next(
        i for i, one in enumerate(tracks) if one is line)
    if longer < -_COINCIDE_MM or (abs(longer) <= _COINCIDE_MM and not earlier):
        return False
    return all(distances.to_segment(point, *track) < _COINCIDE_MM for point in line)


@dataclass
class Inker:
    """Letters of one ruling turned into fragments, each letter and form once.

    Like letters on a ruling it belongs to one run and grows only with the number of different letters.
    """

    ruling: Ruling
    pens: Pens
    _fragments: Store[tuple[str, Hashable, str], Fragment | None] = field(default_factory=lambda: Store(LETTERS))

    def ink(self, line: SetLine, forms: Form | Sequence[Form]) -> tuple[Ink, ...]:
        """Return a line inked in one form, or letter by letter in a form each (one for every set letter).

        Pieces are relative to the line's own origin. Raises ValueError where the counts differ.
        """
        each = [forms] * len(line.letters) if isinstance(forms, Form) else list(forms)
        if len(each) != len(line.letters):
            raise ValueError(f"{len(each)} forms for {len(line.letters)} letters")
        inks: list[Ink] = []
        for form, group in groupby(zip(line.letters, each, strict=True), key=lambda pair: pair[1]):
            letters = [placed for placed, _ in group]
            layers = self._outline_layers(form) if letters[0].letter.outline else self._layers(form)
            for style, kind in layers:
                pieces = tuple(Piece(placed.x, 0.0, fragment) for placed in letters
                               if (fragment := self._fragment(placed.letter, kind)) is not None)
                if kind in _DOTTED:  # a letter's dots recur from name to name: exporters draw them once
                    inks += [Ink(style, (piece,)) for piece in pieces]
                elif pieces:
                    inks.append(Ink(style, pieces))
        return tuple(inks)

    def letter(self, letter: InkLetter) -> Fragment:
        """Return a letter with its dots as one fragment for one pen, as running text is drawn."""
        return self._fragment(letter, "letter") or Fragment("", letter.bounds)

    def _layers(self, form: Form) -> tuple[tuple[Style, str], ...]:
        """Return the styles of a form, undermost first, each with the kind of fragment it inks.

        A lone dot (on i and j, in ä) is inked wider than the pen, as a child presses it, and wider than the dots of
        a trace, or i would be a short l.
        """
        pens = self.pens
        wide = pens.channel_mm + 2 * pens.outline_mm
        layers: dict[Form, tuple[tuple[Style, str], ...]] = {
            Form.SOLID: ((Style(pens.model_mm), "strokes"), (Style(LONE_DOT * pens.model_mm), "points")),
            Form.DOTTED: ((Style(pens.dot_mm, DARK), "dots"), (Style(LONE_DOT * pens.dot_mm, DARK), "points")),
            Form.WIDE: ((Style(pens.dot_mm, DARK), "wide"), (Style(LONE_DOT * pens.dot_mm, DARK), "points")),
            Form.STARTS: ((Style(pens.start_mm, DARK), "starts"), (Style(pens.start_hole_mm, WHITE), "starts")),
            Form.DASHED: ((Style(0.6 * pens.model_mm, DARK, (2.2 * pens.dot_mm, 2.0 * pens.dot_mm)), "runs"),
                          (Style(1.2 * pens.model_mm, DARK), "points")),
            Form.FAINT: ((Style(0.7 * pens.model_mm, FAINT), "strokes"),
                         (Style(1.1 * pens.model_mm, FAINT), "points")),
            Form.HOLLOW: ((Style(wide, BLACK), "strokes"), (Style(wide, BLACK), "points"),
                          (Style(pens.channel_mm, WHITE), "strokes"), (Style(pens.channel_mm, WHITE), "points")),
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
        return layers.get(form) or self._layers(form)

    def _fragment(self, letter: InkLetter, kind: str) -> Fragment | None:
        return self._fragments.get((letter.cluster, letter.shape, kind), lambda: self._make(letter, kind))

    def _make(self, letter: InkLetter, kind: str) -> Fragment | None:
        if kind == "outline":
            return outline_fragment(letter.outline)
        if kind in ("dots", "wide"):
            return dot_fragment(dots(letter.strokes, self.pens.pitch_mm * (_WIDE if kind == "wide" else 1.0)))
        if kind == "starts":
            return dot_fragment(stroke.start for stroke in letter.strokes)
        if kind == "points":
            points = [stroke.start for stroke in letter.strokes if stroke.is_dot]
            return dot_fragment(points) if points else None
        drawn = [stroke for stroke in letter.strokes if kind == "letter" or not stroke.is_dot]
        if kind == "runs":
            drawn = [Stroke(run) for stroke in drawn for run in _unretraced_runs(stroke, letter.strokes)]
        return stroke_fragment(drawn) if drawn else None
