"""Lines that greet whom a letter about a list is for (``Cara Ida,``, ``> Beste Ben, kun je …?``): perhaps children.

Words that greet are names too, and so is what stands behind them; so such a line is asked about. Out of scope:
greetings that are nobody's name (``headings``), the end of a letter (``unlike``).
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence

from namewright.names.casing import begins_small
from namewright.names.clusters import is_letter
from namewright.patterns import pattern
from namewright.roster.heading_words import DEARS
from namewright.roster.shares import share
from namewright.roster.unlike import is_quoted
from namewright.roster.vocabulary import fold

_GREETING = pattern(r"[>\s]*([^\W\d_]+)\s+([^,:!?;\d]{2,60}?)\s?[,:!](?P<said>.*)")
_MAY_GREET = pattern(r"[,:!][^\S\n]*$|^[^\S\n]*>", re.MULTILINE)
_LABEL = pattern(r"[>\s]*[^\W\d_]{1,12}\s?:\s")
_LISTED = pattern(r"[,;:]")
_MOST_WORDS, _ENOUGH = 3, 3  # of whom it is for; words in small letters of what is said to them
_HARDLY = 0.3


def greetings(texts: Sequence[str]) -> Iterator[int]:
    """Yield the lines (0-based) that greet and open a letter, or one that is quoted."""
    if not _MAY_GREET.search("\n".join(texts)):
        return
    filled = [at for at, text in enumerate(texts) if any(map(is_letter, text))]
    found = {at: said for at in filled if (said := _greeted(texts[at])) is not None}
    if not found or share(texts[at].rstrip().endswith(",") for at in filled) > _HARDLY:
        return
    for order, at in enumerate(filled):
        if at in found and _opens(texts, filled[max(0, order - 1) : order], at):
            below = next((texts[one] for one in filled[order + 1 : order + 2]), "")
            if (is_quoted(texts[at]) and _is_said(found[at])) or (
                    not found[at] and below and (begins_small(below.lstrip("> ")) or not texts[at + 1].strip())):
                yield at


def _greeted(text: str) -> str | None:
    """Return what is said behind a greeting, None where a line has none."""
    match = _GREETING.fullmatch(text.rstrip())
    if match is None or fold(match[1]) not in DEARS:
        return None
    words = match[2].split()
    titled = match[1][0].isupper() and len(words) <= _MOST_WORDS and not begins_small(words[-1])
    return match["said"].strip() if titled else None


def _opens(texts: Sequence[str], above: Sequence[int], at: int) -> bool:
    """Say whether a line is the first, stands below the head of a mail, or is the first or a parted one of a quote."""
    if not above:
        return True
    before = texts[above[0]]
    return bool(_LABEL.match(before)) or (is_quoted(texts[at]) and (
        not is_quoted(before) or above[0] < at - 1 or before.rstrip().endswith(":")))


def _is_said(text: str) -> bool:
    """``podes mandar-me a lista?``: words in small letters, and no list of names."""
    return sum(map(begins_small, text.split())) >= _ENOUGH and begins_small(text) and not _LISTED.search(text)
