"""The data of one child's name writing, for a specialist: a table of every trial, letter by letter, and no score.

A row a trial, by date: what the child practised with, and of each letter whether it was formed (+), not yet (-) or not
looked at (empty). The first trial is the baseline. Under the letters stands how often each was looked at and how often
it was formed: counts, which are whoever reads them's to weigh. Millimetres, y down; as many pages as it takes.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from namewright.lines.ink import RULE, Ink, Role, Style, line
from namewright.message import message
from namewright.pages.child_progress import ProgressSettings
from namewright.pages.growth import day_said
from namewright.pages.page import Item, Page, checked
from namewright.pages.paper import sheet_of
from namewright.pages.plan.flow import SMALL_MM, TEXT_MM, Flow, fitted
from namewright.pages.record import Record, Trial
from namewright.pages.typesetter import Typesetter
from namewright.wording import Wording, wording

_TITLE_MM = 2.4
_ROW_MM, _BASE_MM = 5.4, 3.8
_MAX_LETTER_MM = 8.0
_HEAD_RULE, _ROW_RULE = Style(0.3, RULE), Style(0.1, RULE)
_FIXED = (("look", 19.0), ("day", 21.0), ("support", 27.0), ("lines", 15.0), ("step", 10.0))
_LEGEND = ("marks", "baseline", "as_set", "steps", "no_score", "therapist")


def record_pages(setter: Typesetter, record: Record, settings: ProgressSettings) -> tuple[Page, ...]:
    """Return the pages. Raises ValueError where nothing was noted."""
    if not record.trials:
        raise ValueError(f"nothing was noted about {record.label} yet")
    words, sheet = wording(settings.language), sheet_of(settings.paper, binding=settings.binding)
    flow = Flow(setter, sheet)
    flow.say(words.say("page.record.title", name=record.label), _TITLE_MM, role=Role.TITLE)
    flow.y += 1.5
    table = _Table(flow, record, words, len({trial.day.year for trial in record.trials}) > 1)
    table.add()
    _add_notes(flow, record, words)
    flow.y += 2.0
    for key in _LEGEND:
        flow.say(words.say(f"page.record.{key}"), SMALL_MM)
    return tuple(checked(Page(sheet.width_mm, sheet.height_mm, tuple(items), record.label if at == 0 else None))
                 for at, items in enumerate(flow.pages))


@dataclass(frozen=True, slots=True)
class _Table:
    flow: Flow
    record: Record
    words: Wording
    years: bool

    def add(self) -> None:
        """Set the head, a row a trial, and the counts; the head again on each further page."""
        self._head()
        for number, trial in self.record.numbered():
            self._room()
            self._row((*self._cells(number, trial), *_marks(trial, len(self.record.letters))))
        self._room(2 * _ROW_MM)
        self._rule(_HEAD_RULE)
        for key, count in (("looked_at", _looked), ("formed", _formed)):
            counts = [str(sum(count(trial, at) for trial in self.record.trials))
                      for at in range(len(self.record.letters))]
            self._row((self.words.say(f"page.record.{key}"), "", "", "", "", *counts), wide=True)

    def _room(self, height: float = _ROW_MM) -> None:
        if self.flow.y + height > self.flow.sheet.foot:
            self.flow.turn()
            self._head()

    def _head(self) -> None:
        titles = [self.words.say(f"page.record.column_{key}") for key, _ in _FIXED]
        self._row((*titles, *self.record.letters))
        self._rule(_HEAD_RULE)

    def _cells(self, number: int | None, trial: Trial) -> tuple[str, ...]:
        held = trial.held
        say = self.words.say
        support = say("page.record.own_rows") if held.rows and not held.noted else self.words.listed([held.support])
        look = "" if number is None else str(number) if number else say("page.record.is_baseline")
        return (look, say(day_said(trial.day, year=self.years)),
                support if held.noted else say("page.record.set", support=support),
                self.words.grammar.number(held.line_height_mm, 2), str(trial.step or ""))

    def _xs(self) -> list[float]:
        """Return where each column begins, and where the last ends."""
        left = self.flow.sheet.left_mm
        xs = [left + sum(width for _, width in _FIXED[:at]) for at in range(len(_FIXED) + 1)]
        room = self.flow.sheet.right_edge - xs[-1]
        step = min(_MAX_LETTER_MM, room / max(1, len(self.record.letters)))
        return [*xs, *(xs[-1] + step * at for at in range(1, len(self.record.letters) + 1))]

    def _row(self, cells: Sequence[str], *, wide: bool = False) -> None:
        """Set a row of cells; a ``wide`` row's first cell takes the room of the empty ones behind it."""
        xs, base = self._xs(), self.flow.y + _BASE_MM
        items: list[Item] = []
        for at, cell in enumerate(cells):
            end = xs[len(_FIXED)] if wide and at == 0 else xs[at + 1]
            items += fitted(self.flow.setter, cell, xs[at], base, end - xs[at] - 1.0, TEXT_MM)
        self.flow.put(items, _ROW_MM)
        self._rule(_ROW_RULE)

    def _rule(self, style: Style) -> None:
        xs = self._xs()
        self.flow.put([Ink.of(style, (line(xs[0], self.flow.y, xs[-1], self.flow.y),))], 0.0)


def _marks(trial: Trial, count: int) -> Iterator[str]:
    for at in range(count):
        yield "+" if at in trial.formed else "-" if at in trial.not_yet else ""


def _looked(trial: Trial, at: int) -> bool:
    return at in trial.formed or at in trial.not_yet


def _formed(trial: Trial, at: int) -> bool:
    return at in trial.formed


def _add_notes(flow: Flow, record: Record, words: Wording) -> None:
    """Set what was noted in words, by date."""
    noted = [trial for trial in record.trials if trial.note]
    if noted:
        flow.heading(words.say("page.record.in_words"), 8.0)
    for trial in noted:
        who = message("page.record.by", who=trial.who) if trial.who else ""
        flow.say(words.say("page.record.note", day=day_said(trial.day, year=True), words=trial.note, who=who))
