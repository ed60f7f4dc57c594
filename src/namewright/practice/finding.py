"""The own name among other names: which others a page shows, how alike they grow, and in what order all stand.

Four rungs: names with another initial that are longer or shorter, or about as long; with the same initial; with the
same initial and outline. Down a page neither the rung nor the likeness ever falls. Classmates' names come first;
where the class has too few, common given names of open lists fill in (``given_names``); where those have none, there
are fewer. A shuffle follows from the name, the line of the list and a number, so a reprint is the same page and the
neighbour's is another. Pure.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable, Iterable, Mapping, Sequence
from dataclasses import dataclass, field
from enum import StrEnum
from itertools import islice, pairwise
from random import Random
from types import MappingProxyType

import unicodedata2

from namewright.names.clusters import clusters
from namewright.practice.given_names import bare, given_names
from namewright.practice.name_likeness import Zone, bare_initial, likeness, outline
from namewright.settings import Support
from namewright.store import keeps_names

_MAX_LETTERS = 9  # letters of another name, unless the own is longer: one long name would make all of the page small
_ENOUGH = 60  # names of the lists that are compared for a rung


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
    """A name that is not the child's own; ``listed`` where nobody in the class has it."""

    name: str
    rung: Rung
    listed: bool


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
            usual: str = "en", other_face: bool = False, taken: Iterable[str] = (),
            usable: Callable[[str], bool] = bool) -> Finding:
    """Return the page of a name (NFC, with a letter in it) among those of the class, at a level of support.

    ``classmates`` may hold the name itself, which is passed over. ``seed`` decides the shuffle, and which names are
    added; ``language`` is that of the names, None where nobody said, ``usual`` that of the page. Added names are none
    of ``taken``, marks and case aside, nor any that is not ``usable``. Without ``other_face`` the last names stand
    in the print of the class, too.
    """
    chance = Random(seed)
    most = max(len(clusters(name)), _MAX_LETTERS)
    everyone = list(classmates)
    different = {_key(one): one for one in reversed(everyone)}
    mates = [one for key, one in reversed(different.items()) if key != _key(name) and 1 < len(clusters(one)) <= most]
    barred = frozenset(bare(word) for one in (name, *everyone, *taken) for word in (one, *one.split()))
    lists = [_free(names, barred, most) for names in given_names(language, usual, (name, *everyone))]
    wanted = Counter(rung for block in BLOCKS[support] for rung, count in block.others for _ in range(count))
    others = iter(_climbing(_Supply(name, tuple(mates), lists, usable, chance), wanted))
    parts = [Part(_mixed(name, block.own, list(islice(others, block.size)), chance), block.other_face and other_face)
             for block in BLOCKS[support]]
    return Finding(name, tuple(parts))


def _rung(own: Sequence[Zone], initial: str, other: str) -> Rung:
    """Return how alike a name is to one of an outline, which is as long as the name, and an initial."""
    theirs = outline(other)
    if bare_initial(other) == initial:
        return Rung.OUTLINE if theirs == own else Rung.INITIAL
    return Rung.LENGTH if abs(len(own) - len(theirs)) <= 1 else Rung.OTHER


@keeps_names(20)  # what one child of a class may have, most of the others may have, too
def _free(names: tuple[str, ...], barred: frozenset[str], most: int) -> tuple[str, ...]:
    """Return the names of at most so many letters that are not barred."""
    return tuple(one for one in names if bare(one) not in barred and len(clusters(one)) <= most)


@keeps_names(8)  # a page asks for one rung after another
def _by_rung(name: str, names: tuple[str, ...]) -> Mapping[Rung, tuple[str, ...]]:
    """Return names by their rung, in their order."""
    found: dict[Rung, list[str]] = {rung: [] for rung in Rung}
    own, initial = outline(name), bare_initial(name)
    for one in names:
        found[_rung(own, initial, one)].append(one)
    return {rung: tuple(these) for rung, these in found.items()}


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
    """Return so many names, from easy to hard, none less alike than the one before; fewer where there are no more.

    The hardest are taken first, for there are fewest of them; what a rung lacks is made up by the next easier one.
    """
    found: list[Other] = []
    lacking, most = 0, 1.0
    for rung in reversed(Rung):
        count = wanted[rung] + lacking
        theirs = supply.names(rung, count, most, supply.spare(rung, most) - wanted[Rung.OTHER])
        found = [*sorted(theirs, key=supply.alike), *found]
        lacking, most = count - len(theirs), min(map(supply.alike, found), default=most)
    return found


@dataclass(frozen=True, slots=True)
class _Supply:
    """Where other names of a name come from: ``mates``, then ``lists``, of which the first comes first."""

    name: str
    mates: tuple[str, ...]
    lists: Sequence[tuple[str, ...]]
    usable: Callable[[str], bool]
    chance: Random
    known: dict[str, float] = field(default_factory=dict, hash=False)

    def alike(self, other: Other) -> float:
        """Return how alike a name is to the own, compared once."""
        if other.name not in self.known:
            self.known[other.name] = likeness(self.name, other.name)
        return self.known[other.name]

    def spare(self, rung: Rung, most: float) -> int:
        """Return how many classmates could stand in for names of about the own length: the longer and shorter ones."""
        return len(self._mates(Rung.OTHER, most)) if rung is Rung.LENGTH else 0

    def names(self, rung: Rung, count: int, most: float, spare: int) -> list[Other]:
        """Return up to so many names of a rung that are no more alike than ``most``; classmates first.

        Of names with another initial the less alike are taken, of the same initial the most alike. As many
        names as there are ``spare`` classmates of another length to stand in for are not added.
        """
        fit = self._best(rung, self._mates(rung, most), count)
        for names in self.lists[:1] if rung is Rung.OUTLINE else self.lists:
            lacking = count - len(fit) - max(0, spare)
            if lacking <= 0:
                break
            fit += self._best(rung, self._listed(rung, names, most), lacking)
        return fit

    def _best(self, rung: Rung, names: Sequence[Other], count: int) -> list[Other]:
        """Return up to so many names that are fit best, by chance among about twice as many."""
        if rung in (Rung.INITIAL, Rung.OUTLINE):
            ranked = sorted(names, key=lambda one: (self._is_far(one), -self.alike(one)))
            near = sum(not self._is_far(one) for one in ranked)
            best = ranked[:max(count, min(near, 2 * count) if any(one.listed for one in ranked) else count)]
        else:
            ranked = sorted(names, key=self.alike)
            best = ranked[:max(count, len(ranked) // 2)]
        return self.chance.sample(best, min(count, len(best)))

    def _is_far(self, other: Other) -> bool:
        """Say whether a name is added to the class's though it is longer or shorter by more than a letter."""
        return other.listed and abs(len(outline(other.name)) - len(outline(self.name))) > 1

    def _mates(self, rung: Rung, most: float) -> list[Other]:
        return self._within((Other(one, rung, False) for one in _by_rung(self.name, self.mates)[rung]), most)

    def _listed(self, rung: Rung, names: tuple[str, ...], most: float) -> list[Other]:
        these = _by_rung(self.name, names)[rung]
        some = self.chance.sample(these, min(_ENOUGH, len(these)))
        return self._within((Other(one, rung, True) for one in some if self.usable(one)), most)

    def _within(self, others: Iterable[Other], most: float) -> list[Other]:
        return [one for one in others if self.alike(one) <= most]
