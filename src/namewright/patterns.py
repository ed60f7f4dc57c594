"""Regular expressions that are compiled when they are first used.

Compiling one takes 0.1 to 1 ms, and there are more than a hundred, each for something that only some lists have: all of
them together were a seventh of what loading the program took. Most lines of most lists are names alone, so what looks
for brackets or quotes tells of these signs: a text without them is answered with nothing compiled. Asking so costs half
a microsecond more than the compiled expression, so of a long list each is compiled in the end.
"""

from __future__ import annotations

import re
from collections.abc import Callable
from functools import partial
from typing import Any, AnyStr, Generic, cast

_LONG = 1_000  # questions after which what was spared is spent
_NOTHING_FOUND: dict[str, Callable[[str], object]] = {
    "match": lambda text: None, "fullmatch": lambda text: None, "search": lambda text: None,
    "findall": lambda text: [], "finditer": lambda text: iter(()), "split": lambda text: [text],
    "sub": lambda text: text,
}


def pattern(text: AnyStr, flags: int = 0, *, needs: str = "") -> re.Pattern[AnyStr]:
    """Return a regular expression as ``re.compile`` does, but compiled, and found wrong, only when it is first used.

    ``needs`` are signs of which everything that it matches has one; a test holds that.
    """
    return cast("re.Pattern[AnyStr]", _Pattern(text, flags, needs))


class _Pattern(Generic[AnyStr]):
    """Answers like the compiled expression; what was once asked of it (``match``, ``sub``) it then has itself."""

    def __init__(self, text: AnyStr, flags: int, needs: str) -> None:
        self._text: AnyStr = text
        self._flags, self._needs, self._spared = flags, frozenset(needs), 0

    def __getattr__(self, name: str) -> object:
        if name.startswith("_"):  # as of one that is being copied and has nothing yet
            raise AttributeError(name)
        found = self.__dict__[name] = (partial(self._asked, name) if self._needs and name in _NOTHING_FOUND
                                       else self._compiled(name))
        return found

    def _compiled(self, name: str) -> Any:
        return getattr(re.compile(self._text, self._flags), name)

    def _asked(self, name: str, *given: Any, **named: int) -> object:
        text = given[name == "sub"]
        if self._spared < _LONG and self._needs.isdisjoint(text):
            self._spared += 1
            return _NOTHING_FOUND[name](text)
        self.__dict__[name] = self._compiled(name)
        return self.__dict__[name](*given, **named)
