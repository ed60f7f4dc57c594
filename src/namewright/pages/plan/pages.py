"""The plan for the adult: the week as a table on one page, and behind it why, for whoever wants to know.

More pages where a class is larger, for no child is left out. Millimetres, y down, portrait. Everything is a suggestion,
and says so. Out of scope: deciding anything (``practice``).
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date

from namewright.lines.ink import Ink, Role
from namewright.pages.growth import day_said
from namewright.pages.page import Chart, Item, Page, Place, Placed, checked
from namewright.pages.paper import Paper, sheet_of
from namewright.pages.plan.band_shapes import STEP_MM
from namewright.pages.plan.child_rows import add_rows, drawn
from namewright.pages.plan.flow import LEADING, SMALL_MM, Flow, fitted
from namewright.pages.plan.sentences import account_said, labels, weeks_said
from namewright.pages.plan.week_table import NO_NUMBERS, Numbers, add_week
from namewright.pages.typesetter import Typesetter
from namewright.practice.difficulty import letter_difficulty
from namewright.practice.ordering import Order
from namewright.practice.timetable import Timetable
from namewright.practice.weeks import Week
from namewright.wording import Wording, wording

_TITLE_MM = 2.4
_AHEAD_MM = 24.0  # the heading of the weeks ahead and three lines under it
_WEEKS_A_LINE = 10
_OVER_NAMES_MM = 1.6  # white over the names under a week: a ring or a tilde runs into no letter there
_MAX_UNDER_A_WEEK = 8
_NOTES = ("scale", "order", "watch", "pace", "tables", "teacher")


@dataclass(frozen=True, slots=True)
class PlanSettings:
    """How the plan is made; ``monday`` is that of its week, None where the plan is of any week."""

    paper: Paper = Paper.LETTER
    binding: bool = False
    order: Order = Order.PRACTICE
    language: str = "en"
    monday: date | None = None


def plan_pages(setter: Typesetter, plan: Timetable, settings: PlanSettings, numbers: Numbers = NO_NUMBERS,
               ) -> tuple[Page, ...]:
    """Return the pages; ``numbers`` are those of the class's PDF, by the line of a child."""
    words, sheet = wording(settings.language), sheet_of(settings.paper, binding=settings.binding)
    flow = Flow(setter, sheet)
    title = words.say("page.plan.title") if settings.monday is None else words.say(
        "page.plan.title_of", day=day_said(settings.monday, year=True))
    flow.say(title, _TITLE_MM, role=Role.TITLE)
    account = account_said(plan)
    if account:
        flow.say(words.say(account))
    add_week(flow, plan, words, numbers)
    ahead = flow.left() >= _ahead_mm(plan, words)  # else they stand behind the names
    if ahead:
        _add_weeks(flow, plan, words)
    flow.turn()
    add_rows(flow, plan.children, words, settings.order)
    if not ahead:
        _add_weeks(flow, plan, words)
    _add_notes(flow, words)
    return tuple(checked(Page(sheet.width_mm, sheet.height_mm, tuple(items))) for items in flow.pages)


def _add_weeks(flow: Flow, plan: Timetable, words: Wording) -> None:
    weeks = plan.weeks.weeks
    if not weeks:
        return
    flow.heading(words.say("page.plan.weeks"), 30.0)
    flow.say(words.say(weeks_said(plan)))
    flow.y += 1.5
    for start in range(0, len(weeks), _WEEKS_A_LINE):
        columns = [_column(week, plan, words) for week in weeks[start:start + _WEEKS_A_LINE]]
        height = _line_mm(weeks[start:start + _WEEKS_A_LINE], columns)
        flow.room(height)
        for at, (week, names) in enumerate(zip(weeks[start:], columns, strict=False)):
            x = flow.sheet.left_mm + at * _column_mm(flow)
            flow.put_in(Place.LIST, Placed(Place.ENTRY, tuple(_week(flow, start + at + 1, week, names, x, words))), 0.0)
        flow.y += height


def _ahead_mm(plan: Timetable, words: Wording) -> float:
    """Return the room that the weeks ahead take."""
    weeks = plan.weeks.weeks
    lines = (weeks[start:start + _WEEKS_A_LINE] for start in range(0, len(weeks), _WEEKS_A_LINE))
    return _AHEAD_MM + sum(_line_mm(some, [_column(week, plan, words) for week in some]) for some in lines)


def _line_mm(weeks: Sequence[Week], columns: Sequence[Sequence[str]]) -> float:
    return 5.0 + _OVER_NAMES_MM + max(map(_letters_mm, weeks)) + max(map(len, columns)) * SMALL_MM * LEADING


def _letters_mm(week: Week) -> float:
    return STEP_MM * len(week.letters)


def _column_mm(flow: Flow) -> float:
    return flow.sheet.room_width / _WEEKS_A_LINE


def _column(week: Week, plan: Timetable, words: Wording) -> tuple[str, ...]:
    names = labels(plan, week.completes)
    if len(names) <= _MAX_UNDER_A_WEEK:
        return names
    return (*names[:_MAX_UNDER_A_WEEK - 1], words.say("page.plan.more", count=len(names) - _MAX_UNDER_A_WEEK + 1))


def _week(flow: Flow, number: int, week: Week, names: Sequence[str], x: float, words: Wording) -> list[Item]:
    """Return a column: the week's number, its letters in both cases, and the names that are complete with it."""
    setter, y = flow.setter, flow.y
    said = words.say("page.plan.week", number=number)
    items: list[Item] = [*fitted(setter, said, x, y + 2.4, _column_mm(flow) - 1.5, SMALL_MM)]
    tiles: list[Ink] = []
    for row, letter in enumerate(week.letters):
        capital = letter.upper()
        forms = [letter] if capital == letter or len(capital) > 1 else [capital, letter]
        for at, form in enumerate(forms):
            tiles += drawn(setter, form, letter_difficulty(form).band, x + at * STEP_MM, y + 6.4 + row * STEP_MM)
    items.append(Chart(words.listed(week.letters), tuple(tiles)))
    under = y + 6.8 + _OVER_NAMES_MM + _letters_mm(week)
    for at, name in enumerate(names):
        items += fitted(setter, name, x, under + at * SMALL_MM * LEADING, _column_mm(flow) - 1.5)
    return items


def _add_notes(flow: Flow, words: Wording) -> None:
    flow.y += 3.0 if flow.pages[-1] else 0.0
    for key in _NOTES:
        flow.entry(words.say(f"page.plan.note_{key}"), SMALL_MM)
