"""A page as PNG, drawn by CairoSVG from the page's own SVG."""

from __future__ import annotations

import io

from namewright.output.svg import page_svg
from namewright.pages.page import Page
from namewright.units import MM_PER_INCH


def page_png(page: Page, dpi: float = 150.0) -> bytes:
    """Return the page as PNG bytes at ``dpi`` dots an inch. Raises NativeLibraryMissing without cairo."""
    from namewright.output import _cairo

    width, height = (round(side / MM_PER_INCH * dpi) for side in (page.width_mm, page.height_mm))
    target = _cairo.png_target(width, height)
    _cairo.PageRaster(page_svg(page).encode(), target, _cairo.Shapes(), dpi)
    sink = io.BytesIO()
    target.write_to_png(sink)
    return sink.getvalue()
