"""A page for a clear sleeve, written on with a wipe-off marker for a month: only what a marker of 2 mm can do.

Nothing is folded: a strip of card, laid over the sleeve, hides the name. So all that shows the name stands in one
piece at the top, model and trace, then rows to copy on, then rows to write from memory. The lines are those of the
child, made taller where they are too low for a marker; lines and dots are heavier; the margins are clear of a sleeve's
seam; at the foot stand boxes for the days. Millimetres, y down.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Iterator
from dataclasses import dataclass

from namewright.lines.cues import END_MM
from namewright.lines.fit import fit_name
from namewright.lines.forms import pens_for
from namewright.lines.ink import DARK, RULE, Ink, Style, line
from namewright.lines.ruling import Ruling
from namewright.lines.tuned import check_pens
from namewright.pages import blocks
from namewright.pages.ladder import Part
from namewright.pages.page import Furniture, Item, Page, checked
from namewright.pages.paging import CAPTION_MM, Block, TooTall
from namewright.pages.paper import GUTTER_MM, HEADER_MM, SIGN_OVER_MM, Sheet
from namewright.pages.pictograms import Task, pictogram
from namewright.pages.sheet import SheetMaker
from namewright.pages.sheet_settings import SheetSettings
from namewright.pages.typesetter import Typesetter

MIN_X_HEIGHT_MM = 6.0  # three lines of a marker of 2 mm: an a or e written with it stays open (a rule of ours)
SEAM_MM = 16.0  # the seam of a sleeve may lie some 10 mm in from the edge of its sheet: common practice
DAYS = 20  # a month of school
_DOT_MM, _PITCH_MM, _WEIGHT = 1.3, 2.9, 1.4
_SPACING_MM = 0.5  # more between letters than for a pencil, which writes 1.5 mm wide
_CAPTION_BASE_MM = 3.8
_DAY_MM, _DAYS_MM, _FOOT_MM = 7.5, 17.0, 7.0
_STEP_MM = 5.0  # to which the height of the card is told
_BOX, _EDGE = Style(0.3, DARK), Style(0.4, RULE)


def sleeve_pages(setter: Typesetter, name: str, label: str, settings: SheetSettings) -> tuple[Page, ...]:
    """Return a child's page for a sleeve. Raises MissingLetters, DoesNotFit, or Problem where there are no words."""
    setter = setter.lettering(settings.letters)
    ruling = for_marker(settings.ruling)
    check_pens(ruling)
    spacing = (settings.tuning.letter_spacing or 0.0) + _SPACING_MM
    sheets = [_sheet(settings, turned=turned) for turned in ((True,) if settings.landscape else (False, True))]
    rooms = tuple(sheet.room_width - GUTTER_MM - 2 * END_MM for sheet in sheets)
    fit = fit_name(name, setter.ruled(ruling, spacing), rooms, settings.spoken)
    own = settings._replace(ruling=ruling, tuning=settings.tuning._replace(letter_spacing=spacing))
    sheet = _sheet(settings, turned=settings.landscape or fit.turned)
    return (checked(_Sleeve(SheetMaker(setter, label, name, own, sheet, fit)).page()),)


def for_marker(ruling: Ruling) -> Ruling:
    """Return a ruling as a marker needs it: taller if it is too low, heavier lines, larger dots farther apart."""
    if ruling.x_height_mm < MIN_X_HEIGHT_MM:
        ruling = ruling.scaled_to(ruling.line_height_mm * MIN_X_HEIGHT_MM / ruling.x_height_mm)
    pens, own = pens_for(ruling), ruling.inked
    return ruling._replace(inked=own._replace(dot_mm=max(pens.dot_mm, _DOT_MM), pitch_mm=max(pens.pitch_mm, _PITCH_MM),
                                              weight=max(own.weight, _WEIGHT)))


def _sheet(settings: SheetSettings, *, turned: bool) -> Sheet:
    width, height = settings.paper.size_mm[::-1] if turned else settings.paper.size_mm
    return Sheet(width, height, SEAM_MM, SEAM_MM, SEAM_MM, SEAM_MM)


@dataclass
class _Sleeve:
    """The page, drawn with the rows of a sheet."""

    rows: SheetMaker

    def page(self) -> Page:
        """Return the page. Raises TooTall where a row to copy on and one to write from memory have no room."""
        sheet = self.rows.sheet
        return Page(sheet.width_mm, sheet.height_mm, tuple(self._items()), outline=self.rows.label)

    def _items(self) -> Iterator[Item]:
        rows, sheet = self.rows, self.rows.sheet
        yield from blocks.owner_line(rows.setter, rows.words, rows.label, rows.x0, rows.x1, sheet.top_mm, dated=False)
        y = sheet.top_mm + HEADER_MM
        end = sheet.foot - _FOOT_MM - _DAYS_MM
        drop, foot = self._air(end - y)
        for part, block in self._shown:
            yield from rows.placed(part, block, y, drop, foot)
            y += rows.height_of(part, block, drop, foot)
        yield Furniture((Ink.of(_EDGE, (line(sheet.left_mm, y, sheet.left_mm + GUTTER_MM / 2, y),)),))
        card = math.ceil(y / _STEP_MM) * _STEP_MM
        yield from self._written(y, end, drop)
        yield Furniture(tuple(self._days(end)))
        note = rows.words.say("page.sleeve_card", height=card)
        yield Furniture(blocks.adults_foot(rows.setter, rows.words, rows.x0, sheet.foot - 1.5, note,
                                           rows.settings.whose))

    @property
    def _shown(self) -> list[tuple[Part, list[Block]]]:
        """Return all that shows the name: its model, and its trace."""
        whole = tuple(range(len(self.rows.fit.lines)))
        return [(part, [Block(part, whole)]) for part in (Part.MODEL, Part.DOTS)]

    def _each(self, drop: float) -> float:
        """Return the height of writing the name once: no tail is printed there."""
        return len(self.rows.fit.lines) * (self.rows.space.rise_mm + self.rows.heights.under(Part.MEMORY, drop))

    def _air(self, room: float) -> tuple[float, float]:
        """Return what is left under rows, and under the last one of a part: all that the ruling has, or the least.

        Raises TooTall where even so there is no row to copy on and one to write from memory.
        """
        heights = self.rows.heights
        for drop, foot in ((heights.drop, heights.foot), (heights.least_drop, heights.least_foot)):
            shown = sum(self.rows.height_of(part, block, drop, foot) for part, block in self._shown)
            needed = shown + 2 * (CAPTION_MM + self._each(drop))
            if needed <= room:
                return drop, foot
        raise TooTall(self.rows.name, needed, room)

    def _written(self, y: float, end: float, drop: float) -> Iterator[Item]:
        """Yield rows to copy on, then as many or one fewer to write from memory, spread from ``y`` to ``end``."""
        rows = self.rows
        room = end - y - 2 * CAPTION_MM
        count = int(room / self._each(drop) + 1e-6)
        copied = (count + 1) // 2
        for task, key, times in ((Task.LOOK, "sleeve_copy", copied), (Task.COVER, "sleeve_memory", count - copied)):
            yield Furniture((
                pictogram(task, rows.sheet.left_mm, y - SIGN_OVER_MM),
                blocks.text_at(rows.setter, rows.words.say(f"page.{key}"), rows.x0, y + _CAPTION_BASE_MM)))
            y += CAPTION_MM
            for _ in range(times):
                yield from rows.blank(y, drop)
                y += room / count

    def _days(self, y: float) -> Iterable[Ink]:
        """Yield a box for each day of a month, to colour when the page was used."""
        rows = self.rows
        yield pictogram(Task.COLOUR, rows.sheet.left_mm, y + 4.0)
        yield blocks.text_at(rows.setter, rows.words.say("page.sleeve_days"), rows.x0, y + _CAPTION_BASE_MM)
        step = min(_DAY_MM + 2.0, (rows.x1 - rows.x0 - _DAY_MM) / (DAYS - 1))
        top, foot = y + 6.0, y + 6.0 + _DAY_MM
        pieces = []
        for day in range(DAYS):
            x0, x1 = rows.x0 + day * step, rows.x0 + day * step + _DAY_MM
            pieces += [line(x0, top, x1, top), line(x1, top, x1, foot), line(x1, foot, x0, foot),
                       line(x0, foot, x0, top)]
        yield Ink.of(_BOX, pieces)
