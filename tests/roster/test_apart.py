"""A spreadsheet read in a process of its own: the same answer, and an end to it."""

from __future__ import annotations

import pytest
from test_workbook import book

from namewright.message import message
from namewright.roster import apart
from namewright.roster.children import RosterError
from namewright.roster.sources import decode


def test_the_answer_is_the_same() -> None:
    """Text, notes and refusals come back as they are."""
    data = book(Notes=[["Bring scissors"]], Class=[["Given", "Family"], ["Mira", "Vost"]])
    assert apart.decode_apart(data, "class.xlsx") == decode(data, "class.xlsx")
    with pytest.raises(RosterError) as caught:
        apart.decode_apart(data[:-200], "class.xlsx")
    assert caught.value.message == message("roster.damaged", source="class.xlsx")


def test_one_that_takes_too_long_is_stopped(monkeypatch: pytest.MonkeyPatch) -> None:
    """Whoever sent it is told, and the next is read."""
    monkeypatch.setattr(apart, "LONGEST_S", 0.0)
    with pytest.raises(RosterError) as caught:
        apart.decode_apart(book(A=[["Mira"]]), "class.xlsx")
    assert caught.value.message.key == "roster.many_rows"
    monkeypatch.undo()
    assert apart.decode_apart(book(A=[["Mira"]]), "class.xlsx")[0] == "Mira"


def test_no_more_than_two_at_a_time(monkeypatch: pytest.MonkeyPatch) -> None:
    """A third is told to wait; text is read all the same."""
    monkeypatch.setattr(apart, "_places", apart.BoundedSemaphore(1))
    with apart._places:
        with pytest.raises(RosterError) as caught:
            apart.decode_apart(book(A=[["Mira"]]), "class.xlsx")
        assert caught.value.message.key == "roster.busy"
        assert apart.decode_apart(b"Mira\n", "class.txt")[0] == "Mira\n"
