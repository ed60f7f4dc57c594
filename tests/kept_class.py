"""A class of four invented children in a file, as the tests of the class's file and of its commands keep it."""

from __future__ import annotations

from pathlib import Path

from namewright.classbook import Classbook
from namewright.cli import main

CLASS = "Mira Quill\nTilo Reed\nAva Finch\nAva Moss\n"


def names(book: Classbook, *, left: bool = False) -> dict[str, int]:
    """Return the children's numbers by how an adult calls them."""
    return {one.child.label: one.id for one in book.children(left=left)}


def keep_class() -> None:
    """Keep the class in the folder that is current, by the command line, from a list beside it."""
    Path("list.txt").write_text(CLASS, encoding="utf-8")
    assert main(["class", "class.db", "--from", "list.txt", "--who", "teacher"]) == 0


def note(*words: str) -> int:
    """Note something of Mira."""
    return main(["note", "mira", "--class", "class.db", *words])
