"""Letter-tile boxes: a whole tile lies in each, no letter is lost, and a long name is parted where it is clapped."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from namewright.lines.tile_boxes import TILE_MM, boxes, tile_letters, tile_rows
from namewright.names.beats import Spoken
from namewright.names.clusters import clusters
from namewright.names.syllables import breaks

WORDS = st.text("abdegilmnorstuyéñ", min_size=1, max_size=12)
ROOMS = st.floats(160, 270)  # the rows of our sheets
NAMES = st.lists(WORDS, min_size=1, max_size=3).map(" ".join)


@given(NAMES, ROOMS)
def test_a_tile_lies_in_its_box_with_a_little_room(name: str, room: float) -> None:
    """However long the name, a box is a millimetre wider than the tile, and no row is wider than the room."""
    tiles = tile_rows(name, room)
    assert tiles.box_mm == TILE_MM + 1
    assert tiles.width_mm <= room + 1e-9
    placed = [(x, y) for _, x, y in boxes(tiles)]
    for at, (x, y) in enumerate(placed):
        assert all(abs(x - u) >= tiles.box_mm - 1e-9 or abs(y - v) >= tiles.box_mm for u, v in placed[:at])


@given(NAMES, ROOMS)
def test_every_letter_has_its_box_in_order(name: str, room: float) -> None:
    """The boxes hold the letters of the name one after another; a space has none."""
    assert [letter for letter, _, _ in boxes(tile_rows(name, room))] == list(clusters(name.replace(" ", "")))


@given(WORDS, ROOMS)
def test_a_name_has_few_rows(name: str, room: float) -> None:
    """A name without spaces takes as many rows as its boxes need edge to edge, or one more to keep beats whole."""
    needed = -(-len(clusters(name)) // int(room // (TILE_MM + 1)))
    assert len(tile_rows(name, room).rows) in ({needed, needed + 1} if needed > 1 else {1})


@given(NAMES, ROOMS)
def test_no_row_is_empty_and_none_begins_or_ends_with_a_space(name: str, room: float) -> None:
    for row in tile_rows(name, room).rows:
        assert row
        assert row[0] != " "
        assert row[-1] != " "


@pytest.mark.parametrize(("name", "rows"), [
    ("Mira", ["Mira"]),
    ("Christopherson", ["Christo", "pherson"]),  # between beats, not Christoph-erson
    ("Jean-Baptiste", ["Jean-", "Bap", "tiste"]),  # not Jean-B-aptiste: a third row keeps the beats whole
    ("Mohammed-Amin", ["Moham", "med-", "Amin"]),
    ("Mary-Kate", ["Mary-", "Kate"]),            # behind the hyphen
    ("Ana María", ["Ana", "María"]),             # between the names
    ("Jo Beth", ["Jo Beth"]),                    # two names in one row, half a box apart
    ("Maximiliano-Alessandro", ["Maximi", "liano-", "Ales", "sandro"]),
    ("Bartholomew-Alexander", ["Bartho", "lomew-", "Alex", "ander"]),  # a fourth row, not Barthol-omew
    ("Guadalupe-Esperanza", ["Guada", "lupe-", "Espe", "ranza"]),  # the second word begins a row
    ("Maria Fernanda Guadalupe", ["Maria", "Fer", "nanda", "Guada", "lupe"]),  # not “da Gua”
    ("Hwaung-Strength", ["Hwaung-", "Stre", "ngth"]),  # only the beat that is wider than a row is broken
])
def test_a_long_name_is_parted_where_it_is_said_in_parts(name: str, rows: list[str]) -> None:
    assert ["".join(row) for row in tile_rows(name, 184.5).rows] == rows


@pytest.mark.parametrize("room", [173.0, 180.0, 190.0, 250.0])
@pytest.mark.parametrize("name", ["Wilhelmina-Josephine", "Christopherson", "Oluwaseun-Ayodele", "Konstantinopoulos",
                                  "Anastasia-Valentina", "Marie-Antoinette-Sophie", "Krzysztof-Stanisław"])
def test_no_beat_is_broken_that_fits_into_a_row(name: str, room: float) -> None:
    """On papers of all widths rows end behind a word or a beat, and none goes from a word into a part of another."""
    rows, words = tile_rows(name, room).rows, name.split("-")
    cuts = {len("".join(map("".join, rows[:count]))) for count in range(1, len(rows))}
    ends = {len("-".join(words[:count])) + 1 for count in range(1, len(words))}
    beats = {start + at for start, word in zip((0, *sorted(ends)), words, strict=True) for at in breaks(clusters(word))}
    assert cuts <= ends | beats
    assert ends <= cuts


def test_the_parts_of_a_word_are_even_beside_a_longer_word() -> None:
    """A long second word does not let the first fall into a stub and the rest."""
    rows = tile_rows("Maximilian-Alexander", 250.0).rows
    assert ["".join(row) for row in rows] == ["Maximi", "lian-", "Alexander"]


def test_a_mark_stays_on_its_letter() -> None:
    """A letter with marks that have no code point together is one tile (Unicode Standard Annex #29)."""
    assert tile_letters("Ẹ̀bun") == ("Ẹ̀", "b", "u", "n")


def test_no_room_is_told() -> None:
    """Where not even one box fits, a sentence says so."""
    with pytest.raises(ValueError, match="does not fit into 12 mm"):
        tile_rows("Bo", 12)


@given(NAMES)
def test_seven_boxes_stand_in_a_row_of_a_letter_sheet(name: str) -> None:
    """184.5 mm, the room beside the start marks on US Letter paper, takes seven boxes of 26 mm."""
    rows = tile_rows(name, 184.5).rows
    assert all(sum(letter != " " for letter in row) <= 7 for row in rows)


def test_a_word_of_one_beat_is_cut_only_where_it_is_wider_than_a_row(monkeypatch: pytest.MonkeyPatch) -> None:
    """Else the patterns of print are not even asked: to read them takes a good part of a first small class."""
    asked: list[str] = []

    def noted(word: tuple[str, ...], spoken: Spoken) -> tuple[int, ...]:
        asked.append("".join(word))
        return breaks(word, spoken)

    monkeypatch.setattr("namewright.lines.tile_boxes.breaks", noted)
    assert ["".join(row) for row in tile_rows("Mary-Kate", 150.0).rows] == ["Mary-", "Kate"]
    assert asked == []
    assert len(tile_rows("Mary Strengths", 190.0).rows) > 2
    assert asked == ["Strengths"]
