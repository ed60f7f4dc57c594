"""The rows of a name on its sheet: which hand they suit, and what keeps clear of what."""

from __future__ import annotations

from itertools import pairwise, product

import pytest

from namewright.geometry import boxes
from namewright.lines.forms import Form
from namewright.lines.ink import Ink
from namewright.lines.ruling import GuideLine, preset
from namewright.lines.setting import pen_width_mm
from namewright.lines.tuned import tuned
from namewright.pages.ladder import Ladder, Part
from namewright.pages.page import Guide, Row, Tile, kept_off_edges, leaves
from namewright.pages.paper import Paper
from namewright.pages.sheet import practice_pages
from namewright.pages.sheet_settings import SheetSettings
from namewright.pages.typesetter import Typesetter
from namewright.settings import Hand, Support
from namewright.tuning import Tuning
from pages.on_page import base_of, box_of, ink_of, letters_of, room_of, rows_in, start_marks


def ink_left(row: Row) -> float:
    return min(one.bounds()[0] for one in ink_of(row))


@pytest.mark.parametrize("landscape", [False, True])
@pytest.mark.parametrize("name", ["Bo", "Wren", "Christopherson"])
@pytest.mark.parametrize("ruling", ["us-3/4", "de-5", "us-1/2"])
def test_the_left_hand_copies_from_above(setter: Typesetter, name: str, ruling: str, landscape: bool) -> None:
    """A left-hander's model stands right above the row to write on and begins 4 mm in, however short the name.

    The hand covers what is left of the pencil and below it, never what is above.
    """
    settings = SheetSettings(preset(ruling), hand=Hand.LEFT, support=Support.INDEPENDENT, landscape=landscape)
    pages = practice_pages(setter, name, name, settings)
    copies = 0
    for page in pages:
        for model, room in pairwise(sorted(rows_in((page,)), key=base_of)):
            first = bool(page.outline) and base_of(model) == min(map(base_of, rows_in((page,))))
            if model.form == Form.SOLID and not first:
                assert room.form == Form.BLANK
                line = setter.ruled(settings.ruling).line(name)
                clear = settings.ruling.line_height_mm + line.drop_mm + 2.0  # under the tail of p in Christopherson
                assert base_of(room) - base_of(model) == pytest.approx(max(settings.ruling.pitch_mm, clear))
                assert room_of(room)[::2] == room_of(model)[::2]
                assert ink_left(model) - room_of(room)[0] == pytest.approx(4, abs=0.2)
                copies += 1
    assert copies


def test_for_a_hand_not_settled_yet_nothing_is_assumed(setter: Typesetter) -> None:
    """The model stands above, where neither hand covers it, and every row has its start dot: as for a left hand."""
    left, unsettled = (practice_pages(setter, "Wren", "Wren", SheetSettings(preset("us-3/4"), hand=hand))
                       for hand in (Hand.LEFT, Hand.UNSETTLED))
    assert unsettled == left
    assert unsettled != practice_pages(setter, "Wren", "Wren", SheetSettings(preset("us-3/4"), hand=Hand.RIGHT))


@pytest.mark.parametrize("name", ["ẤỘ", "Ẹ̀ḿ", "Ǘű", "ẤỘgy"])
@pytest.mark.parametrize("ruling", ["us-5/8", "us-1/2", "uk-5", "es-4", "fr-2"])
def test_marks_over_capitals_get_white_of_their_own(setter: Typesetter, name: str, ruling: str) -> None:
    """Where marks rise over the top line, rows move apart: more than 1 mm stays white between a mark and any row above.

    Told from boxes: a row's own guide lines count as ink.
    """
    pages = practice_pages(setter, name, name, SheetSettings(preset(ruling), support=Support.LIGHT))
    near = 0
    for page in pages:
        for below, above in product(rows_in((page,)), repeat=2):
            (left, _, right, foot), ink = box_of(above), ink_of(below)
            if ink and base_of(below) > base_of(above) + 1:
                x0, top, x1, _ = boxes.joined(one.bounds() for one in ink)
                if x0 < right and left < x1:
                    assert top - foot > 1.0
                    near += top - foot < 15
    assert near


@pytest.mark.parametrize("spacing", [None, 6.0])
def test_a_name_that_is_repeated_stands_farther_off_than_its_own_words(setter: Typesetter,
                                                                       spacing: float | None) -> None:
    """In a row to go over, the white before the name comes again is wider than the white inside a double name."""
    settings = SheetSettings(preset("us-1/2"), tuning=Tuning(letter_spacing=spacing), landscape=True,
                             ladder=Ladder((Part.DOTS,)))
    row = rows_in((practice_pages(setter, "Al Bo", "Al Bo", settings)[0],), Form.DOTTED)[0]
    spots = [(left, right) for left, _, right, _ in letters_of(row)]
    whites = [right[0] - left[1] for left, right in pairwise(spots)]
    between, inside = sorted(whites, reverse=True)[0], [white for white in whites if white > 3.0]
    assert len(inside) > 2
    assert between > 1.2 * max(white for white in inside if white < between - 1.0)


@pytest.mark.parametrize("name", ["Ilja", "Bogyo", "Jjy"])
@pytest.mark.parametrize("ruling", ["us-3/4", "us-1/2", "de-5", "uk-5", "fr-3"])
def test_the_tail_of_a_model_keeps_off_the_next_model(setter: Typesetter, name: str, ruling: str) -> None:
    """Where models stand one under the other, the tails of one and the tall letters of the next leave 1 mm white."""
    pages = practice_pages(setter, name, name, SheetSettings(preset(ruling), support=Support.LIGHT))
    for page in pages:
        inked = sorted((row for row in rows_in((page,)) if ink_of(row)), key=base_of)
        found = [boxes.joined(one.bounds() for one in ink_of(row)) for row in inked]
        assert all(below[1] - above[3] > 1.0 for above, below in pairwise(found))


def test_letters_stand_on_the_base_line(setter: Typesetter) -> None:
    """In every row with ink the letters' feet are on the printed base line: a name without tails ends there."""
    seen = 0
    for ruling, support in product(("us-3/4", "de-6", "uk-5"), Support):
        pages = practice_pages(setter, "Nomed", "N", SheetSettings(preset(ruling), support=support))
        for row in rows_in(pages):
            base = next(item.y for item in row.items if isinstance(item, Guide) and item.line is GuideLine.BASE)
            letters = [one for one in ink_of(row) if one.style.width_mm > 0.3]
            if letters:
                lowest = max(piece.bounds()[3] for one in letters for piece in one.pieces)
                assert lowest == pytest.approx(base, abs=0.01)
                seen += 1
    assert seen > 30


@pytest.mark.parametrize(("name", "least", "most"), [
    ("Bo", 1.0, 1.0), ("Peggy", 1.0, 1.0), ("Íñigo", 1.0, 1.0), ("ẤỘ", 1.0, 1.0), ("Cole", 0.6, 0.99),
    ("ossa", 0.25, 0.5), ("mo", 0.5, 0.5), ("li", 1.0, 1.0)])
def test_the_mark_stands_where_the_hand_begins(setter: Typesetter, name: str, least: float, most: float) -> None:
    """In shares of the line height: a stem begins at the top line, a round capital below it, a small letter lower."""
    for hand in Hand:
        page = practice_pages(setter, name, name, SheetSettings(preset("us-3/4"), hand=hand))[0]
        row = rows_in((page,), Form.DOTTED)[0]
        (mark,) = (box for box in start_marks(page) if -25 < (box[1] + box[3]) / 2 - base_of(row) < 1)
        share = (base_of(row) - (mark[1] + mark[3]) / 2) / preset("us-3/4").line_height_mm
        assert least - 0.01 <= share <= most + 0.01


def test_boxes_show_their_letter_while_support_is_high(setter: Typesetter) -> None:
    """With full and partial support each tile box has its letter small in a corner; with less support none has."""
    for support in Support:
        (page,) = practice_pages(setter, "Mira", "Mira", SheetSettings(preset("us-1/2"), support=support))
        boxes = [item.bounds() for item in page.items if isinstance(item, Tile)]
        hints = [item for item in page.items if isinstance(item, Ink) and any(
            x0 < item.bounds()[0] and item.bounds()[2] < x1 and y0 < item.bounds()[1] and item.bounds()[3] < y1
            for x0, y0, x1, y1 in boxes)]
        assert len(boxes) == 4
        assert len(hints) == (4 if support in (Support.FULL, Support.PARTIAL) else 0)


def test_names_to_trace_keep_apart(setter: Typesetter) -> None:
    """Where a name stands several times in a row, 10 mm or more of white part one name from the next."""
    for ruling in ("us-3/4", "de-5", "fr-2"):
        (page, *_) = practice_pages(setter, "Bo", "Bo", SheetSettings(preset(ruling), support=Support.FULL))
        for row in rows_in((page,), Form.DOTTED):
            boxes = letters_of(row)
            gaps = [b[0] - a[2] for a, b in pairwise(boxes)]
            assert len(boxes) >= 4
            assert sum(gap >= 9.9 - pen_width_mm(preset(ruling)) for gap in gaps) >= 1
            assert min(gaps) > 0


@pytest.mark.parametrize("paper", Paper)
def test_marks_of_widely_spaced_letters_stay_on_the_page(setter: Typesetter, paper: Paper) -> None:
    """With letters 20 mm apart, marks could stand 10 mm before and after a name that fills its row: they must not.

    Regression: such a child's page was refused for 0.7 mm, and the whole class with it.
    """
    tuning = Tuning(line_height=36, letter_spacing=20)
    settings = SheetSettings(tuned(preset("us-1/2"), tuning), paper, tuning=tuning)
    for page in practice_pages(setter, "Ana María", "Ana María", settings):
        x0, _, x1, _ = boxes.joined(item.bounds() for item in leaves(kept_off_edges(page.items)))
        assert min(x0, page.width_mm - x1) >= 10
