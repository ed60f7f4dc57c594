"""Cards and tiles: pieces to cut, so every edge counts."""

from __future__ import annotations

from itertools import product

import pytest

from namewright.geometry import boxes
from namewright.lines.fit import DoesNotFit
from namewright.lines.ink import Ink
from namewright.lines.ruling import PRESETS, preset
from namewright.pages.blocks import CHECK_NOTE_MM
from namewright.pages.name_card import CardSettings, CardSize, card_page, card_sheet, has_room_beside
from namewright.pages.page import Furniture, Guide, Letters, Page, Row, leaves
from namewright.pages.paper import Paper
from namewright.pages.typesetter import Typesetter
from namewright.settings import Support
from namewright.wording import wording
from pages.on_page import bars


@pytest.mark.parametrize("size", list(CardSize))
@pytest.mark.parametrize("support", list(Support))
def test_a_card_is_its_own_size(setter: Typesetter, size: CardSize, support: Support) -> None:
    """The page is as large as the card and holds one or two rows."""
    page = card_page(setter, "Wren", "Wren", CardSettings(preset("us-1/2"), size, support))
    assert (page.width_mm, page.height_mm) == size.size_mm
    assert 1 <= sum(isinstance(item, Row) for item in page.items) <= 2


@pytest.mark.parametrize(("size", "paper", "cards"), [
    (CardSize.INDEX_3X5, Paper.LETTER, 4), (CardSize.INDEX_4X6, Paper.LETTER, 2), (CardSize.A6, Paper.A4, 4)])
def test_a_sheet_is_filled_with_cards(setter: Typesetter, size: CardSize, paper: Paper, cards: int) -> None:
    """As many whole cards as the paper takes when it lies the better way."""
    one = card_page(setter, "Wren", "Wren", CardSettings(preset("us-1/2"), size))
    page = card_sheet(setter, "Wren", "Wren", CardSettings(preset("us-1/2"), size), paper)
    rows = [sum(isinstance(item, Row) for item in each.items) for each in (one, page)]
    assert rows[1] == cards * rows[0]


def test_lines_too_tall_for_a_card_are_refused(setter: Typesetter) -> None:
    """The line height is never reduced: the child is reported with what it needs and what there is."""
    with pytest.raises(DoesNotFit, match=r"fit\.card"):
        card_page(setter, "Bo", "Bo", CardSettings(preset("us-3/4").scaled_to(70), CardSize.INDEX_3X5))


def test_two_rows_on_tall_lines_have_a_card_of_the_model_alone(setter: Typesetter) -> None:
    """A name of two rows whose second has no tail needs no room for one: the card shows the model, its height kept."""
    page = card_page(setter, "Theodore", "Theodore", CardSettings(preset("us-3/4").scaled_to(30), CardSize.INDEX_4X6))
    rows = [item for item in page.items if isinstance(item, Row)]
    assert len(rows) == 2


def pieces_of(setter: Typesetter, words: str, size_mm: float) -> list[object]:
    return [piece.fragment for piece in setter.text(words, size_mm).pieces]


def texts(page: Page) -> list[list[object]]:
    """Return the letters of every ink of a page, by which a caption can be found."""
    return [[piece.fragment for piece in item.pieces] for item in leaves(page.items) if isinstance(item, Ink)]


@pytest.mark.parametrize("size", list(CardSize))
def test_a_card_that_a_child_keeps_has_no_check_bar(setter: Typesetter, size: CardSize) -> None:
    """The bar is for the adult at the printer: it stands on no card."""
    for name in ("us-1/2", "de-4", "unlined"):
        assert bars(card_page(setter, "Wren", "Wren", CardSettings(preset(name), size))) == []


@pytest.mark.parametrize("paper", list(Paper))
@pytest.mark.parametrize("size", list(CardSize))
def test_a_sheet_of_cards_has_a_check_bar_and_cuts_on_the_cards_edges(setter: Typesetter, size: CardSize, paper: Paper,
                                                                      ) -> None:
    """One bar, outside the cards; cuts run along every edge of a card that is not the paper's own."""
    page = card_sheet(setter, "Wren", "Wren", CardSettings(preset("us-1/2"), size), paper)
    width, height = size.size_mm
    across_, down = int(page.width_mm // width), int(page.height_mm // height)
    nowhere_else = (size, paper) == (CardSize.A6, Paper.A4)  # the cards cover the whole sheet
    found_bars = bars(page)
    assert len(found_bars) == (0 if nowhere_else else 1)
    (cuts,) = (item for item in page.items if isinstance(item, Ink) and item.style.dash_mm)
    left, top = (page.width_mm - across_ * width) / 2, (page.height_mm - down * height) / 2
    assert all(box[3] < top for box in found_bars)
    wanted = ([(left + at * width, "x") for at in range(across_ + 1)]
              + [(top + at * height, "y") for at in range(down + 1)])
    inside = [(place, axis) for place, axis in wanted
              if 5.15 <= place <= (page.width_mm if axis == "x" else page.height_mm) - 5.15]
    found = [(box[0], "x") if box[0] == box[2] else (box[1], "y") for box in (one.bounds() for one in cuts.pieces)]
    assert sorted(found) == [(pytest.approx(place), axis) for place, axis in sorted(inside)]
    for row in (item for item in page.items if isinstance(item, Row)):
        x0, y0, x1, y1 = boxes.joined(one.bounds() for one in row.items)
        column, line = int((x0 - left) // width), int((y0 - top) // height)
        assert left + column * width + 7.9 <= x0 < x1 <= left + (column + 1) * width - 7.9
        assert top + line * height + 7.9 <= y0 < y1 <= top + (line + 1) * height - 7.9


@pytest.mark.parametrize("paper", list(Paper))
@pytest.mark.parametrize("size", list(CardSize))
def test_the_adult_is_asked_to_see_to_the_cutting_where_no_cut_runs_through_it(setter: Typesetter, size: CardSize,
                                                                              paper: Paper) -> None:
    """Once a sheet, in what is cut away; no cut crosses what an adult reads. A card of its own size is not cut."""
    page = card_sheet(setter, "Wren", "Wren", CardSettings(preset("us-1/2"), size, whose="Wren Tarn"), paper)
    caution = pieces_of(setter, wording("en").say("page.cards_caution"), CHECK_NOTE_MM)
    assert texts(page).count(caution) == has_room_beside(size, paper)
    assert caution not in texts(card_page(setter, "Wren", "Wren", CardSettings(preset("us-1/2"), size)))
    (cuts,) = (item for item in page.items if isinstance(item, Ink) and item.style.dash_mm)
    read = [leaf.bounds() for item in page.items if isinstance(item, Furniture) for leaf in item.items]
    assert not [box for box in read for cut in cuts.pieces if boxes.overlap(box, boxes.grown(cut.bounds(), 0.3))]


@pytest.mark.parametrize("support", list(Support))
def test_a_card_gives_what_its_support_says(setter: Typesetter, support: Support) -> None:
    """Under the model stands the name in dots, its first letter in dots, or nothing; marks go with the support."""
    page = card_page(setter, "Wren", "Wren", CardSettings(preset("us-1/2"), support=support))
    model, row = (item for item in page.items if isinstance(item, Row))
    inks = [[one for one in item.items if isinstance(one, Ink)] for item in (model, row)]
    dotted = [piece for ink in inks[1] for piece in ink.pieces]
    assert len(dotted) == {Support.FULL: 4, Support.PARTIAL: 1}.get(support, 0)  # one for each letter
    assert row.form == ("dotted" if inks[1] else "blank")
    marked = [item for item in page.items if isinstance(item, Letters)]
    assert bool(marked or len(inks[0]) > 2) == (support is not Support.INDEPENDENT)


@pytest.mark.parametrize("name", ["Marigold", "Jory"])
def test_the_tail_of_a_model_keeps_off_the_dots_below(setter: Typesetter, name: str) -> None:
    """Where a card has room for it, 0.5 mm at the least stays white between the rows' ink, pens counted."""
    for size in (CardSize.INDEX_4X6, CardSize.A6):
        page = card_page(setter, name, name, CardSettings(preset("us-3/4"), size))
        model, dots = (boxes.joined(one.bounds() for one in row.items if isinstance(one, Ink))
                       for row in page.items if isinstance(row, Row))
        assert dots[1] - model[3] >= 0.5


REFUSED = {
    CardSize.INDEX_3X5: {("Aurelisandra", "us-1-1/8")},
}


@pytest.mark.long
@pytest.mark.parametrize("size", list(CardSize))
def test_a_card_can_be_made_on_every_ruling(setter: Typesetter, size: CardSize) -> None:
    """Nothing on a card comes nearer than 8 mm to its edges: printers leave up to 6.35 mm white.

    Regression: dots wider than the pen, marks beside the first letter and tails under the last row stood 0.03 to
    0.6 mm over that margin, and the card was refused, on eight rulings for every name. The widest names only fit
    larger cards, so which are refused is pinned.
    """
    refused = set()
    for ruling, name in product(PRESETS.values(), ("Íñigo", "ivy", "Peggy", "Aurelisandra")):
        try:
            page = card_page(setter, name, name, CardSettings(ruling, size))
        except DoesNotFit:
            refused.add((name, ruling.name))
            continue
        x0, y0, x1, y1 = boxes.joined(item.bounds() for item in leaves(page.items))
        assert min(x0, y0, page.width_mm - x1, page.height_mm - y1) >= 7.99
    assert refused == REFUSED.get(size, set())


def test_guides_of_a_card_are_those_of_its_ruling(setter: Typesetter) -> None:
    """A card's rows have the lines of the ruling, as far apart as the ruling says."""
    for name in ("us-1/2", "de-4", "fr-2", "uk-4"):
        page = card_page(setter, "Wren", "Wren", CardSettings(preset(name)))
        for row in (item for item in page.items if isinstance(item, Row)):
            guides = {item.line: item.y for item in row.items if isinstance(item, Guide) and item.line}
            base = guides["baseline"]  # type: ignore[index]
            assert {line: base - y for line, y in guides.items()} == {
                line: pytest.approx(preset(name).height_of(line)) for line in preset(name).lines}
