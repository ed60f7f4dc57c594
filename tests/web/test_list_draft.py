"""A list that is worked on stands beside the one that is saved until it is kept, and says what keeping would do."""

from __future__ import annotations

from pathlib import Path

import pytest
from webhelp import HOST, MESSY, Visitor, book_text, labels, list_shown, list_typed, token_in

from namewright.classbook import Classbook
from namewright.roster import parsing
from namewright.web import create_app


def test_what_is_typed_is_a_draft_until_it_is_saved(visitor: Visitor, class_file: Path) -> None:
    """It is there after a reload and a new start of the program, and saving or giving it up takes it away."""
    list_shown(visitor, MESSY)
    assert list_typed(visitor) == MESSY
    again = Visitor(create_app({"CLASS": str(class_file), "HOSTS": [HOST]}))
    assert list_typed(again) == MESSY
    assert again.post("/class/list/discard", {}).headers["Location"] == "/class/list"
    assert list_typed(again) == ""
    list_shown(again, MESSY)
    assert again.keep(MESSY).status_code == 302
    with Classbook.open(class_file) as book:
        assert book.draft() is None
    list_shown(again, MESSY + "Wenna Praske")
    list_shown(again, book_text(class_file))
    with Classbook.open(class_file) as book:
        assert book.draft() is None, "typed back to what is saved, it is none"


@pytest.mark.parametrize("based", ["9" * 30, "9" * 5000, "-1", "x", "٣"])
def test_a_list_from_no_list_is_refused(settled: Visitor, based: str) -> None:
    """By a number that no list has, however many figures; nothing is kept of it."""
    for path in ("/class/list", "/class/list/read", "/class/list/back"):
        assert settled.post(path, {"text": "Wenna Praske", "based": based}).status_code == 400
    assert "Wenna" not in settled.get("/class/list").text


def test_two_windows_do_not_overwrite_each_other(settled: Visitor, class_file: Path) -> None:
    """A list based on an older one is not kept unseen: it comes back whole, and counts once it was looked at."""
    assert settled.keep(MESSY + "Tobin Yarrel\n").status_code == 302
    mine = settled.post("/class/list", {"text": MESSY + "Wenna Praske\n", "based": "1", "practise": "given"})
    assert mine.headers["Location"] == "/class/list"
    page = settled.get("/class/list").text
    assert "another window" in page
    assert "Wenna Praske" in list_typed(settled)
    assert "Tobin" in labels(class_file)
    sent = {"text": MESSY + "Wenna Praske\n", "based": settled.based(), "practise": "given"}
    assert settled.post("/class/list", sent, token=token_in(page)).status_code == 302
    assert "Wenna" in labels(class_file)
    assert "another window" not in settled.get("/class/list").text


def test_a_mended_line_is_the_same_child_and_a_new_name_is_not(settled: Visitor, class_file: Path) -> None:
    """A slip that is mended keeps the child's settings; another name on the same line does not inherit them."""
    text = book_text(class_file)
    settled.post("/child/5/lines", {"line_height": "30", "after": "0"})
    settled.keep(text.replace("Katla", "Katlä"))
    with Classbook.open(class_file) as book:
        assert {one.child.label: one.id for one in book.children()}["Katlä"] == 5
        assert book.settings_of(5) == {"line_height": "30"}
    settled.keep(text.replace("Katla,Pruner", "Ewan,Dulse"))
    with Classbook.open(class_file) as book:
        ewan = next(one for one in book.children() if one.child.label == "Ewan")
        assert ewan.id > 7
        assert not ewan.settings


def test_no_text_is_read_twice(settled: Visitor, monkeypatch: pytest.MonkeyPatch) -> None:
    """Typing, being told who would leave, saving, and looking at what was saved read each text once, whatever for."""
    read: list[tuple[str, ...]] = []
    unfold = parsing.unfold
    monkeypatch.setattr(parsing, "unfold", lambda lines, said: read.append(tuple(lines)) or unfold(lines, said))
    based = settled.based()
    settled.post("/class/list/read?part=lines", {"text": "Mirel Vosst", "based": based, "practise": "given"})
    settled.post("/class/list", {"text": "Mirel Vosst", "based": based, "practise": "given", "sure": "1"})
    settled.get("/class/list")
    assert ("Mirel Vosst",) in read
    assert len(read) == len(set(read)) <= 2


def test_who_would_leave_is_named_before_saving(settled: Visitor, class_file: Path) -> None:
    """Lines that were deleted are children who leave: their names stand there instead of an all-clear."""
    page = list_shown(settled, book_text(class_file).replace("Katla,Pruner", ""))
    assert "Leaving the class once you save this list: Katla." in page
    assert "Nothing needs you." not in page
    assert "Leaving the class" not in list_shown(settled, book_text(class_file).replace("Katla", "Katlä"))
    assert "Leaving the class" not in list_shown(settled, book_text(class_file))
