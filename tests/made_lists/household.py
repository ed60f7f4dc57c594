"""What shapes from porch and pocket share: words in six languages, a title, a name in one of its ways."""

from __future__ import annotations

import random
from collections.abc import Callable, Mapping, Sequence

from made_lists.papers import Say, capitals, comma
from made_lists.people import Person
from made_lists.shapes_tuned import full

Way = Callable[[Person], str]


def speak(rng: random.Random, table: Mapping[str, str]) -> Say:
    """Return what says the words of a table in one of six languages, and each of them in one way."""
    at, said = rng.randrange(6), dict[str, str]()

    def say(key: str) -> str:
        return said.setdefault(key, rng.choice(table[key].split("|")[at].split("~")))
    return say


def each(say: Say, key: str) -> list[str]:
    """Return the words that stand behind one another in a table."""
    return [word.strip() for word in say(key).split(",")]


def titled(rng: random.Random, title: str, most: float = 0.7) -> list[str]:
    """Return a title, perhaps, as people write one."""
    if rng.random() >= most:
        return []
    return [rng.choice((title, title.upper(), f"{title}:", f"** {title} **", f"{title} 2024/25"))] + (
        [""] if rng.random() < 0.5 else [])


def given(one: Person) -> str:
    """Return the given name alone."""
    return one.given


def initial(one: Person) -> str:
    """Return the given name and the first letter of the family's."""
    return f"{one.given} {one.family[0]}."


def ways(rng: random.Random) -> Way:
    """Return how a list writes its names."""
    return rng.choice((full, full, comma, capitals, given, initial))


def plain(rng: random.Random) -> Way:
    """Return how a list writes its names where a comma would tell something else."""
    return rng.choice((full, full, given, initial))


def sown(rng: random.Random, words: Sequence[str], share: float) -> str:
    """Return one of some words now and then."""
    return rng.choice(words) if rng.random() < share else ""


def hour(rng: random.Random, first: int, last: int) -> str:
    """Return a time of the day."""
    return f"{rng.randrange(first, last)}:{rng.randrange(60):02}"


def shuffled(rng: random.Random, words: Sequence[str]) -> list[str]:
    """Return words in some order."""
    return rng.sample(words, len(words))
