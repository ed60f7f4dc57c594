"""Sign in for a day: every child's name and lines to write it on (``sign_in_place``), each as high as the child's own.

Names stand in two columns, wide ones across both; beside each is a spot for a picture of one's choice. At the end there
is room for children who come later. Millimetres, y down.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from functools import cache

from namewright.letters.strokes import parse_stroke
from namewright.lines.ink import RULE, Fragment, Ink, Piece, Style, stroke_fragment
from namewright.lines.tuned import suited
from namewright.named_tuples import NamedTuple
from namewright.pages.know.frame import Frame, framed
from namewright.pages.know.sign_in_place import LATE, NOTE_X_MM, SPARE_MM, Cell, Rooms, late, named, to_write
from namewright.pages.page import Item, Page
from namewright.pages.paper import sheet_of
from namewright.pages.pictograms import Task
from namewright.pages.sheet_settings import SheetSettings
from namewright.pages.typesetter import Typesetter

_SPOT_MM = 13.0
_BESIDE_MM = 3.0  # white between a spot and the line
_COLUMNS, _GUTTER_MM = 2, 6.0
_UNDER_MM = 4.4  # from the baseline of a name to the top line under it
_AFTER_MM, _MAX_AIR_MM = 2.0, 5.0  # between two rows, and what may be added where a page has room


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
    beside = _SPOT_MM + _BESIDE_MM
    return Rooms(_width(settings) - beside, _width(settings, wide=True) - beside)


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
    return cell.line is not None and cell.line.width_mm > rooms_of(settings).column_mm - SPARE_MM


# --- what stands there --------------------------------------------------------------------------------


def _cell(frame: Frame, row: _Row, cell: Cell, x: float, right: float | None) -> Iterator[Item]:
    """Yield a child's spot, name and line; in its column, or up to ``right``."""
    x1 = right or x + _width(frame.settings)
    left, named_y, baseline = x + _SPOT_MM + _BESIDE_MM, frame.y + row.named_mm, frame.y + row.baseline_mm
    yield _spot(x + _SPOT_MM / 2, (named_y + baseline) / 2)
    yield from named(frame, cell, left, x1, named_y)
    yield to_write(frame, cell, left, x1, baseline)


def _spot(x: float, y: float) -> Ink:
    """Return the ring in which a child's picture or mark has room."""
    return Ink.of(Style(0.3, RULE), (Piece(x, y, _ring()),))


@cache
def _ring() -> Fragment:
    radius = _SPOT_MM / 2 - 0.25
    circle = f"M{radius} 0A{radius} {radius} 0 1 1 {-radius} 0A{radius} {radius} 0 1 1 {radius} 0"
    return stroke_fragment([parse_stroke(circle)])
