"""A name in a school's font stands on our lines by its own x-height, unstretched, with its own spacing."""

from __future__ import annotations

import itertools
from pathlib import Path

import pytest

from namewright.geometry import boxes
from namewright.letters.alphabet import MissingLetters
from namewright.lines.ruling import PRESETS, Ruling, custom_ruling, preset
from namewright.lines.setting import SetLine, pen_width_mm
from namewright.schoolfont.reading import load_font
from namewright.schoolfont.shaping import Lettering
from schoolfont.fontmaking import ADVANCE, CAP, DEEP, KERN_AB, TALL, X, font_bytes, font_file

RULINGS = [preset(name) for name in ("us-3/4", "de-4", "fr-2", "es-2.5", "au-24")]


@pytest.fixture(scope="module")
def lettering(tmp_path_factory: pytest.TempPathFactory) -> Lettering:
    return Lettering(load_font(font_file(tmp_path_factory.mktemp("font"))))


def height(line: SetLine) -> float:
    """Return how high the outlines of a line reach over the baseline, in mm."""
    return -boxes.joined(contour.bounds() for one in line.letters for contour in one.letter.outline)[1]


@pytest.mark.parametrize("ruling", RULINGS, ids=lambda ruling: ruling.name)
def test_the_x_height_meets_the_midline_and_nothing_is_stretched(lettering: Lettering, ruling: Ruling) -> None:
    """x ends on the midline of any ruling; all other heights keep their proportion to it, and so do widths."""
    ruled = lettering.ruled(ruling)
    assert height(ruled.line("x")) == pytest.approx(ruling.x_height_mm)
    assert height(ruled.line("A")) == pytest.approx(ruling.x_height_mm * CAP / X)
    assert height(ruled.line("b")) == pytest.approx(ruling.x_height_mm * TALL / X)
    assert ruled.line("x").width_mm == pytest.approx(ruling.x_height_mm * 300 / X)


@pytest.mark.parametrize("ruling", RULINGS, ids=lambda ruling: ruling.name)
def test_how_capitals_meet_the_top_line_is_told(lettering: Lettering, ruling: Ruling) -> None:
    """The distance told is the one that is drawn, and on the ruling that is advised it is none."""
    told = lettering.line_up(ruling)
    assert height(lettering.ruled(ruling).line("A")) - ruling.line_height_mm == pytest.approx(told.capitals_mm)
    assert lettering.line_up(custom_ruling(20, midline=told.share)).capitals_mm == pytest.approx(0)


def test_a_line_is_as_wide_and_high_as_its_outlines(lettering: Lettering) -> None:
    """Width, rise and drop of a set line are those of what is drawn: pages reckon with them."""
    line = lettering.ruled(preset("us-3/4")).line("Apb")
    drawn = [(one.x + x0, y0, one.x + x1, y1) for one in line.letters
             for x0, y0, x1, y1 in (contour.bounds() for contour in one.letter.outline)]
    x0, y0, x1, y1 = boxes.joined(drawn)
    assert (line.width_mm, line.rise_mm, line.drop_mm) == pytest.approx((x1 - x0, -y0, y1))
    assert line.drop_mm == pytest.approx(line.ruling.x_height_mm * DEEP / X)
    assert x0 == pytest.approx(-pen_width_mm(line.ruling) / 2)


def steps(line: SetLine) -> list[float]:
    """Return the distances from origin to origin, in font units."""
    origins = [one.x for one in line.letters]
    return [(b - a) / line.ruling.x_height_mm * X for a, b in itertools.pairwise(origins)]


def test_advances_kerning_and_spaces_are_the_fonts_own(lettering: Lettering) -> None:
    """Letters stand where the font says: its advances, its kerning for A and b, its space between words."""
    ruled = lettering.ruled(preset("us-3/4"))
    assert steps(ruled.line("bdp")) == pytest.approx([ADVANCE, ADVANCE])
    assert steps(ruled.line("Abd")) == pytest.approx([ADVANCE + KERN_AB, ADVANCE])
    assert steps(ruled.line("b d")) == pytest.approx([2 * ADVANCE])


def test_letter_spacing_widens_every_gap_and_tightness_none(lettering: Lettering) -> None:
    """Extra letter spacing is added between all letters; a font is never set tighter than it was drawn."""
    ruling = preset("us-3/4")
    plain, wide = (lettering.ruled(ruling, spacing).line("Abd") for spacing in (0.0, 3.0))
    assert wide.width_mm - plain.width_mm == pytest.approx(6.0)
    assert lettering.ruled(ruling).line("Abd", tightness=1.0) == plain
    parted = [lettering.ruled(ruling, spacing).line("b d").width_mm for spacing in (0.0, 3.0)]
    assert parted[1] - parted[0] == pytest.approx(3.0)  # a space is not a letter


def test_each_letter_is_set_by_itself(lettering: Lettering) -> None:
    """Ligatures are off: a child writes f and i, not one sign for both."""
    assert [one.letter.cluster for one in lettering.ruled(preset("us-3/4")).line("fi").letters] == ["f", "i"]


@pytest.mark.parametrize(("name", "key", "letter"), [
    ("Abó", "font.missing", "latin small letter o with acute, U+00F3"),
    ("Ak", "font.blank", "latin small letter k, U+006B"),
])
def test_a_letter_that_the_font_lacks_is_named(lettering: Lettering, name: str, key: str, letter: str) -> None:
    """What a font lacks or leaves blank is named with its Unicode name, as our own missing letters are."""
    with pytest.raises(MissingLetters) as caught:
        lettering.ruled(preset("us-3/4")).line(name)
    assert caught.value.message.key == key
    assert letter in str(caught.value)
    assert caught.value.characters == (name[-1],)


def test_a_name_from_right_to_left_is_reported(tmp_path: Path) -> None:
    """Our pages run from left to right: a name that does not is reported, not set backwards."""
    from fontTools.ttLib import TTFont

    def spoil(font: TTFont) -> None:
        for table in font["cmap"].tables:
            table.cmap |= {ord("א"): "A", ord("ב"): "b"}

    ruled = Lettering(load_font(font_file(tmp_path, font_bytes(spoil)))).ruled(preset("us-3/4"))
    with pytest.raises(MissingLetters, match=r"font\.right_to_left"):
        ruled.line("אב")


def test_nothing_to_set_is_refused(lettering: Lettering) -> None:
    """A text of spaces has no letter to set."""
    with pytest.raises(ValueError, match="no letter"):
        lettering.ruled(preset("us-3/4")).line("  ")


def test_the_same_font_sets_the_same_line(lettering: Lettering, tmp_path: Path) -> None:
    """Two readings of a font give equal lines, on every ruling."""
    other = Lettering(load_font(font_file(tmp_path)))
    for ruling in PRESETS.values():
        assert lettering.ruled(ruling).line("Abdfix p") == other.ruled(ruling).line("Abdfix p")
