"""Whether letters set side by side spell a word that no child should find on a page made of its name."""

from __future__ import annotations

from functools import cache
from pathlib import Path

from namewright import toml
from namewright.names.clusters import clusters
from namewright.practice.difficulty import base_letter


@cache
def _table() -> dict[str, list[str]]:
    return toml.loads(Path(__file__).with_name("unkind.toml").read_text(encoding="utf-8"))


@cache
def unkind_words() -> frozenset[str]:
    """Return the words of every language in ``unkind.toml``, small and without marks, that no text may have in it."""
    return frozenset(word for key, words in _table().items() if key != "alone" for word in words)


@cache
def unkind_alone() -> frozenset[str]:
    """Return the words that are unkind only where they are the whole text."""
    return frozenset(_table()["alone"])


def is_unkind(text: str) -> bool:
    """Say whether a text has one of these words in it, or is one, marks and case aside."""
    plain = "".join(base_letter(letter).casefold() for letter in clusters(text))
    return plain in unkind_alone() or any(word in plain for word in unkind_words())
