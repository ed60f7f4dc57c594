"""The list before the newest comes back with one call: who was on it, their settings and notes, tables and numbers."""

from __future__ import annotations

from datetime import datetime, timedelta
from pathlib import Path

import pytest

from namewright.classbook import Classbook, ClassbookError, Seen
from namewright.classbook.list_before import MARK, on_kept_lines
from namewright.classbook.rosters import NewList


@pytest.fixture
def place(tmp_path: Path) -> Path:
    """A class of three with what a term leaves of them."""
    with Classbook.open(tmp_path / "class.db") as book:
        book.save_list(NewList("Mira Quill\nTilo Reed\nBo Lindle\n"), {"practise": "given", "language": "es"})
        book.set_settings(1, {"line_height": "30"})
        book.observe(2, "2026-09-14", Seen([0], note="holds the pencil well"))
        book.keep_groups({1: 1, 2: 1, 3: 2})
    return tmp_path / "class.db"


def test_a_saved_list_is_taken_back_whole(place: Path) -> None:
    """Names, who is here, settings, notes, tables, and the part that is practised are as before."""
    with Classbook.open(place) as book:
        before = book.roster_text(), book.children(left=True), book.groups(), dict(book.class_settings)
        new = NewList("Zorah Pell\nMira Quillon\nWenna Praske", same={2: 1}, after_roster=1)
        book.save_list(new, {"practise": "family"})
        assert [one.child.practice for one in book.children()] == ["Pell", "Quillon", "Praske"]
        assert book.roster_saved() is not None
        book.undo_roster(after_roster=book.roster_id())
        assert (book.roster_text(), book.children(left=True), book.groups(), dict(book.class_settings)) == before
        assert [seen.note for seen in book.observations(2)] == ["holds the pencil well"]
        assert book.roster_id() not in (1, 2), "an open page has to see that the list is another"
        draft = book.draft()
        assert draft is not None
        assert draft.text.splitlines() == ["Zorah Pell", "Mira Quillon", "Wenna Praske"], "the list is not lost by it"
        assert book.roster_saved() is None


def test_the_first_list_is_taken_back_to_none(tmp_path: Path) -> None:
    """A class that was begun with it is empty again, and the list is a draft."""
    with Classbook.open(tmp_path / "class.db") as book:
        book.save_list(NewList("Mira Quill"), {"practise": "given"})
        book.undo_roster(after_roster=1)
        assert (book.children(left=True), book.roster_text()) == ((), "")
        draft = book.draft()
        assert draft is not None
        assert draft.text.splitlines() == ["Mira Quill"]


def test_what_stood_beside_the_names_is_not_kept_for_a_day(tmp_path: Path) -> None:
    """No byte of it is in the file once a list was saved, unless somebody asked for the whole list."""
    text = "Hi Rosa,\nMira Quill (Peanuts)\nTilo Reed, Asthma\nBo Lindle 555-0123\n\nThanks,\nKaren Hobb"
    for whole in (False, True):
        with Classbook.open(tmp_path / f"{whole}.db") as book:
            book.save_list(NewList(text, whole=whole), {})
            book.update_roster(NewList(text, whole=whole), for_a_day=True)
            assert book.roster_saved()
        there = [word in (tmp_path / f"{whole}.db").read_bytes() for word in (b"Peanuts", b"Asthma", b"0123", b"Karen")]
        assert there == [whole] * 4


def test_what_came_meanwhile_stays(place: Path) -> None:
    """A child who came with the list and has a note has left after it; one of whom nothing is kept is gone."""
    with Classbook.open(place) as book:
        book.save_list(NewList("Mira Quill\nTilo Reed\nBo Lindle\nWenna Praske\nZorah Pell"), {})
        book.observe(4, "2026-09-15", Seen([0], note="began well"))
        book.set_settings(3, {"hand": "left"})
        book.undo_roster(after_roster=2)
        assert [one.child.label for one in book.children()] == ["Mira", "Tilo", "Bo"]
        assert [one.child.label for one in book.children(left=True) if one.left] == ["Wenna"]
        assert book.settings_of(3) == {"hand": "left"}
        assert [seen.note for seen in book.observations(4)] == ["began well"]


def test_a_language_that_was_set_meanwhile_stays(place: Path) -> None:
    """It goes back where the list brought it."""
    with Classbook.open(place) as book:
        book.save_list(NewList("Mira Quill\nTilo Reed"), {"language": "fr"})
        book.undo_roster(after_roster=book.roster_id())
        assert book.class_settings["language"] == "es"
        book.save_list(NewList("Mira Quill\nTilo Reed"), {})
        book.set_class_settings({"language": "de", "title": "Room 4"})
        book.undo_roster(after_roster=book.roster_id())
        assert dict(book.class_settings) == {"practise": "given", "language": "de", "title": "Room 4"}


def test_a_list_changed_since_is_not_taken_back(place: Path) -> None:
    """An older page's press does nothing, and says so."""
    with Classbook.open(place) as book:
        book.save_list(NewList("Mira Quill\nTilo Reed"), {})
        book.save_list(NewList("Mira Quill\nTilo Reed\nBo Lindle\nWenna Praske"), {})
        with pytest.raises(ClassbookError):
            book.undo_roster(after_roster=2)
        book.update_roster("Mira Quill")
        assert book.roster_saved() is None
        with pytest.raises(ClassbookError):
            book.undo_roster(after_roster=book.roster_id())


def test_it_lives_for_a_day_and_no_erasing(place: Path) -> None:
    """Names of a list of before are in no byte of the file a day later, nor once anybody is erased."""
    old = datetime.now().astimezone() - timedelta(days=1, minutes=1)
    with Classbook.open(place) as book:
        book.save_list(NewList("Mira Quill\nTilo Reed\nZephyrine Lindle"), {})
        book.save_list(NewList("Mira Quill\nTilo Reed"), {}, when=old)
    during = place.read_bytes().count(b"Zephyrine")
    with Classbook.open(place) as book:
        assert book.roster_saved() is None
        after = place.read_bytes().count(b"Zephyrine")
        book.save_list(NewList("Mira Quill"), {})
        assert book.roster_saved()
        book.erase([1])
        assert book.roster_saved() is None
    assert after < during, "the child who left is still known, and no list has the name"


@pytest.mark.parametrize("held", ["", "{", "[]", "{}", "7", '{"children": [{}]}', "[" * 100_000])
def test_what_is_damaged_is_not_brought_back(place: Path, held: str) -> None:
    """It is told in a sentence, and the class stays as it is."""
    with Classbook.open(place) as book:
        book._db.execute("UPDATE list_before SET held = ?", (held,))
        before = [one.child.label for one in book.children(left=True)], book.roster_text()
        with pytest.raises(ClassbookError):
            book.undo_roster(after_roster=book.roster_id())
        assert ([one.child.label for one in book.children(left=True)], book.roster_text()) == before


def test_answers_go_to_the_lines_that_are_kept() -> None:
    """What was said of a line as it was typed is said of it as the class keeps it, in the same words."""
    def mark(line: str) -> str:
        return line[:1] * MARK

    settled = [mark("typed") + "right", mark("other") + "two", mark("gone") + "x"]
    lines = [("typed", "kept"), ("other", "same")]
    assert on_kept_lines(settled, lines, mark) == [mark("kept") + "right", mark("same") + "two"]
