"""Stroke cues: a start dot for every stroke, numbers and arrows only where they are free."""

from __future__ import annotations

import math
from string import ascii_letters

import numpy as np
import pytest

from namewright.geometry.polylines import evenly
from namewright.geometry.segments import flatten
from namewright.letters.alphabet import Alphabet
from namewright.lines.cues import CueMaker, Cues
from namewright.lines.forms import pens_for
from namewright.lines.ink import WHITE
from namewright.lines.ruling import PRESETS, GuideLine, Ruling, preset
from namewright.lines.setting import PENCIL_MM, InkLetter, RuledLetters, pen_width_mm
from namewright.pages.typesetter import Typesetter

PLAIN = "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZéñŠ"


@pytest.mark.parametrize("name", ["us-3/4", "de-6", "us-1"])
def test_cues_are_where_they_may_be(alphabet: Alphabet, name: str) -> None:
    """Every stroke but a dot has its start ring; a number touches neither a stroke nor a printed line nor a number."""
    ruling = preset(name)
    side = (PENCIL_MM + pen_width_mm(ruling)) / 2 + 0.2 * ruling.x_height_mm
    maker = CueMaker(ruling, pens_for(ruling), side)
    ruled = RuledLetters(alphabet, ruling)
    numbered = strokes = 0
    for char in PLAIN:
        letter = ruled.line(char).letters[0].letter
        cues = maker.cues(letter)
        assert cues.starts == tuple(stroke.start for stroke in letter.strokes if not stroke.is_dot)
        tracks = np.array([point for stroke in letter.strokes for point in evenly(flatten(stroke.segments, 0.01), 200)])
        for count, (x, y) in cues.numbers:
            assert 1 <= count <= len(letter.strokes)
            half = maker.number_mm / 2
            away = np.maximum(np.abs(tracks - (x, y)) - (0.6 * half, half), 0)
            assert np.hypot(*away.T).min() >= pen_width_mm(ruling) / 2, char
            for line in ruling.lines & set(GuideLine):
                assert abs(y + ruling.height_of(line)) > half, char
        centres = [at for _, at in cues.numbers]
        assert all(math.dist(a, b) > 0.9 * maker.number_mm for i, a in enumerate(centres) for b in centres[:i]), char
        numbered, strokes = numbered + len(cues.numbers), strokes + len(letter.strokes)
    assert numbered >= 0.85 * strokes


def test_an_arrow_points_the_way_the_pencil_goes(alphabet: Alphabet) -> None:
    """The arrow beside a stem points down, the one beside a bar to the right."""
    ruling = preset("us-1")
    maker = CueMaker(ruling, pens_for(ruling), 4.0)
    ruled = RuledLetters(alphabet, ruling)
    (stem,) = maker.cues(ruled.line("l").letters[0].letter).arrows
    assert stem[1][1] > stem[0][1] + 1
    _, bar = maker.cues(ruled.line("T").letters[0].letter).arrows
    assert bar[1][0] > bar[0][0] + 1


@pytest.mark.parametrize("height", [8.0, 19.05, *(pytest.param(height, marks=pytest.mark.long)
                                                 for height in (12.0, 28.6, 40.0, 60.0))])
def test_no_cue_hides_anything(alphabet: Alphabet, height: float) -> None:
    """Over all glyphs and the kinds of ruling: a number or an arrow touches no stroke and no other cue, and no
    number stands on a printed line.
    """
    for name in ("us-3/4", "de-5", "fr-3", "uk-5"):
        ruling = preset(name).scaled_to(height)
        pen, ring = pen_width_mm(ruling), pens_for(ruling).start_mm / 2
        maker = CueMaker(ruling, pens_for(ruling), (PENCIL_MM + pen) / 2 + 0.2 * ruling.x_height_mm)
        ruled = RuledLetters(alphabet, ruling)
        for char in alphabet.glyphs:
            letter = ruled.line(char).letters[0].letter
            cues = maker.cues(letter)
            tracks = np.array([p for stroke in letter.strokes for p in evenly(flatten(stroke.segments, 0.01), 300)])
            boxes = [(x - 0.3 * maker.number_mm, y - 0.5 * maker.number_mm, x + 0.3 * maker.number_mm,
                      y + 0.5 * maker.number_mm) for _, (x, y) in cues.numbers]
            shafts = [np.array(evenly(list(arrow[:2]), 30) + evenly(list(arrow[2:]), 10)) for arrow in cues.arrows]
            starts = np.array(cues.starts or [(-1e6, -1e6)])
            for box in boxes:
                assert _outside(tracks, box) >= pen / 2, (name, char)
                assert _outside(starts, box) >= ring, (name, char)
                for line in ruling.lines:
                    assert not box[1] < -ruling.height_of(line) < box[3], (name, char)
            for count, shaft in enumerate(shafts):
                apart = np.hypot(*(tracks[:, None, :] - shaft[None, :, :]).transpose(2, 0, 1)).min()
                assert apart >= pen / 2, (name, char)
                assert np.hypot(*(starts[:, None] - shaft[None]).transpose(2, 0, 1)).min() >= ring, (name, char)
                assert all(_outside(shaft, box) > 0 for box in boxes), (name, char)
                for other in shafts[:count]:
                    away = np.hypot(*(other[:, None, :] - shaft[None, :, :]).transpose(2, 0, 1)).min()
                    assert away > 0.1, (name, char)


def _outside(points: np.ndarray, box: tuple[float, float, float, float]) -> float:
    """Return how far the nearest of the points is from a box, 0 where one is inside."""
    low, high = np.array(box[:2]), np.array(box[2:])
    return float(np.hypot(*np.maximum(np.maximum(low - points, points - high), 0).T).min())


def letter_cues(setter: Typesetter, ruling: Ruling, char: str, spacing: float = 0.0) -> tuple[InkLetter, Cues]:
    """Return a letter on a ruling and its cues, as pages have them."""
    letter = setter.ruled(ruling, spacing).line(char).letters[0].letter
    return letter, setter.cues(ruling, spacing).cues(letter)


def assert_nearest(letter: InkLetter, cues: Cues, what: str) -> None:
    """Assert that no other stroke begins nearer to a number than its own: a reader gives it to the nearest start."""
    for number, at in cues.numbers:
        own = letter.strokes[number - 1].start
        others = [stroke.start for stroke in letter.strokes if math.dist(stroke.start, own) > 0.05]
        assert all(math.dist(at, other) > math.dist(at, own) for other in others), what


def assert_none_misleads(setter: Typesetter, letter: InkLetter, cues: Cues, what: str) -> None:
    """Assert that a letter's numbers are all there, or its base's, or none, and that each reads with its own arrow."""
    base = len(setter.alphabet.letter(letter.cluster).base.strokes)
    assert len(cues.numbers) in (0, base, len(letter.strokes)), what
    assert [number for number, _ in cues.numbers] == list(range(1, len(cues.numbers) + 1)), what
    assert_nearest(letter, cues, what)
    drawn = [number for number, _ in cues.numbers if not letter.strokes[number - 1].is_dot]
    if len(cues.arrows) == len(drawn):
        own = dict(zip(drawn, cues.arrows, strict=True))
        for number, at in cues.numbers:
            others = [_to_arrow(at, arrow) for other, arrow in own.items() if other != number]
            if number in own and others:
                assert _to_arrow(at, own[number]) < min(others), what


def _to_arrow(at: tuple[float, float], arrow: tuple[tuple[float, float], ...]) -> float:
    return float(np.hypot(*(np.array(evenly(list(arrow[:2]), 60)) - at).T).min())


def test_cues_are_left_away_seldom_and_none_misleads(setter: Typesetter) -> None:
    """Over all letters and kinds of ruling, set as close as names ever are, 93 in 100 numbers have a place."""
    strokes = numbers = 0
    for ruling in map(preset, ("us-3/4", "us-3/8", "de-4", "fr-3", "uk-5", "au-9")):
        for char in setter.alphabet.glyphs:
            letter, cues = letter_cues(setter, ruling, char)
            assert_none_misleads(setter, letter, cues, f"{ruling.name} {char}")
            strokes, numbers = strokes + len(letter.strokes), numbers + len(cues.numbers)
    assert numbers >= 0.93 * strokes


@pytest.mark.long
def test_plain_letters_set_wide_have_all_their_cues(setter: Typesetter) -> None:
    """Set wide, as on most sheets, every plain letter has every number on nearly every ruling."""
    lost, arrows, drawn = [], 0, 0
    for ruling in PRESETS.values():
        for char in ascii_letters:
            letter, cues = letter_cues(setter, ruling, char, round(0.4 * ruling.x_height_mm, 2))
            assert_none_misleads(setter, letter, cues, f"{ruling.name} {char}")
            drawn, arrows = drawn + sum(not one.is_dot for one in letter.strokes), arrows + len(cues.arrows)
            lost += [] if len(cues.numbers) == len(letter.strokes) else [(ruling.name, char)]
    assert len(lost) <= 2, lost
    assert arrows >= 0.98 * drawn


# Small letters of capital height, or a 5, have no room for every arrow; a missing one cannot be taken for another.
WITHOUT_AN_ARROW = {"fr-2": "E", "fr-2.5": "5", "fr-3": "5", "es-4": "M5", "es-3.5": "EFMN5", "es-3": "EFMN5",
                    "es-2.5": "5"}


@pytest.mark.parametrize("ruling", PRESETS)
def test_strokes_that_start_together_are_told_apart(setter: Typesetter, ruling: str) -> None:
    """Where the first two strokes leave one point, each number reads with its own arrow; few miss an arrow."""
    missing = ""
    for char in "ABDEFMNPR5":
        _, cues = letter_cues(setter, PRESETS[ruling], char, round(0.4 * PRESETS[ruling].x_height_mm, 2))
        assert len(cues.numbers) >= 2, char
        if len(cues.arrows) < len(cues.numbers):
            missing += char
            continue
        for number, other in ((0, 1), (1, 0)):
            at = cues.numbers[number][1]
            assert _to_arrow(at, cues.arrows[number]) < _to_arrow(at, cues.arrows[other]), char
    assert missing == WITHOUT_AN_ARROW.get(ruling, "")


@pytest.mark.parametrize("ruling", ["us-3/4", "de-4", "fr-3", "uk-5"])
def test_numbers_set_wide_do_not_mislead(setter: Typesetter, ruling: str) -> None:
    """The same where letters are set wider for their cues, as on most sheets."""
    for char in setter.alphabet.glyphs:
        letter, cues = letter_cues(setter, preset(ruling), char, 0.25 * preset(ruling).x_height_mm)
        assert_none_misleads(setter, letter, cues, char)


def shape_of(cues: Cues, number_mm: float, x: float) -> tuple[list[tuple[float, float, float, float]], np.ndarray]:
    """Return the boxes of the numbers and points along the arrows, ``x`` to the right."""
    wide, high = 0.3 * number_mm, 0.5 * number_mm
    boxes = [(x + ax - wide, ay - high, x + ax + wide, ay + high) for _, (ax, ay) in cues.numbers]
    shafts = [(x + px, y) for arrow in cues.arrows for px, y in evenly(list(arrow), 30)]
    return boxes, np.array(shafts or [(-1e6, -1e6)])


@pytest.mark.parametrize("ruling", ["us-3/4", "de-4", "fr-3", "us-1-1/8"])
@pytest.mark.parametrize("name", ["Kalliope", "Mittie", "AVATĄR", "Ilija’s", "Hřøxk", "Wyatt-Fjord"])
def test_cues_of_neighbours_never_meet(setter: Typesetter, ruling: str, name: str) -> None:
    """In a whole name, set close or wide, no cue touches the strokes or the cues of another letter."""
    lines = preset(ruling)
    for spacing in (0.0, round(0.4 * lines.x_height_mm, 2)):
        maker, line = setter.cues(lines, spacing), setter.ruled(lines, spacing).line(name)
        shapes = [shape_of(maker.cues(one.letter), maker.number_mm, one.x) for one in line.letters]
        tracks = [np.array([(x + one.x, y) for stroke in one.letter.strokes
                            for x, y in evenly(flatten(stroke.segments, 0.01), 150)]) for one in line.letters]
        for at, (boxes, shafts) in enumerate(shapes):
            for other in set(range(len(shapes))) - {at}:
                assert all(_outside(tracks[other], box) >= pen_width_mm(lines) / 2 for box in boxes)
                assert np.hypot(*(tracks[other][:, None] - shafts[None]).transpose(2, 0, 1)).min() >= pen_width_mm(
                    lines) / 2
                assert all(_outside(shapes[other][1], box) > 0 for box in boxes)
                assert not any(a[0] < b[2] and b[0] < a[2] and a[1] < b[3] and b[1] < a[3]
                               for a in boxes for b in shapes[other][0])


def test_cues_are_inked_where_their_letter_stands(setter: Typesetter) -> None:
    """On a line every cue moves with its letter: ring and white of each start, an arrow and a number beside it."""
    ruling = preset("us-1")
    maker, line = setter.cues(ruling, 4.0), setter.ruled(ruling, 4.0).line("HAl")
    rings, whites, arrows, numbers = maker.ink(line)
    assert rings.style.width_mm > 1.5 * pen_width_mm(ruling) > whites.style.width_mm
    assert whites.style.colour == WHITE != rings.style.colour
    assert [piece.x for piece in rings.pieces] == [one.x for one in line.letters]
    assert [piece.x for piece in arrows.pieces] == [one.x for one in line.letters]
    wanted = [(one.x + at[0], at[1]) for one in line.letters for _, at in maker.cues(one.letter).numbers]
    assert [(piece.x, piece.y) for piece in numbers.pieces] == wanted
    shapes = [piece.fragment.data for piece in numbers.pieces]
    assert [shapes.index(shape) for shape in shapes] == [0, 1, 2, 0, 1, 2, 0]  # 1 2 3, 1 2 3, 1
    assert shapes[0] == setter.cues(ruling, 4.0).ink(setter.ruled(ruling, 4.0).line("l"))[3].pieces[0].fragment.data
    one, two = (numbers.pieces[at].fragment.bounds for at in (0, 1))
    assert two[2] - two[0] > one[2] - one[0]  # 2 is wider than 1


@pytest.mark.parametrize("ruling", ["us-3/4", "de-4"])
def test_arrows_go_with_the_stroke(setter: Typesetter, ruling: str) -> None:
    """Every arrow runs the way a stroke runs right beside it, to 30°, and its barbs are behind its tip."""
    beside = 0.4 * preset(ruling).x_height_mm
    for char in setter.alphabet.glyphs:
        letter, cues = letter_cues(setter, preset(ruling), char, 3.0)
        tracks = [np.array(evenly(flatten(stroke.segments, 0.01), 200)) for stroke in letter.strokes
                  if not stroke.is_dot]
        points = np.vstack([track[:-1] for track in tracks] or [np.zeros((0, 2))])
        ways = np.vstack([np.diff(track, axis=0) for track in tracks] or [np.zeros((0, 2))])
        for tail, tip, left, _, right in cues.arrows:
            way = np.subtract(tip, tail)
            near = np.hypot(*(points - np.add(tail, tip) / 2).T) < beside
            cosines = ways[near] @ way / np.hypot(*way) / np.hypot(*ways[near].T)
            assert cosines.max() > math.cos(math.radians(30)), char
            assert all(np.subtract(barb, tip) @ way < 0 for barb in (left, right)), char


@pytest.mark.parametrize("ruling", ["us-3/4", "de-4", "fr-3", "uk-5", "us-1-1/8"])
def test_cues_stay_in_the_room_of_their_row(setter: Typesetter, ruling: str) -> None:
    """No number or arrow rises higher over the top line than the headroom that rows reserve, or sinks below the tails.

    Marks over a letter have white of their own, and their cues stand beside them: letters with marks are left out.
    """
    lines = preset(ruling)
    for char in "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789":
        for spacing in (0.0, 0.4 * lines.x_height_mm):
            maker = setter.cues(lines, spacing)
            _, cues = letter_cues(setter, lines, char, spacing)
            half = maker.number_mm / 2
            heights = [y + by for _, (_, y) in cues.numbers for by in (-half, half)]
            heights += [y for arrow in cues.arrows for _, y in arrow]
            assert min(heights, default=0.0) >= -lines.line_height_mm - maker.headroom_mm - 1e-9, char
            assert max(heights, default=0.0) <= lines.descender_mm + 1e-9, char
