"""The notes of one day add up to one look, worked by hand. All names are invented."""

from __future__ import annotations

from dataclasses import replace
from datetime import date

import pytest

from namewright.classbook.looks import day_note, looks
from namewright.classbook.records import Observation
from namewright.settings import Support


def note(id_: int, day: str, letters: tuple[int, ...] | None, not_yet: tuple[int, ...] | None = None,
         support: Support | None = None, name: str = "Mira") -> Observation:
    return Observation(id_, 1, day, name, letters, support, None, "", "", f"{day}T09:00:00", not_yet)


@pytest.mark.parametrize(("notes", "formed", "not_yet", "why"), [
    ([((0, 1), None)], {0, 1}, {2, 3}, "a note that only lists what was formed says not yet of all others"),
    ([((0,), (2,))], {0}, {2}, "one that says what is not yet says it of no other"),
    ([((0,), None), ((3,), (1,))], {0, 3}, {1, 2}, "formed in either of two notes is formed"),
    ([((), (0,)), ((0,), ())], {0}, set(), "formed in the second note goes before not yet in the first"),
])
def test_notes_of_a_day_add_up(notes: list[tuple[tuple[int, ...], tuple[int, ...] | None]], formed: set[int],
                               not_yet: set[int], why: str) -> None:
    """Of M-i-r-a, positions 0 to 3."""
    (look,) = looks([note(at, "2026-09-14", *each) for at, each in enumerate(notes)])
    assert (look.formed, look.not_yet) == (formed, not_yet), why


def test_a_look_a_day_and_name_in_order() -> None:
    """Days in order however they were noted; a note that looked at no letters is none; another name is another look."""
    found = looks([note(1, "2026-09-15", (0,)), note(2, "2026-09-14", (0,)), note(3, "2026-09-14", None),
                   note(4, "2026-09-14", (1,), name="Mirabel")])
    assert [(each.day, each.name) for each in found] == [
        (date(2026, 9, 14), "Mira"), (date(2026, 9, 14), "Mirabel"), (date(2026, 9, 15), "Mira")]


def test_the_level_noted_last_that_day_counts() -> None:
    """By the order of notes; one without a level changes nothing."""
    (look,) = looks([note(3, "2026-09-14", (0,)), note(1, "2026-09-14", (0,), support=Support.FULL),
                     note(2, "2026-09-14", (0,), support=Support.LIGHT)])
    assert look.support is Support.LIGHT


def test_a_name_is_whole_with_its_letters_and_without_its_hyphen() -> None:
    """A-n-a-hyphen-B-o: five letters at 0, 1, 2, 4 and 5."""
    whole, part = (looks([note(1, "2026-09-14", at, name="Ana-Bo")])[0].whole for at in ((0, 1, 2, 4, 5), (0, 1, 2, 4)))
    assert (whole, part) == (True, False)


def test_a_day_is_gone_on_with_as_it_stands() -> None:
    """Letters of all its notes, the last level and stage, and all words; a day of another name is another day."""
    notes = [note(1, "2026-09-14", (0,), support=Support.FULL), note(2, "2026-09-14", (2,)),
             note(3, "2026-09-15", (1,)), note(4, "2026-09-14", None, name="Mirabel")]
    found = day_note([replace(each, note=f"of {each.id}") for each in notes], "2026-09-14", "Mira")
    assert (found.notes, found.formed, found.support, found.words) == ((1, 2), {0, 2}, Support.FULL, "of 1\nof 2")
    assert day_note(notes, "2026-09-14", "Mirabel").formed is None
    assert day_note(notes, "2026-09-16", "Mira").notes == ()
