"""The class's database: what is kept, who keeps their id, history and undo. All names are invented."""

from __future__ import annotations

import sqlite3
from collections.abc import Iterator
from pathlib import Path

import pytest

from namewright.classbook import Classbook, ClassbookError
from namewright.classbook.stages import Stage
from namewright.making.from_book import holds_for_child
from namewright.roster.children import RosterError
from namewright.settings import Hand, NamePart, Support
from namewright.tuning import Tuning

CLASS = "Mira Quill\nTilo Reed\nAva Finch\nAva Moss\n"


@pytest.fixture
def book(tmp_path: Path) -> Iterator[Classbook]:
    with Classbook.open(tmp_path / "class.db") as opened:
        opened.update_roster(CLASS, when="2026-09-01T08:00:00")
        yield opened


def names(book: Classbook, *, left: bool = False) -> dict[str, int]:
    return {one.child.label: one.id for one in book.children(left=left)}


# --- the roster ----------------------------------------------------------------------------------------


def test_children_stand_in_roster_order_with_what_the_roster_says(book: Classbook) -> None:
    """A child read from the roster comes out as the roster reader read them."""
    book.update_roster("name,hand,support,line height\nMira Quill,left,light,20 mm\n")
    mira = book.children()[0]
    assert (mira.child.practice, mira.child.family, mira.child.hand) == ("Mira", "Quill", Hand.LEFT)
    assert (mira.child.support, mira.child.line_height_mm, mira.own.line_height) == (Support.LIGHT, 20.0, 20.0)


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


def _with(book: Classbook, text: str) -> tuple[object, ...]:
    book.update_roster(text)
    return book.children()


def test_a_mended_line_is_the_same_child(book: Classbook) -> None:
    """Who is said to stand on a line stays the same child, whatever the name becomes."""
    tilo = names(book)["Tilo"]
    update = book.update_roster(CLASS.replace("Tilo Reed", "Thilo Reede"), same={2: tilo})
    assert not update.joined
    assert not update.left
    assert book.child(tilo).child.practice == "Thilo"
    assert book.roster_text().splitlines()[1] == "Thilo Reede"


def test_a_list_that_is_another_by_now_is_not_written_over(book: Classbook) -> None:
    """What was shown must still stand there: a list changed in another window is not written over."""
    book.update_roster("Suri Vale\n" + CLASS)
    with pytest.raises(ClassbookError, match=r"classbook\.\w+_meanwhile"):
        book.update_roster(CLASS, after_roster=1)
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


# --- settings ------------------------------------------------------------------------------------------


def test_tuning_is_the_childs_own_over_the_classs(book: Classbook) -> None:
    """A knob set for the child wins, else the class's holds, else the ruling's (None)."""
    book.set_class_settings({"line_height": "20", "rows": "3"})
    book.set_settings(1, {"line_height": "1 in"})
    one, other = book.child(1), book.child(2)
    assert (one.own, other.own) == (Tuning(line_height=25.4), Tuning())
    tuning, others = (holds_for_child(each, book.class_settings).tuning for each in (one, other))
    assert (tuning.line_height, tuning.rows, tuning.midline) == (25.4, 3, None)
    assert others.line_height == 20.0


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


def test_several_changes_are_one_or_none(book: Classbook) -> None:
    """In a ``changing`` block an error takes back all of it."""
    def both() -> None:
        with book.changing():
            book.set_settings(1, {"rows": "2"})
            book.set_settings(2, {"rows": "99"})

    with pytest.raises(ClassbookError):
        both()
    assert not book.settings_of(1)


def test_a_change_holds_the_file_from_its_first_look(book: Classbook) -> None:
    """Between what a change reads and what it writes nobody else can write, so neither is lost."""
    other = sqlite3.connect(book.path, timeout=0, isolation_level=None)
    with book.changing(), pytest.raises(sqlite3.OperationalError, match="locked"):
        other.execute("BEGIN IMMEDIATE")
    other.execute("BEGIN IMMEDIATE")
    other.close()


# --- what was seen -------------------------------------------------------------------------------------


def test_a_note_keeps_the_name_it_was_made_about(book: Classbook) -> None:
    """Positions mean nothing without the name of that day, so a name changed later leaves old notes as they were."""
    book.observe(1, "2026-09-10", [3, 0, 0], support=Support.PARTIAL, stage=Stage.SOME_LETTERS, note=" proud ")
    book.update_roster(CLASS.replace("Mira Quill", "Miranda Quill"), same={1: 1})
    note, = book.observations(1)
    assert (note.name, note.letters, note.note) == ("Mira", (0, 3), "proud")
    assert (note.support, note.stage) == (Support.PARTIAL, Stage.SOME_LETTERS)


def test_not_looked_at_is_not_none_formed(book: Classbook) -> None:
    """Letters left out are unknown; an empty list says that none was formed yet."""
    book.observe(1, "2026-09-10", stage=Stage.MARKS)
    book.observe(1, "2026-09-11", [])
    assert [note.letters for note in book.observations(1)] == [None, ()]


def test_a_note_sent_twice_is_kept_once(book: Classbook) -> None:
    """The same token gives back the first note, so a page reloaded in mid-save doubles nothing."""
    first = book.observe(1, "2026-09-10", [0], token="form-7")
    assert book.observe(1, "2026-09-10", [0], token="form-7") == first
    assert book.observe(1, "2026-09-10", [0]) != first
    assert len(book.observations(1)) == 2


def test_a_note_taken_back_is_shown_no_more(book: Classbook) -> None:
    """Striking a note is safe to repeat; a note that is not there is said."""
    note = book.observe(1, "2026-09-10", [0])
    book.strike(note.id)
    book.strike(note.id)
    assert not book.observations(1)
    with pytest.raises(ClassbookError, match=r"classbook\.no_note"):
        book.strike(999)


def test_a_note_is_taken_back_once(book: Classbook) -> None:
    """Taking it back again changes nothing, not even when it was."""
    note = book.observe(1, "2026-09-10", [0])
    for moment in ("2026-09-11T08:00:00", "2026-09-12T08:00:00"):
        book.strike(note.id, when=moment)
    assert book._db.execute("SELECT struck_at FROM observations").fetchall() == [("2026-09-11T08:00:00",)]


def test_bad_notes_are_refused_in_a_sentence(book: Classbook) -> None:
    """A place without a letter, a day that is none, nothing to note, a child who is not there."""
    book.set_class_setting("practise", "both")
    for bad in (lambda: book.observe(1, "2026-09-10", [4]),  # the space in “Mira Quill”
                lambda: book.observe(1, "2026-09-10", [99]), lambda: book.observe(1, "2026-02-30", [0]),
                lambda: book.observe(1, "2026-09-10"), lambda: book.observe(99, "2026-09-10", [0]),
                lambda: book.observe(1, "2026-09-10", note="x" * 501)):
        with pytest.raises(ClassbookError):
            bad()
    assert not book.observations(1)


def test_a_child_who_left_keeps_notes_and_may_have_more(book: Classbook) -> None:
    """A record for a child who left is kept like any other."""
    tilo = names(book)["Tilo"]
    book.update_roster("Mira Quill\n")
    book.observe(tilo, "2026-09-10", [0])
    assert len(book.observations(tilo)) == 1
