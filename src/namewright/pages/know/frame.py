"""What the pages to know a name share: the owner's line, captions, the check bar, and names set to be read.

Millimetres, y down.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, field

from namewright.lines.fit import DoesNotFit
from namewright.lines.forms import Form
from namewright.lines.ink import Ink, passage
from namewright.lines.ruling import Ruling, print_ruling
from namewright.lines.setting import SetLine, pen_width_mm
from namewright.lines.tuned import check_pens
from namewright.message import Message, message
from namewright.pages import blocks
from namewright.pages.page import Furniture, Item, Page, Row, checked
from namewright.pages.paper import GUTTER_MM, HEADER_MM, SIGN_OVER_MM, Sheet, sheet_of
from namewright.pages.pictograms import Task, pictogram
from namewright.pages.sheet_settings import SheetSettings
from namewright.pages.typesetter import Typesetter
from namewright.wording import Wording, wording

FOOTER_MM = 6.0
LINE_MM = 5.6  # from one line of a caption to the next
MIN_X_MM = 2.5  # x-height of a name to read: under this it is no name for a child of four


@dataclass
class Frame:
    """One page as it grows: what stands on it, and how far down it is filled (``y``)."""

    setter: Typesetter
    settings: SheetSettings
    words: Wording
    sheet: Sheet
    y: float
    gutter_mm: float = 0.0
    items: list[Item] = field(default_factory=list)

    @property
    def left(self) -> float:
        """Return where rows begin."""
        return self.sheet.left_mm + self.gutter_mm

    @property
    def right(self) -> float:
        """Return where rows end."""
        return self.sheet.right_edge

    @property
    def room(self) -> float:
        """Return the height that is left over the check bar."""
        return self.sheet.foot - FOOTER_MM - self.y

    @property
    def spacing(self) -> float:
        """Return the child's own letter spacing."""
        return self.settings.tuning.letter_spacing or 0.0

    def caption(self, key: str, task: Task) -> None:
        """Write a sentence for the child, in as many lines as it takes, its pictogram beside it, and go on below it."""
        x = self.sheet.left_mm + GUTTER_MM
        lines = self.setter.wrapped(self.words.say(key), self.right - x, blocks.TEXT_MM)
        placed = (blocks.text_at(self.setter, line, x, self.y + 3.8 + at * LINE_MM) for at, line in enumerate(lines))
        self.items += [Furniture((pictogram(task, self.sheet.left_mm, self.y - SIGN_OVER_MM),)),
                       Furniture(passage(placed))]
        self.y += 3.8 + LINE_MM * (len(lines) - 1) + 3.2

    def note(self, text: str, size_mm: float = blocks.CHECK_NOTE_MM) -> None:
        """Write a small passage for an adult and go on below it."""
        lines = self.setter.wrapped(text, self.right - self.left, size_mm)
        self.items.append(Furniture(passage(
            blocks.text_at(self.setter, line, self.left, self.y + 3.0 + at * 2.8 * size_mm, size_mm)
            for at, line in enumerate(lines))))
        self.y += 2.8 * size_mm * len(lines) + 1.5

    def row(self, line: SetLine, form: Form, baseline: float, inks: Sequence[Ink] | None = None) -> Row:
        """Return a ruled row across the page, with a line in one form unless its ``inks`` are given."""
        x = self.left + pen_width_mm(line.ruling) / 2
        drawn = blocks.letters_at(self.setter, line, form, x, baseline) if inks is None else inks
        return blocks.ruled_row(line.text, form, line.ruling, self.left, self.right, baseline, drawn)

    def page(self, outline: str | None) -> Page:
        """Return the finished page. Raises PageError."""
        bar = blocks.adults_foot(self.setter, self.words, self.left, self.sheet.foot - 1.5, whose=self.settings.whose)
        return checked(Page(self.sheet.width_mm, self.sheet.height_mm, (*self.items, Furniture(bar)), outline))


def framed(setter: Typesetter, label: str | None, settings: SheetSettings, *, turned: bool = False,
           date: str = "page.date") -> Frame:
    """Return an empty page for a child, or for nobody in particular; ``date`` is what is said before its date.

    Raises TooWide for pens that do not suit.
    """
    check_pens(settings.ruling)
    sheet = sheet_of(settings.paper, landscape=settings.landscape or turned, binding=settings.binding)
    words = wording(settings.language)
    frame = Frame(setter, settings, words, sheet, sheet.top_mm)
    if label is not None:
        frame.gutter_mm = GUTTER_MM
        frame.items += blocks.owner_line(setter, words, label, frame.left, frame.right, sheet.top_mm, date=date)
        frame.y += HEADER_MM
    return frame


def left_out(key: str, children: Sequence[str]) -> tuple[Message, ...]:
    """Return what the adult reads of children whose names our letters cannot draw; nothing where there are none."""
    return (message(key, count=len(children), names=tuple(children)),) if children else ()


def reading(setter: Typesetter, names: Iterable[str], x_height_mm: float, room_mm: float, spacing_mm: float = 0.0, *,
            least_mm: float = MIN_X_MM) -> Ruling:
    """Return the unseen ruling on which all names are as tall as wished, or smaller, so that each fits into the room.

    Raises DoesNotFit where a name is too wide on one ``least_mm`` tall, by default as small as a child can still read;
    MissingLetters.
    """
    names = tuple(names)
    size = x_height_mm
    while True:
        ruling = print_ruling(size)
        line = max((setter.ruled(ruling, spacing_mm).line(name) for name in names), key=lambda one: one.width_mm)
        if line.width_mm <= room_mm:
            return ruling
        smaller = max(MIN_X_MM, size * min(0.97, room_mm / line.width_mm))
        if size <= MIN_X_MM or smaller < least_mm:
            raise DoesNotFit(line.text, line.width_mm, room_mm)
        size = smaller


def name_at(setter: Typesetter, line: SetLine, x: float, baseline: float) -> Row:
    """Return a name to read, without lines, its ink beginning at ``x``; a reader hears it as a name."""
    inks = blocks.letters_at(setter, line, Form.SOLID, x + pen_width_mm(line.ruling) / 2, baseline)
    return Row(line.text, "name", inks)
