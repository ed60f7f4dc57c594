"""Who stands under a waiting list is made and tells so, in six languages; the words are no child and no question."""

from __future__ import annotations

import pytest

from namewright.message import message
from namewright.roster.children import Outcome
from namewright.roster.parsing import read_roster

CLASS = "Mia Vost\nLeo Tarn\nAva Rey\nNoah Quill"
WORDS = ["Waiting list", "WAITLIST", "Lista de espera", "Liste d’attente", "Warteliste", "Lista d'attesa", "Em espera"]


@pytest.mark.parametrize("form", ["{}\nBen Moss\nZoe Marlow", "{}:\nBen Moss\nZoe Marlow", "{}: Ben Moss, Zoe Marlow",
                                  "=== {} (2) ===\n\nBen Moss\nZoe Marlow"])
@pytest.mark.parametrize("words", WORDS)
def test_children_of_a_waiting_list_tell_so(words: str, form: str) -> None:
    roster = read_roster(f"{CLASS}\n\n{form.format(words)}")
    assert [child.practice for child in roster.children] == ["Mia", "Leo", "Ava", "Noah", "Ben", "Zoe"]
    told = [report.child.practice for report in roster.lines if report.child
            and any(note.key == "roster.under" for note in report.notes)]
    assert told == ["Ben", "Zoe"]
    assert not any(report.outcome is Outcome.LEFT_OUT for report in roster.lines)


def test_one_behind_the_words() -> None:
    roster = read_roster(f"{CLASS}\nwaitlist: Ben Moss")
    assert roster.children[-1].practice == "Ben"
    assert message("roster.under", words="waitlist") in roster.lines[-1].notes


def test_the_part_ends_at_an_empty_line_or_a_heading() -> None:
    roster = read_roster("Waiting list\nBen Moss\n\nMia Vost\nLeo Tarn\n\nWarteliste\nAva Rey\nGroup 2\nNoah Quill")
    told = [report.text for report in roster.lines if any(note.key == "roster.under" for note in report.notes)]
    assert told == ["Ben Moss", "Ava Rey"]


def test_read_again_it_tells_the_same() -> None:
    roster = read_roster(f"{CLASS}\nWaiting list: Ben Moss, Zoe Marlow")
    again = read_roster(roster.text)
    assert [(report.text, report.outcome) for report in again.lines] == [
        (report.text, report.outcome) for report in roster.lines]
