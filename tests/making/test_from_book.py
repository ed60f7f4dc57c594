"""From a class's file to a request: a child's own over the list's over the class's. All names are invented."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest

from namewright.classbook import Classbook, Seen
from namewright.making.from_book import holds_for_child, holds_for_class, members_of, own_choices, roster_of
from namewright.practice.ordering import Order, order_class
from namewright.settings import Hand, NamePart, Support

LIST = "name,hand,support,letters,beats,line height\nMira Quill,left,light,a=two-storey,Mi-ra,\nTilo Reed,,,zz=no,,24\n"


@pytest.fixture
def book(tmp_path: Path) -> Iterator[Classbook]:
    with Classbook.open(tmp_path / "class.db") as opened:
        opened.update_roster(LIST)
        yield opened


def test_what_is_set_for_a_child_goes_before_what_the_list_says(book: Classbook) -> None:
    """Each choice by itself: the hand of the list stays where only the level was set."""
    book.set_settings(1, {"support": "independent", "line_height": "20"})
    mira = book.child(1)
    own = own_choices(mira)
    assert (own.support, own.hand, own.beats, own.tuning.line_height) == (Support.INDEPENDENT, Hand.LEFT, "Mi-ra", 20.0)
    assert str(own.letters) == "a=two-storey"


def test_the_class_holds_where_a_child_has_nothing(book: Classbook) -> None:
    """And the usual where the class has nothing either."""
    settings = {"support": "partial", "hand": "right", "paper": "a4"}
    mira, tilo = (holds_for_child(book.child(at), settings) for at in (1, 2))
    assert (mira.support, mira.hand, mira.paper) == (Support.LIGHT, Hand.LEFT, "a4")
    assert (tilo.support, tilo.hand, tilo.ruling.line_height_mm) == (Support.PARTIAL, Hand.RIGHT, 24.0)
    assert (holds_for_class({}).support, holds_for_class({}).paper) == (Support.FULL, "letter")


def test_words_that_cannot_be_read_choose_nothing_and_are_told(book: Classbook) -> None:
    """The child is a member like any other, with what is wrong beside it."""
    placed = order_class([one.child for one in book.children()], Order.ROSTER)
    mira, tilo = members_of(book, book.children(), placed)
    assert mira.unread is None
    assert tilo.unread is not None
    assert str(tilo.own.letters) == ""


def test_members_stand_in_the_order_asked_for_with_their_notes(book: Classbook) -> None:
    """Notes only where they are asked for."""
    book.observe(2, "2026-09-14", Seen([0]))
    placed = order_class([one.child for one in book.children()], Order.ROSTER)[::-1]
    assert [one.placed.child.given for one in members_of(book, book.children(), placed)] == ["Tilo", "Mira"]
    assert [len(one.notes) for one in members_of(book, book.children(), placed, notes=True)] == [1, 0]
    assert [len(one.notes) for one in members_of(book, book.children(), placed)] == [0, 0]


def test_the_list_is_read_for_the_part_that_the_class_practises(book: Classbook) -> None:
    """Family names, where these are practised."""
    book.set_class_setting("practise", NamePart.FAMILY)
    assert [child.practice for child in roster_of(book).children] == ["Quill", "Reed"]
