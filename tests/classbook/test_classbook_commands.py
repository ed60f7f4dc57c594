"""The commands that keep a class: what is written, said and refused. Exit status 0 all, 1 some, 2 nothing."""

from __future__ import annotations

import io
import os
import re
from pathlib import Path

import pypdf
import pytest

from namewright.classbook import Classbook, ClassbookError
from namewright.classbook.find import find_child, find_letters
from namewright.classbook.growing import growth_of
from namewright.cli import main

Capture = pytest.CaptureFixture[str]


@pytest.fixture
def folder(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    monkeypatch.chdir(tmp_path)
    Path("list.txt").write_text("Mira Quill\nTilo Reed\nAva Finch\nAva Moss\n", encoding="utf-8")
    assert main(["class", "class.db", "--from", "list.txt", "--who", "teacher"]) == 0
    return tmp_path


def note(*words: str) -> int:
    return main(["note", "mira", "--class", "class.db", *words])


def test_a_class_is_made_listed_and_brought_up_to_date(folder: Path, capsys: Capture) -> None:
    """The same command makes and updates; who is new and who left is said, and lines left out are too."""
    Path("list.txt").write_text("Tilo Reed\nSuri\n???\n", encoding="utf-8")
    capsys.readouterr()
    assert main(["class", "class.db", "--from", "list.txt"]) == 1
    out, err = capsys.readouterr()
    assert "New: Suri" in out
    assert "No longer on the list, with all notes still here: Mira" in out
    assert "line 3" in err
    assert main(["class", "class.db"]) == 0
    assert capsys.readouterr().out.splitlines()[:2] == ["Tilo, to practise “Tilo”", "Suri, to practise “Suri”"]


def test_a_list_that_cannot_be_read_makes_no_class(folder: Path) -> None:
    """Nothing is left behind, and a class that is there stays as it is."""
    Path("empty.txt").write_text("\n")
    before = Path("class.db").read_bytes()
    assert main(["class", "new.db", "--from", "empty.txt"]) == 2
    assert main(["class", "class.db", "--from", "empty.txt"]) == 2
    assert not Path("new.db").exists()
    assert Path("class.db").read_bytes() == before


def test_a_note_is_kept_as_it_was_typed(folder: Path, capsys: Capture) -> None:
    """Letters are found in the name, and the suggestion follows the rule; nothing is changed by it."""
    assert note("--letters", "M, r", "--stage", "some-letters", "--date", "2026-09-01", "--note", "proud") == 0
    assert note("--all", "--support", "full", "--date", "2026-09-02") == 0
    assert note("--all", "--date", "2026-09-03", "--who", "aide") == 0
    said = capsys.readouterr().out
    assert "Formed: M, r" in said
    assert "a lighter level next: partial" in said
    with Classbook.open("class.db") as book:
        notes = book.observations(1)
        assert [one.letters for one in notes] == [(0, 2), (0, 1, 2, 3), (0, 1, 2, 3)]
        assert (notes[0].note, notes[2].who) == ("proud", "aide")
        assert not book.history(1)


@pytest.mark.parametrize("words", [
    ("--letters", "Mz"), ("--letters", "MM"), ("--date", "2999-01-01", "--all"), ("--date", "soon", "--all"),
    ("--stage", "9"), (),
])
def test_a_note_that_cannot_be_is_one_sentence_and_keeps_nothing(folder: Path, capsys: Capture,
                                                                words: tuple[str, ...]) -> None:
    """What is wrong is said and the class is as it was."""
    capsys.readouterr()
    assert note(*words) == 2
    out, err = capsys.readouterr()
    assert not out
    assert err.startswith("namewright: ")
    assert err.count("\n") == 1
    with Classbook.open("class.db") as book:
        assert not book.observations(1)


def test_progress_is_a_pdf_for_the_family_and_one_for_the_class(folder: Path, capsys: Capture) -> None:
    """A child's page is one page; with --all the class comes first; whoever has no note is named."""
    note("--letters", "Mi", "--date", "2026-09-01")
    assert main(["progress", "Mira", "--class", "class.db", "-o", "mira.pdf", "--paper", "a4"]) == 0
    page, = pypdf.PdfReader("mira.pdf").pages
    assert [round(float(side) / 72 * 25.4, 1) for side in page.mediabox[2:]] == [210.0, 297.0]
    assert main(["progress", "--all", "--class", "class.db", "-o", "all.pdf"]) == 1
    assert "Tilo" in capsys.readouterr().err
    assert len(pypdf.PdfReader("all.pdf").pages) == 2
    assert main(["progress", "Tilo", "--class", "class.db", "-o", "tilo.pdf"]) == 2
    assert not Path("tilo.pdf").exists()
    assert sorted(os.listdir()) == ["all.pdf", "class.db", "list.txt", "mira.pdf"]


def test_a_class_goes_out_and_comes_back(folder: Path) -> None:
    """--export and --import are the two halves of one copy."""
    note("--all", "--date", "2026-09-01")
    assert main(["class", "class.db", "--export", "out.zip"]) == 0
    assert main(["class", "back.db", "--import", "out.zip"]) == 0
    assert main(["class", "back.db", "--import", "out.zip"]) == 2
    with Classbook.open("class.db") as one, Classbook.open("back.db") as other:
        assert one.children() == other.children()
        assert one.observations(1) == other.observations(1)


def test_a_child_is_erased_for_good_once_it_is_confirmed(folder: Path, capsys: Capture,
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


def test_a_child_is_found_as_an_adult_says_it(folder: Path) -> None:
    """Label, first name or full name, in any case; two of one name are both named; one who left comes last."""
    with Classbook.open("class.db") as book:
        children = book.children()
        assert find_child(children, "TILO").id == find_child(children, "tilo reed").id
        assert find_child(children, "Ava Finch").child.family == "Finch"
        for typed, words in (("Ava", "which_child"), ("Nobody", "unknown_child")):
            with pytest.raises(ClassbookError, match=rf"classbook\.{words}"):
                find_child(children, typed)
        book.update_roster("Ava Moss\n")
        everyone = book.children(left=True)
        assert find_child(everyone, "Ava").child.family == "Moss"
        assert find_child(everyone, "Tilo").left


@pytest.mark.parametrize(("name", "typed", "places"), [
    ("Anna", "nA", (0, 1)), ("Anna", "nna", (1, 2, 3)), ("Anna", "a", (3,)), ("Zoë", "ë", (2,)), ("Mira", "m", (0,)),
    ("Ana María", "Mí", (4, 7)), ("Mira", "", ()), ("Mira", "MIR", (0, 1, 2)),
])
def test_letters_are_found_in_a_name(name: str, typed: str, places: tuple[int, ...]) -> None:
    """Each typed letter is one place, the same case first, from left to right."""
    assert find_letters(name, typed) == places


def test_notes_about_an_older_form_of_the_name_count_where_letters_agree(folder: Path) -> None:
    """A corrected name keeps the days of the letters that stand where they stood."""
    with Classbook.open("class.db") as book:
        book.observe(1, "2026-09-01", [0, 1])
        book.update_roster(book.roster_text().replace("Mira Quill", "Mina Quill"), same={1: 1})
        book.observe(1, "2026-09-08", [2])
        growth = growth_of("Mina", "Mina", book.observations(1))
    assert [len(track.days) for track in growth.tracks] == [2, 2, 1, 2]
    assert [track.first and track.first.day for track in growth.tracks] == [1, 1, 8, None]
