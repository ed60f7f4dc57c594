"""A list that is being worked on is kept with its steps, and is gone when it is saved or anybody is erased."""

from __future__ import annotations

from pathlib import Path

import pytest

from namewright.classbook import Classbook
from namewright.classbook.drafts import Draft
from namewright.classbook.rosters import NewList
from namewright.settings import NamePart


@pytest.fixture
def place(tmp_path: Path) -> Path:
    """A class of two children."""
    with Classbook.open(tmp_path / "class.db") as book:
        book.update_roster("Mira Quill\nTilo Reed\n")
    return tmp_path / "class.db"


def test_typing_takes_the_place_of_the_newest_step_and_a_step_can_be_taken_back(place: Path) -> None:
    """What is typed on is one step; one that was made by a button is another, and goes back to the one before."""
    with Classbook.open(place) as book:
        assert book.draft() is None
        book.keep_draft(Draft("Mira", NamePart.GIVEN, roster=1))
        book.keep_draft(Draft("Mira and Bo Quill", NamePart.GIVEN, roster=1))
        book.keep_draft(Draft("Mira Quill\nBo Quill", NamePart.FAMILY, frozenset({"ab", "cd"}), True, 1), typed=False)
        assert book.draft() == Draft("Mira Quill\nBo Quill", NamePart.FAMILY, frozenset({"ab", "cd"}), True, 1, steps=1)
        book.step_back()
        assert book.draft() == Draft("Mira and Bo Quill", NamePart.GIVEN, roster=1)
        book.keep_draft(Draft("Mira Quill\nBo Quill", NamePart.GIVEN, roster=1), typed=False)
        book.keep_draft(Draft("Mira Quill\nBo Quill\nWenna", NamePart.GIVEN, roster=1))
        book.step_back()
        assert book.draft() == Draft("Mira Quill\nBo Quill", NamePart.GIVEN, roster=1, steps=1)
        book.step_back()
        book.step_back()
        assert book.draft() is not None, "the last one is given up only by being discarded"
        book.discard_draft()
        assert book.draft() is None


def test_steps_are_bounded(place: Path) -> None:
    """A file does not grow with every press."""
    with Classbook.open(place) as book:
        for number in range(100):
            book.keep_draft(Draft(f"Mira {number}", NamePart.GIVEN), typed=False)
        draft = book.draft()
        assert draft is not None
        assert draft.text == "Mira 99"
        assert draft.steps == 39


@pytest.mark.parametrize("end", ["save", "erase", "erase all", "discard"])
def test_nothing_of_a_draft_outlives_its_end(place: Path, end: str) -> None:
    """Its words are in no byte of the file once the list is saved, given up, or anybody is erased."""
    with Classbook.open(place) as book:
        book.keep_draft(Draft("Mira Quill\nTilo Reed\nparents of Zephyrine divorced", NamePart.GIVEN), typed=False)
    assert b"Zephyrine" in place.read_bytes()
    with Classbook.open(place) as book:
        if end == "save":
            book.save_list(NewList("Mira Quill\nTilo Reed\nWenna Praske"), {})
        elif end == "erase":
            book.erase([1])
        elif end == "erase all":
            book.erase_all()
        else:
            book.discard_draft()
        assert book.draft() is None
    assert b"Zephyrine" not in place.read_bytes()
