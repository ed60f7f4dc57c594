"""Sheets of paper: their sizes (ISO 216; ANSI Letter, 8.5 by 11 in) and the margins that stay white."""

from __future__ import annotations

import pytest

from namewright.pages.paper import Paper, sheet_of


@pytest.mark.parametrize(("paper", "size"), [(Paper.A4, (210.0, 297.0)), (Paper.LETTER, (215.9, 279.4))])
def test_a_paper_has_its_size(paper: Paper, size: tuple[float, float]) -> None:
    assert paper.size_mm == pytest.approx(size)
    sheet, turned = sheet_of(paper), sheet_of(paper, landscape=True)
    assert (sheet.width_mm, sheet.height_mm) == (turned.height_mm, turned.width_mm) == paper.size_mm


@pytest.mark.parametrize("paper", Paper)
def test_the_binding_margin_stays_on_one_edge_of_the_paper(paper: Paper) -> None:
    """25 mm, left on an upright page, so at the top of one that is turned: in a binder it is the same edge."""
    sheet, turned = (sheet_of(paper, landscape=landscape, binding=True) for landscape in (False, True))
    assert (sheet.left_mm, sheet.top_mm) == (turned.top_mm, turned.left_mm) == (25.0, 12.7)
    assert (sheet.right_mm, sheet.bottom_mm) == (12.7, 12.7)
    for one in (sheet, turned):
        assert one.left_mm + one.room_width == pytest.approx(one.right_edge)
        assert one.right_edge + one.right_mm == pytest.approx(one.width_mm)
        assert one.foot + one.bottom_mm == pytest.approx(one.height_mm)
