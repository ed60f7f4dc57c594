"""Sign in: every child's name and a line to write it on, each as high as the child's own lines, for one day.

Beside each name is a spot for a picture of one's choice, and at the end stand rows for children who come later. How
much of the name is given follows the child's level of support: dots, the first letter, nothing. Millimetres, y down.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from namewright.letters.strokes import parse_stroke
from namewright.lines.forms import Form
from namewright.lines.ink import RULE, Ink, Piece, Style, line, stroke_fragment
from namewright.lines.setting import SetLine, pen_width_mm
from namewright.pages import blocks
from namewright.pages.know.frame import Frame, framed, name_at, reading
from namewright.pages.page import Furniture, Page
from namewright.pages.paging import TooTall
from namewright.pages.paper import sheet_of
from namewright.pages.pictograms import Task
from namewright.pages.sheet import SheetSettings
from namewright.pages.typesetter import Typesetter
from namewright.settings import Support

_SPOT_MM = 15.0
_NAME_MM = 56.0  # the column of names
_NAME_X_MM = 4.5
_NOTE_MM = 12.0  # what the adult's count takes at the foot
_AFTER_MM = 4.0  # between two rows
_MAX_ROW_MM = 120.0
LATE = 2  # rows for names that are not in the list yet


@dataclass(frozen=True, slots=True)
class Signer:
    """A child who signs in: its name, what the list calls it where two share a name, and what holds for it."""

    name: str
    called: str
    settings: SheetSettings


def sign_in_pages(setter: Typesetter, signers: Sequence[Signer], settings: SheetSettings) -> tuple[Page, ...]:
    """Return the pages for a class; ``settings`` are those of everyone. Raises DoesNotFit, MissingLetters."""
    pages: list[Page] = []
    frame = _begun(setter, settings)
    outline = frame.words.say("page.know.signin_outline")
    rows: list[Signer | None] = [*signers, *[None] * LATE]
    for one in rows:
        height = row_height(setter, one, settings)
        if height > frame.room - _NOTE_MM:
            pages.append(frame.page(None if pages else outline))
            frame = _begun(setter, settings)
        _row(frame, one, height)
    frame.y += frame.room - _NOTE_MM
    frame.note(frame.words.say("page.know.signin_count", count=len(signers)))
    return (*pages, frame.page(None if pages else outline))


def _begun(setter: Typesetter, settings: SheetSettings) -> Frame:
    frame = framed(setter, None, settings)
    frame.caption("page.know.signin", Task.ALONE)
    frame.y += 2.0
    return frame


def row_height(setter: Typesetter, one: Signer | None, settings: SheetSettings) -> float:
    """Return the height of a child's row. Raises MissingLetters, and DoesNotFit where even the name has no room."""
    if one is None:
        return max(_SPOT_MM, settings.ruling.line_height_mm + settings.ruling.descender_mm) + _AFTER_MM
    line = _line(setter, one)
    space = blocks.row_space(one.settings.ruling, [line])
    _named(setter, one, settings)
    if line.width_mm > _write_room(settings) and space.height_mm + _SPOT_MM > _MAX_ROW_MM:
        raise TooTall(one.name, space.height_mm + _SPOT_MM, _MAX_ROW_MM)
    return max(_SPOT_MM, space.height_mm) + _AFTER_MM + (_SPOT_MM if line.width_mm > _write_room(settings) else 0.0)


def _named(setter: Typesetter, one: Signer, settings: SheetSettings) -> SetLine:
    """Set a name to read: in its column, or across the page where the line to write on has to stand below."""
    setter = setter.lettering(one.settings.letters)
    beside = _line(setter, one).width_mm <= _write_room(settings)
    room = _NAME_MM if beside else _NAME_MM + _write_room(settings)
    return setter.ruled(reading(setter, [one.called], _NAME_X_MM, room)).line(one.called)


def _write_room(settings: SheetSettings) -> float:
    """Return how wide the line beside a name is."""
    sheet = sheet_of(settings.paper, landscape=settings.landscape, binding=settings.binding)
    return sheet.room_width - _SPOT_MM - _NAME_MM - 8.0


def _line(setter: Typesetter, one: Signer) -> SetLine:
    ruled = setter.lettering(one.settings.letters).ruled(one.settings.ruling, one.settings.tuning.letter_spacing or 0.0)
    return ruled.line(one.name)


def _row(frame: Frame, one: Signer | None, height: float) -> None:
    ruling = (one.settings if one else frame.settings).ruling
    lines = [_line(frame.setter, one)] if one else []
    below = bool(lines) and lines[0].width_mm > _write_room(frame.settings)
    baseline = frame.y + (0.6 * _SPOT_MM if below else blocks.row_space(ruling, lines).rise_mm)
    x = frame.left + _SPOT_MM + 3.0
    frame.items.append(_spot(frame.left + _SPOT_MM / 2, max(frame.y + _SPOT_MM / 2, baseline - ruling.x_height_mm)))
    x1 = x + _NAME_MM + 3.0
    if one is None:
        frame.items.append(Furniture((Ink(Style(0.3, RULE), (line(x, baseline, x + _NAME_MM - 3.0, baseline),)),)))
        frame.items.append(blocks.ruled_row("", Form.BLANK, ruling, x1, frame.right, baseline))
    else:
        setter = frame.setter.lettering(one.settings.letters)
        frame.items.append(name_at(setter, _named(frame.setter, one, frame.settings), x, baseline))
        if below:
            _to_write(frame, setter, one, frame.left, frame.y + _SPOT_MM + blocks.row_space(ruling, lines).rise_mm)
        else:
            _to_write(frame, setter, one, x1, baseline)
    frame.y += height


def _spot(x: float, y: float) -> Ink:
    """Return the ring in which a child's picture or mark has room."""
    radius = _SPOT_MM / 2 - 0.5
    circle = f"M{radius} 0A{radius} {radius} 0 1 1 {-radius} 0A{radius} {radius} 0 1 1 {radius} 0"
    return Ink(Style(0.3, RULE), (Piece(x, y, stroke_fragment([parse_stroke(circle)])),))


def _to_write(frame: Frame, setter: Typesetter, one: Signer, x: float, baseline: float) -> None:
    """Rule the child's line, with what is given of the name where it fits on it."""
    set_line, ruling = _line(setter, one), one.settings.ruling
    given = _given(one.settings.support, len(set_line.letters))
    if given is None or set_line.width_mm > frame.right - x - 1.0:
        frame.items.append(blocks.ruled_row("", Form.BLANK, ruling, x, frame.right, baseline))
        return
    form = Form.DOTTED if given[0] is Form.DOTTED else Form.SOLID
    inks = blocks.letters_at(setter, set_line, given, x + pen_width_mm(ruling) / 2 + 1.0, baseline)
    text = one.name if form is Form.DOTTED else set_line.letters[0].letter.cluster
    frame.items.append(blocks.ruled_row(text, form, ruling, x, frame.right, baseline, inks))


def _given(support: Support, letters: int) -> list[Form] | None:
    if support is Support.FULL:
        return [Form.DOTTED] * letters
    return [Form.SOLID] + [Form.BLANK] * (letters - 1) if support is Support.PARTIAL else None
