"""What each child likes or does, told behind its name and a colon: ``Mira Vost: Chess, Art, Choir``; no child is there.

Groups with the names of children are written in the same way, so it is told by the names: most of what stands before
the colon are children by their given names, and hardly anything behind it is one. It is a remark where what stands
before are whole names or what stands behind comes again with other children; else the lines are no groups and are
asked about, for groups may be called as children are, with names on no list: ``Rose: Xobrel, Quorra``.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence
from itertools import chain

from namewright.roster.capitals import is_titled
from namewright.roster.heading_words import COLOURS, HEADING_WORDS, OVER_NAMES, PLACES
from namewright.roster.known import is_family, is_given
from namewright.roster.shares import given_share, share
from namewright.roster.vocabulary import ANY_DAYS, GROUPS, fold

_OF_GROUPS = HEADING_WORDS | PLACES | OVER_NAMES | GROUPS | ANY_DAYS
_MOSTLY, _HALF, _FEW = 0.6, 0.5, 0.34
_LONGEST_NAME = 4  # words
_SEVERAL = 3  # children


def are_told_of(labels: Sequence[str], told: Sequence[Sequence[str]]) -> bool:
    """Say whether labels are children rather than groups, by the names before and behind the signs of the lines."""
    words = [word for word in chain.from_iterable(told) if word]
    return bool(words) and share(map(may_like, labels)) >= _MOSTLY and given_share(words) < _FEW


def are_surely_told_of(labels: Sequence[str], told: Sequence[Sequence[str]]) -> bool:
    """Say whether what stands behind children is surely none: behind whole names, or the same behind several."""
    if not are_told_of(labels, told):
        return False
    whole = share(" " in label and is_family(label.split()[-1]) for label in labels) >= _HALF
    counts = Counter(chain.from_iterable({fold(word) for word in words} for words in told))
    return whole or (max(counts.values()) > 1 and len(set(map(fold, labels))) >= _SEVERAL)


def may_like(label: str) -> bool:
    """Say whether a label is a child by its given name, and no group: no colour, and no word for groups behind it."""
    words = label.split()
    named = bool(words) and is_given(words[0]) and len(words) <= _LONGEST_NAME and is_titled(label)
    grouped = fold(label) in COLOURS or any(fold(word) in _OF_GROUPS and not is_given(word) for word in words[1:])
    return named and not grouped
