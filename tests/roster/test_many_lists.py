"""Very many made lists: no error, and hardly anybody lost, merged or misnamed without a word.

``NAMEWRIGHT_LISTS=1000000 make test-long`` reads a million; without it some thousands are read.
"""

from __future__ import annotations

import os

import pytest

from made_lists.many import RAISED, broken_promises, failures

COUNT = int(os.environ.get("NAMEWRIGHT_LISTS", "4000"))


@pytest.mark.long
def test_nothing_goes_wrong_in_silence() -> None:
    """One list in a thousand may still hold a child of whom nothing is said; an error is never allowed."""
    found = list(failures(COUNT, seed=7))
    assert not [wrong for wrong, _ in found if RAISED in wrong], found
    assert len(found) <= 1 + COUNT / 1_000, found[:3]


@pytest.mark.parametrize("error", [ValueError, StopIteration, RecursionError])
def test_the_judge_of_any_text_finds_what_is_wrong(monkeypatch: pytest.MonkeyPatch, error: type[Exception]) -> None:
    """An exception is told as one, whatever it is called."""
    assert broken_promises("Mira\nBo") == ""

    def broken(_: str) -> None:
        raise error("once")

    monkeypatch.setattr("made_lists.many.read_roster", broken)
    assert broken_promises("Mira") == f"{RAISED}{error.__name__}: once"
