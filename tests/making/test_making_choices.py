"""What is chosen by whom, and which choice holds. Every rule is asked of many layers at once."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from namewright.letters.choice import LetterChoice
from namewright.lines.ruling import GuideLine, preset
from namewright.making.choices import NOTHING, Choices, choices_in_list, read_choices, settled
from namewright.message import Problem
from namewright.pages.ladder import Chain, Part
from namewright.pages.page import Guide, Row
from namewright.pages.paper import Paper
from namewright.pages.sheet import practice_pages
from namewright.pages.typesetter import Typesetter
from namewright.practice.ordering import Order
from namewright.roster.children import Child
from namewright.settings import Hand, Support
from namewright.tuning import Tuning

TUNING = st.builds(Tuning, line_height=st.none() | st.sampled_from((12.0, 20.0, 30.0)),
                   midline=st.none() | st.sampled_from((0.4, 0.5)), rows=st.none() | st.integers(1, 6),
                   bold_baseline=st.none() | st.booleans())
LAYER = st.builds(
    Choices, ruling=st.none() | st.sampled_from(("us-1/2", "de-5", "fr-3")).map(preset),
    paper=st.none() | st.sampled_from(Paper), landscape=st.none() | st.booleans(), binding=st.none() | st.booleans(),
    support=st.none() | st.sampled_from(Support), hand=st.none() | st.sampled_from(Hand),
    language=st.none() | st.sampled_from(("en", "es")), order=st.none() | st.sampled_from(Order),
    rungs=st.none() | st.just((Part.WIDE,)), chain=st.none() | st.sampled_from(Chain),
    keep_dots=st.none() | st.sampled_from(("", "gk")),
    letters=st.sampled_from((LetterChoice(), LetterChoice((("a", "two-storey"),)), LetterChoice((), 8.0))),
    tuning=TUNING)
PLAIN = [key for key in Choices._fields if key not in ("letters", "tuning")]


@given(LAYER, LAYER)
def test_the_upper_layer_holds_where_it_says_something_and_the_lower_where_it_does_not(upper: Choices,
                                                                                      lower: Choices) -> None:
    both = upper.over(lower)
    for name in PLAIN:
        said = getattr(upper, name)
        assert getattr(both, name) == (getattr(lower, name) if said is None else said)


@given(LAYER, LAYER, LAYER)
def test_it_does_not_matter_which_two_layers_are_laid_together_first(a: Choices, b: Choices, c: Choices) -> None:
    assert a.over(b).over(c) == a.over(b.over(c))


@given(LAYER)
def test_a_layer_that_says_nothing_changes_nothing(layer: Choices) -> None:
    assert layer.over(NOTHING) == NOTHING.over(layer) == layer


def test_a_named_ruling_brings_its_own_measures() -> None:
    """A line height below was meant for other lines; one above is meant for these."""
    tall = Choices(tuning=Tuning(line_height=30, midline=0.4, rows=2))
    named = Choices(preset("de-5"))
    assert settled(named.over(tall)).ruling.line_height_mm == preset("de-5").line_height_mm
    assert named.over(tall).tuning == Tuning(rows=2)
    assert settled(tall.over(named)).ruling.line_height_mm == 30


def test_a_form_of_letters_can_be_chosen_away_again() -> None:
    """Regression: a slant, exit strokes and crossbars of the class could not be undone for one child or by typing."""
    of_class = read_choices({"letters": "slant=8 exit-strokes crossbars=left a=two-storey"})
    plain = read_choices({"letters": "slant=0 exit-strokes=no crossbars=right a=one-storey"})
    assert plain.over(of_class).letters == plain.letters
    assert of_class.over(plain).letters == of_class.letters


def test_a_ruling_is_as_it_is_printed_and_a_sheet_changes_it_no_more() -> None:
    """Regression: lines were set to a height twice, and called “us-3/4 at 20 mm at 20 mm”."""
    holds = settled(Choices(tuning=Tuning(line_height=20, midline=0.4, bold_baseline=True)))
    assert (holds.ruling.name, holds.ruling.line_height_mm) == ("us-3/4", 20)
    page = practice_pages(Typesetter(), "Bo", "Bo", holds)[0]
    tops = {item.y for row in page.items if isinstance(row, Row) for item in row.items
            if isinstance(item, Guide) and item.line is GuideLine.TOP}
    bases = {item.y for row in page.items if isinstance(row, Row) for item in row.items
             if isinstance(item, Guide) and item.line is GuideLine.BASE}
    assert {round(base - top, 3) for base, top in zip(sorted(bases), sorted(tops), strict=True)} == {20}


def test_text_is_read_as_a_classs_file_keeps_it() -> None:
    read = read_choices({"ruling": "de-5", "paper": "a4", "landscape": "on", "binding": "off", "support": "light",
                         "hand": "left", "language": "es", "order": "need", "ladder": "wide-dots", "keep_dots": "gk",
                         "letters": "a=two-storey", "line_height": "20", "title": "Room 4"})
    assert read == Choices(preset("de-5"), Paper.A4, True, False, Support.LIGHT, Hand.LEFT, "es", Order.NEED,
                           (Part.WIDE,), None, "gk", letters=LetterChoice((("a", "two-storey"),)),
                           tuning=Tuning(line_height=20))
    assert read_choices({}) == NOTHING
    page = read_choices({"colour": "Blue", "sleeve": "on", "tile_names": "off", "hand": "unsettled"})
    assert page == Choices(colour="blue", sleeve=True, tile_names=False, hand=Hand.UNSETTLED)
    assert (settled(page).colour, settled(page).sleeve, settled(page).tile_names) == ("blue", True, False)
    assert (settled(NOTHING).colour, settled(NOTHING).sleeve, settled(NOTHING).tile_names) == ("black", False, True)


@pytest.mark.parametrize("texts", [{"ruling": "xx-1"}, {"letters": "a=odd"}, {"line_height": "900"}])
def test_what_cannot_be_chosen_is_refused(texts: dict[str, str]) -> None:
    with pytest.raises(Problem):
        read_choices(texts)


def test_a_childs_words_for_letters_are_read_once_and_what_is_wrong_goes_with_them() -> None:
    child = Child("Mira", "Mira", "Mira", "", 1, Support.LIGHT, Hand.LEFT, 22.0, "a=odd")
    own, problem = choices_in_list(child)
    assert own == Choices(support=Support.LIGHT, hand=Hand.LEFT, tuning=Tuning(line_height=22.0))
    assert problem is not None
    assert problem.message["form"] == "odd"
