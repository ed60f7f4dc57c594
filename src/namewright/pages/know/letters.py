"""My letters: each letter of the name, ringed once as an example, and a row to find it in; capitals over small ones.

Millimetres, y down. Which letters stand beside it is ``practice.letter_hunt``.
"""

from __future__ import annotations

import math
from collections.abc import Sequence

from namewright.letters.strokes import parse_stroke
from namewright.lines.ink import DARK, Ink, Piece, Style, stroke_fragment
from namewright.lines.ruling import Ruling, print_ruling
from namewright.pages.know.frame import Frame, framed
from namewright.pages.know.rows import letters_in
from namewright.pages.page import Page
from namewright.pages.pictograms import Task
from namewright.pages.sheet import SheetSettings
from namewright.pages.typesetter import Typesetter
from namewright.practice.letter_hunt import Hunt, HuntRow

_MATCH_MM = 60.0  # what capitals and small letters take, their caption counted
_MAX_STEP_MM, _MAX_X_MM = 36.0, 9.0
_MAX_ROWS = 7  # of a page
_MATCH_X_MM = 6.0
_STEP = 3.0  # x-heights from row to row
_RING_OUT_MM = 3.0  # so far a ring about a letter with a tail may reach under its row
_AIR_MM = 2.0  # between the caption and the first ring
_RING = Style(0.7, DARK)


def letters_pages(setter: Typesetter, label: str, hunt: Hunt, settings: SheetSettings) -> tuple[Page, ...]:
    """Return the pages, two where rows are many. Raises MissingLetters."""
    setter = setter.lettering(settings.letters)
    half = -(-len(hunt.rows) // 2)
    parts = [hunt.rows] if len(hunt.rows) <= _MAX_ROWS else [hunt.rows[:half], hunt.rows[half:]]
    pages: list[Page] = []
    for number, rows in enumerate(parts, start=1):
        frame = framed(setter, label, settings, date="page.know.letters_on")
        frame.caption("page.know.letters", Task.RING)
        frame.y += _AIR_MM
        match = bool(hunt.capitals) and number == len(parts)
        ruling = _rows(frame, rows, frame.room - (_MATCH_MM + _RING_OUT_MM if match else 0.0))
        if match:
            _match(frame, hunt, ruling)
        pages.append(frame.page(None if pages else label))
    return tuple(pages)


def _rows(frame: Frame, rows: Sequence[HuntRow], room: float) -> Ruling:
    """Set a row a letter, the letter ringed at its head, and return on what it stands."""
    step = min(_MAX_STEP_MM, room / len(rows))
    ruling = print_ruling(min(_MAX_X_MM, frame.settings.ruling.x_height_mm, step / _STEP))
    for row in rows:
        baseline = frame.y + 0.5 * step + 0.6 * ruling.x_height_mm
        share = (frame.right - frame.left) / (len(row.shown) + 1.6)
        letters_in(frame, [row.letter], ruling, [frame.left + 0.5 * share], baseline)
        most = min(0.94 * step, share + 3.0)
        frame.items.append(_ring(frame, row.letter, ruling, frame.left + 0.5 * share, baseline, most))
        letters_in(frame, row.shown, ruling, [frame.left + share * (at + 2.1) for at in range(len(row.shown))],
                   baseline)
        frame.y += step
    return ruling


def _ring(frame: Frame, letter: str, ruling: Ruling, x: float, baseline: float, most: float) -> Ink:
    """Return a ring about a letter, ``most`` mm wide, as a hand draws it: it does not quite close where it began."""
    line = frame.setter.ruled(ruling).line(letter)
    radius = min(max(0.5 * math.hypot(line.width_mm, line.rise_mm + line.drop_mm) + 2.0, 1.2 * ruling.x_height_mm),
                 0.49 * most)
    y = min(baseline + (line.drop_mm - line.rise_mm) / 2, baseline + 1.6)
    half = 0.55 * radius
    path = (f"M{0.3 * radius} {-0.98 * radius}C{-0.5 * radius} {-1.25 * radius} {-radius} {-half} {-radius} 0"
            f"C{-radius} {half} {-half} {radius} 0 {radius}C{half} {radius} {radius} {half} {radius} 0"
            f"C{radius} {-half} {half} {-1.1 * radius} {-0.1 * radius} {-0.92 * radius}")
    return Ink(_RING, (Piece(x, y, stroke_fragment([parse_stroke(path)])),))


def _match(frame: Frame, hunt: Hunt, ruling: Ruling) -> None:
    """Set capitals over small letters, with white between for the lines that join them."""
    frame.y += max(0.0, frame.room - _MATCH_MM)
    frame.caption("page.know.letters_match", Task.JOIN)
    places = _places(frame, len(hunt.capitals))
    ruling = print_ruling(min(_MATCH_X_MM, ruling.x_height_mm))
    letters_in(frame, hunt.capitals, ruling, places, frame.y + 2.3 * ruling.x_height_mm)
    letters_in(frame, hunt.small, ruling, places, frame.sheet.foot - 8.0 - 0.9 * ruling.x_height_mm)


def _places(frame: Frame, count: int) -> Sequence[float]:
    share = min(60.0, (frame.right - frame.left) / count)
    return [frame.left + share * (at + 0.5) for at in range(count)]
