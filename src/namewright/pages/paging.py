"""Which parts of a child's sheet stand on which page, and how much air lies between them.

One page where what is needed fits, with the air that the ruling has or with less: then a caption stands in the
white under a row, and the white between two rows is still all that the ruling asks for. Else several pages, filled
up with copying and writing from memory. The line height is never touched. Millimetres.

Out of scope: what the parts look like (``sheet``) and which there are (``ladder``).
"""

from __future__ import annotations

import math
from collections.abc import Callable, Iterator, Sequence
from functools import lru_cache
from itertools import groupby

from namewright.lines.fit import DoesNotFit
from namewright.message import message
from namewright.named_tuples import NamedTuple
from namewright.pages.ladder import Part, in_order

CAPTION_MM = 7.0
FOLD_MM = 4.0
_MAX_SPREAD_MM = 6.0
_ROUND = (Part.COPY, Part.MEMORY)  # in turn, until the page is full
_ORDER = tuple(Part)


class TooTall(DoesNotFit):
    """The rows that belong together are higher than a page."""

    def __init__(self, name: str, needed_mm: float, room_mm: float) -> None:
        super().__init__(name, needed_mm, room_mm, message("fit.page", name=name, needed=math.ceil(needed_mm),
                                                           room=math.floor(room_mm)))


class Block(NamedTuple):
    """A part, with the rows of the name that it holds: all, unless they are too high for one page."""

    part: Part
    rows: tuple[int, ...]


class Heights(NamedTuple):
    """How high everything on a sheet is, in mm.

    A row takes ``rise`` over its baseline and ``drop`` to the next row of its part; ``foot`` is what the last row
    of a part takes. ``least_drop`` and ``least_foot`` are as little as these may be. ``over_model`` and ``over_marked``
    are the headroom that stroke marks add to each row of those parts, and ``strip`` the height of marked letters under
    the model; ``tail`` is how much of ``least_foot`` only printed tails need; ``doubled`` tells that the model to copy
    has a row of its own. ``blank`` is the most that rows take between which nothing is printed.
    """

    room: float
    rise: float
    drop: float
    foot: float
    least_drop: float
    least_foot: float
    tiles: float
    doubled: bool
    over_model: float = 0.0
    over_marked: float = 0.0
    strip: float = 0.0
    tail: float = 0.0
    blank: float = math.inf

    def page(self, blocks: Sequence[Block], drop: float, foot: float) -> float:
        """Return the height of blocks that stand on one page."""
        return sum(CAPTION_MM + (FOLD_MM if part is Part.MEMORY else 0.0) + self.group(part, group, drop, foot)
                   for part, group in grouped(blocks))

    def group(self, part: Part, blocks: Sequence[Block], drop: float, foot: float) -> float:
        """Return the height of a part's rows, its caption not counted."""
        if part is Part.TILES:
            return self.tiles
        rows = sum(len(block.rows) for block in blocks) * (2 if part is Part.COPY and self.doubled else 1)
        strip = self.strip if part is Part.MODEL else 0.0
        ends_blank = part is Part.MEMORY or (part is Part.COPY and self.doubled)
        return (rows * (self.rise + self.over(part)) + (rows - 1) * self.under(part, drop) + strip
                + (self._under_blank(foot) if ends_blank else foot))

    def over(self, part: Part) -> float:
        """Return the headroom that stroke marks add to each row of a part."""
        return self.over_model if part is Part.MODEL else self.over_marked if part is Part.MARKED else 0.0

    def under(self, part: Part, drop: float) -> float:
        """Return what a row of a part takes where others take ``drop``: no tail is printed on rows for memory."""
        return min(drop, self.blank) if part is Part.MEMORY else drop

    def _under_blank(self, foot: float) -> float:
        """Return what lies under a part that ends in a row to write on, where others have ``foot``.

        No tail is printed there: the less air a page has, the more of the room for tails goes to what is built and
        written, and the child's own tails hang into the white of the next caption.
        """
        spared = 1.0 if self.foot <= self.least_foot else (self.foot - foot) / (self.foot - self.least_foot)
        return foot - self.tail * min(1.0, max(0.0, spared))

    def airy(self, blocks: Sequence[Block]) -> bool:
        """Return whether blocks fit on one page with all the air that they may have."""
        return self.page(blocks, self.drop, self.foot) <= self.room

    def tight(self, blocks: Sequence[Block]) -> bool:
        """Return whether blocks fit on one page with the least air under each part."""
        return self.page(blocks, self.drop, self.least_foot) <= self.room

    def close(self, blocks: Sequence[Block]) -> bool:
        """Return whether blocks fit on one page with the least air under each row."""
        return self.page(blocks, min(self.drop, self.least_drop), self.least_foot) <= self.room


class Plan(NamedTuple):
    """A page to be: its blocks from top to bottom, what rows take (see ``Heights``), and ``spread`` over captions."""

    blocks: tuple[Block, ...]
    drop: float
    foot: float
    spread: float


def grouped(blocks: Sequence[Block]) -> Iterator[tuple[Part, list[Block]]]:
    """Yield each part with its blocks."""
    for part, group in groupby(blocks, key=lambda block: block.part):
        yield part, list(group)


@lru_cache(maxsize=500)  # the names of a class lead to a handful of heights
def planned(heights: Heights, rows: int, needed: tuple[Part, ...], wished: tuple[Part, ...], most: int | None,
            ) -> tuple[Plan, ...] | None:
    """Plan a sheet for a name in ``rows`` rows; None where rows that belong together are higher than a page.

    Boxes for tiles that are wished for and find no room are worth a page more, which then has rows to copy on and to
    write from memory as well. All else that is ``wished`` is added while there is room, then copying and memory in
    turn, until there are ``most`` parts to write on in all (None: as many as fit).
    """
    plans = _plans(heights, rows, needed, wished, most)
    if plans is None or Part.TILES not in wished or any(_has_tiles(plan) for plan in plans):
        return plans
    rest = tuple(part for part in wished if part is not Part.TILES)
    return _plans(heights, rows, (*needed, Part.TILES), rest, most) or plans


def _has_tiles(plan: Plan) -> bool:
    return any(block.part is Part.TILES for block in plan.blocks)


def _plans(heights: Heights, rows: int, needed: Sequence[Part], wished: Sequence[Part], most: int | None,
           ) -> tuple[Plan, ...] | None:
    filling = _Filling(heights, tuple(range(rows)), list(wished), most, sum(map(_is_written, needed)))
    pages = _dealt(heights, [Block(part, filling.rows) for part in in_order(needed)])
    plans = [_aired(heights, filling.filled(page)) for page in pages]
    return tuple(plan for plan in plans if plan) if all(plans) else None


class _Filling:
    """What may still be added to the pages of a sheet, and how many parts to write on they have already."""

    def __init__(self, heights: Heights, rows: tuple[int, ...], wished: list[Part], most: int | None,
                 written: int) -> None:
        self.heights, self.rows, self.wished, self.most, self.written = heights, rows, wished, most, written

    def filled(self, page: list[Block]) -> list[Block]:
        """Return a page with what is wished for, then with copying and memory in turn, while there is room."""
        for part in tuple(self.wished):
            if self._takes(page, part):
                page = self._with(page, part)
                self.written += _is_written(part)
                self.wished.remove(part)
        while any(self._takes(page, part) for part in _ROUND):
            for part in _ROUND:
                if self._takes(page, part):
                    page = self._with(page, part)
                    self.written += _is_written(part)
        return page

    def _takes(self, page: Sequence[Block], part: Part) -> bool:
        full = self.most is not None and self.written >= self.most
        fits = self.heights.tight if part is Part.TILES else self.heights.airy  # building before more air
        return not (full and _is_written(part)) and fits(self._with(page, part))

    def _with(self, page: Sequence[Block], part: Part) -> list[Block]:
        """Return a page with one more part; where a row of the name has a page to itself, that row's."""
        rows = {block.rows for block in page}
        return _sorted([*page, Block(part, rows.pop() if len(rows) == 1 and part in _ROUND else self.rows)])


def _sorted(blocks: Sequence[Block]) -> list[Block]:
    return sorted(blocks, key=lambda block: _ORDER.index(block.part))


def _is_written(part: Part) -> bool:
    return part not in (Part.MODEL, Part.TILES)


def _dealt(heights: Heights, blocks: list[Block]) -> list[list[Block]]:
    """Deal blocks onto pages in their order: with all air, unless less air saves a page."""
    pieces = [piece for block in blocks for piece in _pieces(heights, block)]
    airy, tight = _run(pieces, heights.airy), _run(pieces, heights.tight)
    return tight if len(tight) < len(airy) else airy


def _pieces(heights: Heights, block: Block) -> list[Block]:
    """Return a block, or where it is higher than a page one for each row of the name."""
    return [block] if heights.tight([block]) else [Block(block.part, (row,)) for row in block.rows]


def _run(pieces: Sequence[Block], fits: Callable[[Sequence[Block]], bool]) -> list[list[Block]]:
    pages: list[list[Block]] = [[]]
    for piece in pieces:
        if pages[-1] and not fits([*pages[-1], piece]):
            pages.append([])
        pages[-1].append(piece)
    return pages


def _aired(heights: Heights, blocks: list[Block]) -> Plan | None:
    """Spread the blocks of a page over its room, or draw them together as far as they must be and may be."""
    natural = heights.page(blocks, heights.drop, heights.foot)
    least = heights.page(blocks, heights.drop, heights.least_foot)
    if natural <= heights.room:
        groups = len(list(grouped(blocks)))
        return Plan(tuple(blocks), heights.drop, heights.foot, min(_MAX_SPREAD_MM, (heights.room - natural) / groups))
    if least <= heights.room:
        share = (heights.room - least) / (natural - least)
        foot = heights.least_foot + share * (heights.foot - heights.least_foot)
        return Plan(tuple(blocks), heights.drop, foot, 0.0)
    if heights.close(blocks):
        return Plan(tuple(blocks), heights.least_drop, heights.least_foot, 0.0)
    return None
