"""The centreline of a letter: where a pencil would run inside an outline, as strokes without order.

y up, 100 units to the x-height. The medial axis of each part of the letter is cleaned as a hand would draw it:
corners are sharp, a stem runs straight on past the bowl that leaves it, a bowl runs round past the bar that meets it,
and a free end reaches the end of its stroke. Loops and parts stay as they are. An outline does not tell in which order
or direction a letter is written, so neither is claimed.
"""

from __future__ import annotations

import itertools
import math
from collections import defaultdict
from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from typing import Any

from namewright.geometry.points import Point
from namewright.geometry.polylines import length
from namewright.letters.strokes import Stroke, dot_stroke
from namewright.schoolfont import extra
from namewright.schoolfont.compact import CLEAR, axle_of
from namewright.schoolfont.contours import Contour, area_of
from namewright.schoolfont.knots import (
    CUT,
    Cut,
    bend_of,
    first_beyond,
    landing,
    middle_of,
    nearest,
    shorten,
    smooth_way,
    turn_less_bend,
    way_of,
)
from namewright.schoolfont.skeleton import (
    STRAIGHT_ON,
    Axis,
    Branch,
    Node,
    NodeSets,
    degrees,
    direction,
    sound_axis,
)
from namewright.schoolfont.smooth import smooth_stroke

_FLAT = 0.1
_ONE_KNOT = 0.75  # of both radii: nodes nearer than this are one crossing
_PULL = 0.02  # weight of the middle of a knot against the lines that meet in it
_BENT = 0.6  # of the radius: so near to a free end the axis bends into a corner
_UNSURE = 0.5  # radii: where less is left of a branch between its bends, its way is not to be relied on
_FEW = 6  # points of such a branch that has a middle


def centrelines(contours: Sequence[Contour], *, dotted: bool = True) -> tuple[tuple[Stroke, ...], ...]:
    """Return the centreline of each separate part of a glyph, the largest part first, then from the left.

    A compact small part is one dot where ``dotted``: a heavy accent may be hardly longer than wide and is none.
    """
    shapely = extra("shapely")
    parts = [part for part in shapely.get_parts(area_of(contours, _FLAT)) if part.area > 1.0]
    parts.sort(key=lambda part: (-round(part.area), *map(round, part.bounds)))
    parts[1:] = sorted(parts[1:], key=lambda part: tuple(map(round, part.bounds)))
    return tuple(_part_strokes(shapely, part, dotted) for part in parts)


def _part_strokes(shapely: Any, part: Any, dotted: bool) -> tuple[Stroke, ...]:
    axle = axle_of(shapely, part)
    if dotted and not part.interiors and axle.is_dot:
        return (dot_stroke((float(part.centroid.x), float(part.centroid.y))),)
    axis = sound_axis(part)
    strands = list(_Cleaning(shapely, part, axis).strands()) if axis.branches else []
    if not part.interiors and sum(map(length, strands)) < axle.length / 2:
        strands = [axle.inner()]  # so compact that nothing of its axis is left
    return tuple(smooth_stroke(points) for points in strands)


@dataclass(frozen=True, slots=True)
class _End:
    """One end of a branch: which branch, and whether it is the last point of it."""

    branch: int
    last: bool


class _Cleaning:
    """One part's axis on its way to clean strands."""

    def __init__(self, shapely: Any, part: Any, axis: Axis) -> None:
        self.shapely, self.part, self.axis = shapely, part, axis
        self.room = part.buffer(-CLEAR)
        self.knots = NodeSets()
        count = degrees(axis.branches)
        self.firm = {node for node in count if count[node] > 2 or (node in axis.elbows and count[node] == 2)}
        self.graph = [branch for branch in axis.branches if not self._is_inner(branch)]
        self.paths = [list(branch) for branch in self.graph]
        self.partner: dict[_End, _End] = {}
        self.ways: dict[_End, Point] = {}  # in which direction a branch leaves its knot
        self.loose: set[_End] = set()  # see ``Cut``

    def _is_inner(self, branch: Branch) -> bool:
        """Join the knots at both ends of a branch that lies within their circles; never close a loop so."""
        a, b = branch[0], branch[-1]
        near = length(branch) < _ONE_KNOT * (self.axis.radius[a] + self.axis.radius[b])
        return near and a in self.firm and b in self.firm and self.knots.join(a, b)

    def strands(self) -> Iterator[list[Point]]:
        """Yield clean polylines, those that run straight on through a knot joined."""
        ends: dict[Node, list[_End]] = defaultdict(list)
        for index, branch in enumerate(self.graph):
            ends[self.knots.find(branch[0])].append(_End(index, False))
            ends[self.knots.find(branch[-1])].append(_End(index, True))
        for knot, meeting in sorted(ends.items()):
            if len(meeting) > 1:
                self._tie(knot, meeting)
        for knot, meeting in sorted(ends.items()):
            if len(meeting) == 1 and knot not in self.firm:
                self._finish(meeting[0])
        yield from _chained(self.paths, self.partner)

    # --- where branches meet ---------------------------------------------------------------------

    def _tie(self, knot: Node, meeting: Sequence[_End]) -> None:
        """Let the branches of a knot meet in one point, and note which of them run on into each other."""
        nodes = [node for node in sorted(self.firm) if self.knots.find(node) == knot] or [knot]
        cuts = [self._cut(end, nodes) for end in meeting]
        turns = {(i, j): turn_less_bend(cuts[i], cuts[j]) for i, j in itertools.combinations(range(len(cuts)), 2)}
        pairs = _partners(meeting, turns)
        self.partner |= pairs
        self.ways |= {end: cut.way for end, cut in zip(meeting, cuts, strict=True)}
        self.loose |= {end for end, cut in zip(meeting, cuts, strict=True) if cut.loose}
        middle = (sum(x for x, _ in nodes) / len(nodes), sum(y for _, y in nodes) / len(nodes))
        through: list[Point] = []
        apart = list(range(len(meeting)))
        for i, j in turns:
            if pairs.get(meeting[i]) == meeting[j] and turns[i, j] < STRAIGHT_ON:
                apart = [at for at in apart if at not in (i, j)]
                through += self._run_on(meeting, cuts, i, j, middle)
        if not apart:
            return
        if through and len(apart) == 1:
            point = landing(cuts[apart[0]], through)
        else:
            point = self._meeting_point(middle, [cuts[at] for at in apart])
            point = nearest(point, through) if through else point
        for at in apart:
            shorten(self.paths[meeting[at].branch], cuts[at].at, meeting[at].last, point)

    def _run_on(self, meeting: Sequence[_End], cuts: Sequence[Cut], i: int, j: int, middle: Point) -> list[Point]:
        """Let two branches run on into each other through a knot, and return the way between their cuts.

        A free end too short to say where it comes from is left where the other, carried on straight, passes the knot.
        """
        if cuts[i].loose != cuts[j].loose:
            i, j = (j, i) if cuts[i].loose else (i, j)  # i is sure, j is loose
            (x, y), (wx, wy) = cuts[i].point, cuts[i].way
            reach = max(0.0, (x - middle[0]) * wx + (y - middle[1]) * wy)
            way = [(x, y), (x - reach * wx, y - reach * wy)]
            knee = 1
        else:
            way = smooth_way(cuts[i], cuts[j])
            knee = len(way) // 2
        for at, part in ((i, way[knee:0:-1]), (j, way[knee:-1])):
            path, drop = self.paths[meeting[at].branch], max(1, cuts[at].at)
            if meeting[at].last:
                path[len(path) - drop:] = part[::-1] or [way[-1]]
            else:
                path[:drop] = part or [way[-1]]
        return way

    def _cut(self, end: _End, nodes: Sequence[Node]) -> Cut:
        """Return where a branch leaves the circles of its knot; at least half of the branch always stays.

        Of a short free end it counts how it arrives, as its way out is all bent by the junction. So is a short branch
        between two knots, but both pull alike: its middle lies where it should, and runs as the branch does in all.
        """
        path = self._from(end)
        half = length(path) / 2
        gone, at = 0.0, 0
        while gone < half and at < len(path) - 2 and any(
                math.dist(path[at], node) < CUT * self.axis.radius[node] for node in nodes):
            gone += math.dist(path[at], path[at + 1])
            at += 1
        radius, free = self.axis.radius[nodes[0]], path[-1] not in self.firm
        if gone >= half and free:
            ux, uy = direction(path[::-1], half / 2)
            return Cut(max(1, at), path[-1], (-ux, -uy), loose=True)
        left = 2 * half - gone - (_BENT if free else CUT) * radius
        if left < _UNSURE * radius and not free and len(path) > _FEW and path[0] != path[-1]:
            return middle_of(path, forwards=not end.last)
        way = way_of(path, at, radius)
        return Cut(at, path[at], way, bend_of(path, at, max(3.0, 0.8 * radius)), free and left < _UNSURE * radius)

    def _from(self, end: _End) -> Branch:
        return self.graph[end.branch][::-1] if end.last else self.graph[end.branch]

    def _meeting_point(self, middle: Point, cuts: Sequence[Cut]) -> Point:
        """Return the point nearest to all lines (least squares), drawn a little to the middle of the knot, inside.

        A cut at q with the way w runs on a line whose normal is n = (-w.y, w.x); the point p is n . (p - q) away from
        it. The sum of these squares and of ``_PULL`` times the square of p - middle is least where

            sum(n n^T) p + _PULL p = sum(n (n . q)) + _PULL middle,

        two equations a x + b y = d and b x + c y = e, solved by Cramer's rule; ``_PULL`` keeps parallel lines solvable.
        """
        a, b, c, d, e = _PULL, 0.0, _PULL, _PULL * middle[0], _PULL * middle[1]
        for cut in cuts:
            nx, ny = -cut.way[1], cut.way[0]
            off = nx * cut.point[0] + ny * cut.point[1]
            a, b, c, d, e = a + nx * nx, b + nx * ny, c + ny * ny, d + nx * off, e + ny * off
        determinant = a * c - b * b
        return self._inside(((d * c - b * e) / determinant, (a * e - b * d) / determinant), middle)

    def _inside(self, point: Point, otherwise: Point) -> Point:
        if self.room.is_empty:
            return otherwise
        near = self.shapely.get_coordinates(self.shapely.shortest_line(self.room, self.shapely.Point(point)))[0]
        return (float(near[0]), float(near[1]))

    # --- where a branch ends free ----------------------------------------------------------------

    def _finish(self, end: _End) -> None:
        """Draw a free end out to the end of its stroke, less the half width of a dot.

        The axis itself cannot be followed to its end: near the end of a stroke it runs into a corner of the outline or
        stops half a stroke's width short. So the path is left at its last trustworthy point and carried on straight.
        """
        points, at, way = self._carried_on(end) or self._trustworthy(end)
        radius = self.axis.radius[self._from(end)[0]]
        reach = self._room_behind(points[at], way, length(points) + 6 * radius) - min(radius, CLEAR)
        if reach > 0:
            tip = (points[at][0] - reach * way[0], points[at][1] - reach * way[1])
            shorten(self.paths[end.branch], at, end.last, tip)

    def _carried_on(self, end: _End) -> tuple[Sequence[Point], int, Point] | None:
        """Return a short end's path, the point at its knot, and the way in which the stroke that it carries on runs.

        So short an end is all bent by the knot. None where it is sure of its own way or carries no stroke on.
        """
        there = _End(end.branch, not end.last)
        if there not in self.partner or there not in self.loose:
            return None
        now = self._now_from(end)
        return now, len(now) - 1, self.ways[self.partner[there]]

    def _trustworthy(self, end: _End) -> tuple[Sequence[Point], int, Point]:
        """Return a path from its free end, the first point beyond the bend into a corner, and the way from there.

        The axis bends within about 0.6 of the stroke's half width of its end; the way is taken over one half width.
        """
        path = self._from(end)
        radius = self.axis.radius[path[0]]
        at = first_beyond(path, _BENT * radius)
        return path, at, direction(path, max(3.0, radius), at)

    def _now_from(self, end: _End) -> list[Point]:
        return self.paths[end.branch][::-1] if end.last else self.paths[end.branch]

    def _room_behind(self, point: Point, way: Point, most: float) -> float:
        """Return how far it is from a point to the outline, against a direction; 0 where it is very far."""
        back = (point[0] - most * way[0], point[1] - most * way[1])
        hits = self.shapely.get_coordinates(
            self.shapely.intersection(self.shapely.LineString([point, back]), self.part.boundary))
        return min((math.dist(hit, point) for hit in hits.tolist()), default=0.0)


def _partners(meeting: Sequence[_End], turns: Mapping[tuple[int, int], float]) -> Mapping[_End, _End]:
    """Pair the ends that run straight on into each other; where only two meet, they are one stroke at any turn."""
    pairs: dict[_End, _End] = {}
    for (i, j), turn in sorted(turns.items(), key=lambda item: item[1]):
        straight = turn < STRAIGHT_ON or len(meeting) == 2
        if straight and meeting[i] not in pairs and meeting[j] not in pairs:
            pairs |= {meeting[i]: meeting[j], meeting[j]: meeting[i]}
    return pairs


def _chained(paths: Sequence[list[Point]], partner: Mapping[_End, _End]) -> Iterator[list[Point]]:
    """Yield the paths joined end to end with their partners, each once; what goes round in a ring is closed."""
    left = set(range(len(paths)))
    starts = [_End(index, last) for index in sorted(left) for last in (False, True)]
    for begin in [end for end in starts if end not in partner] + starts:
        if begin.branch in left:
            yield list(_followed(begin, paths, partner, left))


def _followed(begin: _End, paths: Sequence[list[Point]], partner: Mapping[_End, _End], left: set[int],
              ) -> Iterable[Point]:
    end: _End | None = begin
    while end is not None and end.branch in left:
        left.discard(end.branch)
        path = paths[end.branch][::-1] if end.last else paths[end.branch]
        yield from path if end is begin else path[1:]
        end = partner.get(_End(end.branch, not end.last))
