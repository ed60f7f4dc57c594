"""Sign in for a week: each name with five places, a day each, in one row where the child's own lines let it fit.

A long name's days take more rows; no line is lower for it. The page lies on its long side. Where days take two or three
rows, the name stands in the place before Monday, else over them; a child whose rows are higher than a page has its name
on each of its pages. Where the next child has no room on a page, one of those that come soon after may fill it.
Millimetres, y down.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from namewright.lines.ink import RULE
from namewright.lines.tuned import suited
from namewright.named_tuples import NamedTuple
from namewright.pages import blocks
from namewright.pages.know.frame import Frame, framed
from namewright.pages.know.sign_in_place import LATE, NOTE_X_MM, Cell, Rooms, late, named, to_write
from namewright.pages.page import Furniture, Page
from namewright.pages.paper import sheet_of
from namewright.pages.pictograms import Task
from namewright.pages.sheet_settings import SheetSettings
from namewright.pages.typesetter import Typesetter

DAYS = 5
_DAY_MM, _DAY_X_MM = 3.4, 1.2  # what a day's name takes over its place, and its x-height
_DAY_OVER_MM = 1.6  # from the top line to a day's name: its tails meet no line
_UNDER_MM = 3.0  # from the baseline of the name to the top line under it: tails reach no letter there
_APART_MM, _AFTER_MM = 4.0, 1.5  # white between two places, wide enough to part them, and under a row
_SPARE_MM = 2.0  # a place is wider than its name by so much
_MAX_AIR_MM = 8.0  # what may be added between two children where a page has room
_SOON = 5  # children that are looked through for one that fills a page: a class stays nearly in its order


def week_rooms(settings: SheetSettings) -> Rooms:
    """Return the room that a line of the list for a week has."""
    whole = sheet_of(settings.paper, landscape=True, binding=settings.binding).room_width
    return Rooms(whole, whole)


def week_pages(setter: Typesetter, cells: Sequence[Cell], settings: SheetSettings) -> tuple[Page, ...]:
    """Return the pages for the places of a class (``sign_in_place.place_of``); ``settings`` are those of everyone."""
    settings = settings._replace(ruling=suited(settings.ruling))
    pages: list[Page] = []
    rooms = [_room(_begun(setter, settings, count)) for count in (len(cells), None)]
    for here in _paged(cells, settings, *rooms):
        frame = _begun(setter, settings, None if pages else len(cells))
        air = min(_MAX_AIR_MM, _left(here, _room(frame)) / len(here))
        for part in here:
            _set(frame, part)
            frame.y += part.height_mm + air
        pages.append(frame.page(None if pages else frame.words.say("page.know.signin_week_outline")))
    return tuple(pages)


def _begun(setter: Typesetter, settings: SheetSettings, count: int | None) -> Frame:
    frame = framed(setter, None, settings, turned=True)
    if count is not None:
        frame.note(frame.words.say("page.know.signin_week_count", count=count), NOTE_X_MM)
        frame.y += 2.0
    frame.caption("page.know.signin_week", Task.ALONE)
    frame.y += 3.0
    return frame


def _room(frame: Frame) -> float:
    """Return the height that is left: under the last row of a page nothing need be white."""
    return frame.room + _AFTER_MM


# --- who stands where ---------------------------------------------------------------------------------


class _Part(NamedTuple):
    """Rows of a child that stay on one page: places in a row, the days, and whether the name has a place, too."""

    cell: Cell
    across: int
    days: range
    beside: bool = False

    @property
    def rows(self) -> int:
        """Return how many rows there are."""
        return -(-(len(self.days) + self.beside) // self.across)

    @property
    def over_mm(self) -> float:
        """Return what is taken over the first row: by the name, or by the names of days alone."""
        return _DAY_MM if self.beside else self.cell.named_rise_mm + _UNDER_MM

    @property
    def row_mm(self) -> float:
        """Return the height of a row, with nothing over it."""
        return self.cell.rise_mm + self.cell.drop_mm + _AFTER_MM

    @property
    def height_mm(self) -> float:
        """Return the height of it all."""
        return self.over_mm + self.rows * self.row_mm + (self.rows - 1) * _DAY_MM


def _paged(cells: Sequence[Cell], settings: SheetSettings, first: float, room: float) -> list[list[_Part]]:
    """Return what stands on each page, where the ``first`` has another room than the others."""
    width = week_rooms(settings).whole_mm
    waiting = [part for cell in cells for part in _parts(cell, width, room)]
    pages: list[list[_Part]] = []
    while waiting:
        here = room if pages else first
        if waiting[0].height_mm > here:
            waiting[:1] = _parts(waiting[0].cell, width, here)
        pages.append(_taken(waiting, here))
    (spare,) = _parts(late(settings), width, room)
    rooms = [first, *[room] * len(pages)]
    return _with_spares(pages, rooms, spare)


def _with_spares(pages: list[list[_Part]], rooms: Sequence[float], spare: _Part) -> list[list[_Part]]:
    """Add places for children who come later: on the last pages that have room for them, or on one more page.

    There the last child of the page before goes with them, so that no page is for them alone; where none can go, they
    are left out.
    """
    fitting = [at for at, page in enumerate(pages) for _ in range(int(_left(page, rooms[at]) // spare.height_mm))]
    if len(fitting) >= LATE:
        for at in fitting[-LATE:]:
            pages[at].append(spare)
        return pages
    several = [at for at, page in enumerate(pages)
               if len(page) > 1 and page[-1].height_mm + LATE * spare.height_mm <= rooms[-1]]
    if several:
        at = several[-1]
        pages.insert(at + 1, [pages[at].pop(), *[spare] * LATE])
    return pages


def _left(page: Sequence[_Part], room: float) -> float:
    return room - sum(part.height_mm for part in page)


def _parts(cell: Cell, width: float, room: float) -> list[_Part]:
    """Return a child's rows, in parts where they are higher than a page; every part has the name."""
    across = max(1, min(DAYS + 1, int((width + _APART_MM) // (_wide(cell) + _SPARE_MM + _APART_MM))))
    best = min(_ways(cell, across, width), key=lambda way: way.height_mm)
    if best.height_mm <= room:
        return [best]
    each = best.across
    while each < DAYS and _Part(cell, best.across, range(each + best.across)).height_mm <= room:
        each += best.across
    return [_Part(cell, best.across, range(start, min(start + each, DAYS))) for start in range(0, DAYS, each)]


def _wide(cell: Cell) -> float:
    """Return how wide a name is that is written on its lines; where these are bare, about as the one to read is."""
    if cell.line is None and cell.named is not None:
        return cell.named.width_mm * cell.ruling.x_height_mm / cell.named.ruling.x_height_mm
    return cell.line.width_mm if cell.line else 0.0


def _ways(cell: Cell, across: int, width: float) -> Iterator[_Part]:
    """Yield rows with the name over them, then with the name in the first of six places, where it has room there."""
    yield _Part(cell, -(-DAYS // -(-DAYS // across)), range(DAYS))
    for places in (6, 3, 2):
        if places <= across and cell.named and cell.named.width_mm <= (width + _APART_MM) / places - _APART_MM:
            yield _Part(cell, places, range(DAYS), beside=True)


def _taken(waiting: list[_Part], room: float) -> list[_Part]:
    """Take what stands on a page: the next, then of those that come soon whichever has room, in their order.

    No part of a child goes before another of it.
    """
    taken: list[_Part] = []
    passed: list[Cell] = []
    at = 0
    while at < len(waiting) and at < _SOON:
        part = waiting[at]
        if part.height_mm <= room and all(part.cell is not cell for cell in passed):
            taken.append(waiting.pop(at))
            room -= part.height_mm
        else:
            passed.append(part.cell)
            at += 1
    return taken


# --- what stands there --------------------------------------------------------------------------------


def _set(frame: Frame, part: _Part) -> None:
    """Set a name to read, and under or beside it its places, the day over the right end of each."""
    cell, step = part.cell, (frame.right - frame.left + _APART_MM) / part.across
    baseline = frame.y + (part.over_mm + cell.rise_mm if part.beside else cell.named_rise_mm)
    frame.items += named(frame, cell, frame.left, frame.left + step, baseline)
    for at, day in enumerate(part.days, start=int(part.beside)):
        row, column = divmod(at, part.across)
        top, x = frame.y + part.over_mm + row * (part.row_mm + _DAY_MM), frame.left + column * step
        right = x + step - _APART_MM
        frame.items += (_day(frame, day, right, top - _DAY_OVER_MM),
                        to_write(frame, cell, x, right, top + cell.rise_mm))


def _day(frame: Frame, day: int, right: float, baseline: float) -> Furniture:
    said = frame.words.say(f"page.know.day_{day + 1}")
    x = right - frame.setter.text_width(said, _DAY_X_MM)
    return Furniture((blocks.text_at(frame.setter, said, x, baseline, _DAY_X_MM, RULE),))
