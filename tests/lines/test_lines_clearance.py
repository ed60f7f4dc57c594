"""Room for cues: what is free, what keeps off what, and which number reads with which arrow."""

from __future__ import annotations

import math

import pytest
import shapely

from namewright.geometry.points import Point
from namewright.letters.strokes import polyline_stroke
from namewright.lines.arrows import Arrow
from namewright.lines.clearance import CLEAR_MM, Cue, CueRoom, Number, Placed, Sides, keep_off
from namewright.lines.cue_places import free_places
from namewright.lines.ruling import Ruling, custom_ruling
from namewright.lines.setting import InkLetter

PEN, RING, NUMBER = 1.0, 1.6, 2.0
RIGHT = Arrow(((4.0, -2.0), (7.0, -2.0)), (6.0, -2.5), (6.0, -1.5))


def room_of(*strokes: list[Point], ruling: Ruling | None = None) -> CueRoom:
    """Return the room round strokes on plain paper with 20 mm lines."""
    drawn = tuple(polyline_stroke(points) for points in strokes)
    xs, ys = zip(*(point for points in strokes for point in points), strict=True)
    letter = InkLetter("x", drawn, (min(xs), min(ys), max(xs), max(ys)))
    return CueRoom(letter, ruling or custom_ruling(20, lines=()), PEN, RING, NUMBER, 5.0)


def cue(number: Point, arrow: Arrow | None = None) -> Cue:
    """Return a cue with a wide figure."""
    return Cue(Number(2, number, STEM.number_box(2, number)), arrow, 0.0)


def fits(one: Cue, placed: Cue) -> bool:
    """Return whether a cue may stand with one that has its place."""
    return Placed(STEM, placed).leaves(one)


def down(arrow: Arrow, by: float) -> Arrow:
    """Return an arrow farther down."""
    (x0, y0), (x1, y1) = arrow.shaft
    return Arrow(((x0, y0 + by), (x1, y1 + by)), (arrow.left[0], arrow.left[1] + by),
                 (arrow.right[0], arrow.right[1] + by))


STEM = room_of([(0.0, -20.0), (0.0, 0.0)])


@pytest.mark.parametrize("x", [0.0, 0.7, 1.0, 1.2, 1.34, 1.36, 2.0, 4.0])
def test_a_number_stands_clear_of_a_stroke(x: float) -> None:
    """A number 2 mm high is 1.3 mm wide: beside a 1 mm stem its middle is free from 0.5 + 0.2 + 0.65 mm on."""
    assert STEM.number_is_free(2, (0.0, -20.0), (x, -10.0)) == (x >= PEN / 2 + CLEAR_MM + 0.65)
    assert STEM.number_is_free(2, (0.0, -20.0), (-x, -10.0)) == (x >= PEN / 2 + CLEAR_MM + 0.65)


def test_a_number_stays_in_the_room_of_its_letter() -> None:
    """Not farther to the side than the white there, nor over the headroom, nor under the descender line."""
    start = (0.0, -20.0)
    assert STEM.between(Sides(4.0, 6.0)) == (-4.0, 6.0)
    (place,) = free_places(STEM)
    for white in ((-4.0, 6.0), (-2.2, 8.0)):
        found = [number for _, number in place.between(white).numbers.upto(math.inf, 100)]
        assert len(found) > 10
        assert all(white[0] <= number.box[0] and number.box[2] <= white[1] for number in found)
    assert STEM.number_is_free(2, start, (3.0, -23.9))
    assert not STEM.number_is_free(2, start, (3.0, -24.1))
    assert not STEM.number_is_free(2, start, (3.0, 9.5))


def test_a_number_touches_no_printed_line() -> None:
    """On ruled paper a number keeps between the lines."""
    ruled = room_of([(0.0, -20.0), (0.0, 0.0)], ruling=custom_ruling(20))
    assert not ruled.number_is_free(2, (0.0, -20.0), (3.0, -10.5))
    assert ruled.number_is_free(2, (0.0, -20.0), (3.0, -12.0))


def test_a_number_is_nearest_to_its_own_start() -> None:
    """What stands nearer to another stroke's start would be read as that one's number."""
    two = room_of([(0.0, -20.0), (0.0, 0.0)], [(8.0, -20.0), (8.0, 0.0)])
    assert two.number_is_free(2, (0.0, -20.0), (3.0, -17.0))
    assert not two.number_is_free(2, (0.0, -20.0), (5.0, -17.0))


@pytest.mark.parametrize(("x", "free"), [(-1.0, False), (0.6, False), (0.8, True), (2.5, True)])
def test_an_arrow_stands_clear_of_strokes(x: float, free: bool) -> None:
    """Shaft and barbs keep off the stroke by half the pen and a little."""
    arrow = Arrow(((x, -15.0), (x + 3, -15.0)), (x + 2.2, -15.4), (x + 2.2, -14.6))
    assert STEM.arrow_is_free(arrow) == free


@pytest.mark.parametrize("apart", [0.0, 0.3, 0.39, 0.41, 2.0])
def test_arrows_keep_off_each_other(apart: float) -> None:
    """Two arrows are at least twice the clear width apart, as shapely measures it."""
    other = down(RIGHT, 1.0 + apart)  # barbs reach half a millimetre to either side
    lines = [shapely.LineString(arrow.path) for arrow in (RIGHT, other)]
    assert keep_off(RIGHT, other) == (shapely.distance(*lines) >= 2 * CLEAR_MM)


@pytest.mark.parametrize("length", [0.5, 3.0, 9.0])
def test_points_along_an_arrow_are_close(length: float) -> None:
    """No number slips between the points by which distances to an arrow are taken."""
    arrow = Arrow(((0.0, 0.0), (length, 0.0)), (length - 0.6, 0.3), (length - 0.6, -0.3))
    points = shapely.MultiPoint(arrow.points)
    along = shapely.get_coordinates(shapely.segmentize(shapely.LineString(arrow.path), 0.01))
    assert shapely.distance(points, shapely.points(along)).max() <= CLEAR_MM + 1e-9


def test_a_number_reads_with_its_own_arrow() -> None:
    """Two cues stand together only where each number is plainly nearer to its own arrow."""
    first, second = cue((5.5, -4.0), RIGHT), cue((5.5, 6.0), down(RIGHT, 6))
    assert fits(second, first)
    swapped = cue((5.5, 2.0), down(RIGHT, 12))  # as near to the first one's arrow
    assert not fits(swapped, cue((5.5, -6.0), RIGHT))
    assert not fits(cue((5.5, -4.5)), first)  # two numbers in one place
    assert math.dist((5.5, 2.0), (5.5, -2.0)) < math.dist((5.5, 2.0), (5.5, 10.0))


def test_a_dot_s_number_is_not_read_with_an_arrow() -> None:
    """A dot has no arrow: its number stands a number's height from those of other strokes, or “→4” would be a sign."""
    placed = cue((5.5, -6.0), RIGHT)
    assert not fits(cue((8.5, -2.0)), placed)
    assert fits(cue((9.5, -2.0)), placed)
