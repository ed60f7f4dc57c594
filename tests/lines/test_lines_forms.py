"""The forms of a line: what is inked, in which greys, and that nothing is lost between letters and ink."""

from __future__ import annotations

import pytest

from contrast import contrast, luminance
from namewright.geometry.segments import Line
from namewright.letters.alphabet import upright
from namewright.lines import ink as inks
from namewright.lines.forms import Form, Inker, pens_for
from namewright.lines.ruling import PRESETS, preset
from namewright.lines.setting import RuledLetters
from namewright.pages.blocks import GUIDE_STYLES


def test_the_formula_gives_the_published_extremes() -> None:
    """Black on white is 21:1 and a colour on itself 1:1, as WCAG says."""
    assert contrast("#000000", "#ffffff") == pytest.approx(21)
    assert contrast("#6b6b6b", "#6b6b6b") == 1


def inked(name: str, form: Form, ruling: str = "us-3/4") -> tuple[inks.Ink, ...]:
    measures = preset(ruling)
    line = RuledLetters(upright(), measures).line(name)
    return Inker(measures, pens_for(measures)).ink(line, form)


@pytest.mark.parametrize("form", [form for form in Form if form not in (Form.BLANK, Form.STARTS)])
def test_every_form_can_be_seen(form: Form) -> None:
    """Every grey that a letter is inked in keeps 3:1 on white (WCAG 2.2, SC 1.4.11), the white of hollow apart."""
    colours = {ink.style.colour for ink in inked("Íñigo", form)} - {inks.WHITE}
    assert colours
    assert all(contrast(colour, "#ffffff") > 3 for colour in colours)


def test_dots_and_model_can_be_read_easily() -> None:
    """The model and the dots, which are read and not only seen, keep 7:1 (WCAG 2.2, SC 1.4.6)."""
    for form in (Form.SOLID, Form.DOTTED, Form.DASHED):
        assert all(contrast(ink.style.colour, "#ffffff") > 7 for ink in inked("Íñigo", form))


def test_guide_lines_can_be_seen() -> None:
    """Guide lines keep 3:1 on white, and stay lighter than what is written on them."""
    assert contrast(inks.RULE, "#ffffff") > 3
    assert luminance(inks.RULE) > luminance(inks.DARK) > luminance(inks.BLACK)


@pytest.mark.parametrize(("colour", "told"), [(inks.DARK, 12.6), (inks.RULE, 5.3), (inks.FAINT, 4.54)])
def test_the_contrasts_told_are_true(colour: str, told: float) -> None:
    """The ratios written beside the greys in the code are those of the formula."""
    assert contrast(colour, "#ffffff") == pytest.approx(told, abs=0.05)


def test_blank_is_blank() -> None:
    """A blank line has no ink."""
    assert inked("Mo", Form.BLANK) == ()


@pytest.mark.parametrize("form", [form for form in Form if form not in (Form.BLANK, Form.STARTS)])
def test_every_letter_is_inked(form: Form) -> None:
    """All forms ink the same room: no letter and no dot is lost on the way."""
    solid = [ink.bounds() for ink in inked("Jiří", Form.SOLID)]
    drawn = [ink.bounds() for ink in inked("Jiří", form)]
    for at, pick in enumerate((min, min, max, max)):
        assert pick(box[at] for box in drawn) == pytest.approx(pick(box[at] for box in solid), abs=1.7)


def test_runs_of_letters_may_differ() -> None:
    """Each letter may have its own form; a count that does not match is told."""
    measures = preset("de-5")
    inker, line = Inker(measures, pens_for(measures)), RuledLetters(upright(), measures).line("Ana")
    first = inker.ink(line, [Form.SOLID, Form.BLANK, Form.BLANK])
    assert max(ink.bounds()[2] for ink in first) < line.letters[1].x
    with pytest.raises(ValueError, match="2 forms for 3 letters"):
        inker.ink(line, [Form.SOLID, Form.BLANK])


@pytest.mark.parametrize("ruling", PRESETS.values(), ids=lambda ruling: ruling.name)
def test_a_hollow_letter_takes_a_pencil(ruling: object) -> None:
    """On lines of 6 mm of x-height and more a hollow letter's channel is wider than a blunt pencil's line.

    A blunt pencil of a young child draws 1 to 2 mm: common practice.
    """
    assert isinstance(ruling, type(preset("de-5")))
    assert pens_for(ruling).outline_mm >= 0.2  # still drawn whole by a printer of 600 dpi: five dots wide
    assert (pens_for(ruling).channel_mm > 1.4) >= (ruling.x_height_mm >= 6)


def dots_in(inked_line: tuple[inks.Ink, ...]) -> int:
    """Return how many dots the first layer of dots draws: each is a line of no length; a pale line lies under it."""
    layer = next(ink for ink in inked_line if ink.style.colour != inks.PALE)
    return sum(piece.fragment.data.count("h0") for piece in layer.pieces)


@pytest.mark.parametrize(("name", "strokes"), [("l", 1), ("t", 2), ("E", 4), ("é", 2), ("i", 2), ("Ẹ̀", 6)])
def test_start_dots_are_where_strokes_start(name: str, strokes: int) -> None:
    """With start dots a letter has one dot for each of its strokes, on the place where the pencil touches down."""
    measures = preset("us-3/4")
    letter = RuledLetters(upright(), measures).line(name).letters[0].letter
    for layer in inked(name, Form.STARTS):
        assert dots_in((layer,)) == strokes
        first = layer.pieces[0].fragment
        assert first.bounds[0] == pytest.approx(min(stroke.start[0] for stroke in letter.strokes), abs=0.01)
    assert len(letter.strokes) == strokes


@pytest.mark.parametrize("ruling", ["us-3/4", "de-4", "fr-3"])
def test_wide_dots_are_fewer_and_leave_more_to_the_child(ruling: str) -> None:
    """Wide dots stand at least 1.4 times as far apart as dots: there are fewer of them, as large as the others."""
    dotted, wide = (inked("l", form, ruling) for form in (Form.DOTTED, Form.WIDE))
    assert dots_in(wide) - 1 <= (dots_in(dotted) - 1) / 1.4 + 0.5
    assert dots_in(wide) >= 3
    assert wide[0].style == dotted[0].style


def test_dashes_have_gaps_and_dash_no_stem_twice() -> None:
    """A dashed letter is drawn in dashes with white between, and where the pencil goes back over a stem only once."""
    measures = preset("us-3/4")
    (layer, *_) = inked("n", Form.DASHED)
    dash, gap = layer.style.dash_mm
    assert gap > layer.style.width_mm  # round ends eat a pen's width of it
    assert dash > 0
    stem = RuledLetters(upright(), measures).line("n").letters[0].letter
    assert layer.pieces[0].fragment.data.count("v") == sum(
        isinstance(segment, Line) for segment in stem.strokes[0].segments) - 1


def test_two_shapes_of_one_letter_are_both_drawn() -> None:
    """A font may give a letter another shape beside another neighbour: each is inked as it is, not as the first was."""
    measures = preset("us-3/4")
    line = RuledLetters(upright(), measures).line("an")
    a, n = (placed.letter for placed in line.letters)
    twin = n._replace(cluster=a.cluster, shape="other")
    both = line._replace(letters=(line.letters[0], line.letters[1]._replace(letter=twin)))
    inker = Inker(measures, pens_for(measures))
    for form in (Form.SOLID, Form.DOTTED):
        fragments = [piece.fragment for ink in inker.ink(both, form) for piece in ink.pieces]
        assert len(set(fragments)) == 2


@pytest.mark.parametrize("name", [name for name, ruling in PRESETS.items() if ruling.lines])
def test_the_faint_form_is_heavier_than_the_guide_lines(name: str) -> None:
    """Their greys are alike, so weight tells them apart: by half at least from the lines within a letter."""
    ruling = preset(name)
    pens = pens_for(ruling)
    widest = max(GUIDE_STYLES[line].width_mm for line in ruling.lines)
    assert pens.faint_mm >= 1.5 * widest
