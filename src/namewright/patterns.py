"""Regular expressions that are compiled when they are first used.

Compiling one takes 0.1 to 1 ms, and there are more than a hundred, each for something that only some lists have: all of
them together were a seventh of what loading the program took.
"""

from __future__ import annotations

import re
from typing import AnyStr, Generic, cast


def pattern(text: AnyStr, flags: int = 0) -> re.Pattern[AnyStr]:
    """Return a regular expression as ``re.compile`` does, but compiled, and found wrong, only when it is first used."""
    return cast("re.Pattern[AnyStr]", _Pattern(text, flags))


class _Pattern(Generic[AnyStr]):
    """Answers like the compiled expression; what was once asked of it (``match``, ``sub``) it then has itself."""

    def __init__(self, text: AnyStr, flags: int) -> None:
        self._text: AnyStr = text
        self._flags = flags

    def __getattr__(self, name: str) -> object:
        found = self.__dict__[name] = getattr(re.compile(self._text, self._flags), name)
        return found
