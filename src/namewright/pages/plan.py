"""The plan for the adult: what to do on Monday, the class in a chart and in rows, the groups, and the weeks.

Two pages for a class of up to about thirty; more where a class is larger, for no child is left out. Millimetres,
y down, portrait. Everything is a suggestion, and says so. Out of scope: deciding anything (``practice``).
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field

from namewright.lines.ink import DARK, RULE, Ink, Style, line
from namewright.pages.page import Item, Page, checked
from namewright.pages.paper import Paper, Sheet, sheet_of
from namewright.pages.plan_chart import chart
from namewright.pages.plan_marks import MARK_MM, STEP_MM, letter_mark, point, watch_mark
from namewright.pages.plan_words import FIRST, Words, groups_of, joined, monday, order_said, weeks_said
from namewright.pages.press import Press, captions
from namewright.pages.summary import drawable
from namewright.practice.difficulty import Band, letter_difficulty, name_difficulty
from namewright.practice.groups import shared_letters
from namewright.practice.order import Order, Placed, own_initial
from namewright.practice.reason import for_parent
from namewright.practice.sequence import faces_left
from namewright.practice.weeks import Week, WeekPlan

_TITLE_MM, _HEAD_MM, _TEXT_MM, _SMALL_MM = 2.4, 1.9, 1.5, 1.3
_LEADING = 2.9
_CHART_MM = 53.0
_ROW_MM = 5.9
_TILES_X, _BEATS_X, _GROUP_X = 40.0, 50.0, 13.0  # tiles from the left; beats and group from the right
_WEEKS_A_LINE = 10
_MOST_UNDER_A_WEEK = 12
_RULE, _BAR = Style(0.1, RULE), Style(1.2, DARK)


@dataclass(frozen=True, slots=True)
class PlanSettings:
    """How the plan is made."""

    paper: Paper = Paper.LETTER
    binding: bool = False
    order: Order = Order.PRACTICE
    language: str = "en"


@dataclass
class _Flow:
    """Pages being filled from the top; what does not fit goes to the next page whole."""

    press: Press
    sheet: Sheet
    y: float = 0.0
    pages: list[list[Item]] = field(default_factory=lambda: [[]])

    def __post_init__(self) -> None:
        self.y = self.sheet.top_mm

    def room(self, height: float) -> None:
        """Go to a new page unless ``height`` mm are free here."""
        if self.pages[-1] and self.y + height > self.sheet.foot:
            self.pages.append([])
            self.y = self.sheet.top_mm

    def put(self, items: Sequence[Item], height: float) -> None:
        """Set down items made for the current height, and go on below them."""
        self.pages[-1] += items
        self.y += height

    def say(self, text: str, size: float = _TEXT_MM, *, x: float | None = None, width: float | None = None) -> None:
        """Set running text, wrapped; not broken over two pages."""
        left = self.sheet.left_mm if x is None else x
        room = self.sheet.right_edge - left if width is None else width
        lines = self.press.wrapped(_breakable(self.press, drawable(self.press, text), room, size), room, size)
        self.room(len(lines) * size * _LEADING)
        for words in lines:
            inks = [ink.moved(left, self.y + size * (_LEADING - 0.9)) for ink in self.press.words(words, size)]
            self.put(inks, size * _LEADING)


def _breakable(press: Press, text: str, room: float, size: float) -> str:
    """Return a text with each word that is wider than the room cut into pieces that are not."""
    words: list[str] = []
    for word in text.split():
        while len(word) > 1 and press.text_width(word, size) > room:
            share = max(1, int(0.9 * len(word) * room / press.text_width(word, size)))
            words.append(word[:share])
            word = word[share:]
        words.append(word)
    return " ".join(words)


def plan_pages(press: Press, placed: Sequence[Placed], plan: WeekPlan, settings: PlanSettings) -> tuple[Page, ...]:
    """Return the pages. ``placed`` are the children in order, completed; ``plan`` counts them by that order."""
    words, sheet = captions(settings.language), sheet_of(settings.paper, binding=settings.binding)
    flow = _Flow(press, sheet)
    flow.say(words["plan.title"], _TITLE_MM)
    _add_monday(flow, tuple(monday(placed, plan, settings.order, words)))
    _add_chart(flow, placed, words)
    _add_rows(flow, placed, words, settings.order)
    _add_groups(flow, placed, words)
    _add_weeks(flow, placed, plan, words)
    _add_home(flow, placed, words, settings.language)
    _add_notes(flow, words)
    return tuple(checked(Page(sheet.width_mm, sheet.height_mm, tuple(items))) for items in flow.pages)


def _add_monday(flow: _Flow, sentences: Sequence[str]) -> None:
    """Set what to do first beside a bar that catches the eye."""
    flow.y += 1.0
    top = flow.y
    for sentence in sentences:
        flow.say(sentence, x=flow.sheet.left_mm + 4.0)
    if sentences:
        x = flow.sheet.left_mm + 0.8
        flow.put([Ink(_BAR, (line(x, top + 1.0, x, flow.y - 0.6),))], 0.0)


def _heading(flow: _Flow, text: str, keep_mm: float) -> None:
    """Set a heading that stays together with what follows it."""
    flow.room(4.0 + _HEAD_MM * _LEADING + keep_mm)
    flow.y += 3.0 if flow.pages[-1] else 0.0
    flow.say(text, _HEAD_MM)


def _add_chart(flow: _Flow, placed: Sequence[Placed], words: Words) -> None:
    if not any(each.letters for each in placed):
        return
    _heading(flow, words["plan.chart"], _CHART_MM)
    flow.y += 1.5
    box = (flow.sheet.left_mm, flow.y, flow.sheet.right_edge, flow.y + _CHART_MM)
    flow.put(list(chart(flow.press, placed, words, box)), _CHART_MM)


# --- a row a child -----------------------------------------------------------------------------------


def _add_rows(flow: _Flow, placed: Sequence[Placed], words: Words, order: Order) -> None:
    _heading(flow, words["plan.rows"], 20.0)
    flow.say(order_said(order, words))
    _add_legend(flow, words)
    for each in placed:
        lines = _tile_lines(flow, each)
        height = _ROW_MM * max(1, len(lines))
        flow.room(height)
        flow.put(_row(flow, each, lines, words), height)


def _add_legend(flow: _Flow, words: Words) -> None:
    """Explain the three shapes, the arrowhead and the question mark, in as many lines as it takes."""
    shapes: list[tuple[Ink | None, str]] = [(point(band, 1.6, 0.0, 3.2), f"plan.legend_{band}") for band in Band]
    x = flow.sheet.left_mm
    flow.y += 0.6
    for shape, key in (*shapes, (watch_mark(0.8, 0.0), "plan.legend_watch"), (None, "plan.legend_guess")):
        start = shape.bounds()[2] + 0.9 if shape else 0.0
        width = start + flow.press.text_width(words[key], _SMALL_MM)
        if x + width > flow.sheet.right_edge:
            x, flow.y = flow.sheet.left_mm, flow.y + 4.6
        middle = flow.y + 2.6
        flow.pages[-1] += [shape.moved(x, middle)] if shape else []
        flow.pages[-1].append(flow.press.text(words[key], _SMALL_MM).moved(x + start, middle + _SMALL_MM / 2))
        x += width + 4.0
    flow.y += 5.4


def _tile_lines(flow: _Flow, each: Placed) -> list[Sequence[tuple[str, Band]]]:
    room = flow.sheet.room_width - _TILES_X - _BEATS_X - 2.0
    count = max(1, int(room / STEP_MM))
    return [each.letters[at:at + count] for at in range(0, len(each.letters), count)]


def _row(flow: _Flow, each: Placed, lines: Sequence[Sequence[tuple[str, Band]]], words: Words) -> list[Item]:
    left, right, middle = flow.sheet.left_mm, flow.sheet.right_edge, flow.y + _ROW_MM / 2
    baseline = middle + _TEXT_MM / 2
    items: list[Item] = [Ink(_RULE, (line(left, flow.y, right, flow.y),))]
    items += _fitted(flow.press, str(each.position), left, baseline, 7.0)
    items += _fitted(flow.press, each.child.label, left + 7.0, baseline, _TILES_X - 8.5)
    for number, letters in enumerate(lines):
        height = middle + number * _ROW_MM - 0.5
        for at, (letter, band) in enumerate(letters):
            x = left + _TILES_X + at * STEP_MM
            items += _drawn(flow.press, letter, band, x, height)
            if faces_left(letter):
                items.append(watch_mark(x + MARK_MM / 2, height + MARK_MM / 2 + 0.65))
    items += _fitted(flow.press, _clapped(each), right - _BEATS_X, baseline, _BEATS_X - _GROUP_X - 2.0)
    if each.group:
        items += _fitted(flow.press, words["plan.group_short"].format(each.group), right - _GROUP_X, baseline, _GROUP_X)
    return items


def _clapped(each: Placed) -> str:
    """Return the beats with a dot between them, where neither a space nor a hyphen parts them; a guess is marked."""
    text = "".join(part if part.endswith((" ", "-", "‐", "‑")) else f"{part} · " for part in each.beats).rstrip("· ")
    return text if each.beats_known or not text else f"{text} ?"


def _drawn(press: Press, letter: str, band: Band, x: float, y: float) -> tuple[Ink, ...]:
    """Return a letter's mark; one that our letters lack is shown by its bare shape."""
    if press.alphabet.missing(letter):
        return (point(band, x + MARK_MM / 2, y, MARK_MM),)
    return letter_mark(press, letter, band, x, y)


def _fitted(press: Press, text: str, x: float, baseline: float, room: float) -> tuple[Ink, ...]:
    """Return a text in the room there is: smaller where it must be, and cut where that is not enough."""
    if not text.strip():
        return ()
    text, size = drawable(press, text), _TEXT_MM
    while press.text_width(text, size) > room and size > 1.0:
        size = round(size - 0.1, 2)
    while len(text) > 1 and press.text_width(text, size) > room:
        text = text[:-2].rstrip() + "."
    return (press.text(text, size).moved(x, baseline),)


# --- groups and weeks --------------------------------------------------------------------------------


def _add_groups(flow: _Flow, placed: Sequence[Placed], words: Words) -> None:
    groups = {number: group for number, group in groups_of(placed).items() if len(group) > 1}
    if not groups:
        return
    _heading(flow, words["plan.groups"], 16.0)
    flow.say(words["plan.groups_why"])
    flow.y += 1.0
    for number, group in groups.items():
        letters = shared_letters([each.child.practice for each in group])
        names = joined([each.child.label for each in group], words)
        _add_group(flow, words["plan.group"].format(number=number, who=names), letters[:_WEEKS_A_LINE])


def _add_group(flow: _Flow, text: str, letters: Sequence[str]) -> None:
    left, room = flow.sheet.left_mm, flow.sheet.room_width
    tiles = left + room - _WEEKS_A_LINE * STEP_MM
    flow.room(3 * _TEXT_MM * _LEADING)
    start = flow.y
    for at, letter in enumerate(letters):
        mark = _drawn(flow.press, letter, letter_difficulty(letter).band, tiles + at * STEP_MM, start + 2.9)
        flow.pages[-1] += mark
    flow.say(text, width=tiles - left - 4.0)
    flow.y = max(flow.y, start + MARK_MM + 0.6) + 0.6


def _add_weeks(flow: _Flow, placed: Sequence[Placed], plan: WeekPlan, words: Words) -> None:
    if not plan.weeks:
        return
    _heading(flow, words["plan.weeks"], 30.0)
    flow.say(weeks_said(plan, sum(bool(each.letters) for each in placed), words))
    flow.y += 1.5
    for start in range(0, len(plan.weeks), _WEEKS_A_LINE):
        columns = [_column(week, placed, words) for week in plan.weeks[start:start + _WEEKS_A_LINE]]
        height = 13.0 + max(map(len, columns)) * _SMALL_MM * _LEADING
        flow.room(height)
        items: list[Item] = []
        for at, (week, names) in enumerate(zip(plan.weeks[start:], columns, strict=False)):
            x = flow.sheet.left_mm + at * _column_mm(flow)
            items += _week(flow, start + at + 1, week, names, x, words)
        flow.put(items, height)


def _column_mm(flow: _Flow) -> float:
    return flow.sheet.room_width / _WEEKS_A_LINE


def _column(week: Week, placed: Sequence[Placed], words: Words) -> tuple[str, ...]:
    names = tuple(placed[at].child.label for at in week.ready)
    if len(names) <= _MOST_UNDER_A_WEEK:
        return names
    return (*names[:_MOST_UNDER_A_WEEK - 1], words["plan.more"].format(len(names) - _MOST_UNDER_A_WEEK + 1))


def _week(flow: _Flow, number: int, week: Week, names: Sequence[str], x: float, words: Words) -> list[Item]:
    """Return a column: the week's number, its letter in both cases, and the names that are ready with it."""
    press, y = flow.press, flow.y
    capital = week.letter.upper()
    items: list[Item] = [press.text(words["plan.week"].format(number), _SMALL_MM).moved(x, y + 2.4)]
    forms = [week.letter] if capital == week.letter or len(capital) > 1 else [capital, week.letter]
    for at, form in enumerate(forms):
        items += _drawn(press, form, letter_difficulty(form).band, x + at * STEP_MM, y + 6.4)
    for at, name in enumerate(names):
        items += _fitted(press, name, x, y + 12.0 + at * _SMALL_MM * _LEADING, _column_mm(flow) - 1.5)
    return items


def _add_home(flow: _Flow, placed: Sequence[Placed], words: Words, language: str) -> None:
    """Say what a teacher could tell the families of the children named for Monday."""
    first = [each for each in placed if each.letters][:FIRST]
    if first:
        _heading(flow, words["plan.home"], 12.0)
        for each in first:
            initial = own_initial(each.child)
            rating = name_difficulty(each.child.practice, initial)
            flow.say(for_parent(each.child.label, rating, initial, language))


def _add_notes(flow: _Flow, words: Mapping[str, str]) -> None:
    flow.y += 3.0 if flow.pages[-1] else 0.0
    for key in ("plan.note_scale", "plan.note_order", "plan.note_watch", "plan.note_teacher"):
        flow.say(words[key], _SMALL_MM)
