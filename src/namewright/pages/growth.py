"""What a page of progress shows, with nothing left to look up: letters, help and steps over days.

Pure data. Out of scope: where it comes from (``classbook``), how it is drawn (``child_progress``, ``class_progress``).
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date

from namewright.message import Message, message
from namewright.settings import Support

STAGES = 7


@dataclass(frozen=True, slots=True)
class Track:
    """One letter of the name over time: the days it was looked at, and whether it was formed that day."""

    letter: str
    days: tuple[tuple[date, bool], ...] = ()

    @property
    def first(self) -> date | None:
        """Return the day on which the letter was first seen formed."""
        return next((day for day, formed in self.days if formed), None)

    @property
    def stands(self) -> bool:
        """Say whether the letter was formed when it was looked at last."""
        return bool(self.days) and self.days[-1][1]

    @property
    def since(self) -> date | None:
        """Return the day from which on the letter was formed whenever it was looked at; None where it is not now."""
        lost = max((at for at, (_, formed) in enumerate(self.days) if not formed), default=-1)
        return self.days[lost + 1][0] if self.stands else None


@dataclass(frozen=True, slots=True)
class Growth:
    """A child's year: ``label`` is what the child is called, ``tracks`` the letters of the practised name in order.

    ``support`` and ``stages`` (1 to 7) hold the days on which they were noted. All days are in order.
    """

    label: str
    tracks: tuple[Track, ...]
    support: tuple[tuple[date, Support], ...] = ()
    stages: tuple[tuple[date, int], ...] = ()

    @property
    def days(self) -> tuple[date, ...]:
        """Return every day on which something was noted, in order."""
        dated = [*(day for track in self.tracks for day, _ in track.days), *(day for day, _ in self.support),
                 *(day for day, _ in self.stages)]
        return tuple(sorted(set(dated)))

    @property
    def formed(self) -> tuple[Track, ...]:
        """Return the letters that stand now, those that have stood longest first, else as in the name."""
        return tuple(sorted((track for track in self.tracks if track.since), key=lambda track: track.since or date.max))


def day_said(day: date, *, year: bool = False) -> Message:
    """Return a day as it is written on a page: ``14 Sep``."""
    month = message(f"month.{day.month}")
    if year:
        return message("date.with_year", count=day.day, month=month, year=day.year)
    return message("date.day", count=day.day, month=month)


def summary(growth: Growth) -> Message:
    """Return one warm sentence or two about a child's letters; no counts, no comparison."""
    formed = growth.formed
    if not formed:
        looked_at = any(track.days for track in growth.tracks)
        return message("page.progress.begin" if looked_at else "page.progress.unseen", name=growth.label)
    first, newest = formed[0], formed[-1]
    since, last = (day_said(track.since or date.max, year=True) for track in (first, newest))
    letters = tuple(track.letter for track in growth.tracks if track.stands)
    key = "all" if len(formed) == len(growth.tracks) else "some" if len(formed) > 1 else "first_letter"
    if key == "all" and since == last:
        key = "together"
    return message(f"page.progress.{key}", name=growth.label, first=first.letter, newest=newest.letter, since=since,
                   last=last, letters=letters)
