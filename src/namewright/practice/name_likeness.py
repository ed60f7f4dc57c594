"""How alike two names look: from their initials, length, letters in place, outline and the published letter ratings.

0 is not alike at all, 1 the same name. The weights are one set in ``evidence.toml`` and a rule of ours; ratings are
those of Simpson et al. (2013). Held against pictures of names in a typeface of other people's:
``tests/outside/test_practice_names_alike.py``. Out of scope: which names a page shows (``finding``).
"""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from enum import StrEnum
from functools import cache
from operator import eq

from namewright.names.clusters import clusters
from namewright.practice.difficulty import base_letter
from namewright.practice.evidence import load_evidence
from namewright.practice.features import letter_strokes
from namewright.practice.sequence import similarity
from namewright.store import keeps_names

_TOP_RATING = 7.0  # of the scale on which pairs were rated (Simpson et al. 2013)
_TALL_FROM, _TAIL_FROM = 120.0, -30.0  # letter units: midline 100, baseline 0; t is tall, p has a tail


class Zone(StrEnum):
    """What a letter's outline takes up on its lines."""

    SMALL = "small"
    TALL = "tall"
    TAIL = "tail"
    WHOLE = "whole"
    NONE = "none"


@cache
def zone_of(letter: str) -> Zone:
    """Return the zone of a letter without its marks and dots; NONE for a space or what we cannot draw."""
    strokes = [one for one in letter_strokes(base_letter(letter)) or () if not one.is_dot]
    if not strokes:
        return Zone.NONE
    tops = max(stroke.bounds()[3] for stroke in strokes) >= _TALL_FROM
    tails = min(stroke.bounds()[1] for stroke in strokes) <= _TAIL_FROM
    return {(False, False): Zone.SMALL, (True, False): Zone.TALL, (False, True): Zone.TAIL}.get(
        (tops, tails), Zone.WHOLE)


@keeps_names(5_000)  # those of the lists, too
def outline(name: str) -> tuple[Zone, ...]:
    """Return the outline of a name, letter by letter."""
    return tuple(map(zone_of, clusters(name)))


def initial(name: str) -> str:
    """Return the sign that a name begins with; empty for no name."""
    return next(iter(clusters(name)), "")


@keeps_names(5_000)
def bare_initial(name: str) -> str:
    """Return the letter that a name begins with, marks and case aside; empty for no name."""
    sign = initial(name)
    return base_letter(sign).casefold() if sign else ""


@cache
def letters_alike(one: str, other: str) -> float:
    """Return how alike two letters look: 1 for the same, the rating as a share of its scale, 0 where none is published.

    A mark is a small part of a letter: the same letter with another mark is nine tenths alike, by a rule of ours.
    """
    if one == other:
        return 1.0
    first, second = base_letter(one), base_letter(other)
    if first == second:
        return 0.9
    return (similarity(first, second) or 0.0) / _TOP_RATING


def likeness(one: str, other: str, weights: Mapping[str, float] | None = None) -> float:
    """Return how alike two names look, from 0 to 1; the same in either order. ``weights`` are those of the evidence."""
    weights = load_evidence().name_likeness if weights is None else weights
    return sum(weights[key] * part for key, part in parts_alike(one, other).items()) / sum(weights.values())


def parts_alike(one: str, other: str) -> Mapping[str, float]:
    """Return each part of the likeness, from 0 to 1, by the name of its weight."""
    first, second = clusters(one), clusters(other)
    longer = max(len(first), len(second), 1)
    return {
        "initial": letters_alike(first[0], second[0]) if first and second else 0.0,
        "length": 1.0 - abs(len(first) - len(second)) / longer,
        "in_place": _in_place(first, second, eq),
        "outline": _in_place(outline(one), outline(other), eq),
        "ratings": _in_place(first, second, letters_alike),
    }


def _in_place(first: Sequence[str], second: Sequence[str], alike: Callable[[str, str], float]) -> float:
    """Return the mean likeness of what stands in the same place; a place that only one name has counts as unlike."""
    return sum(map(alike, first, second)) / max(len(first), len(second), 1)
