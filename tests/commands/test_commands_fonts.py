"""``namewright fonts``: into a folder that is there."""

from __future__ import annotations

from pathlib import Path

import pytest

from namewright.cli import main


def test_command_refuses_a_folder_that_is_not_there(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    """A missing folder is named, and nothing is made."""
    assert main(["fonts", "-o", str(tmp_path / "none")]) == 2
    assert "There is no folder" in capsys.readouterr().err
