"""A child’s given name and its family’s on a line each, the family in capitals: ``Mira``, ``VOST``, ``Leo``, ``TARN``.

That is told by all lines together: one in capitals and one that is not, by turns, always in the same order. Groups,
states and marks in capitals are no families. Two lines that are written alike stay two children, for nothing tells.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import dropwhile

from namewright.names.clusters import is_letter
from namewright.patterns import pattern
from namewright.roster.beside import is_state, is_word_about
from namewright.roster.capitals import is_loud, is_titled
from namewright.roster.heading_words import COLOURS, HEADING_WORDS
from namewright.roster.headings import heading_reason
from namewright.roster.known import is_family, is_given, lean
from namewright.roster.pasted import Line
from namewright.roster.shares import given_share, share
from namewright.roster.shouted import is_shouted
from namewright.roster.vocabulary import fold

_NAME = pattern(r"[^\W\d_][^\W\d_’' -]*(?:[’' -][^\W\d_]+){0,3}")
_FEWEST = 3  # children
_FEW, _SOME, _HALF, _MOSTLY = 0.25, 0.3, 0.5, 0.6
_SHORTEST = 2  # letters


def from_two_lines(lines: Sequence[Line]) -> list[Line]:
    """Return a line for each child, that of the part which stands first, or the lines as they are."""
    filled = [at for at, line in enumerate(lines) if any(map(is_letter, line.text))]
    names = list(dropwhile(lambda at: heading_reason(lines[at].text) is not None, filled)) if any(
        is_loud(lines[at].text) for at in filled[:_FEWEST]) else []
    pairs = list(zip(names[::2], names[1::2], strict=False))
    if len(names) % 2 or len(pairs) < _FEWEST or any(two != one + 1 for one, two in pairs):
        return list(lines)
    texts = [lines[at].text.strip() for at in names]
    if not (_are_apart(texts[::2], texts[1::2]) or _are_apart(texts[1::2], texts[::2])):
        return list(lines)
    return list(_joined(lines, dict(pairs)))


def _joined(lines: Sequence[Line], pairs: dict[int, int]) -> Iterator[Line]:
    second = set(pairs.values())
    for at, line in enumerate(lines):
        if at in pairs:
            yield line._replace(text=f"{line.text.strip()} {lines[pairs[at]].text.strip()}")
        elif at not in second:
            yield line


def _are_apart(given: Sequence[str], families: Sequence[str]) -> bool:
    """Say whether some lines are families, in capitals alone, and the others are given names."""
    if not all(map(_NAME.fullmatch, (*given, *families))) or any(map(str.isupper, given)):
        return False
    if not all(word.isupper() and len(word) >= _SHORTEST for word in families) or not all(map(_may_be_given, given)):
        return False
    if any(fold(word) in COLOURS | HEADING_WORDS or is_state(word) or heading_reason(word)
           or is_shouted(word) or (is_word_about(word) and not is_family(word)) for word in families):
        return False
    if share(lean(word.split()[0]) > 0 for word in families) > _FEW or len(set(families)) < _MOSTLY * len(families):
        return False
    known = share(any(map(is_family, word.split())) and not is_given(word) for word in families)
    return known >= _SOME or given_share(given) >= _HALF


def _may_be_given(name: str) -> bool:
    """Say whether a line is one word, or given names alone, and no whole name."""
    words = name.split()
    return is_titled(name) and (len(words) == 1 or all(map(is_given, words)))
