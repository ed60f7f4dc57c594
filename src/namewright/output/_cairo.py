"""CairoSVG behind one door: it draws pictures (PNG). Its native library is loaded here and nowhere else."""

from __future__ import annotations

import signal
from collections.abc import Iterator
from contextlib import contextmanager
from threading import current_thread, main_thread

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
    with _undisturbed():
        return bytes(cairosvg.svg2png(bytestring=svg, dpi=dpi, background_color="white"))


@contextmanager
def _undisturbed() -> Iterator[None]:
    """Let Ctrl-C wait until a picture is drawn: cairo hands its bytes to a function in Python, which must not raise."""
    if current_thread() is not main_thread():  # the only one that hears of it
        yield
        return
    came: list[int] = []
    before = signal.signal(signal.SIGINT, lambda number, _: came.append(number))
    try:
        yield
    finally:
        signal.signal(signal.SIGINT, before)
    if came and callable(before):
        before(signal.SIGINT, None)
