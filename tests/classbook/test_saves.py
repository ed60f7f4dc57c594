"""Settings of a class and a child: saved together, undone together, and a history that only grows."""

from __future__ import annotations

import pytest

from namewright.classbook import Classbook, ClassbookError


@pytest.mark.parametrize(("key", "text", "words"), [
    ("support", "lots", "choice.*full"), ("line_height", "3 km", "range.*least=8, most=80"),
    ("rows", "0", "range.*least=1, most=12"), ("midline", "nan", "range.*least=0.3, most=0.8"),
    ("colour", "red", "unknown"), ("paper", "a4", "unknown"),
])
def test_a_value_that_cannot_be_is_refused_in_a_sentence(book: Classbook, key: str, text: str, words: str) -> None:
    """What is wrong is said, what can be chosen too, and nothing of the same save is kept."""
    with pytest.raises(ClassbookError, match=rf"setting\.{words}"):
        book.set_settings(1, {"hand": "left", key: text})
    assert not book.settings_of(1)
    assert not book.history(1)


def test_settings_saved_together_are_undone_together(book: Classbook) -> None:
    """Undo takes back one save, then the one before it, and stops where there is nothing more."""
    book.set_settings(1, {"support": "full"}, who="teacher", when="2026-09-02T09:00:00")
    book.set_settings(1, {"support": "light", "rows": "2"}, who="aide", when="2026-09-03T09:00:00")
    assert book.undo(1)
    assert book.settings_of(1) == {"support": "full"}
    assert book.undo(1)
    assert book.undo(1) is None
    assert not book.settings_of(1)


def test_history_says_who_when_and_what_and_only_grows(book: Classbook) -> None:
    """Every change and every undo stands in the history, the newest first."""
    book.set_settings(1, {"support": "light"}, who="teacher", when="2026-09-02T09:00:00")
    book.undo(1, who="aide", when="2026-09-02T10:00:00+02:00")
    newest, oldest = book.history(1)
    assert (oldest.who, oldest.when, oldest.undone) == ("teacher", "2026-09-02T09:00:00", True)
    assert [(c.key, c.before, c.after) for c in oldest.changes] == [("support", None, "light")]
    assert (newest.who, newest.when, newest.undoes) == ("aide", "2026-09-02T10:00:00+02:00", oldest.id)
    assert not book.history(2)


def test_saving_what_already_holds_is_no_change(book: Classbook) -> None:
    """The same value again, however it is typed, adds nothing to the history."""
    book.set_settings(1, {"line_height": "25.4"})
    assert book.set_settings(1, {"line_height": "1 in"}) is None
    assert len(book.history(1)) == 1


def test_a_view_out_of_date_saves_nothing(book: Classbook) -> None:
    """With the number of the save a person saw, a change made meanwhile is not written over, nor undone twice."""
    save = book.set_settings(1, {"rows": "2"})
    assert save
    book.undo(1, after_save=save.id)
    for stale in (lambda: book.undo(1, after_save=save.id),
                  lambda: book.set_settings(1, {"rows": "4"}, after_save=save.id)):
        with pytest.raises(ClassbookError, match=r"classbook\.\w+_meanwhile"):
            stale()


def test_a_damaged_history_is_read_past_what_cannot_be(book: Classbook) -> None:
    """A day of then shows what could be set; undoing brings back none of it, so that the file opens again."""
    book.set_settings(1, {"support": "light"}, when="2026-09-01T08:00:00")
    book.set_settings(1, {"support": "partial", "line_height": "22"}, when="2026-09-03T08:00:00")
    book._db.execute("UPDATE changes SET before = 'ligh|' WHERE before = 'light'")
    (one, _), = book.on_days(1, ["2026-09-02"]).values()
    assert one.child.support is None
    book.undo(1)
    assert dict(book.settings_of(1)) == {}
    Classbook.open(book.path).close()
