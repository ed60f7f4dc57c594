"""The tool that tells which step of the reader did what to a list (``tests/bench/why.py``)."""

from __future__ import annotations

import subprocess
import sys
from pathlib import Path

WHY = Path(__file__).parents[1] / "bench" / "why.py"


def test_it_names_the_step_that_changed_the_lines_and_who_told_of_them() -> None:
    """A list of parts in a play: the step, what it took away and made, what was read, and the module of each note."""
    told = subprocess.run([sys.executable, str(WHY)], input="Narrator: Mia\nSheep: Leo and Ava\nKing: Zak Vost\n",
                          capture_output=True, text=True, check=True).stdout.splitlines()
    assert told.index("cast_lists.from_a_cast") < told.index("  - Sheep: Leo and Ava") < told.index("  + Leo")
    assert "7: 'Zak Vost': Zak | Vost" in told
    assert any(line.endswith("said in headings") for line in told)


def test_it_tells_of_a_list_without_children_too() -> None:
    """What nobody was made of is what one asks about."""
    told = subprocess.run([sys.executable, str(WHY)], input="Klasse 1b\n", capture_output=True, text=True,
                          check=True).stdout
    assert told.startswith("1: 'Klasse 1b': heading")
