"""A row a child on the plan: every letter on its shape, beats and long names whole, what stands ticked."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st
from planhelp import NAMES, child, plan_of, table_of

from namewright.lines.ink import RULE, Ink, Style
from namewright.pages.page import leaves
from namewright.pages.plan.band_shapes import SHAPE_STYLES, formed_tick
from namewright.pages.plan.flow import MIN_MM, TEXT_MM, packed
from namewright.pages.plan.pages import PlanSettings, plan_pages
from namewright.pages.typesetter import Typesetter
from namewright.practice.ordering import Order, Placed, completed, order_class


def placed_of(names: tuple[str, ...] | list[str], order: Order = Order.PRACTICE) -> tuple[Placed, ...]:
    return completed(order_class([child(name, line) for line, name in enumerate(names, start=1)], order))


SETTER = Typesetter()
TEXTS = st.lists(st.text("AWMabdilmw’", min_size=1, max_size=30).map(lambda word: word + "-"), min_size=1, max_size=9)


def test_every_letter_of_every_name_has_its_shape(setter: Typesetter) -> None:
    """Count filled shapes by colour: rows, weeks, and the legend's one."""
    fills = [item.style.fill for page in plan_of(setter, NAMES) for item in leaves(page.items) if isinstance(item, Ink)]
    for band, look in SHAPE_STYLES.items():
        rows = sum(band is each for one in placed_of(NAMES) for _, each in one.letters)
        assert fills.count(look.fill) >= rows + 1
        assert rows > 0, band


@given(TEXTS, st.floats(12.0, 60.0))
def test_a_long_name_goes_on_below_and_nothing_of_it_is_lost(pieces: list[str], room: float) -> None:
    """Lines joined are the text, and each fits at the smallest size there is."""
    setter = SETTER
    lines = packed(setter, pieces, room, TEXT_MM)
    assert "".join(lines) == "".join(pieces)
    assert all(setter.text_width(line, MIN_MM) <= room for line in lines)


def test_long_beats_and_names_make_a_row_taller(setter: Typesetter) -> None:
    """Rows of names too long for their column push the next row down."""
    def rules(names: list[str]) -> list[float]:
        items = [item for item in leaves(plan_of(setter, names)[1].items) if isinstance(item, Ink)]
        return sorted(item.bounds()[1] for item in items if item.style == Style(0.1, RULE))

    short, long = rules(["Bo", "Ana", "Abc"]), rules(["Wolfeschlegelsteinhausenberg", "Bo", "Ana"])
    assert len(short) == len(long) == 3
    assert long[2] - long[1] == pytest.approx(short[1] - short[0])
    assert rules(["Bo", "Wolfeschlegelsteinhausenberg", "Wolfeschlegelsteinhausenburg"])[2] - short[1] > 3


@pytest.mark.parametrize(("formed", "ticks"), [({}, 0), ({1: frozenset()}, 0), ({1: frozenset("Mx")}, 2),
                                               ({1: frozenset("Mira"), 2: frozenset("o")}, 6)])
def test_letters_that_stand_are_ticked(setter: Typesetter, formed: dict[int, frozenset[str]], ticks: int) -> None:
    """One tick a letter that is in the name, and one in the legend where there is any; the page passes its check."""
    pages = plan_pages(setter, table_of(["Mira", "Bo"], formed=formed), PlanSettings())
    style = formed_tick(0.0, 0.0).style
    assert sum(item.style == style for page in pages for item in leaves(page.items) if isinstance(item, Ink)) == ticks
