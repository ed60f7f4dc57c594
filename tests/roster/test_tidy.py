"""Clean-up of pasted text: what is changed, what is kept, and that every change is told."""

from __future__ import annotations

import unicodedata

import pytest
from hypothesis import given
from hypothesis import strategies as st

from namewright.roster.tidy import scrub, tidy

CLEANED = [
    ("  Mira   Vost ", "Mira Vost", 0, "runs of spaces are one, none at the ends"),
    ("Mira\u00a0Vost", "Mira Vost", 0, "a space that does not break is a space"),
    ("Mira\u2003\u3000Vost", "Mira Vost", 0, "so are wide ones"),
    ("Mira\u2028Vost", "Mira Vost", 0, "and a line separator"),
    ("Zoe\u0308", "Zoë", 0, "an accent apart from its letter joins it"),
    ("Ｍｉｒａ", "Mira", 1, "full-width letters are ordinary ones, and that is said"),
    ("Ｖｏｓｔ，Ｍｉｒａ", "Vost,Mira", 1, "so is the comma between them"),
    ("Mi\u200bra", "Mira", 1, "a space of no width goes"),
    ("Mi\u00adra", "Mira", 1, "and a hyphen that shows only at a line's end"),
    ("\u202aMira\u202c", "Mira", 1, "and marks of direction, as phones paste them"),
    ("Mira\ufe0f", "Mira", 1, "and what chooses the look of a sign"),
    ("\ufeffMira", "Mira", 0, "a byte order mark at the front is no news"),
    ("Mi\x00ra", "Mira", 1, "a control character goes"),
    ("Mi\ud800ra", "Mira", 1, "and half of a character, as broken text has it"),
    ("ﬁn ŀ", "ﬁn ŀ", 0, "so does a ligature"),
    ("ĳsbrand", "ĳsbrand", 0, "a letter of two strokes stays one letter: this is not NFKC"),
    ("Kaʻiulani", "Kaʻiulani", 0, "an ʻokina stays as typed"),
    ("D’Arro O'Vann", "D’Arro O'Vann", 0, "so do apostrophes of both kinds"),
]


@pytest.mark.parametrize(("typed", "clean", "notes", "why"), CLEANED, ids=[row[3] for row in CLEANED])
def test_a_name_is_cleaned(typed: str, clean: str, notes: int, why: str) -> None:
    """Only what nobody sees is changed, and a note says what a reader could miss."""
    found = tidy(typed)
    assert (found.text, len(found.notes)) == (clean, notes), why


def test_scrubbing_keeps_tabs() -> None:
    """A tab may part two columns: only a whole name loses it."""
    assert scrub("Vost\tMira\u00a0").text == "Vost\tMira "
    assert tidy("Vost\tMira").text == "Vost Mira"


@given(st.text(max_size=40))
def test_any_text_comes_out_clean_and_stays_so(typed: str) -> None:
    """Whatever is pasted: NFC, no invisible character but the tab, and cleaning it again changes and says nothing."""
    once = scrub(typed).text
    assert once == unicodedata.normalize("NFC", once)
    assert all(char == "\t" or unicodedata.category(char) not in ("Cc", "Cf", "Cs") for char in once)
    assert scrub(once).text == once
    assert scrub(once).notes == ()
    assert tidy(tidy(typed).text).text == tidy(typed).text


@given(st.lists(st.sampled_from("\u200b\u200c\u200d\u2060\u00ad\u202a\u2066\ufe0f\u034f"), min_size=1, max_size=12))
def test_what_is_taken_out_is_told_once(gone: list[str]) -> None:
    """However many invisible characters stand in a name, one note tells of them and the name is as it looked."""
    found = tidy("Mi" + "".join(gone) + "ra")
    assert (found.text, len(found.notes)) == ("Mira", 1)


def test_a_removed_character_is_named() -> None:
    """The note says which character it was."""
    assert tidy("A\u200bn").notes[0]["named"] == ("U+200B zero width space",)


def test_what_orders_a_terminal_about_goes_whole() -> None:
    """A list copied from one may hold colours: their figures are no part of a name."""
    assert scrub("Mira\x1b[1;31m Quill\x1b[0m").text == "Mira Quill"
    assert scrub("Mira\x1b Quill").text == "Mira Quill"
    assert scrub("Mira\x1b[31m").notes == scrub("Mira\x1b").notes
