"""The rhythm of printed dots, by none of our own code: svgpathtools reads the paths, SciPy's tree finds distances."""

from __future__ import annotations

import re

import numpy as np
from scipy.spatial import cKDTree
from svgpathtools import parse_path

MIN, BARE, LONG = 0.7, 0.55, 0.2  # pitches: nearest two dots, farthest path from any dot, longest stretch beyond that
FLEX = (1.0, 0.97, 1.03, 0.94, 1.06, 0.91, 1.09, 0.88, 1.12)  # what a letter's pitch may take


def ways(data: str) -> list[np.ndarray]:
    """Return the lines and curves of path data, dots left out, as svgpathtools reads them."""
    moves_only = re.sub(r"([mM][^a-zA-Z]*)h0(?![.\d])", r"\1", data)
    return [sampled(part) for part in parse_path(moves_only).continuous_subpaths()
            if len(part) > 1 or (len(part) and abs(part.start - part.end) > 1e-9)]


def dots_in(data: str) -> list[complex]:
    """Return where dots are printed: lines of no length, ``h0``, behind a move to their place."""
    spots, pen = [], 0j
    for letter, numbers, dot in re.findall(r"([mM])([^a-zA-Z]*)(h0(?![.\d]))?", data):
        x, y = (float(number) for number in re.findall(r"-?\d*\.?\d+", numbers))
        pen = complex(x, y) if letter == "M" else pen + complex(x, y)
        spots += [complex(round(pen.real, 3), round(pen.imag, 3))] if dot else []
    return spots


def sampled(part: object) -> np.ndarray:
    """Return points of a path a fiftieth of a millimetre apart."""
    points = np.concatenate([segment.poly()(np.linspace(0, 1, 40)) for segment in part])  # type: ignore[attr-defined]
    way = np.r_[0, np.cumsum(abs(np.diff(points)))]
    at = np.linspace(0, way[-1], max(2, round(way[-1] / 0.02)))
    return np.asarray(np.interp(at, way, points.real) + 1j * np.interp(at, way, points.imag))


def faults(dots: np.ndarray, strokes: list[np.ndarray], pitch: float) -> float:
    """Return by how many pitches a letter is worse than it may be: dots too near, or a path too long too bare.

    The dots of i and ä stand where the letter has them: they are no part of the rhythm, but serve a path they are near.
    """
    tree = cKDTree(np.c_[dots.real, dots.imag])
    paths = np.concatenate(strokes)
    on = dots[cKDTree(np.c_[paths.real, paths.imag]).query(tree.data)[0] < 0.05]
    worst = 0.0
    if len(on) > 1:
        near = cKDTree(np.c_[on.real, on.imag])
        worst = max(0.0, MIN - near.query(near.data, k=2)[0][:, 1].min() / pitch)
    for stroke in filter(len, strokes):
        bare = tree.query(np.c_[stroke.real, stroke.imag])[0] > BARE * pitch
        edges = np.flatnonzero(np.diff(np.r_[0, bare.astype(int), 0]))
        stretch = max((edges[1::2] - edges[::2]), default=0) * 0.02 / pitch
        worst = max(worst, stretch - LONG)
    return worst


def fault_at_best(dots: np.ndarray, strokes: list[np.ndarray], wished: float, enough: float = 0.0) -> float:
    """Return ``faults`` at the pitch that suits a letter best, an eighth more or less; the first ``enough`` will do."""
    found = 9.0
    for flex in FLEX:
        found = min(found, faults(dots, strokes, wished * flex))
        if found <= enough:
            break
    return found
