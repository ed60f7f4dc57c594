"""Notes of the day behind names, in labels that come again: ``12.05. Mia Vost: Goal: cuts a line``.

What stands before the first label is the child, whoever knows its name: nearly all lines have the same label behind a
colon or a dash, and each another name. Where known names stand behind the labels, these may be the children.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence

from namewright.names.clusters import is_letter
from namewright.patterns import pattern
from namewright.roster.beside import strip_numbering
from namewright.roster.capitals import is_titled
from namewright.roster.day_words import DAY_WORDS
from namewright.roster.entry_fields import bare
from namewright.roster.headings import heading_reason
from namewright.roster.pasted import Line
from namewright.roster.shares import given_share
from namewright.roster.vocabulary import ANY_DAYS, GROUPS, fold

_LABELLED = pattern(r"([^:;|\t]{2,60}?)(?:\s?:|\s+[–—-])\s+([^\W\d_][^:;|\t\d]{1,24}?)\s?:\s+(\S[^\t|]*)", needs=":")
_FEWEST, _MOST_WORDS, _LONGEST = 3, 5, 600
_HALF, _NEARLY_ALL = 0.5, 0.8


def without_said_behind(lines: Sequence[Line]) -> list[Line]:
    """Return the names before labels that come again, each with what was said behind it; or the lines as they are."""
    filled = [at for at, line in enumerate(lines) if any(map(is_letter, line.text))]
    if sum(lines[at].text.count(":") > 1 for at in filled) < _FEWEST:
        return list(lines)
    found = {at: match for at in filled if len(lines[at].text) <= _LONGEST and (
        match := _LABELLED.fullmatch(bare(strip_numbering(lines[at].text))[0])) and _may_be_a_name(match[1])}
    labels = Counter(fold(match[2]) for match in found.values())
    label, count = labels.most_common(1)[0] if labels else ("", 0)
    found = {at: match for at, match in found.items() if fold(match[2]) == label}
    names = {fold(match[1]) for match in found.values()}
    if count < max(_FEWEST, _NEARLY_ALL * (len(filled) - 1)) or len(names) < _NEARLY_ALL * count:
        return list(lines)
    if given_share(match[3] for match in found.values()) >= _HALF:
        return list(lines)
    return [line.without(f"{found[at][2]}: {found[at][3]}", found[at][1].strip()) if at in found else line
            for at, line in enumerate(lines)]


def _may_be_a_name(text: str) -> bool:
    words = text.split()
    return 0 < len(words) <= _MOST_WORDS and is_titled(text) and not any(map(str.isdigit, text)) and (
        heading_reason(text) is None) and (ANY_DAYS | DAY_WORDS | GROUPS).isdisjoint(map(fold, words))
