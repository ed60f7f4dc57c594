"""What uses the white beside a short name: the name or its first letter large and hollow, and a frame to draw in.

Both are for pleasure and take no room from writing: they stand where a long name would have its letters. Millimetres,
y down.
"""

from __future__ import annotations

from collections.abc import Iterable
from functools import cache

from namewright.lines.forms import Form
from namewright.lines.ink import RULE, Ink, Style, line
from namewright.lines.ruling import Ruling, custom_ruling
from namewright.lines.setting import SetLine
from namewright.named_tuples import NamedTuple
from namewright.names.clusters import clusters
from namewright.pages.pictograms import SIDE_MM, Task, pictogram
from namewright.pages.typesetter import Typesetter

_HEIGHTS_MM = (25.0, 20.0)  # of a hollow capital: few, so that letters are made once for a class
_EDGE_MM = 2.0  # a wide pen and its outline reach so far beyond the path of a letter, and a little more
_FRAME = Style(0.4, RULE)
_GAP_MM = 1.5
MIN_FRAME_MM = 40.0  # of a frame and its sign


class Hollow(NamedTuple):
    """Hollow letters to go into and fill with colour, and where they begin at their left."""

    inks: tuple[Ink, ...]
    left_mm: float


def hollow_name(setter: Typesetter, name: str, left: float, right: float, top: float, baseline: float, below: float,
                ) -> Hollow | None:
    """Return the name, or where it has no room its first letter, hollow on a baseline; None where neither has room.

    They end at ``right``, with their pictogram begin at ``left`` or later, and reach neither over ``top`` nor deeper
    than ``below`` under the baseline.
    """
    room = right - left - SIDE_MM - _GAP_MM
    for text in (name, _beginning(name)):
        for height in _HEIGHTS_MM:
            if height + _EDGE_MM > baseline - top:
                continue
            line = setter.ruled(_unlined(height)).line(text)
            if _fits(line, room, baseline - top, below):
                return _hollow(setter, line, right, baseline)
    return None


def _beginning(name: str) -> str:
    """Return a name up to its first letter with a capital and a small form: an ʻokina alone is nothing to colour."""
    letters = clusters(name)
    end = next((at for at, letter in enumerate(letters) if letter.upper() != letter.lower()), 0)
    return "".join(letters[:end + 1])


@cache
def _unlined(height_mm: float) -> Ruling:
    """Return the ruling of letters of one of the heights."""
    return custom_ruling(height_mm, lines=())


def _fits(line: SetLine, width: float, rise: float, drop: float) -> bool:
    x0, y0, x1, y1 = line.bounds
    return x1 - x0 + 2 * _EDGE_MM <= width and _EDGE_MM - y0 <= rise and _EDGE_MM + y1 <= drop


def _hollow(setter: Typesetter, line: SetLine, right: float, baseline: float) -> Hollow:
    x0, _, x1, _ = line.bounds
    left = right - _EDGE_MM - x1
    inks = setter.inker(line.ruling).ink(line, Form.HOLLOW, left, baseline)
    sign = left + x0 - _EDGE_MM - _GAP_MM - SIDE_MM
    return Hollow((pictogram(Task.COLOUR, sign, baseline - SIDE_MM), *inks), sign)


def drawing_frame(x0: float, x1: float, top: float, foot: float) -> Iterable[Ink]:
    """Return a frame for the child to draw itself in, and at its left a face that says so, from ``x0`` to ``x1``."""
    yield pictogram(Task.DRAW, x0, foot - SIDE_MM)
    x0 += SIDE_MM + _GAP_MM
    yield Ink.of(_FRAME, (line(x0, top, x1, top), line(x1, top, x1, foot), line(x1, foot, x0, foot),
                          line(x0, foot, x0, top)))
