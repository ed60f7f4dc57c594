"""A child's own settings, read from the cells of optional columns.

A cell that cannot be read leaves the class default in place and gives a note that says so.
Lengths are millimetres.
"""

from __future__ import annotations

from collections.abc import Mapping
from typing import TypeVar

from namewright.message import Field, Message, message
from namewright.named_tuples import NamedTuple
from namewright.names.clusters import is_letter
from namewright.patterns import pattern
from namewright.roster.beside import trim
from namewright.roster.headers import asked_hand
from namewright.roster.vocabulary import HAND_CELLS, HANDS, LANGUAGES, NO, NOTHING, PARTS, SUPPORTS, YES, fold
from namewright.settings import Hand, NamePart, Support
from namewright.units import MAX_LINE_MM, MIN_LINE_MM, parse_length_mm

_T = TypeVar("_T")
_LONGEST_LENGTH = 24
_TAG = pattern(r"([a-z]{2,3})(?:-[a-z0-9]{2,8})*")
_UNIT_IN_HEADER = pattern(r"\b(mm|cm|in|inch|inches)\b")


class Choice(NamedTuple):
    """What one row asks for; None means as the class. ``literal`` is a name to write just as it is.

    ``letters`` (chosen forms of letters) and ``beats`` (the name cut for clapping) are kept as typed.
    """

    support: Support | None = None
    hand: Hand | None = None
    line_height_mm: float | None = None
    part: NamePart | None = None
    literal: str = ""
    letters: str = ""
    beats: str = ""
    names_in: str = ""


def read_support(cell: str, notes: list[Message]) -> Support | None:
    """Read a level of support, in English or Spanish."""
    return _look_up(cell, SUPPORTS, "roster.no_support", tuple(Support), notes)


def read_hand(cell: str, header: str, notes: list[Message]) -> Hand | None:
    """Read a writing hand; yes or no under a header such as ``Left-handed?``.

    Where a list says both, or that nobody is sure, neither hand is assumed: a child is not to have the class's.
    """
    asked = asked_hand(header)
    if asked and fold(cell) in YES:
        return asked
    if asked and fold(cell) in NO:
        return Hand.RIGHT if asked is Hand.LEFT else Hand.LEFT
    if hand := HAND_CELLS.get(fold(cell)):
        return hand
    return _look_up(cell, HANDS, "roster.no_hand", tuple(Hand), notes)


def read_line_height(cell: str, header: str, notes: list[Message]) -> float | None:
    """Read a line height in mm; a bare number takes the unit its header names, else millimetres."""
    if not cell or fold(cell) in NOTHING:
        return None
    unit = _UNIT_IN_HEADER.search(fold(header))
    text = f"{cell} {unit[1]}" if unit and not any(map(is_letter, cell)) and '"' not in cell else cell
    try:
        height = parse_length_mm(text) if len(text) <= _LONGEST_LENGTH else 0.0
    except (ValueError, ArithmeticError):
        height = 0.0
    if MIN_LINE_MM <= height <= MAX_LINE_MM:
        return height
    notes.append(message("roster.no_line_height", cell=cell[:40], least=MIN_LINE_MM, most=MAX_LINE_MM))
    return None


def read_practise(cell: str, notes: list[Message]) -> tuple[NamePart | None, str]:
    """Read a cell that says what to practise: a part of the name, or a literal name."""
    part = PARTS.get(fold(cell))
    return (part, "") if part else (None, read_goes_by(cell, notes))


def read_language(cell: str, notes: list[Message]) -> str:
    """Read the language of a name: a tag (BCP 47), or its name in one of the languages of the pages."""
    folded = fold(cell)
    if not folded or folded in NOTHING:
        return ""
    if found := LANGUAGES.get(folded) or _TAG.fullmatch(folded):
        return found if isinstance(found, str) else found[1]
    notes.append(message("roster.no_language", cell=cell[:40]))
    return ""


def read_goes_by(cell: str, notes: list[Message]) -> str:
    """Read the name a child goes by; empty where the cell says there is none."""
    if not cell or fold(cell) in NOTHING:
        return ""
    name = trim(cell)
    if name and any(map(is_letter, name)) and not any(char.isdigit() for char in name):
        return name
    notes.append(message("roster.no_practise", cell=cell[:40]))
    return ""


def _look_up(
    cell: str, words: Mapping[str, _T], key: str, known: tuple[Field, ...], notes: list[Message]
) -> _T | None:
    folded = fold(cell)
    if not folded or (folded in NOTHING and folded not in words):
        return None
    if folded not in words:
        notes.append(message(key, cell=cell[:40], known=known))
    return words.get(folded)
