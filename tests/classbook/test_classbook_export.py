"""The whole class out as CSV and back: nothing lost, no cell a formula, nothing half written."""

from __future__ import annotations

import csv
import io
import os
import sqlite3
import stat
import tempfile
import zipfile
from pathlib import Path

import pytest
from hypothesis import example, given, settings
from hypothesis import strategies as st

from namewright.classbook import Classbook, ClassbookError, Seen, export
from namewright.classbook.erasing import PASSING
from namewright.classbook.export import TABLES, export_csv, import_csv
from namewright.classbook.schema import MIGRATIONS
from namewright.classbook.stages import Stage
from namewright.settings import Support


@pytest.fixture
def path(tmp_path: Path) -> Path:
    place = tmp_path / "class.db"
    with Classbook.open(place) as book:
        book.update_roster("Mira Quill\n“Tilo”, hand left\r\n=Ava Finch\n\n", who="=teacher")
        book.set_class_settings({"title": "@Room “4”, mornings", "rows": "3"})
        book.set_settings(1, {"support": "light", "line_height": "12.7"}, who="'aide")
        book.undo(1)
        note = book.observe(1, "2026-09-10", Seen([], note="-3 °C,\nbut “proud”"), token="t1")
        book.observe(1, "2026-09-11", Seen([0, 2], support=Support.LIGHT, stage=Stage.READABLE))
        book.strike(note.id)
        book.update_roster("Mira Quill\n")
        book.keep_groups({1: 2})
    return place


def content(path: Path) -> dict[str, list[tuple[object, ...]]]:
    """Return every row of every table, read by Python's own sqlite3."""
    raw = sqlite3.connect(path)
    rows = {table: raw.execute(f"SELECT * FROM {table} ORDER BY {key}").fetchall() for table, key in TABLES.items()}
    names = {name for (name,) in raw.execute(
        "SELECT name FROM sqlite_master WHERE type = 'table' AND name NOT LIKE 'sqlite_%'")}
    raw.close()
    assert names == {*rows, *PASSING}, "a table is missing from the export"
    return rows


@pytest.mark.parametrize("target", ["out", "out.zip"])
def test_out_and_back_is_the_same_class(path: Path, tmp_path: Path, target: str) -> None:
    """Every cell of every table comes back with its value and its type, and the same class gives the same bytes."""
    export_csv(path, tmp_path / target)
    import_csv(tmp_path / target, tmp_path / "back.db")
    assert content(tmp_path / "back.db") == content(path)
    assert len(content(path)["observations"]) == 2
    export_csv(tmp_path / "back.db", tmp_path / f"again {target}")
    assert _bytes(tmp_path / target) == _bytes(tmp_path / f"again {target}")


def _bytes(target: Path) -> list[bytes]:
    return [each.read_bytes() for each in sorted(target.iterdir())] if target.is_dir() else [target.read_bytes()]


@settings(max_examples=12)
@example("=Ava", "＠x")
@example("＋Ava", "－1")
@example("", "＋1")
@given(st.text(max_size=40), st.text(st.sampled_from("'=+-@\t\r\n\"“,; xＡ＝\ud800"), max_size=8))
def test_any_text_comes_back(roster: str, text: str) -> None:
    """Whatever was typed, quotes, line ends and first characters survive the way out and back."""
    with tempfile.TemporaryDirectory() as name:
        folder = Path(name)
        with Classbook.open(folder / "a.db") as book:
            book.update_roster(f"Mira\n{roster}\n")
            book.observe(1, "2026-09-10", Seen(note=f"x{text}"))
            book._db.execute("UPDATE observations SET note = ?, token = ?",  # past the clean-up at the door
                             (text.encode(errors="replace").decode(), text.encode(errors="replace").decode()))
        export_csv(folder / "a.db", folder / "out")
        import_csv(folder / "out", folder / "b.db")
        assert content(folder / "a.db") == content(folder / "b.db")
        for file in (folder / "out").iterdir():
            assert not list(_formulas(file.read_bytes()))


def _formulas(data: bytes) -> list[str]:
    """Return cells that begin as a formula would (OWASP, "CSV Injection")."""
    return [cell for row in csv.reader(io.StringIO(data.decode("utf-8-sig"), newline="")) for cell in row
            if cell.startswith(("=", "+", "-", "@", "\t", "\r", "\n", "＝", "＋", "－", "＠"))]


def test_exported_files_are_their_owners_alone(path: Path, tmp_path: Path) -> None:
    """Names are private in the export as in the file, and no temporary file stays behind."""
    for target in ("out", "out.zip"):
        for file in export_csv(path, tmp_path / target):
            assert stat.S_IMODE(file.stat().st_mode) == 0o600
    assert sorted(os.listdir(tmp_path)) == ["class.db", "out", "out.zip"]


def test_nothing_is_written_over(path: Path, tmp_path: Path) -> None:
    """A folder with something in it, a file, a class that is there already: each is left as it is."""
    (tmp_path / "full").mkdir()
    (tmp_path / "full" / "keep.txt").write_text("keep")
    (tmp_path / "full.zip").write_text("keep")
    for target in ("full", "full.zip", "full/keep.txt"):
        with pytest.raises(ClassbookError, match=r"classbook\.(not_empty|there_already)"):
            export_csv(path, tmp_path / target)
    export_csv(path, tmp_path / "out")
    before = path.read_bytes()
    with pytest.raises(ClassbookError, match=r"classbook\.there_already"):
        import_csv(tmp_path / "out", path)
    assert path.read_bytes() == before
    assert (tmp_path / "full" / "keep.txt").read_text() == (tmp_path / "full.zip").read_text() == "keep"


@pytest.mark.parametrize(("file", "change", "words"), [
    ("children.csv", None, "missing_table.*children.csv"),
    ("version.csv", (str(len(MIGRATIONS)), "99"), "export_version.*99"),
    ("children.csv", ("practice", "name"), "columns.*children.csv"),
    ("children.csv", ("Mira,Mira", "Mira,,Mira"), "cells.*children.csv.*row=2"),
    ("observations.csv", ("1,1,2026", "1,77,2026"), "row.*observations.csv"),
    ("observations.csv", ("light", "heavy"), "unheard_of"),
    ("class_settings.csv", ("rows,3", "rows,300"), "unheard_of"),
    ("saves.csv", ("\ufeff", "\ufeff\""), "no_csv.*saves.csv"),
])
def test_a_spoilt_export_makes_no_class(path: Path, tmp_path: Path, file: str, change: tuple[str, str] | None,
                                        words: str) -> None:
    """A file missing, from another version or changed by hand is said with its place, and no class is made."""
    export_csv(path, tmp_path / "out")
    spoilt = tmp_path / "out" / file
    if change:
        text = spoilt.read_text(encoding="utf-8")
        assert change[0] in text
        spoilt.write_text(text.replace(*change), encoding="utf-8")
    else:
        spoilt.unlink()
    with pytest.raises(ClassbookError, match=rf"classbook\.{words}"):
        import_csv(tmp_path / "out", tmp_path / "back.db")
    assert sorted(os.listdir(tmp_path)) == ["class.db", "out"]


def test_an_export_of_the_first_version_comes_back(path: Path, tmp_path: Path) -> None:
    """An export from before the class had a name, children these columns and groups were kept is still read."""
    export_csv(path, tmp_path / "out")
    (tmp_path / "out" / "class.csv").unlink()
    for name in ("groups", "taught", "seats"):
        (tmp_path / "out" / f"{name}.csv").unlink()
    (tmp_path / "out" / "version.csv").write_text("version\r\n1\r\n")
    for name, added in (("children", 5), ("observations", 1), ("rosters", 1)):
        table = tmp_path / "out" / f"{name}.csv"
        rows = list(csv.reader(io.StringIO(table.read_text(encoding="utf-8-sig"), newline="")))
        with table.open("w", encoding="utf-8", newline="") as file:
            csv.writer(file).writerows(row[:-added] for row in rows)
    import_csv(tmp_path / "out", tmp_path / "back.db")
    before, after = content(path), content(tmp_path / "back.db")
    assert len(after.pop("class")) == 1
    since = {"groups": [], "taught": [], "seats": []}
    assert after == {table: rows for table, rows in before.items() if table != "class"} | since


def test_what_is_no_export_is_said(path: Path, tmp_path: Path) -> None:
    """A file that is not there, that is no zip, or a zip of something else."""
    (tmp_path / "a.zip").write_bytes(b"PK nonsense")
    with zipfile.ZipFile(tmp_path / "b.zip", "w") as other:
        other.writestr("letter.txt", "hello")
    for name, words in (("none", "no_export"), ("a.zip", "no_zip"), ("b.zip", "missing_table.*version.csv")):
        with pytest.raises(ClassbookError, match=rf"classbook\.{words}"):
            import_csv(tmp_path / name, tmp_path / "back.db")
    with pytest.raises(ClassbookError, match=r"classbook\.none_there"):
        export_csv(tmp_path / "none.db", tmp_path / "out")


def test_a_class_made_meanwhile_is_not_written_over(path: Path, tmp_path: Path,
                                                    monkeypatch: pytest.MonkeyPatch) -> None:
    """Another program makes a file of that name while the export is read: its file stays, and nothing else does."""
    export_csv(path, tmp_path / "out")
    back = tmp_path / "back.db"
    monkeypatch.setattr(export, "_check_readable", lambda _: back.write_text("theirs"))
    with pytest.raises(ClassbookError, match=r"classbook\.there_already"):
        import_csv(tmp_path / "out", back)
    assert back.read_text() == "theirs"
    assert sorted(os.listdir(tmp_path)) == ["back.db", "class.db", "out"]
