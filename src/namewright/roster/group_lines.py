"""Lines over and under names that figures tell: a stop with its time, an age, a count (``7:40 Church``, ``3 anni``).

Each is told by the other lines: few have a time, two or more are ages, hardly another counts, or as many names follow.
"""

from __future__ import annotations

import re
from collections.abc import Mapping, Sequence
from itertools import takewhile

from namewright.named_tuples import NamedTuple
from namewright.names.casing import begins_small
from namewright.patterns import pattern
from namewright.roster.known import opens_with_given
from namewright.roster.vocabulary import LATE, STATES, STREETS, fold

_TIMED = pattern(r"\s*\d{1,2}[:.h]\d\d(?:\s?(?:uhr|h|[ap]\.?m\.?))?\s+(?:[-–—]\s+)?(?P<stop>[^\W\d_].*)", re.IGNORECASE)
_AGED = pattern(
    r"\s*(?:[-–•*]\s*)?\d{1,2}(?:\s?[-–/]\s?\d{1,2})?[\s-]+(?:anni|años|anos|ans|jahre|jährige|years?|year[\s-]olds?)"
    r"\s*(?:\(\d+\)\s*)?(?::\s*)?", re.IGNORECASE)
_COUNTS = pattern(
    r"\s*(?P<what>[^:,;]{2,40}):(?:\s*(?:\d+\s?[x×]\s?[^\s,;]+|[^\s,;:]{1,8}\s?[:=]\s?\d+)\s*(?:[,;·/]|$)){2,}\s*")
_OVER = pattern(r"[^(\[\n]{2,60}[(\[]\s?(\d{1,3})\s?[)\]]\s*(?::\s*)?", needs="([")
_ALONE = pattern(r"\s*([^\W\d_]+(?: [^\W\d_]+)?)(?:\s*[(\[]?[0-9]{1,3}[)\]]?)?(?:\s*:)?\s*")
_BESIDE = pattern(r"\s[-–—]\s|[:,(&]|->|→")  # behind it may stand a child
_FEW, _TOTALS = 2, 2
_SOME = 0.4  # of the lines: where more have a time, it is beside each name


class GroupLines(NamedTuple):
    """The lines (0-based) that surely stand over or under names, by what they tell; ``doubtful`` may be a child."""

    ages: frozenset[int]
    stops: frozenset[int]
    counts: frozenset[int]
    doubtful: frozenset[int]


def group_lines(texts: Sequence[str], filled: Mapping[int, str]) -> GroupLines:
    """Return the stops, ages and counts of a list; ``filled`` are its lines with letters, none said to be a name."""
    ages = frozenset(at for at, text in filled.items() if _AGED.fullmatch(text))
    counts = frozenset(at for at, text in filled.items() if is_count(text))
    found = _stops(filled)
    stops = frozenset(at for at in found if not (at and texts[at - 1].strip()) or _is_a_street(found[at]))
    return GroupLines(ages if len(ages) >= _FEW else frozenset(), stops,
                      counts if len(counts) <= _TOTALS < len(filled) else frozenset(), frozenset(found) - stops)


def counted_titles(texts: Sequence[str]) -> frozenset[int]:
    """Return the lines that tell in brackets how many stand below, up to an empty line or the next: ``Out today (2)``.

    Two do so, or one of unknown words over three or more that opens a block; an age behind a name counts nobody.
    """
    found = {at: int(match[1]) for at, text in enumerate(texts) if (match := _OVER.fullmatch(text))}
    right = frozenset(at for at, count in found.items() if count and count == len(list(takewhile(
        lambda here: bool(texts[here].strip()) and here not in found, range(at + 1, len(texts))))))
    alone = all(found[at] > _FEW and not "".join(texts[at - 1 : at]).strip() and (
        not opens_with_given(texts[at]) or any(map(begins_small, texts[at].split()))) for at in right)
    return right if len(right) > len(found) / 2 and (len(right) >= _FEW or alone) else frozenset()


def state_titles(texts: Sequence[str]) -> frozenset[int]:
    """Return the lines that are a state alone, where two or more others are so: ``Present`` over some, ``Absent``."""
    found = {at: fold(match[1]) for at, text in enumerate(texts) if (match := _ALONE.fullmatch(text))
             and fold(match[1]) in STATES | LATE}
    return frozenset(found) if len(set(found.values())) >= _FEW else frozenset()


def is_count(text: str) -> bool:
    """Say whether a line counts things under what is no given name: ``Sizes: 3 x S, 5 x M``."""
    match = _COUNTS.fullmatch(text)
    return match is not None and not opens_with_given(match["what"])


def _stops(filled: Mapping[int, str]) -> dict[int, str]:
    """Return the places that stand behind a time over names without one."""
    timed = {at: match["stop"] for at, text in filled.items() if (match := _TIMED.fullmatch(text))}
    if len(timed) > _SOME * len(filled):
        return {}
    return {at: stop for at, stop in timed.items() if at + 1 in filled and at + 1 not in timed
            and not _BESIDE.search(stop) and (_is_a_street(stop) or not opens_with_given(stop))}


def _is_a_street(stop: str) -> bool:
    words = [fold(word) for word in stop.split()]
    return not STREETS.isdisjoint((words[-1], words[0]))
