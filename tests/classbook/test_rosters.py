"""A roster taken into the class's file and its children out of it."""

from __future__ import annotations

from pathlib import Path

import pytest

from kept_class import CLASS, names
from namewright.classbook import Classbook, ClassbookError
from namewright.classbook.rosters import NewList
from namewright.making.from_book import holds_for_child
from namewright.roster.children import RosterError
from namewright.settings import Hand, NamePart, Support
from namewright.tuning import Tuning


def test_children_stand_in_roster_order_with_what_the_roster_says(book: Classbook) -> None:
    """A child read from the roster comes out as the roster reader read them."""
    book.update_roster("name,hand,support,line height\nMira Quill,left,light,20 mm\n")
    mira = book.children()[0]
    assert (mira.child.practice, mira.child.family, mira.child.hand) == ("Mira", "Quill", Hand.LEFT)
    assert (mira.child.support, mira.child.line_height_mm, mira.own.line_height) == (Support.LIGHT, 20.0, 20.0)


def test_a_mended_line_is_the_same_child(book: Classbook) -> None:
    """Who is said to stand on a line stays the same child, whatever the name becomes."""
    tilo = names(book)["Tilo"]
    update = book.update_roster(NewList(CLASS.replace("Tilo Reed", "Thilo Reede"), same={2: tilo}))
    assert not update.joined
    assert not update.left
    assert book.child(tilo).child.practice == "Thilo"
    assert book.roster_text().splitlines()[1] == "Thilo Reede"


def test_a_list_that_is_another_by_now_is_not_written_over(book: Classbook) -> None:
    """What was shown must still stand there: a list changed in another window is not written over."""
    book.update_roster("Suri Vale\n" + CLASS)
    with pytest.raises(ClassbookError, match=r"classbook\.\w+_meanwhile"):
        book.update_roster(NewList(CLASS, after_roster=1))
    assert book.roster_text().startswith("Suri")


def test_a_list_without_a_child_changes_nothing(book: Classbook) -> None:
    """Pasting nothing, or only a header, is refused and everyone stays."""
    before = names(book)
    for text in ("", "\n\n", "name\n"):
        with pytest.raises(RosterError):
            book.update_roster(text)
    assert names(book) == before
    assert book.roster_text() == CLASS


def test_the_same_list_twice_is_one_list(book: Classbook) -> None:
    """A form sent twice adds neither children nor a second roster."""
    number = book.roster_id()
    update = book.update_roster(CLASS)
    assert (update.joined, update.left, len(update.stayed)) == ((), (), 4)
    assert book.roster_id() == number


def test_the_part_to_practise_follows_class_then_child(book: Classbook) -> None:
    """The class's part of the name holds for all, a child's own for that child; everyone stays the same child."""
    before = [one.id for one in book.children()]
    book.set_class_setting("practise", NamePart.BOTH)
    book.set_settings(before[1], {"practise": "family"})
    assert [one.child.practice for one in book.children()] == ["Mira Quill", "Reed", "Ava Finch", "Ava Moss"]
    assert [one.id for one in book.children()] == before
    book.undo(None)
    assert [one.child.practice for one in book.children()] == ["Mira", "Reed", "Ava", "Ava"]


def test_tuning_is_the_childs_own_over_the_classs(book: Classbook) -> None:
    """A knob set for the child wins, else the class's holds, else the ruling's (None)."""
    book.set_class_settings({"line_height": "20", "rows": "3"})
    book.set_settings(1, {"line_height": "1 in"})
    one, other = book.child(1), book.child(2)
    assert (one.own, other.own) == (Tuning(line_height=25.4), Tuning())
    tuning, others = (holds_for_child(each, book.class_settings).tuning for each in (one, other))
    assert (tuning.line_height, tuning.rows, tuning.midline) == (25.4, 3, None)
    assert others.line_height == 20.0


def test_who_has_a_namesake_is_told(book: Classbook) -> None:
    """Of those who are here, by the name that each practises: what a child practises of its own counts."""
    book.update_roster("Ava Quill\nBo Lindle\nAva Reed\n")
    assert [one.namesake for one in book.children()] == [True, False, True]
    first = book.children()[0].id
    book.set_settings(first, {"practise": "both"})
    assert not any(one.namesake for one in book.children())
    book.set_settings(first, {"practise": ""})
    book.update_roster("Ava Quill\nBo Lindle\n")
    assert not any(one.namesake for one in book.children(left=True))


def test_the_language_of_the_class_is_followed_by_the_case_of_names(tmp_path: Path) -> None:
    """In what is kept the case is right, so that it is read the same again, whatever part is practised."""
    with Classbook.open(tmp_path / "class.db") as book:
        book.set_class_settings({"names_in": "tr"})
        book.update_roster("SAYIN IRMAK\nMIRA VOST")
        assert [one.child.practice for one in book.children()] == ["Sayın", "Mıra"]
        book.set_class_settings({"practise": "family"})
        assert [one.child.practice for one in book.children()] == ["Irmak", "Vost"]
