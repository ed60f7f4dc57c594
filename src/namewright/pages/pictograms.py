"""Pictograms: what a task asks, for children who do not read yet. Our own pen strokes, in the one weight of a pencil.

Each is drawn in a square of 100 units, y down, and set ``SIDE_MM`` wide. They stand for one task each and in no order,
without frames or numbers; a caption beside each says the same in words. Nothing here is taken from another's set.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Iterable
from enum import StrEnum
from functools import cache

from namewright.geometry.points import Point
from namewright.letters.strokes import Stroke, parse_stroke
from namewright.lines.ink import BLACK, Ink, Shape, Style, shape_of, stroke_fragment

SIDE_MM = 9.5  # at a hand's breadth from the eye of a child who sits at a table, as large as a capital on most lines
_UNITS = 100.0
_STYLE = Style(0.55, BLACK)

# Parts that recur, each with its own point of contact: the finger's tip, the pencil's point, the middle of a spot.
_HAND = ("M44 98C44 92 40 88 36 82L21 63C17 56 26 50 31 56L40 66V13C40 4 54 4 54 13V50",
         "M54 46C54 38 67 38 67 47V54", "M67 48C67 41 79 42 79 51V57", "M79 52C79 46 91 48 91 57V74C91 86 84 90 84 98")
_FINGERTIP = (47.0, 7.0)
_PENCIL = ("M0 0L-9 21V78H9V21L0 0", "M-9 21C-5 17 5 17 9 21", "M-9 66H9")
# Round ones are curves as fontTools makes them of arcs, so that it need not be loaded to read these.
_SPOT = ("M-2.2 0C-2.2 -1.215 -1.215 -2.2 0 -2.2C1.215 -2.2 2.2 -1.215 2.2 0C2.2 1.215 1.215 2.2 0 2.2"
         "C-1.215 2.2 -2.2 1.215 -2.2 0",)
_IRIS = ("M11 0C11 6.075 6.075 11 0 11C-6.075 11 -11 6.075 -11 0C-11 -6.075 -6.075 -11 0 -11"
         "C6.075 -11 11 -6.075 11 0")
_BELLY = ("M-7 3C-6.73 -1.312 -3.084 -4.631 1.234 -4.496C5.553 -4.361 8.984 -0.821 8.984 3.5"
          "C8.984 7.821 5.553 11.361 1.234 11.496C-3.084 11.631 -6.73 8.312 -7 4")  # of the letter on a tile
_HEAD = ("M58 30.8C42.554 21.779 22.828 25.467 11.684 39.459C0.54 53.45 1.36 73.502 13.608 86.538"
         "C25.857 99.573 45.818 101.639 60.476 91.387C75.134 81.136 80.042 61.677 72 45.7")
_WHEEL = ("M92 82C92 89.732 85.732 96 78 96C70.268 96 64 89.732 64 82C64 74.268 70.268 68 78 68"
          "C85.732 68 92 74.268 92 82")


class Task(StrEnum):
    """What a child is asked to do."""

    FINGER = "finger"  # follow with a finger
    PENCIL = "pencil"  # go over with the pencil
    TILES = "tiles"  # lay the tiles
    LOOK = "look"  # look, and write
    FOLD = "fold"  # fold the page, and write without looking
    COVER = "cover"  # cover the name with a card
    ALONE = "alone"  # write
    COLOUR = "colour"  # fill with colour
    DRAW = "draw"  # draw oneself
    BEST = "best"  # ring the best one
    SEE = "see"  # look
    RING = "ring"  # ring what is the same
    JOIN = "join"  # join two that belong together


def _placed(paths: Iterable[str], x: float = 0.0, y: float = 0.0, turn: float = 0.0, size: float = 1.0,
            contact: Point = (0.0, 0.0)) -> list[Stroke]:
    """Return paths turned by degrees, clockwise, and scaled about their point of contact, which comes to (x, y)."""
    cos, sin = size * math.cos(math.radians(turn)), size * math.sin(math.radians(turn))

    def place(point: Point) -> Point:
        dx, dy = point[0] - contact[0], point[1] - contact[1]
        return (x + dx * cos - dy * sin, y + dx * sin + dy * cos)

    return [parse_stroke(path).map(place) for path in paths]


def _spots(*places: Point) -> list[Stroke]:
    return [stroke for x, y in places for stroke in _placed(_SPOT, x, y)]


def _eye(x: float, y: float, size: float = 1.0) -> list[Stroke]:
    lids = "M-30 0C-16 -24 16 -24 30 0C16 24 -16 24 -30 0"
    return [*_placed((lids, _IRIS), x, y, size=size), *_spots((x, y))]


def _finger() -> list[Stroke]:
    return [*_placed(("M8 44C8 0 56 -4 50 34",)), *_spots((8, 47)), *_placed(_HAND, 49, 38, -22, 0.74, _FINGERTIP)]


def _pencil() -> list[Stroke]:
    return [*_placed(("M4 92H38",)), *_spots((54, 92), (68, 92), (82, 92), (96, 92)),
            *_placed(_PENCIL, 41, 90, 212, 0.98)]


def _tiles() -> list[Stroke]:
    return [*_placed(("M4 54H96V97H4V54", "M50 54V97", "M15 90L27 62L39 90", "M20 80H34")),
            *_placed(("M-21 -21H21V21H-21V-21", "M-7 -13V12", _BELLY), 73, 25, 14, 0.95)]


def _look() -> list[Stroke]:
    return [*_eye(32, 30), *_placed(("M4 94H54",)), *_placed(_PENCIL, 57, 92, 212, 0.9)]


def _fold() -> list[Stroke]:
    return [*_placed(("M4 36V98H72V36", "M4 36C2 18 8 9 18 9H86C76 9 70 18 72 36", "M88 18C99 24 100 42 91 54",
                      "M87 43L90 55L101 49", "M14 86H34")),
            *_spots(*((13 + 12.5 * at, 36) for at in range(5))), *_placed(_PENCIL, 38, 85, 212, 0.5)]


def _cover() -> list[Stroke]:
    return [*_placed(("M2 92L20 40L31 72", "M9 74H31", "M31 22H98V98H31V22", "M86 8H46", "M56 1L45 8L56 15")),
            *_placed(_HAND, 56, 44, -26, 0.56, _FINGERTIP)]


def _alone() -> list[Stroke]:
    return [*_placed(("M4 92H48",)), *_placed(_PENCIL, 52, 90, 212, 0.98)]


def _colour() -> list[Stroke]:
    return [*_placed(("M4 94L22 66L16 92L34 64L28 92L46 66L42 90",)), *_placed(_PENCIL, 48, 80, 212, 0.95)]


def _draw() -> list[Stroke]:
    return [*_placed((_HEAD, "M22 72C29 86 51 86 58 72")),
            *_spots((28, 52), (52, 52)), *_placed(_PENCIL, 74, 44, 212, 0.6)]


def _best() -> list[Stroke]:
    return _placed(("M50 24L58 43L78 44L62 57L68 76L50 65L32 76L38 57L22 44L42 43L50 24",
                    "M60 5C90 8 102 38 94 62C84 96 34 104 12 76C-8 46 14 2 50 8"))


def _see() -> list[Stroke]:
    return _eye(50, 50, 1.5)


def _ring() -> list[Stroke]:
    return [*_placed(("M52 12C26 2 2 20 4 46C6 74 40 84 60 70", "M18 60L34 22L50 60", "M24 47H44")),
            *_placed(_PENCIL, 62, 70, 212, 0.9)]


def _join() -> list[Stroke]:
    return [*_placed(("M4 44L20 6L36 44", "M10 31H30", _WHEEL, "M92 67V97",
                      "M24 54C26 64 38 70 50 68")), *_placed(_PENCIL, 54, 66, 212, 0.66)]


_DRAWN: dict[Task, Callable[[], list[Stroke]]] = {
    Task.FINGER: _finger, Task.PENCIL: _pencil, Task.TILES: _tiles, Task.LOOK: _look, Task.FOLD: _fold,
    Task.COVER: _cover, Task.ALONE: _alone, Task.COLOUR: _colour, Task.DRAW: _draw, Task.BEST: _best,
    Task.SEE: _see, Task.RING: _ring, Task.JOIN: _join}


@cache
def _shape(task: Task, side_mm: float) -> Shape:
    scale = side_mm / _UNITS
    return shape_of(stroke_fragment(stroke.map(lambda point: (point[0] * scale, point[1] * scale))
                                    for stroke in _DRAWN[task]()))


def pictogram(task: Task, x: float, y: float, side_mm: float = SIDE_MM) -> Ink:
    """Return a pictogram in a square of ``side_mm`` with its top left corner at (``x``, ``y``)."""
    return Ink(_STYLE, _shape(task, side_mm), x, y)
