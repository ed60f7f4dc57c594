"""Given names written cut short (``Mª José``, ``Fco. Javier``, ``J.-Pierre``): written out where one name alone fits.

Where several fit, or none that is known here, nobody is made: a child practises the whole name, never part of it.
The short forms are common practice in Spain, Portugal, France and the Americas, from memory.
"""

from __future__ import annotations

import re
from collections.abc import Collection, Iterable, Sequence

import unicodedata2

from namewright.message import Message, message
from namewright.named_tuples import NamedTuple
from namewright.names.particles import PARTICLES
from namewright.patterns import pattern
from namewright.roster.known import is_given, is_iberian, pairs_with
from namewright.roster.vocabulary import DEVOTIONS, SUFFIXES, fold, word_set
from namewright.store import keeps_names

_MARIA = pattern(r"M\.?ª\.?|M\.a\.?|M[aA]\.")
_ORDINALS = pattern(r"[ªº]")
_INITIAL = pattern(r"[^\W\d_]\.")
_HYPHENED = pattern(r"([^\W\d_]{1,2})\.\s?[-‐‑](\S+)")
_SHORTENED = pattern(r"[^\W\d_]{2,6}\.|[^\W\d_]{1,5}\.[a-z]{1,4}")
_TWO_INITIALS = pattern(r"[^\W\d_a-z](?:\.|[-‐‑])[^\W\d_a-z]")
_SEARCHED = pattern(r"\bM\.?ª|\bM\.a\b|\bM[aA]\b", re.ASCII)
_MAX_WORDS = 60
SHORT_NAMES = {
    "fco": "Francisco", "frco": "Francisco", "fcº": "Francisco", "fca": "Francisca", "fcª": "Francisca", "jse": "José",
    "gpe": "Guadalupe", "wm": "William", "chas": "Charles", "thos": "Thomas", "jas": "James",
    "geo": "George", "robt": "Robert", "benj": "Benjamin", "jno": "John", "fdo": "Fernando",
}
_ALSO_NAMES = word_set("geo")
"""Short forms with a dot that are names without one."""
_FRENCH = {"j": "Jean", "ch": "Charles", "m": "Marie"}
_MARC = word_set("antoine, andre, aurele, olivier")
"""Before these M. is Marc as often as Marie."""
_NO_SHORT_FORM = PARTICLES | SUFFIXES | word_set("ste, sta, sto, san, mc, dr")
_BARE = (("maria", "maría"), ("jose", "josé"))
_SMALL = ("de", "del", "la", "los", "las")


class WrittenOut(NamedTuple):
    """The words of a name, how many of them at least are given names, what is said of it; ``asked`` where unsure."""

    words: tuple[str, ...]
    least: int = 1
    notes: tuple[Message, ...] = ()
    asked: Message | None = None


def plain_spellings(texts: Iterable[str]) -> frozenset[str]:
    """Return which names are written out without marks as a list writes its own: ``Maria`` in Portuguese."""
    lines = tuple(texts)
    if not any("M" in line and _SEARCHED.search(line) for line in lines):
        return frozenset()
    words = {word for line in lines for word in line.casefold().replace(",", " ").split()}
    portuguese = any("ã" in word or "õ" in word for word in words)
    bare = any(one in words and two not in words for one, two in _BARE)
    return frozenset({"María"} if portuguese or bare else ())


@keeps_names(1024)
def written_out(words: tuple[str, ...], plain: frozenset[str] = frozenset(), *, given: bool = False) -> WrittenOut:
    """Write the given name out that a name opens with; ``given`` says that all words are given names."""
    if len(words) > _MAX_WORDS or not (any("." in word for word in words[:2]) or _may_be_short(words)):
        return WrittenOut(words)
    first, rest = words[0], words[1:]
    name = _name_of(first, rest, given=given)
    if isinstance(name, Message):
        return WrittenOut(words, asked=name)
    if not name:
        return WrittenOut(words)
    written = unicodedata2.normalize("NFC", _without_marks(name)) if name in plain else name
    if loud := [word for word in rest if fold(word) not in _SMALL]:
        written = written.upper() if all(map(str.isupper, loud)) else written
    follows = bool(rest) and (given or (len(rest) > 1 and (is_given(rest[0]) or fold(rest[0]) in DEVOTIONS)))
    note = message("roster.written_out", typed=first, written=written)
    return WrittenOut((written, *rest), 1 + follows, (note,))


def may_stand_for(typed: str, text: str) -> tuple[str, ...]:
    """Return the names that an initial may stand for before the next word of a text, none where none is known."""
    behind = text.partition(typed)[2].split()
    if not _INITIAL.fullmatch(typed) or not behind:
        return ()
    return tuple(sorted(map(_marked, pairs_with(typed[0], behind[0].strip(",;")))))


def _may_be_short(words: Sequence[str]) -> bool:
    return bool(_ORDINALS.search(words[0])) or words[0] == "Ma" or fold(words[0]) in SHORT_NAMES or bool(
        _TWO_INITIALS.fullmatch(words[0]))


def _without_marks(name: str) -> str:
    return "".join(char for char in unicodedata2.normalize("NFD", name) if unicodedata2.category(char) != "Mn")


def _name_of(first: str, rest: Sequence[str], *, given: bool) -> str | Message:
    """Return the name that a first word stands for, a question where that is unsure, nothing where it is none."""
    if _MARIA.fullmatch(first) or (first == "Ma" and rest and _follows_maria(rest)):
        return "María"
    key = fold(first)
    if key in SHORT_NAMES and (rest or "." in first) and ("." in first or key not in _ALSO_NAMES):
        return SHORT_NAMES[key]
    if match := _HYPHENED.fullmatch(first):
        return _hyphened(first, fold(match[1]), match[2])
    behind = rest[0] if rest and len(rest[0]) > 2 and (given or len(rest) > 1 or _is_only_given(rest[0])) else ""
    if _INITIAL.fullmatch(first) and behind and is_given(behind):
        return _one_of(first, pairs_with(first[0], behind))
    if _TWO_INITIALS.fullmatch(first) and (rest or given):
        return _asked(first)
    if _SHORTENED.fullmatch(first) and (rest or given) and key not in _NO_SHORT_FORM and not first.isupper():
        return _asked(first)
    return ""


def _is_only_given(word: str) -> bool:
    return is_given(word) and is_iberian([word])


def _follows_maria(rest: Sequence[str]) -> bool:
    """Say whether words may stand behind Ma, which is a name of its own elsewhere: ``Ma del Carmen``, ``Ma Elena``."""
    return fold(rest[0]) in _SMALL or (len(rest) > 1 and is_iberian([rest[0]]) and is_given(rest[0]))


def _hyphened(typed: str, short: str, second: str) -> str | Message:
    """``J.-Pierre`` is Jean-Pierre; ``J.-P.`` may be several."""
    if short not in _FRENCH or not is_given(second) or (short == "m" and fold(second) in _MARC):
        return _asked(typed)
    return f"{_FRENCH[short]}-{second}"


def _one_of(typed: str, found: Collection[str]) -> str | Message:
    if len(found) != 1:
        return _asked(typed)
    return _marked(next(iter(found)))


def _marked(folded: str) -> str:
    return {"maria": "María", "jose": "José", "angel": "Ángel"}.get(folded, folded.title())


def _asked(typed: str) -> Message:
    return message("roster.cut_short", typed=typed)
