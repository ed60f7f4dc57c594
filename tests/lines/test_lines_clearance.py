"""Room for cues: what is free, what keeps off what, and which number reads with which arrow."""

from __future__ import annotations

import math

import pytest
import shapely

from namewright.geometry.points import Point
from namewright.letters.strokes import polyline_stroke
from namewright.lines.clearance import CLEAR_MM, Arrow, Cue, CueRoom, keep_off, shaft
from namewright.lines.ruling import Ruling, custom_ruling
from namewright.lines.setting import InkLetter

PEN, RING, NUMBER = 1.0, 1.6, 2.0
RIGHT: Arrow = ((4.0, -2.0), (7.0, -2.0), (6.0, -2.5), (7.0, -2.0), (6.0, -1.5))


def room_of(*strokes: list[Point], ruling: Ruling | None = None) -> CueRoom:
    """Return the room round strokes on plain paper with 20 mm lines."""
    drawn = tuple(polyline_stroke(points) for points in strokes)
    xs, ys = zip(*(point for points in strokes for point in points), strict=True)
    letter = InkLetter("x", drawn, (min(xs), min(ys), max(xs), max(ys)))
    return CueRoom(letter, ruling or custom_ruling(20, lines=()), PEN, RING, NUMBER, 6.0, 5.0)


def cue(number: Point, arrow: Arrow = ()) -> Cue:
    """Return a cue with its arrow as close points."""
    return Cue(number, arrow, shaft(arrow) if arrow else (), 0.0)


STEM = room_of([(0.0, -20.0), (0.0, 0.0)])


@pytest.mark.parametrize("x", [0.0, 0.7, 1.0, 1.2, 1.29, 1.31, 2.0, 4.0])
def test_a_number_stands_clear_of_a_stroke(x: float) -> None:
    """A number 2 mm high is 1.2 mm wide: beside a 1 mm stem its middle is free from 0.5 + 0.2 + 0.6 mm on."""
    assert STEM.number_is_free((0.0, -20.0), (x, -10.0)) == (x >= PEN / 2 + CLEAR_MM + 0.6)
    assert STEM.number_is_free((0.0, -20.0), (-x, -10.0)) == (x >= PEN / 2 + CLEAR_MM + 0.6)


def test_a_number_stays_in_the_room_of_its_letter() -> None:
    """Not farther to the side than the white there, nor over the headroom, nor under the descender line."""
    start = (0.0, -20.0)
    assert STEM.number_is_free(start, (5.3, -10.0))
    assert not STEM.number_is_free(start, (5.5, -10.0))  # 0.6 mm of it beyond 6 mm
    assert STEM.number_is_free(start, (3.0, -23.9))
    assert not STEM.number_is_free(start, (3.0, -24.1))
    assert not STEM.number_is_free(start, (3.0, 9.5))


def test_a_number_touches_no_printed_line() -> None:
    """On ruled paper a number keeps between the lines."""
    ruled = room_of([(0.0, -20.0), (0.0, 0.0)], ruling=custom_ruling(20))
    assert not ruled.number_is_free((0.0, -20.0), (3.0, -10.5))
    assert ruled.number_is_free((0.0, -20.0), (3.0, -12.0))


def test_a_number_is_nearest_to_its_own_start() -> None:
    """What stands nearer to another stroke's start would be read as that one's number."""
    two = room_of([(0.0, -20.0), (0.0, 0.0)], [(8.0, -20.0), (8.0, 0.0)])
    assert two.number_is_free((0.0, -20.0), (3.0, -17.0))
    assert not two.number_is_free((0.0, -20.0), (5.0, -17.0))


@pytest.mark.parametrize(("x", "free"), [(-1.0, False), (0.6, False), (0.8, True), (2.5, True)])
def test_an_arrow_stands_clear_of_strokes(x: float, free: bool) -> None:
    """Shaft and barbs keep off the stroke by half the pen and a little."""
    arrow = ((x, -15.0), (x + 3, -15.0), (x + 2.2, -15.4), (x + 3, -15.0), (x + 2.2, -14.6))
    assert STEM.arrow_is_free(arrow) == free


@pytest.mark.parametrize("apart", [0.0, 0.3, 0.39, 0.41, 2.0])
def test_arrows_keep_off_each_other(apart: float) -> None:
    """Two arrows are at least twice the clear width apart, as shapely measures it; none keeps off any."""
    other = tuple((x, y + 1.0 + apart) for x, y in RIGHT)  # barbs reach half a millimetre to either side
    lines = [shapely.LineString(points) for points in (RIGHT, other)]
    assert keep_off(shaft(RIGHT), shaft(other)) == (shapely.distance(*lines) >= 2 * CLEAR_MM)
    assert keep_off((), shaft(RIGHT))
    assert keep_off(shaft(RIGHT), ())


@pytest.mark.parametrize("length", [0.5, 3.0, 9.0])
def test_points_along_an_arrow_are_close(length: float) -> None:
    """No number slips between the points by which distances to an arrow are taken."""
    arrow = ((0.0, 0.0), (length, 0.0), (length - 0.6, 0.3), (length, 0.0), (length - 0.6, -0.3))
    points = shapely.MultiPoint(shaft(arrow))
    along = shapely.get_coordinates(shapely.segmentize(shapely.LineString(arrow), 0.01))
    assert shapely.distance(points, shapely.points(along)).max() <= CLEAR_MM + 1e-9


def test_a_number_reads_with_its_own_arrow() -> None:
    """Two cues stand together only where each number is plainly nearer to its own arrow."""
    left = tuple((x, y + 6) for x, y in RIGHT)
    first, second = cue((5.5, -4.0), RIGHT), cue((5.5, 6.0), left)
    assert STEM.fits(second, (first,))
    swapped = cue((5.5, 2.0), tuple((x, y + 12) for x, y in RIGHT))  # as near to the first one's arrow
    assert not STEM.fits(swapped, (cue((5.5, -6.0), RIGHT),))
    assert not STEM.fits(cue((5.5, -4.5)), (first,))  # two numbers in one place
    assert math.dist((5.5, 2.0), (5.5, -2.0)) < math.dist((5.5, 2.0), (5.5, 10.0))
