"""The size finder: a child's own name at six line heights, each told beside it, on one page."""

from __future__ import annotations

from itertools import pairwise

import pytest

from namewright.lines.fit import DoesNotFit
from namewright.lines.ink import Ink
from namewright.lines.ruling import GuideLine, preset
from namewright.pages.blocks import PageSettings
from namewright.pages.page import Furniture, Guide, Row
from namewright.pages.paper import Paper
from namewright.pages.size_finder import size_pages
from namewright.pages.typesetter import Typesetter
from namewright.units import number
from namewright.wording import wording
from pages.on_page import rows

NAMES = ("Bo", "Wren", "Christopherson", "ẤỘ", "Peggy")


def guide_heights(row: Row) -> dict[GuideLine, float]:
    """Return the height of each printed line of a row over its base line."""
    guides = {item.line: item.y for item in row.items if isinstance(item, Guide) and item.line is not None}
    return {line: guides[GuideLine.BASE] - y for line, y in guides.items()}


def letters_of(ink: Ink) -> list[object]:
    return [piece.fragment for piece in ink.pieces]


@pytest.mark.parametrize("paper", list(Paper))
@pytest.mark.parametrize("name", NAMES)
def test_six_heights_from_small_to_tall(setter: Typesetter, name: str, paper: Paper) -> None:
    """The name stands six times, each line a like step taller than the one before, from 8 mm on."""
    page = size_pages(setter, name, name, PageSettings(preset("us-3/4"), paper))[0]
    heights = [guide_heights(row)[GuideLine.TOP] for row in rows(page)]
    assert len(heights) == 6
    assert heights[0] == pytest.approx(8)
    assert heights[-1] <= 60
    ratios = [b / a for a, b in pairwise(heights)]
    assert min(ratios) > 1.02
    assert max(ratios) / min(ratios) < 1.13  # heights are told to the half millimetre
    assert {row.name for row in rows(page)} == {name}


@pytest.mark.parametrize("ruling", ["us-3/4", "de-6", "fr-3", "uk-5"])
def test_the_height_told_is_the_height_there_is(setter: Typesetter, ruling: str) -> None:
    """With each row stands its line height in millimetres, and the row has that height."""
    page = size_pages(setter, "Wren", "Wren", PageSettings(preset(ruling)))[0]
    texts = {tuple(letters_of(item)) for item in page.items if isinstance(item, Ink)}
    share = preset(ruling).x_height_mm / preset(ruling).line_height_mm
    for row in rows(page):
        height = number(round(guide_heights(row)[GuideLine.MID] / share, 3))
        assert tuple(piece.fragment for piece in setter.text(f"{height} mm", 1.9).pieces) in texts, height


@pytest.mark.parametrize("paper", list(Paper))
@pytest.mark.parametrize("name", NAMES)
def test_a_second_page_goes_on_to_forty_millimetres(setter: Typesetter, name: str, paper: Paper) -> None:
    """Up to three rows, none over 40 mm and the last taller than the first page; a short name reaches just 40 mm.

    Each differs from every other row of both pages by enough to be felt.
    """
    first, *more = size_pages(setter, name, name, PageSettings(preset("us-3/4"), paper))
    shown = [guide_heights(row)[GuideLine.TOP] for row in rows(first)]
    tallest = shown[-1]
    assert len(more) <= 1
    for page in more:
        heights = [guide_heights(row)[GuideLine.TOP] for row in rows(page)]
        assert 1 <= len(heights) <= 3
        assert tallest < heights[-1]
        assert heights == sorted(heights)
        both = sorted((*shown, *heights))
        assert all(b - a >= 0.99 or b / a >= 1.1 for a, b in pairwise(both))
        assert all(b / a > 1.08 for a, b in pairwise(one for one in both if one >= 20))
        assert heights[-1] <= 40.01
        assert page.outline is None
    if len(name) <= 4 and name.isascii() and tallest < 40:
        assert guide_heights(rows(more[0])[-1])[GuideLine.TOP] == pytest.approx(40)


def test_the_page_is_filled(setter: Typesetter) -> None:
    """The tallest line is as tall as the page allows for a short name; a long one stops where it meets the margin."""
    short, long = (rows(size_pages(setter, name, name, PageSettings(preset("us-3/4")))[0])[-1]
                   for name in ("Bo", "Christopherson"))
    assert guide_heights(short)[GuideLine.TOP] >= 30
    assert 10 <= guide_heights(long)[GuideLine.TOP] < guide_heights(short)[GuideLine.TOP]


def test_the_adult_is_told_that_these_are_settings_to_try(setter: Typesetter) -> None:
    """The page says what to do with it, and defers to the child's therapist, in its own language."""
    for language in ("en", "es"):
        words = wording(language)
        page = size_pages(setter, "Wren", "Wren", PageSettings(preset("us-3/4"), language=language))[0]
        said = [letters_of(ink) for item in page.items if isinstance(item, Furniture) for ink in item.items]
        assert [piece.fragment for piece in setter.text(words.say("page.sizes.try"), 1.9).pieces] in said
        assert sum(map(len, said)) >= len("".join((words.say("page.sizes.try") + words.say("page.sizes.note")).split()))
        assert "therap" in words.say("page.sizes.note").lower() or "terap" in words.say("page.sizes.note").lower()


def test_a_name_wider_than_the_page_is_told(setter: Typesetter) -> None:
    """Where even small lines have no room for it, the sentence says what there is."""
    with pytest.raises(DoesNotFit, match=r"fit\."):
        size_pages(setter, "W" * 60, "W", PageSettings(preset("us-3/4")))[0]
