"""Comments of school reports, each with the child’s name: ``Vost, Mia: Mia enjoys stories.`` becomes ``Vost, Mia``.

A comment names its child again. It stands behind a colon or a dash, and comes off; or on the line below the name, and
is told to be about the child, unless it names somebody else (``prose`` reads it then). ``### Mia Vost`` is a name.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence, Set
from itertools import pairwise

from namewright.message import message
from namewright.names.casing import begins_small
from namewright.names.clusters import is_letter
from namewright.patterns import pattern
from namewright.roster.known import is_given
from namewright.roster.pasted import Line
from namewright.roster.prose import Aside

_MARK = pattern(r"\s*(?:#{1,6}|[-–*•])\s+")
_COMMENT = pattern(r"([^:;\t|]{2,60}?)\s?(?::\s+|\s[–—-]\s)([^\t|]*)", needs=":–—-")
_WORDS = pattern(r"[^\W\d_]+(?:['’-][^\W\d_]+)*")
_SENTENCES = pattern(r"[.!?]+\s+")
_SAID = message("roster.said_below")
_FEWEST, _LONGEST = 3, 2_000
_MOST_WORDS, _SMALL = 5, 2
_MOSTLY = 0.8


def from_reports(lines: list[Line], typed: Sequence[str]) -> tuple[list[Line], list[Aside]]:
    """Return the names without their comments, and the comments below names, where nearly all lines are of these.

    ``typed`` are the lines as they were pasted: what looks like the sender in a chat may be a name here.
    """
    opening = [word[0] for word in "\n".join(typed).split()]
    if len(lines) != len(typed) or sum(map(str.islower, opening)) < _SMALL * _FEWEST:  # most lists end here
        return lines, []
    filled = {at: _MARK.sub("", text, count=1) if _MARK.match(text) else text.strip()
              for at, text in enumerate(typed) if any(map(is_letter, text)) and len(text) <= _LONGEST}
    named = _named(filled)
    if len(named) < _FEWEST:
        return lines, []
    heads = {at for at, name in named.items() if name == filled[at]}
    told = sum(_is_text(text) and at not in named for at, text in filled.items()) if heads else 0
    if len(named) + told < _MOSTLY * len(filled) - 1:
        return lines, []
    words = {word for name in named.values() for word in _WORDS.findall(name)}
    below = {after for at, after in pairwise(filled) if at in heads and not _names_another(filled[after], words)}
    found = [line if at not in named else line._replace(text=named[at]) if at in heads else
             line._replace(notes=()).without(filled[at][len(named[at]) :], named[at])
             for at, line in enumerate(lines) if at not in below]
    return found, [Aside(lines[at], (_SAID,)) for at in sorted(below)]


def _names_another(text: str, words: Set[str]) -> bool:
    """Say whether a known name that no child of the list has stands within a sentence."""
    found = [word for sentence in _SENTENCES.split(text) for word in _WORDS.findall(sentence)[1:]]
    return any(not begins_small(word) and word not in words and is_given(word) for word in found)


def _named(filled: Mapping[int, str]) -> dict[int, str]:
    """Return the names by their lines (0-based), each before a comment or over one."""
    found = {}
    for at, text in filled.items():
        comment = _COMMENT.fullmatch(text)
        if comment and _is_name(comment[1]) and _tells_of(comment[1], comment[2]):
            found[at] = comment[1].strip()
    over = {at: below for (at, text), (below, told) in pairwise(filled.items())
            if at not in found and _is_name(text) and _tells_of(text, told) and not _is_of_another(text, told)}
    if over.keys().isdisjoint(over.values()):  # where they hang together like a chain, each line is one child’s own
        found |= {at: filled[at] for at in over}
    return found


def _is_of_another(name: str, text: str) -> bool:
    """Say whether another whole name stands before a sign: ``Ida Tarn – sister of Mia``, below ``Mia Vost``."""
    comment = _COMMENT.fullmatch(text)
    words = _WORDS.findall(comment[1]) if comment and _is_name(comment[1]) else []
    return len(words) > 1 and not any(map(begins_small, words)) and frozenset(words).isdisjoint(_WORDS.findall(name))


def _is_name(text: str) -> bool:
    words = text.replace(",", " ").split()
    return 0 < len(words) <= _MOST_WORDS and not begins_small(words[-1]) and text[-1] not in ".!?:" and not any(
        char.isdigit() or char in ":>→⇒=" for char in text)  # Isaiah D.: Bears > Owls


def _is_text(text: str) -> bool:
    """Say whether words are a sentence: some are small."""
    return sum(map(begins_small, text.split())) >= _SMALL


def _tells_of(name: str, text: str) -> bool:
    """Say whether a sentence or more has a word of the name again."""
    words = [word for word in _WORDS.findall(name) if len(word) > 1 and not begins_small(word)]
    said = frozenset(_WORDS.findall(text))
    return _is_text(text) and any(word in said for word in words)
