"""Messages copied from a screen, who writes and when on lines above each: ``Jo Berg``, ``8:13``, ``Our son is Leo``.

They are known by a message that asks families for the names of children: without it a name over a time may be a child
and when it comes. Who writes and when is told, and each message is as one that a chat exported (``chats``).
"""

from __future__ import annotations

import re
from collections.abc import Sequence

from namewright.names.clusters import is_letter
from namewright.patterns import pattern
from namewright.roster.capitals import is_titled
from namewright.roster.chat_answers import asks_for_names
from namewright.roster.heading_words import TODAY
from namewright.roster.pasted import CHAT, Line
from namewright.roster.prose import Aside
from namewright.roster.vocabulary import ANY_DAYS, fold, word_set

_CLOCK = r"[0-9]{1,2}[:.h][0-9]{2}(?:[:.][0-9]{2})?(?:\s?Uhr|\s?[AaPp]\.?\s?[Mm]\.?)?"
_DAY = r"(?:[0-9]{1,4}[./-][0-9]{1,2}(?:[./-][0-9]{1,4})?|(?P<day>[^\W\d_]{2,10})\.?)"
_TIME = pattern(rf"\s*[\[(]?(?:{_DAY},?\s+(?:(?:at|um|à|a|às|alle|las)\s+)*)?{_CLOCK}[\])]?\s*")
_WITH_TIME = pattern(rf"\s*([^\W\d_][^\d:;,|\t]{{1,39}}?)(?:\s*[,·•|–—-]\s*|(?<!\s)\s+)"
                     rf"[\[(]?(?:{_DAY},?\s+)?{_CLOCK}[\])]?\s*")
_DAYS = ANY_DAYS | TODAY | word_set("yesterday, gestern, hier, ayer, ieri, ontem")
_FEWEST, _MOST_WORDS, _MOST_ABOVE, _LONGEST = 3, 5, 2, 2_000


def from_blocks(lines: list[Line]) -> tuple[list[Line], list[Aside]]:
    """Return the messages, and who wrote them and when; or the lines as they are where they are no such chat."""
    filled = [at for at, line in enumerate(lines) if line.text.strip()] if len(lines) <= _LONGEST else []
    heads = _heads([lines[at].text.strip() for at in filled])
    if len(heads) < _FEWEST or min(heads) > _MOST_ABOVE:
        return lines, []
    above = {filled[place] for start, size in heads.items() for place in range(start, start + size)}
    said = [at for place, at in enumerate(filled) if place > min(heads) and at not in above]
    empty = sum(start + size in heads or start + size == len(filled) for start, size in heads.items())
    if empty or not any(asks_for_names(lines[at].text) for at in said):
        return lines, []
    found = [line._replace(notes=(*line.notes, CHAT)) if at in said else line
             for at, line in enumerate(lines) if at not in above]
    return found, [Aside(lines[at], (CHAT,)) for at in sorted(above)]


def _heads(texts: Sequence[str]) -> dict[int, int]:
    """Return where a line or two tell who writes and when, and how many they are."""
    found: dict[int, int] = {}
    for at, text in enumerate(texts):
        if at and at - 1 not in found and _is_when(_TIME.fullmatch(text)) and _may_write(texts[at - 1]):
            found[at - 1] = 2
        elif (match := _WITH_TIME.fullmatch(text)) and _may_write(match[1]):
            found[at] = 1
    return found


def _is_when(match: re.Match[str] | None) -> bool:
    """Say whether a line is a time and no more, or a day before it."""
    return match is not None and (not match["day"] or fold(match["day"]) in _DAYS)


def _may_write(text: str) -> bool:
    """Say whether a line may be who writes: a few words with capitals, or one that a family chose."""
    words = text.split()
    plain = 0 < len(words) <= _MOST_WORDS and any(map(is_letter, text)) and text[-1] not in "?!:"
    return plain and (is_titled(text) or len(words) <= _FEWEST)
