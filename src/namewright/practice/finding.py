"""The own name among other names: which others a page shows, how alike they grow, and in what order all stand.

Three rungs: names with another initial, with the same initial, with the same initial and outline. Classmates' names
come first; where the class has none for a rung, invented names fill in: one of ours with the child's initial, or the
child's name with letters exchanged for others of the same height. A shuffle follows from the name, the line of
the list and a number, so a reprint is the same page and the neighbour's is another. Pure.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from enum import StrEnum
from itertools import pairwise, zip_longest
from random import Random
from types import MappingProxyType

import unicodedata2

from namewright.names.clusters import clusters
from namewright.practice.difficulty import base_letter
from namewright.practice.name_likeness import Zone, initial, letters_alike, likeness, outline, same_initial, zone_of
from namewright.practice.unkind import is_unkind
from namewright.settings import Support

_VOWELS = "aeiou"
_MAX_LETTERS = 9  # letters of another name, unless the own is longer: one long name would make all of the page small
_INVENTED = (
    "Tavi", "Orrin", "Lumel", "Besko", "Nalu", "Wenna", "Pirro", "Kestafin", "Fimmo", "Dorlin", "Ulma", "Sivo", "Ilvo",
    "Rondalin", "Ellaby", "Aruno", "Go", "Ima", "Mirrobel", "Usko")
"""Names of nobody, for a class that has too few."""


class Rung(StrEnum):
    """How alike another name is to the own."""

    OTHER = "other"
    INITIAL = "initial"
    OUTLINE = "outline"


@dataclass(frozen=True, slots=True)
class Block:
    """A part of a page: how often the own name stands in it, and how many others of each rung."""

    own: int
    others: tuple[tuple[Rung, int], ...]
    other_face: bool = False


_O, _I, _S = Rung.OTHER, Rung.INITIAL, Rung.OUTLINE
BLOCKS: Mapping[Support, tuple[Block, ...]] = MappingProxyType({
    Support.FULL: (Block(2, ((_O, 2),)), Block(2, ((_O, 2),))),
    Support.PARTIAL: (Block(2, ((_O, 2),)), Block(2, ((_O, 1), (_I, 2)))),
    Support.LIGHT: (Block(1, ((_O, 2),)), Block(2, ((_I, 2),)), Block(2, ((_S, 3),))),
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


def finding(name: str, classmates: Iterable[str], support: Support, seed: str, *, other_face: bool = False) -> Finding:
    """Return the page of a name (NFC, with a letter in it) among those of the class, at a level of support.

    ``classmates`` may hold the name itself, which is passed over. ``seed`` decides the shuffle. Without
    ``other_face`` the last names stand in the print of the class, too.
    """
    chance = Random(seed)
    most = max(len(clusters(name)), _MAX_LETTERS)
    mates = [one for one in dict.fromkeys(classmates) if not _same(one, name) and 1 < len(clusters(one)) <= most]
    supply = {rung: _supply(name, mates, rung) for rung in Rung}
    parts, used = [], {_key(name)}
    for block in BLOCKS[support]:
        others = [_next(supply, rung, used) for rung, count in block.others for _ in range(count)]
        shown = _mixed([Shown(name)] * block.own, [Shown(one.name, one) for one in others if one], chance)
        parts.append(Part(shown, block.other_face and other_face))
    return Finding(name, tuple(parts))


def _key(name: str) -> str:
    return str(unicodedata2.normalize("NFC", name)).casefold()


def _same(one: str, other: str) -> bool:
    return _key(one) == _key(other)


def _next(supply: Mapping[Rung, Iterator[Other]], rung: Rung, used: set[str]) -> Other | None:
    """Return the next name of a rung that the page does not have yet; from an easier rung where there is none left."""
    for source in list(Rung)[list(Rung).index(rung)::-1]:
        for other in supply[source]:
            if _key(other.name) not in used:
                used.add(_key(other.name))
                return other
    return None


def _mixed(own: Sequence[Shown], others: Sequence[Shown], chance: Random) -> tuple[Shown, ...]:
    """Return the names of a block shuffled, the own name beside itself as seldom as a few tries can make it.

    No place is barred to it: a child would find out that it never comes first.
    """
    orders = [tuple(chance.sample([*own, *others], len(own) + len(others))) for _ in range(3)]
    return min(orders, key=lambda order: sum(one.is_own and other.is_own for one, other in pairwise(order)))


# --- where other names come from ----------------------------------------------------------------------


def _supply(name: str, mates: Sequence[str], rung: Rung) -> Iterator[Other]:
    """Yield names of a rung, classmates' before invented ones.

    Those with another initial come from the least alike on, the others from the most alike.
    """
    invented = {Rung.OTHER: _strangers, Rung.INITIAL: _namesakes, Rung.OUTLINE: _look_alikes}[rung](name)
    fit = _of_rung(name, mates, rung)
    fit.sort(key=lambda one: likeness(name, one), reverse=rung is not Rung.OTHER)
    yield from (Other(one, rung, False) for one in fit)
    yield from (Other(one, rung, True) for one in invented if not is_unkind(one))


def rung_of(name: str, other: str) -> Rung:
    """Return how alike another name is to a name."""
    if not same_initial(name, other):
        return Rung.OTHER
    return Rung.OUTLINE if outline(name) == outline(other) else Rung.INITIAL


def _strangers(name: str) -> list[str]:
    """Return invented names with another initial, from the least alike on."""
    return sorted(_of_rung(name, _INVENTED, Rung.OTHER), key=lambda one: likeness(name, one))


def _namesakes(name: str) -> list[str]:
    """Return invented names with the child's initial, where a vowel takes the place of a vowel: they can be said."""
    first = initial(name)
    made = [first + "".join(clusters(one)[1:]) for one in _INVENTED if _is_vowel(initial(one)) == _is_vowel(first)]
    return sorted(_of_rung(name, made, Rung.INITIAL), key=lambda one: likeness(name, one), reverse=True)


def _look_alikes(name: str) -> list[str]:
    """Return invented names that differ from the name in one letter, or two, of the same kind and height.

    Vowels are exchanged first, then consonants between vowels, so that most can be said. Of a name of one letter they
    are the letters that look most like it.
    """
    letters = clusters(name)
    if len(letters) == 1:
        others = [chr(code) for code in range(ord("A"), ord("Z") + 1) if chr(code) != name]
        return sorted(others, key=lambda one: letters_alike(name, one), reverse=True)
    places = sorted((at for at in range(1, len(letters)) if _exchangeable(letters[at])),
                    key=lambda at: _hard_to_say(letters, at))
    ones = [[_with(letters, at, other) for other in _exchanges(letters[at])] for at in places]
    twos = [[_with(clusters(one), behind, other) for other in _exchanges(letters[behind])[:1]]
            for at, made in zip(places, ones, strict=True) for one in made[:1] for behind in places if behind > at]
    return [*_in_turn(ones), *_in_turn(twos)]


def _hard_to_say(letters: Sequence[str], at: int) -> int:
    """Rank a place by how hard the name gets to say with another letter there: a vowel is easiest."""
    beside = (letters[at - 1:at], letters[at + 1:at + 2])
    return 0 if _is_vowel(letters[at]) else 1 if all(not side or _is_vowel(side[0]) for side in beside) else 2


def _in_turn(lists: Sequence[Sequence[str]]) -> Iterator[str]:
    """Yield the first of each list, then the second of each, so that the next is exchanged in another place."""
    yield from (one for row in zip_longest(*lists) for one in row if one is not None)


def _of_rung(name: str, others: Iterable[str], rung: Rung) -> list[str]:
    return [one for one in others if rung_of(name, one) is rung]


def _with(letters: Sequence[str], at: int, other: str) -> str:
    return "".join((*letters[:at], other, *letters[at + 1:]))


def _exchangeable(letter: str) -> bool:
    return letter.islower() and len(letter) == 1 and letter.isascii()


def _exchanges(letter: str) -> list[str]:
    """Return the small letters of the same kind and height, those rated most alike first."""
    zone = zone_of(letter)
    fit = [other for other in "abcdefghiklmnoprstuvwz" if other != letter and zone_of(other) is zone
           and _is_vowel(other) == _is_vowel(letter)]
    return sorted(fit, key=lambda other: letters_alike(letter, other), reverse=True) if zone is not Zone.NONE else []


def _is_vowel(letter: str) -> bool:
    return base_letter(letter).casefold() in _VOWELS
