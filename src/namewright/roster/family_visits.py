"""Families with the child beside them, as visits are planned: ``Mon 16:40 The Vost family (Mira), 7 Oak Lane``.

A family is named by a word for it in front or behind. Its child stands in brackets, or first behind the sign, in most
lines alike; streets, figures and remarks stay beside the name. Where neither holds a name, nothing is taken.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from namewright.names.clusters import is_letter
from namewright.patterns import pattern
from namewright.roster.beside import is_word_about
from namewright.roster.capitals import is_titled
from namewright.roster.pasted import COLUMN_SIGNS, Line
from namewright.roster.shares import are_most
from namewright.roster.vocabulary import AND, ANY_DAYS, OTHER_PEOPLE, STREETS, fold
from namewright.store import keeps_names

_WORD = r"(?:[Ff]am\.|(?:[Ff]amily|[Ff]amilie|[Ff]amille|[Ff]am[ií]lia|[Ff]amiglia)\b)"
_NAMED = r"[^\W\d_][^,;:()\[\]–—\d]{0,40}?"
_ENDS = r"\s*(?=[,:(\[]|\s[-–—]\s|$)"
_FORMS = (
    pattern(rf"(?P<before>[^()\[\]]*?)(?:\b[Tt]he\s+)?\b{_WORD}\s+(?P<family>{_NAMED}){_ENDS}(?P<rest>.*)"),
    pattern(rf"(?P<before>[^()\[\]]*?)(?:\b[Tt]he\s+)?(?P<family>{_NAMED})\s+[Ff]amily{_ENDS}(?P<rest>.*)"),
)
_IN_BRACKETS = pattern(r"[(\[]([^()\[\]]*)[)\]]")
_SIGNS = pattern(r"\s*[,;:]\s*|\s+[-–—]\s+")
_PARTS = pattern(rf"\s*[,&+/]\s*|\s+(?:{AND})\s+")
_FIRST_WORDS = pattern(r"[^\W\d_]+")
_ENOUGH, _MOSTLY = 2, 0.6
_LONGEST, _MOST_WORDS = 200, 3


def from_families(lines: Sequence[Line]) -> list[Line]:
    """Return the lines of families with their children alone, or all as they are where few name a family."""
    found = {at: match for at, line in enumerate(lines) if (match := _family(line.text))}
    if not found:
        return list(lines)
    filled = {at: line.text for at, line in enumerate(lines) if any(map(is_letter, line.text))}
    if not are_most((at in found for at in filled), _MOSTLY, _ENOUGH):
        return list(lines)
    for names in (_in_brackets(found), _behind(found)):
        if are_most((at in names for at in found), _MOSTLY, _ENOUGH):
            return [each for at, line in enumerate(lines) for each in (
                [line.without(line.text, f"{name} {found[at][0]}") for name in names[at]] if at in names else [line])]
    return list(lines)


@keeps_names(1024)
def _family(text: str) -> tuple[str, str] | None:
    """Return the name of a family and what stands behind it; before it are days and figures alone."""
    if len(text) > _LONGEST or any(sign in text for sign in COLUMN_SIGNS):
        return None
    for form in _FORMS:
        match = form.fullmatch(text.strip())
        if match and all(fold(word) in ANY_DAYS or len(word) == 1 for word in _FIRST_WORDS.findall(match["before"])):
            return match["family"].strip(" -"), match["rest"]
    return None


def _in_brackets(found: Mapping[int, tuple[str, str]]) -> dict[int, list[str]]:
    """Return the names in the first brackets that hold some."""
    return {at: names for at, (_, rest) in found.items()
            if (names := next(filter(None, map(_names, _IN_BRACKETS.findall(rest))), []))}


def _behind(found: Mapping[int, tuple[str, str]]) -> dict[int, list[str]]:
    """Return the names right behind the first sign: what follows a comma may be a second child."""
    parts = {at: [part for part in _SIGNS.split(rest) if part] for at, (_, rest) in found.items()}
    return {at: names for at, (first, *_) in ((at, part) for at, part in parts.items() if part)
            if (names := _names(first))}


def _names(text: str) -> list[str]:
    """Return the names that a text is made of, none where a part of it is no name."""
    parts = _PARTS.split(text.strip())
    return parts if all(map(_may_be_a_child, parts)) else []


def _may_be_a_child(part: str) -> bool:
    words = [fold(word) for word in part.split()]
    told = any(map(is_word_about, part.split())) or not (STREETS | OTHER_PEOPLE).isdisjoint(words)
    return 0 < len(words) <= _MOST_WORDS and is_titled(part) and not any(map(str.isdigit, part)) and not told
