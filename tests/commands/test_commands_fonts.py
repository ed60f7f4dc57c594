"""``namewright fonts``: into a folder, made where there is none."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest

from namewright.cli import main


@pytest.fixture(autouse=True)
def short(monkeypatch: pytest.MonkeyPatch) -> None:
    """Stand in for building fonts, which is tried elsewhere and takes long."""
    def build(_: object) -> Iterator[tuple[str, bytes]]:
        yield "one.ttf", b"letters"

    monkeypatch.setattr("namewright.truetype.build.build_fonts", build)


def test_a_folder_that_is_not_there_is_made(tmp_path: Path) -> None:
    """As with the pictures of a class."""
    assert main(["fonts", "-o", str(tmp_path / "new" / "fonts")]) == 0
    assert (tmp_path / "new" / "fonts" / "one.ttf").read_bytes() == b"letters"


def test_a_file_in_the_place_of_the_folder_is_told(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    (tmp_path / "fonts").write_text("notes")
    assert main(["fonts", "-o", str(tmp_path / "fonts")]) == 2
    assert str(tmp_path / "fonts") in capsys.readouterr().err
    assert (tmp_path / "fonts").read_text() == "notes"
