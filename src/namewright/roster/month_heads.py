"""Months over children, as over birthdays: ``September``, ``3 Mia``, ``15 Leo``; ``June birthdays``."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from namewright.patterns import pattern
from namewright.roster.known import is_given
from namewright.roster.shares import share
from namewright.roster.vocabulary import MONTH_NUMBERS, OF_THE, fold, word_set
from namewright.store import keeps_names

_DAY = pattern(r"\W*(0?[1-9]|[12]\d|3[01])(?!\d)", needs="0123456789")
_LETTERS = pattern(r"[^\W\d_]+")
_BIRTHDAYS = word_set("""
    birthdays, bdays, celebrations, geburtstage, geburtstagskinder, geburtstagskind, anniversaires, cumples,
    cumpleaneros, compleanni, festeggiati, aniversarios, aniversariantes""")
_OF_ONE_OR_MORE = frozenset(("cumpleanos",))
_BESIDE = OF_THE | word_set("in, im, en, em, nel, a, mes, mois, mese, month, monat, our, nos, unsere, todos, all, alle")
_LONGEST = 60
_FEW = 2  # months alone, and days below one
_MOSTLY = 0.6


def month_heads(filled: Mapping[int, str]) -> tuple[list[int], list[int]]:
    """Return the lines of a month alone that are surely over others, and those that may be names.

    Two are needed, one of them nobody's name, or each opens a block; one is enough over days of months. April over
    lines with figures is no child, either; Marco is a month only where it is written Março.
    """
    found = [at for at, text in filled.items() if fold(text) in MONTH_NUMBERS and text.strip().lower() != "marco"]
    named = [at for at in found if is_given(filled[at].strip())]
    if found and _are_over_days(filled, found):
        return found, []
    if len(found) < _FEW or (len(named) == len(found) and not _open_blocks(filled, found)):
        return [], []
    dated = share(any(map(str.isdigit, text)) for at, text in filled.items() if at not in found) >= _MOSTLY
    return (found, []) if dated else ([at for at in found if at not in named], named)


@keeps_names(1024)
def is_of_birthdays(text: str) -> bool:
    """Say whether a month, a word for birthdays and small words are all of a text: ``Compleanni di giugno``.

    ``Cumpleaños de Abril`` may be that of one child.
    """
    words = _LETTERS.findall(fold(text.replace("b-day", "bday"))) if len(text) <= _LONGEST else []
    months = [word for word in words if word in MONTH_NUMBERS]
    if not months:
        return False
    several = not _BIRTHDAYS.isdisjoint(words)
    one = not _OF_ONE_OR_MORE.isdisjoint(words) and not any(map(is_given, months))
    return (several or one) and all(
        word in MONTH_NUMBERS or word in _BIRTHDAYS or word in _OF_ONE_OR_MORE or word in _BESIDE for word in words)


def _are_over_days(filled: Mapping[int, str], months: Sequence[int]) -> bool:
    """Say whether all lines below the first month open with days of months, which no count of a list does."""
    days = [_DAY.match(text) for at, text in filled.items() if at > months[0] and at not in months]
    numbers = [int(day[1]) for day in days if day]
    return len(numbers) == len(days) >= _FEW and numbers != list(range(numbers[0], numbers[0] + len(numbers)))


def _open_blocks(filled: Mapping[int, str], months: Sequence[int]) -> bool:
    """Say whether each block from the first month on opens with one, and they come in the order of a year."""
    opening = [at for at in filled if at >= months[0] and at - 1 not in filled]
    order = [MONTH_NUMBERS[fold(filled[at])] for at in months]
    return opening == list(months) and order == sorted(set(order))
