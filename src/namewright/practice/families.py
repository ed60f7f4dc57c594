"""Families of letters by how the pencil moves in them, found on our own strokes.

The names are plain words of ours; a school that groups its letters otherwise goes by its own. That letters which
move alike help one another is common practice, not a finding: one large study found letter features to matter
little (Puranik et al. 2014). Out of scope: how hard a letter is.
"""

from __future__ import annotations

import math
from enum import StrEnum
from functools import cache

from namewright.geometry.segments import Cubic, Line, Segment, heading_out
from namewright.letters.strokes import Stroke
from namewright.practice.features import letter_strokes, oblique_share

OBLIQUE_FROM = 0.25  # share of the path; above it slant is what the hand has to master; found by trial


class Family(StrEnum):
    """How the pencil moves, in the order in which the families are offered."""

    STRAIGHT = "straight"  # down and across: l i t E H
    ROUND = "round"        # begins in a bend: c a d O s
    DOWN = "down"          # straight down, then into a bend: n h b u R
    SLANT = "slant"        # v w k A X
    OTHER = "other"        # a sign our alphabet does not have


@cache
def family_of(sign: str) -> Family:
    """Return the family of a letter or figure by its base strokes; OTHER where our alphabet has no such sign."""
    strokes = letter_strokes(sign)
    if not strokes:
        return Family.OTHER
    if oblique_share(strokes) > OBLIQUE_FROM:
        return Family.SLANT
    if not any(map(_bends, strokes)):
        return Family.STRAIGHT
    return Family.DOWN if _goes_down(strokes[0].segments[0]) else Family.ROUND


def _bends(stroke: Stroke) -> bool:
    return any(isinstance(segment, Cubic) for segment in stroke.segments)


def _goes_down(segment: Segment) -> bool:
    """Say whether a stroke begins straight and downward, near enough upright."""
    return isinstance(segment, Line) and abs(math.remainder(heading_out(segment) + math.pi / 2, math.tau)) < 0.3
