"""``namewright note``: what was seen, kept as it was typed."""

from __future__ import annotations

from pathlib import Path

import pytest

from kept_class import note
from namewright.classbook import Classbook

Capture = pytest.CaptureFixture[str]


def test_a_note_is_kept_as_it_was_typed(kept_class_folder: Path, capsys: Capture) -> None:
    """Letters are found in the name, and the suggestion follows the rule; nothing is changed by it."""
    assert note("--letters", "M, r", "--stage", "some-letters", "--date", "2026-09-01", "--note", "proud") == 0
    assert note("--all", "--support", "full", "--date", "2026-09-02") == 0
    assert note("--all", "--date", "2026-09-03", "--who", "aide") == 0
    said = capsys.readouterr().out
    assert "Formed: M, r" in said
    assert "a lighter level next: partial" in said
    with Classbook.open("class.db") as book:
        notes = book.observations(1)
        assert [one.letters for one in notes] == [(0, 2), (0, 1, 2, 3), (0, 1, 2, 3)]
        assert (notes[0].note, notes[2].who) == ("proud", "aide")
        assert not book.history(1)


@pytest.mark.parametrize("words", [
    ("--letters", "Mz"), ("--letters", "MM"), ("--date", "2999-01-01", "--all"), ("--date", "soon", "--all"),
    ("--stage", "9"), (),
])
def test_a_note_that_cannot_be_is_one_sentence_and_keeps_nothing(kept_class_folder: Path, capsys: Capture,
                                                                words: tuple[str, ...]) -> None:
    """What is wrong is said and the class is as it was."""
    capsys.readouterr()
    assert note(*words) == 2
    out, err = capsys.readouterr()
    assert not out
    assert err.startswith("namewright: ")
    assert err.count("\n") == 1
    with Classbook.open("class.db") as book:
        assert not book.observations(1)
