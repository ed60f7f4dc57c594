"""A page as PNG, drawn by CairoSVG from the page's own SVG."""

from __future__ import annotations

from namewright.output.svg import page_svg
from namewright.pages.page import Page


def page_png(page: Page, dpi: float = 150.0) -> bytes:
    """Return the page as PNG bytes at ``dpi`` dots an inch. Raises NativeLibraryMissing without cairo."""
    from namewright.output import _cairo

    return _cairo.raster(page_svg(page).encode(), dpi)
