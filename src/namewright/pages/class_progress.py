"""The class on a page or two, for the teacher: who forms which letters, where each stands, what may help next.

In the order of the list, so that nobody is ranked; the suggestion stands as a sentence with its reason, and the adult
decides. A letter that has been formed is a filled box, the steps on the way are filled blocks. Millimetres, y down.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field

from namewright.lines.ink import BLACK, DARK, FAINT, RULE, WHITE, Ink, Role, Style, line, passage
from namewright.message import Message, message
from namewright.pages.blocks import fitting
from namewright.pages.child_progress import STRONG, TINT, ProgressSettings, block
from namewright.pages.drawable import drawable, sentence
from namewright.pages.growth import STAGES, Growth, day_said
from namewright.pages.page import Page, checked
from namewright.pages.paper import Sheet, sheet_of
from namewright.pages.typesetter import Typesetter
from namewright.settings import Support
from namewright.wording import Wording, wording

_TITLE_MM, _NAME_MM, _TEXT_MM = 2.4, 2.0, 1.5  # x-heights
_ROW_MM, _LINE_MM, _BOX_MM = 8.6, 4.0, 6.0
_NAME_COLUMN_MM, _STEPS_COLUMN_MM, _DAY_COLUMN_MM = 40.0, 25.0, 25.0
_PIP_MM = 2.6
_RULE = Style(0.15, "#c4c4c4")
_EDGE = Style(0.25, FAINT)


@dataclass(frozen=True, slots=True)
class ClassRow:
    """A child of the class: its growth, the level of support now, and a suggestion."""

    growth: Growth
    support: Support
    suggestion: Message


def class_progress_pages(setter: Typesetter, rows: Sequence[ClassRow], settings: ProgressSettings) -> tuple[Page, ...]:
    """Return the pages that hold all rows. Raises Problem for a language that has no words."""
    sheet = sheet_of(settings.paper, binding=settings.binding)
    drawing = _Drawing(setter, wording(settings.language), sheet)
    pages: list[list[Ink]] = [list(drawing.head())]
    y = drawing.below_head
    for row in rows:
        said = drawing.said(row)
        height = _ROW_MM + _LINE_MM * len(said)
        if y + height > sheet.foot:
            pages.append([])
            y = sheet.top_mm
        pages[-1] += drawing.row(row.growth, said, y)
        y += height
    return tuple(checked(Page(sheet.width_mm, sheet.height_mm, tuple(page))) for page in pages)


@dataclass
class _Drawing:
    setter: Typesetter
    words: Wording
    sheet: Sheet
    _wrapped: dict[str, tuple[str, ...]] = field(default_factory=dict)

    def __post_init__(self) -> None:
        self.note = self.setter.wrapped(self.words.say("page.progress.class_note"), self.sheet.room_width, _TEXT_MM)
        self.below_head = self.sheet.top_mm + 12.0 + 4.4 * len(self.note)
        self.boxes_x = self.sheet.left_mm + _NAME_COLUMN_MM
        self.steps_x = self.sheet.right_edge - _DAY_COLUMN_MM - _STEPS_COLUMN_MM

    def head(self) -> Iterator[Ink]:
        """Yield the title and how to read the page."""
        y = self.sheet.top_mm + 5.0
        title = self._text(self.words.say("page.progress.class_title"), self.sheet.left_mm, y, _TITLE_MM)
        yield title.read_as(Role.TITLE)
        yield from passage(ink.moved(self.sheet.left_mm, y + 1.5 + 4.4 * count)
                           for count, words in enumerate(self.note, 1) for ink in self.setter.words(words, _TEXT_MM))

    def said(self, row: ClassRow) -> tuple[str, ...]:
        """Return the lines that say what support there is and what may help next."""
        now = message("page.progress.class_support", support=row.support)
        then = row.suggestion if row.growth.days else message("page.progress.class_none")
        words = sentence(self.setter, self.words.text(now, then))
        if words not in self._wrapped:  # the same few sentences recur over a class
            self._wrapped[words] = self.setter.wrapped(words, self.sheet.room_width, _TEXT_MM)
        return self._wrapped[words]

    def row(self, growth: Growth, said: Sequence[str], y: float) -> Iterator[Ink]:
        """Yield one child's row with its top at ``y``."""
        yield Ink.of(_RULE, (line(self.sheet.left_mm, y, self.sheet.right_edge, y),))
        baseline = y + 5.4
        label = drawable(self.setter, growth.label)
        size = self._fitting(label, _NAME_COLUMN_MM - 3.0, _NAME_MM)
        yield self._text(label, self.sheet.left_mm, baseline, size).read_as(Role.HEADING)
        yield from self._letters(growth, y + 1.3)
        if growth.stages:
            yield from self._steps(growth.stages[-1][1], baseline)
        if growth.days:
            last = self.words.say("page.progress.class_last", date=day_said(growth.days[-1]))
            width = self.setter.text_width(last, _TEXT_MM)
            yield self._text(last, self.sheet.right_edge - width, baseline, _TEXT_MM, DARK)
        yield from passage(ink.moved(self.sheet.left_mm, y + 6.6 + _LINE_MM * count)
                           for count, words in enumerate(said, 1) for ink in self.setter.words(words, _TEXT_MM))

    def _letters(self, growth: Growth, top: float) -> Iterator[Ink]:
        room = self.steps_x - self.boxes_x - 4.0
        side = min(_BOX_MM, room / max(1, len(growth.tracks)))
        for count, track in enumerate(growth.tracks):
            x = self.boxes_x + count * side
            middle = top + _BOX_MM / 2
            yield block(x, middle - side / 2, x + side, middle + side / 2,
                        _EDGE._replace(fill=TINT if track.first else WHITE))
            letter = drawable(self.setter, track.letter)
            size = self._fitting(letter, 0.8 * side, 0.3 * side)
            x += (side - self.setter.text_width(letter, size)) / 2
            ink = self._text(letter, x, middle + 0.75 * size, size, BLACK if track.first else RULE)
            yield ink.read_as(goes_on=count > 0)

    def _steps(self, stage: int, baseline: float) -> Iterator[Ink]:
        for step in range(STAGES):
            x = self.steps_x + step * _PIP_MM
            rise = 0.9 + 0.45 * step
            fill = STRONG if step < stage else WHITE
            yield block(x, baseline - rise, x + _PIP_MM - 0.6, baseline, Style(0.15, FAINT, fill=fill))

    def _text(self, words: str, x: float, y: float, size: float, colour: str = BLACK) -> Ink:
        return self.setter.text(words, size).in_colour(colour).moved(x, y)

    def _fitting(self, words: str, room_mm: float, size: float) -> float:
        return fitting(self.setter, words, room_mm, size)
