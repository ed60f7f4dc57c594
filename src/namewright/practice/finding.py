"""The own name among other names: which others a page shows, how alike they grow, and in what order all stand.

Four rungs: names with another initial that are longer or shorter, or about as long; with the same initial; with the
same initial and outline. Down a page neither the rung nor the likeness ever falls. Classmates' names come first;
where the class has none that is alike enough, invented names fill in (``invented_names``). A shuffle follows from the
name, the line of the list and a number, so a reprint is the same page and the neighbour's is another. Pure.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from enum import StrEnum
from itertools import islice, pairwise
from random import Random
from types import MappingProxyType

import unicodedata2

from namewright.names.clusters import clusters
from namewright.practice.invented_names import look_alikes, with_initial, with_other_initials
from namewright.practice.name_likeness import initial, likeness, outline, same_initial
from namewright.settings import Support

_MAX_LETTERS = 9  # letters of another name, unless the own is longer: one long name would make all of the page small
_ENOUGH = 24  # invented names among which those of about the own length come first


class Rung(StrEnum):
    """How alike another name is to the own."""

    OTHER = "other"
    LENGTH = "length"
    INITIAL = "initial"
    OUTLINE = "outline"


@dataclass(frozen=True, slots=True)
class Block:
    """A part of a page: how often the own name stands in it, and how many others of each rung."""

    own: int
    others: tuple[tuple[Rung, int], ...]
    other_face: bool = False

    @property
    def size(self) -> int:
        """Return how many other names stand in it."""
        return sum(count for _, count in self.others)


_O, _L, _I, _S = Rung
BLOCKS: Mapping[Support, tuple[Block, ...]] = MappingProxyType({
    Support.FULL: (Block(2, ((_O, 2),)), Block(2, ((_L, 2),))),
    Support.PARTIAL: (Block(2, ((_O, 1), (_L, 1))), Block(2, ((_L, 1), (_I, 2)))),
    Support.LIGHT: (Block(1, ((_L, 2),)), Block(2, ((_I, 2),)), Block(2, ((_S, 3),))),
    Support.INDEPENDENT: (Block(1, ((_I, 2),)), Block(2, ((_S, 3),)), Block(2, ((_S, 2),), other_face=True)),
})
"""What stands on a page, from its head to its foot, by level of support; a rule of ours."""


@dataclass(frozen=True, slots=True)
class Other:
    """A name that is not the child's own; ``invented`` where nobody in the class has it."""

    name: str
    rung: Rung
    invented: bool


@dataclass(frozen=True, slots=True)
class Shown:
    """One name on the page; no ``other`` where it is the child's own."""

    name: str
    other: Other | None = None

    @property
    def is_own(self) -> bool:
        """Return whether it is the name to find."""
        return self.other is None


@dataclass(frozen=True, slots=True)
class Part:
    """The names of one block in the order in which they stand, and whether they stand in another typeface."""

    shown: tuple[Shown, ...]
    other_face: bool = False


@dataclass(frozen=True, slots=True)
class Finding:
    """A child's page: its parts from easy to hard."""

    name: str
    parts: tuple[Part, ...]

    @property
    def shown(self) -> tuple[Shown, ...]:
        """Return every name of the page in order."""
        return tuple(one for part in self.parts for one in part.shown)

    @property
    def hits(self) -> int:
        """Return how often the own name stands among the others."""
        return sum(one.is_own for one in self.shown)

    @property
    def others(self) -> tuple[Other, ...]:
        """Return the other names in order."""
        return tuple(one.other for one in self.shown if one.other is not None)


def finding(name: str, classmates: Iterable[str], support: Support, seed: str, *, language: str | None = None,
            other_face: bool = False) -> Finding:
    """Return the page of a name (NFC, with a letter in it) among those of the class, at a level of support.

    ``classmates`` may hold the name itself, which is passed over. ``seed`` decides the shuffle, and which names are
    invented; ``language`` is that of the names, None where nobody said. Without ``other_face`` the last names stand in
    the print of the class, too.
    """
    chance = Random(seed)
    most = max(len(clusters(name)), _MAX_LETTERS)
    different = {_key(one): one for one in reversed(list(classmates))}
    mates = [one for key, one in reversed(different.items()) if key != _key(name) and 1 < len(clusters(one)) <= most]
    wanted = Counter(rung for block in BLOCKS[support] for rung, count in block.others for _ in range(count))
    others = iter(_climbing(_Supply(name, mates, language, most, chance), wanted))
    parts = [Part(_mixed(name, block.own, list(islice(others, block.size)), chance), block.other_face and other_face)
             for block in BLOCKS[support]]
    return Finding(name, tuple(parts))


def rung_of(name: str, other: str) -> Rung:
    """Return how alike another name is to a name."""
    if same_initial(name, other):
        return Rung.OUTLINE if outline(name) == outline(other) else Rung.INITIAL
    return Rung.LENGTH if abs(len(clusters(name)) - len(clusters(other))) <= 1 else Rung.OTHER


def _key(name: str) -> str:
    return str(unicodedata2.normalize("NFC", name)).casefold()


def _mixed(name: str, own: int, others: Sequence[Other], chance: Random) -> tuple[Shown, ...]:
    """Return the others in their order with the own name between them, beside itself less often than by chance.

    No place is barred to it: a child would find out that it never comes first.
    """
    count = own + len(others)
    tries = [sorted(chance.sample(range(count), own)) for _ in range(2)]
    places = min(tries, key=lambda these: sum(after == before + 1 for before, after in pairwise(these)))
    rest = (Shown(one.name, one) for one in others)
    return tuple(Shown(name) if at in places else next(rest) for at in range(count))


# --- which others, and where they come from -----------------------------------------------------------


def _climbing(supply: _Supply, wanted: Counter[Rung]) -> list[Other]:
    """Return so many names of each rung, from easy to hard, none less alike than the one before.

    The hardest are taken first, for there are fewest of them; what they lack is made up by names of the same initial.
    """
    hardest = supply.hardest(wanted[Rung.OUTLINE])
    wanted = wanted + Counter({Rung.INITIAL: wanted[Rung.OUTLINE] - len(hardest)})
    most = min(map(supply.alike, hardest), default=1.0)
    found: list[Other] = []
    for rung in (Rung.OTHER, Rung.LENGTH, Rung.INITIAL):
        least = max(map(supply.alike, found), default=0.0)
        found += supply.between(rung, wanted[rung], least, most)
    return [*found, *hardest]


@dataclass(frozen=True, slots=True)
class _Supply:
    """Where other names of a name come from: ``mates``, then invented ones of no more letters than ``most``."""

    name: str
    mates: Sequence[str]
    language: str | None
    most: int
    chance: Random

    def alike(self, other: Other) -> float:
        """Return how alike a name is to the own."""
        return likeness(self.name, other.name)

    def hardest(self, count: int) -> list[Other]:
        """Return up to so many names of the same initial and outline, from the least to the most alike of the best."""
        mates = sorted(self._mates(Rung.OUTLINE), key=self.alike, reverse=True)
        return sorted([*mates, *islice(self._invented(Rung.OUTLINE), count)][:count], key=self.alike)

    def between(self, rung: Rung, count: int, least: float, most: float) -> list[Other]:
        """Return up to so many names of a rung that are neither less nor more alike, from the least alike on.

        Of names with another initial the less alike are taken, of the same initial the most alike.
        """
        fit = [one for one in self._mates(rung) if least <= self.alike(one) <= most]
        fit.sort(key=self.alike, reverse=rung is Rung.INITIAL)
        if rung is not Rung.INITIAL:
            half = fit[:max(count, len(fit) // 2)]
            fit = self.chance.sample(half, len(half))
        more = (one for one in self._invented(rung) if least <= self.alike(one) <= most)
        return sorted([*fit[:count], *islice(more, max(0, count - len(fit)))], key=self.alike)

    def _mates(self, rung: Rung) -> list[Other]:
        return [Other(one, rung, False) for one in self.mates if rung_of(self.name, one) is rung]

    def _invented(self, rung: Rung) -> Iterator[Other]:
        """Yield invented names of a rung that nobody in the class has; those of the own length or nearly so first."""
        theirs = {_key(one) for one in (*self.mates, self.name)}
        fit = (one for one in self._made(rung) if _key(one) not in theirs and len(clusters(one)) <= self.most
               and (rung is Rung.OUTLINE or rung_of(self.name, one) is rung))
        if rung is Rung.INITIAL:
            length = len(clusters(self.name))
            first = sorted(islice(fit, _ENOUGH), key=lambda one: max(2, abs(len(clusters(one)) - length)))
            yield from (Other(one, rung, True) for one in first)
        yield from (Other(one, rung, True) for one in fit)

    def _made(self, rung: Rung) -> Iterator[str]:
        if rung is Rung.OUTLINE:
            return look_alikes(self.name)
        if rung is Rung.INITIAL:
            return with_initial(initial(self.name), self.mates, self.language, self.chance)
        length = len(clusters(self.name))
        other = length if rung is Rung.LENGTH else length + 4 if length + 4 <= self.most else length - 3
        return with_other_initials(initial(self.name), other, self.mates, self.language, self.chance)
