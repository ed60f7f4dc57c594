"""Dots keep their rhythm along every stroke of every letter, by another reckoning of arc length.

Arc lengths and corners are NumPy's, found on a curve sampled far more finely than ours, and shapely says where the
pencil goes over its own track: no code of ours but the dots that are printed.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
import pytest
import shapely

from namewright.geometry.segments import Segment
from namewright.letters.alphabet import Alphabet
from namewright.letters.strokes import Stroke
from namewright.lines.forms import dots, pens_for
from namewright.lines.ruling import preset
from namewright.lines.setting import RuledLetters

SAMPLES = 400  # to a segment
CORNER = 30.0  # degrees
LEAST = 0.6  # of the pitch: as near as two dots may come
ON_MM = 0.01
# One for each set of proportions and, where a dot is at its least or greatest size, one more.
RULINGS = ("de-6", "au-8", "ch-9", "us-1-1/8", "us-3/8", "fr-2", "fr-3", "uk-6", "uk-4", "es-2.5", "unlined")


def dense(segment: Segment) -> np.ndarray:
    """Return a segment as points, a curve by its Bernstein form."""
    t = np.linspace(0.0, 1.0, SAMPLES)[:, None]
    p = np.array(segment)
    if len(p) == 2:
        return np.asarray(p[0] + (p[1] - p[0]) * t)
    s = 1 - t
    return np.asarray(s**3 * p[0] + 3 * s**2 * t * p[1] + 3 * s * t**2 * p[2] + t**3 * p[3])


@dataclass
class Run:
    """A smooth run of a stroke: points along it, and the way to each."""

    track: np.ndarray
    way: np.ndarray

    def at(self, dot: np.ndarray) -> float | None:
        """Return how far along the run a dot lies, None where it is not on it."""
        apart = np.hypot(*(self.track - dot).T)
        nearest = int(apart.argmin())
        return float(self.way[nearest]) if apart[nearest] < ON_MM + self.way[-1] / SAMPLES else None


def gone_over(strokes: tuple[Stroke, ...]) -> list[Segment]:
    """Return the straight lines that a letter can do without: what is left covers their whole length.

    The shortest is tried first, and of two as long the later one.
    """
    left = [segment for stroke in strokes for segment in stroke.segments]
    shapes = {id(one): shapely.LineString(one if len(one) == 2 else dense(one)) for one in left}
    found = []
    straight = [segment for segment in reversed(left) if len(segment) == 2]
    for segment in sorted(straight, key=lambda one: round(shapes[id(one)].length, 2)):
        near = [shapes[id(one)] for one in left if one is not segment
                and shapes[id(one)].dwithin(shapes[id(segment)], ON_MM)]
        if shapely.union_all([shape.intersection(shapes[id(segment)].buffer(1)) for shape in near]).buffer(
                ON_MM).covers(shapes[id(segment)]):
            found.append(segment)
            left = [one for one in left if one is not segment]
    return found


def runs_of(stroke: Stroke, twice: list[Segment]) -> list[Run]:
    """Return the runs of a stroke: cut at its corners and where the pencil goes over its own track."""
    pieces: list[list[np.ndarray]] = [[]]
    for segment in stroke.segments:
        points = dense(segment)
        if any(segment is line for line in twice):
            pieces.append([])
            continue
        if pieces[-1]:
            before, after = pieces[-1][-1][-1] - pieces[-1][-1][-2], points[1] - points[0]
            cosine = before @ after / np.hypot(*before) / np.hypot(*after)
            if np.degrees(np.arccos(np.clip(cosine, -1, 1))) > CORNER:
                pieces.append([])
        pieces[-1].append(points)
    tracks = [np.vstack(run) for run in pieces if run]
    return [Run(track, np.concatenate([[0.0], np.cumsum(np.hypot(*np.diff(track, axis=0).T))])) for track in tracks]


def grid_of(run: Run, on_it: list[float], pitch: float) -> np.ndarray:
    """Return the even division of a run that most of its dots follow, as ways along it."""
    wished = round(run.way[-1] / pitch)
    grids = [np.linspace(0.0, run.way[-1], count + 1)
             for count in sorted({max(1, wished + by) for by in (-1, 0, 1)}, key=lambda count: abs(count - wished))]
    return max(grids, key=lambda grid: sum(off_grid(at, grid) < 0.01 for at in on_it))


def off_grid(at: float, grid: np.ndarray) -> float:
    """Return how far a place is from the next place of a division, in steps of it."""
    return float(np.abs(grid - at).min() / grid[1])


@pytest.mark.parametrize("name", RULINGS)
def test_the_spacing_along_a_stroke_varies_by_under_one_per_cent(alphabet: Alphabet, name: str) -> None:
    """Over all letters and rulings: every dot divides a run evenly, to 1 % of the step, and no place stays empty.

    Where a place of a run has no dot, another stands nearer than dots may come: there two strokes meet.
    """
    ruling = preset(name)
    pitch = pens_for(ruling).pitch_mm
    ruled = RuledLetters(alphabet, ruling)
    for char in alphabet.glyphs:
        strokes = ruled.line(char).letters[0].letter.strokes
        placed = np.array(dots(strokes, pitch))
        lone = {stroke.start for stroke in strokes if stroke.is_dot}
        twice = gone_over(strokes)
        runs = [run for stroke in strokes if not stroke.is_dot for run in runs_of(stroke, twice)]
        even = {tuple(dot) for dot in placed if tuple(dot) in lone}
        for run in runs:
            ways = {tuple(dot): way for dot in placed if (way := run.at(dot)) is not None}
            grid = grid_of(run, list(ways.values()), pitch)
            error = run.way[-1] / SAMPLES / grid[1]  # half a sample of our own
            even |= {dot for dot, way in ways.items() if off_grid(way, grid) < 0.01 + error}
            for way in grid:
                place = run.track[int(np.abs(run.way - way).argmin())]
                assert np.hypot(*(placed - place).T).min() < LEAST * pitch + 0.01, (char, way)
        assert even == {tuple(dot) for dot in placed}, char
