"""``namewright sheets``: a page a child, one for the adult, and what is done where somebody cannot be made."""

from __future__ import annotations

import subprocess
import sys
from collections.abc import Callable, Sequence
from pathlib import Path

import pypdf
import pytest

from namewright.lines.ruling import PRESETS

CLASS = "Mira\nTilo\nZoë\nJonquil\n"


Run = Callable[..., tuple[int, str, str]]


def pages(path: Path) -> int:
    return len(pypdf.PdfReader(path).pages)


def entries(path: Path) -> Sequence[object]:
    return pypdf.PdfReader(path).outline


def test_sheets_make_a_page_a_child_and_one_for_the_adult(run: Run, roster: Path, tmp_path: Path) -> None:
    """Everyone made is status 0, and nothing is said; the adult's page is a file of its own."""
    status, out, err = run("sheets", roster, "-o", tmp_path / "class.pdf", "--summary", tmp_path / "adult.pdf")
    assert (status, out, err) == (0, "", "")
    assert pages(tmp_path / "class.pdf") == len(entries(tmp_path / "class.pdf")) == 4
    assert pages(tmp_path / "adult.pdf") == 1


def test_the_other_children_are_still_made(run: Run, tmp_path: Path) -> None:
    """A child we cannot draw is named on stderr with the character; the status is 1."""
    roster = tmp_path / "class.txt"
    roster.write_text("Mira\nМарко\n名前\nTilo\n", encoding="utf-8")
    status, _, err = run("sheets", roster, "-o", tmp_path / "class.pdf")
    assert status == 1
    assert "Марко (line 2)" in err
    assert "cyrillic capital letter em" in err
    assert "名前 (line 3)" in err
    assert len(entries(tmp_path / "class.pdf")) == 2


def test_nobody_made_is_status_2_and_no_file(run: Run, tmp_path: Path) -> None:
    """Where nothing can be made nothing is written."""
    roster = tmp_path / "class.txt"
    roster.write_text("Марко\n", encoding="utf-8")
    status, _, err = run("sheets", roster, "-o", tmp_path / "class.pdf")
    assert status == 2
    assert "Марко" in err
    assert not (tmp_path / "class.pdf").exists()


def test_pasted_text(tmp_path: Path) -> None:
    """``-`` reads what is pasted, in a process of its own."""
    done = subprocess.run([sys.executable, "-m", "namewright.cli", "sheets", "-", "-o", str(tmp_path / "class.pdf")],
                          input=CLASS.encode(), capture_output=True, check=False)
    assert (done.returncode, done.stdout, done.stderr) == (0, b"", b"")
    assert pages(tmp_path / "class.pdf") == 4


@pytest.mark.long
def test_every_ruling_makes_the_class(run: Run, roster: Path, tmp_path: Path) -> None:
    """Each name in the list of rulings can be asked for."""
    roster.write_text("Jo\n", encoding="utf-8")
    for name in PRESETS:
        assert run("sheets", roster, "-o", tmp_path / "class.pdf", "--ruling", name)[0] == 0, name


def test_a_failed_run_keeps_the_old_file(run: Run, roster: Path, tmp_path: Path) -> None:
    """Files are written whole or not at all, and no scraps are left."""
    target = tmp_path / "class.pdf"
    target.write_bytes(b"old")
    bad = tmp_path / "bad.txt"
    bad.write_text("Марко\n", encoding="utf-8")
    assert run("sheets", bad, "-o", target)[0] == 2
    assert target.read_bytes() == b"old"
    assert sorted(p.name for p in tmp_path.iterdir()) == ["bad.txt", "class.pdf", "class.txt"]


def test_the_same_list_gives_the_same_bytes(run: Run, roster: Path, tmp_path: Path) -> None:
    """No date, no random order."""
    for name in ("one.pdf", "two.pdf"):
        run("sheets", roster, "-o", tmp_path / name)
    assert (tmp_path / "one.pdf").read_bytes() == (tmp_path / "two.pdf").read_bytes()


def test_lines_made_taller_for_a_marker_are_told_once(run: Run, roster: Path, tmp_path: Path) -> None:
    """A page for a sleeve keeps lines that are tall enough; lower ones are told with both heights, once for all."""
    tall = run("sheets", roster, "-o", tmp_path / "class.pdf", "--sleeve")
    assert tall == (0, "", "")
    status, out, err = run("sheets", roster, "-o", tmp_path / "class.pdf", "--sleeve", "--ruling", "au-9")
    assert (status, out) == (0, "")
    assert err.count("12 mm high instead of 6 mm") == 1
    assert len(err.splitlines()) == 1
