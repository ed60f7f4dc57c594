"""How the words of a name are written: with capitals, but for particles. Pure."""

from __future__ import annotations

from namewright.names.casing import begins_small
from namewright.names.clusters import is_letter
from namewright.names.particles import PARTICLES
from namewright.roster.vocabulary import fold
from namewright.store import keeps_names


@keeps_names(2048)
def is_small_word(word: str) -> bool:
    """Say whether a word is written small and is no particle: no name has one."""
    return begins_small(word) and fold(word) not in PARTICLES


def is_titled(text: str) -> bool:
    """Say whether every word but a particle begins with a capital, as those of a name do."""
    return not any(map(is_small_word, text.split()))


def is_loud(text: str) -> bool:
    """Say whether all letters are capitals: ``דב  IRC`` are none, since a script without capitals cannot be loud."""
    return text.isupper() and (text.isascii() or all(char.isupper() for char in text if is_letter(char)))
