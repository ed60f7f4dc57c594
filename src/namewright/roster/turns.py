"""Who helps a child whose turn it is: ``9/9: Mira Vost (Ana) – grapes`` is Mira Vost, and Ana her mother.

In a list by dates with something to bring behind most names, a name in brackets beside most of them is somebody’s who
helps. Where such names are cut from those they stand beside, children go by them.
"""

from __future__ import annotations

from collections.abc import Sequence

from namewright.names.clusters import is_letter
from namewright.patterns import pattern
from namewright.roster.capitals import is_titled
from namewright.roster.shares import share
from namewright.roster.vocabulary import fold

_BESIDE = pattern(r"([^()\[\]]*[^\W\d_][^()\[\]]*?)\s*[(\[]([^()\[\]\d]{2,40})[)\]]\s*(?:[-–—:=,/→]|->)\s*[^\W\d_].*",
                  needs="([")
_FEWEST, _MOSTLY, _HARDLY, _MOST_WORDS, _ALIKE = 3, 0.6, 0.3, 3, 2


def helpers(rests: Sequence[str]) -> dict[str, str]:
    """Return the names of those who help, by what stands behind each date; none where that is not sure."""
    found = {rest: match[2].strip() for rest in rests if (match := _BESIDE.fullmatch(rest)) and _is_a_name(match[2])}
    if len(found) < max(_FEWEST, _MOSTLY * len(rests)) or len(set(found.values())) < _MOSTLY * len(found):
        return {}
    return {} if share(_is_alike(rest, name) for rest, name in found.items()) > _HARDLY else found


def without_helper(rest: str, name: str) -> str:
    """Return what stands behind a date without the brackets about a name."""
    before, sign, behind = rest.partition(name)
    return f"{before.rstrip()[:-1].rstrip()} {behind.lstrip()[1:].lstrip()}" if sign else rest


def _is_a_name(words: str) -> bool:
    each = words.split()
    return 0 < len(each) <= _MOST_WORDS and is_titled(words) and all(is_letter(word[0]) for word in each)


def _is_alike(rest: str, name: str) -> bool:
    """Say whether a name in brackets begins as one before it does, or ends it: Katie, Bella of Isabella."""
    words = fold(rest.partition("(")[0].partition("[")[0]).replace(",", " ").split()
    short = fold(name)
    return any(word.startswith(short[:_ALIKE]) or word.endswith(short) for word in words)
