"""Given names of people, for a child whose class has too few that are like its own, or unlike.

From open lists by language (``given_names.txt`` tells source and licence), of which only common names are kept that are
short and easy to read; nothing is put together from syllables. Pure, but for one table.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable
from functools import cache
from pathlib import Path

from namewright.names.clusters import clusters
from namewright.practice.difficulty import base_letter
from namewright.store import keeps_names

_CLEARLY = 1.5  # how many times as many classmates a list of another language must have


@cache
def _lists() -> dict[str, tuple[str, ...]]:
    text = Path(__file__).with_name("given_names.txt").read_text(encoding="utf-8")
    parts = (line.partition("\t") for line in text.splitlines() if not line.startswith("#"))
    return {language: tuple(names.split(" ")) for language, _, names in parts}


@cache
def _languages() -> dict[str, frozenset[str]]:
    """Return in which lists each name stands, case aside; a mark tells a language."""
    found: dict[str, set[str]] = {}
    for language, names in _lists().items():
        for name in names:
            found.setdefault(name.casefold(), set()).add(language)
    return {name: frozenset(languages) for name, languages in found.items()}


@keeps_names(20_000)  # those of the lists, too
def bare(name: str) -> str:
    """Return a name in small letters without marks: two that differ in no more are one to a child's eye."""
    return "".join(base_letter(letter) for letter in clusters(name)).casefold()


def given_names(language: str | None, usual: str, mates: Iterable[str]) -> tuple[tuple[str, ...], tuple[str, ...]]:
    """Return the names of a language's list, and all others, each sorted.

    Where nobody said in what language the names are, or there is no list of it, it is the ``usual`` one, unless that
    of another language has clearly more of the classmates.
    """
    chosen = language if language in _lists() else _habit(usual if usual in _lists() else "en", mates)
    return _lists()[chosen], _others(chosen)


@cache
def _others(language: str) -> tuple[str, ...]:
    return tuple(sorted({name for names in _lists().values() for name in names} - set(_lists()[language])))


def _habit(usual: str, mates: Iterable[str]) -> str:
    score = Counter(language for name in mates for language in _languages().get(name.casefold(), ()))
    best = max(sorted(score), key=score.__getitem__, default=usual)
    return best if score[best] > _CLEARLY * score[usual] else usual
