"""What the photo of a list leaves about names: specks at the edges, stray bars, given names broken in two lines.

Specks are signs apart from the words, at the edges of many lines and of several kinds: a typed list has one kind.
Bars are stray where lines have them now here and now there, and hardly one stands between words: a table has them
alike on every line. A line that ends in a comma goes on below where the list is written ``Family, Given``.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator, Sequence
from itertools import pairwise

from namewright.names.casing import begins_small
from namewright.names.clusters import is_letter
from namewright.patterns import pattern
from namewright.roster.beside import strip_numbering
from namewright.roster.headings import heading_reason
from namewright.roster.name_order import BOTH_BY_COMMA
from namewright.roster.pasted import Line
from namewright.roster.shares import share
from namewright.roster.unlike import is_closing

_BARS = pattern(r"[|¦]")
_SPECKS = pattern(r"[._~'`=|¦,—]")
_SPECK_BEFORE = pattern(r"^\s*[._~'`=|¦,](?:\s+(?=[^\W_])|(?=\d{1,3}\s?[.,):-]\s))")
_SPECK_BEHIND = pattern(r"(?<=[\w)])\s+[._~'`|¦,—]\s*$")
_COMMA = pattern(r"^(\s*\d{1,3})\s?[.,]\s+(?=[^\W\d_])")
_ENDING = pattern(r",\s*\n")
_BETWEEN = pattern(r"[^\W\d_][^|¦]*[|¦][^|¦]*[^\W\d_]")
_BEHIND_A_NUMBER = pattern(r"^(\s*\d{1,3}[.)]?)\s*!\s*")
_BROKEN = pattern(r"[^,\d]*[^\W\d_][^,\d]*,")
_ENOUGH, _HALF, _HARDLY, _MOSTLY = 3, 0.5, 0.2, 0.8
_MOST_WORDS = 3  # of a given name
_KINDS = 3  # of specks


def from_a_photo(lines: Sequence[Line]) -> list[Line]:
    """Return the lines without stray bars, each name on one line, or as they are where none are stray or broken."""
    whole = "\n".join(line.text for line in lines)
    if _SPECKS.search(whole):
        lines = _without_specks(lines)
        whole = "\n".join(line.text for line in lines)
    barred = _without_bars(lines) if _BARS.search(whole) else list(lines)
    return _joined(barred) if _ENDING.search(whole) else barred


def _without_specks(lines: Sequence[Line]) -> list[Line]:
    """Take specks off the edges of lines, and write the numbers behind them with a dot: ``' 1, Mira Vost _``."""
    worded = [line.text for line in lines if any(map(is_letter, line.text))]
    specks = [_specks(text) for text in worded]
    kinds = Counter(sign for signs in specks for sign in signs)
    if (sum(map(bool, specks)) < max(_ENOUGH, _HALF * len(worded)) or len(kinds) < _KINDS
            or any("\t" in text or _BARS.search(text.strip("|¦ ")) for text in worded)):
        return list(lines)
    return [line._replace(text=_COMMA.sub(r"\1. ", _SPECK_BEHIND.sub("", _SPECK_BEFORE.sub("", line.text))))
            if any(map(is_letter, line.text)) else line for line in lines]


def _specks(text: str) -> tuple[str, ...]:
    """Return the signs that stand apart at the edges of a line."""
    return tuple(match[0].strip() for match in (_SPECK_BEFORE.match(text), _SPECK_BEHIND.search(text)) if match)


def _without_bars(lines: Sequence[Line]) -> list[Line]:
    worded = [line.text for line in lines if any(map(is_letter, line.text))]
    ruled = [_bars(text) for text in worded]
    if sum(map(any, ruled)) < _ENOUGH or max(Counter(ruled).values()) > _MOSTLY * len(ruled):
        return list(lines)
    if share(bool(_BETWEEN.search(text)) for text in worded) > _HARDLY or share("," in text for text in worded) < _HALF:
        return list(lines)
    return [line._replace(text=_without(line.text)) if _BARS.search(line.text) or "!" in line.text else line
            for line in lines]


def _bars(text: str) -> tuple[bool, int, bool]:
    """Return whether a line begins with a bar, how many it has, and whether it ends with one."""
    bare = text.strip()
    return bool(_BARS.match(bare)), len(_BARS.findall(bare)), bool(_BARS.match(bare[-1]))


def _without(text: str) -> str:
    return _BEHIND_A_NUMBER.sub(r"\1 ", " ".join(_BARS.sub(" ", text).split()))


def _joined(lines: list[Line]) -> list[Line]:
    """Join a line that ends in a comma with the one below it, where most others have both parts of a name."""
    broken = {at for at, (line, below) in enumerate(pairwise(lines)) if _goes_on(line.text, below.text)}
    rest = [line.text for at, line in enumerate(lines)
            if any(map(is_letter, line.text)) and at not in broken and at - 1 not in broken]
    if not broken or sum(bool(BOTH_BY_COMMA.fullmatch(text)) for text in rest) < max(_ENOUGH, _HALF * len(rest)):
        return lines
    return list(_in_one(lines, broken))


def _goes_on(text: str, below: str) -> bool:
    """Say whether a line has a family name and a comma alone, and the one below it a given name alone."""
    words = below.split()
    given = 0 < len(words) <= _MOST_WORDS and "," not in below and any(map(is_letter, words[0][:2]))  # 0xana
    broken = given and not begins_small(words[0]) and bool(_BROKEN.fullmatch(strip_numbering(text)))
    return broken and not (heading_reason(text) or heading_reason(below) or is_closing(text))  # Groeten, and who signs


def _in_one(lines: Sequence[Line], broken: set[int]) -> Iterator[Line]:
    for at, line in enumerate(lines):
        if at in broken:
            yield line._replace(text=f"{line.text.rstrip()} {lines[at + 1].text.strip()}")
        elif at - 1 not in broken:
            yield line
