"""The chart of a class: one point a name, letters to write across, difficulty upwards. Millimetres, y down.

The bands are given fixed heights, most to the middle one, where most names are; inside a band height is to scale.

A name stands beside its point; where there is no room for it its number in the list does, and where there is none
for that either the point stands alone. Names that fall on one point share one.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from namewright.geometry.boxes import Box
from namewright.lines.ink import RULE, Ink, Style, line
from namewright.pages.blocks import text_at
from namewright.pages.plan.marks import point
from namewright.pages.press import Press
from namewright.pages.summary import drawable
from namewright.practice.difficulty import MIDDLE_FROM, MIDDLE_TO, Band
from namewright.practice.ordering import Planned
from namewright.wording import Wording

TEXT_MM = 1.3
POINT_MM = 2.8
_MOST_NAMED = 60  # beyond it the names would hide the points
_AXIS, _CUT = Style(0.3, RULE), Style(0.2, RULE, (1.2, 1.0))
_LEFT, _RIGHT, _FOOT = 1.0, 20.0, 8.0  # room for the ends of the axes and for their words
_SHARES = (0.26, 0.72)  # of the height, from the top: where the harder band ends, and where the middle one does


@dataclass(frozen=True, slots=True)
class _Field:
    """Where values land on the page."""

    x: float
    y: float
    width: float
    height: float
    most_letters: int
    easiest: float
    hardest: float

    def across(self, letters: int) -> float:
        return self.x + self.width * letters / (self.most_letters + 0.5)

    def up(self, difficulty: float) -> float:
        values = (self.hardest, MIDDLE_TO, MIDDLE_FROM, self.easiest)
        shares = (0.0, *_SHARES, 1.0)
        at = 0 if difficulty > MIDDLE_TO else 1 if difficulty >= MIDDLE_FROM else 2
        inside = (values[at] - difficulty) / (values[at] - values[at + 1])
        return self.y + self.height * (shares[at] + inside * (shares[at + 1] - shares[at]))

    @property
    def cuts(self) -> tuple[float, float]:
        """The heights between the bands."""
        return (self.up(MIDDLE_TO), self.up(MIDDLE_FROM))


def chart(press: Press, placed: Sequence[Planned], words: Wording, box: Box) -> Iterator[Ink]:
    """Yield the chart within a box; names with nothing to write have no point."""
    shown = [each for each in placed if each.letters]
    if not shown:
        return
    x0, y0, x1, y1 = box
    values = [*(each.difficulty for each in shown), MIDDLE_FROM - 0.1, MIDDLE_TO + 0.1]
    field = _Field(x0 + _LEFT, y0, x1 - x0 - _LEFT - _RIGHT, y1 - y0 - _FOOT,
                   max(6, *(each.length for each in shown)), min(values) - 0.08, max(values) + 0.08)
    taken: list[Box] = []
    yield from _frame(press, field, words)
    yield from _points(press, field, shown, taken, words)


def _frame(press: Press, field: _Field, words: Wording) -> Iterator[Ink]:
    right, foot = field.x + field.width, field.y + field.height
    yield Ink(_AXIS, (line(field.x, field.y, field.x, foot), line(field.x, foot, right, foot)))
    ticks = range(1, field.most_letters + 1)
    yield Ink(_AXIS, tuple(line(field.across(count), foot, field.across(count), foot + 1.0) for count in ticks))
    for count in range(2, field.most_letters + 1, 2 if field.most_letters < 24 else 10):
        label = press.text(str(count), TEXT_MM)
        x_left, _, x_right, _ = label.bounds()
        yield label.moved(field.across(count) - (x_left + x_right) / 2, foot + 4.2)
    caption = press.text(words.say("page.plan.axis_letters"), TEXT_MM)
    yield caption.moved(right + _RIGHT - caption.bounds()[2], foot + 7.2)
    for cut in field.cuts:
        yield Ink(_CUT, (line(field.x, cut, right + _RIGHT, cut),))
    edges = (field.hardest, MIDDLE_TO, MIDDLE_FROM, field.easiest)
    for band, top, low in zip(reversed(Band), edges, edges[1:], strict=False):
        middle = (field.up(top) + field.up(low)) / 2
        yield text_at(press, words.say(f"page.plan.band_{band}"), right + 2.0, middle + TEXT_MM / 2, TEXT_MM)


def _points(press: Press, field: _Field, shown: Sequence[Planned], taken: list[Box],
            words: Wording) -> Iterator[Ink]:
    together: dict[tuple[int, float], list[Planned]] = {}
    for each in shown:
        together.setdefault((each.length, each.difficulty), []).append(each)
    marks = {key: point(some[0].band or Band.MIDDLE, field.across(key[0]), field.up(key[1]), POINT_MM)
             for key, some in together.items()}
    taken += [mark.bounds() for mark in marks.values()]
    labels, numbered = [], False
    for key, some in together.items() if len(shown) <= _MOST_NAMED else ():
        texts = (words.say("page.plan.chart_names", names=tuple(drawable(press, each.child.label) for each in some)),
                 words.say("page.plan.chart_names", names=tuple(each.position for each in some)))
        tries = ((text, barred) for text in texts for barred in (True, False))
        placed = ((text, _label(press, field, text, key, taken, barred)) for text, barred in tries)
        text, label = next(((text, label) for text, label in placed if label), ("", None))
        if label:
            taken.append(label.bounds())
            labels.append(label)
            numbered |= text == texts[1]
    yield from marks.values()
    yield from labels
    if numbered:
        yield text_at(press, words.say("page.plan.chart_numbers"), field.x, field.y + field.height + 7.2, TEXT_MM)


def _label(press: Press, field: _Field, text: str, key: tuple[int, float], taken: Sequence[Box],
           barred: bool) -> Ink | None:
    """Return a text at the first free place around its point; None where there is none.

    With ``barred`` the lines between the bands are in the way as well.
    """
    ink = press.text(text, TEXT_MM)
    x0, y0, x1, y1 = ink.bounds()
    x, y, gap = field.across(key[0]), field.up(key[1]), POINT_MM / 2 + 0.95
    level, above, below = y - (y0 + y1) / 2, y - gap - y1, y + gap - y0
    places = [(x + gap - x0, level), (x - gap - x1, level), (x - (x0 + x1) / 2, above), (x - (x0 + x1) / 2, below),
              (x + gap - x0, level - 1.8), (x + gap - x0, level + 1.8), (x - gap - x1, level - 1.8),
              (x - gap - x1, level + 1.8), (x - x0, above), (x - x0, below), (x - x1, above), (x - x1, below)]
    for dx, dy in places:
        moved = ink.moved(dx, dy)
        box = moved.bounds()
        crossed = barred and any(box[1] < cut < box[3] for cut in field.cuts)
        if _inside(box, field) and not crossed and not any(_touch(box, other) for other in taken):
            return moved
    return None


def _inside(box: Box, field: _Field) -> bool:
    return (box[0] > field.x and box[2] < field.x + field.width and box[1] > field.y - 1
            and box[3] < field.y + field.height - 0.5)


def _touch(one: Box, other: Box, beside: float = 0.9, over: float = 0.3) -> bool:
    return (one[0] < other[2] + beside and other[0] < one[2] + beside
            and one[1] < other[3] + over and other[1] < one[3] + over)
