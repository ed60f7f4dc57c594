"""The same page for each child, as certificates and name cards are printed: one of its lines is the name.

``READER OF THE WEEK``, ``Mira Vost``, ``for finishing a book``, then the same words about ``Leo Tarn``: pages open with
the same line and have as many lines each. What is the same on all of them, comes again and again or is written small is
nobody; the one line that differs from page to page is the child. Where two lines do, nothing is taken out. Out of
scope: labels and what stands behind them (``forms``, ``said_below``).
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence
from itertools import pairwise
from operator import itemgetter

from namewright.message import message
from namewright.names.casing import begins_small
from namewright.names.clusters import is_letter
from namewright.roster.beside import strip_numbering
from namewright.roster.known import opens_with_given
from namewright.roster.pasted import Line, cells_run_on
from namewright.roster.prose import Aside
from namewright.roster.shares import given_share, share
from namewright.roster.vocabulary import fold

_FEWEST = 3  # pages
_MOST_LINES = 12  # of a page
_MOST_ABOVE = 2
_MOSTLY, _NEARLY_ALL = 0.6, 0.9
_LONGEST = 200
_SAID = message("roster.said_below")


def without_form_letters(lines: Sequence[Line]) -> tuple[list[Line], list[Aside]]:
    """Return the lines with the names of such pages alone, and those that are the same or nearly so on each page."""
    pages = _pages(lines)
    places = [[lines[at].text.strip() for at in place] for place in zip(*pages, strict=True)]
    names = [place for place, texts in enumerate(places) if _are_names(texts)]
    again = all(_comes_again(texts) for place, texts in enumerate(places) if place not in names)
    small = any(len(set(texts)) == 1 and begins_small(texts[0]) for texts in places)  # Star Award, presented to
    if len(names) != 1 or not again or not (small or _may_open_pages(places[0][0], places[names[0]])):
        return list(lines), []
    told = {at: texts.count(lines[at].text.strip()) for page in pages
            for at, texts in zip(page, places, strict=True) if at != page[names[0]]}
    asides = [Aside(lines[at], (message("roster.repeated_line", count=count) if count > 1 else _SAID,))
              for at, count in told.items()]
    return [line for at, line in enumerate(lines) if at not in told], asides


def _pages(lines: Sequence[Line]) -> list[list[int]]:
    """Return the places of the lines with words of each page, none where there are no pages of one kind."""
    if max(Counter([line.text for line in lines if line.text]).values(), default=0) < _FEWEST:
        return []
    if cells_run_on(line.text for line in lines):
        return []
    words = {at: fold(line.text) for at, line in enumerate(lines) if any(map(is_letter, line.text))}
    opening, count = max(Counter(words.values()).items(), key=itemgetter(1), default=("", 0))
    filled = list(words)
    opens = [order for order, at in enumerate(filled) if words[at] == opening]
    if count < _FEWEST or opens[0] > _MOST_ABOVE:
        return []
    pages = [filled[one:two] for one, two in pairwise([*opens, len(filled)])]
    alike = len({len(page) for page in pages}) == 1 and 1 < len(pages[0]) <= _MOST_LINES
    return pages if alike and all(len(lines[at].text) <= _LONGEST for page in pages for at in page) else []


def _may_open_pages(opening: str, names: Sequence[str]) -> bool:
    """Say whether the first line of each page is surely no child: no known name, or those behind it are whole names."""
    whole = share(" " in name for name in names) >= _NEARLY_ALL or given_share(names) >= _MOSTLY
    return whole or not opens_with_given(strip_numbering(opening))


def _are_names(texts: Sequence[str]) -> bool:
    """Say whether nearly all lines of a place differ, and none is written small."""
    return len(set(map(fold, texts))) >= _NEARLY_ALL * len(texts) and not any(map(begins_small, texts))


def _comes_again(texts: Sequence[str]) -> bool:
    """Say whether the lines of a place are few, or written small."""
    return len(set(map(fold, texts))) <= _MOSTLY * len(texts) or share(map(begins_small, texts)) >= _NEARLY_ALL
