"""Which friends' names a child writes after its own: those that repeat its letters, of its own table first. Pure."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass
from types import MappingProxyType

from namewright.practice.difficulty import written_signs
from namewright.practice.weeks import letters_of
from namewright.settings import Support

FRIENDS: Mapping[Support, int] = MappingProxyType({
    Support.FULL: 3, Support.PARTIAL: 4, Support.LIGHT: 5, Support.INDEPENDENT: 5})
"""How many friends' names a page has, by level of support; a rule of ours."""

HELPED = frozenset({Support.FULL, Support.PARTIAL})
"""The levels at which letters that the child's own name has, too, are black and the others grey."""


@dataclass(frozen=True, slots=True)
class Mate:
    """A classmate's name, and whether that child sits at the same table."""

    name: str
    at_table: bool = False


def friends(name: str, mates: Sequence[Mate], count: int) -> tuple[str, ...]:
    """Return up to ``count`` names other than the own: of the table first, and those with most of the own letters.

    What counts is the share of a friend's letters that are written just so in the child's own name, then the share of
    those that are the same but for case or marks, so a long name does not win by its length; equal ones stand by
    length, then in the order given.
    """
    own = letters_of(name)
    others = list({one.name: one for one in mates if one.name.casefold() != name.casefold()}.values())

    def rank(one: Mate) -> tuple[bool, float, float, int]:
        just_so = _share(one.name, lambda letter: is_shared(letter, name))
        return (not one.at_table, -just_so, -_share(one.name, lambda letter: letters_of(letter) <= own), len(one.name))

    return tuple(one.name for one in sorted(others, key=rank)[:count])


def is_shared(letter: str, own: str) -> bool:
    """Say whether a letter is written just so in a child's own name: M is not m there, and Á is not A.

    Another form is another way of the pencil, so it is told as another letter.
    """
    return letter in written_signs(own)


def _share(other: str, counts: Callable[[str], bool]) -> float:
    letters = written_signs(other)
    return sum(map(counts, letters)) / max(1, len(letters))
