"""Values made when they are first asked for: a store keeps no more than so many, ``Made`` has its keys from the start.

A store belongs to one run or one start of the page; nothing global is kept in one. What was not asked for longest goes
first. Not safe for two threads at once: who shares one holds a lock. The standard library's ``lru_cache`` keys a value
by all that its function is given, which here would be pens, rulings and whole pictures; cachetools was tried and made
the laying out of sheets 8 % slower (medians of twenty runs each, in turn), for these stores are asked for every letter.
"""

from __future__ import annotations

from collections import OrderedDict
from collections.abc import Callable, Hashable, Iterable, Iterator, Mapping
from typing import Generic, TypeVar

Key = TypeVar("Key", bound=Hashable)
Value = TypeVar("Value")
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
