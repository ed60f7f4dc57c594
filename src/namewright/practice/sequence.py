"""The order in which the letters of one name are practised.

Own initial first, then from the easier band to the harder. Inside a band, a small letter with the shape of the own
initial goes first (O leads to o), then small letters with the shape of their own capital, for knowing the capital
helps (Turnbull et al. 2010). Letters that look alike never stand next to each other where any order of the name's
letters avoids it: where the bands leave no such order, letters step out of their bands, as near to the front as can
be. Look-alikes are pairs rated 5.0 or more by the adults of Simpson et al. (2013), small a taken as children print it
(single storey), and mirror or turned twins found on our own strokes; accented letters are compared without marks.
Look-alikes go before the bands because a band is a thing of degree, and before the bridges from capitals.

Out of scope: spreading letters over days.
"""

from __future__ import annotations

from collections.abc import Sequence
from itertools import chain

from namewright.practice.difficulty import MAX_LETTERS, Band, LetterDifficulty, base_letter
from namewright.practice.evidence import load_evidence
from namewright.practice.features import FACES_FROM, facing
from namewright.practice.likeness import looks_like_its_capital, twin

LOOK_ALIKE_FROM = 5.0
_STROKED = {"ł": "l", "Ł": "L", "ø": "o", "Ø": "O", "đ": "d", "Đ": "D", "ħ": "h", "Ħ": "H"}
"""Letters that are another letter with a stroke through it: as alike to it as can be, and alike to what it is like."""

_Letters = tuple[LetterDifficulty, ...]


def similarity(first: str, second: str) -> float | None:
    """Return the published rating of two letters of one case; None where none of 3.0 or more is published."""
    evidence = load_evidence()
    pair = frozenset({base_letter(first), base_letter(second)})
    return evidence.single_storey_a.get(pair, None if "a" in pair else evidence.similarity.get(pair))


def look_alike(first: str, second: str) -> bool:
    """Say whether two letters look so alike that they are better not practised one after the other."""
    one, other = (_STROKED.get(base, base) for base in (base_letter(first), base_letter(second)))
    if one == other:
        return base_letter(first) != base_letter(second)
    rating = similarity(one, other)
    if rating is not None and rating >= LOOK_ALIKE_FROM:
        return True
    return one.islower() == other.islower() and twin(*sorted((one, other))) is not None


def faces_left(letter: str) -> bool:
    """Say whether a letter is better watched when written from memory, because it faces left.

    Left-facing letters, such as d and J, are reversed more (Treiman et al. 2014, Fischer & Koch 2016). Which others
    face left is a rule of ours, measured on our own strokes; the ones that the studies name are always among them.
    """
    base = base_letter(letter)
    return base in load_evidence().left_facing or facing(base) <= -FACES_FROM


def practice_sequence(letters: Sequence[LetterDifficulty], own_initial: str) -> tuple[LetterDifficulty, ...]:
    """Return different letters in the order of practice; ``own_initial`` goes first if it is among them.

    As few look-alikes touch as can be; among the orders with as few, one that keeps the bands is taken where there is
    one, and of those the one that keeps nearest to bridges first and then the name's own order. More than 40 different
    letters are no name: those are put in bands and keep their order.
    """
    first = tuple(each for each in letters if each.letter == own_initial)
    rest = [each for each in letters if each.letter != own_initial]
    if len(letters) > MAX_LETTERS:
        return (*first, *chain.from_iterable(_banded(rest)))
    bands = _banded(sorted(rest, key=lambda each: _bridge(each.letter, own_initial)))
    in_one = (tuple(chain.from_iterable(bands)),)
    tries = (_arranged(first[-1:], parts, allowed, set())
             for allowed in range(len(letters) + 1) for parts in (bands, in_one))
    return next((*first, *found) for found in tries if found is not None)


def _banded(letters: Sequence[LetterDifficulty]) -> tuple[_Letters, ...]:
    return tuple(tuple(each for each in letters if each.band is band) for band in Band)


def _bridge(letter: str, own_initial: str) -> int:
    """Rank how well capitals lead to a letter: 0 from the own initial, 1 from its own capital, 2 not by shape."""
    base = base_letter(letter)
    if not looks_like_its_capital(base):
        return 2
    return 0 if own_initial and base.upper() == base_letter(own_initial) else 1


def _arranged(last: _Letters, bands: tuple[_Letters, ...], allowed: int,
              dead: set[object]) -> _Letters | None:
    """Return the first order of the bands after ``last`` in which at most ``allowed`` look-alikes touch.

    ``dead`` collects the positions that were tried in vain, so that none is tried twice; letters that
    differ in their marks only are the same there.
    """
    bands = tuple(band for band in bands if band)
    if not bands:
        return ()
    position = (_bases(last), len(bands), _bases(bands[0]), allowed)
    if position in dead:
        return None
    for at, each in enumerate(bands[0]):
        touching = any(look_alike(each.letter, other.letter) for other in last)
        if touching <= allowed:
            after = (bands[0][:at] + bands[0][at + 1:], *bands[1:])
            tail = _arranged((each,), after, allowed - touching, dead)
            if tail is not None:
                return (each, *tail)
    dead.add(position)
    return None


def _bases(letters: _Letters) -> tuple[str, ...]:
    return tuple(sorted(base_letter(each.letter) for each in letters))
