"""What is asked of a class and changed in it, as one who opened it sees it."""

from __future__ import annotations

import pytest

from namewright.classbook import Classbook, ClassbookError, Seen


def test_a_trial_changes_nothing(book: Classbook) -> None:
    """Who would join, stay and leave is said, and the class is as it was."""
    before, first = (book.roster_id(), book.children(left=True)), book.child(1).child
    update, called = book.trial(f"{first.given} {first.family}\nWenna Praske", book.part)
    assert sorted(called.values()) == sorted(["Wenna", *(one.child.label for one in before[1])])
    assert (len(update.joined), update.stayed, update.left) == (1, (1,), (2, 3, 4))
    assert (book.roster_id(), book.children(left=True)) == before


def test_nobody_is_asked_for_who_is_not_there(book: Classbook) -> None:
    """Nothing is set for, seated with, or noted of a child that the class never had."""
    for asked in (lambda: book.child(9), lambda: book.set_settings(9, {"rows": "2"}), lambda: book.seat(1, 9, True),
                  lambda: book.observe(9, "2026-09-14", Seen([0]))):
        with pytest.raises(ClassbookError, match=r"classbook\.no_child"):
            asked()
    with pytest.raises(ClassbookError, match=r"classbook\.one_seat"):
        book.seat(1, 1, True)


def test_another_part_of_the_name_is_practised_by_everyone_at_once(book: Classbook) -> None:
    """The list is read again where that is set, and again where it is taken back."""
    given = [one.child.practice for one in book.children()]
    book.set_class_setting("practise", "family")
    assert [one.child.practice for one in book.children()] == [one.child.family or one.child.given
                                                                for one in book.children()]
    book.undo(None)
    assert [one.child.practice for one in book.children()] == given
