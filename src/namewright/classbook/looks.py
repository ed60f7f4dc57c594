"""What was seen of a name's letters on each day: the notes of one day add up.

A letter that one note of a day calls formed is formed that day, whatever another leaves out. “Not yet” is a letter only
where it was said: of a note that lists what is not yet, just these; of one that does not, every letter that it leaves
out (so are notes from before it could be said, and those of a screen that shows every letter to tap). Pure.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date

from namewright.classbook.records import Observation, letter_positions
from namewright.classbook.stages import Stage
from namewright.settings import Support


@dataclass(frozen=True, slots=True)
class Look:
    """One day on which letters of a name were looked at; positions in ``clusters(name)``.

    ``support`` is the level that was noted last that day, None where none was.
    """

    day: date
    name: str
    formed: frozenset[int]
    not_yet: frozenset[int]
    support: Support | None

    @property
    def whole(self) -> bool:
        """Say whether every letter of the name was formed."""
        return self.formed >= frozenset(letter_positions(self.name))


def looks(observations: Sequence[Observation]) -> tuple[Look, ...]:
    """Return one look a day and name, in order of days."""
    days: dict[tuple[str, str], list[Observation]] = {}
    for note in sorted(observations, key=lambda each: (each.date, each.id)):
        if note.letters is not None:
            days.setdefault((note.date, note.name), []).append(note)
    return tuple(_look(day, name, notes) for (day, name), notes in days.items())


def _look(day: str, name: str, notes: Sequence[Observation]) -> Look:
    formed = frozenset(at for note in notes for at in note.letters or ())
    said = frozenset(at for note in notes for at in _said_not_yet(note))
    levels = [note.support for note in notes if note.support]
    return Look(date.fromisoformat(day), name, formed, said - formed, levels[-1] if levels else None)


def _said_not_yet(note: Observation) -> frozenset[int]:
    if note.not_yet is not None:
        return frozenset(note.not_yet)
    return frozenset(letter_positions(note.name)) - frozenset(note.letters or ())


@dataclass(frozen=True, slots=True)
class DayNote:
    """All that was noted of a name on one day, added up, as an adult goes on with it.

    ``notes`` are the numbers of the notes that it stands for. ``formed`` is None where letters were not looked at. Of a
    level, a stage and initials the last that was noted counts; what was noted in words stands one below the other.
    """

    notes: tuple[int, ...]
    formed: frozenset[int] | None
    support: Support | None
    stage: Stage | None
    words: str
    who: str


def day_note(observations: Sequence[Observation], day: str, name: str) -> DayNote:
    """Return what was noted of a name on a day (ISO 8601); one of no notes where nothing was."""
    notes = sorted((each for each in observations if (each.date, each.name) == (day, name)), key=lambda each: each.id)
    look = next(iter(looks(notes)), None)
    stages = [note.stage for note in notes if note.stage]
    supports = [note.support for note in notes if note.support]
    return DayNote(tuple(note.id for note in notes), look.formed if look else None, supports[-1] if supports else None,
                   stages[-1] if stages else None, "\n".join(dict.fromkeys(note.note for note in notes if note.note)),
                   next((note.who for note in reversed(notes) if note.who), ""))
