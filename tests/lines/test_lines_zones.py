"""Zones, not scale: on any ruling a letter reaches exactly the lines it should, and curves stay smooth."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from namewright.geometry import boxes
from namewright.geometry.segments import corner_degrees
from namewright.letters.alphabet import Glyph, Letter, upright
from namewright.lines.ruling import PRESETS, GuideLine, Ruling, custom_ruling, preset
from namewright.lines.setting import ink_letter

GLYPHS = upright().glyphs
CUSTOM = st.builds(lambda height, midline, depth: custom_ruling(height, midline=midline, descender_mm=depth),
                   st.floats(4, 80), st.floats(0.3, 0.8), st.floats(0.5, 40))
UNEQUAL = custom_ruling(13.0, midline=5 / 13, descender_mm=5.0)  # 8/5/5 mm


def lines_reached(glyph: Glyph) -> dict[str, float]:
    """Return which of top and bottom of a glyph are on one of the four lines, in letter units."""
    _, low, _, high = boxes.joined(stroke.bounds() for stroke in glyph.strokes)
    return {end: value for end, value in (("top", high), ("bottom", low))
            if min(abs(value - line) for line in (200, 100, 0, -100)) < 0.01}


def where(ruling: Ruling, units: float, glyph: Glyph) -> float:
    """Return the height in mm of a line, told from the ruling's own zones and nothing else."""
    if round(units) == 200 and glyph.short and ruling.short_mm is not None:
        return ruling.x_height_mm + ruling.short_mm
    if round(units) == 100 and glyph.one_piece:
        return ruling.line_height_mm / 2
    return {200: ruling.x_height_mm + ruling.ascender_mm, 100: ruling.x_height_mm, 0: 0.0,
            -100: -ruling.descender_mm}[round(units)]


def assert_on_its_lines(char: str, ruling: Ruling) -> None:
    glyph = GLYPHS[char]
    _, top, _, bottom = ink_letter(Letter(char, glyph), ruling).bounds
    reached = lines_reached(glyph)
    for end, value in (("top", -top), ("bottom", -bottom)):
        if end in reached:
            assert value == pytest.approx(where(ruling, reached[end], glyph), abs=0.01), (char, end)


def test_letters_reach_lines_at_all() -> None:
    """Every small and capital letter and every figure begins and ends on a line, at top and at bottom."""
    letters = [char for char in GLYPHS if char.isalnum() and char not in "ʻʼ"]
    assert [char for char in letters if len(lines_reached(GLYPHS[char])) < 2] == ["ø", "Ø"]  # bars pass both lines


@pytest.mark.parametrize("ruling", PRESETS)
def test_letters_stand_on_the_lines_of_every_preset(ruling: str) -> None:
    """What is on a line in the alphabet is on that line on paper, to a hundredth of a millimetre."""
    for char in GLYPHS:
        assert_on_its_lines(char, preset(ruling))


@given(st.sampled_from(sorted(GLYPHS)), CUSTOM)
def test_letters_stand_on_the_lines_of_any_ruling(char: str, ruling: Ruling) -> None:
    """The same on any ruling a specialist may ask for."""
    assert_on_its_lines(char, ruling)


@pytest.mark.parametrize("ruling", [UNEQUAL, preset("fr-2"), preset("fr-3"), preset("uk-4"), preset("us-3/4")],
                         ids=lambda ruling: ruling.name)
def test_smooth_joins_stay_smooth(ruling: Ruling) -> None:
    """Where a stroke passes from curve to curve without a turn, it does so on unequal zones too (less than 6°)."""
    for char, glyph in GLYPHS.items():
        ink = ink_letter(Letter(char, glyph), ruling)
        for drawn, made in zip(glyph.strokes, ink.strokes, strict=True):
            for at in range(1, len(drawn.segments)):
                if corner_degrees(*drawn.segments[at - 1:at + 1]) < 2:
                    assert corner_degrees(*made.segments[at - 1:at + 1]) < 6, (char, at)


@pytest.mark.parametrize("ruling", [UNEQUAL, preset("fr-2"), preset("uk-4")], ids=lambda ruling: ruling.name)
def test_the_tail_of_y_is_one_straight_line(ruling: Ruling) -> None:
    """The slanting stroke of y runs on below the base line without a bend."""
    stroke = ink_letter(upright().letter("y"), ruling).strokes[1]
    assert corner_degrees(*stroke.segments) < 0.5


def test_marks_keep_their_shape() -> None:
    """A mark is never stretched: its box is the same on equal and on unequal zones of one x-height."""
    tall, equal = custom_ruling(13.0, midline=5 / 13), custom_ruling(10.0)
    for char in ("é", "ñ", "Å", "ǘ", "ç"):
        count = len(upright().letter(char).marks)
        for one, other in zip(ink_letter(upright().letter(char), tall).strokes[-count:],
                              ink_letter(upright().letter(char), equal).strokes[-count:], strict=True):
            a, b = one.bounds(), other.bounds()
            assert (a[2] - a[0], a[3] - a[1]) == pytest.approx((b[2] - b[0], b[3] - b[1]), abs=1e-9)


@pytest.mark.parametrize("char", "EFHBPRYŒĐÐĦÉŘÝ")
def test_a_bar_lies_on_the_midline(char: str) -> None:
    """On every ruling whose midline is printed near the middle, a capital's bar or fork lies exactly on it."""
    seen = 0
    for ruling in PRESETS.values():
        middle = ruling.x_height_mm / ruling.line_height_mm
        strokes = ink_letter(upright().letter(char), ruling).strokes
        heights = {-round(end[1], 6) for stroke in strokes for segment in stroke.segments
                   for end in (segment.start, segment.end)}
        on_it = round(ruling.x_height_mm, 6) in heights
        if GuideLine.MID in ruling.lines and 0.45 <= middle <= 0.55:
            assert on_it, ruling.name
            seen += 1
        elif abs(middle - 0.5) > 0.1:
            assert not on_it, ruling.name  # there a capital keeps its own proportions
        assert max(heights) >= round(ruling.line_height_mm, 6)
    assert seen >= 15


def test_a_bar_keeps_its_place_on_plain_paper() -> None:
    """Without a printed midline the bar of E stands a little over the middle, as the eye likes it."""
    strokes = ink_letter(upright().letter("E"), preset("unlined")).strokes
    assert -strokes[2].start[1] == pytest.approx(1.04 * 12)
