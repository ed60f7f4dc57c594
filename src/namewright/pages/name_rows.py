"""The rows of a child's name on its sheet: the model, the name traced or copied, rows to write on, boxes for tiles.

Every row stands where it is told to; what stands over which, and the captions, is the sheet's. Millimetres, y down.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from functools import cached_property

from namewright.geometry.boxes import Box
from namewright.lines.cues import END_MM
from namewright.lines.fit import Fit
from namewright.lines.forms import Form
from namewright.lines.ink import Ink
from namewright.lines.setting import SetLine, pen_width_mm
from namewright.lines.tile_boxes import tile_rows
from namewright.pages import blocks
from namewright.pages.beside import MIN_FRAME_MM, Hollow, drawing_frame, hollow_name
from namewright.pages.ladder import ORDERED, Part, given, repeats
from namewright.pages.letter_strip import AFTER_MODEL_MM, ModelMarks, model_marks, strip_rows
from namewright.pages.page import Furniture, Item, Row
from namewright.pages.paper import GUTTER_MM, Sheet
from namewright.pages.sheet_settings import SheetSettings
from namewright.pages.typesetter import Typesetter
from namewright.settings import Hand, Support

CLEAR_MM = 8.0  # between a row and what stands beside it
_BESIDE_GAP_MM = 8.0
_MIN_WRITING = 1.25  # writing room beside a model, in widths of the name: a child's letters run wide
_FORM_OF = {Part.WIDE: Form.WIDE, Part.STARTS: Form.STARTS, Part.FIRST: Form.SOLID}


class NameRows:
    """The rows of a name on a sheet; ``fades`` says that dots run out within the row of dots, having no own row."""

    def __init__(self, setter: Typesetter, name: str, settings: SheetSettings, sheet: Sheet, fit: Fit) -> None:
        self.setter, self.settings, self.sheet, self.lines = setter, settings, sheet, fit.lines
        self.fades = False
        self.ruling = settings.ruling
        self.space = blocks.row_space(self.ruling, self.lines)
        self.x0, self.x1 = sheet.left_mm + GUTTER_MM, sheet.right_edge
        self.pen = pen_width_mm(self.ruling)
        self.tiles = tile_rows(name, self.x1 - sheet.left_mm, spoken=settings.spoken)
        self.beside = (settings.hand is Hand.RIGHT and len(self.lines) == 1
                       and (1 + _MIN_WRITING) * fit.width_mm + END_MM + _BESIDE_GAP_MM <= self.x1 - self.x0)
        self.x_letters = self.x0 + END_MM + self.pen / 2
        self.marks = self._marks()

    @property
    def has_cues(self) -> bool:
        """Say whether the model shows how its letters are written."""
        return self.setter.knows_strokes and self.settings.support is not Support.INDEPENDENT

    def _marks(self) -> ModelMarks | None:
        """Return where the stroke marks stand; None on a sheet without any."""
        marked = self.has_cues or Part.MARKED in (self.settings.ladder.rungs or ())
        return model_marks(self.setter, self.lines, self.x1 - self.x0) if marked else None

    def tiles_x(self) -> float:
        """Return where the boxes begin: with the rows, or farther left where they would reach out of the page."""
        return max(self.sheet.left_mm, min(self.x0, self.x1 - self.tiles.width_mm))

    def fading(self, part: Part, line: SetLine) -> bool:
        """Say whether the dots of a row run out in it: in a name of one row that stands in it again."""
        return (self.fades and part is Part.DOTS and len(self.lines) == 1 and len(line.letters) > 1
                and self._times(part, line) > 1)

    @cached_property
    def dot(self) -> Box:
        """Return the box of the dot where a name begins that stands with the model, about a baseline at 0."""
        return blocks.name_start(self.setter, self.lines[0], self.x_letters, 0.0).bounds()

    @cached_property
    def dot_beside(self) -> Box:
        """Return the same of a name beside its model."""
        line = self.lines[0]
        return blocks.name_start(self.setter, line, self._dot_x(self._split(line)), 0.0).bounds()

    def _row(self, line: SetLine, form: Form, baseline: float, inks: Sequence[Ink]) -> Row:
        return blocks.ruled_row(line.text, form, self.ruling, self.x0, self.x1, baseline, inks)

    def _start(self, line: SetLine, baseline: float, x: float, *, traced: bool = False) -> Iterable[Ink]:
        """Yield the solid dot where a name begins; in a school's font a row to trace has none."""
        if self.setter.knows_strokes or not traced:
            yield blocks.name_start(self.setter, line, x, baseline)

    def solid(self, line: SetLine, baseline: float) -> Row:
        """Return a row of the name to look at."""
        return self._row(line, Form.SOLID, baseline, self._solid(line, self.x_letters, baseline))

    def blank(self, line: SetLine, baseline: float) -> Iterable[Item]:
        """Yield a row to write on, with the dot where the name begins."""
        yield self._row(line, Form.BLANK, baseline, ())
        yield from self._start(line, baseline, self.x_letters)

    def model(self, line: SetLine, baseline: float, drop: float, top: float, left: float) -> Iterable[Item]:
        """Yield the model, spaced as the rows under it, with its stroke marks, or beside it the strip that has them.

        It stands over all writing, so neither hand covers it. Where room is left at its right, below ``top`` and from
        ``left`` on, the name stands there large and hollow, to fill with colour.
        """
        marks, inks = self.marks, self._solid(line, self.x_letters, baseline)
        if marks and marks.cues:
            inks += self._marked(line, marks, self.x_letters, baseline)
        strip = marks.strip if marks and marks.beside else None
        end = self.x_letters + line.width_mm + END_MM
        after = end + AFTER_MODEL_MM + strip.width_mm if strip else end
        hollow = self._hollow(line, max(after + 2 * CLEAR_MM, left), top, baseline, drop)
        x1 = end if strip else hollow.left_mm - CLEAR_MM if hollow else self.x1
        yield blocks.ruled_row(line.text, Form.SOLID, self.ruling, self.x0, x1, baseline, inks)
        if strip:
            yield from strip_rows(self.setter, strip, line.text, end + AFTER_MODEL_MM, baseline)
        if hollow:
            yield Furniture(hollow.inks)

    def _hollow(self, line: SetLine, left: float, top: float, baseline: float, drop: float) -> Hollow | None:
        """Return the hollow name beside a model, None where it has no room."""
        if len(self.lines) > 1:
            return None
        return hollow_name(self.setter, line.text, left, self.x1, top, baseline, drop)

    def _marked(self, line: SetLine, marks: ModelMarks, x: float, baseline: float) -> tuple[Ink, ...]:
        """Return the stroke marks of a line, or where a strip has them only where its strokes start."""
        cues = marks.cues[self.lines.index(line)] if marks.cues else marks.maker.starts(line)
        return marks.maker.ink(line, cues, x, baseline)

    def traced(self, line: SetLine, part: Part, baseline: float) -> Iterable[Item]:
        """Yield a row of a rung of the ladder: the name as often as the rung has it, then white to go on."""
        inks: list[Ink] = []
        times, fading = self._times(part, line), self.fading(part, line)
        for time in range(times):
            x = self.x_letters + time * (line.width_mm + self._gap_mm)
            forms = given(line, part, self.settings.ladder, time, times, fading=fading)
            inks += blocks.letters_at(self.setter, line, forms, x, baseline)
            if part is Part.MARKED and self.marks:
                inks += self._marked(line, self.marks, x, baseline)
        yield self._row(line, _FORM_OF.get(part, Form.DOTTED), baseline, inks)
        if part not in ORDERED:  # these show themselves where every stroke begins
            yield from self._start(line, baseline, self.x_letters, traced=True)

    @property
    def _gap_mm(self) -> float:
        """Return the white between two names in a row, more than between two words of a name."""
        return max(10.0, 2.0 * self.ruling.x_height_mm) + (self.settings.tuning.letter_spacing or 0.0)

    def _times(self, part: Part, line: SetLine) -> int:
        """Return how often a name stands in a row of a rung."""
        return repeats(part, len(line.letters), self.x1 - self.x_letters, line.width_mm, self._gap_mm)

    def copy_beside(self, line: SetLine, baseline: float) -> Iterable[Item]:
        """Yield a model and, at its right, the room to write: for a right hand, which covers what is right of it."""
        split = self._split(line)
        yield blocks.ruled_row(line.text, Form.SOLID, self.ruling, self.x0, split, baseline,
                               self._solid(line, self.x_letters, baseline))
        yield blocks.ruled_row(line.text, Form.BLANK, self.ruling, split, self.x1, baseline)
        yield from self._start(line, baseline, self._dot_x(split))

    def _split(self, line: SetLine) -> float:
        """Return where the room to write begins beside a model."""
        return self.x0 + END_MM + line.width_mm + _BESIDE_GAP_MM / 2

    def _dot_x(self, split: float) -> float:
        """Return where letters begin that are written beside a model, right of ``split``."""
        return split + END_MM + self.pen / 2

    def boxes(self, y: float) -> Iterable[Item]:
        """Yield the boxes for the tiles and, beside those of a short name, a frame for the child to draw itself."""
        hint = self.settings.support in (Support.FULL, Support.PARTIAL)
        yield from blocks.tile_boxes(self.setter, self.tiles, self.tiles_x(), y, hint=hint)
        x = self.x0 + self.tiles.width_mm + CLEAR_MM
        if self.x1 - x >= MIN_FRAME_MM:
            yield Furniture(tuple(drawing_frame(x, self.x1, y, y + self.tiles.height_mm)))

    def _solid(self, line: SetLine, x: float, baseline: float) -> tuple[Ink, ...]:
        return tuple([ink.moved(x, baseline) for ink in self._solids[line.text]])

    @cached_property
    def _solids(self) -> Mapping[str, tuple[Ink, ...]]:
        """Return the solid letters of each row of the name about its own origin: models stand in several rows."""
        return {line.text: blocks.letters_at(self.setter, line, Form.SOLID, 0.0, 0.0) for line in self.lines}
