"""A class's file that is damaged, meddled with or cut off by a full disk is told in a sentence, and stays as it is."""

from __future__ import annotations

import random
import shutil
import sqlite3
from collections.abc import Iterator
from pathlib import Path

import pytest

from namewright.classbook import Classbook, ClassbookError, Seen
from namewright.classbook.connect import connected
from namewright.classbook.export import export_csv, import_csv
from namewright.classbook.schema import MIGRATIONS
from namewright.making.from_book import holds_for_child, members_of, roster_of
from namewright.message import Problem
from namewright.practice.ordering import Order, order_class
from namewright.wording import wording

# An invented class.
LIST = "Mira Vost, left\nOda Brane\nŁucja Oak\nIngá Vänt (goes by Inga)\n"
ODD: tuple[object, ...] = ("", "x", "1e999", b"\x00\xff", 9e999, -1, 10**12, "2026-99-99", "9" * 50, None)


@pytest.fixture(scope="module")
def kept(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A class with something in every table."""
    path = tmp_path_factory.mktemp("kept") / "class.db"
    with Classbook.open(path) as book:
        book.update_roster(LIST)
        book.set_settings(1, {"line_height": "22", "letter_spacing": "2", "letters": "a=two-storey"})
        book.set_class_settings({"ruling": "us-3/4", "paper": "a4", "support": "partial", "order": "need"})
        book.observe(1, "2026-09-14", Seen([0, 1], note="good"))
        book.keep_groups({1: 1, 2: 1, 3: 2, 4: 2})
        book.seat(1, 2, True)
    return path


@pytest.fixture
def copy(kept: Path, tmp_path: Path) -> Path:
    """A copy to meddle with."""
    return Path(shutil.copy(kept, tmp_path / "class.db"))


def used(path: Path) -> None:
    """Open a class and use all of it, as commands and pages do."""
    with Classbook.open(path, create=False) as book:
        settings, here = book.class_settings, book.children()
        for one in book.children(left=True):
            book.history(one.id)
            holds_for_child(one, settings)
        placed = order_class([one.child for one in here], Order(settings.get("order", Order.PRACTICE)))
        members_of(book, here, placed, notes=True)
        roster_of(book)
        book.groups(), book.taught(), book.seats(), book.history(None)
        book.update_roster(book.roster_text() + "\nBo Oak")


def said(path: Path) -> str:
    """Return in a sentence why a class cannot be used; empty where it can. Any other error goes on its way."""
    try:
        used(path)
    except Problem as error:
        return wording("en").sentence(error.message)
    return ""


def columns(path: Path) -> Iterator[tuple[str, str]]:
    """Yield every table of a class with each of its columns."""
    connection = sqlite3.connect(path)
    tables = connection.execute("SELECT name FROM sqlite_master WHERE type = 'table' AND name NOT LIKE 'sqlite%'")
    for (table,) in tables.fetchall():
        yield from ((table, row[1]) for row in connection.execute(f"PRAGMA table_info({table})").fetchall())
    connection.close()


@pytest.mark.long
def test_a_value_that_no_class_can_hold_is_told(kept: Path, tmp_path: Path) -> None:
    """Anything at all in any column of any table: the class is used as ever, or a sentence says why not."""
    told = set()
    for table, column in columns(kept):
        for value in ODD:
            copy = Path(shutil.copy(kept, tmp_path / "copy.db"))
            connection = sqlite3.connect(copy)
            connection.execute("PRAGMA ignore_check_constraints = ON")
            try:
                connection.execute(f"UPDATE {table} SET {column} = ?", (value,))
                connection.commit()
            except sqlite3.IntegrityError:
                continue
            finally:
                connection.close()
            if said(copy):
                told.add((table, column))
    assert {("children", "support"), ("children", "hand"), ("children", "line_height_mm"), ("class_settings", "value"),
            ("settings", "value"), ("observations", "letters"), ("observations", "date")} <= told


def test_a_flipped_bit_is_told_or_does_no_harm(kept: Path, tmp_path: Path) -> None:
    """Any bit of the file, each time the file is opened and all of it is used."""
    data, chance = kept.read_bytes(), random.Random(7)
    places = [at for at, byte in enumerate(data) if byte]
    for _ in range(120):
        broken = bytearray(data)
        broken[chance.choice(places)] ^= 1 << chance.randrange(8)
        copy = tmp_path / "flipped.db"
        copy.write_bytes(broken)
        said(copy)
        for left in tmp_path.glob("flipped.db-*"):
            left.unlink()


@pytest.mark.parametrize("part", [
    "CREATE TRIGGER t AFTER INSERT ON observations BEGIN DELETE FROM children; END",
    "CREATE VIEW v AS SELECT * FROM children",
    "CREATE TABLE t (child INTEGER REFERENCES children (id))",  # with a row for a child it could not be erased
    "CREATE UNIQUE INDEX i ON taught (letter)",  # no letter could be planned twice
    "INSERT INTO sqlite_master VALUES ('trigger', 'sqlite_t', 'children', 0, "  # by hand, under a name of SQLite's own
    "'CREATE TRIGGER sqlite_t AFTER INSERT ON children BEGIN UPDATE children SET practice = ''x''; END')",
])
def test_a_part_of_somebody_elses_is_not_run(copy: Path, part: str) -> None:
    """A file that was received may carry a trigger: it is not opened, and nothing in it changes."""
    connection = sqlite3.connect(copy, isolation_level=None)
    connection.execute("PRAGMA writable_schema = ON")
    connection.execute(part)
    connection.close()
    before = copy.read_bytes()
    with pytest.raises(ClassbookError) as caught:
        Classbook.open(copy)
    assert caught.value.message.key == "classbook.foreign_part"
    assert copy.read_bytes() == before


@pytest.mark.parametrize("change", [
    "DROP TABLE observations",
    "DROP INDEX saves_of_child",
    "DELETE FROM class",
    "ALTER TABLE drafts ADD COLUMN more TEXT DEFAULT (hex(zeroblob(400000000)))",
    "UPDATE children SET label = CAST(x'eda080' AS TEXT) WHERE id = 1",
    "UPDATE children SET practice = hex(zeroblob(1000)) WHERE id = 1",  # the pages to know it by would take minutes
])
def test_a_class_without_one_of_its_parts_is_not_opened(copy: Path, change: str) -> None:
    """It would open, take the place of the class that is here, and then no page of it could be shown."""
    connection = sqlite3.connect(copy, isolation_level=None)
    connection.execute(change)
    connection.close()
    before = copy.read_bytes()
    with pytest.raises(ClassbookError, match=r"classbook\.(damaged|odd_value)"):
        Classbook.open(copy)
    assert copy.read_bytes() == before


@pytest.mark.parametrize("had", range(1, len(MIGRATIONS)))
def test_an_older_file_with_a_foreign_part_is_not_brought_up_to_date(tmp_path: Path, had: int) -> None:
    """A file of any version is held against the tables that it had then; without the part it opens."""
    path = tmp_path / "old.db"
    connected(path, migrations=MIGRATIONS[:had]).close()
    connection = sqlite3.connect(path, isolation_level=None)
    connection.execute("CREATE TABLE t (child INTEGER REFERENCES children (id))")
    before = path.read_bytes()
    with pytest.raises(ClassbookError, match=r"classbook\.foreign_part"):
        Classbook.open(path)
    assert path.read_bytes() == before
    connection.execute("DROP TABLE t")
    connection.close()
    Classbook.open(path).close()


@pytest.mark.parametrize(("name", "column", "value"), [
    ("children", "support", "most"), ("children", "hand", "third"), ("children", "line_height_mm", "1e999"),
    ("children", "line", "x"), ("observations", "stage", "9"), ("observations", "date", "2026-99-99"),
    ("observations", "letters", "0 x"), ("settings", "value", "900"), ("class_settings", "value", "parchment"),
    ("version", "version", "9" * 5000), ("groups", "number", "-1"), ("seats", "together", "2"),
])
def test_values_outside_their_lists_are_not_taken(kept: Path, tmp_path: Path, name: str, column: str,
                                                      value: str) -> None:
    """An export that was changed by hand makes no class: the sentence says so, and no file is there."""
    folder = tmp_path / "export"
    export_csv(kept, folder)
    path = folder / f"{name}.csv"
    head, first, *rest = path.read_text(encoding="utf-8-sig").splitlines()
    cells = first.split(",")
    cells[head.split(",").index(column)] = value
    path.write_text("\n".join((head, ",".join(cells), *rest)), encoding="utf-8-sig")
    with pytest.raises(ClassbookError):
        import_csv(folder, tmp_path / "new.db")
    assert not (tmp_path / "new.db").exists()
