"""From what was noted to what progress and plans show. Pure."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date

from namewright.classbook.records import Observation, letter_positions
from namewright.classbook.suggest import by_day
from namewright.names.clusters import clusters
from namewright.pages.growth import Growth, Track


def growth_of(label: str, name: str, observations: Sequence[Observation]) -> Growth:
    """Return the growth of a child who practises ``name`` now.

    A note made about another form of the name counts for the letters that stand in the same place in both.
    """
    letters = clusters(name)
    days = [(date.fromisoformat(note.date), note) for note in by_day(observations)]
    tracks = tuple(Track(letters[at], tuple((day, at in note.letters) for day, note in days
                                            if note.letters is not None and clusters(note.name)[at:at + 1] ==
                                            letters[at:at + 1]))
                   for at in letter_positions(name))
    return Growth(label, tracks,
                  tuple((day, note.support) for day, note in _each_day(observations) if note.support is not None),
                  tuple((day, int(note.stage)) for day, note in _each_day(observations) if note.stage is not None))


def formed_lately(name: str, observations: Sequence[Observation]) -> frozenset[str]:
    """Return the letters of a name that stood, in every place they have in it, when letters were looked at last.

    Notes made about another form of the name say nothing.
    """
    looks = [note.letters for note in by_day(observations) if note.letters is not None and note.name == name]
    letters, places, formed = clusters(name), letter_positions(name), looks[-1] if looks else ()
    return frozenset(letters[at] for at in places) - {letters[at] for at in places if at not in formed}


def _each_day(observations: Sequence[Observation]) -> list[tuple[date, Observation]]:
    return sorted(((date.fromisoformat(note.date), note) for note in observations),
                  key=lambda dated: (dated[0], dated[1].id))
