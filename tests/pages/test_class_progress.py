"""The class's year on a page: everyone has a row, steps and letters as they were noted."""

from __future__ import annotations

from itertools import product

import pytest

from namewright.lines.ink import WHITE, Ink
from namewright.message import message
from namewright.pages.child_progress import STRONG, TINT, ProgressSettings
from namewright.pages.class_progress import ClassRow, class_progress_pages
from namewright.pages.growth import Growth, Track
from namewright.pages.page import leaves
from namewright.pages.paper import Paper
from namewright.pages.typesetter import Typesetter
from namewright.settings import Support
from namewright.wording import languages
from pages.on_page import blocks_of
from pages.years import NAMES, day, growth


@pytest.mark.long
def test_every_child_of_a_large_class_has_a_row_inside_the_margins(setter: Typesetter) -> None:
    """Two hundred children, some with nothing noted, in the order given."""
    names = [NAMES[count % len(NAMES)] for count in range(200)]
    rows = [ClassRow(growth(name, [0, 9, 30], count) if count % 7 else Growth(name, (Track(name[0]),)), Support.FULL,
                     message("suggest.fullest" if count % 2 else "suggest.stay"))
            for count, name in enumerate(names)]
    for language, paper in product(languages(), Paper):
        pages = class_progress_pages(setter, rows, ProgressSettings(paper, language=language))
        rules = [ink for page in pages for ink in leaves(page.items)
                 if isinstance(ink, Ink) and ink.style.width_mm == 0.15 and ink.style.fill is None]
        assert len(rules) == 200


def test_the_same_class_gives_the_same_pages(setter: Typesetter) -> None:
    """Nothing random, no clock."""
    rows = [ClassRow(growth(name, [0, 9, 30]), Support.LIGHT, message("suggest.stay")) for name in NAMES]
    assert class_progress_pages(setter, rows, ProgressSettings()) == class_progress_pages(
        Typesetter(), rows, ProgressSettings())


def test_the_class_shows_a_filled_box_a_letter_formed_and_a_block_a_step(setter: Typesetter) -> None:
    """Two of three letters formed, step 3 reached of 7; a child with no note has an empty box a letter and no steps."""
    tracks = (Track("M", ((day(0), True),)), Track("i", ((day(0), False),)), Track("r", ((day(9), True),)))
    rows = [ClassRow(Growth("Mir", tracks, stages=((day(0), 5), (day(9), 3))), Support.FULL, message("suggest.stay")),
            ClassRow(Growth("Bo", (Track("B"), Track("o"))), Support.FULL, message("suggest.stay"))]
    (page,) = class_progress_pages(setter, rows, ProgressSettings())
    assert [len(blocks_of(page, fill)) for fill in (TINT, STRONG, WHITE)] == [2, 3, 1 + 4 + 2]
