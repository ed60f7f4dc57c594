"""A file that holds what no class can hold is mended: what is odd is told and taken out, and all the rest stays."""

from __future__ import annotations

import io
import sqlite3
from pathlib import Path

import pytest

from namewright.classbook import Classbook, ClassbookError, Seen
from namewright.classbook.mending import mend
from namewright.cli import main

ODD = (
    ("UPDATE children SET support = 'xx' WHERE id = 1", "children", "support", "Mira"),
    ("UPDATE children SET line_height_mm = 9e999 WHERE id = 1", "children", "line_height_mm", "Mira"),
    ("UPDATE children SET line = 'a' WHERE id = 2", "children", "line", "Oda"),
    ("UPDATE children SET label = x'00ff' WHERE id = 2", "children", "label", None),
    ("UPDATE children SET line = 1 WHERE id = 2", "children", "line", "Oda"),
    ("UPDATE observations SET date = '2026-02-30'", "observations", "date", "Mira"),
    ("UPDATE observations SET date = '2026-99-99'", "observations", "date", "Mira"),
    ("UPDATE observations SET letters = '0 x'", "observations", "letters", "Mira"),
    ("UPDATE observations SET letters = '0 7'", "observations", "letters", "Mira"),
    ("UPDATE observations SET name = ' '", "observations", "name", "Mira"),
    ("UPDATE observations SET note = x'6869'", "observations", "note", "Mira"),
    ("UPDATE settings SET value = '1e999' WHERE key = 'line_height'", "settings", "line_height", "Mira"),
    ("INSERT INTO class_settings VALUES ('quill', 'x')", "class_settings", "quill", ""),
    ("INSERT INTO taught VALUES ('soon', 'a')", "taught", "week", ""),
    ("UPDATE saves SET who = x'07' WHERE id = 1", "saves", "who", ""),
    ("UPDATE rosters SET at = x'00'", "rosters", "at", ""),
    ("CREATE TRIGGER spy AFTER INSERT ON saves BEGIN DELETE FROM children; END", "trigger", "", ""),
    ("CREATE VIEW spy AS SELECT 1", "view", "", ""),
    ("CREATE TABLE spy (child REFERENCES children (id))", "table", "", ""),
    ("CREATE UNIQUE INDEX spy ON saves (who)", "index", "", ""),
    ("UPDATE observations SET note = CAST(x'c3' AS TEXT)", "observations", "note", "Mira"),
    ("UPDATE observations SET note = 'good' || char(27) || '[2J'", "observations", "note", "Mira"),
    ("UPDATE children SET label = CAST(x'4d69eda0' AS TEXT) WHERE id = 2", "children", "label", None),
)


@pytest.fixture
def path(tmp_path: Path) -> Path:
    """A class with something of most kinds in it."""
    with Classbook.open(tmp_path / "class.db") as book:
        book.update_roster("Mira Vost\nOda Brane\n")
        book.set_settings(1, {"line_height": "22", "support": "light"})
        book.observe(1, "2026-09-14", Seen([0], note="good"))
    return tmp_path / "class.db"


def meddle(path: Path, statement: str) -> None:
    """Change a file behind our back."""
    raw = sqlite3.connect(path, isolation_level=None)
    raw.execute("PRAGMA ignore_check_constraints = ON")
    raw.execute(statement)
    raw.close()


@pytest.mark.parametrize(("statement", "table", "column", "label"), ODD)
def test_what_is_odd_is_told_and_taken_out(path: Path, statement: str, table: str, column: str, label: str) -> None:
    """Told without a change first; then the file opens, and both children are in it with all that was whole."""
    meddle(path, statement)
    before = path.read_bytes()
    with pytest.raises(ClassbookError, match=r"odd_value|foreign_part"):
        Classbook.open(path)
    (odd,) = mend(path, really=False)
    assert (odd.table, odd.column) == (table, column)
    assert label is None or odd.label == label
    assert path.read_bytes() == before
    assert mend(path, really=True) == (odd,)
    assert mend(path, really=False) == ()
    with Classbook.open(path) as book:
        assert [one.child.given for one in book.children()] == ["Mira", "Oda"]
        assert len({one.child.line for one in book.children()}) == 2
        assert book.roster_text() == "Mira Vost\nOda Brane\n"
        assert book.settings_of(1)["support"] == "light"


def test_text_that_cannot_be_read_keeps_what_can(path: Path) -> None:
    """Of a long note, a name and the list only what is damaged goes, and the list keeps its lines."""
    meddle(path, "UPDATE observations SET note = replace(hex(zeroblob(40)), '00', 'seen ') || CAST(x'ff' AS TEXT)")
    meddle(path, "UPDATE children SET given = 'Oda' || char(27) WHERE id = 2")
    meddle(path, "UPDATE rosters SET text = CAST(x'ff' AS TEXT) || text")
    assert len(mend(path, really=True)) == 3
    with Classbook.open(path) as book:
        assert book.observations(1)[0].note == "seen " * 40 + "\ufffd"
        assert book.child(2).child.given == "Oda "
        assert book.roster_text() == "\ufffdMira Vost\nOda Brane\n"


def test_the_command_asks_first(path: Path, capsys: pytest.CaptureFixture[str],
                                monkeypatch: pytest.MonkeyPatch) -> None:
    """The refusal names the command; it shows child and value, changes nothing without a yes, and says how it went."""
    meddle(path, ODD[0][0])
    assert main(["class", str(path)]) == 2
    assert "--mend" in capsys.readouterr().err
    monkeypatch.setattr("sys.stdin", io.StringIO("no\n"))
    assert main(["class", str(path), "--mend"]) == 2
    assert "Mira: support was “xx”" in capsys.readouterr().err
    assert main(["class", str(path), "--mend", "--yes"]) == 0
    assert main(["class", str(path), "--mend"]) == 0
    assert "Nothing in" in capsys.readouterr().out


def test_a_file_that_is_cut_short_is_not_mended(path: Path) -> None:
    """It is told as damaged, and no byte of it changes."""
    path.write_bytes(path.read_bytes()[:-3000])
    before = path.read_bytes()
    with pytest.raises(ClassbookError, match=r"classbook\.damaged"):
        mend(path, really=True)
    assert path.read_bytes() == before
