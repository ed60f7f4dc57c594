"""Values made when they are first asked for: a store keeps no more than so many, ``Made`` has its keys from the start.

A store belongs to one run or one start of the page; nothing global is kept in one. What a process keeps of functions
that are given names of children, ``keeps_names`` keeps, so that erasing lets all of it go at once. What was not asked
for longest goes first. A store is not safe for two threads at once: who shares one holds a lock. The standard library's
``lru_cache`` keys a value by all that its function is given, which for letters would be pens, rulings and whole
pictures; cachetools was tried and made the laying out of sheets 8 % slower (medians of twenty runs each, in turn), for
these stores are asked for every letter.
"""

from __future__ import annotations

from collections import OrderedDict
from collections.abc import Callable, Hashable, Iterable, Iterator, Mapping
from functools import lru_cache
from typing import Generic, ParamSpec, TypeVar, cast

Key = TypeVar("Key", bound=Hashable)
Value = TypeVar("Value")
Given = ParamSpec("Given")
LETTERS = 2_000  # different letters with marks in one store: far more than one school has
PAIRS = 20_000


class Store(Generic[Key, Value]):
    """At most ``most`` values by key."""

    def __init__(self, most: int) -> None:
        self._values: OrderedDict[Key, Value] = OrderedDict()
        self._most = most

    def get(self, key: Key, make: Callable[[], Value]) -> Value:
        """Return the value of a key, made where there is none yet. Raises what ``make`` raises, keeping nothing."""
        values = self._values
        try:
            values.move_to_end(key)
        except KeyError:
            pass
        else:
            return values[key]
        value = values[key] = make()
        if len(values) > self._most:
            values.popitem(last=False)
        return value

    def find(self, key: Key) -> Value | None:
        """Return the value of a key, None where it is not, or no longer, here."""
        return self._values.get(key)

    def clear(self) -> None:
        """Let every value go."""
        self._values.clear()

    def __len__(self) -> int:
        """Return how many are kept."""
        return len(self._values)


class Made(Mapping[Key, Value]):
    """Values by keys that are known beforehand, each made when it is first asked for and kept."""

    def __init__(self, keys: Iterable[Key], make: Callable[[Key], Value]) -> None:
        self._keys, self._make = dict.fromkeys(keys), make
        self._values: dict[Key, Value] = {}

    def __getitem__(self, key: Key) -> Value:
        if key not in self._values and key in self._keys:
            self._values[key] = self._make(key)
        return self._values[key]

    def __contains__(self, key: object) -> bool:
        return key in self._keys

    def __iter__(self) -> Iterator[Key]:
        return iter(self._keys)

    def __len__(self) -> int:
        return len(self._keys)


_FORGETTING: list[Callable[[], None]] = []


def keeps_names(most: int) -> Callable[[Callable[Given, Value]], Callable[Given, Value]]:
    """Return a decorator that keeps the newest ``most`` answers of a function, and what it was given for them.

    For functions of values alone whose arguments or answers may hold a child's name: ``forget_names`` lets go of
    what all of them keep. What a function raises is not kept. Safe for threads.
    """
    def keeping(function: Callable[Given, Value]) -> Callable[Given, Value]:
        kept = lru_cache(maxsize=most)(function)
        _FORGETTING.append(kept.cache_clear)
        return cast(Callable[Given, Value], kept)
    return keeping


def forget_names() -> None:
    """Let go of every answer that functions with ``keeps_names`` keep in this process."""
    for forget in _FORGETTING:
        forget()
