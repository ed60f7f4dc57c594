"""A finished page and its check: ink inside the margins, every violation told at once."""

from __future__ import annotations

import pytest

from namewright.lines.ink import BLACK, Ink, Style, line
from namewright.lines.ruling import GuideLine
from namewright.pages.page import Furniture, Guide, Page, PageError, Row, Tile, checked, leaves

PEN = Style(2.0, BLACK)


def bar(x0: float, y0: float, x1: float, y1: float) -> Ink:
    return Ink.of(PEN, (line(x0, y0, x1, y1),))


@pytest.mark.parametrize(("ink", "outside"), [
    (bar(11, 11, 89, 11), False),            # a pen of 2 mm about 11 reaches to 10
    (bar(10.9, 50, 20, 50), True), (bar(50, 50, 89.1, 50), True),
    (bar(50, 10.9, 50, 20), True), (bar(50, 50, 50, 139.1), True), (bar(50, 50, 50, 139), False),
])
def test_ink_keeps_off_the_edge_with_its_pens_half_width(ink: Ink, outside: bool) -> None:
    """Ten millimetres on a page of 100 by 150."""
    page = Page(100, 150, (ink,))
    if outside:
        with pytest.raises(PageError) as caught:
            checked(page)
        assert "outside the 10 mm margin of a 100 × 150 mm page" in str(caught.value.message["violations"])
    else:
        assert checked(page) is page


def test_every_violation_is_told() -> None:
    """Two that reach out, in a row and in what pages share."""
    guide = Guide(GuideLine.BASE, 5.0, 60.0, 50.0, PEN)
    page = Page(100, 150, (Row("Bo", "solid", (guide,)), Furniture((bar(2, 50, 20, 50),))))
    with pytest.raises(PageError) as caught:
        checked(page)
    told = caught.value.message["violations"]
    assert isinstance(told, tuple)
    assert [str(one).split()[0] for one in told] == ["guide", "ink"]


def test_a_page_may_have_a_narrower_margin() -> None:
    """A sheet of cards is cut: there 5 mm do."""
    assert checked(Page(100, 150, (bar(6, 50, 20, 50),), edge_mm=5.0))


def test_what_is_drawn_comes_in_its_order() -> None:
    """Rows and furniture are opened where they stand."""
    one, two, three = (bar(at, 50, at + 5, 50) for at in (20, 30, 40))
    assert list(leaves([Row("Bo", "solid", (one,)), two, Furniture((three,))])) == [one, two, three]


def test_a_box_and_a_guide_cover_their_outline() -> None:
    """Half a pen beyond their edges; a guide ends where it ends."""
    assert Tile(10, 20, 25, 25, "B", PEN).bounds() == (9, 19, 36, 46)
    assert Guide(None, 10, 60, 50, PEN).bounds() == (10, 49, 60, 51)
