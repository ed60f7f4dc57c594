"""A child who stands in the file twice is made one, with all that is kept of both. All names are invented."""

from __future__ import annotations

from kept_class import names
from namewright.classbook import Classbook, Seen
from namewright.classbook.enrol import NEW
from namewright.classbook.rosters import NewList
from namewright.message import message

TEXT = "Mira Vost\nTilo Reed\nAva Finch\nAva Moss\n"


def _doubled(book: Classbook) -> tuple[int, int]:
    """Take Mira for a new child under another family name, and note something of both; return both numbers."""
    mira = names(book)["Mira"]
    book.observe(mira, "2026-09-10", Seen([0]))
    book.set_settings(mira, {"hand": "left"})
    book.update_roster(NewList(TEXT, same={1: NEW}))
    double = names(book)["Mira"]
    assert double != mira
    book.observe(double, "2026-10-10", Seen([0, 1]))
    book.set_settings(double, {"hand": "right", "support": "light"})
    book.seat(double, names(book)["Tilo"], together=False)
    return mira, double


def test_notes_of_both_names_stand_together(book: Classbook) -> None:
    """In the order of days; a setting that the first has stays, one that it lacks goes over, and so does a seat."""
    mira, double = _doubled(book)
    update = book.update_roster(NewList(TEXT, same={1: mira}))
    assert [note.date for note in book.observations(mira)] == ["2026-09-10", "2026-10-10"]
    assert book.settings_of(mira) == {"hand": "left", "support": "light"}
    assert [set(pair[:2]) for pair in book.seats()] == [{mira, names(book)["Tilo"]}]
    assert double not in {one.id for one in book.children(left=True)}
    assert update.left == ()
    assert message("classbook.joined", count=1, name="Mira Quill") in update.notes


def test_nothing_of_the_double_outlives_an_erasing(book: Classbook) -> None:
    """What went over is the child's, and goes with the child."""
    mira, _ = _doubled(book)
    book.update_roster(NewList(TEXT, same={1: mira}))
    book.erase([mira])
    data = book.path.read_bytes()
    assert not any(name.encode() in data for name in ("Mira", "Quill", "Vost", "2026-10-10"))


def test_who_is_not_said_to_be_one_stays_two(book: Classbook) -> None:
    """Without a word of an adult no notes move."""
    mira, double = _doubled(book)
    book.update_roster(TEXT)
    assert [len(book.observations(one)) for one in (mira, double)] == [1, 1]
