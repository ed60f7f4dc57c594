"""The centreline of a letter: where a pencil would run inside an outline, as strokes without order.

y up, 100 units to the x-height. The medial axis of each part of the letter is cleaned as a hand would draw it:
corners are sharp, a bar crosses a stem in one point, and a free end reaches the end of its stroke. Loops and parts
stay as they are. An outline does not tell in which order or direction a letter is written, so neither is claimed.
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
from namewright.schoolfont.contours import Contour, area_of
from namewright.schoolfont.skeleton import (
    STRAIGHT_ON,
    Axis,
    Branch,
    Node,
    degrees,
    direction,
    medial_axis,
    turn_between,
)
from namewright.schoolfont.smooth import smooth_stroke

STEP = 2.0  # units between the points of the outline from which the axis is made
_FLAT = 0.1
_FINEST = STEP / 8
_CLEAR = 4.5  # a free end and a corner stay this far inside the outline: half the width of a dot on our lines
_CUT = 1.15  # of a junction's radius: nearer than this the axis bends towards the junction
_ONE_KNOT = 0.75  # of both radii: nodes nearer than this are one crossing
_PULL = 0.02  # weight of the middle of a knot against the lines that meet in it
_BENT = 0.6  # of the radius: so near to a free end the axis bends into a corner
_SHORT = 3.0  # radii: a free end shorter than this follows the stroke that it carries on


def centreline(contours: Sequence[Contour]) -> tuple[Stroke, ...]:
    """Return the centreline of a glyph, from its top left part on; a round part is a dot."""
    shapely = extra("shapely")
    parts = shapely.get_parts(area_of(contours, _FLAT))
    strokes = [stroke for part in parts if part.area > 1.0 for stroke in _part_strokes(shapely, part)]
    return tuple(sorted(strokes, key=lambda stroke: (round(stroke.bounds()[0]), -round(stroke.bounds()[3]))))


def _part_strokes(shapely: Any, part: Any) -> tuple[Stroke, ...]:
    axis = _sound_axis(part)
    reach = max(axis.radius.values(), default=math.inf)
    if not part.interiors and sum(map(length, axis.branches)) < reach:
        return (dot_stroke((float(part.centroid.x), float(part.centroid.y))),)
    return tuple(smooth_stroke(points) for points in _Cleaning(shapely, part, axis).strands())


def _sound_axis(part: Any) -> Axis:
    """Return the axis, from ever closer points until it has one piece and a loop for each hole."""
    step = STEP
    while True:
        axis = medial_axis(part, step)
        if step <= _FINEST or _is_sound(axis.branches, len(part.interiors)):
            return axis
        step /= 2


def _is_sound(graph: Sequence[Branch], holes: int) -> bool:
    """Whether a graph has one piece and as many loops as there are holes (Euler: edges − nodes + 1)."""
    return not graph or (len(graph) - len(degrees(graph)) + 1 == holes and len(_pieces(graph)) == 1)


def _pieces(graph: Sequence[Branch]) -> set[Node]:
    sets = _Sets()
    for branch in graph:
        sets.join(branch[0], branch[-1])
    return {sets.find(node) for node in degrees(graph)}


class _Sets:
    """Disjoint sets of nodes."""

    def __init__(self) -> None:
        self._parent: dict[Node, Node] = {}

    def find(self, node: Node) -> Node:
        while (parent := self._parent.get(node, node)) != node:
            node = parent
        return node

    def join(self, a: Node, b: Node) -> bool:
        """Join two sets; return whether they were apart."""
        a, b = self.find(a), self.find(b)
        self._parent[max(a, b)] = min(a, b)
        return a != b


@dataclass(frozen=True, slots=True)
class _End:
    """One end of a branch: which branch, and whether it is the last point of it."""

    branch: int
    last: bool


@dataclass(frozen=True, slots=True)
class _Cut:
    """Where a branch leaves its knot: how many points to drop, the point, and the direction from there on."""

    at: int
    point: Point
    way: Point


class _Cleaning:
    """One part's axis on its way to clean strands."""

    def __init__(self, shapely: Any, part: Any, axis: Axis) -> None:
        self.shapely, self.part, self.axis = shapely, part, axis
        self.room = part.buffer(-_CLEAR)
        self.knots = _Sets()
        count = degrees(axis.branches)
        self.firm = {node for node in count if count[node] > 2 or (node in axis.elbows and count[node] == 2)}
        self.graph = [branch for branch in axis.branches if not self._is_inner(branch)]
        self.paths = [list(branch) for branch in self.graph]
        self.partner: dict[_End, _End] = {}
        self.ways: dict[_End, Point] = {}  # in which direction a branch leaves its knot

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
        turns = {(i, j): turn_between(cuts[i].way, cuts[j].way)
                 for i, j in itertools.combinations(range(len(cuts)), 2)}
        self.partner |= _partners(meeting, turns)
        self.ways |= {end: cut.way for end, cut in zip(meeting, cuts, strict=True)}
        if len(meeting) == 2 and turns[0, 1] < STRAIGHT_ON:
            return
        point = self._meeting_point(nodes, cuts)
        for end, cut in zip(meeting, cuts, strict=True):
            _shorten(self.paths[end.branch], cut.at, end.last, point)

    def _cut(self, end: _End, nodes: Sequence[Node]) -> _Cut:
        """Return where a branch leaves the circles of its knot; at least half of the branch always stays.

        Of a short free end it counts how it arrives, as its way out is all bent by the junction.
        """
        path = self._from(end)
        half = length(path) / 2
        gone, at = 0.0, 0
        while gone < half and at < len(path) - 2 and any(
                math.dist(path[at], node) < _CUT * self.axis.radius[node] for node in nodes):
            gone += math.dist(path[at], path[at + 1])
            at += 1
        if gone >= half and path[-1] not in self.firm:
            ux, uy = direction(path[::-1], half / 2)
            return _Cut(max(1, at), path[-1], (-ux, -uy))
        return _Cut(at, path[at], direction(path, max(3.0, 0.8 * self.axis.radius[nodes[0]]), at))

    def _from(self, end: _End) -> Branch:
        return self.graph[end.branch][::-1] if end.last else self.graph[end.branch]

    def _meeting_point(self, nodes: Sequence[Node], cuts: Sequence[_Cut]) -> Point:
        """Return the point nearest to all lines (least squares), drawn a little to the middle of the knot, inside.

        A cut at q with the way w runs on a line whose normal is n = (-w.y, w.x); the point p is n . (p - q) away from
        it. The sum of these squares and of ``_PULL`` times the square of p - middle is least where

            sum(n n^T) p + _PULL p = sum(n (n . q)) + _PULL middle,

        two equations a x + b y = d and b x + c y = e, solved by Cramer's rule; ``_PULL`` keeps parallel lines solvable.
        """
        middle = (sum(x for x, _ in nodes) / len(nodes), sum(y for _, y in nodes) / len(nodes))
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
        reach = self._room_behind(points[at], way, length(points) + 6 * radius) - min(radius, _CLEAR)
        if reach > 0:
            tip = (points[at][0] - reach * way[0], points[at][1] - reach * way[1])
            _shorten(self.paths[end.branch], at, end.last, tip)

    def _carried_on(self, end: _End) -> tuple[Sequence[Point], int, Point] | None:
        """Return a short end's path, the point at its knot, and the way in which the stroke that it carries on runs.

        So short an end is all bent by the knot. None where it is longer or carries no stroke on.
        """
        there = _End(end.branch, not end.last)
        path = self._from(end)
        if there not in self.partner or length(path) >= _SHORT * self.axis.radius[path[-1]]:
            return None
        now = self._now_from(end)
        return now, len(now) - 1, self.ways[self.partner[there]]

    def _trustworthy(self, end: _End) -> tuple[Sequence[Point], int, Point]:
        """Return a path from its free end, the first point beyond the bend into a corner, and the way from there.

        The axis bends within about 0.6 of the stroke's half width of its end; the way is taken over one half width.
        """
        path = self._from(end)
        radius = self.axis.radius[path[0]]
        at = _first_beyond(path, _BENT * radius)
        return path, at, direction(path, max(3.0, radius), at)

    def _now_from(self, end: _End) -> list[Point]:
        return self.paths[end.branch][::-1] if end.last else self.paths[end.branch]

    def _room_behind(self, point: Point, way: Point, most: float) -> float:
        """Return how far it is from a point to the outline, against a direction; 0 where it is very far."""
        back = (point[0] - most * way[0], point[1] - most * way[1])
        hits = self.shapely.get_coordinates(
            self.shapely.intersection(self.shapely.LineString([point, back]), self.part.boundary))
        return min((math.dist(hit, point) for hit in hits.tolist()), default=0.0)


def _first_beyond(path: Sequence[Point], reach: float) -> int:
    """Return the index of the first point that far along a path, not beyond its middle."""
    return next((at for at, point in enumerate(path)
                 if math.dist(point, path[0]) >= reach or at >= len(path) // 2), 0)


def _shorten(path: list[Point], at: int, last: bool, point: Point) -> None:
    """Replace the first (or last) ``at`` points of a path, at least the end itself, by ``point``."""
    if last:
        path[len(path) - max(1, at):] = [point]
    else:
        path[:max(1, at)] = [point]


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
