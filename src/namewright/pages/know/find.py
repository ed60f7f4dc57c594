"""Find my name: the child's name at the head, then among other names that grow more alike to it down the page.

Names stand in the print of the class without lines, in rows with white around each, so that a ring can be drawn
around it; at the hardest level the last ones stand in another typeface. Which names, and in what order, is
``practice.finding``. Millimetres, y down.
"""

from __future__ import annotations

from collections.abc import Sequence
from contextlib import suppress
from itertools import pairwise
from random import Random
from typing import TYPE_CHECKING

from namewright.lines.fit import DoesNotFit
from namewright.lines.forms import Form
from namewright.lines.ruling import Ruling, print_ruling
from namewright.lines.setting import SetLine
from namewright.pages.know.frame import Frame, framed, name_at, reading
from namewright.pages.page import Page
from namewright.pages.pictograms import Task
from namewright.pages.sheet_settings import SheetSettings
from namewright.pages.typesetter import Typesetter
from namewright.practice.finding import Finding, Shown

if TYPE_CHECKING:
    from namewright.schoolfont.other_face import Face

_RING_MM = 9.0  # white beside a name, for a ring drawn by a young hand
_MAX_ACROSS = 3
_MAX_STEP_MM = 46.0  # from row to row: further apart they are no rows
_MAX_X_MM = 9.5
_LARGE = 0.6  # of the size wished for: smaller than this, fewer names stand in a row
_RISE, _DROP = 2.0, 1.0  # x-heights over and under the line, at the least: tails and tall letters do not meet


def find_page(setter: Typesetter, label: str, found: Finding, settings: SheetSettings) -> Page:
    """Return the page. Raises MissingLetters or DoesNotFit."""
    setter = setter.lettering(settings.letters)
    frame = framed(setter, label, settings, date="page.know.found_on")
    frame.caption("page.know.here", Task.SEE)
    _model(frame, found.name)
    frame.caption("page.know.find", Task.RING)
    _field(frame, found)
    return frame.page(label)


def _model(frame: Frame, name: str) -> None:
    """Set the name on the child's own lines, or smaller on none where it is too wide for them."""
    ruling, width = frame.settings.ruling, frame.right - frame.left
    line = frame.setter.ruled(ruling, frame.spacing).line(name)
    if line.width_mm <= width:
        frame.items.append(frame.row(line, Form.SOLID, frame.y + max(line.rise_mm, ruling.line_height_mm)))
        frame.y += max(line.rise_mm, ruling.line_height_mm) + max(line.drop_mm, ruling.descender_mm) + 5.0
        return
    line = frame.setter.ruled(reading(frame.setter, [name], ruling.x_height_mm, width)).line(name)
    frame.items.append(name_at(frame.setter, line, frame.left, frame.y + line.rise_mm))
    frame.y += line.rise_mm + line.drop_mm + 5.0


def _field(frame: Frame, found: Finding) -> None:
    """Set every part of the page in rows of their own, each name somewhere in its share of the row."""
    names = list(dict.fromkeys(one.name for one in found.shown))
    across, ruling = _across(frame, found, names)
    rows = [(row, part.other_face) for part in found.parts for row in _rows(part.shown, across)]
    step, room = _step(frame, found, across), _room(frame, max(len(row) for row, _ in rows))
    rise, drop = (reach * ruling.x_height_mm for reach in _reach(frame, names))
    chance, face = Random("".join(names)), _face(found)
    for row, in_other in rows:
        lines = [_in_other_face(face, one.name, ruling, room) if in_other and face else
                 frame.setter.ruled(ruling, frame.spacing).line(one.name) for one in row]
        _row(frame, lines, frame.y + (step + rise - drop) / 2, chance)
        frame.y += step


def _face(found: Finding) -> Face | None:
    """Return the typeface of the last names, which is read only where a page has it."""
    names = [one.name for part in found.parts if part.other_face for one in part.shown]
    if not names:
        return None
    from namewright.schoolfont.other_face import face_for

    return face_for(names)


def _in_other_face(face: Face, name: str, ruling: Ruling, room_mm: float) -> SetLine:
    """Set a name in the other typeface, smaller where it runs wider than our letters do."""
    line = face.line(name, ruling)
    if line.width_mm <= room_mm:
        return line
    return face.line(name, print_ruling(ruling.x_height_mm * 0.98 * room_mm / line.width_mm))


def _across(frame: Frame, found: Finding, names: Sequence[str]) -> tuple[int, Ruling]:
    """Return how many names stand in a row and how tall they are: the more across the better, if all are large.

    Raises DoesNotFit where one has no room even alone.
    """
    wished, high = min(_MAX_X_MM, frame.settings.ruling.x_height_mm), sum(_reach(frame, names))
    for across in range(_MAX_ACROSS, 1, -1):
        tall = min(wished, _step(frame, found, across) / high)
        beside = max(len(row) for part in found.parts for row in _rows(part.shown, across))
        if tall >= _LARGE * wished:
            with suppress(DoesNotFit):
                return across, reading(frame.setter, names, tall, _room(frame, beside), frame.spacing,
                                       least_mm=_LARGE * wished)
    tall = min(wished, _step(frame, found, 1) / high)
    return 1, reading(frame.setter, names, tall, _room(frame, 1), frame.spacing)


def _reach(frame: Frame, names: Sequence[str]) -> tuple[float, float]:
    """Return how far names reach over and under their line, in x-heights: marks over capitals need more than two."""
    ruling = print_ruling(_MAX_X_MM)
    boxes = [frame.setter.ruled(ruling).line(name).bounds for name in names]
    return (max(_RISE, *(-box[1] / _MAX_X_MM for box in boxes)), max(_DROP, *(box[3] / _MAX_X_MM for box in boxes)))


def _room(frame: Frame, across: int) -> float:
    return (frame.right - frame.left) / across - 2 * _RING_MM


def _step(frame: Frame, found: Finding, across: int) -> float:
    """Return how far rows stand apart."""
    return min(frame.room / sum(len(_rows(part.shown, across)) for part in found.parts), _MAX_STEP_MM)


def _rows(shown: Sequence[Shown], across: int) -> list[Sequence[Shown]]:
    """Cut the names of a part into rows, as even as can be."""
    count = -(-len(shown) // across)
    ends = [round(len(shown) * at / count) for at in range(count + 1)]
    return [shown[a:b] for a, b in pairwise(ends)]


def _row(frame: Frame, row: Sequence[SetLine], baseline: float, chance: Random) -> None:
    share = (frame.right - frame.left) / len(row)
    for at, line in enumerate(row):
        spare = share - 2 * _RING_MM - line.width_mm
        x = frame.left + at * share + _RING_MM + spare * chance.uniform(0.1, 0.9)
        frame.items.append(name_at(frame.setter, line, x, baseline))
