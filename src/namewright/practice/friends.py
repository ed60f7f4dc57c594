"""Which friends' names a child writes after its own: those that repeat its letters, of its own table first. Pure."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from types import MappingProxyType

from namewright.practice.difficulty import written_signs
from namewright.practice.weeks import letters_of
from namewright.settings import Support

FRIENDS: Mapping[Support, int] = MappingProxyType({
    Support.FULL: 3, Support.PARTIAL: 4, Support.LIGHT: 5, Support.INDEPENDENT: 5})
"""How many friends' names a page has, by level of support; a rule of ours."""


@dataclass(frozen=True, slots=True)
class Mate:
    """A classmate's name, and whether that child sits at the same table."""

    name: str
    at_table: bool = False


def friends(name: str, mates: Sequence[Mate], count: int) -> tuple[str, ...]:
    """Return up to ``count`` names other than the own: of the table first, and those with most of the own letters.

    What counts is the share of a friend's letters that the child's own name has, marks and case aside, so a long name
    does not win by its length; equal ones stand by length, then in the order given.
    """
    own = letters_of(name)
    others = list({one.name: one for one in mates if one.name.casefold() != name.casefold()}.values())
    ranked = sorted(others, key=lambda one: (not one.at_table, -_share(own, one.name), len(one.name)))
    return tuple(one.name for one in ranked[:count])


def _share(own: frozenset[str], other: str) -> float:
    letters = written_signs(other)
    return sum(letters_of(letter) <= own for letter in letters) / max(1, len(letters))
