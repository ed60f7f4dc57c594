"""``namewright progress``: a year of one child, and of the class."""

from __future__ import annotations

import os
from pathlib import Path

import pypdf
import pytest

from kept_class import note
from namewright.classbook import Classbook
from namewright.cli import main

Capture = pytest.CaptureFixture[str]


def test_progress_is_a_pdf_for_the_family_and_one_for_the_class(kept_class_folder: Path, capsys: Capture) -> None:
    """A child's page is one page; with --all the class comes first; whoever has no note is named."""
    note("--letters", "Mi", "--date", "2026-09-01")
    assert main(["progress", "Mira", "--class", "class.db", "-o", "mira.pdf", "--paper", "a4"]) == 0
    page, = pypdf.PdfReader("mira.pdf").pages
    assert [round(float(side) / 72 * 25.4, 1) for side in page.mediabox[2:]] == [210.0, 297.0]
    assert main(["progress", "--all", "--class", "class.db", "-o", "all.pdf"]) == 1
    assert "Tilo" in capsys.readouterr().err
    assert len(pypdf.PdfReader("all.pdf").pages) == 2
    assert main(["progress", "Tilo", "--class", "class.db", "-o", "tilo.pdf"]) == 2
    assert not Path("tilo.pdf").exists()
    assert sorted(os.listdir()) == ["all.pdf", "class.db", "list.txt", "mira.pdf"]


def test_a_class_of_nobody_is_told_so(tmp_path: Path, capsys: Capture) -> None:
    """No file is made of it, whichever page is asked for."""
    file = tmp_path / "empty.db"
    Classbook.open(file).close()
    for more in ((), ("--page", "talk"), ("--page", "record", "--format", "csv")):
        assert main(["progress", "--all", "--class", str(file), "-o", str(tmp_path / "all.pdf"), *more]) == 2
        assert "empty.db" in capsys.readouterr().err
    assert os.listdir(tmp_path) == ["empty.db"]
