"""What pages call a child, for the adult and for itself, with names that our letters cannot write."""

from __future__ import annotations

import pytest

from namewright.classbook.growing import growth_of
from namewright.making.choices import Choices
from namewright.making.naming import label_of, owner_of, with_label, with_letters
from namewright.making.request import Kind, Member, Request, all_listed
from namewright.pages.typesetter import Typesetter
from namewright.practice.ordering import completed, order_class
from namewright.roster.parsing import read_roster

ROSTER = read_roster("Ava Quill\nAva Reed\n李雷\n")
REQUEST = Request((Kind.SHEETS,), all_listed(completed(order_class(ROSTER.children))), Choices(), roster=ROSTER)


@pytest.fixture(scope="module")
def setter() -> Typesetter:
    return Typesetter()


def members() -> list[Member]:
    return sorted(REQUEST.members, key=lambda one: one.placed.child.line)


def test_the_adult_reads_a_label_or_the_line_of_the_list(setter: Typesetter) -> None:
    labels = [label_of(setter, REQUEST, one) for one in members()]
    assert labels[:2] == ["Ava Q.", "Ava R."]
    assert "3" in labels[2]
    assert [with_label(setter, REQUEST, one).placed.child.label for one in members()] == labels


def test_the_child_reads_its_own_name_alone(setter: Typesetter) -> None:
    assert [owner_of(setter, one) for one in members()[:2]] == ["Ava", "Ava"]


def test_no_beats_are_shown_of_a_name_without_a_letter(setter: Typesetter) -> None:
    assert with_label(setter, REQUEST, members()[0]).placed.beats
    assert not with_label(setter, REQUEST, members()[2]).placed.beats


def test_what_was_noted_is_shown_in_our_letters(setter: Typesetter) -> None:
    shown = with_letters(setter, growth_of("Ксю", "Ксю", ()), "Ksyu")
    assert shown.label == "Ksyu"
    assert not [track.letter for track in shown.tracks if not track.letter.isascii()]
