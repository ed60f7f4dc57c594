"""Text in our PDF, as PDFium, pypdf and poppler read it, and its structure, as pikepdf (QPDF) reads it."""

from __future__ import annotations

import io
import re
import shutil
import subprocess
import xml.etree.ElementTree as ET
from collections.abc import Iterator

import pikepdf
import pypdf
import pypdfium2 as pdfium
import pytest

from namewright.lines.ruling import preset
from namewright.pages.page import Page
from namewright.pages.paper import Paper
from namewright.pages.sheet import practice_pages
from namewright.pages.sheet_settings import SheetSettings
from namewright.pages.summary import Entry, summary_pages
from namewright.pages.typesetter import Typesetter
from namewright.wording import languages, wording
from printed import pdf_bytes

NAMES = ("Mirela", "Zoë", "Íñigo", "Ẹ̀bun", "Łucja", "Kealiʻi", "Ana Isol", "Ụ́gọ")


def sheet(setter: Typesetter, name: str, **more: object) -> tuple[Page, ...]:
    return practice_pages(setter, name, name, SheetSettings(preset("us-3/4"), **more))  # type: ignore[arg-type]


def read_by_pdfium(data: bytes, page: int = 0) -> str:
    return " ".join(pdfium.PdfDocument(data)[page].get_textpage().get_text_range().split())


@pytest.mark.parametrize("name", NAMES)
def test_a_sheet_is_found_by_its_name_and_captions(setter: Typesetter, name: str) -> None:
    """PDFium reads the name in the owner's line and on every row that shows it, and each caption word for word."""
    read = read_by_pdfium(pdf_bytes(sheet(setter, name)))
    words = wording("en")
    for caption in (words.say("page.owner", name=name), words.say("page.tiles"), words.say("page.memory"),
                    words.say("page.check")):
        assert caption in read
    assert read.count(name) >= 4


def test_captions_are_read_in_the_order_in_which_they_stand(setter: Typesetter) -> None:
    """The owner's line first, then each caption before the rows it belongs to, the check bar's last."""
    read = read_by_pdfium(pdf_bytes(sheet(setter, "Mirela")))
    words = wording("en")
    keys = ("owner", "model", "dots-run-out", "tiles", "copy_beside", "memory", "check")
    at = [read.index(words.say(f"page.{key}", name="Mirela")) for key in keys]
    assert at == sorted(at)


@pytest.mark.skipif(not shutil.which("pdftotext"), reason="poppler's pdftotext is not installed")
@pytest.mark.parametrize("name", NAMES)
def test_poppler_reads_the_same(setter: Typesetter, name: str) -> None:
    """Another reader finds the name and a caption, and complains of nothing."""
    data = pdf_bytes(sheet(setter, name))
    done = subprocess.run(["pdftotext", "-", "-"], input=data, capture_output=True, check=True)
    read = " ".join(done.stdout.decode().split())
    assert done.stderr == b""
    assert wording("en").say("page.owner", name=name) in read
    assert read.count(name) >= 4


def test_pypdf_reads_the_captions(setter: Typesetter) -> None:
    """A third reader, which knows nothing of marks or order, finds the words."""
    text = pypdf.PdfReader(io.BytesIO(pdf_bytes(sheet(setter, "Zoë")))).pages[0].extract_text()
    assert "Zoë" in text


@pytest.mark.parametrize("language", languages())
def test_every_sentence_of_a_page_can_be_read(setter: Typesetter, language: str) -> None:
    """Every template that our letters can draw is read back as it was written, spaces and all."""
    sentences = sorted({text for text in wording(language).templates.values()
                        if len(text) < 100 and "{" not in text and not setter.alphabet.missing(text)})[:120]
    entries = [Entry("", (sentence,)) for sentence in sentences]
    data = pdf_bytes(summary_pages(setter, entries, Paper.A4), lang=language)
    read = " ".join(read_by_pdfium(data, page) for page in range(len(pdfium.PdfDocument(data))))
    assert [sentence for sentence in sentences if " ".join(sentence.split()) not in read] == []


# --- the structure ---------------------------------------------------------------------------------------


def parts(element: pikepdf.Object) -> Iterator[pikepdf.Object]:
    """Yield the parts below an element, in order."""
    for kid in element.K if isinstance(element.K, pikepdf.Array) else [element.K]:
        if isinstance(kid, pikepdf.Dictionary):
            yield kid
            yield from parts(kid)


def told(data: bytes) -> list[tuple[str, str]]:
    """Return the kind of each part below the document and its sections, and what a figure says."""
    with pikepdf.open(io.BytesIO(data)) as document:
        return [(str(part.S), str(part.get("/Alt", ""))) for part in parts(document.Root.StructTreeRoot)
                if str(part.S) not in ("/Document", "/Sect")]


def test_a_sheet_is_a_title_paragraphs_and_figures(setter: Typesetter) -> None:
    """The structure of a sheet is what a teacher would say of it, top to bottom."""
    kinds = told(pdf_bytes(sheet(setter, "Mirela")))
    assert kinds[:7] == [("/H1", ""), ("/P", ""), ("/P", ""), ("/Figure", "Model of Mirela."),
                         ("/Figure", "The letters of Mirela, one by one, with their stroke marks."), ("/P", ""),
                         ("/Figure", "Dotted model of Mirela.")]
    assert ("/Figure", "Boxes for the letters M, i, r, e, l and a.") in kinds
    assert kinds[-1] == ("/P", "")


def test_figures_are_described_in_the_language_of_the_page(setter: Typesetter) -> None:
    """A Spanish sheet speaks Spanish, and says so."""
    data = pdf_bytes(sheet(setter, "Íñigo", language="es"), lang="es")
    assert ("/Figure", "Modelo de Íñigo en puntos.") in told(data)
    with pikepdf.open(io.BytesIO(data)) as document:
        assert str(document.Root.StructTreeRoot.K.Lang) == "es"


def test_every_figure_has_words_and_a_box(setter: Typesetter) -> None:
    """ISO 14289-1, 7.3: a figure has alternative text; ISO 32000-1, table 344: and a box, inside its page."""
    with pikepdf.open(io.BytesIO(pdf_bytes(sheet(setter, "Ẹ̀bun")))) as document:
        figures = [part for part in parts(document.Root.StructTreeRoot) if str(part.S) == "/Figure"]
        assert len(figures) > 5
        for figure in figures:
            x0, y0, x1, y1 = map(float, figure.A.BBox)
            assert str(figure.Alt).endswith(".")
            assert 0 < x0 < x1 < 612
            assert 0 < y0 < y1 < 792


def test_the_file_says_what_it_is(setter: Typesetter) -> None:
    """ISO 14289-1, 5 and 7.1: the part in the metadata, a title that is shown, marked, and a language."""
    with pikepdf.open(io.BytesIO(pdf_bytes(sheet(setter, "Bo"), title="Name practice"))) as document:
        metadata = ET.fromstring(re.sub(r"<\?.*?\?>", "", document.Root.Metadata.read_bytes().decode()))
        said = {element.tag.rpartition("}")[2]: element.text for element in metadata.iter()}
        assert said["part"] == "1"
        assert said["li"] == "Name practice"
        assert bool(document.Root.MarkInfo.Marked)
        assert "/Suspects" not in document.Root.MarkInfo
        assert bool(document.Root.ViewerPreferences.DisplayDocTitle)


def test_every_letter_has_a_program_and_a_character(setter: Typesetter) -> None:
    """ISO 14289-1, 7.21: fonts are embedded, and each code of each leads to Unicode."""
    data = pdf_bytes([page for name in NAMES for page in sheet(setter, name)])
    with pikepdf.open(io.BytesIO(data)) as document:
        fonts = document.pages[0].Resources.Font
        assert len(fonts) > 4
        for font in dict(fonts).values():
            names = [str(one) for one in font.Encoding.Differences if isinstance(one, pikepdf.Name)]
            mapped = re.findall(rb"^<[0-9a-f]{2}><[0-9a-f]{4,}>", font.ToUnicode.read_bytes(), re.MULTILINE)
            assert sorted(names) == sorted(dict(font.CharProcs))
            assert len(mapped) == len(names) - 1  # one is there for its width alone
