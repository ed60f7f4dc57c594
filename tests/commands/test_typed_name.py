"""One name that was typed."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pypdf
import pytest

Run = Callable[..., tuple[int, str, str]]


@pytest.mark.parametrize(("typed", "name", "said"), [
    ("MIRA", "Mira", "all in one case"), ("Lena Rose Moss", "Lena Rose Moss", ""), ("Moss, Katie", "Katie Moss", ""),
    ("Mira 🌟", "Mira", "🌟"), ("Mi\u200bra", "Mira", "U+200B"), ("j.p.", "J.P.", "all in one case"),
    ("Keali'i", "Keali'i", "ʻokina"), ("ANA DE LA CRUZ", "Ana de la Cruz", "all in one case")])
def test_one_name_is_written_as_typed_or_it_is_said(run: Run, typed: str, name: str, said: str, tmp_path: Path) -> None:
    """A card has every word that was typed, and whatever was changed is said."""
    status, _, err = run("card", typed, "-o", tmp_path / "card.pdf")
    assert (status, bool(err)) == (0, bool(said))
    assert said in err
    entry = pypdf.PdfReader(tmp_path / "card.pdf").outline[0]
    assert not isinstance(entry, list)
    assert entry.title == name


@pytest.mark.parametrize("typed", ["", "🌟", "123", "Mira, Tilo, Nia", "Mira\nTilo", "\u0301", "A" * 500, "\u202e"])
def test_one_name_that_is_none(run: Run, typed: str, tmp_path: Path) -> None:
    """One sentence on one line, and no card."""
    status, _, err = run("card", typed, "-o", tmp_path / "card.pdf")
    assert (status, err.count("\n")) == (2, 1)
    assert not (tmp_path / "card.pdf").exists()


def test_the_case_of_one_name_follows_its_language(run: Run, tmp_path: Path) -> None:
    assert "Sayın" in run("card", "SAYIN", "--names-in", "tr", "-o", tmp_path / "card.pdf")[2]
