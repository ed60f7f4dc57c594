"""A class of four in a file, opened, or in a folder of its own."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest

from kept_class import CLASS, keep_class
from namewright.classbook import Classbook


@pytest.fixture
def book(tmp_path: Path) -> Iterator[Classbook]:
    with Classbook.open(tmp_path / "class.db") as opened:
        opened.update_roster(CLASS, when="2026-09-01T08:00:00")
        yield opened


@pytest.fixture
def folder(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    monkeypatch.chdir(tmp_path)
    keep_class()
    return tmp_path


@pytest.fixture
def path(tmp_path: Path) -> Path:
    """A file with two children, one of them with a setting."""
    place = tmp_path / "class.db"
    with Classbook.open(place) as book:
        book.update_roster("Mira Quill\nTilo Reed\n")
        book.set_settings(1, {"support": "light"})
    return place
