"""Rulings by their size: inches first on Letter paper, millimetres on A4; no name of the program's own."""

from __future__ import annotations

import re

import pytest

from namewright.lines.ruling import PRESETS
from namewright.web.ruling_words import by_country, size_said
from namewright.wording import wording


@pytest.mark.parametrize(("height", "letter", "a4"), [
    (19.05, "¾ inch · 19 mm", "19 mm · ¾ inch"), (28.575, "1⅛ inch · 29 mm", "29 mm · 1⅛ inch"),
    (25.4, "1 inch · 25 mm", "25 mm · 1 inch"), (9.525, "⅜ inch · 9.5 mm", "9.5 mm · ⅜ inch"),
    (10.0, "0.39 inch · 10 mm", "10 mm"), (24.0, "0.94 inch · 24 mm", "24 mm"),
])
def test_a_height_is_said_as_the_paper_has_it(height: float, letter: str, a4: str) -> None:
    say = wording("en").say
    assert say(size_said(height, "letter")) == letter  # type: ignore[arg-type]
    assert say(size_said(height, "a4")) == a4  # type: ignore[arg-type]


def test_every_ruling_is_called_once_and_by_no_code() -> None:
    """Under its country; two of one country never by the same words."""
    say = wording("en").say
    found = by_country("letter")
    assert sum(map(len, found.values())) == len(PRESETS)
    for land, some in found.items():
        words = [say(size) for _, size in some]  # type: ignore[arg-type]
        assert len(set(words)) == len(words), land
        assert not any(re.search(r"[a-z]{2}-\d", each) for each in words)
