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
