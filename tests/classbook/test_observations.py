"""Notes of what was seen: kept as they were made, once, and taken back without being lost."""

from __future__ import annotations

import pytest

from kept_class import CLASS, names
from namewright.classbook import Classbook, ClassbookError, Seen
from namewright.classbook.rosters import NewList
from namewright.classbook.stages import Stage
from namewright.settings import Support


def test_a_note_keeps_the_name_it_was_made_about(book: Classbook) -> None:
    """Positions mean nothing without the name of that day, so a name changed later leaves old notes as they were."""
    book.observe(1, "2026-09-10", Seen([3, 0, 0], support=Support.PARTIAL, stage=Stage.SOME_LETTERS, note=" proud "))
    book.update_roster(NewList(CLASS.replace("Mira Quill", "Miranda Quill"), same={1: 1}))
    note, = book.observations(1)
    assert (note.name, note.letters, note.note) == ("Mira", (0, 3), "proud")
    assert (note.support, note.stage) == (Support.PARTIAL, Stage.SOME_LETTERS)


def test_not_looked_at_is_not_none_formed(book: Classbook) -> None:
    """Letters left out are unknown; an empty list says that none was formed yet."""
    book.observe(1, "2026-09-10", Seen(stage=Stage.MARKS))
    book.observe(1, "2026-09-11", Seen([]))
    assert [note.letters for note in book.observations(1)] == [None, ()]


def test_a_note_sent_twice_is_kept_once(book: Classbook) -> None:
    """The same token gives back the first note, so a page reloaded in mid-save doubles nothing."""
    first = book.observe(1, "2026-09-10", Seen([0]), token="form-7")
    assert book.observe(1, "2026-09-10", Seen([0]), token="form-7") == first
    assert book.observe(1, "2026-09-10", Seen([0])) != first
    assert len(book.observations(1)) == 2


def test_a_note_taken_back_is_shown_no_more(book: Classbook) -> None:
    """Striking a note is safe to repeat; a note that is not there is said."""
    note = book.observe(1, "2026-09-10", Seen([0]))
    book.strike(note.id)
    book.strike(note.id)
    assert not book.observations(1)
    with pytest.raises(ClassbookError, match=r"classbook\.no_note"):
        book.strike(999)


def test_a_note_is_taken_back_once(book: Classbook) -> None:
    """Taking it back again changes nothing, not even when it was."""
    note = book.observe(1, "2026-09-10", Seen([0]))
    for moment in ("2026-09-11T08:00:00", "2026-09-12T08:00:00"):
        book.strike(note.id, when=moment)
    assert book._db.execute("SELECT struck_at FROM observations").fetchall() == [("2026-09-11T08:00:00",)]


def test_bad_notes_are_refused_in_a_sentence(book: Classbook) -> None:
    """A place without a letter, a day that is none, nothing to note, a child who is not there."""
    book.set_class_setting("practise", "both")
    for bad in (lambda: book.observe(1, "2026-09-10", Seen([4])),  # the space in “Mira Quill”
                lambda: book.observe(1, "2026-09-10", Seen([99])), lambda: book.observe(1, "2026-02-30", Seen([0])),
                lambda: book.observe(1, "2026-09-10", Seen()), lambda: book.observe(99, "2026-09-10", Seen([0])),
                lambda: book.observe(1, "2026-09-10", Seen(note="x" * 501))):
        with pytest.raises(ClassbookError):
            bad()
    assert not book.observations(1)


def test_a_child_who_left_keeps_notes_and_may_have_more(book: Classbook) -> None:
    """A record for a child who left is kept like any other."""
    tilo = names(book)["Tilo"]
    book.update_roster("Mira Quill\n")
    book.observe(tilo, "2026-09-10", Seen([0]))
    assert len(book.observations(tilo)) == 1


def test_a_note_stands_in_place_of_those_it_was_made_from(book: Classbook) -> None:
    """They are shown no more; what was noted meanwhile, on another day or of another child, stays as it is."""
    first, other_day = book.observe(1, "2026-09-10", Seen([0, 1])), book.observe(1, "2026-09-11", Seen([0]))
    other_child, meanwhile = book.observe(2, "2026-09-10", Seen([0])), book.observe(1, "2026-09-10", Seen([2]))
    for _ in range(2):
        new = book.observe(1, "2026-09-10", Seen([1]), token="form-8",
                           in_place_of=[first.id, other_day.id, other_child.id])
    assert [note.id for note in book.observations(1)] == [meanwhile.id, new.id, other_day.id]
    assert [note.id for note in book.observations(2)] == [other_child.id]
