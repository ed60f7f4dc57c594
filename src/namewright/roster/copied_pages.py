"""A page of people copied from a screen: for each the same few lines, an address or a state or buttons about the name.

``MV``, ``Mia Vost``, ``Active today``, ``mia.vost@…``, ``Edit · Remove`` come again for every child, at the same
distance. Where addresses or initials tell which line is the name, or one line alone differs from child to child, the
others are said of it. What stands above and below all of them is asked about. Out of scope: lines that are missing for
some, and pages that open with the same line (``form_letters``).
"""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Iterator, Sequence
from typing import Literal

from namewright.message import message
from namewright.named_tuples import NamedTuple
from namewright.names.casing import opens_as_a_name
from namewright.names.clusters import is_letter
from namewright.patterns import pattern
from namewright.roster.capitals import is_titled
from namewright.roster.headings import heading_reason
from namewright.roster.known import opens_with_given
from namewright.roster.pasted import Line
from namewright.roster.prose import Aside
from namewright.roster.shares import share
from namewright.roster.vocabulary import fold

_ADDRESS = pattern(r"\s*[^\s@,;<>]+@[^\s@,;<>]+\.[^\s@,;<>]+\s*", needs="@")
_PARTS = re.compile(r"[._\-+\d]+")
_INITIALS = pattern(r"\s*(?:[^\W\d_]\.?){2,3}\s*")
_FEWEST, _ENOUGH = 3, 4  # children, where something tells the name, and where nothing does
_MOST_LINES = 6  # for a child
_MOST_SIGNS = 6  # of initials
_SHORT = 3  # letters: such a word may stand within an address by chance
_MOST_ABOVE, _MOST_BELOW = 8, 5
_LONGEST = 2_000  # lines
_HALF, _MOSTLY, _FEW, _NEARLY_ALL, _ALL_BUT_A_TWIN = 0.5, 0.6, 0.75, 0.8, 0.9
_STRUCTURED = pattern(r'[\t;|":=]|\s{3}')
"""Signs of tables, labels and forms, which others read."""
_SAID = message("roster.said_below")


class _Page(NamedTuple):
    """Where the names stand, and what stands about them, by their place among the lines with words."""

    names: Sequence[int]
    said: frozenset[int]


def without_copied_pages(lines: list[Line]) -> tuple[list[Line], list[Aside]]:
    """Return the lines with the names of such a page, and those that are said of them or stand about them all."""
    filled = [at for at, line in enumerate(lines) if any(map(is_letter, line.text))] if len(lines) <= _LONGEST else []
    texts = [lines[at].text.strip() for at in filled]
    page = next(filter(None, (_page(texts, marks) for marks in _marks(texts))), None)
    if page is None:
        return lines, []
    start, end = min(page.names[0], *page.said), max(page.said)
    if start > _MOST_ABOVE or len(texts) - end - 1 > _MOST_BELOW:
        return lines, []
    told = {filled[at]: Aside(lines[filled[at]], (_SAID,)) for at in page.said}
    for at, text in enumerate(texts):
        if not start <= at <= end and not heading_reason(text):
            told[filled[at]] = Aside(lines[filled[at]], (message("roster.unlike", words=text[:60]),), asked=True)
    return [line for at, line in enumerate(lines) if at not in told], [told[at] for at in sorted(told)]


class _Marks(NamedTuple):
    """Where lines stand that come again with each child, and what they are."""

    at: Sequence[int]
    kind: Literal["address", "initials", "again"]


def _marks(texts: Sequence[str]) -> Iterator[_Marks]:
    addresses = [at for at, text in enumerate(texts) if "@" in text and _ADDRESS.fullmatch(text)]
    if len(addresses) >= _FEWEST:
        yield _Marks(addresses, "address")
    initials = [at for at, text in enumerate(texts) if len(text) <= _MOST_SIGNS and _INITIALS.fullmatch(text)
                and all(map(opens_as_a_name, filter(is_letter, text)))]
    if len(initials) >= _FEWEST:
        yield _Marks(initials, "initials")
    counts = Counter(texts)
    again = [at for at, text in enumerate(texts) if counts[text] > 1]
    if len(again) >= _ENOUGH and not _are_known([texts[at] for at in again]):
        yield _Marks(again, "again")


def _page(texts: Sequence[str], marks: _Marks) -> _Page | None:
    """Return the page whose lines stand at the same distance from such marks; None where there is none."""
    for size in range(2, _MOST_LINES + 1):
        for last in {at % size for at in marks.at}:
            here = [at for at in marks.at if at % size == last]
            places = list(range(here[0], here[-1] + 1, size))
            if len(here) < max(_FEWEST, _MOSTLY * len(places)) or (marks.kind != "again" and (
                    len(here) < len(places) or len(here) < len(marks.at))):
                continue
            steps = range(1, size) if marks.kind == "initials" else range(-1, -size, -1)
            for step in steps:
                if page := _with_names(texts, marks, places, size, step):
                    return page
    return None


def _with_names(texts: Sequence[str], marks: _Marks, places: Sequence[int], size: int, step: int) -> _Page | None:
    """Return the page whose names stand so many lines from the marks, where they and all others agree with that."""
    names = [at + step for at in places]
    if names[0] < 0 or names[-1] >= len(texts):
        return None
    first, last = min(names[0], places[0]), max(names[-1], places[-1])
    told = _tell_the_names(texts, marks, names, places)
    if not told and (not _are_alone(texts, marks, names) or any(map(_STRUCTURED.search, texts[first : last + 1]))):
        return None
    others = [[at for at in range(place, last + size, size) if at < len(texts)]
              for place in range(first, first + size) if (place - names[0]) % size]
    if not all(_come_again(texts, other, names, size, told=told) for other in others):
        return None
    again = Counter(texts[at] for other in others for at in other)
    said = {at for other in others for at in other if at <= last or again[texts[at]] > 1 or "@" in texts[at]}
    if marks.kind == "again" and any(again[texts[at]] == 1 and not _is_a_mark(texts[at]) for at in said):
        return None  # a line that comes once may be a child between two states
    return _Page(names, frozenset(said))


def _tell_the_names(texts: Sequence[str], marks: _Marks, names: Sequence[int], places: Sequence[int]) -> bool:
    """Say whether marks are made of the names: addresses with a word of each, or its initials."""
    if marks.kind == "again":
        return False
    of = _is_address_of if marks.kind == "address" else _are_initials_of
    return share(of(texts[name], texts[mark]) for name, mark in zip(names, places, strict=True)) >= _NEARLY_ALL


def _are_alone(texts: Sequence[str], marks: _Marks, names: Sequence[int]) -> bool:
    """Say whether enough lines differ from child to child, as names do where no mark is made of them."""
    if marks.kind == "initials" or len(names) < _ENOUGH:
        return False
    if marks.kind == "again":
        return frozenset(marks.at).isdisjoint(names)
    return _differ([texts[at] for at in names]) >= _ALL_BUT_A_TWIN


def _come_again(texts: Sequence[str], other: Sequence[int], names: Sequence[int], size: int, *, told: bool) -> bool:
    """Say whether lines at one place are few, addresses, or initials of the names."""
    inside = [at for at in other if at <= names[-1] + size - 1]
    some = [texts[at] for at in inside]
    if all(_ADDRESS.fullmatch(text) for text in some):
        return True
    if _differ(some) <= (_FEW if told else _MOSTLY):
        return told or not _are_known(some)
    below = zip(names, [at for at in inside if at < names[-1]], strict=False)
    return share(_are_initials_of(texts[name], texts[at]) for name, at in below) >= _NEARLY_ALL


def _are_known(texts: Sequence[str]) -> bool:
    """Say whether half of what is written on lines may be known names."""
    return share(is_titled(text) and opens_with_given(text) for text in set(texts)) >= _HALF


def _is_a_mark(text: str) -> bool:
    return bool(_ADDRESS.fullmatch(text) or _INITIALS.fullmatch(text))


def _differ(texts: Sequence[str]) -> float:
    return len(set(map(fold, texts))) / len(texts)


def _is_address_of(name: str, address: str) -> bool:
    """Say whether a word of a name, or most of it, opens an address: ``mia.vost@…``, ``mvost@…``."""
    local = fold(address.partition("@")[0])
    words = [word for word in fold(name.replace(",", " ").replace("-", " ")).split() if len(word) > 2]
    return "@" not in name and any(word in _PARTS.split(local) or (len(word) > _SHORT and word in local)
                                   for word in words)


def _are_initials_of(name: str, initials: str) -> bool:
    """Say whether letters open the words of a name."""
    letters = [fold(sign) for sign in initials if is_letter(sign)]
    first = Counter(fold(word)[:1] for word in name.replace(",", " ").replace("-", " ").split())
    return len(initials.strip()) <= _MOST_SIGNS and not Counter(letters) - first and len(name) > len(initials)
