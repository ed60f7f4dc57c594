"""What stands beside a short name: hollow letters and a frame, in room that nothing else has."""

from __future__ import annotations

import pytest

from namewright.geometry import boxes
from namewright.lines.ink import Ink
from namewright.lines.ruling import preset
from namewright.pages.beside import drawing_frame, hollow_name
from namewright.pages.page import Furniture, Page, Row, Tile
from namewright.pages.sheet import practice_pages
from namewright.pages.sheet_settings import SheetSettings
from namewright.pages.typesetter import Typesetter


@pytest.mark.parametrize(("name", "left", "pieces"), [("Bo", 60.0, 2), ("Mira", 90.0, 4), ("Wilhelmina", 120.0, 1),
                                                      ("Bo", 164.0, 1), ("ʻAlohilani", 120.0, 2)])
def test_the_whole_name_or_its_first_letter(setter: Typesetter, name: str, left: float, pieces: int) -> None:
    """As much of the name as has room between ``left`` and 200 mm, within the height that is told.

    With an ʻokina stands the letter after it: alone it was a speck to colour.
    """
    hollow = hollow_name(setter, name, left, 200.0, 20.0, 60.0, 10.0)
    assert hollow is not None
    assert max(len(ink.pieces) for ink in hollow.inks) == pieces
    x0, y0, x1, y1 = boxes.joined(ink.bounds() for ink in hollow.inks)
    assert left <= hollow.left_mm <= x0 + 0.5
    assert x1 <= 200.0
    assert y0 >= 20.0
    assert y1 <= 70.0


def test_without_room_there_is_none(setter: Typesetter) -> None:
    assert hollow_name(setter, "Bo", 180.0, 200.0, 20.0, 60.0, 10.0) is None
    assert hollow_name(setter, "Bo", 60.0, 200.0, 45.0, 60.0, 10.0) is None


def test_a_frame_has_its_sign_at_its_left() -> None:
    sign, frame = drawing_frame(100.0, 180.0, 50.0, 76.0)
    assert sign.bounds()[2] < frame.bounds()[0]
    assert frame.bounds() == pytest.approx((110.8, 49.8, 180.2, 76.2))


def inked(page: Page) -> list[Ink]:
    return [ink for item in page.items if isinstance(item, Furniture) for ink in item.items if not ink.spelled]


@pytest.mark.parametrize(("name", "framed"), [("Bo", True), ("Mira", True), ("Jacqueline", False)])
def test_a_frame_stands_beside_few_boxes_only(setter: Typesetter, name: str, framed: bool) -> None:
    """It has the height of the boxes and keeps clear of them and of the rows."""
    for page in practice_pages(setter, name, name, SheetSettings(preset("us-3/4"))):
        tiles = [item.bounds() for item in page.items if isinstance(item, Tile)]
        if tiles:
            x0, y0, x1, y1 = boxes.joined(tiles)
            found = [ink.bounds() for ink in inked(page) if len(ink.pieces) == 4]
            frames = [box for box in found if box[1::2] == pytest.approx((y0, y1), abs=0.3)]
            assert len(frames) == framed
            assert all(box[0] > x1 + 5 for box in frames)
            assert all(item.items for item in page.items if isinstance(item, Row))
            assert x0 > 12
