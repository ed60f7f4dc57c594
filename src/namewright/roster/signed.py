"""Names of those who wrote a list or asked for it, alone on their lines: below its last number, in another quoted mail.

Such a name may be a child that was added by hand, so it is asked about. Out of scope: closing words of a letter and
what stands below them (``unlike``), names over number one (``titles_above``).
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Collection, Iterator, Mapping, Sequence

from namewright.names.clusters import is_letter
from namewright.patterns import pattern
from namewright.roster.beside import strip_numbering
from namewright.roster.capitals import is_titled
from namewright.roster.shares import share

_QUOTED = pattern(r"[>\s]*")
_NUMBER = pattern(r"[>\s]*[(#]?0{0,2}(\d{1,3})[.):\s]\s*(?=[^\W\d_])")
_ENOUGH = 3  # names that make a list
_MOST_WORDS, _MOST_BELOW = 2, 3
_MOSTLY = 0.6


def signed_lines(texts: Sequence[str]) -> Iterator[int]:
    """Yield the lines (0-based) of names that may be of who wrote the list or asked for it."""
    filled = {at: text for at, text in enumerate(texts) if any(map(is_letter, text))}
    yield from _below_numbers(texts, filled)
    depths = {at: _depth(text) for at, text in filled.items()}
    if any(depths.values()):
        names = {at: text for at, text in filled.items() if _may_be_a_name(text)}
        yield from _on_another_level(names, depths)
        yield from _ends_a_quote(filled, names, depths)


def _below_numbers(texts: Sequence[str], filled: Mapping[int, str]) -> Iterator[int]:
    """Yield the names without a number at the end, apart from a list that is counted from one on."""
    numbers = [(at, int(match[1])) for at, text in filled.items() if (match := _NUMBER.match(text))]
    counted = [number for _, number in numbers]
    if len(counted) < _ENOUGH or counted != list(range(1, len(counted) + 1)):
        return
    last = numbers[-1][0]
    below = [at for at in filled if at > last]
    apart = any(not any(map(is_letter, text)) for text in texts[last + 1 : below[0]]) if below else False
    if apart and len(below) <= _MOST_BELOW:
        yield from (at for at in below if _may_be_a_name(filled[at]))


def _on_another_level(names: Collection[int], depths: Mapping[int, int]) -> Iterator[int]:
    """Yield the names that stand in another mail of a thread than the list, of which most names are."""
    counts = Counter(depths[at] for at in names)
    depth, most = counts.most_common(1)[0] if counts else (0, 0)
    named = frozenset(names)
    inside = share(at in named for at, other in depths.items() if other == depth) >= _MOSTLY
    if most >= _ENOUGH and inside and most > _MOSTLY * len(names):
        yield from (at for at in names if depths[at] != depth)


def _ends_a_quote(filled: Mapping[int, str], names: Mapping[int, str], depths: Mapping[int, int]) -> Iterator[int]:
    """Yield the only name of a quoted mail that ends it, below what it says in words."""
    for depth in {*depths.values()} - {0}:
        level = [at for at in filled if depths[at] == depth]
        if len(level) > 1 and [at for at in level if at in names] == level[-1:]:
            yield level[-1]


def _depth(text: str) -> int:
    """Return how many marks of quoting stand before a line."""
    marks = _QUOTED.match(text)
    return marks[0].count(">") if marks else 0


def _may_be_a_name(text: str) -> bool:
    """Say whether a line has nothing but one or two words with capitals, or a number before them."""
    bare = strip_numbering(text.lstrip("> \t")).rstrip(" ,.!")
    words = bare.split()
    return 0 < len(words) <= _MOST_WORDS and is_titled(bare) and all(word[0].isalpha() for word in words)
