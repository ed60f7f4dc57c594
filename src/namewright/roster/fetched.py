"""Who brings or fetches a child, in brackets: ``8:02 Mira Vost (Oma) – 15:23 (Marlene Tarn)`` is Mira Vost.

Where several lines have a word for a grown-up of a family in brackets, a whole name in brackets is a grown-up’s, too:
elsewhere a child may go by it.
"""

from __future__ import annotations

from collections.abc import Sequence

from namewright.names.clusters import is_letter
from namewright.patterns import pattern
from namewright.roster.capitals import is_titled
from namewright.roster.kin import is_a_grown_up
from namewright.roster.pasted import COLUMN_SIGNS, Line
from namewright.roster.vocabulary import fold

_BRACKETS = pattern(r"\s*[(\[]([^()\[\]]{2,60})[)\]]", needs="([")
_FEWEST, _HALF = 2, 0.5
_LONGEST = 200


def without_grown_ups(lines: Sequence[Line]) -> list[Line]:
    """Return the lines without the grown-ups in brackets, each told, where these surely are some."""
    found = {at: inside for at, line in enumerate(lines) if ")" in line.text or "]" in line.text
             if (inside := _inside(line.text))}
    kin = sum(any(map(is_a_grown_up, inside)) for inside in found.values())
    if kin < _FEWEST:
        return list(lines)
    filled = sum(any(map(is_letter, line.text)) for line in lines)
    whole = sum(any(is_a_grown_up(one) or _is_whole(one) for one in inside) for inside in found.values())
    if whole < max(_FEWEST, _HALF * filled):
        return list(lines)
    return [_without(line, found[at]) if at in found else line for at, line in enumerate(lines)]


def _inside(text: str) -> list[str]:
    """Return what stands in the brackets of a line that has no columns and opens with none."""
    if len(text) > _LONGEST or any(sign in text for sign in COLUMN_SIGNS) or text.lstrip().startswith(("(", "[")):
        return []
    return _BRACKETS.findall(text)


def _is_whole(inside: str) -> bool:
    """Say whether a whole name stands in brackets: two words or more, written as names are."""
    words = inside.split()
    whole = len(words) > 1 and is_titled(inside)
    return whole and all(is_letter(word[0]) and not is_a_grown_up(word) for word in words)


def _without(line: Line, inside: Sequence[str]) -> Line:
    """Take off the brackets of grown-ups; one with a word of the name itself tells how a child is called."""
    outside = set(fold(_BRACKETS.sub(" ", line.text)).replace(",", " ").split())
    adults = [one for one in inside if is_a_grown_up(one) or (_is_whole(one) and outside.isdisjoint(fold(one).split()))]
    if not adults:
        return line
    text = _BRACKETS.sub(lambda match: "" if match[1] in adults else match[0], line.text)
    return line.without(", ".join(adults), text)
