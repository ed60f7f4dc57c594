"""How surely a line of a new list and a child of the class are one child, by their names alone. Pure.

Names that say nothing against each other are one child's: an accent or a capital set right, a nickname added, a family
name or a second given name that was missing. A slip of a few letters beside a part that agrees is likely the same
child; another family name beside the same given name may be (a family that married, or two real Emmas). Thresholds are
rules of ours, found by trying invented names.

A list typed beside a class makes thousands of pairs, and most share nothing: ``Kindred`` finds those that may, by signs
and letters worked out once a name, and only they are compared. What was found of a name and a class a moment ago is
kept, since a list is compared at every letter that is typed. No answer hangs on either.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from difflib import SequenceMatcher
from enum import IntEnum
from functools import cached_property

from namewright.classbook.going_on import is_other_script, spelt_out, words
from namewright.classbook.who import Known
from namewright.roster.children import Child
from namewright.store import keeps_names

# How alike two parts of a name are, of 1, to be one with a slip: of family names (Reed and Read), of given names beside
# one family name, which sisters have too (Katla and Karla, not Jade and Jane), and with nothing beside them.
_SLIP_OF_FAMILY, _SLIP_OF_GIVEN, _SLIP_ALONE = 0.75, 0.8, 0.88
_ALIKE = 0.7
HEARD = 0.6  # of a name in another script as it was guessed and as the family spells it: Koval and Kowal; by trying


class Kin(IntEnum):
    """What two names say of each other, from nothing to one written name."""

    OTHER = 0
    MAYBE = 1
    SLIP = 2
    FITS = 3
    SAME = 4


@dataclass(frozen=True)
class Part:
    """A given or a family name with its words, for comparing with many."""

    name: str
    words: tuple[str, ...]

    @cached_property
    def whole(self) -> str:
        """Return the words without gaps."""
        return "".join(self.words)

    @cached_property
    def other_script(self) -> bool:
        """Say whether it has a letter that is not Latin."""
        return is_other_script(self.name)

    @cached_property
    def letters(self) -> frozenset[tuple[str, int]]:
        """Return each letter with the count of those like it before it, so that what two names share can be counted."""
        return frozenset((char, self.whole[:at].count(char)) for at, char in enumerate(self.whole))


@dataclass(frozen=True)
class Named:
    """A child's names for comparing: without letter case, marks, hyphens, apostrophes and dots.

    ``also`` is the whole name as lists have it, in another script or with a slip.
    """

    given: str
    family: str
    practice: str
    also: str = ""

    @cached_property
    def given_words(self) -> tuple[str, ...]:
        """Return the words of the given name."""
        return words(self.given)

    @cached_property
    def family_words(self) -> tuple[str, ...]:
        """Return the words of the family name."""
        return words(self.family)

    @cached_property
    def given_part(self) -> Part:
        """Return the given name for comparing."""
        return Part(self.given, self.given_words)

    @cached_property
    def family_part(self) -> Part:
        """Return the family name for comparing."""
        return Part(self.family, self.family_words)

    @cached_property
    def called(self) -> str:
        """Return the given name or nickname that is practised; empty where it is more than that, or the family name."""
        given, family = self.given_part.whole, self.family_part.whole
        practised = given if self.practice == self.given else "".join(words(self.practice))
        return "" if practised in (family, given + family, family + given) and family else practised

    @cached_property
    def written(self) -> frozenset[tuple[str, ...]]:
        """Return the whole name in ways of which one suffices: without gaps, and whichever part was taken for which."""
        wholes = ((*self.given_words, *self.family_words), words(self.also))
        return frozenset(way for every in wholes if every for way in (("".join(every),), ("", *sorted(every))))

    @cached_property
    def spelt_out(self) -> Named:
        """Return names as where ä, ö, ü and å are not at hand; the same where they have none."""
        if self.given.isascii() and self.family.isascii() and self.practice.isascii():
            return self
        return Named(spelt_out(self.given), spelt_out(self.family), spelt_out(self.practice), self.also)

    @property
    def ways(self) -> tuple[Named, ...]:
        """Return the names as they are and, where that is something else, spelt out."""
        return (self,) if self.spelt_out is self else (self, self.spelt_out)

    @cached_property
    def pieces(self) -> frozenset[object]:
        """Return what two names have one of in common where both are one child's.

        But for initials, two scripts, and given names that have no family name beside them.
        """
        given = {("given", word) for word in (*self.given_words, self.given_part.whole, self.called) if word}
        family = {("family", word) for word in (*self.family_words, self.family_part.whole) if word}
        return frozenset(self.written | given | family)

    @cached_property
    def begins(self) -> frozenset[tuple[str, str]]:
        """Return the letters with which words begin, of which an initial is one."""
        return frozenset((*(("given", word[0]) for word in self.given_words),
                          *(("family", word[0]) for word in self.family_words)))

    @cached_property
    def initials(self) -> frozenset[tuple[str, str]]:
        """Return the words of one letter."""
        return frozenset((*(("given", word) for word in self.given_words if len(word) == 1),
                          *(("family", word) for word in self.family_words if len(word) == 1)))

    @cached_property
    def other_script(self) -> bool:
        """Say whether a part has a letter that is not Latin."""
        return self.given_part.other_script or self.family_part.other_script


def named(one: Child | Known) -> Named:
    """Return the names of a child of a list, or of the class."""
    return _named(one.given, one.family, one.practice, one.also if isinstance(one, Known) else "")


_named = keeps_names(1024)(Named)  # with what was worked out of it, as the spelling of another script


class Kindred:
    """The children of a class, for finding those whose names say something of the name on a line."""

    def __init__(self, known: Mapping[int, Named]) -> None:
        self._known = known
        self._pieces, self._begins, self._initials = (defaultdict[object, set[int]](set) for _ in range(3))
        for key, one in known.items():
            for way in one.ways:
                for index, signs in ((self._pieces, way.pieces), (self._begins, way.begins),
                                     (self._initials, way.initials)):
                    for sign in signs:
                        index[sign].add(key)
        self._alone = [key for key, one in known.items() if not one.family_words]
        self._other_script = [key for key, one in known.items() if one.other_script]

    @keeps_names(4096)
    def of(self, new: Named) -> Mapping[int, Kin]:
        """Return how surely each child of the class is the one of a name; without those who are another."""
        found = {key: kin(new, self._known[key]) for key in self._who_may_be(new)}
        return {key: level for key, level in found.items() if level > Kin.OTHER}

    def _who_may_be(self, new: Named) -> set[int]:
        """Return more than are kin, and never fewer."""
        found: set[int] = set()
        for way in new.ways:
            for index, signs in ((self._pieces, way.pieces), (self._begins, way.initials),
                                 (self._initials, way.begins)):
                for sign in signs:
                    found |= index.get(sign, set())
        alone = () if new.family_words else self._alone
        heard = self._known if new.other_script else self._other_script
        return found | {key for key in {*alone, *heard} - found if _may_be_near(new, self._known[key])}


def kindred(known: Iterable[Known]) -> Kindred:
    """Return children of the class for finding who is like a name: the same for the same children."""
    return _kindred(tuple((one.id, named(one)) for one in known))


@keeps_names(4)
def _kindred(known: tuple[tuple[int, Named], ...]) -> Kindred:
    return Kindred(dict(known))


def _may_be_near(new: Named, old: Named) -> bool:
    """Say whether given names alone, or names in two scripts, may be alike, as they are or spelt out."""
    if _have_letters_alike(new, old):
        return True
    return (new.spelt_out is not new or old.spelt_out is not old) and _have_letters_alike(new.spelt_out, old.spelt_out)


def _have_letters_alike(new: Named, old: Named) -> bool:
    return (_may_be_alike(new.given_part, old.given_part, HEARD)
            or _may_be_alike(new.family_part, old.family_part, HEARD))


def kin(new: Named, old: Named) -> Kin:
    """Return how surely two names are one child's."""
    level, out = _kin(new, old), (new.spelt_out, old.spelt_out)
    return level if level >= Kin.FITS or out == (new, old) else max(level, _kin(*out))


def _kin(new: Named, old: Named) -> Kin:
    if not new.written.isdisjoint(old.written):
        return Kin.SAME
    given = _of_given(new, old)
    family = max(_of_parts(new.family_part, old.family_part, _SLIP_OF_FAMILY),
                 _heard(new.family_part, old.family_part))
    there = [level for level, parts in ((given, (new.given_words, old.given_words)),
                                        (family, (new.family_words, old.family_words))) if all(parts)]
    if not there or max(there) < Kin.FITS:
        return _alone(new, old) if not (new.family_words or old.family_words) else Kin.OTHER
    if min(given, family) >= Kin.SLIP:
        return min(given, family)
    return Kin.MAYBE if given >= Kin.FITS or _begin_alike(new, old) else Kin.OTHER


def _of_given(new: Named, old: Named) -> Kin:
    """Compare given names; a name that the child is called by stands for one."""
    nicknamed = new.called and new.called in (old.called, old.given_part.whole, *old.given_words)
    called = old.called and old.called in (new.given_part.whole, *new.given_words)
    level = max(_of_parts(new.given_part, old.given_part, _SLIP_OF_GIVEN), _heard(new.given_part, old.given_part))
    return max(level, Kin.FITS) if nicknamed or called else level


def _of_parts(new: Part, old: Part, slip: float) -> Kin:
    """Compare one part of two names; a part that is missing says nothing against the other."""
    if new.whole == old.whole:
        return Kin.SAME
    less, more = sorted((new.words, old.words), key=len)
    if all(any(_stands_for(word, other) for other in more) for word in less):
        return Kin.FITS
    return Kin.SLIP if _are_alike(new, old, slip) else Kin.OTHER


def _heard(new: Part, old: Part) -> Kin:
    """Compare two scripts: a family spells a name in its own way, so a guess that is near says nothing against it."""
    other = new.other_script != old.other_script and bool(new.name and old.name)
    return Kin.FITS if other and _are_alike(new, old, HEARD) else Kin.OTHER


def _stands_for(word: str, other: str) -> bool:
    """Say whether two words are one, or one is the other's initial."""
    return word == other or (1 in (len(word), len(other)) and word[0] == other[0])


def _begin_alike(new: Named, old: Named) -> bool:
    """Say whether two given names begin with one letter, as most short forms do: Katherine and Katie."""
    return bool(new.given_words and old.given_words) and new.given_words[0][0] == old.given_words[0][0]


def _alone(new: Named, old: Named) -> Kin:
    """Compare names of one part: a short one that differs by a letter is as likely another child's."""
    one, other = new.given_part, old.given_part
    if not _are_alike(one, other, _ALIKE):
        return Kin.OTHER
    return Kin.SLIP if _are_alike(one, other, _SLIP_ALONE) else Kin.MAYBE


def _are_alike(one: Part, other: Part, least: float) -> bool:
    """Say whether two names are alike by so much, of 1."""
    return _may_be_alike(one, other, least) and (
        SequenceMatcher(None, one.whole, other.whole, autojunk=False).ratio() >= least)


def _may_be_alike(one: Part, other: Part, least: float) -> bool:
    """Say whether two names have so many letters in common, wherever they stand, that they may be alike."""
    if not (one.whole and other.whole):
        return False
    return 2.0 * len(one.letters & other.letters) / (len(one.whole) + len(other.whole)) >= least
