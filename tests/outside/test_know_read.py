"""The page to find a name in, read from a picture by a program that reads print: Tesseract, Debian’s tesseract-ocr."""

from __future__ import annotations

import re
import shutil
import subprocess
from pathlib import Path

import pypdfium2 as pdfium
import pytest

from namewright.making.choices import Choices
from namewright.making.make import Making
from namewright.making.request import Kind, Request, listed
from namewright.pages.typesetter import Typesetter
from namewright.practice.finding import BLOCKS
from namewright.practice.ordering import order_class
from namewright.roster.children import Child, Roster
from namewright.settings import Support
from printed import pdf_bytes

NAMES = ("Mira", "Tilo", "Noor", "Marek", "Bodo", "Zora", "Henrik", "Sanne")
DPI, FIELD = 100, (0.25, 0.94)  # the share of the page's height under the caption and over the check bar


@pytest.mark.long
@pytest.mark.skipif(shutil.which("tesseract") is None, reason="needs Debian’s tesseract-ocr")
@pytest.mark.parametrize("support", [Support.FULL, Support.INDEPENDENT])
def test_a_reader_of_print_finds_the_name(setter: Typesetter, tmp_path: Path, support: Support) -> None:
    """Of all places where the names stand to be found, in our print and the other typeface, it reads 95 % at least."""
    children = tuple(Child(name, name, name, "", line) for line, name in enumerate(NAMES, start=1))
    request = Request((Kind.FIND,), tuple(map(listed, order_class(children))), Choices(support=support),
                      roster=Roster(children, ()))
    read = 0
    hits = sum(block.own for block in BLOCKS[support])
    for page in Making(request, setter).pages():
        sheet = pdfium.PdfDocument(pdf_bytes([page]))[0]
        picture = sheet.render(scale=DPI / 72, grayscale=True).to_pil()
        top, foot = (round(share * picture.height) for share in FIELD)
        picture.crop((0, top, picture.width, foot)).save(tmp_path / "field.png")
        said = subprocess.run(["tesseract", tmp_path / "field.png", "-", "--psm", "11"], capture_output=True, text=True,
                              check=True, env={"OMP_THREAD_LIMIT": "1", "PATH": "/usr/bin:/bin"}).stdout
        read += min(hits, len(re.findall(rf"\b{page.outline}\b", said)))
    assert read >= 0.95 * hits * len(NAMES), read
