"""What became of a request, as data."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

from namewright.making.account import Account, account_in, account_of_order
from namewright.making.request import Kind, listed
from namewright.message import message
from namewright.pages.typesetter import Typesetter
from namewright.practice.ordering import order_class
from namewright.roster.children import Child
from namewright.schoolfont.reading import load_font
from namewright.schoolfont.shaping import Lettering
from schoolfont.fontmaking import font_bytes, font_file

PLACED = order_class([Child(name, name, name, "", line) for line, name in enumerate(("Bo", "李", "Ada", "Боян"), 1)])


def test_who_cannot_be_written_has_no_place_in_an_order() -> None:
    """Each is there with its reason, and of no kind; the others are not in the account."""
    account = account_of_order(PLACED)
    assert [one.child.practice for one in account.not_made] == ["李", "Боян"]
    assert {one.kind for one in account.not_made} == {None}
    assert "letters.missing" in str(account.not_made[0].cause) or "no_place" in str(account.not_made[0].cause)
    assert account_of_order(PLACED[:2]).not_made == []


def test_children_of_a_kind_stay_in_their_order() -> None:
    """As they were made; another kind is no matter."""
    bo, ada = (listed(one) for one in PLACED[:2])
    account = Account(made=[(Kind.SHEETS, ada), (Kind.CARDS, bo), (Kind.SHEETS, bo)])
    assert account.of(Kind.SHEETS) == [ada, bo]
    assert account.of(Kind.TILES) == []


def test_only_of_a_font_with_several_forms_one_is_told(tmp_path: Path) -> None:
    """Nobody chose one of these; a plain font, or none, has nothing to tell."""
    plain = Lettering(load_font(font_file(tmp_path, font_bytes())))
    several = Lettering(replace(plain.font, others=("Bold",)))
    told = [account_in(Typesetter(school_font=font)).notes for font in (None, plain, several)]
    assert [bool(notes) for notes in told] == [False, False, True]


def test_what_holds_for_all_pages_is_told_once() -> None:
    account = Account()
    for key in ("a.one", "a.one", "a.two", "a.one"):
        account.note(message(key))
    assert account.notes == [message("a.one"), message("a.two")]
