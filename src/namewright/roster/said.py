"""Who is named in a line that nobody was made of: ``Ask about Milo`` says something, and the page offers to add Milo.

Of a line that says nothing (``Milo Vost``) the page offers the whole. Out of scope: which lines are sentences about
the class, before any child is made (``prose``).
"""
from __future__ import annotations

from itertools import islice

from namewright.names.clusters import is_letter
from namewright.roster.heading_words import MAYBE, OPENERS
from namewright.roster.known import is_family, is_given, is_known
from namewright.roster.names_in_text import EDGES, OWNED, bare_word, is_small, names_in
from namewright.roster.shouted import is_shouted
from namewright.roster.vocabulary import ANY_DAYS, MONTHS, OTHER_PEOPLE, fold

_FEWEST = 3  # words of what is said: a remark of two may be a rare name
_MOST = 3  # names that are told
_NOBODY = ANY_DAYS | MONTHS | OPENERS | OTHER_PEOPLE
_SHORTEST = 3  # letters of a name in small ones


def is_said(text: str) -> bool:
    """Say whether a line has three words or more, one of them in no name: ``Ask about Milo``."""
    words = [word for word in text.split() if any(map(is_letter, word))]
    small = [word for word in words if is_small(word) and not is_known(word.strip(EDGES))]
    return (len(words) > 1 and fold(words[0]) in MAYBE) or (len(words) >= _FEWEST and (bool(small) or is_shouted(text)))


def names_said(text: str) -> list[tuple[str, str]]:
    """Return the first few known given names that a sentence has, each with a known family name behind it."""
    found = dict.fromkeys(name for run in names_in(text) if (name := _named(run.typed.split())))
    small = (word.strip(EDGES) for word in text.split() if text.islower())
    known = found or {(word, ""): None for word in small if len(word) >= _SHORTEST and is_given(word)
                      and fold(word) not in _NOBODY}
    return list(islice(known, _MOST))


def _named(words: list[str]) -> tuple[str, str] | None:
    given, *rest = [_without_owner(word.strip(EDGES)) for word in words]
    if not is_given(given) or bare_word(given) in _NOBODY:
        return None
    family = rest[0] if rest and is_family(rest[0]) and bare_word(rest[0]) not in ANY_DAYS else ""
    return given, family


def _without_owner(word: str) -> str:
    return next((word.removesuffix(end) for end in OWNED if word.endswith(end)), word)
