"""Names cut into letters as a child counts them."""

from __future__ import annotations

from hypothesis import given
from hypothesis import strategies as st

from namewright.names.clusters import clusters


def test_one_tile_is_one_letter_with_its_marks() -> None:
    """A mark without a composed form stays with its letter; the ʻokina is a letter of its own."""
    assert clusters("Ẹ̀bun") == ("Ẹ̀", "b", "u", "n")
    assert clusters("Kaʻiu") == ("K", "a", "ʻ", "i", "u")
    assert clusters("") == ()


@given(st.text(max_size=30))
def test_clusters_lose_nothing(text: str) -> None:
    """Joined again, the clusters are the text."""
    assert "".join(clusters(text)) == text
