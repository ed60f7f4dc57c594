"""Where the name of a child who is to be erased stands besides in what is kept of the child.

In notes about others, in who noted or changed something, in the title of the class, in a list that is kept whole. A
given and a family name together mean the child, unless another of the class has both; a given name alone may be another
person’s, or a word (May, Will): that is for an adult to say. Names are compared without capitals and marks, as words;
in scripts without capitals, where words often stand together, as parts of words too. Pure.
"""

from __future__ import annotations

import hashlib
from collections.abc import Collection, Iterable, Iterator
from dataclasses import dataclass
from enum import StrEnum

import unicodedata2

from namewright.message import Message, message
from namewright.names.particles import PARTICLES
from namewright.patterns import pattern
from namewright.roster.vocabulary import fold

GONE = "…"
_MIN_LETTERS = 2  # of a part of a name that is looked for alone
_BORDER = pattern(r"[,;|\t\n]|\s{2}")
_GONE_BETWEEN = pattern(r"[^,;|\s](?:[^,;|\t\n]*[^,;|\s])?")  # what stands between such signs
Words = tuple[str, ...]
"""A name as folded words."""


class Place(StrEnum):
    """A kind of place where a name may stand."""

    NOTE = "note"
    WHO = "who"
    TITLE = "title"
    LINE = "line"


@dataclass(frozen=True, slots=True)
class Trace:
    """A place where a name stands: its text, the label of the child it is about, the day or the line."""

    place: Place
    text: str
    label: str = ""
    day: str = ""
    line: int = 0

    @property
    def key(self) -> str:
        """Return what stands for this trace in a form: it tells nothing, and no other text has it."""
        return hashlib.sha256(f"{self.place} {self.label} {self.day} {self.text}".encode()).hexdigest()[:16]

    @property
    def told(self) -> Message:
        """Return where it is, as a message."""
        return message(f"classbook.trace_{self.place}", label=self.label, day=self.day, line=self.line, text=self.text)


@dataclass(frozen=True, slots=True)
class Called:
    """The names of a child: given, family, and others that are or were practised."""

    given: str
    family: str
    others: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class Sought:
    """What is looked for: names that ``surely`` mean the child, and all that ``may``."""

    surely: frozenset[Words]
    may: frozenset[Words]


def sought(gone: Collection[Called], staying: Collection[Called]) -> Sought:
    """Return what to look for, given who is erased and who stays."""
    kept_whole = {whole for one in staying for whole in _wholes(one)}
    kept_families = {part for one in staying for part in (_words(one.family), *_parts(one.family))}
    surely = {whole for one in gone for whole in _wholes(one)} - kept_whole
    may = {part for one in gone for part in _all_parts(one)} - kept_families
    given = {part for one in gone for name in (one.given, *one.others) for part in (_words(name), *_parts(name))}
    return Sought(frozenset(surely), frozenset(each for each in surely | may | given if each))


def _wholes(one: Called) -> Iterator[Words]:
    """Yield given and family name together, in both orders."""
    family = _words(one.family)
    for name in (one.given, *one.others):
        given = _words(name)
        if given and family and given != family:
            yield from ((*given, *family), (*family, *given))


def _all_parts(one: Called) -> Iterator[Words]:
    for name in (one.given, one.family, *one.others):
        yield _words(name)
        yield from _parts(name)


def _parts(name: str) -> Iterator[Words]:
    """Yield the words of a name that may stand for it alone."""
    for word in _words(name):
        if len(word) >= _MIN_LETTERS and word not in PARTICLES:
            yield (word,)


def _words(name: str) -> Words:
    return tuple(fold(name[start:end]) for start, end in _spans(name))


def _spans(text: str) -> Iterator[tuple[int, int]]:
    """Yield where each word begins and ends: letters, their marks, and digits."""
    start = None
    for at, char in enumerate(text):
        if unicodedata2.category(char)[0] in "LMN":
            start = at if start is None else start
        elif start is not None:
            yield start, at
            start = None
    if start is not None:
        yield start, len(text)


def stands(text: str, names: Collection[Words], own: Collection[str] = ()) -> bool:
    """Say whether one of the names stands in a text; words that are somebody’s ``own`` name are passed over."""
    return any(True for _ in _found(text, names, own))


def without(text: str, names: Collection[Words], own: Collection[str] = ()) -> str:
    """Return a text with an ellipsis in the place of every one of the names; signs that part cells stay."""
    for start, end in sorted(_found(text, names, own), reverse=True):
        text = text[:start] + _GONE_BETWEEN.sub(GONE, text[start:end]) + text[end:]
    return text


def own_words(names: Iterable[str]) -> frozenset[str]:
    """Return the words of somebody’s own names, folded."""
    return frozenset(word for name in names for word in _words(name))


def _found(text: str, names: Collection[Words], own: Collection[str]) -> Iterator[tuple[int, int]]:
    """Yield where the names stand, the longest first where several begin at one word, none over another.

    A name does not begin in somebody's own name to end in another cell, as where a sister stands beside a family name.
    """
    spans = list(_spans(text))
    folded = [fold(text[start:end]) for start, end in spans]

    def may_be(at: int, size: int) -> bool:
        words = folded[at:at + size]
        over_cells = _BORDER.search(text[spans[at][0]:spans[at + size - 1][1]]) is not None
        behind_own = at > 0 and {folded[at - 1], words[0]} <= set(own)
        return (not set(words) <= set(own) and not (over_cells or behind_own)) or set(own).isdisjoint(words)

    at = 0
    while at < len(spans):
        sizes = sorted({len(name) for name in names if _fits(folded[at:at + len(name)], name)}, reverse=True)
        size = next((size for size in sizes if may_be(at, size)), 0)
        if size:
            yield spans[at][0], spans[at + size - 1][1]
        at += max(size, 1)


def _fits(words: list[str], name: Words) -> bool:
    """Say whether words are a name; its last may have an s behind it, as of what is the child’s in many languages."""
    if len(words) < len(name) or tuple(words[:-1]) != name[:-1]:
        return False
    last, wanted = words[-1], name[-1]
    return last in (wanted, f"{wanted}s") or (wanted.lower() == wanted.upper() and wanted in last)
