"""Rulings: the measured lines a name stands on, and where a letter's zones fall between them.

Millimetres throughout. Heights are counted upwards from the baseline, depths downwards; both are positive.
Where those of a preset come from is told by ``told_of``. They are "like" a ruling in use: no conformity with any
standard is claimed. Out of scope: where on a page a row stands (``pages``).
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from enum import StrEnum
from functools import lru_cache
from types import MappingProxyType

from namewright.message import Message, Problem, message
from namewright.named_tuples import NamedTuple
from namewright.units import MAX_LINE_MM, MIN_LINE_MM, MM_PER_INCH, number

MIN_MIDLINE = 0.3  # of the line height
MAX_MIDLINE = 0.8
_BAR_FROM, _BAR_TO = 0.45, 0.55  # of the line height: where a midline stands near enough to a capital's bar
LETTER_UNITS = 100.0  # letter units to a zone, see ``letters.alphabet``


class GuideLine(StrEnum):
    """The four guide lines of a row, by the class names they carry in an SVG."""

    TOP = "topline"
    MID = "midline"
    BASE = "baseline"
    DESCENDER = "descender-line"


ALL_LINES = frozenset(GuideLine)


class Inking(NamedTuple):
    """How heavily a ruling is printed and written on, where that differs from the usual.

    Widths and the pitch of dots in mm (None: the usual for the x-height); ``weight`` multiplies the guide
    lines; ``bold_baseline`` doubles the baseline again; ``shaded_band`` tints the zone of the small letters.
    """

    pen_mm: float | None = None
    dot_mm: float | None = None
    pitch_mm: float | None = None
    weight: float = 1.0
    bold_baseline: bool = False
    shaded_band: bool = False


class Ruling(NamedTuple):
    """One row's guide lines, and the space to the next row.

    ``ascender_mm`` is the zone over the midline, ``x_height_mm`` the zone between midline and baseline,
    ``descender_mm`` the depth below the baseline, ``gap_mm`` the white from there to the next row's top line.
    ``short_mm`` is how far d and t rise over the midline where a ruling grades heights, else None.
    ``bands_mm`` are the heights (negative below the baseline) of thin extra lines. ``lines`` are the guide
    lines that are printed.
    """

    name: str
    ascender_mm: float
    x_height_mm: float
    descender_mm: float
    gap_mm: float
    lines: frozenset[GuideLine]
    short_mm: float | None = None
    bands_mm: tuple[float, ...] = ()
    inked: Inking = Inking()

    @property
    def line_height_mm(self) -> float:
        """Return the height of the top line over the baseline."""
        return self.ascender_mm + self.x_height_mm

    @property
    def pitch_mm(self) -> float:
        """Return the distance from one baseline to the next, marks over capitals not counted."""
        return self.line_height_mm + self.descender_mm + self.gap_mm

    @property
    def written(self) -> str:
        """Return the heights that a letter is set by, in mm, and which lines are printed, as one line of text."""
        lines = "".join("x" if line in self.lines else "-" for line in GuideLine)
        return f"{self.ascender_mm} {self.x_height_mm} {self.descender_mm} {self.short_mm} {lines}"

    def height_of(self, line: GuideLine) -> float:
        """Return the height of a guide line over the baseline (negative below it)."""
        return {GuideLine.TOP: self.line_height_mm, GuideLine.MID: self.x_height_mm, GuideLine.BASE: 0.0,
                GuideLine.DESCENDER: -self.descender_mm}[line]

    def height_mm(self, units: float, *, one_piece: bool = False, short: bool = False,
                  bar: float | None = None) -> float:
        """Map a height in letter units to millimetres over the baseline.

        Small letters go zone by zone; ``one_piece`` letters stretch as one from baseline to top line. Below the
        baseline all use the descender zone; above the top line the x-height's scale, so that what stands
        there keeps its shape.
        """
        if units < 0:
            return units / LETTER_UNITS * self.descender_mm
        if units > 2 * LETTER_UNITS:
            return self.line_height_mm + (units / LETTER_UNITS - 2) * self.x_height_mm
        if one_piece:
            return self._height_in_one_piece(units, bar)
        if units <= LETTER_UNITS:
            return units / LETTER_UNITS * self.x_height_mm
        rise = self.ascender_mm if self.short_mm is None or not short else self.short_mm
        return self.x_height_mm + (units / LETTER_UNITS - 1) * rise

    def _height_in_one_piece(self, units: float, bar: float | None) -> float:
        """Map the height of a capital: from baseline to top line alike, but for a bar that is drawn onto the midline.

        A bar that misses a printed midline by a hair lets its dashes peek out beneath. Where the midline stands far
        from the middle, a capital keeps its own proportions.
        """
        share = units / (2 * LETTER_UNITS)
        middle = self.x_height_mm / self.line_height_mm
        if bar is None or GuideLine.MID not in self.lines or not _BAR_FROM <= middle <= _BAR_TO:
            return share * self.line_height_mm
        if units <= bar:
            return units / bar * self.x_height_mm
        return self.x_height_mm + (units - bar) / (2 * LETTER_UNITS - bar) * self.ascender_mm

    def scaled_to(self, line_height_mm: float) -> Ruling:
        """Return the same proportions with another line height.

        Raises Problem outside 4–80 mm.
        """
        check_line_height(line_height_mm)
        factor = line_height_mm / self.line_height_mm
        return self._replace(
            ascender_mm=self.ascender_mm * factor, x_height_mm=self.x_height_mm * factor,
            descender_mm=self.descender_mm * factor, gap_mm=self.gap_mm * factor,
            short_mm=None if self.short_mm is None else self.short_mm * factor,
            bands_mm=tuple(band * factor for band in self.bands_mm),
        )


def check_line_height(line_height_mm: float) -> None:
    """Raise Problem for a line height we cannot rule."""
    if not MIN_LINE_MM <= line_height_mm <= MAX_LINE_MM:
        raise Problem("lines.height", height=line_height_mm, least=MIN_LINE_MM, most=MAX_LINE_MM)


def custom_ruling(
    line_height_mm: float, *, midline: float = 0.5, descender_mm: float | None = None,
    gap_mm: float = 0.0, lines: Iterable[GuideLine] = ALL_LINES,
) -> Ruling:
    """Make a ruling from measures in mm; ``midline`` is the midline's share of the line height (0.3–0.8).

    The descender is as deep as the x-height is high unless it is given. Raises Problem for measures that
    cannot be ruled.
    """
    check_line_height(line_height_mm)
    if not MIN_MIDLINE <= midline <= MAX_MIDLINE:
        raise Problem("lines.midline", share=midline, least=MIN_MIDLINE, most=MAX_MIDLINE)
    x_height = line_height_mm * midline
    depth = x_height if descender_mm is None else descender_mm
    for key, value in (("lines.descender", depth), ("lines.gap", gap_mm)):
        if not 0 <= value <= MAX_LINE_MM:
            raise Problem(key, depth=value, most=MAX_LINE_MM)
    return Ruling("own", line_height_mm - x_height, x_height, depth, gap_mm, frozenset(lines))


@lru_cache(maxsize=200)  # each text asks for its own
def print_ruling(x_height_mm: float) -> Ruling:
    """Return the unseen ruling of running text, which nobody writes on: ascenders lower than on practice paper."""
    return Ruling("print", 0.75 * x_height_mm, x_height_mm, 0.7 * x_height_mm, 0.0, frozenset())


_FOUR = ALL_LINES
_WITH_SKIP = frozenset({GuideLine.TOP, GuideLine.MID, GuideLine.BASE})
_BODY = frozenset({GuideLine.MID, GuideLine.BASE})
_WIDE_GAP_MM = 6.0  # between rows of four lines half as much again as a zone is enough, and this at the most


def _thirds(name: str, zone: float) -> Ruling:
    """Three equal zones. The white between rows is as wide as a zone, or wider where zones are small.

    With less, the lowest line of a row and the top line of the next read as one double line; with no more than a small
    zone, rows of fine lines cannot be told apart.
    """
    return Ruling(name, zone, zone, zone, max(zone, min(1.5 * zone, _WIDE_GAP_MM)), _FOUR)


def _half_height(inches: float, written: str) -> Ruling:
    """Head line to base line ``inches``, midline halfway, and half of it again below as the skip space."""
    half = inches * MM_PER_INCH / 2
    return Ruling(f"us-{written}", half, half, half, 0.0, _WITH_SKIP)


def _graded(band: float) -> Ruling:
    """Four bands to a row of squares: x 1 band, d and t 2, the other ascenders and capitals 3, tails 2 below.

    A row takes two rows of squares (8 bands), so that tails and tall letters of neighbours never meet.
    """
    return Ruling(f"fr-{number(band)}", 2 * band, band, 2 * band, 3 * band, _FOUR, short_mm=band,
                  bands_mm=(2 * band, -band))


def _presets() -> Iterable[Ruling]:
    for zone in (6.0, 5.0, 4.0):
        yield _thirds(f"de-{number(zone)}", zone)
    for zone in (9.0, 6.0):
        yield _thirds(f"ch-{number(zone)}", zone)
    for total in (24, 18, 14, 12, 9, 8):
        yield _thirds(f"au-{total}", total / 3)
    for inches, written in ((1.125, "1-1/8"), (1.0, "1"), (0.875, "7/8"), (0.75, "3/4"),
                            (0.625, "5/8"), (0.5, "1/2"), (0.375, "3/8")):
        yield _half_height(inches, written)
    for band in (2.0, 2.5, 3.0):
        yield _graded(band)
    for body in (6.0, 5.0, 4.0):
        yield Ruling(f"uk-{number(body)}", (15.0 - body) / 2, body, (15.0 - body) / 2, 0.0, _BODY)
    for body in (5.0, 4.0, 3.5, 3.0, 2.5):
        yield Ruling(f"es-{number(body)}", body, body, body, 0.0, _BODY)
    yield Ruling("unlined", 12.0, 12.0, 12.0, 6.0, frozenset())


PRESETS: Mapping[str, Ruling] = MappingProxyType({ruling.name: ruling for ruling in _presets()})
DEFAULT_RULING = "us-3/4"


def preset(name: str) -> Ruling:
    """Return the ruling of this name. Raises Problem, naming those there are, for another."""
    key = name.strip().lower().removesuffix("mm").removesuffix("in").strip()
    if key not in PRESETS:
        raise Problem("lines.no_ruling", name=name, known=tuple(PRESETS))
    return PRESETS[key]


def told_of(name: str) -> tuple[Message, Message]:
    """Return what a preset is like, and where its measures come from."""
    family, _, measure = name.partition("-")
    return message(f"ruling.{family}", measure=measure), message(f"ruling.{family}_source")
