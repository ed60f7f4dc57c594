"""What a page of progress shows, with nothing left to look up: letters, help and steps over days.

Pure data. Out of scope: where it comes from (``classbook``), how it is drawn (``progress``, ``classprogress``).
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from datetime import date

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
        """Return the letters that have been formed, the earliest first, else as in the name."""
        return tuple(sorted((track for track in self.tracks if track.first), key=lambda track: track.first or date.max))


def day_said(day: date, words: Mapping[str, str], *, year: bool = False) -> str:
    """Return a day as it is written on a page: ``14 Sep``."""
    month = words["progress.months"].split()[day.month - 1]
    said = words["progress.date"].format(day=day.day, month=month)
    return f"{said} {day.year}" if year else said


def summary(growth: Growth, words: Mapping[str, str]) -> str:
    """Return one warm sentence or two about a child's letters; no counts, no comparison."""
    formed = growth.formed
    if not formed:
        looked_at = any(track.days for track in growth.tracks)
        return words["progress.begin" if looked_at else "progress.unseen"].format(name=growth.label)
    first, newest = formed[0], formed[-1]
    since, last = (day_said(track.first or date.max, words, year=True) for track in (first, newest))
    letters = _listed([track.letter for track in growth.tracks if track.first], words["progress.and"])
    key = "all" if len(formed) == len(growth.tracks) else "some" if len(formed) > 1 else "one"
    if key == "all" and since == last:
        key = "together"
    return words[f"progress.{key}"].format(name=growth.label, first=first.letter, newest=newest.letter, since=since,
                                           last=last, letters=letters)


def _listed(parts: list[str], joining: str) -> str:
    return parts[0] if len(parts) == 1 else f"{', '.join(parts[:-1])} {joining} {parts[-1]}"
