"""The few choices that travel through the whole house, as closed sets of words, and what holds where nobody chose."""

from __future__ import annotations

from enum import StrEnum

DEFAULT_WEEKS = 10
"""Weeks of a plan."""
AT_ONCE = 4
"""Children who build at once from a class's loose tiles: a table's worth, a rule of ours."""


class Support(StrEnum):
    """Level of support, from most to least."""

    FULL = "full"
    PARTIAL = "partial"
    LIGHT = "light"
    INDEPENDENT = "independent"


class Hand(StrEnum):
    """The writing hand.

    UNSETTLED assumes neither. By four years the preferred hand was evident in 89 % of children who became
    right-handed and 86 % of those who became left-handed (Ounsted, Cockburn & Moar 1985, abstract): not in all.
    """

    RIGHT = "right"
    LEFT = "left"
    UNSETTLED = "unsettled"


class NamePart(StrEnum):
    """Which part of the full name a child practises."""

    GIVEN = "given"
    FAMILY = "family"
    BOTH = "both"
