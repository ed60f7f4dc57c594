"""How surely a line of a new list and a child of the class are one child, by their names alone. Pure.

Names that say nothing against each other are one child's: an accent or a capital set right, a nickname added, a family
name or a second given name that was missing. A slip of a few letters beside a part that agrees is likely the same
child; another family name beside the same given name may be (a family that married, or two real Emmas). Thresholds are
rules of ours, found by trying invented names.
"""

from __future__ import annotations

from dataclasses import dataclass
from difflib import SequenceMatcher
from enum import IntEnum
from functools import cached_property

from namewright.classbook.going_on import is_other_script, spelt_out, words
from namewright.classbook.who import Known
from namewright.roster.children import Child

# How alike two parts of a name are, of 1, to be one with a slip: of family names (Reed and Read), of given names beside
# one family name, which sisters have too (Katla and Karla, not Jade and Jane), and with nothing beside them.
_SLIP_OF_FAMILY, _SLIP_OF_GIVEN, _SLIP_ALONE = 0.75, 0.8, 0.88
_ALIKE = 0.7
_HEARD = 0.6  # of a name in another script as it was guessed and as the family spells it: Koval and Kowal


class Kin(IntEnum):
    """What two names say of each other, from nothing to one written name."""

    OTHER = 0
    MAYBE = 1
    SLIP = 2
    FITS = 3
    SAME = 4


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
    def called(self) -> str:
        """Return the given name or nickname that is practised; empty where it is more than that, or the family name."""
        practised, family = "".join(words(self.practice)), "".join(self.family_words)
        given = "".join(self.given_words)
        return "" if practised in (family, given + family, family + given) and family else practised


def named(one: Child | Known) -> Named:
    """Return the names of a child of a list, or of the class."""
    return Named(one.given, one.family, one.practice, one.also if isinstance(one, Known) else "")


def kin(new: Named, old: Named) -> Kin:
    """Return how surely two names are one child's."""
    level, out = _kin(new, old), (_spelt_out(new), _spelt_out(old))
    return level if level >= Kin.FITS or out == (new, old) else max(level, _kin(*out))


def _spelt_out(one: Named) -> Named:
    """Return names as where ä, ö, ü and å are not at hand; the same where they have none."""
    if one.given.isascii() and one.family.isascii() and one.practice.isascii():
        return one
    return Named(spelt_out(one.given), spelt_out(one.family), spelt_out(one.practice), one.also)


def _kin(new: Named, old: Named) -> Kin:
    if set(_written(new)) & set(_written(old)):
        return Kin.SAME
    given = _of_given(new, old)
    family = max(_of_parts(new.family_words, old.family_words, _SLIP_OF_FAMILY), _heard(new.family, old.family))
    there = [level for level, parts in ((given, (new.given_words, old.given_words)),
                                        (family, (new.family_words, old.family_words))) if all(parts)]
    if not there or max(there) < Kin.FITS:
        return _alone(new, old) if not (new.family_words or old.family_words) else Kin.OTHER
    if min(given, family) >= Kin.SLIP:
        return min(given, family)
    return Kin.MAYBE if given >= Kin.FITS or _begin_alike(new, old) else Kin.OTHER


def _written(one: Named) -> tuple[tuple[str, ...], ...]:
    """Return the whole name in ways of which one suffices: without gaps, and whichever part was taken for which."""
    wholes = ((*one.given_words, *one.family_words), words(one.also))
    return tuple(way for every in wholes if every for way in (("".join(every),), ("", *sorted(every))))


def _of_given(new: Named, old: Named) -> Kin:
    """Compare given names; a name that the child is called by stands for one."""
    nicknamed = new.called and new.called in (old.called, "".join(old.given_words), *old.given_words)
    called = old.called and old.called in ("".join(new.given_words), *new.given_words)
    level = max(_of_parts(new.given_words, old.given_words, _SLIP_OF_GIVEN), _heard(new.given, old.given))
    return max(level, Kin.FITS) if nicknamed or called else level


def _of_parts(new: tuple[str, ...], old: tuple[str, ...], slip: float) -> Kin:
    """Compare one part of two names; a part that is missing says nothing against the other."""
    if "".join(new) == "".join(old):
        return Kin.SAME
    less, more = sorted((new, old), key=len)
    if all(any(_stands_for(word, other) for other in more) for word in less):
        return Kin.FITS
    return Kin.SLIP if _are_alike("".join(new), "".join(old), slip) else Kin.OTHER


def _heard(new: str, old: str) -> Kin:
    """Compare two scripts: a family spells a name in its own way, so a guess that is near says nothing against it."""
    other = is_other_script(new) != is_other_script(old) and bool(new and old)
    near = other and _are_alike("".join(words(new)), "".join(words(old)), _HEARD)
    return Kin.FITS if near else Kin.OTHER


def _stands_for(word: str, other: str) -> bool:
    """Say whether two words are one, or one is the other's initial."""
    return word == other or (1 in (len(word), len(other)) and word[0] == other[0])


def _begin_alike(new: Named, old: Named) -> bool:
    """Say whether two given names begin with one letter, as most short forms do: Katherine and Katie."""
    return bool(new.given_words and old.given_words) and new.given_words[0][0] == old.given_words[0][0]


def _alone(new: Named, old: Named) -> Kin:
    """Compare names of one part: a short one that differs by a letter is as likely another child's."""
    one, other = "".join(new.given_words), "".join(old.given_words)
    if not _are_alike(one, other, _ALIKE):
        return Kin.OTHER
    return Kin.SLIP if _are_alike(one, other, _SLIP_ALONE) else Kin.MAYBE


def _are_alike(one: str, other: str, least: float) -> bool:
    """Say whether two names are alike by so much, of 1; what is too far apart is seen by length and letters alone."""
    matcher = SequenceMatcher(None, one, other, autojunk=False)
    return bool(one and other) and (
        matcher.real_quick_ratio() >= least and matcher.quick_ratio() >= least and matcher.ratio() >= least)
