"""What a printer would put on paper: pages as a PDF, drawn by PDFium (not our library), and ink measured on it."""

from __future__ import annotations

import importlib.util
import io
from collections.abc import Iterable
from functools import cache
from pathlib import Path
from types import ModuleType

import numpy as np
import pypdfium2 as pdfium

from namewright.output.pdf import write_pdf
from namewright.pages.page import Page

MM_PER_POINT = 25.4 / 72
Pixels = np.ndarray
GALLERY = Path(__file__).parents[1] / "gallery" / "build.py"


def pdf_bytes(pages: Iterable[Page], title: str = "Practice pages", lang: str = "en") -> bytes:
    """Return the pages as the bytes of one PDF."""
    out = io.BytesIO()
    write_pdf(pages, out, title=title, lang=lang)
    return out.getvalue()


KINDS = ("forms", "sheets", "cards", "class_pages", "plans", "progress", "school_font")
"""What the gallery shows, by the names of what builds it there."""


@cache
def kinds(which: str) -> dict[str, Page]:
    """Return the pages of one of ``KINDS`` by their names, built when they are first asked for."""
    made = getattr(_gallery(), which)()
    return {which: made} if isinstance(made, Page) else dict(made)


@cache
def _gallery() -> ModuleType:
    spec = importlib.util.spec_from_file_location("gallery_build", GALLERY)
    assert spec is not None
    assert spec.loader is not None
    build = importlib.util.module_from_spec(spec)
    spec.loader.exec_module(build)
    return build


def scan(data: bytes, *, page: int = 0, dpi: int = 600,
         left_mm: float = 0.0, right_mm: float | None = None) -> Pixels:
    """Return a column of a page, over its whole height, as grey values (0 black, 255 white)."""
    document = pdfium.PdfDocument(data)
    sheet = document[page]
    width = sheet.get_width()
    right = 0.0 if right_mm is None else width - right_mm / MM_PER_POINT
    bitmap = sheet.render(scale=dpi / 72, crop=(left_mm / MM_PER_POINT, 0, right, 0), grayscale=True)
    pixels = np.array(bitmap.to_numpy()).reshape(bitmap.height, bitmap.width).astype(float)
    document.close()
    return pixels


def bands(darkness: Pixels, dpi: int, ink: float = 148.0) -> list[tuple[float, float]]:
    """Return (centre, thickness) in mm of every stretch of ink in a profile of darkness (0 white).

    Both come from the weight of the ink, ``ink`` being that of full cover, so they are finer than a pixel. The
    default is the darkness of our guide lines.
    """
    dark = np.concatenate([[False], darkness > 12, [False]])
    starts, ends = np.flatnonzero(~dark[:-1] & dark[1:]), np.flatnonzero(dark[:-1] & ~dark[1:])
    found = []
    for a, b in zip(starts, ends, strict=True):
        weight = darkness[a:b]
        centre = float((weight * (np.arange(a, b) + 0.5)).sum() / weight.sum())
        found.append((centre / dpi * 25.4, float(weight.sum()) / ink / dpi * 25.4))
    return found


def rows_of(pixels: Pixels) -> Pixels:
    """Return how dark the darkest pixel of each row is: a dashed line counts as a line."""
    return 255.0 - pixels.min(axis=1)
