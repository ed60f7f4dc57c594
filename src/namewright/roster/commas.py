"""What a list parts with its commas: family and given name, a name and a remark, or children. Pure."""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence

from namewright.names.casing import begins_small
from namewright.names.particles import PARTICLES
from namewright.patterns import pattern
from namewright.roster.beside import is_abbreviation, is_word_about, strip_numbering
from namewright.roster.known import is_known, lean
from namewright.roster.vocabulary import AND, fold

BRACKETS = pattern(r"\([^()]*\)|\[[^\[\]]*\]|“[^“”]*”|\"[^\"]*\"", needs="([“\"")
"""What a sign that parts names stands in without parting any."""
COMMA = pattern(rf"\s*[,，、]\s*(?:(?:{AND}|&)\s+)?", needs=",，、")
_JOINED = pattern(r"(?:[AE]l[-‐]|O['’])(?=[^\W\d_a-z])")
_ENOUGH = 4  # lines whose words come again
_MOSTLY, _NEARLY = 0.6, 0.75
_SINGLE = 0.2  # of the lines


def mask(text: str) -> str:
    """Return a text of the same length whose brackets and quotation marks hold nothing that parts."""
    return BRACKETS.sub(lambda match: "x" * len(match[0]), text)


def family_first_by_comma(lines: Sequence[str]) -> bool:
    """Say whether the lines of a list that have one comma are written ``Family, Given``."""
    pairs = [parts for line in lines if len(parts := COMMA.split(mask(strip_numbering(line)))) == 2]
    leads = [(_lead_before(one), lean(two.split()[0])) for one, two in pairs
             if one.split() and two.split() and not any(map(is_word_about, two.split())) and _may_be_given(one, two)]
    against = sum(one > 0 and two > 0 for one, two in leads)
    speaking = sum(one < 0 or (one == 0 and two > 0) for one, two in leads)
    turned = sum(one > 0 > two for one, two in leads)  # Lucía, Romero
    filled = sum(bool(line.strip()) for line in lines)
    often = 2 * len(leads) >= filled or speaking > 2 * against or not against
    unlikely = not speaking and sum(one > 0 for one, _ in leads) > _SINGLE * len(leads)  # given names before remarks
    if say_the_same([two for _, two in pairs]):
        return False
    unsaid = 2 * sum(one < 0 for one, _ in leads) <= len(leads)
    if unsaid and (_are_single(lines, pairs) or _are_whole_before(lines, [one for one, _ in pairs])):
        return False
    return len(leads) > 1 and speaking >= max(against, turned) and often and not unlikely


def _lead_before(part: str) -> int:
    """Return the lean of what stands before a comma: a family name with a particle (``von Tarn``, ``Al-Tarn``)."""
    first, *rest = part.split()
    if _JOINED.match(first):
        return -1
    return -1 if rest and begins_small(first) and first in PARTICLES else lean(first)


def comma_tells(lines: Sequence[str]) -> bool:
    """Say whether a name of a list tells what its commas part: one that is known, or one of several words."""
    pairs = [parts for line in lines if len(parts := COMMA.split(mask(strip_numbering(line)))) == 2]
    return not pairs or any(is_known(word) for pair in pairs for part in pair for word in part.split())


def say_the_same(behind: Sequence[str]) -> bool:
    """Say whether the same few words stand behind the commas of several lines, as no names of children do."""
    counts = Counter(map(fold, behind))
    again = sum(count for count in counts.values() if count > 1)
    return len(behind) >= _ENOUGH and (2 * len(counts) <= len(behind) or again >= _NEARLY * len(behind))


def _are_single(lines: Sequence[str], pairs: Sequence[Sequence[str]]) -> bool:
    """Say whether one name stands on some lines and two by comma on others: each may be a child."""
    bare = _without_comma(lines)
    single = sum(" " not in text for text in bare)
    return single > _SINGLE * len(lines) and all(" " not in part for pair in pairs for part in pair)


def _may_be_given(before: str, behind: str) -> bool:
    """Say whether what is behind a comma is written as what stands before it, and is no abbreviation."""
    return not is_abbreviation(behind, before) and (before.islower() or not behind.islower())


def _are_whole_before(lines: Sequence[str], before: Sequence[str]) -> bool:
    """Say whether whole names stand before the commas, as they stand on other lines without one."""
    bare = _without_comma(lines)
    return len(bare) > 1 and all(sum(" " in text for text in some) >= _MOSTLY * len(some) for some in (before, bare))


def _without_comma(lines: Sequence[str]) -> list[str]:
    """Return the lines that have no comma, without their numbers."""
    return [text for line in lines if (text := strip_numbering(line)) and not COMMA.search(mask(text))]
