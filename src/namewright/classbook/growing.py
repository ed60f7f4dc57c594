"""From what was noted to what progress and plans show. Pure."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date

from namewright.classbook.looks import Look, looks
from namewright.classbook.records import Observation, letter_positions
from namewright.names.clusters import clusters
from namewright.pages.growth import Growth, Track
from namewright.pages.record import Held, Record, Trial
from namewright.settings import Support


def growth_of(label: str, name: str, observations: Sequence[Observation], held: Sequence[Held] = ()) -> Growth:
    """Return the growth of a child who practises ``name`` now.

    A note made about another form of the name counts for the letters that stand in the same place in both. ``held`` is
    what was practised with, one for each note; without it, help is known only where it was noted.
    """
    letters, days = clusters(name), looks(observations)
    tracks = tuple(Track(letters[at], _track(at, letters[at], days)) for at in letter_positions(name))
    levels: list[Support | None] = [each.support for each in held] or [note.support for note in observations]
    dated = zip(observations, levels, strict=True)
    return Growth(label, tracks,
                  tuple(sorted(((date.fromisoformat(note.date), level) for note, level in dated if level is not None),
                               key=lambda each: each[0])),
                  tuple((day, int(note.stage)) for day, note in _each_day(observations) if note.stage is not None))


def _track(at: int, letter: str, days: Sequence[Look]) -> tuple[tuple[date, bool], ...]:
    """Return the days on which something was said of the letter in this place, and whether it was formed."""
    said: dict[date, bool] = {}
    for look in days:
        if at in look.formed | look.not_yet and clusters(look.name)[at] == letter:
            said[look.day] = said.get(look.day, False) or at in look.formed
    return tuple(said.items())


def record_of(label: str, name: str, observations: Sequence[Observation], held: Sequence[Held]) -> Record:
    """Return every note as a look at the letters of ``name``; ``held`` is what was practised with at each."""
    places = letter_positions(name)
    letters = clusters(name)
    return Record(label, tuple(letters[at] for at in places), tuple(
        _trial(name, places, note, each) for note, each in
        sorted(zip(observations, held, strict=True), key=lambda pair: (pair[0].date, pair[0].id))))


def _trial(name: str, places: Sequence[int], note: Observation, held: Held) -> Trial:
    look = next(iter(looks([note])), None)
    mine, then = clusters(name), clusters(note.name)

    def known(those: frozenset[int]) -> frozenset[int]:
        return frozenset(number for number, at in enumerate(places) if at in those and then[at] == mine[at])

    return Trial(date.fromisoformat(note.date), held, known(look.formed) if look else frozenset(),
                 known(look.not_yet) if look else frozenset(), int(note.stage) if note.stage else None, note.note,
                 note.who)


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
