"""Who is who when a new roster comes. All names are invented."""

from __future__ import annotations

import pytest

from kept_class import CLASS, names
from namewright.classbook import Classbook
from namewright.classbook.enrol import Known, enrol
from namewright.roster.parsing import read_roster
from namewright.settings import Hand


def _with(book: Classbook, text: str) -> tuple[object, ...]:
    book.update_roster(text)
    return book.children()


def test_a_child_who_stays_keeps_id_and_settings_when_the_list_is_shuffled(book: Classbook) -> None:
    """Whatever the order of the new list, a known child is the same child; a new one has an id never used."""
    before = names(book)
    book.set_settings(before["Tilo"], {"support": "light"})
    update = book.update_roster("Suri Vale\nAva Moss\nTilo Reed\nMira Quill\nAva Finch\n")
    after = names(book)
    assert {label: after[label] for label in before} == before
    assert update.joined == (after["Suri"],)
    assert after["Suri"] > max(before.values())
    assert [one.child.given for one in book.children()] == ["Suri", "Ava", "Tilo", "Mira", "Ava"]
    assert [one.child.family for one in book.children()] == ["Vale", "Moss", "Reed", "Quill", "Finch"]
    assert book.settings_of(before["Tilo"]) == {"support": "light"}


def test_a_child_who_is_missing_has_left_and_comes_back_as_the_same(book: Classbook) -> None:
    """Leaving deletes nothing; a child who returns has the settings and notes of before."""
    tilo = names(book)["Tilo"]
    book.set_settings(tilo, {"hand": "left"})
    assert book.update_roster("Mira Quill\nAva Finch\nAva Moss\n").left == (tilo,)
    assert tilo not in names(book).values()
    assert book.child(tilo).left
    update = book.update_roster(CLASS)
    assert update.returned == (tilo,)
    assert book.child(tilo).child.hand is Hand.LEFT
    assert book.child(tilo).left is None


def test_a_family_name_added_later_is_the_same_child(book: Classbook) -> None:
    """A first name alone and the same first name with a family name are one child, by the label."""
    book.update_roster("Wren\n")
    wren = book.children()[0].id
    assert book.update_roster("Wren Hollis\n").stayed == (wren,)


def test_another_child_of_the_same_first_name_is_another_child(book: Classbook) -> None:
    """Where family names contradict each other the label decides nothing: no child inherits another's notes."""
    mira = names(book)["Mira"]
    update = book.update_roster("Mira Zell\n")
    assert mira in update.left
    assert update.joined
    assert update.joined[0] != mira


def test_children_alike_in_every_name_are_kept_apart_and_a_guess_is_said(book: Classbook) -> None:
    """Two children of one name are two; when one goes, which of them stayed is a guess and said to be one."""
    first, second = (one.id for one in _with(book, "Ivo\nIvo\n"))
    assert first != second
    assert book.update_roster("\nIvo\nIvo\n").stayed == (first, second)
    update = book.update_roster("Ivo\n")
    assert (update.stayed, update.left) == ((first,), (second,))
    assert update.notes[0]["name"] == "Ivo"


@pytest.mark.parametrize(("known", "text", "same", "ids", "why"), [
    ([Known(4, "Mira", "Quill", "Mira", "Mira", True)], "mira QUILL", {}, {1: 4}, "letter case is no other child"),
    ([Known(4, "Mira", "", "Mira", "Mira", True)], "Mira Quill", {}, {1: 4}, "by the label, a family name joins"),
    ([Known(4, "Mira", "Vost", "Mira", "Mira", True)], "Mira Quill", {}, {}, "another family, another child"),
    ([Known(4, "Mira", "", "Mira", "Mira", False)], "Mira Quill", {}, {}, "who left comes back by all names only"),
    ([Known(4, "Mira", "Quill", "Mira", "Mira", False)], "Mira Quill", {}, {1: 4}, "and does come back by these"),
    ([Known(4, "Ivo", "", "Ivo", "Ivo", False), Known(7, "Ivo", "", "Ivo", "Ivo", True)], "Ivo", {}, {1: 7},
     "who is here goes before who left"),
    ([Known(4, "Tilo", "Reed", "Tilo", "Tilo", True)], "Wren", {1: 4}, {1: 4}, "what the caller knows goes first"),
])
def test_whom_a_line_is_given_to(known: list[Known], text: str, same: dict[int, int], ids: dict[int, int],
                                 why: str) -> None:
    """In the order of the module's header: as told, all names, then the label where families agree."""
    assert enrol(read_roster(text).children, known, same).ids == ids, why
