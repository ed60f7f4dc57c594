"""Works in quotation marks beside the children who made them, as labels on a wall have them: no title is a child.

``Mia Vost (5): “A big whale”, clay`` and ``“My cat” – Leo Berg, collage`` have title and child on a line; a title may
stand on a line of its own, with ``Mia Vost, age 5`` and what the work is made of on others. Titles have several words,
or come again; a name to go by has one and does not. Out of scope: titles without quotation marks.
"""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Collection, Mapping, Sequence

from namewright.names.casing import begins_small
from namewright.names.clusters import is_letter
from namewright.patterns import pattern
from namewright.roster.beside import strip_numbering
from namewright.roster.capitals import is_titled
from namewright.roster.known import opens_with_given
from namewright.roster.pasted import Line
from namewright.roster.shares import are_most, share

_TITLE = pattern(r"[\"“„«»]\s?([^\"“”„«»]{2,80}?)\s?[\"“”»«]", needs="\"“„«»")
_CELL = pattern(r"[,;\t|]\"|\"[,;\t|]\S", needs="\"")
_BEHIND = pattern(r"\s*(?:[-–—:,/]|by|by:|von|de|par|por|di)\s+(?=\S)", re.I)
_INSIDE = pattern(r"\s*[(\[]([^\d()\[\]]+)[)\]]\s*$")
_BEFORE = pattern(r"\s*[-–—:,/=]\s+$")
_AGED = pattern(r"([^\W\d_][^\d,:;()]{0,60}?)\s*[,(–—-]\s*(?:[^\W\d_]{2,6}\.?\s)?[0-9]{1,2}(?:\s[^\W\d_]{1,8}\.?)?"
                r"\)?\s*")
_FEWEST, _TITLES = 3, 2  # works, and lines above the first of them
_MOSTLY, _HALF, _SOME = 0.8, 0.5, 0.3


def from_captions(lines: Sequence[Line]) -> list[Line]:
    """Return the lines with titles of works off, or as headings, where there is one to nearly each child."""
    filled = [at for at, line in enumerate(lines) if any(map(is_letter, line.text))]
    found = {at: match for at in filled if (match := _TITLE.search(strip_numbering(lines[at].text)))}
    cells = any(_CELL.search(lines[at].text) for at in found)
    if len(found) < _FEWEST or cells or not _are_works([match[1] for match in found.values()]):
        return list(lines)
    if all(match[0] == match.string.rstrip(" ,;.") for match in found.values()):
        return _without_title_lines(lines, filled, found)
    names = {at: _name_beside(match) for at, match in found.items()}
    above = [at for at in filled if at not in found]
    rest = [name for name in names.values() if name]
    if len(rest) < len(found) or len(above) > _TITLES or max(above, default=-1) > min(found) or not are_most(
            map(is_titled, (name.partition(",")[0].partition("(")[0].strip() or "-" for name in rest)), _MOSTLY):
        return list(lines)
    made = _made_of(rest)
    return [line.without(line.text.replace(names[at], "", 1), _without_last(names[at], made)) if at in found else (
        line.heading(line.text) if at in above else line) for at, line in enumerate(lines)]


def _are_works(titles: Sequence[str]) -> bool:
    """Say whether quoted words are titles: several words, or the same again, and hardly any a name."""
    counts = Counter(titles)
    told = share(" " in title or counts[title] > 1 for title in titles)
    return told >= _HALF and share(is_titled(title) and opens_with_given(title) for title in titles) <= _SOME


def _name_beside(match: re.Match[str]) -> str:
    """Return what stands behind a title that opens a line and a sign, or before a title and a sign; else nothing."""
    text = match.string
    if match.start() == 0:
        if inside := _INSIDE.match(text, match.end()):
            return inside[1].strip()
        sign = _BEHIND.match(text, match.end())
        return text[sign.end() :].strip() if sign else ""
    sign = _BEFORE.search(text, 0, match.start())
    return text[: sign.start()].strip() if sign else ""


def _made_of(names: Sequence[str]) -> frozenset[str]:
    """Return what stands behind the last commas where it is no name: half of it comes again, or it is small."""
    last = [name.rpartition(",")[2].strip() for name in names if "," in name]
    counts = Counter(last)
    told = [each for each in last if each and (counts[each] > 1 or begins_small(each))]
    return frozenset(last if len(last) == len(names) and len(told) >= _HALF * len(names) else told)


def _without_last(name: str, made: Collection[str]) -> str:
    before, _, last = name.rpartition(",")
    return before.strip() if before and last.strip() in made else name


def _without_title_lines(lines: Sequence[Line], filled: Sequence[int], works: Mapping[int, object]) -> list[Line]:
    """Return titles that have lines of their own as headings, and what the works are made of where ages tell names."""
    aged = [at for at in filled if at not in works and _AGED.fullmatch(lines[at].text.strip())]
    texts = {at: lines[at].text.strip() for at in filled}
    counts = Counter(texts.values())
    told = len(aged) >= _MOSTLY * len(works) and len(aged) <= len(works)
    if not told:
        return list(lines)
    first = min([*works, *aged])
    none = {at for at in filled if at in works or (at not in aged and (
        at < first or len(aged) == len(works) or counts[texts[at]] > 1 or begins_small(texts[at])))}
    return [line.heading(line.text) if at in none else line for at, line in enumerate(lines)]
