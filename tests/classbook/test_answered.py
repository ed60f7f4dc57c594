"""Lines that were said to be right ask no more. All names are invented."""

from __future__ import annotations

from pathlib import Path

import pytest

from namewright.classbook import Classbook, ClassbookError
from namewright.classbook import answered as kept_answers
from namewright.classbook.kept_lists import Marks
from namewright.classbook.rosters import NewList

MARK, OTHER = "0123456789", "abcdef0123"
TEXT = "Mira Quill\nTilo Reed\nBo Lindle\n"


@pytest.fixture
def answered(tmp_path: Path) -> Classbook:
    """A class in which a line was said to be right."""
    book = Classbook.open(tmp_path / "class.db")
    book.save_list(NewList(TEXT), {}, Marks(looked_at=[MARK]))
    return book


def test_an_answer_is_kept_with_the_list_and_stays(answered: Classbook) -> None:
    """Whatever list comes after it, and whether or not that says anything new."""
    answered.save_list(NewList(f"{TEXT}Ava Finch\n"), {}, Marks(looked_at=[OTHER]))
    assert answered.answered() == {MARK, OTHER}
    answered.update_roster(TEXT)
    answered.save_list(NewList(TEXT), {}, Marks(looked_at=["9999999999"]))
    assert answered.answered() == {MARK, OTHER, "9999999999"}


@pytest.mark.parametrize("other", ["12=3", "0123456789!", "0123456789~Emma", "Emma Moss", ""])
def test_nothing_but_a_hash_is_kept(answered: Classbook, other: str) -> None:
    answered.save_list(NewList(TEXT), {}, Marks(looked_at=[other]))
    assert answered.answered() == {MARK}


def test_answers_go_with_a_list_that_is_taken_back(answered: Classbook) -> None:
    """Those of before stay; a line that is no child is not on the draft that comes back, nor is what was said of it."""
    answered.save_list(NewList(f"{TEXT}Ava Finch\n"), {}, Marks(looked_at=[OTHER], settled=frozenset([OTHER])))
    answered.undo_roster(after_roster=answered.roster_id())
    assert answered.answered() == {MARK}
    draft = answered.draft()
    assert draft is not None
    assert draft.settled == frozenset()


@pytest.mark.parametrize("everyone", [True, False])
def test_answers_go_when_anybody_is_erased(answered: Classbook, *, everyone: bool) -> None:
    """The line may have held the name."""
    if everyone:
        answered.erase_all()
    else:
        answered.erase([answered.children()[0].id])
    assert answered.answered() == frozenset()


def test_no_more_are_kept_than_the_newest(answered: Classbook, monkeypatch: pytest.MonkeyPatch) -> None:
    """Seen again a line is new; what was seen longest ago is asked again."""
    monkeypatch.setattr(kept_answers, "_MOST", 3)
    for number in range(3):
        answered.save_list(NewList(TEXT), {}, Marks(looked_at=[f"000000000{number}", MARK]))
    assert answered.answered() == {MARK, "0000000001", "0000000002"}


def test_a_file_with_something_else_in_its_place_is_refused(answered: Classbook, tmp_path: Path) -> None:
    """A hash tells nobody anything; a line in its place would."""
    answered._db.execute("UPDATE answered SET hash = 'Emma Moss'")
    answered.close()
    with pytest.raises(ClassbookError, match="odd_value"):
        Classbook.open(tmp_path / "class.db")
