"""A name set on a ruling: widths, gaps, and fit that never lies."""

from __future__ import annotations

from itertools import pairwise

import numpy as np
import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from namewright.geometry.polylines import evenly
from namewright.geometry.segments import flatten
from namewright.letters.alphabet import MissingLetters, upright
from namewright.lines.fit import DoesNotFit, Fit, fit_name
from namewright.lines.ruling import Ruling, custom_ruling, preset
from namewright.lines.setting import PENCIL_MM, InkLetter, RuledLetters, SetLine, pen_width_mm

LETTERS = "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZéñøßłġưệÅÓŞ"
WORDS = st.text(LETTERS, min_size=1, max_size=10)
NAMES = st.lists(WORDS, min_size=1, max_size=3).flatmap(
    lambda words: st.sampled_from([" ".join(words), "-".join(words)]))
RULED = {name: RuledLetters(upright(), preset(name)) for name in ("us-3/4", "de-4", "fr-2", "uk-4", "es-2.5", "au-24")}
SPACING_MM = 0.15  # how finely strokes are sampled below


@given(WORDS, st.sampled_from(LETTERS), st.sampled_from(sorted(RULED)))
def test_a_longer_name_is_never_narrower(name: str, letter: str, ruling: str) -> None:
    """A letter more, at either end, takes more room."""
    ruled = RULED[ruling]
    width = ruled.line(name).width_mm
    assert ruled.line(name + letter).width_mm > width
    assert ruled.line(letter + name).width_mm > width


@given(NAMES, st.sampled_from(sorted(RULED)))
def test_tighter_is_never_wider(name: str, ruling: str) -> None:
    """Tightness takes white away and never adds any; letter spacing adds just what it says."""
    ruled = RULED[ruling]
    natural, half, tight = (ruled.line(name, tightness=tightness).width_mm for tightness in (0.0, 0.5, 1.0))
    assert natural >= half >= tight
    wide = RuledLetters(upright(), preset(ruling), letter_spacing_mm=3.0).line(name)
    gaps = len(wide.letters) - 1
    assert wide.width_mm == pytest.approx(natural + 3.0 * gaps, abs=1e-6)


@given(NAMES, st.floats(8, 24), st.floats(1.0, 1.7))
def test_widths_scale_with_the_ruling(name: str, height: float, factor: float) -> None:
    """A name on a ruling twice as high is twice as wide, the pencil's own width left out of it.

    From 3.7 to 21.8 mm of x-height, where the pen keeps its share of the x-height.
    """
    small, large = custom_ruling(height), custom_ruling(height * factor)
    widths = [RuledLetters(upright(), ruling, pencil_mm=0.0).line(name).width_mm for ruling in (small, large)]
    assert widths[1] == pytest.approx(factor * widths[0], rel=1e-9)


@given(NAMES, st.sampled_from(["us-3/4", "de-6", "au-24", "ch-9"]))
def test_a_name_starts_at_zero(name: str, ruling: str) -> None:
    """The leftmost centreline of the first letter stands at x 0, unless a later mark reaches over it."""
    line = RuledLetters(upright(), preset(ruling)).line(name)
    assert line.letters[0].x + line.letters[0].letter.bounds[0] == pytest.approx(0, abs=1e-9)


def track(letter: InkLetter, x: float) -> np.ndarray:
    """Return points along all strokes of a letter set at ``x``, no further apart than SPACING_MM."""
    points = []
    for stroke in letter.strokes:
        count = max(1, int(stroke.length() / SPACING_MM) + 1)
        points += [(px + x, py) for px, py in evenly(flatten(stroke.segments, 0.01), count)]
    return np.array(points)


def least_gap(line: SetLine) -> float:
    """Return the least distance between the centrelines of neighbours, by looking at every pair of points."""
    tracks = [track(item.letter, item.x) for item in line.letters]
    return min(float(np.sqrt(((a[:, None] - b[None, :]) ** 2).sum(axis=2)).min())
               for a, b in pairwise(tracks))


@given(st.text(LETTERS + "’-", min_size=2, max_size=6), st.sampled_from(sorted(RULED)), st.sampled_from([0.0, 1.0]))
def test_a_pencil_passes_between_any_two_letters(name: str, ruling: str, tightness: float) -> None:
    """Neighbours stay a pencil and a pen apart, centreline to centreline, however tight the setting."""
    line = RULED[ruling].line(name, tightness=tightness)
    assert least_gap(line) >= PENCIL_MM + pen_width_mm(preset(ruling)) - SPACING_MM


@pytest.mark.parametrize("ruling", sorted(RULED))
def test_a_pencil_passes_between_every_pair(ruling: str) -> None:
    """The same for every pair of plain letters, set as tight as we ever set them.

    Regression: gy, jy and qy came too near on rulings whose tail zone is deeper than the x-height.
    """
    letters = "abcdefghijklmnopqrstuvwxyzAFKLPRTVWY"
    need = PENCIL_MM + pen_width_mm(preset(ruling)) - SPACING_MM
    ruled = RULED[ruling]
    tracks = {letter: track(ruled.line(letter).letters[0].letter, 0.0) for letter in letters}
    short = {}
    for left in letters:
        for right in letters:
            one, two = ruled.line(left + right, tightness=1.0).letters
            a, b = tracks[left] + (one.x, 0), tracks[right] + (two.x, 0)
            gap = float(np.sqrt(((a[::2, None] - b[None, ::2]) ** 2).sum(axis=2)).min())
            if gap < need - SPACING_MM:
                short[left + right] = round(gap, 2)
    assert short == {}


def fitted(name: str, ruled: RuledLetters, rooms: list[float]) -> Fit | DoesNotFit:
    """Return the fit, or the refusal itself."""
    try:
        return fit_name(name, ruled, rooms)
    except DoesNotFit as refusal:
        return refusal


@given(NAMES, st.sampled_from(sorted(RULED)), st.lists(st.floats(30, 280), min_size=1, max_size=2).map(sorted))
def test_fit_keeps_ruling_and_name(name: str, ruling: str, rooms: list[float]) -> None:
    """A name that fits keeps its line height and every letter; one that does not is told with both widths."""
    ruled = RULED[ruling]
    fit = fitted(name, ruled, rooms)
    if isinstance(fit, DoesNotFit):
        assert fit.needed_mm > fit.room_mm == max(rooms)
        assert fit.name == name
    else:
        assert all(line.ruling is ruled.ruling for line in fit.lines)
        assert fit.width_mm <= rooms[-1 if fit.turned else 0]
        texts = [line.text for line in fit.lines]
        assert name in (" ".join(texts), "".join(texts))  # broken at a space, or within a word
        assert "".join(item.letter.cluster for line in fit.lines for item in line.letters) == name.replace(" ", "")


@given(NAMES, st.sampled_from(sorted(RULED)), st.floats(30, 280))
def test_a_name_is_not_broken_without_need(name: str, ruling: str, room: float) -> None:
    """What fits in one row, loosely or tightly, stands in one row; what fits as the page lies is not turned."""
    ruled = RULED[ruling]
    assume(ruled.line(name, tightness=1.0).width_mm <= room)
    fit = fit_name(name, ruled, (room, room + 60))
    assert len(fit.lines) == 1
    assert not fit.turned


@pytest.mark.parametrize("name", ["", "   ", " "])
def test_nothing_to_set_is_told(name: str) -> None:
    """A text without a letter is refused in a sentence."""
    with pytest.raises(ValueError, match="no letter"):
        RULED["de-4"].line(name)


def test_a_lone_mark_is_not_a_letter() -> None:
    """A combining mark with no letter under it is named, not drawn in the air."""
    with pytest.raises(MissingLetters, match="U\\+0301"):
        RULED["de-4"].line("\u0301a")


def _same_proportions(ruling: Ruling) -> tuple[float, float]:
    return ruling.ascender_mm / ruling.x_height_mm, ruling.descender_mm / ruling.x_height_mm


@given(st.sampled_from(["us-3/4", "fr-2", "uk-5", "de-4"]), st.floats(4, 80))
def test_a_scaled_ruling_keeps_its_proportions(name: str, height: float) -> None:
    """A preset set to another line height has just that height and the proportions it had."""
    usual, scaled = preset(name), preset(name).scaled_to(height)
    factor = height / usual.line_height_mm
    assert scaled.line_height_mm == pytest.approx(height)
    assert _same_proportions(scaled) == pytest.approx(_same_proportions(usual))
    assert (scaled.gap_mm, scaled.short_mm or 0.0) == pytest.approx((factor * usual.gap_mm,
                                                                    factor * (usual.short_mm or 0.0)))
    assert scaled.bands_mm == pytest.approx([factor * band for band in usual.bands_mm])


@pytest.mark.parametrize("ruling", sorted(RULED))
@pytest.mark.parametrize("name", ["ẤỘ", "Ẹ̀ḿ", "Ǘű", "ậṩ", "Peggy", "vona"])
def test_rise_and_drop_are_those_of_the_ink(ruling: str, name: str) -> None:
    """A line says how far its pen reaches up, down and across; pages keep rows apart by it."""
    line = RULED[ruling].line(name)
    points = np.vstack([track(one.letter, one.x) for one in line.letters])
    half = pen_width_mm(preset(ruling)) / 2
    assert line.rise_mm == pytest.approx(half - points[:, 1].min(), abs=SPACING_MM)
    assert line.drop_mm == pytest.approx(half + points[:, 1].max(), abs=SPACING_MM)
    assert line.width_mm == pytest.approx(2 * half + np.ptp(points[:, 0]), abs=SPACING_MM)


@pytest.mark.parametrize("ruling", sorted(RULED))
def test_marks_that_stack_keep_apart_on_paper(ruling: str) -> None:
    """Two marks on one letter stand so far apart on any ruling that the pen leaves white between them."""
    for cluster in ("ế", "ặ", "ộ", "ẹ́", "ǘ", "ṩ", "Ế", "Ặ", "ọ̀"):
        letter = RULED[ruling].line(cluster).letters[0].letter
        base = len(upright().letter(cluster).base.strokes)
        marks = upright().letter(cluster).marks
        parts, at = [], base
        for mark in marks:
            strokes = letter.strokes[at:at + len(mark.glyph.strokes)]
            parts.append(track(InkLetter("", strokes, letter.bounds), 0.0))
            at += len(strokes)
        parts.append(track(InkLetter("", letter.strokes[:base], letter.bounds), 0.0))
        for one, other in ((0, 1), (0, 2), (1, 2)):
            apart = np.sqrt(((parts[one][:, None] - parts[other][None]) ** 2).sum(axis=2)).min()
            assert apart > pen_width_mm(preset(ruling)), (cluster, one, other)


@pytest.mark.parametrize("slant", [8.0, 15.0])
@pytest.mark.parametrize("ruling", ["us-3/4", "de-4", "es-2.5"])
def test_a_pencil_passes_between_slanted_letters(ruling: str, slant: float) -> None:
    """Leaning brings two parallel stems nearer to each other; the gap allows for it."""
    ruled = RuledLetters(upright(), preset(ruling), slant=slant)
    for pair in ("ll", "nn", "HH", "dh", "ij", "ru", "LT"):
        assert least_gap(ruled.line(pair, tightness=1.0)) >= PENCIL_MM + pen_width_mm(preset(ruling)) - SPACING_MM, pair


@pytest.mark.parametrize("ruling", sorted(RULED))
def test_words_stand_wider_apart_than_letters(ruling: str) -> None:
    """Between two words there is a clear space, about as wide as a letter, however their letters look."""
    ruled, x_height = RULED[ruling], preset(ruling).x_height_mm
    for left, right in (("a", "M"), ("L", "T"), ("y", "j"), ("n", "jo"), ("o", "A")):
        gap = gap_above(ruled.line(f"{left} {right}"), len(left))
        assert 0.8 * x_height < gap < 1.8 * x_height + PENCIL_MM, (left, right)
        assert gap > 1.3 * gap_above(ruled.line(left + right), len(left)), (left, right)


def gap_above(line: SetLine, at: int) -> float:
    """Return the white, in mm, between the letters before and after a place, over the base line: tails hang freely."""
    sides = [np.vstack([track(one.letter, one.x) for one in part]) for part in (line.letters[:at], line.letters[at:])]
    before, after = (side[side[:, 1] <= 0] for side in sides)
    return float(after[:, 0].min() - before[:, 0].max())


@pytest.mark.parametrize("ruling", sorted(RULED))
def test_a_name_with_room_is_set_as_it_is(ruling: str) -> None:
    """Nothing is set tighter while its natural width fits; just below that it is, and only as far as it must."""
    ruled = RULED[ruling]
    natural, half = (ruled.line("Anneliese", tightness=tightness) for tightness in (0.0, 0.5))
    assert fit_name("Anneliese", ruled, [natural.width_mm]).lines == (natural,)
    assert fit_name("Anneliese", ruled, [natural.width_mm - 0.1]).lines == (half,)


@pytest.mark.parametrize("ruling", sorted(RULED))
def test_two_rows_on_a_turned_page_say_so(ruling: str) -> None:
    """A name that takes two rows, too wide for the upright page, is given back with the page turned for it."""
    ruled = RULED[ruling]
    half = max(ruled.line(part, tightness=1.0).width_mm for part in ("Quillan", "Umberlee"))
    fit = fit_name("Quillan Umberlee", ruled, [0.8 * half, 1.05 * half])
    assert [line.text for line in fit.lines] == ["Quillan", "Umberlee"]
    assert fit.turned
    assert not fit_name("Quillan Umberlee", ruled, [1.05 * half, 1.1 * half]).turned
