"""Files are written whole or not at all."""

from __future__ import annotations

from pathlib import Path

import pytest

from namewright.output.files import whole_file


def test_a_file_appears_when_it_is_whole(tmp_path: Path) -> None:
    """Until the block ends there is nothing under the name; then all of it."""
    target = tmp_path / "class.pdf"
    with whole_file(target) as file:
        file.write(b"all of it")
        assert not target.exists()
    assert target.read_bytes() == b"all of it"
    assert list(tmp_path.iterdir()) == [target]


def break_off(target: Path) -> None:
    with whole_file(target) as file:
        file.write(b"half of")
        raise RuntimeError


def test_an_error_leaves_what_was_there(tmp_path: Path) -> None:
    """When writing breaks off, the old file stays as it was and no rest lies about."""
    target = tmp_path / "class.pdf"
    target.write_bytes(b"old")
    with pytest.raises(RuntimeError):
        break_off(target)
    assert target.read_bytes() == b"old"
    assert list(tmp_path.iterdir()) == [target]
