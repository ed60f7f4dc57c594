"""CairoSVG behind one door: pages drawn onto one cairo surface, shared furniture drawn once.

The native library is loaded here and nowhere else.
"""

from __future__ import annotations

from collections import OrderedDict
from collections.abc import Callable
from typing import Any
from xml.etree import ElementTree

_KEPT_SHAPES = 64


class NativeLibraryMissing(RuntimeError):
    """The cairo library, which draws PDF and PNG, is not on this machine."""

    def __init__(self) -> None:
        super().__init__(
            "PDF and PNG need the cairo graphics library, which is not on this machine. Install it and try again: "
            "Debian or Ubuntu “apt install libcairo2”, Fedora “dnf install cairo”, macOS “brew install cairo”, "
            "Windows the GTK 3 runtime. SVG works without it.")


try:
    import cairocffi
    import cairosvg.surface
    from cairosvg.parser import Tree
except OSError as error:  # cairocffi raises OSError where it finds no shared library
    raise NativeLibraryMissing from error

from namewright.output.svg import FURNITURE_ID

Shapes = OrderedDict[bytes, "cairocffi.RecordingSurface"]


class PageSurface(cairosvg.surface.Surface):  # type: ignore[misc]
    """CairoSVG drawing one page onto a cairo surface that outlives it.

    The furniture of a page is recorded once and painted again on every page that has the same: cairo then
    writes it once into the PDF, as a form that all those pages use.
    """

    def __init__(self, svg: bytes, target: cairocffi.Surface, shapes: Shapes, dpi: float = 96.0) -> None:
        self._target, self._shapes = target, shapes
        super().__init__(Tree(bytestring=svg), None, dpi)

    def _create_surface(self, width: float, height: float) -> tuple[Any, float, float]:
        return self._target, width, height

    def draw(self, node: Any) -> None:
        """Draw a node of the SVG tree, the furniture from its recording."""
        if node.get("id") != FURNITURE_ID:
            super().draw(node)
            return
        self.context.set_source_surface(self._recorded(node), 0, 0)
        self.context.paint()
        self.context.set_source_rgb(0, 0, 0)

    def _recorded(self, node: Any) -> cairocffi.RecordingSurface:
        key = ElementTree.tostring(node.element.etree_element)
        if key not in self._shapes:
            extents = (0, 0, self.context_width, self.context_height)
            recording = cairocffi.RecordingSurface(cairocffi.CONTENT_COLOR_ALPHA, extents)
            page, self.context = self.context, cairocffi.Context(recording)
            super().draw(node)
            self.context = page
            self._shapes[key] = recording
            if len(self._shapes) > _KEPT_SHAPES:
                self._shapes.popitem(last=False)
        self._shapes.move_to_end(key)
        return self._shapes[key]


class PageRaster(PageSurface):
    """The same, onto pixels: a user unit is a pixel at the given dpi."""

    device_units_per_user_units = 1


def pdf_target(write: Callable[[bytes], Any], title: str) -> cairocffi.PDFSurface:
    """Return a PDF surface that writes as it goes, with a title and no date."""
    sink = _Sink(write)
    surface = cairocffi.PDFSurface(sink, 1, 1)
    surface.restrict_to_version(cairocffi.PDF_VERSION_1_4)
    surface.set_metadata(cairocffi.PDF_METADATA_TITLE, title)
    surface.set_metadata(cairocffi.PDF_METADATA_CREATE_DATE, "")
    return surface


class _Sink:
    """The least file object that cairo needs."""

    def __init__(self, write: Callable[[bytes], Any]) -> None:
        self.write = write


def png_target(width_px: int, height_px: int) -> cairocffi.ImageSurface:
    """Return a white raster surface."""
    surface = cairocffi.ImageSurface(cairocffi.FORMAT_RGB24, width_px, height_px)
    context = cairocffi.Context(surface)
    context.set_source_rgb(1, 1, 1)
    context.paint()
    return surface
