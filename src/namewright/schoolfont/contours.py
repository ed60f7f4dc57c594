"""Outlines: the closed contours of a glyph, and the area that they enclose.

y up; the unit is the caller's. HarfBuzz draws, because it bounds what a hostile file may ask for (nested
composites, looping subroutines). Out of scope: the pen's path inside an outline (``centreline``).
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from namewright.geometry.points import Point
from namewright.geometry.segments import Cubic, Line, Segment, raised
from namewright.letters.strokes import Stroke
from namewright.schoolfont import extra

Contour = Stroke  # closed: it ends where it starts


class ContourPen:
    """A pen of the fontTools protocol that keeps closed contours; quadratic curves become cubic, which is exact."""

    def __init__(self) -> None:
        self.contours: list[Contour] = []
        self._segments: list[Segment] = []
        self._start: Point = (0.0, 0.0)
        self._at: Point = (0.0, 0.0)

    def moveTo(self, point: Point) -> None:
        """Begin a contour."""
        self.closePath()
        self._start = self._at = point

    def lineTo(self, point: Point) -> None:
        """Add a straight line."""
        self._add(Line(self._at, point))

    def qCurveTo(self, control: Point, point: Point) -> None:
        """Add a quadratic curve, raised to a cubic one."""
        self._add(raised(self._at, control, point))

    def curveTo(self, a: Point, b: Point, point: Point) -> None:
        """Add a cubic curve."""
        self._add(Cubic(self._at, a, b, point))

    def closePath(self) -> None:
        """End a contour; one that encloses nothing is dropped."""
        if self._at != self._start:
            self._add(Line(self._at, self._start))
        if self._segments:
            self.contours.append(Stroke(tuple(self._segments)))
        self._segments = []

    endPath = closePath

    def _add(self, segment: Segment) -> None:
        if any(point != self._at for point in segment):
            self._segments.append(segment)
        self._at = segment.end


def encloses(contour: Contour) -> bool:
    """Say whether a contour has any area at all (by the shoelace formula), so that something of it can be seen."""
    x0, y0, x1, y1 = contour.bounds()
    reach = max(x1 - x0, y1 - y0)
    points = contour.flattened(reach / 100) if reach > 0 else ()
    twice = sum(ax * by - bx * ay for (ax, ay), (bx, by) in zip(points, [*points[1:], *points[:1]], strict=True))
    return bool(abs(twice) > 1e-6 * reach * reach)


def glyph_contours(font: Any, glyph: int) -> tuple[Contour, ...]:
    """Return the contours of a glyph of a HarfBuzz font, in font units."""
    pen = ContourPen()
    font.draw_glyph_with_pen(glyph, pen)
    pen.closePath()
    return tuple(pen.contours)


def area_of(contours: Sequence[Contour], tolerance: float) -> Any:
    """Return the shapely area that is filled by the rule of nonzero winding, curves flattened to ``tolerance``.

    Contours may overlap each other or themselves, as those of variable fonts do: all lines are noded, and each
    face of the plane is kept if the contours wind round it.
    """
    shapely, numpy = extra("shapely"), extra("numpy")
    rings = [points for contour in contours if len(points := contour.flattened(tolerance)) > 3]
    if not rings:
        return shapely.Polygon()
    noded = shapely.union_all([shapely.LineString(points) for points in rings])
    faces = shapely.get_parts(shapely.polygonize(shapely.get_parts(noded)))
    inside = shapely.get_coordinates(shapely.point_on_surface(faces))
    winding = sum((_winding(numpy.asarray(points), inside) for points in rings),
                  start=numpy.zeros(len(faces), dtype=int))
    return shapely.union_all(faces[winding != 0])


def _winding(ring: Any, points: Any) -> Any:
    """Return how often a closed ring winds round each point, by counting the edges that pass to its right."""
    (ax, ay), (bx, by) = ring[:-1].T[:, :, None], ring[1:].T[:, :, None]
    px, py = points.T
    left = (bx - ax) * (py - ay) - (px - ax) * (by - ay)
    return ((ay <= py) & (by > py) & (left > 0)).sum(axis=0) - ((ay > py) & (by <= py) & (left < 0)).sum(axis=0)
