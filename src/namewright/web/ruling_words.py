"""Rulings as a teacher asks for them: by height, in the measure of the paper, and by the country of those like them.

On Letter paper inches come first, as fractions where they are some; on A4 millimetres, with inches only where those
are a fraction. Out of scope: what a ruling is (``lines.ruling``).
"""

from __future__ import annotations

from collections.abc import Mapping

from namewright.lines.ruling import PRESETS, Ruling
from namewright.message import Field, message
from namewright.pages.paper import Paper
from namewright.units import MM_PER_INCH

_EIGHTHS = ("", "⅛", "¼", "⅜", "½", "⅝", "¾", "⅞")
_NEAR_MM = 0.02
_WHOLE_FROM_MM = 15.0  # taller lines are told in whole millimetres


def by_country(paper: str) -> Mapping[str, list[tuple[Ruling, Field]]]:
    """Return the rulings with what each is called, by the country where ones like them are used; the tallest first."""
    found: dict[str, list[tuple[Ruling, Field]]] = {}
    for one in PRESETS.values():
        found.setdefault(one.name.partition("-")[0], []).append((one, size_said(one.line_height_mm, paper)))
    return found


def size_said(height_mm: float, paper: str) -> Field:
    """Return a height in words: ``¾ inch · 19 mm``, ``19 mm · ¾ inch``, or millimetres alone."""
    whole_mm = float(round(height_mm)) if height_mm >= _WHOLE_FROM_MM else height_mm
    fraction = _fraction(height_mm / MM_PER_INCH)
    if paper == Paper.LETTER:
        return message("web.desk.inch_mm", inches=fraction or height_mm / MM_PER_INCH, height=whole_mm)
    return message("web.desk.mm_inch", inches=fraction, height=whole_mm) if fraction else \
        message("web.desk.mm", height=whole_mm)


def _fraction(inches: float) -> str:
    """Return inches as a mixed fraction of eighths, no text where they are none."""
    eighths = round(inches * 8)
    if abs(eighths / 8 - inches) * MM_PER_INCH > _NEAR_MM:
        return ""
    whole, part = divmod(eighths, 8)
    return f"{whole or ''}{_EIGHTHS[part]}"
