"""``namewright tiles``: tiles to cut."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pypdf

Run = Callable[..., tuple[int, str, str]]


def pages(path: Path) -> int:
    return len(pypdf.PdfReader(path).pages)


def test_tiles(run: Run, roster: Path, tmp_path: Path) -> None:
    """Tiles come in both sizes."""
    for side in ("25", "38"):
        assert run("tiles", roster, "-o", tmp_path / "tiles.pdf", "--tile", side)[0] == 0
        assert pages(tmp_path / "tiles.pdf") >= 1
