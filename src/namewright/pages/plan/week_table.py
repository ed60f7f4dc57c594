"""The week as a table: a row a child, by days, with letters, support, hand, page numbers and a box to tick.

Under it stand next week in a line and who sits together.

Millimetres, y down. Out of scope: what the week brings (``practice.timetable``), explanations (the pages after it).
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from itertools import pairwise

from namewright.lines.ink import RULE, Ink, Style, line
from namewright.pages.page import Item, Place, Placed
from namewright.pages.plan.flow import LEADING, SMALL_MM, TEXT_MM, Flow, fitted
from namewright.pages.plan.sentences import begin_said, letters_said, next_week_said, table_said, this_week_said
from namewright.practice.days import Day
from namewright.practice.timetable import Progress, Timetable, in_page_order
from namewright.settings import Hand
from namewright.wording import Wording

Numbers = Mapping[int, Sequence[int]]  # by the line of a child: the pages of its sheet in the class's PDF
NO_NUMBERS: Numbers = {}
_ROW_MM, _ROW_ALONE_MM, _BASE_MM, _LETTERS_MM = 5.4, 9.0, 3.8, 1.9
_DAY_RULE, _ROW_RULE, _BOX = Style(0.3, RULE), Style(0.1, RULE), Style(0.25, RULE)
_BOX_MM = 3.0


@dataclass(frozen=True, slots=True)
class _Columns:
    """Where the columns of the table begin, in mm from the left, and where the last one ends."""

    day: float
    who: float
    table: float
    letters: float
    help: float
    sheet: float
    tick: float

    def room(self, column: str) -> float:
        """Return the width of a column, a little white left beside the next."""
        names = ("day", "who", "table", "letters", "help", "sheet", "tick")
        after = names[names.index(column) + 1]
        return float(getattr(self, after) - getattr(self, column) - 1.5)


def _columns(flow: Flow) -> _Columns:
    left, right = flow.sheet.left_mm, flow.sheet.right_edge
    return _Columns(left, left + 29.0, right - 116.0, right - 99.5, right - 69.0, right - 34.0, right - 7.0)


def add_week(flow: Flow, plan: Timetable, words: Wording, numbers: Numbers) -> None:
    """Set the letters of the week, the table of its days, next week in one line, and who sits together."""
    weeks = plan.weeks.weeks
    if weeks:
        flow.say(words.say(this_week_said(weeks[0])), _LETTERS_MM)
        if weeks[0].review:
            flow.say(words.say("page.plan.week_review", letters=letters_said(weeks[0].review)))
        flow.say(words.say(begin_said(plan)))
    elif any(each.letters for each in plan.children):
        flow.say(words.say("page.plan.monday_all_formed"))
    flow.y += 1.5
    if plan.children:
        _add_head(flow, words, _named(numbers))
    for day in in_page_order(plan, numbers):
        _add_day(flow, day, plan, words, numbers)
    flow.y += 2.0
    if weeks and len(plan.children) > 1:
        flow.say(words.say("page.plan.week_how"))
    if len(weeks) > 1:
        flow.say(words.say(next_week_said(plan, weeks[1])))
    if len(plan.tables) > 1:
        flow.heading(words.say("page.plan.tables"), 16.0)
        for table in plan.tables:
            flow.entry(words.say(table_said(plan, table)))


def _named(numbers: Numbers) -> tuple[str, ...]:
    """Return the columns that have a head: all but the boxes to tick, which say nothing."""
    return ("day", "who", "table", "letters", "help", *(("sheet",) if numbers else ()))


def _add_head(flow: Flow, words: Wording, named: Sequence[str]) -> None:
    columns = _columns(flow)
    flow.room(12.0)
    heads = ((name, words.say(f"page.plan.column_{name}")) for name in named)
    cells = tuple(Placed(Place.COLUMN_HEAD, fitted(flow.setter, said, getattr(columns, name), flow.y + 3.0,
                                                   columns.room(name), SMALL_MM)) for name, said in heads)
    flow.put_in(Place.TABLE, Placed(Place.ROW, cells), 4.6)


def _add_day(flow: Flow, day: Day, plan: Timetable, words: Wording, numbers: Numbers) -> None:
    """Set a day's rows under a rule; they stay together on a page. A row alone is as high as what its day says."""
    high = _ROW_MM if len(day.children) > 1 else _ROW_ALONE_MM
    flow.room(min(len(day.children), 12) * high)
    columns = _columns(flow)
    rule = Ink.of(_DAY_RULE, (line(columns.day, flow.y, flow.sheet.right_edge, flow.y),))
    head = _day_head(flow, day, words, columns)
    for count, at in enumerate(day.children):
        flow.room(high)
        row = _row(flow, plan.children[at], words, numbers, columns, high)
        begun = (rule, Placed(Place.ROW_HEAD, head)) if count == 0 else (Placed(Place.CELL, ()),)
        flow.put_in(Place.TABLE, Placed(Place.ROW, (*begun, *row)), high)


def _day_head(flow: Flow, day: Day, words: Wording, columns: _Columns) -> tuple[Ink, ...]:
    name, minutes = words.say(f"page.plan.day_{day.day}"), words.say("page.plan.minutes", count=day.minutes)
    inks: list[Ink] = []
    for at, (text, size) in enumerate(((name, TEXT_MM), (minutes, SMALL_MM))):
        base = flow.y + _BASE_MM + at * SMALL_MM * LEADING
        inks += fitted(flow.setter, text, columns.day, base, columns.room("day"), size)
    return tuple(inks)


def _row(flow: Flow, child: Progress, words: Wording, numbers: Numbers, columns: _Columns, high: float) -> list[Item]:
    placed, base = child.placed, flow.y + _BASE_MM
    pages = numbers.get(placed.child.line, ())
    cells = {"who": placed.child.label, "table": words.say("page.plan.table_short", number=placed.group),
             "letters": _what(child, words), "sheet": _pages_said(pages, words),
             "help": _help(child, words)}
    items: list[Item] = []
    for name in _named(numbers)[1:]:
        inks = fitted(flow.setter, cells[name], getattr(columns, name), base, columns.room(name), TEXT_MM)
        items.append(Placed(Place.ROW_HEAD if name == "who" else Place.CELL, inks))
    x, y = columns.tick, flow.y + (_ROW_MM - _BOX_MM) / 2
    corners = ((x, y), (x + _BOX_MM, y), (x + _BOX_MM, y + _BOX_MM), (x, y + _BOX_MM), (x, y))
    items.append(Ink.of(_BOX, tuple(line(*a, *b) for a, b in pairwise(corners))))
    foot = flow.y + high
    items.append(Ink.of(_ROW_RULE, (line(columns.who, foot, flow.sheet.right_edge, foot),)))
    return items


def _help(child: Progress, words: Wording) -> str:
    if child.hand is Hand.UNSETTLED:
        return words.say("page.plan.help_unsettled", support=child.support)
    return words.say("page.plan.help", support=child.support, hand=child.hand)


def _what(child: Progress, words: Wording) -> str:
    """Return a child's letters of this week; the whole name from memory where all of them stand."""
    if child.next:
        return "  ".join(child.next)
    return words.say("page.plan.whole_name" if child.letters else "page.plan.no_letters")


def _pages_said(pages: Sequence[int], words: Wording) -> str:
    """Return page numbers of the class's PDF: one, or from the first to the last."""
    if not pages:
        return ""
    return words.say("page.plan.sheet_pages", count=len(pages), first=pages[0], last=pages[-1])
