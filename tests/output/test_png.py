"""A page as PNG, its size read by Pillow."""

from __future__ import annotations

import io
import xml.etree.ElementTree as ET

import pytest
from PIL import Image

from namewright.lines.ruling import preset
from namewright.output.png import page_png
from namewright.output.svg import page_svg
from namewright.pages.page import Page
from namewright.pages.sheet import practice_pages
from namewright.pages.sheet_settings import SheetSettings
from namewright.pages.typesetter import Typesetter


def sheet(setter: Typesetter, name: str = "Zoë", ruling: str = "de-6", **more: object) -> tuple[Page, ET.Element]:
    page = practice_pages(setter, name, name, SheetSettings(preset(ruling), **more))[0]  # type: ignore[arg-type]
    return page, ET.fromstring(page_svg(page))


@pytest.mark.parametrize(("dpi", "size"), [(72, (612, 792)), (150, (1275, 1650))])
def test_png_has_the_size_of_the_paper(setter: Typesetter, dpi: int, size: tuple[int, int]) -> None:
    """A PNG of a Letter page has 8.5 × dpi by 11 × dpi pixels, white but for the ink."""
    page, _ = sheet(setter)
    image = Image.open(io.BytesIO(page_png(page, dpi))).convert("L")
    assert image.size == size
    assert image.getpixel((1, 1)) == 255
    darkest, _ = image.getextrema()
    assert darkest < 40
