"""A finished page: its size and the items placed on it, nothing left to decide.

Millimetres, origin at the top left corner of the sheet, y down. Layout builds pages; exporters translate them
item by item. Out of scope: file formats (``output``).
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from enum import StrEnum

from namewright.geometry.boxes import Box
from namewright.lines.ink import Ink, Style
from namewright.lines.ruling import GuideLine
from namewright.message import Problem
from namewright.named_tuples import NamedTuple

SAFE_EDGE_MM = 10.0  # clear of printers' unprintable edges (6.35 mm is the safe rule) and of a sleeve's seam
_SLACK_MM = 0.01


class Guide(NamedTuple):
    """A printed guide line from ``x0`` to ``x1`` at height ``y``; ``line`` is None for a band line."""

    line: GuideLine | None
    x0: float
    x1: float
    y: float
    style: Style

    def bounds(self) -> Box:
        """Return the box that the line covers."""
        reach = self.style.width_mm / 2
        return (self.x0, self.y - reach, self.x1, self.y + reach)


class Tile(NamedTuple):
    """A letter-tile box with its top left corner at (``x``, ``y``) and the letter that belongs in it."""

    x: float
    y: float
    width: float
    height: float
    letter: str
    style: Style

    def bounds(self) -> Box:
        """Return the box that its outline covers."""
        reach = self.style.width_mm / 2
        return (self.x - reach, self.y - reach, self.x + self.width + reach, self.y + self.height + reach)


class Row(NamedTuple):
    """One row of a name: its guide lines and its letters. ``form`` is the word in the SVG's ``data-form``."""

    name: str
    form: str
    items: tuple[Guide | Ink, ...]


class Letters(NamedTuple):
    """Single letters of a name with their stroke marks, each on guide lines of its own: not a row to read as a word."""

    name: str
    items: tuple[Guide | Ink, ...]


class Furniture(NamedTuple):
    """What a page shares with its neighbours: captions, the check bar. Exporters may draw it once for all.

    What ``bleeds`` runs off the paper at both sides, as a line to fold along does: a printer may cut its ends off.
    """

    items: tuple[Ink, ...]
    bleeds: bool = False


class Place(StrEnum):
    """What a reader that speaks tells of where it is: a table, a row, a cell, what heads a column or a row; a list."""

    TABLE = "table"
    ROW = "row"
    COLUMN_HEAD = "column head"
    ROW_HEAD = "row head"
    CELL = "cell"
    LIST = "list"
    ENTRY = "entry"


class Placed(NamedTuple):
    """Items in a place: a table holds rows and these cells and heads, a list its entries. A cell may be empty."""

    place: Place
    items: tuple[Item, ...]


class Chart(NamedTuple):
    """Marks that a sentence tells to whoever cannot see them."""

    told: str
    items: tuple[Ink, ...]


Item = Guide | Tile | Ink | Row | Letters | Furniture | Placed | Chart
_WHOLES = frozenset({Row, Letters, Furniture, Placed, Chart})  # what has items of its own


class Page(NamedTuple):
    """A page: size in mm, items in drawing order, and the outline entry that begins here (None: no entry).

    ``edge_mm`` is the margin that its check holds clear of ink.
    """

    width_mm: float
    height_mm: float
    items: tuple[Item, ...]
    outline: str | None = None
    edge_mm: float = SAFE_EDGE_MM


class PageError(Problem):
    """A page breaks its own promises; ``violations`` in the message lists every one, for whoever develops."""

    def __init__(self, violations: Sequence[str]) -> None:
        super().__init__("page.broken", violations=tuple(violations))


def leaves(items: Iterable[Item]) -> list[Guide | Tile | Ink]:
    """Return the drawn items, groups opened, in drawing order."""
    found: list[Guide | Tile | Ink] = []
    for item in items:
        if type(item) in _WHOLES:
            found += leaves(item.items)  # type: ignore[union-attr]
        else:
            found.append(item)  # type: ignore[arg-type]
    return found


def kept_off_edges(items: Iterable[Item]) -> Iterator[Item]:
    """Yield the items that must keep off the edges of their page: all but those that run off it."""
    return (item for item in items if not (isinstance(item, Furniture) and item.bleeds))


def added(items: list[Item], whole: Place, part: Placed) -> None:
    """Add a row to the table, or an entry to the list, that ends the items; where none does, one begins."""
    last = items[-1] if items else None
    if isinstance(last, Placed) and last.place is whole:
        items[-1] = Placed(whole, (*last.items, part))
    else:
        items.append(Placed(whole, (part,)))


def checked(page: Page) -> Page:
    """Return the page if all its ink is inside the margins; else raise PageError."""
    problems = list(_violations(page))
    if problems:
        raise PageError(problems)
    return page


def _violations(page: Page) -> Iterator[str]:
    edge = page.edge_mm - _SLACK_MM
    right, bottom = page.width_mm - edge, page.height_mm - edge
    for item in leaves(kept_off_edges(page.items)):
        x0, y0, x1, y1 = item.bounds()
        if x0 < edge or y0 < edge or x1 > right or y1 > bottom:
            yield (f"{type(item).__name__.lower()} reaches from ({x0:.2f}, {y0:.2f}) to ({x1:.2f}, {y1:.2f}) mm, "
                   f"outside the {page.edge_mm:g} mm margin of a {page.width_mm:g} × {page.height_mm:g} mm page")
