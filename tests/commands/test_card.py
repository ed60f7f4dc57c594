"""``namewright card``: one child's card."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pypdf
import pytest

Run = Callable[..., tuple[int, str, str]]


def pages(path: Path) -> int:
    return len(pypdf.PdfReader(path).pages)


@pytest.mark.parametrize("name", ["Bo", "Christopherson", "Ẹ̀bun", "Ana María", "AJ"])
@pytest.mark.parametrize("options", [(), ("--size", "3x5", "--line-height", "12"), ("--fill-sheet", "--paper", "a4"),
                                     ("--size", "a6", "--support", "independent")])
def test_card(run: Run, name: str, options: tuple[str, ...], tmp_path: Path) -> None:
    """One page, for the name as typed."""
    status, _, err = run("card", name, "-o", tmp_path / "card.pdf", *options)
    assert (status, err) == (0, "")
    assert pages(tmp_path / "card.pdf") == 1
