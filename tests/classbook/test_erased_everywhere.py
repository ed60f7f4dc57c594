"""Erased means erased: after a class did all it can, no byte of any file holds the name of who was erased."""

from __future__ import annotations

import os
import sqlite3
import tempfile
import unicodedata
from collections.abc import Iterator
from pathlib import Path

import pytest

from namewright.classbook import Classbook, Seen
from namewright.classbook.rosters import NewList
from namewright.classbook.schema import MIGRATIONS, bring_up_to_date
from namewright.cli import main
from namewright.settings import Support

# A list as an office prints it: the child in her own row, in a brother's and a friend's, and where no child is.
RICH = """The Alder class - Zaphréa Quorndike is new
Student,Goes by,Hand,Mother,Siblings,Remarks,E-mail
"Quorndike, Zaphréa",Zaffi,left,Ilsabet Quorndike,Odo,"peanuts, sits with Mira",quorndike@example.org
"Quorndike, Odo",,right,Ilsabet Quorndike,Zaphréa and a baby,walks home with Zaphréa Quorndike,quorndike@example.org
"Quill, Mira",,,Orla Quill,,shares a cubby with Zaffi,orla@example.org
"Reed, Tilo",,,Petra Reed,,,
1234,,,,,Zaphréa’s locker,
"""
NAMES = ("Zaphréa", "Zaffi", "Zaphréia")
FAMILY = "Quorndike"


def forms(name: str) -> Iterator[bytes]:
    """Yield a name as bytes, small and capital, composed and not, in the encodings that a disk may hold."""
    for form in ("NFC", "NFD"):
        for text in (name, name.lower(), name.upper()):
            for encoding in ("utf-8", "utf-16-le", "utf-16-be", "latin-1"):
                yield unicodedata.normalize(form, text).encode(encoding, "ignore")


def found(folder: Path, name: str) -> list[str]:
    """Return the files below a folder that hold a name."""
    return [file.name for file in sorted(folder.rglob("*")) if file.is_file()
            and any(each in file.read_bytes() for each in forms(name))]


@pytest.fixture
def home(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """A folder in which everything is, the system's temporary files too."""
    (tmp_path / "tmp").mkdir()
    monkeypatch.setattr(tempfile, "tempdir", str(tmp_path / "tmp"))
    monkeypatch.setenv("TMPDIR", str(tmp_path / "tmp"))
    monkeypatch.chdir(tmp_path)
    return tmp_path


def lived_in(path: Path, *, whole: bool) -> int:
    """Make a class, let it do everything, and return the number of the child."""
    with Classbook.open(path) as book:
        book.update_roster(NewList(RICH.replace("Zaphréa", "Zaphréia"), whole=whole))
        book.update_roster(NewList(RICH, whole=whole), who="Zaphréa’s mother")
        child, odo, mira, tilo = (one.id for one in book.children())
        book.set_class_settings({"title": "Zaphréa’s class"})
        book.set_class_settings({"title": "The Alder class"})
        book.set_settings(child, {"line_height": "30", "keep_dots": "zq"}, who="Ms Quorndike")
        book.set_settings(mira, {"line_height": "24"}, who="ZAFFI’S AIDE")
        book.undo(child)
        book.observe(child, "2026-09-10", Seen([0], support=Support.LIGHT, note="Zaphréa was proud"))
        book.observe(odo, "2026-09-10", Seen([0], note="beside Zaphre\u0301a Quorndike"), who="Quorndike, Zaphréa")
        book.observe(mira, "2026-09-10", Seen(note="Zaffis Stift; zaphréa helped"), who="ZAPHRÉA")
        book.strike(book.observe(tilo, "2026-09-10", Seen(note="zaffi again")).id)
        book.seat(child, mira, False)
        book.keep_groups({child: 1, odo: 1, mira: 2, tilo: 2})
    return child


@pytest.mark.parametrize("whole", [False, True])
def test_no_file_holds_the_name(home: Path, whole: bool) -> None:
    """Neither the class, nor its journal, nor what killed runs left beside it; her brother keeps the family name."""
    path = home / "class.db"
    child = lived_in(path, whole=whole)
    assert main(["sheets", "class.db", "-o", "class.pdf", "--summary", "adult.pdf"]) in (0, 1)
    left = home / ".namewright-killed"
    left.mkdir()
    (left / "class.db").write_bytes(path.read_bytes())
    os.utime(left, (0, 0))
    assert found(home, "Zaphréa") == ["class.db", "class.db"]
    with Classbook.open(path) as book:
        erased = book.erase([child], also=[trace.key for trace in book.traces([child])])
        assert erased.standing == ()
        assert [one.child.label for one in book.children()] == ["Odo", "Mira", "Tilo"]
        assert book.observations(2)[0].note == "beside …"
        assert book.observations(3)[0].note == "… Stift; … helped"
        assert ("walks home with …" in book.roster_text()) == whole
    for name in NAMES:
        assert found(home, name) == []
    assert found(home, FAMILY) == ["class.db"]
    assert sorted(file.name for file in home.iterdir()) == ["adult.pdf", "class.db", "class.pdf", "tmp"]


def test_what_is_not_certain_is_told_and_stays(home: Path) -> None:
    """Given and family name together go by themselves; a given name alone is shown with its place, and stays."""
    child = lived_in(home / "class.db", whole=False)
    with Classbook.open(home / "class.db") as book:
        foretold = [(trace.place, trace.text) for trace in book.traces([child])]
        assert foretold == [
            ("note", "Zaffis Stift; zaphréa helped"), ("who", "ZAFFI’S AIDE"), ("who", "ZAPHRÉA"),
            ("who", "Zaphréa’s mother"), ("title", "Zaphréa’s class")]
        assert [(trace.place, trace.text) for trace in book.erase([child]).standing] == [
            pair for pair in foretold if pair[1] != "Zaphréa’s mother"]
        assert book.observations(2)[0].who == "…, …"


SISTERS = (
    "Given,Family,Goes by,Sister,Mother,Note\nZaphréa,Quorndike,,Odo,,\nOdo,Quorndike,{},Zaphréa,Ilsa Quorndike,new\n"
    "Tilo,Reed,,,,\n",
    "Given\tFamily\tSister\tHand\nZaphréa\tQuorndike\tOdo\tright\nOdo\tQuorndike\tZaphréa\tleft\nTilo\tReed\t\t\n",
    "Family,Given,Sister,Sister’s family,Hand\nQuorndike,Zaphréa,Odo,,right\nQuorndike,Odo,Zaphréa,Quorndike,left\n"
    "Reed,Tilo,,,\n")


@pytest.mark.parametrize("text", [SISTERS[0].format(""), SISTERS[0].format("Oddy"), *SISTERS[1:]])
def test_a_sister_s_name_beside_a_child_s_own_takes_nothing_of_it(home: Path, text: str) -> None:
    """Who stays keeps names and settings, cell by cell; where the sister's name stands alone is told, and goes."""
    with Classbook.open(home / "class.db") as book:
        book.update_roster(NewList(text, whole=True))
        child, *others = book.children()
        before = [(one.child.practice, one.child.given, one.child.family, one.child.hand) for one in others]
        assert book.erase([child.id], also=[trace.key for trace in book.traces([child.id])]).standing == ()
        after = [(one.child.practice, one.child.given, one.child.family, one.child.hand) for one in book.children()]
        assert after == before
        assert "phr" not in book.roster_text()


@pytest.mark.parametrize("told", ["Leavers: Zaphréa Quorndike", "Zaphréa Quorndike left us in May"])
@pytest.mark.parametrize("everywhere", [False, True])
def test_what_is_left_of_a_line_about_the_child_is_nobody(home: Path, told: str, everywhere: bool) -> None:
    """Without the name, the rest of a line in a list that is kept whole was read as a child called Leavers."""
    with Classbook.open(home / "class.db") as book:
        text = f"Given,Family\nZaphréa,Quorndike\nOdo,Vost\nMira,Quill\nTilo,Reed\n{told}\n"
        book.update_roster(NewList(text, whole=True))
        child, *others = book.children()
        assert child.child.practice == "Zaphréa"
        book.erase([child.id], also=[trace.key for trace in book.traces([child.id])] if everywhere else ())
        assert [one.child.label for one in book.children()] == [one.child.label for one in others]
        assert "phr" not in book.roster_text()


@pytest.mark.parametrize("text", ["Kestrels\n1. Zaphréa Quorndike\n2. Odo Vost\n3. Mira Quill\n",
                                  "Nachtlicht\nZaphréa Quorndike\nOdo Vost\nMira Quill\n"])
def test_a_title_is_nobody_when_fewer_stand_below(home: Path, text: str) -> None:
    """What the lines below said of a title they said together: without one of them it was read as a child."""
    with Classbook.open(home / "class.db") as book:
        book.update_roster(NewList(text, whole=True))
        book.erase([book.children()[0].id])
        assert [one.child.label for one in book.children()] == ["Odo", "Mira"]


def test_a_namesake_is_not_taken_for_the_child(home: Path) -> None:
    """Where another of the class has the same names, nothing said of that name is certain."""
    with Classbook.open(home / "class.db") as book:
        book.update_roster("Mira Quill\nMira Quill\nTilo Reed\n")
        book.observe(3, "2026-09-10", Seen(note="beside Mira Quill"))
        assert len(book.traces([1])) == 1
        book.erase([1])
        assert book.observations(3)[0].note == "beside Mira Quill"


def test_an_older_file_gives_up_its_older_lists(home: Path) -> None:
    """Opened by this version, only the newest list of a file from before is left, and nothing of the others' bytes."""
    raw = sqlite3.connect(home / "old.db", isolation_level=None)
    bring_up_to_date(raw, "old.db", MIGRATIONS[:4])
    for text in ("Zaphréa Quorndike\nMira Quill\n", "Mira Quill\n"):
        raw.execute("INSERT INTO rosters (text, who, at) VALUES (?, '', '2026-09-01')", (text,))
    raw.close()
    assert found(home, "Zaphréa")
    with Classbook.open(home / "old.db") as book:
        assert book.roster_text() == "Mira Quill\n"
    assert not found(home, "Zaphréa")
