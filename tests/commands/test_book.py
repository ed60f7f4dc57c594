"""``namewright class``: made from a list, brought up to date, copied out and back, erased."""

from __future__ import annotations

import io
import os
import re
from datetime import datetime, timedelta
from pathlib import Path

import pytest

from kept_class import note
from namewright.classbook import Classbook, Seen
from namewright.classbook.drafts import Draft
from namewright.classbook.rosters import NewList
from namewright.cli import main
from namewright.settings import NamePart

Capture = pytest.CaptureFixture[str]


def test_a_class_is_made_listed_and_brought_up_to_date(kept_class_folder: Path, capsys: Capture) -> None:
    """The same command makes and updates; who is new and who left is said, and lines left out are too."""
    Path("list.txt").write_text("Tilo Reed\nSuri\n???\n", encoding="utf-8")
    capsys.readouterr()
    assert main(["class", "class.db", "--from", "list.txt"]) == 1
    out, err = capsys.readouterr()
    assert "New in the class: Suri" in out
    assert "No longer on the list, with all notes still here: Mira" in out
    assert "line 3" in err
    assert main(["class", "class.db"]) == 0
    assert capsys.readouterr().out.splitlines()[:2] == ["Tilo, to practise “Tilo”", "Suri, to practise “Suri”"]


def test_a_child_under_another_name_is_the_same_child(kept_class_folder: Path, capsys: Capture) -> None:
    """A nickname takes over; of a new family name it is said what to type, which makes one child of two."""
    with Classbook.open("class.db") as book:
        mira, tilo = (one.id for one in book.children()[:2])
        book.set_settings(tilo, {"hand": "left"})
    Path("list.txt").write_text('Mira "Miri" Quill\nTilo Vost\nAva Finch\nAva Moss\n', encoding="utf-8")
    capsys.readouterr()
    assert main(["class", "class.db", "--from", "list.txt"]) == 0
    err = capsys.readouterr().err
    assert "Mira Quill → Mira “Miri” Quill" in err
    assert "Tilo Vost counts as a new child for now." in err
    words = re.search(r'--same "([^"]+)"', err)
    assert words
    assert main(["class", "class.db", "--from", "list.txt", "--same", words[1]]) == 0
    with Classbook.open("class.db") as book:
        assert [one.id for one in book.children(left=True)][:2] == [mira, tilo]
        assert book.settings_of(tilo) == {"hand": "left"}
        assert len(book.children(left=True)) == 4


def _take(words: str, *more: str) -> int:
    Path("list.txt").write_text(words.replace(", ", "\n"), encoding="utf-8")
    return main(["class", "class.db", "--from", "list.txt", *more])


def test_the_newest_list_is_taken_back(kept_class_folder: Path, capsys: Capture) -> None:
    """The wrong list: who left is here again with all that is kept, who came is gone, and what was noted stays."""
    with Classbook.open("class.db") as book:
        book.set_settings(2, {"hand": "left"})
        before = book.children(left=True), book.roster_text()
        labels = [one.child.label for one in before[0]]
    assert _take("Suri Vale, Zorah Pell, Tilo Reed") == 0
    assert "“namewright class class.db --take-back” brings the class back" in capsys.readouterr().out
    with Classbook.open("class.db") as book:
        book.observe(2, "2026-09-14", Seen([0]))
    assert main(["class", "class.db", "--take-back"]) == 0
    said = f"The newest list is taken back. In the class are, as before: {', '.join(labels)}"
    assert capsys.readouterr().out.startswith(said)
    with Classbook.open("class.db") as book:
        assert (book.children(left=True), book.roster_text()) == before
        assert len(book.observations(2)) == 1


def test_a_first_list_is_taken_back_to_nobody(tmp_path: Path, monkeypatch: pytest.MonkeyPatch,
                                              capsys: Capture) -> None:
    monkeypatch.chdir(tmp_path)
    assert _take("Suri Vale, Zorah Pell") == 0
    assert "take-back" not in capsys.readouterr().out, "nobody left by it"
    assert main(["class", "class.db", "--take-back"]) == 0
    assert "nobody is in the class now" in capsys.readouterr().out
    with Classbook.open("class.db") as book:
        assert not book.children(left=True)


@pytest.mark.parametrize("then", [["--take-back"], ["--erase", "Suri", "--yes"]])
def test_where_there_is_nothing_to_take_back_that_is_said(kept_class_folder: Path, capsys: Capture,
                                                          then: list[str]) -> None:
    """Once it was taken back, and after an erasing."""
    assert _take("Suri Vale, Tilo Reed") == 0
    assert main(["class", "class.db", *then]) == 0
    with Classbook.open("class.db") as book:
        before = book.children(left=True)
    capsys.readouterr()
    assert main(["class", "class.db", "--take-back"]) == 2
    assert capsys.readouterr().err.startswith("namewright: There is no list in class.db to take back.")
    with Classbook.open("class.db") as book:
        assert book.children(left=True) == before


def test_two_children_made_one_are_not_parted(kept_class_folder: Path, capsys: Capture) -> None:
    """The double that the list itself made may go back; one that was there before it, with notes, may not."""
    assert _take("Mira Quill, Tilo Vost, Ava Finch, Ava Moss") == 0
    assert _take("Mira Quill, Tilo Vost, Ava Finch, Ava Moss", "--same", "Tilo Reed, Tilo Vost") == 0
    assert main(["class", "class.db", "--take-back"]) == 0
    with Classbook.open("class.db") as book:
        assert [one.child.family for one in book.children(left=True)] == ["Quill", "Reed", "Finch", "Moss"]
    assert _take("Mira Quill, Tilo Vost, Ava Finch, Ava Moss") == 0
    with Classbook.open("class.db") as book:
        book.observe(book.children()[1].id, "2026-09-14", Seen([0]))
    assert _take("Mira Quill, Tilo Vost, Ava Finch, Ava Moss, Bo Lindle", "--same", "Tilo Reed, Tilo Vost") == 0
    assert main(["class", "class.db", "--take-back"]) == 2
    with Classbook.open("class.db") as book:
        assert len(book.observations(2)) == 1


def test_a_list_that_somebody_works_on_is_left_alone(kept_class_folder: Path) -> None:
    """In the browser, meanwhile."""
    draft = Draft("Mira Quill\nWenna Praske", NamePart.GIVEN)
    assert _take("Suri Vale, Tilo Reed") == 0
    with Classbook.open("class.db") as book:
        book.keep_draft(draft)
    assert main(["class", "class.db", "--take-back"]) == 0
    with Classbook.open("class.db") as book:
        kept = book.draft()
        assert kept is not None
        assert kept.text == draft.text


def test_what_stands_in_a_list_beside_the_names_is_not_kept_for_it(kept_class_folder: Path) -> None:
    """The list is in its file: neither before nor after it is taken back does the class hold more than it needs."""
    assert _take("Suri Vale (Zephyrine picks up), Tilo Reed") == 0
    assert b"Zephyrine" not in Path("class.db").read_bytes()
    assert main(["class", "class.db", "--take-back"]) == 0
    with Classbook.open("class.db") as book:
        assert book.draft() is None


def test_names_of_a_list_of_before_are_gone_after_a_day(kept_class_folder: Path) -> None:
    """Any command that opens the class lets go of them."""
    old = datetime.now().astimezone() - timedelta(days=1, minutes=1)
    with Classbook.open("class.db") as book:
        book.update_roster("Zephyrine Vale\nTilo Reed", for_a_day=True, when=old)
        book.update_roster(NewList("Zephyra Vale\nTilo Reed", same={1: 5}), for_a_day=True, when=old)
    count = Path("class.db").read_bytes().count(b"Zephyrine")
    assert count
    assert main(["class", "class.db"]) == 0
    assert Path("class.db").read_bytes().count(b"Zephyrine") < count
    assert main(["class", "class.db", "--take-back"]) == 2


def test_on_a_terminal_it_is_asked_who_is_who(kept_class_folder: Path, capsys: Capture,
                                              monkeypatch: pytest.MonkeyPatch) -> None:
    """One question a line that names leave open; any answer but yes is a new child."""
    Path("list.txt").write_text("Mira Quill\nTilo Vost\nAva Finch\nAva Moss\n", encoding="utf-8")
    for said, count in (("no\n", 5), ("yes\n", 5)):
        monkeypatch.setattr("sys.stdin", io.StringIO(said))
        monkeypatch.setattr("sys.stdin.isatty", lambda: True, raising=False)
        assert main(["class", "class.db", "--from", "list.txt"]) == 0
        with Classbook.open("class.db") as book:
            assert len(book.children(left=True)) == count
    assert "Tilo Vost is on the list, and Tilo Reed was in the class." in capsys.readouterr().err


def test_what_the_list_leaves_out_goes_on_and_can_be_said_to_be_gone(kept_class_folder: Path, capsys: Capture) -> None:
    """The accent and what a child goes by stay, which is told; a pair of names takes the list’s word for it."""
    Path("home.txt").write_text("Mira Quill (goes by Miri)\nTiló Reed\nAva Finch\nAva Moss\n", encoding="utf-8")
    Path("office.txt").write_text("Finch, Ava\nMoss, Ava\nQuill, Mira\nReed, Tilo\n", encoding="utf-8")
    assert main(["class", "class.db", "--from", "home.txt"]) == 0
    capsys.readouterr()
    assert main(["class", "class.db", "--from", "office.txt"]) == 0
    err = capsys.readouterr().err
    assert "because this list says less: Mira Quill → Mira “Miri” Quill, Tilo Reed → Tiló Reed." in err
    assert main(["class", "class.db", "--from", "office.txt", "--same", "Miri, Mira", "--same", "Tiló Reed, Tilo"]) == 0
    with Classbook.open("class.db") as book:
        assert [one.child.practice for one in book.children()] == ["Ava", "Ava", "Mira", "Tilo"]


@pytest.mark.parametrize("words", [["--same", "Mira, Miri"], ["--columns", "given,family"], ["--sheet", "A"],
                                   ["--whole-list"], ["--same", "Mira, Miri", "--erase", "Mira", "--yes"]])
def test_a_word_about_a_list_needs_one(kept_class_folder: Path, capsys: Capture, words: list[str]) -> None:
    """It is said in a sentence, and nothing is done: not even what else was asked for."""
    with Classbook.open("class.db") as book:
        before = book.children(left=True)
        capsys.readouterr()
        assert main(["class", "class.db", *words]) == 2
        assert book.children(left=True) == before
    out, err = capsys.readouterr()
    assert (out, err) == ("", f"namewright: {words[0]} is about a list. Name the list with --from, too, "
                              f"or leave {words[0]} out.\n")


@pytest.mark.parametrize("words", ["Tilo", "Tilo Reed, Nobody", "Nobody, Mira"])
def test_whom_the_list_or_the_class_has_not_is_said(kept_class_folder: Path, words: str) -> None:
    """A pair that names nobody changes nothing."""
    with Classbook.open("class.db") as book:
        before = book.children(left=True), book.roster_id()
        assert main(["class", "class.db", "--from", "list.txt", "--same", words]) == 2
        assert (book.children(left=True), book.roster_id()) == before


def test_a_list_that_cannot_be_read_makes_no_class(kept_class_folder: Path) -> None:
    """Nothing is left behind, and a class that is there stays as it is."""
    Path("empty.txt").write_text("\n")
    before = Path("class.db").read_bytes()
    assert main(["class", "new.db", "--from", "empty.txt"]) == 2
    assert main(["class", "class.db", "--from", "empty.txt"]) == 2
    assert not Path("new.db").exists()
    assert Path("class.db").read_bytes() == before


def test_a_class_goes_out_and_comes_back(kept_class_folder: Path) -> None:
    """--export and --import are the two halves of one copy."""
    note("--all", "--date", "2026-09-01")
    assert main(["class", "class.db", "--export", "out.zip"]) == 0
    assert main(["class", "back.db", "--import", "out.zip"]) == 0
    assert main(["class", "back.db", "--import", "out.zip"]) == 2
    with Classbook.open("class.db") as one, Classbook.open("back.db") as other:
        assert one.children() == other.children()
        assert one.observations(1) == other.observations(1)


def test_a_child_is_erased_for_good_once_it_is_confirmed(kept_class_folder: Path, capsys: Capture,
                                                         monkeypatch: pytest.MonkeyPatch) -> None:
    """Without a yes nothing happens; with it the name is gone from the file, and what was said tells how many."""
    assert note("--all", "--note", "sat with Tilo") == 0
    monkeypatch.setattr("sys.stdin", io.StringIO("no\n"))
    assert main(["class", "class.db", "--erase", "tilo"]) == 2
    assert b"Reed" in Path("class.db").read_bytes()
    monkeypatch.setattr("sys.stdin", io.StringIO("yes\n"))
    capsys.readouterr()
    assert main(["class", "class.db", "--erase", "tilo"]) == 0
    out, err = capsys.readouterr()
    assert "One child is erased for good." in out
    assert "Type “yes”" in err
    assert re.search(r"The name may stand here too: a note of \S+ about Mira: “sat with Tilo”", err)
    assert "A name that was erased may still stand here: a note of" in err
    assert b"Reed" not in Path("class.db").read_bytes()
    assert main(["class", "class.db", "--erase", "nobody"]) == 2
    assert main(["class", "class.db", "--erase-class", "--yes"]) == 0
    assert b"Mira" not in Path("class.db").read_bytes()
    assert main(["class", "class.db"]) == 0


def test_a_missing_class_is_said_by_every_command_and_not_made(tmp_path: Path, capsys: Capture) -> None:
    """A misspelt file is a sentence, never a new empty class."""
    place = str(tmp_path / "none.db")
    for words in (["class", place], ["class", place, "--export", str(tmp_path / "out")],
                  ["note", "Mira", "--class", place, "--all"], ["progress", "--all", "--class", place, "-o", "x.pdf"]):
        assert main(words) == 2
        assert "There is no class in" in capsys.readouterr().err
    assert not os.listdir(tmp_path)
