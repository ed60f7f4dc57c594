"""What holds for a child reaches every kind of page: no choice is lost between sheet and page."""

from __future__ import annotations

from dataclasses import fields

import pytest

from namewright.letters.alphabet import upright
from namewright.letters.choice import read_choice
from namewright.lines.ruling import preset
from namewright.making import page_settings
from namewright.pages.paper import CardSize, Paper
from namewright.pages.sheet_settings import SheetSettings
from namewright.practice.ordering import Order
from namewright.settings import Support

HOLDS = SheetSettings(preset("de-5"), Paper.A4, landscape=True, binding=True, support=Support.LIGHT, language="it",
                      letters=read_choice("a=two-storey", upright()), names_in="pl", beats="Bo")


@pytest.mark.parametrize("made", [
    page_settings.for_card(HOLDS, CardSize.INDEX_4X6), page_settings.for_tiles(HOLDS, 38.0),
    page_settings.for_ruled_page(HOLDS), page_settings.for_plan(HOLDS, Order.NEED), page_settings.for_progress(HOLDS),
], ids=lambda made: type(made).__name__)
def test_what_a_page_shares_with_a_sheet_is_the_same(made: object) -> None:
    """Every field of the same name has the same value, and none of them is the default by accident."""
    own = made._fields if isinstance(made, tuple) else [field.name for field in fields(made)]  # type: ignore
    shared = set(own) & set(HOLDS._fields)
    assert "language" in shared
    assert {name: getattr(made, name) for name in shared} == {name: getattr(HOLDS, name) for name in shared}


@pytest.mark.parametrize("asked", Order)
def test_a_plan_is_in_the_order_of_the_class(asked: Order) -> None:
    """Whichever it is, so that its page numbers are those of the sheets."""
    assert page_settings.for_plan(HOLDS, asked).order is asked


def test_sizes_are_as_asked_for() -> None:
    """Of a card and of a tile."""
    assert page_settings.for_card(HOLDS, CardSize.INDEX_3X5).size is CardSize.INDEX_3X5
    assert page_settings.for_tiles(HOLDS, 38.0).side_mm == 38.0
