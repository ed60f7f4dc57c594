"""Cards and tiles: pieces to cut, so every edge counts."""

from __future__ import annotations

import pytest

from namewright.lines.fit import DoesNotFit
from namewright.lines.ruling import preset
from namewright.pages.card import CardSettings, CardSize, card_page, card_sheet
from namewright.pages.page import Furniture, Page, Row, Tile
from namewright.pages.paper import Paper
from namewright.pages.press import Press
from namewright.pages.tilesheet import TileSettings, across, strips, tile_pages
from namewright.settings import Support

NAMES = ("Bo", "Ava", "Christopherson", "Ana María", "Ẹ̀bun", "Mary-Kate", "Wren")
SMALL_PARTS_MM = 31.75  # inside diameter of the test cylinder, 16 CFR 1501.4


def tiles_of(press: Press, settings: TileSettings) -> list[Page]:
    rows = ((name, strips(name, name, across(settings))) for name in NAMES)
    return list(tile_pages(press, rows, settings))


@pytest.mark.parametrize("side", [25.0, 38.0])
@pytest.mark.parametrize("paper", list(Paper))
def test_tiles_share_their_edges_on_one_grid(press: Press, side: float, paper: Paper) -> None:
    """Every tile has the size asked for, all upright edges of a page stand on one grid, and no two tiles overlap."""
    for page in tiles_of(press, TileSettings(side, paper)):
        found = [item for item in page.items if isinstance(item, Tile)]
        left = min(tile.x for tile in found)
        assert all(tile.width == tile.height == side for tile in found)
        assert all(abs((tile.x - left) / side - round((tile.x - left) / side)) < 1e-9 for tile in found)
        corners = {(round(tile.x, 6), round(tile.y, 6)) for tile in found}
        assert len(corners) == len(found)
        assert any(isinstance(item, Furniture) for item in page.items)  # the caution and the check bar


def test_every_letter_has_its_tile(press: Press) -> None:
    """A tile for each letter, mark and hyphen of a name in order; none for a space."""
    letters = [tile.letter for page in tiles_of(press, TileSettings()) for tile in page.items if isinstance(tile, Tile)]
    assert "".join(letters) == "".join(NAMES).replace(" ", "")


def test_large_tiles_are_wider_than_the_small_parts_cylinder() -> None:
    """38 mm is more than the 31.75 mm of the cylinder; 25 mm is not, which is why the caution is printed."""
    from namewright.lines.tiles import LARGE_TILE_MM, TILE_MM

    assert TILE_MM < SMALL_PARTS_MM < LARGE_TILE_MM


@pytest.mark.parametrize("size", list(CardSize))
@pytest.mark.parametrize("support", list(Support))
def test_a_card_is_its_own_size(press: Press, size: CardSize, support: Support) -> None:
    """The page is as large as the card and holds one or two rows."""
    page = card_page(press, "Wren", "Wren", CardSettings(preset("us-1/2"), size, support))
    assert (page.width_mm, page.height_mm) == size.size_mm
    assert 1 <= sum(isinstance(item, Row) for item in page.items) <= 2


@pytest.mark.parametrize(("size", "paper", "cards"), [
    (CardSize.INDEX_3X5, Paper.LETTER, 4), (CardSize.INDEX_4X6, Paper.LETTER, 2), (CardSize.A6, Paper.A4, 4)])
def test_a_sheet_is_filled_with_cards(press: Press, size: CardSize, paper: Paper, cards: int) -> None:
    """As many whole cards as the paper takes when it lies the better way."""
    one = card_page(press, "Wren", "Wren", CardSettings(preset("us-1/2"), size))
    page = card_sheet(press, "Wren", "Wren", CardSettings(preset("us-1/2"), size), paper)
    rows = [sum(isinstance(item, Row) for item in each.items) for each in (one, page)]
    assert rows[1] == cards * rows[0]


def test_lines_too_tall_for_a_card_are_refused(press: Press) -> None:
    """The line height is never reduced: the child is reported with what it needs and what there is."""
    with pytest.raises(DoesNotFit, match="high enough"):
        card_page(press, "Bo", "Bo", CardSettings(preset("us-3/4").scaled_to(70), CardSize.INDEX_3X5))
