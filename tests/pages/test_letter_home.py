"""A letter to a family: one page, large enough to read."""

from __future__ import annotations

import pytest

from namewright.lines.ink import Role
from namewright.pages.letter_home import TEXT_MM, letter_pages
from namewright.pages.page import Furniture
from namewright.pages.paper import Paper
from namewright.pages.typesetter import Typesetter
from namewright.wording import languages, wording

PARTS = ("greeting", "first", "second", "third", "fourth", "closing")
SMALL_LETTERS_OF_12_PT_MM = 12 / 72 * 25.4 / 2  # half the body: common practice


@pytest.mark.parametrize("paper", list(Paper))
@pytest.mark.parametrize("language", languages())
def test_a_letter_is_one_page_of_large_letters(setter: Typesetter, language: str, paper: Paper) -> None:
    """In every language, for a long name; every paragraph is there, in order, and the greeting is its title."""
    greeting, *rest = (wording(language).say(f"page.home.{part}", label="Bartholomew Maximilian") for part in PARTS)
    (page,) = letter_pages(setter, greeting, rest, paper, binding=True)
    inks = [ink for item in page.items if isinstance(item, Furniture) for ink in item.items]
    spelled = [ink.spelled for ink in inks if ink.spelled]
    assert " ".join(each.words for each in spelled) == " ".join((greeting, *rest))
    assert {each.words in greeting for each in spelled if each.role is Role.TITLE} == {True}
    assert min(each.x_height_mm for each in spelled) > SMALL_LETTERS_OF_12_PT_MM


def test_a_small_letter_is_as_high_as_is_said(setter: Typesetter) -> None:
    """The middle of the pen reaches from the baseline to the height that a text is set in."""
    _, top, _, foot = setter.text("x", TEXT_MM).pieces[0].bounds()
    assert foot - top == pytest.approx(TEXT_MM, rel=0.01)
