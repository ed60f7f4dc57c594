"""Marks are joined to their letters: above, below, stacked, and where a language writes them otherwise."""

from __future__ import annotations

import tomllib

import pytest
from fontTools.pens.recordingPen import RecordingPen
from fontTools.svgLib.path import parse_path

from namewright.geometry.boxes import Box
from namewright.letters.alphabet import Alphabet, Letter, font_bytes, parse_alphabet, upright


def base_box(letter: Letter) -> Box:
    return Letter(letter.cluster, letter.base).bounds()


def mark_boxes(letter: Letter) -> list[Box]:
    """Return the box of each mark where it stands."""
    return [Letter("", type(letter.base)(tuple(
        stroke.map(lambda p, m=mark: (p[0] + m.anchor[0] + m.offset[0], p[1] + m.anchor[1] + m.offset[1]))
        for stroke in mark.glyph.strokes))).bounds() for mark in letter.marks]


@pytest.mark.parametrize("char", [*"áàâäãåāăėěőűñńćčżźýÿŵḿ", *"ÁÀÂÄÃÅĀĂĖĚŐŰÑŃĆČŻŹÝŸŴİ", *"ĥĺ",
                                  "ŋ̀", "œ́", "ə̀"])
def test_marks_above_stand_clear_over_the_middle(alphabet: Alphabet, char: str) -> None:
    """A mark above leaves white under it, as much over all letters (20 to 45 units), and stands over the letter."""
    letter = alphabet.letter(char)
    x0, _, x1, top = base_box(letter)
    (box,) = mark_boxes(letter)
    assert top + 20 <= box[1] <= top + 45
    assert x0 - 30 <= (box[0] + box[2]) / 2 <= x1 + 30


@pytest.mark.parametrize("char", [*"ạẹịọụṣșțņķ", *"ẠẸỊỌỤṢȘȚŅĶ"])
def test_marks_below_stand_clear_under_the_letter(alphabet: Alphabet, char: str) -> None:
    """A dot or comma below leaves white between itself and the letter."""
    letter = alphabet.letter(char)
    below = [box for box in mark_boxes(letter) if box[3] < 0]
    assert len(below) == 1
    assert below[0][3] <= base_box(letter)[1] - 20


@pytest.mark.parametrize("char", ["ế", "ặ", "ộ", "ẹ́", "ǘ", "ṩ", "Ế", "Ặ", "ọ̀", "ą́", "ḗ"])
def test_marks_stack_and_never_meet(alphabet: Alphabet, char: str) -> None:
    """Two marks on one letter never overlap."""
    first, second = mark_boxes(alphabet.letter(char))
    assert (first[3] < second[1] or second[3] < first[1] or first[2] < second[0] or second[2] < first[0])


@pytest.mark.parametrize("char", ["í", "ì", "ï", "ĩ", "ī", "ĵ", "ỉ"])
def test_a_mark_above_takes_the_place_of_the_dot(alphabet: Alphabet, char: str) -> None:
    """The letters i and j lose their dot under a mark above (Unicode property Soft_Dotted)."""
    assert len(alphabet.letter(char).marks) == 1


@pytest.mark.parametrize("char", ["i", "j", "ị", "į"])
def test_a_mark_below_leaves_the_dot(alphabet: Alphabet, char: str) -> None:
    """With nothing above, i and j keep their dot."""
    dots = [stroke for stroke in alphabet.letter(char).strokes() if stroke.is_dot and stroke.start[1] > 100]
    assert len(dots) == 1


@pytest.mark.parametrize("char", ["ď", "ť", "ľ", "Ľ"])
def test_the_caron_of_tall_letters_stands_beside(alphabet: Alphabet, char: str) -> None:
    """Czech and Slovak print writes the háček of tall letters as a comma at their right: common practice."""
    letter = alphabet.letter(char)
    (box,) = mark_boxes(letter)
    assert box[3] <= 200
    assert box[0] > letter.base.anchors["top"][0]


def test_the_cedilla_of_small_g_stands_above(alphabet: Alphabet) -> None:
    """Latvian ģ carries its comma above, where the tail is not in the way: common practice."""
    (box,) = mark_boxes(alphabet.letter("ģ"))
    assert box[1] > 100


def test_a_bad_glyph_is_named() -> None:
    """An alphabet with a bad stroke says in which glyph it stands."""
    source = 'name = "x"\nspace = 70\nmark_forms = []\n[marks]\n[glyphs]\nk = { strokes = ["M0 0 L1 1 Z"] }\n'
    with pytest.raises(ValueError, match="glyph “k”"):
        _ = parse_alphabet(source).glyphs["k"]


def test_letters_have_the_strokes_of_the_file() -> None:
    """Each letter has the strokes that TOML and fontTools find, in the file's order; also written another way."""
    source = font_bytes("upright.toml").decode("utf-8")
    for text in (source, source.replace("\nk = {", "\n'k' = {").replace("\nl = {", "\nl={")):
        table, read = tomllib.loads(text), parse_alphabet(text)
        for part, glyphs in (("glyphs", read.glyphs), ("marks", read.marks), ("exit_strokes", read.exit_strokes)):
            assert set(table[part]) <= set(glyphs)
            for char, entry in table[part].items():
                assert [stroke_of(data) for data in entry["strokes"]] == [
                    [tuple(segment) for segment in stroke.segments] for stroke in glyphs[char].strokes], char
    assert [char for char in upright().glyphs if char not in "ij"] == list(tomllib.loads(source)["glyphs"])


def stroke_of(data: str) -> list[tuple[tuple[float, float], ...]]:
    """Return the segments of path data as fontTools reads it."""
    pen = RecordingPen()
    found: list[tuple[tuple[float, float], ...]] = []
    last = (0.0, 0.0)
    parse_path(data, pen)
    for command, points in pen.value:
        if command in ("lineTo", "curveTo"):
            found.append((last, *points))
        last = points[-1] if points else last
    return found
