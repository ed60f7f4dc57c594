"""The file of a class: what happens to it when things go wrong. Nothing is lost and one sentence is said.

Checked from outside with Python's own ``sqlite3`` and with killed processes.
"""

from __future__ import annotations

import os
import signal
import sqlite3
import stat
import subprocess
import sys
import tempfile
import time
from collections.abc import Iterator, Sequence
from contextlib import closing, contextmanager
from pathlib import Path

import pytest

from kept_class import refusal
from namewright.classbook import Classbook, ClassbookError
from namewright.wording import wording

NOBODY = 65534


def test_the_file_is_its_owners_alone_and_one_file(path: Path) -> None:
    """Names are private: 0600, whatever the umask; and nothing lies beside the file, open or closed."""
    assert stat.S_IMODE(path.stat().st_mode) == 0o600
    with Classbook.open(path) as book:
        book.set_settings(1, {"rows": "2"})
        assert os.listdir(path.parent) == ["class.db"]
        copy = path.with_name("copy.db")
        copy.write_bytes(path.read_bytes())  # a copy made while the class is open is whole
        with Classbook.open(copy) as other:
            assert other.settings_of(1) == {"rows": "2", "support": "light"}


@pytest.mark.parametrize(("pragma", "value"), [
    ("synchronous", 3),    # EXTRA: the folder's entry of a journal that is gone is on the disk, too
    ("secure_delete", 1),  # what is overwritten or deleted is zeroed
    ("busy_timeout", 5000),  # a change waits for another program
    ("foreign_keys", 1), ("temp_store", 2), ("trusted_schema", 0),
])
def test_an_open_class_is_set_to_survive_a_power_cut_and_to_leave_no_traces(path: Path, pragma: str,
                                                                            value: int) -> None:
    """SQLite's own account of the connection (sqlite.org/pragma.html); a rollback journal, deleted when it is done."""
    with Classbook.open(path) as book:
        assert book._db.execute(f"PRAGMA {pragma}").fetchone() == (value,)
        assert book._db.execute("PRAGMA journal_mode").fetchone() == ("delete",)


def test_a_file_put_into_write_ahead_logging_is_one_file_again(path: Path) -> None:
    """Another tool may have switched it; then the newest changes would stand in a second file."""
    with sqlite3.connect(path) as raw:
        assert raw.execute("PRAGMA journal_mode = WAL").fetchone() == ("wal",)
    raw.close()
    with Classbook.open(path) as book:
        book.set_settings(1, {"rows": "2"})
        assert os.listdir(path.parent) == ["class.db"]


def test_folders_missing_places_and_missing_files_are_said(path: Path) -> None:
    """A folder, a folder that is not there, and a file that is not to be made."""
    assert "is a folder" in refusal(path.parent)
    assert "no folder" in refusal(path.parent / "none" / "class.db")
    missing = path.with_name("missing.db")
    assert "no class" in refusal(missing, create=False)
    assert not missing.exists()
    missing.touch()
    assert "is empty" in refusal(missing, create=False)


@pytest.mark.parametrize("content", [b"Mira,Tilo\n" * 100, b"\x00" * 5000, b"SQLite format 3\x00", b"PK\x03\x04abc"])
def test_what_is_no_database_is_left_as_it_is(tmp_path: Path, content: bytes) -> None:
    """A list, a spreadsheet or a torn header is refused, and not one byte of it changes."""
    place = tmp_path / "list.csv"
    place.write_bytes(content)
    assert "not" in refusal(place)
    assert place.read_bytes() == content
    assert os.listdir(tmp_path) == ["list.csv"]


@pytest.mark.parametrize("share", [0.02, 0.3, 0.6, 0.95])
def test_a_truncated_file_is_said_and_left_as_it_is(path: Path, share: float) -> None:
    """A file cut short, in its header or anywhere, is refused and not made worse."""
    whole = path.read_bytes()
    cut = whole[:int(len(whole) * share)]
    path.write_bytes(cut)
    assert "damaged" in refusal(path) or "not a class" in refusal(path)
    assert path.read_bytes() == cut


def test_a_page_overwritten_with_rubbish_is_an_error_in_a_sentence(path: Path) -> None:
    """Damage inside the file is a sentence at the latest when it is read, never a traceback."""
    data = bytearray(path.read_bytes())
    data[4096:] = b"\xa5" * (len(data) - 4096)
    path.write_bytes(bytes(data))

    def read() -> None:
        with Classbook.open(path) as book:
            book.children()

    with pytest.raises(ClassbookError, match=r"classbook\.damaged"):
        read()


def test_a_locked_file_is_said_and_the_change_is_not_half_made(path: Path) -> None:
    """While another program holds the file a change waits, then says so; afterwards it can be made."""
    holder = sqlite3.connect(path, isolation_level=None)
    holder.execute("BEGIN EXCLUSIVE")
    assert "in use by another program" in refusal(path, wait_s=0.05)
    holder.execute("ROLLBACK")
    with Classbook.open(path, wait_s=0.05) as book:
        holder.execute("BEGIN IMMEDIATE")
        assert book.settings_of(1) == {"support": "light"}  # reading goes on beside a writer
        with pytest.raises(ClassbookError, match=r"classbook\.(busy|locked)"):
            book.set_settings(1, {"rows": "2"})
        holder.execute("ROLLBACK")
        assert book.set_settings(1, {"rows": "2"})
    holder.close()


def test_a_file_that_is_held_is_said_soon(path: Path) -> None:
    """A first look waits for two seconds at the most."""
    with closing(sqlite3.connect(path, isolation_level=None)) as holder:
        holder.execute("BEGIN EXCLUSIVE")
        start = time.monotonic()
        assert "in use by another program" in refusal(path)
        assert time.monotonic() - start < 2


@contextmanager
def as_nobody() -> Iterator[Path]:
    """Give a folder to work in as a user who may not do everything; root may write anywhere."""
    root = os.geteuid() == 0
    with tempfile.TemporaryDirectory() as name:
        place = Path(name)
        place.chmod(0o755)
        if root:
            os.chown(place, NOBODY, NOBODY)
            os.seteuid(NOBODY)
        try:
            yield place
        finally:
            if root:
                os.seteuid(0)
            place.chmod(0o755)


@pytest.mark.skipif(not hasattr(os, "seteuid"), reason="needs POSIX users")
def test_a_read_only_file_can_be_read_and_says_that_it_cannot_be_changed() -> None:
    """A file on a read-only share is still there to read; a change is refused in a sentence and lost nowhere."""
    with as_nobody() as folder:
        place = folder / "class.db"
        with Classbook.open(place) as book:
            book.update_roster("Mira Quill\n")
        place.chmod(0o400)
        with Classbook.open(place) as book:
            assert book.children()[0].child.practice == "Mira"
            with pytest.raises(ClassbookError, match=r"classbook\.read_only"):
                book.set_settings(1, {"rows": "2"})
        place.chmod(0o600)
        folder.chmod(0o500)
        with Classbook.open(place) as book, pytest.raises(ClassbookError, match=r"classbook\.(cannot_open|read_only)"):
            book.set_settings(1, {"rows": "2"})
        assert "cannot be made" in refusal(folder / "new.db")
        folder.chmod(0o700)
        place.chmod(0o000)
        assert "read" in refusal(place)


# --- migrations ----------------------------------------------------------------------------------------


# --- other programs, and being killed ------------------------------------------------------------------


def python(code: str, *words: object) -> subprocess.Popen[bytes]:
    return subprocess.Popen([sys.executable, "-c", code, *map(str, words)], stdout=subprocess.PIPE)


_NOTE_ON = """
import sys
from namewright.classbook import Classbook, Seen
with Classbook.open(sys.argv[1]) as book:
    for count in range(int(sys.argv[3])):
        book.set_settings(1, {"rows": str(count % 12 + 1)}, who=sys.argv[2])
        book.observe(1, "2026-09-10", Seen([0]), who=sys.argv[2], token=f"{sys.argv[2]} {count}")
"""


def test_two_programs_at_once_lose_and_double_nothing(path: Path) -> None:
    """Every save and every note of both is there once, and the history leads from the first value to the last."""
    both = [python(_NOTE_ON, path, who, 12) for who in ("one", "two")]
    assert [each.wait(60) for each in both] == [0, 0]
    with Classbook.open(path) as book:
        notes, history = book.observations(1), list(reversed(book.history(1)))
        assert sorted(note.who for note in notes) == ["one"] * 12 + ["two"] * 12
        values = [change for save in history for change in save.changes if change.key == "rows"]
        assert [change.before for change in values] == [None, *(change.after for change in values[:-1])]
        assert book.settings_of(1)["rows"] == values[-1].after


_SAVE_FOR_EVER = """
import sys
from namewright.classbook import Classbook
book = Classbook.open(sys.argv[1])
count = 0
while True:
    count += 1
    with book.changing():
        for child in (1, 2):
            book.set_settings(child, {"rows": str(count % 12 + 1)}, who=str(count))
    print(count, flush=True)
"""


@pytest.mark.parametrize("after", [1, 4, 9])
def test_a_killed_program_loses_at_most_the_save_it_was_in(path: Path, after: int) -> None:
    """What was reported as saved is there; a save cut off is there whole or not at all; the file is sound."""
    program = python(_SAVE_FOR_EVER, path)
    assert program.stdout
    saved = 0
    while saved < after:
        saved = int(program.stdout.readline())
    program.send_signal(signal.SIGKILL)
    saved = max([saved, *(int(line) for line in program.stdout.read().split())])
    program.wait()
    with Classbook.open(path) as book:
        one, two = ([int(save.who) for save in book.history(child) if save.who] for child in (1, 2))
        assert one == two
        assert one[0] in (saved, saved + 1)
        assert one == list(range(one[0], 0, -1))
        assert book.settings_of(1)["rows"] == book.settings_of(2)["rows"]
    assert _checked(path) == [("ok",)]


def test_a_program_killed_inside_a_save_leaves_the_state_before_it(path: Path) -> None:
    """Killed with pages already written to the file, the next opening restores what was there."""
    code = """
import os, sys
from namewright.classbook import Classbook
book = Classbook.open(sys.argv[1])
book._db.execute("PRAGMA cache_size = 1")  # pages spill into the file before the save is finished
book._db.execute("BEGIN IMMEDIATE")
book._db.executemany("INSERT INTO rosters (text, who, at) VALUES (?, '', '')", [("x" * 20000,)] * 50)
book._db.execute("UPDATE settings SET value = 'full'")
os.kill(os.getpid(), 9)
"""
    before = path.read_bytes()
    assert python(code, path).wait(60) == -signal.SIGKILL
    assert path.read_bytes() != before, "the kill came too early to test anything"
    assert os.listdir(path.parent) != ["class.db"]
    with Classbook.open(path) as book:
        assert book.settings_of(1) == {"support": "light"}
        assert book.roster_id() == 1
    assert _checked(path) == [("ok",)]
    assert os.listdir(path.parent) == ["class.db"]


def test_many_programs_make_one_new_class(tmp_path: Path) -> None:
    """Programs that make the same file at the same moment all open the same class."""
    code = "import sys; from namewright.classbook import Classbook; Classbook.open(sys.argv[1]).close()"
    started: Sequence[subprocess.Popen[bytes]] = [python(code, tmp_path / "new.db") for _ in range(4)]
    assert [each.wait(60) for each in started] == [0] * 4
    assert _checked(tmp_path / "new.db") == [("ok",)]


def _checked(path: Path) -> list[tuple[str]]:
    raw = sqlite3.connect(path)
    result = raw.execute("PRAGMA integrity_check").fetchall()
    assert not raw.execute("PRAGMA foreign_key_check").fetchall()
    raw.close()
    return result


@pytest.mark.skipif(sys.platform != "linux", reason="the limit of a file's size is set as Linux has it")
@pytest.mark.parametrize("room", [0, 4096, 16384])
def test_a_full_disk_while_a_class_is_begun_is_told(tmp_path: Path, room: int) -> None:
    """No file is left that looks like a class."""
    import resource
    import signal

    limit, before = resource.getrlimit(resource.RLIMIT_FSIZE), signal.signal(signal.SIGXFSZ, signal.SIG_IGN)
    resource.setrlimit(resource.RLIMIT_FSIZE, (room, limit[1]))
    try:
        with pytest.raises(ClassbookError) as caught:
            Classbook.open(tmp_path / "class.db")
    finally:
        resource.setrlimit(resource.RLIMIT_FSIZE, limit)
        signal.signal(signal.SIGXFSZ, before)
    assert wording("en").sentence(caught.value.message)
    assert not (tmp_path / "class.db").exists()
