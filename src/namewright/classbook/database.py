"""The class's database: every change is one transaction, and only ``erase`` throws away what was kept.

Two programs that change it at once wait for each other; where a person's view may be out of date by then, the
``after…`` arguments refuse the change instead of guessing. Moments are ISO 8601; ``when=None`` is this computer's
clock, the only clock here. How the file is opened, read and changed is told in ``opened``; on that stand settings
(``kept_settings``), lists (``kept_lists``), and here plans, notes and erasing.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from datetime import date

from namewright.classbook import doubles, erasing, observations, plans
from namewright.classbook.erasing import Erased
from namewright.classbook.kept_lists import KeptLists
from namewright.classbook.kept_settings import When
from namewright.classbook.records import By, ClassbookError, Observation, Seen
from namewright.classbook.traces import Trace


class Classbook(KeptLists):
    """An open class: what is kept of it, and every change of that."""

    def make_one(self, double: int, child_id: int, *, who: str = "", when: When = None) -> int:
        """Make a child of whom there is a double one again, with what is kept of both; return how many notes went over.

        There is no undo. Raises ClassbookError, with nothing changed, for a child we do not know, and for one child.
        """
        with self.changing():
            return doubles.make_one(self._db, double, child_id, self._part(), By(who, when))

    # --- what is kept of the plan ---------------------------------------------------------------------

    def groups(self) -> dict[int, int]:
        """Return the group, from 1, of each child who is here and was in one when they were kept last, by id."""
        with self._reading():
            return plans.groups(self._db)

    def keep_groups(self, groups: Mapping[int, int]) -> None:
        """Keep these groups, by id of child, in place of those of last time; the file is not touched by the same."""
        if self.groups() != groups:
            with self.changing():
                plans.keep_groups(self._db, groups)

    def taught(self) -> dict[date, tuple[str, ...]]:
        """Return the letters of each week that was planned, by its Monday, the earliest first."""
        with self._reading():
            return plans.taught(self._db)

    def keep_taught(self, monday: date, letters: Iterable[str]) -> None:
        """Keep the letters of a week in place of what it had; the file is not touched by the same."""
        wanted = tuple(letters)
        if self.taught().get(monday, ()) != wanted:
            with self.changing():
                plans.keep_taught(self._db, monday, wanted)

    def seats(self) -> tuple[tuple[int, int, bool], ...]:
        """Return who shall sit together (true) or apart, by ids, where both are here."""
        with self._reading():
            return plans.seats(self._db)

    def seat(self, one: int, other: int, together: bool | None) -> None:
        """Say that two children shall sit together or apart; None takes back what was said of them.

        Raises ClassbookError for a child we do not know, and for a child with itself.
        """
        pair = self.child(one).id, self.child(other).id
        if one == other:
            raise ClassbookError("classbook.one_seat")
        with self.changing():
            plans.seat(self._db, *pair, together)

    # --- erasing for good -----------------------------------------------------------------------------

    def traces(self, child_ids: Iterable[int]) -> tuple[Trace, ...]:
        """Return where names that may be these children's stand besides in what is kept of them.

        Raises ClassbookError for a child we do not know.
        """
        with self._reading():
            return erasing.traces(self._db, frozenset(child_ids), self._part())

    def erase(self, child_ids: Iterable[int], *, who: str = "", when: When = None,
              also: Iterable[str] = ()) -> Erased:
        """Erase children for good: their lines in the list, settings, history and notes. There is no undo.

        ``also`` are keys of ``traces`` from which the names go too. The file is packed afresh, so that no bytes of what
        was erased stay in it. Raises ClassbookError, with nothing changed, for a child we do not know.
        """
        with self.changing():
            erased = erasing.erase(self._db, frozenset(child_ids), self._part(), By(who, when), frozenset(also))
        self._pack()
        return erased

    def erase_all(self) -> None:
        """Erase the class for good; what stays is an empty class with a new ``class_id``."""
        with self.changing():
            erasing.erase_all(self._db)
        self._pack()

    # --- what was seen --------------------------------------------------------------------------------

    def observe(self, child_id: int, day: date | str, seen: Seen, *, who: str = "", when: When = None,
                token: str | None = None, in_place_of: Iterable[int] = ()) -> Observation:
        """Note what was seen on a day. Several notes on one day add up (``looks``); all are kept.

        ``token`` is any text of the caller's own: a second call with the same one returns the first note and adds
        nothing. ``in_place_of`` are notes of this child and day that the new one was made from: they stay in the file
        and are shown no more, so that a letter can be taken away again.
        """
        with self.changing():
            name = self.child(child_id).child.practice
            noted = observations.observe(self._db, child_id, name, day, seen, By(who, when), token)
            observations.replace(self._db, noted, in_place_of)
            return noted

    def strike(self, observation_id: int, *, when: When = None) -> None:
        """Take a note back: it stays in the file and is shown no more."""
        with self.changing():
            observations.strike(self._db, observation_id, when)

    def observations(self, child_id: int) -> tuple[Observation, ...]:
        """Return what was seen of a child, by day and then as it was noted."""
        with self._reading():
            return observations.observations(self._db, child_id)
