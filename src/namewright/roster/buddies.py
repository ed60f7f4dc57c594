"""Titles of a table in which each child has an older one of another class: ``Our class``, ``Big buddy (Grade 4)``.

Who is of the class is said by a word for it or for a child, who is not by a word for who looks after a younger one.
"""

from __future__ import annotations

from collections.abc import Sequence

from namewright.patterns import pattern
from namewright.roster.header_words import CHILD_WORDS
from namewright.roster.heading_words import CHILDREN, LISTS, OUR
from namewright.roster.known import is_given
from namewright.roster.vocabulary import NAME_ROLES, Role, fold, word_set

BETWEEN = pattern(r"[\s/()\[\],.:’'–—-]+")
_BUDDIES = word_set("""
    buddy, buddies, mentor, mentors, mentora, mentores, mentorin, parrain, marraine, parrains, marraines, padrino,
    madrina, padrinos, madrinas, padrini, madrine, padrinho, madrinha, padrinhos, madrinhas, pate, patin, paten,
    tutor, tutora, tutores, tutoras, tuteur, tutrice, tuteurs""")
"""Words for an older child who looks after a younger one; some are for grown-ups, who are not of the class, either."""
_ENDINGS = ("pate", "patin", "paten")  # Lesepate


def with_buddies(titles: Sequence[str], known: Sequence[Role | None]) -> list[Role | None]:
    """Return the roles of columns where one title is of the class and another of its buddies; else as they are."""
    words = [_words(title) for title in titles]
    buddies = {at for at, of in enumerate(words) if _of_buddies(of) and known[at] not in (Role.GIVEN, Role.FAMILY)}
    own = [at for at, of in enumerate(words) if at not in buddies and (known[at] in NAME_ROLES or _of_the_class(of))]
    if not buddies or not own:
        return list(known)
    whole = not NAME_ROLES.intersection(known[at] for at in own)
    return [Role.OTHER if at in buddies else Role.FULL if whole and at == own[0] else role
            for at, role in enumerate(known)]


def _words(title: str) -> frozenset[str]:
    """Return the words of a title; none of what opens with a given name and may be a child: ``Emma Kind``."""
    first, *rest = [word for word in BETWEEN.split(fold(title)) if word] or [""]
    named = rest and is_given(first) and not _of_buddies(frozenset((first,))) and first not in CHILD_WORDS | OUR
    return frozenset() if named else frozenset((first, *rest))


def is_of_buddies(word: str) -> bool:
    """Say whether a folded word is of those who look after younger children."""
    return word in _BUDDIES or word.endswith(_ENDINGS)


def _of_buddies(words: frozenset[str]) -> bool:
    return any(map(is_of_buddies, words))


def _of_the_class(words: frozenset[str]) -> bool:
    """Say whether a title is of the class itself: ``Nuestra clase``, ``Élève de maternelle``, ``Vorschulkind``."""
    ours = not OUR.isdisjoint(words) and not CHILDREN.isdisjoint(words)
    return ours or not (CHILD_WORDS | CHILDREN - LISTS).isdisjoint(words) or any(
        word.endswith("kind") for word in words)
