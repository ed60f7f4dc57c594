"""From notes to growth: which letter stood on which day, whatever the name was called then."""

from __future__ import annotations

from datetime import date
from pathlib import Path

import pytest

from namewright.classbook import Classbook, Seen
from namewright.classbook.growing import formed_lately, growth_of
from namewright.classbook.records import Observation
from namewright.classbook.rosters import NewList
from namewright.classbook.stages import Stage
from namewright.settings import Support


def note(day: int, letters: tuple[int, ...] | None, name: str = "Mira", *, id_: int = 0, support: Support | None = None,
         stage: Stage | None = None) -> Observation:
    return Observation(id_ or day, 1, date(2026, 3, day).isoformat(), name, letters, support, stage, "", "", "")


def days_of(letter: str, *notes: Observation, name: str = "Mira") -> list[tuple[int, bool]]:
    track = next(one for one in growth_of("M.", name, notes).tracks if one.letter == letter)
    return [(day.day, formed) for day, formed in track.days]


def test_each_day_says_of_each_letter_whether_it_was_formed() -> None:
    notes = (note(4, (0, 1)), note(2, ()))
    assert days_of("M", *notes) == [(2, False), (4, True)]
    assert days_of("r", *notes) == [(2, False), (4, False)]
    assert [track.letter for track in growth_of("M.", "Mary-Kate", ()).tracks] == list("MaryKate")


def test_letters_that_were_not_looked_at_say_nothing() -> None:
    """A day with only a level of support or a step is a day, but no letter's."""
    growth = growth_of("M.", "Mira", (note(3, None, support=Support.LIGHT), note(5, None, stage=Stage.SHAPES)))
    assert all(track.days == () for track in growth.tracks)
    assert [(day.day, level) for day, level in growth.support] == [(3, Support.LIGHT)]
    assert [(day.day, step) for day, step in growth.stages] == [(5, 3)]


def test_a_note_of_another_name_counts_where_the_same_letter_stands() -> None:
    """Mirabel's M i r a are Mira's; Tira's T is nobody's M."""
    assert days_of("a", note(2, (3,), "Mirabel")) == [(2, True)]
    assert days_of("M", note(2, (0,), "Tira")) == []
    assert days_of("i", note(2, (1,), "Tira")) == [(2, True)]


def test_the_looks_of_one_day_add_up() -> None:
    assert days_of("M", note(2, (0,), id_=1), note(2, (), id_=2)) == [(2, True)]


@pytest.mark.parametrize(("name", "notes", "formed", "why"), [
    ("Mira", (), "", "nothing was seen"), ("Mira", (note(2, (0, 2)),), "Mr", "what stood"),
    ("Mira", (note(2, (0,)), note(3, (1,))), "i", "the last look says it"),
    ("Mira", (note(2, (0,)), note(3, None, stage=Stage.EVEN)), "M", "a day that looked at no letter does not"),
    ("Anna", (note(2, (1,), "Anna"),), "", "one n of two is not n"),
    ("Anna", (note(2, (1, 2, 3), "Anna"),), "na", "both are"),
    ("Mira", (note(2, (0,), "Mirabel"),), "M", "another form of the name counts where the letter stands in its place")],
    ids=lambda value: str(value)[:20])
def test_which_letters_stand_now(name: str, notes: tuple[Observation, ...], formed: str, why: str) -> None:
    assert formed_lately(name, notes) == frozenset(formed), why


def test_notes_about_an_older_form_of_the_name_count_where_letters_agree(folder: Path) -> None:
    """A corrected name keeps the days of the letters that stand where they stood."""
    with Classbook.open("class.db") as book:
        book.observe(1, "2026-09-01", Seen([0, 1]))
        book.update_roster(NewList(book.roster_text().replace("Mira Quill", "Mina Quill"), same={1: 1}))
        book.observe(1, "2026-09-08", Seen([2]))
        growth = growth_of("Mina", "Mina", book.observations(1))
    assert [len(track.days) for track in growth.tracks] == [2, 2, 1, 2]
    assert [track.first and track.first.day for track in growth.tracks] == [1, 1, 8, None]
