"""The rhythm of a trace, measured on what is printed against the solid letter, by none of our own code for dots.

The path data that go to the page are read by svgpathtools; SciPy's tree finds distances. The pitch may flex by an
eighth from letter to letter, so a letter is good if there is a pitch within that by which all of it is good.
"""

from __future__ import annotations

from functools import cache

import numpy as np
import pytest
from scipy.spatial import cKDTree

from longer import rest_long
from namewright.letters.alphabet import upright
from namewright.lines.forms import Form, Inker, pens_for
from namewright.lines.ink import DARK, PALE
from namewright.lines.ruling import PRESETS, Ruling, custom_ruling, preset
from namewright.lines.setting import RuledLetters
from namewright.lines.tuned import tuned
from namewright.tuning import Tuning
from rhythm import dots_in, fault_at_best, ways

LETTERS = [char for char in upright().glyphs if char.isalnum()] + list("äéñőǘệữąșḿÅÇŲíģťŽẵĐłďİÆœ")
HAIR = 0.08  # pitches that anything may be off: three letters of 2,440 in the narrowest settings need more than 0.05
SETTINGS: dict[str, Ruling] = {name: preset(name) for name in ("us-3/4", "fr-2")}
SETTINGS |= {
    "low midline": custom_ruling(20, midline=0.4),
    "fine dots": tuned(preset("us-3/4"), Tuning(dot_size=0.6, dot_pitch=1.3)),
    "far dots": tuned(preset("us-3/4"), Tuning(dot_size=1.0, dot_pitch=2.6)),
    "tall": custom_ruling(40),
}
EVERY = rest_long(dict.fromkeys((*SETTINGS, *PRESETS)), 4)
SETTINGS |= PRESETS


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


@pytest.mark.parametrize("form", [Form.DOTTED, Form.WIDE])
@pytest.mark.parametrize("name", EVERY)
def test_dots_neither_clot_nor_leave_a_hole(name: str, form: Form) -> None:
    """Of all letters, marks among them, on every ruling and in settings of all kinds, at one pitch and at two."""
    ruling = SETTINGS[name]
    wished = pens_for(ruling).pitch_mm * (2 if form is Form.WIDE else 1)
    bad: dict[str, float] = {}
    for char in LETTERS:
        dots, strokes, _ = printed(name, char, form)
        fault = fault_at_best(dots, strokes, wished, HAIR)
        if fault > HAIR:
            bad[char] = round(float(fault), 2)
    assert not bad


@pytest.mark.parametrize("form", [Form.DOTTED, Form.WIDE])
@pytest.mark.parametrize("name", [one for one in EVERY if one != "far dots"])
def test_bowls_have_dots_at_their_extremes(name: str, form: Form) -> None:
    """At the top and bottom of every bowl and at both its sides stands a dot: it is round and touches its lines."""
    if form is Form.WIDE and SETTINGS[name].x_height_mm < 5 * pens_for(SETTINGS[name]).pitch_mm:
        return  # under five pitches at half the number of dots an x-height has hardly more than two steps
    for char in "oOCQ0cdqbpageGSs":
        dots, strokes, _ = printed(name, char, form)
        ink = np.concatenate(strokes)
        if char == "q":  # without the flick behind its stem, which may be so short that its dot is that of the corner
            dots, ink = dots[dots.imag <= 0.01], ink[ink.imag <= 0.01]
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
    for char, count in (("é", 1), ("ő", 2), ("ñ", 1), ("’", 1), ("“", 2), ("ö", 0), ("n", 0)):
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
