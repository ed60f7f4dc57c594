"""What tests look for on a page: rows and their lines, blocks of a colour, check bars. Millimetres, y down."""

from __future__ import annotations

import pytest

from namewright.geometry import boxes
from namewright.geometry.boxes import Box
from namewright.lines.forms import Form
from namewright.lines.ink import PALE, Ink
from namewright.lines.ruling import GuideLine
from namewright.pages.page import Guide, Item, Page, Row, leaves


def rows(page: Page) -> list[Row]:
    """Return the rows of a page, in its order."""
    return [item for item in page.items if isinstance(item, Row)]


def lines_of(row: Row) -> dict[GuideLine | None, float]:
    """Return how far down each line of a row stands."""
    return {item.line: item.y for item in row.items if isinstance(item, Guide)}


def ink_of(row: Row) -> list[Ink]:
    """Return what is written in a row."""
    return [item for item in row.items if isinstance(item, Ink)]


def letters_of(row: Row) -> list[Box]:
    """Return the box of every letter in a row of dots from left to right, pens counted, without pale lines."""
    return sorted(boxes.grown(piece.bounds(), ink.style.width_mm / 2)
                  for ink in ink_of(row) if ink.style.colour != PALE for piece in ink.pieces)


def box_of(row: Row) -> Box:
    """Return the box of a row's letters and guide lines."""
    return boxes.joined(item.bounds() for item in row.items)


def blocks_of(page: Page, fill: str) -> list[tuple[float, float]]:
    """Return width and height of each filled block of a colour, edges left out."""
    inks = [ink for ink in leaves(page.items) if isinstance(ink, Ink) and ink.style.fill == fill]
    bounds = [(ink.bounds(), ink.style.width_mm) for ink in inks]
    return [(round(x1 - x0 - edge, 2), round(y1 - y0 - edge, 2)) for (x0, y0, x1, y1), edge in bounds]


def bars(page: Page) -> list[Box]:
    """Return the boxes of the check bars of a page: a level line of 50 mm with a tick at either end."""
    found = [item for item in leaves(page.items) if isinstance(item, Ink) and len(item.pieces) == 3]
    return [one.bounds() for one in found
            if one.pieces[0].bounds()[2] - one.pieces[0].bounds()[0] == pytest.approx(50, abs=1e-9)]


def rows_in(pages: tuple[Page, ...], form: Form | None = None) -> list[Row]:
    """Return the rows of pages, of one form where that is asked for."""
    return [item for page in pages for item in page.items
            if isinstance(item, Row) and (form is None or item.form == form)]


def base_of(row: Row) -> float:
    """Return the height on the page of a row's printed base line."""
    return next(item.y for item in row.items if isinstance(item, Guide) and item.line is GuideLine.BASE)


def room_of(row: Row) -> Box:
    """Return the box of a row's guide lines."""
    return boxes.joined(item.bounds() for item in row.items if isinstance(item, Guide))


def is_mark(item: Item) -> bool:
    """Say whether something is one dot."""
    return isinstance(item, Ink) and [piece.fragment.data for piece in item.pieces] == ["m0 0h0"]


def start_marks(page: Page) -> list[Box]:
    """Return the boxes of the start dots of a page: no other dot stands outside rows and furniture."""
    return [item.bounds() for item in page.items if is_mark(item)]
