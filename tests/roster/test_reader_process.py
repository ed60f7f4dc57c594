"""A spreadsheet read in a process of its own: the same answer, and an end to it."""

from __future__ import annotations

import pytest
from test_workbook import book

from namewright.message import message
from namewright.roster import reader_process
from namewright.roster.children import RosterError
from namewright.roster.sources import decode


def test_the_answer_is_the_same() -> None:
    """Text, notes and refusals come back as they are."""
    data = book(Notes=[["Bring scissors"]], Class=[["Given", "Family"], ["Mira", "Vost"]])
    assert reader_process.decode_in_a_process(data, "class.xlsx") == decode(data, "class.xlsx")
    with pytest.raises(RosterError) as caught:
        reader_process.decode_in_a_process(data[:-200], "class.xlsx")
    assert caught.value.message == message("roster.damaged", source="class.xlsx")


def test_one_that_takes_too_long_is_stopped(monkeypatch: pytest.MonkeyPatch) -> None:
    """Whoever sent it is told, and the next is read."""
    monkeypatch.setattr(reader_process, "LONGEST_S", 0.0)
    with pytest.raises(RosterError) as caught:
        reader_process.decode_in_a_process(book(A=[["Mira"]]), "class.xlsx")
    assert caught.value.message.key == "roster.many_rows"
    monkeypatch.undo()
    assert reader_process.decode_in_a_process(book(A=[["Mira"]]), "class.xlsx")[0] == "Mira"


def test_no_more_than_two_at_a_time(monkeypatch: pytest.MonkeyPatch) -> None:
    """A third is told to wait; text is read all the same."""
    monkeypatch.setattr(reader_process, "_places", reader_process.BoundedSemaphore(1))
    with reader_process._places:
        with pytest.raises(RosterError) as caught:
            reader_process.decode_in_a_process(book(A=[["Mira"]]), "class.xlsx")
        assert caught.value.message.key == "roster.busy"
        assert reader_process.decode_in_a_process(b"Mira\n", "class.txt")[0] == "Mira\n"
