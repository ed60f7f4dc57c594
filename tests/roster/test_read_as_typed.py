"""A list that is typed: what was read of it a moment ago is used again, and never shows in what is read."""

from __future__ import annotations

import random
import sys
from collections.abc import Iterator

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from made_lists.many import SHAPES
from made_lists.people import HELD, INVENTED, TUNED, people
from namewright.message import Problem
from namewright.roster.children import Roster
from namewright.roster.parsing import read_roster
from namewright.settings import NamePart
from namewright.store import forget_names

_SIGNS = "aeMLº ,;\t-–:()\"'’.1é"
_STEPS = 7
_LINES = "Maria Silva\nSilva, Maria\nVost Anna\nWenna, Zell\nMia, Leo\nMIREL\nBo (Al)\nRow 1: Mia"
_BESIDE = ("", "Last name First name\n", "First and last name\n", "Quill, Otta\nReed, Bo\nMoss, Katie\n",
           "Otta Quill, bus\nBo Reed\nKatie Moss\nMia Finch\nLeo Dolt\n", "Otta\nKatie\nMia\nLeo\nBo\nAva\nNoah\n",
           "Silva Maria\nGarcia Ana\nLopez Luis\n", "Name,Room,Hand\nOtta,9,L\n",
           "Sun: Mia, Leo, Bo\nMoon: Otta, Katie, Ava\n")


def typed(rng: random.Random) -> Iterator[str]:
    """Yield a made list as it is worked on: signs typed and taken away, lines moved, doubled, cut, others put in.

    Lines of a list of another shape come to stand beside its own, so that what one line says of the others changes.
    """
    place, count = rng.choice((*TUNED, *HELD, INVENTED)), rng.randrange(3, 9)
    one, other = (SHAPES[rng.choice(sorted(SHAPES))](rng, people(rng, place, count)).text.split("\n") for _ in "12")
    lines = list(one)
    for _ in range(_STEPS):
        yield "\n".join(lines)
        at, sign = rng.randrange(len(lines)), rng.choice(_SIGNS)
        where = rng.randrange(len(lines[at]) + 1)
        lines[at:at + 1] = rng.choice((
            [lines[at][:where] + sign + lines[at][where:]], [lines[at][:where] + lines[at][where + 1:]],
            [lines[at][:where], lines[at][where:]], [lines[at]] * 2, [lines[at], *other], [lines[at], *other],
            [rng.choice(other)], [lines[at], rng.choice(one)]))


def found(text: str, part: NamePart) -> Roster | tuple[object, ...]:
    """Return what is read, or all that is said where nothing can be."""
    try:
        return read_roster(text, part=part)
    except Problem as error:
        return type(error), error.message, getattr(error, "lines", ())


@settings(max_examples=40)
@given(st.integers(0, 10**9).map(random.Random), st.sampled_from(NamePart))
def test_what_was_read_before_never_shows(rng: random.Random, part: NamePart) -> None:
    """Step by step, with all that is kept of the steps before, each text is read as it is read by itself."""
    texts = list(typed(rng))
    step_by_step = [found(text, part) for text in texts]
    for text, before in zip(texts, step_by_step, strict=True):
        forget_names()
        assert found(text, part) == before


@pytest.mark.parametrize("before", _BESIDE)
def test_a_line_is_read_by_those_that_stand_beside_it_now(before: str) -> None:
    """What others say, of which name stands first or what a comma means, may be another thing than a moment ago."""
    for beside in _BESIDE:
        forget_names()
        by_itself = found(beside + _LINES, NamePart.GIVEN)
        forget_names()
        found(before + _LINES, NamePart.GIVEN)
        assert found(beside + _LINES, NamePart.GIVEN) == by_itself


def test_lines_that_stay_are_not_read_again() -> None:
    """One more letter in a list costs a small part of the work of the whole list: only its line is looked at anew."""
    names = [f"{first} {family}{end}" for first in ("Mirel", "Katla", "Bo", "Ottilka") for family in ("Vost", "Dolt")
             for end in "aeiou"]
    forget_names()
    whole, _, letter = (calls("\n".join(lines)) for lines in (names, [*names, "Wenna P"], [*names, "Wenna Pr"]))
    assert letter < 0.5 * whole


def calls(text: str) -> int:
    """Count the calls of Python functions that reading a text takes."""
    count = 0

    def seen(frame: object, event: str, _: object) -> None:
        nonlocal count
        count += event == "call"

    sys.setprofile(seen)
    try:
        read_roster(text)
    finally:
        sys.setprofile(None)
    return count
