"""Names cut into letters as a child counts them."""

from __future__ import annotations

from hypothesis import given
from hypothesis import strategies as st

from namewright.names.clusters import clusters, is_letter


def test_one_tile_is_one_letter_with_its_marks() -> None:
    """A mark without a composed form stays with its letter; the ʻokina is a letter of its own."""
    assert clusters("Ẹ̀bun") == ("Ẹ̀", "b", "u", "n")
    assert clusters("Kaʻiu") == ("K", "a", "ʻ", "i", "u")
    assert clusters("") == ()


@given(st.text(max_size=30))
def test_clusters_lose_nothing(text: str) -> None:
    """Joined again, the clusters are the text."""
    assert "".join(clusters(text)) == text


def test_a_letter_is_one_of_any_script_whatever_stands_on_it() -> None:
    """Figures, signs and marks alone are none, and a mark makes no letter of a figure."""
    assert [is_letter(one) for one in ("e", "É", "e\u0301", "ж", "李", "ʻ", "ן")] == [True] * 7
    assert [is_letter(one) for one in ("7", "-", "", "1\u0301", "’", "\u0301a", "½")] == [False] * 7
