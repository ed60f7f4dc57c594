"""A suggestion for the next level of support, with its reason. The adult decides; nothing here changes anything.

The rule is ours and not a finding: practice that fades is common practice, but no study seen says when to fade.
It looks at the last days on which letters were looked at, three at most, none more than three weeks before the last:

- every letter of the name formed on two of the last three days: one level lighter;
- more than half of the letters not yet on each of the last two days, and no more on the second: one level fuller;
- the same, but more letters on the second day: the child is on the way, so stay;
- anything else, and fewer than two such days: stay, and say what one more day would show, or what stood on one day
  alone.

A day noted at another level of support than today's says nothing about today's, but for one on which every letter was
formed with less support: that is as good as with more. A day noted for another name is left out. What the notes of one
day add up to: ``looks``. Pure: the level and the notes come in, a message goes out.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import timedelta

from namewright.classbook.looks import Look, looks
from namewright.classbook.records import Observation, letter_positions
from namewright.message import Message, message
from namewright.names.clusters import clusters
from namewright.pages.growth import day_said
from namewright.settings import Support

DAYS = 3
SPAN = timedelta(days=21)  # days farther apart are not “the last days”
_LEVELS = tuple(Support)  # from most support to least


@dataclass(frozen=True, slots=True)
class Suggestion:
    """``support`` is the level to try next (the same: stay), ``reason`` tells why; ``seen`` is what was seen alone."""

    support: Support
    reason: Message
    seen: Message | None = None


def suggest(support: Support, observations: Sequence[Observation], name: str) -> Suggestion:
    """Return a suggestion for a child who practises ``name`` at this level of support."""
    days = _last_days(support, observations, name)
    if len(days) < 2 or not letter_positions(name):
        return Suggestion(support, message("suggest.few"))
    good = sum(day.whole for day in days)
    if good >= 2:
        return _lighter(support, good, len(days))
    return _fuller(support, days[-2:])


def _last_days(support: Support, observations: Sequence[Observation], name: str) -> list[Look]:
    """Return the last days that say something about this level, none long before the last of them."""
    days = [look for look in looks(observations) if look.name == name and _counts(look, support)]
    return [look for look in days if days[-1].day - look.day <= SPAN][-DAYS:]


def _counts(look: Look, support: Support) -> bool:
    if look.support in (None, support):
        return True
    return look.whole and _LEVELS.index(look.support) > _LEVELS.index(support)


def _lighter(support: Support, good: int, days: int) -> Suggestion:
    seen = message(f"suggest.{'each' if good == days else 'some'}_whole", good=good, days=days)
    if support is _LEVELS[-1]:
        return Suggestion(support, message("suggest.lightest", seen=(seen,)), seen)
    lighter = _LEVELS[_LEVELS.index(support) + 1]
    return Suggestion(lighter, message("suggest.lighter", seen=(seen,), next=lighter), seen)


def _fuller(support: Support, days: Sequence[Look]) -> Suggestion:
    """Return a fuller level where few letters stand and no more than before."""
    before, last = days
    if not all(2 * len(day.not_yet) > len(letter_positions(day.name)) for day in days):
        return Suggestion(support, _staying(before, last))
    if len(last.formed) > len(before.formed):
        return Suggestion(support, message("suggest.rising"))
    if support is _LEVELS[0]:
        return Suggestion(support, message("suggest.fullest"))
    fuller, seen = _LEVELS[_LEVELS.index(support) - 1], message("suggest.half_lacking")
    return Suggestion(fuller, message("suggest.fuller", seen=(seen,), next=fuller), seen)


def _staying(before: Look, last: Look) -> Message:
    """Return why a child stays: one more whole day is wanted, or letters stood on one of the two days alone."""
    if last.whole:
        return message("suggest.one_more")
    seen = tuple(message("suggest.on_one_day", letters=letters, day=day_said(on.day), other=day_said(off.day))
                 for on, off in ((before, last), (last, before)) if (letters := _only_on(on, off)))
    return message("suggest.to_and_fro", seen=seen) if seen else message("suggest.stay")


def _only_on(on: Look, off: Look) -> tuple[str, ...]:
    """Return the letters formed on one day and not yet on the other, in no place of the name."""
    signs = clusters(on.name)
    elsewhere = {signs[at] for at in off.formed}
    return tuple(dict.fromkeys(signs[at] for at in sorted(on.formed & off.not_yet) if signs[at] not in elsewhere))
