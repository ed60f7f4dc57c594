"""The plan for the adult: what to do on Monday, the class in a chart and in rows, the groups, and the weeks.

Two pages for a class of up to about thirty; more where a class is larger, for no child is left out. Millimetres,
y down, portrait. Everything is a suggestion, and says so. Out of scope: deciding anything (``practice``).
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from namewright.lines.ink import DARK, Ink, Style, line
from namewright.message import Message
from namewright.pages.page import Item, Page, checked
from namewright.pages.paper import Paper, sheet_of
from namewright.pages.plan.chart import chart
from namewright.pages.plan.child_rows import add_rows, drawn
from namewright.pages.plan.flow import LEADING, SMALL_MM, TEXT_MM, Flow, fitted
from namewright.pages.plan.marks import MARK_MM, STEP_MM
from namewright.pages.plan.sentences import (
    NOTHING_FORMED,
    Formed,
    first_children,
    group_said,
    groups_of,
    monday,
    weeks_said,
)
from namewright.pages.press import Press
from namewright.pages.summary import drawable
from namewright.practice.difficulty import letter_difficulty, name_difficulty
from namewright.practice.groups import shared_letters
from namewright.practice.ordering import Order, Planned, own_initial
from namewright.practice.reason import for_parent
from namewright.practice.weeks import Week, WeekPlan
from namewright.wording import Wording, wording

_TITLE_MM = 2.4
_CHART_MM, _SMALL_CHART_MM = 46.0, 36.0
_FEW, _SMALL_CLASS = 5, 12  # fewer children than this need no chart; up to this many, a small one will do
_WEEKS_A_LINE = 10
_MOST_UNDER_A_WEEK = 12
_BAR = Style(1.2, DARK)


@dataclass(frozen=True, slots=True)
class PlanSettings:
    """How the plan is made."""

    paper: Paper = Paper.LETTER
    binding: bool = False
    order: Order = Order.PRACTICE
    language: str = "en"


def plan_pages(press: Press, placed: Sequence[Planned], plan: WeekPlan, settings: PlanSettings,
               formed: Formed = NOTHING_FORMED) -> tuple[Page, ...]:
    """Return the pages. ``placed`` are the children in order, completed; ``plan`` counts them by that order.

    ``formed`` says of children, by their lines, which letters stood when they were looked at last: these are ticked,
    and nobody is begun with whose letters all stand.
    """
    words, sheet = wording(settings.language), sheet_of(settings.paper, binding=settings.binding)
    flow = Flow(press, sheet)
    flow.say(words.say("page.plan.title"), _TITLE_MM)
    _add_monday(flow, tuple(monday(placed, plan, settings.order, formed)), words)
    _add_chart(flow, placed, words)
    add_rows(flow, placed, words, settings.order, formed)
    _add_groups(flow, placed, words)
    _add_weeks(flow, placed, plan, words)
    _add_home(flow, first_children(placed, settings.order, formed), words)
    _add_notes(flow, words)
    return tuple(checked(Page(sheet.width_mm, sheet.height_mm, tuple(items))) for items in flow.pages)


def _add_monday(flow: Flow, told: Sequence[Message], words: Wording) -> None:
    """Set what to do first beside a bar that catches the eye."""
    flow.y += 1.0
    top = flow.y
    for each in told:
        flow.say(words.say(each), x=flow.sheet.left_mm + 4.0)
    if told:
        x = flow.sheet.left_mm + 0.8
        flow.put([Ink(_BAR, (line(x, top + 1.0, x, flow.y - 0.6),))], 0.0)


def _add_chart(flow: Flow, placed: Sequence[Planned], words: Wording) -> None:
    able = sum(bool(each.letters) for each in placed)
    if able < _FEW:
        return
    height = _SMALL_CHART_MM if able <= _SMALL_CLASS else _CHART_MM
    flow.heading(words.say("page.plan.chart"), height)
    flow.y += 1.5
    box = (flow.sheet.left_mm, flow.y, flow.sheet.right_edge, flow.y + height)
    flow.put(list(chart(flow.press, placed, words, box)), height)


# --- groups and weeks --------------------------------------------------------------------------------


def _add_groups(flow: Flow, placed: Sequence[Planned], words: Wording) -> None:
    groups = {number: group for number, group in groups_of(placed).items() if len(group) > 1}
    if not groups:
        return
    flow.heading(words.say("page.plan.groups"), 16.0)
    flow.say(words.say("page.plan.groups_why"))
    flow.y += 1.0
    said = {number: words.say(group_said(number, group)) for number, group in groups.items()}
    room = flow.sheet.room_width - _WEEKS_A_LINE * STEP_MM
    tiles = min(room, 8.0 + max(flow.press.text_width(drawable(flow.press, text), TEXT_MM) for text in said.values()))
    for number, group in groups.items():
        letters = shared_letters([each.child.practice for each in group])
        _add_group(flow, said[number], letters[:_WEEKS_A_LINE], tiles)


def _add_group(flow: Flow, text: str, letters: Sequence[str], tiles_mm: float) -> None:
    """Set a group's names, and ``tiles_mm`` from the left the letters that it shares."""
    flow.room(3 * TEXT_MM * LEADING)
    start = flow.y
    for at, letter in enumerate(letters):
        x = flow.sheet.left_mm + tiles_mm + at * STEP_MM
        flow.pages[-1] += drawn(flow.press, letter, letter_difficulty(letter).band, x, start + 2.4)
    flow.say(text, width=tiles_mm - 4.0)
    flow.y = max(flow.y, start + MARK_MM + 0.3) + 0.3


def _add_weeks(flow: Flow, placed: Sequence[Planned], plan: WeekPlan, words: Wording) -> None:
    if not plan.weeks:
        return
    flow.heading(words.say("page.plan.weeks"), 30.0)
    flow.say(words.text(*weeks_said(plan, sum(bool(each.letters) for each in placed))))
    flow.y += 1.5
    for start in range(0, len(plan.weeks), _WEEKS_A_LINE):
        columns = [_column(week, placed, words) for week in plan.weeks[start:start + _WEEKS_A_LINE]]
        height = 10.0 + max(map(len, columns)) * SMALL_MM * LEADING
        flow.room(height)
        items: list[Item] = []
        for at, (week, names) in enumerate(zip(plan.weeks[start:], columns, strict=False)):
            x = flow.sheet.left_mm + at * _column_mm(flow)
            items += _week(flow, start + at + 1, week, names, x, words)
        flow.put(items, height)


def _column_mm(flow: Flow) -> float:
    return flow.sheet.room_width / _WEEKS_A_LINE


def _column(week: Week, placed: Sequence[Planned], words: Wording) -> tuple[str, ...]:
    names = tuple(placed[at].child.label for at in week.ready)
    if len(names) <= _MOST_UNDER_A_WEEK:
        return names
    return (*names[:_MOST_UNDER_A_WEEK - 1], words.say("page.plan.more", count=len(names) - _MOST_UNDER_A_WEEK + 1))


def _week(flow: Flow, number: int, week: Week, names: Sequence[str], x: float, words: Wording) -> list[Item]:
    """Return a column: the week's number, its letter in both cases, and the names that are ready with it."""
    press, y = flow.press, flow.y
    capital = week.letter.upper()
    items: list[Item] = [press.text(words.say("page.plan.week", number=number), SMALL_MM).moved(x, y + 2.4)]
    forms = [week.letter] if capital == week.letter or len(capital) > 1 else [capital, week.letter]
    for at, form in enumerate(forms):
        items += drawn(press, form, letter_difficulty(form).band, x + at * STEP_MM, y + 6.4)
    for at, name in enumerate(names):
        items += fitted(press, name, x, y + 12.0 + at * SMALL_MM * LEADING, _column_mm(flow) - 1.5)
    return items


def _add_home(flow: Flow, first: Sequence[Planned], words: Wording) -> None:
    """Say what a teacher could tell the families of the children named for Monday."""
    if first:
        flow.heading(words.say("page.plan.home"), 12.0)
        for each in first:
            initial = own_initial(each.child)
            rating = name_difficulty(each.child.practice, initial)
            flow.say(words.text(*for_parent(each.child.label, rating, initial)))


def _add_notes(flow: Flow, words: Wording) -> None:
    flow.y += 3.0 if flow.pages[-1] else 0.0
    for key in ("scale", "order", "watch", "teacher"):
        flow.say(words.say(f"page.plan.note_{key}"), SMALL_MM)
