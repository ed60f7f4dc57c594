"""The week as a table: a row a child, by days, with letters, page numbers and a box to tick; then next week in a line.

Millimetres, y down. Out of scope: what the week brings (``practice.timetable``), explanations (the pages after it).
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from itertools import pairwise

from namewright.lines.ink import RULE, Ink, Style, line
from namewright.pages.page import Item
from namewright.pages.plan.flow import LEADING, SMALL_MM, TEXT_MM, Flow, fitted
from namewright.pages.plan.sentences import begin_said, letters_said, next_week_said, table_said, this_week_said
from namewright.practice.days import Day
from namewright.practice.timetable import Progress, Timetable
from namewright.wording import Wording

Numbers = Mapping[int, Sequence[int]]  # by the line of a child: the pages of its sheet in the class's PDF
NO_NUMBERS: Numbers = {}
_ROW_MM, _BASE_MM, _LETTERS_MM = 5.4, 3.8, 1.9
_DAY_RULE, _ROW_RULE, _BOX = Style(0.3, RULE), Style(0.1, RULE), Style(0.25, RULE)
_BOX_MM = 3.0


@dataclass(frozen=True, slots=True)
class _Columns:
    """Where the columns of the table begin, in mm from the left, and where the last one ends."""

    day: float
    who: float
    table: float
    letters: float
    sheet: float
    tick: float

    def room(self, column: str) -> float:
        """Return the width of a column, a little white left beside the next."""
        names = ("day", "who", "table", "letters", "sheet", "tick")
        after = names[names.index(column) + 1]
        return float(getattr(self, after) - getattr(self, column) - 1.5)


def _columns(flow: Flow) -> _Columns:
    left, right = flow.sheet.left_mm, flow.sheet.right_edge
    return _Columns(left, left + 34.0, right - 92.0, right - 74.0, right - 40.0, right - 7.0)


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
        _add_head(flow, words, numbered=bool(numbers))
    for day in plan.days:
        _add_day(flow, day, plan, words, numbers)
    flow.y += 2.0
    if len(weeks) > 1:
        flow.say(words.say(next_week_said(plan, weeks[1])))
    if len(plan.tables) > 1:
        flow.heading(words.say("page.plan.tables"), 16.0)
        for table in plan.tables:
            flow.say(words.say(table_said(plan, table)))


def _add_head(flow: Flow, words: Wording, *, numbered: bool) -> None:
    columns = _columns(flow)
    flow.room(12.0)
    items: list[Item] = []
    for name in ("day", "who", "table", "letters", *(("sheet",) if numbered else ())):
        items += fitted(flow.setter, words.say(f"page.plan.column_{name}"), getattr(columns, name), flow.y + 3.0,
                        columns.room(name), SMALL_MM)
    flow.put(items, 4.6)


def _add_day(flow: Flow, day: Day, plan: Timetable, words: Wording, numbers: Numbers) -> None:
    """Set a day's rows under a rule; they stay together on a page."""
    columns = _columns(flow)
    flow.room(min(len(day.children), 12) * _ROW_MM)
    top = flow.y
    items: list[Item] = [Ink(_DAY_RULE, (line(columns.day, top, flow.sheet.right_edge, top),))]
    name, minutes = words.say(f"page.plan.day_{day.day}"), words.say("page.plan.minutes", count=day.minutes)
    said = [(name, TEXT_MM), (minutes, SMALL_MM)] if len(day.children) > 1 else [(f"{name}, {minutes}", TEXT_MM)]
    for at, (text, size) in enumerate(said):
        base = top + _BASE_MM + at * SMALL_MM * LEADING
        items += fitted(flow.setter, text, columns.day, base, columns.room("day"), size)
    flow.put(items, 0.0)
    for at in day.children:
        flow.room(_ROW_MM)
        flow.put(_row(flow, plan.children[at], words, numbers, columns), _ROW_MM)


def _row(flow: Flow, child: Progress, words: Wording, numbers: Numbers, columns: _Columns) -> list[Item]:
    placed, base = child.placed, flow.y + _BASE_MM
    pages = numbers.get(placed.child.line, ())
    cells = {"who": placed.child.label, "table": words.say("page.plan.table_short", number=placed.group),
             "letters": _what(child, words), "sheet": _pages_said(pages, words)}
    items: list[Item] = []
    for name, text in cells.items():
        items += fitted(flow.setter, text, getattr(columns, name), base, columns.room(name), TEXT_MM)
    x, y = columns.tick, flow.y + (_ROW_MM - _BOX_MM) / 2
    corners = ((x, y), (x + _BOX_MM, y), (x + _BOX_MM, y + _BOX_MM), (x, y + _BOX_MM), (x, y))
    items.append(Ink(_BOX, tuple(line(*a, *b) for a, b in pairwise(corners))))
    foot = flow.y + _ROW_MM
    items.append(Ink(_ROW_RULE, (line(columns.who, foot, flow.sheet.right_edge, foot),)))
    return items


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
