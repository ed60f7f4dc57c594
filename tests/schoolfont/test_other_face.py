"""Typefaces that are shipped beside our letters: what they show, their size, their ink against FreeType's (Pillow)."""

from __future__ import annotations

from pathlib import Path

import numpy as np
import pytest
from PIL import Image, ImageDraw, ImageFont

from namewright.letters.alphabet import MissingLetters
from namewright.lines.ruling import print_ruling
from namewright.pages.know.frame import name_at
from namewright.pages.page import Page
from namewright.pages.typesetter import Typesetter
from namewright.schoolfont.other_face import face_for, other_face
from printed import pdf_bytes, scan

FONTS = Path(__file__).parents[2] / "fonts"
FILES = {"Atkinson Hyperlegible Next": "AtkinsonHyperlegibleNext-Latin.ttf", "Noto Serif": "NotoSerif-Latin.ttf"}
X_MM, DPI = 8.0, 300


@pytest.mark.parametrize(("name", "face"), [
    ("Mira", "Atkinson Hyperlegible Next"), ("Łucja", "Atkinson Hyperlegible Next"), ("Nguyễn Ánh", "Noto Serif"),
    ("Kealiʻi", "Noto Serif"), ("Mary-Kate", "Atkinson Hyperlegible Next"), ("Ẹ̀bun", None), ("Марко", None)])
def test_which_face_shows_a_name(name: str, face: str | None) -> None:
    """That of the screens, else the one with more letters; all names of a page are in one."""
    found = face_for([name])
    assert (found.name if found else None) == face
    assert face_for([name, "Nguyễn"]) is (other_face("Noto Serif") if face else None)
    if not face:
        with pytest.raises(MissingLetters):
            other_face().line(name, print_ruling(X_MM))


@pytest.mark.parametrize("face", FILES)
def test_small_letters_are_as_high_as_the_ruling_s(face: str) -> None:
    letter = other_face(face).line("x", print_ruling(X_MM)).letters[0].letter
    tops = min(point[1] for contour in letter.outline for segment in contour.segments for point in segment)
    assert -tops == pytest.approx(X_MM, rel=0.01)


@pytest.mark.parametrize("face", FILES)
@pytest.mark.parametrize("name", ["Mira", "Ánh", "Bodo", "Quirin"])
def test_ink_on_paper_is_freetype_s(setter: Typesetter, name: str, face: str) -> None:
    """PDFium prints our outlines with as much ink, as wide and as high, as FreeType draws the same letters."""
    line = other_face(face).line(name, print_ruling(X_MM))
    page = Page(200.0, 60.0, (name_at(setter, line, 20.0, 40.0),))
    printed = 255.0 - scan(pdf_bytes([page]), dpi=DPI)
    font = ImageFont.truetype(str(FONTS / FILES[face]), round(X_MM / 25.4 * DPI * 1000 / other_face(face).x_height),
                              layout_engine=ImageFont.Layout.BASIC)
    picture = Image.new("L", (printed.shape[1], printed.shape[0]), 0)
    ImageDraw.Draw(picture).text((200, 480), name, font=font, fill=255, anchor="ls")
    drawn = np.asarray(picture, dtype=float)
    for axis in (0, 1):
        ours, theirs = (int(np.ptp(np.flatnonzero(ink.max(axis=axis) > 60))) for ink in (printed, drawn))
        assert ours == pytest.approx(theirs, abs=3)
    assert printed.sum() == pytest.approx(drawn.sum(), rel=0.03)


@pytest.mark.parametrize("face", FILES)
@pytest.mark.parametrize("name", ["Mira", "Bodo", "Quirin", "Wilhelmina"])
def test_a_name_is_as_dark_as_in_our_letters(setter: Typesetter, name: str, face: str) -> None:
    """A child looks for letters, not for what stands out: no more ink in one print than in the other."""
    ruling = print_ruling(X_MM)
    lines = other_face(face).line(name, ruling), setter.ruled(ruling).line(name)
    pages = [pdf_bytes([Page(200.0, 60.0, (name_at(setter, line, 20.0, 40.0),))]) for line in lines]
    other, ours = (float((255.0 - scan(page, dpi=100)).sum()) / line.width_mm
                   for page, line in zip(pages, lines, strict=True))
    assert 0.8 < other / ours < 1.3
