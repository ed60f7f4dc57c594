"""A child's year on one page, for a parent: letters joining one by one, help growing less, steps upwards.

No scores and no comparison with other children. What colour says, shape says too: a letter formed is a full dot on
a band that begins on the day it was first seen, one on its way is a small point, so that the page is about what is
there; less help is a lower bar; a step reached is a filled block. So the page reads the same in grey.
Millimetres, y down.
"""

from __future__ import annotations

from collections.abc import Generator, Iterator, Mapping, Sequence
from dataclasses import dataclass
from datetime import date
from functools import cached_property

from namewright.geometry.points import Point
from namewright.letters.strokes import polyline_stroke
from namewright.lines.ink import (
    BLACK,
    DARK,
    FAINT,
    RULE,
    WHITE,
    Ink,
    Piece,
    Role,
    Style,
    dot_fragment,
    line,
    stroke_fragment,
)
from namewright.message import Field
from namewright.named_tuples import NamedTuple
from namewright.pages.blocks import fitting
from namewright.pages.drawable import drawable
from namewright.pages.growth import STAGES, Growth, Track, day_said, summary
from namewright.pages.page import Page, checked
from namewright.pages.paper import Paper, Sheet, sheet_of
from namewright.pages.typesetter import Typesetter
from namewright.settings import Support
from namewright.wording import Wording, wording

STRONG, TINT = "#1f5c99", "#c9dcef"  # 6.9:1 and 1.4:1 on white: one hue, told apart by lightness alone
_GRID = Style(0.15, "#c4c4c4")
_EDGE = Style(0.3, FAINT, fill=WHITE)
_TITLE_MM, _LEAD_MM, _HEAD_MM, _TEXT_MM = 2.9, 2.1, 2.1, 1.6  # x-heights
_LETTER_COLUMN_MM, _DATE_COLUMN_MM = 14.0, 24.0
_MAX_ROW_MM, _AFTER_MM, _FOOT_MM = 11.0, 11.5, 11.5
_HELP_MM: Mapping[Support, float] = {Support.FULL: 8.0, Support.PARTIAL: 5.6, Support.LIGHT: 3.2,
                                     Support.INDEPENDENT: 0.8}
_STEP_MM, _TREAD_MM = 7.6, 9.0
_HELP_ROOM_MM, _STEPS_ROOM_MM = 16.0, STAGES * _STEP_MM + 10.0


class ProgressSettings(NamedTuple):
    """The sheet, and the language of the captions."""

    paper: Paper = Paper.LETTER
    binding: bool = False
    language: str = "en"


def progress_page(setter: Typesetter, growth: Growth, settings: ProgressSettings) -> Page:
    """Return a child's page. Raises ValueError where no day was noted, Problem for a language that has no words."""
    if not growth.days:
        raise ValueError(f"nothing was noted about {growth.label} yet")
    sheet = sheet_of(settings.paper, binding=settings.binding)
    inks = _Drawing(setter, growth, wording(settings.language), sheet).inks()
    return checked(Page(sheet.width_mm, sheet.height_mm, tuple(inks), growth.label))


@dataclass
class _Drawing:
    setter: Typesetter
    growth: Growth
    words: Wording
    sheet: Sheet

    def __post_init__(self) -> None:
        self.row_mm = _MAX_ROW_MM
        self.x0 = self.sheet.left_mm + _LETTER_COLUMN_MM
        self.x1 = self.sheet.right_edge - _DATE_COLUMN_MM
        days = self.growth.days
        self.start = days[0].replace(day=1)
        self.end = _month_after(days[-1])

    def inks(self) -> Iterator[Ink]:
        """Yield the page from top to bottom."""
        y = self.sheet.top_mm + 6.0
        title = self._say("title", name=self._name)
        size = self._fitting(title, self.sheet.room_width, _TITLE_MM)
        yield self._text(title, self.sheet.left_mm, y, size).read_as(Role.TITLE)
        y += 3.0
        lead = self._drawable(self.words.say(summary(self.growth)))
        for count, words in enumerate(self.setter.wrapped(lead, self.sheet.room_width, _LEAD_MM)):
            y += 2.9 * _LEAD_MM
            first, *more = self._words(words, self.sheet.left_mm, y, _LEAD_MM)
            yield from (first.read_as(goes_on=count > 0), *more)
        y = yield from self._letters(y + 12.0)
        if self.growth.support:
            y = yield from self._help(y + _AFTER_MM)
        if self.growth.stages:
            yield from self._steps(y + _AFTER_MM)
        yield self._text(self._say("foot"), self.sheet.left_mm, self.sheet.foot - 1.5, _TEXT_MM, DARK)

    # --- the letters ------------------------------------------------------------------------------------

    def _letters(self, y: float) -> Generator[Ink, None, float]:
        """Yield a row a letter; return where they end."""
        yield self._text(self._say("letters"), self.sheet.left_mm, y, _HEAD_MM).read_as(Role.HEADING)
        yield from self._key(y)
        y += 12.0
        self.row_mm = min(_MAX_ROW_MM, (self._room_above - y) / max(1, len(self.growth.tracks)))
        yield self._right(self._say("first_seen"), y, DARK)
        yield from self._months(y)
        top, bottom = y + 2.0, y + 3.0 + self.row_mm * len(self.growth.tracks)
        yield Ink.of(_GRID, tuple(line(self._x(month), top, self._x(month), bottom) for month in self._month_starts))
        for count, track in enumerate(self.growth.tracks):
            yield from self._track(track, top + 0.5 + (count + 0.5) * self.row_mm)
        return bottom

    @property
    def _room_above(self) -> float:
        """Return the y that the letters must not pass, so that help and steps have their room."""
        help_mm = _AFTER_MM + _HELP_ROOM_MM if self.growth.support else 0.0
        steps_mm = _AFTER_MM + _STEPS_ROOM_MM if self.growth.stages else 0.0
        return self.sheet.foot - _FOOT_MM - help_mm - steps_mm

    def _key(self, y: float) -> Iterator[Ink]:
        """Yield what the two marks mean, set from the right."""
        x = self.sheet.right_edge
        for key, formed in (("not_yet", False), ("formed", True)):
            words = self._say(key)
            x -= self.setter.text_width(words, _TEXT_MM)
            yield self._text(words, x, y, _TEXT_MM, DARK)
            x -= 3.5
            yield _dots([(x, y - 0.8)], 2.6, formed=formed)
            x -= 6.0

    def _track(self, track: Track, y: float) -> Iterator[Ink]:
        letter = self._drawable(track.letter)
        size = self._fitting(letter, _LETTER_COLUMN_MM - 5.0, min(3.6, 0.36 * self.row_mm))
        yield self._text(letter, self.sheet.left_mm + 1.0, y + 0.5 * size, size)
        if track.first:
            band = min(5.0, 0.6 * self.row_mm)
            yield _band(self._x(track.first), self._x(track.days[-1][0]), y, Style(band, TINT))
            small = min(_TEXT_MM, 0.3 * self.row_mm)
            yield self._right(self._day(track.first), y + 0.5 * small, BLACK, small)
        width = self._dot_mm
        for formed in (False, True):
            places = [(self._x(day), y) for day, was in track.days if was is formed]
            if places:
                yield _dots(places, width, formed=formed)

    @property
    def _dot_mm(self) -> float:
        """Return the width of a dot: as large as the rows and the days allow."""
        steps = [(after - before).days for before, after in zip(self.growth.days, self.growth.days[1:], strict=False)]
        least = min(steps, default=99) * (self.x1 - self.x0) / (self.end - self.start).days
        return max(0.9, min(3.0, 0.42 * self.row_mm, 0.85 * least))

    # --- the help ---------------------------------------------------------------------------------------

    def _help(self, y: float) -> Generator[Ink, None, float]:
        """Yield a bar for each level of help, lower as it grows less; return where they end."""
        yield self._text(self._say("help"), self.sheet.left_mm, y, _HEAD_MM)
        foot = y + 4.0 + _HELP_MM[Support.FULL]
        free_from = self.sheet.left_mm
        for begin, end, support in _spells(self.growth.support, self.growth.days[-1]):
            x0, x1 = self._x(begin), max(self._x(end), self._x(begin) + 0.8)
            yield block(x0, foot - _HELP_MM[support], x1, foot, Style(0.1, STRONG, fill=STRONG))
            word = self.words.listed([support])
            if x0 >= free_from:
                yield self._text(word, x0, foot + 4.0, _TEXT_MM, DARK)
                free_from = x0 + self.setter.text_width(word, _TEXT_MM) + 2.0
        yield Ink.of(_GRID, (line(self.x0, foot + 0.2, self.x1, foot + 0.2),))
        return foot + 4.0

    # --- the steps --------------------------------------------------------------------------------------

    def _steps(self, y: float) -> Iterator[Ink]:
        yield self._text(self._say("steps"), self.sheet.left_mm, y, _HEAD_MM)
        foot = y + 4.0 + STAGES * _STEP_MM
        first = {stage: day for day, stage in reversed(self.growth.stages)}
        now = self.growth.stages[-1][1]
        for stage in range(1, STAGES + 1):
            yield from self._step(stage, foot - (stage - 1) * _STEP_MM, first.get(stage), now)
        note = self._say("steps_note")
        yield from self._words(note, self.sheet.left_mm, foot + 6.0, _TEXT_MM)

    def _step(self, stage: int, foot: float, since: date | None, now: int) -> Iterator[Ink]:
        x = self.sheet.left_mm + (stage - 1) * _TREAD_MM
        fill = STRONG if stage == now else TINT if since else WHITE
        yield block(x, foot - _STEP_MM, x + _TREAD_MM, foot, _EDGE._replace(fill=fill))
        baseline = foot - 0.5 * _STEP_MM + 0.8
        words = self._say(f"stage_{stage}")
        begin = x + _TREAD_MM + 3.0
        said = "" if not since else self._say("reached", date=day_said(since, year=self._years))
        if stage == now:
            said = self._say("now")
        room = self.sheet.right_edge - begin - self.setter.text_width(said, _TEXT_MM) - 3.0
        yield self._text(words, begin, baseline, self._fitting(words, room, _TEXT_MM), BLACK if since else RULE)
        if said:
            yield self._right(said, baseline, BLACK)

    # --- time and text ----------------------------------------------------------------------------------

    def _x(self, day: date) -> float:
        return self.x0 + (self.x1 - self.x0) * (day - self.start).days / (self.end - self.start).days

    @cached_property
    def _years(self) -> bool:
        """Say whether the months span more than a year, so that a day needs its year."""
        return (self.end - self.start).days > 366

    @cached_property
    def _month_starts(self) -> tuple[date, ...]:
        found = [self.start]
        while found[-1] < self.end:
            found.append(_month_after(found[-1]))
        return tuple(found)

    def _months(self, y: float) -> Iterator[Ink]:
        """Yield the names of the months, as many as there is room for, and over them each year where it begins."""
        free_from, year = self.x0, 0
        for month in self._month_starts[:-1]:
            x, words = self._x(month) + 0.6, self.words.say(f"month.{month.month}")
            end = x + self.setter.text_width(words, _TEXT_MM)
            if x >= free_from and end <= self.x1:
                yield self._text(words, x, y, _TEXT_MM, DARK)
                free_from = end + 2.0
                if month.year != year:
                    yield self._text(str(month.year), x, y - 5.0, _TEXT_MM, DARK)
                    year = month.year

    @cached_property
    def _name(self) -> str:
        return self._drawable(self.growth.label)

    def _say(self, key: str, **fields: Field) -> str:
        return self.words.say(f"page.progress.{key}", **fields)

    def _day(self, day: date) -> str:
        return self.words.say(day_said(day, year=self._years))

    def _drawable(self, words: str) -> str:
        return drawable(self.setter, words)

    def _text(self, words: str, x: float, y: float, size: float, colour: str = BLACK) -> Ink:
        return self.setter.text(words, size).in_colour(colour).moved(x, y)

    def _words(self, words: str, x: float, y: float, size: float) -> Iterator[Ink]:
        yield from (ink.moved(x, y) for ink in self.setter.words(words, size))

    def _right(self, words: str, y: float, colour: str, size: float = _TEXT_MM) -> Ink:
        return self._text(words, self.sheet.right_edge - self.setter.text_width(words, size), y, size, colour)

    def _fitting(self, words: str, room_mm: float, size: float) -> float:
        return fitting(self.setter, words, room_mm, size)


def _month_after(day: date) -> date:
    return date(day.year + day.month // 12, day.month % 12 + 1, 1)


def _spells(noted: Sequence[tuple[date, Support]], last: date) -> Iterator[tuple[date, date, Support]]:
    """Yield each stretch of one level of help: from the day it was noted until another was, or the last day."""
    begin, level = noted[0]
    for day, support in noted[1:]:
        if support is not level:
            yield begin, day, level
            begin, level = day, support
    yield begin, last, level


def _band(x0: float, x1: float, y: float, style: Style) -> Ink:
    piece = line(x0, y, x1, y) if x1 > x0 else Piece(x0, y, dot_fragment([(0.0, 0.0)]))
    return Ink.of(style, (piece,))


def _dots(places: Sequence[Point], width_mm: float, *, formed: bool) -> Ink:
    """Return full dots, or small points."""
    style = Style(width_mm, STRONG) if formed else Style(max(0.6, 0.33 * width_mm), FAINT)
    return Ink.of(style, (Piece(0.0, 0.0, dot_fragment(places)),))


def block(x0: float, y0: float, x1: float, y1: float, style: Style) -> Ink:
    """Return a rectangle between two corners."""
    corners = ((0.0, 0.0), (x1 - x0, 0.0), (x1 - x0, y1 - y0), (0.0, y1 - y0), (0.0, 0.0))
    return Ink.of(style, (Piece(x0, y0, stroke_fragment([polyline_stroke(corners)])),))
