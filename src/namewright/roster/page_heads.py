"""What a printed list says on every page: the school over its titles and the date at the foot are no child on page two.

Where the titles of a table come again, the lines right above them that stood above the first ones, too, are headings;
and so is the last line of each page, if another page ends in the same but for the numbers.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence

from namewright.names.clusters import is_letter
from namewright.patterns import pattern
from namewright.roster.columns import cells_by_each_sign, has_titles
from namewright.roster.pasted import Line

_MOST_ABOVE = 6
_NUMBERS = pattern(r"\d+")


def without_page_heads(lines: Sequence[Line]) -> list[Line]:
    """Return the lines with what stands over the titles of each page as headings."""
    plain = [" ".join(line.text.split()) for line in lines]
    seen: dict[str, list[int]] = {}
    for at, text in enumerate(plain):
        seen.setdefault(text, []).append(at)
    told: set[int] = set()
    for text, places in seen.items():
        if text and len(places) > 1 and has_titles(lines[places[0]].text):
            tops = _tops(plain, places)
            told |= {at for top, titles in zip(tops, places[1:], strict=True) for at in range(top, titles) if plain[at]}
            told |= _feet(lines, [*tops, len(plain)], lines[places[0]].text)
    return [line.heading(plain[at]) if at in told else line for at, line in enumerate(lines)]


def _tops(plain: Sequence[str], places: Sequence[int]) -> list[int]:
    """Return where each page but the first begins, with the lines over its titles that the first has, too.

    They are the same but for their numbers, and may have empty lines between them: ``Page 2``.
    """
    above = {_NUMBERS.sub("0", one) for one in plain[max(0, places[0] - _MOST_ABOVE) : places[0]]
             if any(map(is_letter, one))}
    tops = []
    for at in places[1:]:
        while at and (_NUMBERS.sub("0", plain[at - 1]) in above or not plain[at - 1]):
            at -= 1
        tops.append(next(top for top in range(at, len(plain)) if plain[top]))
    return tops


def _feet(lines: Sequence[Line], ends: Sequence[int], titles: str) -> set[int]:
    """Return the last lines of pages that are the same but for their numbers, of fewer cells than the titles have."""
    last = [next((at for at in range(end - 1, -1, -1) if lines[at].text.strip()), 0) for end in ends]
    shapes = {at: " ".join(_NUMBERS.sub("0", lines[at].text).split()) for at in last}
    counts = Counter(shapes[at] for at in last)
    most = max(map(len, cells_by_each_sign(titles)), default=0)
    return {at for at in last if counts[shapes[at]] > 1 and _NUMBERS.search(lines[at].text)
            and max(map(len, cells_by_each_sign(lines[at].text)), default=1) < most}
