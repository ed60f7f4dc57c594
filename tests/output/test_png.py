"""A page as PNG, its size read by Pillow."""

from __future__ import annotations

import io
import signal
import xml.etree.ElementTree as ET
from concurrent.futures import ThreadPoolExecutor

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


def test_ctrl_c_waits_until_a_picture_is_drawn(setter: Typesetter, monkeypatch: pytest.MonkeyPatch) -> None:
    """Inside cairo it would be told of as an error that is passed over, and the picture as one not written."""
    import cairosvg

    page, _ = sheet(setter)
    drawn: list[bytes] = []

    def interrupted(**how: object) -> bytes:
        signal.raise_signal(signal.SIGINT)
        drawn.append(b"picture")
        return drawn[0]

    monkeypatch.setattr(cairosvg, "svg2png", interrupted)
    with pytest.raises(KeyboardInterrupt):
        page_png(page)
    assert drawn
    assert signal.getsignal(signal.SIGINT) is signal.default_int_handler


def test_a_picture_is_drawn_beside_the_main_thread_too(setter: Typesetter) -> None:
    """Only that hears of Ctrl-C, and any other may set no handler for it: the server draws in such a one."""
    page, _ = sheet(setter)
    with ThreadPoolExecutor(1) as beside:
        assert beside.submit(page_png, page, 30).result() == page_png(page, 30)
