"""Stroke cues: a mark where each stroke starts, and all numbers and arrows or none."""

from __future__ import annotations

import math
from itertools import product
from string import ascii_letters

import numpy as np
import pytest
from scipy.spatial.distance import cdist

from longer import rest_long
from namewright.geometry.boxes import Box
from namewright.geometry.polylines import evenly
from namewright.geometry.segments import Cubic, flatten
from namewright.lines.arrows import Arrow, legs, smooth_polylines
from namewright.lines.clearance import CLEAR_MM, Sides, number_box
from namewright.lines.cues import CueMaker, Cues
from namewright.lines.ink import WHITE
from namewright.lines.ruling import PRESETS, Ruling, preset
from namewright.lines.setting import InkLetter, pen_width_mm
from namewright.pages.typesetter import Typesetter

PLAIN = ascii_letters + "0123456789"
WIDE = 0.42  # x-heights beside a letter that stands alone


def letter_cues(setter: Typesetter, ruling: Ruling, char: str, share: float = WIDE) -> tuple[InkLetter, Cues]:
    """Return a letter on a ruling and its cues, with white beside it."""
    letter = setter.ruled(ruling).line(char).letters[0].letter
    side = share * ruling.x_height_mm
    return letter, setter.thorough_cues(ruling).cues(letter, Sides(side, side))


def strip_ruling(name: str) -> Ruling:
    """Return a ruling as large as letters that stand alone are: an x-height of 6 mm at the least."""
    ruling = preset(name)
    return ruling.scaled_to(ruling.line_height_mm * max(1.0, 6.0 / ruling.x_height_mm))


@pytest.mark.parametrize("name", ["us-3/4", pytest.param("de-4", marks=pytest.mark.long),
                                  pytest.param("fr-2.5", marks=pytest.mark.long), "uk-5"])
def test_letters_that_stand_alone_have_all_their_cues(setter: Typesetter, name: str) -> None:
    """Every letter and figure, with and without marks, has every number, every arrow, and an arrow after each turn."""
    ruling = strip_ruling(name)
    chars = PLAIN + "ÅÆŒİÉÑŠŁĐĦØÞŐŰåæœéñšłđħøþßðěůęçșģđơưấầẩẫậắẵệộợữ" if name == "us-3/4" else PLAIN + "ÅÆŒİłéậẵő"
    lost = [char for char in chars if not letter_cues(setter, ruling, char)[1].complete]
    lost = [char for char in lost if not letter_cues(setter, ruling, char, 0.7)[1].complete]
    assert lost == []


def test_a_letter_has_all_its_cues_or_none(setter: Typesetter) -> None:
    """As many numbers as strokes, as many arrows as strokes that are not dots, one for each further leg; or nothing."""
    seen = set()
    for name, share in (("us-3/4", WIDE), ("us-3/4", 0.1), ("es-3", 0.2)):
        ruling = preset(name)
        for char in setter.alphabet.glyphs:
            letter, cues = letter_cues(setter, ruling, char, share)
            drawn = [stroke for stroke in letter.strokes if not stroke.is_dot]
            assert cues.starts == tuple(stroke.start for stroke in drawn)
            seen.add(cues.complete)
            if not cues.complete:
                assert cues.numbers == cues.arrows == cues.turns == (), char
                continue
            assert [number for number, _ in cues.numbers] == list(range(1, len(letter.strokes) + 1)), char
            assert len(cues.arrows) == len(drawn), char
            turns = [len(legs(smooth_polylines(stroke), ruling.x_height_mm)) - 1 for stroke in drawn]
            assert len(cues.turns) == sum(turns), char
    assert seen == {True, False}


@pytest.mark.parametrize(("char", "turns"), [("b", 1), ("h", 1), ("m", 2), ("n", 1), ("u", 1), ("M", 2), ("z", 2),
                                             ("4", 1), ("d", 1), ("r", 1), ("w", 3), ("o", 0), ("s", 0), ("l", 0)])
def test_an_arrow_tells_what_comes_after_each_turn(setter: Typesetter, char: str, turns: int) -> None:
    """Counted by eye on the letters: corners, and places where the pencil goes back over its track."""
    assert len(letter_cues(setter, preset("us-3/4"), char)[1].turns) == turns


def test_an_arrow_points_the_way_the_pencil_goes(setter: Typesetter) -> None:
    """Beside a stem it points down, beside a bar right; after the turn of n up, of u down, of z back and then right."""
    def ways(char: str) -> list[tuple[int, int]]:
        _, cues = letter_cues(setter, preset("us-1"), char)
        deltas = [np.subtract(arrow.shaft[-1], arrow.shaft[0]) for arrow in (*cues.arrows, *cues.turns)]
        return [(round(dx / math.hypot(dx, dy)), round(dy / math.hypot(dx, dy))) for dx, dy in deltas]
    assert ways("l") == [(0, 1)]
    assert ways("T") == [(0, 1), (1, 0)]
    assert ways("n") == [(0, 1), (0, -1)]
    assert ways("u") == [(0, 1), (0, 1)]
    assert ways("z") == [(1, 0), (-1, 1), (1, 0)]


@pytest.mark.parametrize("char", "oaceOCGQdgq")
def test_the_arrow_of_a_bowl_goes_beside_it(setter: Typesetter, char: str) -> None:
    """It bends as the bowl does, outside it: every point of the shaft is at the same distance from the stroke."""
    letter, cues = letter_cues(setter, preset("us-3/4"), char)
    arrow = cues.turns[0] if char == "e" else cues.arrows[0]
    bowl = [segment for segment in letter.strokes[0].segments if isinstance(segment, Cubic)]
    track = np.array(evenly(flatten(bowl, 0.01), 400))
    away = np.array([np.hypot(*(track - point).T).min() for point in arrow.shaft])
    assert np.ptp(away) < 0.25
    middle = np.add(letter.bounds[:2], letter.bounds[2:]) / 2
    nearest = np.array([track[np.hypot(*(track - point).T).argmin()] for point in arrow.shaft])
    assert all(math.dist(point, middle) > math.dist(on, middle) for point, on in zip(arrow.shaft, nearest, strict=True))


def tracks_of(letter: InkLetter) -> np.ndarray:
    return np.array([point for stroke in letter.strokes for point in evenly(flatten(stroke.segments, 0.01), 250)])


def boxes_of(maker: CueMaker, cues: Cues, x: float = 0.0) -> list[Box]:
    return [number_box(number, (x + ax, ay), maker.number_mm) for number, (ax, ay) in cues.numbers]


def shafts_of(cues: Cues) -> list[np.ndarray]:
    return [np.array(evenly(arrow.path, 60)) for arrow in (*cues.arrows, *cues.turns)]


def nearest(points: np.ndarray, others: np.ndarray) -> float:
    """Return the least distance between points and other points."""
    return float(cdist(points, others).min())


def outside(points: np.ndarray, box: Box) -> float:
    """Return how far the nearest of the points is from a box, 0 where one is inside."""
    low, high = np.array(box[:2]), np.array(box[2:])
    return float(np.hypot(*np.maximum(np.maximum(low - points, points - high), 0).T).min())


@pytest.mark.parametrize(("name", "height"), rest_long(
    [("us-3/4", 19.05), ("uk-5", 12.0), *product(("us-3/4", "de-5", "fr-3", "uk-5"), (12.0, 19.05, 28.6, 40.0, 60.0))],
    first=2))
def test_no_cue_hides_anything(setter: Typesetter, name: str, height: float) -> None:
    """Over all glyphs and the kinds of ruling: a number or an arrow touches no stroke, no start and no other cue, and
    no number stands on a printed line.
    """
    ruling = preset(name).scaled_to(height)
    maker, pen = setter.thorough_cues(ruling), pen_width_mm(ruling)
    for char in setter.alphabet.glyphs:
        letter, cues = letter_cues(setter, ruling, char)
        tracks, boxes, shafts = tracks_of(letter), boxes_of(maker, cues), shafts_of(cues)
        starts = np.array(cues.starts or [(-1e6, -1e6)])
        for at, box in enumerate(boxes):
            assert outside(tracks, box) >= pen / 2, char
            assert outside(starts, box) >= maker.pens.start_mm / 2, char
            assert not any(box[1] < -ruling.height_of(line) < box[3] for line in ruling.lines), char
            assert all(apart(box, other) > 0.3 * maker.number_mm for other in boxes[:at]), char
        for at, shaft in enumerate(shafts):
            assert nearest(tracks, shaft) >= pen / 2, char
            assert nearest(starts, shaft) >= maker.pens.start_mm / 2, char
            assert all(outside(shaft, box) > CLEAR_MM for box in boxes), char
            assert all(nearest(other, shaft) > CLEAR_MM for other in shafts[:at]), char


def apart(one: Box, other: Box) -> float:
    """Return how far two boxes are apart along the axis where they are farther apart."""
    return max(one[0] - other[2], other[0] - one[2], one[1] - other[3], other[1] - one[3])


def to_arrow(at: tuple[float, float], arrow: Arrow) -> float:
    return float(np.hypot(*(np.array(evenly(arrow.shaft, 60)) - at).T).min())


@pytest.mark.parametrize("name", rest_long(["us-3/4", "fr-3", "de-4", "uk-5"], 2))
def test_no_number_can_be_taken_for_another(setter: Typesetter, name: str) -> None:
    """Each is nearer to its own start than to any other, and to its own arrow; a dot's is not near to any arrow."""
    for char in setter.alphabet.glyphs:
        letter, cues = letter_cues(setter, preset(name), char)
        if not cues.complete:
            continue
        drawn = [number for number, _ in cues.numbers if not letter.strokes[number - 1].is_dot]
        own = dict(zip(drawn, cues.arrows, strict=True))
        for number, at in cues.numbers:
            start = letter.strokes[number - 1].start
            others = [stroke.start for stroke in letter.strokes if math.dist(stroke.start, start) > 0.05]
            assert all(math.dist(at, other) > math.dist(at, start) for other in others), char
            away = [to_arrow(at, arrow) for other, arrow in own.items() if other != number]
            least = to_arrow(at, own[number]) if number in own else setter.cues(preset(name)).number_mm * 0.99
            assert all(least < other for other in away), char


@pytest.mark.parametrize("ruling", ["us-3/4", "de-6", "us-1-1/8"])
@pytest.mark.parametrize("name", ["Kalliope", "Mittie", "AVATĄR", "Ilija’s", "Hřøxk", "Wyatt-Fjord"])
def test_cues_of_neighbours_never_meet(setter: Typesetter, ruling: str, name: str) -> None:
    """In a whole name as it is set, no cue touches the strokes or the cues of another letter."""
    lines = preset(ruling)
    maker, line = setter.cues(lines), setter.ruled(lines).line(name)
    each = list(maker.each(line))
    assert any(cues.complete for cues in each)
    at = [placed.x for placed in line.letters]
    tracks = [np.add(tracks_of(placed.letter), (placed.x, 0)) for placed in line.letters]
    boxes = [boxes_of(maker, cues, x) for cues, x in zip(each, at, strict=True)]
    shafts = [[np.add(shaft, (x, 0)) for shaft in shafts_of(cues)] for cues, x in zip(each, at, strict=True)]
    for one in range(len(at)):
        for other in set(range(len(at))) - {one}:
            assert all(outside(tracks[other], box) >= pen_width_mm(lines) / 2 for box in boxes[one])
            assert all(nearest(tracks[other], shaft) >= pen_width_mm(lines) / 2 for shaft in shafts[one])
            assert all(outside(shaft, box) > 0 for box in boxes[one] for shaft in shafts[other])
            assert all(apart(a, b) > 0 for a in boxes[one] for b in boxes[other])


def test_short_names_keep_their_marks(setter: Typesetter) -> None:
    """On the usual lines these names, spaced as they are written, have room for every cue."""
    ruling = preset("us-3/4")
    lost = [name for name in ("Bo", "Mira", "Rose", "Zoë", "Millie", "Tilo", "Kayleigh", "Wilhelmina")
            if setter.cues(ruling).on_line(setter.ruled(ruling).line(name)) is None]
    assert lost == []


def test_cues_are_inked_where_their_letter_stands(setter: Typesetter) -> None:
    """On a line every cue moves with its letter; the first stroke starts at a solid dot, later ones at rings."""
    ruling = preset("us-1")
    maker, line = setter.cues(ruling), setter.ruled(ruling, 6.0).line("HAl")
    each = list(maker.each(line))
    rings, whites, solid, arrows, numbers = maker.ink(line, each, 10.0, 20.0)
    assert rings.style.width_mm > 1.5 * pen_width_mm(ruling) > whites.style.width_mm
    assert whites.style.colour == WHITE not in (rings.style.colour, solid.style.colour)
    at = [10.0 + placed.x for placed in line.letters]
    assert [piece.x for piece in solid.pieces] == [piece.x for piece in arrows.pieces] == at
    assert [piece.x for piece in rings.pieces] == at[:2]  # l has one stroke, and the second of A starts with its first
    wanted = [(x + right, 20.0 + down) for x, cues in zip(at, each, strict=True) for _, (right, down) in cues.numbers]
    assert [(piece.x, piece.y) for piece in numbers.pieces] == [pytest.approx(place) for place in wanted]
    shapes = [piece.fragment.data for piece in numbers.pieces]
    assert [shapes.index(shape) for shape in shapes] == [0, 1, 2, 0, 1, 2, 0]  # 1 2 3, 1 2 3, 1


def test_numbers_and_arrows_can_be_read(setter: Typesetter) -> None:
    """About 3 mm high with lines of about 0.35 mm where the lines are 19 mm apart; never under 2.2 mm."""
    maker = setter.cues(preset("us-3/4"))
    assert maker.number_mm == pytest.approx(3.0, abs=0.2)
    assert maker.line_mm == pytest.approx(0.35, abs=0.03)
    assert all(setter.cues(ruling).number_mm >= 2.2 for ruling in PRESETS.values())


@pytest.mark.parametrize("number", range(1, 7))
def test_a_number_fills_its_box(setter: Typesetter, number: int) -> None:
    """The box by which distances are taken holds the figure with its pen, and is not much wider."""
    maker = setter.thorough_cues(preset("us-3/4"))
    x0, y0, x1, y1 = maker.digit(number).bounds
    box = number_box(number, (0.0, 0.0), maker.number_mm)
    wide = x1 - x0 + maker.line_mm
    assert 0.75 * (box[2] - box[0]) <= wide <= box[2] - box[0] + 0.05
    assert y1 - y0 + maker.line_mm == pytest.approx(maker.number_mm, abs=0.05)


@pytest.mark.parametrize("name", ["us-3/4", "de-6", "uk-6", "us-1-1/8"])
def test_cues_stay_in_the_room_of_their_row(setter: Typesetter, name: str) -> None:
    """No number or arrow rises higher over the top line, or over marks, than the headroom, or sinks below the tails."""
    ruling = preset(name)
    maker = setter.thorough_cues(ruling)
    for char in PLAIN + "ÅİÉẤ":
        letter, cues = letter_cues(setter, ruling, char)
        heights = [y for box in boxes_of(maker, cues) for y in (box[1], box[3])]
        heights += [y for shaft in shafts_of(cues) for _, y in shaft]
        top = min(-ruling.line_height_mm, letter.bounds[1])
        assert min(heights, default=0.0) >= top - maker.headroom_mm - 1e-9, char
        assert max(heights, default=0.0) <= ruling.descender_mm + 1e-9, char
