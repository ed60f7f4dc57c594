"""Where branches of an axis meet: how each leaves its knot, which run on into each other, and where the others end.

y up, 100 units to the x-height. Within a knot the axis bends towards the junction, so each branch is cut where it
leaves the knot and is judged from there on.
"""

from __future__ import annotations

import itertools
import math
from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from namewright.geometry import distances
from namewright.geometry.points import Point, between, heading, turn_degrees, unit
from namewright.geometry.polylines import length
from namewright.geometry.segments import Cubic
from namewright.schoolfont.skeleton import Branch, direction

CUT = 1.15  # of a junction's radius: nearer than this the axis bends towards the junction
_STRAY, _BOW = 1.0, 0.03  # units, and a share of its length, that a straight stroke strays from its chord at most
_SHARES = (1.0, 0.5, 0.25)  # of a branch over which a straight stroke's way is taken, the longest first
_SURE = 1.6  # radii over which it is taken at least
_KEPT = 8  # pieces into which a curve through a knot is cut


@dataclass(frozen=True, slots=True)
class Cut:
    """Where a branch leaves its knot: how many points to drop, the point, and the direction from there on.

    ``bend`` tells by how many degrees a unit of length it goes on turning; ``loose`` is a free end too short to say
    where it comes from.
    """

    at: int
    point: Point
    way: Point
    bend: float = 0.0
    loose: bool = False


def middle_of(path: Branch, *, forwards: bool) -> Cut:
    """Return the cut at the middle of a branch, the same whichever end is asked (where the branch is not turned)."""
    at = len(path) // 2 if forwards else len(path) - 1 - len(path) // 2
    (x0, y0), (x1, y1) = path[0], path[-1]
    return Cut(at, path[at], unit((x1 - x0, y1 - y0)))


def way_of(path: Branch, at: int, radius: float) -> Point:
    """Return the way of a branch from one of its points: over as long a reach as it is straight there."""
    whole = length(path[at:]) - CUT * radius  # at its other end it may bend towards another knot
    for reach in (share * whole for share in _SHARES if share * whole > _SURE * radius):
        ahead = next(to for to in range(at, len(path)) if math.dist(path[to], path[at]) >= reach or to == len(path) - 1)
        if all(distances.to_line(point, path[at], path[ahead]) < min(_STRAY, _BOW * reach) for point in path[at:ahead]):
            return unit((path[ahead][0] - path[at][0], path[ahead][1] - path[at][1]))
    return direction(path, max(3.0, 0.8 * radius), at)


def bend_of(path: Branch, at: int, reach: float) -> float:
    """Return by how many degrees a unit a branch turns from one of its points on, looked at over twice ``reach``."""
    middle = next((to for to in range(at, len(path)) if math.dist(path[to], path[at]) >= reach), None)
    if middle is None:
        return 0.0
    far = next((to for to in range(middle, len(path)) if math.dist(path[to], path[middle]) >= reach), None)
    if far is None:
        return 0.0
    turn = turn_degrees(heading(path[at], path[middle]), heading(path[middle], path[far]))
    return 2 * turn / (math.dist(path[at], path[middle]) + math.dist(path[middle], path[far]))


def turn_less_bend(one: Cut, other: Cut) -> float:
    """Return by how many degrees a pen turns between two branches, less what both would turn as they bend anyway."""
    turn = turn_degrees(math.atan2(-one.way[1], -one.way[0]), math.atan2(other.way[1], other.way[0]))
    bends = (-one.bend, other.bend)
    if any(bend * turn <= 0 for bend in bends):
        return abs(turn)
    reach = 1.5 * max(math.dist(one.point, other.point), 3.0)  # the way between, and some of both, as chords tell ways
    return max(0.0, abs(turn) - min(map(abs, bends)) * reach)


def smooth_way(one: Cut, other: Cut) -> list[Point]:
    """Return points along the curve that leaves one branch as it arrives, and takes up the other as that goes on."""
    arm = math.dist(one.point, other.point) / 3
    pulls = [(cut.point[0] - arm * cut.way[0], cut.point[1] - arm * cut.way[1]) for cut in (one, other)]
    curve = Cubic(one.point, pulls[0], pulls[1], other.point)
    return [one.point, *(part.end for part in curve.cut([at / _KEPT for at in range(1, _KEPT)]))]


def landing(cut: Cut, through: Sequence[Point]) -> Point:
    """Return where a branch that ends on a stroke meets it: the place nearest to its own line."""
    ahead = (cut.point[0] - cut.way[0], cut.point[1] - cut.way[1])
    return min(_closely(through), key=lambda point: (
        round(distances.to_line(point, cut.point, ahead), 1), math.dist(point, cut.point)))


def nearest(point: Point, through: Sequence[Point]) -> Point:
    """Return the point of a way that is nearest to a point."""
    return min(_closely(through), key=lambda there: math.dist(there, point))


def _closely(through: Sequence[Point]) -> Iterator[Point]:
    return (between(a, b, at / 10) for a, b in itertools.pairwise(through) for at in range(11))


def first_beyond(path: Sequence[Point], reach: float) -> int:
    """Return the index of the first point that far along a path, not beyond its middle."""
    return next((at for at, point in enumerate(path)
                 if math.dist(point, path[0]) >= reach or at >= len(path) // 2), 0)


def shorten(path: list[Point], at: int, last: bool, point: Point) -> None:
    """Replace the first (or last) ``at`` points of a path, at least the end itself, by ``point``."""
    if last:
        path[len(path) - max(1, at):] = [point]
    else:
        path[:max(1, at)] = [point]
