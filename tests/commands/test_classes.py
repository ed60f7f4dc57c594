"""Several classes in one run: a PDF for each, one account at the end, and nothing lost by what goes wrong."""

from __future__ import annotations

from pathlib import Path

import pypdf
import pytest
from hypothesis import given
from hypothesis import strategies as st

from namewright.cli import main
from namewright.commands.classes import distinct, lists_in

ROOMS = {"room1.txt": "Mira\nTilo\n", "room2.csv": "Name\nZoë\nJonquil\nBo\n"}


@pytest.fixture
def school(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """A folder with two lists, from beside which commands run."""
    monkeypatch.chdir(tmp_path)
    monkeypatch.setenv("LC_ALL", "C")
    folder = tmp_path / "school"
    folder.mkdir()
    for name, text in ROOMS.items():
        (folder / name).write_text(text, encoding="utf-8")
    return folder


def sheets(*words: str) -> int:
    return main(["sheets", *words])


def pages(*path: str) -> int:
    return len(pypdf.PdfReader(Path(*path)).pages)


@pytest.mark.parametrize("words", [
    ("school/room1.txt", "school/room2.csv", "-o", "pdf"), ("school", "-o", "pdf"), ("school/", "-o", "pdf/"),
    ("school", "school/room1.txt", "-o", "deep/pdf/")])
def test_each_class_has_a_pdf(school: Path, words: tuple[str, ...], capsys: pytest.CaptureFixture[str]) -> None:
    """Named one by one or as a folder, each list once; what is said is where they are."""
    assert sheets(*words) == 0
    folder = words[words.index("-o") + 1]
    assert {path.name: pages(str(path)) for path in Path(folder).iterdir()} == {"room1.pdf": 2, "room2.pdf": 3}
    assert tuple(capsys.readouterr()) == (f"2 PDFs are in {folder}.\n", "")


def test_one_list_into_a_folder(school: Path) -> None:
    """A slash at the end says that it is a folder, and the bytes are those of the class made alone."""
    assert sheets("school/room1.txt", "-o", "pdf/") == sheets("school/room1.txt", "-o", "alone.pdf") == 0
    assert Path("pdf/room1.pdf").read_bytes() == Path("alone.pdf").read_bytes()


def test_a_class_that_fails_stops_no_other(school: Path, capsys: pytest.CaptureFixture[str]) -> None:
    """Every sentence names its list; all that can be made is made."""
    (school / "a.txt").write_text("", encoding="utf-8")
    (school / "b.xlsx").write_bytes(b"PK\x03\x04 and no more")
    (school / "c.txt").write_text("Марко\nMira\n", encoding="utf-8")
    assert sheets("school", "gone.txt", "-o", "pdf") == 1
    out, err = capsys.readouterr()
    assert out == "3 PDFs are in pdf.\n"
    told = [line for line in err.splitlines() if line]
    assert len(told) == 4
    for line, name in zip(told, ("a.txt", "b.xlsx", "c.txt: Not made: Марко", "gone.txt"), strict=True):
        assert name in line
    assert (pages("pdf/c.pdf"), pages("pdf/room1.pdf"), pages("pdf/room2.pdf")) == (1, 2, 3)


def test_nothing_made_is_status_2_and_no_folder(school: Path) -> None:
    """As with one class, there is nothing to look at then."""
    assert sheets("gone.txt", "lost.txt", "-o", "pdf") == 2
    assert not Path("pdf").exists()


def test_what_is_no_list_is_said(school: Path, capsys: pytest.CaptureFixture[str]) -> None:
    """A class in a file that we do not read is not passed over in silence; our own PDFs and hidden files are."""
    for name in (".hidden.txt", "~$room1.xlsx", "old.pdf", "class.ods"):
        (school / name).write_bytes(b"-")
    assert sheets("school", "-o", "pdf") == 1
    assert capsys.readouterr().err.startswith("namewright: No list: school/class.ods.")


def test_lists_of_one_name_become_two_files(school: Path, capsys: pytest.CaptureFixture[str]) -> None:
    """Also where only the case differs: on some systems that is one file."""
    (school / "ROOM1.csv").write_text("Name\nWren\n", encoding="utf-8")
    assert sheets("school", "-o", "pdf") == 0
    assert sorted(path.name.lower() for path in Path("pdf").iterdir()) == ["room1-2.pdf", "room1.pdf", "room2.pdf"]
    assert "school/room1.txt is made into room1-2.pdf" in capsys.readouterr().out


def test_no_list_is_written_over(school: Path) -> None:
    """Not by its own pages, and not by those of another class."""
    (school / "list.pdf").write_text("Wren\n", encoding="utf-8")
    (school / "list.txt").write_text("Rook\n", encoding="utf-8")
    before = {path.name: path.read_bytes() for path in school.iterdir()}
    assert sheets("school/list.txt", "school/list.pdf", "school/room1.txt", "-o", "school") == 1
    assert {name: (school / name).read_bytes() for name in before} == before
    assert pages("school/room1.pdf") == 2


def test_a_file_is_no_folder(school: Path, capsys: pytest.CaptureFixture[str]) -> None:
    """Several classes into one PDF: said before anything is made; and a file that stands there stays."""
    assert sheets("school", "-o", "class.pdf") == 2
    assert "Name a folder" in capsys.readouterr().err
    Path("pdf").write_text("kept")
    assert sheets("school", "-o", "pdf") == 2
    assert Path("pdf").read_text() == "kept"


def test_what_is_made_beside_the_sheets_is_by_class_too(school: Path) -> None:
    """Pages for the adult and pictures; summaries in the folder of the sheets would take their names."""
    assert sheets("school", "-o", "pdf", "--summary", "adult", "--svg", "svg") == 0
    assert sorted(path.name for path in Path("adult").iterdir()) == ["room1.pdf", "room2.pdf"]
    assert [len(list(Path("svg", room).iterdir())) for room in ("room1", "room2")] == [2, 3]
    assert sheets("school", "-o", "same", "--summary", "same") == 2


def test_a_class_s_own_file_in_a_folder(school: Path) -> None:
    """It is known by how it begins, whatever it is called."""
    assert main(["class", "school/room3", "--from", "school/room1.txt"]) == 0
    assert lists_in(["school"]) == ([f"school/{name}" for name in ("room1.txt", "room2.csv", "room3")], [])
    assert sheets("school", "-o", "pdf") == 0
    assert pages("pdf/room3.pdf") == 2


@given(st.lists(st.text("aAb-2éE\u0301ß", max_size=4), max_size=12))
def test_no_two_names_are_one(names: list[str]) -> None:
    """Whatever lists are called; a name that is free stays, but for a number nothing changes."""
    made = distinct(names)
    assert len({name.casefold() for name in made}) == len(names)
    assert all(new == old or new.startswith(f"{old}-") for new, old in zip(made, names, strict=True))
    assert made[:1] == names[:1]
