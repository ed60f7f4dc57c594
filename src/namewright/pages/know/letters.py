"""My letters: each letter of the name, ringed once as an example, and a row to find it in; capitals over small ones.

Millimetres, y down. Which letters stand beside it is ``practice.letter_hunt``.
"""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise

from namewright.letters.strokes import parse_stroke
from namewright.lines.ink import DARK, Ink, Piece, Style, stroke_fragment
from namewright.lines.ruling import Ruling, print_ruling
from namewright.lines.setting import SetLine, pen_width_mm
from namewright.named_tuples import NamedTuple
from namewright.pages.know.frame import MIN_X_MM, Frame, framed
from namewright.pages.know.rows import letters_in
from namewright.pages.page import Page
from namewright.pages.pictograms import Task
from namewright.pages.sheet_settings import SheetSettings
from namewright.pages.typesetter import Typesetter
from namewright.practice.letter_hunt import Hunt, HuntRow

_MATCH_MM = 60.0  # what capitals and small letters take, their caption counted
_MAX_STEP_MM, _MAX_X_MM = 36.0, 9.0
_MAX_ROWS = 7  # of a page
_MATCH_X_MM = 6.0
_STEP = 3.0  # x-heights from row to row
_RING_OUT_MM = 1.4  # white between a letter and the oval about it
_POWER, _HANDLE = 2.8, 0.75  # of the superellipse that the oval is, and of the curves that draw it
_FLAT_MM = 0.3
_LEFT_MM = 8.0  # so far into the gutter an oval about a wide letter may reach
_OVER_NEXT_MM = 2.0  # white between the last row and the caption after it
_UNDER_MM = 2.0  # the short stroke under a letter
_BESIDE_MM = 3.5  # white between two letters of a row, for a ring
_APART_MM = 1.5  # white between rows, and between one oval and the next
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
        ruling = _rows(frame, rows, frame.room - (_MATCH_MM if match else 0.0))
        if match:
            _match(frame, hunt, ruling)
        pages.append(frame.page(None if pages else label))
    return tuple(pages)


class _Set(NamedTuple):
    """A row as it is set: how far its letters reach, the ``widest`` of them, and the oval about the one at its head.

    ``middle`` is how far the oval's middle lies under the line, ``across`` and ``high`` half its width and height.
    """

    rise: float
    drop: float
    middle: float
    across: float
    high: float
    widest: float

    @property
    def over(self) -> float:
        """Return how far all of it reaches over the line."""
        return max(self.rise, self.high - self.middle)

    @property
    def under(self) -> float:
        """Return how far all of it reaches under the line."""
        return max(self.drop, self.high + self.middle)

    def step_to(self, below: _Set) -> float:
        """Return the least step to a row: letters meet no letters, and no oval the next."""
        return _APART_MM + max(self.drop + below.rise, self.high + self.middle + below.high - below.middle)


def _rows(frame: Frame, rows: Sequence[HuntRow], room: float) -> Ruling:
    """Set a row a letter, ringed at its head, in even steps where these have room; return on what letters stand."""
    x_height = min(_MAX_X_MM, frame.settings.ruling.x_height_mm, room / len(rows) / _STEP)
    while True:
        ruling = print_ruling(x_height)
        found = [_measured(frame, row, ruling) for row in rows]
        steps = [one.step_to(other) for one, other in pairwise(found)]
        spare = room - _OVER_NEXT_MM - found[0].over - found[-1].under - sum(steps)
        beside = min(_share(frame, row) - one.widest for row, one in zip(rows, found, strict=True))
        if (spare >= 0.0 and beside >= _BESIDE_MM) or x_height <= MIN_X_MM:
            break
        x_height = max(MIN_X_MM, 0.97 * x_height)
    uneven = sum(max(steps) - step for step in steps) if steps else 0.0
    if uneven <= spare:
        steps, spare = [max(steps, default=0.0)] * len(steps), spare - uneven
    more = max(0.0, min(spare / len(rows), _MAX_STEP_MM - max(steps, default=0.0)))
    y = frame.y + found[0].over + more / 2
    for row, one, step in zip(rows, found, (*steps, 0.0), strict=True):
        _row(frame, row, one, ruling, y)
        y += step + more
    frame.y += room
    return ruling


def _share(frame: Frame, row: HuntRow) -> float:
    """Return the width that a letter has, the one at the head a little more."""
    return (frame.right - frame.left) / (len(row.shown) + 1.6)


def _measured(frame: Frame, row: HuntRow, ruling: Ruling) -> _Set:
    lines = [frame.setter.ruled(ruling).line(letter) for letter in (row.letter, *row.shown)]
    head = lines[0]
    across, high = _around(head)
    high = max(high, ruling.x_height_mm)
    across = min(_share(frame, row) / 2 + _LEFT_MM, max(across, 0.85 * high))
    return _Set(max(line.rise_mm for line in lines), max(_UNDER_MM, *(line.drop_mm for line in lines)),
                (head.drop_mm - head.rise_mm) / 2, across, high, max(line.width_mm for line in lines))


def _around(line: SetLine) -> tuple[float, float]:
    """Return half the width and height of the least oval of a letter's proportions that goes round all of it.

    The oval is a superellipse: an o fills it in its middles, the corners of an M and a W need it wider.
    """
    x0, y0, x1, y1 = line.bounds
    half_x, half_y = max((x1 - x0) / 2, 0.1), max((y1 - y0) / 2, 0.1)
    placed = line.letters[0]
    strokes = placed.letter.strokes or placed.letter.outline
    points = [(abs(x + placed.x - (x0 + x1) / 2) / half_x, abs(y - (y0 + y1) / 2) / half_y)
              for stroke in strokes for x, y in stroke.flattened(_FLAT_MM)]
    reach = max(1.0, *((x ** _POWER + y ** _POWER) ** (1 / _POWER) for x, y in points))
    white = _RING_OUT_MM + pen_width_mm(line.ruling) / 2
    return half_x * reach + white, half_y * reach + white


def _row(frame: Frame, row: HuntRow, one: _Set, ruling: Ruling, baseline: float) -> None:
    share = _share(frame, row)
    x = frame.left + 0.5 * share
    letters_in(frame, [row.letter], ruling, [x], baseline)
    frame.items.append(_ring(one, x, baseline))
    letters_in(frame, row.shown, ruling, [frame.left + share * (at + 2.1) for at in range(len(row.shown))], baseline)


def _ring(one: _Set, x: float, baseline: float) -> Ink:
    """Return the oval about a letter as a hand draws it: it does not quite close where it began."""
    x1, y1 = one.across, one.high
    near_x, near_y = _HANDLE * x1, _HANDLE * y1
    path = (f"M{0.3 * x1} {-0.98 * y1}C{-0.5 * x1} {-1.05 * y1} {-x1} {-near_y} {-x1} 0"
            f"C{-x1} {near_y} {-near_x} {y1} 0 {y1}C{near_x} {y1} {x1} {near_y} {x1} 0"
            f"C{x1} {-near_y} {near_x} {-0.99 * y1} {-0.1 * x1} {-0.93 * y1}")
    return Ink.of(_RING, (Piece(x, baseline + one.middle, stroke_fragment([parse_stroke(path)])),))


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
