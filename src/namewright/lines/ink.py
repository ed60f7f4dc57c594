"""Ink: what is drawn on a page, as path data, where it stands, and the pen and colour it is drawn with.

Millimetres, y down. Four things make up all drawing: a ``Fragment`` is path data, built once and placed many times; a
``Piece`` is a fragment in one place; a ``Shape`` is pieces that are set down as one; an ``Ink`` is a shape in a style
and on its place. Out of scope: file formats (``output``).
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from enum import StrEnum
from functools import cached_property, lru_cache

from namewright.geometry import boxes
from namewright.geometry.boxes import Box
from namewright.geometry.points import Point
from namewright.letters.strokes import (
    GridPoint,
    GridStroke,
    Stroke,
    grid_number,
    grid_units,
    polyline_stroke,
    relative_data,
)
from namewright.named_tuples import NamedTuple
from namewright.units import number

BLACK = "#000000"
DARK = "#333333"  # 12.6:1 on white
RULE = "#6b6b6b"  # 5.3:1
FAINT = "#767676"  # 4.54:1, so that even the faint form stays above the 3:1 of WCAG 2.2, SC 1.4.11
PALE = "#949494"  # 3.03:1: a line that joins dots and stays behind them
WHITE = "#ffffff"
SHADE = "#ececec"  # the tint of the x-height band: 1.2:1, so that dots and lines on it keep their contrast
_DIGITS = 2  # decimals of a millimetre in path data


class Style(NamedTuple):
    """How a path is inked: round pen of ``width_mm`` in ``colour``, dashed or not, filled or not."""

    width_mm: float
    colour: str = BLACK
    dash_mm: tuple[float, ...] = ()
    fill: str | None = None


class Fragment:
    """Strokes about their own origin, rounded to ``digits`` decimals of a mm, and the box of their centrelines.

    They are counted in units of the last decimal (see ``Stroke.on_grid``). ``closed`` ones are contours.
    """

    def __init__(self, strokes: tuple[GridStroke, ...], bounds: Box, digits: int = _DIGITS, *,
                 closed: bool = False) -> None:
        if not strokes:
            raise ValueError("a fragment draws something")
        self.strokes, self.bounds, self.digits, self.closed = strokes, bounds, digits, closed
        self._hash = hash(bounds)  # exporters look fragments up, and few of them have one box

    def __eq__(self, other: object) -> bool:
        return self is other or (isinstance(other, Fragment) and self.bounds == other.bounds
                                 and self.strokes == other.strokes and self.digits == other.digits
                                 and self.closed == other.closed)

    def __hash__(self) -> int:
        return self._hash

    @cached_property
    def data(self) -> str:
        """Return relative SVG path data that begin at the origin."""
        parts: list[str] = []
        pen = (0, 0)
        for stroke in self.strokes:
            start, end = stroke[0][0], stroke[-1][-1]
            parts.append(f"m{grid_number(start[0] - pen[0], self.digits)} {grid_number(start[1] - pen[1], self.digits)}"
                         f"{relative_data(stroke, self.digits)}{'z' if self.closed else ''}")
            pen = start if self.closed else end  # closing takes the pen back (W3C SVG 2, §9.3.4)
        return "".join(parts)


class Piece(NamedTuple):
    """A fragment set down with its origin at (``x``, ``y``)."""

    x: float
    y: float
    fragment: Fragment

    def bounds(self) -> Box:
        """Return the box of the centreline on the page."""
        return boxes.shifted(self.fragment.bounds, self.x, self.y)


class Role(StrEnum):
    """What a run of text is to a reader who cannot see where it stands: a title, a heading below it, or prose."""

    TITLE = "H1"
    HEADING = "H2"
    PROSE = "P"


class Spelled(NamedTuple):
    """What the pieces of an ink spell, a piece a letter, in letters of ``x_height_mm``.

    With ``goes_on`` it is read in one with the text before it: the next word or line of a passage.
    """

    words: str
    x_height_mm: float
    role: Role = Role.PROSE
    goes_on: bool = False


class Shape:
    """Pieces about an origin of their own, set down as one in many places; ``box`` is that of their centrelines."""

    def __init__(self, pieces: Iterable[Piece]) -> None:
        self._pieces = tuple(pieces)
        self.box = boxes.joined(self.boxes)

    def __eq__(self, other: object) -> bool:
        return isinstance(other, Shape) and self.pieces == other.pieces

    def __hash__(self) -> int:
        return hash(self.box)

    @property
    def pieces(self) -> tuple[Piece, ...]:
        """Return the pieces, in drawing order."""
        return self._pieces

    @property
    def xs(self) -> Sequence[float]:
        """Return the x of each piece."""
        return [piece.x for piece in self._pieces]

    @property
    def boxes(self) -> Sequence[Box]:
        """Return the box of each piece's centrelines."""
        return [(left + x, top + y, right + x, bottom + y)  # added up sooner than asked piece by piece
                for x, y, fragment in self._pieces for left, top, right, bottom in (fragment.bounds,)]


class Ink(NamedTuple):
    """A shape with its origin at (``x``, ``y``), in one style: one path. Running text also tells what it spells."""

    style: Style
    shape: Shape
    x: float = 0.0
    y: float = 0.0
    spelled: Spelled | None = None

    @classmethod
    def of(cls, style: Style, pieces: Iterable[Piece]) -> Ink:
        """Return the ink of pieces that stand on their places. Raises ValueError where there is none."""
        return cls(style, Shape(pieces))

    @property
    def pieces(self) -> tuple[Piece, ...]:
        """Return the pieces of the shape on their places."""
        return tuple([Piece(self.x + x, self.y + y, fragment) for x, y, fragment in self.shape.pieces])

    def bounds(self) -> Box:
        """Return the box of what the pen covers, its width counted."""
        style, shape, x, y, _ = self
        (x0, y0, x1, y1), reach = shape.box, style.width_mm / 2
        return (x0 + x - reach, y0 + y - reach, x1 + x + reach, y1 + y + reach)

    def moved(self, dx: float, dy: float) -> Ink:
        """Return the same ink elsewhere."""
        style, shape, x, y, spelled = self
        return Ink(style, shape, x + dx, y + dy, spelled)

    def in_colour(self, colour: str) -> Ink:
        """Return the same ink in another colour."""
        style = self.style
        if colour == style.colour:
            return self
        return Ink(Style(style.width_mm, colour, style.dash_mm, style.fill), *self[1:])

    def read_as(self, role: Role = Role.PROSE, *, goes_on: bool = False) -> Ink:
        """Return the same text in another role, or read in one with what comes before it."""
        style, shape, x, y, spelled = self
        if spelled is None:
            return self
        return Ink(style, shape, x, y, Spelled(spelled.words, spelled.x_height_mm, role, goes_on))

    def path_data(self) -> str:
        """Return the SVG path data of all pieces."""
        return "".join(f"M{number(piece.x)} {number(piece.y)}{piece.fragment.data}" for piece in self.pieces)


def shape_of(fragment: Fragment) -> Shape:
    """Return a fragment alone as a shape."""
    return Shape((Piece(0.0, 0.0, fragment),))


def passage(inks: Iterable[Ink], role: Role = Role.PROSE) -> tuple[Ink, ...]:
    """Return texts that are read in one, whether words of a line or lines of a paragraph."""
    return tuple(ink.read_as(role, goes_on=count > 0) for count, ink in enumerate(inks))


def stroke_fragment(strokes: Iterable[Stroke], digits: int = _DIGITS) -> Fragment:
    """Return the fragment that draws the strokes one after another, rounded to ``digits`` decimals of a mm."""
    return _fragment(tuple(strokes), digits, closed=False)


def outline_fragment(contours: Iterable[Stroke]) -> Fragment:
    """Return the fragment of closed contours, to be filled by the rule of nonzero winding (SVG's own default)."""
    return _fragment(tuple(contours), _DIGITS, closed=True)


def _fragment(strokes: Sequence[Stroke], digits: int, *, closed: bool) -> Fragment:
    return Fragment(tuple([stroke.on_grid(digits) for stroke in strokes]),
                    boxes.joined([stroke.bounds() for stroke in strokes]), digits, closed=closed)


def dot_fragment(points: Iterable[Point]) -> Fragment:
    """Return the fragment of one dot at each point: a line of no length, which a round pen draws as a dot."""
    return dots_on_grid(on_grid(points))


def on_grid(points: Iterable[Point]) -> list[GridPoint]:
    """Return points in whole hundredths of a millimetre, as they are drawn."""
    return [(grid_units(x, _DIGITS), grid_units(y, _DIGITS)) for x, y in points]


def dots_on_grid(points: Sequence[GridPoint]) -> Fragment:
    """Return the fragment of one dot at each point in hundredths of a millimetre."""
    x0, y0, x1, y1 = boxes.around(points)
    scale = 10 ** _DIGITS
    return Fragment(tuple([((point,), (point,)) for point in points]), (x0 / scale, y0 / scale, x1 / scale, y1 / scale))


def line(x0: float, y0: float, x1: float, y1: float) -> Piece:
    """Return one straight line as a piece."""
    return Piece(x0, y0, _line_fragment(x1 - x0, y1 - y0))


@lru_cache(maxsize=200)  # check bars and fold lines are on every page
def _line_fragment(dx: float, dy: float) -> Fragment:
    return stroke_fragment([polyline_stroke([(0.0, 0.0), (dx, dy)])], 3)
