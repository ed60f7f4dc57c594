"""Days and marks behind the names of a list without columns: ``Mira Vost P A P P``, ``Mira Vost, Mo Mi Fr``.

Most lines must end in them, and what is left must be a name: two words, or one where a comma, or three marks, stand
behind it. A name that ends in such a word (``Kim Do``) keeps it where other lines do not end so.
"""

from __future__ import annotations

from collections.abc import Sequence

from namewright.names.clusters import is_letter
from namewright.patterns import pattern
from namewright.roster.beside import strip_numbering
from namewright.roster.pasted import Line
from namewright.roster.shares import are_most
from namewright.roster.vocabulary import ANY_DAYS, DAY_LETTER, LATE, STATES, fold
from namewright.store import keeps_names

_BETWEEN = pattern(r"[-–/+&,.;]+")
_WEEK = pattern(rf"{DAY_LETTER}(?:[-–/]?{DAY_LETTER}){{1,4}}")  # MWF, TTh, M-F
_SHORTEST = frozenset(("tu", "th"))
_MOSTLY = 0.6
_FEW, _MANY = 2, 3
_LONGEST = 200


def without_marks(lines: Sequence[Line]) -> list[Line]:
    """Return the lines without the days or marks that most of them end in; each tells what was taken from it."""
    found = [_parted(line.text) if len(line.text) <= _LONGEST else None for line in lines]
    filled = [parted for line, parted in zip(lines, found, strict=True) if any(map(is_letter, line.text))]
    if not are_most((parted is not None for parted in filled), _MOSTLY, _FEW):
        return list(lines)
    return [line.without(parted[1], parted[0]) if parted else line for line, parted in zip(lines, found, strict=True)]


@keeps_names(1024)
def _parted(line: str) -> tuple[str, str] | None:
    """Return the name of a line and the marks behind it; None where there are too few to be sure of."""
    words = strip_numbering(line).split()
    at = len(words)
    while at and _is_mark(words[at - 1]):
        at -= 1
    marks = words[at:]
    if not at or not marks or not any(map(is_letter, "".join(words[:at]))):
        return None
    apart = words[at - 1].endswith(",")
    several = sum(len(list(filter(None, _BETWEEN.split(mark)))) for mark in marks) + any(map(_WEEK.fullmatch, marks))
    if several < _FEW or (not apart and at < _FEW and several < _MANY):
        return None
    if all(len(mark) == 1 for mark in marks) and len(marks) < _MANY:  # two initials
        return None
    return " ".join(words[:at]).rstrip(" ,:–—-"), " ".join(marks)


def _is_mark(word: str) -> bool:
    """Say whether a word is a sign or one letter, a day or several, or tells that a child is there."""
    bare = word.strip(",.;")
    if len(bare) <= 1:
        return not word.endswith(".") or not bare.isalpha()  # an initial
    if _WEEK.fullmatch(bare) or fold(bare) in STATES | LATE:
        return True
    days = [fold(part) for part in _BETWEEN.split(bare) if part]
    return bool(days) and all(day in ANY_DAYS or day in _SHORTEST for day in days)
