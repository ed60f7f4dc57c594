"""The page for the adult: as many pages as it takes, and no entry torn in two. Names are invented."""

from __future__ import annotations

import pytest

from namewright.lines.ink import Ink
from namewright.pages.drawable import drawable
from namewright.pages.page import Page, leaves
from namewright.pages.paper import Paper
from namewright.pages.summary import Entry, summary_pages
from namewright.pages.typesetter import Typesetter

SENTENCE = "Four letters to write, about as hard as most: begin with M, soon a. Here: partial support, left hand."


def texts(page: Page) -> int:
    """Return how many texts stand on a page: one piece of a path each."""
    return sum(len(item.pieces) for item in leaves(page.items) if isinstance(item, Ink))


@pytest.mark.parametrize("paper", Paper)
def test_a_long_class_goes_on_to_the_next_page(setter: Typesetter, paper: Paper) -> None:
    """Two hundred entries take several pages, each checked for its margins as it is made; none is lost."""
    entries = [Entry(f"{at}. Mira", (SENTENCE,), beside=True) for at in range(200)]
    pages = summary_pages(setter, entries, paper, binding=True)
    assert len(pages) > 3
    assert sum(map(texts, pages)) >= 400
    assert len(summary_pages(setter, entries[:10], paper)) == 1


def test_an_entry_is_not_torn(setter: Typesetter) -> None:
    """An entry for which there is no room any more stands on the next page whole."""
    long = Entry("Tilo", (SENTENCE * 6,))
    short = [Entry(f"{at}. Mira", ("Fine.",)) for at in range(60)]
    counts = [len(summary_pages(setter, [*short[:count], long], Paper.A4)) for count in range(1, 60)]
    alone = texts(summary_pages(setter, [long], Paper.A4)[0])
    first_on_second = counts.index(2) + 1
    assert texts(summary_pages(setter, [*short[:first_on_second], long], Paper.A4)[1]) == alone


def test_a_long_heading_has_its_sentence_below(setter: Typesetter) -> None:
    """Beside a heading there is room only where it is short; otherwise the sentence stands a line lower."""
    heights = []
    for heading in ("Bo", "Alexandrina-Maximiliana of the Hills"):
        page = summary_pages(setter, [Entry(heading, ("Fine.",), beside=True)], Paper.A4)[0]
        heights.append(max(item.bounds()[3] for item in leaves(page.items) if isinstance(item, Ink)))
    assert heights[1] > heights[0] + 3


def test_what_our_letters_lack_is_written_as_its_code_point(setter: Typesetter) -> None:
    """No character is dropped, and none is drawn as an empty box."""
    assert drawable(setter, "Mira 李") == "Mira (U+674E)"
    assert drawable(setter, "Zoë") == "Zoë"


@pytest.mark.parametrize("paper", Paper)
def test_no_page_is_for_a_line_or_two(setter: Typesetter, paper: Paper) -> None:
    """Whatever the class, the last page has three entries or more."""
    for count in range(20, 120, 3):
        pages = summary_pages(setter, [Entry(f"{at}. Mira", ("Fine.",), beside=True) for at in range(count)], paper)
        assert len(pages) == 1 or len(pages[-1].items) >= 3, count
