"""``namewright tiles``: tiles to cut."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pypdf

Run = Callable[..., tuple[int, str, str]]


def pages(path: Path) -> int:
    return len(pypdf.PdfReader(path).pages)


def test_tiles(run: Run, tmp_path: Path) -> None:
    """Tiles come in both sizes: of the large ones a page has room for half as many; without a word they are small."""
    roster, made = tmp_path / "class.txt", tmp_path / "tiles.pdf"
    roster.write_text("\n".join(f"Mirabelle Vost{at}" for at in range(12)), encoding="utf-8")
    count: dict[str, int] = {}
    for side in ("", "25", "38"):
        assert run("tiles", roster, "-o", made, *(["--tile", side] if side else []))[0] == 0
        count[side] = pages(made)
    assert count[""] == count["25"] <= count["38"] / 2
