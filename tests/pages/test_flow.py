"""Pages filled from the top: what does not fit goes on whole, and no word is lost or too wide."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from namewright.pages.page import leaves
from namewright.pages.paper import Paper, sheet_of
from namewright.pages.plan.flow import MIN_MM, Flow, fitted
from namewright.pages.typesetter import Typesetter

SETTER = Typesetter()
WORDS = st.lists(st.text(st.sampled_from("abilmnoWM"), min_size=1, max_size=40), min_size=1, max_size=8).map(" ".join)


@pytest.fixture
def flow(setter: Typesetter) -> Flow:
    return Flow(setter, sheet_of(Paper.A4))


def test_a_block_that_does_not_fit_goes_to_the_next_page(flow: Flow) -> None:
    """To the millimetre: what just fits stays."""
    free = flow.sheet.foot - flow.y
    flow.put([flow.setter.text("a", 1.5)], free - 10)
    flow.room(10)
    assert len(flow.pages) == 1
    flow.room(10.1)
    assert (len(flow.pages), flow.y) == (2, flow.sheet.top_mm)


def test_an_empty_page_takes_what_is_too_high_for_any(flow: Flow) -> None:
    """There is no page on which it would fit, so none is left empty for it."""
    flow.room(1000)
    assert len(flow.pages) == 1


def test_a_heading_stays_with_what_follows_it(flow: Flow) -> None:
    flow.put([flow.setter.text("a", 1.5)], flow.sheet.room_width)
    flow.y = flow.sheet.foot - 15
    flow.heading("Head", 20.0)
    assert len(flow.pages) == 2


def test_running_text_stays_inside_the_margins(flow: Flow) -> None:
    """However long it is, and over as many pages as it takes."""
    for _ in range(60):
        flow.say("Mira and Tilo begin with the letter that is their own, and then go on. " * 4)
    assert len(flow.pages) > 1
    for page in flow.pages:
        for item in leaves(page):
            x0, y0, x1, y1 = item.bounds()
            assert flow.sheet.left_mm - 0.2 <= x0 < x1 <= flow.sheet.right_edge + 0.2
            assert flow.sheet.top_mm - 0.2 <= y0 < y1 <= flow.sheet.foot + 0.2


@given(WORDS, st.floats(8, 60))
def test_a_word_too_wide_is_cut_and_nothing_of_it_is_lost(text: str, room: float) -> None:
    found = SETTER.breakable(text, room, 1.5)
    assert "".join(found) == text.replace(" ", "")
    assert all(len(word) == 1 or SETTER.text_width(word, 1.5) <= room for word in found)


@given(WORDS, st.floats(6, 60))
def test_a_text_is_made_to_fit(text: str, room: float) -> None:
    """Smaller first, never below what can be read, and cut only then; it begins where it was told to."""
    (ink,) = fitted(SETTER, text, 20.0, 30.0, room)
    x0, _, x1, _ = ink.bounds()
    assert x1 - x0 <= room + 0.3 or SETTER.text_width(text[:1], 1.0) > room
    assert x0 == pytest.approx(20.0, abs=0.5)
    assert MIN_MM > 1.0 - 1e-9
    assert fitted(SETTER, "  ", 0, 0, room) == ()
