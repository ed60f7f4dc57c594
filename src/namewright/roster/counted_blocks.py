"""Blocks that each count their names from one on, below a line that says what was done.

Of ``Long jump``, ``1. Mia``, ``2. Leo``, ``30 metres``, ``1. Ava``, ``2. Noah`` the lines without a number are
headings. Where the lines below are no known names, one of the heads must have a figure or a small word, as no child
has: else each may be a child over what it likes first and second.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from namewright.names.clusters import is_letter
from namewright.patterns import pattern
from namewright.roster.beside import strip_numbering
from namewright.roster.capitals import is_small_word
from namewright.roster.known import is_given
from namewright.roster.pasted import Line
from namewright.roster.shares import given_share

_NUMBER = pattern(r"\s*(\d{1,2})[.)]\s*(?=[^\W\d_])")
_FEWEST, _MOST_ABOVE = 2, 2
_HALF = 0.5


def from_counted_blocks(lines: Sequence[Line]) -> list[Line]:
    """Return the lines with those over counts as headings, where each count has one."""
    filled = {at: line.text for at, line in enumerate(lines) if any(map(is_letter, line.text))}
    heads = _heads(filled)
    if not heads or any(is_given(filled[at].split()[0].strip(" :,*")) for at in heads):
        return list(lines)
    below = [strip_numbering(text) for at, text in filled.items() if _NUMBER.match(text)]
    if given_share(below) < _HALF and not any(map(_is_no_child, (filled[at] for at in heads))):
        return list(lines)
    return [line.heading(line.text) if at in heads else line for at, line in enumerate(lines)]


def _heads(filled: Mapping[int, str]) -> list[int]:
    """Return the lines that each stand over a count from one on; none where a line is neither and no title."""
    heads, bare, count = list[int](), list[int](), 0
    for at, text in filled.items():
        match = _NUMBER.match(text)
        if match is None:
            bare.append(at)
            continue
        count = 1 if int(match[1]) == 1 else count + 1
        if int(match[1]) != count or (count == 1) != bool(bare) or len(bare) > 1 + (not heads) * _MOST_ABOVE:
            return []
        heads += bare[-1:]
        bare = []
    return heads if len(heads) >= _FEWEST and not bare else []


def _is_no_child(text: str) -> bool:
    words = text.split()
    return any(map(str.isdigit, text)) or any(map(is_small_word, words[1:]))
