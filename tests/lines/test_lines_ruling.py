"""Rulings: presets found by name, measures of one's own, and refusals in sentences."""

from __future__ import annotations

import pytest

from namewright.lines.ruling import DEFAULT_RULING, PRESETS, GuideLine, custom_ruling, preset, told_of
from namewright.message import Problem
from namewright.wording import wording


def test_presets_are_found_as_people_write_them() -> None:
    """Names are taken in any case, with a unit or without; the default is one of them."""
    assert preset(" DE-6 mm ") is PRESETS["de-6"]
    assert preset("us-3/4 in") is preset("US-3/4")
    assert DEFAULT_RULING in PRESETS


def test_an_unknown_preset_is_told_with_those_there_are() -> None:
    """A ruling that we do not have is refused with the names of the others."""
    with pytest.raises(Problem, match=r"lines\.no_ruling\(.*de-6.*unlined.*xx-1"):
        preset("xx-1")


def test_every_preset_says_what_it_is_like_and_where_it_comes_from() -> None:
    """No preset claims conformity, and each has a source."""
    for name in PRESETS:
        note, source = map(wording("en").say, told_of(name))
        assert note.endswith(".")
        assert source
        assert "conform" not in note.lower()


@pytest.mark.parametrize("height", [3.9, 80.1, -1, 0, float("nan"), float("inf")])
def test_a_line_height_out_of_range_is_refused(height: float) -> None:
    """Only 4 to 80 mm can be ruled, and the sentence says so."""
    with pytest.raises(Problem, match=r"lines\.height\(.*least=4.0, most=80.0"):
        custom_ruling(height)


@pytest.mark.parametrize(("midline", "depth", "gap"), [
    (0.2, 5, 0), (0.9, 5, 0), (0.5, -1, 0), (0.5, 5, -1), (0.5, 99, 0), (float("nan"), 5, 0), (0.5, float("nan"), 0)])
def test_other_measures_out_of_range_are_refused(midline: float, depth: float, gap: float) -> None:
    """A midline, a depth or a gap that cannot be ruled is refused in a sentence."""
    with pytest.raises(Problem, match=r"lines\.(height|midline|descender|gap)"):
        custom_ruling(12, midline=midline, descender_mm=depth, gap_mm=gap)


def test_a_ruling_of_ones_own_has_the_measures_asked_for() -> None:
    """The line height is from base line to top line; the midline is a share of it; the pitch adds up."""
    ruling = custom_ruling(15, midline=0.4, descender_mm=7, gap_mm=3, lines=[GuideLine.BASE])
    assert [ruling.height_of(line) for line in GuideLine] == pytest.approx([15, 6, 0, -7])
    assert ruling.pitch_mm == pytest.approx(25)
    assert ruling.lines == {GuideLine.BASE}
