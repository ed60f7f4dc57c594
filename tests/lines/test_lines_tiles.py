"""Letter-tile boxes: large enough for fingers, as large as a tile where the row allows, no letter lost."""

from __future__ import annotations

from itertools import pairwise

import pytest
from hypothesis import given
from hypothesis import strategies as st

from namewright.lines.tile_boxes import BOX_GAP_MM, tile_letters, tile_rows
from namewright.names.clusters import clusters

WORDS = st.text("abdegilmnorstuyéñ", min_size=1, max_size=12)
ROOMS = st.floats(160, 270)  # the rows of our sheets
NAMES = st.lists(WORDS, min_size=1, max_size=3).map(" ".join)


@given(NAMES, ROOMS)
def test_boxes_are_for_fingers(name: str, room: float) -> None:
    """A box is 15 to 26 mm wide, and no row is wider than the room."""
    tiles = tile_rows(name, room)
    assert 15 <= tiles.box_mm <= 26
    assert all(tiles.row_width(row) <= room + 1e-9 for row in tiles.rows)


@given(NAMES, ROOMS)
def test_every_letter_has_its_box_in_order(name: str, room: float) -> None:
    """The rows hold the letters of the name one after another; only spaces at the end of a row go."""
    tiles = tile_rows(name, room)
    assert [letter for row in tiles.rows for letter in row if letter != " "] == list(clusters(name.replace(" ", "")))
    for row in tiles.rows:
        edges = tiles.offsets(row)
        assert len(edges) == sum(letter != " " for letter in row)
        assert all(b - a >= tiles.box_mm + BOX_GAP_MM - 1e-9 for a, b in pairwise(edges))


@given(NAMES, ROOMS)
def test_a_name_is_broken_only_where_one_row_would_be_too_narrow(name: str, room: float) -> None:
    """One row stays one row while its boxes are at least 15 mm wide."""
    letters = tile_letters(name)
    boxes = sum(letter != " " for letter in letters)
    side = (room - (boxes - 1) * BOX_GAP_MM) / (boxes + letters.count(" ") / 2)
    assert (len(tile_rows(name, room).rows) == 1) == (side >= 15)


def test_a_mark_stays_on_its_letter() -> None:
    """A letter with marks that have no code point together is one tile (Unicode Standard Annex #29)."""
    assert tile_letters("Ẹ̀bun") == ("Ẹ̀", "b", "u", "n")


def test_no_room_is_told() -> None:
    """Where not even one box fits, a sentence says so."""
    with pytest.raises(ValueError, match="does not fit into 12 mm"):
        tile_rows("Bo", 12)


def test_no_row_is_empty() -> None:
    """However narrow the room, every row has a letter. Delete the mark above when that is mended."""
    assert all(row for row in tile_rows("aaaa aaaa a", 60).rows)


@given(WORDS, ROOMS)
def test_boxes_are_as_large_as_the_row_allows(name: str, room: float) -> None:
    """Where a box is smaller than a tile needs, the widest row fills the room, to a tenth of a millimetre a box."""
    tiles = tile_rows(name, room)
    if tiles.box_mm < 26:
        widest = max(tiles.rows, key=len)
        assert room - tiles.row_width(widest) <= 0.1 * len(widest) + 1e-6
