"""Dots and short accents, as shapes whose size is known, in letter units."""

from __future__ import annotations

import pytest

from namewright.schoolfont.compact import CLEAR, axle_of

shapely = pytest.importorskip("shapely")
pytest.importorskip("shapely.affinity")


@pytest.mark.parametrize(("width", "height", "is_dot"), [
    (20, 20, True), (20, 32, True), (20, 40, False), (49, 49, True), (49, 51, False)])
def test_a_dot_is_small_and_compact(width: float, height: float, is_dot: bool) -> None:
    """Not above 1.8 times as long as wide, and 50 units at the most; turned as it may be."""
    for degrees in (0, 30, 90):
        part = shapely.affinity.rotate(shapely.box(0, 0, width, height), degrees)
        assert axle_of(shapely, part).is_dot == is_dot


def test_the_middle_line_of_a_slanting_stroke() -> None:
    """It runs along the longer side, in the middle, and its inner part stays half a dot inside."""
    part = shapely.affinity.rotate(shapely.box(-30, -10, 30, 10), 45, origin=(0, 0))
    axle = axle_of(shapely, part)
    assert (axle.length, axle.width) == pytest.approx((60, 20))
    assert sorted(axle.inner())[1] == pytest.approx(((30 - CLEAR) * 0.5**0.5, (30 - CLEAR) * 0.5**0.5))
