"""Pages of a plan being filled from the top: running text, headings, and blocks that go to the next page whole.

Millimetres, y down. Out of scope: what stands on the pages (``pages``, ``child_rows``, ``week_table``).
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, field

from namewright.lines.ink import Ink, Role
from namewright.pages.drawable import drawable
from namewright.pages.page import Item, Place, Placed, added
from namewright.pages.paper import Sheet
from namewright.pages.typesetter import Typesetter

HEAD_MM, TEXT_MM, SMALL_MM = 1.9, 1.5, 1.3  # x-heights
LEADING = 2.9  # line step, in x-heights
MIN_MM = 1.05  # smaller letters are not read


@dataclass
class Flow:
    """Pages being filled; what does not fit goes to the next page whole."""

    setter: Typesetter
    sheet: Sheet
    y: float = 0.0
    pages: list[list[Item]] = field(default_factory=lambda: [[]])

    def __post_init__(self) -> None:
        self.y = self.sheet.top_mm

    def room(self, height: float) -> None:
        """Go to a new page unless ``height`` mm are free here."""
        if self.y + height > self.sheet.foot:
            self.turn()

    def left(self) -> float:
        """Return how many mm are free on this page."""
        return self.sheet.foot - self.y

    def turn(self) -> None:
        """Go to a new page, unless this one is empty."""
        if self.pages[-1]:
            self.pages.append([])
            self.y = self.sheet.top_mm

    def put(self, items: Sequence[Item], height: float) -> None:
        """Set down items made for the current height, and go on below them."""
        self.pages[-1] += items
        self.y += height

    def put_in(self, whole: Place, part: Placed, height: float) -> None:
        """Set down a row of a table or an entry of a list; those that follow each other on a page belong together."""
        added(self.pages[-1], whole, part)
        self.y += height

    def entry(self, text: str, size: float = TEXT_MM) -> None:
        """Set running text as an entry of a list."""
        inks, height = self._set(text, size, self.sheet.left_mm, self.sheet.room_width, Role.PROSE)
        self.put_in(Place.LIST, Placed(Place.ENTRY, tuple(inks)), height)

    def say(self, text: str, size: float = TEXT_MM, *, x: float | None = None, width: float | None = None,
            role: Role = Role.PROSE) -> None:
        """Set running text, wrapped; not broken over two pages."""
        left = self.sheet.left_mm if x is None else x
        room = self.sheet.right_edge - left if width is None else width
        self.put(*self._set(text, size, left, room, role))

    def _set(self, text: str, size: float, left: float, width: float, role: Role) -> tuple[list[Ink], float]:
        """Return a text from the current height on, of the next page where it has no room on this, and its height."""
        lines = self.setter.wrapped(drawable(self.setter, text), width, size)
        self.room(len(lines) * size * LEADING)
        inks: list[Ink] = []
        for count, words in enumerate(lines):
            base = self.y + count * size * LEADING + size * (LEADING - 0.9)
            first, *more = (ink.moved(left, base) for ink in self.setter.words(words, size))
            inks += [first.read_as(role, goes_on=count > 0), *more]
        return inks, len(lines) * size * LEADING

    def heading(self, text: str, keep_mm: float) -> None:
        """Set a heading that stays together with what follows it."""
        self.room(4.0 + HEAD_MM * LEADING + keep_mm)
        self.y += 3.0 if self.pages[-1] else 0.0
        self.say(text, HEAD_MM, role=Role.HEADING)


def packed(setter: Typesetter, pieces: Iterable[str], room: float, size: float) -> tuple[str, ...]:
    """Return pieces of a text put together into lines that fit; a piece too wide even in small letters is cut."""
    lines = [""]
    for piece in pieces:
        for part in setter.breakable(piece, room, MIN_MM) if _too_wide(setter, piece, room) else (piece,):
            if lines[-1] and setter.text_width((lines[-1] + part).strip(), size) > room:
                lines.append("")
            lines[-1] += part
    return tuple(line.strip() for line in lines)


def _too_wide(setter: Typesetter, piece: str, room: float) -> bool:
    return setter.text_width(piece.strip() or "-", MIN_MM) > room


def fitted(setter: Typesetter, text: str, x: float, baseline: float, room: float, size: float = TEXT_MM,
           ) -> tuple[Ink, ...]:
    """Return a text in the room there is: smaller where it must be, and cut where that is not enough."""
    if not text.strip():
        return ()
    text = drawable(setter, text)
    while setter.text_width(text, size) > room and size > 1.0:
        size = round(size - 0.1, 2)
    while len(text) > 1 and setter.text_width(text, size) > room:
        text = text[:-2].rstrip() + "."
    return (setter.text(text, size).moved(x, baseline),)
