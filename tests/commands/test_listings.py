"""``namewright roster``, ``rulings`` and ``settings``: every line accounted for, everything there is listed."""

from __future__ import annotations

from pathlib import Path

import pytest

from namewright.cli import main
from namewright.lines.ruling import PRESETS
from namewright.tuning import KNOBS

Capture = pytest.CaptureFixture[str]


def test_every_line_is_told_in_its_order(tmp_path: Path, capsys: Capture) -> None:
    """A child by label and name, a heading, a blank line, one left out with its reason; status 1 for that one."""
    (tmp_path / "list.txt").write_text("Room 4\nMira Quill\n\n12345\nTilo Reed\n", encoding="utf-8")
    assert main(["roster", str(tmp_path / "list.txt")]) == 1
    lines = [line for line in capsys.readouterr().out.splitlines() if line[:1].strip()]
    numbered = [line for line in lines if any(word.strip(":,.") in "12345" for word in line.split()[:2])]
    assert len(numbered) == 5
    assert "Mira" in numbered[1]
    assert "Tilo" in numbered[4]
    (tmp_path / "good.txt").write_text("Mira\n", encoding="utf-8")
    assert main(["roster", str(tmp_path / "good.txt")]) == 0


def test_a_list_of_nobody_is_accounted_for_all_the_same(tmp_path: Path, capsys: Capture) -> None:
    """What was read is told before it is said that there is nobody."""
    (tmp_path / "list.txt").write_text("12345\n67890\n", encoding="utf-8")
    assert main(["roster", str(tmp_path / "list.txt")]) == 2
    told = capsys.readouterr()
    assert sum(line.strip() != "" and not line.startswith(" ") for line in told.out.splitlines()) == 2
    assert told.err.startswith("namewright: ")


def test_every_ruling_has_what_it_is_like_and_where_from(capsys: Capture) -> None:
    """Two lines each, in their order."""
    assert main(["rulings"]) == 0
    lines = capsys.readouterr().out.splitlines()
    assert [line.split()[0] for line in lines[::2]] == list(PRESETS)
    assert all(line.startswith(" " * 11) and line.strip() for line in lines[1::2])


def test_every_setting_has_its_range_and_reason(capsys: Capture) -> None:
    """And the last sentence defers to the child's therapist."""
    assert main(["settings"]) == 0
    text = capsys.readouterr().out
    assert all(f"\n{knob.key} " in f"\n{text}" for knob in KNOBS)
    assert "therapist" in text.splitlines()[-1]


def test_a_line_is_told_with_its_words(tmp_path: Path, capsys: Capture) -> None:
    """In a numbered list under a heading the line and the number are two: the words find it, and order nothing about.

    A further row of a child is said to be one.
    """
    (tmp_path / "list.txt").write_text("Room 9\n1. Mira Quill\n2. Мила\n3. \x1b[31mQuorrel & Vexil\n",
                                       encoding="utf-8")
    assert main(["roster", str(tmp_path / "list.txt")]) == 1
    told = capsys.readouterr().out
    assert "line 1, “Room 9”: a heading" in told
    assert "line 4, “3. Quorrel & Vexil”: left out" in told
    assert main(["sheets", str(tmp_path / "list.txt"), "-o", str(tmp_path / "a.pdf")]) == 1
    told = capsys.readouterr().err
    assert "Not made: Мила (line 3, “2. Мила”)." in told
    assert "Left out: line 4, “3. Quorrel & Vexil”." in told
    (tmp_path / "rows.csv").write_text("ID,First,Last,Guardian\n40100,Mira,Quill,Orla\n40100,Mira,Quill,Ned\n")
    assert main(["roster", str(tmp_path / "rows.csv")]) == 0
    assert "line 3: one more row of Mira" in capsys.readouterr().out
