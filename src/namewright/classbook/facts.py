"""What a line of a new list and a child of the class have in common besides a name: a birthday, a number, an address.

Only a list that is kept whole tells it; nothing else of a class holds such facts. Pure.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence

from namewright.patterns import pattern
from namewright.roster.children import Roster

_WORD = pattern(r"[^\s,;|\"]+")
_FIGURES = 4  # of a birthday or a number that tells children apart; a room or a table has fewer


def facts_in_common(before: Sequence[str], on_lines: Mapping[int, int], now: Roster) -> set[tuple[int, int]]:
    """Return lines of a new list and ids of children: each pair has a fact that nobody else has on either list.

    ``on_lines`` gives the id of who stands on which line of the list ``before``.
    """
    old = _whose((id_, before[line - 1]) for line, id_ in on_lines.items() if line <= len(before))
    new = _whose((line.line, line.text) for line in now.lines if line.opens_child)
    return {(new[fact], old[fact]) for fact in new.keys() & old.keys()}


def _whose(told: Iterable[tuple[int, str]]) -> dict[str, int]:
    """Return the facts that one alone has, with whose they are."""
    found: dict[str, set[int]] = {}
    for key, text in told:
        for word in _WORD.findall(text):
            if "@" in word or sum(map(str.isdigit, word)) >= _FIGURES:
                found.setdefault(word.casefold(), set()).add(key)
    return {fact: keys.pop() for fact, keys in found.items() if len(keys) == 1}
