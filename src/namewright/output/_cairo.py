"""CairoSVG behind one door: it draws pictures (PNG). Its native library is loaded here and nowhere else."""

from __future__ import annotations

from namewright.message import Problem


class NativeLibraryMissing(Problem):
    """The cairo library, which draws pictures (PNG), is not on this machine."""

    def __init__(self) -> None:
        super().__init__("output.cairo")


try:
    import cairosvg
except (ImportError, OSError) as error:  # cairocffi raises OSError where it finds no shared library
    raise NativeLibraryMissing from error


def raster(svg: bytes, dpi: float) -> bytes:
    """Return the SVG drawn by CairoSVG on white, as PNG bytes."""
    return bytes(cairosvg.svg2png(bytestring=svg, dpi=dpi, background_color="white"))
