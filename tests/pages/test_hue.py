"""One hue for lines and captions: what takes it, what stays black or grey, and which colours are refused."""

from __future__ import annotations

import pytest

from namewright.lines.ink import BLACK, RULE, SHADE, Ink
from namewright.lines.ruling import preset
from namewright.lines.tuned import tuned
from namewright.message import Problem
from namewright.pages.hue import COLOURS, MIN_CONTRAST, contrast_to_white, in_hue, read_colour
from namewright.pages.page import Furniture, Guide, Page, Row, leaves
from namewright.pages.sheet import practice_pages
from namewright.pages.sheet_settings import SheetSettings
from namewright.pages.typesetter import Typesetter
from namewright.tuning import Tuning


@pytest.mark.parametrize(("colour", "contrast"), [("#000000", 21.0), ("#ffffff", 1.0), ("#767676", 4.54),
                                                  ("#ff0000", 4.0), ("#0000ff", 8.59)])
def test_contrast_is_that_of_the_standard(colour: str, contrast: float) -> None:
    """Values of WCAG 2.2's formula as they are commonly told: black 21, #767676 the lightest grey that passes 4.5."""
    assert contrast_to_white(colour) == pytest.approx(contrast, abs=0.01)


def test_every_colour_that_is_offered_can_be_copied() -> None:
    """Each named colour has the contrast of text to white; what is typed is held to the same."""
    assert all(contrast_to_white(COLOURS[read_colour(name)]) >= MIN_CONTRAST for name in COLOURS)
    assert read_colour(" 1D5C96 ") == "#1d5c96"
    with pytest.raises(Problem) as pale:
        read_colour("#88aaff")
    assert pale.value.message.key == "page.pale"
    with pytest.raises(Problem) as unknown:
        read_colour("mauve")
    assert unknown.value.message.key == "page.no_colour"


def sheet(setter: Typesetter) -> tuple[Page, ...]:
    tuning = Tuning(shaded_band=True)
    return practice_pages(setter, "Zoë", "Zoë", SheetSettings(tuned(preset("us-3/4"), tuning), tuning=tuning))


def test_lines_and_captions_take_the_hue_and_nothing_else_does(setter: Typesetter) -> None:
    """Guide lines and black text change; letters, dots, start dots, the band and the adult's notes stay."""
    plain = sheet(setter)
    (page,) = in_hue(plain, "violet")
    hue = COLOURS["violet"]
    for before, after in zip(leaves(plain[0].items), leaves(page.items), strict=True):
        if isinstance(before, Guide):
            wanted = hue if before.style.colour == RULE else SHADE
        elif isinstance(before, Ink) and before.spelled and before.style.colour == BLACK:
            wanted = hue
        else:
            wanted = before.style.colour
        assert after.style.colour == wanted
        assert after.bounds() == before.bounds()
    assert {one.style.colour for row in page.items if isinstance(row, Row) for one in row.items
            if isinstance(one, Ink)} == {one.style.colour for row in plain[0].items if isinstance(row, Row)
                                         for one in row.items if isinstance(one, Ink)}
    assert [item.bleeds for item in page.items if isinstance(item, Furniture)].count(True) == 1


def test_black_is_what_nobody_chose(setter: Typesetter) -> None:
    """In black the pages are the very same."""
    plain = sheet(setter)
    assert tuple(in_hue(plain, "black")) == plain
