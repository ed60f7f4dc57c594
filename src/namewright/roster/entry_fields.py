"""What a program lists one below another with a day, a time or a sum, as entries of fields: mails, payments, doings.

An entry is a line with signs or gaps between its fields, or some lines: parted by empty ones, or by the line with the
day, which then stands at the same place of each. Days, times and sums come off the fields.
"""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Collection, Sequence
from itertools import pairwise

from namewright.named_tuples import NamedTuple
from namewright.names.clusters import is_letter
from namewright.patterns import pattern
from namewright.roster.about_words import ABOUT
from namewright.roster.date_lines import IN_FIGURES
from namewright.roster.heading_words import TODAY
from namewright.roster.pasted import Line
from namewright.roster.shares import are_most
from namewright.roster.vocabulary import ATTENDANCE, DATES, MONTHS, fold

_CELLS = pattern(r"\s*[\t;|]\s*|\s+·\s+|\s{2,}")
_CLOCK = pattern(r"[0-9]{1,2}[:.h][0-9]{2}(?:[:.][0-9]{2})?(?:h|[ap]\.?m\.?)?", re.IGNORECASE)
_SUM = pattern(r"[+−–-]?(?:€|\$|£|R\$|CHF|EUR|USD|GBP)?[0-9]{1,3}(?:[.,' ]?[0-9]{3})*(?:[.,][0-9]{2})?"
               r"(?:€|\$|£|CHF|EUR|USD|GBP|zł)?")
_COUNT = pattern(r"[0-9]{1,2}(?:st|nd|rd|th|[.ºª°])?|20[0-9]{2}")
_MONEY = frozenset(("€", "$", "£", "r$", "chf", "eur", "usd", "gbp", "zł", "pln", "kr", "euro", "+", "−"))
_HOURS = frozenset(("uhr", "h", "am", "pm", "a.m", "p.m", "at", "um"))
_SIGNS = frozenset(("-", "–", "—", "•", "*", "·", ",", "@"))
_ADDRESS = pattern(r"\s*[<(]?[^\s<>()]+@[^\s<>()]+[>)]?", needs="@")
_LABEL = pattern(r"\s*([^\W\d_][^:|\t]{0,24}?)\s?:\s+(?=\S)", needs=":")
_COMMA = pattern(r",\s+")
_FIGURED = pattern(r"[0-9][:.,h/'-][0-9]|[0-9]\s?(?:[€$£+]|EUR|USD|CHF|GBP|zł|PLN|kr)|(?:[€$£+−]|[A-Z]{3})\s?[0-9]")
_WEAK = (pattern(r"\s+[–—-]\s+"), pattern(r"\s?:\s+"), _COMMA)
_FEWEST, _MOST_LINES, _LONGEST, _MOST_ABOVE = 3, 6, 300, 3
_MOSTLY, _NEARLY_ALL, _PART = 0.6, 0.8, 6


class Field(NamedTuple):
    """A part of an entry: the line it stands on (0-based), which cell of it, its words, and a label before them."""

    at: int
    cell: int
    text: str
    label: str = ""


class Entry(NamedTuple):
    """What was listed once: its lines, its fields with letters, if it has a day or a time, and if it has a sum."""

    lines: tuple[int, ...]
    fields: tuple[Field, ...]
    timed: bool
    paid: bool


def entries(lines: Sequence[Line]) -> list[Entry]:
    """Return the entries of a list, none where its lines are no such thing."""
    filled = [at for at, line in enumerate(lines) if any(map(str.isalnum, line.text))]
    if any(len(lines[at].text) > _LONGEST for at in filled) or len(filled) < _FEWEST:
        return []
    dated = [at for at in filled if _may_have_a_time(lines[at].text) and _has_a_time(lines[at].text)]
    if len(dated) < max(_FEWEST, len(filled) / _PART):
        return []
    groups = _groups(lines, filled, dated)
    labels = Counter(fold(label[1]) for group in groups if len(group) > 1 for at in group
                     if (label := _LABEL.match(lines[at].text)))
    often = {label for label, count in labels.items() if count >= max(_FEWEST, _MOSTLY * len(groups))
             and label not in ABOUT | ATTENDANCE}  # Absence: Mia
    found = [_entry(lines, group, often) for group in groups]
    alone = [entry for entry in found if len(entry.fields) == 1]
    return found if len(alone) < max(_FEWEST, _MOSTLY * len(found)) else _parted(found, alone)


def _parted(found: Sequence[Entry], alone: Sequence[Entry]) -> list[Entry]:
    """Return entries of one field with it parted at the first dash, colon or comma, where nearly all have it."""
    for sign in _WEAK:
        if are_most((sign.search(entry.fields[0].text) is not None for entry in alone), _NEARLY_ALL):
            parted = [_apart(entry, sign) for entry in found]
            whole = (" " in entry.fields[0].text for entry in parted if len(entry.fields) > 1)
            return parted if sign is not _COMMA or are_most(whole, _MOSTLY) else list(found)  # Vost, Leo (crackers)
    return list(found)


def _apart(entry: Entry, sign: re.Pattern[str]) -> Entry:
    parts = [part for field in entry.fields for part in sign.split(field.text, maxsplit=1) if any(map(is_letter, part))]
    return entry._replace(fields=tuple(Field(entry.fields[0].at, at, part) for at, part in enumerate(parts)))


def cells(text: str) -> list[str]:
    """Return the parts of a line between signs and gaps."""
    return [cell.strip().strip('"') for cell in _CELLS.split(text.strip())]


def bare(text: str) -> tuple[str, bool, bool]:
    """Return a cell without days, times and sums at its ends, and whether it had a time, and a sum."""
    words = text.split()
    front, rest = _stripped(words)
    back, rest = _stripped(rest[::-1])
    taken = [*front, *back]
    timed = any(IN_FIGURES.fullmatch(word) or _CLOCK.fullmatch(word) or fold(word) in MONTHS for word in taken)
    paid = any(_is_a_sum(word) for word in taken) and any(
        fold(word) in _MONEY or not word[0].isdigit() or not word[-1].isdigit() or "," in word for word in taken)
    return " ".join(rest[::-1]).strip(", "), timed, paid


def _stripped(words: list[str]) -> tuple[list[str], list[str]]:
    """Return what opens some words as a day, a time or a sum does, and the rest; without a figure nothing does."""
    size = next((at for at, word in enumerate(words) if not _is_of_a_time(word, words, at)), len(words))
    return (words[:size], words[size:]) if any(any(map(str.isdigit, word)) for word in words[:size]) else ([], words)


def _is_of_a_time(word: str, words: Sequence[str], at: int) -> bool:
    core = word.strip("()[],;")
    if any(map(str.isdigit, core)):
        plain = core.rstrip(":")
        beside = [fold(words[to]).strip("()[],") for to in (at - 1, at + 1) if 0 <= to < len(words)]
        return bool(IN_FIGURES.fullmatch(plain) or _CLOCK.fullmatch(plain) or _is_a_sum(plain)) or (
            _COUNT.fullmatch(plain) is not None and any(each in DATES for each in beside))
    folded = fold(core)
    return not core or folded in _SIGNS | _MONEY | _HOURS or word in _SIGNS or (
        (folded in DATES or folded in TODAY) and any(
            any(map(str.isdigit, each)) for each in words[at + 1 : at + 3]))


def _is_a_sum(word: str) -> bool:
    core = word.strip("()[],;")
    return (_SUM.fullmatch(core) is not None and any(sign in core for sign in ".,€$£+")) or (
        _SUM.fullmatch(core) is not None and not core.isdigit())


def _may_have_a_time(text: str) -> bool:
    """Say whether a line has figures or a sum, or one figure beside a month: the other lines are not cut."""
    return _FIGURED.search(text) is not None or (any(map(str.isdigit, text)) and not MONTHS.isdisjoint(
        fold(text).replace(".", " ").split()))


def _has_a_time(text: str) -> bool:
    return any(any(bare(cell)[1:]) for cell in cells(text))


def _groups(lines: Sequence[Line], filled: Sequence[int], dated: Sequence[int]) -> list[tuple[int, ...]]:
    """Return the lines of each entry."""
    if len(dated) >= _MOSTLY * len(filled):
        first = filled.index(dated[0])
        return [(at,) for at in filled[first:]] if first <= _MOST_ABOVE else []
    return _by_empty_lines(lines, filled, set(dated)) or _by_times(filled, dated)


def _by_empty_lines(lines: Sequence[Line], filled: Sequence[int], dated: set[int]) -> list[tuple[int, ...]]:
    groups: list[list[int]] = []
    for at in filled:
        if at and groups and at - 1 == groups[-1][-1]:
            groups[-1].append(at)
        else:
            groups.append([at])
    size, count = Counter(map(len, groups)).most_common(1)[0]
    whole = [group for group in groups if not dated.isdisjoint(group)]
    if not 1 < size <= _MOST_LINES or count < max(_FEWEST, _MOSTLY * len(groups)) or len(whole) < _NEARLY_ALL * count:
        return []
    start = groups.index(whole[0])
    groups[start] = groups[start][-size:] if len(groups[start]) > size else groups[start]  # a title right above
    return [tuple(group) for group in groups[start:]]


def _by_times(filled: Sequence[int], dated: Sequence[int]) -> list[tuple[int, ...]]:
    """Return entries of as many lines each, of which one has the time, the same in all."""
    places = [filled.index(at) for at in dated]
    gaps = Counter(two - one for one, two in pairwise(places))
    size = gaps.most_common(1)[0][0] if gaps else 0
    if not 1 < size <= _MOST_LINES or not are_most((two - one == size for one, two in pairwise(places)), _NEARLY_ALL):
        return []
    behind = min(len(filled) - 1 - places[-1], size - 1)
    starts = [max(0, place - (size - 1 - behind)) for place in places]
    if starts[0] > _MOST_ABOVE:
        return []
    ends = [*starts[1:], places[-1] + behind + 1]
    return [tuple(filled[start:end]) for start, end in zip(starts, ends, strict=True)]


def _entry(lines: Sequence[Line], group: tuple[int, ...], labels: Collection[str]) -> Entry:
    fields: list[Field] = []
    timed = paid = False
    for at in group:
        for place, cell in enumerate(cells(lines[at].text)):
            text, has_time, has_sum = bare(cell)
            timed, paid = timed or has_time, paid or has_sum
            label = _LABEL.match(text) if labels else None
            label = label if label and fold(label[1]) in labels else None
            said = text[label.end() :] if label else text
            inner, has_time, has_sum = bare(said) if label else (said, False, False)
            timed, paid = timed or has_time, paid or has_sum
            inner = _ADDRESS.sub("", inner).strip()
            if any(map(is_letter, inner)) and not inner.endswith(":"):
                fields.append(Field(at, place, inner, fold(label[1]) if label else ""))
    return Entry(group, tuple(fields), timed, paid)
