"""A child's own pages, and what of them is set down beside."""

from __future__ import annotations

import pytest

from namewright.lines.ink import Ink
from namewright.making.account import Account, NothingNoted
from namewright.making.choices import read_choices
from namewright.making.make import Making
from namewright.making.own_pages import OwnPages
from namewright.making.request import FOR_EACH_CHILD, OF_NOTES, TO_KNOW, Kind, Request, all_listed
from namewright.pages.page import leaves
from namewright.pages.paper import CardSize
from namewright.pages.typesetter import Typesetter
from namewright.practice.ordering import order_class
from namewright.roster.parsing import read_roster

ROSTER = read_roster("Ava Quill\nBo Lindle\nAva Reed\n")
MEMBERS = all_listed(order_class(ROSTER.children))


def own(setter: Typesetter, **chosen: str) -> OwnPages:
    return OwnPages(setter, Request((Kind.SHEETS,), MEMBERS, read_choices(chosen), roster=ROSTER), Account())


@pytest.fixture(scope="module")
def setter() -> Typesetter:
    return Typesetter()


@pytest.mark.parametrize("kind", Kind)
def test_each_kind_of_a_childs_own_has_a_maker(setter: Typesetter, kind: Kind) -> None:
    """A page to know a name by and the tiles of a class are made elsewhere."""
    there = own(setter).maker(kind) is not None
    assert there == (kind in FOR_EACH_CHILD and kind not in TO_KNOW and kind is not Kind.TILES)


@pytest.mark.parametrize("kind", sorted(OF_NOTES))
def test_of_what_was_not_noted_there_is_no_page(setter: Typesetter, kind: Kind) -> None:
    if make := own(setter).maker(kind):
        with pytest.raises(NothingNoted):
            make(MEMBERS[0])


def test_a_sheet_in_a_sleeve_says_once_that_its_lines_are_taller(setter: Typesetter) -> None:
    pages = own(setter, sleeve="on", line_height="10")
    make = pages.maker(Kind.SHEETS)
    assert make
    assert [len(make(one)) for one in MEMBERS] == [1, 1, 1]
    assert [told.key for told in pages.account.notes] == ["account.sleeve_taller"]


def test_cards_that_cover_their_sheet_are_told_of_instead(setter: Typesetter) -> None:
    """Nothing is cut away, so nothing stands on the card; it is said where a list tells them apart."""
    roster = read_roster("Ava Quill\nBo Lindle\nAva Reed\n")
    making = Making(Request((Kind.CARDS,), all_listed(order_class(roster.children)), read_choices({"paper": "a4"}),
                            roster=roster, card=CardSize.A6, fill=True), setter)
    pages = list(making.pages())
    assert not any(item.spelled and "Ava" in item.spelled.words and "." in item.spelled.words
                   for page in pages for item in leaves(page.items) if isinstance(item, Ink))
    assert [(one.child.label, one.told.key) for one in making.account.remarks] == [
        ("Ava Q.", "account.cards_alike"), ("Ava R.", "account.cards_alike")]
