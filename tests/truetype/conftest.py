"""A font of a few of our letters, made once for all tests of fonts."""

from __future__ import annotations

import io

import pytest
from fontTools.ttLib import TTFont

from namewright.letters.alphabet import Alphabet
from namewright.truetype.build import Plan, build_font, plan_fonts
from namewright.truetype.faces import FACES


@pytest.fixture(scope="session")
def small(alphabet: Alphabet) -> Alphabet:
    """A few letters of ours, so that a font of them is soon made: without marks, with a dot, with a tail."""
    return alphabet._replace(glyphs={char: alphabet.glyphs[char] for char in "acnıi"})


@pytest.fixture(scope="session")
def small_plan(small: Alphabet) -> Plan:
    """What all fonts of these letters share."""
    return plan_fonts(small)


@pytest.fixture(scope="session")
def small_font(small_plan: Plan) -> TTFont:
    """The solid face, as fontTools reads its bytes."""
    return TTFont(io.BytesIO(build_font(small_plan, FACES[0])))
