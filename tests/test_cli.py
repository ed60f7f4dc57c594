"""The command line: what it promises to scripts, and what it says to people."""

from __future__ import annotations

import json
import os
import subprocess
import sys
import zipfile
from collections.abc import Callable, Sequence
from pathlib import Path

import pypdf
import pytest

from namewright.cli import main
from namewright.lines.ruling import PRESETS

CLASS = "Mira\nTilo\nZoë\nJonquil\n"


@pytest.fixture
def roster(tmp_path: Path) -> Path:
    path = tmp_path / "class.txt"
    path.write_text(CLASS, encoding="utf-8")
    return path


Run = Callable[..., tuple[int, str, str]]


@pytest.fixture
def run(capsys: pytest.CaptureFixture[str]) -> Run:
    def _run(*argv: str | Path) -> tuple[int, str, str]:
        try:
            status = main([str(word) for word in argv])
        except SystemExit as leaving:
            status = int(leaving.code or 0)
        out, err = capsys.readouterr()
        assert "Traceback" not in err
        return status, out, err
    return _run


def pages(path: Path) -> int:
    return len(pypdf.PdfReader(path).pages)


def entries(path: Path) -> Sequence[object]:
    return pypdf.PdfReader(path).outline


def test_sheets_make_a_page_a_child_and_one_for_the_adult(run: Run, roster: Path, tmp_path: Path) -> None:
    """Everyone made is status 0, and nothing is said; the adult's page is a file of its own."""
    status, out, err = run("sheets", roster, "-o", tmp_path / "class.pdf", "--summary", tmp_path / "adult.pdf")
    assert (status, out, err) == (0, "", "")
    assert pages(tmp_path / "class.pdf") == len(entries(tmp_path / "class.pdf")) == 4
    assert pages(tmp_path / "adult.pdf") == 1


def test_the_other_children_are_still_made(run: Run, tmp_path: Path) -> None:
    """A child we cannot draw is named on stderr with the character; the status is 1."""
    roster = tmp_path / "class.txt"
    roster.write_text("Mira\nМарко\n名前\nTilo\n", encoding="utf-8")
    status, _, err = run("sheets", roster, "-o", tmp_path / "class.pdf")
    assert status == 1
    assert "Марко (line 2)" in err
    assert "cyrillic capital letter em" in err
    assert "名前 (line 3)" in err
    assert len(entries(tmp_path / "class.pdf")) == 2


def test_nobody_made_is_status_2_and_no_file(run: Run, tmp_path: Path) -> None:
    """Where nothing can be made nothing is written."""
    roster = tmp_path / "class.txt"
    roster.write_text("Марко\n", encoding="utf-8")
    status, _, err = run("sheets", roster, "-o", tmp_path / "class.pdf")
    assert status == 2
    assert "Марко" in err
    assert not (tmp_path / "class.pdf").exists()


def test_pasted_text(tmp_path: Path) -> None:
    """``-`` reads what is pasted, in a process of its own."""
    done = subprocess.run([sys.executable, "-m", "namewright.cli", "sheets", "-", "-o", str(tmp_path / "class.pdf")],
                          input=CLASS.encode(), capture_output=True, check=False)
    assert (done.returncode, done.stdout, done.stderr) == (0, b"", b"")
    assert pages(tmp_path / "class.pdf") == 4


def test_pictures_are_numbered_not_named(run: Run, roster: Path, tmp_path: Path) -> None:
    """A child's name never becomes a file name."""
    run("sheets", roster, "-o", tmp_path / "class.pdf", "--svg", tmp_path / "svg", "--png", tmp_path / "png")
    assert sorted(p.name for p in (tmp_path / "svg").iterdir()) == [f"{n:04d}.svg" for n in range(1, 5)]
    assert sorted(p.name for p in (tmp_path / "png").iterdir()) == [f"{n:04d}.png" for n in range(1, 5)]


@pytest.mark.parametrize("name", ["Bo", "Christopherson", "Ẹ̀bun", "Ana María", "AJ"])
@pytest.mark.parametrize("options", [(), ("--size", "3x5", "--line-height", "12"), ("--fill-sheet", "--paper", "a4"),
                                     ("--size", "a6", "--support", "independent")])
def test_card(run: Run, name: str, options: tuple[str, ...], tmp_path: Path) -> None:
    """One page, for the name as typed."""
    status, _, err = run("card", name, "-o", tmp_path / "card.pdf", *options)
    assert (status, err) == (0, "")
    assert pages(tmp_path / "card.pdf") == 1


def test_tiles(run: Run, roster: Path, tmp_path: Path) -> None:
    """Tiles come in both sizes."""
    for side in ("25", "38"):
        assert run("tiles", roster, "-o", tmp_path / "tiles.pdf", "--tile", side)[0] == 0
        assert pages(tmp_path / "tiles.pdf") >= 1


def test_the_order_claps_in_the_language_asked_for(run: Run, tmp_path: Path) -> None:
    """Beats are those of ``--captions``, in json and in csv."""
    names = tmp_path / "names.txt"
    names.write_text("Mateo\nNoelia\n")
    for form in ("json", "csv"):
        english, spanish = (run("order", names, "--format", form, "--captions", language)[1]
                            for language in ("en", "es"))
        assert english != spanish


def test_order_as_json(run: Run, roster: Path) -> None:
    """A list, one object a child, in the order to practise."""
    status, out, _ = run("order", roster, "--format", "json")
    order = json.loads(out)
    assert status == 0
    assert {one["name"] for one in order} == {"Mira", "Tilo", "Zoë", "Jonquil"}
    assert [one["difficulty"] for one in order] == sorted(one["difficulty"] for one in order)


@pytest.mark.parametrize("command", ["order", "plan"])
def test_beats_that_do_not_fit_are_said(run: Run, tmp_path: Path, command: str) -> None:
    """A teacher's own beats that do not join to the name are named with the child; everyone is still made."""
    (tmp_path / "class.csv").write_text("Name,Beats\nTilo,Ti-lo\nMira,Mi-na\n", encoding="utf-8")
    status, _, err = run(command, tmp_path / "class.csv", "-o", tmp_path / "out")
    assert (status, err.count("\n")) == (0, 1)
    assert "Mira (line 3)" in err
    assert "“Mi-na”" in err


def test_the_words_scripts_rely_on(run: Run, roster: Path, tmp_path: Path) -> None:
    """Every command takes the common words."""
    common = ("--paper", "a4", "--landscape", "--ruling", "de-5", "--line-height", "12", "--support", "light",
              "--hand", "left", "--order", "name", "--captions", "es")
    for command, subject in (("sheets", roster), ("tiles", roster), ("order", roster), ("card", "Mira")):
        status, _, err = run(command, subject, "-o", tmp_path / "out", *common)
        assert status == 0, err


def test_every_ruling_makes_the_class(run: Run, roster: Path, tmp_path: Path) -> None:
    """Each name in the list of rulings can be asked for."""
    for name in PRESETS:
        assert run("sheets", roster, "-o", tmp_path / "class.pdf", "--ruling", name)[0] == 0, name


@pytest.mark.parametrize(("height", "words"), [
    ("0", "4 to 80 mm"), ("-5", "-5"), ("400", "4 to 80 mm"), ("tall", "tall"), ("", "length"), ("nan", "nan")])
def test_line_heights_that_cannot_be(run: Run, roster: Path, tmp_path: Path, height: str, words: str) -> None:
    """One sentence that says what to choose; nothing is made."""
    status, _, err = run("sheets", roster, "-o", tmp_path / "class.pdf", f"--line-height={height}")
    assert status == 2
    assert words in err
    assert err.count("\n") == 1


def _zip_bomb(path: Path) -> None:
    with zipfile.ZipFile(path, "w", zipfile.ZIP_DEFLATED) as archive:
        archive.writestr("[Content_Types].xml", b" " * 60_000_000)
        archive.writestr("xl/workbook.xml", b" " * 60_000_000)


@pytest.mark.parametrize(("name", "content"), [
    ("empty.txt", b""), ("blank.txt", b"\n \n\t\n"), ("headers.csv", b"First name,Last name\n"),
    ("binary.txt", bytes(range(256)) * 8), ("broken.xlsx", b"PK\x03\x04 not a workbook"),
    ("emoji.txt", "🙂\n🎈🎈\n".encode()), ("marks.txt", "\u0301\u0308\n".encode()),
    ("bidi.txt", "\u202e\u200f\n".encode()), ("long.txt", b"A" + b"b" * 499 + b"\n")])
def test_rosters_with_nobody_in_them(run: Run, tmp_path: Path, name: str, content: bytes) -> None:
    """One sentence, status 2, no file."""
    (tmp_path / name).write_bytes(content)
    status, _, err = run("sheets", tmp_path / name, "-o", tmp_path / "class.pdf")
    assert status == 2
    assert err.startswith("namewright: ")
    assert not (tmp_path / "class.pdf").exists()


def test_zip_bomb(run: Run, tmp_path: Path) -> None:
    """A workbook that would unpack to a hundred times its size is refused."""
    _zip_bomb(tmp_path / "class.xlsx")
    status, _, err = run("sheets", tmp_path / "class.xlsx", "-o", tmp_path / "class.pdf")
    assert status == 2
    assert err.count("\n") == 1


def test_bad_lines_leave_the_others(run: Run, tmp_path: Path) -> None:
    """Emoji, a 500-letter name, controls and lone marks are left out by line; the rest are made."""
    roster = tmp_path / "class.txt"
    roster.write_text("Mira\n🙂\n" + "A" * 500 + "\nTi\x07lo\n\u0301\nعلي\n", encoding="utf-8")
    status, _, err = run("sheets", roster, "-o", tmp_path / "class.pdf")
    assert status == 1
    for line in (2, 3, 5):
        assert f"line {line}" in err
    assert len(entries(tmp_path / "class.pdf")) == 2


@pytest.mark.parametrize("target", ["missing/class.pdf", "."])
def test_paths_that_cannot_be_written(run: Run, roster: Path, tmp_path: Path, target: str) -> None:
    """The sentence names the path."""
    status, _, err = run("sheets", roster, "-o", tmp_path / target)
    assert status == 2
    assert "folder" in err


def test_a_roster_that_is_not_there(run: Run, tmp_path: Path) -> None:
    """And one that is a folder."""
    for path in (tmp_path / "none.txt", tmp_path):
        status, _, err = run("sheets", path, "-o", tmp_path / "class.pdf")
        assert status == 2
        assert err.count("\n") == 1


def test_a_failed_run_keeps_the_old_file(run: Run, roster: Path, tmp_path: Path) -> None:
    """Files are written whole or not at all, and no scraps are left."""
    target = tmp_path / "class.pdf"
    target.write_bytes(b"old")
    bad = tmp_path / "bad.txt"
    bad.write_text("Марко\n", encoding="utf-8")
    assert run("sheets", bad, "-o", target)[0] == 2
    assert target.read_bytes() == b"old"
    assert sorted(p.name for p in tmp_path.iterdir()) == ["bad.txt", "class.pdf", "class.txt"]


def test_the_same_list_gives_the_same_bytes(run: Run, roster: Path, tmp_path: Path) -> None:
    """No date, no random order."""
    for name in ("one.pdf", "two.pdf"):
        run("sheets", roster, "-o", tmp_path / name)
    assert (tmp_path / "one.pdf").read_bytes() == (tmp_path / "two.pdf").read_bytes()


def test_help_is_there_for_every_command(run: Run) -> None:
    """Help names every command, and each explains itself."""
    status, out, _ = run("--help")
    assert status == 0
    for command in ("sheets", "card", "tiles", "order", "roster", "rulings"):
        assert command in out
        assert run(command, "--help")[0] == 0


def test_unknown_words_are_refused_in_a_sentence(run: Run) -> None:
    """With status 2 and a way on."""
    status, _, err = run("sheets", "x", "-o", "y", "--paper", "a3")
    assert status == 2
    assert "--paper cannot be “a3”. Choose from letter, a4" in err
    assert "--help" in err


@pytest.mark.parametrize(("words", "sentence"), [
    (("sheets",), "This is missing: your class list"), (("sheets", "x"), "where to write it"),
    (("sheets", "x", "-o"), "-o needs a word"), (("sheets", "x", "-o", "y", "--nope"), "There is no “--nope”"),
    (("order", "my", "class.txt"), "Put quotes round a name"), (("print",), "no command “print”"),
    (("Mira Tilo",), "no command “Mira Tilo”"), (("card", "Mira", "-o", "y", "--midline", "low"), "needs a number"),
    (("sheets", "x", "-o", "y", "--l"), "could mean --language, --landscape"),
    (("progress", "x", "--all"), "used together"),
    (("card", "Mira", "-o", "y", "--set", "rows"), "does not say what to set it to")])
def test_what_was_missing_is_said_in_plain_words(run: Run, words: tuple[str, ...], sentence: str) -> None:
    """Nobody needs to know what an argument is."""
    status, _, err = run(*words)
    assert status == 2
    assert sentence in err
    assert "argument" not in err
    assert err.count("\n") == 1


def test_no_word_at_all_shows_the_help(run: Run) -> None:
    """Somebody who only types the name of the program is told what it can do."""
    status, out, err = run()
    assert (status, err) == (2, "")
    assert "For example:" in out


def test_help_begins_with_what_must_be_said(run: Run) -> None:
    """The first line names what is needed and nothing else; what an option gives by itself is explained."""
    for command, needed in (("sheets", "ROSTER -o FILE …"), ("progress", "[CHILD] --class FILE -o FILE …"),
                            ("rulings", "")):
        out = run(command, "--help")[1]
        assert out.splitlines()[0].rstrip() == f"usage: namewright {command} {needed}".rstrip()
        assert "CAPITALS stand for your own" in " ".join(out.split())
        assert "argument" not in out


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


def _shell(line: str, *words: str | Path) -> subprocess.CompletedProcess[str]:
    """Run a line of the shell in which “$@” is the program with these words."""
    program = [sys.executable, "-m", "namewright.cli", *map(str, words)]
    return subprocess.run(["bash", "-c", line, "-", *program], capture_output=True, text=True, check=False)


def test_streams_that_are_closed_or_full(roster: Path, tmp_path: Path) -> None:
    """No traceback: a closed stdin is an empty list, and an answer that could not be written is said."""
    closed = _shell('"$@" <&-', "sheets", "-", "-o", tmp_path / "class.pdf")
    assert (closed.returncode, closed.stderr.count("\n")) == (2, 1)
    assert "is empty" in closed.stderr
    assert _shell('"$@" >&-', "order", roster).returncode == 0
    gone = _shell('"$@" | head -1; exit ${PIPESTATUS[0]}', "rulings")
    assert (gone.returncode, gone.stderr) == (0, "")
    if Path("/dev/full").is_char_device():
        full = _shell('"$@" > /dev/full', "order", roster)
        assert (full.returncode, full.stderr.count("\n")) == (2, 1)


def test_a_note_about_the_file_is_said_outright(run: Run, tmp_path: Path) -> None:
    """An encoding that was guessed concerns every accent, so nobody has to ask for it."""
    (tmp_path / "class.txt").write_bytes("Mira\nZoë\n".encode("cp1252"))
    status, _, err = run("sheets", tmp_path / "class.txt", "-o", tmp_path / "class.pdf")
    assert (status, err.count("\n")) == (0, 1)
    assert "Windows-1252" in err


@pytest.mark.parametrize(("typed", "name", "said"), [
    ("MIRA", "Mira", "all in one case"), ("Lena Rose Moss", "Lena Rose Moss", ""), ("Moss, Katie", "Katie Moss", ""),
    ("Mira 🌟", "Mira", "🌟"), ("Mi\u200bra", "Mira", "U+200B"), ("j.p.", "J.P.", "all in one case"),
    ("Keali'i", "Keali'i", "ʻokina"), ("ANA DE LA CRUZ", "Ana de la Cruz", "all in one case")])
def test_one_name_is_written_as_typed_or_it_is_said(run: Run, typed: str, name: str, said: str, tmp_path: Path) -> None:
    """A card has every word that was typed, and whatever was changed is said."""
    status, _, err = run("card", typed, "-o", tmp_path / "card.pdf")
    assert (status, bool(err)) == (0, bool(said))
    assert said in err
    entry = pypdf.PdfReader(tmp_path / "card.pdf").outline[0]
    assert not isinstance(entry, list)
    assert entry.title == name


@pytest.mark.parametrize("typed", ["", "🌟", "123", "Mira, Tilo, Nia", "Mira\nTilo", "\u0301", "A" * 500, "\u202e"])
def test_one_name_that_is_none(run: Run, typed: str, tmp_path: Path) -> None:
    """One sentence on one line, and no card."""
    status, _, err = run("card", typed, "-o", tmp_path / "card.pdf")
    assert (status, err.count("\n")) == (2, 1)
    assert not (tmp_path / "card.pdf").exists()


def test_a_stop_while_a_command_is_loaded(run: Run, roster: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """Ctrl-C is answered in a sentence from the first moment on, not only while pages are made."""
    def stop(_: str) -> None:
        raise KeyboardInterrupt

    monkeypatch.setattr("namewright.cli.import_module", stop)
    assert run("order", roster) == (2, "", "namewright: Stopped. Nothing was left half written.\n")
