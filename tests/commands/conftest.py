"""A list whose names are hard to say, the command line as a program of its own, and a folder with a class in it."""

from __future__ import annotations

import os
import subprocess
import sys
from collections.abc import Callable
from pathlib import Path

import pytest

from kept_class import keep_class

HARD_TO_SAY = "Mira Vost\nOda Brane\nŁucja Oak\nIngá Vänt\n"


@pytest.fixture
def folder(tmp_path: Path) -> Path:
    """A folder with a list in it whose names not every encoding has."""
    (tmp_path / "list.txt").write_text(HARD_TO_SAY, encoding="utf-8")
    return tmp_path


@pytest.fixture
def program(folder: Path) -> Callable[..., subprocess.CompletedProcess[bytes]]:
    """Run the command line as a program in that folder, with these words more in its environment."""
    def _program(*words: str | Path, stdin: bytes = b"", **more: str) -> subprocess.CompletedProcess[bytes]:
        return subprocess.run([sys.executable, "-m", "namewright.cli", *map(str, words)], cwd=folder, input=stdin,
                              capture_output=True, timeout=120, env={**os.environ, **more}, check=False)
    return _program


@pytest.fixture
def kept_class_folder(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """The current folder, with a class of four kept in it."""
    monkeypatch.chdir(tmp_path)
    keep_class()
    return tmp_path
