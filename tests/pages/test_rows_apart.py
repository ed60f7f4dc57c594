"""Rows of a sheet are told apart: tails keep clear of the next row's lines, and no lines of two rows read as a pair.

Measured on the ink that is placed on the pages, over all rulings, levels of support and hands. Millimetres, y down.
"""

from __future__ import annotations

from collections.abc import Iterator
from itertools import permutations
from typing import NamedTuple

import pytest

from namewright.lines.ink import Ink
from namewright.lines.ruling import PRESETS, GuideLine, Ruling
from namewright.pages.page import Guide, Page, Row
from namewright.pages.sheet import practice_pages
from namewright.pages.sheet_settings import SheetSettings
from namewright.pages.typesetter import Typesetter
from namewright.settings import Hand, Support

CLEAR_MM = 2.0
FOUR = [ruling for ruling in PRESETS.values() if {GuideLine.TOP, GuideLine.DESCENDER} <= ruling.lines
        and not ruling.bands_mm]


class Drawn(NamedTuple):
    """A row as drawn: how far it reaches to left and right, its lines from the top, and how low its letters reach."""

    left: float
    right: float
    lines: list[float]
    lowest: float | None


def drawn(page: Page) -> Iterator[Drawn]:
    """Yield the ruled rows of a page."""
    for item in page.items:
        if isinstance(item, Row):
            boxes = [part.bounds() for part in item.items]
            lines = sorted((y0 + y1) / 2 for _, y0, _, y1 in (one.bounds() for one in item.items
                                                              if isinstance(one, Guide)))
            inks = [one.bounds()[3] for one in item.items if isinstance(one, Ink)]
            if lines:
                yield Drawn(min(box[0] for box in boxes), max(box[2] for box in boxes), lines, max(inks, default=None))


def stacked(page: Page) -> Iterator[tuple[Drawn, Drawn]]:
    """Yield each two rows of which one lies under the other."""
    for upper, lower in permutations(drawn(page), 2):
        if upper.left < lower.right and lower.left < upper.right and upper.lines[-1] < lower.lines[-1]:
            yield upper, lower


def pages(setter: Typesetter, name: str, ruling: Ruling) -> Iterator[Page]:
    """Yield the sheets of a name at every level of support, for three hands."""
    for support in Support:
        for hand in Hand:
            yield from practice_pages(setter, name, name, SheetSettings(ruling=ruling, support=support, hand=hand))


@pytest.mark.parametrize("ruling", PRESETS.values(), ids=lambda ruling: ruling.name)
def test_tails_stay_clear_of_the_row_beneath(setter: Typesetter, ruling: Ruling) -> None:
    """Where a printed tail hangs over a row, 2 mm are white down to the first line of that row."""
    for page in pages(setter, "Peggy Jay", ruling):
        for upper, lower in stacked(page):
            if upper.lowest is not None:
                assert lower.lines[0] - upper.lowest >= CLEAR_MM - 0.01


@pytest.mark.parametrize("ruling", FOUR, ids=lambda ruling: ruling.name)
@pytest.mark.parametrize("name", ["Mo", "Jaqueline-Quigley"])
def test_the_lines_of_two_rows_are_no_pair(setter: Typesetter, ruling: Ruling, name: str) -> None:
    """From a descender line to the next top line it is never less than four fifths of a zone."""
    found = [lower.lines[0] - upper.lines[-1] for page in pages(setter, name, ruling) for upper, lower in stacked(page)]
    assert found
    assert min(found) >= 0.8 * ruling.descender_mm - 0.01
