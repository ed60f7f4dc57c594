"""Birthdays as a calendar has them: ``Mia Vost's 5th birthday``, ``Anniversaire de Mia``, ``Mia wird 5``; into names.

Whose name another line opens with is told there, for a list may have its birthdays below the class. A day below a
birthday is nobody, be it in April. Other dates are left to the rules for dates. Out of scope: birthdays in sentences.
"""

from __future__ import annotations

import re
from collections.abc import Sequence

from namewright.message import message
from namewright.named_tuples import NamedTuple
from namewright.names.casing import begins_small
from namewright.names.clusters import is_letter
from namewright.patterns import pattern
from namewright.roster.beside import strip_numbering
from namewright.roster.capitals import is_titled
from namewright.roster.date_lines import is_a_date
from namewright.roster.heading_words import HEADING_WORDS
from namewright.roster.headings import heading_reason
from namewright.roster.known import is_given, is_known, lean, opens_with_given
from namewright.roster.pasted import Line
from namewright.roster.prose import Aside
from namewright.roster.vocabulary import ANY_DAYS, MONTHS, OF_THE, fold
from namewright.store import keeps_names

_DAY = r"birthday|b-?day|geburtstag|anniversaire|anniv|cumplea(?:ñ|n)os|cumple|compleanno|anivers[aá]rio|niver"
_NAME = r"(?P<name>[^\W\d_][^\t:;,()–—|]*?)"
_LEAD = r"(?P<lead>(?:.*\t|[^:]{1,30}:\s+|\d{1,2}[.)]\s+|\W+)?)"
_SIGNS = pattern(rf"{_DAY}|\d", re.I)
_OF = r"(?:(?:of|for|von|de la|de|di|da|do|della|del|dos)\s+|d['’]\s*)"
_FORMS = (
    pattern(rf"(?P<lead>.*?)\b(?:(?:happy|joyeux|feliz|buon|bon)\s+)?(?:{_DAY})\b\.?(?:\s*[:–—-]\s*|\s+){_OF}?{_NAME}"
            r"(?P<rest>\s*(?:[\t:;,()–—|].*|-\s.*)?)", re.I),
    pattern(rf"{_LEAD}{_NAME}\s+(?:turns|wird|cumple|compie|faz|fait ses|fête ses|a)\s+\d{{1,2}}\b"
            r"(?:\s+(?:years?(?: old)?|jahre?|ans|años|anni|anos))?(?P<rest>.*)", re.I),
    pattern(rf"{_LEAD}{_NAME}(?:['’]s?)?\s+(?:\d{{1,2}}(?:st|nd|rd|th|\.)\s+)?(?:{_DAY})\b(?P<rest>.*)", re.I),
    pattern(rf"{_LEAD}{_NAME}\s+hat\s+geburtstag\b(?P<rest>.*)", re.I),
)
_OF_ONE = pattern(rf"['’]|\b(?:{_DAY})\b\.?\s+{_OF}", re.I)
_ALL_DAY = ("all day|ganztägig|(?:den )?ganze[nr] tag|(?:toute )?la journée(?: entière)?|journée entière|todo el día|"
            "(?:per )?tutto il giorno|tutta la giornata|(?:o )?dia (?:todo|inteiro)")
_WHOLE_DAY = pattern(rf"^\s*(?:{_ALL_DAY})(?:\t|\s*$)|(?:(?<=\t)|\s*,\s*)(?:{_ALL_DAY})(?:\t|\s*$)", re.I)
_SAID = message("roster.said_below")
_FEW = 2  # birthdays that make a calendar, if they are as many as other lines
_MOST_WORDS, _MOST_OF_A_DAY = 4, 6
_MOSTLY = 0.6
_IN_FIGURES = pattern(r"(?:\d{1,2}|20\d\d)(?:st|nd|rd|th|er|[.ºª°])?|\d{1,4}[./-]\d{1,2}(?:[./-]\d{1,4})?[./]?")
_LONGEST = 200  # characters: a longer line is a text


class _Birthday(NamedTuple):
    """What stands before the name, the name, what stands behind it, and the words that tell the birthday."""

    lead: str
    name: str
    rest: str
    said: str


def without_days_below(lines: Sequence[Line]) -> tuple[list[Line], list[Aside]]:
    """Return the lines that may be children, and the days below birthdays, where most have one: ``April 3``."""
    told = _all_told(lines)
    if len(told) < _FEW:
        return list(lines), []
    days = {at for at, line in enumerate(lines) if at - 1 in told and at not in told and _is_a_day(line.text)}
    first = next((at for at, line in enumerate(lines) if at in told or _is_a_day(line.text)), -1)
    if first not in told or len(days) < _MOSTLY * len(told):
        return list(lines), []
    days |= {at for at, line in enumerate(lines) if (at - 1 in days or at - 1 in told) and _is_all_day(line.text)}
    return ([line for at, line in enumerate(lines) if at not in days],
            [Aside(lines[at], (_SAID,)) for at in sorted(days)])


def _is_a_day(text: str) -> bool:
    """Say whether a line has a number, a month or day and small words only: elsewhere ``April 3`` may be a child."""
    words = [word.strip(",.()") for word in _WHOLE_DAY.sub("", text).split()]
    numbers = [word for word in words if _IN_FIGURES.fullmatch(word)]
    names = [word for word in words if fold(word) in MONTHS or fold(word) in ANY_DAYS]
    rest = (word for word in words if word not in numbers and word not in names)
    known = bool(numbers and names) and len(words) <= _MOST_OF_A_DAY and all(fold(word) in OF_THE for word in rest)
    return known or is_a_date(text)


def _is_all_day(text: str) -> bool:
    return bool(text.strip()) and not _WHOLE_DAY.sub("", text).strip()


def from_birthdays(lines: Sequence[Line]) -> list[Line]:
    """Return the lines with the names of those whose birthday it is, or as they are where none is told."""
    found = _all_told(lines)
    if not found:
        return list(lines)
    events = [at for at, line in enumerate(lines) if at not in found and any(map(is_letter, line.text))
              and not is_a_date(line.text) and not opens_with_given(strip_numbering(line.text))]
    calendar = frozenset(events if len(found) >= max(_FEW, len(events)) else ())
    others = {word for at, line in enumerate(lines) if at not in found and is_given(word := _first(line.text))}
    again = {at for at, told in found.items() if _first(told.name) in others}
    return [line.heading(line.text) if at in calendar or at in again else _named(line, found.get(at))
            for at, line in enumerate(lines)]


def _all_told(lines: Sequence[Line]) -> dict[int, _Birthday]:
    """Return whose birthday the lines (0-based) tell; beside others Jan has one, ``Cumpleaños de Jan``."""
    found = {at: told for at, line in enumerate(lines) if len(line.text) <= _LONGEST and (told := _told(line.text))}
    sure = {at for at in found if not heading_reason(lines[at].text)}
    if len(sure) >= _FEW:
        sure |= {at for at, told in found.items() if is_given(told.name.split()[0]) and (
            " " in told.name or _OF_ONE.search(lines[at].text))}
    return {at: told for at, told in found.items() if at in sure}


def _named(line: Line, told: _Birthday | None) -> Line:
    if told is None:
        return line._replace(text=_WHOLE_DAY.sub("", line.text))
    return line.without(told.said, " ".join(filter(None, (told.lead.rstrip(" "), told.name))) + told.rest)


@keeps_names(1024)
def _told(text: str) -> _Birthday | None:
    """Return whose birthday a line tells; None where nobody's."""
    text = _WHOLE_DAY.sub("", text).strip(" ")
    if not _SIGNS.search(text) or text.endswith((".", "!", "?")):
        return None
    for form in _FORMS:
        if match := form.fullmatch(text):
            before, name = _without_a_date(match["name"].strip())
            if _may_be_a_name(name):
                ahead = text[match.end("lead") : match.start("name")]
                said = ahead or text[match.end("name") : match.start("rest")]
                bare = name if ahead else _without_ending(name)
                return _Birthday(f"{match['lead']}{before}", bare, match["rest"].rstrip(), said)
    return None


def _without_a_date(name: str) -> tuple[str, str]:
    """Return the month and day that open a name's place, and the name: ``January 12  Mia``."""
    words = name.split()
    at = next((at for at, word in enumerate(words) if not _is_of_a_date(word)), len(words))
    at -= at == len(words) > 0 and is_given(words[-1])  # Sam is a Saturday, too
    return " ".join(words[:at]), " ".join(words[at:])


def _is_of_a_date(word: str) -> bool:
    folded = fold(word.strip(".,"))
    return folded.isdigit() or folded in ANY_DAYS or (folded in MONTHS and not is_given(word))


def _may_be_a_name(name: str) -> bool:
    words = name.split()
    titled = 0 < len(words) <= _MOST_WORDS and is_titled(name) and not begins_small(words[0])
    return titled and not any(fold(word) in HEADING_WORDS and not is_known(word) for word in words)


def _without_ending(name: str) -> str:
    """Return a name without the s of ``Mias Geburtstag`` and the sign of ``James’``."""
    bare = re.sub(r"['’]s?$", "", name)
    return bare[:-1] if bare.endswith("s") and lean(bare[:-1]) > 0 >= lean(bare) else bare


def _first(text: str) -> str:
    return fold(strip_numbering(text).replace(",", " ").partition(" ")[0])
