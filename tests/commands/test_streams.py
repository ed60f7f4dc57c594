"""Streams that are closed or full, and encodings that lack a letter."""

from __future__ import annotations

import json
import subprocess
import sys
from collections.abc import Callable
from pathlib import Path

import pytest

from longer import rest_long

Program = Callable[..., subprocess.CompletedProcess[bytes]]


def _shell(line: str, *words: str | Path) -> subprocess.CompletedProcess[str]:
    """Run a line of the shell in which “$@” is the program with these words."""
    program = [sys.executable, "-m", "namewright.cli", *map(str, words)]
    return subprocess.run(["bash", "-c", line, "-", *program], capture_output=True, text=True, check=False)


def test_streams_that_are_closed_or_full(roster: Path, tmp_path: Path) -> None:
    """No traceback: a closed stdin is an empty list, and an answer that could not be written is said."""
    closed = _shell('"$@" <&-', "sheets", "-", "-o", tmp_path / "class.pdf")
    assert (closed.returncode, closed.stderr.count("\n")) == (2, 1)
    assert "is empty" in closed.stderr
    assert _shell('"$@" >&-', "order", roster).returncode == 0
    gone = _shell('"$@" | head -1; exit ${PIPESTATUS[0]}', "rulings")
    assert (gone.returncode, gone.stderr) == (0, "")
    if Path("/dev/full").is_char_device():
        full = _shell('"$@" > /dev/full', "order", roster)
        assert (full.returncode, full.stderr.count("\n")) == (2, 1)


@pytest.mark.parametrize("encoding", rest_long(["cp1252", "ascii"]))  # none, and some, of what the names have
def test_names_are_said_in_any_encoding(program: Program, folder: Path, encoding: str) -> None:
    """A letter that an encoding lacks is escaped, and what was saved before it was said stays saved."""
    words = {"PYTHONIOENCODING": encoding}
    assert program("class", "c.db", "--from", "list.txt", **words).returncode == 0
    listed = program("roster", "list.txt", **words)
    assert (listed.returncode, listed.stderr) == (0, b"")
    noted = program("note", "Łucja", "--class", "c.db", "--all", **words)
    assert (noted.returncode, noted.stderr) == (0, b"")
    read = json.loads(program("order", "list.txt", "--format", "json", **words).stdout.decode(encoding))
    assert {entry["label"] for entry in read} == {"Mira", "Oda", "Łucja", "Ingá"}
