"""The typesetter: running text in our own letters, and stores that do not grow with a class."""

from __future__ import annotations

import re
from itertools import pairwise

import pytest
from hypothesis import example, given
from hypothesis import strategies as st

from namewright.lines.ruling import custom_ruling
from namewright.pages.drawable import drawable
from namewright.pages.typesetter import Typesetter
from namewright.wording import languages, wording

SETTER = Typesetter()
ON_PAPER = ("page.", "suggest.", "parent.", "word.", "month.", "date.", "roster.", "letters.", "fit.", "reason.",
            "practice.", "account.")
CAUTION = wording("en").say("page.tiles_caution")
WORDS = st.lists(st.sampled_from(CAUTION.split()), min_size=1, max_size=25).map(" ".join)


@example("puts puts puts puts puts puts things", 73.3, 1.9)
@given(WORDS, st.floats(30, 200), st.sampled_from([1.5, 1.9]))
def test_wrapped_text_fits_its_width(words: str, width: float, size: float) -> None:
    """Every line is as wide as allowed or less, no word is lost, and no line could have taken the next word.

    But the last word is not left alone.
    """
    lines = SETTER.wrapped(words, width, size)
    assert " ".join(lines) == words
    assert all(SETTER.text_width(line, size) <= width + 0.01 for line in lines)
    for line, following in pairwise(lines[:-1] if len(lines[-1].split()) == 2 else lines):
        assert SETTER.text_width(f"{line} {following.split()[0]}", size) > width - 0.05


@example("Your letters are mixed up below. Lay them here in order, one in each box.", 148.0, 1.9)
@given(WORDS, st.floats(60, 200), st.sampled_from([1.5, 1.9]))
def test_no_short_word_ends_a_passage_alone(words: str, width: float, size: float) -> None:
    """The last line of several holds two words or one long one, where the line over it has a word to give."""
    *_, before, last = ("", *SETTER.wrapped(words, width, size))
    short = " " not in last and SETTER.text_width(last, size) < 0.3 * width
    assert not short or len(before.split()) < 3


def test_text_stands_at_its_place_and_is_as_wide_as_told() -> None:
    """A line of text begins at x 0 and its ink is as wide as the typesetter says."""
    for words in ("Wren", "Now write your name next to it.", "Ẹ̀bun"):
        x0, _, x1, _ = SETTER.text(words).bounds()
        assert x1 - x0 == pytest.approx(SETTER.text_width(words), abs=0.5)
        assert x0 == pytest.approx(0, abs=0.3)


@pytest.mark.parametrize("language", languages())
def test_our_letters_can_draw_all_words(language: str) -> None:
    """Nothing that a language says on paper has a letter that we lack."""
    for key, words in wording(language).templates.items():
        if key.startswith(ON_PAPER):
            assert drawable(SETTER, re.sub(r"{[^}]*}", "", words)).count("U+") == words.count("U+"), key


def test_stores_are_bounded() -> None:
    """Children with a ruling each, and captions with a name each, are made from a typesetter that keeps the latest."""
    setter = Typesetter()
    for count in range(300):
        ruling = custom_ruling(8 + count / 10)
        setter.ruled(ruling)
        setter.inker(ruling)
        setter.cues(ruling)
        setter.text(f"n {count}")
    kept = [setter._ruled, setter._inkers, setter._cues, setter._texts]
    assert all(len(store) <= 200 for store in kept)
    assert len(setter._ruled) < 50


@pytest.mark.parametrize("size_mm", [1.5, 1.9, 2.2, 2.8])
def test_dots_of_running_text_are_seen(setter: Typesetter, size_mm: float) -> None:
    """Full stops and the dots of i and ë are 0.4 mm wide or more in what a child is told, and wider than the pen.

    Regression: a caption's dots were as thin as its strokes, so that “Zoë” looked like “Zoe”.
    """
    line = setter.text(".", size_mm)
    x0, y0, x1, y1 = line.bounds()
    assert min(x1 - x0, y1 - y0) >= 0.4
    assert x1 - x0 > 1.4 * line.style.width_mm
    plain, dotted = (setter.text(letter, size_mm).bounds()[1] for letter in "eë")
    assert dotted < plain - 0.4
