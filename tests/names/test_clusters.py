"""Clusters, clean-up and syllable breaks on names."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from namewright.names.beats import Spoken
from namewright.names.clusters import clusters, is_letter
from namewright.names.syllables import breaks
from namewright.roster.tidy import scrub, tidy


def test_one_tile_is_one_letter_with_its_marks() -> None:
    """A mark without a composed form stays with its letter; the ʻokina is a letter of its own."""
    assert clusters("Ẹ̀bun") == ("Ẹ̀", "b", "u", "n")
    assert clusters("Kaʻiu") == ("K", "a", "ʻ", "i", "u")
    assert clusters("") == ()


@given(st.text(max_size=30))
def test_clusters_lose_nothing(text: str) -> None:
    """Joined again, the clusters are the text."""
    assert "".join(clusters(text)) == text


TIDY = [
    ("\ufeffAna", "Ana", 0, "a byte order mark goes in silence"),
    ("Ana\u00a0Vey", "Ana Vey", 0, "a space that does not break is a space"),
    ("Ana\u3000Vey", "Ana Vey", 0, "an ideographic space is a space"),
    ("Ａｎａ", "Ana", 1, "full-width letters become ordinary ones"),
    ("ＡＮＡ１，", "ANA1,", 1, "and so do figures and signs of that keyboard"),
    ("Zoe\u0308", "Zoë", 0, "a decomposed accent is joined"),
    ("ﬁn ĳ ŀ", "ﬁn ĳ ŀ", 0, "never NFKC"),
    ("“Will” O’N ‘x’", "“Will” O’N ‘x’", 0, "curly quotes stay"),
    ("A\u200bn\u200da", "Ana", 1, "zero-width characters go and are reported"),
    ("\u202eAna\u202c", "Ana", 1, "so do those that turn the writing direction"),
    ("A\x00n\x07a", "Ana", 1, "and control characters"),
    ("A\ud800na", "Ana", 1, "and halves of characters"),
    ("\tAna \t Vey\t", "Ana Vey", 0, "stray tabs and runs of spaces"),
]


@pytest.mark.parametrize(("typed", "expected", "notes", "why"), TIDY, ids=[row[3] for row in TIDY])
def test_tidy(typed: str, expected: str, notes: int, why: str) -> None:
    """Only what nobody sees changes, and every removed character is reported."""
    result = tidy(typed)
    assert result.text == expected, why
    assert len(result.notes) == notes, why


def test_a_removed_character_is_named() -> None:
    """The note says which character it was."""
    assert tidy("A\u200bn").notes[0]["named"] == ("U+200B zero width space",)


def test_scrub_keeps_tabs() -> None:
    """Tabs may be columns, so the clean-up of a line leaves them."""
    assert scrub("Moss\tZoe\u0308").text == "Moss\tZoë"


@given(st.text(max_size=40))
def test_tidy_is_settled(text: str) -> None:
    """Clean text is clean: a second pass changes and reports nothing."""
    once = tidy(text)
    assert tidy(once.text) == type(once)(once.text)


BREAKS = [
    ("Ana María", (4,), "behind the space"),
    ("Mary-Kate", (5,), "behind the hyphen"),
    ("Anna-Lena Rose", (5, 10), "every space and hyphen"),
    ("Bo", (), "too short to break"),
    ("", (), "nothing to break"),
]


@pytest.mark.parametrize(("name", "expected", "why"), BREAKS, ids=[row[2] for row in BREAKS])
def test_breaks_at_spaces_and_hyphens(name: str, expected: tuple[int, ...], why: str) -> None:
    """A name is broken at its own joints before anything else."""
    assert breaks(clusters(name)) == expected, why


@given(st.text(st.characters(categories=("Lu", "Ll", "Mn"), max_codepoint=0x36F), max_size=20))
def test_breaks_leave_two_letters_on_each_side(name: str) -> None:
    """No break inside a cluster, and two letters at least on both rows."""
    letters = clusters(name)
    for at in breaks(clusters(name)):
        assert min(sum(map(is_letter, letters[:at])), sum(map(is_letter, letters[at:]))) >= 2


def test_a_language_changes_the_breaks() -> None:
    """A long name is broken between beats; one of a single beat in a language without patterns stays whole."""
    assert breaks(clusters("Christopherson")) == (5, 7, 11)  # Chris-to-pher-son; patterns alone say Christoph-erson
    assert breaks(clusters("Guadalupe"), Spoken("es-MX")) == (3, 5, 7)
    assert breaks(clusters("Brun"), Spoken("xx")) == ()
