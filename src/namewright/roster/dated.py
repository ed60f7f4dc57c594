"""Lines that open with a day, a date or a time (``Mon 3/11 Mira``, ``7:05 Mill Lane: Mira Vost``): into the names.

That is told by most lines together, for May and Sam are children too. Behind a time may stand a place and a colon. A
day behind which no name stands (``no school``) is a heading, and so is what stands above the first day.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from itertools import pairwise

from namewright.message import message
from namewright.named_tuples import NamedTuple
from namewright.names.casing import begins_small, opens_as_a_name
from namewright.names.clusters import is_letter
from namewright.names.particles import PARTICLES
from namewright.patterns import pattern
from namewright.roster.beside import strip_numbering
from namewright.roster.columns import split_cells
from namewright.roster.date_lines import IN_FIGURES, is_a_date
from namewright.roster.headers import header_roles
from namewright.roster.heading_words import ARTICLES, NO_SCHOOL
from namewright.roster.known import is_given, opens_with_given
from namewright.roster.labelled import Labelled, labelled
from namewright.roster.pasted import CHAT, COLUMN_SIGNS, Line, cells_run_on
from namewright.roster.shares import given_share, share
from namewright.roster.turns import helpers, without_helper
from namewright.roster.vocabulary import (
    ANY_DAYS,
    DAY_NUMBERS,
    HOURS,
    MONTHS,
    OF_THE,
    SHORT_DAY_NUMBERS,
    STREETS,
    fold,
)

_COUNTED = pattern(r"\d{1,2}(?:st|nd|rd|th|er|[.ºª°])?")
_AGE = pattern(r"^\(\d+\)", needs="()")  # Domenica (5)
_NUMBER = pattern(r"\(?(\d{1,3})[.):]?")
_TIME = pattern(r"\d{1,2}(?:[:.h]\d\d|h)(?:[-–]\d{1,2}(?:[:.h]\d\d|h)?)?h?(?:[ap]m)?")
_BEFORE_A_TIME = pattern(
    r"^(?:um|ab|ca\.?|gegen|at|from|à|dès|vers|à partir de|a las|a partir de las|desde las|sobre las|às|a partir das|"
    r"alle|dalle|ore|alle ore|dalle ore)\s+(?=\d{1,2}(?:[:.h]\d\d|h\b))", re.IGNORECASE)
_DAY_BEFORE_A_DATE = pattern(
    r"^(?:ma|di|wo|do|vr|za|zo|maandag|dinsdag|woensdag|donderdag|vrijdag|zaterdag|zondag)[.,]?\s+"
    r"(?=\d{1,2}[./-]\d{1,2}|\d{4}-\d{1,2}-\d)")
"""Dutch, in small letters; elsewhere Ma, Wo and Do are names."""
_SPOKEN = pattern(
    r"(?:half past|quarter (?:past|to)|halb|viertel (?:nach|vor)|dreiviertel)\s+\d{1,2}(?=\s)|"
    r"(?:a las |às )?\d{1,2}\s+"
    r"(?:y media|y cuarto|et demie|et quart|e mezzo|e mezza|e un quarto|e meia|e um quarto)(?=\s)", re.IGNORECASE)
"""A time in words, ``half past 3``, ``4 y media``."""
_DAY_OF = r"(\d{1,2}(?:st|nd|rd|th|er|[.ºª°])?)\s+(?:(?:de|di|of)\s+)?([^\W\d_]+)\.?"
_BEFORE = pattern(rf"\s*{_DAY_OF}\s+([^\W\d_]+)\s*")
"""``5 juin Mai``."""
_BEHIND = pattern(rf"\s*([^\W\d_]+),?\s+{_DAY_OF}\s*")
"""``Mai 5 juin``."""
_HOURS = HOURS | {"h", "am", "pm", "ore"}
_AT = frozenset(("an", "am", "auf", "bei", "beim", "im", "in", "vor", "zum", "at", "by", "en", "al", "chez", "au", "na",
                 "no"))
_SMALL = OF_THE | {"le", "el", "il", "am", "on", "dia"}
_MOST_WORDS = 7  # of a date: Monday, the 3rd of November 2025
_EDGES = ".,:()"
_FEW, _ENOUGH = 2, 4
_WEEK, _STEPS = 7, (0, 1, 2, 3)
_HALF, _MOSTLY, _NEARLY_ALL, _HARDLY = 0.5, 0.6, 0.8, 0.3
_LONGEST = 200
_MOST_ABOVE = 4


class _Opened(NamedTuple):
    """What a line opens with: a day, a number and a month, a date that is sure, a time; if a sign ends it; the rest."""

    day: str
    number: str
    month: str
    dated: bool
    timed: bool
    signed: bool
    rest: str


def from_dated_lines(lines: Sequence[Line]) -> list[Line]:
    """Return what stands behind the dates, or the lines as they are where most do not open with one."""
    if cells_run_on(line.text for line in lines):
        return list(lines)
    filled = [at for at, line in enumerate(lines) if any(map(is_letter, line.text))]
    if behind := _before_dates(lines, filled):
        return behind
    found = _all_opened(lines, filled, with_days=True)
    if share(bool(one.day) for one in found.values()) < _HALF:  # then a day behind a date is a name: 10/01 Sam Vost
        found = _all_opened(lines, filled, with_days=False)
    if not found or _count_on([lines[at].text for at in filled]) or not _are_dated([found.get(at) for at in filled]):
        return list(lines)
    return list(_behind(lines, found))


def _count_on(texts: Sequence[str]) -> bool:
    """Say whether the numbers in front only count the lines: ``3. Marco Tarn`` and ``4. Sam Vost`` are no dates."""
    words = [text.lstrip("-•*· ").split(maxsplit=2) for text in texts]
    found = [(int(match[1]), behind[0]) for first, *behind in words
             if behind and (match := _NUMBER.fullmatch(first))]
    numbers = [number for number, _ in found]
    return (len(found) >= _NEARLY_ALL * len(texts) and any(not _kind(behind) for _, behind in found)
            and all(two == one + 1 for one, two in pairwise(numbers)))


def _all_opened(lines: Sequence[Line], filled: Sequence[int], *, with_days: bool) -> dict[int, _Opened]:
    """Return what the lines open with that have something behind it."""
    told = {at for at in filled if CHAT in lines[at].notes and lines[at].text.endswith(":")}  # a message about nobody
    return {at: opened for at in filled if at not in told
            and (_BEFORE.fullmatch(lines[at].text) or not is_a_date(lines[at].text))
            and (opened := _opened(lines[at].text, with_days=with_days)) and any(map(is_letter, opened.rest))}


def _opened(text: str, *, with_days: bool) -> _Opened | None:
    """Return what a line opens with, None where that is no date, day or time."""
    if len(text) > _LONGEST or any(sign in text for sign in COLUMN_SIGNS):
        return None
    bare = _BEFORE_A_TIME.sub("", _DAY_BEFORE_A_DATE.sub("", text.lstrip("-•*· "), count=1), count=1)
    if spoken := _SPOKEN.match(bare):
        rest = bare[spoken.end() :].strip().lstrip(":–—- ")
        return _Opened("", "", "", dated=False, timed=True, signed=False, rest=rest)
    words = bare.split()
    first = fold(words[0]).strip(_EDGES) if words else ""
    if not first or not (first[0].isdigit() or first in ANY_DAYS or first in MONTHS):
        return None
    seen: list[str] = []
    said: dict[str, str] = {}
    for word in words[:_MOST_WORDS]:
        kind = _kind(word)
        if kind == "count" and _AGE.search(word):
            break
        again = kind in seen and kind in {"day", "date", "time"}
        named = kind == "month" and not {"date", "time", "month"}.isdisjoint(seen)  # 1/24 Jan, 8:30 Marco, 3 May April
        if not kind or again or named or (kind == "day" and not with_days):
            break
        seen.append(kind)
        said.setdefault(kind, word.strip(_EDGES) if kind == "month" else fold(word).strip(_EDGES))
        if word.endswith(":") or kind == "sign":
            break
    while seen and seen[-1] == "small":
        seen.pop()
    dated = "date" in seen or ("count" in seen and not {"month", "day"}.isdisjoint(seen))
    if not (dated or "time" in seen or seen in (["day"], ["day", "sign"])):
        return None
    signed = seen[-1] == "sign" or words[len(seen) - 1].endswith(":")
    rest = "".join(bare.split(maxsplit=len(seen))[len(seen) :]).strip().lstrip(":–—- ")  # two spaces may part names
    day, number, month = (said.get(kind, "") for kind in ("day", "count", "month"))
    return _Opened(day, number, month, dated, "time" in seen, signed, rest)


def _kind(word: str) -> str:
    """Return which part of a date or time a word is, empty where it is none."""
    bare = word.strip("(),:")
    folded = fold(bare).strip(_EDGES)
    for kind, fits in (("sign", not bare.strip(":-–—")), ("date", IN_FIGURES.fullmatch(bare)),
                       ("time", _TIME.fullmatch(bare.lower())), ("count", _COUNTED.fullmatch(bare)),
                       ("count", len(bare) == 4 and bare.startswith("20") and bare.isdigit()),
                       ("day", folded in ANY_DAYS), ("month", folded in MONTHS),
                       ("hour", folded in _HOURS), ("small", bare in _SMALL)):
        if fits:
            return kind
    return ""


def _are_dated(opened: Sequence[_Opened | None]) -> bool:
    """Say whether most lines open with a date or a time, or nearly all with a day, in the order of the week."""
    there = [one for one in opened if one]
    sure = [one for one in there if one.dated or one.timed]
    if len(sure) >= max(_HALF * len(opened), min(_FEW, len(opened))):
        told = len(sure) > _FEW or all(
            one.month and (begins_small(one.month) or not is_given(one.month)) for one in sure)
        return any(one.timed or one.day or one.signed for one in sure) or (told and not _are_numbers(sure))
    if sure or any("," in one.rest for one in there) or not _follow([one.day for one in there]):
        return False
    if all(one.signed for one in there):
        return len(there) >= max(_FEW, _MOSTLY * len(opened))
    return len(there) >= max(_ENOUGH, _NEARLY_ALL * len(opened))


def _are_numbers(dated: Sequence[_Opened]) -> bool:
    """Say whether what may be the days of months are the numbers of children called April and June."""
    counts = [one.number.rstrip(".") for one in dated]
    return counts == [str(at) for at in range(1, len(counts) + 1)] and len({one.month for one in dated}) > _FEW


def _follow(days: Sequence[str]) -> bool:
    """Say whether nearly all days come in the order of the week, over days without school too."""
    numbers = [DAY_NUMBERS.get(day, SHORT_DAY_NUMBERS.get(day, 0)) for day in days]
    steps = [(two - one) % _WEEK in _STEPS for one, two in pairwise(numbers)]
    return len(set(numbers)) > 1 and share(steps) >= _NEARLY_ALL


def _behind(lines: Sequence[Line], found: dict[int, _Opened]) -> Iterator[Line]:
    placed = _are_placed([one.rest for one in found.values()])
    beside = helpers([one.rest for one in found.values()])
    first = next(iter(found))
    above = sum(bool(line.text.strip()) for line in lines[:first]) <= _MOST_ABOVE
    titled = share(opens_as_a_name(one.rest) for one in found.values()) >= _NEARLY_ALL
    loud = share(one.rest.isupper() for one in found.values()) >= _HALF
    for at, line in enumerate(lines):
        opened = found.get(at)
        if opened is None:
            under = any(map(is_letter, lines[at - 1].text)) if at else False
            title = at < first and above and any(map(is_letter, line.text)) and not _may_be_a_child(line.text, under)
            told = CHAT in line.notes and opens_with_given(line.text)  # a message: Mira is coming
            yield line.heading(_in_one_cell(line.text)) if title and not told else line
        elif _names_nobody(opened.rest, titled=titled, loud=loud):
            yield line.heading(line.text)
        elif placed and (place := _placed(opened.rest)):
            yield line.without(line.text[: line.text.rindex(place.rest)], place.rest)
        else:
            note = message("roster.date" if opened.dated or opened.day else "roster.number")
            dated = line._replace(text=_as_a_name(opened.rest), notes=(*line.notes, note))
            helper = beside.get(opened.rest)
            yield dated.without(helper, without_helper(opened.rest, helper)) if helper else dated


def _as_a_name(text: str) -> str:
    """Write a month behind a date as the name that it is there."""
    return f"Name: {text}" if fold(text) in MONTHS else text


def _before_dates(lines: Sequence[Line], filled: Sequence[int]) -> list[Line]:
    """Return the lines with a month before a date as a name, where dates stand behind names; none where they do not.

    ``Mai 5 juin`` among ``Léa 3 mars``: alone it may be Juin, of the fifth of May.
    """
    ended = {at: match for at in filled if (match := _BEHIND.fullmatch(lines[at].text)) and fold(match[3]) in MONTHS}
    named = {at: match for at, match in ended.items() if fold(match[1]) in MONTHS}
    if not named or len(ended) - len(named) < max(1, _HALF * (len(filled) - len(named))):
        return []
    note = message("roster.date")
    return [line._replace(text=_as_a_name(named[at][1]), notes=(*line.notes, note)) if at in named else line
            for at, line in enumerate(lines)]


def _in_one_cell(text: str) -> str:
    """Write a title so that its commas part no cells below which there are some; titles of columns stay these."""
    return text if header_roles(split_cells(text, ",") or ()) else text.replace(",", " ·")


def _may_be_a_child(text: str, under: bool) -> bool:
    """Say whether a line that stands over others may be a child: few words with capitals, a given name among them.

    In a script that knows no capitals, one that stands ``under`` another may be one, too.
    """
    words = strip_numbering(text).replace(",", " ").split()
    plain = under and all(word[0].lower() == word[0].upper() for word in words)
    return (0 < len(words) < _ENOUGH and (plain or any(map(is_given, words))) and not any(map(str.isdigit, text))
            and all(not begins_small(word) or word in PARTICLES for word in words))


def _names_nobody(rest: str, *, titled: bool, loud: bool) -> bool:
    """Say whether words behind a date are about the day: ``no school``, or written otherwise than all the names."""
    bare = fold(rest.partition("(")[0]).strip(" !-–—")
    if bare in NO_SCHOOL:
        return True
    words = rest.split()
    small = titled and all(word.islower() for word in words if any(map(is_letter, word)))
    shouted = not loud and len(words) > 1 and rest.isupper()
    return (small or shouted) and not any(map(is_given, words))


def _are_placed(rests: Sequence[str]) -> bool:
    """Say whether most lines have a place and a sign before the names: no given names, but words of an address."""
    places = [place for place in map(_placed, rests) if place]
    if not places or len(places) < _MOSTLY * len(rests):
        return False
    if share(begins_small(place.rest) for place in places) >= _HALF:  # Xobrel – fell off the slide
        return False
    before = [place.bare for place in places]
    if share(map(_may_open_with_a_name, before)) > _HARDLY:
        return False
    named = given_share(place.rest for place in places)
    return named >= _HALF or share(map(_is_a_place, before)) >= _HALF or len(set(before)) < _NEARLY_ALL * len(before)


def _placed(rest: str) -> Labelled | None:
    """Return a place and the names behind its sign."""
    place = labelled(rest)
    return place if place and is_letter(place.rest[0]) else None


def _may_open_with_a_name(words: str) -> bool:
    first, *rest = words.split()
    at = fold(first) in STREETS | ARTICLES | _AT or not STREETS.isdisjoint(map(fold, rest))
    return is_given(first) and not at


def _is_a_place(words: str) -> bool:
    """Say whether words are of an address: one for a street, a small one, a sign or a figure."""
    return any(fold(word).strip(_EDGES) in STREETS or not word[0].isupper() or word.endswith(".")
               for word in words.split())
