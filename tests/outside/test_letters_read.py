"""The letters of trace rows against a general reader: Tesseract 5 (Debian package tesseract-ocr), trained on print.

It has never seen our letters or a trace of dots. The rows are drawn without guide lines, which it takes for
letters, at one x-height of 24 pixels on every ruling, and softly (a blur of a sixteenth of the x-height), or it sees
single dots. Capital or small is not asked for: S and s, alone on a line, are alike.
"""

from __future__ import annotations

import io
import shutil
import subprocess
from pathlib import Path

import pytest
from PIL import Image, ImageFilter

from namewright.lines.forms import Form
from namewright.lines.ink import Ink
from namewright.lines.ruling import PRESETS, Ruling
from namewright.output.png import page_png
from namewright.pages.blocks import letters_at
from namewright.pages.page import Page
from namewright.pages.typesetter import Typesetter

X_HEIGHT_PX = 24
NAMES = ("Marigold Kayleigh", "Wilhelmina Boris", "Christopher Zelda", "Jasper Quentin", "Fabian Yvette",
         "Ursula Hector", "Dexter Violet", "Imogen Patrick", "Alexandra Wren", "Gwendolyn Theo")


def edits(one: str, other: str) -> int:
    """Return the Levenshtein distance of two texts."""
    row = list(range(len(other) + 1))
    for at, char in enumerate(one, 1):
        before, row[0] = row[0], at
        for to, letter in enumerate(other, 1):
            before, row[to] = row[to], min(row[to] + 1, row[to - 1] + 1, before + (char != letter))
    return row[-1]


def test_the_distance_is_levenshtein_s() -> None:
    """The textbook pairs."""
    assert (edits("kitten", "sitting"), edits("", "abc"), edits("abc", "abc")) == (3, 3, 0)


def picture(setter: Typesetter, ruling: Ruling, form: Form) -> Image.Image:
    """Return the names in a form, line by line, softly drawn."""
    x = ruling.x_height_mm
    inks: list[Ink] = []
    y, width = ruling.line_height_mm + 2 * x, 0.0
    for name in NAMES:
        line = setter.ruled(ruling).line(name)
        inks += letters_at(setter, line, form, 3 * x, y)
        width = max(width, line.width_mm + 6 * x)
        y += ruling.line_height_mm + ruling.descender_mm + 0.8 * x
    page = Page(width, y, tuple(inks))
    drawn = Image.open(io.BytesIO(page_png(page, round(4 * X_HEIGHT_PX / x * 25.4)))).convert("L")
    scale = X_HEIGHT_PX / x
    soft = drawn.filter(ImageFilter.GaussianBlur(4 * X_HEIGHT_PX / 16))
    return soft.resize((round(width * scale), round(y * scale)), Image.Resampling.LANCZOS)


def read(image: Image.Image, folder: Path) -> str:
    """Return what Tesseract reads, its spaces left out."""
    image.save(folder / "rows.png", dpi=(300, 300))
    told = subprocess.run(["tesseract", str(folder / "rows.png"), "-", "--psm", "6", "-l", "eng"], text=True,
                          capture_output=True, check=True, env={"OMP_THREAD_LIMIT": "1", "PATH": "/usr/bin:/bin"})
    return "".join(told.stdout.split())


@pytest.mark.long
@pytest.mark.skipif(shutil.which("tesseract") is None, reason="needs Tesseract: apt-get install tesseract-ocr")
@pytest.mark.parametrize("ruling", PRESETS.values(), ids=lambda ruling: ruling.name)
def test_a_general_reader_reads_a_trace(setter: Typesetter, tmp_path: Path, ruling: Ruling) -> None:
    """At least 95 in 100 letters of the rows to trace, on every ruling."""
    wanted = "".join(NAMES).replace(" ", "").lower()
    found = read(picture(setter, ruling, Form.DOTTED), tmp_path).lower()
    share = 1 - edits(wanted, found) / len(wanted)
    print(f"{ruling.name}: {share:.1%}")
    assert share >= 0.95, found


@pytest.mark.long
@pytest.mark.skipif(shutil.which("tesseract") is None, reason="needs Tesseract: apt-get install tesseract-ocr")
def test_the_reader_can_fail(setter: Typesetter, tmp_path: Path) -> None:
    """Where only the starts of strokes are given, it reads next to nothing."""
    found = read(picture(setter, PRESETS["us-3/4"], Form.STARTS), tmp_path).lower()
    assert edits("".join(NAMES).replace(" ", "").lower(), found) > 60
