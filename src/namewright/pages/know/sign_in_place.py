"""A child's place on a list to sign in on, for a day (``signin``) or a week (``week_list``): lines, and a name to read.

How much of a name is given follows the child's level of support: dots, the first letter, nothing. Nobody is left out:
whose name cannot be set has lines alone. Millimetres, y down.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from namewright.letters.alphabet import MissingLetters
from namewright.lines.fit import DoesNotFit
from namewright.lines.forms import Form
from namewright.lines.ink import RULE, Ink, Style, line
from namewright.lines.ruling import Ruling, print_ruling
from namewright.lines.setting import SetLine, pen_width_mm
from namewright.lines.tuned import check_pens, suited
from namewright.message import Problem
from namewright.named_tuples import NamedTuple
from namewright.names.clusters import clusters
from namewright.pages import blocks
from namewright.pages.drawable import as_far_as
from namewright.pages.know.frame import MIN_X_MM, Frame, name_at, reading
from namewright.pages.page import Furniture, Item
from namewright.pages.sheet_settings import SheetSettings
from namewright.pages.typesetter import Typesetter
from namewright.settings import Support

NOTE_X_MM = 1.6
SPARE_MM = 2.0  # a line is wider than the name on it by so much
LATE = 2  # places for names that are not in the list yet, at the least
_NAME_X_MM = 4.0
_MAX_LINES_MM = 92.0  # from the top line to the tails: with a name over it, a place fits on a page that lies
_PENCIL_MM = 0.15  # nobody writes between the letters of what an adult reads
_RULE_OVER_MM = 2.5  # so far over where names stand is a rule to write one on, or it reads as a line of those under it
_RULE, _BY_RULE_MM = 0.6, 1.5  # of a place: the rule to write a name on, and the white between it and its line's number


@dataclass(frozen=True, slots=True)
class Signer:
    """A child who signs in: its name, what the list calls it where two share a name, and what holds for it.

    ``line`` is that of the list, by which an adult finds a child whose name cannot be shown.
    """

    name: str
    called: str
    settings: SheetSettings
    line: int


class Rooms(NamedTuple):
    """How wide a line may be, in mm: in its column, or where it takes the whole page."""

    column_mm: float
    whole_mm: float


@dataclass(frozen=True, slots=True)
class Cell:
    """A child's place on the page, or nobody's yet: its line as it is set, and the name over it to read."""

    one: Signer | None
    ruling: Ruling
    line: SetLine | None
    named: SetLine | None

    @property
    def named_rise_mm(self) -> float:
        """Return how far down the baseline of the name stands that is to be read."""
        return max(2 * _NAME_X_MM, self.named.rise_mm if self.named else 0.0)

    @property
    def rise_mm(self) -> float:
        """Return how far over its baseline the line to write on reaches, a pen on the top line not counted."""
        return max(self.ruling.line_height_mm, self.line.rise_mm - self._half_pen_mm if self.line else 0.0)

    @property
    def drop_mm(self) -> float:
        """Return how far under its baseline the line to write on reaches, nor a pen there."""
        return max(self.ruling.descender_mm, self.line.drop_mm - self._half_pen_mm if self.line else 0.0)

    @property
    def _half_pen_mm(self) -> float:
        return pen_width_mm(self.ruling) / 2


def place_of(setter: Typesetter, one: Signer, rooms: Rooms) -> tuple[Cell, Problem | None]:
    """Return a child's place, and what stood in the way of its name: nobody is missing from a list to sign in on.

    Where something did, the child has lines alone, and over them as much of its name as can be shown.
    """
    setter = setter.lettering(one.settings.letters)
    try:
        check_pens(one.settings.ruling)
        ruling, line_ = _fitted(setter, one, rooms.whole_mm - SPARE_MM)
        room = rooms.column_mm if line_.width_mm <= rooms.column_mm - SPARE_MM else rooms.whole_mm
        return Cell(one, ruling, line_, _to_read(setter, one.called, room)), None
    except (MissingLetters, DoesNotFit) as error:
        return _bare(setter, one, rooms), error


def _bare(setter: Typesetter, one: Signer, rooms: Rooms) -> Cell:
    """Return a place with lines alone, the usual pens on them, under what can be shown of the name."""
    return Cell(one, _lowered(suited(one.settings.ruling)), None, _to_read(setter, one.called, rooms.column_mm))


def _fitted(setter: Typesetter, one: Signer, room_mm: float) -> tuple[Ruling, SetLine]:
    """Return a child's own lines with its name on them; lower ones where dots are given that would run off the page.

    A name that is only to be written may go on in smaller letters, but dots that are left out would be help withheld.
    """
    own = one.settings
    ruling, spacing = _lowered(own.ruling), own.tuning.letter_spacing or 0.0
    line_ = setter.ruled(ruling, spacing).line(one.name)
    while own.support is Support.FULL and line_.width_mm > room_mm and ruling.x_height_mm > _NAME_X_MM:
        share = max(0.98 * room_mm / line_.width_mm, _NAME_X_MM / ruling.x_height_mm)
        ruling, spacing = ruling.scaled_to(ruling.line_height_mm * share), spacing * share
        line_ = setter.ruled(ruling, spacing).line(one.name)
    return ruling, line_


def _lowered(ruling: Ruling) -> Ruling:
    """Return a ruling, or its like with lines so high that a place on them has room on a page, with marks and all."""
    high = ruling.line_height_mm + ruling.descender_mm
    return ruling if high <= _MAX_LINES_MM else ruling.scaled_to(ruling.line_height_mm * _MAX_LINES_MM / high)


def _to_read(setter: Typesetter, called: str, room_mm: float) -> SetLine | None:
    """Set a name to read; one that is too wide for a child's eyes stands smaller, as an adult reads it.

    Where a letter is lacking it is as much as our own letters show, None where that is nothing.
    """
    try:
        natural = setter.ruled(print_ruling(_NAME_X_MM)).line(called)
        if natural.width_mm <= room_mm:
            return natural
        return setter.ruled(reading(setter, [called], _NAME_X_MM, room_mm)).line(called)
    except MissingLetters:
        return _as_read(setter, as_far_as(setter, called), room_mm, _NAME_X_MM)
    except DoesNotFit:
        return _as_read(setter, called, room_mm, MIN_X_MM)


def _as_read(setter: Typesetter, shown: str, room_mm: float, size: float) -> SetLine | None:
    """Set a name as small as it must be, and of one that fits at no size its beginning."""
    ruled = setter.ruled(print_ruling(blocks.fitting(setter, shown, room_mm, size)), 0.0, _PENCIL_MM)
    letters = clusters(shown)
    lines = (ruled.line("".join(letters[:end]).rstrip()) for end in range(len(letters), 0, -1))
    return next((line for line in lines if line.width_mm <= room_mm), None)


def late(settings: SheetSettings) -> Cell:
    """Return the place of a child who is not in the list yet."""
    return Cell(None, _lowered(settings.ruling), None, None)


# --- what stands there --------------------------------------------------------------------------------


def named(frame: Frame, cell: Cell, x: float, right: float, baseline: float) -> Iterator[Item]:
    """Yield the name to read, or a rule to write one on for a child who comes later or has no letters here.

    Of a child that is in the list an adult reads at the rule in which line; all of it stands left of ``right``.
    """
    if cell.named is not None:
        setter = frame.setter.lettering(cell.one.settings.letters) if cell.one else frame.setter
        yield name_at(setter, cell.named, x, baseline)
        return
    y = baseline - _RULE_OVER_MM
    said = frame.words.say("page.know.signin_line", line=cell.one.line) if cell.one else ""
    told = frame.setter.text_width(said, blocks.CHECK_NOTE_MM)
    rule_end = min(x + _RULE * (right - x), right - told - 2 * _BY_RULE_MM)
    yield Furniture((Ink.of(Style(0.3, RULE), (line(x, y, rule_end, y),)),))
    if said:
        yield Furniture((blocks.text_at(frame.setter, said, rule_end + _BY_RULE_MM, y, blocks.CHECK_NOTE_MM, RULE),))


def to_write(frame: Frame, cell: Cell, x: float, right: float, baseline: float) -> Item:
    """Return the child's line, with what is given of the name where it fits on it."""
    given = _given(cell.one.settings.support, len(cell.line.letters)) if cell.one and cell.line else None
    if cell.one is None or cell.line is None or given is None or cell.line.width_mm > right - x - 1.0:
        return blocks.ruled_row("", Form.BLANK, cell.ruling, x, right, baseline)
    setter = frame.setter.lettering(cell.one.settings.letters)
    inks = blocks.letters_at(setter, cell.line, given, x + pen_width_mm(cell.ruling) / 2 + 1.0, baseline)
    form = Form.DOTTED if given[0] is Form.DOTTED else Form.SOLID
    text = cell.one.name if form is Form.DOTTED else cell.line.letters[0].letter.cluster
    return blocks.ruled_row(text, form, cell.ruling, x, right, baseline, inks)


def _given(support: Support, letters: int) -> list[Form] | None:
    if support is Support.FULL:
        return [Form.DOTTED] * letters
    return [Form.SOLID] + [Form.BLANK] * (letters - 1) if support is Support.PARTIAL else None
