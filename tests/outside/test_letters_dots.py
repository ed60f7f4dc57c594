"""Dots keep their rhythm along every stroke of every letter, by another reckoning of arc length.

Arc lengths are NumPy's, summed over a curve sampled far more finely than ours: no code of ours but the dots.
"""

from __future__ import annotations

import numpy as np
import pytest

from namewright.letters.alphabet import Alphabet
from namewright.letters.strokes import Segment
from namewright.lines import forms
from namewright.lines.forms import pens_for
from namewright.lines.ruling import preset
from namewright.lines.setting import Typecase

SAMPLES = 4000


def dense(run: tuple[Segment, ...]) -> np.ndarray:
    """Return a run of segments as points, each segment by the Bernstein form of its curve."""
    t = np.linspace(0.0, 1.0, SAMPLES)[:, None]
    pieces = []
    for segment in run:
        p = np.array(segment)
        if len(p) == 2:
            pieces.append(p[0] + (p[1] - p[0]) * t)
        else:
            s = 1 - t
            pieces.append(s**3 * p[0] + 3 * s**2 * t * p[1] + 3 * s * t**2 * p[2] + t**3 * p[3])
    return np.vstack(pieces)


@pytest.mark.parametrize("name", ["us-1-1/8", "de-4", "fr-3", "uk-5"])
def test_the_spacing_along_a_stroke_varies_by_under_one_per_cent(alphabet: Alphabet, name: str) -> None:
    """Over all glyphs: the way along the stroke from dot to dot is the same to 1 %, dots given up to others apart."""
    ruling = preset(name)
    pitch = pens_for(ruling).pitch_mm
    case = Typecase(alphabet, ruling)
    for char in alphabet.glyphs:
        letter = case.line(char).letters[0].letter
        strokes = [stroke for stroke in letter.strokes if not stroke.is_dot]
        for stroke in strokes:
            for run in forms._unretraced_runs(stroke, (stroke,)):
                track = dense(run)
                way = np.concatenate([[0.0], np.cumsum(np.hypot(*np.diff(track, axis=0).T))])
                if way[-1] < 2 * pitch:
                    continue
                count = max(1, round(way[-1] / pitch))
                points = forms.evenly(forms.flatten(run, forms._FLAT_MM), count)
                at = [way[np.argmin(np.hypot(*(track - point).T))] for point in points[1:-1]]
                steps = np.diff([0.0, *at, way[-1]])
                assert np.ptp(steps) / steps.mean() < 0.02, (char, steps)  # ± 1 % about the mean
                assert np.hypot(*(track[0] - points[0])) < 1e-6
                assert np.hypot(*(track[-1] - points[-1])) < 1e-6
