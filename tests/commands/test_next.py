"""``namewright next``: next month's sheets, and each change told."""

from __future__ import annotations

from pathlib import Path

import pytest
from pypdf import PdfReader

from namewright.classbook import Classbook
from namewright.cli import main
from namewright.settings import Support

CLASS = "name,support\nMira,full\nBo,full\nAna,partial\nZoë,light\n"
Capture = pytest.CaptureFixture[str]


@pytest.fixture
def path(tmp_path: Path) -> Path:
    """A class with three months of notes: Mira and Ana form every letter, Bo few, of Zoë nothing is noted."""
    place = tmp_path / "room4.db"
    with Classbook.open(place) as book:
        book.update_roster(CLASS, when="2026-09-01T08:00:00")
        for month in (9, 10, 11):
            for day in (3, 10, 17):
                book.observe(1, f"2026-{month:02d}-{day:02d}", range(4), support=Support.FULL)
                book.observe(2, f"2026-{month:02d}-{day:02d}", [], support=Support.FULL)
                book.observe(3, f"2026-{month:02d}-{day:02d}", range(3), support=Support.PARTIAL)
    return place


def levels(path: Path) -> list[str | None]:
    with Classbook.open(path) as book:
        return [one.child.support for one in book.children()]


def test_the_command_makes_the_sheets_and_tells_each_change(path: Path, capsys: Capture) -> None:
    """Sheets for all, each change with its reason, a page of changes; a child refused keeps its level."""
    december, changes = path.with_name("december.pdf"), path.with_name("changes.pdf")
    assert main(["next", str(path), "-o", str(december), "--changes", str(changes), "--refuse", "Ana"]) == 0
    said = capsys.readouterr().out
    assert "Mira: from full to partial support. Every letter was formed on each of the last 3 days." in said
    assert "Ana stays at partial support, as you said." in said
    assert "2 children stay at the same level." in said
    assert levels(path) == ["partial", "full", "partial", "light"]
    assert len(PdfReader(december).pages) == 4
    assert len(PdfReader(changes).pages) == 1


def test_without_a_file_to_make_nothing_changes(path: Path, capsys: Capture) -> None:
    """The changes are only told; and where the PDF cannot be written nothing changes either."""
    assert main(["next", str(path)]) == 0
    assert "Nothing is changed yet" in capsys.readouterr().out
    assert main(["next", str(path), "-o", str(path.parent / "nowhere" / "december.pdf")]) == 2
    assert levels(path) == ["full", "full", "partial", "light"]
