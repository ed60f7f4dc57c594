"""Which part of a name a word most often is, by open lists of names (``data/known-names.txt`` tells their sources).

The lists decide between two readings of a line that both could be; no name is refused because it is on none of them.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from functools import cache
from pathlib import Path

from namewright.patterns import pattern
from namewright.roster.care_words import SHORT_FORMS
from namewright.roster.vocabulary import DOUBLE_SECONDS, DOUBLE_STARTERS, fold
from namewright.store import Made, keeps_names

_HYPHENS = pattern("[-‐‑]")
_SHORTEST_FAMILY = 6  # letters of one that is told by its ending
_OPENINGS = frozenset(("mc", "mac", "o", "d"))
_FAMILY_ENDINGS = (
    "ski", "sky", "cki", "skaya", "ova", "ov", "enko", "wicz", "vich", "vic", "czyk", "escu", "eanu", "oglu", "shvili",
    "adze", "idze", "opoulos", "opoulou", "aitis", "auskas", "nen", "sen", "sson", "nson", "strom", "gren", "lund",
    "qvist",
    "quist", "dahl", "gaard", "stein", "burg", "bauer", "meier", "meyer", "nger", "rger", "cher", "tner", "veld",
    "kamp", "wala", "swamy", "eira", "ales", "elli", "etti", "ucci", "acci", "eau", "well", "field", "gton", "kins",
    "ова", "ева", "ов", "ев", "енко", "ский", "ская", "յան", "აძე", "იძე", "შვილი", "ακησ", "ιδου", "πουλου", "πουλοσ")
"""How family names end, and given names hardly ever: common practice, written down by hand; a test counts the lists."""


@cache
def _lists() -> Mapping[str, frozenset[str]]:
    """Return the words by their part, a tab and their first two letters; of most openings a class has none."""
    text = (Path(__file__).parent / "data" / "known-names.txt").read_text(encoding="utf-8")
    lines = {line[:line.find("\t") + 3]: line for line in text.splitlines() if line[0] != "#"}
    return Made(lines, lambda opening: frozenset(lines[opening].partition("\t")[2].split(" ")))


@keeps_names(4096)
def is_given(word: str) -> bool:
    """Say whether a word is known as a given name, be it a family name too."""
    return lean(word) > 0 or any(_on("either", each) for each in _forms(word))


def opens_with_given(text: str) -> bool:
    """Say whether the first word of a text is known as a given name; no text opens with one."""
    return any(map(is_given, text.split(maxsplit=1)[:1]))


@keeps_names(4096)
def is_family(word: str) -> bool:
    """Say whether a word is known as a family name, be it a given name too."""
    return lean(word) < 0 or any(_on("either", each) for each in _forms(word))


def with_openings(words: Sequence[str]) -> list[str]:
    """Return the words of a name with each opening of a known family name and what follows it as one: ``MC NALLY``."""
    found: list[str] = []
    for word in words:
        if found and fold(found[-1]) in _OPENINGS and is_family(f"{found[-1]}{word}"):
            found[-1] = f"{found[-1]} {word}"
        else:
            found.append(word)
    return found


def is_given_alone(word: str) -> bool:
    """Say whether a word is known as a given name and nowhere as a family name; a rare one may be for all that."""
    return lean(word) > 0 and not any(_on("seldom-family", form) or _on("family", form) or _on("either", form)
                                      for form in _forms(word))


@keeps_names(4096)
def lean(word: str) -> int:
    """Return 1 for a word that is most often a given name, -1 for a family name, 0 for either or an unknown word."""
    for form in _forms(word):
        if _on("given", form) or form in SHORT_FORMS:
            return 1
        if _on("family", form):
            return -1
        if _on("either", form):
            return 0
    return 0


@keeps_names(4096)
def ends_as_family(word: str) -> bool:
    """Say whether a word that is on no list ends as family names of some language do: ``Xobrelski``."""
    form = fold(word)
    return len(form) >= _SHORTEST_FAMILY and form.endswith(_FAMILY_ENDINGS) and not is_known(word)


def is_known(word: str) -> bool:
    """Say whether a word is on any list of names."""
    return is_given(word) or is_family(word)


def is_pair(first: str, second: str) -> bool:
    """Say whether two words are on the list of pairs that are one given name."""
    return _on("pairs", f"{fold(first)}_{fold(second)}")


def pairs_with(initial: str, second: str) -> frozenset[str]:
    """Return the given names with an initial that are one with a second name by the list of pairs, folded."""
    opening, ending = fold(initial), f"_{fold(second)}"
    return frozenset(first.removesuffix(ending) for first in _pairs() if first.startswith(opening) and
                     first.endswith(ending))


@cache
def _pairs() -> tuple[str, ...]:
    """Return the whole list of pairs."""
    text = (Path(__file__).parent / "data" / "known-names.txt").read_text(encoding="utf-8")
    lines = (line.split("\t")[1] for line in text.splitlines() if line.startswith("pairs\t"))
    return tuple(pair for line in lines for pair in line.split())


def is_double(first: str, second: str) -> bool:
    """Say whether two given names are one name by themselves, as a known pair."""
    one, two = fold(first), fold(second)
    return is_pair(one, two) or (one in DOUBLE_STARTERS and two in DOUBLE_SECONDS)


def are_iberian(first: str, second: str, families: Iterable[str]) -> bool:
    """Say whether these are two given names before family names, all of Spain, Portugal or the Americas."""
    names = [fold(one) for one in families]
    return (_on("iberian-given", fold(first)) and _on("iberian-given", fold(second)) and lean(second) > 0
            and bool(names) and all(_on("iberian-family", name) for name in names))


def is_iberian(given: Iterable[str]) -> bool:
    """Say whether all words are given names of Spain, Portugal or the Americas."""
    return all(_on("iberian-given", fold(word)) for word in given)


def _on(part: str, word: str) -> bool:
    lists, opening = _lists(), f"{part}\t{word[:2]}"
    return opening in lists and word in lists[opening]


@keeps_names(2048)
def _forms_of(folded: str) -> tuple[str, ...]:
    halves = _HYPHENS.split(folded)
    plain = folded.replace("'", "").replace("’", "").replace(" ", "")
    return tuple(dict.fromkeys((folded, plain, halves[0]) if len(halves) < 2 else (folded, plain, *halves)))


def _forms(word: str) -> tuple[str, ...]:
    """Return a word folded, then without an apostrophe or a space (``O Brien``), then its halves about a hyphen."""
    return _forms_of(fold(word))
