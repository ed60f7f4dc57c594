"""A child's practice sheet: model, a little tracing, tile boxes, copying beside a near model, writing from memory.

What stands on it follows the level of support. The studies in ``practice/evidence.toml`` set the balance:
copying and writing from memory did better than tracing, so tracing never takes more than two rows and never
more than copying and memory together; stroke marks stay on the model; a fold line lets the model be covered.

- full: model with stroke marks; one row of dots, one where the dots run out; copying; memory
- partial: model with stroke marks; one row where the dots run out; copying; memory
- light: model with stroke marks; no tracing; copying and memory in turn
- independent: a plain model; memory before copying

Millimetres, y down.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace

from namewright.letters.choice import LetterChoice
from namewright.lines.cues import line_with_cues
from namewright.lines.fit import Fit, fit_name
from namewright.lines.forms import Form
from namewright.lines.ink import Ink
from namewright.lines.ruling import Ruling
from namewright.lines.setting import SetLine, pen_width_mm
from namewright.lines.tiles import tile_rows
from namewright.lines.tuned import tuned
from namewright.pages import blocks
from namewright.pages.ladder import Ladder, Part, given, in_order, needed, repeats, wished
from namewright.pages.page import Furniture, Item, Page, Row, checked
from namewright.pages.paper import Paper, Sheet, sheet_of
from namewright.pages.press import Press, captions
from namewright.settings import Hand, Support
from namewright.tuning import Tuning

_START_ROOM_MM = 6.0  # left of every row, for the start mark
_HEADER_MM = 9.0
_FOOTER_MM = 7.0
_CAPTION_MM = 7.0
_FOLD_MM = 8.0
_AFTER_TILES_MM = 3.0
_MOST_SPREAD_MM = 6.0
_BESIDE_GAP_MM = 8.0
_LEAST_WRITING = 1.25  # writing room beside a model, in widths of the name: a child's letters run wide


_FORM_OF = {Part.WIDE: Form.WIDE, Part.STARTS: Form.STARTS, Part.FIRST: Form.SOLID}
_ROUND = (Part.COPY, Part.MEMORY)  # in turn, until the page is full


@dataclass(frozen=True, slots=True)
class SheetSettings:
    """How one child's sheet is made. ``language`` is that of the captions; ``tuning`` is laid over the ruling."""

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


def practice_pages(press: Press, name: str, label: str, settings: SheetSettings) -> tuple[Page, ...]:
    """Return a child's sheet, one page unless the lines are so tall that its parts need more.

    Raises MissingLetters, DoesNotFit, or ValueError for captions we do not have.
    """
    press = press.lettering(settings.letters)
    settings = replace(settings, ruling=tuned(settings.ruling, settings.tuning))
    case = press.case(settings.ruling, settings.tuning.letter_spacing or 0.0)
    fit = fit_name(name, case, _rooms(settings), settings.language)
    sheet = sheet_of(settings.paper, landscape=settings.landscape or fit.turned, binding=settings.binding)
    maker = _SheetMaker(press, label, name, settings, sheet, fit)
    return tuple(checked(page) for page in maker.pages())


def _rooms(settings: SheetSettings) -> tuple[float, ...]:
    turns = (True,) if settings.landscape else (False, True)
    return tuple(sheet_of(settings.paper, landscape=turn, binding=settings.binding).room_width - _START_ROOM_MM
                 for turn in turns)


@dataclass
class _SheetMaker:
    press: Press
    label: str
    name: str
    settings: SheetSettings
    sheet: Sheet
    fit: Fit

    def __post_init__(self) -> None:
        self.spacing = self.settings.tuning.letter_spacing or 0.0
        self.words = captions(self.settings.language)
        self.ruling = self.settings.ruling
        self.space = blocks.row_space(self.ruling, self.fit.lines)
        self.x0 = self.sheet.left_mm + _START_ROOM_MM
        self.x1 = self.sheet.right_edge
        self.pen = pen_width_mm(self.ruling)
        self.tiles = tile_rows(self.name, self.x1 - self.x0)
        self.beside = (len(self.fit.lines) == 1 and (1 + _LEAST_WRITING) * self.fit.width_mm + _BESIDE_GAP_MM
                       <= self.x1 - self.x0)

    # --- what stands on the sheet ----------------------------------------------------------------

    def pages(self) -> Iterable[Page]:
        """Yield the finished pages."""
        for count, parts in enumerate(self._paged()):
            yield Page(self.sheet.width_mm, self.sheet.height_mm, tuple(self._items(parts)),
                       outline=self.label if count == 0 else None)

    @property
    def _has_marks(self) -> bool:
        return self.press.knows_strokes and self.settings.support is not Support.INDEPENDENT

    @property
    def room(self) -> float:
        """Return the height between header and footer."""
        return self.sheet.foot - self.sheet.top_mm - _HEADER_MM - _FOOTER_MM

    def _paged(self) -> Iterable[list[Part]]:
        """Yield the parts page by page: all on one page where what is needed fits, else in order over several."""
        must = list(needed(self.settings.support, self.settings.ladder))
        if self._height(must) <= self.room:
            yield self._filled(must)
            return
        page: list[Part] = []
        for part in in_order(must):
            if page and self._height([*page, part]) > self.room:
                yield page
                page = []
            page.append(part)
        yield page

    def _filled(self, parts: list[Part]) -> list[Part]:
        """Add what is wished for, then copying and memory in turn, while there is room."""
        for part in wished(self.settings.support, self.settings.ladder):
            if self._takes(parts, part):
                parts = [*parts, part]
        turn = 0
        while self._takes(parts, _ROUND[turn % 2]):
            parts = [*parts, _ROUND[turn % 2]]
            turn += 1
        return in_order(parts)

    def _takes(self, parts: Sequence[Part], part: Part) -> bool:
        """Return whether there is room for one more part, and whether the rows asked for are not yet there."""
        writing = sum(one not in (Part.MODEL, Part.TILES) for one in (*parts, part))
        most = self.settings.tuning.rows
        if part is not Part.TILES and most is not None and writing > most:
            return False
        return self._height([*parts, part]) <= self.room

    def _height(self, parts: Sequence[Part]) -> float:
        fold = _FOLD_MM if Part.MEMORY in parts and Part.MODEL in parts else 0.0
        return sum(map(self._part_height, parts)) + _CAPTION_MM * len(set(parts)) + fold

    def _part_height(self, part: Part) -> float:
        if part is Part.TILES:
            return blocks.tiles_height(self.tiles) + _AFTER_TILES_MM
        return self._rows_of(part) * (self.space.height_mm + self._headroom(part))

    def _headroom(self, part: Part) -> float:
        """Return the height over a row that its stroke marks need."""
        marked = part is Part.MARKED or (part is Part.MODEL and self._has_marks)
        return self.press.cues(self.ruling).headroom_mm if marked else 0.0

    def _rows_of(self, part: Part) -> int:
        rows = len(self.fit.lines)
        return 2 * rows if part is Part.COPY and not self.beside else rows

    # --- where it stands -------------------------------------------------------------------------

    def _items(self, parts: list[Part]) -> Iterable[Item]:
        yield from self._owner()
        y = self.sheet.top_mm + _HEADER_MM
        spread = min(_MOST_SPREAD_MM, max(0.0, self.room - self._height(parts)) / max(1, len(set(parts))))
        furniture: list[Ink] = list(blocks.check_bar(self.press, self.words["check"], self.x0, self.sheet.foot - 1.5))
        before: Part | None = None
        for part in parts:
            if part is not before:
                if part is Part.MEMORY and before is not None and Part.MODEL in parts:
                    furniture += self._fold(y)
                    y += _FOLD_MM
                y += spread if before is not None else 0.0
                furniture.append(blocks.text_at(self.press, self._caption(part), self.x0, y + 4.2))
                y += _CAPTION_MM
            yield from self._part(part, y)
            y += self._part_height(part)
            before = part
        yield Furniture(tuple(furniture))

    def _owner(self) -> tuple[Ink, ...]:
        return blocks.text_with_name(self.press, self.words["owner"], self.label, self.x0, self.sheet.top_mm + 5.0)

    def _fold(self, y: float) -> tuple[Ink, ...]:
        return (blocks.fold_line(self.sheet.left_mm, self.x1, y + 2.0),
                blocks.text_at(self.press, self.words["fold"], self.x0, y + 5.8, 1.5))

    def _caption(self, part: Part) -> str:
        if part is Part.COPY:
            return self.words["copy_beside" if self.beside else "copy_under"]
        if part is Part.MODEL and not self._has_marks:
            return self.words["model_plain"]
        return self.words[part]

    def _part(self, part: Part, y: float) -> Iterable[Item]:
        if part is Part.TILES:
            yield from blocks.tile_boxes(self.press, self.tiles, self.x0, y,
                                         hint=self.settings.support in (Support.FULL, Support.PARTIAL))
            return
        for line in self.fit.lines:
            y += self._headroom(part)
            baseline = y + self.space.rise_mm
            if part is Part.COPY and self.beside:
                yield from self._copy_beside(line, baseline)
            elif part is Part.COPY:
                yield self._row(line, Form.SOLID, baseline, self._solid(line, self._model_x(line), baseline))
                y += self.space.height_mm
                yield from self._blank(line, y + self.space.rise_mm)
            elif part is Part.MODEL:
                yield self._row(line, Form.SOLID, baseline, self._model(line, baseline))
            elif part is Part.MEMORY:
                yield from self._blank(line, baseline)
            else:
                yield self._traced(line, part, baseline)
                yield self._start(baseline)
            y += self.space.height_mm

    # --- the rows --------------------------------------------------------------------------------

    def _row(self, line: SetLine, form: Form, baseline: float, inks: Sequence[Ink]) -> Row:
        return blocks.ruled_row(line.text, form, self.ruling, self.x0, self.x1, baseline, inks)

    def _start(self, baseline: float) -> Ink:
        return blocks.start_mark(self.sheet.left_mm + 1.0, baseline - self.ruling.x_height_mm / 2)

    def _blank(self, line: SetLine, baseline: float) -> Iterable[Item]:
        yield self._row(line, Form.BLANK, baseline, ())
        yield self._start(baseline)

    def _solid(self, line: SetLine, x: float, baseline: float) -> tuple[Ink, ...]:
        return blocks.letters_at(self.press, line, Form.SOLID, x, baseline)

    def _model_x(self, line: SetLine) -> float:
        """Return where a model stands on a row of its own: at the left, for a left-hander at the right."""
        if self.settings.hand is Hand.LEFT:
            return self.x1 - line.width_mm + self.pen / 2
        return self.x0 + self.pen / 2

    def _model(self, line: SetLine, baseline: float) -> tuple[Ink, ...]:
        """Return the model, with stroke marks unless the child works independently.

        It stands over all writing, so neither hand covers it; where there is room it is set wider for the marks.
        """
        if not self._has_marks:
            return self._solid(line, self.x0 + self.pen / 2, baseline)
        maker, wide = blocks.with_room_for_marks(self.press, line, self.x1 - self.x0, self.spacing)
        inks = line_with_cues(maker, self.press.well(self.ruling), wide)
        shift = min(maker.side_mm, max(0.0, self.x1 - self.x0 - wide.width_mm))
        return tuple(ink.moved(self.x0 + self.pen / 2 + shift, baseline) for ink in inks)

    def _traced(self, line: SetLine, part: Part, baseline: float) -> Row:
        """Return a row of a rung of the ladder: the name as often as the rung has it, then white to go on."""
        gap = max(10.0, 1.2 * self.ruling.x_height_mm)
        inks: list[Ink] = []
        shown, marks = line, None
        if part is Part.MARKED:
            marks, shown = blocks.with_room_for_marks(self.press, line, self.x1 - self.x0, self.spacing)
        times = repeats(part, self.x1 - self.x0, shown.width_mm, gap)
        for time in range(times):
            x = self.x0 + self.pen / 2 + time * (shown.width_mm + gap)
            forms = given(shown, part, self.settings.ladder, time, times)
            inks += blocks.letters_at(self.press, shown, forms, x, baseline)
            if marks is not None:
                inks += [ink.moved(x, baseline) for ink in marks.ink(shown)]
        return self._row(line, _FORM_OF.get(part, Form.DOTTED), baseline, inks)

    def _copy_beside(self, line: SetLine, baseline: float) -> Iterable[Item]:
        """Yield a model and, beside it, the room to write: the model at the right for a left-hander."""
        width = line.width_mm + _BESIDE_GAP_MM / 2
        if self.settings.hand is Hand.LEFT:
            split = self.x1 - width
            model, writing = (split, self.x1), (self.x0, split)
            x = self.x1 - line.width_mm + self.pen / 2
        else:
            split = self.x0 + width
            model, writing = (self.x0, split), (split, self.x1)
            x = self.x0 + self.pen / 2
        yield blocks.ruled_row(line.text, Form.SOLID, self.ruling, *model, baseline, self._solid(line, x, baseline))
        yield blocks.ruled_row(line.text, Form.BLANK, self.ruling, *writing, baseline)
        mark = writing[0] + 1.5 if self.settings.hand is Hand.RIGHT else self.sheet.left_mm + 1.0
        yield blocks.start_mark(mark, baseline - self.ruling.x_height_mm / 2)

