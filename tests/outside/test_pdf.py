"""Our PDF, read by three libraries that are not ours: pypdf, pikepdf (QPDF) and pypdfium2 (PDFium)."""

from __future__ import annotations

import io
import os
import re
import subprocess
import sys
from pathlib import Path

import numpy as np
import pikepdf
import pypdf
import pypdfium2 as pdfium
import pytest

from namewright.lines.ruling import GuideLine, preset
from namewright.output.pdf import write_pdf
from namewright.pages.page import Guide, Page, Row
from namewright.pages.paper import Paper
from namewright.pages.sheet import practice_pages
from namewright.pages.sheet_settings import SheetSettings
from namewright.pages.typesetter import Typesetter
from printed import bands, pdf_bytes, scan

# A class of thirty, every name invented.
CLASS = ("Bo", "Mira", "Zoë", "Aurelisandra", "Íñigo", "Ẹ̀bun", "Łucja", "Tavi-Jorin", "Ana Isol", "Quillan", "Søren",
         "Kealiʻi", "Noor", "Ánh", "Saoirse", "Femke", "Pepin", "Gabrielle", "Jorvander", "Katie", "Liam", "Otis",
         "Wren", "Xander", "Yusra", "Vesper", "Hallo", "Dunmar", "Esk", "Umberlee")
# ISO 216 in points, 72 to an inch of 25.4 mm; Letter is 8.5 × 11 in.
A4 = (210 / 25.4 * 72, 297 / 25.4 * 72)
SIZES = {(Paper.A4, False): A4, (Paper.A4, True): A4[::-1],
         (Paper.LETTER, False): (612, 792), (Paper.LETTER, True): (792, 612)}


def class_pages(names: tuple[str, ...] = CLASS, ruling: str = "us-3/4", **more: object) -> list[Page]:
    setter = Typesetter()
    settings = SheetSettings(preset(ruling), **more)  # type: ignore[arg-type]
    return [page for name in names for page in practice_pages(setter, name, f"{name} T.", settings)]


@pytest.fixture(scope="module")
def thirty() -> bytes:
    """The class of thirty on the default ruling, as bytes."""
    return pdf_bytes(class_pages(), title="Name practice", lang="en")


@pytest.mark.parametrize(("paper", "landscape"), SIZES)
def test_page_size_is_exact(paper: Paper, landscape: bool) -> None:
    """Pages have the size of their paper to a thousandth of a point, whichever library asks."""
    data = pdf_bytes(class_pages(("Mira", "Otis"), paper=paper, landscape=landscape))
    wanted = pytest.approx(SIZES[paper, landscape], abs=0.0006)
    for page in pypdf.PdfReader(io.BytesIO(data)).pages:
        assert (float(page.mediabox.width), float(page.mediabox.height)) == wanted
    with pikepdf.open(io.BytesIO(data)) as document:
        for one in document.pages:
            x0, y0, x1, y1 = map(float, one.mediabox)
            assert (x1 - x0, y1 - y0) == wanted
    document = pdfium.PdfDocument(data)
    assert document[0].get_size() == wanted


def test_the_file_is_sound(thirty: bytes) -> None:
    """QPDF finds nothing to complain about; pypdf reads it strictly."""
    with pikepdf.open(io.BytesIO(thirty)) as document:
        assert document.check_pdf_syntax() == []
        assert document.get_warnings() == []
    assert len(pypdf.PdfReader(io.BytesIO(thirty), strict=True).pages) == len(CLASS)
    assert len(pdfium.PdfDocument(thirty)) == len(CLASS)


def test_the_soundness_test_can_fail(thirty: bytes) -> None:
    """A damaged copy does raise a complaint."""
    damaged = thirty.replace(b"endstream", b"endstreem", 1)
    with pikepdf.open(io.BytesIO(damaged)) as document:
        assert document.check_pdf_syntax()


def test_viewers_are_told_how_to_print_it(thirty: bytes) -> None:
    """The viewer is asked not to scale and to show the title; language and title are set (ISO 32000-1, 12.2)."""
    root = pypdf.PdfReader(io.BytesIO(thirty)).root_object
    preferences = root["/ViewerPreferences"]
    assert preferences["/PrintScaling"] == "/None"
    assert preferences["/DisplayDocTitle"] is True or preferences["/DisplayDocTitle"].value is True
    assert root["/Lang"] == "en"
    assert root["/PageMode"] == "/UseNone"  # an outline of names is not opened to whoever looks over a shoulder
    assert pypdf.PdfReader(io.BytesIO(thirty)).metadata.title == "Name practice"  # type: ignore[union-attr]


def test_one_outline_entry_a_child(thirty: bytes) -> None:
    """The outline has each child's label once, in order, and leads to the child's own page."""
    reader = pypdf.PdfReader(io.BytesIO(thirty))
    entries = [(entry.title, reader.get_destination_page_number(entry)) for entry in reader.outline]
    assert entries == [(f"{name} T.", number) for number, name in enumerate(CLASS)]


def test_the_outline_counts_pages_where_a_child_has_several() -> None:
    """With lines so tall that a child needs two pages, the next child's entry leads past both."""
    tall = preset("us-1").scaled_to(60)
    setter = Typesetter()
    pages = [page for name in ("Mo", "Li") for page in practice_pages(setter, name, name, SheetSettings(tall))]
    starts = [number for number, page in enumerate(pages) if page.outline]
    assert starts[1] > 1
    reader = pypdf.PdfReader(io.BytesIO(pdf_bytes(pages)))
    assert [reader.get_destination_page_number(entry) for entry in reader.outline] == starts


def test_no_dates_and_no_names_about_the_file(thirty: bytes) -> None:
    """Nothing tells when the file was made, and no child's name stands in what is told about it."""
    with pikepdf.open(io.BytesIO(thirty)) as document:
        assert set(document.docinfo.keys()) <= {"/Title", "/Producer", "/Creator"}
        metadata = document.Root.Metadata.read_bytes().decode()
        assert "/ID" not in document.trailer
        told = " ".join([metadata, *(str(value) for value in document.docinfo.values())])
        objects = [one for one in document.objects if isinstance(one, pikepdf.Dictionary) and "/Title" in one
                   and "/Parent" in one]
        assert len(objects) == len(CLASS)
    assert not any(name in told for name in CLASS)
    assert not re.search("date", told, re.IGNORECASE)


def test_same_class_same_bytes(thirty: bytes) -> None:
    """The same class gives the same file, byte for byte."""
    assert pdf_bytes(class_pages(), title="Name practice", lang="en") == thirty


def test_a_class_is_small(thirty: bytes) -> None:
    """A class of thirty takes at most 4,200 bytes a page."""
    assert len(thirty) / len(CLASS) <= 4200


@pytest.mark.parametrize("paper", Paper)
def test_the_check_bar_is_50_mm(paper: Paper) -> None:
    """From the middle of one end tick to the middle of the other the printed bar is 50 mm, to 0.1 mm."""
    dpi = 600
    (page, *_) = class_pages(("Mira",), paper=paper)
    pixels = scan(pdf_bytes([page]), dpi=dpi, right_mm=85)
    # Seek the bar near the foot: the one row that is black for about 50 mm.
    foot = pixels[round((page.height_mm - 25) / 25.4 * dpi):]
    row = int(np.argmax((foot < 60).sum(axis=1)))
    tick = foot[row - round(0.9 / 25.4 * dpi)]  # above the bar only its ticks are inked
    ticks = [centre for centre, thickness in bands(255 - tick, dpi, ink=255) if 0.15 < thickness < 0.4]
    assert ticks[1] - ticks[0] == pytest.approx(50.0, abs=0.1)


def test_all_kinds_of_names_make_sound_files() -> None:
    """Long names, turned pages, two rows: still nothing for QPDF to complain about."""
    pages = class_pages(("Umberlindoras", "Aurelisandra-Quillonette", "Ụ́gụ̀"), ruling="us-1-1/8")
    assert {page.width_mm > page.height_mm for page in pages} == {True, False}
    with pikepdf.open(io.BytesIO(pdf_bytes(pages, lang="es"))) as document:
        assert document.check_pdf_syntax() == []
        assert str(document.Root.Lang) == "es"


def test_no_pages_is_told() -> None:
    """A PDF of no pages is refused in a sentence."""
    with pytest.raises(ValueError, match="no page"):
        write_pdf([], io.BytesIO(), title="x", lang="en")


def test_dashed_lines_are_dashed_in_print() -> None:
    """The midline is printed in dashes of 2 mm with 1.5 mm of white between, the base line without a gap."""
    dpi = 400
    (page, *_) = class_pages(("Mira",))
    row = next(item for item in page.items if isinstance(item, Row) and item.form == "blank")
    guides = {item.line: item for item in row.items if isinstance(item, Guide)}
    pixels = scan(pdf_bytes([page]), dpi=dpi)
    for line, broken in ((GuideLine.MID, True), (GuideLine.BASE, False), (GuideLine.TOP, False)):
        guide = guides[line]
        x0, x1, y = (round(side / 25.4 * dpi) for side in (guide.x0 + 1, guide.x1 - 1, guide.y))
        profile = 255 - pixels[y - 1:y + 2, x0:x1].min(axis=0)
        assert (profile.min() < 20) == broken
        if broken:
            dashes = bands(profile, dpi)[1:-1]
            steps = np.diff([centre for centre, _ in dashes])
            assert len(dashes) > 10
            assert steps == pytest.approx([3.5] * len(steps), abs=0.1)
            assert [length for _, length in dashes] == pytest.approx([2.0] * len(dashes), abs=0.1)


ELSEWHERE = """
import sys
sys.modules["cairocffi"] = sys.modules["cairosvg"] = None  # importing either fails, as where cairo is missing
from test_pdf import class_pages
from printed import pdf_bytes
sys.stdout.buffer.write(pdf_bytes(class_pages(("Zoë", "Ẹ̀bun", "Łucja")), title="Name practice", lang="en"))
"""


@pytest.mark.parametrize(("seed", "zone"), [("1", "UTC"), ("77", "Pacific/Auckland")])
def test_same_bytes_without_cairo_in_any_zone_and_hash_seed(seed: str, zone: str) -> None:
    """A process that cannot load cairo, hashes otherwise and lives elsewhere writes the same file."""
    here = Path(__file__).parent
    paths = os.pathsep.join([*sys.path, str(here), str(here.parent)])
    done = subprocess.run([sys.executable, "-c", ELSEWHERE], capture_output=True, check=True,
                          env={**os.environ, "PYTHONPATH": paths, "PYTHONHASHSEED": seed, "TZ": zone})
    assert done.stdout == pdf_bytes(class_pages(("Zoë", "Ẹ̀bun", "Łucja")), title="Name practice", lang="en")
