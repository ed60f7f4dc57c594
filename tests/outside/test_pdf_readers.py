"""A class of one, of three hundred and of five thousand children, opened by four readers: none has a word to say."""

from __future__ import annotations

import itertools
import shutil
import subprocess
from collections.abc import Iterator
from pathlib import Path

import pikepdf
import pypdfium2 as pdfium
import pytest

from namewright.lines.ruling import preset
from namewright.output.pdf import write_pdf
from namewright.pages.page import Page
from namewright.pages.sheet import practice_pages
from namewright.pages.sheet_settings import SheetSettings
from namewright.pages.typesetter import Typesetter

OPENINGS = ("Ba", "Ce", "Di", "Fo", "Gu", "La", "Me", "Ni", "Po", "Ru", "Sa", "To")
MIDDLES, ENDS = ("la", "mi", "no", "ru", "se", "ta", "vi", "wo"), ("an", "el", "is", "or")
COUNTS = (1, 300, pytest.param(5000, marks=pytest.mark.long))
COMMANDS = {  # of Debian's poppler-utils and mupdf-tools: the first page and the last
    "pdftoppm": lambda file, count: [["-r", "20", "-f", page, "-l", page, file] for page in ("1", count)],
    "mutool": lambda file, count: [["draw", "-q", "-r", "20", "-F", "pgm", "-o", "/dev/null", file, f"1,{count}"]],
}

OF_ITS_BUILD = "warning: ICC support is not available"  # Debian's mutool, of itself


def pages(count: int) -> Iterator[Page]:
    """Yield the sheets of as many made-up children."""
    setter, settings = Typesetter(), SheetSettings(preset("us-3/4"))
    names = ("".join(parts) for length in (1, 2, 3) for parts in itertools.product(
        OPENINGS, *[MIDDLES] * length, ENDS))
    for name in itertools.islice(names, count):
        yield from practice_pages(setter, name, name, settings)


@pytest.fixture(scope="module", params=COUNTS)
def made(request: pytest.FixtureRequest, tmp_path_factory: pytest.TempPathFactory) -> tuple[Path, int]:
    """Return a class's PDF and how many pages it has."""
    path = tmp_path_factory.mktemp("classes") / f"{request.param}.pdf"
    with path.open("w+b") as file:
        count = write_pdf(pages(request.param), file, title="Name practice", lang="en")
    assert count >= request.param
    return path, count


def test_qpdf_finds_nothing(made: tuple[Path, int]) -> None:
    path, count = made
    with pikepdf.open(path) as document:
        assert document.check_pdf_syntax() == []
        assert document.get_warnings() == []
        assert len(document.pages) == count


def test_pdfium_draws_the_first_and_the_last_page(made: tuple[Path, int]) -> None:
    path, count = made
    document = pdfium.PdfDocument(path)
    assert len(document) == count
    for page in (document[0], document[count - 1]):
        assert page.render(scale=0.5, grayscale=True).to_numpy().min() < 100


@pytest.mark.parametrize("command", COMMANDS)
def test_other_readers_say_nothing(made: tuple[Path, int], command: str) -> None:
    if not shutil.which(command):
        pytest.skip(f"{command} is not installed")
    path, count = made
    for words in COMMANDS[command](str(path), str(count)):
        done = subprocess.run([command, *words], capture_output=True, check=True)
        said = [line for line in done.stderr.decode().splitlines() if line != OF_ITS_BUILD]
        assert said == []


def test_a_reader_would_say_something(tmp_path: Path) -> None:
    """A file with a broken page is not passed over in silence."""
    broken = tmp_path / "broken.pdf"
    with broken.open("w+b") as file:
        write_pdf(pages(1), file, title="Name practice", lang="en")
    broken.write_bytes(broken.read_bytes().replace(b"endstream", b"endstreem"))
    with pikepdf.open(broken) as document:
        assert document.check_pdf_syntax() or document.get_warnings()
