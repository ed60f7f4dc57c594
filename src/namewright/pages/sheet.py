"""A child's practice sheet: model, a little tracing, tile boxes, copying beside a near model, writing from memory.

What stands on it follows the level of support. The studies in ``practice/evidence.toml`` set the balance:
copying and writing from memory did better than tracing, so tracing never takes more than two rows and never
more than copying and memory together; stroke marks stay on the model; a fold line hides all that shows the name
from the rows of memory. A left-hander copies from above: the hand covers what is left of it.

- full: model with stroke marks; one row of dots, which run out in it where the name stands there again, or in a row of
  their own where the page has room for one; copying; memory
- partial: model with stroke marks; one row where the dots run out; copying; memory
- light: model with stroke marks; no tracing; copying and memory in turn
- independent: a plain model; memory before copying

Millimetres, y down.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from itertools import takewhile

from namewright.lines.cues import END_MM
from namewright.lines.fit import Fit, fit_name
from namewright.lines.ink import Ink
from namewright.lines.ruling import GuideLine
from namewright.lines.setting import SetLine
from namewright.lines.tuned import check_pens
from namewright.pages import blocks
from namewright.pages.ladder import Part, needed, wished
from namewright.pages.letter_strip import strip_over
from namewright.pages.name_rows import CLEAR_MM, NameRows
from namewright.pages.page import Furniture, Item, Page, checked
from namewright.pages.paging import CAPTION_MM, FOLD_MM, Block, Heights, Plan, TooTall, grouped, planned
from namewright.pages.paper import GUTTER_MM, HEADER_MM, SIGN_OVER_MM, Sheet, sheet_of
from namewright.pages.pictograms import Task, pictogram
from namewright.pages.sheet_settings import SheetSettings
from namewright.pages.typesetter import Typesetter
from namewright.settings import Support
from namewright.wording import wording

_FOOTER_MM = 5.0
_SIGN_RAISED_MM = 3.0  # by so much a pictogram begins over its caption where boxes take the gutter
_CAPTION_BASE_MM = 3.9  # so low a caption keeps clear of stroke marks below it
_CAPTION_LOWER_MM = 0.6  # it stands lower where it may: nearer to its own row than to the row before
_OVER_DOT_MM = 0.4  # white between a caption's tail and a start dot
_AFTER_TILES_MM = 3.0
_BEST_SIGN_MM = 7.0
_PAIR = 0.8  # zones: two lines of two rows that are nearer read as one double line
_TASK_OF = {Part.TILES: Task.TILES, Part.COPY: Task.LOOK, Part.MEMORY: Task.FOLD, Part.FIRST: Task.ALONE}


def practice_pages(setter: Typesetter, name: str, label: str, settings: SheetSettings) -> tuple[Page, ...]:
    """Return a child's sheet, one page unless the lines are so tall that its parts need more.

    Raises MissingLetters, DoesNotFit, or Problem for a language that has no words.
    """
    setter = setter.lettering(settings.letters)
    check_pens(settings.ruling)
    ruled = setter.ruled(settings.ruling, settings.tuning.letter_spacing or 0.0)
    fit = fit_name(name, ruled, _rooms(settings), settings.spoken)
    sheet = sheet_of(settings.paper, landscape=settings.landscape or fit.turned, binding=settings.binding)
    maker = SheetMaker(setter, label, name, settings, sheet, fit)
    return tuple(checked(page) for page in maker.pages())


def _rooms(settings: SheetSettings) -> tuple[float, ...]:
    turns = (True,) if settings.landscape else (False, True)
    sheets = [sheet_of(settings.paper, landscape=turn, binding=settings.binding) for turn in turns]
    return tuple(sheet.room_width - GUTTER_MM - 2 * END_MM for sheet in sheets)


class SheetMaker:
    """The parts of a child's sheet, each laid out where it is told to stand, and the pages of them."""

    def __init__(self, setter: Typesetter, label: str, name: str, settings: SheetSettings, sheet: Sheet,
                 fit: Fit) -> None:
        self.setter, self.label, self.name, self.settings = setter, label, name, settings
        self.sheet, self.fit = sheet, fit
        self._captions: dict[Part, str] = {}
        self.words = wording(settings.language)
        self.ruling = settings.ruling
        self.rows = NameRows(setter, name, settings, sheet, fit)
        self.x0, self.x1, self.space, self.marks = self.rows.x0, self.rows.x1, self.rows.space, self.rows.marks
        self.heights = self._heights()

    # --- what stands on the sheet ----------------------------------------------------------------

    def pages(self) -> Iterable[Page]:
        """Yield the finished pages. Raises TooTall."""
        support, ladder = self.settings.support, self.settings.ladder
        plans = planned(self.heights, len(self.fit.lines), needed(support, ladder), wished(support, ladder),
                        self.settings.tuning.rows)
        if plans is None:
            raise TooTall(self.name, self._tallest(), self.heights.room)
        shown = {block.part for plan in plans for block in plan.blocks}
        self.rows.fades = support is Support.FULL and ladder.rungs is None and Part.RUN_OUT not in shown
        for count, plan in enumerate(plans):
            yield Page(self.sheet.width_mm, self.sheet.height_mm, tuple(self._items(plan)),
                       outline=self.label if count == 0 else None)

    def _heights(self) -> Heights:
        """Return what the name's rows take; under what hangs or is printed lowest, white stays for a caption."""
        lowest = max(blocks.printed_depth(self.ruling), *(line.drop_mm for line in self.fit.lines))
        clear = blocks.ROW_CLEAR_MM
        tail = max(line.drop_mm for line in self.fit.lines)
        drop = max(self.space.drop_mm, tail + clear)  # a model's tail over the row beneath it
        asked = self.ruling.descender_mm + self.ruling.gap_mm
        least_foot = max(lowest + blocks.MIN_CLEAR_MM, asked - CAPTION_MM)
        untailed = max(blocks.printed_depth(self.ruling) + blocks.MIN_CLEAR_MM, asked - CAPTION_MM)
        return Heights(
            room=self.sheet.foot - self.sheet.top_mm - HEADER_MM - _FOOTER_MM,
            rise=self.space.rise_mm,
            drop=drop, least_drop=max(tail + clear, blocks.printed_depth(self.ruling) + self._least_gap),
            foot=max(drop, lowest + clear), least_foot=least_foot,
            tiles=self.rows.tiles.height_mm + _AFTER_TILES_MM, doubled=not self.rows.beside,
            over_model=self.marks.over_mm(self.space.rise_mm) if self.marks else 0.0,
            over_marked=self.marks.headroom_mm if self.marks else 0.0,
            strip=self.marks.below_mm(least_foot) if self.marks else 0.0, tail=max(0.0, least_foot - untailed),
            blank=self.ruling.descender_mm + self.ruling.gap_mm)

    @property
    def _least_gap(self) -> float:
        """Return the least white from a row's lowest line to the next row's top, which must not read as a pair."""
        if self.settings.tuning.row_gap is not None:
            return max(blocks.ROW_CLEAR_MM, self.settings.tuning.row_gap)
        pair = {GuideLine.TOP, GuideLine.DESCENDER} <= self.ruling.lines and not self.ruling.bands_mm
        return max(blocks.ROW_CLEAR_MM, min(self.ruling.gap_mm, _PAIR * self.ruling.descender_mm) if pair else 0.0)

    def _tallest(self) -> float:
        """Return the least height of rows that must not be parted: those of the model, or a model and its copy."""
        return max(self.heights.page([Block(part, (0,))], self.heights.least_drop, self.heights.least_foot)
                   for part in needed(self.settings.support, self.settings.ladder))

    # --- where it stands -------------------------------------------------------------------------

    def _items(self, plan: Plan) -> Iterable[Item]:
        parts = list(grouped(plan.blocks))
        yield from blocks.owner_line(self.setter, self.words, self.label, self.x0, self.x1, self.sheet.top_mm)
        y = self.sheet.top_mm + HEADER_MM
        for count, (part, group) in enumerate(parts):
            if part is Part.MEMORY:  # all that shows the name is over it: models, boxes, or the owner's line alone
                yield blocks.fold_line(self.sheet.width_mm, y + 1.0)
                y += FOLD_MM
            y += plan.spread if count else 0.0
            yield from self.placed(part, group, y, plan.drop, plan.foot)
            y += self.height_of(part, group, plan.drop, plan.foot)
        note = self.words.say("page.fold") if any(part is Part.MEMORY for part, _ in parts) else ""
        yield Furniture(blocks.adults_foot(self.setter, self.words, self.x0, self.sheet.foot - 1.5, note,
                                           self.settings.whose))

    def height_of(self, part: Part, group: Sequence[Block], drop: float, foot: float) -> float:
        """Return the height of a part with its caption."""
        return CAPTION_MM + self.heights.group(part, group, drop, foot)

    def placed(self, part: Part, group: Sequence[Block], y: float, drop: float, foot: float) -> Iterable[Item]:
        """Yield a part, its caption at ``y``; its rows take ``drop`` under them and the last ``foot``."""
        lines = [self.fit.lines[row] for block in group for row in block.rows]
        yield Furniture(tuple(self._begun(part, y)))
        yield from self._part(part, lines, y + CAPTION_MM, drop)
        if part is Part.COPY and len(lines) > 1:
            yield Furniture(tuple(self._best(y)))
        if part is Part.MODEL and self.marks and self.marks.under:
            yield from strip_over(self.setter, self.marks.under, self.name, self.x0,
                                  y + self.height_of(part, group, drop, foot))

    def blank(self, y: float, drop: float) -> Iterable[Item]:
        """Yield a row to write on for each row of the name, the first one's top at ``y``."""
        return self._part(Part.MEMORY, self.fit.lines, y, drop)

    def _begun(self, part: Part, y: float) -> Iterable[Ink]:
        """Yield what a task begins with: its pictogram in the gutter, and its caption in words."""
        task = Task.FINGER if part is Part.MODEL else _TASK_OF.get(part, Task.PENCIL)
        raised = part is Part.TILES and self.rows.tiles_x() < self.x0
        low = self._lowered(part)
        yield pictogram(task, self.sheet.left_mm, y - _SIGN_RAISED_MM if raised else y + low - SIGN_OVER_MM)
        yield blocks.text_at(self.setter, self._caption(part), self.x0, y + low + _CAPTION_BASE_MM)

    def _best(self, y: float) -> Iterable[Ink]:
        """Yield, right of the caption about copying, that the child may choose its best; nothing without room."""
        said = self.words.say("page.best")
        x = self.x1 - _BEST_SIGN_MM - 1.5 - self.setter.text_width(said, blocks.TEXT_MM)
        if x >= self._caption_end(Part.COPY) + CLEAR_MM:
            y += self._lowered(Part.COPY)
            yield blocks.text_at(self.setter, said, x, y + _CAPTION_BASE_MM)
            yield pictogram(Task.BEST, self.x1 - _BEST_SIGN_MM, y - 1.2, _BEST_SIGN_MM)

    def _lowered(self, part: Part) -> float:
        """Return by how much a caption stands lower, to be nearer to its own row than to the row before.

        Not over stroke marks, nor where one of its tails would meet the start dot; by the white that rows have over
        letters with marks, too.
        """
        if self.heights.over(part):
            return 0.0
        if part is Part.TILES:
            return _CAPTION_LOWER_MM
        if self.space.rise_mm > self.ruling.line_height_mm:
            return _CAPTION_LOWER_MM + blocks.ROW_CLEAR_MM
        return 0.0 if self._meets_dot(part) else _CAPTION_LOWER_MM

    def _meets_dot(self, part: Part) -> bool:
        """Say whether a tail of a lowered caption would come too near to the start dot of the row under it."""
        beside = part is Part.COPY and self.rows.beside
        left, top, right, _ = self.rows.dot_beside if beside else self.rows.dot
        caption = blocks.text_at(self.setter, self._caption(part), self.x0,
                                 _CAPTION_BASE_MM + _CAPTION_LOWER_MM - CAPTION_MM - self.space.rise_mm)
        reach = caption.style.width_mm / 2 + _OVER_DOT_MM
        if caption.bounds()[3] + _OVER_DOT_MM <= top:  # no letter of it has a tail
            return False
        near = takewhile(lambda box: caption.x + box[0] - reach < right, caption.shape.boxes)
        return any(caption.y + y1 + reach > top and caption.x + x1 + reach > left for _, _, x1, y1 in near)

    def _caption_end(self, part: Part) -> float:
        return self.x0 + self.setter.text_width(self._caption(part), blocks.TEXT_MM)

    def _caption(self, part: Part) -> str:
        """Return the words of a part's caption: its place, its width and its tails are asked for, too."""
        if part not in self._captions:
            self._captions[part] = self._worded(part)
        return self._captions[part]

    def _worded(self, part: Part) -> str:
        if part is Part.COPY:
            return self.words.say("page.copy_beside" if self.rows.beside else "page.copy_under")
        if part is Part.MODEL and not self.rows.has_cues:
            return self.words.say("page.model_plain")
        if self.rows.fading(part, self.fit.lines[0]):
            return self.words.say(f"page.{Part.RUN_OUT}")
        return self.words.say(f"page.{part}")

    def _part(self, part: Part, lines: Sequence[SetLine], y: float, drop: float) -> Iterable[Item]:
        if part is Part.TILES:
            yield from self.rows.boxes(y)
            return
        step = self.space.rise_mm + self.heights.under(part, drop)
        for line in lines:
            y += self.heights.over(part)
            baseline = y + self.space.rise_mm
            if part is Part.COPY and self.rows.beside:
                yield from self.rows.copy_beside(line, baseline)
            elif part is Part.COPY:
                yield self.rows.solid(line, baseline)
                y += step
                yield from self.rows.blank(line, baseline + step)
            elif part is Part.MODEL:
                top = baseline - self.space.rise_mm - self.heights.over_model - CAPTION_MM
                yield from self.rows.model(line, baseline, drop, top, self._caption_end(Part.MODEL) + CLEAR_MM)
            elif part is Part.MEMORY:
                yield from self.rows.blank(line, baseline)
            else:
                yield from self.rows.traced(line, part, baseline)
            y += step
