"""CairoSVG behind one door: it draws pictures (PNG). Its native library is loaded here and nowhere else."""

from __future__ import annotations


class NativeLibraryMissing(RuntimeError):
    """The cairo library, which draws pictures (PNG), is not on this machine."""

    def __init__(self) -> None:
        super().__init__(
            "PNG pictures need the cairo graphics library, which is not on this machine. Install it and try again: "
            "Debian or Ubuntu “apt install libcairo2”, Fedora “dnf install cairo”, macOS “brew install cairo”, "
            "Windows the GTK 3 runtime. PDF and SVG work without it.")


try:
    import cairosvg
except (ImportError, OSError) as error:  # cairocffi raises OSError where it finds no shared library
    raise NativeLibraryMissing from error


def raster(svg: bytes, dpi: float) -> bytes:
    """Return the SVG drawn by CairoSVG on white, as PNG bytes."""
    return bytes(cairosvg.svg2png(bytestring=svg, dpi=dpi, background_color="white"))
