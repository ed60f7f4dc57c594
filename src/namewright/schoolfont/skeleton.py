"""The medial axis of an area as a small graph: branches between junctions and ends, short corners pruned.

y up, 100 units to the x-height. The axis is read off the Voronoi diagram of points along the outline: its edges
that lie wholly inside are as far from one side as from the other (Voronoi skeletons: Ogniewicz & Kübler 1995,
from memory). Loops are kept, so there are as many as the area has holes. Out of scope: what a clean line of a
pen is (``centreline``).
"""

from __future__ import annotations

import itertools
import math
from collections import Counter, defaultdict
from collections.abc import Callable, Collection, Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from typing import Any

from namewright.geometry.points import Point, unit
from namewright.geometry.polylines import length
from namewright.schoolfont import extra

STEP = 2.0  # units between the points of the outline from which the axis is made
_FINEST = STEP / 8
_GRID = 4  # decimals to which the diagram's points are the same point
_CORNER_SLOPE = 0.3  # a branch whose radius falls faster runs into a corner of the outline; found by trial
_BUMP = 0.25  # of the radius: a branch that reaches out of its junction's circle by less is a bump of the outline

_ELBOW = 0.8  # of the radius: a shorter corner branch does not make the axis turn
_POINT = 1.3  # of the radius: a branch that halves the angle of two others and stands out by less is their corner
STRAIGHT_ON = 35.0  # degrees: two branches that turn less are one stroke, and an elbow that turns less is none

Node = Point


Branch = tuple[Node, ...]  # the points from one node to the next, or back to the same one


@dataclass(frozen=True, slots=True)
class Axis:
    """A medial axis: its branches, the radius at each point, and the nodes at which a corner was pruned."""

    branches: tuple[Branch, ...]
    radius: Mapping[Node, float]
    elbows: frozenset[Node]


def medial_axis(area: Any, step: float) -> Axis:
    """Return the medial axis of one polygon, branches that only run into a corner pruned.

    ``step`` is the distance between the points along the outline from which the diagram is made.
    """
    shapely = extra("shapely")
    edges = [(a, b) for a, b in _voronoi_edges(shapely, area, step) if a != b]
    nodes = sorted({node for edge in edges for node in edge})
    if not nodes:
        return Axis((), {}, frozenset())
    shapely.prepare(boundary := area.boundary)
    distances = shapely.distance(boundary, shapely.points(nodes))
    radius = dict(zip(nodes, map(float, distances), strict=True))
    corners = _pruned(Axis(branches(edges), radius, frozenset()), _runs_into_corner)
    return _pruned(corners, _halves_an_angle)


def sound_axis(part: Any) -> Axis:
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
    sets = NodeSets()
    for branch in graph:
        sets.join(branch[0], branch[-1])
    return {sets.find(node) for node in degrees(graph)}


class NodeSets:
    """Disjoint sets of nodes."""

    def __init__(self) -> None:
        self._parent: dict[Node, Node] = {}

    def find(self, node: Node) -> Node:
        """Return the node that stands for the set of a node."""
        while (parent := self._parent.get(node, node)) != node:
            node = parent
        return node

    def join(self, a: Node, b: Node) -> bool:
        """Join two sets; return whether they were apart."""
        a, b = self.find(a), self.find(b)
        self._parent[max(a, b)] = min(a, b)
        return a != b


def _voronoi_edges(shapely: Any, area: Any, step: float) -> Iterator[tuple[Node, Node]]:
    """Yield the edges of the diagram whose ends are both inside."""
    sites = shapely.MultiPoint(shapely.get_coordinates(shapely.segmentize(area, step)))
    diagram = shapely.get_parts(shapely.voronoi_polygons(sites, only_edges=True))
    coordinates, owner = shapely.get_coordinates(diagram, return_index=True)
    shapely.prepare(area)
    inside = shapely.contains_xy(area, coordinates)
    points = [(round(float(x), _GRID), round(float(y), _GRID)) for x, y in coordinates]
    for i in range(len(points) - 1):
        if owner[i] == owner[i + 1] and inside[i] and inside[i + 1]:
            yield points[i], points[i + 1]


def branches(edges: Iterable[tuple[Node, Node]], stops: Collection[Node] = ()) -> tuple[Branch, ...]:
    """Join edges into branches between nodes: where other than two edges meet, and at ``stops``."""
    beside: dict[Node, set[Node]] = defaultdict(set)
    for a, b in edges:
        beside[a].add(b)
        beside[b].add(a)
    nodes = sorted(beside)
    ends = {node for node in nodes if len(beside[node]) != 2 or node in stops}
    found: list[Branch] = []
    walked: set[tuple[Node, Node]] = set()
    # Nodes first; what is left then are rings without one, which begin anywhere.
    for start in [*sorted(ends), *nodes]:
        for second in sorted(beside[start]):
            if (start, second) not in walked:
                path = _walk(start, second, beside, ends)
                walked.update(itertools.pairwise(path))
                walked.update(itertools.pairwise(path[::-1]))
                found.append(tuple(path))
    return tuple(found)


def _walk(start: Node, second: Node, beside: Mapping[Node, set[Node]], ends: set[Node]) -> list[Node]:
    path = [start, second]
    while path[-1] not in ends and path[-1] != start:
        (ahead,) = beside[path[-1]] - {path[-2]}
        path.append(ahead)
    return path


def degrees(graph: Iterable[Branch]) -> Counter[Node]:
    """Return how many branch ends meet at each node."""
    return Counter(node for branch in graph for node in (branch[0], branch[-1]))


def direction(path: Branch, reach: float, at: int = 0) -> Point:
    """Return the unit vector in which a path goes on from one of its points, over a length of ``reach``."""
    (x, y), ahead = path[at], path[at]
    for ahead in path[at + 1:]:
        if math.dist(ahead, (x, y)) >= reach:
            break
    return unit((ahead[0] - x, ahead[1] - y))


def turn_between(a: Point, b: Point) -> float:
    """Return by how many degrees a pen turns that comes in along one outward direction and goes out along another."""
    return math.degrees(math.acos(min(1.0, max(-1.0, -(a[0] * b[0] + a[1] * b[1])))))


@dataclass(frozen=True, slots=True)
class _Spur:
    """A branch that ends free, turned to begin at its junction, and the others that leave from there."""

    path: Branch
    others: tuple[Branch, ...]
    at_junction: float
    at_end: float
    reach: float

    @property
    def stands_out(self) -> float:
        """Return by how many radii the branch reaches out of its junction's circle."""
        return (self.reach + self.at_end - self.at_junction) / self.at_junction


def _spurs(axis: Axis) -> Iterator[tuple[Branch, _Spur]]:
    """Yield every branch that ends free, as it is and as a spur."""
    leaving: dict[Node, list[Branch]] = defaultdict(list)
    for branch in axis.branches:
        leaving[branch[0]].append(branch)
        leaving[branch[-1]].append(branch[::-1])
    for branch in axis.branches:
        for path in (branch, branch[::-1]):
            if len(leaving[path[-1]]) == 1 and len(leaving[path[0]]) > 1:
                others = tuple(other for other in leaving[path[0]] if other is not path and other != path)
                yield branch, _Spur(path, others, axis.radius[path[0]], axis.radius[path[-1]], length(path))


def _pruned(axis: Axis, unwanted: Callable[[_Spur], bool]) -> Axis:
    """Take away, once, every spur that is unwanted; join what is left, with an elbow where a corner was."""
    gone: set[Branch] = set()
    elbows = set(axis.elbows)
    for branch, spur in _spurs(axis):
        if unwanted(spur):
            gone.add(branch)
            if spur.reach > _ELBOW * spur.at_junction:
                elbows.add(spur.path[0])
    edges = [edge for branch in axis.branches if branch not in gone for edge in itertools.pairwise(branch)]
    return Axis(branches(edges, elbows), axis.radius, frozenset(elbows))


def _runs_into_corner(spur: _Spur) -> bool:
    """Whether the radius falls as steadily as it does towards a corner, or the branch is only a bump."""
    return spur.at_junction - spur.at_end > _CORNER_SLOPE * spur.reach or spur.stands_out < _BUMP


def _halves_an_angle(spur: _Spur) -> bool:
    """Whether a short branch only fills the point in which two others meet, as at the top of A."""
    if spur.stands_out > _POINT or len(spur.others) != 2:
        return False
    size = spur.at_junction
    way = direction(spur.path[::-1], spur.reach / 2)
    return all(turn_between((-way[0], -way[1]), direction(other, 2 * size)) > STRAIGHT_ON for other in spur.others)
