"""A spelling that is put right in its line (``NOT Ana – Anna``, ``Ana → Anna``, ``Ana (correct: Anna)``): the latter.

That two names are one is told by how alike they are. An arrow on many lines points at something else, as at a partner.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from difflib import SequenceMatcher

from namewright.names.casing import begins_small
from namewright.patterns import pattern
from namewright.roster.beside import strip_numbering
from namewright.roster.pasted import COLUMN_SIGNS, Line
from namewright.roster.shares import share
from namewright.roster.vocabulary import fold

_NOT = r"(?:not|no|pas|nicht|non|n[ãa]o)"
_ARROW = pattern(r"(?P<wrong>[^→⇒>]{2,60}?)\s*(?:→|⇒|[-=]>)\s*(?P<right>[^→⇒>]{2,60})", needs="→⇒>")
_NOT_FIRST = pattern(rf"{_NOT}\s+(?P<wrong>[^,:;]{{2,60}}?)(?:\s+[-–—]|[,:;])\s+(?P<right>.{{2,60}})", re.IGNORECASE)
_NOT_BEHIND = pattern(rf"(?P<right>.{{2,60}}?)(?:\s*[,–—-])?\s+{_NOT}\s+(?P<wrong>.{{2,60}}?)\s*!*", re.IGNORECASE)
_IN_BRACKETS = pattern(
    r"(?P<wrong>[^()]{2,60}?)\s*\((?:corr?[eè]ct[oa]?|corrett[oa]|corret[oa]|corrig[ée]e?|should be|richtig|korrekt|"
    r"giust[oa]|cert[oa])(?:\s*:)?\s+(?P<right>[^()]{2,60})\)", re.IGNORECASE, needs="(")
_LONGEST = 120  # characters: a longer line is no name and its right spelling
_ALIKE = 0.5  # by the library’s measure: Mohamed and Muhammad have 0.67, Mira and Bo nothing
_SOME = 0.5


def from_corrections(lines: Sequence[Line]) -> list[Line]:
    """Return the lines with the right spelling alone; each tells what was taken from it."""
    filled = [line.text for line in lines if line.text.strip()]
    arrows = share(bool(_ARROW.fullmatch(text)) for text in filled if len(text) <= _LONGEST) < _SOME
    return [_put_right(line, arrows=arrows) for line in lines]


def _put_right(line: Line, *, arrows: bool) -> Line:
    bare = strip_numbering(line.text) if len(line.text) <= _LONGEST else ""
    if not bare or any(sign in bare for sign in COLUMN_SIGNS):
        return line
    for form in (_NOT_FIRST, _NOT_BEHIND, _IN_BRACKETS, *((_ARROW,) if arrows else ())):
        match = form.fullmatch(bare)
        if match and (right := _right(match["wrong"].strip(), match["right"].strip())):
            number = line.text[: line.text.index(bare)]
            return line.without(match["wrong"], f"{number}{right}")
    return line


def _right(wrong: str, right: str) -> str:
    """Return the whole name with the right spelling, empty where the two are no spellings of one name."""
    before, after = wrong.split(), right.split()
    if wrong == right or begins_small(before[0]) or begins_small(after[0]):
        return ""
    if len(before) == len(after):
        return right if all(map(_are_alike, before, after)) else ""
    if len(before) == 1:  # Ana – Anna Moss
        return right if any(_are_alike(wrong, word) for word in after) else ""
    at = next((at for at, word in enumerate(before) if len(after) == 1 and _are_alike(word, right)), None)
    return "" if at is None else " ".join((*before[:at], right, *before[at + 1 :]))  # Ana Moss – Anna


def _are_alike(one: str, two: str) -> bool:
    return SequenceMatcher(None, fold(one), fold(two), autojunk=False).ratio() >= _ALIKE
