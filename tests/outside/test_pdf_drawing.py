"""What PDFium draws from our PDF against what CairoSVG draws from the SVG of the same page, on every kind of page.

Neither drawing is ours, and the two have only the finished page in common.
"""

from __future__ import annotations

import io
import math

import numpy as np
import pytest
from PIL import Image
from scipy.ndimage import minimum_filter

from longer import rest_long
from namewright.output.png import page_png
from namewright.pages.page import Page
from printed import KINDS, Pixels, kinds, pdf_bytes, scan

DPI = 300
DARK, LIGHT = 100, 215  # ink at its full cover, and a pixel that holds hardly any


def in_whole_pixels(page: Page) -> Page:
    """Return the page on paper of whole pixels, less a hair: PDFium stretches a page to the next whole pixel."""
    width, height = ((math.ceil(mm / 25.4 * DPI) - 0.01) * 25.4 / DPI for mm in (page.width_mm, page.height_mm))
    return page._replace(width_mm=width, height_mm=height)


def both(page: Page) -> tuple[Pixels, Pixels]:
    """Return the two drawings as grey values."""
    page = in_whole_pixels(page)
    png = np.array(Image.open(io.BytesIO(page_png(page, DPI))).convert("L"))
    pdf = scan(pdf_bytes([page]), dpi=DPI)
    height, width = min(png.shape[0], pdf.shape[0]), min(png.shape[1], pdf.shape[1])
    assert abs(png.shape[0] - pdf.shape[0]) + abs(png.shape[1] - pdf.shape[1]) <= 2
    return png[:height, :width], pdf[:height, :width]


def stray(inked: Pixels, seen: Pixels) -> int:
    """Return how many dark pixels of one drawing have no ink of the other within a pixel of them."""
    return int(((inked < DARK) & (minimum_filter(seen, 3) > LIGHT)).sum())


@pytest.mark.parametrize("which", rest_long(KINDS, 1))
def test_pdf_and_svg_show_one_page(which: str) -> None:
    """All ink of each drawing lies within a pixel of the other's, at 300 dots to an inch."""
    for name, page in kinds(which).items():
        svg, pdf = both(page)
        assert (svg < DARK).sum() > 5_000, name
        assert (stray(svg, pdf), stray(pdf, svg)) == (0, 0), name


def test_the_comparison_can_fail() -> None:
    """A drawing shifted by three pixels is not the same page."""
    svg, pdf = both(kinds("sheets")["sheet-full"])
    assert stray(svg, np.roll(pdf, 3, axis=0)) > 1_000


def test_the_drawings_lie_on_each_other() -> None:
    """The shift at which the two drawings agree best is less than half a pixel either way, measured to a tenth."""
    svg, pdf = both(kinds("sheets")["sheet-full"])
    for axis in (0, 1):
        one, other = (255 - drawing.astype(float) for drawing in (svg, pdf))
        errors = [float(((one - np.roll(other, step, axis=axis)) ** 2).sum()) for step in (-1, 0, 1)]
        offset = (errors[0] - errors[2]) / (2 * (errors[0] - 2 * errors[1] + errors[2]))  # the parabola's lowest point
        assert abs(offset) < 0.5
