"""One odd name never stops the class: it is told with its reason, and every page of everybody else is made.

Names are invented, or are no names at all.
"""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date

import pytest
from hypothesis import Phase, given, settings
from hypothesis import strategies as st

from longer import rest_long
from namewright.classbook.growing import growth_of
from namewright.letters.alphabet import Alphabet, MissingLetters, upright
from namewright.making.make import Making
from namewright.making.request import Kind, Request, listed
from namewright.pages.child_progress import ProgressSettings, progress_page
from namewright.pages.drawable import drawable
from namewright.pages.growth import Growth, Track
from namewright.pages.page import Page
from namewright.pages.paper import Paper
from namewright.pages.summary import Entry, summary_pages
from namewright.pages.typesetter import Typesetter
from namewright.practice.ordering import completed, order_class
from namewright.roster.children import RosterError
from namewright.roster.parsing import read_roster
from namewright.wording import wording

ODD = (
    "Константинапетрова", "பாலசுப்பிரமணியன்", "Ma" + "\u0301" * 6 + "ya", "M" + "\u0301" * 59,
    "Bo\u0301\u0302\u0303\u0304",
    "Mia \u0301Bo", "Mi-\u0301a", "Mi’\u0327a",
    "\u0301Mia", "Ø\u0328rs", "æ\u0327ł\u0327", "i\u0328\u0327\u0328\u0323a",
)
LONG = ("w" * 60, "Wm" * 30, "Maximilianna" * 5, "W W W" * 12, "W-W-W" * 12, "Mw " * 19 + "W")
BESIDE = ("Katie", "Milo")
ANY_NAME = st.text(st.sampled_from("aiMØł’-. \u0301\u0327\u0323\u0328\u0308\u0337Жயி李"), min_size=1, max_size=24)


SETTER = Typesetter()


def made(names: Sequence[str]) -> tuple[list[Page], Making]:
    """Make every kind of page for a class, with a year in which nothing was noted."""
    roster = read_roster("\n".join(names))
    members = tuple(listed(one) for one in completed(order_class(roster.children), "en"))
    making = Making(Request(tuple(Kind), members, roster=roster), SETTER)
    return list(making.pages()), making


def made_in(making: Making, kind: Kind) -> set[str]:
    """Return the labels of the children who have pages of a kind."""
    return {one.placed.child.label for one in making.account.of(kind)}


def told_in(making: Making, kind: Kind) -> set[str]:
    """Return the labels of the children who are told to have none."""
    return {one.child.label for one in making.account.not_made if one.kind is kind}


@pytest.mark.parametrize("odd", rest_long([[*ODD], *([one] for one in ODD)]), ids=ascii)
def test_the_others_are_all_made(odd: list[str]) -> None:
    """Whatever a name is, the sheets, cards and tiles of the others are there, and so is every page for the adult."""
    pages, making = made([*BESIDE, *odd])
    everyone = {child.label for child in making.request.roster.children}
    for kind in (Kind.SHEETS, Kind.CARDS, Kind.TILES, Kind.SIZES):
        assert made_in(making, kind) >= set(BESIDE)
        assert made_in(making, kind) | told_in(making, kind) == everyone
    for kind in (Kind.GROUPS, Kind.ADULT, Kind.PLAN, Kind.YEAR):
        assert made_in(making, kind) == everyone
    assert len(pages) > 4 * len(BESIDE)


@pytest.mark.parametrize("long", rest_long(LONG))
def test_long_names_and_labels(long: str) -> None:
    """A name as long as a name may be is made or told on every page, and so are two children told apart by one."""
    for names in ((long,), (f"Ava {long}", f"Ava M{long[:55]}")):
        _, making = made([*BESIDE, *names])
        children = making.request.roster.children
        for kind in (Kind.SHEETS, Kind.CARDS, Kind.TILES):
            made_here = made_in(making, kind)
            assert made_here >= {one.label for one in children if one.practice.casefold() != long.casefold()}
            assert made_here | told_in(making, kind) == {child.label for child in children}
        assert made_in(making, Kind.PLAN) == made_in(making, Kind.ADULT) == {child.label for child in children}


@settings(max_examples=8, phases=(Phase.explicit, Phase.generate))
@given(ANY_NAME)
def test_no_text_stops_a_class(odd: str) -> None:
    """Marks on anything, scripts we cannot draw, signs alone: a list that is read can be made."""
    try:
        read_roster(odd)
    except RosterError:
        return
    _, making = made([*BESIDE, odd])
    assert made_in(making, Kind.SHEETS) >= set(BESIDE)
    assert not told_in(making, Kind.ADULT) | told_in(making, Kind.PLAN) | told_in(making, Kind.GROUPS)


@given(ANY_NAME)
def test_what_is_missing_is_all_that_cannot_be_drawn(text: str) -> None:
    """A text of which nothing is missing can be set, and every text can be told to an adult."""
    alphabet, setter = upright(), Typesetter()
    if text.strip() and not alphabet.missing(text):
        setter.text(text)
    told = drawable(setter, text)
    assert alphabet.missing(told) == ()
    assert not told.strip() or setter.text_width(told) > 0


@pytest.mark.parametrize(("odd", "said"), [
    ("Жo", "“Ж” (cyrillic capital letter zhe, U+0416)"),
    ("M" + "\u0301" * 6, "“M” (latin capital letter m, U+004D) with 6 marks on it"),
    ("Mia \u0301Bo", "(combining acute accent, U+0301)"),
    ("Mi-\u0301a", "“-\u0301” (hyphen-minus + combining acute accent, U+002D U+0301)"),
    ("Ø\u0328rs", "“Ø\u0328” (latin capital letter o with stroke + combining ogonek, U+00D8 U+0328)"),
], ids=ascii)
def test_a_reason_names_what_it_is(alphabet: Alphabet, odd: str, said: str) -> None:
    """What cannot be drawn is told with its code points: a letter that cannot carry its marks as a whole."""
    told = wording("en").sentence(MissingLetters(alphabet.missing(odd)).message)
    assert told.startswith(f"Our letters have no {said}. ")
    assert "(goes by Bo)" in told


def test_a_long_text_that_cannot_be_drawn_stays_short(setter: Typesetter) -> None:
    """Beside a child’s given name a family name in other letters is told by its first ones, and the sheet is made."""
    told = drawable(setter, "Mira ქართველიშვილი-გურული")
    assert told == "Mira (U+10E5 U+10D0 U+10E0 ...)"


def test_a_cyrillic_name_is_told_as_in_a_passport(setter: Typesetter) -> None:
    """Whoever reads the page knows which child it is; one letter alone is told as itself."""
    assert drawable(setter, "Анна Петрова-Иванова (line 1)") == "(Anna Petrova-Ivanova) (line 1)"
    assert drawable(setter, "Mirel Vоst") == "Mirel V(U+043E)st"


def test_a_word_wider_than_the_page_is_cut(setter: Typesetter) -> None:
    """On the adult’s page one endless word goes on in the next line, and no letter loses its mark by the cut."""
    (page,) = summary_pages(setter, [Entry("Mira" * 60, ("é" * 400, "e\u0327\u0301" * 400))], Paper.LETTER)
    assert page.items


@pytest.mark.parametrize("odd", ODD, ids=ascii)
def test_the_year_of_an_odd_name(setter: Typesetter, odd: str) -> None:
    """A page of progress is made for any name, with what cannot be drawn told by its code points."""
    tracks = tuple(Track(track.letter, ((date(2026, 9, 7), True),)) for track in growth_of(odd, odd, ()).tracks)
    assert progress_page(setter, Growth(odd, tracks), ProgressSettings()).items


def test_two_children_with_one_label_are_both_told() -> None:
    """A child who is not made is named by the label that tells it from the others."""
    _, making = made([*BESIDE, "Жора Иванов", "Жора Петров"])
    assert len(told_in(making, Kind.SHEETS)) == 2
