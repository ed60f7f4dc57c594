"""Rulings: the measured lines a name stands on, and where a letter's zones fall between them.

Millimetres throughout. Heights are counted upwards from the baseline, depths downwards; both are positive.
A preset says where its measures come from. The measures are "like" a ruling in use: no conformity with any
standard is claimed. Out of scope: where on a page a row stands (``pages``).
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass, field, replace
from enum import StrEnum
from types import MappingProxyType

from namewright.units import MM_PER_INCH, number

MIN_LINE_HEIGHT_MM = 4.0
MAX_LINE_HEIGHT_MM = 80.0
MIN_MIDLINE = 0.3  # of the line height
MAX_MIDLINE = 0.8
LETTER_UNITS = 100.0  # letter units to a zone, see ``letters.alphabet``


class GuideLine(StrEnum):
    """The four guide lines of a row, by the class names they carry in an SVG."""

    TOP = "topline"
    MID = "midline"
    BASE = "baseline"
    DESCENDER = "descender-line"


ALL_LINES = frozenset(GuideLine)


@dataclass(frozen=True, slots=True)
class Inking:
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


@dataclass(frozen=True, slots=True)
class Ruling:
    """One row's guide lines, and the space to the next row.

    ``ascender_mm`` is the zone over the midline, ``x_height_mm`` the zone between midline and baseline,
    ``descender_mm`` the depth below the baseline, ``gap_mm`` the white from there to the next row's top line.
    ``short_mm`` is how far d and t rise over the midline where a ruling grades heights, else None.
    ``bands_mm`` are the heights (negative below the baseline) of thin extra lines. ``lines`` are the guide
    lines that are printed. ``note`` tells in a sentence what it is like; ``source`` where the measures stand;
    neither is part of what a ruling is, so two that rule alike are equal whatever is said of them.
    """

    name: str
    ascender_mm: float
    x_height_mm: float
    descender_mm: float
    gap_mm: float
    lines: frozenset[GuideLine]
    note: str = field(compare=False)
    source: str = field(compare=False)
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

    def height_of(self, line: GuideLine) -> float:
        """Return the height of a guide line over the baseline (negative below it)."""
        return {GuideLine.TOP: self.line_height_mm, GuideLine.MID: self.x_height_mm, GuideLine.BASE: 0.0,
                GuideLine.DESCENDER: -self.descender_mm}[line]

    def height_mm(self, units: float, *, one_piece: bool = False, short: bool = False) -> float:
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
            return units / (2 * LETTER_UNITS) * self.line_height_mm
        if units <= LETTER_UNITS:
            return units / LETTER_UNITS * self.x_height_mm
        rise = self.ascender_mm if self.short_mm is None or not short else self.short_mm
        return self.x_height_mm + (units / LETTER_UNITS - 1) * rise

    def scaled_to(self, line_height_mm: float) -> Ruling:
        """Return the same proportions with another line height.

        Raises ValueError outside 4–80 mm.
        """
        check_line_height(line_height_mm)
        factor = line_height_mm / self.line_height_mm
        return replace(
            self,
            name=f"{self.name} at {number(line_height_mm)} mm",
            ascender_mm=self.ascender_mm * factor, x_height_mm=self.x_height_mm * factor,
            descender_mm=self.descender_mm * factor, gap_mm=self.gap_mm * factor,
            short_mm=None if self.short_mm is None else self.short_mm * factor,
            bands_mm=tuple(band * factor for band in self.bands_mm),
            note=f"{self.note} Set to a line height of {number(line_height_mm)} mm.",
        )


def check_line_height(line_height_mm: float) -> None:
    """Raise ValueError, in a sentence, for a line height we cannot rule."""
    if not MIN_LINE_HEIGHT_MM <= line_height_mm <= MAX_LINE_HEIGHT_MM:
        raise ValueError(
            f"a line height of {number(line_height_mm)} mm cannot be ruled; choose one from "
            f"{number(MIN_LINE_HEIGHT_MM)} to {number(MAX_LINE_HEIGHT_MM)} mm, baseline to top line")


def custom_ruling(
    line_height_mm: float, *, midline: float = 0.5, descender_mm: float | None = None,
    gap_mm: float = 0.0, lines: Iterable[GuideLine] = ALL_LINES,
) -> Ruling:
    """Make a ruling from measures in mm; ``midline`` is the midline's share of the line height (0.3–0.8).

    The descender is as deep as the x-height is high unless it is given. Raises ValueError, in a sentence, for
    measures that cannot be ruled.
    """
    check_line_height(line_height_mm)
    if not MIN_MIDLINE <= midline <= MAX_MIDLINE:
        raise ValueError(f"a midline at {number(midline)} of the line height cannot be written on; "
                         f"choose a ratio from {number(MIN_MIDLINE)} to {number(MAX_MIDLINE)}")
    x_height = line_height_mm * midline
    depth = x_height if descender_mm is None else descender_mm
    for label, value in (("descender depth", depth), ("space between rows", gap_mm)):
        if not 0 <= value <= MAX_LINE_HEIGHT_MM:
            raise ValueError(f"a {label} of {number(value)} mm cannot be ruled; choose one from 0 to "
                             f"{number(MAX_LINE_HEIGHT_MM)} mm")
    return Ruling("your own", line_height_mm - x_height, x_height, depth, gap_mm, frozenset(lines),
                  f"Your own ruling, {number(line_height_mm)} mm from baseline to top line.", "your own measures")


def print_ruling(x_height_mm: float) -> Ruling:
    """Return the unseen ruling of running text, which nobody writes on: ascenders lower than on practice paper."""
    return Ruling("print", 0.75 * x_height_mm, x_height_mm, 0.7 * x_height_mm, 0.0, frozenset(),
                  "Running text.", "our own proportions")


_FOUR = ALL_LINES
_WITH_SKIP = frozenset({GuideLine.TOP, GuideLine.MID, GuideLine.BASE})
_BODY = frozenset({GuideLine.MID, GuideLine.BASE})

_DE_SOURCE = ("the line gaps of DIN 16552-1:2005-05 as told by de.wikipedia.org/wiki/Lineatur; "
              "the gap between rows, half a zone, is ours")
_CH_SOURCE = "haptik.ch/schule/artikel/was-bringt-die-neue-basisschrift; the gap between rows, half a zone, is ours"
_AU_SOURCE = "common practice: equal thirds named by their total height"
_US_SOURCE = "common practice: a dashed line halfway and a skip space of half a line height"
_FR_SOURCE = ("bands and heights: ecrituremodedemploi.fr and raforiane.fr, on the Séyès ruling of 1892; "
              "capitals of three bands: common practice")
_UK_SOURCE = "common practice: a two-line body in a 15 mm pitch, equal zones above and below"
_ES_SOURCE = "common practice: two lines that hold the small letters; outer zones as high as the body are ours"


def _thirds(name: str, zone: float, gap: float, note: str, source: str) -> Ruling:
    return Ruling(name, zone, zone, zone, gap, _FOUR, note, source)


def _half_height(inches: float, written: str) -> Ruling:
    """Head line to base line ``inches``, midline halfway, and half of it again below as the skip space."""
    half = inches * MM_PER_INCH / 2
    return Ruling(f"us-{written}", half, half, half, 0.0, _WITH_SKIP,
                  f"Like the {written} inch primary ruling used in the United States.", _US_SOURCE)


def _graded(band: float) -> Ruling:
    """Four bands to a row of squares: x 1 band, d and t 2, the other ascenders and capitals 3, tails 2 below.

    A row takes two rows of squares (8 bands), so that tails and tall letters of neighbours never meet.
    """
    return Ruling(f"fr-{number(band)}", 2 * band, band, 2 * band, 3 * band, _FOUR,
                  f"Like the graded ruling with {number(band)} mm bands used in France.", _FR_SOURCE,
                  short_mm=band, bands_mm=(2 * band, -band))


def _body(name: str, body: float, outer: float, note: str, source: str) -> Ruling:
    return Ruling(name, outer, body, outer, 0.0, _BODY, note, source)


def _presets() -> Iterable[Ruling]:
    for zone in (6.0, 5.0, 4.0):
        yield _thirds(f"de-{number(zone)}", zone, zone / 2,
                      f"Like the {number(zone)} mm four-line ruling used in Germany.", _DE_SOURCE)
    for zone in (9.0, 6.0):
        yield _thirds(f"ch-{number(zone)}", zone, zone / 2,
                      f"Like the {number(zone)} mm ruling of three lanes used in Switzerland.", _CH_SOURCE)
    for total in (24, 18, 14, 12, 9, 8):
        yield _thirds(f"au-{total}", total / 3, total / 6,
                      f"Like the {total} mm ruling of equal thirds used in Australia.", _AU_SOURCE)
    for inches, written in ((1.125, "1-1/8"), (1.0, "1"), (0.875, "7/8"), (0.75, "3/4"),
                            (0.625, "5/8"), (0.5, "1/2"), (0.375, "3/8")):
        yield _half_height(inches, written)
    for band in (2.0, 2.5, 3.0):
        yield _graded(band)
    for body in (6.0, 5.0, 4.0):
        yield _body(f"uk-{number(body)}", body, (15.0 - body) / 2,
                    f"Like the two-line infant ruling with a {number(body)} mm body used in the United Kingdom.",
                    _UK_SOURCE)
    for body in (5.0, 4.0, 3.5, 3.0, 2.5):
        yield _body(f"es-{number(body)}", body, body,
                    f"Like the {number(body)} mm two-line pauta used in Spain.", _ES_SOURCE)
    yield Ruling("unlined", 12.0, 12.0, 12.0, 6.0, frozenset(),
                 "Plain paper without lines, for the youngest.",
                 "our own size; Lindsay & McLennan 1983 found younger children more legible without lines")


PRESETS: Mapping[str, Ruling] = MappingProxyType({ruling.name: ruling for ruling in _presets()})
DEFAULT_RULING = "us-3/4"


def preset(name: str) -> Ruling:
    """Return the ruling of this name. Raises ValueError, in a sentence that lists the names, for another."""
    key = name.strip().lower().removesuffix("mm").removesuffix("in").strip()
    if key not in PRESETS:
        raise ValueError(f"there is no ruling called “{name}”; choose one of {', '.join(PRESETS)}")
    return PRESETS[key]
