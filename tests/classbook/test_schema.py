"""An older file is brought up to date whole or not at all; a newer or foreign one is left as it is."""

from __future__ import annotations

import sqlite3
from pathlib import Path

import pytest

from kept_class import refusal
from namewright.classbook import Classbook
from namewright.classbook.schema import MIGRATIONS, bring_up_to_date


class Overtaken(sqlite3.Connection):
    """A connection that another program is quicker than: it has brought the file up to date meanwhile."""

    def execute(self, sql: str, *values: object) -> sqlite3.Cursor:
        if sql == "BEGIN IMMEDIATE":
            other = sqlite3.connect(self.cursor().execute("PRAGMA database_list").fetchone()[2], isolation_level=None)
            bring_up_to_date(other, "new.db")
            other.close()
        return super().execute(sql, *values)  # type: ignore[arg-type]


def test_another_programs_database_is_left_as_it_is(tmp_path: Path) -> None:
    """A database with other tables is refused untouched."""
    place = tmp_path / "other.db"
    with sqlite3.connect(place) as other:
        other.execute("CREATE TABLE songs (title TEXT)")
    other.close()
    before = place.read_bytes()
    assert "another program" in refusal(place)
    assert place.read_bytes() == before


def test_a_newer_file_is_refused_untouched(path: Path) -> None:
    """Tables this program does not know are not touched, and the sentence says what to do."""
    with sqlite3.connect(path) as raw:
        raw.execute(f"PRAGMA user_version = {len(MIGRATIONS) + 1}")
    raw.close()
    before = path.read_bytes()
    assert "newer Namewright" in refusal(path)
    assert path.read_bytes() == before


def test_an_older_file_is_brought_up_to_date_in_one_step_or_not_at_all(tmp_path: Path) -> None:
    """Migrations run in order, once; one that fails leaves the file as it was, with all that is in it."""
    first = ("CREATE TABLE notes (text TEXT)",)
    second = ("ALTER TABLE notes ADD COLUMN day TEXT", "UPDATE notes SET day = '2026-09-01'")
    broken = ("INSERT INTO notes VALUES ('half', NULL)", "no such words")
    raw = sqlite3.connect(tmp_path / "old.db", isolation_level=None)
    bring_up_to_date(raw, "old.db", [first])
    raw.execute("INSERT INTO notes VALUES ('seen')")
    with pytest.raises(sqlite3.OperationalError):
        bring_up_to_date(raw, "old.db", [first, second, broken])
    assert raw.execute("SELECT * FROM notes").fetchall() == [("seen",)]
    bring_up_to_date(raw, "old.db", [first, second])
    bring_up_to_date(raw, "old.db", [first, second])
    assert raw.execute("SELECT * FROM notes").fetchall() == [("seen", "2026-09-01")]
    assert raw.execute("PRAGMA user_version").fetchone() == (2,)
    raw.close()


def test_a_file_that_another_program_has_just_brought_up_to_date_is_left_so(tmp_path: Path) -> None:
    """Between the first look and the lock another program may do the same; the version is looked at once more."""
    raw = sqlite3.connect(tmp_path / "new.db", isolation_level=None, factory=Overtaken)
    bring_up_to_date(raw, "new.db")
    assert raw.execute("PRAGMA user_version").fetchone() == (len(MIGRATIONS),)
    assert raw.execute("SELECT count(*) FROM class").fetchone() == (1,)
    raw.close()


def test_a_file_as_the_first_version_made_it_still_opens(tmp_path: Path) -> None:
    """The first migration is frozen: its tables, written out here, are what every later version must open."""
    columns = {
        "rosters": "id text who at",
        "children": "id given family practice label line support hand line_height_mm joined_at left_at",
        "class_settings": "key value", "settings": "child_id key value", "saves": "id child_id who at undoes",
        "changes": "save_id key before after",
        "observations": "id child_id date name letters support stage note who at token struck_at",
    }
    raw = sqlite3.connect(tmp_path / "first.db", isolation_level=None)
    bring_up_to_date(raw, "first.db", MIGRATIONS[:1])
    found = {name: " ".join(row[1] for row in raw.execute(f"PRAGMA table_info({name})")) for (name,) in raw.execute(
        "SELECT name FROM sqlite_master WHERE type = 'table' AND name NOT LIKE 'sqlite_%'")}
    raw.close()
    assert found == columns
    with Classbook.open(tmp_path / "first.db") as book:
        assert book.children() == ()
