"""Sign in: every child's name and lines to write it on, each as high as the child's own, for a day or for a week.

For a day names stand in two columns, wide ones across both; beside each is a spot for a picture of one's choice. For a
week (``week_list``) each name has five places. At the end there is room for children who come later. How much of a
name is given follows the child's level of support: dots, the first letter, nothing. Millimetres, y down.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from functools import cache

from namewright.letters.alphabet import MissingLetters
from namewright.letters.strokes import parse_stroke
from namewright.lines.fit import DoesNotFit
from namewright.lines.forms import Form
from namewright.lines.ink import RULE, Fragment, Ink, Piece, Style, line, stroke_fragment
from namewright.lines.ruling import Ruling, print_ruling
from namewright.lines.setting import SetLine, pen_width_mm
from namewright.lines.tuned import check_pens, suited
from namewright.message import Problem
from namewright.named_tuples import NamedTuple
from namewright.names.clusters import clusters
from namewright.pages import blocks
from namewright.pages.drawable import as_far_as
from namewright.pages.know.frame import MIN_X_MM, Frame, framed, name_at, reading
from namewright.pages.page import Furniture, Item, Page
from namewright.pages.paper import sheet_of
from namewright.pages.pictograms import Task
from namewright.pages.sheet_settings import SheetSettings
from namewright.pages.typesetter import Typesetter
from namewright.settings import Support

SPOT_MM = 13.0
BESIDE_MM = 3.0  # white between a spot or a name and the line
NAME_X_MM = 4.0
_COLUMNS, _GUTTER_MM = 2, 6.0
_UNDER_MM = 4.4  # from the baseline of a name to the top line under it
_AFTER_MM, _MAX_AIR_MM = 2.0, 5.0  # between two rows, and what may be added where a page has room
_MAX_LINES_MM = 92.0  # from the top line to the tails: with a name over it, a place fits on a page that lies
_SPARE_MM = 2.0  # a line is wider than the name on it by so much
_PENCIL_MM = 0.15  # nobody writes between the letters of what an adult reads
NOTE_X_MM = 1.6
_RULE_OVER_MM = 2.5  # so far over where names stand is a rule to write one on, or it reads as a line of those under it
_RULE, _BY_RULE_MM = 0.6, 1.5  # of a place: the rule to write a name on, and the white between it and its line's number
LATE = 2  # places for names that are not in the list yet, at the least


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
        return max(2 * NAME_X_MM, self.named.rise_mm if self.named else 0.0)

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


class _Row(NamedTuple):
    """Places side by side: their names stand on one line, and so do the lines to write on."""

    cells: tuple[Cell, ...]

    @property
    def named_mm(self) -> float:
        """Return how far down the names stand."""
        return max(cell.named_rise_mm for cell in self.cells)

    @property
    def baseline_mm(self) -> float:
        """Return how far down the lines to write on stand."""
        return self.named_mm + _UNDER_MM + max(cell.rise_mm for cell in self.cells)

    @property
    def height_mm(self) -> float:
        """Return the height of it all."""
        return self.baseline_mm + max(cell.drop_mm for cell in self.cells) + _AFTER_MM


def sign_in_pages(setter: Typesetter, cells: Sequence[Cell], settings: SheetSettings) -> tuple[Page, ...]:
    """Return the pages for the places of a class (``place_of``); ``settings`` are those of everyone."""
    settings = settings._replace(ruling=suited(settings.ruling))
    rows = [_Row(row) for row in _packed(cells, settings)]
    heights = [row.height_mm for row in rows]
    room = _begun(setter, settings, len(cells)).room
    pages: list[Page] = []
    for start, end in _parts(heights, room):
        if pages and all(cell.one is None for row in rows[start:end] for cell in row.cells):
            break  # no page for those alone who come later
        frame = _begun(setter, settings, None if pages else len(cells))
        air = min(_MAX_AIR_MM, max(0.0, (frame.room - sum(heights[start:end])) / (end - start)))
        for row in rows[start:end]:
            for column, cell in enumerate(row.cells):
                frame.items += _cell(frame, row, cell, frame.left + column * (_width(settings) + _GUTTER_MM),
                                     frame.right if _is_wide(cell, settings) else None)
            frame.y += row.height_mm + air
        pages.append(frame.page(None if pages else frame.words.say("page.know.signin_outline")))
    return tuple(pages)


def _begun(setter: Typesetter, settings: SheetSettings, count: int | None) -> Frame:
    """Return an empty page; the first has the date, the count and a word for the adult at its head."""
    frame = framed(setter, None, settings)
    if count is not None:
        frame.note(frame.words.say("page.know.signin_count", count=count), NOTE_X_MM)
        frame.y += 2.0
    frame.caption("page.know.signin", Task.ALONE)
    frame.y += 1.0
    return frame


# --- who stands where ---------------------------------------------------------------------------------


def rooms_of(settings: SheetSettings) -> Rooms:
    """Return the room that a line of the list for a day has, right of the spot for a picture."""
    beside = SPOT_MM + BESIDE_MM
    return Rooms(_width(settings) - beside, _width(settings, wide=True) - beside)


def place_of(setter: Typesetter, one: Signer, rooms: Rooms) -> tuple[Cell, Problem | None]:
    """Return a child's place, and what stood in the way of its name: nobody is missing from a list to sign in on.

    Where something did, the child has lines alone, and over them as much of its name as can be shown.
    """
    setter = setter.lettering(one.settings.letters)
    try:
        check_pens(one.settings.ruling)
        ruling, line_ = _fitted(setter, one, rooms.whole_mm - _SPARE_MM)
        room = rooms.column_mm if line_.width_mm <= rooms.column_mm - _SPARE_MM else rooms.whole_mm
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
    while own.support is Support.FULL and line_.width_mm > room_mm and ruling.x_height_mm > NAME_X_MM:
        share = max(0.98 * room_mm / line_.width_mm, NAME_X_MM / ruling.x_height_mm)
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
        natural = setter.ruled(print_ruling(NAME_X_MM)).line(called)
        if natural.width_mm <= room_mm:
            return natural
        return setter.ruled(reading(setter, [called], NAME_X_MM, room_mm)).line(called)
    except MissingLetters:
        return _as_read(setter, as_far_as(setter, called), room_mm, NAME_X_MM)
    except DoesNotFit:
        return _as_read(setter, called, room_mm, MIN_X_MM)


def _as_read(setter: Typesetter, shown: str, room_mm: float, size: float) -> SetLine | None:
    """Set a name as small as it must be, and of one that fits at no size its beginning."""
    ruled = setter.ruled(print_ruling(blocks.fitting(setter, shown, room_mm, size)), 0.0, _PENCIL_MM)
    letters = clusters(shown)
    lines = (ruled.line("".join(letters[:end]).rstrip()) for end in range(len(letters), 0, -1))
    return next((line for line in lines if line.width_mm <= room_mm), None)


def _packed(cells: Sequence[Cell], settings: SheetSettings) -> Iterator[tuple[Cell, ...]]:
    """Yield rows of the page: two names each, a wide one alone, in order but for one that waits for its neighbour."""
    waiting: list[Cell] = []
    for cell in (*cells, *[late(settings)] * LATE):
        if _is_wide(cell, settings):
            yield (cell,)
            continue
        waiting.append(cell)
        if len(waiting) == _COLUMNS:
            yield tuple(waiting)
            waiting = []
    if waiting:
        yield (*waiting, late(settings))


def late(settings: SheetSettings) -> Cell:
    """Return the place of a child who is not in the list yet."""
    return Cell(None, _lowered(settings.ruling), None, None)


def _parts(heights: Sequence[float], room: float) -> list[tuple[int, int]]:
    """Cut rows into the fewest pages, about as many rows on each."""
    fewest = _cut(heights, room, len(heights))
    even = _cut(heights, room, -(-len(heights) // len(fewest)))
    return even if len(even) == len(fewest) else fewest


def _cut(heights: Sequence[float], room: float, most: int) -> list[tuple[int, int]]:
    parts, start = [], 0
    for end in range(1, len(heights) + 1):
        if end == len(heights) or end - start == most or sum(heights[start:end + 1]) > room:
            parts.append((start, end))
            start = end
    return parts


def _width(settings: SheetSettings, *, wide: bool = False) -> float:
    """Return how wide a column is, or all of them."""
    whole = sheet_of(settings.paper, landscape=settings.landscape, binding=settings.binding).room_width
    return whole if wide else (whole - _GUTTER_MM) / _COLUMNS


def _is_wide(cell: Cell, settings: SheetSettings) -> bool:
    return cell.line is not None and cell.line.width_mm > rooms_of(settings).column_mm - _SPARE_MM


# --- what stands there --------------------------------------------------------------------------------


def _cell(frame: Frame, row: _Row, cell: Cell, x: float, right: float | None) -> Iterator[Item]:
    """Yield a child's spot, name and line; in its column, or up to ``right``."""
    x1 = right or x + _width(frame.settings)
    left, named_y, baseline = x + SPOT_MM + BESIDE_MM, frame.y + row.named_mm, frame.y + row.baseline_mm
    yield _spot(x + SPOT_MM / 2, (named_y + baseline) / 2)
    yield from named(frame, cell, left, x1, named_y)
    yield to_write(frame, cell, left, x1, baseline)


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


def _spot(x: float, y: float) -> Ink:
    """Return the ring in which a child's picture or mark has room."""
    return Ink.of(Style(0.3, RULE), (Piece(x, y, _ring()),))


@cache
def _ring() -> Fragment:
    radius = SPOT_MM / 2 - 0.25
    circle = f"M{radius} 0A{radius} {radius} 0 1 1 {-radius} 0A{radius} {radius} 0 1 1 {radius} 0"
    return stroke_fragment([parse_stroke(circle)])


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
