"""The checks on what a class file takes in: days, moments, texts and places of letters."""

from __future__ import annotations

from datetime import UTC, date, datetime

import pytest
from hypothesis import given
from hypothesis import strategies as st

from namewright.classbook.records import (
    ClassbookError,
    checked_day,
    checked_letters,
    checked_moment,
    checked_text,
    letter_positions,
)


@pytest.mark.parametrize(("name", "places"), [
    ("Mira", (0, 1, 2, 3)), ("Mary-Kate", (0, 1, 2, 3, 5, 6, 7, 8)), ("Ana María", (0, 1, 2, 4, 5, 6, 7, 8)),
    ("O’Vann", (0, 2, 3, 4, 5)),
    ("Ẹ̀bun", (0, 1, 2, 3)), ("R2", (0, 1)), ("-", ()), ("", ())])
def test_what_a_child_forms(name: str, places: tuple[int, ...]) -> None:
    """Letters and digits, a mark with its letter; no hyphen, space or apostrophe."""
    assert letter_positions(name) == places


@pytest.mark.parametrize(("letters", "kept"), [(None, None), ((), ()), ([3, 0, 3], (0, 3))])
def test_places_are_kept_in_order_each_once(letters: list[int] | None, kept: tuple[int, ...] | None) -> None:
    assert checked_letters("Mira", letters) == kept


@pytest.mark.parametrize(("name", "letters"), [("Mira", [4]), ("Mira", [-1]), ("Mary-Kate", [4])])
def test_a_place_without_a_letter_is_refused(name: str, letters: list[int]) -> None:
    with pytest.raises(ClassbookError):
        checked_letters(name, letters)


@pytest.mark.parametrize(("day", "kept"), [
    ("2026-09-14", "2026-09-14"), (" 2026-09-14 ", "2026-09-14"), (date(2026, 9, 14), "2026-09-14"),
    (datetime(2026, 9, 14, 23, 59), "2026-09-14")])
def test_a_day_is_kept_without_its_hour(day: str | date, kept: str) -> None:
    assert checked_day(day) == kept


@pytest.mark.parametrize("day", ["", "yesterday", "2026-02-30", "14.9.2026", "2026-9-1",
                                 "0026-11-03", "1026-11-03"])  # of a year of two figures, as a browser fills it up
def test_what_is_no_day_is_refused(day: str) -> None:
    with pytest.raises(ClassbookError):
        checked_day(day)


def test_a_moment_is_kept_to_the_second() -> None:
    """And where none is said it is now, with the offset of this computer's clock."""
    assert checked_moment(datetime(2026, 9, 14, 9, 30, 1, 999, tzinfo=UTC)) == "2026-09-14T09:30:01+00:00"
    assert checked_moment(" 2026-09-14T09:30 ") == "2026-09-14T09:30:00"
    before = datetime.now().astimezone().replace(microsecond=0)
    now = datetime.fromisoformat(checked_moment(None))
    assert before <= now <= datetime.now().astimezone()
    with pytest.raises(ClassbookError):
        checked_moment("soon")


@given(st.text(max_size=60))
def test_a_text_holds_nothing_that_cannot_be_seen(typed: str) -> None:
    """Lines and tabs stay; checked again it is the same."""
    kept = checked_text(typed, 60, "note")
    assert all(char.isprintable() or char in "\n\t" for char in kept)
    assert checked_text(kept, 60, "note") == kept == kept.strip()


def test_a_text_has_a_greatest_length() -> None:
    """Of what is kept, not of the white around it."""
    assert checked_text("  " + "x" * 20 + " \n", 20, "note") == "x" * 20
    with pytest.raises(ClassbookError):
        checked_text("x" * 21, 20, "note")
