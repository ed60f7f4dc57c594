"""What a line asks of a person, and which lines ask nothing."""

from __future__ import annotations

from collections import Counter
from typing import Any

import pytest
from webhelp import OTHERS, listed

from namewright.roster.children import Roster
from namewright.roster.parsing import read_roster
from namewright.web.list_questions import sorted_lines
from namewright.web.list_reading import Reading
from namewright.web.list_ways import mark

pytestmark = pytest.mark.usefixtures("at_the_desk")


def needs(reading: Reading, *settled: str) -> list[tuple[str, list[str]]]:
    found = sorted_lines(reading.lines, reading.notes_of, reading.cannot_draw, frozenset(settled)).needs
    return [(str(one.asked), [way.key for way in one.ways]) for one in found]


ASKS = {
    "Vexil & Quorra": ("two", ["split", "one", "drop"]),
    "Ana / Bo / Zu": ("several", ["split", "drop"]),
    "Ethan / Ella Brown": ("family", ["share", "apart"]),
    "wears glasses": ("child", ["drop", "child"]),
    "Анна Петрова": ("latin", ["latin", "leave"]),
    "Katla Pruner": ("twice", ["both", "take"]),
    "Mirel Vost (Kvothe)": ("called", ["called", "remark", "none"]),
    "Bluebirds - AM": ("child", ["drop", "child"]),
    "Bluebirds - Ms. Ferrow": ("child", ["drop", "child"]),
    "Aula Girasoles": ("child", ["drop", "child"]),
}


@pytest.mark.parametrize(("line", "asked"), ASKS.items(), ids=ASKS)
def test_a_line_that_needs_a_person_asks_one_question(line: str, asked: tuple[str, list[str]]) -> None:
    """Each has ways to answer, and asks no more once it was said to be right."""
    reading = listed(line)
    assert needs(reading) == [asked]
    on = next(one for one in sorted_lines(reading.lines, reading.notes_of, reading.cannot_draw, frozenset()).needs)
    assert needs(reading, mark(on.report.text)) == []


@pytest.mark.parametrize("line", ["KIRRIN BRANE", "Tamsel, Ottilka L", "• Mirel Vost (goes by Miri)", "Room 9", "12",
                                  "", "Bo Lindle - peanut allergy", "Ms. Rivera", "Jordan Taylor 4/3/2021",
                                  "Anna Maria Schmidt", "Nia Wren - left", "Nia Wren (Peanuts)", "Nia Wren, Asthma",
                                  "Nia Wren (EpiPen)", 'Nia Wren "Peanuts"', "Nia Wren (Autism)", "Nia Wren (IEP)",
                                  "Nia Wren (Nussallergie)", "Nia Wren, Epilepsia", "Nia Wren (Arachides)",
                                  "Nia Wren\tPresent", "Nia Wren\tL"])
def test_a_note_asks_nothing(line: str) -> None:
    """What was only tidied is told and needs nobody."""
    assert needs(listed(line)) == []


@pytest.mark.parametrize("line", ["KIRRIN BRANE", "Bo Lindle - peanut allergy", "Anna Maria Schmidt", "Nia Wren 4"])
def test_every_child_that_was_tidied_can_be_said_to_be_none(line: str) -> None:
    """However sure the reading was, a heading may have been taken for a child."""
    found = sorted_lines((reading := listed(line)).lines, reading.notes_of, reading.cannot_draw, frozenset())
    assert [[way.key for way in found.ways[one.line]][-1] for one in found.tidied] == ["none"]


def test_a_list_is_read_once_in_a_request(monkeypatch: pytest.MonkeyPatch) -> None:
    """Four hundred lines take time: what was read for an answer is what is shown."""
    counted = Counter[str]()

    def counting(text: str, *more: Any) -> Roster:
        counted[text] += 1
        return read_roster(text, *more)

    monkeypatch.setattr("namewright.web.list_reading.read_roster", counting)
    for _ in range(2):
        assert listed("Mirel Vost").children == len(OTHERS) + 1
    assert set(counted.values()) == {1}
