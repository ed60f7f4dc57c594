"""Clean-up of pasted text, before any of it is read as a name.

It changes what nobody sees (spaces that do not break, invisible characters, accents stored apart from
their letter), full-width letters, figures and signs, and the Arabic comma, which parts names as ours does, and nothing
else: never NFKC, which would change real letters such as ĳ (UAX #15). Quotation marks and apostrophes stay as typed.
Every character removed is reported.
"""

from __future__ import annotations

import unicodedata2

from namewright.message import Message, message
from namewright.named_tuples import NamedTuple
from namewright.patterns import pattern
from namewright.store import keeps_names

_WIDE = {code: code - 0xFEE0 for code in range(0xFF01, 0xFF5F)}
_ARABIC = {ord("،"): ",", ord("؛"): ";"}
_SPACES = dict.fromkeys(
    map(
        ord,
        "\u00a0\u1680\u2000\u2001\u2002\u2003\u2004\u2005\u2006\u2007\u2008"
        "\u2009\u200a\u2028\u2029\u202f\u205f\u3000\r\n\v\f\x1c\x1d\x1e\x85",
    ),
    " ",
)
_ORDER = pattern(r"\x1b(?:\[[0-?]*[ -/]*[@-~]|[@-Z\\-_])", needs="\x1b")
"""What orders a terminal about (ECMA-48, control sequences): of a list copied from one, its letters are no name’s."""
_INVISIBLE = pattern("[\u034f\ufe00-\ufe0f\U000e0100-\U000e01ef]")
_REMOVED_CATEGORIES = frozenset({"Cc", "Cf", "Cs"})
_FAR = " " * 200
"""Wider is no gap between columns of a page: what looks for signs behind spaces looks from each of them."""
_FARTHER = pattern(" {201,}")
_NAMED = 5
"""How many removed characters a note names before it only counts them."""


class Tidied(NamedTuple):
    """Clean text, and a note for each kind of change that a reader could miss."""

    text: str
    notes: tuple[Message, ...] = ()


def tidy(text: str) -> Tidied:
    """Clean one name or one line: `scrub`, then every run of spaces and tabs becomes one space."""
    clean = scrub(text)
    return Tidied(" ".join(clean.text.split()), clean.notes)


@keeps_names(1024)
def scrub(line: str) -> Tidied:
    """Clean the characters of one line and keep its tabs, which may be columns; the result is NFC."""
    if line.isascii() and line.replace("\t", "").isprintable():
        return Tidied(_FARTHER.sub(_FAR, line) if _FAR in line else line)
    notes: list[Message] = []
    spaced = _ORDER.sub("\x1b", line).removeprefix("\ufeff").translate(_SPACES)
    kept = _without_invisible(spaced, notes)
    narrow = kept.translate(_WIDE)
    if narrow != kept:
        notes.append(message("roster.full_width"))
    closer = _FARTHER.sub(_FAR, narrow) if _FAR in narrow else narrow
    return Tidied(unicodedata2.normalize("NFC", closer.translate(_ARABIC)), tuple(notes))


def _without_invisible(text: str, notes: list[Message]) -> str:
    """Take out what has no shape of its own, and say which characters these were."""
    gone = [char for char in text if _is_invisible(char)]
    if not gone:
        return text
    kinds = list(dict.fromkeys(gone))
    named = tuple(map(_spell, kinds[:_NAMED]))
    more = len(kinds) - len(named)
    notes.append(message("roster.invisible_more", named=named, count=more) if more
                 else message("roster.invisible", named=named))
    removed = frozenset(kinds)
    return "".join(char for char in text if char not in removed)


def _is_invisible(char: str) -> bool:
    if char == "\t" or (char.isascii() and char.isprintable()):
        return False
    return bool(_INVISIBLE.match(char)) or unicodedata2.category(char) in _REMOVED_CATEGORIES


def _spell(char: str) -> str:
    """Write a character that cannot be seen, such as ``U+200B zero width space``."""
    return f"U+{ord(char):04X} {unicodedata2.name(char, '').lower()}".strip()
