"""What is hostile or unlucky at the command line is told in a sentence: pipes, figures, encodings, kills."""

from __future__ import annotations

import json
import os
import subprocess
import sys
import time
from collections.abc import Mapping
from pathlib import Path

import pytest

from namewright.whole_files import whole_file

NAMES = "Mira Vost\nOda Brane\nŁucja Oak\nIngá Vänt\n"
MANY = "9" * 5000


def run(*words: str | Path, folder: Path, stdin: bytes = b"", **more: str) -> subprocess.CompletedProcess[bytes]:
    """Run the command line in a folder, with these words more in its environment."""
    environment: Mapping[str, str] = {**os.environ, **more}
    return subprocess.run([sys.executable, "-m", "namewright.cli", *map(str, words)], cwd=folder, input=stdin,
                          capture_output=True, timeout=120, env=environment, check=False)


@pytest.fixture
def folder(tmp_path: Path) -> Path:
    """A folder with a list in it and a class made of it."""
    (tmp_path / "list.txt").write_text(NAMES, encoding="utf-8")
    return tmp_path


FIGURES = [
    ("--line-height", "1e999"), ("--line-height", MANY), ("--line-height", "1/" + MANY), ("--midline", "1e999"),
    ("--descender", MANY), ("--row-gap", "nan"), ("--set", f"rows={MANY}"), ("--set", "rows=1e999"),
    ("--set", f"letter_spacing={MANY}"), ("--letters", "slant=1e999"), ("--letters", f"slant={MANY}"),
]


@pytest.mark.parametrize(("option", "figure"), FIGURES, ids=[f"{option}{len(figure)}" for option, figure in FIGURES])
def test_a_figure_that_is_none_is_told(folder: Path, option: str, figure: str) -> None:
    """Neither the infinite nor five thousand digits."""
    found = run("sheets", "list.txt", "-o", "o.pdf", option, figure, folder=folder)
    assert found.returncode == 2
    assert found.stderr.decode().count("\n") == 1
    assert b"Traceback" not in found.stderr


@pytest.mark.parametrize("text", ['[{"label": "Mira", "group": 1e999}]', f'[{{"label": "Mira", "group": {MANY}}}]',
                                  "[" * 100_000, "[1]", '{"a": 1}', "\udcff"], ids=range(6))
def test_groups_that_are_none_are_told(folder: Path, text: str) -> None:
    """A file of groups that holds anything else."""
    (folder / "groups.json").write_text(text, encoding="utf-8", errors="surrogateescape")
    found = run("plan", "list.txt", "-o", "o.pdf", "--groups-from", "groups.json", folder=folder)
    assert found.returncode == 2
    assert b"does not hold the groups" in found.stderr


@pytest.mark.skipif(not hasattr(os, "mkfifo"), reason="the system has no named pipes")
@pytest.mark.parametrize("words", [("sheets", "pipe", "-o", "o.pdf"), ("plan", "pipe", "-o", "o.pdf"),
                                   ("sheets", "list.txt", "-o", "o.pdf", "--font", "pipe"),
                                   ("plan", "list.txt", "-o", "o.pdf", "--groups-from", "pipe"),
                                   ("class", "new.db", "--from", "pipe"), ("class", "new.db", "--import", "pipe"),
                                   ("class", "pipe"), ("note", "Mira", "--class", "pipe", "--all")])
def test_a_pipe_with_a_name_is_not_waited_for(folder: Path, words: tuple[str, ...]) -> None:
    """Nobody writes into it."""
    os.mkfifo(folder / "pipe")
    found = run(*words, folder=folder)
    assert found.returncode == 2
    assert found.stderr.decode().count("\n") == 1


@pytest.mark.parametrize("encoding", ["cp1252", "latin-1", "ascii", "cp437", "utf-8"])
def test_names_are_said_in_any_encoding(folder: Path, encoding: str) -> None:
    """A letter that an encoding lacks is escaped, and what was saved before it was said stays saved."""
    words = {"PYTHONIOENCODING": encoding}
    assert run("class", "c.db", "--from", "list.txt", folder=folder, **words).returncode == 0
    for command in (("roster", "list.txt"), ("order", "list.txt"), ("class", "c.db"), ("settings",),
                    ("order", "--help")):
        found = run(*command, folder=folder, **words)
        assert (found.returncode, found.stderr) == (0, b"")
    noted = run("note", "Łucja", "--class", "c.db", "--all", folder=folder, **words)
    assert (noted.returncode, noted.stderr) == (0, b"")
    read = json.loads(run("order", "list.txt", "--format", "json", folder=folder, **words).stdout.decode(encoding))
    assert {entry["label"] for entry in read} == {"Mira", "Oda", "Łucja", "Ingá"}


def test_what_is_pasted_has_a_limit(folder: Path) -> None:
    """An endless stream is not read for ever."""
    with subprocess.Popen(["yes", "Mira Vost"], stdout=subprocess.PIPE) as endless:
        found = subprocess.run([sys.executable, "-m", "namewright.cli", "sheets", "-", "-o", "o.pdf"], cwd=folder,
                               stdin=endless.stdout, capture_output=True, timeout=120, check=False)
        endless.kill()
    assert found.returncode == 2
    assert b"20 MB" in found.stderr


def test_pictures_of_others_stay(folder: Path) -> None:
    """One of ours is written over, one of somebody else is not."""
    words = ("sheets", "list.txt", "-o", "o.pdf", "--svg", "d", "--png", "d")
    for _ in range(2):
        assert run(*words, folder=folder).returncode == 0
    for name, content in (("0002.svg", b"<svg/>"), ("0003.png", b"\x89PNG mine")):
        before = (folder / "d" / name).read_bytes()
        (folder / "d" / name).write_bytes(content)
        found = run(*words, folder=folder)
        assert (found.returncode, (folder / "d" / name).read_bytes()) == (2, content)
        assert name.encode() in found.stderr
        (folder / "d" / name).write_bytes(before)


def test_what_a_killed_run_left_is_taken_away_by_the_next(tmp_path: Path) -> None:
    """But not what a run that goes on is writing."""
    left = tmp_path / ".namewright-killed"
    left.write_bytes(b"half")
    with whole_file(tmp_path / "going-on.pdf") as file:
        (going_on,) = (path for path in tmp_path.glob(".namewright-*") if path != left)
        for path in (left, going_on):
            os.utime(path, (time.time() - 3600,) * 2)
        with whole_file(tmp_path / "next.pdf") as other:
            other.write(b"next")
        file.write(b"whole")
    assert sorted(path.name for path in tmp_path.iterdir()) == ["going-on.pdf", "next.pdf"]
    assert (tmp_path / "going-on.pdf").read_bytes() == b"whole"


@pytest.mark.skipif(os.name != "posix", reason="the system sends no such signals")
@pytest.mark.parametrize("wait", [0.0, 0.7, 1.5, 3.0])
def test_ctrl_c_is_one_sentence(tmp_path: Path, wait: float) -> None:
    """Whenever it comes: no traceback, no half file, nothing hidden left."""
    (tmp_path / "list.txt").write_text("\n".join(f"Mira{'abcdefgh'[at % 8]} Vost{at}" for at in range(600)))
    with subprocess.Popen([sys.executable, "-m", "namewright.cli", "sheets", "list.txt", "-o", "o.pdf"], cwd=tmp_path,
                          stderr=subprocess.PIPE, start_new_session=True) as running:
        deadline = time.monotonic() + 60
        while not list(tmp_path.glob(".namewright-*")) and time.monotonic() < deadline and running.poll() is None:
            time.sleep(0.02)
        time.sleep(wait)
        running.send_signal(2)
        said = running.communicate(timeout=60)[1].decode()
    if running.returncode == 2:
        assert said == "namewright: Stopped. Nothing was left half written.\n"
        assert [path.name for path in tmp_path.iterdir()] == ["list.txt"]
    else:  # it was as quick
        assert running.returncode == 0
