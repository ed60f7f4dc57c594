"""Lengths, read once at the door. Inside, every length is a float in millimetres."""

from __future__ import annotations

import re

from namewright.message import Problem
from namewright.patterns import pattern

MM_PER_INCH = 25.4
PT_PER_INCH = 72.0
MIN_LINE_MM, MAX_LINE_MM = 4.0, 80.0  # from one line to the next: shorter is no handwriting, taller no page

_LONGEST = 40  # characters of a length
_LENGTH = pattern(
    r"(?P<whole>\d+(?:[.,]\d+)?)?(?:[\s-]*(?P<num>\d+)\s*/\s*(?P<den>\d+))?\s*(?P<unit>[a-z\"″]*)",
    re.IGNORECASE,
)
_UNIT_MM = {"": 1.0, "mm": 1.0, "cm": 10.0, "in": MM_PER_INCH, "inch": MM_PER_INCH, "inches": MM_PER_INCH,
            '"': MM_PER_INCH, "″": MM_PER_INCH}


def parse_length_mm(text: str) -> float:
    """Read a length such as ``12``, ``12.5 mm``, ``1,5 cm``, ``5/8 in`` or ``1 1/8"``; return millimetres.

    A bare number is millimetres. Raises Problem for anything else.
    """
    stripped = text.strip().replace("½", " 1/2").replace("¼", " 1/4").replace("¾", " 3/4").strip()
    match = _LENGTH.fullmatch(_split_fraction(stripped)) if len(stripped) <= _LONGEST else None
    unit = match["unit"].lower() if match else ""
    if not match or unit not in _UNIT_MM or not (match["whole"] or match["num"]):
        raise Problem("setting.length", text=text[:_LONGEST])
    from fractions import Fraction  # not at the top: lengths are typed in few runs

    value = Fraction(match["whole"].replace(",", ".")) if match["whole"] else Fraction(0)
    if match["num"]:
        if int(match["den"]) == 0:
            raise Problem("setting.length", text=text)
        value += Fraction(int(match["num"]), int(match["den"]))
    return float(value) * _UNIT_MM[unit]


def _split_fraction(text: str) -> str:
    """Keep ``5/8`` from being read as the whole number 5 followed by ``/8``."""
    return re.sub(r"^(\d+\s*/\s*\d+)", r" \1", text) if re.match(r"\d+\s*/", text) else text


def number(value: float, digits: int = 3) -> str:
    """Write a number the one way the project writes numbers: rounded, no ``-0``, no trailing zeros."""
    text = f"{value:.{digits}f}"
    if "." in text:
        text = text.rstrip("0").rstrip(".")
    return "0" if text in ("-0", "") else text
