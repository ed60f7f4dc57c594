"""Files are written whole or not at all."""

from __future__ import annotations

import os
import stat
import subprocess
import sys
import time
from pathlib import Path
from typing import Any

import pytest

from namewright.whole_files import folder_for_files, whole_file


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


@pytest.mark.skipif(os.name != "posix", reason="Windows has no umask")
def test_a_file_can_be_read_by_those_who_may_read_files_here(tmp_path: Path) -> None:
    """A finished file has the rights of any new file: a temporary one is its owner's alone, and so it would stay."""
    before = os.umask(0o022)
    try:
        with whole_file(tmp_path / "class.pdf") as file:
            file.write(b"all of it")
    finally:
        os.umask(before)
    assert stat.S_IMODE((tmp_path / "class.pdf").stat().st_mode) == 0o644


def test_a_folder_that_is_not_there_is_told(tmp_path: Path) -> None:
    """Nothing is made where the folder is missing."""
    with pytest.raises(OSError, match="No such file"), whole_file(tmp_path / "none" / "class.pdf"):
        pass
    assert list(tmp_path.iterdir()) == []


def test_what_a_killed_run_left_is_taken_away_by_the_next(tmp_path: Path) -> None:
    """But not what a run that goes on is writing."""
    left = tmp_path / ".namewright-killed"
    left.write_bytes(b"half")
    with whole_file(tmp_path / "going-on.pdf") as file:
        (going_on,) = (path for path in tmp_path.glob(".namewright-*") if path != left)
        for path in (left, going_on):
            os.utime(path, (time.time() - 3600,) * 2)
        with whole_file(tmp_path / "next.pdf") as other:
            other.write(b"next")
        file.write(b"whole")
    assert sorted(path.name for path in tmp_path.iterdir()) == ["going-on.pdf", "next.pdf"]
    assert (tmp_path / "going-on.pdf").read_bytes() == b"whole"


@pytest.mark.skipif(not hasattr(os, "mkfifo"), reason="there are no named pipes here")
def test_a_pipe_is_not_replaced(tmp_path: Path) -> None:
    """Nor is a device: the file would stand in its place for every other program."""
    target = tmp_path / "class.pdf"
    os.mkfifo(target)
    with pytest.raises(FileExistsError), whole_file(target) as file:
        file.write(b"all of it")
    assert target.is_fifo()
    assert list(tmp_path.iterdir()) == [target]


@pytest.mark.skipif(not hasattr(os, "mkfifo"), reason="there are no named pipes here")
def test_a_pipe_that_looks_like_a_leftover_is_not_waited_for(tmp_path: Path) -> None:
    """Anybody may put one into a folder that all may write to."""
    os.mkfifo(tmp_path / ".namewright-pipe")
    os.utime(tmp_path / ".namewright-pipe", (0, 0))
    code = "import sys; from pathlib import Path; from namewright.whole_files import clear_leftovers as clear; " \
           "clear(Path(sys.argv[1]))"
    subprocess.run([sys.executable, "-c", code, str(tmp_path)], check=True, timeout=90)
    assert (tmp_path / ".namewright-pipe").is_fifo()


def test_a_new_folder_stays_only_if_something_came_into_it(tmp_path: Path) -> None:
    """Those above it that were made for it go with it, and none that stood there before."""
    with folder_for_files(tmp_path / "a" / "b"):
        assert (tmp_path / "a" / "b").is_dir()
    assert list(tmp_path.iterdir()) == []
    (tmp_path / "old").mkdir()
    with folder_for_files(tmp_path / "old"):
        pass
    with folder_for_files(tmp_path / "full" / "of"):
        (tmp_path / "full" / "of" / "one.svg").write_bytes(b"it")
    assert sorted(path.name for path in tmp_path.iterdir()) == ["full", "old"]


def test_a_stop_right_behind_the_opening_leaves_nothing(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """A Ctrl-C may come when the file is made and nothing else has been done."""
    opened = os.open

    def stopped(*how: Any) -> int:
        os.close(opened(*how))
        raise KeyboardInterrupt

    monkeypatch.setattr("namewright.whole_files.os.open", stopped)
    with pytest.raises(KeyboardInterrupt), whole_file(tmp_path / "class.pdf"):
        pass
    monkeypatch.undo()
    assert list(tmp_path.iterdir()) == []
