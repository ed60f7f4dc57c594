"""What a specialist sets for one child is what the child's lines and pens then are."""

from __future__ import annotations

import pytest

from namewright.lines.forms import pens_for
from namewright.lines.ruling import PRESETS, GuideLine, Ruling, preset
from namewright.lines.tuned import TooWide, check_pens, tuned
from namewright.pages.blocks import GUIDE_STYLES, guides
from namewright.tuning import KNOBS, Tuning
from namewright.wording import wording

USUAL = preset("us-3/4")


def drawn(ruling: Ruling) -> dict[GuideLine | None, tuple[float, float, str]]:
    """Return height over the base line, width and colour of each guide line of a row whose base line is at 100 mm."""
    return {guide.line: (100 - guide.y, guide.style.width_mm, guide.style.colour)
            for guide in guides(ruling, 10, 90, 100)}


def test_nothing_set_changes_nothing() -> None:
    """Without settings every ruling stays as it is."""
    for ruling in PRESETS.values():
        assert tuned(ruling, Tuning()) == ruling


@pytest.mark.parametrize("name", ["us-3/4", "fr-3", "uk-5", "de-6"])
def test_a_line_height_scales_all_of_a_ruling(name: str) -> None:
    """Another line height keeps every proportion: heights, graded letters, band lines and the white between rows."""
    ruling, tall = preset(name), tuned(preset(name), Tuning(line_height=40))
    factor = 40 / ruling.line_height_mm
    assert tall.line_height_mm == pytest.approx(40)
    assert tall.pitch_mm == pytest.approx(factor * ruling.pitch_mm)
    assert tall.gap_mm == pytest.approx(factor * ruling.gap_mm)
    assert tall.bands_mm == pytest.approx(tuple(factor * band for band in ruling.bands_mm))
    assert (tall.short_mm or 0) == pytest.approx(factor * (ruling.short_mm or 0))


@pytest.mark.parametrize("share", [0.3, 0.4, 0.65, 0.8])
def test_a_midline_moves_within_its_line_height(share: float) -> None:
    """The midline stands at its share of the line height, which stays; tails keep their depth in x-heights."""
    for name in ("us-3/4", "fr-3", "de-6"):
        ruling, moved = preset(name), tuned(preset(name), Tuning(midline=share))
        assert moved.line_height_mm == pytest.approx(ruling.line_height_mm)
        assert moved.x_height_mm == pytest.approx(share * ruling.line_height_mm)
        assert moved.descender_mm / moved.x_height_mm == pytest.approx(ruling.descender_mm / ruling.x_height_mm)
        assert drawn(moved)[GuideLine.MID][0] == pytest.approx(share * ruling.line_height_mm)


def test_a_row_gap_is_the_white_under_the_descender_line() -> None:
    """The gap asked for replaces the ruling's own, and nothing else moves."""
    wide = tuned(USUAL, Tuning(row_gap=7.5))
    assert wide.pitch_mm == pytest.approx(USUAL.line_height_mm + USUAL.descender_mm + 7.5)
    assert wide._replace(gap_mm=USUAL.gap_mm) == USUAL


@pytest.mark.parametrize("name", ["us-3/4", "fr-3", "uk-5"])
def test_unlined_prints_no_line_at_all(name: str) -> None:
    """Without lines no guide and no band line is printed; letters keep their size."""
    bare = tuned(preset(name), Tuning(unlined=True))
    assert guides(bare, 0, 100, 50) == ()
    assert bare.x_height_mm == preset(name).x_height_mm


def test_pens_are_as_asked_for() -> None:
    """The pen of the model, the size of a dot and the distance from dot to dot are the millimetres that were set."""
    pens = pens_for(tuned(USUAL, Tuning(model_pen=2.3, dot_size=1.1, dot_pitch=4.2)))
    assert (pens.model_mm, pens.dot_mm, pens.pitch_mm) == (2.3, 1.1, 4.2)
    one = pens_for(tuned(USUAL, Tuning(dot_size=1.1)))
    assert (one.model_mm, one.dot_mm) == (pens_for(USUAL).model_mm, 1.1)
    assert one.pitch_mm == pytest.approx(2.1 * 1.1)  # about twice the dot


def test_line_weight_multiplies_every_guide_line() -> None:
    """All lines get heavier or lighter alike and stay where they are."""
    usual, heavy = drawn(preset("fr-3")), drawn(tuned(preset("fr-3"), Tuning(line_weight=2.5)))
    for line, (height, width, colour) in usual.items():
        assert heavy[line] == (height, pytest.approx(2.5 * width), colour)


def test_a_bold_baseline_is_bolder_than_all_others() -> None:
    """Only the base line changes: twice as wide, and black; line weight counts for it too."""
    usual, bold = drawn(USUAL), drawn(tuned(USUAL, Tuning(bold_baseline=True)))
    assert bold[GuideLine.BASE] == (0, 2 * GUIDE_STYLES[GuideLine.BASE].width_mm, "#000000")
    assert {line: drawing for line, drawing in bold.items() if line is not GuideLine.BASE} == {
        line: drawing for line, drawing in usual.items() if line is not GuideLine.BASE}
    both = drawn(tuned(USUAL, Tuning(bold_baseline=True, line_weight=1.5)))
    assert both[GuideLine.BASE][1] == pytest.approx(3 * GUIDE_STYLES[GuideLine.BASE].width_mm)


@pytest.mark.parametrize("name", ["us-3/4", "fr-3", "uk-5"])
def test_a_shaded_band_lies_between_base_line_and_midline(name: str) -> None:
    """The tint covers just the zone of the small letters, under all lines, and is lighter than any of them."""
    ruling = tuned(preset(name), Tuning(shaded_band=True))
    band, *lines = guides(ruling, 10, 90, 100)
    assert band.line is None
    assert (band.y - band.style.width_mm / 2, band.y + band.style.width_mm / 2) == pytest.approx(
        (100 - ruling.x_height_mm, 100))
    assert int(band.style.colour[1:3], 16) > max(int(line.style.colour[1:3], 16) for line in lines)


def test_a_setting_laid_over_another_keeps_what_it_does_not_say() -> None:
    """A child's settings go over the class's one by one; “off” is a setting too."""
    below = Tuning(line_height=20, bold_baseline=True, rows=4)
    assert Tuning(rows=2, bold_baseline=False).over(below) == Tuning(line_height=20, bold_baseline=False, rows=2)


def test_every_setting_has_its_unit_its_range_and_its_reason() -> None:
    """What a specialist reads beside a setting is a whole sentence, and its range is one."""
    for knob in KNOBS:
        assert wording("en").say(f"setting.why.{knob.key}").endswith(".")
        assert knob.least < knob.greatest
        assert knob.unit or knob.kind == "switch"
        assert wording("en").say(f"setting.usual.{knob.key}")
        assert wording("en").say(f"setting.name.{knob.key}")


@pytest.mark.parametrize(("key", "share"), [("model_pen", 0.3), ("dot_size", 0.25), ("dot_pitch", 0.75)])
@pytest.mark.parametrize("name", ["us-3/4", "fr-3"])
def test_pens_that_would_close_letters_up_are_refused(name: str, key: str, share: float) -> None:
    """A pen, a dot or a pitch may take its share of the x-height; more is refused with what could be chosen."""
    most = share * preset(name).x_height_mm
    check_pens(tuned(preset(name), Tuning(**{key: most - 0.1})))
    with pytest.raises(TooWide, match=rf"fit\.{key}") as error:
        check_pens(tuned(preset(name), Tuning(**{key: most + 0.1})))
    offered = error.value.message["most"]
    assert isinstance(offered, float)
    check_pens(tuned(preset(name), Tuning(**{key: offered})))
    assert most - 0.1 <= offered <= most + 0.005
