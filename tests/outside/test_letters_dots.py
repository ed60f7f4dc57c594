"""The rhythm of a trace, measured on what is printed against the solid letter, by none of our own code for dots.

The path data that go to the page are read by svgpathtools; SciPy's tree finds distances. The pitch may flex by an
eighth from letter to letter, so a letter is good if there is a pitch within that by which all of it is good.
"""

from __future__ import annotations

import re
from functools import cache

import numpy as np
import pytest
from scipy.spatial import cKDTree
from svgpathtools import parse_path

from namewright.letters.alphabet import upright
from namewright.lines.forms import Form, Inker, pens_for
from namewright.lines.ink import DARK, PALE
from namewright.lines.ruling import Ruling, custom_ruling, preset
from namewright.lines.setting import RuledLetters
from namewright.lines.tuned import tuned
from namewright.tuning import Tuning

LETTERS = [char for char in upright().glyphs if char.isalnum()] + list("äéñőǘệữąșḿÅÇŲíģťŽẵĐłďİÆœ")
MIN, BARE, LONG = 0.7, 0.55, 0.2  # pitches: nearest two dots, farthest path from any dot, longest stretch beyond that
HAIR = 0.08  # pitches that anything may be off: three letters of 2,440 in the narrowest settings need more than 0.05
FLEX = (1.0, 0.97, 1.03, 0.94, 1.06, 0.91, 1.09, 0.88, 1.12)
SETTINGS: dict[str, Ruling] = {name: preset(name) for name in (
    "us-3/4", "us-1-1/8", "de-4", "au-8", "ch-9", "uk-5", "es-2.5")}
SETTINGS |= {
    "fr-2": preset("fr-2"), "fr-3": preset("fr-3"), "tall": custom_ruling(40),
    "low midline": custom_ruling(20, midline=0.4),
    "fine dots": tuned(preset("us-3/4"), Tuning(dot_size=0.6, dot_pitch=1.3)),
    "far dots": tuned(preset("us-3/4"), Tuning(dot_size=1.0, dot_pitch=2.6)),
}


@cache
def inker(name: str) -> Inker:
    """Return the ink of a setting."""
    return Inker(SETTINGS[name], pens_for(SETTINGS[name]))


def drawn(name: str, char: str, form: Form, colour: str | None = None) -> list[str]:
    """Return the path data with which a letter is printed, in one colour or in all."""
    line = RuledLetters(upright(), SETTINGS[name]).line(char)
    return [ink.path_data() for ink in inker(name).ink(line, form) if colour in (None, ink.style.colour)]


@cache
def solid(name: str, char: str) -> list[np.ndarray]:
    """Return the strokes of the solid letter as points a fiftieth of a millimetre apart."""
    return [way for data in drawn(name, char, Form.SOLID) for way in ways(data)]


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


def printed(name: str, char: str, form: Form) -> tuple[np.ndarray, list[np.ndarray], list[float]]:
    """Return the dots of a letter as printed, the solid strokes less its thin strokes, and the lengths of those."""
    inks = drawn(name, char, form, DARK)
    spots = {spot for data in inks for spot in dots_in(data)}
    thin = [way for data in inks if not dots_in(data) for way in ways(data)]
    dotted = solid(name, char)
    if thin:
        lines = cKDTree(np.c_[(points := np.concatenate(thin)).real, points.imag])
        dotted = [way[lines.query(np.c_[way.real, way.imag])[0] > 0.05] for way in dotted]
    return np.array(sorted(spots, key=lambda spot: (spot.real, spot.imag))), dotted, [len(one) * 0.02 for one in thin]


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


@pytest.mark.parametrize("form", [Form.DOTTED, Form.WIDE])
@pytest.mark.parametrize("name", SETTINGS)
def test_dots_neither_clot_nor_leave_a_hole(name: str, form: Form) -> None:
    """Of all letters, marks among them, on many rulings and settings, at one pitch and at two."""
    ruling = SETTINGS[name]
    wished = pens_for(ruling).pitch_mm * (2 if form is Form.WIDE else 1)
    bad: dict[str, float] = {}
    for char in LETTERS:
        dots, strokes, _ = printed(name, char, form)
        fault = 9.0
        for flex in FLEX:
            fault = min(fault, faults(dots, strokes, wished * flex))
            if fault <= HAIR:
                break
        else:
            bad[char] = round(float(fault), 2)
    assert not bad


@pytest.mark.parametrize("form", [Form.DOTTED, Form.WIDE])
@pytest.mark.parametrize("name", [name for name in SETTINGS if name != "far dots"])
def test_bowls_have_dots_at_their_extremes(name: str, form: Form) -> None:
    """At the top and bottom of every bowl and at both its sides stands a dot: it is round and touches its lines."""
    if form is Form.WIDE and SETTINGS[name].x_height_mm < 5 * pens_for(SETTINGS[name]).pitch_mm:
        return  # under five pitches at half the number of dots an x-height has hardly more than two steps
    for char in "oOCQ0cdqbpageGSs":
        dots, strokes, _ = printed(name, char, form)
        ink = np.concatenate(strokes)
        for printed_side, side in ((dots.imag.min(), ink.imag.min()), (dots.imag.max(), ink.imag.max()),
                                   (dots.real.min(), ink.real.min()), (dots.real.max(), ink.real.max())):
            assert printed_side == pytest.approx(side, abs=0.03), char


def test_an_e_keeps_its_aperture() -> None:
    """From an x-height of 5 mm on the way from the end of e to the bar is open: wider than two pitches."""
    for name, ruling in SETTINGS.items():
        if ruling.x_height_mm >= 5 and name != "far dots":
            dots, strokes, _ = printed(name, "e", Form.DOTTED)
            end = strokes[0][-1]
            bar = dots[abs(dots.imag - strokes[0][0].imag) < 0.05]
            assert abs(bar - end).min() >= 1.95 * pens_for(ruling).pitch_mm, name


@pytest.mark.parametrize("name", ["us-3/4", "es-2.5", "fr-3"])
def test_short_marks_are_thin_strokes(name: str) -> None:
    """A mark shorter than five pitches is one thin stroke in the trace, not two or three dots."""
    pitch = pens_for(SETTINGS[name]).pitch_mm
    for char, count in (("é", 1), ("ő", 2), ("ñ", 1), ("ö", 0), ("n", 0)):
        _, _, lengths = printed(name, char, Form.DOTTED)
        assert len(lengths) == count, char
        assert all(length < 5 * pitch for length in lengths)


@pytest.mark.parametrize(("name", "joined"), [("es-2.5", True), ("au-8", True), ("us-3/4", False), ("es-5", False)])
def test_small_letters_stand_on_a_pale_line(name: str, joined: bool) -> None:
    """Where an x-height has under four and a half pitches the dots are joined by a thin pale line of 3:1 at least."""
    ruling = preset(name)
    inks = Inker(ruling, pens_for(ruling)).ink(RuledLetters(upright(), ruling).line("ae"), Form.DOTTED)
    lines = [ink for ink in inks if ink.style.colour == PALE]
    assert bool(lines) == joined == (ruling.x_height_mm < 4.5 * pens_for(ruling).pitch_mm)
    assert all(ink.style.width_mm < pens_for(ruling).dot_mm for ink in lines)
    value = int(PALE[1:3], 16) / 255
    assert 1.05 / (((value + 0.055) / 1.055)**2.4 + 0.05) >= 3.0  # relative luminance of a grey: WCAG 2.2
