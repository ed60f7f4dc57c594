"""A page for a clear sleeve: what a wipe-off marker can do, and what one strip of card hides."""

from __future__ import annotations

import re

import pytest

from namewright.geometry import boxes
from namewright.lines.fit import DoesNotFit
from namewright.lines.forms import Form, pens_for
from namewright.lines.ruling import PRESETS, preset
from namewright.pages.page import Furniture, Guide, Page, Row, leaves
from namewright.pages.paper import Paper
from namewright.pages.sheet_settings import SheetSettings
from namewright.pages.sleeve import MIN_X_HEIGHT_MM, SEAM_MM, for_marker, sleeve_pages
from namewright.pages.typesetter import Typesetter
from namewright.wording import languages, wording

NAMES = ("Bo", "Mira", "Peggy", "Ẹ̀bun", "Wilhelmina", "Ana María")
RULINGS = ("us-3/4", "de-5", "fr-2", "uk-5", "unlined")


def sleeve(setter: Typesetter, name: str, ruling: str = "us-3/4", **more: object) -> Page:
    (page,) = sleeve_pages(setter, name, name, SheetSettings(preset(ruling), **more))  # type: ignore[arg-type]
    return page


@pytest.mark.parametrize("paper", Paper)
@pytest.mark.parametrize("ruling", RULINGS)
def test_all_ink_is_clear_of_the_seam_and_nothing_is_folded(setter: Typesetter, ruling: str, paper: Paper) -> None:
    """Rows keep 16 mm from every edge, captions and signs 13, and no line to fold along runs off the page."""
    for name in NAMES:
        page = sleeve(setter, name, ruling, paper=paper)
        assert not any(isinstance(item, Furniture) and item.bleeds for item in page.items)
        x0, y0, x1, y1 = boxes.joined(item.bounds() for item in leaves(page.items))
        assert min(x0, y0, page.width_mm - x1, page.height_mm - y1) >= SEAM_MM - 3.0
        for row in (item for item in page.items if isinstance(item, Row) and item.items):
            x0, _, x1, _ = boxes.joined(item.bounds() for item in row.items)
            assert min(x0, page.width_mm - x1) >= SEAM_MM - 0.01


@pytest.mark.parametrize("ruling", PRESETS)
def test_lines_and_dots_suit_a_marker(ruling: str) -> None:
    """Small letters are 6 mm high or more, dots 1.3 mm wide and half a dot apart or more; no line is made lower."""
    asked, given = preset(ruling), for_marker(preset(ruling))
    pens = pens_for(given)
    assert given.x_height_mm >= max(MIN_X_HEIGHT_MM, asked.x_height_mm) - 1e-9
    assert given.line_height_mm >= asked.line_height_mm - 1e-9
    assert pens.dot_mm >= 1.3
    assert pens.pitch_mm >= 1.5 * pens.dot_mm
    assert given.inked.weight > 1


@pytest.mark.parametrize("ruling", RULINGS)
def test_the_card_hides_all_that_shows_the_name_and_no_row_to_write_on(setter: Typesetter, ruling: str) -> None:
    """The note tells a height: what shows the name stands within it, rows to write on within 5 mm of it or below."""
    for name in NAMES:
        page = sleeve(setter, name, ruling)
        note = next(ink.spelled.words for ink in leaves(page.items)
                    if getattr(ink, "spelled", None) and "strip of card" in ink.spelled.words)  # type: ignore[union-attr]
        found = re.search(r"(\d+) mm", note)
        assert found
        card = float(found[1])
        rows = [item for item in page.items if isinstance(item, Row) and item.items]
        shown = [boxes.joined(item.bounds() for item in row.items) for row in rows if row.form != Form.BLANK]
        blank = [boxes.joined(item.bounds() for item in row.items if isinstance(item, Guide)) for row in rows
                 if row.form == Form.BLANK]
        assert len(shown) >= 2
        assert max(box[3] for box in shown) <= card
        assert all(box[1] > card - 5.0 for box in blank)
        if preset(ruling).lines:
            assert len(blank) >= 2


def test_what_has_no_room_is_told(setter: Typesetter) -> None:
    """Lines so tall that no two rows to write on fit are refused in a sentence."""
    with pytest.raises(DoesNotFit) as caught:
        sleeve_pages(setter, "Bo", "Bo", SheetSettings(preset("us-3/4").scaled_to(60)))
    assert caught.value.needed_mm > caught.value.room_mm


@pytest.mark.parametrize("language", languages())
def test_its_sentences_have_room(setter: Typesetter, language: str) -> None:
    """On A4, the narrower paper, each caption stands on one line, and the note for the adult beside the check bar."""
    words, room = wording(language), 210.0 - 2 * SEAM_MM - 11.0
    for key in ("sleeve_copy", "sleeve_memory", "sleeve_days"):
        assert setter.text_width(words.say(f"page.{key}"), 1.9) <= room, key
    assert setter.text_width(words.say("page.sleeve_card", height=115), 1.3) <= room - 53.0


def test_a_name_with_tails_has_as_many_rows_to_write_on(setter: Typesetter) -> None:
    """Tails are printed over them, not there: Gigi is written as often as Lili."""
    counts = {name: sum(isinstance(item, Row) and item.form == "blank" for page in pages_of(setter, name)
                        for item in page.items) for name in ("Lili", "Gigi", "Bo")}
    assert set(counts.values()) == {4}


def pages_of(setter: Typesetter, name: str) -> tuple[Page, ...]:
    return sleeve_pages(setter, name, name, SheetSettings(preset("us-3/4")))
