"""Writing what was made: whole or not at all, and never over what is read in the same run."""

from __future__ import annotations

import argparse
import io
import os
from collections.abc import Callable
from pathlib import Path

import pytest

from namewright.commands.talk import Refusal
from namewright.commands.writing import check_targets, progress, target, written


def asked(**words: object) -> argparse.Namespace:
    return argparse.Namespace(**words)


def test_a_file_is_there_whole_or_not_at_all(tmp_path: Path) -> None:
    """Where the work breaks off, what stood there before stays, and no scrap is left."""
    place = tmp_path / "class.pdf"
    with written(str(place), asked()) as file:
        file.write(b"first")
    assert place.read_bytes() == b"first"
    with pytest.raises(TypeError), written(str(place), asked()) as file:
        file.writelines([b"half", "and then what is no bytes"])  # type: ignore[list-item]
    assert place.read_bytes() == b"first"
    assert [path.name for path in tmp_path.iterdir()] == ["class.pdf"]


@pytest.mark.parametrize("path", ["", "  ", ".", "missing/class.pdf"])
def test_what_is_no_place_for_a_file_is_refused(path: str, tmp_path: Path) -> None:
    """No name, a folder, and a folder that there is not."""
    with pytest.raises(Refusal):
        target(str(tmp_path / path) if path.strip() and path != "." else path or "", asked())


@pytest.mark.parametrize("word", ["roster", "file", "font", "groups_from"])
def test_what_is_read_is_not_written_over(word: str, tmp_path: Path) -> None:
    """By its own name, by a link to it, and by another way to it."""
    read, link = tmp_path / "list.txt", tmp_path / "link.pdf"
    read.write_text("Mira")
    link.symlink_to(read)
    for path in (read, link, tmp_path / "." / "list.txt"):
        with pytest.raises(Refusal):
            target(str(path), asked(**{word: str(read)}))
    assert target(str(tmp_path / "other.pdf"), asked(**{word: str(read)})) == tmp_path / "other.pdf"


@pytest.mark.parametrize("begins", [b"SQLite format 3\0 and a year of notes", b"PK\x03\x04 and a list"])
def test_a_class_or_a_spreadsheet_is_never_written_over(begins: bytes, tmp_path: Path) -> None:
    """Also where the run does not read it: a slip in a file's name costs nothing. A page made before may be."""
    place = tmp_path / "room4.db"
    place.write_bytes(begins)
    with pytest.raises(Refusal):
        target(str(place), asked())
    with pytest.raises(Refusal):
        check_targets(asked(output=str(place), summary=None))
    assert place.read_bytes() == begins
    place.write_bytes(b"%PDF-1.7")
    assert target(str(place), asked()) == place


def test_two_things_need_two_files(tmp_path: Path) -> None:
    """Told before any work is done; the same place by two names is one."""
    one = str(tmp_path / "a.pdf")
    check_targets(asked(output=one, summary=str(tmp_path / "b.pdf"), group_sheets=None))
    for other in (one, str(tmp_path / "." / "a.pdf")):
        with pytest.raises(Refusal):
            check_targets(asked(output=one, summary=other))


class Terminal(io.StringIO):
    """A stream that says it is a terminal."""

    def isatty(self) -> bool:
        return True


@pytest.mark.parametrize(("stream", "total", "quiet_s", "shown"), [
    (Terminal(), 12, 0.0, True), (Terminal(), 12, 60.0, False), (Terminal(), None, 0.0, False),
    (io.StringIO(), 12, 0.0, False)])
def test_how_far_the_work_is_shows_on_a_terminal_only(monkeypatch: pytest.MonkeyPatch, stream: io.StringIO,
                                                      total: int | None, quiet_s: float, shown: bool) -> None:
    """And only where there is enough to wait for; every page is passed on, in its order, either way."""
    monkeypatch.setattr("namewright.commands.writing._QUIET_S", quiet_s)
    pages = [object() for _ in range(12)]
    assert list(progress(pages, total, stream)) == pages  # type: ignore[arg-type]
    assert bool(stream.getvalue()) is shown


CLASS = "Mira\nTilo\nZoë\nJonquil\n"


Run = Callable[..., tuple[int, str, str]]


@pytest.mark.parametrize("target", ["missing/class.pdf", "."])
def test_paths_that_cannot_be_written(run: Run, roster: Path, tmp_path: Path, target: str) -> None:
    """The sentence names the path."""
    status, _, err = run("sheets", roster, "-o", tmp_path / target)
    assert status == 2
    assert "folder" in err


@pytest.mark.parametrize("command", ["sheets", "tiles", "order", "plan"])
def test_the_class_list_is_never_written_over(run: Run, roster: Path, tmp_path: Path, command: str) -> None:
    """Not by its name, and not by another name of the same file."""
    other = tmp_path / "other.pdf"
    other.symlink_to(roster)
    for output in (roster, other):
        status, _, err = run(command, roster, "-o", output)
        assert status == 2
        assert "would be lost" in err
        assert roster.read_text(encoding="utf-8") == CLASS


def test_a_class_file_is_never_written_over(run: Run, roster: Path, tmp_path: Path) -> None:
    """A page of progress cannot take the place of the notes that it is made from."""
    book = tmp_path / "class.db"
    assert run("class", book, "--from", roster)[0] == 0
    assert run("note", "Mira", "--class", book, "--all")[0] == 0
    before = book.read_bytes()
    assert run("progress", "Mira", "--class", book, "-o", book)[0] == 2
    assert book.read_bytes() == before


def test_what_is_no_file_is_not_replaced(run: Run, roster: Path, tmp_path: Path) -> None:
    """A pipe or a device stays what it is, and a file that is protected stays as it is."""
    pipe, kept = tmp_path / "pipe", tmp_path / "kept.pdf"
    os.mkfifo(pipe)
    kept.write_bytes(b"old")
    kept.chmod(0o444)
    for output, words in ((pipe, "not an ordinary file"), (kept, "protected"), ("", "no name")):
        status, _, err = run("sheets", roster, "-o", output)
        assert status == 2
        assert words in err
    assert pipe.is_fifo()
    assert kept.read_bytes() == b"old"


def test_two_pages_cannot_go_into_one_file(run: Run, roster: Path, tmp_path: Path) -> None:
    """Every file is looked at before any is written."""
    for summary in (tmp_path / "class.pdf", tmp_path / "none" / "adult.pdf"):
        assert run("sheets", roster, "-o", tmp_path / "class.pdf", "--summary", summary)[0] == 2
        assert not (tmp_path / "class.pdf").exists()
