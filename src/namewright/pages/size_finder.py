"""The size finder: one child's own name at six line heights on one page, to find by trying which fits.

Where a page does not reach 40 mm and the name does, a second has taller rows, and between the tallest of the first page
as many as fill it.

Over every row stand its height and the name, small and solid; the row itself is empty, to be written on. The model
stands over the row and at its left end, where neither hand covers it. Millimetres, y down.
"""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from itertools import pairwise

from namewright.lines.fit import DoesNotFit
from namewright.lines.forms import Form
from namewright.lines.ink import passage
from namewright.lines.ruling import ALL_LINES, print_ruling
from namewright.lines.setting import SetLine, pen_width_mm
from namewright.pages import blocks
from namewright.pages.page import Furniture, Item, Page, checked
from namewright.pages.paper import Sheet, sheet_of
from namewright.pages.typesetter import Typesetter
from namewright.wording import Wording, wording

HEIGHTS = 6
MIN_MM, MAX_MM = 8.0, 60.0
MORE, MORE_TO_MM = 3, 40.0  # rows of a second page, and how tall they may be: ours, as is that there is one
_APART = 1.125  # rows that differ by less than an eighth feel alike; ours
_HEADER_MM, _FOOTER_MM = 15.0, 7.0
_NOTE_MM, _NOTE_STEP_MM = 1.5, 4.3
_LABEL_MM = 24.0  # wider than any height in words
_MODEL_MM = 2.8  # x-height of the small model
_SMALL_PENCIL_MM = 0.4
_CLEAR_MM = 1.5
_MIN_WRITING = 1.1  # of a row, in widths of the name: a child's letters run wide
_MAX_SPREAD_MM = 9.0


def size_pages(setter: Typesetter, name: str, label: str, settings: blocks.PageSettings) -> tuple[Page, ...]:
    """Return six heights in equal ratios, from 8 mm to the tallest that a page and the name allow; then a few more.

    Of the ruling in ``settings`` only the proportions count.
    A page is turned where that lets a long name stand on taller lines. Raises MissingLetters, or
    DoesNotFit for a name that is too wide for six different heights.
    """
    setter = setter.lettering(settings.letters)
    model = _small(setter, name)
    upright, turned = (_layout(setter, name, model, settings, turned) for turned in (False, True))
    best = turned if turned.tallest > upright.tallest else upright
    if not best.rows:
        raise DoesNotFit(name, turned.needed_mm, turned.sheet.room_width)
    more = max((_taller(setter, name, model, settings, turned, best.heights) for turned in (False, True)),
               key=lambda layout: layout.tallest)
    return tuple(_page(setter, label if at == 0 else None, label, settings, layout, model)
                 for at, layout in enumerate((best, more)) if layout.rows)


def _page(setter: Typesetter, outline: str | None, label: str, settings: blocks.PageSettings, best: _Layout,
          model: SetLine) -> Page:
    sheet, words = best.sheet, wording(settings.language)
    items: list[Item] = list(blocks.text_with_name(setter, words, "page.sizes.owner", label, sheet.left_mm,
                                                   sheet.top_mm + 5.0))
    items.append(Furniture((blocks.text_at(setter, words.say("page.sizes.try"), sheet.left_mm, sheet.top_mm + 11.0),)))
    items += _ruled(setter, words, best, model)
    text = passage(blocks.text_at(setter, line, sheet.left_mm,
                                  sheet.foot - _FOOTER_MM - (len(best.notes) - 1 - at) * _NOTE_STEP_MM, _NOTE_MM)
                   for at, line in enumerate(best.notes))
    text += blocks.check_bar(setter, words, sheet.left_mm, sheet.foot - 1.5)
    return checked(Page(sheet.width_mm, sheet.height_mm, (*items, Furniture(text)), outline=outline))


def _small(setter: Typesetter, name: str) -> SetLine:
    """Set the small model: close, since nobody writes between its letters; a school's font sets its own."""
    pencil = _SMALL_PENCIL_MM if setter.school_font is None else None
    return setter.ruled(print_ruling(_MODEL_MM), 0.0, pencil).line(name)


@dataclass(frozen=True, slots=True)
class _Layout:
    """A sheet, upright or turned, with the rows that fit on it (none where not six different ones do)."""

    sheet: Sheet
    notes: tuple[str, ...]
    rows: tuple[SetLine, ...]
    needed_mm: float
    spread: float

    @property
    def heights(self) -> tuple[float, ...]:
        return tuple(round(row.ruling.line_height_mm, 2) for row in self.rows)

    @property
    def tallest(self) -> float:
        return self.heights[-1] if self.rows else 0.0


def _layout(setter: Typesetter, name: str, model: SetLine, settings: blocks.PageSettings, turned: bool) -> _Layout:
    """Set the name at six heights, the tallest as tall as fits, down to the half millimetre.

    Paper without lines has none to choose among: here it gets them all.
    """
    empty, tallest = _empty(setter, settings, turned), MAX_MM
    while len(heights := _heights(tallest)) == HEIGHTS:
        empty = _filled(setter, name, model, settings, empty, heights)
        if empty.rows:
            return empty
        tallest -= 0.5
    return empty


def _taller(setter: Typesetter, name: str, model: SetLine, settings: blocks.PageSettings, turned: bool,
            shown: Sequence[float]) -> _Layout:
    """Set the name at heights over those shown, the tallest at most 40 mm, and between these, the tallest first.

    Three heights at the most; none where the next over those shown does not fit.
    """
    empty, above = _empty(setter, settings, turned), shown[-1]
    for tallest in range(round(MORE_TO_MM), math.floor(above), -1):
        count = max(1, min(MORE, int(math.log(tallest / above, _APART))))
        steps = {round(above * (tallest / above) ** (step / count)) for step in range(1, count + 1)}
        made = _filled(setter, name, model, settings, empty, [float(one) for one in sorted(steps) if one > above])
        if made.rows:
            return _with_those_between(setter, name, model, settings, made, shown)
    return empty


def _with_those_between(setter: Typesetter, name: str, model: SetLine, settings: blocks.PageSettings, made: _Layout,
                        shown: Sequence[float]) -> _Layout:
    """Return a layout with the heights between those shown, too, the tallest first, while there is room."""
    for low, high in reversed(tuple(pairwise(shown))):
        between = float(round(math.sqrt(low * high)))
        if len(made.rows) == MORE or not low < between < high:
            break
        fuller = _filled(setter, name, model, settings, made, [between, *made.heights])
        if not fuller.rows:
            break
        made = fuller
    return made


def _empty(setter: Typesetter, settings: blocks.PageSettings, turned: bool) -> _Layout:
    sheet = sheet_of(settings.paper, landscape=turned, binding=settings.binding)
    notes = setter.wrapped(wording(settings.language).say("page.sizes.note"), sheet.room_width, _NOTE_MM)
    return _Layout(sheet, notes, (), 0.0, 0.0)


def _filled(setter: Typesetter, name: str, model: SetLine, settings: blocks.PageSettings, empty: _Layout,
            heights: Sequence[float]) -> _Layout:
    """Return a layout with rows of these heights; without any where they do not fit. Paper without lines gets all."""
    sheet = empty.sheet
    room = (sheet.foot - sheet.top_mm - _HEADER_MM - _FOOTER_MM - len(empty.notes) * _NOTE_STEP_MM - _CLEAR_MM
            - len(heights) * _over(model))
    lined = settings.ruling._replace(gap_mm=0.0, lines=settings.ruling.lines or ALL_LINES)
    rows = tuple(setter.ruled(lined.scaled_to(one)).line(name) for one in heights)
    needed, tall = _MIN_WRITING * rows[-1].width_mm, _tall(rows)
    if tall > room or needed > sheet.room_width:
        return replace(empty, rows=(), needed_mm=needed)
    return replace(empty, rows=rows, needed_mm=needed,
                   spread=min(_MAX_SPREAD_MM, (room - tall) / max(1, len(heights) - 1)))


def _over(model: SetLine) -> float:
    """Return what the small model takes over a row."""
    return model.rise_mm + model.drop_mm + 2 * _CLEAR_MM


def _tall(rows: Sequence[SetLine]) -> float:
    return sum(blocks.row_space(row.ruling, [row]).height_mm for row in rows)


def _heights(tallest: float) -> list[float]:
    """Return the different heights from the least to ``tallest``: whole millimetres, halves where those coincide."""
    exact = [MIN_MM * (tallest / MIN_MM) ** (step / (HEIGHTS - 1)) for step in range(HEIGHTS)]
    whole = sorted({float(round(one)) for one in exact})
    return whole if len(whole) == HEIGHTS else sorted({round(2 * one) / 2 for one in exact})


def _ruled(setter: Typesetter, words: Wording, layout: _Layout, model: SetLine) -> Iterator[Item]:
    """Yield each height with its small model and the empty row under them."""
    sheet = layout.sheet
    x, y = sheet.left_mm + _LABEL_MM, sheet.top_mm + _HEADER_MM
    for row in layout.rows:
        base = y + _CLEAR_MM + model.rise_mm
        height = words.say("page.sizes.height", height=row.ruling.line_height_mm)
        yield blocks.text_at(setter, height, sheet.left_mm, base)
        yield from blocks.letters_at(setter, model, Form.SOLID, x + pen_width_mm(model.ruling) / 2, base)
        space = blocks.row_space(row.ruling, [row])
        baseline = y + _over(model) + space.rise_mm
        yield blocks.ruled_row(row.text, Form.BLANK, row.ruling, sheet.left_mm, sheet.right_edge, baseline)
        y += _over(model) + space.height_mm + layout.spread
