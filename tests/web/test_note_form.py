"""The form of a day's writing: what stands in it, and what it is sent with."""

from __future__ import annotations

from datetime import date
from pathlib import Path

import pytest
from werkzeug.datastructures import MultiDict

from namewright.classbook import Classbook, ClassbookError, Seen
from namewright.classbook.stages import Stage
from namewright.settings import Support
from namewright.web.note_form import NoteForm, form_again, form_of, noted_on, read_form

DAY = date(2026, 9, 14).isoformat()


@pytest.fixture
def form(tmp_path: Path) -> NoteForm:
    """Return the form of Ana-Bo, of whom A and o were noted."""
    with Classbook.open(tmp_path / "class.db") as book:
        book.update_roster("Ana-Bo Quill\n")
        book.observe(1, DAY, Seen([0, 5], stage=Stage.SOME_LETTERS), who="RK")
        one = book.children()[0]
        return form_of(one, 2, noted_on(book, one, DAY), book.class_settings)


def test_a_form_has_what_was_noted(form: NoteForm) -> None:
    """Letters by their places, a gap where a part of the name begins, the class's level where none was noted."""
    assert [(tile.at, tile.letter, tile.on, tile.begins) for tile in form.tiles] == [
        (0, "A", True, False), (1, "n", False, False), (2, "a", False, False), (4, "B", False, True),
        (5, "o", True, False)]
    assert (form.done, form.support, form.stage, form.who) == (True, Support.FULL, Stage.SOME_LETTERS, "RK")


@pytest.mark.parametrize(("fields", "letters"), [
    ([("letter", "0"), ("letter", "2")], (0, 2)), ([("all", "1")], (0, 1, 2, 4, 5)), ([("none", "1")], ()), ([], None),
    ([("letter", "x")], None),
])
def test_letters_that_were_sent(fields: list[tuple[str, str]], letters: tuple[int, ...] | None) -> None:
    assert read_form(MultiDict(fields), "Ana-Bo").letters == letters


def test_a_form_that_is_refused_comes_back_as_it_was_sent(form: NoteForm) -> None:
    """Also with the notes that it was opened with, so that nothing that came meanwhile is put aside by it."""
    sent = read_form(MultiDict([("letter", "1"), ("of", "7"), ("note", "proud"), ("support", "light")]), form.name)
    again = form_again(form, sent, ClassbookError("web.notes.nothing"))
    assert (again.on, again.words, again.support, again.noted.notes) == ({1}, "proud", Support.LIGHT, (7,))
    assert again.problem is not None
