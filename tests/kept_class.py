"""Classes of four invented children in a file, as the tests of the class's file and of its commands keep it."""

from __future__ import annotations

from pathlib import Path

import pytest

from namewright.classbook import Classbook, ClassbookError, Seen
from namewright.cli import main
from namewright.settings import Support
from namewright.wording import wording

CLASS = "Mira Quill\nTilo Reed\nAva Finch\nAva Moss\n"


NOTED = "name,support\nMira,full\nBo,full\nAna,partial\nZoë,light\n"


def three_months(place: Path) -> Path:
    """Keep a class with three months of notes: Mira and Ana form every letter, Bo few, of Zoë nothing is noted."""
    with Classbook.open(place) as book:
        book.update_roster(NOTED, when="2026-09-01T08:00:00")
        for month in (9, 10, 11):
            for day in (3, 10, 17):
                book.observe(1, f"2026-{month:02d}-{day:02d}", Seen(range(4), support=Support.FULL))
                book.observe(2, f"2026-{month:02d}-{day:02d}", Seen([], support=Support.FULL))
                book.observe(3, f"2026-{month:02d}-{day:02d}", Seen(range(3), support=Support.PARTIAL))
    return place


def levels(place: Path) -> list[str | None]:
    """Return the children's levels of support, in the order of the list."""
    with Classbook.open(place) as book:
        return [one.child.support for one in book.children()]


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


def refusal(path: Path, **words: object) -> str:
    """Return the one sentence with which a file is refused."""
    with pytest.raises(ClassbookError) as caught:
        Classbook.open(path, **words).close()  # type: ignore[arg-type]
    sentence = wording("en").sentence(caught.value.message)
    assert sentence.endswith(".")
    assert sentence.count("\n") == 0
    return sentence
