"""Optical spacing by closed forms: stems, slants and tails whose gaps can be reckoned by hand. Letter units."""

from __future__ import annotations

import math

import pytest
import shapely

from namewright.geometry.points import Point
from namewright.letters.alphabet import Glyph, Letter, upright
from namewright.letters.strokes import polyline_stroke
from namewright.lines.spacing import NATURAL_GAP, WORD_GAP, Spacer, profile, with_tail


def letter(name: str, *strokes: list[Point]) -> Letter:
    """Return a letter of polylines."""
    return Letter(name, Glyph(tuple(map(polyline_stroke, strokes))))


STEM = letter("l", [(0.0, 200.0), (0.0, 0.0)])
WIDE = letter("H", [(10.0, 200.0), (10.0, 0.0)], [(110.0, 200.0), (110.0, 0.0)])
SLANT = letter("/", [(0.0, 200.0), (-30.0, 0.0)])
HYPHEN = letter("-", [(0.0, 90.0), (40.0, 90.0)])
COMMA = letter(",", [(0.0, 10.0), (-6.0, -30.0)])


def test_two_stems_stand_the_mean_gap_apart() -> None:
    """Where all levels are alike the distance is the gap itself, from the right stem of one to the left of the next."""
    assert Spacer().distance(STEM, STEM) == NATURAL_GAP
    assert Spacer(40.0).distance(WIDE, WIDE) == 110 - 10 + 40


def test_a_hollow_counts_only_so_deep() -> None:
    """A stroke that leans away by more than 20 units counts as 20 away: the mean of 0 to 20 and of 20s is reckoned."""
    # From the level of its edge the slant recedes by 0.15 a unit of height: 20 of it after 133 of 200 units.
    inset = (133.3 * 10 + 66.7 * 20) / 200
    assert Spacer().distance(SLANT, STEM) == pytest.approx(NATURAL_GAP - inset, abs=1.0)


def test_letters_that_share_no_level_stand_by_their_edges() -> None:
    """A hyphen and a comma have no height in common; the comma's edge is what stands on the baseline."""
    assert Spacer().distance(HYPHEN, COMMA) == pytest.approx(40 + NATURAL_GAP, abs=3.0)


@pytest.mark.parametrize("gap", [20.0, 60.0, 90.0])
@pytest.mark.parametrize("pair", ["AV", "To", "rj", "Lt", "ff", "y-"])
def test_no_two_points_are_nearer_than_the_least_gap(pair: str, gap: float) -> None:
    """However open the letters, their strokes keep their distance, as shapely measures it, to one level of height."""
    left, right = (upright().letter(char) for char in pair)
    at = Spacer(0.0, gap).distance(left, right)
    one, two = (shapely.MultiLineString([stroke.flattened(0.1) for stroke in each.strokes() if not stroke.is_dot])
                for each in (left, right))
    apart = one.distance(shapely.affinity.translate(two, at))
    assert gap - 5 <= apart
    assert gap < 60 or apart <= gap + 12  # so wide a gap decides, not the mean


def test_words_stand_edge_to_edge() -> None:
    """Between words nothing is tucked in: the least gap or the word's gap, whichever is more."""
    assert Spacer().word_distance(SLANT, STEM) == WORD_GAP
    assert Spacer(58.0, 50.0).word_distance(STEM, STEM) == 50


def test_distances_are_whole_units_of_the_compiled_fonts() -> None:
    """Every distance is rounded up to a tenth of a letter unit."""
    for pair in ("ab", "Ty", "oo"):
        distance = Spacer(57.77, 31.11).distance(*(upright().letter(char) for char in pair))
        assert distance * 10 == pytest.approx(round(distance * 10), abs=1e-6)


def test_a_tail_keeps_its_slope_in_a_deeper_zone() -> None:
    """The last slanting line below the baseline reaches further by the share of the zone; others stay."""
    tail = polyline_stroke([(80.0, 100.0), (40.0, 0.0), (0.0, -100.0)])
    (_, last) = with_tail(tail, 1.5).segments
    assert last.end == (-20.0, -100.0)
    # mapped to a zone 1.5 x-heights deep, the slope of the last line is that of the one before
    assert math.atan2(1.5 * 100, 60) == pytest.approx(math.atan2(100, 40))
    assert with_tail(polyline_stroke([(0.0, 200.0), (0.0, 0.0)]), 1.5).segments[-1].end == (0.0, 0.0)


def test_a_tail_is_no_edge() -> None:
    """The edges of a silhouette are of what stands on the baseline: j's hook may reach under its neighbour."""
    hooked = profile(letter("j", [(0.0, 100.0), (0.0, -60.0), (-40.0, -100.0)]))
    assert (hooked.edge_left, hooked.edge_right) == (0.0, 0.0)
    assert min(x for x in hooked.left if x is not None) == -40
