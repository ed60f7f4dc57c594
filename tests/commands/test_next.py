"""``namewright next``: next month's sheets, and each change told."""

from __future__ import annotations

from pathlib import Path

import pytest
from pypdf import PdfReader

from kept_class import NOTED, levels, three_months
from namewright.classbook import Classbook
from namewright.classbook.moving import moves
from namewright.cli import main
from namewright.making.moves import told_in_turn
from namewright.wording import wording

Capture = pytest.CaptureFixture[str]


@pytest.fixture
def path(tmp_path: Path) -> Path:
    return three_months(tmp_path / "room4.db")


def test_the_command_makes_the_sheets_and_tells_each_change(path: Path, capsys: Capture) -> None:
    """Sheets for all, each change with its reason, a page of changes; a child refused keeps its level."""
    december, changes = path.with_name("december.pdf"), path.with_name("changes.pdf")
    assert main(["next", str(path), "-o", str(december), "--changes", str(changes), "--refuse", "Ana"]) == 0
    said = capsys.readouterr().out
    assert "Mira: from full to partial support. Every letter was formed on each of the last 3 days." in said
    assert "Ana stays at partial support, as you said." in said
    assert "2 children stay at the same level." in said
    assert "saved in the class’s file. To take one back" in said
    assert "--refuse" in said
    assert levels(path) == ["partial", "full", "partial", "light"]
    assert len(PdfReader(december).pages) == 4
    assert len(PdfReader(changes).pages) == 1


def test_without_a_file_to_make_nothing_changes(path: Path, capsys: Capture) -> None:
    """The changes are only told; and where the PDF cannot be written nothing changes either."""
    assert main(["next", str(path)]) == 0
    said = capsys.readouterr().out
    assert "Nothing is changed yet" in said
    assert "add --refuse and the name" in said
    assert main(["next", str(path), "-o", str(path.parent / "nowhere" / "december.pdf")]) == 2
    assert levels(path) == ["full", "full", "partial", "light"]


def test_where_no_level_changes_none_is_called_saved(path: Path, capsys: Capture) -> None:
    """All that would change is refused: nothing is saved that could be taken back."""
    refused = [word for name in ("Mira", "Ana") for word in ("--refuse", name)]
    assert main(["next", str(path), "-o", str(path.with_name("december.pdf")), *refused]) == 0
    assert "saved" not in capsys.readouterr().out


def test_children_with_too_few_notes_are_one_sentence(path: Path) -> None:
    """However many they are, they stand together, each once, behind those of whom something can be said."""
    with Classbook.open(path) as book:
        book.update_roster(NOTED + "Noor,full\nTova,light\n", when="2026-11-20T08:00:00")
        told = told_in_turn(moves(book, book.children()))
    assert len(told) == 4
    assert wording("en").say(told[-1]) == (
        "Not enough notes yet: Zoë, Noor and Tova. "
        "Two days noted at this level are needed before anything can be suggested.")
