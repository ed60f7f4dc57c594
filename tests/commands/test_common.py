"""What commands share: what is said once a class is made."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from pathlib import Path

import pypdf
import pytest

Run = Callable[..., tuple[int, str, str]]


def entries(path: Path) -> Sequence[object]:
    return pypdf.PdfReader(path).outline


@pytest.mark.parametrize("command", ["order", "plan"])
def test_beats_that_do_not_fit_are_said(run: Run, tmp_path: Path, command: str) -> None:
    """A teacher's own beats that do not join to the name are named with the child; everyone is still made."""
    (tmp_path / "class.csv").write_text("Name,Beats\nTilo,Ti-lo\nMira,Mi-na\n", encoding="utf-8")
    status, _, err = run(command, tmp_path / "class.csv", "-o", tmp_path / "out")
    assert (status, err.count("\n")) == (0, 1)
    assert "Mira (line 3)" in err
    assert "“Mi-na”" in err


def test_bad_lines_leave_the_others(run: Run, tmp_path: Path) -> None:
    """Emoji, a 500-letter name, controls and lone marks are left out by line; the rest are made."""
    roster = tmp_path / "class.txt"
    roster.write_text("Mira\n🙂\n" + "A" * 500 + "\nTi\x07lo\n\u0301\nعلي\n", encoding="utf-8")
    status, _, err = run("sheets", roster, "-o", tmp_path / "class.pdf")
    assert status == 1
    for line in (2, 3, 5):
        assert f"line {line}" in err
    assert len(entries(tmp_path / "class.pdf")) == 2


def test_a_note_about_the_file_is_said_outright(run: Run, tmp_path: Path) -> None:
    """An encoding that was guessed concerns every accent, so nobody has to ask for it."""
    (tmp_path / "class.txt").write_bytes("Mira\nZoë\n".encode("cp1252"))
    status, _, err = run("sheets", tmp_path / "class.txt", "-o", tmp_path / "class.pdf")
    assert (status, err.count("\n")) == (0, 1)
    assert "Windows-1252" in err


@pytest.mark.parametrize(("name", "latin"), [("Юлия", "Iuliia"), ("李", "Mira")])
def test_of_letters_that_we_lack_one_is_told_what_to_type(run: Run, tmp_path: Path, name: str, latin: str) -> None:
    """Without their codes, and with a spelling where the script has one; of a sign nobody sees the code is told."""
    status, _, err = run("card", name, "-o", tmp_path / "card.pdf")
    assert status == 2
    assert "U+" not in err
    assert latin in err
    assert "U+" in run("card", f"Mi\u2060ra{name}", "-o", tmp_path / "card.pdf")[2]
