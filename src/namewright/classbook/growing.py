"""From what was noted to what progress and plans show. Pure."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date

from namewright.classbook.looks import Look, looks
from namewright.classbook.records import Observation, letter_positions
from namewright.names.clusters import clusters
from namewright.pages.growth import Growth, Track


def growth_of(label: str, name: str, observations: Sequence[Observation]) -> Growth:
    """Return the growth of a child who practises ``name`` now.

    A note made about another form of the name counts for the letters that stand in the same place in both.
    """
    letters, days = clusters(name), looks(observations)
    tracks = tuple(Track(letters[at], _track(at, letters[at], days)) for at in letter_positions(name))
    return Growth(label, tracks,
                  tuple((day, note.support) for day, note in _each_day(observations) if note.support is not None),
                  tuple((day, int(note.stage)) for day, note in _each_day(observations) if note.stage is not None))


def _track(at: int, letter: str, days: Sequence[Look]) -> tuple[tuple[date, bool], ...]:
    """Return the days on which something was said of the letter in this place, and whether it was formed."""
    said: dict[date, bool] = {}
    for look in days:
        if at in look.formed | look.not_yet and clusters(look.name)[at] == letter:
            said[look.day] = said.get(look.day, False) or at in look.formed
    return tuple(said.items())


def formed_lately(name: str, observations: Sequence[Observation]) -> frozenset[str]:
    """Return the letters of a name that stand now: formed, in every place they have in it, when last looked at."""
    tracks = growth_of("", name, observations).tracks
    return frozenset(track.letter for track in tracks) - {track.letter for track in tracks if not track.stands}


def not_standing(name: str, observations: Sequence[Observation]) -> frozenset[str]:
    """Return the letters of a name that were looked at and do not stand: not formed, in some place, the last time."""
    return frozenset(track.letter for track in growth_of("", name, observations).tracks
                     if track.days and not track.stands)


def _each_day(observations: Sequence[Observation]) -> list[tuple[date, Observation]]:
    return sorted(((date.fromisoformat(note.date), note) for note in observations),
                  key=lambda dated: (dated[0], dated[1].id))
