"""A child who stands in the class twice is made one, wherever the two stand. All names are invented."""

from __future__ import annotations

import pytest

from kept_class import names
from namewright.classbook import Classbook, ClassbookError, Seen
from namewright.classbook.enrol import NEW
from namewright.classbook.rosters import NewList

REST = "Tilo Reed\nAva Finch\nAva Moss\n"


def _noted(book: Classbook, child: int) -> list[str]:
    return [note.note for note in book.observations(child)]


@pytest.mark.parametrize("text", [f"Mira Vost\n{REST}", f"Mira Quill\n{REST}Mira Vost\n", REST, f"Mira Quill\n{REST}"])
@pytest.mark.parametrize("whole", [True, False])
def test_a_double_is_made_one_wherever_the_two_stand(book: Classbook, text: str, whole: bool) -> None:
    """Both on the list, one of them or none: the child is there once, with the notes and settings of both."""
    mira = names(book)["Mira"]
    book.set_settings(mira, {"hand": "left"})
    book.observe(mira, "2026-09-14", Seen([0], note="first"))
    book.update_roster(NewList(f"Mira Vost\n{REST}", same={1: NEW}))
    double = next(one.id for one in book.children() if one.child.family == "Vost")
    book.observe(double, "2026-10-14", Seen([0], note="second"))
    book.set_settings(double, {"hand": "right", "support": "light"})
    book.update_roster(NewList(text, whole=whole))
    here = len(book.children())
    both = {mira, double} <= {one.id for one in book.children()}
    assert book.make_one(double, mira) == 1
    assert len(book.children()) == here - both
    assert double not in {one.id for one in book.children(left=True)}
    assert _noted(book, mira) == ["first", "second"]
    assert book.settings_of(mira) == {"hand": "left", "support": "light"}
    assert (book.child(mira).left is None) == ("Mira" in text)
    assert [one.child.practice for one in book.children()] == [
        line.split()[0] for at, line in enumerate(book.roster_text().splitlines())]
    again = book.update_roster(NewList(book.roster_text(), whole=whole))
    assert (again.joined, again.left) == ((), ())


def test_who_is_not_two_is_refused(book: Classbook) -> None:
    """A child with itself, and one that is not there; nothing is changed."""
    mira = names(book)["Mira"]
    for two in ((mira, mira), (mira, 77), (77, mira)):
        with pytest.raises(ClassbookError):
            book.make_one(*two)
    assert set(names(book).values()) == {one.id for one in book.children(left=True)}


def test_what_a_list_says_to_be_one_child_is_one_however_the_class_has_the_name(book: Classbook) -> None:
    """Katie, who was taken for a new child, is Katherine, who goes by it: no second one stays behind."""
    book.update_roster(f"Katherine Moss (goes by Kit)\n{REST}")
    kit = book.children()[0].id
    text = f"Katie M.\n{REST}"
    katie = book.update_roster(text).joined[0]
    book.observe(katie, "2026-10-14", Seen([0], note="at the party"))
    book.update_roster(NewList(text, same={1: kit}))
    assert katie not in {one.id for one in book.children(left=True)}
    assert _noted(book, kit) == ["at the party"]
