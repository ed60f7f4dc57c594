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
from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import dataclass

from namewright.roster.children import Child, Outcome, Roster, RosterError
from namewright.roster.parsing import LIST, read_roster
from namewright.settings import Hand, NamePart, Support

_PARTS = (NamePart.GIVEN, NamePart.FAMILY)  # a name to practise that follows both follows every part


@dataclass(frozen=True, slots=True)
class _Kept:
    """A child as the list is to say it; ``goes_by`` and ``practise`` are empty where they say nothing more."""

    child: Child
    goes_by: str
    practise: str


# The title of each column, by which the reader knows it, and what stands in it.
WORDS = {"given": "First name", "family": "Family name", "goes_by": "Goes by", "practise": "Practise", "hand": "Hand",
          "support": "Support", "line_height": "Line height", "letters": "Letters", "beats": "Beats",
          "language": "Language"}
_CHOICES = ("hand", "support")
_CELLS: Mapping[str, Callable[[_Kept], str]] = {
    "given": lambda one: one.child.given,
    "family": lambda one: one.child.family,
    "goes_by": lambda one: one.goes_by,
    "practise": lambda one: one.practise,
    "hand": lambda one: one.child.hand.value if one.child.hand else "",
    "support": lambda one: one.child.support.value if one.child.support else "",
    "line_height": lambda one: "" if one.child.line_height_mm is None else f"{one.child.line_height_mm!r} mm",
    "letters": lambda one: one.child.letters,
    "beats": lambda one: one.child.beats,
    "language": lambda one: one.child.names_in,
}


def list_words(say: Callable[[str], str]) -> dict[str, str]:
    """Return the titles and the choices in the words of a language: lists are read by each of them."""
    choices = {choice.value: say(f"word.{choice.value}") for choice in (*Hand, *Support)}
    return {key: say(f"classbook.title.{key}") for key in WORDS} | choices


def needed(text: str, roster: Roster, part: NamePart, names_in: str = "",
           words: Mapping[str, str] = WORDS,
           as_known: Callable[[Child], Child] = lambda child: child) -> tuple[str, tuple[int, ...]]:
    """Return what is kept of a list that was read as ``roster`` for a part, and where its children stand in that.

    ``names_in`` is the language of the names that it was read in; what is kept has their letter case already.
    ``words`` are titles of the columns, by the keys of ``WORDS``, and choices in them in a language that lists are in.
    ``as_known`` gives a child of the list with what the class knows besides; those of ``roster`` are given so.
    """
    wanted = {each: tuple(map(as_known, _read(text, each, names_in))) for each in _PARTS} | {part: roster.children}
    for tried in _tries(roster, wanted[NamePart.GIVEN], wanted[NamePart.FAMILY], words):
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
    return ([child._replace(line=0, label="") for child in one]
            == [child._replace(line=0, label="") for child in other])


def _kept(by_given: Child, by_family: Child) -> _Kept:
    """Return what the list must say of a child, from its readings for the given name and for the family name."""
    name, given = by_given.practice, by_given.given
    if name == given:
        literal = by_family.practice == given and bool(by_given.family)
        return _Kept(by_given, "", name if literal else "")
    literal = by_family.practice == name and bool(by_given.family)
    return _Kept(by_given, "" if literal or not given else name, name if literal else "")


def _tries(roster: Roster, by_given: Sequence[Child], by_family: Sequence[Child],
           words: Mapping[str, str]) -> Iterator[str]:
    """Yield ways to write the list, the one that says least first."""
    if len(by_given) == len(by_family):  # a sign alone is a name of one part only
        kept = [_kept(*pair) for pair in zip(by_given, by_family, strict=True)]
        yield _text(" ".join(name for name in (one.child.given, one.child.family) if name) for one in kept)
        yield _table(kept, words)
        yield _table(kept, WORDS)  # which are known in every list
    yield _text(report.text for report in roster.lines if report.child or report.outcome is Outcome.HEADER)


def _table(kept: Sequence[_Kept], words: Mapping[str, str]) -> str:
    """Return the children as a table, without the columns in which nothing stands."""
    columns = [(key, cell) for key, cell in _CELLS.items() if any(map(cell, kept))]
    out = io.StringIO(newline="")
    csv.writer(out, lineterminator="\n").writerows(
        [[words[key] for key, _ in columns],
         *([_said(key, cell(one), words) for key, cell in columns] for one in kept)])
    return out.getvalue()


def _said(key: str, text: str, words: Mapping[str, str]) -> str:
    return words.get(text, text) if key in _CHOICES else text


def _text(lines: Iterator[str]) -> str:
    return "".join(f"{line}\n" for line in lines)
