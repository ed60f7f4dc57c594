"""A suggestion for the next level of support, with its reason. The adult decides; nothing here changes anything.

The rule is ours and not a finding: practice that fades is common practice, but no study seen says when to fade.
It looks at the last days on which letters were looked at, three at most, the last note of a day counting:

- every letter of the name formed on two of the last three days: one level lighter;
- fewer than half of the letters on each of the last two days: one level fuller;
- anything else, and fewer than two such days: stay.

A day noted at another level of support than today's says nothing about today's, and is left out; so is a day noted
for another name. Pure: the level and the notes come in, a message goes out.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from namewright.classbook.records import Observation, letter_positions
from namewright.message import Message, message
from namewright.settings import Support

DAYS = 3
_LEVELS = tuple(Support)  # from most support to least


@dataclass(frozen=True, slots=True)
class Suggestion:
    """``support`` is the level to try next (the same: stay), ``reason`` tells why."""

    support: Support
    reason: Message


def suggest(support: Support, observations: Sequence[Observation], name: str) -> Suggestion:
    """Return a suggestion for a child who practises ``name`` at this level of support."""
    total = len(letter_positions(name))
    days = [len(note.letters) for note in by_day(observations)
            if note.letters is not None and note.name == name and note.support in (None, support)][-DAYS:]
    if len(days) < 2 or not total:
        return Suggestion(support, message("suggest.few"))
    good = sum(formed == total for formed in days)
    at = _LEVELS.index(support)
    if good >= 2:
        if support is _LEVELS[-1]:
            return Suggestion(support, message("suggest.lightest", good=good, days=len(days)))
        lighter = _LEVELS[at + 1]
        return Suggestion(lighter, message("suggest.lighter", good=good, days=len(days), next=lighter))
    if all(2 * formed < total for formed in days[-2:]):
        if at == 0:
            return Suggestion(support, message("suggest.fullest"))
        fuller = _LEVELS[at - 1]
        return Suggestion(fuller, message("suggest.fuller", next=fuller))
    return Suggestion(support, message("suggest.stay"))


def by_day(observations: Sequence[Observation]) -> tuple[Observation, ...]:
    """Return one note a day, in order of days: of several on one day the last that looked at letters, else the last."""
    days: dict[str, Observation] = {}
    for note in sorted(observations, key=lambda each: (each.date, each.id)):
        if note.letters is not None or note.date not in days or days[note.date].letters is None:
            days[note.date] = note
    return tuple(days.values())
