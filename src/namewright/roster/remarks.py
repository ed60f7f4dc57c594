"""Remarks behind the names of a list, known by the other lines: ``Mia – apples``, ``Mia Vost, peanuts``.

Few words that come again behind a sign are no names, nor is what stands behind a comma where whole names stand before
it. Which remarks are taken off is told in ``alike``, what a comma parts in ``judge``.
"""

from __future__ import annotations

from collections.abc import Sequence

from namewright.names.casing import begins_small
from namewright.names.clusters import is_letter
from namewright.patterns import pattern
from namewright.roster.beside import is_word_about, strip_numbering
from namewright.roster.capitals import is_titled
from namewright.roster.commas import say_the_same
from namewright.roster.known import is_given, opens_with_given
from namewright.roster.shares import given_share
from namewright.roster.vocabulary import ANY_DAYS, fold
from namewright.store import keeps_names

_BETWEEN_DAYS = pattern(r"[\s/–-]+")
_BEFORE_TAIL = pattern(r"\s([-–—])\s+|([:,])\s+")
_TAIL_SIGNS = "–—-:,(["
_MOSTLY, _OFTEN, _SOME = 0.8, 0.6, 0.2
_CLEARLY = 0.3  # fewer than this share are given names
_FEW = 2  # lines tell little of how a list is written
_LONGEST_NAME = 4  # words
_LONGEST = 200  # characters of a line that is looked at: a longer one is a text


def with_remarks(texts: Sequence[str]) -> frozenset[str]:
    """Return the texts of a list behind whose names stand few words that come again (``Mia – apples``)."""
    found = {text: parted_tail(text.strip()) for text in texts if len(text) < _LONGEST}
    again = signs_of_remarks(list(found.values()), len(found))
    return frozenset(text for text, tail in found.items() if tail and tail[1] in again)


def signs_of_remarks(found: Sequence[tuple[str, str, str] | None], size: int) -> set[str]:
    """Return the signs behind which most lines have a remark: few words come again, and these are no names."""
    tails = {sign: [tail[2] for tail in found if tail and tail[1] == sign and tail[2].strip()] for sign in _TAIL_SIGNS}
    return {sign for sign, behind in tails.items()
            if len(behind) >= _OFTEN * size and say_the_same(behind) and given_share(behind) < _CLEARLY}


@keeps_names(1024)
def parted_tail(text: str) -> tuple[str, str, str] | None:
    """Return what stands before the last words of a line, the sign that parts them, and those words folded."""
    opening = max(text.rfind("("), text.rfind("["))
    if text.endswith((")", "]")) and opening > 0:
        return text[:opening].rstrip(), text[opening], fold(text[opening + 1 : -1])
    signs = list(_BEFORE_TAIL.finditer(text))
    if not signs or not any(map(is_letter, text[: signs[-1].start()])):
        return None
    return text[: signs[-1].start()].rstrip(), signs[-1][1] or signs[-1][2], fold(text[signs[-1].end() :])


def says_the_same_by_comma(filled: Sequence[str]) -> bool:
    """Say whether the same few words, or small letters, stand behind the commas of a list: remarks."""
    names, behind = _by_comma(filled)
    whole = sum(" " in name for name in names)
    if say_the_same(behind) and (whole >= _MOSTLY * len(filled) or given_share(behind) <= _SOME):
        return True
    titled = not any(map(begins_small, filter(None, names)))
    small = titled and len(behind) >= _FEW and all(map(begins_small, behind))
    return small and given_share(behind) <= _SOME


def remarks_by_comma(filled: Sequence[str]) -> bool:
    """Say whether whole names stand before the commas of a list, as they stand without one: a remark follows."""
    names, behind = _by_comma(filled)
    whole = sum(" " in name for name in names)
    if whole < _MOSTLY * len(filled):
        return False
    bare = sum(" " in name and "," not in text for name, text in zip(names, filled, strict=True))
    if bare >= _FEW and 3 * bare >= len(filled):
        return True
    told = sum(map(_is_surely_about, behind))
    named = any(opens_with_given(words) and not _is_surely_about(words) for words in behind)
    alone = sum(" " in name and name == text and is_titled(name) and len(name.split()) <= _LONGEST_NAME
                for name, text in zip(names, map(strip_numbering, filled), strict=True))
    return told + alone >= max(1, _SOME * len(behind)) and not named


def _by_comma(filled: Sequence[str]) -> tuple[list[str], list[str]]:
    """Return what stands before the first comma of each line, and what stands behind one."""
    bare = [strip_numbering(text) for text in filled]
    behind = [after.strip() for text in bare if (after := text.partition(",")[2])]
    return [text.partition(",")[0].strip() for text in bare], behind


def has_a_remark(text: str) -> bool:
    """Say whether one name stands before a comma, and behind it no given name, in a list of remarks by comma."""
    before, _, behind = strip_numbering(text).partition(",")
    words = behind.split()
    return bool(words) and " " not in before and (begins_small(words[0]) or not any(map(is_given, words)))


def _is_surely_about(words: str) -> bool:
    """Say whether words behind a comma tell something of a child: small ones, figures, days of the week."""
    parts = _BETWEEN_DAYS.split(words)
    days = len(parts) > 1 and all(fold(word) in ANY_DAYS for word in parts)  # one alone may be a name: Mon
    return days or begins_small(words) or any(map(str.isdigit, words)) or any(map(is_word_about, words.split()))
