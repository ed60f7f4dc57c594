"""Pictograms: drawn whole in their squares, told apart, and at the beginning of every task of a sheet."""

from __future__ import annotations

from itertools import combinations, product

import pytest

from namewright.lines.ink import Ink
from namewright.lines.ruling import preset
from namewright.pages.page import Furniture, Page, leaves
from namewright.pages.pictograms import SIDE_MM, Task, pictogram
from namewright.pages.sheet import practice_pages
from namewright.pages.sheet_settings import SheetSettings
from namewright.pages.typesetter import Typesetter
from namewright.settings import Hand, Support
from namewright.wording import wording


@pytest.mark.parametrize("task", Task)
def test_a_pictogram_fills_its_square_and_stays_in_it(task: Task) -> None:
    """It is 8 to 12 mm large, no stroke leaves its square by more than a millimetre, and it is no speck in a corner."""
    assert 8 <= SIDE_MM <= 12
    ink = pictogram(task, 20.0, 30.0)
    x0, y0, x1, y1 = ink.bounds()
    reach = 1.0
    assert 20 - reach <= x0 < x1 <= 20 + SIDE_MM + reach
    assert 30 - reach <= y0 < y1 <= 30 + SIDE_MM + reach
    assert max(x1 - x0, y1 - y0) > 0.8 * SIDE_MM


def test_no_two_tasks_have_the_same_picture() -> None:
    pictures = [pictogram(task, 0.0, 0.0).pieces[0].fragment.data for task in Task]
    assert all(a != b for a, b in combinations(pictures, 2))


def signs(page: Page) -> list[tuple[Task, Ink]]:
    """Return the pictograms of full size on a page, by what they ask."""
    known = {pictogram(task, 0.0, 0.0).pieces[0].fragment.data: task for task in Task}
    return [(known[ink.pieces[0].fragment.data], ink) for ink in leaves(page.items)
            if isinstance(ink, Ink) and ink.pieces[0].fragment.data in known]


CAPTIONS = {"model": Task.FINGER, "dots": Task.PENCIL, "dots-run-out": Task.PENCIL, "tiles": Task.TILES,
            "copy_beside": Task.LOOK, "copy_under": Task.LOOK, "memory": Task.FOLD}


def test_each_task_of_a_sheet_begins_with_its_pictogram(setter: Typesetter) -> None:
    """Left of every caption stands the picture of what it asks, on the same height, clear of the rows."""
    words = {wording("en").say(f"page.{key}"): task for key, task in CAPTIONS.items()}
    seen = 0
    for name, ruling, support, hand in product(("Bo", "Jacqueline"), ("us-3/4", "de-5"), Support, Hand):
        for page in practice_pages(setter, name, name, SheetSettings(preset(ruling), support=support, hand=hand)):
            found = signs(page)
            for item in page.items:
                for ink in item.items if isinstance(item, Furniture) else ():
                    task = words.get(ink.spelled.words) if ink.spelled else None
                    if task:
                        x0, y0, _, y1 = ink.bounds()
                        own = [sign for which, sign in found if which is task
                               and sign.bounds()[1] - 1 <= (y0 + y1) / 2 <= sign.bounds()[3] + 1]
                        assert len(own) == 1
                        assert own[0].bounds()[2] <= x0 + 0.5
                        seen += 1
    assert seen > 100
