"""A request's plan: what was noted is taught no more, and what is planned is kept. All names are invented."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date
from pathlib import Path

import pytest

from namewright.classbook import Classbook, Seen
from namewright.making.choices import NOTHING
from namewright.making.from_book import members_of
from namewright.making.planning import keep_plan, timetable_of
from namewright.making.request import Kind, Request
from namewright.practice.ordering import completed, order_class

MONDAY = date(2026, 9, 14)


@pytest.fixture
def book(tmp_path: Path) -> Iterator[Classbook]:
    with Classbook.open(tmp_path / "class.db") as opened:
        opened.update_roster("Bo\nAda\nTal\nNan\n")
        yield opened


def request_of(book: Classbook, **more: object) -> Request:
    placed = completed(order_class([one.child for one in book.children()]))
    return Request((Kind.PLAN,), members_of(book, book.children(), placed, notes=True), NOTHING, **more)  # type: ignore[arg-type]


def test_what_was_noted_as_formed_is_ticked_and_not_taken_up(book: Classbook) -> None:
    """Bo has formed both letters: nothing is next for Bo."""
    book.observe(1, "2026-09-10", Seen([0, 1]))
    child = next(one for one in timetable_of(request_of(book)).children if one.placed.child.label == "Bo")
    assert (set(child.formed), child.next) == ({"B", "o"}, ())


def test_how_far_and_how_fast_is_as_asked_for(book: Classbook) -> None:
    """Two letters a week for three weeks; what was taught before comes no more as new."""
    plan = timetable_of(request_of(book, weeks=3, a_week=2))
    assert len(plan.weeks.weeks) == 3
    assert max(len(week.letters) for week in plan.weeks.weeks) == 2
    first = plan.weeks.weeks[0].letters
    again = timetable_of(request_of(book, weeks=1, a_week=2, taught=(first,)))
    assert not set(first) & set(again.weeks.weeks[0].letters)


def test_tables_and_letters_are_kept(book: Classbook) -> None:
    """For next week: each child's table by id, and the letters by the week's Monday."""
    request = request_of(book)
    keep_plan(book, book.children(), request, MONDAY)
    assert set(book.groups()) == {one.id for one in book.children()}
    assert book.taught() == {MONDAY: timetable_of(request).weeks.weeks[0].letters}
