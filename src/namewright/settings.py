"""The few choices that travel through the whole house, as closed sets of words."""

from __future__ import annotations

from enum import StrEnum


class Support(StrEnum):
    """Level of support, from most to least."""

    FULL = "full"
    PARTIAL = "partial"
    LIGHT = "light"
    INDEPENDENT = "independent"


class Hand(StrEnum):
    """The writing hand."""

    RIGHT = "right"
    LEFT = "left"


class NamePart(StrEnum):
    """Which part of the full name a child practises."""

    GIVEN = "given"
    FAMILY = "family"
    BOTH = "both"
