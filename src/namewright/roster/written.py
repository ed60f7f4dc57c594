"""A list written as a table with titles that the reader knows, in which each child is read as it is meant.

What a class keeps of a list is written so where names alone do not say all, and so is a list whose own lines, once
unfolded, would be read otherwise when they are read again. Pure.
"""

from __future__ import annotations

import csv
import io
from collections.abc import Callable, Iterable, Mapping, Sequence

from namewright.named_tuples import NamedTuple
from namewright.roster.children import Child

# The title of each column, by which the reader knows it in every list.
WORDS = {"given": "First name", "family": "Family name", "goes_by": "Goes by", "practise": "Practise", "hand": "Hand",
         "support": "Support", "line_height": "Line height", "letters": "Letters", "beats": "Beats",
         "language": "Language"}
NOTES = "Notes"
"""The title of a column that holds no part of a name."""
NOT_READ = "Not read"
"""The title of the column of lines that are no children: no other list has it (``own_tables``)."""
_CHOICES = ("hand", "support")


class Written(NamedTuple):
    """A child as the list is to say it; ``goes_by`` and ``practise`` are empty where they say nothing more."""

    child: Child
    goes_by: str
    practise: str


# What stands in each column.
_CELLS: Mapping[str, Callable[[Written], str]] = {
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


def written(by_given: Child, by_family: Child) -> Written:
    """Return what a list must say of a child, from its readings for the given name and for the family name."""
    name, given = by_given.practice, by_given.given
    if name == given:
        literal = by_family.practice == given and bool(by_given.family)
        return Written(by_given, "", name if literal else "")
    literal = by_family.practice == name and bool(by_given.family)
    return Written(by_given, "" if literal or not given else name, name if literal else "")


def as_table(children: Sequence[Written], words: Mapping[str, str]) -> str:
    """Return the children as a table, without the columns in which nothing stands."""
    columns = [(key, cell) for key, cell in _CELLS.items() if any(map(cell, children))]
    return _lines([[words[key] for key, _ in columns],
                   *([_said(key, cell(one), words) for key, cell in columns] for one in children)])


def line_by_line(lines: Sequence[Written | str]) -> str:
    """Return a table with a row for each line: a child, or words that are none and stand in a column of their own."""
    children = [line for line in lines if not isinstance(line, str)]
    columns = [(key, cell) for key, cell in _CELLS.items() if key in ("given", "family") or any(map(cell, children))]
    beside = [""] * len(columns)
    return _lines([[*(WORDS[key] for key, _ in columns), NOT_READ],
                   *((([*beside, line] if line.strip() else []) if isinstance(line, str) else
                      [*(cell(line) for _, cell in columns), ""]) for line in lines)])


def _lines(rows: Iterable[Sequence[str]]) -> str:
    out = io.StringIO(newline="")
    csv.writer(out, lineterminator="\n").writerows(rows)
    return out.getvalue()


def _said(key: str, text: str, words: Mapping[str, str]) -> str:
    return words.get(text, text) if key in _CHOICES else text
