"""From typed words to a request: what cannot be asked for is told."""

from __future__ import annotations

import os
import subprocess
import sys
import zipfile
from collections.abc import Callable
from pathlib import Path

import openpyxl
import pytest

from longer import rest_long

Program = Callable[..., subprocess.CompletedProcess[bytes]]


Run = Callable[..., tuple[int, str, str]]


def test_the_words_scripts_rely_on(run: Run, roster: Path, tmp_path: Path) -> None:
    """Every command takes the common words."""
    common = ("--paper", "a4", "--landscape", "--ruling", "de-5", "--line-height", "12", "--support", "light",
              "--hand", "left", "--order", "name", "--captions", "es")
    for command, subject in (("sheets", roster), ("tiles", roster), ("order", roster), ("card", "Mira")):
        status, _, err = run(command, subject, "-o", tmp_path / "out", *common)
        assert status == 0, err


@pytest.mark.parametrize(("height", "words"), [
    ("0", "4 to 80 mm"), ("-5", "-5"), ("400", "4 to 80 mm"), ("tall", "tall"), ("", "length"), ("nan", "nan")])
def test_line_heights_that_cannot_be(run: Run, roster: Path, tmp_path: Path, height: str, words: str) -> None:
    """One sentence that says what to choose; nothing is made."""
    status, _, err = run("sheets", roster, "-o", tmp_path / "class.pdf", f"--line-height={height}")
    assert status == 2
    assert words in err
    assert err.count("\n") == 1


def test_a_roster_that_is_not_there(run: Run, tmp_path: Path) -> None:
    """And one that is a folder."""
    for path in (tmp_path / "none.txt", tmp_path):
        status, _, err = run("sheets", path, "-o", tmp_path / "class.pdf")
        assert status == 2
        assert err.count("\n") == 1


MANY = "9" * 5000


FIGURES = [
    ("--line-height", "1e999"), ("--line-height", MANY), ("--line-height", "1/" + MANY), ("--midline", "1e999"),
    ("--descender", MANY), ("--row-gap", "nan"), ("--set", f"rows={MANY}"), ("--set", "rows=1e999"),
    ("--set", f"letter_spacing={MANY}"), ("--letters", "slant=1e999"), ("--letters", f"slant={MANY}"),
]


@pytest.mark.parametrize(("option", "figure"), FIGURES, ids=[f"{option}{len(figure)}" for option, figure in FIGURES])
def test_a_figure_that_is_none_is_told(run: Run, roster: Path, tmp_path: Path, option: str, figure: str) -> None:
    """Neither the infinite nor five thousand digits."""
    status, _, err = run("sheets", roster, "-o", tmp_path / "o.pdf", option, figure)
    assert status == 2
    assert err.count("\n") == 1


@pytest.mark.skipif(not hasattr(os, "mkfifo"), reason="the system has no named pipes")
@pytest.mark.parametrize("words", rest_long([
    "sheets pipe -o o.pdf", "sheets list.txt -o o.pdf --font pipe", "class pipe", "plan pipe -o o.pdf",
    "plan list.txt -o o.pdf --groups-from pipe", "class new.db --from pipe", "class new.db --import pipe",
    "note Mira --class pipe --all"], first=3))
def test_a_pipe_with_a_name_is_not_waited_for(program: Program, folder: Path, words: str) -> None:
    """Nobody writes into it."""
    os.mkfifo(folder / "pipe")
    found = program(*words.split())
    assert found.returncode == 2
    assert found.stderr.decode().count("\n") == 1


def test_what_is_pasted_has_a_limit(folder: Path) -> None:
    """An endless stream is not read for ever."""
    with subprocess.Popen(["yes", "Mira Vost"], stdout=subprocess.PIPE) as endless:
        found = subprocess.run([sys.executable, "-m", "namewright.cli", "sheets", "-", "-o", "o.pdf"], cwd=folder,
                               stdin=endless.stdout, capture_output=True, timeout=120, check=False)
        endless.kill()
    assert found.returncode == 2
    assert b"20 MB" in found.stderr


def _zip_bomb(path: Path) -> None:
    with zipfile.ZipFile(path, "w", zipfile.ZIP_DEFLATED) as archive:
        archive.writestr("[Content_Types].xml", b" " * 60_000_000)
        archive.writestr("xl/workbook.xml", b" " * 60_000_000)


@pytest.mark.parametrize(("name", "content"), [
    ("empty.txt", b""), ("blank.txt", b"\n \n\t\n"), ("headers.csv", b"First name,Last name\n"),
    ("binary.txt", bytes(range(256)) * 8), ("broken.xlsx", b"PK\x03\x04 not a workbook"),
    ("emoji.txt", "🙂\n🎈🎈\n".encode()), ("marks.txt", "\u0301\u0308\n".encode()),
    ("bidi.txt", "\u202e\u200f\n".encode()), ("long.txt", b"A" + b"b" * 499 + b"\n")])
def test_rosters_with_nobody_in_them(run: Run, tmp_path: Path, name: str, content: bytes) -> None:
    """One sentence, status 2, no file."""
    (tmp_path / name).write_bytes(content)
    status, _, err = run("sheets", tmp_path / name, "-o", tmp_path / "class.pdf")
    assert status == 2
    assert err.startswith("namewright: ")
    assert not (tmp_path / "class.pdf").exists()


def test_zip_bomb(run: Run, tmp_path: Path) -> None:
    """A workbook that would unpack to a hundred times its size is refused."""
    _zip_bomb(tmp_path / "class.xlsx")
    status, _, err = run("sheets", tmp_path / "class.xlsx", "-o", tmp_path / "class.pdf")
    assert status == 2
    assert err.count("\n") == 1


def test_a_sheet_can_be_asked_for(run: Run, tmp_path: Path) -> None:
    """Each of two classes in a workbook is read on its own; a name that no sheet has lists those there are."""
    book = openpyxl.Workbook()
    for title, given, family in (("Wrens", "Mirel", "Vost"), ("Owls", "Katla", "Pruner")):
        sheet = book.create_sheet(title)
        sheet.append(["Given", "Family"])
        sheet.append([given, family])
    book.save(tmp_path / "two.xlsx")
    status, out, _ = run("roster", tmp_path / "two.xlsx", "--sheet", "owls")
    assert status == 0
    assert "Katla" in out
    assert "Mirel" not in out
    status, _, err = run("sheets", tmp_path / "two.xlsx", "--sheet", "Ducks", "-o", tmp_path / "class.pdf")
    assert status == 2
    assert "Wrens, Owls" in err
