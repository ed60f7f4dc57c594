"""Comments that a text program prints below names or at the foot: ``Mia Vost[KB1]``, ``Commented [KB1]: ask grandma``.

A mark in brackets ends a line with a name and opens one comment, alone or behind a word for a comment, which is known
or comes again. Comments are told, and their marks come off; one that may be a name is asked about. A mark that opens
several lines, or stands behind no name, is none of these: ``[A] Mia``, ``[A] Leo`` are groups.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Mapping

from namewright.message import message
from namewright.names.clusters import is_letter
from namewright.patterns import pattern
from namewright.roster.capitals import is_titled
from namewright.roster.known import is_given, opens_with_given
from namewright.roster.pasted import Line
from namewright.roster.prose import Aside
from namewright.roster.vocabulary import fold

_MARK = r"\[(?:[^\W\d_]{1,4}[0-9]{0,3}|[0-9]{1,3})(?:[Rr][0-9]{1,3})?\]"  # [KB1], [a], [3], [MT2R1]: an answer
_BEHIND = pattern(rf"\s?({_MARK})", needs="[")
_LAST = pattern(rf"(?:\s?{_MARK})+\s*$", needs="[")
_BARE = pattern(rf"\s*({_MARK})[\s:]*(\S.*)", needs="[")
_LED = pattern(rf"\s*([^\W\d_]+)\s({_MARK})\s?:\s*(.*)", needs="[")
_WORDS = ("comm", "coment", "komm", "anm", "note", "nota")  # of which each opens a word for a comment
_NOTE = message("roster.comment")
_LONGEST = 2_000


def without_margin_notes(lines: list[Line]) -> tuple[list[Line], list[Aside]]:
    """Return the lines without comments and the marks of these, and the comments."""
    some = {at: line.text for at, line in enumerate(lines) if "[" in line.text and len(line.text) <= _LONGEST}
    if len(some) < 2:  # a mark and its comment
        return lines, []
    notes = _notes(some)
    marked = {at: _BEHIND.findall(match[0]) for at, text in some.items() if at not in notes
              and (match := _LAST.search(text)) and any(map(is_letter, text[: match.start()]))}
    known = {mark for found in marked.values() for mark in found}.intersection(notes.values())
    told = {at for at, mark in notes.items() if mark in known or any(mark.startswith(f"{of[:-1]}R") for of in known)}
    if not told:
        return lines, []
    kept = [line if known.isdisjoint(marked.get(at, ())) else _without_marks(line)
            for at, line in enumerate(lines) if at not in told]
    return kept, [_aside(lines[at]) for at in sorted(told)]


def _notes(some: Mapping[int, str]) -> dict[int, str]:
    """Return the marks that open a line each, by their lines (0-based)."""
    led = {at: match for at, text in some.items() if (match := _LED.fullmatch(text))}
    words = Counter(fold(match[1]) for match in led.values())
    found = {at: match[2] for at, match in led.items() if fold(match[1]).startswith(_WORDS) or (
        words[fold(match[1])] > 1 and not is_given(match[1]))}
    found |= {at: match[1] for at, text in some.items() if (match := _BARE.fullmatch(text))}
    again = Counter(found.values())
    return {at: mark for at, mark in found.items() if again[mark] == 1}


def _without_marks(line: Line) -> Line:
    start = next(match.start() for match in _LAST.finditer(line.text))
    return line.without(line.text[start:].strip(" []"), line.text[:start])


def _aside(line: Line) -> Aside:
    bare = _BARE.fullmatch(line.text)
    named = bare is not None and is_titled(bare[2]) and opens_with_given(bare[2])
    return Aside(line, (message("roster.unlike", words=line.text.strip()[:60]) if named else _NOTE,), asked=named)
