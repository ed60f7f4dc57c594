"""Every kind of page as a printer gets it, measured on PDFium's raster of our PDF and read by PDFium and QPDF.

Margins, the check bar, punched holes, contrast, and that a file holds no typeface, whatever the page.
"""

from __future__ import annotations

import io
import os
import subprocess
import sys
from collections.abc import Callable
from functools import cache
from pathlib import Path

import numpy as np
import pikepdf
import pypdfium2 as pdfium
import pytest
from skimage.measure import label, regionprops

from longer import rest_long
from namewright.lines.ruling import preset
from namewright.pages.blocks import PageSettings
from namewright.pages.name_card import CardSettings, CardSize, card_page, card_sheet
from namewright.pages.page import Furniture, Page
from namewright.pages.paper import Paper
from namewright.pages.sheet import practice_pages
from namewright.pages.sheet_settings import SheetSettings
from namewright.pages.size_finder import size_pages
from namewright.pages.strips import strip_of
from namewright.pages.tile_sheet import TileSettings, tile_pages
from namewright.pages.typesetter import Typesetter
from namewright.settings import Hand, Support
from printed import bands, pdf_bytes, scan

NAME = "Ẹ̀bun"  # marks above and below
DPI = 300
SETTER = Typesetter()


def sheets(**more: object) -> list[Page]:
    return list(practice_pages(SETTER, NAME, NAME, SheetSettings(preset("us-1/2"), **more)))  # type: ignore[arg-type]


def tiles(settings: TileSettings) -> list[Page]:
    return list(tile_pages(SETTER, [strip_of(NAME, NAME)], settings))


# Each kind of page, and the margin that it keeps white all round, in mm: sheets go into sleeves and binders,
# cards to printers, and only lines to cut along may come nearer to the edge of the paper.
KINDS: dict[str, tuple[Callable[[], list[Page]], float]] = {
    "sheet": (sheets, 10),
    "sheet on A4": (lambda: sheets(paper=Paper.A4, support=Support.LIGHT), 10),
    "sheet turned": (lambda: sheets(landscape=True, support=Support.INDEPENDENT), 10),
    "sheet turned on A4": (lambda: sheets(landscape=True, paper=Paper.A4), 10),
    "left-hander's sheet": (lambda: sheets(hand=Hand.LEFT, support=Support.PARTIAL), 10),
    "bound sheet": (lambda: sheets(binding=True), 10),
    "tiles of 25 mm": (lambda: tiles(TileSettings()), 5),
    "tiles of 38 mm on A4": (lambda: tiles(TileSettings(38.0, Paper.A4)), 5),
    "size finder": (lambda: [size_pages(SETTER, NAME, NAME, PageSettings(preset("us-3/4")))[0]], 10),
    "size finder on A4": (lambda: [size_pages(SETTER, NAME, NAME, PageSettings(preset("de-6"), Paper.A4))[0]], 10),
    **{f"card {size}": (lambda size=size: [card_page(SETTER, NAME, NAME, CardSettings(preset("us-3/8"), size))], 8)
       for size in CardSize},
    "cards on Letter": (lambda: [card_sheet(SETTER, NAME, NAME, CardSettings(preset("us-1/2")), Paper.LETTER)], 5),
    "cards on A4": (lambda: [card_sheet(SETTER, NAME, NAME, CardSettings(preset("us-1/2"), CardSize.A6), Paper.A4)], 5),
}


@cache
def printed(kind: str) -> bytes:
    """Return a kind of page as the bytes of a PDF."""
    return pdf_bytes(KINDS[kind][0]())


@cache
def raster(kind: str) -> np.ndarray:
    """Return its first page as PDFium draws it."""
    return scan(printed(kind), dpi=DPI)


def mm(pixels: float) -> float:
    return pixels / DPI * 25.4


def folds(kind: str) -> list[float]:
    """Return the heights of the lines to fold along on a kind's first page."""
    page = next(iter(KINDS[kind][0]()))
    return [ink.pieces[0].y for item in page.items if isinstance(item, Furniture) and item.bleeds for ink in item.items]


@pytest.mark.parametrize("kind", KINDS)
def test_the_margin_is_white(kind: str) -> None:
    """No ink stands nearer to an edge than the page's kind allows: 10 mm, on cards 8 mm, for lines to cut 5 mm."""
    dark = raster(kind) < 250
    for y in folds(kind):  # a line to fold along runs off the paper
        dark[round((y - 0.5) / 25.4 * DPI):round((y + 0.5) / 25.4 * DPI)] = False
    rows, columns = np.nonzero(dark)
    height, width = raster(kind).shape
    nearest = min(rows.min(), columns.min(), height - 1 - rows.max(), width - 1 - columns.max())
    assert mm(nearest) >= KINDS[kind][1] - mm(1)
    assert mm(nearest) < KINDS[kind][1] + 10  # there is ink, and the page is not shrunk into its middle


def runs_of_black(row: np.ndarray) -> list[tuple[int, int]]:
    """Return the (start, end) of every unbroken run of black pixels in a row."""
    dark = np.concatenate([[False], row < 60, [False]])
    return list(zip(np.flatnonzero(~dark[:-1] & dark[1:]), np.flatnonzero(dark[:-1] & ~dark[1:]), strict=True))


def bar_lengths(pixels: np.ndarray) -> list[float]:
    """Return the length of every check bar, in mm, from the middle of one tick to the middle of the other."""
    found: dict[tuple[int, int], int] = {}  # a bar's place in tenths of a tick, and the middle row seen last
    for y in np.flatnonzero((pixels < 60).sum(axis=1) > 49 / 25.4 * DPI):
        for start, end in runs_of_black(pixels[y]):
            if 49 < mm(end - start) < 51.5:
                found.setdefault((int(y) // 20, int(start) // 20), int(y))
    lengths = []
    for (_, _), y in found.items():
        x = next(start for start, end in runs_of_black(pixels[y]) if 49 < mm(end - start) < 51.5)
        above = pixels[y - round(0.9 / 25.4 * DPI), max(0, x - 15):x + round(52 / 25.4 * DPI)]
        ticks = [centre for centre, _ in bands(255 - above, DPI, ink=255)]
        lengths.append(ticks[-1] - ticks[0])
    return lengths


@pytest.mark.parametrize("kind", [kind for kind in KINDS if not kind.startswith("card ") and kind != "cards on A4"])
def test_every_page_has_a_check_bar_of_50_mm(kind: str) -> None:
    """Whatever the page, its bar measures 50 mm in print, to 0.1 mm; a card that a child keeps has none."""
    lengths = bar_lengths(raster(kind))
    assert lengths
    assert lengths == [pytest.approx(50.0, abs=0.1)] * len(lengths)


def holes(width_mm: float, height_mm: float, pitch_mm: float, from_edge_mm: float) -> list[tuple[float, float]]:
    """Return where holes are punched into the long edge: at the left of an upright page, at the top of a turned one."""
    long = max(width_mm, height_mm)
    along = [long / 2 + share * pitch_mm for share in ((-0.5, 0.5) if pitch_mm < 100 else (-1, 0, 1))]
    return [(from_edge_mm, at) if height_mm > width_mm else (at, from_edge_mm) for at in along]


@pytest.mark.parametrize("paper", Paper)
@pytest.mark.parametrize("landscape", [False, True])
def test_punched_holes_meet_no_ink(paper: Paper, landscape: bool) -> None:
    """Two holes by ISO 838 (6 mm wide, 80 mm apart, 12 mm from the edge, each ± its tolerance) fall on white paper.

    So do three of 8 mm, 4 1/4 in apart and 1/2 in from the edge, as Letter paper has them: common practice.
    """
    pages = sheets(paper=paper, landscape=landscape, binding=True)
    pixels = scan(pdf_bytes(pages), dpi=DPI)
    size = (pages[0].width_mm, pages[0].height_mm)
    for pitch, edge, reach in ((80.0, 12.0, 3.25 + 1.0), (4.25 * 25.4, 12.7, 4.0 + 1.0)):
        for x, y in holes(*size, pitch, edge):
            left, top, right, foot = (round(side / 25.4 * DPI) for side in (x - reach, y - reach, x + reach, y + reach))
            assert pixels[top:foot, left:right].size > 1000
            assert pixels[top:foot, left:right].min() > 250


def luminance(grey: float) -> float:
    """Return the relative luminance of a grey value: WCAG 2.2 (w3.org/TR/WCAG22/#dfn-relative-luminance)."""
    share = grey / 255
    return share / 12.92 if share <= 0.04045 else float(((share + 0.055) / 1.055) ** 2.4)


@pytest.mark.parametrize("support", [Support.FULL, Support.PARTIAL])
def test_dots_to_trace_are_dark_on_paper(support: Support) -> None:
    """Of the printed dots themselves every one has a heart that keeps 7:1 to white (WCAG 2.2 asks 3:1): none is pale.

    Looked at on unlined paper, where nothing but the dots stands in their row.
    """
    page = practice_pages(SETTER, "Wren", "Wren", SheetSettings(preset("unlined"), support=support))[0]
    row = next(item for item in page.items if getattr(item, "form", None) == "dotted")
    inks = [ink for ink in row.items if not hasattr(ink, "line")]  # type: ignore[union-attr]
    pixels = scan(pdf_bytes([page]), dpi=DPI)
    seen = 0
    for ink in inks:
        for piece in ink.pieces:  # type: ignore[union-attr]
            x0, y0, x1, y1 = (round(side / 25.4 * DPI) for side in piece.bounds())
            around = pixels[y0 - 8:y1 + 9, x0 - 8:x1 + 9]
            spots = regionprops(label(around < 200), intensity_image=around)
            assert len(spots) >= 8
            assert all((1.05 / (luminance(spot.intensity_min) + 0.05)) > 7 for spot in spots)
            seen += len(spots)
    assert seen > 20


@pytest.mark.parametrize("kind", KINDS)
def test_no_file_holds_a_typeface_of_others(kind: str) -> None:
    """Every font in a file is drawn by our own strokes (Type 3, ISO 32000-1, 9.6.5) and says what its codes mean."""
    fonts = 0
    with pikepdf.open(io.BytesIO(printed(kind))) as document:
        assert not document.get_warnings()
        for one in document.objects:
            if isinstance(one, pikepdf.Dictionary) and one.get("/Type") == "/Font":
                fonts += 1
                assert one.Subtype == "/Type3"
                assert "/ToUnicode" in one
                assert "/FontDescriptor" not in one
    assert fonts


def test_pdfium_reads_every_property_back() -> None:
    """Title, print scaling, and each child's entry with its page, read by PDFium; the language by QPDF."""
    pages = [page for name in ("Wren", "Zoë", "Íñigo") for page in practice_pages(
        SETTER, name, f"{name} T.", SheetSettings(preset("us-1/2")))]
    data = pdf_bytes(pages, title="Páginas de práctica", lang="es")
    document = pdfium.PdfDocument(data)
    assert document.get_metadata_value("Title") == "Páginas de práctica"
    assert document.get_metadata_value("CreationDate") == document.get_metadata_value("ModDate") == ""
    assert not pdfium.raw.FPDF_VIEWERREF_GetPrintScaling(document)
    entries = [(entry.get_title(), entry.get_dest().get_index()) for entry in document.get_toc()]
    assert entries == [("Wren T.", 0), ("Zoë T.", 1), ("Íñigo T.", 2)]
    with pikepdf.open(io.BytesIO(data)) as read:
        assert str(read.Root.Lang) == "es"
        assert read.Root.ViewerPreferences.PickTrayByPDFSize is True


@pytest.mark.parametrize("words", rest_long([
    ["sheets", "class.txt", "--svg", "svg"], ["card", "Ẹ̀bun"], ["tiles", "class.txt"], ["sizes", "Wren"]]),
    ids=lambda words: words[0])
def test_same_words_same_bytes_in_any_process(words: list[str], tmp_path: Path) -> None:
    """Two runs that order their sets differently (PYTHONHASHSEED) write the same files, byte for byte."""
    (tmp_path / "class.txt").write_text("Wren\nZoë\nÍñigo\nẸ̀bun\nTavi-Jorin\nQuillan\n", encoding="utf-8")
    made = []
    for seed in ("1", "20"):
        subprocess.run([sys.executable, "-m", "namewright.cli", *words, "-o", "out.pdf"], cwd=tmp_path, check=True,
                       env=os.environ | {"PYTHONHASHSEED": seed})
        made.append({path.name: path.read_bytes() for path in (tmp_path / "out.pdf", *tmp_path.glob("svg/*"))})
    assert made[0] == made[1]
    assert len(made[0]) == (7 if "--svg" in words else 1)
