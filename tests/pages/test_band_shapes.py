"""Marks of how hard a letter is: told apart by shape and by grey, without colour, and of the size told."""

from __future__ import annotations

from itertools import combinations

import numpy as np
import pytest

from contrast import contrast
from namewright.pages.plan.band_shapes import SHAPE_MM, SHAPE_STYLES, STEP_MM, band_shape, letter_on_shape
from namewright.pages.typesetter import Typesetter
from namewright.practice.difficulty import Band


@pytest.mark.parametrize("band", Band)
@pytest.mark.parametrize("side", [1.6, 3.2, SHAPE_MM])
def test_a_mark_stands_about_its_place_within_its_side(band: Band, side: float) -> None:
    """Its edge counted; and none is much smaller than another."""
    x0, y0, x1, y1 = band_shape(band, 10.0, 20.0, side).bounds()
    assert ((x0 + x1) / 2, (y0 + y1) / 2) == pytest.approx((10.0, 20.0), abs=0.02)
    assert 0.85 * side <= x1 - x0 <= side + 0.02
    assert y1 - y0 == pytest.approx(x1 - x0, abs=0.02)


def test_marks_are_told_apart_without_colour() -> None:
    """Each shape is another path, and the fills keep 1.5:1 to one another when printed grey."""
    shapes = {band_shape(band, 0, 0, SHAPE_MM).pieces[0].fragment.data for band in Band}
    assert len(shapes) == len(Band)
    assert all(contrast(SHAPE_STYLES[one].fill, SHAPE_STYLES[other].fill) > 1.5 for one, other in combinations(Band, 2))


@pytest.mark.parametrize("band", Band)
def test_a_letter_is_read_on_its_mark(band: Band) -> None:
    """7:1 on its fill (WCAG 2.2, SC 1.4.6), and the edge 3:1 on white (SC 1.4.11)."""
    assert contrast(SHAPE_STYLES[band].letter, SHAPE_STYLES[band].fill) > 7
    assert contrast(SHAPE_STYLES[band].edge, "#ffffff") > 3


@pytest.mark.parametrize("letter", ["i", "W", "Q", "Ẹ̀", "Ǘ", "g", "J"])
def test_every_letter_stands_inside_its_mark(setter: Typesetter, letter: str) -> None:
    """Wide ones and those with two marks are set smaller; the next mark is clear of this one."""
    shape, ink = letter_on_shape(setter, letter, Band.MIDDLE, 10.0, 20.0)
    x0, y0, x1, y1 = ink.bounds()
    assert 10.0 <= x0 < x1 <= 10.0 + SHAPE_MM
    assert 20.0 - SHAPE_MM / 2 <= y0 < y1 <= 20.0 + SHAPE_MM / 2
    assert shape.bounds()[2] < 10.0 + STEP_MM


# Machado, Oliveira & Fernandes (2009), doi:10.1109/TVCG.2009.113, severity 1.0; from memory. They work on linear RGB.
SIGHTS = {
    "protan": [[0.152286, 1.052583, -0.204868], [0.114503, 0.786281, 0.099216], [-0.003882, -0.048116, 1.051998]],
    "deutan": [[0.367322, 0.860646, -0.227968], [0.280085, 0.672501, 0.047413], [-0.011820, 0.042940, 0.968881]],
    "tritan": [[1.255528, -0.076749, -0.178779], [-0.078411, 0.930809, 0.147602], [0.004733, 0.691367, 0.303900]],
    "grey": [[0.2126, 0.7152, 0.0722]] * 3,
}


@pytest.mark.parametrize("band", Band)
def test_letters_and_edges_stand_out(band: Band) -> None:
    """A letter has 4.5 to 1 on its shape (WCAG 2.2, 1.4.3), an edge 3 to 1 on the paper (1.4.11)."""
    look = SHAPE_STYLES[band]
    assert contrast(look.letter, look.fill) >= 4.5
    assert contrast(look.edge, "#ffffff") >= 3.0


@pytest.mark.parametrize("sight", SIGHTS)
def test_fills_stay_apart_for_every_eye_and_in_grey(sight: str) -> None:
    """Any two fills differ by 12 of CIELAB's lightness or more, whoever looks and with no colour at all."""
    lightness = []
    for look in SHAPE_STYLES.values():
        channels = np.array([int(look.fill[at:at + 2], 16) / 255 for at in (1, 3, 5)])
        linear = np.where(channels <= 0.04045, channels / 12.92, ((channels + 0.055) / 1.055) ** 2.4)
        seen = np.clip(np.array(SIGHTS[sight]) @ linear, 0, 1)
        lightness.append(116 * np.cbrt(float(seen @ [0.2126, 0.7152, 0.0722])) - 16)
    assert min(abs(a - b) for a, b in combinations(lightness, 2)) >= 12


def test_bands_differ_in_shape_and_weight_too() -> None:
    """With every colour taken away the three shapes are three, and the easier edge is the lightest."""
    outlines = {band_shape(band, 0.0, 0.0, 4.0).path_data() for band in Band}
    assert len(outlines) == 3
    assert SHAPE_STYLES[Band.EASIER].edge_mm < SHAPE_STYLES[Band.MIDDLE].edge_mm
