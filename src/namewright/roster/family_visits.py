"""Families with their child, as visits are planned: ``Mon 16:40 The Vost family (Mira), 7 Oak Lane`` is ``Mira Vost``.

A word for a family stands before its name or behind it. The child, or two and more, stand in brackets, or first behind
the sign, in most lines alike; day, street and remark come off and are told. Where a name stands in neither place,
nothing is changed.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from itertools import takewhile

from namewright.message import message
from namewright.names.clusters import is_letter
from namewright.patterns import pattern
from namewright.roster.beside import is_word_about
from namewright.roster.capitals import is_titled
from namewright.roster.names_in_text import BETWEEN_NAMES
from namewright.roster.pasted import COLUMN_SIGNS, Line
from namewright.roster.prose import Aside
from namewright.roster.shares import are_most, given_share
from namewright.roster.vocabulary import ANY_DAYS, OTHER_PEOPLE, STREETS, fold
from namewright.store import keeps_names

_WORD = r"(?:[Ff]am\.|(?:[Ff]amily|[Ff]amilie|[Ff]amille|[Ff]am[ií]lia|[Ff]amiglia)\b)"
_NAMED = r"[^\W\d_][^,;:()\[\]–—\d]{0,40}?"
_ENDS = r"\s*(?=[,:(\[]|\s[-–—]\s|$)"
_FORMS = (
    pattern(rf"(?P<before>[^()\[\]]*?)(?:\b[Tt]he\s+)?\b{_WORD}\s+(?P<family>{_NAMED}){_ENDS}(?P<rest>.*)"),
    pattern(rf"(?P<before>[^()\[\]]*?)(?:\b[Tt]he\s+)?(?P<family>{_NAMED})\s+[Ff]amily{_ENDS}(?P<rest>.*)"),
)
_IN_BRACKETS = pattern(r"[(\[]([^()\[\]]*)[)\]]")
_SIGNS = pattern(r"\s*[;:]\s*|\s+[-–—]\s+")
_FIRST_WORDS = pattern(r"[^\W\d_]+")
_ENOUGH, _HALF, _MOSTLY = 2, 0.5, 0.6
_LONGEST, _MOST_WORDS = 200, 3


def from_families(lines: Sequence[Line]) -> tuple[list[Line], list[Aside]]:
    """Return a line for each child of a family, with its name, and who may be one more child and is asked about.

    Where few lines name a family, all stay as they are.
    """
    found = {at: match for at, line in enumerate(lines) if (match := _family(line.text))}
    if not found:
        return list(lines), []
    filled = {at: line.text for at, line in enumerate(lines) if any(map(is_letter, line.text))}
    if not are_most((at in found for at in filled), _MOSTLY, _ENOUGH):
        return list(lines), []
    for names, doubtful in ((_in_brackets(found), {}), _behind(found)):
        if are_most((at in names for at in found), _MOSTLY, _ENOUGH):
            return [each for at, line in enumerate(lines) for each in (
                [line.without(line.text, f"{name} {found[at][0]}") for name in names[at]] if at in names else [line])
            ], [_asked(lines[at], f"{name} {found[at][0]}") for at, more in doubtful.items() for name in more]
    return list(lines), []


def _asked(line: Line, name: str) -> Aside:
    return Aside(line._replace(text=name), (message("roster.unlike", words=name[:60]),), asked=True)


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


def _behind(found: Mapping[int, tuple[str, str]]) -> tuple[dict[int, list[str]], dict[int, list[str]]]:
    """Return the names right behind the first sign, and what may be further ones behind a comma.

    Half of these known are children all: ``Mira, Leo and Xobrel``; ``Mira, Xobrel`` may as well be ``Mira, Bachgasse``.
    """
    names: dict[int, list[str]] = {}
    doubtful: dict[int, list[str]] = {}
    for at, (_, rest) in found.items():
        text = next(filter(None, _SIGNS.split(rest.removeprefix(","))), "").strip()
        first = len(BETWEEN_NAMES.split(text.partition(",")[0].strip()))
        row = list(takewhile(_may_be_a_child, BETWEEN_NAMES.split(text)))
        if len(row) >= first:
            known = given_share(row[first:]) >= _HALF
            names[at], doubtful[at] = (row, []) if known else (row[:first], row[first:])
    return names, doubtful


def _names(text: str) -> list[str]:
    """Return the names that a text is made of, none where a part of it is no name."""
    parts = BETWEEN_NAMES.split(text.strip())
    return parts if all(map(_may_be_a_child, parts)) else []


def _may_be_a_child(part: str) -> bool:
    words = [fold(word) for word in part.split()]
    told = any(map(is_word_about, part.split())) or not (STREETS | OTHER_PEOPLE).isdisjoint(words)
    return 0 < len(words) <= _MOST_WORDS and is_titled(part) and not any(map(str.isdigit, part)) and not told
