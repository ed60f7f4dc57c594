"""What a line of a list asks of a person, and the lines of a list by what they want.

A note that only tells what was done asks nothing. A question has ways to answer it (``list_ways``). A line that was
saved before, or said to be right, asks no more. Pure.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Collection, Mapping, Sequence
from dataclasses import dataclass, field
from enum import StrEnum
from itertools import takewhile
from types import MappingProxyType

from namewright.classbook.enrol import NEW, Recognised
from namewright.classbook.parting import Promise, parted, ways_to_write
from namewright.classbook.who import Known
from namewright.message import Field, Message, message
from namewright.names.casing import begins_small
from namewright.roster.beside import is_of_care, is_state
from namewright.roster.children import Child, LineReport, Outcome
from namewright.roster.rows import TWO_CHILDREN
from namewright.roster.said import is_said
from namewright.roster.vocabulary import OTHER_PEOPLE, fold
from namewright.web.list_spelling import latin
from namewright.web.list_ways import (
    KEEPS,
    Way,
    after_all,
    as_it_stands,
    as_one,
    fine,
    mark,
    no_child,
    of_its_own,
    other_parts,
    split,
    with_family_first,
    written_out,
)

_MANY = frozenset({TWO_CHILDREN.key, "roster.several"})
_NO_NAME_AT_ALL = frozenset({"roster.only_numbers", "roster.only_accents", "roster.no_letter"})
NOBODY_KNOWN: Mapping[int, Recognised] = MappingProxyType({})


class Asked(StrEnum):
    """What a line asks; the words for it are ``web.list.asks_…``."""

    TWO = "two"
    SEVERAL = "several"
    FAMILY = "family"
    CHILD = "child"
    LONG = "long"
    LATIN = "latin"
    TWICE = "twice"
    CALLED = "called"
    SAME = "same"


@dataclass(frozen=True)
class Question:
    """A line that needs a person: what it asks, and the ways to answer; the first is the likeliest."""

    report: LineReport
    asked: Asked
    said: Message
    ways: tuple[Way, ...]

    @property
    def mark(self) -> str:
        """Return what stands for the line in a form."""
        return mark(self.report.text)


def question(report: LineReport, before: Sequence[LineReport], cannot_draw: Message | None,
             span: int = 1) -> Question | None:
    """Return what a line asks of a person, None where it asks nothing.

    ``before`` are lines that stand before it, from the same line of what was pasted; ``cannot_draw`` is why its name
    makes no page; ``span`` lines are one with it.
    """
    keys = {note.key for note in report.notes}
    if report.outcome is Outcome.LEFT_OUT and not keys & _NO_NAME_AT_ALL:
        return _of_left_out(report, keys)
    if report.child is None or not report.opens_child:
        return None
    if cannot_draw:
        return Question(report, Asked.LATIN, cannot_draw, (latin(report.child), fine("leave")))
    if "roster.split" in keys and (shared := _shares_family(report, before)):
        return shared
    if again := next((note for note in report.notes if note.key == "roster.repeat"), None):
        take = Way("take", message("web.list.way_take"), ((),), takes=span)
        return Question(report, Asked.TWICE, again, (fine("both"), take))
    if remark := next((note for note in report.notes if note.key == "roster.remark"), None):
        return _of_remark(report, report.child, str(remark["words"]))
    return None


def _of_left_out(report: LineReport, keys: set[str]) -> Question:
    parts = parted(report.text) if keys & _MANY else ()
    if parts and not (is_said(report.text) and all(begins_small(one.given) for one in parts)):
        two = len(parts) == 2
        one = as_one(report.text)
        turned = with_family_first(report.text) if two else None
        ways = [*([split(parts)] if len(parts) > 1 else []), *([turned] if turned else []),
                *([one] if two and one else []), fine("drop")]
        return Question(report, Asked.TWO if two else Asked.SEVERAL, message("web.list.asks_several", count=len(parts)),
                        tuple(ways))
    if keys & {"roster.long_cell", "roster.long_name"}:
        return Question(report, Asked.LONG, report.notes[-1], (fine("drop"),))
    if cut := next((note for note in report.notes if note.key == "roster.cut_short"), None):
        return Question(report, Asked.CALLED, cut, (*written_out(report.text, str(cut["typed"])), fine("drop")))
    yes = after_all(report, message("web.list.way_yes"))
    return Question(report, Asked.CHILD, message("web.list.asks_child"), (fine("drop"), *yes))


def _shares_family(report: LineReport, before: Sequence[LineReport]) -> Question | None:
    """Ask of a child with a family name whether those of the same line who have none share it."""
    alone = [one for one in before if one.child and not one.child.family and " " not in one.text.strip()]
    if report.child is None or not report.child.family or not alone or len(alone) != len(before):
        return None
    family = report.child.family
    shared = tuple(Promise(one.child.given, family) for one in alone if one.child)
    everyone = (*shared, Promise(report.child.given, family))
    said = message("web.list.asks_family", family=family, names=tuple(one.name for one in everyone))
    share = Way("share", message("web.list.way_share", names=tuple(one.name for one in everyone)),
                tuple((*new, report.text) for new in ways_to_write(shared)), everyone, takes=-len(alone))
    return Question(report, Asked.FAMILY, said, (share, fine("apart")))


def _of_remark(report: LineReport, child: Child, words: str) -> Question | None:
    """Ask what words beside a name are that could be one: each begins with a capital and has letters alone."""
    said = words.strip(" ()[]“”\"'")
    if words.startswith("("):  # the name of somebody else: Dad (Tom)
        return None
    if not said.replace(" ", "").replace("-", "").isalpha() or not all(word[0].isupper() for word in said.split()):
        return None
    if said not in report.text or len(said) == 1 or is_state(said) or all(map(is_of_care, said.split())) or (
            any(fold(word) in OTHER_PEOPLE for word in said.split())):
        return None  # nobody goes by Peanuts, nor by what was taken off all lines
    rest = " ".join(re.sub(rf"[(\[“\"]?{re.escape(said)}[)\]”\"]?", " ", report.text).split()).rstrip(" -–—,:")
    called = Way("called", message("web.list.way_called", name=said),
                 ((f"{rest} (goes by {said})",),), (Promise(child.given, child.family, said),))
    asks = message("web.list.asks_called", words=said)
    return Question(report, Asked.CALLED, asks, (called, fine("remark"), no_child(1)))


# --- a child whom the class knows under another name ---------------------------------------------------


def same_child(report: LineReport, one: Recognised) -> Question:
    """Ask which child of the class a line is; what it counts as until that is said stands there."""
    told = "asks_same_taken" if one.taken else "asks_same_new"
    return Question(report, Asked.SAME, message(f"web.list.{told}", before=_told_apart(one.known)[0]), _ways_same(one))


def _ways_same(one: Recognised) -> tuple[Way, ...]:
    if one.taken and not one.sure and len(one.known) == 1:  # a slip, on this list or on that of before
        old = one.known[0]
        return (Way(f"{KEEPS}{old.id}", message("web.list.way_still", name=old.shown), child=old.id),
                Way(f"is{old.id}", message("web.list.way_now", name=one.name), child=old.id),
                Way("new", message("web.list.way_new"), child=NEW))
    names = _told_apart(one.known)
    known = tuple(Way(f"is{each.id}", message("web.list.way_same", name=name), child=each.id)
                  for each, name in zip(one.known, names, strict=True))
    return (*known, Way("new", message("web.list.way_new"), child=NEW))


def _told_apart(known: Sequence[Known]) -> list[Field]:
    """Return the names of children, by their labels where they are written alike."""
    names = [one.shown for one in known]
    return [one.label if names.count(name) > 1 else name for one, name in zip(known, names, strict=True)]


# --- the whole list ------------------------------------------------------------------------------------


@dataclass(frozen=True)
class Sorted:
    """The lines of a list by what they want: a person, a look, or nothing; in each the lines keep their order.

    ``ways`` are those of lines that ask nothing, ``same`` tells of such a line which child of the class it is.
    """

    needs: tuple[Question, ...] = ()
    tidied: tuple[LineReport, ...] = ()
    rest: tuple[LineReport, ...] = ()
    ways: Mapping[int, tuple[Way, ...]] = field(default_factory=dict)
    same: Mapping[int, Message] = field(default_factory=dict)


def sorted_lines(lines: Sequence[LineReport], noted: Callable[[LineReport], Sequence[Message]],
                 cannot_draw: Callable[[LineReport], Message | None], settled: frozenset[str],
                 known: Mapping[int, Recognised] = NOBODY_KNOWN, there: Collection[int] = ()) -> Sorted:
    """Sort the lines of a list. ``noted`` gives a line’s notes, ``settled`` are marks of lines that ask no more.

    ``known`` says which lines are, or may be, a child that the class has under another name; ``there`` are lines of
    children whom the class has: that two of them have one name was answered when they came.
    """
    needs: list[Question] = []
    tidied: list[LineReport] = []
    rest: list[LineReport] = []
    ways: dict[int, tuple[Way, ...]] = {}
    for at, report in enumerate(lines):
        asked = question(report, _siblings(lines, at), cannot_draw(report), span_of(lines, at))
        one = known.get(report.line)
        answered = asked and asked.asked is Asked.TWICE and report.line in there
        if asked and not answered and mark(report.text) not in settled:
            needs.append(asked)
            continue
        if one and not one.sure:
            needs.append(same_child(report, one))
            continue
        if report.outcome is Outcome.BLANK or (report.outcome is Outcome.HEADER and mark(report.text) in settled):
            continue
        looked = one or noted(report) or report.outcome is not Outcome.CHILD
        (tidied if looked else rest).append(report)
        ways[report.line] = (*_ways_of(report, cannot_draw(report), span_of(lines, at)),
                             *(_ways_same(one)[-1:] if one else ()))
    same = {line: message("web.list.same_as", before=one.known[0].shown) for line, one in known.items() if one.sure}
    return Sorted(tuple(needs), tuple(tidied), tuple(rest), ways, same)


def _siblings(lines: Sequence[LineReport], at: int) -> Sequence[LineReport]:
    """Return the lines before one that came from the same line of what was pasted."""
    start = at
    while start and lines[start - 1].source_line == lines[at].source_line:
        start -= 1
    return lines[start:at]


def span_of(lines: Sequence[LineReport], at: int) -> int:
    """Return over how many lines what begins on one runs, by a cell in quotation marks."""
    behind = takewhile(lambda one: one.outcome is Outcome.CHILD and not one.opens_child, lines[at + 1:])
    return 1 + sum(1 for _ in behind)


def _ways_of(report: LineReport, cannot_draw: Message | None, span: int) -> tuple[Way, ...]:
    """Return what may be done with a line that asks nothing, or no more; ``span`` lines are one with it."""
    keys = {note.key for note in report.notes}
    if report.outcome is Outcome.FURTHER and report.child:
        return (of_its_own(report.text, report.child),)
    if report.outcome in (Outcome.HEADING, Outcome.LEFT_OUT) and not keys & _NO_NAME_AT_ALL:
        return after_all(report)
    if report.child is None or not report.opens_child:
        return ()
    if cannot_draw:
        return (latin(report.child), no_child(span))
    return (*as_it_stands(report), *other_parts(report), no_child(span))


def ways_on(lines: Sequence[LineReport], at: int, cannot_draw: Message | None,
            known: Mapping[int, Recognised] = NOBODY_KNOWN) -> tuple[Way, ...]:
    """Return every way that a line has, asked for or not."""
    asked = question(lines[at], _siblings(lines, at), cannot_draw, span_of(lines, at))
    one = known.get(lines[at].line)
    return (*(asked.ways if asked else ()), *_ways_of(lines[at], cannot_draw, span_of(lines, at)),
            *(_ways_same(one) if one else ()))
