"""Our letters as Type 3 fonts: places that follow from characters alone, and text that shows nothing."""

from __future__ import annotations

import re

import pytest

from namewright.output.pdf.font import X_HEIGHT, Place, glyph, hidden, place, shown, spelled_clusters
from namewright.pages.typesetter import Typesetter


@pytest.mark.parametrize(("cluster", "where"), [
    ("a", Place("F0", 0x61)), ("é", Place("F0", 0xE9)), ("ő", Place("F1", 0x51)), ("ẹ", Place("F1e", 0xB9)),
    ("ẹ\u0301", Place("F1e.301", 0xB9)), ("e\u0323\u0301", Place("F1e.301", 0xB9)),
])
def test_a_letter_is_where_its_characters_say(cluster: str, where: Place) -> None:
    """A font for each 256 code points, and one for each set of marks without a code point; composed or not."""
    assert place(cluster) == where
    assert place(cluster, hidden=True) == Place("H" + where.font[1:], where.code)


def test_a_letter_is_as_high_as_the_font_says() -> None:
    """x and n from 0 to the x-height, l above it, p below; y up."""
    assert glyph("n").box[1] == 0
    assert glyph("n").box[3] == pytest.approx(X_HEIGHT, abs=5)
    assert glyph("l").box[3] > 1.5 * X_HEIGHT
    assert glyph("p").box[1] < -0.5 * X_HEIGHT
    assert glyph(" ").strokes == b""


def test_an_advance_is_wider_than_its_ink() -> None:
    """And even, so that half of it, in units of the size, is a whole number."""
    for letter in "nmiW.’é":
        x0, _, x1, _ = glyph(letter).box
        assert glyph(letter).advance > x1 - x0, letter
        assert glyph(letter).advance % 2 == 0


def test_words_have_one_space_between_them() -> None:
    assert spelled_clusters("  Zoë \n Bo ") == ("Z", "o", "ë", " ", "B", "o")


def test_text_is_shown_where_it_was_set(setter: Typesetter) -> None:
    """One font for plain letters; by what a pair stands nearer or farther is told between; in all as wide as set."""
    ink = setter.text("nano", 2.0)
    spelled = ink.spelled
    assert spelled is not None
    told = shown(ink, spelled)
    assert re.match(r"/F0 400 Tf\[\(.*\]TJ$", told)
    moves = sum(int(move) for move in re.findall(r"\)(-?\d+)\(", told))
    advances = sum(glyph(letter).advance // 2 for letter in "nan") - moves
    assert advances == pytest.approx((ink.pieces[3].x - ink.pieces[0].x) / 2.0 * X_HEIGHT / 2, abs=2)


def test_brackets_and_line_ends_do_not_end_a_string() -> None:
    """A code that would close the string, escape or be read as another is escaped (ISO 32000-1, 7.3.4.2)."""
    assert "(\\()" in hidden("(", 100, 10)
    assert "(\\\\)" in hidden("\\", 100, 10)
    assert "\\015" in hidden("č", 100, 10)  # U+010D is code 13 of its font


def test_hidden_text_is_as_wide_as_the_name() -> None:
    """Each letter of these fonts is as wide as the size, stretched by Tz in percent, which is set back."""
    told = hidden("Mira", 600.0, 300.0)
    share = float(told.split()[0])
    assert share / 100 * 300.0 * 4 == pytest.approx(600.0, abs=0.1)
    assert told.endswith("100 Tz")
