"""Names that a list shows struck off: ``~~Mira Vost~~``, ``<s>Mira Vost</s>``, or a line drawn through each letter."""

from __future__ import annotations

import re

from namewright.message import Message, message
from namewright.named_tuples import NamedTuple
from namewright.names.casing import opens_as_a_name
from namewright.names.clusters import is_letter
from namewright.patterns import pattern
from namewright.roster.beside import strip_numbering
from namewright.roster.known import is_given

_STRUCK = pattern(
    r"~~(.+?)~~|(?<!\w)~(?=\S)([^~]+)~(?!\w)|<(?:s|del|strike)>(.+?)</(?:s|del|strike)>|((?:\w[\u0335-\u0338][\s\u0335-\u0338]*)+)",
    re.IGNORECASE)
_LINE_THROUGH = pattern("[\u0335-\u0338]")
_ASIDE = pattern(r"\([^()]*\)")
_SIGNS = pattern("[~<\u0335-\u0338]", needs="~<\u0335\u0336\u0337\u0338")


class Struck(NamedTuple):
    """A text without words struck off behind a name; or why nobody is made, ``asked`` where another name follows."""

    text: str
    reason: Message | None = None
    asked: bool = False


def struck_off(text: str) -> Struck:
    """Return what is to be read of a text, or that a name is struck off in it."""
    match = _STRUCK.search(text) if _SIGNS.search(text) else None
    if match is None:
        return Struck(text)
    if any(map(is_letter, strip_numbering(text[: match.start()]))):
        return Struck(" ".join(_STRUCK.sub(" ", text).split()))
    words = _LINE_THROUGH.sub("", next(filter(None, match.groups()))).strip()
    behind = _ASIDE.sub(" ", text[match.end() :]).split()
    asked = any(opens_as_a_name(word) and is_given(word) for word in behind)
    return Struck(text, message("roster.struck_off", words=words[:60]), asked)
