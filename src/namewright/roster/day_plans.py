"""A day with its times (``9:00 Reading with Mia, Leo``): what is no child told, who is named there made or asked about.

It is a day and no list of children with hours where two lines at least tell what is done, and more of them than open
with a given name. This comes before columns are looked for: a day’s commas part none. Out of scope: days of a week
(``dated``), and a time in a list whose other lines have none (``prose``).
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence

from namewright.message import message
from namewright.names.casing import begins_small
from namewright.names.clusters import is_letter
from namewright.names.particles import PARTICLES
from namewright.patterns import pattern
from namewright.roster.beside import strip_numbering
from namewright.roster.headings import heading_reason
from namewright.roster.known import is_given, is_known, opens_with_given
from namewright.roster.names_in_text import BRACKETS, Children, has_capital, names_in
from namewright.roster.pasted import COLUMN_SIGNS, Line
from namewright.roster.prose import Aside, is_sentence
from namewright.roster.vocabulary import AND_WORDS, fold
from namewright.roster.within import Within, behind_a_sign, behind_a_word, is_of_a_day, leads_to_names

_HOUR = r"\d{1,2}(?:[:.h]\d\d(?!\d)(?:\s?(?:Uhr|h|[AaPp]\.?[Mm]\b\.?))?|\s?(?:Uhr|h|[AaPp]\.?[Mm]\b\.?)(?!\w))"
_TIME = pattern(rf"\s*(?:[-•*·]\s*)?(?:(?:um|ab|at|à|à partir de|às|a las|alle|ore)\s+)?{_HOUR}"
                rf"(?:\s?(?:[-–]|bis|to|à|a|até)\s?{_HOUR})?[\s:–—-]+(?=\S)")
_SIGN = pattern(r":\s|\s[-–—]\s|[→⇒]|[-=]>")
_LEAST = 2  # lines that tell what is done
_MOST_TITLES, _LONGEST_NAME = 2, 3


def from_a_day_plan(lines: Sequence[Line]) -> tuple[list[Line], list[Aside]]:
    """Return the lines that may be children or stand over some, and what is told of the others of a day with times."""
    timed = {at: rest for at, line in enumerate(lines) if (rest := _behind_a_time(line.text))}
    if _may_be_a_day(lines, timed):
        return [line for at, line in enumerate(lines) if at not in timed], [_perhaps(lines[at]) for at in timed]
    if not _is_a_day(list(timed.values())):
        return list(lines), []
    day, titles = _Day(lines, timed), _titles(lines, timed)
    found: list[Line] = []
    told: list[Aside] = []
    for at, line in enumerate(lines):
        for each in day.read(line, timed[at]) if at in timed else (_perhaps(line) if at in titles else line,):
            if isinstance(each, Aside):
                told.append(each)
            else:
                found.append(each)
    return found, told


def _may_be_a_day(lines: Sequence[Line], timed: Mapping[int, str]) -> bool:
    """Say whether each line is a time and one word that is on no list, so that nothing tells children from lessons."""
    filled = sum(any(map(is_letter, line.text)) for line in lines)
    return len(timed) == filled > _LEAST and all(
        " " not in rest and rest.isalpha() and not is_known(rest) for rest in timed.values())


def _titles(lines: Sequence[Line], timed: Mapping[int, str]) -> list[int]:
    """Return the lines over a day that has no others without a time: they open with no known name."""
    others = [at for at, line in enumerate(lines) if at not in timed and any(map(is_letter, line.text))]
    above = all(at < min(timed) for at in others) and len(others) <= _MOST_TITLES
    named = any(opens_with_given(strip_numbering(lines[at].text)) for at in others)
    return [at for at in others if not heading_reason(lines[at].text)] if above and not named else []


def _perhaps(line: Line) -> Aside:
    return Aside(line, (message("roster.unlike", words=line.text.strip()[:60]),), asked=True)


def _behind_a_time(text: str) -> str:
    """Return what stands behind the time that a line opens with, empty where there is none or the rest has columns."""
    time = _TIME.match(text)
    rest = text[time.end() :].strip() if time else ""
    return rest if any(map(is_letter, rest)) and not any(sign in rest for sign in COLUMN_SIGNS) else ""


def _named(rest: str) -> Within | None:
    bare = rest.rstrip(" :")
    return behind_a_word(bare) or behind_a_sign(bare)


def _is_a_day(rests: Sequence[str]) -> bool:
    done, children = sum(map(_tells_what_is_done, rests)), sum(map(_opens_with_a_child, rests))
    if done >= _LEAST:
        return done > children and sum(map(_is_a_whole_name, rests)) <= _LEAST * done  # a break among talks is no day
    named = [found is not None and (found.led or (len(found.parts) > 1 and not opens_with_given(found.before)))
             for found in map(_named, rests)]
    return sum(named) > children and (done > 0 or any(_SIGN.search(rest) is None for rest in rests))


def _is_a_whole_name(rest: str) -> bool:
    """Say whether a line has two words or three that are written as names, and none of a day."""
    bare = BRACKETS.sub(" ", rest)
    words = bare.replace(",", " ").split()
    return 1 < len(words) <= _LONGEST_NAME and all(map(has_capital, words)) and not is_of_a_day(bare.strip())


def _tells_what_is_done(rest: str) -> bool:
    if is_of_a_day(rest):
        return True
    named = _named(rest)
    return named is not None and (named.led or leads_to_names(named.before))


def _opens_with_a_child(rest: str) -> bool:
    return is_given(rest.split()[0].strip(",;:.!")) and not _tells_what_is_done(rest)


class _Day:
    """Reads the lines of a day one after another: who was made of one is not made of the next again."""

    def __init__(self, lines: Sequence[Line], timed: Mapping[int, str]) -> None:
        own = [(at, line.text) for at, line in enumerate(lines) if at not in timed and any(map(is_letter, line.text))
               and not heading_reason(line.text) and not is_sentence(strip_numbering(line.text))]
        whole = [part for rest in timed.values() if (named := _named(rest)) for part in named.parts if " " in part]
        self._own, self._whole = Children(own), Children(list(enumerate(whole)))
        self._made: set[str] = set()

    def read(self, line: Line, rest: str) -> Iterator[Line | Aside]:
        """Yield what becomes of one line."""
        named = _named(rest)
        if named and not is_of_a_day(rest) and not _opens_with_a_child(rest):
            yield from self._of_names(line, named)
        elif is_of_a_day(rest):
            yield Aside(line, (message("roster.sentence"),))
        elif not is_given(rest.split()[0].strip(",;:.!")) or " " not in rest:
            yield _perhaps(line)
        else:
            yield self._of_a_child(line, rest)

    def _of_a_child(self, line: Line, rest: str) -> Line | Aside:
        """Return what becomes of a line that opens with a given name; what the child does is no family name."""
        names = [name for name in names_in(rest) if not is_of_a_day(name.typed)]
        missing = [name.typed for name in names if not self._own.hold(name.words) and not self._is_made(name.typed)]
        small = any(begins_small(word) and word not in PARTICLES | AND_WORDS for word in rest.split())
        if names and not missing:
            return Aside(line, (message("roster.about_children"),))
        if small or len(missing) < len(names):
            return Aside(line, (message("roster.sentence_names", names=", ".join(missing)[:60]),), asked=True)
        self._made |= set(map(fold, missing))
        return line._replace(text=rest, notes=(*line.notes, message("roster.number")))

    def _of_names(self, line: Line, named: Within) -> Iterator[Line | Aside]:
        listed = [part for part in named.parts if self._own.hold(_words(part))]
        known = [part for part in named.parts if part in listed or self._is_made(part)]
        missing = [part for part in named.parts if part not in known]
        sure = named.are_known() and (named.led or leads_to_names(named.before))
        if not missing:
            yield Aside(line, (message("roster.about_children"),))
        elif listed or not sure:
            yield Aside(line, (message("roster.sentence_names", names=", ".join(missing)[:60]),), asked=True)
        else:
            self._made |= set(map(fold, missing))
            before = line.text[: line.text.index(named.before) + len(named.before)]
            yield line.heading(f"{before} {', '.join(known)}")
            yield from map(line.part, missing)

    def _is_made(self, part: str) -> bool:
        """Say whether a name was made of a line above, or is short for one that stands whole on another line."""
        return fold(part) in self._made or (" " not in part and self._whole.hold(_words(part)))


def _words(name: str) -> list[str]:
    return [word.strip(".:;!") for word in fold(name).replace(",", " ").split()]
