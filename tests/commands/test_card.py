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


def test_a_name_that_our_letters_cannot_write_is_told_with_a_way_on(run: Run, tmp_path: Path) -> None:
    """The letters themselves and not their codes, and what to type: which then makes the card."""
    status, _, err = run("card", "Дарина", "-o", tmp_path / "card.pdf")
    assert status == 2
    assert "“Д”, “а”" in err
    assert "U+" not in err
    assert "“Дарина (goes by Darina)”" in err
    for typed in ("Darina", "Дарина (goes by Darina)"):
        assert run("card", typed, "-o", tmp_path / "card.pdf")[0] == 0
