""""""

from __future__ import annotations

import os
import time
from pathlib import Path

from namewright.whole_files import whole_file


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
