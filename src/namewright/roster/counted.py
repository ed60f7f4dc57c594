"""Names counted within one line, ``1. Mia 2. Leo 3. Sam``, into a line each: a copied page may run them together.

The numbers go up by one from the first on, each has the same sign behind it (or none has, and there are three or more),
and what stands behind each may be a name. Out of scope: numbers in columns of their own (``numbered``).
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import groupby, pairwise

from namewright.patterns import pattern
from namewright.roster.headings import heading_reason
from namewright.roster.pasted import Line
from namewright.roster.several import is_titled_name, may_be_a_name
from namewright.roster.wrapped import is_full

_NUMBER = pattern(r"(?<!\S)\(?(\d{1,3})([.):]{0,2})(?=[\s\u00a0]|[^\W\d_])")
_TWO_FIGURES = pattern(r"[0-9].*[0-9]")
_FEWEST, _FEWEST_BARE = 2, 3  # numbers in a line
_OFTEN = 1.5  # numbers in a line of several on the average
_BETWEEN = " \t\u00a0,;|·•-–—"
_LONGEST = 4_000  # characters of a line


def from_counted(lines: Sequence[Line]) -> list[Line]:
    """Return the lines with those that count their names parted at the numbers."""
    if not _TWO_FIGURES.search("\n".join([line.text for line in lines])):
        return list(lines)
    return [each for line in _put_together(lines) for each in _parted(line)]


def _put_together(lines: Sequence[Line]) -> list[Line]:
    """Return the lines, those of each paragraph as one that a program wrapped within a name: ``… 3. Ava⏎Tarn 4. …``."""
    found: list[Line] = []
    for filled, block in groupby(lines, key=lambda line: bool(line.text.strip())):
        some = list(block)
        joined = some[0]._replace(text=" ".join(line.text.strip() for line in some))
        found += [joined] if filled and _is_wrapped([line.text for line in some], joined) else some
    return found


def _is_wrapped(texts: Sequence[str], joined: Line) -> bool:
    """Say whether a paragraph counts on over its lines, has several in most, and a full line ends within a name."""
    count = len(_NUMBER.findall(joined.text))
    within = [left for left, right in pairwise(texts) if not _NUMBER.match(right.strip())]
    if len(texts) < _FEWEST or not within or count < _OFTEN * len(texts):
        return False
    width = max(map(len, texts))
    return len([*_parted(joined)]) == count and all(
        is_full(left, right, width) for left, right in pairwise(texts) if left in within)


def _parted(line: Line) -> Iterator[Line]:
    found = list(_NUMBER.finditer(line.text)) if len(line.text) <= _LONGEST else []
    numbers = [int(match[1]) for match in found]
    signs = {match[2] for match in found}
    fewest = _FEWEST if signs != {""} else _FEWEST_BARE
    if len(numbers) < fewest or len(signs) > 1 or numbers != list(range(numbers[0], numbers[0] + len(numbers))):
        yield line
        return
    ends = [match.start() for match in found[1:]] + [len(line.text)]
    names = [line.text[match.end() : end].strip(_BETWEEN) for match, end in zip(found, ends, strict=True)]
    if line.text[: found[0].start()].strip() or not all(map(_is_a_name, names)):
        yield line
        return
    yield from map(line.part, names)


def _is_a_name(text: str) -> bool:
    return may_be_a_name(text) and is_titled_name(text) and heading_reason(text) is None
