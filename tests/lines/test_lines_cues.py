"""Stroke cues: a start dot for every stroke, numbers and arrows only where they are free."""

from __future__ import annotations

import math

import numpy as np
import pytest

from namewright.letters.alphabet import Alphabet
from namewright.letters.strokes import evenly, flatten
from namewright.lines.cues import CueMaker
from namewright.lines.forms import pens_for
from namewright.lines.ruling import Line, preset
from namewright.lines.setting import PENCIL_MM, Typecase, pen_width_mm

PLAIN = "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZéñŠ"


@pytest.mark.parametrize("name", ["us-3/4", "de-6", "us-1"])
def test_cues_are_where_they_may_be(alphabet: Alphabet, name: str) -> None:
    """Every stroke has its start dot; a number touches neither a stroke nor a printed line nor another number."""
    ruling = preset(name)
    side = (PENCIL_MM + pen_width_mm(ruling)) / 2 + 0.2 * ruling.x_height_mm
    maker = CueMaker(alphabet, ruling, pens_for(ruling), side)
    case = Typecase(alphabet, ruling)
    numbered = strokes = 0
    for char in PLAIN:
        letter = case.line(char).letters[0].letter
        cues = maker.cues(letter)
        assert cues.starts == tuple(stroke.start for stroke in letter.strokes)
        tracks = np.array([point for stroke in letter.strokes for point in evenly(flatten(stroke.segments, 0.01), 200)])
        for count, (x, y) in cues.numbers:
            assert 1 <= count <= len(letter.strokes)
            half = maker.number_mm / 2
            away = np.maximum(np.abs(tracks - (x, y)) - (0.6 * half, half), 0)
            assert np.hypot(*away.T).min() >= pen_width_mm(ruling) / 2, char
            for line in ruling.lines & set(Line):
                assert abs(y + ruling.height_of(line)) > half, char
        centres = [at for _, at in cues.numbers]
        assert all(math.dist(a, b) > 0.9 * maker.number_mm for i, a in enumerate(centres) for b in centres[:i]), char
        numbered, strokes = numbered + len(cues.numbers), strokes + len(letter.strokes)
    assert numbered >= 0.85 * strokes


def test_an_arrow_points_the_way_the_pencil_goes(alphabet: Alphabet) -> None:
    """The arrow beside a stem points down, the one beside a bar to the right."""
    ruling = preset("us-1")
    maker = CueMaker(alphabet, ruling, pens_for(ruling), 4.0)
    case = Typecase(alphabet, ruling)
    (stem,) = maker.cues(case.line("l").letters[0].letter).arrows
    assert stem[1][1] > stem[0][1] + 1
    _, bar = maker.cues(case.line("T").letters[0].letter).arrows
    assert bar[1][0] > bar[0][0] + 1


@pytest.mark.parametrize("height", [8.0, 12.0, 19.05, 28.6, 40.0, 60.0])
def test_no_cue_hides_anything(alphabet: Alphabet, height: float) -> None:
    """Over all glyphs and the kinds of ruling: a number or an arrow touches no stroke and no other cue, and no
    number stands on a printed line.
    """
    for name in ("us-3/4", "de-5", "fr-3", "uk-5"):
        ruling = preset(name).scaled_to(height)
        pen = pen_width_mm(ruling)
        maker = CueMaker(alphabet, ruling, pens_for(ruling), (PENCIL_MM + pen) / 2 + 0.2 * ruling.x_height_mm)
        case = Typecase(alphabet, ruling)
        for char in alphabet.glyphs:
            letter = case.line(char).letters[0].letter
            cues = maker.cues(letter)
            tracks = np.array([p for stroke in letter.strokes for p in evenly(flatten(stroke.segments, 0.01), 300)])
            boxes = [(x - 0.3 * maker.number_mm, y - 0.5 * maker.number_mm, x + 0.3 * maker.number_mm,
                      y + 0.5 * maker.number_mm) for _, (x, y) in cues.numbers]
            shafts = [np.array(evenly(list(arrow[:2]), 30) + evenly(list(arrow[2:]), 10)) for arrow in cues.arrows]
            for box in boxes:
                assert _outside(tracks, box) >= pen / 2, (name, char)
                for line in ruling.lines:
                    assert not box[1] < -ruling.height_of(line) < box[3], (name, char)
            for count, shaft in enumerate(shafts):
                apart = np.hypot(*(tracks[:, None, :] - shaft[None, :, :]).transpose(2, 0, 1)).min()
                assert apart >= pen / 2, (name, char)
                assert all(_outside(shaft, box) > 0 for box in boxes), (name, char)
                for other in shafts[:count]:
                    away = np.hypot(*(other[:, None, :] - shaft[None, :, :]).transpose(2, 0, 1)).min()
                    assert away > 0.1, (name, char)


def _outside(points: np.ndarray, box: tuple[float, float, float, float]) -> float:
    """Return how far the nearest of the points is from a box, 0 where one is inside."""
    low, high = np.array(box[:2]), np.array(box[2:])
    return float(np.hypot(*np.maximum(np.maximum(low - points, points - high), 0).T).min())
