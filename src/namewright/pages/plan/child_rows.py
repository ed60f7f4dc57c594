"""A row a child on the plan: the name, its letters in the order to practise them, the beats to clap, the group.

Millimetres, y down. Names and beats too long for their column go on below, so that nothing is cut.
"""

from __future__ import annotations

import re
from collections.abc import Sequence

from namewright.lines.ink import RULE, Ink, Style, line, passage
from namewright.message import message
from namewright.pages.drawable import drawable
from namewright.pages.page import Chart, Item, Place, Placed
from namewright.pages.plan.band_shapes import (
    SHAPE_MM,
    STEP_MM,
    band_shape,
    formed_tick,
    letter_on_shape,
    watch_arrowhead,
)
from namewright.pages.plan.flow import MIN_MM, SMALL_MM, TEXT_MM, Flow, fitted, packed
from namewright.pages.plan.sentences import order_said
from namewright.pages.typesetter import Typesetter
from namewright.practice.difficulty import Band
from namewright.practice.ordering import Order
from namewright.practice.ordering import Placed as PlacedChild
from namewright.practice.sequence import faces_left
from namewright.practice.timetable import Progress
from namewright.wording import Wording

_ROW_MM, _LINE_MM, _LIFT_MM = 6.2, 4.2, 0.65  # tiles stand a little above the middle: marks come under them
_LABEL_X, _TILES_X, _BEATS_X, _GROUP_X = 7.0, 40.0, 57.0, 13.0  # the first two from the left, the others from the right
_LABEL_MM, _BEATS_MM = _TILES_X - _LABEL_X - 1.5, _BEATS_X - _GROUP_X - 2.0
_LAST_TOGETHER = 3  # children that go to a new page together: one alone there is overlooked
_RULE = Style(0.1, RULE)


def add_rows(flow: Flow, children: Sequence[Progress], words: Wording, order: Order) -> None:
    """Set the order and its reason, the legend, and a row for every child."""
    flow.heading(words.say("page.plan.rows"), 20.0)
    flow.say(words.say(order_said(order)))
    _add_legend(flow, words, ticked=any(each.formed for each in children))
    placed = [each.placed for each in children]
    columns = [(_tile_lines(flow, each), _label_lines(flow.setter, each), _beat_lines(flow.setter, each))
               for each in placed]
    heights = [max(_ROW_MM * len(letters), _ROW_MM + _LINE_MM * (max(len(names), len(beats)) - 1))
               for letters, names, beats in columns]
    for at, (each, (letters, names, beats), height) in enumerate(zip(children, columns, heights, strict=True)):
        last = len(placed) - at <= _LAST_TOGETHER
        flow.room(sum(heights[at:]) if last else height)
        row = _row(flow, each, letters, (names, beats), words)
        flow.put_in(Place.TABLE, Placed(Place.ROW, tuple(row)), height)


def _add_legend(flow: Flow, words: Wording, *, ticked: bool) -> None:
    """Explain the three shapes, the tick, the arrowhead and the question mark, in as many lines as it takes."""
    shapes: list[tuple[Ink | None, str]] = [
        *((band_shape(band, 1.6, 0.0, 3.2), f"page.plan.legend_{band}") for band in Band),
        *([(formed_tick(0.8, 0.0), "page.plan.legend_formed")] if ticked else []),
        (watch_arrowhead(0.8, 0.0), "page.plan.legend_watch"), (None, "page.plan.legend_guess")]
    x = flow.sheet.left_mm
    flow.y += 0.6
    for shape, key in shapes:
        caption = words.say(key)
        start = shape.bounds()[2] + 0.9 if shape else 0.0
        width = start + flow.setter.text_width(caption, SMALL_MM)
        if x + width > flow.sheet.right_edge:
            x, flow.y = flow.sheet.left_mm, flow.y + 4.6
        middle = flow.y + 2.6
        flow.pages[-1] += [shape.moved(x, middle)] if shape else []
        flow.pages[-1].append(flow.setter.text(caption, SMALL_MM).moved(x + start, middle + SMALL_MM / 2))
        x += width + 4.0
    flow.y += 5.4


def _tile_lines(flow: Flow, each: PlacedChild) -> list[Sequence[tuple[str, Band]]]:
    room = flow.sheet.room_width - _TILES_X - _BEATS_X - 2.0
    count = max(1, int(room / STEP_MM))
    return [each.letters[at:at + count] for at in range(0, len(each.letters), count)] or [()]


def _label_lines(setter: Typesetter, each: PlacedChild) -> tuple[str, ...]:
    """Return the label in one line, smaller if need be, or in lines that end at a space, a hyphen or else a beat."""
    label = drawable(setter, each.child.label)
    words = re.findall(r"[^\s\-‐‑]*[\s\-‐‑]*", label)
    long = any(setter.text_width(word.strip() or "-", MIN_MM) > _LABEL_MM for word in words)
    return _lines(setter, each.beats if long and "".join(each.beats) == label else words, _LABEL_MM)


def _beat_lines(setter: Typesetter, each: PlacedChild) -> tuple[str, ...]:
    """Return the beats, a dot between them where neither a space nor a hyphen parts them; a guess is marked."""
    dotted = [part if part.endswith((" ", "-", "‐", "‑")) else f"{part} · " for part in each.beats]
    dotted[-1:] = [dotted[-1].rstrip("· ") + ("" if each.beats_known else " ?")] if dotted else []
    return _lines(setter, [drawable(setter, part) for part in dotted], _BEATS_MM)


def _lines(setter: Typesetter, pieces: Sequence[str], room: float) -> tuple[str, ...]:
    whole = "".join(pieces).strip()
    return (whole,) if setter.text_width(whole or "-", MIN_MM) <= room else packed(setter, pieces, room, TEXT_MM)


def _row(flow: Flow, child: Progress, lines: Sequence[Sequence[tuple[str, Band]]],
         columns: tuple[Sequence[str], Sequence[str]], words: Wording) -> list[Item]:
    """Return a child's row: its place, its name at the head of the row, its letters, its beats, its table."""
    each = child.placed
    left, right, middle = flow.sheet.left_mm, flow.sheet.right_edge, flow.y + _ROW_MM / 2
    baseline = middle + TEXT_MM / 2
    places = ((left + _LABEL_X, _LABEL_MM), (right - _BEATS_X, _BEATS_MM))
    names, beats = ([ink for number, text in enumerate(texts)
                     for ink in fitted(flow.setter, text, x, baseline + number * _LINE_MM, room)]
                    for (x, room), texts in zip(places, columns, strict=True))
    tiles = [ink for number, letters in enumerate(lines)
             for ink in _tiles(flow.setter, letters, left + _TILES_X, middle + number * _ROW_MM - _LIFT_MM)]
    tiles += _ticks(flow, lines, flow.y, frozenset(child.formed))
    table = words.say("page.plan.table_short", number=each.group) if each.group else ""
    return [Ink.of(_RULE, (line(left, flow.y, right, flow.y),)),
            Placed(Place.CELL, fitted(flow.setter, str(each.position or "–"), left, baseline, _LABEL_X)),
            Placed(Place.ROW_HEAD, passage(names)),
            Placed(Place.CELL, (Chart(_told(child, words), tuple(tiles)),) if tiles else ()),
            Placed(Place.CELL, passage(beats)),
            Placed(Place.CELL, fitted(flow.setter, table, right - _GROUP_X, baseline, _GROUP_X))]


def _told(child: Progress, words: Wording) -> str:
    """Return in words what the tiles of a child show: each letter with its band, and what has been formed."""
    said = words.listed([message("shown.banded", letter=letter, band=band) for letter, band in child.placed.letters])
    return f"{said}; {words.say('page.plan.legend_formed')}: {words.listed(child.formed)}" if child.formed else said


def _tiles(setter: Typesetter, letters: Sequence[tuple[str, Band]], left: float, height: float) -> list[Ink]:
    items: list[Ink] = []
    for at, (letter, band) in enumerate(letters):
        x = left + at * STEP_MM
        items += drawn(setter, letter, band, x, height)
        if faces_left(letter):
            items.append(watch_arrowhead(x + SHAPE_MM / 2, height + SHAPE_MM / 2 + 0.65))
    return items


def _ticks(flow: Flow, lines: Sequence[Sequence[tuple[str, Band]]], top: float, formed: frozenset[str]) -> list[Ink]:
    """Return a tick under the right half of each letter that has been formed."""
    x, y = flow.sheet.left_mm + _TILES_X + 0.92 * SHAPE_MM, top + _ROW_MM / 2 - _LIFT_MM + SHAPE_MM / 2 + 0.65
    return [formed_tick(x + at * STEP_MM, y + number * _ROW_MM) for number, letters in enumerate(lines)
            for at, (letter, _) in enumerate(letters) if letter in formed]


def drawn(setter: Typesetter, letter: str, band: Band, x: float, y: float) -> tuple[Ink, ...]:
    """Return a letter's mark; one that our letters lack is shown by its bare shape."""
    if setter.alphabet.missing(letter):
        return (band_shape(band, x + SHAPE_MM / 2, y, SHAPE_MM),)
    return letter_on_shape(setter, letter, band, x, y)
