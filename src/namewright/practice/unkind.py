"""Whether letters set side by side spell a word that no child should find on a page made of its name."""

from __future__ import annotations

import tomllib
from functools import cache
from pathlib import Path

from namewright.names.clusters import clusters
from namewright.practice.difficulty import base_letter


@cache
def unkind_words() -> frozenset[str]:
    """Return the words of every language in ``unkind.toml``, small and without marks."""
    text = Path(__file__).with_name("unkind.toml").read_text(encoding="utf-8")
    return frozenset(word for words in tomllib.loads(text).values() for word in words)


def is_unkind(text: str) -> bool:
    """Say whether a text has one of these words in it, marks and case aside."""
    plain = "".join(base_letter(letter).casefold() for letter in clusters(text))
    return any(word in plain for word in unkind_words())
