"""``namewright sizes``: one name at six heights on one page, or a sentence."""

from __future__ import annotations

from pathlib import Path

import pypdf
import pytest

from namewright.cli import main

Capture = pytest.CaptureFixture[str]


def test_one_page_with_six_heights(tmp_path: Path) -> None:
    """On the paper asked for; its text has the owner and six different heights in mm."""
    out = tmp_path / "sizes.pdf"
    assert main(["sizes", "Mira", "--paper", "a4", "-o", str(out)]) == 0
    (page,) = pypdf.PdfReader(out).pages
    assert float(page.mediabox.height) == pytest.approx(297 / 25.4 * 72, abs=0.1)
    text = " ".join(page.extract_text().split())
    assert "Mira" in text
    assert text.count(" mm") >= 6


def test_a_name_that_cannot_be_drawn_is_told_and_nothing_made(tmp_path: Path, capsys: Capture) -> None:
    """Status 2, one sentence, no file."""
    assert main(["sizes", "Марко", "-o", str(tmp_path / "sizes.pdf")]) == 2
    assert capsys.readouterr().err.count("\n") == 1
    assert list(tmp_path.iterdir()) == []
