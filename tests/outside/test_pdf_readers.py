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
from namewright.making.make import Making
from namewright.making.request import OF_NOTES, Kind, Request, listed
from namewright.output.pdf import write_pdf
from namewright.pages.page import Page
from namewright.pages.sheet import practice_pages
from namewright.pages.sheet_settings import SheetSettings
from namewright.pages.typesetter import Typesetter
from namewright.practice.ordering import completed, order_class
from namewright.roster.parsing import read_roster

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


HARD = ("Zoë", "Đặng Thị Ngọc Ẩn", "Ñandú", "Łucja", "Jean-François", "D’Arcy", "Christophersonia", "I", "Ǫ́la", "ẞen",
        "Дарина", "王小明", "பாலா", "Mia \u0301Bo", "Ma" + "\u0301" * 6 + "ya", "W" * 30)


@pytest.fixture(scope="module")
def hard(tmp_path_factory: pytest.TempPathFactory) -> tuple[Path, int]:
    """Return the PDF of every kind of page for names that are hard to draw, and how many pages it has."""
    members = tuple(listed(one) for one in completed(order_class(read_roster("\n".join(HARD)).children), "en"))
    path = tmp_path_factory.mktemp("hard") / "hard.pdf"
    with path.open("w+b") as file:
        making = Making(Request(tuple(Kind), members))
        count = write_pdf(making.pages(), file, title="Name practice", lang="en")
    assert {kind for kind in Kind if making.account.of(kind)} >= set(Kind) - OF_NOTES
    return path, count


def test_every_page_of_hard_names_is_read_by_qpdf_and_drawn_by_pdfium(hard: tuple[Path, int]) -> None:
    test_qpdf_finds_nothing(hard)
    for page in pdfium.PdfDocument(hard[0]):
        assert page.render(scale=0.3, grayscale=True).to_numpy().min() < 150


@pytest.mark.parametrize(("command", "words"), [
    ("pdftoppm", ["-r", "20", "FILE"]), ("pdftotext", ["FILE", "-"]),
    ("mutool", ["draw", "-q", "-r", "20", "-F", "pgm", "-o", "/dev/null", "FILE"]), ("qpdf", ["--check", "FILE"])])
def test_other_readers_say_nothing_of_hard_names(hard: tuple[Path, int], command: str, words: list[str]) -> None:
    if not shutil.which(command):
        pytest.skip(f"{command} is not installed")
    done = subprocess.run([command, *(str(hard[0]) if word == "FILE" else word for word in words)],
                          capture_output=True, check=True)
    assert [line for line in done.stderr.decode().splitlines() if line != OF_ITS_BUILD] == []
