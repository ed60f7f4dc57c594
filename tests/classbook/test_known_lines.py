"""Lines that were answered for once are asked about no more. All names are invented."""

from __future__ import annotations

import pytest

from namewright.classbook import Classbook
from namewright.classbook.known_lines import KNOWN_LINE
from namewright.classbook.rosters import Answers, NewList
from namewright.roster.children import Outcome, RosterError

REST = "1. Mira Quill\n2. Tilo Reed\n3. Wenna Praske\n4. Katla Pruner\n"
SPLIT = f"{REST}Bo Lindle\nAna Lindle\n"


def _told(book: Classbook) -> list[str]:
    return [f"{one.child.given} {one.child.family}".strip() for one in book.children()]


@pytest.mark.parametrize("line", ["5. Lindle, Bo & Ana", "12) Lindle, Ana & Bo", "Bo & Ana Lindle", "Bo / Ana Lindle",
                                  "Bo Lindle & Ana Lindle", "* Bo and Ana"])
@pytest.mark.parametrize("whole", [True, False])
def test_two_children_whom_the_class_has_are_two(book: Classbook, line: str, whole: bool) -> None:
    """Whatever the sign and the order, month after month, in a list that is kept whole as well."""
    book.update_roster(SPLIT)
    ids = {one.id for one in book.children()}
    for more in ("", "Sefa Ilar\n"):
        update = book.update_roster(NewList(f"{REST}{line}\n{more}", whole=whole))
        assert ids <= {one.id for one in book.children()}
        assert {"Bo Lindle", "Ana Lindle"} <= set(_told(book))
        assert update.recognised == ()
        assert not [one for one in update.roster.lines if one.outcome is Outcome.LEFT_OUT]
    book.set_class_setting("practise", "family")
    assert ids <= {one.id for one in book.children()}


def test_one_child_of_two_given_names_is_one(book: Classbook) -> None:
    """Who was said to be one child stays one."""
    book.update_roster(f"{REST}Bo-Ana Lindle\n")
    child = book.children()[-1].id
    update = book.update_roster(f"{REST}5. Lindle, Bo & Ana\n")
    assert (update.joined, update.left, book.children()[-1].id) == ((), (), child)
    (note,) = update.notes
    assert (note.key, note["typed"]) == (KNOWN_LINE, "Lindle, Bo & Ana")


def test_a_line_unlike_the_others_that_is_a_child_of_the_class(book: Classbook) -> None:
    """A word alone, or a name that no rule spells in Latin letters, was said to be a child: it still is."""
    book.update_roster(NewList(f"{REST}Xiaoming Wang\nName: Quorrel\n", answers=Answers(also={5: "王小明"})))
    ids = {one.id for one in book.children()}
    update = book.update_roster(f"{REST}5. 王小明\n6. Quorrel\n")
    assert (update.joined, update.left) == ((), ())
    assert {one.id for one in book.children()} == ids
    assert "Xiaoming Wang" in _told(book)


@pytest.mark.parametrize("line", ["5. Lindle, Bo & Ivo", "Bo & Vexil Lindle ~~", "~~Bo Lindle~~", "Room 9"])
def test_what_the_class_does_not_know_is_still_asked(book: Classbook, line: str) -> None:
    """One of two is no answer for both, and a name that is struck off is none that is there."""
    book.update_roster(SPLIT)
    update = book.update_roster(f"{REST}{line}\n")
    assert KNOWN_LINE not in {note.key for one in update.roster.lines for note in one.notes}


def test_a_list_of_nothing_but_such_lines(book: Classbook) -> None:
    """Is read where all of them are known, and refused as before where none is."""
    book.update_roster("Bo Lindle\nAna Lindle\n")
    assert book.update_roster("Lindle, Bo & Ana\n").left == ()
    with pytest.raises(RosterError):
        book.update_roster("Vexil, Ivo & Oona\n")


def test_where_a_line_stood_is_told(book: Classbook) -> None:
    """A later line is found where it was in what was pasted."""
    book.update_roster(SPLIT)
    update = book.update_roster("Lindle, Bo & Ana\n" + REST)
    assert [line.source_line for line in update.roster.lines] == [1, 1, 2, 3, 4, 5]
