"""The runs of a letter: its strokes cut at corners, without what is gone over twice, and the anchors of dots on them.

Millimetres, y down. A run is smooth from one corner to the next. A dot has to stand at each free end and corner, where
runs cross or one ends square on another, and at the extremes of bowls, so that o is round: the anchors. ``dots``
divides the way between them.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Iterator, Sequence
from itertools import combinations, pairwise

from namewright.geometry import boxes, distances
from namewright.geometry.boxes import Box
from namewright.geometry.points import Point, between, heading, turn_degrees
from namewright.geometry.polylines import point_at, reaches
from namewright.geometry.segments import (
    CORNER_DEGREES,
    Line,
    Segment,
    corner_degrees,
    flatten,
    length_of,
    smooth_runs,
)
from namewright.letters.strokes import Stroke
from namewright.named_tuples import NamedTuple

ON_RUN = 0.4  # of the pitch: a dot this near to a run serves as one of its own
_INSIDE = 0.3  # of the pitch: a fork nearer to the end of a run is that end
_SQUEEZED = 0.85  # of the pitch: a fork nearer to the end of a run would make a clot with the dot at that end
_CLOSE_DEGREES = 40.0  # runs that part at less go so close side by side that dots at one pitch from the fork would clot
_BOWL_DEGREES = 60.0  # the same for a bowl that leaves a stem
_TOUCH = 1e-6
_COINCIDE_MM = 0.02
_FLAT_MM = 0.01
_BoxedLine = tuple[float, float, float, float, Point, Point]  # a box (see ``Box``) and the ends of the line in it


class Run(NamedTuple):
    """A smooth run as a polyline, how far along it each point lies, the straight share of it, and its box.

    ``lines`` are the lines between its points, each with its own box.
    """

    points: list[Point]
    reach: list[float]
    straightness: float
    box: Box
    lines: list[_BoxedLine]

    @property
    def length(self) -> float:
        """Its length in mm."""
        return self.reach[-1]

    def at(self, way: float) -> Point:
        """Return the point so far along the run."""
        return point_at(self.points, self.reach, way)

    def along(self, ways: Iterable[float]) -> list[Point]:
        """Return the points at ascending ways along the run, found in one walk."""
        found: list[Point] = []
        index, last = 0, len(self.points) - 2
        for way in ways:
            while index < last and self.reach[index + 1] <= way:
                index += 1
            step = self.reach[index + 1] - self.reach[index]
            share = min(1.0, (way - self.reach[index]) / step) if step else 0.0
            found.append(between(self.points[index], self.points[index + 1], share))
        return found

    def heading(self, way: float, onwards: float) -> float:
        """Return the direction from one place of the run to another ``onwards`` along it (or back)."""
        return heading(self.at(way), self.at(min(max(way + onwards, 0.0), self.length)))

    def near(self, point: Point, within: float) -> list[float]:
        """Return the places where the run comes nearest to a point, once for each time it comes so near."""
        found: list[tuple[float, float]] = []
        open_ = False
        left, top, right, bottom = point[0] - within, point[1] - within, point[0] + within, point[1] + within
        x0, y0, x1, y1 = self.box
        if x0 > right or x1 < left or y0 > bottom or y1 < top:
            return []
        for (x0, y0, x1, y1, a, b), start in zip(self.lines, self.reach, strict=False):
            if x0 > right or x1 < left or y0 > bottom or y1 < top:
                open_ = False
                continue
            share = min(max(distances.share_along(point, a, b), 0.0), 1.0)
            away = math.dist(point, (a[0] + share * (b[0] - a[0]), a[1] + share * (b[1] - a[1])))
            if away > within:
                open_ = False
                continue
            here = (away, start + share * math.dist(a, b))
            if not open_:
                found.append(here)
            elif here < found[-1]:
                found[-1] = here
            open_ = True
        return [way for _, way in found]


def runs_of(strokes: Sequence[Stroke]) -> list[Run]:
    """Return the runs of one letter's strokes, those with the most straight way first; a dot has none."""
    return sorted((_run(segments) for stroke in strokes if not stroke.is_dot
                   for segments in unretraced_runs(stroke, strokes)), key=lambda run: run.straightness, reverse=True)


def _run(segments: Sequence[Segment]) -> Run:
    """Return a run; one that closes smoothly, as o does, begins at its top and not where the pencil starts."""
    points = flatten(segments, _FLAT_MM)
    if math.dist(points[0], points[-1]) < _COINCIDE_MM and corner_degrees(segments[-1], segments[0]) < CORNER_DEGREES:
        top = min(range(len(points)), key=lambda at: points[at][1])
        points = [*points[top:], *points[1:top + 1]]
    straight = length_of(segment for segment in segments if isinstance(segment, Line))
    reach = reaches(points)
    lines = [(min(a[0], b[0]), min(a[1], b[1]), max(a[0], b[0]), max(a[1], b[1]), a, b) for a, b in pairwise(points)]
    return Run(points, reach, round(straight / reach[-1], 2), boxes.around(points), lines)


# --- tracks gone over twice -------------------------------------------------------------------------------


def unretraced_runs(stroke: Stroke, strokes: Sequence[Stroke]) -> Iterator[tuple[Segment, ...]]:
    """Yield the smooth runs of a stroke without the lines in which the pencil goes over its own track."""
    tracks = [segment for other in strokes for segment in other.segments if isinstance(segment, Line)]
    for run in smooth_runs(stroke.segments):
        keep: list[Segment] = []
        for segment in run:
            if isinstance(segment, Line) and any(_retraces(segment, track, tracks) for track in tracks):
                if keep:
                    yield tuple(keep)
                keep = []
            else:
                keep.append(segment)
        if keep:
            yield tuple(keep)


def _retraces(line: Line, track: Line, tracks: Sequence[Line]) -> bool:
    """Whether a line lies wholly on a longer one (or on an equal one that came before it)."""
    if line is track:
        return False
    longer = track.length() - line.length()
    earlier = next(i for i, one in enumerate(tracks) if one is track) < next(
        i for i, one in enumerate(tracks) if one is line)
    if longer < -_COINCIDE_MM or (abs(longer) <= _COINCIDE_MM and not earlier):
        return False
    return all(distances.to_segment(point, *track) < _COINCIDE_MM for point in line)


# --- anchors: where a dot has to be -----------------------------------------------------------------------


def anchors(runs: Sequence[Run], pitch: float) -> tuple[list[Point], list[Point]]:
    """Return where dots have to be, the most needed first: free ends and corners, crossings and forks, extremes.

    Apart from them, the forks at which a run leaves another so close by that both cannot have all their dots, or so
    close to the other's end.
    """
    ends = [(run, way) for run in runs for way in (0.0, run.length)]
    forks = [(run, way, other, there) for run, way in ends for other in runs if other is not run
             for there in other.near(run.at(way), ON_RUN * pitch)
             if _INSIDE * pitch < there < other.length - _INSIDE * pitch]
    forking = {(id(run), way) for run, way, _, _ in forks}
    square: list[Point] = []
    close: list[Point] = []
    for run, way, other, there in forks:
        apart = _SQUEEZED * pitch < there < other.length - _SQUEEZED * pitch
        least = _BOWL_DEGREES if other.straightness == 1.0 > run.straightness else _CLOSE_DEGREES
        wide = apart and _parting_degrees(run, way, other, there, pitch) >= least
        (square if wide else close).append(other.at(there))
    free = [run.at(way) for run, way in ends if (id(run), way) not in forking]
    extremes = [point for run in runs for point in _extremes(run)]
    return [*free, *_crossings(runs), *square, *extremes], close


def _parting_degrees(run: Run, way: float, other: Run, there: float, pitch: float) -> float:
    """Return the least angle at which a run that ends on another parts from it, looked at over one pitch."""
    own = run.heading(way, pitch if way == 0 else -pitch)
    return min(abs(turn_degrees(own, other.heading(there, onwards))) for onwards in (pitch, -pitch))


def _crossings(runs: Sequence[Run]) -> Iterator[Point]:
    """Yield where runs cross each other or themselves."""
    for one, other in combinations(runs, 2):
        if boxes.overlap(boxes.grown(one.box, _COINCIDE_MM), other.box):
            for line in one.lines:
                yield from _meetings(line, other.lines)
    for run in runs:
        lines = [] if run.straightness == 1.0 else run.lines
        for at, line in enumerate(lines):
            yield from _meetings(line, lines[at + 2:])


def _meetings(line: _BoxedLine, others: Iterable[_BoxedLine]) -> Iterator[Point]:
    """Yield where a line meets others; only boxes that touch are looked at closely."""
    x0, y0, x1, y1, a, b = line
    near = [(c, d) for u0, v0, u1, v1, c, d in others if u0 <= x1 and x0 <= u1 and v0 <= y1 and y0 <= v1]
    if not near:
        return
    from fontTools.misc.bezierTools import lineLineIntersections

    for c, d in near:
        for found in lineLineIntersections(a, b, c, d):  # of the endless lines
            if -_TOUCH <= found.t1 <= 1 + _TOUCH and -_TOUCH <= found.t2 <= 1 + _TOUCH:
                yield (float(found.pt[0]), float(found.pt[1]))


def _extremes(run: Run) -> Iterator[Point]:
    """Yield the places inside a run where it turns back, up to down or left to right: what makes a bowl round."""
    for a, b, c in zip(run.points, run.points[1:], run.points[2:], strict=False):
        if any((b[axis] - a[axis]) * (c[axis] - b[axis]) < 0 for axis in (0, 1)):
            yield b
