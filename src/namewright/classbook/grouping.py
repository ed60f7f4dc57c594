"""The groups of a class, kept from one plan to the next, so that children stay together without anybody's doing.

A plan asks ``with_groups`` for the groups, which starts from those that are kept and moves as few children as it can,
and then ``keep`` to keep what came of it. Only children who are here have a group; whoever left, and comes back,
is placed as a child who joins. Out of scope: who shares letters with whom (``practice.groups``).
"""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date, timedelta

from namewright.classbook.database import Classbook
from namewright.classbook.records import BookChild
from namewright.practice.ordering import Placed, completed
from namewright.practice.wishes import NO_WISHES, Wishes
from namewright.settings import Support


def with_groups(book: Classbook, children: Sequence[BookChild], placed: Sequence[Placed], language: str = "en", *,
                anew: bool = False, wishes: Wishes = NO_WISHES, usual: Support = Support.FULL,
                names_in: str | None = None) -> tuple[Placed, ...]:
    """Return the same children with their beats and groups, from the groups of last time unless ``anew``.

    ``children`` are the whole class as the book has it now, ``placed`` the same in an order. Nothing is changed in
    the class. Raises ClassbookError.
    """
    before = {} if anew else book.groups()
    labels = {one.child.label: before[one.id] for one in children if one.id in before}
    return completed(placed, language, labels, wishes, usual, names_in)


def wishes(book: Classbook, children: Sequence[BookChild], tables: int | None = None) -> Wishes:
    """Return who shall sit together or apart, by label, and how many tables there are: as asked, else as is kept.

    Raises ClassbookError.
    """
    tables = tables or int(book.class_settings.get("tables", "0")) or None
    labels = {one.id: one.child.label for one in children}
    said = [(labels[one], labels[other], together) for one, other, together in book.seats()
            if one in labels and other in labels]
    return Wishes(tables, tuple((one, other) for one, other, together in said if together),
                  tuple((one, other) for one, other, together in said if not together))


def monday_of(day: date) -> date:
    """Return the Monday of the week that a day belongs to; a Saturday and a Sunday belong to the week that comes."""
    return day + timedelta(days=7 - day.weekday()) if day.weekday() > 4 else day - timedelta(days=day.weekday())


def taught_before(book: Classbook, monday: date) -> tuple[tuple[str, ...], ...]:
    """Return the letters of the weeks before a week, the last week last. Raises ClassbookError."""
    return tuple(letters for week, letters in book.taught().items() if week < monday)


def keep(book: Classbook, children: Sequence[BookChild], placed: Sequence[Placed]) -> None:
    """Keep the groups of the whole class for next time. Raises ClassbookError where the file cannot be changed."""
    ids = {one.child.line: one.id for one in children}
    book.keep_groups({ids[each.child.line]: each.group for each in placed})
