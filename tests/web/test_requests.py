"""Requests as the screens put them together. All names are invented."""

from __future__ import annotations

import pytest

from namewright.classbook.records import BookChild
from namewright.letters.alphabet import MissingLetters
from namewright.making.request import Kind
from namewright.pages.paper import CardSize
from namewright.pages.typesetter import Typesetter
from namewright.roster.children import Child
from namewright.settings import Support
from namewright.tuning import Tuning
from namewright.web.requests import CannotDraw, drawn, of_child, of_visitor

MIRA = Child("Mira", "Mira", "Mira", "", 1)


def test_a_childs_own_settings_go_before_the_classs() -> None:
    """On any kind of page; the class's hold for all else."""
    one = BookChild(1, MIRA, Tuning(line_height=24.0), {"support": "light"}, "2026-09-01T08:00:00")
    one = BookChild(1, Child("Mira", "Mira", "Mira", "", 1, support=Support.LIGHT), one.own, one.settings, one.joined)
    request = of_child(Kind.SHEETS, one, {"support": "full", "paper": "a4", "line_height": "20"})
    holds = request.settings_of(request.members[0])
    assert (holds.support, holds.paper, holds.ruling.line_height_mm) == (Support.LIGHT, "a4", 24.0)


@pytest.mark.parametrize("of", [lambda size: of_visitor(Kind.CARDS, MIRA, {}, size),
                                lambda size: of_child(Kind.CARDS, BookChild(1, MIRA, Tuning(), {}, ""), {}, size)])
def test_a_card_has_its_size_or_fills_a_sheet(of: object) -> None:
    """For a child of the class and for a visitor."""
    one, sheet = of(CardSize.INDEX_3X5), of(None)  # type: ignore[operator]
    assert (one.card, one.fill) == (CardSize.INDEX_3X5, False)
    assert sheet.fill


def test_what_stands_in_the_way_is_told(setter: Typesetter) -> None:
    """The cause itself goes along, with its message."""
    request = of_visitor(Kind.SHEETS, Child("Марко", "Марко", "Марко", "", 1), {})
    with pytest.raises(CannotDraw) as caught:
        drawn(setter, request)
    assert isinstance(caught.value.cause, MissingLetters)
    assert caught.value.message == caught.value.cause.message
    assert len(drawn(setter, of_visitor(Kind.SHEETS, MIRA, {}))) == 1
