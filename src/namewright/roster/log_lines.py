"""A log or day book without titles (``08:05 Mia Vost arrived``, ``[12:31] Leo Tarn: picked up``) into a line a child.

Each line has a time, a name and what happened. It is a log where nearly all lines are so and most tell of what comes
again or of what happens to children, in words no name has; a chat and a plan of the day tell of other things. Who comes
again is made once. Out of scope: tables with titles (``further_rows``), and a day with its times (``day_plans``).
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator, Sequence, Set

from namewright.message import message
from namewright.named_tuples import NamedTuple
from namewright.names.casing import begins_small
from namewright.names.clusters import is_letter
from namewright.names.particles import PARTICLES
from namewright.patterns import pattern
from namewright.roster.capitals import is_titled
from namewright.roster.event_words import EVENTS, IN_OR_OUT
from namewright.roster.headers import header_roles
from namewright.roster.known import is_given, opens_with_given
from namewright.roster.names_between import names_told
from namewright.roster.names_in_text import names_in
from namewright.roster.pasted import Line
from namewright.roster.prose import Aside
from namewright.roster.shares import share
from namewright.roster.vocabulary import AND, AND_WORDS, NO_CHILD, fold
from namewright.roster.within import is_of_a_day

_DAY = r"[0-9]{1,4}[./-][0-9]{1,2}(?:[./-][0-9]{1,4})?"
_CLOCK = r"[0-9]{1,2}[:.h][0-9]{2}(?:[:.][0-9]{2})?(?:\s?(?:Uhr|h|[AaPp]\.?[Mm]\b\.?))?"
_TIME = pattern(rf"\s*(?:[-•*·]\s*)?[\[(]?(?:{_DAY},?\s+)?{_CLOCK}[\])]?\s*(?:[-–—:,;|]\s*|\t\s*)?(?=[^\W\d_])")
_SIGN = pattern(r"\s*(?:[:;|\t,]|\s[-–—]\s|\s[-–—=]>|[→⇒]|\s{2,}|\s\()\s*")
_CELLS = pattern(r"\s*[;|\t,]\s*|\s{2,}")
_WITH = pattern(rf"(?:^|\s)(?:with|mit|avec|con|com|&|\+|{AND})\s+$")
_MOST_ABOVE, _LONGEST, _MOST_WORDS, _FEW = 3, 300, 4, 2
_NEARLY_ALL, _MOSTLY, _SOME = 0.8, 0.6, 0.4


class _Entry(NamedTuple):
    """A line of a log: whom it names, and what it says of them."""

    line: Line
    names: tuple[str, ...]
    said: str


def from_a_log(lines: Sequence[str]) -> tuple[list[Line], list[Aside]] | None:
    """Return a line for each child of a log, and the lines of who has one already; None where it is no log."""
    filled = [at for at, text in enumerate(lines) if any(map(is_letter, text))]
    first = next((here for here, at in enumerate(filled) if _TIME.match(lines[at])), _MOST_ABOVE + 1)
    if first > _MOST_ABOVE or len(filled) - first < _FEW or any(_are_titles(lines[at]) for at in filled[:first]):
        return None
    entries = {at: entry for at in filled[first:] if (entry := _entry(Line(lines[at], at)))}
    if len(entries) < max(_FEW, _NEARLY_ALL * (len(filled) - first)) or not _is_a_log(list(entries.values())):
        return None
    found: list[Line] = []
    told: list[Aside] = []
    opening = {fold(name.split()[0]) for entry in entries.values() for name in entry.names if " " in name}
    made: set[str] = set()
    for at, text in enumerate(lines):
        above = at < filled[first] and any(map(is_letter, text))
        for each in _made(entries[at], opening, made) if at in entries else (_other(Line(text, at), above=above),):
            if isinstance(each, Aside):
                told.append(each)
            else:
                found.append(each)
    return found, told


def _are_titles(text: str) -> bool:
    cells = _CELLS.split(text)
    return len(cells) > 1 and header_roles(cells) is not None


def _other(line: Line, *, above: bool) -> Line | Aside:
    """Return a line that is no entry: a title over the log, or what somebody has to look at."""
    if above:
        return line.heading(line.text.replace(",", " ·"))
    if not any(map(is_letter, line.text)):
        return line
    return Aside(line, (message("roster.unlike", words=line.text.strip()[:60]),), asked=True)


def _entry(line: Line) -> _Entry | None:
    time = _TIME.match(line.text) if len(line.text) <= _LONGEST else None
    rest = line.text[time.end() :].strip() if time else ""
    if not rest:
        return None
    sign = _SIGN.search(rest)
    name, said = (rest[: sign.start()], rest[sign.end() :]) if sign else ("", "")
    if not name or not is_titled(name) or begins_small(name.split()[-1]):  # Mia da, müde
        name = _opening(rest)
        said = rest[len(name) :]
    said = said.strip(" ()-–—:,;|\t")
    names = names_told(name) or ((name,) if opens_with_given(name) and _is_whole(name) else ())  # Marguerite Parent
    if not names or not any(map(is_letter, said)) or is_of_a_day(name) or any(map(_is_no_child, names)):
        return None
    return _Entry(line, names, said)


def _opening(rest: str) -> str:
    """Return the words with capitals that a text opens with; ``von`` before a grown-up is none of a name."""
    words = rest.split()
    end = 0
    while end < len(words) and (not begins_small(words[end]) or _leads_on(words[end : end + 2])) and not (
            end and fold(words[end].strip(".,:")) in NO_CHILD):
        end += 1
    return " ".join(words[:end]) if rest.startswith(" ".join(words[:end])) else ""


def _leads_on(words: Sequence[str]) -> bool:
    """Say whether a small word stands in a name or between two: ``van Holm``, ``and Leo``; not ``von Oma``."""
    joining = fold(words[0]) in PARTICLES | AND_WORDS
    return len(words) == _FEW and joining and not begins_small(words[1]) and fold(words[1]) not in NO_CHILD


def _is_no_child(name: str) -> bool:
    words = name.split()
    return len(words) > _MOST_WORDS or (fold(words[0].strip(".")) in NO_CHILD and not is_given(words[0]))  # Irma


def _is_whole(name: str) -> bool:
    words = name.split()
    return 1 < len(words) <= _MOST_WORDS and is_titled(name) and all(word.isalpha() for word in words)


def _is_a_log(entries: Sequence[_Entry]) -> bool:
    """Say whether most entries tell what happens to children, or what comes again in small letters."""
    said = [fold(entry.said) for entry in entries]
    small = share(begins_small(entry.said) for entry in entries)
    words = share(map(_tells_an_event, entries))
    if words >= _MOSTLY:
        return True
    counts = Counter(said)
    again = share(counts[text] > 1 for text in said)
    return words >= _SOME and small >= _NEARLY_ALL and again >= _MOSTLY


def _tells_an_event(entry: _Entry) -> bool:
    """Say whether what is said opens with an event, or has one in small letters; ``Mira kommt mit`` names somebody."""
    said = fold(entry.said)
    opening = said.split()[0].strip(",.;!")
    return said.startswith(EVENTS) or (begins_small(entry.said) and opening in IN_OR_OUT) or (
        begins_small(entry.said) and any(word.startswith(EVENTS) for word in said.split()))


def _made(entry: _Entry, opening: Set[str], made: set[str]) -> Iterator[Line | Aside]:
    """Yield what becomes of one entry; a given name alone that is ``opening`` a whole one may be short for that."""
    line, said = entry.line, entry.said
    new = [name for name in entry.names if fold(name) not in made]
    short = [name for name in new if " " not in name and fold(name) in opening]
    for name in new:
        if name not in short:
            made.add(fold(name))
            yield line.without(said, name) if len(entry.names) == 1 else line.part(name).without(said, name)
    beside = [name.typed for name in names_in(said) if _WITH.search(said[: said.find(name.typed)])
              and fold(name.typed) not in made]
    if asked := [*short, *beside]:
        note = message("roster.sentence_names", names=", ".join(asked)[:60])
        yield Aside(line, (note,), asked=True)
    elif not new:
        yield Aside(line, (message("roster.about_children"),))
