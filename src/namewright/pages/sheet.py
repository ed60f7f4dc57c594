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

from collections.abc import Iterable, Mapping, Sequence
from functools import cached_property
from itertools import takewhile

from namewright.geometry.boxes import Box
from namewright.letters.choice import LetterChoice
from namewright.lines.cues import END_MM
from namewright.lines.fit import Fit, fit_name
from namewright.lines.forms import Form
from namewright.lines.ink import Ink
from namewright.lines.ruling import GuideLine, Ruling
from namewright.lines.setting import SetLine, pen_width_mm
from namewright.lines.tile_boxes import tile_rows
from namewright.lines.tuned import check_pens
from namewright.named_tuples import NamedTuple
from namewright.names.beats import Spoken
from namewright.pages import blocks
from namewright.pages.beside import MIN_FRAME_MM, Hollow, drawing_frame, hollow_name
from namewright.pages.ladder import ORDERED, Ladder, Part, given, needed, repeats, wished
from namewright.pages.letter_strip import AFTER_MODEL_MM, ModelMarks, model_marks, strip_over, strip_rows
from namewright.pages.page import Furniture, Item, Page, Row, checked
from namewright.pages.paging import CAPTION_MM, FOLD_MM, Block, Heights, Plan, TooTall, grouped, planned
from namewright.pages.paper import Paper, Sheet, sheet_of
from namewright.pages.pictograms import Task, pictogram
from namewright.pages.typesetter import Typesetter
from namewright.settings import Hand, Support
from namewright.tuning import Tuning
from namewright.wording import wording

GUTTER_MM = 11.0  # left of every row, for the pictogram of its task
HEADER_MM = 10.5
_FOOTER_MM = 5.0
_SIGN_OVER_MM = 0.8  # by so much a pictogram begins over its caption
_SIGN_RAISED_MM = 3.0  # the same where boxes take the gutter
_CAPTION_BASE_MM = 3.9  # so low a caption keeps clear of stroke marks below it
_CAPTION_LOWER_MM = 0.6  # it stands lower where it may: nearer to its own row than to the row before
_OVER_DOT_MM = 0.4  # white between a caption's tail and a start dot
_AFTER_TILES_MM = 3.0
_BESIDE_GAP_MM = 8.0
_BEST_SIGN_MM = 7.0
_CLEAR_MM = 8.0  # between a row and what stands beside it
_PAIR = 0.8  # zones: two lines of two rows that are nearer read as one double line
_MIN_WRITING = 1.25  # writing room beside a model, in widths of the name: a child's letters run wide


_TASK_OF = {Part.TILES: Task.TILES, Part.COPY: Task.LOOK, Part.MEMORY: Task.FOLD, Part.FIRST: Task.ALONE}
_FORM_OF = {Part.WIDE: Form.WIDE, Part.STARTS: Form.STARTS, Part.FIRST: Form.SOLID}


class SheetSettings(NamedTuple):
    """How one child's sheet is made. ``language`` is that of the captions.

    ``ruling`` is the lines as they are printed (see ``lines.tuned``); of ``tuning`` a sheet asks only what lines do not
    carry: letter spacing, rows, and whether white between rows was asked for. ``names_in`` is the language of the name
    by its tag (None: nobody said) and ``beats`` are a teacher's own: they say where a long name may be broken.
    ``colour`` is that of lines and captions (see ``hue``); a page for a clear ``sleeve`` is another one (see
    ``sleeve``); ``tile_names`` is for letter tiles. ``whose`` tells the adult at the foot whose page it is, where
    another child of the class practises the same name.
    """

    ruling: Ruling
    paper: Paper = Paper.LETTER
    landscape: bool = False
    binding: bool = False
    support: Support = Support.FULL
    hand: Hand = Hand.RIGHT
    language: str = "en"
    letters: LetterChoice = LetterChoice()
    ladder: Ladder = Ladder()
    tuning: Tuning = Tuning()
    names_in: str | None = None
    beats: str = ""
    colour: str = "black"
    sleeve: bool = False
    tile_names: bool = True
    whose: str = ""

    @property
    def spoken(self) -> Spoken:
        """Return how the name is spoken."""
        return Spoken(self.names_in, self.language, self.beats)


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
        self.fades = False  # whether dots run out within the row of dots: no row of its own shows it
        self.spacing = self.settings.tuning.letter_spacing or 0.0
        self.words = wording(self.settings.language)
        self.ruling = self.settings.ruling
        self.space = blocks.row_space(self.ruling, self.fit.lines)
        self.x0 = self.sheet.left_mm + GUTTER_MM
        self.x1 = self.sheet.right_edge
        self.pen = pen_width_mm(self.ruling)
        self.tiles = tile_rows(self.name, self.x1 - self.sheet.left_mm, spoken=self.settings.spoken)
        self.beside = (self.settings.hand is Hand.RIGHT and len(self.fit.lines) == 1
                       and (1 + _MIN_WRITING) * self.fit.width_mm + END_MM + _BESIDE_GAP_MM <= self.x1 - self.x0)
        self.x_letters = self.x0 + END_MM + self.pen / 2
        self.marks = self._marks()
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
        self.fades = support is Support.FULL and ladder.rungs is None and Part.RUN_OUT not in shown
        for count, plan in enumerate(plans):
            yield Page(self.sheet.width_mm, self.sheet.height_mm, tuple(self._items(plan)),
                       outline=self.label if count == 0 else None)

    @property
    def _has_cues(self) -> bool:
        return self.setter.knows_strokes and self.settings.support is not Support.INDEPENDENT

    def _marks(self) -> ModelMarks | None:
        """Return where the stroke marks stand; None on a sheet without any."""
        marked = self._has_cues or Part.MARKED in (self.settings.ladder.rungs or ())
        return model_marks(self.setter, self.fit.lines, self.x1 - self.x0) if marked else None

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
            tiles=self.tiles.height_mm + _AFTER_TILES_MM, doubled=not self.beside,
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
        raised = part is Part.TILES and self._tiles_x() < self.x0
        low = self._lowered(part)
        yield pictogram(task, self.sheet.left_mm, y - _SIGN_RAISED_MM if raised else y + low - _SIGN_OVER_MM)
        yield blocks.text_at(self.setter, self._caption(part), self.x0, y + low + _CAPTION_BASE_MM)

    def _best(self, y: float) -> Iterable[Ink]:
        """Yield, right of the caption about copying, that the child may choose its best; nothing without room."""
        said = self.words.say("page.best")
        x = self.x1 - _BEST_SIGN_MM - 1.5 - self.setter.text_width(said, blocks.TEXT_MM)
        if x >= self._caption_end(Part.COPY) + _CLEAR_MM:
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
        beside = part is Part.COPY and self.beside
        left, top, right, _ = self._dot_beside if beside else self._dot
        caption = blocks.text_at(self.setter, self._caption(part), self.x0,
                                 _CAPTION_BASE_MM + _CAPTION_LOWER_MM - CAPTION_MM - self.space.rise_mm)
        reach = caption.style.width_mm / 2 + _OVER_DOT_MM
        if caption.bounds()[3] + _OVER_DOT_MM <= top:  # no letter of it has a tail
            return False
        near = takewhile(lambda box: caption.x + box[0] - reach < right, caption.shape.boxes)
        return any(caption.y + y1 + reach > top and caption.x + x1 + reach > left for _, _, x1, y1 in near)

    @cached_property
    def _dot(self) -> Box:
        """Return the box of the dot where a name begins that stands with the model, about a baseline at 0."""
        return blocks.name_start(self.setter, self.fit.lines[0], self.x_letters, 0.0).bounds()

    @cached_property
    def _dot_beside(self) -> Box:
        """Return the same of a name beside its model."""
        line = self.fit.lines[0]
        return blocks.name_start(self.setter, line, self._dot_x(self._split(line)), 0.0).bounds()

    def _caption_end(self, part: Part) -> float:
        return self.x0 + self.setter.text_width(self._caption(part), blocks.TEXT_MM)

    def _caption(self, part: Part) -> str:
        """Return the words of a part's caption: its place, its width and its tails are asked for, too."""
        if part not in self._captions:
            self._captions[part] = self._worded(part)
        return self._captions[part]

    def _worded(self, part: Part) -> str:
        if part is Part.COPY:
            return self.words.say("page.copy_beside" if self.beside else "page.copy_under")
        if part is Part.MODEL and not self._has_cues:
            return self.words.say("page.model_plain")
        if self._fading(part, self.fit.lines[0]):
            return self.words.say(f"page.{Part.RUN_OUT}")
        return self.words.say(f"page.{part}")

    def _part(self, part: Part, lines: Sequence[SetLine], y: float, drop: float) -> Iterable[Item]:
        if part is Part.TILES:
            yield from self._boxes(y)
            return
        step = self.space.rise_mm + self.heights.under(part, drop)
        for line in lines:
            y += self.heights.over(part)
            baseline = y + self.space.rise_mm
            if part is Part.COPY and self.beside:
                yield from self._copy_beside(line, baseline)
            elif part is Part.COPY:
                yield self._row(line, Form.SOLID, baseline, self._solid(line, self.x_letters, baseline))
                y += step
                yield from self._blank(line, baseline + step)
            elif part is Part.MODEL:
                yield from self._model_row(line, baseline, drop)
            elif part is Part.MEMORY:
                yield from self._blank(line, baseline)
            else:
                yield self._traced(line, part, baseline)
                if part not in ORDERED:  # these show themselves where every stroke begins
                    yield from self._start(line, baseline, self.x_letters, traced=True)
            y += step

    # --- the rows --------------------------------------------------------------------------------

    def _row(self, line: SetLine, form: Form, baseline: float, inks: Sequence[Ink]) -> Row:
        return blocks.ruled_row(line.text, form, self.ruling, self.x0, self.x1, baseline, inks)

    def _start(self, line: SetLine, baseline: float, x: float, *, traced: bool = False) -> Iterable[Ink]:
        """Yield the solid dot where a name begins; in a school's font a row to trace has none."""
        if self.setter.knows_strokes or not traced:
            yield blocks.name_start(self.setter, line, x, baseline)

    def _blank(self, line: SetLine, baseline: float) -> Iterable[Item]:
        yield self._row(line, Form.BLANK, baseline, ())
        yield from self._start(line, baseline, self.x_letters)

    def _solid(self, line: SetLine, x: float, baseline: float) -> tuple[Ink, ...]:
        return tuple([ink.moved(x, baseline) for ink in self._solids[line.text]])

    @cached_property
    def _solids(self) -> Mapping[str, tuple[Ink, ...]]:
        """Return the solid letters of each row of the name about its own origin: models stand in several rows."""
        return {line.text: blocks.letters_at(self.setter, line, Form.SOLID, 0.0, 0.0) for line in self.fit.lines}

    def _model_row(self, line: SetLine, baseline: float, drop: float) -> Iterable[Item]:
        """Yield the model, spaced as the rows under it, with its stroke marks, or beside it the strip that has them.

        It stands over all writing, so neither hand covers it. Where room is left at its right, the name stands there
        large and hollow, to fill with colour.
        """
        marks, inks = self.marks, self._solid(line, self.x_letters, baseline)
        if marks and marks.cues:
            inks += self._marked(line, marks, self.x_letters, baseline)
        strip = marks.strip if marks and marks.beside else None
        end = self.x_letters + line.width_mm + END_MM
        after = end + AFTER_MODEL_MM + strip.width_mm if strip else end
        hollow = self._hollow(line, after, baseline, drop)
        x1 = end if strip else hollow.left_mm - _CLEAR_MM if hollow else self.x1
        yield blocks.ruled_row(line.text, Form.SOLID, self.ruling, self.x0, x1, baseline, inks)
        if strip:
            yield from strip_rows(self.setter, strip, line.text, end + AFTER_MODEL_MM, baseline)
        if hollow:
            yield Furniture(hollow.inks)

    def _hollow(self, line: SetLine, after: float, baseline: float, drop: float) -> Hollow | None:
        """Return the hollow name right of a model that ends at ``after``, None where it has no room."""
        if len(self.fit.lines) > 1:
            return None
        top = baseline - self.space.rise_mm - self.heights.over_model - CAPTION_MM
        left = max(after + 2 * _CLEAR_MM, self._caption_end(Part.MODEL) + _CLEAR_MM)
        return hollow_name(self.setter, line.text, left, self.x1, top, baseline, drop)

    def _marked(self, line: SetLine, marks: ModelMarks, x: float, baseline: float) -> tuple[Ink, ...]:
        """Return the stroke marks of a line, or where a strip has them only where its strokes start."""
        cues = marks.cues[self.fit.lines.index(line)] if marks.cues else marks.maker.starts(line)
        return marks.maker.ink(line, cues, x, baseline)

    def _tiles_x(self) -> float:
        """Return where the boxes begin: with the rows, or farther left where they would reach out of the page."""
        return max(self.sheet.left_mm, min(self.x0, self.x1 - self.tiles.width_mm))

    def _boxes(self, y: float) -> Iterable[Item]:
        """Yield the boxes for the tiles and, beside those of a short name, a frame for the child to draw itself."""
        hint = self.settings.support in (Support.FULL, Support.PARTIAL)
        yield from blocks.tile_boxes(self.setter, self.tiles, self._tiles_x(), y, hint=hint)
        x = self.x0 + self.tiles.width_mm + _CLEAR_MM
        if self.x1 - x >= MIN_FRAME_MM:
            yield Furniture(tuple(drawing_frame(x, self.x1, y, y + self.tiles.height_mm)))

    @property
    def _gap_mm(self) -> float:
        """Return the white between two names in a row, more than between two words of a name."""
        return max(10.0, 2.0 * self.ruling.x_height_mm) + self.spacing

    def _times(self, part: Part, line: SetLine) -> int:
        """Return how often a name stands in a row of a rung."""
        return repeats(part, len(line.letters), self.x1 - self.x_letters, line.width_mm, self._gap_mm)

    def _fading(self, part: Part, line: SetLine) -> bool:
        """Say whether the dots of a row run out in it: in a name of one row that stands in it again."""
        return (self.fades and part is Part.DOTS and len(self.fit.lines) == 1 and len(line.letters) > 1
                and self._times(part, line) > 1)

    def _traced(self, line: SetLine, part: Part, baseline: float) -> Row:
        """Return a row of a rung of the ladder: the name as often as the rung has it, then white to go on."""
        inks: list[Ink] = []
        times, fading = self._times(part, line), self._fading(part, line)
        for time in range(times):
            x = self.x_letters + time * (line.width_mm + self._gap_mm)
            forms = given(line, part, self.settings.ladder, time, times, fading=fading)
            inks += blocks.letters_at(self.setter, line, forms, x, baseline)
            if part is Part.MARKED and self.marks:
                inks += self._marked(line, self.marks, x, baseline)
        return self._row(line, _FORM_OF.get(part, Form.DOTTED), baseline, inks)

    def _copy_beside(self, line: SetLine, baseline: float) -> Iterable[Item]:
        """Yield a model and, at its right, the room to write: for a right hand, which covers what is right of it."""
        split = self._split(line)
        yield blocks.ruled_row(line.text, Form.SOLID, self.ruling, self.x0, split, baseline,
                               self._solid(line, self.x_letters, baseline))
        yield blocks.ruled_row(line.text, Form.BLANK, self.ruling, split, self.x1, baseline)
        yield from self._start(line, baseline, self._dot_x(split))

    def _split(self, line: SetLine) -> float:
        """Return where the room to write begins beside a model."""
        return self.x0 + END_MM + line.width_mm + _BESIDE_GAP_MM / 2

    def _dot_x(self, split: float | None) -> float:
        """Return where letters begin that are written: with the model, or beside it right of ``split``."""
        return self.x_letters if split is None else split + END_MM + self.pen / 2
