"""Several changes of a class are one, and nobody writes between what a change reads and what it writes."""

from __future__ import annotations

import sqlite3
from pathlib import Path

import pytest

from namewright.classbook import Classbook, ClassbookError


def test_several_changes_are_one_or_none(book: Classbook) -> None:
    """In a ``changing`` block an error takes back all of it."""
    def both() -> None:
        with book.changing():
            book.set_settings(1, {"rows": "2"})
            book.set_settings(2, {"rows": "99"})

    with pytest.raises(ClassbookError):
        both()
    assert not book.settings_of(1)


def test_a_change_holds_the_file_from_its_first_look(book: Classbook) -> None:
    """Between what a change reads and what it writes nobody else can write, so neither is lost."""
    other = sqlite3.connect(book.path, timeout=0, isolation_level=None)
    with book.changing(), pytest.raises(sqlite3.OperationalError, match="locked"):
        other.execute("BEGIN IMMEDIATE")
    other.execute("BEGIN IMMEDIATE")
    other.close()


def test_a_copy_is_the_whole_class(book: Classbook, tmp_path: Path) -> None:
    """The bytes of a copy open as the same class."""
    (tmp_path / "copy.db").write_bytes(book.copy())
    with Classbook.open(tmp_path / "copy.db", create=False) as copy:
        assert copy.children() == book.children()
        assert copy.class_id == book.class_id
