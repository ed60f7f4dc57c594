"""What a class's file keeps of a list: the children's names and settings, and nothing else that stood beside them.

A list as it is pasted may hold birthdays, addresses, guardians, allergies, and lines that are no child of the class.
None of it is needed to make a page, so none of it is kept, unless an adult asks for the whole list. What is kept is a
list too: a name a line where that says all, else columns with titles. It is read again before it is kept, and must
give the same children whatever part of the name is practised; where it would not, the lines of the children stay as
they were typed. Pure.
"""

from __future__ import annotations

import csv
import io
from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass, replace

from namewright.roster.children import Child, Outcome, Roster, RosterError
from namewright.roster.parsing import LIST, read_roster
from namewright.settings import NamePart

_PARTS = (NamePart.GIVEN, NamePart.FAMILY)  # a name to practise that follows both follows every part


@dataclass(frozen=True, slots=True)
class _Kept:
    """A child as the list is to say it; ``goes_by`` and ``practise`` are empty where they say nothing more."""

    child: Child
    goes_by: str
    practise: str


# The title of each column, by which the reader knows it, and what stands in it.
_COLUMNS: tuple[tuple[str, Callable[[_Kept], str]], ...] = (
    ("First name", lambda one: one.child.given),
    ("Family name", lambda one: one.child.family),
    ("Goes by", lambda one: one.goes_by),
    ("Practise", lambda one: one.practise),
    ("Hand", lambda one: str(one.child.hand or "")),
    ("Support", lambda one: str(one.child.support or "")),
    ("Line height", lambda one: "" if one.child.line_height_mm is None else f"{one.child.line_height_mm!r} mm"),
    ("Letters", lambda one: one.child.letters),
    ("Beats", lambda one: one.child.beats),
    ("Language", lambda one: one.child.names_in),
)


def needed(text: str, roster: Roster, part: NamePart, names_in: str = "") -> tuple[str, tuple[int, ...]]:
    """Return what is kept of a list that was read as ``roster`` for a part, and where its children stand in that.

    ``names_in`` is the language of the names that it was read in; what is kept has their letter case already.
    """
    wanted = {each: _read(text, each, names_in) for each in _PARTS} | {part: roster.children}
    for tried in _tries(roster, *(wanted[each] for each in _PARTS)):
        found = {each: _read(tried, each, names_in) for each in wanted}
        if all(_alike(found[each], wanted[each]) for each in wanted):
            return tried, tuple(one.line for one in found[part])
    return text, tuple(one.line for one in roster.children)


def _read(text: str, part: NamePart, names_in: str) -> tuple[Child, ...]:
    try:
        return read_roster(text, LIST, part, names_in=names_in).children
    except RosterError:
        return ()


def _alike(one: Sequence[Child], other: Sequence[Child]) -> bool:
    """Say whether two readings give the same children, on whatever lines."""
    return [replace(child, line=0) for child in one] == [replace(child, line=0) for child in other]


def _kept(by_given: Child, by_family: Child) -> _Kept:
    """Return what the list must say of a child, from its readings for the given name and for the family name."""
    name, given = by_given.practice, by_given.given
    if name == given:
        literal = by_family.practice == given and bool(by_given.family)
        return _Kept(by_given, "", name if literal else "")
    literal = by_family.practice == name and bool(by_given.family)
    return _Kept(by_given, "" if literal or not given else name, name if literal else "")


def _tries(roster: Roster, by_given: Sequence[Child], by_family: Sequence[Child]) -> Iterator[str]:
    """Yield ways to write the list, the one that says least first."""
    if len(by_given) == len(by_family):  # a sign alone is a name of one part only
        yield from _written([_kept(*pair) for pair in zip(by_given, by_family, strict=True)])
    yield _text(report.text for report in roster.lines if report.child or report.outcome is Outcome.HEADER)


def _written(kept: Sequence[_Kept]) -> Iterator[str]:
    """Yield the children as names, a line each, and as a table."""
    yield _text(" ".join(name for name in (one.child.given, one.child.family) if name) for one in kept)
    columns = [(title, cell) for title, cell in _COLUMNS if any(map(cell, kept))]
    out = io.StringIO(newline="")
    csv.writer(out, lineterminator="\n").writerows(
        [[title for title, _ in columns], *([cell(one) for _, cell in columns] for one in kept)])
    yield out.getvalue()


def _text(lines: Iterator[str]) -> str:
    return "".join(f"{line}\n" for line in lines)
