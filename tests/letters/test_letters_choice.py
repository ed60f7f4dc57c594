"""Forms of letters a school chooses: every one of them complete, and none by surprise."""

from __future__ import annotations

import math

import pytest

from namewright.letters.alphabet import Alphabet
from namewright.letters.choice import LetterChoice, chosen, read_choice
from namewright.lines.ruling import preset
from namewright.lines.setting import RuledLetters
from namewright.message import Problem

ALL = [("a", "two-storey"), ("g", "two-storey"), ("y", "curved"), ("t", "curved"), ("q", "plain"), ("k", "rounded"),
       ("w", "rounded"), ("I", "plain"), ("J", "barred"), ("M", "rounded"), ("W", "rounded"), ("1", "plain"),
       ("4", "closed"), ("7", "crossed"), ("9", "curved")]


@pytest.mark.parametrize(("letter", "form"), ALL)
def test_every_form_is_another_shape_at_the_same_height(alphabet: Alphabet, letter: str, form: str) -> None:
    """A variant changes its letter, reaches the same lines, and keeps the letter's anchors for marks."""
    other = chosen(alphabet, read_choice(f"{letter}={form}", alphabet))
    usual, new = alphabet.glyphs[letter], other.glyphs[letter]
    assert new.strokes != usual.strokes
    heights = [max(stroke.bounds()[3] for stroke in glyph.strokes) for glyph in (usual, new)]
    depths = [min(stroke.bounds()[1] for stroke in glyph.strokes) for glyph in (usual, new)]
    assert heights[0] == pytest.approx(heights[1], abs=0.01)
    assert depths[0] == pytest.approx(depths[1], abs=0.01)
    assert set(new.anchors) >= {"top", "bottom"}
    assert all(other.glyphs[char] is alphabet.glyphs[char] for char in "bcde" if char != letter)


def test_the_usual_form_can_be_asked_for(alphabet: Alphabet) -> None:
    """Each letter with a choice names its usual form first; asking for it changes nothing."""
    for letter, forms in alphabet.forms.items():
        assert chosen(alphabet, LetterChoice(((letter, forms[0]),))).glyphs == alphabet.glyphs


@pytest.mark.parametrize(("letter", "form"), [
    (letter, form) for letter, form in ALL if form != "two-storey" and letter != "1"])
def test_every_form_is_written_as_letters_are(alphabet: Alphabet, letter: str, form: str) -> None:
    """A variant keeps the order of strokes: it begins about where the usual form does and sets out the same way.

    Its straight strokes go down or to the right, as all do (common practice). Two-storey letters are another
    path, and a 1 without its flag begins with the stem.
    """
    usual, new = alphabet.glyphs[letter].strokes, alphabet.variants[letter, form].strokes
    assert math.dist(usual[0].start, new[0].start) <= 60
    ways = [math.atan2(b[1] - a[1], b[0] - a[0]) for a, b in (one[0].segments[0][:2] for one in (usual, new))]
    assert abs(math.degrees(math.remainder(ways[0] - ways[1], math.tau))) < 60
    for stroke in new:
        (ax, ay), (bx, by) = stroke.start, stroke.end
        if len(stroke.segments) == 1 and len(stroke.segments[0]) == 2 and not stroke.is_dot:
            assert by < ay or (by == ay and bx > ax)


def test_an_exit_stroke_only_lengthens_its_letter(alphabet: Alphabet) -> None:
    """A letter with an exit stroke has as many strokes as without, in the same order, from the same starts."""
    for char, glyph in alphabet.exit_strokes.items():
        usual = alphabet.glyphs[char]
        assert [stroke.start for stroke in glyph.strokes] == [stroke.start for stroke in usual.strokes], char
        assert glyph.anchors["top"] == usual.anchors["top"], char


def test_marks_follow_a_variant(alphabet: Alphabet) -> None:
    """á is set with the chosen a."""
    other = chosen(alphabet, read_choice("a=two-storey", alphabet))
    assert other.letter("á").base is other.glyphs["a"]


def test_a_slant_leans_along_the_height_only(alphabet: Alphabet) -> None:
    """Eight degrees move the top of l to the right by its height times tan 8°, and change no height."""
    ruling = preset("de-5")
    upright_l, slanted = (RuledLetters(alphabet, ruling, slant=slant).line("l").letters[0].letter
                          for slant in (0.0, 8.0))
    (x0, y0), (x1, y1) = upright_l.strokes[0].start, slanted.strokes[0].start
    assert y0 == y1 == -10.0
    assert x1 - x0 == pytest.approx(10.0 * math.tan(math.radians(8)))


def test_exit_strokes_end_to_the_right_of_the_stem(alphabet: Alphabet) -> None:
    """They touch the baseline and leave upwards to the right."""
    other = chosen(alphabet, LetterChoice(exit_strokes=True))
    for char in alphabet.exit_strokes:
        stroke = max(other.glyphs[char].strokes, key=lambda one: one.end[0])
        assert 0 < stroke.end[1] < 20, char
        assert stroke.bounds()[1] == pytest.approx(0.0, abs=0.01), char


def test_crossbars_can_run_to_the_left(alphabet: Alphabet) -> None:
    """Crossbars turn round; the arms of E and F, which start at the stem, do not."""
    other = chosen(alphabet, read_choice("crossbars=left", alphabet))
    turned = {char for char, glyph in other.glyphs.items() if glyph.strokes != alphabet.glyphs[char].strokes}
    assert turned >= set("tfTAHI")
    assert not turned & set("EFLBDZzegk2")


@pytest.mark.parametrize(("text", "words"), [
    ("a=three-storey", "no_form.*one-storey.*two-storey"), ("o=square", "one_form"), ("slant=40", "slant.*15"),
    ("slant=steep", "slant.*15"), ("crossbars=up", "crossbars"), ("nonsense", "one_form")])
def test_forms_we_do_not_have(alphabet: Alphabet, text: str, words: str) -> None:
    """The message names what there is."""
    with pytest.raises(Problem, match=rf"letters\.{words}"):
        read_choice(text, alphabet)


def test_what_is_chosen_away_is_written_out_as_well(alphabet: Alphabet) -> None:
    """Regression: "exit-strokes=no" and "crossbars=right" were lost where a choice was kept as words."""
    for text in ("exit-strokes=no", "crossbars=right", "slant=0 exit-strokes=no crossbars=right"):
        assert str(read_choice(text, alphabet)) == text


def test_a_choice_reads_back(alphabet: Alphabet) -> None:
    """Written out and read again it is the same; a child's choice lies over the class's."""
    text = "a=two-storey t=curved slant=8 exit-strokes crossbars=left"
    choice = read_choice(text, alphabet)
    assert read_choice(str(choice), alphabet) == choice
    child = read_choice("a=one-storey", alphabet).over(choice)
    assert dict(child.variants) == {"a": "one-storey", "t": "curved"}
    assert (child.slant, child.exit_strokes, child.leftward_bars) == (8, True, True)
    assert read_choice("slant=5", alphabet).over(choice).slant == 5
    assert read_choice("crossbars=left exit-strokes", alphabet).over(LetterChoice()) == read_choice(
        "exit-strokes crossbars=left", alphabet)
