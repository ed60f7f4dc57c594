"""What became of each child of a made list: made right, lost, merged, asked about, or practising something else."""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass, field

from namewright.roster.children import LineReport, Outcome, Roster, RosterError
from namewright.roster.parsing import read_roster
from namewright.roster.vocabulary import fold as folded


def fold(text: str) -> str:
    """Fold a text; i without a dot is an i, since a list in capitals may have been written by a rule that has none."""
    return folded(text).replace("ı", "i")


@dataclass(frozen=True, slots=True)
class Wanted:
    """One child of a made list: every name that would be right to practise, and a word found on its line alone."""

    right: tuple[str, ...]
    mark: str


@dataclass(frozen=True, slots=True)
class Made:
    """A made list: its text, its children, and words that nobody may practise.

    ``either`` are names of which the list does not say whether they are of the class, as on a waiting list: to make
    them, to ask about them and to leave them out are all right.
    """

    text: str
    children: tuple[Wanted, ...]
    remarks: tuple[str, ...] = ()
    either: tuple[Wanted, ...] = ()


@dataclass(slots=True)
class Tally:
    """Counts over some lists of one shape; ``examples`` are lists with something wrong."""

    lists: int = 0
    counts: Counter[str] = field(default_factory=Counter)
    examples: list[tuple[str, Made]] = field(default_factory=list)

    def add(self, found: Counter[str], made: Made) -> None:
        """Count one more list."""
        self.lists += 1
        self.counts.update(found)
        wrong = [key for key in WRONG if found[key]]
        if wrong:
            self.examples.append((", ".join(wrong), made))


WRONG = ("lost", "merged", "remark", "extra", "wrong", "unsaid", "asked", "waiting")
_ONE_QUESTION = ("roster.two_readings", "roster.two_wholes", "roster.two_people", "roster.two_named",
                 "roster.two_words")


def judge(made: Made, read: Callable[[str], Roster] = read_roster) -> Counter[str]:
    """Count what became of every child of ``made``.

    ``right``: practises a name that is right. ``asked``: not made, and the line is left out with a reason. ``merged``:
    the line was made into fewer children than stand on it. ``lost``: neither made nor on a line left out. ``wrong``:
    practises another part; ``unsaid``: the same or merged, with no note on the line. ``remark``: a remark is practised.
    A word of a remark that is the right name of a child there (Asma, Kim) is none.
    ``extra``: a child nobody wrote. ``waiting``: nobody is made until one question about the whole list is answered,
    and ``question`` counts those lists. A list of which nobody is made, and one sentence says so, is ``asked`` about
    as a whole. ``untold``: a remark is practised, with no note on its line.
    """
    try:
        roster = read(made.text)
        reports: Sequence[LineReport] = tuple(  # what is said of the whole list is said of each line
            report._replace(notes=(*report.notes, *roster.notes)) for report in roster.lines)
    except RosterError as error:
        if error.message.key in _ONE_QUESTION:
            return Counter(children=len(made.children), waiting=len(made.children), question=1)
        return Counter(children=len(made.children), asked=len(made.children))
    found = Counter(children=len(made.children))
    lines = [report for report in reports if report.outcome is Outcome.CHILD and report.child
             and report.child.line == report.line]
    free = {report.line: report for report in lines}
    waiting = [one for one in made.children if not _take(free, one)]
    found["right"] = len(made.children) - len(waiting)
    doubtful = tuple(free.values())
    left = [fold(report.text) for report in reports if report.outcome is Outcome.LEFT_OUT]
    for one in waiting:
        found.update(_fate(one, free, lines, left))
    for one in made.either:
        _take(free, one)
    found["extra"] = len(free)
    remarks = {fold(word) for text in made.remarks for word in text.split()}
    practised = [report for report in doubtful if report.child and remarks & set(fold(report.child.practice).split())]
    found["remark"] = len(practised)
    found["untold"] = sum(not report.notes for report in practised)
    return found


def _take(free: dict[int, LineReport], one: Wanted) -> bool:
    """Take the report of a child that practises a right name, the line of its mark first."""
    right = {fold(name) for name in one.right}
    fit = [report for report in free.values() if report.child and fold(report.child.practice) in right]
    best = next((report for report in fit if fold(one.mark) in fold(report.text)), fit[0] if fit else None)
    if best is not None:
        del free[best.line]
    return best is not None


def _fate(one: Wanted, free: dict[int, LineReport], lines: Iterable[LineReport], left: Sequence[str]) -> Iterable[str]:
    mark = fold(one.mark)
    own = next((report for report in free.values() if mark in fold(report.text)), None)
    if own is not None:
        del free[own.line]
        return ("wrong",) if own.notes else ("wrong", "unsaid")
    if any(mark in text for text in left):
        return ("asked",)
    shared = next((report for report in lines if mark in fold(report.text)), None)
    if shared is not None:
        return ("merged",) if shared.notes else ("merged", "unsaid")
    return ("lost",)
