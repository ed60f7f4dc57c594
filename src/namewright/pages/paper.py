"""Sheets of paper and the part of them that may be written on. Millimetres."""

from __future__ import annotations

from enum import StrEnum

from namewright.named_tuples import NamedTuple
from namewright.units import MM_PER_INCH

MARGIN_MM = 12.7  # half an inch: clear of the foot margin of older inkjets
BINDING_MM = 25.0  # clears the holes of ISO 838 (12 ± 1 mm to the centre, 6 mm wide) and of US three-hole paper
HEADER_MM = 10.5  # the line that says whose page it is, and the white under it
GUTTER_MM = 11.0  # left of what a child reads and writes, for the pictograms of its tasks
SIGN_OVER_MM = 0.8  # by so much a pictogram begins over its caption


class Paper(StrEnum):
    """The papers that sheets are made on."""

    LETTER = "letter"
    A4 = "a4"

    @property
    def size_mm(self) -> tuple[float, float]:
        """Return width and height, upright: A4 by ISO 216, Letter 8.5 × 11 in."""
        return (210.0, 297.0) if self is Paper.A4 else (8.5 * MM_PER_INCH, 11 * MM_PER_INCH)


class CardSize(StrEnum):
    """Card sizes, wider than high: index cards in inches, A6 by ISO 216."""

    INDEX_3X5 = "3x5"
    INDEX_4X6 = "4x6"
    INDEX_5X8 = "5x8"
    A6 = "a6"

    @property
    def size_mm(self) -> tuple[float, float]:
        """Return width and height."""
        if self is CardSize.A6:
            return (148.0, 105.0)
        short, long = (float(side) * MM_PER_INCH for side in self.value.split("x"))
        return (long, short)


class Sheet(NamedTuple):
    """A sheet as it lies before the child: its size, and the margins that stay white."""

    width_mm: float
    height_mm: float
    left_mm: float
    right_mm: float
    top_mm: float
    bottom_mm: float

    @property
    def right_edge(self) -> float:
        """Return the x where the writing room ends."""
        return self.width_mm - self.right_mm

    @property
    def room_width(self) -> float:
        """Return the width of the writing room."""
        return self.width_mm - self.left_mm - self.right_mm

    @property
    def foot(self) -> float:
        """Return the y where the writing room ends."""
        return self.height_mm - self.bottom_mm


def sheet_of(paper: Paper, *, landscape: bool = False, binding: bool = False) -> Sheet:
    """Return the sheet. The binding margin is on the long edge that is at the left of an upright page."""
    short, long = paper.size_mm
    edge = BINDING_MM if binding else MARGIN_MM
    if landscape:
        return Sheet(long, short, MARGIN_MM, MARGIN_MM, edge, MARGIN_MM)
    return Sheet(short, long, edge, MARGIN_MM, MARGIN_MM, MARGIN_MM)
