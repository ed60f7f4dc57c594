"""Rows of a name on the child's own lines, with letters or marks left out. Millimetres, y down."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

import unicodedata2

from namewright.geometry import boxes
from namewright.letters.strokes import Stroke, polyline_stroke
from namewright.lines.fit import fit_name
from namewright.lines.forms import Form
from namewright.lines.ink import DARK, RULE, Ink, Piece, Style, line, stroke_fragment
from namewright.lines.ruling import Ruling
from namewright.lines.setting import InkLetter, SetLetter, SetLine, pen_width_mm
from namewright.names.clusters import clusters
from namewright.pages import blocks
from namewright.pages.know.frame import Frame
from namewright.pages.page import Guide, Row
from namewright.pages.paging import TooTall
from namewright.pages.paper import GUTTER_MM, sheet_of
from namewright.pages.sheet_settings import SheetSettings
from namewright.pages.typesetter import Typesetter
from namewright.practice.gaps import GAP, GapRow
from namewright.practice.name_likeness import Zone, zone_of

_SPACINGS = (0.4, 0.25, 0.12, 0.0)  # of the x-height: a gap is wider than a letter, for a young hand writes in it
_BOX = Style(0.35, DARK)
_STROKE = Style(0.9, DARK)
_UNDER = Style(0.3, RULE)
_MIN_PLACE = 0.4  # of the x-height: the least width of a letter's place, for an i of a young hand
_MIN_MARK_MM = 3.0
_ABOVE = 230  # combining class of marks over a letter, under which i and j lose their dot (Unicode, Soft_Dotted)
_FLAT_MM = 0.1  # how nearly curves are followed
_BESIDE_MM = 0.8  # white between a letter's ink and the box around its place


@dataclass(frozen=True, slots=True)
class Spread:
    """A name set wide enough to write between its letters, in one or two lines, and whether the page is turned."""

    lines: tuple[SetLine, ...]
    turned: bool


def spread(setter: Typesetter, name: str, settings: SheetSettings, *, with_gaps: bool = False) -> Spread:
    """Set a name as it stands on the child's sheets; one ``with_gaps`` as wide as the page lets it be.

    Raises DoesNotFit, MissingLetters.
    """
    ruling, own = settings.ruling, settings.tuning.letter_spacing or 0.0
    room = sheet_of(settings.paper, landscape=settings.landscape, binding=settings.binding).room_width - GUTTER_MM
    for share in _SPACINGS if with_gaps else _SPACINGS[-1:]:
        wide = setter.ruled(ruling, own + round(share * ruling.x_height_mm, 2)).line(name)
        if wide.width_mm + 2 * _BESIDE_MM <= room:
            return Spread((wide,), False)
    turns = (True,) if settings.landscape else (False, True)
    rooms = [sheet_of(settings.paper, landscape=turn, binding=settings.binding).room_width - GUTTER_MM - 2 * _BESIDE_MM
             for turn in turns]
    fit = fit_name(name, setter.ruled(ruling, own), rooms, settings.spoken)
    return Spread(fit.lines, fit.turned)


def height_of(frame: Frame, lines: Sequence[SetLine]) -> float:
    """Return what the rows of a name take. Raises TooTall where they have no page."""
    height = len(lines) * blocks.row_space(frame.settings.ruling, lines).height_mm
    room = frame.sheet.foot - frame.sheet.top_mm
    if height > room / 2:
        raise TooTall("".join(one.text for one in lines), height, room / 2)
    return height


def under_tails(frame: Frame, lines: Sequence[SetLine]) -> float:
    """Return the white that a row of a name needs beside its own, so that its tails keep off what follows."""
    lowest = max(one.drop_mm for one in lines)
    return max(0.0, lowest + blocks.ROW_CLEAR_MM - blocks.row_space(frame.settings.ruling, lines).drop_mm)


def solid(frame: Frame, lines: Sequence[SetLine]) -> None:
    """Set a name solid on its lines and go on below it, clear of its tails: a caption follows."""
    space = blocks.row_space(frame.settings.ruling, lines)
    for one in lines:
        frame.items.append(frame.row(one, Form.SOLID, frame.y + space.rise_mm))
        frame.y += space.height_mm
    frame.y += under_tails(frame, lines)


def blank(frame: Frame, lines: Sequence[SetLine]) -> None:
    """Set empty lines, as many as the name takes, and go on below them."""
    space = blocks.row_space(frame.settings.ruling, lines)
    for one in lines:
        frame.items.append(frame.row(one, Form.BLANK, frame.y + space.rise_mm, ()))
        frame.y += space.height_mm


def with_gaps(frame: Frame, lines: Sequence[SetLine], gaps: GapRow, *, boxed: bool) -> None:
    """Set a name with its gaps and go on below it: boxed in the letters' outlines, or with a stroke to write on."""
    space = blocks.row_space(frame.settings.ruling, lines)
    for one, places in zip(lines, _places(gaps.name, lines), strict=True):
        frame.items.append(_gap_row(frame, one, places, gaps, frame.y + space.rise_mm, boxed))
        frame.y += space.height_mm


def _places(name: str, lines: Sequence[SetLine]) -> Iterator[range]:
    """Yield for each line the places, in the whole name, of its letters; a space that parts two lines is in neither."""
    letters, start = clusters(name), 0
    for one in lines:
        while letters[start].isspace():
            start += 1
        end = start + len(clusters(one.text))
        yield range(start, end)
        start = end


def _gap_row(frame: Frame, one: SetLine, places: range, gaps: GapRow, baseline: float, boxed: bool) -> Row:
    ruling, x = one.ruling, frame.left + _BESIDE_MM + pen_width_mm(one.ruling) / 2
    inks: list[Ink] = []
    shown: list[str] = []
    letters = iter(one.letters)
    for at, cluster in zip(places, clusters(one.text), strict=True):
        if cluster.isspace():
            shown.append(" ")
            continue
        placed = next(letters)
        shown.append(gaps.shown[at])
        if at in gaps.letters:
            inks.append(_place_for(placed, ruling, x, baseline, boxed))
        elif at in gaps.marks:
            bare = SetLine(cluster, ruling, (placed._replace(letter=without_its_marks(placed.letter)[0]),), one.bounds)
            inks += frame.setter.inker(ruling).ink(bare, Form.SOLID, x, baseline)
            inks += (_box(box, placed.x + x, baseline) for box in mark_boxes(placed.letter))
        else:
            line_of_one = SetLine(cluster, ruling, (placed,), placed.letter.bounds)
            inks += frame.setter.inker(ruling).ink(line_of_one, Form.SOLID, x, baseline)
    text = "".join(shown)
    drawn: tuple[Guide | Ink, ...] = (*blocks.guides(ruling, frame.left, frame.right, baseline), *inks)
    return Row(text, "gaps", drawn) if text.strip(GAP + " ") else Row("", Form.BLANK, drawn)


def _place_for(placed: SetLetter, ruling: Ruling, x: float, baseline: float, boxed: bool) -> Ink:
    """Return the outline of a letter's place, or the stroke on which it stands."""
    x0, x1 = _standing(placed.letter)
    wider = max(0.0, _MIN_PLACE * ruling.x_height_mm - (x1 - x0)) / 2
    x0, x1 = x0 - wider, x1 + wider
    if boxed:
        return _box((x0 - _BESIDE_MM, -_top(placed.letter, ruling), x1 + _BESIDE_MM, _bottom(placed.letter, ruling)),
                    placed.x + x, baseline)
    return Ink.of(_STROKE, (line(x + placed.x + x0, baseline, x + placed.x + x1, baseline),))


def _standing(letter: InkLetter) -> tuple[float, float]:
    """Return from where to where a letter reaches over its line: the tail of j goes under its neighbour."""
    over = [x for stroke in letter.strokes for x, y in stroke.flattened(_FLAT_MM) if y <= _FLAT_MM]
    return (min(over), max(over)) if over else (letter.bounds[0], letter.bounds[2])


def _top(letter: InkLetter, ruling: Ruling) -> float:
    """Return how high a letter's outline reaches: the midline or the top line, higher where it has marks."""
    tall = zone_of(letter.cluster) in (Zone.TALL, Zone.WHOLE)
    line_mm = ruling.line_height_mm if tall else ruling.x_height_mm
    return max(line_mm, -letter.bounds[1] + _BESIDE_MM) if letter.marks else line_mm


def _bottom(letter: InkLetter, ruling: Ruling) -> float:
    return ruling.descender_mm if zone_of(letter.cluster) in (Zone.TAIL, Zone.WHOLE) else 0.0


def without_its_marks(letter: InkLetter) -> tuple[InkLetter, tuple[Stroke, ...]]:
    """Return a letter that lacks its marks, and the strokes of these; the i of í has no dot, that of į keeps it."""
    decomposed = unicodedata2.normalize("NFD", letter.cluster)
    over = any(unicodedata2.combining(mark) == _ABOVE for mark in decomposed[1:])
    kept = len(letter.base_strokes) + (decomposed[0] in "ij" and not over)
    bare = letter._replace(strokes=letter.strokes[:kept], marks=0, shape=("without its marks", letter.shape))
    return bare, letter.strokes[kept:]


def mark_boxes(letter: InkLetter) -> tuple[boxes.Box, ...]:
    """Return the boxes for a letter's marks, one for those over it, one for those under it and one for those beside it.

    What stands clear over or under the letter has its box about the letter's middle.
    """
    bare, lost = without_its_marks(letter)
    own = boxes.joined([stroke.bounds() for stroke in bare.strokes])
    places: dict[int, list[boxes.Box]] = {}
    for stroke in lost:
        _, y0, _, y1 = bounds = stroke.bounds()
        places.setdefault((y0 + y1 > 2 * own[3]) - (y0 + y1 < 2 * own[1]), []).append(bounds)
    return tuple(_mark_box(boxes.grown(boxes.joined(these), _BESIDE_MM), own) for these in places.values())


def _mark_box(box: boxes.Box, own: boxes.Box) -> boxes.Box:
    x0, y0, x1, y1 = box
    left, top, right, bottom = own
    if y1 - _BESIDE_MM <= top or y0 + _BESIDE_MM >= bottom:
        middle = (left + right) / 2
        half = max(middle - x0, x1 - middle)
        x0, x1 = middle - half, middle + half
    taller = max(0.0, _MIN_MARK_MM - (y1 - y0)) / 2
    return (x0, y0 - taller, x1, y1 + taller)


def _box(box: boxes.Box, x: float, y: float) -> Ink:
    x0, y0, x1, y1 = box
    corners = [(0.0, 0.0), (x1 - x0, 0.0), (x1 - x0, y1 - y0), (0.0, y1 - y0), (0.0, 0.0)]
    return Ink.of(_BOX, (Piece(x + x0, y + y0, stroke_fragment([polyline_stroke(corners)])),))


def letters_in(frame: Frame, letters: Sequence[str], ruling: Ruling, middles: Sequence[float], baseline: float) -> None:
    """Set letters to read, each about its middle, with a short stroke under each, so that d is no p."""
    inks: list[Ink] = []
    for letter, middle in zip(letters, middles, strict=True):
        one = frame.setter.ruled(ruling).line(letter)
        x = middle - (one.bounds[2] - one.bounds[0]) / 2
        inks += blocks.letters_at(frame.setter, one, Form.SOLID, x, baseline)
        half = max(one.width_mm, 0.8 * ruling.x_height_mm) / 2
        inks.append(Ink.of(_UNDER, (line(middle - half, baseline + 1.6, middle + half, baseline + 1.6),)))
    frame.items.append(Row(" ".join(letters), "letters", tuple(inks)))
